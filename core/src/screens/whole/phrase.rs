//! The twelve words: shown once, asked from the paper, and opening the diary with them.

use serde::Serialize;

use super::{FormLine, Problem};
use crate::screens::Action;

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
