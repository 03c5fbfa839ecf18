//! Opening a diary: read, judge, and repair only what has to be repaired. Leaves to [`super::scan`] which bytes verify,
//! to [`super::repair`] how what is broken is put right, and to FORMAT.md how everything lies.

use super::card::Card;
use super::errors::OpenError;
use super::findings::{Findings, Missing, ReadOnly, SnapshotTrouble};
use super::frame::{Content, FileKey, Frame};
use super::header::{self, Header};
use super::journal;
use super::keys_file::{self, KeysFile};
use super::layout::{FIRST_FRAME, Seq, Tag};
use super::repair;
use super::scan::{Scan, Start, scan};
use super::scrub::RENEW;
use super::seal::{Purpose, SealKey};
use super::sealed::{SealedFile, SealedRead};
use super::snapshot::{self, Fit, Snapshot};
use super::switch::{self, Switch};
use super::{LOCK, Store};
use crate::ports::{DataKey, Disk, DiskError, DiskFile, KeeperError, KeyKeeper, Random, SyncFor};
use std::path::Path;
use std::sync::Arc;

/// A diary just opened.
#[derive(Debug)]
pub struct Opened {
    /// The diary.
    pub store: Store,
    /// The folded state, if a snapshot of it could be used.
    pub snapshot: Option<SnapshotRead>,
    /// The entries after the snapshot (without one: all of them), in order. Fold them on top.
    pub tail: Vec<(Seq, Vec<u8>)>,
    /// What was found that is not as it was written. Tell the person when anything is missing.
    pub findings: Findings,
}

/// A snapshot as read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SnapshotRead {
    /// The last entry folded into it.
    pub covers: Seq,
    /// The folded state, exactly as saved.
    pub bytes: Vec<u8>,
}

/// What was read, before anything is done about it.
pub(super) struct Read {
    pub(super) file: Box<dyn DiskFile>,
    pub(super) key: FileKey,
    pub(super) header_tag: Tag,
    pub(super) header_copy_lost: bool,
    pub(super) start: Start,
    pub(super) scan: Scan,
    pub(super) snapshot: Option<Snapshot>,
    pub(super) trouble: Option<SnapshotTrouble>,
    /// Everything is to be written anew although it verifies: an earlier write or sync failed, or
    /// a scrub found something.
    pub(super) renew: bool,
}

impl Read {
    /// Whether the journal is, byte for byte, something our own writing leaves.
    pub(super) fn is_as_written(&self) -> bool {
        self.scan.is_sound() && !self.header_copy_lost
    }

    /// Makes sure that the last entry found is on the disk. `false` when that failed.
    fn is_settled(&self) -> bool {
        match self.scan.frames.last() {
            Some(last) if self.is_as_written() && !self.renew => {
                journal::settle(self.file.as_ref(), last).is_ok()
            }
            _ => true,
        }
    }
}

