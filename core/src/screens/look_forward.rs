//! Something to look forward to, in the person's own words. It stands on Today, is hers alone, and goes into
//! no summary.

use serde::Serialize;

use super::section::{TextField, today};
use super::{Action, Scene};
use crate::diary::entry::EntryId;

/// Something to look forward to.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LookForwardScreen {
    /// The id to send it under, so that sending twice writes once.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// What it is for, and who sees it.
    pub says: Vec<String>,
    /// What stands on Today now.
    pub present: Option<String>,
    /// A new one.
    pub new: TextField,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl LookForwardScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId) -> Self {
        let words = scene.words;
        let present = scene.state.look_forward();
        Self {
            id,
            title: words.text("look-forward-title", &[]),
            says: vec![
                words.text("look-forward-says", &[]),
                words.text("look-forward-private", &[]),
            ],
            present: present.map(|to| words.text("today-look-forward", &[("what", to.into())])),
            new: TextField::new(scene, words.text("look-forward-new", &[]), None),
            actions: vec![today(scene)],
        }
    }
}
