//! Restoring: which copy. What it holds is shown before anything is replaced.

use serde::Serialize;

use super::phrase::phrase_line;
use super::{FormField, FormLine, Problem, back};
use crate::screens::{Action, Does};
use crate::words::Words;

/// Which copy is to be looked into.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RestoreChoiceScreen {
    /// Heading.
    pub title: String,
    /// That nothing is replaced by looking; or that there is no copy here.
    pub says: Vec<String>,
    /// Looks into the newest copy on this device; none where there is none.
    pub newest: Option<String>,
    /// What else can be done: a copy from elsewhere, and leaving it.
    pub actions: Vec<Action>,
}

/// A copy from elsewhere is chosen, with the words that open it.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RestoreCopyScreen {
    /// Heading.
    pub title: String,
    /// What is needed.
    pub says: Vec<String>,
    /// The file.
    pub file: FormLine,
    /// The twelve words.
    pub phrase: FormLine,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// Looks into it.
    pub submit: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl RestoreChoiceScreen {
    /// `there`: there is a copy on this device. `open`: a diary is open.
    #[must_use]
    pub fn new(words: &Words, there: bool, open: bool) -> Self {
        let says = if there {
            words.text("phone-look-first", &[])
        } else {
            words.text("page-backup-none", &[])
        };
        let elsewhere = Action::new(words.text("action-restore-copy", &[]), Does::RestoreCopy);
        Self {
            title: words.text("action-restore", &[]),
            says: vec![says],
            newest: there.then(|| words.text("page-backup-newest", &[])),
            actions: vec![elsewhere, back(words, open)],
        }
    }
}

impl RestoreCopyScreen {
    /// `open`: a diary is open.
    #[must_use]
    pub fn new(words: &Words, open: bool, problems: Vec<Problem>) -> Self {
        Self {
            title: words.text("action-restore-copy", &[]),
            says: vec![words.text("phone-look-first", &[])],
            file: FormLine::new(FormField::File, words.text("page-restore-file", &[])),
            phrase: phrase_line(words),
            problems,
            submit: words.text("phone-look-into", &[]),
            actions: vec![back(words, open)],
        }
    }
}
