//! Welcome back after a while without entries. It says that it is good to see her and asks what she would
//! like; nothing counts what was not done.

use serde::Serialize;

use super::section::{breathe, not_right, whom_to_call};
use super::{Action, Begin, Does, Scene};
use crate::programme::rule::{BackCriterion, PauseCriterion, Rule};
use crate::progression::OutcomeKind;

/// After so many days without an entry she is welcomed back, where the plan says nothing about absence. A
/// rule of presentation only: nothing that the plan's rule decides hangs on it. Common practice, no source.
const DAYS_AWAY: i64 = 7;

/// "Welcome back".
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Welcome {
    /// Heading.
    pub title: String,
    /// What it says.
    pub says: Vec<String>,
    /// What she may like to do; all of them are equal.
    pub actions: Vec<Action>,
}

impl Welcome {
    /// The welcome, where the last entry lies far enough back.
    pub(super) fn back(scene: &Scene<'_>) -> Option<Self> {
        let last = scene.state.presence().told()?;
        let away = scene.now.day().signed_duration_since(last).num_days();
        if away < days_away(scene) || scene.nothing_continues() {
            return None;
        }
        let words = scene.words;
        let paused = scene.assessment.outcome.kind() == OutcomeKind::PauseAndCall;
        let step = scene.state.rule().step().is_some();
        let mut actions = vec![breathe(scene)];
        if step && !paused {
            actions
                .push(Action::new(words.text("action-step-here", &[]), Does::Begin(Begin::Step)));
            actions.push(Action::new(words.text("action-step-smaller", &[]), Does::Ladder));
        }
        actions.push(whom_to_call(scene));
        actions.push(not_right(scene));
        Some(Self {
            title: words.text("welcome-title", &[]),
            says: vec![
                words.text("welcome-glad", &[]),
                words.text("welcome-nothing-expected", &[]),
                words.text("welcome-what", &[]),
            ],
            actions,
        })
    }
}

/// The plan's own number of days of absence where it has one: that of a gap, otherwise the smallest after
/// which it goes back or pauses.
fn days_away(scene: &Scene<'_>) -> i64 {
    let state = scene.state.rule();
    let rule = state.programme().zip(state.step()).and_then(|(plan, step)| plan.rule_on(step));
    rule.and_then(of_rule).map_or(DAYS_AWAY, i64::from)
}

fn of_rule(rule: &Rule) -> Option<u16> {
    if let Some(gap) = rule.after_gap_days {
        return Some(gap.get());
    }
    let back = rule.step_back.iter().filter_map(|back| match back.when {
        BackCriterion::DaysWithoutPractice { days } => Some(days.get()),
        _ => None,
    });
    let pause = rule.pause.iter().filter_map(|pause| match pause {
        PauseCriterion::DaysWithoutPractice { days } => Some(days.get()),
        _ => None,
    });
    back.chain(pause).min()
}
