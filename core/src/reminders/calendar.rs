//! The reminders as a calendar file (RFC 5545), to be imported wherever the person likes (N11, N12).
//!
//! Times float: they have no zone, so that they follow the person when she travels (RFC 5545, 3.3.5,
//! form 1). One event stands for one time of day whatever it is for, with nothing in it but neutral
//! words.

use std::collections::BTreeMap;
use std::fmt;

use chrono::{Datelike, Days, NaiveDate, NaiveTime, TimeDelta, Weekday};
use icalendar::{Alarm, Calendar, Class, Component, Event, EventLike, Property};
use serde::Serialize;
use sha2::{Digest, Sha256};

use super::plan::{Facts, Silence};
use super::settings::ReminderSettings;
use crate::moment::Moment;
use crate::words::Words;

/// A file for the person to keep or share.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CalendarFile {
    /// Its name; neutral.
    pub name: String,
    /// Its content, with the line ends of RFC 5545.
    pub text: String,
}

impl fmt::Debug for CalendarFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("CalendarFile(..)")
    }
}

/// The calendar of all reminders, from the moment on; `None` if there is none to come.
///
/// With a plan it ends with the day by which the plan is to be looked at again. What a calendar cannot
/// know, it cannot do: it does not skip what was done.
#[must_use]
pub fn calendar(
    settings: &ReminderSettings,
    facts: &Facts<'_>,
    moment: &Moment,
    words: &Words,
) -> Option<CalendarFile> {
    let says = words.text(settings.words.word_id(), &[]);
    let until = facts.plan.map(|plan| plan.review_by);
    let mut calendar = Calendar::empty();
    // Names neither the program nor its makers.
    for (key, value) in
        [("VERSION", "2.0"), ("PRODID", "-//Calendar//1//EN"), ("CALSCALE", "GREGORIAN")]
    {
        calendar.append_property(Property::new(key, value));
    }
    let mut any = false;
    for (time, days) in times(settings, facts) {
        let Some(first) =
            first(moment, time, days, facts).filter(|day| until.is_none_or(|u| *day <= u))
        else {
            continue;
        };
        any = true;
        let uid = uid(settings, time);
        let mut event = Event::new();
        event.uid(&uid).timestamp(moment.now.instant()).starts(first.and_time(time)).summary(&says);
        event.class(Class::Private).add_property("TRANSP", "TRANSPARENT");
        event.add_property("RRULE", rule(days, until));
        let last = until.unwrap_or(first + Days::new(400));
        for day in off(facts, first, last).filter(|day| days & bit(day.weekday()) != 0) {
            event.exdate(day.and_time(time));
        }
        // Its time and id are set, because the library would take the machine's clock and a random
        // one.
        let mut alarm = Alarm::display(&says, TimeDelta::zero());
        alarm.uid(&format!("{uid}-1")).timestamp(moment.now.instant());
        event.append_component(alarm);
        calendar.push(event.done());
    }
    any.then(|| CalendarFile {
        name: words.text("leaving-calendar-file", &[]),
        text: calendar.to_string(),
    })
}

fn bit(day: Weekday) -> u8 {
    1 << day.num_days_from_monday()
}

/// Times of the day with the days of the week they hold on, of all reminders together.
fn times(settings: &ReminderSettings, facts: &Facts<'_>) -> BTreeMap<NaiveTime, u8> {
    // A pause ends; a calendar cannot know when. Whether the plan has the practice is another matter.
    let plan_has = Facts { silence: Silence::Nothing, ..*facts };
    let mut times: BTreeMap<NaiveTime, u8> = BTreeMap::new();
    for reminder in settings.reminders.get() {
        if !plan_has.remembers(&reminder.practice) {
            continue;
        }
        let days = reminder.when.days().iter();
        let days = days.fold(0, |bits, day| bits | bit(day));
        for time in reminder.when.times().iter().map(|time| time.get()) {
            if !settings.quiet.is_some_and(|quiet| quiet.has(time)) {
                *times.entry(time).or_default() |= days;
            }
        }
    }
    times
}

/// The first day, from the moment on, on which the time holds and is still ahead.
fn first(moment: &Moment, time: NaiveTime, days: u8, facts: &Facts<'_>) -> Option<NaiveDate> {
    let now = moment.now.local().naive_local();
    let holds = |day: &NaiveDate| {
        let off = facts.time_off.iter().any(|(from, to)| (*from..=*to).contains(day));
        day.and_time(time) > now && days & bit(day.weekday()) != 0 && !off
    };
    moment.now.day().iter_days().take(400).find(holds)
}

fn rule(days: u8, until: Option<NaiveDate>) -> String {
    const NAMES: [&str; 7] = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
    let days: Vec<&str> = NAMES
        .into_iter()
        .enumerate()
        .filter(|(at, _)| days & (1 << at) != 0)
        .map(|(_, n)| n)
        .collect();
    let mut rule = format!("FREQ=WEEKLY;BYDAY={}", days.join(","));
    if let Some(until) = until {
        // Floating like the start, as RFC 5545 3.3.10 asks.
        rule += &until.format(";UNTIL=%Y%m%dT235959").to_string();
    }
    rule
}

/// Days off between two days, each once.
fn off(facts: &Facts<'_>, first: NaiveDate, last: NaiveDate) -> impl Iterator<Item = NaiveDate> {
    first
        .iter_days()
        .take_while(move |day| *day <= last)
        .filter(move |day| facts.time_off.iter().any(|(from, to)| (*from..=*to).contains(day)))
}

/// The same for the same time of day at every export; tells nothing.
fn uid(settings: &ReminderSettings, time: NaiveTime) -> String {
    let mut hash = Sha256::new();
    hash.update(b"calendar 1");
    hash.update(settings.key.0);
    hash.update(time.format("%H:%M").to_string());
    let mut uid = data_encoding::HEXLOWER.encode(&hash.finalize());
    uid.truncate(32);
    uid
}
