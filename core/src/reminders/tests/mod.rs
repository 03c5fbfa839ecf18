//! Reminders: zones against published cases and another implementation; what comes next; that nothing
//! leaves but neutral words; the calendar; the stored form.

mod calendar;
mod leaving;
mod next;
mod settings;
mod zones;

use super::*;
use crate::diary::entry::EntryId;
use crate::moment::{Moment, Stamp};
use crate::programme::values::{Line, Practice};
use crate::words::Words;

fn stamp(text: &str) -> Stamp {
    text.parse().unwrap()
}

fn moment(text: &str) -> Moment {
    Moment::at(stamp(text))
}

fn time(text: &str) -> ClockTime {
    text.to_owned().try_into().unwrap()
}

fn times(texts: &[&str]) -> ClockTimes {
    texts.iter().map(|text| time(text)).collect::<Vec<_>>().try_into().unwrap()
}

fn daily(practice: Practice, at: &[&str]) -> Reminder {
    let when = When::Times { days: Weekdays::ALL, at: times(at) };
    Reminder { practice, when, skip_when_done: true }
}

fn settings(reminders: Vec<Reminder>) -> ReminderSettings {
    let mut settings = ReminderSettings::off(EntryId([9; 16]));
    settings.on = true;
    settings.reminders = reminders.try_into().unwrap();
    settings
}

fn words() -> Words {
    Words::for_language("en")
}

/// The next instants, as text.
fn next_at(
    settings: &ReminderSettings,
    facts: &Facts<'_>,
    now: &Moment,
    count: usize,
) -> Vec<String> {
    plan(settings, facts, now, count, &words()).at().iter().map(Stamp::to_string).collect()
}

/// All instants up to `until`, asked for in portions, each from the last of the one before.
fn all_until(
    settings: &ReminderSettings,
    facts: &Facts<'_>,
    mut now: Moment,
    until: i64,
) -> Vec<Stamp> {
    let mut all: Vec<Stamp> = Vec::new();
    loop {
        let portion = plan(settings, facts, &now, MOST, &words()).at();
        assert!(portion.len() <= MOST);
        let Some(last) = portion.last().copied() else { return all };
        all.extend(portion.into_iter().filter(|at| at.millis() < until));
        if last.millis() >= until {
            return all;
        }
        now = Moment::at(last);
    }
}
