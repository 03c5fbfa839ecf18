//! What several screens are put together from: a part under its heading, a field for the person's own
//! words, a question on a scale. Decides nothing.

use serde::Serialize;

use super::{Action, Does, Lock, Scene};

/// A part of a screen.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Section {
    /// Heading.
    pub title: String,
    /// What it says.
    pub says: Vec<String>,
    /// What can be done about it.
    pub actions: Vec<Action>,
}

/// A field for the person's own words.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct TextField {
    /// What is asked.
    pub label: String,
    /// What stands there now, in her own words; nothing in a new one.
    pub current: Option<String>,
    /// The most characters it holds.
    pub longest: usize,
    /// What keeps it.
    pub save: String,
}

/// The most characters of a text of the person's own.
pub(super) const LONGEST: usize = 2000;

impl TextField {
    pub(super) fn new(scene: &Scene<'_>, label: String, current: Option<&str>) -> Self {
        Self {
            label,
            current: current.map(str::to_owned),
            longest: LONGEST,
            save: scene.words.text("action-keep", &[]),
        }
    }
}

/// "Breathe".
pub(super) fn breathe(scene: &Scene<'_>) -> Action {
    Action::new(scene.words.text("action-breathing", &[]), Does::Breathing)
}

/// "Something is not right": in reach from every screen.
pub(super) fn not_right(scene: &Scene<'_>) -> Action {
    Action::new(scene.words.text("action-signs", &[]), Does::Signs)
}

/// "Whom to call".
pub(super) fn whom_to_call(scene: &Scene<'_>) -> Action {
    Action::new(scene.words.text("action-stop-and-call", &[]), Does::StopAndCall)
}

/// "Back to today".
pub(super) fn today(scene: &Scene<'_>) -> Action {
    Action::new(scene.words.text("action-today", &[]), Does::Today)
}

/// Another passphrase, or a code.
pub(super) fn another_lock(scene: &Scene<'_>) -> Action {
    let words = scene.words;
    let (label, does) = match scene.store.lock {
        Lock::Passphrase => (words.text("action-new-passphrase", &[]), Does::NewKeys),
        Lock::Phone => (words.text("action-code-choose", &[]), Does::CodeForm),
        Lock::Code => (words.text("action-code-change", &[]), Does::CodeForm),
    };
    Action::new(label, does)
}
