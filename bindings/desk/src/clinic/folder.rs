//! Where the desk keeps its files, and how one is written so that it is whole or not there.
//!
//! ```text
//! keys          the clinic's keys, an age file under the passphrase
//! keys-copied   empty: a copy of the keys was made and looked at
//! lock          held while a program has the folder
//! diaries       the keys that diaries are known by, sealed
//! drafts/ programmes/ summaries/ index/
//! ```

use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io::{ErrorKind, Write};
use std::os::unix::fs::{DirBuilderExt, OpenOptionsExt};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

use crate::failure::Failure;

/// The desk's folder, held by this program alone.
#[derive(Debug)]
pub(crate) struct Folder {
    path: PathBuf,
    /// Held as long as it is open.
    _lock: File,
    /// Rooms that one part of this program has for itself.
    held: Mutex<BTreeSet<&'static str>>,
}

/// A room that one part of this program has for itself, until this is dropped.
#[derive(Debug)]
pub(crate) struct Held {
    folder: Arc<Folder>,
    room: &'static str,
}

impl Drop for Held {
    fn drop(&mut self) {
        let mut held = self.folder.held.lock().unwrap_or_else(PoisonError::into_inner);
        held.remove(self.room);
    }
}

/// A file of the desk could not be read or written. It carries no path and no content.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum FolderError {
    /// No room.
    Full,
    /// Anything else that the system says.
    Failed,
}

impl From<std::io::Error> for FolderError {
    fn from(error: std::io::Error) -> Self {
        match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Self::Full,
            _ => Self::Failed,
        }
    }
}

impl Folder {
    /// Takes the folder, and makes it where it is not.
    ///
    /// # Errors
    /// It cannot be made, or another program has it.
    pub(crate) fn take(path: &Path) -> Result<Self, Failure> {
        let name = path.display();
        let not_made = |_| {
            Failure::input(format!(
                "The folder {name} cannot be used. Check that it is yours, or choose another with \
                 --folder."
            ))
        };
        make(path).map_err(not_made)?;
        let mut options = fs::OpenOptions::new();
        options.write(true).create(true).truncate(false).mode(0o600);
        let lock = options.open(path.join("lock")).map_err(not_made)?;
        lock.try_lock().map_err(|error| match error {
            fs::TryLockError::WouldBlock => Failure::Else(format!(
                "The folder {name} is open in another Frond. Close that one first."
            )),
            fs::TryLockError::Error(error) => not_made(error),
        })?;
        Ok(Self { path: path.to_path_buf(), _lock: lock, held: Mutex::default() })
    }

    /// The folder of one kind of file, made where it is not.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn room(&self, name: &str) -> Result<PathBuf, FolderError> {
        let room = self.path.join(name);
        make(&room)?;
        Ok(room)
    }

    /// Has a room for oneself; `None` while another part of this program has it, as one that is just ending.
    pub(crate) fn hold(self: &Arc<Self>, room: &'static str) -> Option<Held> {
        let mut held = self.held.lock().unwrap_or_else(PoisonError::into_inner);
        held.insert(room).then(|| Held { folder: self.clone(), room })
    }

    /// A file of the folder itself; `None` where it is not there.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn read(&self, name: &str) -> Result<Option<Vec<u8>>, FolderError> {
        match fs::read(self.path.join(name)) {
            Ok(bytes) => Ok(Some(bytes)),
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error.into()),
        }
    }

    /// Puts a file of the folder itself in place, whole or not at all.
    ///
    /// # Errors
    /// [`FolderError`]; what was there before is then still there.
    pub(crate) fn put(&self, name: &str, bytes: &[u8]) -> Result<(), FolderError> {
        replace(&self.path.join(name), bytes)
    }

    /// Takes a file away; one that is not there is away already.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn remove(&self, name: &str) -> Result<(), FolderError> {
        match fs::remove_file(self.path.join(name)) {
            Ok(()) => Ok(()),
            Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
            Err(error) => Err(error.into()),
        }
    }
}

fn make(path: &Path) -> std::io::Result<()> {
    fs::DirBuilder::new().recursive(true).mode(0o700).create(path)
}

/// Writes beside, syncs, gives the name, syncs the folder: whole or not there.
///
/// # Errors
/// [`FolderError`]; what had the name before is then still there.
pub(crate) fn replace(path: &Path, bytes: &[u8]) -> Result<(), FolderError> {
    let aside = path.with_extension("new");
    let write = || -> std::io::Result<()> {
        let mut options = fs::OpenOptions::new();
        let mut file = options.write(true).create(true).truncate(true).mode(0o600).open(&aside)?;
        file.write_all(bytes)?;
        file.sync_all()?;
        fs::rename(&aside, path)?;
        match path.parent() {
            Some(folder) => File::open(folder)?.sync_all(),
            None => Ok(()),
        }
    };
    write().map_err(|error| {
        // Half a file is none; that it cannot be taken away changes nothing.
        let _ = fs::remove_file(&aside);
        error.into()
    })
}

#[cfg(test)]
mod tests {
    use std::os::unix::fs::PermissionsExt;

    use super::*;

    #[test]
    fn one_program_has_the_folder_and_nobody_else_reads_it() {
        let room = tempfile::tempdir().unwrap();
        let path = room.path().join("desk");
        let folder = Folder::take(&path).unwrap();
        assert!(matches!(Folder::take(&path), Err(Failure::Else(_))), "held by another");
        assert_eq!(fs::metadata(&path).unwrap().permissions().mode() & 0o777, 0o700);
        drop(folder);
        Folder::take(&path).unwrap();
    }

    #[test]
    fn a_file_is_put_whole_and_read_again() {
        let room = tempfile::tempdir().unwrap();
        let folder = Folder::take(room.path()).unwrap();
        assert_eq!(folder.read("keys").unwrap(), None);
        folder.put("keys", b"one").unwrap();
        folder.put("keys", b"two").unwrap();
        assert_eq!(folder.read("keys").unwrap().unwrap(), b"two");
        let about = fs::metadata(room.path().join("keys")).unwrap();
        assert_eq!(about.permissions().mode() & 0o777, 0o600);
        let names = fs::read_dir(room.path()).unwrap().count();
        assert_eq!(names, 2, "keys and lock, nothing aside");
        folder.remove("keys").unwrap();
        folder.remove("keys").unwrap();
        assert_eq!(folder.read("keys").unwrap(), None);
        // A name that cannot be given leaves nothing behind.
        fs::create_dir(room.path().join("taken")).unwrap();
        assert_eq!(folder.put("taken", b"x"), Err(FolderError::Failed));
        assert!(!room.path().join("taken.new").exists());
    }
}
