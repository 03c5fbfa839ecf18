//! Adding a plan: from a file, or from the link of a code. It is read whole before anything is kept.

use serde::Serialize;

use super::{FormField, FormLine, Problem, back};
use crate::screens::{Action, Lock};
use crate::words::Words;

/// A plan is chosen.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct AddPlanScreen {
    /// Heading.
    pub title: String,
    /// How it comes here, and that it is read before anything is kept.
    pub says: Vec<String>,
    /// The file.
    pub file: FormLine,
    /// Or the link; where only its words are missing or wrong, as it was given.
    pub link: FormLine,
    /// The words that open a sealed link.
    pub words: FormLine,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// Reads it.
    pub submit: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl AddPlanScreen {
    /// `link`: the link as it was given, where only its words are missing or wrong. A phone (by its lock)
    /// has a camera.
    #[must_use]
    pub fn new(words: &Words, lock: Lock, link: &str, problems: Vec<Problem>) -> Self {
        let mut says = vec![words.text("page-plan-how", &[])];
        if lock != Lock::Passphrase {
            says.push(words.text("phone-plan-scan", &[]));
        }
        Self {
            title: words.text("action-accept-programme", &[]),
            says,
            file: FormLine::new(FormField::File, words.text("page-plan-file", &[])),
            link: FormLine::new(FormField::Link, words.text("handover-link", &[]))
                .hint(words.text("handover-link-hint", &[]))
                .value(link),
            words: FormLine::new(FormField::SpokenWords, words.text("handover-words", &[]))
                .hint(words.text("handover-words-hint", &[])),
            problems,
            submit: words.text("page-plan-read", &[]),
            actions: vec![back(words, true)],
        }
    }
}
