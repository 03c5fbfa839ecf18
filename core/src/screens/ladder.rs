//! The steps of the plan, and which is used now. Never a percentage, never a distance to go. Going
//! smaller is one tap; a larger step than the present one can be recorded after one plain caution (D1).

use serde::Serialize;

use super::{Action, Does, Scene, plain};
use crate::programme::values::StepId;

/// The steps.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LadderScreen {
    /// Heading.
    pub title: String,
    /// Said where the plan has no steps.
    pub empty: Option<String>,
    /// The steps, lowest first.
    pub rungs: Vec<Rung>,
    /// Said beside choosing an earlier step.
    pub smaller_is_fine: String,
    /// The caution before recording a later step as one's own choice.
    pub larger_caution: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One step.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Rung {
    /// Its id, to choose it.
    pub id: StepId,
    /// Its name.
    pub name: String,
    /// What is used, in words.
    pub used: String,
    /// Whether it is the present one.
    pub present: bool,
    /// "You are here", spoken too.
    pub note: Option<String>,
    /// "Use this step", with its name.
    pub choose: String,
    /// Whether choosing it needs the caution: it lies beyond the present step.
    pub larger: bool,
}

impl LadderScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let steps = scene.state.rule().programme().map(|plan| plan.steps.as_slice());
        let steps = steps.unwrap_or_default();
        let present = scene.state.rule().step().map(|step| &step.id);
        let at = steps.iter().position(|step| Some(&step.id) == present);
        let rungs: Vec<Rung> = steps
            .iter()
            .enumerate()
            .map(|(index, step)| Rung {
                id: step.id.clone(),
                name: step.name.as_str().to_owned(),
                used: plain::step(words, step),
                present: Some(index) == at,
                note: if Some(index) == at {
                    Some(words.text("ladder-here", &[]))
                } else if step.gate {
                    Some(words.text("ladder-gate", &[]))
                } else {
                    None
                },
                choose: words.text("page-use-step", &[("step", step.name.as_str().into())]),
                larger: at.is_some_and(|at| index > at),
            })
            .collect();
        Self {
            title: words.text("ladder-title", &[]),
            empty: rungs.is_empty().then(|| words.text("ladder-empty", &[])),
            rungs,
            smaller_is_fine: words.text("ladder-smaller", &[]),
            larger_caution: words.text("ladder-larger", &[]),
            actions: vec![
                Action::new(words.text("action-suggestion", &[]), Does::Suggestion),
                Action::new(words.text("action-ending", &[]), Does::Ending),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}
