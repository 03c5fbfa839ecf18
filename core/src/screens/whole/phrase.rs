//! The twelve words: shown once, asked from the paper, and opening the diary with them.

use serde::Serialize;

use super::{FormField, FormLine, Problem, back, keeping};
use crate::screens::{Action, Does, Lock};
use crate::sealing::RecoveryPhrase;
use crate::words::Words;

/// Twelve new words, to be written down. They open nothing before some of them were found on the paper.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PhraseScreen {
    /// Heading.
    pub title: String,
    /// What they are for, and what to do with them.
    pub says: Vec<String>,
    /// The words, in their order. Never kept, copied or logged by a shell.
    pub words: Vec<String>,
    /// "I have written them down".
    pub submit: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// Some of the twelve words, asked from the paper.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PhraseCheckScreen {
    /// Heading.
    pub title: String,
    /// What it is for.
    pub says: Vec<String>,
    /// The words asked, each with its place.
    pub asked: Vec<FormLine>,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// Keeps them.
    pub submit: String,
    /// What else can be done: other words, or none.
    pub actions: Vec<Action>,
}

/// Opening with the twelve words.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct OpenByPhraseScreen {
    /// Heading.
    pub title: String,
    /// What happens, and what becomes of the code.
    pub says: Vec<String>,
    /// The twelve words.
    pub phrase: FormLine,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// Opens it.
    pub submit: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl PhraseScreen {
    /// The words of this phrase.
    #[must_use]
    pub fn new(words: &Words, lock: Lock, phrase: &RecoveryPhrase) -> Self {
        let mut says =
            vec![words.text("phone-phrase-alone", &[]), words.text("page-phrase-how", &[])];
        if lock != Lock::Passphrase {
            says.push(words.text("phone-phrase-paper", &[]));
        }
        Self {
            title: words.text("page-phrase-title", &[]),
            says,
            words: phrase.words().map(str::to_owned).collect(),
            submit: words.text("page-phrase-use", &[]),
            actions: vec![keeping(words)],
        }
    }
}

impl PhraseCheckScreen {
    /// `places`: which words are asked, counted from 1.
    #[must_use]
    pub fn new(words: &Words, places: &[u8], problems: Vec<Problem>) -> Self {
        let asked = places.iter().map(|place| {
            let label = words.text("page-phrase-word", &[("number", (*place).into())]);
            FormLine::new(FormField::Word { place: *place }, label)
        });
        let other = Action::new(words.text("action-new-phrase", &[]), Does::MakePhrase);
        Self {
            title: words.text("page-phrase-title", &[]),
            says: vec![words.text("phone-phrase-check", &[])],
            asked: asked.collect(),
            problems,
            submit: words.text("page-keep", &[]),
            actions: vec![other, keeping(words)],
        }
    }
}

impl OpenByPhraseScreen {
    /// `lock`: what opens the diary afterwards, a phone's own key or the passphrase.
    #[must_use]
    pub fn new(words: &Words, lock: Lock, problems: Vec<Problem>) -> Self {
        let says = match lock {
            Lock::Passphrase => vec![words.text("page-open-how", &[])],
            Lock::Phone | Lock::Code => {
                vec![words.text("phone-phrase-opens", &[]), words.text("phone-phrase-gone", &[])]
            }
        };
        Self {
            title: words.text("page-open-title", &[]),
            says,
            phrase: phrase_line(words),
            problems,
            submit: words.text("page-open", &[]),
            actions: vec![back(words, false)],
        }
    }
}

/// The field for all twelve words.
pub(super) fn phrase_line(words: &Words) -> FormLine {
    FormLine::new(FormField::Phrase, words.text("page-restore-phrase", &[]))
        .hint(words.text("phone-phrase-hint", &[]))
}
