//! How much of what comes from outside is read at all, so that a shell reads no byte more.

use frond_core::diary::portable::PORTABLE_MOST;
use frond_core::handover::{FILE_MOST, LINK_TEXT_MOST};

use crate::trouble::FrondError;

/// The most that is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Record)]
pub struct Limits {
    /// Of a link, in bytes of its text.
    pub link_bytes: i32,
    /// Of a plan's file, in bytes.
    pub plan_file_bytes: i32,
    /// Of a copy of a diary, in bytes.
    pub copy_bytes: i32,
}

/// The most that is read of each thing from outside.
///
/// # Errors
/// None so far: whatever crosses the border may fail.
#[uniffi::export]
pub fn limits() -> Result<Limits, FrondError> {
    let bytes = |most: u64| i32::try_from(most).unwrap_or(i32::MAX);
    Ok(Limits {
        link_bytes: bytes(LINK_TEXT_MOST as u64),
        plan_file_bytes: bytes(FILE_MOST as u64),
        copy_bytes: bytes(PORTABLE_MOST),
    })
}
