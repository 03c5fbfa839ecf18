//! One file that came from outside. Decides what may come in: nothing of it is believed, shown or kept before
//! its seal opened and its signature held. Leaves to the core what a summary is, to [`super::pins`] whose.

use frond_core::sealing::{self, OpenError, OpenWith, Recipient, SealTo};
use frond_core::summary::{Digest, MOST_BYTES, Received, SummaryError, SummaryId, open_summary};
use serde::Deserialize;
use zeroize::Zeroizing;

use crate::clinic::folder::FolderError;

/// What became of a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Taken {
    /// It is kept, and the newest of its diary.
    New(SummaryId),
    /// It is kept, and an older one than is there of its diary: an earlier one that comes late, or one that
    /// somebody sends again in the place of the newest.
    Older(SummaryId),
    /// It is there already.
    Known(SummaryId),
}

/// Why a file was not taken. Nothing of it was kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Refused {
    /// Not a summary, or not one to be relied on.
    Summary(SummaryError),
    /// Another program's health record.
    OtherRecord,
    /// Sealed with a passphrase that was not given.
    NeedsPassphrase,
    /// A diary that is known, with a key that is not.
    OtherKey,
    /// It could not be read.
    Unreadable,
    /// It could not be sealed.
    NotSealed,
    /// It could not be kept.
    Folder(FolderError),
}

impl From<SummaryError> for Refused {
    fn from(error: SummaryError) -> Self {
        Self::Summary(error)
    }
}

/// A summary that opened and was checked, with what is to be kept of it.
pub(crate) struct Arrived {
    /// The summary.
    pub(crate) received: Received,
    /// What is kept beside it.
    pub(crate) digest: Digest,
    /// The signed bytes, where they are to be sealed to the clinic before they touch the disk; `None` where the
    /// file came sealed to it.
    seal: Option<Zeroizing<Vec<u8>>>,
}

/// Opens and checks a file.
///
/// # Errors
/// [`Refused`].
pub(crate) fn arrive(
    bytes: &[u8],
    own: &OpenWith,
    passphrase: Option<&OpenWith>,
) -> Result<Arrived, Refused> {
    if bytes.len() > MOST_BYTES {
        return Err(SummaryError::TooLong.into());
    }
    if !sealing::is_age(bytes) {
        let received = open_summary(bytes, None).map_err(|error| named(error, bytes))?;
        return Ok(arrived(received, Some(Zeroizing::new(bytes.to_vec()))));
    }
    let most = MOST_BYTES as u64;
    match sealing::open(bytes, own, most) {
        Ok(plain) => Ok(arrived(inside(&plain)?, None)),
        Err(OpenError::NeedsPassphrase) => {
            let words = passphrase.ok_or(Refused::NeedsPassphrase)?;
            let plain = sealing::open(bytes, words, most)
                .map_err(|error| Refused::Summary(error.into()))?;
            Ok(arrived(inside(&plain)?, Some(plain)))
        }
        Err(error) => Err(Refused::Summary(error.into())),
    }
}

/// What was in a sealed file.
fn inside(plain: &[u8]) -> Result<Received, Refused> {
    let mut received = open_summary(plain, None).map_err(|error| match error {
        // A seal in a seal is nothing that anyone makes.
        SummaryError::Sealed => Refused::Summary(SummaryError::NotASummary),
        other => named(other, plain),
    })?;
    received.sealed = true;
    Ok(received)
}

fn arrived(received: Received, seal: Option<Zeroizing<Vec<u8>>>) -> Arrived {
    Arrived { digest: Digest::of(&received), received, seal }
}

/// A health record of another program has a sentence of its own.
fn named(error: SummaryError, bytes: &[u8]) -> Refused {
    #[derive(Deserialize)]
    struct Head {
        #[serde(rename = "resourceType")]
        _kind: String,
    }
    let other = error == SummaryError::NotASummary && serde_json::from_slice::<Head>(bytes).is_ok();
    if other { Refused::OtherRecord } else { error.into() }
}

impl Arrived {
    /// The bytes to keep: as they came, or sealed to the clinic.
    ///
    /// # Errors
    /// [`Refused::NotSealed`].
    pub(crate) fn sealed(
        &self,
        came: &[u8],
        clinic: Option<&Recipient>,
    ) -> Result<Vec<u8>, Refused> {
        match &self.seal {
            None => Ok(came.to_vec()),
            Some(plain) => {
                let to = SealTo::Recipients(clinic.into_iter().cloned().collect());
                sealing::seal(plain, &to).map_err(|_| Refused::NotSealed)
            }
        }
    }
}
