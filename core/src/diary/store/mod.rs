//! The diary on disk: an append-only journal, sealed, that never loses an acknowledged entry and
//! never hides that something is damaged.
//!
//! This module decides how bytes are laid out, sealed, synced, verified, kept aside and repaired.
//! It does not know what an entry or a folded state is: both are opaque bytes. What an entry means
//! belongs to [`crate::diary`]; when to save a snapshot, run a scrub or tell the person about a
//! finding belongs to the companion. `FORMAT.md`, beside this file, is the byte layout.
//!
//! # How to use it
//!
//! ```
//! # use frond_core::diary::store::{Store, Findings};
//! # use frond_core::ports::{OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch};
//! # use std::sync::Arc;
//! # let base = tempfile::tempdir().unwrap();
//! # let folder = base.path().join("diary");
//! let (disk, random) = (Arc::new(RealDisk), Arc::new(OsRandom));
//! let words = Passphrase::new("a few invented words".to_owned()).unwrap();
//! // Real use: `Stretch::everyday()`.
//! let keeper = PassphraseKeeper::new(words, Stretch::cheap_for_tests_only());
//!
//! let opened = Store::create(disk.clone(), &folder, &keeper, random.clone()).unwrap();
//! let mut store = opened.store;
//! let first = store.append(b"an entry").unwrap(); // on the disk when this returns
//! store.save_snapshot(first, b"the folded state").unwrap();
//! store.append(b"another entry").unwrap();
//! drop(store); // gives the lock back
//!
//! let opened = Store::open(disk, &folder, &keeper, random).unwrap();
//! assert!(opened.findings.is_clean());
//! assert_eq!(opened.snapshot.unwrap().bytes, b"the folded state");
//! assert_eq!(opened.tail.len(), 1); // fold these on top of the snapshot
//! ```
//!
//! # What the caller has to do
//!
//! - **Fold** `Opened::snapshot` and then `Opened::tail`. Without a snapshot the tail is the whole
//!   diary. A snapshot that the caller cannot understand (an older version of its own state) is
//!   answered by [`Store::read_from`] the first entry and a new snapshot.
//! - **Tell the person** about `Findings`: which entries are missing, and that the diary is
//!   read-only if it is. A hole is reported at every opening until a snapshot covers an entry after
//!   it, so the caller's own mark for it must be written once per range, not once per opening.
//! - **After [`AppendError::Poisoned`]**: drop the store, open it again, look by the entry's own id
//!   whether it is there, and append it again if not.
//! - **Off the path of an answer**: [`Store::prepare`] now and then, [`Store::snapshot_saver`] after
//!   some entries, [`Store::scrub`] weekly and before every export.
//!
//! # Threads
//!
//! A [`Store`] appends through `&mut self`. [`SnapshotSaver`], [`SealedFile`] and [`Scrub`] stand on
//! their own and may work on another thread meanwhile.

mod aside;
mod backup;
mod card;
mod create;
mod doubled;
mod errors;
mod findings;
mod frame;
mod header;
mod journal;
mod keys_file;
mod layout;
mod mark;
mod open;
mod part;
mod renew;
mod repair;
mod scan;
mod scrub;
mod seal;
mod sealed;
mod snapshot;
mod switch;

#[cfg(test)]
mod tests;

pub use backup::{About, BACKUPS_KEPT, BackupRead, BackupSeen, LABEL_MOST, read_backup};
pub use card::{Card, RECIPIENT_MOST};
pub use errors::{
    AppendError, BackupError, CreateError, OpenError, ReadError, RenewError, SaveError,
};
pub use findings::{Extent, Findings, Missing, ReadOnly, SnapshotTrouble};
pub use layout::{ENTRY_MOST, Seq};
pub use mark::{Rollback, mark_generation, mark_print};
pub use open::{Opened, SnapshotRead};
pub use renew::Keepers;
pub use scrub::{Scrub, ScrubOutcome, ScrubProgress};
pub use seal::Purpose;
pub use sealed::{SealedFile, SealedRead};
pub use snapshot::SnapshotSaver;

