//! The end of the programme: staying with what there is, a pause, or an end. Nothing here is better than
//! another, and none of it need be decided alone or today.

use serde::Serialize;

use super::section::{Section, not_right, today, whom_to_call};
use super::{Action, Does, Scene};

/// The end of the programme.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EndingScreen {
    /// Heading.
    pub title: String,
    /// What to know first.
    pub says: Vec<String>,
    /// The ways there are, as equals.
    pub ways: Vec<Section>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl EndingScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let act = |label: String, does| Action::new(label, does);
        let mut ways = vec![talk(scene)];
        if scene.state.rule().step().is_some() {
            let stays = scene.state.rule().stay_here();
            let (says, actions) = if stays {
                (words.text("ending-maintain-said", &[]), Vec::new())
            } else {
                let stay = Does::StayHere { stay: true };
                let label = words.text("action-stay-here", &[]);
                (words.text("ending-maintain-says", &[]), vec![act(label, stay)])
            };
            ways.push(Section {
                title: words.text("ending-maintain", &[]),
                says: vec![says],
                actions,
            });
        }
        ways.push(Section {
            title: words.text("ending-pause", &[]),
            says: vec![words.text("ending-pause-says", &[])],
            actions: vec![act(words.text("action-time-off", &[]), Does::TimeOff)],
        });
        ways.push(Section {
            title: words.text("ending-finish", &[]),
            says: vec![
                words.text("ending-finish-says", &[]),
                words.text("ending-finish-keep", &[]),
                words.text("ending-finish-erase", &[]),
            ],
            actions: vec![
                act(words.text("action-summary", &[]), Does::Summary),
                act(words.text("action-keep-diary", &[]), Does::Today),
                act(words.text("action-erase-all", &[]), Does::EraseAll),
            ],
        });
        Self {
            title: words.text("ending-title", &[]),
            says: vec![words.text("ending-says", &[]), words.text("ending-signs", &[])],
            ways,
            actions: vec![not_right(scene), today(scene)],
        }
    }
}

fn talk(scene: &Scene<'_>) -> Section {
    let words = scene.words;
    let says = match scene.state.rule().programme() {
        Some(plan) => words.text(
            "ending-talk-says",
            &[
                ("clinician", plan.clinician.name.as_str().into()),
                ("phone", plan.contact.phone.as_str().into()),
                ("hours", plan.contact.hours.as_str().into()),
            ],
        ),
        None => words.text("ending-talk-no-plan", &[]),
    };
    Section {
        title: words.text("ending-talk", &[]),
        says: vec![says],
        actions: vec![
            whom_to_call(scene),
            Action::new(words.text("action-questions", &[]), Does::Questions),
        ],
    }
}
