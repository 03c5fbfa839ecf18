//! What a shell must do.

use frond_core::companion::Duty;
use frond_core::moment::Stamp;
use frond_core::reminders::{CalendarFile, PlanReminders};

#[uniffi::remote(Enum)]
pub enum Duty {
    OpenDialler { number: String },
    KeepScreenOn,
    PlanReminders(PlanReminders),
    ShareFile(CalendarFile),
}

#[uniffi::remote(Record)]
pub struct PlanReminders {
    pub at: Vec<Stamp>,
    pub words: String,
}

#[uniffi::remote(Record)]
pub struct CalendarFile {
    pub name: String,
    pub text: String,
}