impl Store {
    /// Opens the diary in `folder`.
    ///
    /// Reads the header, the snapshot, and the frames after it; more only when something is wrong.
    /// What is torn or damaged is kept aside byte for byte, and a new journal with everything that
    /// verifies takes its place; the findings say which entries are missing. Never panics,
    /// whatever the bytes are.
    ///
    /// # Errors
    /// [`OpenError`]; nothing on disk has then been changed.
    pub fn open(
        disk: Arc<dyn Disk>,
        folder: &Path,
        keeper: &dyn KeyKeeper,
        random: Arc<dyn Random>,
    ) -> Result<Opened, OpenError> {
        let finished = finish_switch(disk.as_ref(), folder)?;
        if finished == Some(Switch::Ended) {
            keeper.forget();
        }
        let names = disk.list(folder)?;
        let has = |name: &str| names.iter().any(|n| n == name);
        match (has(keys_file::NAME), has(journal::NAME)) {
            (true, true) => {}
            (true, false) => return Err(OpenError::JournalMissing),
            (false, true) => return Err(OpenError::KeysMissing),
            (false, false) => return Err(OpenError::NotADiary),
        }
        // First look: a newer format or a wrong passphrase is refused before anything is touched,
        // and the keeper is asked before the lock is taken.
        let keys = keys_file::read(disk.as_ref(), folder)?;
        read_header(disk.as_ref(), folder)?;
        let wrap = keys.keys.wrap_of(keeper.kind()).ok_or(OpenError::NoWrap)?;
        let data_key = keeper.unwrap(wrap)?;
        if finished.is_some() {
            keeper.keep_only(wrap);
        }
        let wrapper = SealKey::derive(&data_key, Purpose::Journal);

        let lock = disk.lock(&folder.join(LOCK))?;
        // Second look, now that nobody else can change anything.
        let keys = keys_file::read(disk.as_ref(), folder)?;
        let sealed = SealedFile::new(
            disk.clone(),
            random.clone(),
            folder,
            snapshot::NAME,
            Purpose::Snapshot,
            SealKey::derive(&data_key, Purpose::Snapshot),
        );
        let mut read = read_all(disk.as_ref(), folder, &wrapper, &sealed, false)?;
        if !read.is_settled() {
            read = read_all(disk.as_ref(), folder, &wrapper, &sealed, true)?;
        }

        let mut findings = Findings {
            missing: read.scan.missing.clone(),
            torn: read.scan.torn,
            damaged: read.scan.damaged,
            shortened: read.scan.shortened,
            copy_lost: keys.copy_lost || read.header_copy_lost,
            snapshot: read.trouble,
            ..Findings::default()
        };
        let place = repair::Place { disk: disk.as_ref(), folder, random: random.as_ref() };
        // Whoever made the diary, or wrote its journal anew, may have been killed between giving the
        // name and syncing it. (The folder's own name was synced before there was a journal.)
        if let Err(error) = disk.sync_folder(folder, SyncFor::NamesSettled) {
            findings.read_only = Some(error.into());
        }
        let card = mend_keys(&place, &keys, &data_key, &mut findings)?;
        let (journal, snapshot, frames) =
            repair::settle(&place, read, &wrapper, &sealed, &mut findings)?;
        let read_only = findings.read_only;
        let store =
            Store::assemble(disk, folder, random, &data_key, card, journal, lock, read_only);
        let covers = snapshot.as_ref().map(|s| s.place.seq);
        let snapshot = snapshot.map(|s| SnapshotRead { covers: s.place.seq, bytes: s.bytes });
        let tail = entries(frames, covers);
        Ok(Opened { store, snapshot, tail, findings })
    }
}

/// The entries among the frames after the snapshot.
fn entries(frames: Vec<Frame>, covers: Option<Seq>) -> Vec<(Seq, Vec<u8>)> {
    frames
        .into_iter()
        .filter(|f| Some(f.seq) > covers)
        .filter_map(|f| match f.content {
            Content::Entry(bytes) => Some((f.seq, bytes)),
            Content::Gap { .. } => None,
        })
        .collect()
}

fn read_header(disk: &dyn Disk, folder: &Path) -> Result<(Box<dyn DiskFile>, Header), OpenError> {
    let file = match disk.open(&folder.join(journal::NAME)) {
        Ok(file) => file,
        Err(DiskError::NotFound) => return Err(OpenError::JournalMissing),
        Err(other) => return Err(other.into()),
    };
    let header = header::read(file.as_ref())?;
    Ok((file, header))
}

/// The folder that holds this folder's name.
pub(super) fn above(folder: &Path) -> Option<&Path> {
    folder.parent().map(|p| if p.as_os_str().is_empty() { Path::new(".") } else { p })
}

/// Finishes what an earlier process began under new keys and did not end; see [`super::switch`].
pub(super) fn finish_switch(disk: &dyn Disk, folder: &Path) -> Result<Option<Switch>, OpenError> {
    let names = match disk.list(folder) {
        Ok(names) => names,
        Err(DiskError::NotFound) => return Err(OpenError::NotADiary),
        Err(other) => return Err(other.into()),
    };
    if !switch::is_left(&names) {
        return Ok(None);
    }
    let _lock = disk.lock(&folder.join(LOCK))?;
    switch::resume(disk, folder)
}

