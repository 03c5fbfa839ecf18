//! A summary that comes back: how much is read, what is checked first, and what each refusal says.
//!
//! In this order: the size; whether it is sealed; the signature over the exact bytes; then the summary
//! itself, strictly. Nothing of a summary is looked at before its signature holds.

use std::io::Read;

use serde::Deserialize;
use sha2::{Digest as _, Sha256};

use super::digest::SummaryId;
use super::envelope;
use super::form::{Form, Summary, VERSION};
use super::identity::Pin;
use crate::diary::entry::Content;
use crate::programme::read::read as read_programme;
use crate::programme::strict;
use crate::sealing::{self, OpenError, OpenWith};

/// The longest summary that is read, in bytes, sealed or open. Ten years of three sessions a day, with every
/// suggestion looked at, come to about a third of it.
pub const MOST_BYTES: usize = 32 * 1024 * 1024;

/// A summary that was read, and whom it comes from.
pub struct Received {
    /// What stands in it.
    pub summary: Summary,
    /// The diary and the key that signed it, to keep and compare.
    pub from: Pin,
    /// Whether it came sealed.
    pub sealed: bool,
    /// What it is known by, to notice when the same one comes again.
    pub id: SummaryId,
}

impl std::fmt::Debug for Received {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Received(..)")
    }
}

/// Why a summary was not read. Each says what to do next, and nothing of what stands in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SummaryError {
    /// Longer than a summary can be.
    #[error("This file is longer than a summary can be; check that it is the right file.")]
    TooLong,
    /// It cannot be read at all.
    #[error("This file cannot be read; check its name, and that it was copied whole.")]
    Unreadable,
    /// Something else.
    #[error("This is not a Frond summary; check that it is the right file.")]
    NotASummary,
    /// It begins like one and breaks off or is broken.
    #[error(
        "This summary is damaged at line {line}, column {column}; ask for the file to be sent again."
    )]
    Garbled {
        /// Line.
        line: usize,
        /// Column, in bytes.
        column: usize,
    },
    /// It does not fit the published form, although the signature holds.
    #[error(
        "This summary is not in the form that this Frond knows; update Frond, or ask for it again."
    )]
    Form,
    /// A newer version.
    #[error("This summary was made by a newer Frond; update Frond to read it.")]
    Newer,
    /// Sealed, and nothing was given to open it with.
    #[error("This summary is sealed; give the passphrase or the key file that it was sealed to.")]
    Sealed,
    /// It could not be unsealed.
    #[error("The summary is sealed: {0}.")]
    Seal(#[from] OpenError),
    /// The signature does not hold.
    #[error(
        "The signature does not fit: something in this summary was changed after it was made. Do not rely on it; ask for it again."
    )]
    Signature,
    /// Another diary than the one known.
    #[error(
        "This summary comes from another diary than the one you know; ask whether it is the right person's."
    )]
    OtherDiary,
    /// The same diary, another key.
    #[error(
        "This summary names the diary you know and is signed with another key; ask the person whether she began anew or moved to another phone before you rely on it."
    )]
    OtherKey,
}

/// Reads a file or stream, at most [`MOST_BYTES`] of it.
///
/// # Errors
/// [`SummaryError::TooLong`] where there is more; [`SummaryError::Unreadable`].
pub fn read_bounded(from: impl Read) -> Result<Vec<u8>, SummaryError> {
    let mut bytes = Vec::new();
    from.take(MOST_BYTES as u64 + 1)
        .read_to_end(&mut bytes)
        .map_err(|_| SummaryError::Unreadable)?;
    if bytes.len() > MOST_BYTES { Err(SummaryError::TooLong) } else { Ok(bytes) }
}

/// Reads a signed summary that is not sealed, or no longer.
fn open_signed(bytes: &[u8], sealed: bool) -> Result<Received, SummaryError> {
    if bytes.len() > MOST_BYTES {
        return Err(SummaryError::TooLong);
    }
    let (inner, key) = envelope::open(bytes)?;
    let summary = parse(inner)?;
    let from = Pin { diary: summary.diary, key };
    let id =
        SummaryId(Sha256::new().chain_update(key.to_bytes()).chain_update(inner).finalize().into());
    Ok(Received { summary, from, sealed, id })
}

/// The inner part, after its signature held.
fn parse(inner: &[u8]) -> Result<Summary, SummaryError> {
    /// Only as much as tells whether the rest can be understood.
    #[derive(Deserialize)]
    struct Head {
        form: Option<String>,
        version: Option<u64>,
    }
    let head: Head = serde_json::from_slice(inner).map_err(|_| SummaryError::Form)?;
    if head.form.as_deref() != Some(Form::NAME) {
        return Err(SummaryError::NotASummary);
    }
    match head.version {
        Some(version) if version > u64::from(VERSION) => return Err(SummaryError::Newer),
        Some(version) if version == u64::from(VERSION) => {}
        _ => return Err(SummaryError::Form),
    }
    let summary: Summary = strict::from_slice(inner, MOST_BYTES).map_err(|_| SummaryError::Form)?;
    // A plan that came from outside is read as strictly as when it is accepted.
    let plans = summary.entries.iter().filter_map(|entry| match &entry.what {
        Content::Correction { content, .. } => carried(content),
        content => carried(content),
    });
    for plan in plans {
        read_programme(plan.as_bytes()).map_err(|_| SummaryError::Form)?;
    }
    Ok(summary)
}

fn carried(content: &Content) -> Option<&str> {
    match content {
        Content::ProgrammeAccepted { carried, .. } => Some(carried),
        _ => None,
    }
}

/// Reads a summary, sealed or open.
///
/// # Errors
/// [`SummaryError`], one for each thing to do next.
pub fn open_summary(bytes: &[u8], with: Option<&OpenWith>) -> Result<Received, SummaryError> {
    if bytes.len() > MOST_BYTES {
        return Err(SummaryError::TooLong);
    }
    if !sealing::is_age(bytes) {
        return open_signed(bytes, false);
    }
    let with = with.ok_or(SummaryError::Sealed)?;
    open_signed(&sealing::open(bytes, with, MOST_BYTES as u64)?, true)
}

impl Received {
    /// Compares with what is known of this diary.
    ///
    /// # Errors
    /// [`SummaryError::OtherDiary`] or [`SummaryError::OtherKey`].
    pub fn pinned(self, pin: &Pin) -> Result<Self, SummaryError> {
        if self.from.diary != pin.diary {
            return Err(SummaryError::OtherDiary);
        }
        if self.from.key != pin.key {
            return Err(SummaryError::OtherKey);
        }
        Ok(self)
    }
}
