//! Activities and goals: how able she is at what matters to her, in her own rating. No earlier answer
//! stands beside a question, so that nothing suggests one; every question may stay without an answer.
//!
//! The scale and the words at its ends are those of the Patient-Specific Functional Scale (Stratford 1995,
//! Physiother Can 47:258), in plain words; the five steps of a goal are those of goal attainment scaling
//! (Turner-Stokes 2009, Clin Rehabil 23:362). When they are due is a line of the plan.

use serde::Serialize;

use super::section::{not_right, today};
use super::{Action, Scene};
use crate::diary::entry::{EntryId, Goal};
use crate::programme::plan::Programme;
use crate::programme::values::Line;
use crate::words::Words;

/// Activities and goals.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ActivitiesScreen {
    /// Heading.
    pub title: String,
    /// How to answer.
    pub says: Vec<String>,
    /// Said where the plan has none.
    pub empty: Option<String>,
    /// The activities of the plan.
    pub activities: Vec<ActivityQuestion>,
    /// The goals of the plan.
    pub goals: Vec<GoalQuestion>,
    /// What keeps an answer.
    pub save: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// How able she is at one activity: 0 to 10.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ActivityQuestion {
    /// The id to send the answer under, so that sending twice writes once.
    pub id: EntryId,
    /// Which activity.
    pub activity: Line,
    /// The question.
    pub question: String,
    /// Words at 0.
    pub least: String,
    /// Words at 10.
    pub most: String,
}

/// How far one goal is reached.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct GoalQuestion {
    /// The id to send the answer under.
    pub id: EntryId,
    /// Which goal.
    pub goal: Line,
    /// The question.
    pub question: String,
    /// The answers there are, -2 to 2.
    pub choices: Vec<GoalChoice>,
}

/// An answer about a goal.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct GoalChoice {
    /// How far it is reached.
    pub reached: Goal,
    /// Its words.
    pub label: String,
}

impl ActivitiesScreen {
    /// `ids` are new ones, one for each question of the plan; without one a question is not asked.
    pub(crate) fn new(scene: &Scene<'_>, ids: &[EntryId]) -> Self {
        let words = scene.words;
        let plan = scene.state.rule().programme();
        let mut ids = ids.iter().copied();
        let of_plan = |lines: fn(&Programme) -> &[Line]| plan.map(lines).unwrap_or_default();
        let activities: Vec<ActivityQuestion> = of_plan(|plan| &plan.activities)
            .iter()
            .zip(ids.by_ref())
            .map(|(activity, id)| ActivityQuestion::new(scene, id, activity))
            .collect();
        let goals: Vec<GoalQuestion> = of_plan(|plan| &plan.goals)
            .iter()
            .zip(ids)
            .map(|(goal, id)| GoalQuestion::new(scene, id, goal))
            .collect();
        let none = activities.is_empty() && goals.is_empty();
        Self {
            title: words.text("activities-title", &[]),
            says: if none {
                Vec::new()
            } else {
                vec![words.text("activities-how", &[]), words.text("activities-skip", &[])]
            },
            empty: none.then(|| words.text("activities-empty", &[])),
            activities,
            goals,
            save: words.text("action-keep", &[]),
            actions: vec![not_right(scene), today(scene)],
        }
    }
}

/// How many questions a plan asks.
pub(crate) fn questions(plan: Option<&Programme>) -> usize {
    plan.map_or(0, |plan| plan.activities.len() + plan.goals.len())
}

/// Whether the plan asks about an activity again today. Asked by itself only where the plan says how often.
pub(super) fn due(scene: &Scene<'_>) -> bool {
    let Some(plan) = scene.state.rule().programme() else { return false };
    let Some(every) = plan.activities_every_days else { return false };
    plan.activities.iter().any(|activity| match scene.state.presence().rated(activity.as_str()) {
        None => true,
        Some(day) => {
            let days = scene.now.day().signed_duration_since(day).num_days();
            days >= i64::from(every.get())
        }
    })
}

/// How far a goal is reached, in the words in which it is answered.
pub(super) fn goal_reached(words: &Words, reached: Goal) -> String {
    match reached.get() {
        ..=-2 => words.text("activities-goal-much-less", &[]),
        -1 => words.text("activities-goal-less", &[]),
        0 => words.text("activities-goal-as-hoped", &[]),
        1 => words.text("activities-goal-more", &[]),
        2.. => words.text("activities-goal-much-more", &[]),
    }
}

impl ActivityQuestion {
    pub(super) fn new(scene: &Scene<'_>, id: EntryId, activity: &Line) -> Self {
        let words = scene.words;
        Self {
            id,
            activity: activity.clone(),
            question: words.text("activities-ask", &[("activity", activity.as_str().into())]),
            least: words.text("activities-least", &[]),
            most: words.text("activities-most", &[]),
        }
    }
}

impl GoalQuestion {
    pub(super) fn new(scene: &Scene<'_>, id: EntryId, goal: &Line) -> Self {
        let words = scene.words;
        let choices = (-2..=2)
            .filter_map(|number| Goal::try_from(number).ok())
            .map(|reached| GoalChoice { reached, label: goal_reached(words, reached) })
            .collect();
        Self {
            id,
            goal: goal.clone(),
            question: words.text("activities-goal-ask", &[("goal", goal.as_str().into())]),
            choices,
        }
    }
}
