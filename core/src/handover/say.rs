//! The same sentences as [`HandOverError`], in the person's language.

use super::{HandOverError, LINK_MOST, SPOKEN_WORDS, SpokenError};
use crate::words::Words;

impl HandOverError {
    /// What is wrong and what to do next.
    #[must_use]
    pub fn say(&self, words: &Words) -> String {
        match self {
            Self::TooLong => words.text("handover-too-long", &[]),
            Self::NotSigned => words.text("handover-not-signed", &[]),
            Self::NotALink => words.text("handover-not-a-link", &[]),
            Self::Newer => words.text("handover-newer", &[]),
            Self::Damaged => words.text("handover-damaged", &[]),
            Self::Garbled => words.text("handover-garbled", &[]),
            Self::NotGenuine => words.text("handover-not-genuine", &[]),
            Self::WordsNeeded => {
                words.text("handover-words-needed", &[("count", SPOKEN_WORDS.into())])
            }
            Self::Words(SpokenError::NotInList { number }) => {
                words.text("handover-word-not-listed", &[("number", (*number).into())])
            }
            Self::Words(SpokenError::Count) => {
                words.text("handover-words-count", &[("count", SPOKEN_WORDS.into())])
            }
            Self::WrongWords => words.text("handover-wrong-words", &[]),
            Self::TooLarge { characters } => words.text(
                "handover-too-large",
                &[("characters", (*characters).into()), ("most", LINK_MOST.into())],
            ),
            Self::Programme(error) => {
                words.text("refusal-plan", &[("why", error.to_string().into())])
            }
            Self::NoRoom => words.text("handover-no-room", &[]),
        }
    }
}
