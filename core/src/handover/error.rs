//! What can be wrong with something handed over. Each is one sentence that says what to do next, and nothing
//! of what stands in the programme.

use super::spoken::SpokenError;
use crate::programme::check::LoadError;

/// Why nothing was handed over, or nothing taken.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum HandOverError {
    /// Longer than such a file or link can be.
    #[error("This is longer than a plan can be; check that it is the right file.")]
    TooLong,
    /// A file without a signature.
    #[error("This file is not a signed plan; choose the file that the clinic handed over.")]
    NotSigned,
    /// Text that is no link.
    #[error("This is not a link to a plan; copy the whole line that begins with FROND:")]
    NotALink,
    /// Made by a later version.
    #[error("This plan was handed over by a newer Frond; update this one to read it.")]
    Newer,
    /// The file's outer form is not as it was written.
    #[error("This file was changed or cut short on its way; ask for it to be sent again.")]
    Damaged,
    /// A character of the link is wrong or missing.
    #[error("This link is incomplete or a letter of it is wrong; scan or copy it once more.")]
    Garbled,
    /// The signature is not that of these bytes and this key.
    #[error(
        "The signature does not fit: this plan was changed, or was made by somebody else; do not use \
         it, and ask the clinic for it again."
    )]
    NotGenuine,
    /// The link is sealed, and no words were given.
    #[error("This link is sealed; type the {} words that you were told.", super::SPOKEN_WORDS)]
    WordsNeeded,
    /// Something is wrong with the words as typed.
    #[error(transparent)]
    Words(#[from] SpokenError),
    /// Words of the list, but not those of this link.
    #[error("These words do not open this link; check them, or ask the clinic for the right ones.")]
    WrongWords,
    /// It is too long for one code.
    #[error(
        "This plan is too long for one QR code: its link has {characters} characters and {} is the \
         most; hand over the file instead.",
        super::LINK_MOST
    )]
    TooLarge {
        /// How many characters the link would have.
        characters: usize,
    },
    /// What is carried is no programme that can be used.
    #[error("{0}")]
    Programme(LoadError),
    /// The device cannot give the memory or the random bytes that sealing needs.
    #[error("This device has no room to do that just now; close other programs and try again.")]
    NoRoom,
}

impl HandOverError {
    /// Whether the spoken words are missing or wrong, so that typing them again may help.
    #[must_use]
    pub fn asks_words(&self) -> bool {
        matches!(self, Self::WordsNeeded | Self::Words(_) | Self::WrongWords)
    }
}

impl From<LoadError> for HandOverError {
    fn from(error: LoadError) -> Self {
        Self::Programme(error)
    }
}
