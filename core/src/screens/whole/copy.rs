//! A copy for elsewhere: made, and put somewhere by the person herself.

use serde::Serialize;

use super::keeping;
use crate::diary::entry::EntryId;
use crate::screens::Action;
use crate::words::Words;

/// A copy for elsewhere.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CopyScreen {
    /// The id to tell under that it was put somewhere.
    pub id: EntryId,
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

impl CopyScreen {
    /// `id`: for telling that it was put somewhere.
    #[must_use]
    pub fn new(words: &Words, id: EntryId) -> Self {
        Self {
            id,
            title: words.text("action-make-copy", &[]),
            says: vec![words.text("page-copy-how", &[]), words.text("phone-copy-name", &[])],
            save: words.text("page-copy-file", &[]),
            kept: words.text("page-copy-kept", &[]),
            actions: vec![keeping(words)],
        }
    }
}
