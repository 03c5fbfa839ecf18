//! One small error per operation. Each message says what the person can do; none carries content.

use super::layout::{ENTRY_MOST, Seq};
use crate::ports::{DiskError, KeeperError, RandomError};

/// Why no diary was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum CreateError {
    /// A diary is in this folder already.
    #[error("there is a diary in this folder already; open it, or choose an empty folder")]
    AlreadyThere,
    /// Another program has the folder.
    #[error("another program is using this folder; close it and try again")]
    InUse,
    /// No room.
    #[error("the disk is full; free some space and try again")]
    DiskFull,
    /// The key keeper did not wrap the key.
    #[error(transparent)]
    Keeper(#[from] KeeperError),
    /// The keeper's wrap is too long to be stored.
    #[error("the key keeper gave a key that is too long to store; update the app")]
    WrapTooLong,
    /// No random bytes.
    #[error(transparent)]
    Random(#[from] RandomError),
    /// The file system failed.
    #[error("the folder could not be written ({0}); choose another one")]
    Disk(DiskError),
}

impl From<DiskError> for CreateError {
    fn from(error: DiskError) -> Self {
        match error {
            DiskError::Full => Self::DiskFull,
            DiskError::Locked => Self::InUse,
            other => Self::Disk(other),
        }
    }
}

/// Why a diary did not open. None of these has changed anything on disk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum OpenError {
    /// There is no diary here.
    #[error("there is no diary in this folder; check the folder, or start a new diary")]
    NotADiary,
    /// Another program has it open.
    #[error("this diary is open already; close it there and try again")]
    InUse,
    /// A newer program wrote it.
    #[error("this diary was written by a newer version; update the app to open it")]
    NewerFormat,
    /// The keeper has no wrap in this diary.
    #[error("this diary was not set up to be opened this way; use the way it was made with")]
    NoWrap,
    /// The keeper did not give the key.
    #[error(transparent)]
    Keeper(#[from] KeeperError),
    /// Both copies of the keys are damaged.
    #[error("the keys of this diary are damaged; restore it from a backup")]
    KeysDamaged,
    /// The keys file is gone.
    #[error("the keys of this diary are missing; restore it from a backup")]
    KeysMissing,
    /// The key is right for the keys file, but the journal was made under another one.
    #[error("keys and journal do not belong together; put back the files that do, or a backup")]
    KeysDoNotFit,
    /// The journal is gone while the keys are there.
    #[error("the journal of this diary is missing; restore it from a backup")]
    JournalMissing,
    /// Both copies of the journal's header are damaged: nothing in it can be opened.
    #[error("the beginning of this diary is damaged; restore it from a backup")]
    HeaderDamaged,
    /// The file system failed.
    #[error("the diary could not be read ({0}); try again, or restore it from a backup")]
    Disk(DiskError),
}

impl From<DiskError> for OpenError {
    fn from(error: DiskError) -> Self {
        match error {
            DiskError::Locked => Self::InUse,
            other => Self::Disk(other),
        }
    }
}

/// Why an entry was not acknowledged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum AppendError {
    /// It is longer than [`ENTRY_MOST`]. Nothing was written.
    #[error("this is too long to be saved ({} bytes at most); shorten it", ENTRY_MOST)]
    TooLong,
    /// No room for more. Nothing was written; what is there is safe. Can be tried again.
    #[error("the disk is full and this was not saved; free some space and save again")]
    DiskFull,
    /// No random bytes. Nothing was written. Can be tried again.
    #[error(transparent)]
    Random(#[from] RandomError),
    /// The write or its sync failed, now or earlier. The entry may or may not be there at the next
    /// opening; this handle takes no more. Open the diary again, look whether the entry is there
    /// (by its own id), and append it if not.
    #[error("saving failed; close the diary, open it again, and check the last entry")]
    Poisoned,
    /// The diary is open for reading only; see `Findings::read_only`.
    #[error("the diary can only be read just now; free some space and open it again")]
    ReadOnly,
}

/// Why a snapshot or another sealed file was not saved. The older one is still there, and no entry
/// is in danger.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SaveError {
    /// The journal has no such entry, or its place is no longer known because the snapshot the
    /// diary was opened from is newer.
    #[error("entry {0} cannot be the end of a snapshot now")]
    NoSuchPlace(Seq),
    /// The diary is open for reading only.
    #[error("the diary can only be read just now; free some space and open it again")]
    ReadOnly,
    /// No random bytes.
    #[error(transparent)]
    Random(#[from] RandomError),
    /// No room.
    #[error("the disk is full; free some space")]
    DiskFull,
    /// The file system failed.
    #[error("the file could not be written ({0}); try again")]
    Disk(DiskError),
}

impl From<DiskError> for SaveError {
    fn from(error: DiskError) -> Self {
        match error {
            DiskError::Full => Self::DiskFull,
            other => Self::Disk(other),
        }
    }
}

/// Why the journal could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {
    /// The file system failed.
    #[error("the diary could not be read ({0}); close it and open it again")]
    Disk(DiskError),
}

impl From<DiskError> for ReadError {
    fn from(error: DiskError) -> Self {
        Self::Disk(error)
    }
}

/// Why a diary was not put under new keys, restored or ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum RenewError {
    /// The diary is open for reading only, or an earlier write failed. Nothing was changed.
    #[error("this cannot be done just now; open the diary again and try again")]
    NotNow,
    /// Another program has the folder. Nothing was changed.
    #[error("another program is using this folder; close it and try again")]
    InUse,
    /// No room. Nothing was changed.
    #[error("the disk is full and nothing was changed; free some space and try again")]
    DiskFull,
    /// A keeper did not do its part. Nothing was changed.
    #[error(transparent)]
    Keeper(#[from] KeeperError),
    /// A keeper's wrap is too long to be stored. Nothing was changed.
    #[error("the key keeper gave a key that is too long to store; update the app")]
    WrapTooLong,
    /// No random bytes. Nothing was changed.
    #[error(transparent)]
    Random(#[from] RandomError),
    /// The file system failed before anything was changed.
    #[error("the folder could not be written ({0}) and nothing was changed; try again")]
    Disk(DiskError),
    /// The file system failed on the way. Opening the diary finishes it, or finds the old one.
    #[error("this was interrupted; open the diary again, which goes on with it")]
    OpenAgain,
}

impl From<DiskError> for RenewError {
    fn from(error: DiskError) -> Self {
        match error {
            DiskError::Full => Self::DiskFull,
            DiskError::Locked => Self::InUse,
            other => Self::Disk(other),
        }
    }
}

/// Why no backup was made. Earlier backups are still there, and no entry is in danger.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum BackupError {
    /// The diary is open for reading only, or an earlier write failed.
    #[error("no backup can be made just now; open the diary again and try again")]
    NotNow,
    /// Something in the diary does not verify.
    #[error("the diary has to be opened again to be repaired before a backup is made")]
    Damaged,
    /// No room.
    #[error("the disk is full; free some space for the backup")]
    DiskFull,
    /// No random bytes.
    #[error(transparent)]
    Random(#[from] RandomError),
    /// The file system failed.
    #[error("the backup could not be written ({0}); try again")]
    Disk(DiskError),
}

impl From<DiskError> for BackupError {
    fn from(error: DiskError) -> Self {
        match error {
            DiskError::Full => Self::DiskFull,
            other => Self::Disk(other),
        }
    }
}
