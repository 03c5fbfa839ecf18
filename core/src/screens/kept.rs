//! Something was written down: said plainly, with a way to take it back.

use serde::Serialize;

use super::{Action, Does, Scene};
use crate::diary::entry::{Content, EntryId, Settled};
use crate::safety::nobody_told;

/// Something was kept.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct KeptScreen {
    /// Heading.
    pub title: String,
    /// The entry written.
    pub entry: EntryId,
    /// What to know about it.
    pub says: Vec<String>,
    /// The next thing to do.
    pub next: Action,
    /// What else can be done, taking it back among it.
    pub actions: Vec<Action>,
}

impl KeptScreen {
    pub(crate) fn new(scene: &Scene<'_>, entry: EntryId, content: &Content) -> Self {
        let words = scene.words;
        let says = match content {
            Content::Session(session) if session.ended.counts_as_stopped() => {
                let mut says = vec![words.text("kept-stopped", &[])];
                let plan = scene.state.rule().programme();
                if let Some(plan) = plan.filter(|plan| plan.manner.contact_on_stop) {
                    says.push(words.text(
                        "kept-contact",
                        &[
                            ("name", plan.contact.name.as_str().into()),
                            ("phone", plan.contact.phone.as_str().into()),
                            ("hours", plan.contact.hours.as_str().into()),
                        ],
                    ));
                }
                says
            }
            Content::Session(_) => vec![words.text("kept-session", &[])],
            Content::Strike { .. } => vec![words.text("kept-strike", &[])],
            Content::Correction { .. } => vec![words.text("kept-correction", &[])],
            Content::StepChange { .. } => vec![words.text("kept-step", &[])],
            Content::ProgrammeAccepted { .. } => vec![words.text("kept-programme", &[])],
            Content::Clearing { .. } => vec![words.text("kept-spoke", &[])],
            Content::Question { .. } => {
                vec![words.text("kept-question", &[]), words.text("questions-nobody-reads", &[])]
            }
            Content::Settled { answer: Settled::NotYet, .. } => {
                vec![words.text("kept-not-settled", &[]), nobody_told(words)]
            }
            Content::Settled { .. } => vec![words.text("kept-settled", &[])],
            Content::TimeOff { .. } => vec![words.text("kept-time-off", &[])],
            Content::FunctionRated { .. } | Content::GoalRated { .. } => {
                vec![words.text("kept-rated", &[])]
            }
            _ => Vec::new(),
        };
        let session = matches!(content, Content::Session(_));
        let not_settled = matches!(content, Content::Settled { answer: Settled::NotYet, .. });
        let next = if not_settled {
            Action::new(words.text("action-signs", &[]), Does::Signs)
        } else if session && scene.state.rule().step().is_some() {
            Action::new(words.text("action-suggestion", &[]), Does::Suggestion)
        } else {
            Action::new(words.text("action-today", &[]), Does::Today)
        };
        Self {
            title: words.text("kept-title", &[]),
            entry,
            says,
            next,
            actions: vec![
                Action::new(words.text("action-take-back", &[]), Does::Strike { of: entry }),
                Action::new(words.text("action-open-entry", &[]), Does::Entry { of: entry }),
                Action::new(words.text("action-entries", &[]), Does::Entries),
            ],
        }
    }
}
