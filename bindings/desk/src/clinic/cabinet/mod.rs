//! The cabinet: the summaries that came back, each a sealed file, and what is kept beside them so that a list of
//! thousands opens at once. Decides what comes in, what is known of each, and that nothing but the files and the
//! pins has to survive. Leaves how a summary reads to the core and what is shown to the pages.
//!
//! ```text
//! summaries/HASH.age   one summary, sealed to the clinic; HASH is the SHA-256 of the file
//! diaries              the pins: the key each diary is known by, sealed
//! index/               digests, each sealed for its file's name; can always be made anew
//! ```
//!
//! A file is read once, when it comes or when the index was lost; its [`Digest`] is kept. Start at
//! [`Cabinet::open`] and [`Cabinet::take`].

mod arrival;
mod given_name;
mod index;
mod job;
mod pins;
mod shelf;
mod store;
#[cfg(test)]
mod tests;
mod trial;

use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::PathBuf;
use std::sync::Arc;

use frond_core::ports::Random;
use frond_core::sealing::{BoxKey, ClinicKeys, OpenWith, Recipient};
use frond_core::summary::{DiaryId, Digest, Received, SummaryId};

use super::folder::{Folder, FolderError, Held};
pub(crate) use arrival::{Arrived, Refused, Taken, arrive};
pub(crate) use given_name::given_name;
pub(crate) use index::IndexKind;
use index::{Index, Lost};
pub(crate) use job::{Job, JobKind, Progress};
use pins::{Pins, Stands};
pub(crate) use shelf::{Incoming, Shelf, Treat, files_of, held};
use store::{FileName, NotRead, Store};
pub(crate) use trial::Newest;

/// What a digest's seal says it is; the file's name comes after it.
const PLACE: &[u8] = b"digest 1 ";

/// The cabinet, open.
pub(crate) struct Cabinet {
    folder: Arc<Folder>,
    random: Arc<dyn Random>,
    store: Store,
    rooms: PathBuf,
    kind: IndexKind,
    /// `None` where it cannot be used: the digests are then in memory alone, until the next opening.
    index: Option<Box<dyn Index>>,
    digests: BoxKey,
    marks: BoxKey,
    recipient: Option<Recipient>,
    pins: Pins,
    pins_lost: bool,
    remade: bool,
    shelf: BTreeMap<FileName, Digest>,
    known: HashMap<SummaryId, FileName>,
    unread: Vec<FileName>,
    unfit: Vec<(FileName, Unfit)>,
    /// Two cabinets at once would take the index from under each other. Last, so that it is given back last.
    _held: Held,
}

/// Why a file of the cabinet is not in the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Unfit {
    /// It is damaged, or cannot be read.
    Damaged,
    /// It does not open with the clinic's keys, or holds no summary that this program reads.
    NotOpened,
    /// Its diary is known by another key.
    OtherKey,
}

/// What opens a file of the cabinet without holding the cabinet.
pub(crate) struct Reader {
    store: Store,
    own: OpenWith,
}

/// A file that is still to be read, or was.
pub(crate) struct Look(FileName, Result<Digest, Unfit>);

impl Reader {
    fn received(&self, name: FileName) -> Result<Arrived, Unfit> {
        let bytes = self.store.read(name).map_err(|error| match error {
            NotRead::Unreadable | NotRead::Damaged => Unfit::Damaged,
        })?;
        arrive(&bytes, &self.own, None).map_err(|_| Unfit::NotOpened)
    }

    /// Reads a file.
    pub(crate) fn look(&self, name: FileName) -> Look {
        Look(name, self.received(name).map(|arrived| arrived.digest))
    }
}

/// A summary that is to be opened.
pub(crate) struct Opening {
    reader: Reader,
    name: FileName,
}

impl Opening {
    /// Opens it, with what is kept beside it.
    ///
    /// # Errors
    /// [`Unfit`].
    fn arrived(&self) -> Result<Arrived, Unfit> {
        self.reader.received(self.name)
    }

    /// Opens it.
    ///
    /// # Errors
    /// [`Unfit`].
    pub(crate) fn open(&self) -> Result<Received, Unfit> {
        Ok(self.arrived()?.received)
    }
}

/// The hash that an address names.
pub(crate) fn hash(named: &str) -> Option<[u8; 32]> {
    FileName::parse(named).map(|name| name.0)
}

