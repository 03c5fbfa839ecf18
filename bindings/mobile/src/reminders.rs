//! Reminders as they are set.

use frond_core::programme::values::{Line, Practice};
use frond_core::reminders::{ClockTime, ClockTimes, NeutralWords, Reminder, Weekdays, When};

#[uniffi::remote(Record)]
pub struct Reminder {
    pub practice: Practice,
    pub when: When,
    pub skip_when_done: bool,
}

#[uniffi::remote(Enum)]
pub enum When {
    Times { days: Weekdays, at: ClockTimes },
    After { routine: Line, days: Weekdays, about: Option<ClockTime> },
}

#[uniffi::remote(Enum)]
pub enum NeutralWords {
    Moment,
    Quiet,
    Reminder,
    OwnTime,
}
