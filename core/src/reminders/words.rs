//! The words of reminders: a few neutral ones that leave the phone, of which the person chooses, and
//! those beside the settings, which do not.
//!
//! There is no text of her own that leaves: nothing could promise that it stays neutral (N10).

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::clock::ClockTime;
use super::settings::{ReminderSettings, When};
use crate::message_id;
use crate::words::Words;

/// What a reminder says, on a notification and in a calendar.
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum NeutralWords {
    /// "A moment for you".
    #[default]
    Moment,
    /// "A little quiet time".
    Quiet,
    /// "Your reminder".
    Reminder,
    /// "Time of your own".
    OwnTime,
}

impl NeutralWords {
    /// Every choice, in the order to offer.
    pub const ALL: [NeutralWords; 4] =
        [NeutralWords::Moment, NeutralWords::Quiet, NeutralWords::Reminder, NeutralWords::OwnTime];

    /// The message id of the words.
    #[must_use]
    pub fn word_id(self) -> &'static str {
        match self {
            NeutralWords::Moment => message_id!("leaving-moment"),
            NeutralWords::Quiet => message_id!("leaving-quiet"),
            NeutralWords::Reminder => message_id!("leaving-reminder"),
            NeutralWords::OwnTime => message_id!("leaving-own-time"),
        }
    }

    /// The sentence that shows what will be said, for the settings.
    #[must_use]
    pub fn preview(self, words: &Words) -> String {
        words.text("reminders-says", &[("words", words.text(self.word_id(), &[]).into())])
    }
}

/// "Reminders are off until you turn them on."
#[must_use]
pub fn off_line(words: &Words) -> String {
    words.text("reminders-off", &[])
}

/// The line on Today for a practice tied to a routine; `None` for one that is not. `what` names it.
#[must_use]
pub fn after_line(words: &Words, when: &When, what: &str) -> Option<String> {
    match when {
        When::Times { .. } => None,
        When::After { routine, .. } => {
            let values = [("routine", routine.as_str().into()), ("what", what.into())];
            Some(words.text("reminders-after", &values))
        }
    }
}

/// A sentence for each time that lies in the quiet hours, so that nobody waits for it.
#[must_use]
pub fn in_quiet_hours(words: &Words, settings: &ReminderSettings) -> Vec<String> {
    let Some(quiet) = settings.quiet else { return Vec::new() };
    let times = settings.reminders.get().iter().flat_map(|one| one.when.times());
    let mut times: Vec<ClockTime> = times.copied().filter(|time| quiet.has(time.get())).collect();
    times.sort_unstable();
    times.dedup();
    let line = |time: ClockTime| {
        words.text("reminders-in-quiet-hours", &[("time", time.to_string().into())])
    };
    times.into_iter().map(line).collect()
}

/// What to know before times are put into a calendar.
#[must_use]
pub fn calendar_note(words: &Words) -> String {
    words.text("reminders-calendar-note", &[])
}
