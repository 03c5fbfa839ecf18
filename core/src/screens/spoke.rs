//! "I spoke with ... on ...": what is open, and what such a talk closes (S2).

use serde::Serialize;

use super::{Action, Does, Scene, plain};
use crate::diary::entry::SignKey;

/// The form for a talk.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SpokeScreen {
    /// Heading.
    pub title: String,
    /// Said where nothing is open.
    pub empty: Option<String>,
    /// "With whom?"
    pub with_label: String,
    /// A name to offer: the clinician's.
    pub with_offer: Option<String>,
    /// "When?"
    pub when_label: String,
    /// Open cautions. None is preselected.
    pub signs: Vec<OpenMatter>,
    /// "May you go on with the trainers?", where a pause stands.
    pub pause: Option<String>,
    /// Only the person who was spoken with decides; Frond does not.
    pub note: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// An open caution.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct OpenMatter {
    /// Its identity.
    pub key: SignKey,
    /// In words, with when it was noted.
    pub text: String,
}

impl SpokeScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let signs: Vec<OpenMatter> = scene
            .assessment
            .open_signs
            .iter()
            .map(|open| OpenMatter {
                key: open.key,
                text: words.text(
                    "spoke-sign",
                    &[
                        ("sign", words.text(open.key.sign.name_id(), &[]).into()),
                        ("when", plain::when(words, open.since, scene.now).into()),
                    ],
                ),
            })
            .collect();
        let paused = scene.assessment.pause.is_some();
        let programme = scene.state.rule().programme();
        Self {
            title: words.text("spoke-title", &[]),
            empty: (signs.is_empty() && !paused).then(|| words.text("spoke-nothing-open", &[])),
            with_label: words.text("spoke-with", &[]),
            with_offer: programme.map(|plan| plan.clinician.name.as_str().to_owned()),
            when_label: words.text("spoke-when", &[]),
            signs,
            pause: paused.then(|| words.text("spoke-pause", &[])),
            note: words.text("spoke-note", &[]),
            actions: vec![Action::new(words.text("action-today", &[]), Does::Today)],
        }
    }
}