impl Cabinet {
    /// Opens the cabinet of a desk. What the index does not know is left to [`read_on`](Self::read_on).
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn open(
        folder: &Arc<Folder>,
        keys: &ClinicKeys,
        random: &Arc<dyn Random>,
        kind: IndexKind,
    ) -> Result<Self, FolderError> {
        let held = folder.hold("index").ok_or(FolderError::Failed)?;
        let marks = keys.box_key("pins");
        let pins = Pins::read(folder, &marks)?;
        let mut cabinet = Self {
            folder: folder.clone(),
            _held: held,
            random: random.clone(),
            store: Store::new(folder.room("summaries")?),
            rooms: folder.room("index")?,
            kind,
            index: None,
            digests: keys.box_key("digests"),
            marks,
            recipient: keys.recipient(),
            pins_lost: pins.is_none(),
            pins: pins.unwrap_or_default(),
            remade: false,
            shelf: BTreeMap::new(),
            known: HashMap::new(),
            unread: Vec::new(),
            unfit: Vec::new(),
        };
        let names: HashSet<FileName> = cabinet.store.names()?.into_iter().collect();
        if cabinet.take_from_index(&names).is_err() && !cabinet.remake() {
            // sled cannot be used here at all; what holds without it takes its place.
            cabinet.kind = IndexKind::Plain;
            if cabinet.take_from_index(&names).is_err() {
                cabinet.remake();
            }
        }
        // A key that came with a summary that is here was accepted, even where the pins were lost or the
        // program ended before they were kept.
        let accepted: Vec<_> = cabinet.digests().filter_map(Digest::from).collect();
        for pin in accepted {
            if cabinet.pins.stands(&pin) == Stands::New || cabinet.pins_lost {
                cabinet.pins.know(&pin);
            }
        }
        let mut unread: Vec<FileName> =
            names.into_iter().filter(|name| !cabinet.shelf.contains_key(name)).collect();
        unread.sort_unstable();
        cabinet.unread = unread;
        Ok(cabinet)
    }

    /// Takes from the index what its seals vouch for.
    fn take_from_index(&mut self, names: &HashSet<FileName>) -> Result<(), Lost> {
        let mut index = self.kind.open(&self.rooms)?;
        let mut whole = true;
        for (name, sealed) in index.all()? {
            if !names.contains(&name) {
                index.remove(name)?;
                continue;
            }
            match self.opened(name, &sealed) {
                Some(digest) => self.put_up(name, digest),
                None => whole = false,
            }
        }
        self.index = Some(index);
        if whole { Ok(()) } else { Err(Lost) }
    }

    fn opened(&self, name: FileName, sealed: &[u8]) -> Option<Digest> {
        let place = [PLACE, &name.0].concat();
        Digest::decode(&self.digests.open(&place, sealed).ok()?)
    }

    fn put_up(&mut self, name: FileName, digest: Digest) {
        self.known.insert(digest.summary, name);
        self.shelf.insert(name, digest);
    }

    /// The index is made anew: what is known goes into a new one, the old one aside. Says whether there is one.
    fn remake(&mut self) -> bool {
        self.remade = true;
        self.index = None;
        let fresh = self.kind.move_aside(&self.rooms).and_then(|()| self.kind.open(&self.rooms));
        let Ok(fresh) = fresh else { return false };
        self.index = Some(fresh);
        let known: Vec<FileName> = self.shelf.keys().copied().collect();
        for name in known {
            self.note(name);
        }
        self.settle_index();
        true
    }

    /// Puts what is known of a file into the index.
    fn note(&mut self, name: FileName) {
        let Some(digest) = self.shelf.get(&name).and_then(Digest::encode) else { return };
        let place = [PLACE, &name.0].concat();
        let Ok(sealed) = self.digests.seal(&*self.random, &place, &digest) else { return };
        let put = self.index.as_mut().map(|index| index.put(name, &sealed));
        if put == Some(Err(Lost)) {
            self.index = None;
        }
    }

    fn settle_index(&mut self) {
        let settled = self.index.as_mut().map(|index| index.settle());
        if settled == Some(Err(Lost)) {
            self.index = None;
        }
    }

    /// What opens files beside the cabinet.
    pub(crate) fn reader(&self, keys: &ClinicKeys) -> Reader {
        Reader { store: self.store.clone(), own: keys.open_with() }
    }

    /// How many files are still to be read.
    pub(crate) fn unread(&self) -> usize {
        self.unread.len()
    }

    /// At most so many of the files that are still to be read; they count as read from now on.
    pub(crate) fn next_unread(&mut self, most: usize) -> Vec<FileName> {
        let from = self.unread.len().saturating_sub(most);
        self.unread.split_off(from)
    }

    /// What a file was found to hold.
    pub(crate) fn looked(&mut self, look: Look) {
        let Look(name, found) = look;
        let found = found.and_then(|digest| {
            let pin = digest.from().ok_or(Unfit::NotOpened)?;
            // Where the pins are lost, what is here was accepted once.
            if self.pins.stands(&pin) == Stands::Other && !self.pins_lost {
                return Err(Unfit::OtherKey);
            }
            self.pins.know(&pin);
            Ok(digest)
        });
        match found {
            Ok(digest) => {
                self.put_up(name, digest);
                self.note(name);
            }
            Err(unfit) => self.unfit.push((name, unfit)),
        }
    }

