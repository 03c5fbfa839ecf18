//! After something was done to the diary as a whole, or was not.

use serde::Serialize;

use crate::screens::Action;

/// Something was done.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct DoneScreen {
    /// Heading.
    pub title: String,
    /// What was done, and what to know about it.
    pub says: Vec<String>,
    /// The next thing to do.
    pub next: Action,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// Everything was erased.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ErasedScreen {
    /// Heading.
    pub title: String,
    /// What is gone, and what is out of reach.
    pub says: Vec<String>,
    /// What can be done: a new diary.
    pub actions: Vec<Action>,
}

/// Something did not work.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SorryScreen {
    /// Heading.
    pub title: String,
    /// What it was, and what to do.
    pub says: Vec<String>,
    /// What can be done, the first first.
    pub actions: Vec<Action>,
}
