//! The words told at the visit, by which a sealed link is opened. They are spoken, never printed beside it.

use std::fmt;

use zeroize::Zeroizing;

use super::key_words::words;
use crate::ports::{Random, RandomError};
use crate::sealing::{TypedError, typed_words};

/// How many words are spoken. Eleven bits a word make 44, behind a costly stretching: enough that a sheet
/// found or photographed does not open; a determined agency with a hall of machines is another matter.
pub const SPOKEN_WORDS: usize = 4;

/// The words of one link. Wiped when dropped, never printed.
pub struct SpokenWords(Zeroizing<String>);

/// What is wrong with words as typed. Never holds a word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SpokenError {
    /// Word `number`, counted from 1, is not in the list.
    #[error("Word {number} is not one of the list; check its spelling.")]
    NotInList {
        /// Which word, counted from 1.
        number: usize,
    },
    /// Another number of words.
    #[error("{} words are needed; type them all, in their order, and nothing else.", SPOKEN_WORDS)]
    Count,
}

impl SpokenWords {
    /// New words.
    ///
    /// # Errors
    /// [`RandomError`] when there are no random bytes.
    pub fn new(random: &dyn Random) -> Result<Self, RandomError> {
        let mut bytes = Zeroizing::new([0u8; (SPOKEN_WORDS * 11).div_ceil(8)]);
        random.fill(bytes.as_mut_slice())?;
        Ok(Self(Zeroizing::new(words(bytes.as_slice(), SPOKEN_WORDS).join(" "))))
    }

    /// Reads typed words. Case, spaces, line breaks, commas and accents do not matter; the first four
    /// letters of a word are enough.
    ///
    /// # Errors
    /// [`SpokenError`] says which word is wrong, without the word.
    pub fn parse(text: &str) -> Result<Self, SpokenError> {
        typed_words(text, SPOKEN_WORDS).map(Self).map_err(|error| match error {
            TypedError::NotInList { number } => SpokenError::NotInList { number },
            TypedError::TooFew { .. } | TypedError::TooMany => SpokenError::Count,
        })
    }

    /// The words in order, to be said and not printed.
    pub fn words(&self) -> impl Iterator<Item = &str> + '_ {
        self.0.split(' ')
    }

    /// What seals: the words in lower case with one space between.
    pub(super) fn secret(&self) -> &[u8] {
        self.0.as_bytes()
    }
}

impl fmt::Debug for SpokenWords {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SpokenWords(secret)")
    }
}
