//! Adding a plan: from a file, or from the link of a code. It is read whole before anything is kept.

use serde::Serialize;

use super::{FormLine, Problem};
use crate::screens::Action;

/// A plan is chosen.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct AddPlanScreen {
    /// Heading.
    pub title: String,
    /// How it comes here, and that it is read before anything is kept.
    pub says: Vec<String>,
    /// The file.
    pub file: FormLine,
    /// Or the link.
    pub link: FormLine,
    /// The words that open a sealed link.
    pub words: FormLine,
    /// The link as it was given, where only its words are missing or wrong.
    pub given: Option<String>,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// Reads it.
    pub submit: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}
