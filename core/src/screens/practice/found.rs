//! A practice that was under way when the program ended (W6): it counts for nothing until the person
//! has chosen.

use serde::Serialize;

use super::super::{Action, Does, Scene, plain};
use crate::practice::timed::{Choice, Found, Offer, RunningError, Tick};

/// A practice found again.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FoundScreen {
    /// Heading.
    pub title: String,
    /// What is certain, and that only this counts.
    pub lines: Vec<String>,
    /// What can be chosen; the first is the likeliest.
    pub choices: Vec<(Choice, String)>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl FoundScreen {
    pub(crate) fn new(scene: &Scene<'_>, found: &Found, tick: &Tick) -> Self {
        let offer: Offer = found.offer(tick);
        let when = offer.began.map(|began| plain::when(scene.words, began, scene.now));
        let card = offer.card(scene.words, &when.unwrap_or_default());
        Self {
            title: card.title,
            lines: card.lines,
            choices: card.choices,
            actions: actions(scene),
        }
    }

    /// What was noted cannot be read; all that is left is to put it away, unless a newer program can
    /// read it.
    pub(crate) fn unreadable(scene: &Scene<'_>, error: RunningError) -> Self {
        let words = scene.words;
        let discard = (Choice::Discard, words.text("found-put-away", &[]));
        Self {
            title: words.text("found-title", &[]),
            lines: vec![words.text(error.word_id(), &[])],
            choices: if error == RunningError::Newer { Vec::new() } else { vec![discard] },
            actions: actions(scene),
        }
    }
}

fn actions(scene: &Scene<'_>) -> Vec<Action> {
    vec![
        Action::new(scene.words.text("action-signs", &[]), Does::Signs),
        Action::new(scene.words.text("action-today", &[]), Does::Today),
    ]
}
