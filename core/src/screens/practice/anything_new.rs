//! "Anything new since last time?", before every session with trainers. Nothing is chosen beforehand.

use serde::Serialize;

use super::super::{Action, Does, Scene};
use crate::diary::entry::EntryId;
use crate::safety::{AnythingNew, grounding};

/// The one question.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct AnythingNewScreen {
    /// The id to send the answer under.
    pub id: EntryId,
    /// The question.
    pub title: String,
    /// Eyes-open grounding, where the plan wants it before trainers.
    pub grounding: Vec<String>,
    /// The answers; "something" leads to the cautions.
    pub answers: Vec<NewChoice>,
    /// That not being sure counts as something.
    pub not_sure: String,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One answer.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct NewChoice {
    /// Which.
    pub answer: AnythingNew,
    /// Its words.
    pub label: String,
}

impl AnythingNewScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId) -> Self {
        let words = scene.words;
        let plan = scene.state.rule().programme();
        let first = plan.is_some_and(|plan| plan.manner.grounding_first);
        let answers = AnythingNew::ALL
            .map(|answer| NewChoice { answer, label: words.text(answer.word_id(), &[]) });
        Self {
            id,
            title: words.text(AnythingNew::question_id(), &[]),
            grounding: if first { grounding_first(words) } else { Vec::new() },
            answers: answers.into(),
            not_sure: words.text("anything-new-not-sure", &[]),
            cautions: vec![
                words.text("today-caution-stop", &[]),
                words.text("today-caution-never-hurt", &[]),
            ],
            actions: vec![
                Action::new(words.text("action-breathing", &[]), Does::Breathing),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}

/// The grounding without its first line, which speaks of a stop.
fn grounding_first(words: &crate::words::Words) -> Vec<String> {
    grounding(words).into_iter().skip(1).collect()
}
