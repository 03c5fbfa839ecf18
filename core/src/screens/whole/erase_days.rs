//! Which days are to be erased. What would go is said before anything is erased.

use serde::Serialize;

use super::{FormField, FormLine, Problem, keeping};
use crate::screens::Action;
use crate::words::Words;

/// Which days are to be erased.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EraseDaysScreen {
    /// Heading.
    pub title: String,
    /// That nothing is erased by looking.
    pub says: Vec<String>,
    /// The first day.
    pub from: FormLine,
    /// The last day.
    pub to: FormLine,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// Says what would go.
    pub submit: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl EraseDaysScreen {
    /// `from` and `to`: what was chosen before, as it was sent.
    #[must_use]
    pub fn new(words: &Words, from: &str, to: &str, problems: Vec<Problem>) -> Self {
        let (first, last) = (words.text("page-erase-from", &[]), words.text("page-erase-to", &[]));
        Self {
            title: words.text("page-erase-days", &[]),
            says: vec![words.text("phone-erase-look", &[])],
            from: FormLine::new(FormField::From, first).value(from),
            to: FormLine::new(FormField::To, last).value(to),
            problems,
            submit: words.text("page-erase-look", &[]),
            actions: vec![keeping(words)],
        }
    }
}
