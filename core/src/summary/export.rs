//! The three ways a summary leaves: sealed to those the programme names, sealed to a passphrase, or open by
//! the person's explicit choice. Only a sealed one can carry the wish for time alone.

use std::io::Write;

use super::envelope;
use super::form::Summary;
use super::identity::DiaryIdentity;
use crate::programme::plan::Programme;
use crate::sealing::{self, Recipient, RecipientError, SealError, SealTo, Sealing};

/// Whether she would like time alone with whoever opens it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TimeAlone {
    /// "I would like time alone with you."
    Please,
    /// Not asked for.
    NotAsked,
}

/// Why no file was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ExportError {
    /// Sealing failed.
    #[error(transparent)]
    Seal(#[from] SealError),
    /// A key in the plan is none.
    #[error("a key in your plan cannot be used; tell your clinician, or choose a passphrase")]
    Recipient(#[from] RecipientError),
    /// The encoding failed.
    #[error("the summary could not be written; try again")]
    Encoding,
}

/// Those whom a programme names as readers of summaries.
///
/// # Errors
/// [`ExportError::Recipient`] for a key that is none; [`SealError::NoRecipient`] where it names nobody.
pub fn to_clinician(programme: &Programme) -> Result<SealTo, ExportError> {
    let keys: Result<Vec<Recipient>, RecipientError> =
        programme.recipients.iter().map(|one| Recipient::parse(one.key.as_str())).collect();
    let keys = keys?;
    if keys.is_empty() {
        return Err(SealError::NoRecipient.into());
    }
    Ok(SealTo::Recipients(keys))
}

impl Summary {
    /// The open form, signed: anyone who gets the file can read it. It never carries the wish for time
    /// alone.
    ///
    /// # Errors
    /// [`ExportError::Encoding`].
    pub fn open_form(&self, identity: &DiaryIdentity) -> Result<Vec<u8>, ExportError> {
        self.signed(identity, TimeAlone::NotAsked)
    }

    /// The sealed form: signed, then sealed.
    ///
    /// # Errors
    /// [`ExportError`].
    pub fn sealed_form(
        &self,
        identity: &DiaryIdentity,
        to: &SealTo,
        time_alone: TimeAlone,
    ) -> Result<Vec<u8>, ExportError> {
        Ok(sealing::seal(&self.signed(identity, time_alone)?, to)?)
    }

    /// The same, into a file that was begun before there was a summary. Stretching a passphrase takes 64 MiB, and
    /// gives them back: begun first, they never stand beside everything that ten years hold.
    ///
    /// # Errors
    /// [`ExportError`].
    pub fn sealed_into(
        &self,
        identity: &DiaryIdentity,
        mut file: Sealing<Vec<u8>>,
        time_alone: TimeAlone,
    ) -> Result<Vec<u8>, ExportError> {
        let signed = self.signed(identity, time_alone)?;
        file.write_all(&signed).map_err(|error| SealError::Write(error.kind()))?;
        Ok(file.finish()?)
    }

    fn signed(&self, identity: &DiaryIdentity, alone: TimeAlone) -> Result<Vec<u8>, ExportError> {
        let time_alone = alone == TimeAlone::Please;
        let told = Self { time_alone, diary: identity.id, ..self.clone() };
        let text = serde_json::to_string(&told).map_err(|_| ExportError::Encoding)?;
        envelope::close(text, identity).map_err(|_| ExportError::Encoding)
    }
}
