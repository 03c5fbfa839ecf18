//! "Did it settle?": asked once, the calendar day after a session that was felt or was stopped. "Not yet"
//! leads kindly to "something is not right"; the rule does not look at the answer.

use serde::Serialize;

use super::section::{not_right, today};
use super::{Action, Scene, plain};
use crate::diary::entry::{EntryId, Settled};
use crate::diary::resolve::Counted;
use crate::safety::nobody_told;

/// "Did it settle?"
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SettledScreen {
    /// The id to send the answer under, so that sending twice writes once.
    pub id: EntryId,
    /// The session it is about.
    pub of: EntryId,
    /// The question.
    pub title: String,
    /// Which session, and what an answer is for.
    pub says: Vec<String>,
    /// The answers; none is preselected.
    pub answers: Vec<SettledChoice>,
    /// "Nobody has been told."
    pub nobody_told: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// An answer.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SettledChoice {
    /// Which.
    pub answer: Settled,
    /// Its words.
    pub label: String,
}

impl SettledScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId, session: &Counted<'_>) -> Self {
        let words = scene.words;
        let of = session.first.id;
        let when = plain::when(words, session.happened, scene.now);
        Self {
            id,
            of,
            title: words.text("settled-title", &[]),
            says: vec![
                words.text("settled-about", &[("when", when.into())]),
                words.text("settled-why", &[]),
            ],
            answers: [
                (Settled::Yes, words.text("settled-yes", &[])),
                (Settled::NotYet, words.text("settled-not-yet", &[])),
                (Settled::RatherNotSay, words.text("log-rather-not-say", &[])),
            ]
            .map(|(answer, label)| SettledChoice { answer, label })
            .into(),
            nobody_told: nobody_told(words),
            actions: vec![not_right(scene), today(scene)],
        }
    }
}

/// The session it is asked about today: the newest one that was felt or stopped, if that was yesterday and
/// it was not asked before.
pub(super) fn asked_today(scene: &Scene<'_>) -> Option<EntryId> {
    let felt = scene.state.presence().felt().filter(|felt| !felt.answered)?;
    let days = scene.now.day().signed_duration_since(felt.day).num_days();
    (days == 1).then_some(felt.session)
}
