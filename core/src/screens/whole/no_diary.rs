//! Before there is a diary. Anyone may see it, so it says nothing of what the program is for.

use serde::Serialize;

use crate::screens::{Action, Does};
use crate::words::Words;

/// There is no diary yet.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct NoDiaryScreen {
    /// Heading.
    pub title: String,
    /// What it says.
    pub says: Vec<String>,
    /// Starting a new one.
    pub next: Action,
    /// What else can be done: a copy from elsewhere.
    pub actions: Vec<Action>,
}

impl NoDiaryScreen {
    /// The first thing seen.
    #[must_use]
    pub fn new(words: &Words) -> Self {
        let copy = Action::new(words.text("phone-empty-copy", &[]), Does::RestoreCopy);
        Self {
            title: words.text("phone-empty-title", &[]),
            says: vec![words.text("phone-empty-says", &[])],
            next: Action::new(words.text("action-begin", &[]), Does::StartNew),
            actions: vec![copy],
        }
    }
}
