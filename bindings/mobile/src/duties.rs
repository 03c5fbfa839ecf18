//! What a shell must do.

use frond_core::companion::{Duty, SharedFile};
use frond_core::moment::Stamp;
use frond_core::reminders::{CalendarFile, PlanReminders, PlannedReminder, SnoozeMinutes};

#[uniffi::remote(Enum)]
pub enum Duty {
    OpenDialler { number: String },
    KeepScreenOn,
    PlanReminders(PlanReminders),
    ShareFile(SharedFile),
}

#[uniffi::remote(Record)]
pub struct PlanReminders {
    pub reminders: Vec<PlannedReminder>,
    pub words: String,
    pub put_off: SnoozeMinutes,
}

#[uniffi::remote(Record)]
pub struct PlannedReminder {
    pub at: Stamp,
    pub until: Stamp,
}

#[uniffi::remote(Record)]
pub struct CalendarFile {
    pub name: String,
    pub text: String,
}

#[uniffi::remote(Record)]
pub struct SharedFile {
    pub name: String,
    pub mime: String,
    pub bytes: Vec<u8>,
    pub sealed: bool,
}
