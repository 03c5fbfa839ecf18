//! Questions for the visit: what she wants to ask, in her own words. Nobody reads them until she hands them
//! over, and what cannot wait is for a call; both are said beside the form.

use serde::Serialize;

use super::section::{Section, TextField, not_right, today, whom_to_call};
use super::{Action, Does, Scene, plain};
use crate::diary::entry::{Content, EntryId};
use crate::diary::resolve::Counted;

/// Questions for the visit.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct QuestionsScreen {
    /// The id to send a new one under, so that sending twice writes once.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// Nobody reads them until she shares them; what cannot wait is for a call.
    pub says: Vec<String>,
    /// Said where there is none.
    pub empty: Option<String>,
    /// The questions, the newest last. Each can be put right or left out.
    pub questions: Vec<Section>,
    /// A new one.
    pub new: TextField,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl QuestionsScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId, counted: &[Counted<'_>]) -> Self {
        let words = scene.words;
        let questions: Vec<Section> = counted
            .iter()
            .filter(|row| !row.struck)
            .filter_map(|row| match row.content {
                Content::Question { text } => Some(Section {
                    title: text.as_str().to_owned(),
                    says: vec![plain::when(words, row.happened, scene.now)],
                    actions: change(scene, row.first.id),
                }),
                _ => None,
            })
            .collect();
        Self {
            id,
            title: words.text("questions-title", &[]),
            says: vec![
                words.text("questions-nobody-reads", &[]),
                words.text("questions-cannot-wait", &[]),
            ],
            empty: questions.is_empty().then(|| words.text("questions-empty", &[])),
            questions,
            new: TextField::new(scene, words.text("questions-new", &[]), None),
            actions: vec![
                whom_to_call(scene),
                not_right(scene),
                Action::new(words.text("action-summary", &[]), Does::Summary),
                today(scene),
            ],
        }
    }
}

/// Putting an entry right and leaving it out.
pub(super) fn change(scene: &Scene<'_>, of: EntryId) -> Vec<Action> {
    vec![
        Action::new(scene.words.text("action-correct", &[]), Does::Correct { of }),
        Action::new(scene.words.text("action-leave-out", &[]), Does::Strike { of }),
    ]
}
