//! The index in a sled database. A damaged database may open empty, or panic, at any call; so each call is
//! caught, and whoever reads it compares what it holds with the files that there are.

use std::fs::{File, TryLockError};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use std::thread::sleep;
use std::time::Duration;

use super::{Index, Lost};
use crate::clinic::cabinet::store::FileName;

/// What the database keeps in memory, in bytes. Its default is 1 GiB.
const CACHE: u64 = 8 * 1024 * 1024;

/// How often it is looked whether a database that was shut just now was let go of, and how far apart.
const LOOKS: u32 = 500;
const APART: Duration = Duration::from_millis(10);

/// A sled database.
pub(super) struct SledIndex(Option<sled::Db>);

/// Lets sled try; a panic of it is a lost index and nothing worse.
fn caught<T>(act: impl FnOnce() -> sled::Result<T>) -> Result<T, Lost> {
    catch_unwind(AssertUnwindSafe(act)).map_err(|_| Lost)?.map_err(|_| Lost)
}

/// Waits until nobody holds the database's file. Threads of sled hold it for a moment after it was dropped
/// (spacejam/sled, issue 1289), and it would then be taken for lost; no other program has it, since the desk holds the
/// room. After five seconds it is left to sled what to make of it.
fn wait_until_let_go(place: &Path) {
    let Ok(file) = File::open(place.join("db")) else { return };
    for _ in 0..LOOKS {
        match file.try_lock() {
            Err(TryLockError::WouldBlock) => sleep(APART),
            _ => return,
        }
    }
}

impl SledIndex {
    /// Opens or makes it.
    ///
    /// # Errors
    /// [`Lost`].
    pub(super) fn open(place: &Path) -> Result<Self, Lost> {
        wait_until_let_go(place);
        let config = sled::Config::new().path(place).cache_capacity(CACHE);
        caught(|| config.open()).map(|db| Self(Some(db)))
    }

    fn db(&self) -> Result<&sled::Db, Lost> {
        self.0.as_ref().ok_or(Lost)
    }
}

impl Index for SledIndex {
    fn all(&self) -> Result<Vec<(FileName, Vec<u8>)>, Lost> {
        let db = self.db()?;
        caught(|| {
            let mut all = Vec::new();
            for pair in db.iter() {
                let (key, value) = pair?;
                // A key that is no name is not ours, which only damage explains.
                let Ok(name) = <[u8; 32]>::try_from(key.as_ref()) else {
                    return Err(sled::Error::Unsupported(String::new()));
                };
                all.push((FileName(name), value.to_vec()));
            }
            Ok(all)
        })
    }

    fn put(&mut self, name: FileName, value: &[u8]) -> Result<(), Lost> {
        let db = self.db()?;
        caught(|| db.insert(name.0, value)).map(|_| ())
    }

    fn remove(&mut self, name: FileName) -> Result<(), Lost> {
        let db = self.db()?;
        caught(|| db.remove(name.0)).map(|_| ())
    }

    fn settle(&mut self) -> Result<(), Lost> {
        let db = self.db()?;
        caught(|| db.flush()).map(|_| ())
    }
}

impl Drop for SledIndex {
    fn drop(&mut self) {
        let db = self.0.take();
        // Dropping may panic on a disk that fails.
        let _ = catch_unwind(AssertUnwindSafe(|| drop(db)));
    }
}
