//! Before there is a diary. Anyone may see it, so it says nothing of what the program is for.

use serde::Serialize;

use crate::screens::Action;

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
