//! The cautions, to report one outside a session. Nothing is preselected, and "not sure" counts as yes.

use serde::Serialize;

use super::{Action, Does, Scene};
use crate::safety::{Sign, SignGroup, Tier, nobody_told, tier_in_force};

/// The cautions.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SignsScreen {
    /// Heading.
    pub title: String,
    /// How to answer.
    pub how: String,
    /// Every caution that can be reported, in groups.
    pub signs: Vec<SignChoice>,
    /// "Nobody has been told."
    pub nobody_told: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One caution.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SignChoice {
    /// Which.
    pub sign: Sign,
    /// The group it stands in.
    pub group: String,
    /// The question.
    pub question: String,
    /// The tier in force under the present plan.
    pub tier: Tier,
}

impl SignsScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        Self {
            title: words.text("signs-title", &[]),
            how: words.text("signs-how", &[]),
            signs: choices(scene),
            nobody_told: nobody_told(words),
            actions: vec![
                Action::new(words.text("action-stop-and-call", &[]), Does::StopAndCall),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}

/// Every caution that can be reported, in the order of its groups.
pub(super) fn choices(scene: &Scene<'_>) -> Vec<SignChoice> {
    let words = scene.words;
    let plan = scene.state.rule().programme();
    let stricter = plan.map(|plan| plan.stricter_signs.as_slice()).unwrap_or_default();
    let note_only = plan.is_some_and(|plan| plan.spotting_note_only);
    let mut signs: Vec<(SignGroup, SignChoice)> = Sign::asked()
        .filter_map(|sign| {
            let group = sign.group()?;
            let choice = SignChoice {
                sign,
                group: words.text(group.name_id(), &[]),
                question: words.text(sign.question_id()?, &[]),
                tier: tier_in_force(sign, stricter, note_only),
            };
            Some((group, choice))
        })
        .collect();
    // Stable: inside a group the order of the table stays.
    signs.sort_by_key(|(group, _)| *group);
    signs.into_iter().map(|(_, choice)| choice).collect()
}
