//! Random bytes.

use std::fmt;

/// No random bytes could be had; nothing may be sealed without them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("the system gave no random bytes; restart the device and try again")]
pub struct RandomError;

/// A source of bytes that nobody can guess.
pub trait Random: Send + Sync + fmt::Debug {
    /// Fills `out` with random bytes.
    ///
    /// # Errors
    /// [`RandomError`] when the source fails; `out` must then not be used.
    fn fill(&self, out: &mut [u8]) -> Result<(), RandomError>;
}

/// The operating system's randomness.
#[derive(Debug, Clone, Copy, Default)]
pub struct OsRandom;

impl Random for OsRandom {
    #[allow(clippy::disallowed_methods, reason = "this is the port: the one place that may ask")]
    fn fill(&self, out: &mut [u8]) -> Result<(), RandomError> {
        getrandom::fill(out).map_err(|_| RandomError)
    }
}
