//! A disk that forgets what was not synced, and random bytes that repeat. **For tests only**
//! (feature `sim`).
//!
//! [`SimDisk`] keeps two pictures of every file and folder: what the system shows now, and what is
//! on the disk for certain. In between lie single, separate steps: a sector of 512 bytes, a page of
//! file length, a name. A sync carries over what it covers. At a power cut **any subset** of the
//! remaining steps may have happened, in particular a later one without an earlier one; the test
//! chooses which. Besides, single calls can be made to fail, the disk can be full, and a sync can be
//! left out by its purpose.
//!
//! After a failed sync the bytes are still shown but will never reach the disk by a later sync, as
//! on real systems that mark such pages clean.

mod random;
mod state;

pub use random::{SeededRandom, SplitMix};

use super::disk::{Disk, DiskError, DiskFile, DiskLock, SyncFor};
use state::{Id, State};
use std::collections::BTreeMap;
use std::fmt;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// A sort of call that can be made to fail.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Call {
    /// Making a file or folder.
    Create,
    /// Writing; the first half of the sectors are written.
    Write,
    /// Syncing a file; its unsynced bytes are given up for good.
    Sync,
    /// Syncing a folder.
    SyncFolder,
    /// Renaming; nothing happens.
    Rename,
    /// Removing; nothing happens.
    Remove,
    /// Reading.
    Read,
}

/// A simulated disk. Clones are the same disk.
#[derive(Clone, Default)]
pub struct SimDisk(Arc<Mutex<State>>);

impl fmt::Debug for SimDisk {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SimDisk")
    }
}

impl SimDisk {
    /// An empty disk with the folder `/` on it.
    #[must_use]
    pub fn new() -> Self {
        let disk = Self::default();
        disk.state().make_root(Path::new("/"));
        disk
    }

    fn state(&self) -> MutexGuard<'_, State> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How many changing calls (make, write, sync, rename, remove) there were.
    #[must_use]
    pub fn calls(&self) -> u64 {
        self.state().calls
    }

    /// How many calls of this sort there were.
    #[must_use]
    pub fn calls_of(&self, call: Call) -> u64 {
        self.state().counts.get(&call).copied().unwrap_or(0)
    }

    /// How often each purpose was synced.
    #[must_use]
    pub fn syncs(&self) -> BTreeMap<SyncFor, u64> {
        self.state().syncs.clone()
    }

    /// The power goes off during the changing call with this number (the first is 0): that call
    /// may have left a part, and everything after it fails.
    pub fn power_off_at(&self, call: u64) {
        self.state().off_at = Some(call);
    }

    /// The `nth` call of this sort from now on (the first is 0) fails; with `forever` all later ones
    /// too.
    pub fn fail(&self, call: Call, nth: u64, forever: bool) {
        let mut state = self.state();
        let at = state.counts.get(&call).copied().unwrap_or(0).saturating_add(nth);
        state.fail = Some((call, at, forever));
    }

    /// The disk has room for this many bytes more; `None`: for any number.
    pub fn set_room(&self, bytes: Option<u64>) {
        self.state().room = bytes;
    }

    /// Syncs for this purpose do nothing and say they did.
    pub fn leave_out(&self, why: SyncFor) {
        self.state().left_out = Some(why);
    }

    /// Reading any part of this stretch of the file fails.
    pub fn spoil(&self, path: &Path, from: u64, to: u64) {
        self.state().spoiled = Some((path.to_path_buf(), from, to));
    }

    /// How many single steps are not yet certain.
    #[must_use]
    pub fn pending(&self) -> usize {
        self.state().pending()
    }

    /// The disk as it may be found after a power cut. `survives` is asked once for each uncertain
    /// step, in order of their happening within each file and folder.
    #[must_use]
    pub fn after_power_cut(&self, survives: &mut dyn FnMut() -> bool) -> SimDisk {
        SimDisk(Arc::new(Mutex::new(self.state().after_power_cut(survives))))
    }

    /// The same disk as another process sees it after this one was killed: nothing is lost, no lock
    /// is held, no fault is set. An independent copy.
    #[must_use]
    pub fn after_kill(&self) -> SimDisk {
        SimDisk(Arc::new(Mutex::new(self.state().after_kill())))
    }

    /// What the system shows as the file's content.
    #[must_use]
    pub fn content(&self, path: &Path) -> Option<Vec<u8>> {
        self.state().content(path)
    }

    /// Replaces a file's content behind everybody's back, certain at once. Makes the file if
    /// needed.
    pub fn tamper(&self, path: &Path, content: Vec<u8>) {
        self.state().tamper(path, content);
    }

    /// Removes a file behind everybody's back, certain at once.
    pub fn tamper_remove(&self, path: &Path) {
        self.state().tamper_remove(path);
    }

    /// What somebody could find who reads the sectors themselves: the certain bytes of every file there
    /// ever was, removed ones included. A disk that writes in place is assumed.
    #[must_use]
    pub fn remains(&self) -> Vec<Vec<u8>> {
        self.state().remains()
    }

    /// Every file and folder the system shows.
    #[must_use]
    pub fn paths(&self) -> Vec<PathBuf> {
        self.state().shown.keys().cloned().collect()
    }
}

const OFF: DiskError = DiskError::Failed(ErrorKind::NotConnected);

impl Disk for SimDisk {
    fn create_folder(&self, folder: &Path) -> Result<(), DiskError> {
        self.state().create(folder, true).map(|_| ())
    }

