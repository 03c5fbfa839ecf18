//! What a command that failed says, and with which exit code.

use std::fmt;
use std::process::ExitCode;

use frond_core::companion::Trouble;
use frond_core::words::Words;

/// The language where no diary says another.
pub(crate) const LANGUAGE: &str = "en";

/// Why a command failed. The text says what to do next.
#[derive(Debug)]
pub(crate) enum Failure {
    /// What was given has to be put right; nothing was written. Exit code 2.
    Input(String),
    /// Something else is in the way. Exit code 1.
    Else(String),
}

impl Failure {
    /// What was given has to be put right.
    pub(crate) fn input(says: impl Into<String>) -> Self {
        Self::Input(says.into())
    }

    /// What the companion answered, in its own words.
    pub(crate) fn of(trouble: &Trouble, words: &Words) -> Self {
        let says = trouble.say(words);
        match trouble {
            Trouble::PutRight(_)
            | Trouble::WrongSecret
            | Trouble::CodeAsked
            | Trouble::WrongPhrase
            | Trouble::NotADiary
            | Trouble::AlreadyThere => Self::Input(says),
            Trouble::FreeSpace
            | Trouble::OpenAgain
            | Trouble::ReadOnly
            | Trouble::CloseElsewhere
            | Trouble::Update
            | Trouble::Restore
            | Trouble::TryAgain => Self::Else(says),
        }
    }

    /// The same with another text.
    pub(crate) fn saying(self, says: String) -> Self {
        match self {
            Self::Input(_) => Self::Input(says),
            Self::Else(_) => Self::Else(says),
        }
    }

    /// The exit code.
    pub(crate) fn code(&self) -> ExitCode {
        match self {
            Self::Input(_) => ExitCode::from(2),
            Self::Else(_) => ExitCode::from(1),
        }
    }
}

impl From<Trouble> for Failure {
    fn from(trouble: Trouble) -> Self {
        Self::of(&trouble, &Words::for_language(LANGUAGE))
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Input(says) | Self::Else(says) => f.write_str(says),
        }
    }
}
