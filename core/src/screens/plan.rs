//! The plan in plain sentences, as the clinician can check it.

use serde::Serialize;

use super::{Action, Does, Scene};
use crate::programme::readback::read_back_to_person;

/// The plan.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PlanScreen {
    /// Heading.
    pub title: String,
    /// Said where there is no plan.
    pub empty: Option<String>,
    /// The plan, a sentence each.
    pub sentences: Vec<String>,
    /// The key of the clinic that is known, in words to compare; none where no plan was signed.
    pub key: Option<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl PlanScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let plan = scene.state.rule().programme();
        Self {
            title: words.text("plan-title", &[]),
            empty: plan.is_none().then(|| words.text("today-no-programme", &[])),
            sentences: plan.map(|plan| read_back_to_person(plan, words)).unwrap_or_default(),
            key: super::handed::pinned(scene),
            actions: vec![
                Action::new(words.text("action-questions", &[]), Does::Questions),
                Action::new(words.text("action-accept-programme", &[]), Does::AcceptProgramme),
                Action::new(words.text("action-ending", &[]), Does::Ending),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}
