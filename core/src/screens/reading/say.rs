//! How days, sizes, ratings and numbers are said to a clinician: short.

use chrono::{Datelike, NaiveDate};

use super::super::plain;
use super::gather::Gathered;
use crate::diary::entry::{Ended, Reason, Session};
use crate::insight::{LEAST_RATED, Meaningful, Spread};
use crate::moment::Stamp;
use crate::programme::plan::{Schedule, Step};
use crate::programme::values::{Position, RatingKind};
use crate::words::{Value, Words};

/// "Tue 3 Mar", with the year where it is not the summary's own.
pub(in crate::screens) fn day(gathered: &Gathered<'_>, day: NaiveDate) -> String {
    let values = [
        ("weekday", plain::whole(day.weekday().number_from_monday())),
        ("day", plain::whole(day.day())),
        ("month", plain::whole(day.month())),
    ];
    let short = gathered.words.text("reading-day", &values);
    if day.year() == gathered.summary.made.day().year() {
        return short;
    }
    let year = day.year().to_string().into();
    gathered.words.text("reading-day-of-year", &[("day", short.into()), ("year", year)])
}

/// The day of a stamp.
pub(in crate::screens) fn on(gathered: &Gathered<'_>, stamp: &Stamp) -> Value {
    day(gathered, stamp.day()).into()
}

/// A count.
pub(in crate::screens) fn count(number: usize) -> Value {
    plain::whole(i64::try_from(number).unwrap_or(i64::MAX))
}

/// A median or mean, without a decimal place where it has none.
pub(in crate::screens) fn number(number: f64) -> Value {
    let places = u8::from((number * 10.0).round() % 10.0 != 0.0);
    Value::decimal(number, places)
}

/// "on back".
pub(in crate::screens) fn position(words: &Words, position: Position) -> String {
    match position {
        Position::OnBack => words.text("reading-on-back", &[]),
        Position::SideLying => words.text("reading-side-lying", &[]),
        Position::Sitting => words.text("reading-sitting", &[]),
        Position::Standing => words.text("reading-standing", &[]),
        Position::Other => words.text("reading-position-other", &[]),
    }
}

/// "Size 2 (15 mm)".
pub(in crate::screens) fn step(words: &Words, step: &Step) -> String {
    let name = step.name.as_str().into();
    match step.main_size() {
        Some(size) => {
            let size = plain::size(words, size).into();
            words.text("reading-step-sized", &[("name", name), ("size", size)])
        }
        None => step.name.to_string(),
    }
}

/// "15 mm, on back", as used.
pub(in crate::screens) fn used(words: &Words, session: &Session) -> String {
    let what = match session.main_size() {
        Some(size) => plain::size(words, size),
        None => plain::practice(words, &session.practice, None),
    };
    let position = position(words, session.position).into();
    words.text("reading-used", &[("what", what.into()), ("position", position)])
}

/// "3 to 5 times a week".
pub(in crate::screens) fn schedule(words: &Words, schedule: &Schedule) -> String {
    let (least, most) = (schedule.weekly_least.get(), schedule.weekly_most.get());
    if least == most {
        words.text("reading-weekly", &[("times", plain::whole(least))])
    } else {
        let span = [("least", plain::whole(least)), ("most", plain::whole(most))];
        words.text("reading-weekly-span", &span)
    }
}

/// How a session ended.
pub(in crate::screens) fn ended(words: &Words, ended: Ended) -> String {
    match ended {
        Ended::Finished => words.text("entries-finished", &[]),
        Ended::Stopped(why) => {
            words.text("reading-stopped", &[("reason", reason(words, why).into())])
        }
        Ended::CouldNotStart(why) => {
            words.text("reading-could-not-start", &[("reason", reason(words, why).into())])
        }
    }
}

fn reason(words: &Words, reason: Reason) -> String {
    match reason {
        Reason::Discomfort => words.text("reading-reason-discomfort", &[]),
        Reason::DidNotGoIn => words.text("reading-reason-did-not-go-in", &[]),
        Reason::Upset => words.text("reading-reason-upset", &[]),
        Reason::Interrupted => words.text("reading-reason-interrupted", &[]),
        Reason::Other => words.text("reading-reason-other", &[]),
    }
}

/// "highest discomfort 4", or that it was not rated.
pub(in crate::screens) fn peak(words: &Words, session: &Session) -> String {
    let name = plain::rating_name(words, RatingKind::Peak).into();
    match session.ratings.given(RatingKind::Peak) {
        Some(rating) => {
            words.text("reading-rated", &[("rating", name), ("number", plain::whole(rating.get()))])
        }
        None => words.text("reading-unrated", &[("rating", name)]),
    }
}

/// "median 2, quartiles 1 and 3, range 0 to 5; none unrated".
pub(in crate::screens) fn spread(words: &Words, kind: RatingKind, spread: &Spread) -> String {
    let values = [
        ("rating", plain::rating_name(words, kind).into()),
        ("median", number(spread.median)),
        ("lower", number(spread.lower)),
        ("upper", number(spread.upper)),
        ("least", plain::whole(spread.least)),
        ("most", plain::whole(spread.most)),
        ("unrated", count(spread.unrated)),
    ];
    // Quartiles of a handful are no more than the values themselves; besides discomfort they would only
    // lengthen what has to be read.
    if spread.rated < LEAST_RATED || kind != RatingKind::Peak {
        let few: Vec<(&str, Value)> = values
            .iter()
            .filter(|(name, _)| !matches!(*name, "lower" | "upper"))
            .cloned()
            .collect();
        return words.text("reading-spread-few", &few);
    }
    words.text("reading-spread", &values)
}

/// The ratings in order, a dash for each session without one.
pub(in crate::screens) fn values(ratings: &[Option<u8>]) -> String {
    let said = ratings.iter().map(|one| one.map_or("–".to_owned(), |rating| rating.to_string()));
    said.collect::<Vec<_>>().join(" ")
}

/// Which published threshold of change is reached.
pub(in crate::screens) fn reaches(words: &Words, reaches: Meaningful) -> String {
    match reaches {
        Meaningful::Neither => words.text("reading-change-neither", &[]),
        Meaningful::Points => words.text("reading-change-points", &[]),
        Meaningful::Share => words.text("reading-change-share", &[]),
        Meaningful::Both => words.text("reading-change-both", &[]),
    }
}
