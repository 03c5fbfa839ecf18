//! "Would you like to try the next step?": asked by the person's own tap, never by itself. Every answer is
//! right; it only counts together with what the plan asks.

use serde::Serialize;

use super::section::{not_right, today};
use super::{Action, Scene};
use crate::diary::entry::{EntryId, FeelsReady};

/// "Would you like to try the next step?"
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReadyScreen {
    /// The id to send the answer under, so that sending twice writes once.
    pub id: EntryId,
    /// The question.
    pub title: String,
    /// What an answer is for.
    pub says: Vec<String>,
    /// The answers; equals, and none is preselected.
    pub answers: Vec<ReadyChoice>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// An answer.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReadyChoice {
    /// Which.
    pub answer: FeelsReady,
    /// Its words.
    pub label: String,
}

impl ReadyScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId) -> Self {
        let words = scene.words;
        Self {
            id,
            title: words.text("page-ready-title", &[]),
            says: vec![words.text("page-ready-hint", &[])],
            answers: [
                (FeelsReady::Yes, words.text("page-ready-yes", &[])),
                (FeelsReady::NotYet, words.text("page-ready-not-yet", &[])),
                (FeelsReady::RatherNotSay, words.text("log-rather-not-say", &[])),
            ]
            .map(|(answer, label)| ReadyChoice { answer, label })
            .into(),
            actions: vec![not_right(scene), today(scene)],
        }
    }
}