use crate::ports::{DataKey, Disk, DiskLock, Random};
use journal::Journal;
use mark::Mark;
use seal::SealKey;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The name of the lock file. It stays when the lock is given back.
const LOCK: &str = "lock";
/// The name of the running practice's file.
const RUNNING: &str = "running";
/// The folder for backups, inside the diary's folder.
const BACKUPS: &str = "backups";

/// Whether entries can be appended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum State {
    Writable,
    ReadOnly,
    Poisoned,
}

/// One open diary. Holds its lock until dropped.
#[derive(Debug)]
pub struct Store {
    disk: Arc<dyn Disk>,
    folder: PathBuf,
    random: Arc<dyn Random>,
    journal: Journal,
    snapshot: SealedFile,
    running: SealedFile,
    card: Card,
    backup_key: SealKey,
    mark_key: SealKey,
    state: State,
    lock: Box<dyn DiskLock>,
}

impl Store {
    #[allow(clippy::too_many_arguments, reason = "every part of a store, once each")]
    fn assemble(
        disk: Arc<dyn Disk>,
        folder: &Path,
        random: Arc<dyn Random>,
        data_key: &DataKey,
        card: Card,
        journal: Journal,
        lock: Box<dyn DiskLock>,
        read_only: Option<ReadOnly>,
    ) -> Self {
        let sealed = |name, purpose| {
            let key = SealKey::derive(data_key, purpose);
            SealedFile::new(disk.clone(), random.clone(), folder, name, purpose, key)
        };
        let snapshot = sealed(snapshot::NAME, Purpose::Snapshot);
        let running = sealed(RUNNING, Purpose::Running);
        let state = if read_only.is_some() { State::ReadOnly } else { State::Writable };
        let folder = folder.to_path_buf();
        let backup_key = SealKey::derive(data_key, Purpose::Backup);
        let mark_key = SealKey::derive(data_key, Purpose::Mark);
        Self {
            disk,
            folder,
            random,
            journal,
            snapshot,
            running,
            card,
            backup_key,
            mark_key,
            state,
            lock,
        }
    }

    /// What the diary is known by.
    #[must_use]
    pub fn card(&self) -> &Card {
        &self.card
    }

    /// The mark to keep outside, by which an older copy of the folder is noticed later; `None` while the
    /// diary is empty. At most [`crate::ports::MARK_MOST`] bytes.
    ///
    /// # Errors
    /// [`ReadError`] when the journal cannot be read.
    pub fn mark(&self) -> Result<Option<Vec<u8>>, ReadError> {
        let mark = Mark::of(&self.journal, self.card.generation, &self.mark_key)?;
        Ok(mark.map(|mark| mark.encode()))
    }

    /// Whether the diary is what it was when this mark was made, or has gone on from there. A mark that
    /// is not understood says nothing.
    ///
    /// # Errors
    /// [`ReadError`] when the journal cannot be read.
    pub fn judge(&self, mark: &[u8]) -> Result<Option<Rollback>, ReadError> {
        match Mark::decode(mark) {
            Some(mark) => Ok(mark.judge(&self.journal, self.card.generation, &self.mark_key)?),
            None => Ok(None),
        }
    }

    /// Appends one entry and returns its place once it would survive a power cut.
    ///
    /// # Errors
    /// [`AppendError`]; after [`AppendError::Poisoned`] this handle takes no more.
    pub fn append(&mut self, entry: &[u8]) -> Result<Seq, AppendError> {
        self.writing(|journal, random| journal.append(entry, random))
    }

    /// Makes room for the next entries (some fifty typical ones), so that appending them costs one
    /// write and one sync. Worth calling when nobody waits; appending does it itself when it must.
    ///
    /// # Errors
    /// As [`Store::append`].
    pub fn prepare(&mut self) -> Result<(), AppendError> {
        self.writing(|journal, _| journal.make_room_ahead())
    }

