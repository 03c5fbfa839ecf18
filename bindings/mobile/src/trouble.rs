//! What went wrong, one variant for each thing the person can do next, as the core's
//! [`Trouble`] has it. Each says it in words already chosen; nothing here carries anything
//! she wrote.

use std::sync::{PoisonError, RwLock};

use frond_core::companion::Trouble;
use frond_core::words::Words;

/// Why a request was not answered.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum FrondError {
    /// What was asked cannot be done as asked.
    #[error("{says}")]
    PutRight {
        /// In words.
        says: String,
    },
    /// No room.
    #[error("{says}")]
    FreeSpace {
        /// In words.
        says: String,
    },
    /// The diary has to be opened again.
    #[error("{says}")]
    OpenAgain {
        /// In words.
        says: String,
    },
    /// The diary can only be read just now.
    #[error("{says}")]
    ReadOnly {
        /// In words.
        says: String,
    },
    /// Another program has it open.
    #[error("{says}")]
    CloseElsewhere {
        /// In words.
        says: String,
    },
    /// A newer program wrote it.
    #[error("{says}")]
    Update {
        /// In words.
        says: String,
    },
    /// It opens with a code, and none was given.
    #[error("{says}")]
    CodeAsked {
        /// In words.
        says: String,
    },
    /// What was typed does not open it.
    #[error("{says}")]
    WrongSecret {
        /// In words.
        says: String,
    },
    /// The recovery phrase does not open the copy.
    #[error("{says}")]
    WrongPhrase {
        /// In words.
        says: String,
    },
    /// It has to be restored.
    #[error("{says}")]
    Restore {
        /// In words.
        says: String,
    },
    /// There is no diary yet.
    #[error("{says}")]
    NotADiary {
        /// In words.
        says: String,
    },
    /// There is a diary already.
    #[error("{says}")]
    AlreadyThere {
        /// In words.
        says: String,
    },
    /// Try again; nothing was written.
    #[error("{says}")]
    TryAgain {
        /// In words.
        says: String,
    },
}

impl FrondError {
    /// The core's trouble, in words.
    #[must_use]
    pub fn of(trouble: &Trouble, words: &Words) -> Self {
        let says = trouble.say(words);
        match trouble {
            Trouble::PutRight(_) => Self::PutRight { says },
            Trouble::FreeSpace => Self::FreeSpace { says },
            Trouble::OpenAgain => Self::OpenAgain { says },
            Trouble::ReadOnly => Self::ReadOnly { says },
            Trouble::CloseElsewhere => Self::CloseElsewhere { says },
            Trouble::Update => Self::Update { says },
            Trouble::CodeAsked => Self::CodeAsked { says },
            Trouble::WrongSecret => Self::WrongSecret { says },
            Trouble::WrongPhrase => Self::WrongPhrase { says },
            Trouble::Restore => Self::Restore { says },
            Trouble::NotADiary => Self::NotADiary { says },
            Trouble::AlreadyThere => Self::AlreadyThere { says },
            Trouble::TryAgain => Self::TryAgain { says },
        }
    }
}

/// The language of what is said about a value that does not hold. A value is refused as it crosses, before
/// any object is asked, so this cannot lie in one.
static SPOKEN: RwLock<String> = RwLock::new(String::new());

/// From now on this language is spoken about values that do not hold.
pub(crate) fn speak(language: &str) {
    language.clone_into(&mut SPOKEN.write().unwrap_or_else(PoisonError::into_inner));
}

/// A value that does not hold, in the words with this id. UniFFI hands it to the caller as the error of the
/// call, because it is the error type that every call declares.
pub(crate) fn amiss(id: &str) -> uniffi::deps::anyhow::Error {
    let language = SPOKEN.read().unwrap_or_else(PoisonError::into_inner).clone();
    FrondError::PutRight { says: Words::for_language(&language).text(id, &[]) }.into()
}
