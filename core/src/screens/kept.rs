//! Something was written down: said plainly, with a way to take it back.

use serde::Serialize;

use super::{Action, Begin, Does, Scene};
use crate::diary::entry::{Asked, Content, EntryId, ScreeningAnswer, Settled};
use crate::message_id;
use crate::safety::{AnythingNew, nobody_told};

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
            Content::ScreeningAnswered { answer: ScreeningAnswer::NotToday, .. } => {
                vec![words.text(AnythingNew::not_today_id(), &[]), words.text("today-enough", &[])]
            }
            Content::ScreeningAnswered { answer: ScreeningAnswer::Something, .. } => Vec::new(),
            Content::ScreeningAnswered { .. } | Content::HoldConditions { .. } => {
                vec![words.text("kept-screening", &[])]
            }
            Content::Reminders(_) | Content::PutOff { .. } => {
                vec![words.text("kept-reminders", &[])]
            }
            Content::Settings(_) => vec![words.text("kept-settings", &[])],
            _ => Vec::new(),
        };
        let next = next(scene, content);
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

/// What follows: after a session what the plan says, after a plan whether its step is hers, then the
/// questions about health where they are due.
fn next(scene: &Scene<'_>, content: &Content) -> Action {
    let on_step = scene.state.rule().step().is_some();
    let due = super::health::due(scene).is_some();
    let (label, does) = match content {
        Content::Session(_) if on_step => (message_id!("action-suggestion"), Does::Suggestion),
        Content::ProgrammeAccepted { .. } if on_step => {
            (message_id!("action-go-on"), Does::StepCheck)
        }
        Content::ProgrammeAccepted { .. }
        | Content::StepConfirmed { .. }
        | Content::StepChange { .. }
            if due =>
        {
            (message_id!("action-screening"), Does::Screening)
        }
        Content::ScreeningAnswered {
            asked: Asked::AnythingNew,
            answer: ScreeningAnswer::NothingNew,
            ..
        } if on_step => (message_id!("action-begin-step"), Does::Begin(Begin::Step)),
        Content::ScreeningAnswered {
            asked: Asked::AnythingNew,
            answer: ScreeningAnswer::Something,
            ..
        } => (message_id!("action-signs"), Does::Signs),
        Content::Settled { answer: Settled::NotYet, .. } => {
            (message_id!("action-signs"), Does::Signs)
        }
        Content::ScreeningAnswered { answer: ScreeningAnswer::NotToday, .. }
        | Content::HoldConditions { .. } => (message_id!("action-breathing"), Does::Breathing),
        Content::Reminders(_) | Content::PutOff { .. } => {
            (message_id!("action-reminders"), Does::Reminders)
        }
        _ => (message_id!("action-today"), Does::Today),
    };
    Action::new(scene.words.text(label, &[]), does)
}
