//! Restoring: which copy. What it holds is shown before anything is replaced.

use serde::Serialize;

use super::{FormLine, Problem};
use crate::screens::Action;

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
