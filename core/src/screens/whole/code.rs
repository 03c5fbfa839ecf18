//! The app's own code: asked for, chosen, changed, taken away. The code is asked for where anyone may look, so
//! that screen says nothing of what the program is for.

use serde::Serialize;

use super::{FormLine, Problem};
use crate::screens::Action;

/// The code is asked for.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CodeScreen {
    /// Heading.
    pub title: String,
    /// What it says.
    pub says: Vec<String>,
    /// The code.
    pub code: FormLine,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// After several wrong codes: how long to wait. Nothing can be tried meanwhile.
    pub wait: Option<Wait>,
    /// Opens it.
    pub submit: String,
    /// What else can be done: the twelve words.
    pub actions: Vec<Action>,
}

/// A time to wait before another code can be tried.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Wait {
    /// How long from now, in milliseconds. Ask again when it is over.
    pub millis: u64,
    /// How long, in words, and that nothing is lost.
    pub says: Vec<String>,
}

/// A code is chosen, changed or taken away.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SetCodeScreen {
    /// Heading.
    pub title: String,
    /// What a code does and does not do.
    pub says: Vec<String>,
    /// Choosing one.
    pub set: CodeForm,
    /// Taking it away; none where there is none.
    pub remove: Option<RemoveCodeForm>,
    /// What was wrong, in either form.
    pub problems: Vec<Problem>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A new code, typed twice.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CodeForm {
    /// The new code.
    pub new: FormLine,
    /// The same once more.
    pub again: FormLine,
    /// Keeps it.
    pub submit: String,
}

/// Taking the code away, with the code in use.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RemoveCodeForm {
    /// Heading.
    pub title: String,
    /// What it comes to.
    pub says: Vec<String>,
    /// The code in use.
    pub code: FormLine,
    /// Takes it away.
    pub submit: String,
}
