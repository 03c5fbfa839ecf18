//! The clinician's cabinet: the list of people whose summaries came back, what became of files that were
//! brought, and why one was refused. Decides order, search and wording. Leaves what is kept and where to the
//! desk, and how one summary reads to [`super::ReadingScreen`].

mod apart;
mod brought;
mod news;
mod older;
mod people;
mod what_if;

pub use apart::WentApart;
pub use brought::{Brought, BroughtScreen, RefusedFile, WhyRefused, why_refused};
pub use news::PlanNews;
pub use older::OlderSummaries;
pub use people::{OrderChoice, PeopleAsked, PeopleOrder, PeopleScreen, PersonLine};
pub use what_if::{
    CabinetRule, CabinetWhatIfScreen, DiaryLine, RuleVerdict, WhatIfLine, WhatIfScreen,
};

use chrono::{Datelike, NaiveDate};

use super::plain;
use crate::moment::Stamp;
use crate::words::Words;

/// "Tue 3 Mar 2026".
fn day(words: &Words, day: NaiveDate) -> String {
    let values = [
        ("weekday", plain::whole(day.weekday().number_from_monday())),
        ("day", plain::whole(day.day())),
        ("month", plain::whole(day.month())),
    ];
    let short = words.text("reading-day", &values).into();
    let year = day.year().to_string().into();
    words.text("reading-day-of-year", &[("day", short), ("year", year)])
}

/// "Tue 3 Mar 2026, 20:15".
fn moment(words: &Words, at: &Stamp) -> String {
    let time = at.local().format("%H:%M").to_string().into();
    words.text("cabinet-at", &[("day", day(words, at.day()).into()), ("time", time)])
}

/// A count for a message.
fn count(number: usize) -> crate::words::Value {
    plain::whole(i64::try_from(number).unwrap_or(i64::MAX))
}
