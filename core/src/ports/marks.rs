//! The keeping of one mark outside the diary's folder, by which an older copy of the whole folder is
//! noticed. What a mark says is decided in [`crate::diary::store`]; a keeper only keeps its bytes.

use std::fmt;

/// The longest mark, in bytes.
pub const MARK_MOST: usize = 128;

/// The keeper could not read or write just now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("the mark outside the diary could not be read or kept just now")]
pub struct MarkError;

/// Keeps the latest mark of each diary where a copy of the diary's folder does not bring it back: a
/// phone's key store, or a folder of the program's own.
///
/// Called while the diary is open; must not call back. A mark tells nothing of what was written.
pub trait MarkKeeper: Send + Sync + fmt::Debug {
    /// Keeps the mark in place of the one before it.
    ///
    /// # Errors
    /// [`MarkError`]; the older mark is then still there.
    fn keep(&self, diary: &[u8; 16], mark: &[u8]) -> Result<(), MarkError>;

    /// The mark kept last; `None` where there is none.
    ///
    /// # Errors
    /// [`MarkError`] when it cannot be read now.
    fn kept(&self, diary: &[u8; 16]) -> Result<Option<Vec<u8>>, MarkError>;

    /// Removes the mark, if there is one: the diary was erased.
    ///
    /// # Errors
    /// [`MarkError`] when it is still there.
    fn forget(&self, diary: &[u8; 16]) -> Result<(), MarkError>;
}

/// Keeps no mark: an older copy of the whole folder passes unnoticed.
#[derive(Debug, Clone, Copy, Default)]
pub struct NoMarks;

impl MarkKeeper for NoMarks {
    fn keep(&self, _: &[u8; 16], _: &[u8]) -> Result<(), MarkError> {
        Ok(())
    }

    fn kept(&self, _: &[u8; 16]) -> Result<Option<Vec<u8>>, MarkError> {
        Ok(None)
    }

    fn forget(&self, _: &[u8; 16]) -> Result<(), MarkError> {
        Ok(())
    }
}
