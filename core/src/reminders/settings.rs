//! What a person can set about reminders. Off until she turns them on (N1).

use std::borrow::Cow;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

use super::clock::{ClockTime, ClockTimes, QuietHours, Weekdays};
use super::words::NeutralWords;
use crate::diary::entry::EntryId;
use crate::programme::values::{Line, Practice, ValueError};

/// Everything set about reminders, always kept as a whole.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ReminderSettings {
    /// Whether anything is shown at all.
    #[serde(default)]
    pub on: bool,
    /// Random, made once and kept: ids in an exported calendar are derived from it, so that a second
    /// export replaces the first. It tells nothing.
    pub key: EntryId,
    /// The reminders.
    #[serde(default)]
    pub reminders: ReminderList,
    /// Hours in which nothing is shown.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quiet: Option<QuietHours>,
    /// What a reminder says.
    #[serde(default)]
    pub words: NeutralWords,
}

impl ReminderSettings {
    /// The settings before anything was set: off, and nothing to remember.
    #[must_use]
    pub fn off(key: EntryId) -> Self {
        Self {
            on: false,
            key,
            reminders: ReminderList::default(),
            quiet: None,
            words: NeutralWords::default(),
        }
    }
}

/// One thing to be reminded of.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Reminder {
    /// Of which practice. It never leaves the phone with a reminder.
    pub practice: Practice,
    /// When.
    pub when: When,
    /// Left out when the practice was done already.
    #[serde(default = "yes")]
    pub skip_when_done: bool,
}

fn yes() -> bool {
    true
}

/// When a reminder comes.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum When {
    /// At times of the day, in the zone the person is in.
    Times {
        /// On these days of the week.
        days: Weekdays,
        /// At these times.
        at: ClockTimes,
    },
    /// Tied to a routine of the person's own. It stands on Today; a reminder comes only if she says
    /// about when the routine is.
    After {
        /// In her own words, to follow "after". They never leave the phone.
        routine: Line,
        /// On these days of the week.
        days: Weekdays,
        /// About when.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        about: Option<ClockTime>,
    },
}

impl When {
    /// The days of the week.
    #[must_use]
    pub fn days(&self) -> Weekdays {
        match self {
            When::Times { days, .. } | When::After { days, .. } => *days,
        }
    }

    /// The times of the day, earliest first; none for a routine without one.
    #[must_use]
    pub fn times(&self) -> &[ClockTime] {
        match self {
            When::Times { at, .. } => at.get(),
            When::After { about, .. } => about.as_slice(),
        }
    }
}

// What she practises, when, and what her days are like is hers.
crate::diary::entry::opaque!(ReminderSettings, Reminder, ReminderList, When);

/// Up to 20 reminders.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Vec<Reminder>", into = "Vec<Reminder>")]
pub struct ReminderList(Vec<Reminder>);

impl ReminderList {
    /// The reminders.
    #[must_use]
    pub fn get(&self) -> &[Reminder] {
        &self.0
    }
}

impl TryFrom<Vec<Reminder>> for ReminderList {
    type Error = ValueError;
    fn try_from(reminders: Vec<Reminder>) -> Result<Self, ValueError> {
        if reminders.len() <= 20 {
            Ok(Self(reminders))
        } else {
            Err(ValueError(Cow::Borrowed("there are at most 20 reminders")))
        }
    }
}

impl From<ReminderList> for Vec<Reminder> {
    fn from(list: ReminderList) -> Self {
        list.0
    }
}

impl JsonSchema for ReminderList {
    fn schema_name() -> Cow<'static, str> {
        "ReminderList".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let item = generator.subschema_for::<Reminder>();
        json_schema!({ "type": "array", "items": item, "maxItems": 20 })
    }
}

/// How long a reminder is put off: 5 to 180 minutes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct SnoozeMinutes(u8);

impl SnoozeMinutes {
    /// Where a reminder is put off without being asked by how much: common practice, no source.
    pub const USUAL: Self = Self(15);

    /// So many minutes.
    ///
    /// # Errors
    /// Refuses fewer than 5 and more than 180.
    pub fn new(minutes: u8) -> Result<Self, ValueError> {
        if (5..=180).contains(&minutes) {
            Ok(Self(minutes))
        } else {
            Err(ValueError(Cow::Borrowed("a reminder is put off by 5 to 180 minutes")))
        }
    }

    /// The minutes, 5 to 180.
    #[must_use]
    pub fn get(self) -> u8 {
        self.0
    }
}