    fn writing<T>(
        &mut self,
        work: impl FnOnce(&mut Journal, &dyn Random) -> Result<T, AppendError>,
    ) -> Result<T, AppendError> {
        match self.state {
            State::Writable => {}
            State::ReadOnly => return Err(AppendError::ReadOnly),
            State::Poisoned => return Err(AppendError::Poisoned),
        }
        let result = work(&mut self.journal, self.random.as_ref());
        if matches!(result, Err(AppendError::Poisoned)) {
            self.state = State::Poisoned;
            // Asks the next opening for a new file. Only needed as long as the system runs that
            // saw the failure, so it is not synced; if even this fails, the next opening still
            // writes the last entry once more.
            let _ = self.disk.create(&self.folder.join(scrub::RENEW));
        }
        result
    }

    /// The last entry's place; `None` in an empty diary. A mark for missing entries counts.
    #[must_use]
    pub fn last(&self) -> Option<Seq> {
        self.journal.last
    }

    /// Whether entries can be appended.
    #[must_use]
    pub fn is_writable(&self) -> bool {
        self.state == State::Writable
    }

    /// Reads every entry from this place on, in order, straight from the journal, and returns what
    /// is missing among them (and what was missing already).
    ///
    /// # Errors
    /// [`ReadError`] when nothing can be read at all; damage is an answer, not an error.
    pub fn read_from(
        &self,
        from: Seq,
        mut visit: impl FnMut(Seq, &[u8]),
    ) -> Result<Vec<Missing>, ReadError> {
        let start = match from.before().and_then(|seq| self.journal.place(seq)) {
            Some(p) if self.state == State::Writable => {
                scan::Start { offset: p.end, last: Some(p.seq), tag: p.tag }
            }
            _ => self.journal.whole(),
        };
        let found = scan::scan(self.journal.file.as_ref(), &self.journal.key, start)?;
        for frame in &found.frames {
            if let frame::Content::Entry(bytes) = &frame.content
                && frame.seq >= from
            {
                visit(frame.seq, bytes);
            }
        }
        Ok(found.missing.into_iter().filter(|m| m.through >= from).collect())
    }

    /// Asks the next opening to read everything and to see to what is damaged.
    pub fn see_to_it_when_opened(&self) {
        // Where even this fails, whoever reads the whole diary next finds the same and asks again.
        let _ = self.disk.create(&self.folder.join(scrub::RENEW));
    }

    /// Prepares the saving of a snapshot of the state folded up to and including `covers`.
    ///
    /// # Errors
    /// [`SaveError::NoSuchPlace`] when `covers` is not an entry read at opening or appended since;
    /// [`SaveError::ReadOnly`] when nothing may be written.
    pub fn snapshot_saver(&self, covers: Seq) -> Result<SnapshotSaver, SaveError> {
        if self.state == State::ReadOnly {
            return Err(SaveError::ReadOnly);
        }
        let place = self.journal.place(covers).ok_or(SaveError::NoSuchPlace(covers))?;
        let file = self.journal.key.id;
        Ok(SnapshotSaver { sealed: self.snapshot.clone(), file, place })
    }

    /// Saves a snapshot here and now; see [`Store::snapshot_saver`].
    ///
    /// # Errors
    /// [`SaveError`]; no entry is in danger.
    pub fn save_snapshot(&self, covers: Seq, state: &[u8]) -> Result<(), SaveError> {
        self.snapshot_saver(covers)?.save(state)
    }

    /// The sealed file for the practice that is running: written at each change of its state, read
    /// once at opening, removed when the session is logged.
    #[must_use]
    pub fn running(&self) -> SealedFile {
        self.running.clone()
    }

    /// Begins verifying the whole journal, as far as it is written now; see [`Scrub::step`].
    ///
    /// # Errors
    /// [`ReadError`] when the journal cannot be opened a second time.
    pub fn scrub(&self) -> Result<Scrub, ReadError> {
        let start = self.journal.whole();
        let key = self.journal.key.clone();
        Scrub::new(self.disk.clone(), self.folder.clone(), key, start, self.journal.end)
    }
}
