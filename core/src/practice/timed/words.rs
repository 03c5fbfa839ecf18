//! The words of a timed practice: its lines, its buttons, and what is said of one found again.

use serde::Serialize;

use super::found::{Choice, Offer};
use super::timer::{Event, State, View};
use crate::message_id;
use crate::words::Words;

impl View {
    /// The message id of the line to say; `None` while there is nothing to say but the clock.
    #[must_use]
    pub fn word_id(&self) -> Option<&'static str> {
        match self.state {
            State::Ready if self.part > 0 => Some(message_id!("timed-part-over")),
            State::Ready => Some(message_id!("timed-ready")),
            State::Paused => Some(message_id!("timed-paused")),
            State::Finished => Some(message_id!("timed-all-over")),
            State::Stopped => Some(message_id!("stopped-title")),
            State::Running if self.least_reached && self.part + 1 == self.parts => {
                Some(message_id!("timed-least-reached"))
            }
            State::Running => None,
        }
    }

    /// The buttons of this instant, in order. Until it is pressed, stop is the first and always there.
    #[must_use]
    pub fn buttons(&self) -> Vec<Event> {
        let part = self.part;
        match self.state {
            State::Ready => vec![Event::Stop, Event::Begin { part }],
            State::Running => vec![Event::Stop, Event::Pause, Event::Enough { part }],
            State::Paused => vec![Event::Stop, Event::GoOn, Event::Enough { part }],
            State::Finished => vec![Event::Stop],
            State::Stopped => vec![],
        }
    }
}

impl Event {
    /// The message id of its button; `None` for what no person taps.
    #[must_use]
    pub fn word_id(self) -> Option<&'static str> {
        match self {
            Event::Begin { .. } => Some(message_id!("timed-begin")),
            Event::Pause => Some(message_id!("timed-pause")),
            Event::GoOn => Some(message_id!("timed-go-on")),
            Event::Enough { .. } => Some(message_id!("timed-part-done")),
            Event::Smaller { .. } => Some(message_id!("timed-smaller")),
            Event::Stop => Some(message_id!("timed-stop")),
            Event::Seen => None,
        }
    }
}

/// What is shown of a practice found again.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FoundCard {
    /// That it was interrupted.
    pub title: String,
    /// When it began, how much is certain, and that only this is counted.
    pub lines: Vec<String>,
    /// What can be chosen, with its words.
    pub choices: Vec<(Choice, String)>,
}

impl Offer {
    /// The card. `when` says when it began, in words that follow "It began".
    #[must_use]
    pub fn card(&self, words: &Words, when: &str) -> FoundCard {
        let mut lines = Vec::new();
        if self.began.is_some() {
            lines.push(words.text("found-began", &[("when", when.into())]));
        }
        let minutes = self.certain_millis / 60_000;
        lines.push(words.text("found-counted", &[("minutes", minutes.into())]));
        lines.push(words.text("found-only-certain", &[]));
        let choices = self.choices().iter();
        FoundCard {
            title: words.text("found-title", &[]),
            lines,
            choices: choices.map(|one| (*one, words.text(one.word_id(), &[]))).collect(),
        }
    }
}
