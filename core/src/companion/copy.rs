//! A copy of a diary that can be restored: a backup of this device, or the copy for elsewhere. Decides
//! how it is read, what is shown of it before anything is replaced, and what the restored diary says
//! about itself (a restore blocks going up until the step is confirmed).

use std::path::Path;

use super::backups::made;
use super::keeping::recipient;
use super::{Companion, Ports, Refusal, Trouble, read};
use crate::diary::entry::{Content, Entry};
use crate::diary::portable::{PORTABLE_MOST, Portable};
use crate::diary::state::State;
use crate::diary::store::{
    BackupSeen, Card, Keepers, Missing, OpenError, Store, mark_generation, read_backup,
};
use crate::moment::{Moment, Stamp};
use crate::ports::KeyKeeper;
use crate::programme::values::Count;
use crate::screens::RestoreScreen;
use crate::sealing::{OpenWith, RecipientKeeper, RecoveryPhrase, open};
use crate::words::Words;

/// Where a copy comes from.
pub enum CopyFrom<'a> {
    /// A backup file of this device, opened as the diary is opened.
    Backup {
        /// The file.
        path: &'a Path,
        /// The keeper of the diary it was made of.
        keeper: &'a dyn KeyKeeper,
    },
    /// A copy for elsewhere, opened with the recovery phrase.
    Elsewhere {
        /// The file's bytes.
        bytes: &'a [u8],
        /// The phrase.
        phrase: &'a RecoveryPhrase,
    },
}

/// A copy that was read.
pub struct Copy {
    entries: Vec<Vec<u8>>,
    history: Vec<Entry>,
    card: Card,
    made: Option<Stamp>,
    missing: u64,
}

impl Copy {
    /// Reads a copy. Nothing is changed.
    ///
    /// # Errors
    /// [`Trouble`]: another passphrase or phrase, no copy at all, damaged beyond reading, a newer one.
    pub fn read(ports: &Ports, from: CopyFrom<'_>) -> Result<Self, Trouble> {
        match from {
            CopyFrom::Backup { path, keeper } => {
                let backup =
                    read_backup(ports.disk.as_ref(), path, keeper).map_err(|e| match e {
                        OpenError::NotADiary => Trouble::TryAgain,
                        OpenError::KeysDamaged => Refusal::NotACopy.into(),
                        other => other.into(),
                    })?;
                let card = match backup.card {
                    Some(card) => card,
                    None => Card::new(ports.random.as_ref())?,
                };
                let missing =
                    backup.missing.iter().filter(|hole| hole.new).map(Missing::entries).sum();
                let about = BackupSeen { path: path.to_path_buf(), about: backup.about };
                Self::of(backup.entries, card, made(&about), missing)
            }
            CopyFrom::Elsewhere { bytes, phrase } => {
                let with = OpenWith::Identities(vec![phrase.identity().clone()]);
                let text = open(bytes, &with, PORTABLE_MOST)?;
                let copy = Portable::read(&text)?;
                Self::of(copy.entries, copy.card, Some(copy.made), 0)
            }
        }
    }

    fn of(
        entries: Vec<Vec<u8>>,
        card: Card,
        made: Option<Stamp>,
        missing: u64,
    ) -> Result<Self, Trouble> {
        let history = entries.iter().map(|bytes| read(bytes)).collect::<Result<_, _>>()?;
        Ok(Self { entries, history, card, made, missing })
    }

    /// What it holds and what restoring it would do. `present`: the diary that is open in that place, if
    /// there is one that opens.
    ///
    /// # Errors
    /// [`Trouble::Update`] when a programme in it cannot be read.
    pub fn screen(
        &self,
        present: Option<&Companion>,
        language: &str,
        now: &Stamp,
    ) -> Result<RestoreScreen, Trouble> {
        let state = State::from_history(&self.history)?;
        let words = Words::for_language(state.language().unwrap_or(language));
        let newest = self.history.iter().map(|entry| entry.written).max_by_key(Stamp::millis);
        let same = present.is_none_or(|present| present.store.card().diary == self.card.diary);
        let fewer = present.map(|present| {
            let (here, there) = (present.state.count(), self.history.len() as u64);
            here.saturating_sub(there)
        });
        Ok(RestoreScreen::new(
            &words,
            &crate::screens::Restoring {
                made: self.made,
                entries: self.history.len() as u64,
                newest,
                missing: self.missing,
                same_diary: same,
                fewer,
                now: *now,
            },
        ))
    }
}

impl Companion {
    /// Puts a copy in place of whatever is in `folder`, which may be empty, and opens it. What was there
    /// is kept aside byte for byte. The restored diary asks which step is used before it says anything
    /// above hold. `replaced`: how many entries the diary had that was there, where it opened.
    ///
    /// # Errors
    /// [`Trouble`]; the folder then holds wholly what it held or wholly the restored diary.
    pub fn restore(
        ports: &Ports,
        folder: &Path,
        keeper: &dyn KeyKeeper,
        copy: Copy,
        replaced: Option<u64>,
        language: &str,
        moment: &Moment,
    ) -> Result<Self, Trouble> {
        let Copy { mut entries, mut history, card, missing, .. } = copy;
        let mark = ports.marks.kept(&card.diary).ok().flatten();
        let known = mark.as_deref().and_then(mark_generation).unwrap_or(0);
        let card = Card { generation: card.generation.max(known).saturating_add(1), ..card };
        let mut marks = vec![Content::RestoredMark { up_to: entries.len() as u64, replaced }];
        if let Ok(lost) = Count::new(missing.min(u64::from(Count::MOST))) {
            let after = history.last().map(|entry| entry.written);
            marks.push(Content::MissingMark { entries: lost, after, before: None });
        }
        for what in marks {
            let mut id = [0u8; 16];
            ports.random.fill(&mut id)?;
            let (written, uptime) = (moment.now, moment.uptime);
            let entry = Entry {
                id: crate::diary::entry::EntryId(id),
                written,
                happened: written,
                uptime,
                what,
            };
            entries.push(serde_json::to_vec(&entry).map_err(|_| Trouble::TryAgain)?);
            history.push(entry);
        }
        let phrase = recipient(card.recovery.as_deref())?.map(RecipientKeeper::new);
        let also: Vec<&dyn KeyKeeper> = phrase.iter().map(|p| p as &dyn KeyKeeper).collect();
        let keepers = Keepers { main: keeper, also: &also };
        let state = State::from_history(&history)?;
        let opened = Store::restore(
            ports.disk.clone(),
            folder,
            keepers,
            ports.random.clone(),
            &entries,
            card,
        )?;
        let mut companion = Self::assemble(ports, folder, opened, state, language);
        companion.observed = Some(*moment);
        companion.keep_mark();
        // Said on Today if it fails.
        let _said = companion.back_up(&moment.now);
        Ok(companion)
    }
}