/// Writes the keys file anew when one of its copies was lost, or when it has no card yet. The other copy
/// serves meanwhile, so that a copy that cannot be mended changes nothing.
fn mend_keys(
    place: &repair::Place<'_>,
    read: &KeysFile,
    data_key: &DataKey,
    findings: &mut Findings,
) -> Result<Card, OpenError> {
    let card = read.keys.card.as_deref().and_then(|card| Card::opened(card, data_key));
    let mut keys = read.keys.clone();
    let (card, fresh) = match card {
        Some(card) => (card, false),
        None => {
            let card = Card::new(place.random).map_err(KeeperError::Random)?;
            keys.card = Some(card.sealed(data_key, place.random).map_err(KeeperError::Random)?);
            (card, true)
        }
    };
    if read.copy_lost {
        if let Ok(kept) = super::aside::copy_aside(place.disk, place.folder, keys_file::NAME) {
            findings.kept_aside.push(kept);
            let _ = keys_file::write(place.disk, place.folder, &keys);
        }
    } else if fresh && keys_file::write(place.disk, place.folder, &keys).is_err() {
        // What is known by a card that was not kept would be another diary at the next opening.
        findings.read_only.get_or_insert(ReadOnly::DiskFailed);
    }
    Ok(card)
}

fn read_all(
    disk: &dyn Disk,
    folder: &Path,
    wrapper: &SealKey,
    sealed: &SealedFile,
    renew: bool,
) -> Result<Read, OpenError> {
    let (file, header) = read_header(disk, folder)?;
    let (key, header_tag) = header.open(wrapper).ok_or(OpenError::KeysDoNotFit)?;
    let renew = renew || disk.list(folder)?.iter().any(|n| n == RENEW);
    let (mut snapshot, mut trouble) = match sealed.read()? {
        SealedRead::Newer => return Err(OpenError::NewerFormat),
        SealedRead::Absent => (None, None),
        SealedRead::Damaged => (None, Some(SnapshotTrouble::Damaged)),
        SealedRead::Content(content) => match Snapshot::decode(&content) {
            Some(snapshot) => (Some(snapshot), None),
            None => (None, Some(SnapshotTrouble::Damaged)),
        },
    };
    let fit = snapshot.as_ref().map(|s| s.fit(file.as_ref(), &key)).transpose()?;
    let whole = Start { offset: FIRST_FRAME, last: None, tag: header_tag };
    let thorough = renew || header.copy_lost;
    let mut start = match (&snapshot, fit) {
        (Some(s), Some(Fit::Fits)) if !thorough => s.start(),
        _ => whole,
    };
    let mut found = scan(file.as_ref(), &key, start)?;
    if !found.is_sound() && start.last.is_some() {
        // Something is wrong: now everything is looked at.
        start = whole;
        found = scan(file.as_ref(), &key, start)?;
    }
    if let (Some(s), Some(fit)) = (&snapshot, fit) {
        trouble = judge(s, fit, &mut found);
        if trouble.is_some() {
            snapshot = None;
        }
    }
    Ok(Read {
        file,
        key,
        header_tag,
        header_copy_lost: header.copy_lost,
        start,
        scan: found,
        snapshot,
        trouble,
        renew,
    })
}

/// What a snapshot that verifies says about the journal, and the journal about it.
fn judge(s: &Snapshot, fit: Fit, found: &mut Scan) -> Option<SnapshotTrouble> {
    let covers = s.place.seq;
    if fit == Fit::OtherJournal {
        return Some(SnapshotTrouble::OtherJournal);
    }
    if found.missing.iter().any(|m| m.new && m.from <= covers) && fit != Fit::NotThere {
        return Some(SnapshotTrouble::CoversMissing);
    }
    if fit == Fit::Fits {
        return None;
    }
    let last = found.last(None);
    if last < Some(covers) {
        // The snapshot saw entries that are not here: it knows better how many are missing.
        found.shortened = true;
        let from = Seq::after(last);
        let tail = found.missing.iter_mut().find(|m| m.new && m.from == from);
        match tail {
            Some(m) => {
                m.through = m.through.max(covers);
                m.extent = super::findings::Extent::AtLeast;
            }
            None => found.missing.push(Missing {
                from,
                through: covers,
                extent: super::findings::Extent::AtLeast,
                new: true,
            }),
        }
        return Some(SnapshotTrouble::Ahead);
    }
    if found.frames.iter().any(|f| f.seq == covers) {
        return Some(SnapshotTrouble::Differs);
    }
    Some(SnapshotTrouble::CoversMissing)
}

impl From<DiskError> for ReadOnly {
    fn from(error: DiskError) -> Self {
        if error == DiskError::Full { ReadOnly::DiskFull } else { ReadOnly::DiskFailed }
    }
}
