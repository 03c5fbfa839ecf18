//! What the core needs from outside: files, random bytes, and the keeping of one key.
//!
//! Each need is a small trait, so that a test can stand in for the outside: a disk that forgets
//! whatever was not synced, random bytes that are the same every time. The real ones are
//! [`RealDisk`] and [`OsRandom`]; the phones bring a [`KeyKeeper`] of their own, the desk and the
//! try-out use [`PassphraseKeeper`].
//!
//! A port decides nothing: what a damaged byte means belongs to [`crate::diary::store`].

mod coded;
mod disk;
mod keys;
mod marks;
mod passphrase;
mod random;
mod real_disk;
#[cfg(any(test, feature = "sim"))]
pub mod sim;
mod stretched;

pub use coded::CodedKeeper;
pub use disk::{Disk, DiskError, DiskFile, DiskLock, SyncFor};
pub use keys::{DataKey, KeeperError, KeeperKind, KeyKeeper, WRAP_MOST};
pub use marks::{MARK_MOST, MarkError, MarkKeeper, NoMarks};
pub(crate) use passphrase::stretch;
pub use passphrase::{EmptyPassphrase, Passphrase, PassphraseKeeper, Stretch};
pub use random::{OsRandom, Random, RandomError};
pub use real_disk::RealDisk;
