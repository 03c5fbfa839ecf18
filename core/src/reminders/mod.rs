//! Reminders: which instants a shell is to remember, in which words, and the same as a calendar.
//!
//! This room decides what can be set ([`ReminderSettings`]), which instant a local time means in a zone
//! ([`local`]), which reminders come next ([`plan`]) and what a calendar file holds ([`calendar`]). What
//! leaves it is an instant and a few neutral words, and nothing else. It leaves to the diary where the
//! settings are kept, to the companion when to plan anew, and to the shells how a reminder is shown and
//! hidden on a locked screen.
//!
//! Its rules stand in numbered sentences in `REMINDERS.md`, beside this file; tests name them.

mod calendar;
mod clock;
pub mod local;
mod plan;
mod settings;
#[cfg(test)]
mod tests;
mod words;

pub use calendar::{CalendarFile, calendar};
pub use clock::{ClockTime, ClockTimes, QuietHours, Weekdays};
pub use plan::{DoneSession, Facts, MOST, PlanReminders, PlannedReminder, Silence, plan, snooze};
pub use settings::{Reminder, ReminderList, ReminderSettings, SnoozeMinutes, When};
pub use words::{NeutralWords, after_line, calendar_note, in_quiet_hours, off_line};
