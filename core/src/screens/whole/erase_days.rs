//! Which days are to be erased. What would go is said before anything is erased.

use serde::Serialize;

use super::{FormLine, Problem};
use crate::screens::Action;

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
