//! After a stop: that it was right, one question, grounding, whom to call (W9). Everything else can wait
//! until tomorrow, and is still there then.

use serde::Serialize;

use super::super::stop::contacts_of;
use super::super::{Action, Does, Scene};
use crate::practice::stopped::Stopped;
use crate::programme::values::Practice;

/// After a stop.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct StoppedScreen {
    /// What to show, in order.
    pub stopped: Stopped,
    /// Writing down how it was, when she likes.
    pub next: Action,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl StoppedScreen {
    pub(crate) fn new(scene: &Scene<'_>, practice: &Practice) -> Self {
        let words = scene.words;
        let contacts = scene.state.rule().programme().map(contacts_of);
        Self {
            stopped: Stopped::new(words, practice, contacts.as_ref()),
            next: Action::new(words.text("action-rate", &[]), Does::Rate),
            actions: vec![
                Action::new(words.text("action-signs", &[]), Does::Signs),
                Action::new(words.text("action-later", &[]), Does::Today),
            ],
        }
    }
}
