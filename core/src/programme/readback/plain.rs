//! How sizes, times and names are said in a programme that is read back.

use std::fmt::Display;

use super::super::plan::{MinutesSpan, Schedule};
use super::super::values::{Position, Practice, RatingKind, Size};
use crate::moment::Stamp;
use crate::safety::{Sign, Tier};
use crate::words::{Value, Words};

/// A number for a message.
pub(in crate::programme) fn whole(number: impl Into<i64>) -> Value {
    Value::Whole(number.into())
}

/// A place in a list, or the length of one.
pub(in crate::programme) fn place(number: usize) -> Value {
    number.into()
}

/// `22 mm (2.2 cm) widest diameter`.
pub(in crate::programme) fn widest(size: Size, words: &Words) -> String {
    let tenths = size.get();
    let mm = Value::decimal(size.millimetres(), u8::from(!tenths.is_multiple_of(10)));
    let places = u8::from(!tenths.is_multiple_of(100)) + u8::from(!tenths.is_multiple_of(10));
    let cm = Value::decimal(size.millimetres() / 10.0, places);
    words.text("readback-widest", &[("mm", mm), ("cm", cm)])
}

/// "3 to 5 times a week, at most once a day, with at least 1 whole day of rest in between".
pub(in crate::programme) fn schedule(schedule: Schedule, words: &Words) -> String {
    let (least, most) = (schedule.weekly_least.get(), schedule.weekly_most.get());
    let weekly: Value = if least == most {
        words.text("reading-weekly", &[("times", whole(least))]).into()
    } else {
        let span = [("least", whole(least)), ("most", whole(most))];
        words.text("reading-weekly-span", &span).into()
    };
    let daily = words.text("readback-times", &[("count", whole(schedule.daily_most.get()))]).into();
    match schedule.rest_days {
        Some(rest) => {
            let rest = words.text("readback-whole-days", &[("count", whole(rest.get()))]).into();
            words.text(
                "readback-schedule-rest",
                &[("weekly", weekly), ("daily", daily), ("rest", rest)],
            )
        }
        None => words.text("readback-schedule", &[("weekly", weekly), ("daily", daily)]),
    }
}

/// "5 to 10 minutes".
pub(in crate::programme) fn minutes(span: MinutesSpan, words: &Words) -> String {
    let (least, most) = (span.least.get(), span.most.get());
    if least == most {
        words.text("common-minutes", &[("minutes", whole(least))])
    } else {
        words.text("common-minutes-span", &[("least", whole(least)), ("most", whole(most))])
    }
}

/// "14 days".
pub(in crate::programme) fn days(count: impl Into<i64>, words: &Words) -> String {
    words.text("readback-days", &[("count", whole(count))])
}

/// "3 different days".
pub(in crate::programme) fn different_days(count: impl Into<i64>, words: &Words) -> String {
    words.text("readback-different-days", &[("count", whole(count))])
}

/// "48 hours".
pub(in crate::programme) fn hours(count: impl Into<i64>, words: &Words) -> String {
    words.text("readback-hours", &[("count", whole(count))])
}

/// "3 full sessions".
pub(in crate::programme) fn full_sessions(count: impl Into<i64>, words: &Words) -> String {
    words.text("readback-full-sessions", &[("count", whole(count))])
}

pub(in crate::programme) fn rated(rating: RatingKind, words: &Words) -> String {
    match rating {
        RatingKind::Peak => words.text("readback-rating-peak", &[]),
        RatingKind::Before => words.text("readback-rating-before", &[]),
        RatingKind::After => words.text("readback-rating-after", &[]),
        RatingKind::Worry => words.text("readback-rating-worry", &[]),
    }
}

pub(in crate::programme) fn name_of(practice: &Practice, words: &Words) -> String {
    match practice {
        Practice::Trainer => words.text("readback-practice-trainer", &[]),
        Practice::Breathing => words.text("readback-practice-breathing", &[]),
        Practice::BellyBreathing => words.text("readback-practice-belly-breathing", &[]),
        Practice::Meditation => words.text("readback-practice-meditation", &[]),
        Practice::Other(id) => {
            words.text("readback-practice-other", &[("id", id.to_string().into())])
        }
    }
}

pub(in crate::programme) fn position(position: Position, words: &Words) -> String {
    match position {
        Position::OnBack => words.text("readback-on-back", &[]),
        Position::SideLying => words.text("readback-side-lying", &[]),
        Position::Sitting => words.text("readback-sitting", &[]),
        Position::Standing => words.text("readback-standing", &[]),
        Position::Other => words.text("readback-position-other", &[]),
    }
}

pub(in crate::programme) fn tier(tier: Tier, words: &Words) -> String {
    match tier {
        Tier::Note => words.text("readback-tier-note", &[]),
        Tier::AskFirst => words.text("readback-tier-ask-first", &[]),
        Tier::Stop => words.text("readback-tier-stop", &[]),
        Tier::Emergency => words.text("readback-tier-emergency", &[]),
    }
}

/// A sign as the person would say it.
pub(in crate::programme) fn sign(sign: Sign, words: &Words) -> String {
    words.text(sign.name_id(), &[])
}

/// Each between quotation marks.
pub(in crate::programme) fn list<T: Display>(items: &[T], words: &Words) -> String {
    let quoted = |item: &T| words.text("readback-quoted", &[("text", item.to_string().into())]);
    items.iter().map(quoted).collect::<Vec<_>>().join(", ")
}

/// With a capital at the beginning.
pub(in crate::programme) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

pub(in crate::programme) fn day(day: chrono::NaiveDate, words: &Words) -> String {
    words.date(day)
}

/// A moment to the second, with its offset and zone.
pub(in crate::programme) fn when(stamp: &Stamp, words: &Words) -> String {
    let on: Value = day(stamp.day(), words).into();
    let time: Value = stamp.local().format("%H:%M:%S%.f (UTC%:z)").to_string().into();
    match stamp.zone() {
        Some(zone) => {
            let zone = zone.name().into();
            words.text("readback-at-zone", &[("day", on), ("time", time), ("zone", zone)])
        }
        None => words.text("readback-at", &[("day", on), ("time", time)]),
    }
}
