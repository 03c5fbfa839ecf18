//! What is shown of the diary as a whole: before one is open, what opens it, what is done to it, and the
//! forms that lead there. Each record has every word chosen, and each form says what has to be put right.
//!
//! Decides what is said. Leaves to [`crate::companion`] and to whoever holds the diary when each is shown and
//! what was wrong in a form. What stands before the lock ([`NoDiaryScreen`], [`CodeScreen`]) says nothing of
//! what the program is for: anyone may read it.

mod amiss;
mod code;
mod copy;
mod done;
mod erase_days;
mod form_words;
mod no_diary;
mod phrase;
mod plan;
mod restore;
#[cfg(test)]
mod tests;

pub use amiss::Amiss;
pub use code::{CodeForm, CodeScreen, RemoveCodeForm, SetCodeScreen, Wait};
pub use copy::CopyScreen;
pub use done::{Done, DoneScreen, ErasedScreen, SorryScreen};
pub use erase_days::EraseDaysScreen;
pub use form_words::{
    FieldWords, FileWords, FormWords, FrameWords, NoticeWords, OutsideWords, SpokenWords,
    TellWords, WrongWords,
};
pub use no_diary::NoDiaryScreen;
pub use phrase::{OpenByPhraseScreen, PhraseCheckScreen, PhraseScreen};
pub use plan::AddPlanScreen;
pub use restore::{RestoreChoiceScreen, RestoreCopyScreen};

use serde::Serialize;

use super::{Action, CannotOpenScreen, Does, RestoreScreen};
use crate::words::Words;

/// A screen of the diary as a whole.
#[derive(Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "screen", rename_all = "snake_case")]
pub enum WholeScreen {
    /// There is no diary yet.
    NoDiary(NoDiaryScreen),
    /// The code is asked for.
    Code(CodeScreen),
    /// A code is chosen, changed or taken away.
    SetCode(SetCodeScreen),
    /// The diary does not open.
    CannotOpen(CannotOpenScreen),
    /// Everything was erased.
    Erased(ErasedScreen),
    /// Twelve new words, to be written down.
    Phrase(PhraseScreen),
    /// Some of the twelve words, asked from the paper.
    PhraseCheck(PhraseCheckScreen),
    /// A copy for elsewhere.
    Copy(CopyScreen),
    /// Which copy is to be looked into.
    Restore(RestoreChoiceScreen),
    /// A copy from elsewhere is chosen.
    RestoreCopy(RestoreCopyScreen),
    /// What a copy holds, before it is restored.
    Restoring(RestoreScreen),
    /// Opening with the twelve words.
    OpenByPhrase(OpenByPhraseScreen),
    /// Which days are to be erased.
    EraseDays(EraseDaysScreen),
    /// A plan is chosen.
    AddPlan(AddPlanScreen),
    /// Something was done.
    Done(DoneScreen),
    /// Something did not work.
    Sorry(SorryScreen),
}

/// A field of one of these forms.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum FormField {
    /// The code in use.
    Code,
    /// The new code or passphrase.
    New,
    /// The same once more.
    Again,
    /// One word of the twelve.
    Word {
        /// Its place, counted from 1.
        place: u8,
    },
    /// All twelve words.
    Phrase,
    /// A file.
    File,
    /// The link of a code.
    Link,
    /// The words that open a link.
    SpokenWords,
    /// The first day.
    From,
    /// The last day.
    To,
    /// How a file is closed.
    Way,
    /// What is chosen knowingly before a plan is accepted.
    Knowing,
}

/// A field to fill in: its words.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FormLine {
    /// Which field.
    pub field: FormField,
    /// What is asked.
    pub label: String,
    /// What helps to fill it in.
    pub hint: Option<String>,
    /// What stands in it, where a form comes back. Never a secret.
    pub value: String,
}

impl FormLine {
    pub(super) fn new(field: FormField, label: String) -> Self {
        Self { field, label, hint: None, value: String::new() }
    }

    pub(super) fn hint(self, hint: String) -> Self {
        Self { hint: Some(hint), ..self }
    }

    fn value(self, value: &str) -> Self {
        Self { value: value.to_owned(), ..self }
    }
}

/// What has to be put right in a form, and where.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Problem {
    /// The field.
    pub field: FormField,
    /// What to do.
    pub says: String,
}

/// "Back to today", or, where no diary is open, back to what stands in its way.
fn back(words: &Words, open: bool) -> Action {
    let label =
        if open { words.text("action-today", &[]) } else { words.text("action-try-again", &[]) };
    Action::new(label, Does::Today)
}

/// "How the diary is kept".
fn keeping(words: &Words) -> Action {
    Action::new(words.text("action-keeping", &[]), Does::Keeping)
}
