//! What can be wrong in one of these forms, and what to do about it. Nothing here holds what was typed.

use super::{FormField, Problem};
use crate::trouble::Trouble;
use crate::words::Words;

/// What is wrong in a form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amiss {
    /// No code was typed.
    CodeMissing,
    /// This is not the code.
    CodeWrong,
    /// The new code is too short.
    CodeTooShort {
        /// How many characters it has at least.
        least: u8,
    },
    /// The two codes differ.
    CodesDiffer,
    /// No passphrase was typed.
    PassphraseMissing,
    /// The two passphrases differ.
    PassphrasesDiffer,
    /// This is not the word on the paper.
    OtherWord,
    /// These are not twelve words that belong together.
    NotAPhrase,
    /// The twelve words do not open this diary.
    OtherPhrase,
    /// No file was chosen.
    FileMissing,
    /// Neither a file nor a link.
    LinkMissing,
    /// No day was chosen.
    DayMissing,
    /// The last day lies before the first.
    EndBeforeStart,
    /// How the file is closed was not chosen.
    WayMissing,
    /// Tables and lists are never sealed.
    NotSealed,
    /// The plan names nobody to seal it to.
    NobodyNamed,
}

impl Amiss {
    /// What to do about it.
    #[must_use]
    pub fn say(self, words: &Words) -> String {
        match self {
            Self::CodeMissing => words.text("phone-error-code-missing", &[]),
            Self::CodeWrong => words.text("phone-error-code-wrong", &[]),
            Self::CodeTooShort { least } => {
                words.text("phone-error-code-short", &[("least", least.into())])
            }
            Self::CodesDiffer => words.text("phone-error-codes-differ", &[]),
            Self::PassphraseMissing => words.text("page-error-passphrase", &[]),
            Self::PassphrasesDiffer => words.text("page-error-not-the-same", &[]),
            Self::OtherWord => words.text("page-error-word", &[]),
            Self::NotAPhrase => words.text("page-error-phrase", &[]),
            Self::OtherPhrase => words.text("phone-error-other-phrase", &[]),
            Self::FileMissing => words.text("page-error-file", &[]),
            Self::LinkMissing => words.text("phone-error-link-missing", &[]),
            Self::DayMissing => words.text("phone-error-day-missing", &[]),
            Self::EndBeforeStart => words.text("refusal-end-before-start", &[]),
            Self::WayMissing => words.text("page-error-who", &[]),
            Self::NotSealed => words.text("page-error-table", &[]),
            Self::NobodyNamed => words.text("page-summary-nobody", &[]),
        }
    }
}

impl Problem {
    /// This is wrong in this field.
    #[must_use]
    pub fn new(words: &Words, field: FormField, amiss: Amiss) -> Self {
        Self { field, says: amiss.say(words) }
    }

    /// What was sent met this trouble, and this field is where to put it right.
    #[must_use]
    pub fn trouble(words: &Words, field: FormField, trouble: &Trouble) -> Self {
        Self { field, says: trouble.say(words) }
    }
}
