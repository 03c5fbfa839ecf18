//! The file system, as far as the diary needs it.
//!
//! Only what is needed is here: positioned reads and writes, two syncs, names, one lock. Every
//! sync says what it is for ([`SyncFor`]): a test can leave out one of them by name and show that
//! something is then lost at a power cut, so no sync stands here out of habit.

use std::fmt;
use std::path::Path;

/// What went wrong at the file system. Carries no path and no content.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum DiskError {
    /// Nothing has this name.
    #[error("the file is not there")]
    NotFound,
    /// Something has this name already.
    #[error("the file is there already")]
    Exists,
    /// No room is left on the disk.
    #[error("the disk is full")]
    Full,
    /// Another opener holds the lock.
    #[error("another program holds the file")]
    Locked,
    /// The file may not be read or changed by this user, or the disk is read-only.
    #[error("the file may not be changed")]
    Denied,
    /// Anything else the operating system reports.
    #[error("the disk failed ({0})")]
    Failed(std::io::ErrorKind),
}

/// What a sync protects. Left out, exactly this is lost at a power cut.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SyncFor {
    /// The name of the diary's folder in the folder above it.
    FolderName,
    /// The content of a new `keys` file, before it takes its name.
    KeysContent,
    /// The name `keys`, before a journal exists that needs it.
    KeysName,
    /// The content of a new journal, before it takes its name.
    JournalContent,
    /// The name `journal`, before the first acknowledgement.
    JournalName,
    /// A fresh run of zeros at the journal's end, before a frame is written into it.
    Zeros,
    /// An entry, before it is acknowledged.
    Entry,
    /// The last entry found at opening, before it is shown.
    Settled,
    /// The names found at opening, before anything behind them is shown: whoever gave them may have
    /// been killed before syncing them.
    NamesSettled,
    /// The name of the folder for kept bytes.
    AsideFolder,
    /// The kept bytes, before the file they came from changes.
    AsideContent,
    /// The name of the kept bytes, before the file they came from changes.
    AsideName,
    /// The content of a sealed file, before it replaces the older one.
    SealedContent,
    /// The name of a sealed file, before its saving is acknowledged.
    SealedName,
    /// The names of the new keys and the new journal, before the file that says they are to be used.
    StagedNames,
    /// The name of the file that says so: from here on the old state never comes back.
    Switched,
    /// The zeros over what must open to nobody any more, before it loses its name.
    Shredded,
    /// The new names, and the removal of what belonged to the old state, before the file that asks
    /// for it goes.
    SwitchCarriedOut,
    /// The name of the folder for backups.
    BackupFolder,
    /// The content of a backup, before it takes its name.
    BackupContent,
    /// The name of a backup, before an older one goes.
    BackupName,
    /// A wrong try of a code, before the code is looked at. It lies beside the diary and is no part of it.
    Tries,
}

impl SyncFor {
    /// Every purpose of the diary's own files, for tests that leave out one after the other.
    pub const ALL: [SyncFor; 21] = [
        SyncFor::FolderName,
        SyncFor::KeysContent,
        SyncFor::KeysName,
        SyncFor::JournalContent,
        SyncFor::JournalName,
        SyncFor::Zeros,
        SyncFor::Entry,
        SyncFor::Settled,
        SyncFor::NamesSettled,
        SyncFor::AsideFolder,
        SyncFor::AsideContent,
        SyncFor::AsideName,
        SyncFor::SealedContent,
        SyncFor::SealedName,
        SyncFor::StagedNames,
        SyncFor::Switched,
        SyncFor::Shredded,
        SyncFor::SwitchCarriedOut,
        SyncFor::BackupFolder,
        SyncFor::BackupContent,
        SyncFor::BackupName,
    ];
}

/// Files and folders by path.
///
/// Paths are whatever the caller composes; an implementation gives them no meaning of its own.
pub trait Disk: Send + Sync + fmt::Debug {
    /// Makes the folder, readable by its owner only. The folder above must exist.
    ///
    /// # Errors
    /// [`DiskError::Exists`] when something has that name.
    fn create_folder(&self, folder: &Path) -> Result<(), DiskError>;

    /// The names directly in the folder, in no particular order.
    ///
    /// # Errors
    /// [`DiskError::NotFound`] when the folder is not there.
    fn list(&self, folder: &Path) -> Result<Vec<String>, DiskError>;

    /// Makes a new, empty file, readable and writable by its owner only.
    ///
    /// # Errors
    /// [`DiskError::Exists`] when something has that name.
    fn create(&self, path: &Path) -> Result<Box<dyn DiskFile>, DiskError>;

    /// Opens a file that exists, to read and write.
    ///
    /// # Errors
    /// [`DiskError::NotFound`] when it is not there.
    fn open(&self, path: &Path) -> Result<Box<dyn DiskFile>, DiskError>;

    /// Gives the file another name in the same folder, replacing what had it, all or nothing.
    ///
    /// # Errors
    /// [`DiskError::NotFound`] when there is no such file.
    fn rename(&self, from: &Path, to: &Path) -> Result<(), DiskError>;

    /// Removes a file.
    ///
    /// # Errors
    /// [`DiskError::NotFound`] when there is no such file.
    fn remove(&self, path: &Path) -> Result<(), DiskError>;

    /// Returns once the names in this folder would survive a power cut.
    ///
    /// # Errors
    /// Any; the caller must then assume that they would not.
    fn sync_folder(&self, folder: &Path, why: SyncFor) -> Result<(), DiskError>;

    /// Takes the one exclusive lock, making the file if needed. Dropping the value gives it back,
    /// and so does the end of the process.
    ///
    /// # Errors
    /// [`DiskError::Locked`] when another opener, in this process or another, holds it.
    fn lock(&self, path: &Path) -> Result<Box<dyn DiskLock>, DiskError>;
}

/// One open file.
pub trait DiskFile: Send + Sync + fmt::Debug {
    /// How many bytes the file has.
    ///
    /// # Errors
    /// Whatever the file system reports.
    fn length(&self) -> Result<u64, DiskError>;

    /// Fills `out` from `offset` on as far as the file goes; returns how many bytes that were.
    ///
    /// # Errors
    /// Whatever the file system reports; `out` is then undefined.
    fn read_at(&self, offset: u64, out: &mut [u8]) -> Result<usize, DiskError>;

    /// Writes all of `bytes` at `offset`, making the file longer if needed.
    ///
    /// # Errors
    /// Any; some of the bytes may have been written.
    fn write_at(&self, offset: u64, bytes: &[u8]) -> Result<(), DiskError>;

    /// Returns once content and length would survive a power cut.
    ///
    /// # Errors
    /// Any. Asking again proves nothing: the operating system may have given up the bytes and
    /// call them clean. The caller must treat the handle as dead.
    fn sync_data(&self, why: SyncFor) -> Result<(), DiskError>;
}

/// A held lock; see [`Disk::lock`].
pub trait DiskLock: Send + Sync + fmt::Debug {}
