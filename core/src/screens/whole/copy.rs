//! A copy for elsewhere: made, and put somewhere by the person herself.

use serde::Serialize;

use crate::screens::Action;

/// A copy for elsewhere.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CopyScreen {
    /// Heading.
    pub title: String,
    /// What is in it, what opens it, and that it is sent nowhere.
    pub says: Vec<String>,
    /// Saves it.
    pub save: String,
    /// "I have put it somewhere safe": said by her, after saving it.
    pub kept: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}