    fn list(&self, folder: &Path) -> Result<Vec<String>, DiskError> {
        self.state().list(folder)
    }

    fn create(&self, path: &Path) -> Result<Box<dyn DiskFile>, DiskError> {
        let id = self.state().create(path, false)?;
        Ok(Box::new(SimFile { disk: self.clone(), id, path: path.to_path_buf() }))
    }

    fn open(&self, path: &Path) -> Result<Box<dyn DiskFile>, DiskError> {
        let id = self.state().find(path)?;
        Ok(Box::new(SimFile { disk: self.clone(), id, path: path.to_path_buf() }))
    }

    fn rename(&self, from: &Path, to: &Path) -> Result<(), DiskError> {
        self.state().rename(from, to)
    }

    fn remove(&self, path: &Path) -> Result<(), DiskError> {
        self.state().remove(path)
    }

    fn sync_folder(&self, folder: &Path, why: SyncFor) -> Result<(), DiskError> {
        self.state().sync_folder(folder, why)
    }

    fn lock(&self, path: &Path) -> Result<Box<dyn DiskLock>, DiskError> {
        let mut state = self.state();
        match state.create(path, false) {
            Ok(_) | Err(DiskError::Exists) => {}
            Err(other) => return Err(other),
        }
        if !state.locks.insert(path.to_path_buf()) {
            return Err(DiskError::Locked);
        }
        Ok(Box::new(SimLock { disk: self.clone(), path: path.to_path_buf() }))
    }
}

#[derive(Debug)]
struct SimLock {
    disk: SimDisk,
    path: PathBuf,
}

impl DiskLock for SimLock {}

impl Drop for SimLock {
    fn drop(&mut self) {
        self.disk.state().locks.remove(&self.path);
    }
}

#[derive(Debug)]
struct SimFile {
    disk: SimDisk,
    id: Id,
    path: PathBuf,
}

impl DiskFile for SimFile {
    fn length(&self) -> Result<u64, DiskError> {
        self.disk.state().len(self.id)
    }

    fn read_at(&self, offset: u64, out: &mut [u8]) -> Result<usize, DiskError> {
        self.disk.state().read(self.id, &self.path, offset, out)
    }

    fn write_at(&self, offset: u64, bytes: &[u8]) -> Result<(), DiskError> {
        self.disk.state().write(self.id, offset, bytes)
    }

    fn sync_data(&self, why: SyncFor) -> Result<(), DiskError> {
        self.disk.state().sync(self.id, why)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(sync: bool) -> SimDisk {
        let disk = SimDisk::new();
        let path = Path::new("/f");
        let file = disk.create(path).unwrap();
        disk.sync_folder(Path::new("/"), SyncFor::JournalName).unwrap();
        file.write_at(0, &[1; 512]).unwrap();
        file.write_at(512, &[2; 512]).unwrap();
        if sync {
            file.sync_data(SyncFor::Entry).unwrap();
        }
        disk
    }

    #[test]
    fn what_was_not_synced_is_forgotten_and_what_was_is_kept() {
        let path = Path::new("/f");
        let mut none = || false;
        let forgotten = written(false).after_power_cut(&mut none);
        assert_eq!(forgotten.content(path), Some(Vec::new()));
        let kept = written(true).after_power_cut(&mut none);
        assert_eq!(kept.content(path), Some([[1; 512], [2; 512]].concat()));
        assert_eq!(kept.pending(), 0);
    }

    #[test]
    fn a_later_sector_can_arrive_without_an_earlier_one() {
        // Steps: sector, length 512, sector, length 1024. The first sector is lost.
        let mut step = 0;
        let found = written(false).after_power_cut(&mut || {
            step += 1;
            step > 1
        });
        assert_eq!(step, 4);
        assert_eq!(found.content(Path::new("/f")), Some([[0; 512], [2; 512]].concat()));
    }

    #[test]
    fn a_name_that_was_not_synced_can_be_lost_with_all_behind_it() {
        let disk = SimDisk::new();
        disk.create_folder(Path::new("/d")).unwrap();
        disk.create(Path::new("/d/f")).unwrap();
        disk.sync_folder(Path::new("/d"), SyncFor::JournalName).unwrap();
        let found = disk.after_power_cut(&mut || false);
        assert!(found.content(Path::new("/d/f")).is_none());
        assert_eq!(disk.after_power_cut(&mut || true).content(Path::new("/d/f")), Some(vec![]));
    }

    #[test]
    fn a_rename_happens_or_not() {
        let disk = written(true);
        disk.rename(Path::new("/f"), Path::new("/g")).unwrap();
        for survives in [false, true] {
            let found = disk.after_power_cut(&mut || survives);
            assert_eq!(found.content(Path::new("/f")).is_some(), !survives);
            assert_eq!(found.content(Path::new("/g")).is_some(), survives);
        }
    }

    #[test]
    fn bytes_of_a_failed_sync_are_shown_and_never_arrive() {
        let disk = written(false);
        disk.fail(Call::Sync, 0, false);
        let file = disk.open(Path::new("/f")).unwrap();
        assert!(file.sync_data(SyncFor::Entry).is_err());
        file.sync_data(SyncFor::Entry).unwrap();
        assert_eq!(disk.content(Path::new("/f")).unwrap().len(), 1024);
        let found = disk.after_power_cut(&mut || true);
        assert_eq!(found.content(Path::new("/f")), Some(Vec::new()));
    }
}
