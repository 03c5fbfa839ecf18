//! What can be practised today. "Today breathing is enough" is an answer of its own.

use serde::Serialize;

use super::super::{Action, Does, Scene, plain};
use super::Begin;

/// What can be practised.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PracticesScreen {
    /// Heading.
    pub title: String,
    /// "Today, breathing is enough", or what may go on while trainers are paused.
    pub enough: String,
    /// Said where there is nothing but breathing.
    pub empty: Option<String>,
    /// The present step first, then what else the plan has.
    pub options: Vec<PracticeOption>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// Something to practise.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PracticeOption {
    /// Its name.
    pub name: String,
    /// What it takes, part by part.
    pub parts: Vec<String>,
    /// In the clinician's words.
    pub instruction: String,
    /// What to do.
    pub action: Action,
}

impl PracticesScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let mut options = Vec::new();
        let paused = scene.paused();
        if let Some(step) = scene.state.rule().step().filter(|_| !paused) {
            options.push(PracticeOption {
                name: step.name.as_str().to_owned(),
                parts: step.parts.iter().map(|part| plain::part(words, part)).collect(),
                instruction: step.instruction.as_str().to_owned(),
                action: Action::new(words.text("action-begin", &[]), Does::Begin(Begin::Step)),
            });
        }
        let plan = scene.state.rule().programme().filter(|_| !scene.nothing_continues());
        let others = plan.map(|plan| plan.practices.as_slice()).unwrap_or_default();
        for (number, other) in (0u8..).zip(others) {
            let does = if other.breath.is_some() {
                Does::Breathing
            } else {
                Does::Begin(Begin::Practice(number))
            };
            options.push(PracticeOption {
                name: other.name.as_str().to_owned(),
                parts: vec![plain::minutes(
                    words,
                    other.minutes.least.get(),
                    other.minutes.most.get(),
                )],
                instruction: other.instruction.as_str().to_owned(),
                action: Action::new(words.text("action-begin", &[]), does),
            });
        }
        let mut actions = Vec::new();
        if !scene.nothing_continues() {
            actions.push(Action::new(words.text("action-breathing", &[]), Does::Breathing));
        }
        actions.push(Action::new(words.text("action-log", &[]), Does::LogSession));
        actions.push(Action::new(words.text("action-signs", &[]), Does::Signs));
        actions.push(Action::new(words.text("action-today", &[]), Does::Today));
        Self {
            title: words.text("practices-title", &[]),
            enough: scene.enough(),
            empty: options.is_empty().then(|| words.text("practices-empty", &[])),
            options,
            cautions: vec![
                words.text("today-caution-stop", &[]),
                words.text("today-caution-never-hurt", &[]),
                words.text("today-caution-clinician", &[]),
            ],
            actions,
        }
    }
}
