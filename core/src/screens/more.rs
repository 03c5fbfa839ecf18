//! Everything that is not needed every day, in groups, so that Today stays short.

use serde::Serialize;

use super::first_run::FirstRunPage;
use super::section::{Section, not_right, today};
use super::{Action, Does, Scene};

/// Everything else.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct MoreScreen {
    /// Heading.
    pub title: String,
    /// What there is, in groups.
    pub groups: Vec<Section>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl MoreScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let act = |label: String, does| Action::new(label, does);
        let group = |title: String, actions| Section { title, says: Vec::new(), actions };
        let mut plan = Vec::new();
        if scene.state.rule().programme().is_some() {
            plan.push(act(words.text("action-plan", &[]), Does::Plan));
        } else {
            plan.push(act(words.text("action-accept-programme", &[]), Does::AcceptProgramme));
        }
        if scene.state.rule().step().is_some() {
            plan.push(act(words.text("action-ladder", &[]), Does::Ladder));
        }
        plan.push(act(words.text("action-reminders", &[]), Does::Reminders));
        plan.push(act(words.text("action-time-off", &[]), Does::TimeOff));
        plan.push(act(words.text("action-ending", &[]), Does::Ending));
        Self {
            title: words.text("more-title", &[]),
            groups: vec![
                group(
                    words.text("more-diary", &[]),
                    vec![
                        act(words.text("action-entries", &[]), Does::Entries),
                        act(words.text("action-calendar", &[]), Does::Calendar { month: None }),
                        act(words.text("action-activities", &[]), Does::Activities),
                        act(words.text("action-look-forward", &[]), Does::LookForward),
                    ],
                ),
                group(words.text("more-plan", &[]), plan),
                group(
                    words.text("more-visit", &[]),
                    vec![
                        act(words.text("action-questions", &[]), Does::Questions),
                        act(words.text("action-spoke", &[]), Does::Spoke),
                        act(words.text("action-summary", &[]), Does::Summary),
                    ],
                ),
                group(
                    words.text("more-frond", &[]),
                    vec![
                        act(words.text("action-settings", &[]), Does::Settings),
                        act(words.text("action-keeping", &[]), Does::Keeping),
                        act(words.text("action-shows", &[]), Does::Shows),
                        act(
                            words.text("action-first-run", &[]),
                            Does::FirstRun { page: FirstRunPage::About },
                        ),
                    ],
                ),
            ],
            actions: vec![not_right(scene), today(scene)],
        }
    }
}