    /// Reads what is still to be read, here and now.
    pub(crate) fn read_on(&mut self, keys: &ClinicKeys) {
        let reader = self.reader(keys);
        for name in self.next_unread(usize::MAX) {
            let look = reader.look(name);
            self.looked(look);
        }
    }

    /// Takes in a summary that arrived. What it came as is kept where it was sealed to the clinic; otherwise it
    /// is sealed before it is written.
    ///
    /// # Errors
    /// [`Refused`]; nothing was then kept.
    pub(crate) fn take(
        &mut self,
        came: &[u8],
        arrived: &Arrived,
        new_key: bool,
    ) -> Result<Taken, Refused> {
        let digest = &arrived.digest;
        if self.known.contains_key(&digest.summary) {
            return Ok(Taken::Known(digest.summary));
        }
        let pin = &arrived.received.from;
        if self.pins.stands(pin) == Stands::Other && !new_key {
            return Err(Refused::OtherKey);
        }
        let sealed = arrived.sealed(came, self.recipient.as_ref())?;
        let name = self.store.keep(&sealed).map_err(Refused::Folder)?;
        self.pins.know(pin);
        let older = self.of(digest.diary).any(|own| own.made.millis() > digest.made.millis());
        self.put_up(name, digest.clone());
        self.note(name);
        Ok(if older { Taken::Older(digest.summary) } else { Taken::New(digest.summary) })
    }

    /// Makes what was taken in last: pins and index.
    ///
    /// # Errors
    /// [`FolderError`] where the pins could not be kept.
    pub(crate) fn settle(&mut self) -> Result<(), FolderError> {
        self.settle_index();
        self.pins.keep(&self.folder, &self.marks, &*self.random)
    }

    /// What is known of each summary.
    pub(crate) fn digests(&self) -> impl Iterator<Item = &Digest> {
        self.shelf.values()
    }

    /// Those of one diary.
    pub(crate) fn of(&self, diary: DiaryId) -> impl Iterator<Item = &Digest> {
        self.digests().filter(move |digest| digest.diary == diary)
    }

    /// How many keys were accepted for a diary.
    pub(crate) fn keys_of(&self, diary: DiaryId) -> usize {
        self.pins.keys(diary)
    }

    /// Files that are here and not in the list.
    pub(crate) fn unfit(&self) -> &[(FileName, Unfit)] {
        &self.unfit
    }

    /// Whether the index had to be made anew at this opening.
    #[cfg(test)]
    pub(crate) fn was_remade(&self) -> bool {
        self.remade
    }

    /// Whether the pins were lost, so that every key found here counts as accepted.
    pub(crate) fn lost_pins(&self) -> bool {
        self.pins_lost
    }

    /// What opens a summary without holding the cabinet; `None` where there is none of this id.
    pub(crate) fn to_open(&self, id: SummaryId, own: OpenWith) -> Option<Opening> {
        let name = *self.known.get(&id)?;
        Some(Opening { reader: Reader { store: self.store.clone(), own }, name })
    }

    /// The newest summary of each diary.
    pub(crate) fn newest(&self) -> Vec<Newest> {
        let mut newest: HashMap<DiaryId, &Digest> = HashMap::new();
        for digest in self.digests() {
            let own = newest.entry(digest.diary).or_insert(digest);
            if (digest.made.millis(), digest.summary) > (own.made.millis(), own.summary) {
                *own = digest;
            }
        }
        newest
            .into_values()
            .map(|digest| Newest {
                diary: digest.diary,
                summary: digest.summary,
                name: digest.nickname.as_ref().map(ToString::to_string),
            })
            .collect()
    }

    /// Takes all summaries of a diary away for good; what it is known by stays, so that another key would still
    /// be noticed.
    ///
    /// # Errors
    /// [`FolderError`]; some may then be gone.
    pub(crate) fn take_away(&mut self, diary: DiaryId) -> Result<(), FolderError> {
        let names: Vec<FileName> = self
            .shelf
            .iter()
            .filter(|(_, digest)| digest.diary == diary)
            .map(|(name, _)| *name)
            .collect();
        for name in names {
            self.store.remove(name)?;
            if let Some(digest) = self.shelf.remove(&name) {
                self.known.remove(&digest.summary);
            }
            let removed = self.index.as_mut().map(|index| index.remove(name));
            if removed == Some(Err(Lost)) {
                self.index = None;
            }
        }
        self.settle_index();
        Ok(())
    }
}
