//! The small values: how each crosses the border, and what is said when one does not hold.
//!
//! A value keeps its own rule: it is made by the core's own constructor as it crosses. What is refused there
//! comes back from the call as [`FrondError::PutRight`](crate::trouble::FrondError) in words about that kind
//! of value; nothing is asked of the core then. Numbers cross as `Int`, so that a shell does not deal in
//! unsigned ones; a day crosses as a date, an instant with its offset and zone.

use std::collections::{BTreeMap, HashMap};

use chrono::{FixedOffset, NaiveDate, NaiveTime, Offset, Timelike, Weekday};
use frond_core::diary::entry::{EntryId, Goal};
use frond_core::handover::Handed;
use frond_core::moment::Stamp;
use frond_core::practice::timed::Choice as FoundChoice;
use frond_core::programme::values::{Line, Minutes, Passage, Rating, Size, Token};
use frond_core::reminders::{ClockTime, ClockTimes, QuietHours, SnoozeMinutes, Weekdays};
use frond_core::safety::{Answer, FullList, HoldCondition, Sign, SignGroup};

use crate::trouble::amiss;

// What a person types or chooses.

uniffi::custom_type!(Line, String, {
    remote,
    lower: |line| line.into(),
    try_lift: |text| {
        let empty = text.trim().is_empty();
        let id = if empty { "page-error-empty" } else { "page-error-line" };
        Line::new(&text).map_err(|_| amiss(id))
    },
});

uniffi::custom_type!(Passage, String, {
    remote,
    lower: |passage| passage.into(),
    try_lift: |text| {
        let empty = text.trim().is_empty();
        let id = if empty { "page-error-empty" } else { "page-error-note" };
        Passage::new(&text).map_err(|_| amiss(id))
    },
});

uniffi::custom_type!(Rating, i32, {
    remote,
    lower: |rating| rating.get().into(),
    try_lift: |number| whole(number)
        .and_then(|number| Rating::new(number).ok())
        .ok_or_else(|| amiss("page-error-rating")),
});

uniffi::custom_type!(Size, i32, {
    remote,
    lower: |size| size.get().into(),
    try_lift: |tenths| whole(tenths)
        .and_then(|tenths| Size::new(tenths).ok())
        .ok_or_else(|| amiss("page-error-size-mm")),
});

uniffi::custom_type!(Minutes, i32, {
    remote,
    lower: |minutes| minutes.get().into(),
    try_lift: |minutes| whole(minutes)
        .and_then(|minutes| Minutes::new(minutes).ok())
        .ok_or_else(|| amiss("page-error-minutes")),
});

uniffi::custom_type!(Goal, i32, {
    remote,
    lower: |goal| goal.get().into(),
    try_lift: |reached| i8::try_from(reached)
        .ok()
        .and_then(|reached| Goal::try_from(reached).ok())
        .ok_or_else(|| amiss("page-error-choice")),
});

uniffi::custom_type!(SnoozeMinutes, i32, {
    remote,
    lower: |minutes| minutes.get().into(),
    try_lift: |minutes| u8::try_from(minutes)
        .ok()
        .and_then(|minutes| SnoozeMinutes::new(minutes).ok())
        .ok_or_else(|| amiss("page-error-minutes")),
});

fn whole(number: i32) -> Option<u64> {
    u64::try_from(number).ok()
}

// Identities.

uniffi::custom_type!(EntryId, String, {
    remote,
    lower: |id| id.to_string(),
    try_lift: |text| text.parse().map_err(|_| amiss("trouble-try-again")),
});

uniffi::custom_type!(Token, String, {
    remote,
    lower: |token| token.into(),
    try_lift: |text| Token::new(&text).map_err(|_| amiss("trouble-try-again")),
});

// Days and times.

uniffi::custom_type!(NaiveDate, String, {
    remote,
    lower: |day| day.to_string(),
    try_lift: |text| text.parse().map_err(|_| amiss("page-error-day")),
});

/// An instant, with the local offset and, where known, the zone it was lived in.
#[derive(Clone, Debug, PartialEq, Eq, uniffi::Record)]
pub struct Instant {
    /// Milliseconds since 1970-01-01T00:00:00Z.
    pub millis: i64,
    /// The offset then, in seconds east of UTC.
    pub offset_seconds: i32,
    /// The zone's id.
    pub zone: Option<String>,
}

uniffi::custom_type!(Stamp, Instant, {
    remote,
    lower: |stamp| Instant {
        millis: stamp.millis(),
        offset_seconds: stamp.local().offset().fix().local_minus_utc(),
        zone: stamp.zone().map(|zone| zone.name().to_owned()),
    },
    try_lift: |instant| FixedOffset::east_opt(instant.offset_seconds)
        .and_then(|offset| {
            // A zone newer than the core's keeps its offset.
            let zone = instant.zone.and_then(|zone| zone.parse().ok());
            Stamp::from_millis(instant.millis, offset, zone).ok()
        })
        .ok_or_else(|| amiss("page-error-time")),
});

/// A time of day, to the minute.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Record)]
pub struct HourMinute {
    /// 0 to 23.
    pub hour: i32,
    /// 0 to 59.
    pub minute: i32,
}

uniffi::custom_type!(ClockTime, HourMinute, {
    remote,
    lower: |time| of_day(time.get()),
    try_lift: |time| time_of_day(time).map(ClockTime::of),
});

fn of_day(time: NaiveTime) -> HourMinute {
    // Below 24 and below 60.
    let small = |number: u32| i32::try_from(number).unwrap_or_default();
    HourMinute { hour: small(time.hour()), minute: small(time.minute()) }
}

fn time_of_day(time: HourMinute) -> uniffi::Result<NaiveTime> {
    let parts = u32::try_from(time.hour).ok().zip(u32::try_from(time.minute).ok());
    parts
        .and_then(|(hour, minute)| NaiveTime::from_hms_opt(hour, minute, 0))
        .ok_or_else(|| amiss("page-error-time"))
}

type ClockTimeList = Vec<ClockTime>;

uniffi::custom_type!(ClockTimes, ClockTimeList, {
    remote,
    lower: |times| times.into(),
    try_lift: |times| ClockTimes::try_from(times).map_err(|_| amiss("page-error-time")),
});

/// A day of the week.
#[uniffi::remote(Enum)]
pub enum Weekday {
    Mon,
    Tue,
    Wed,
    Thu,
    Fri,
    Sat,
    Sun,
}

type WeekdayList = Vec<Weekday>;

uniffi::custom_type!(Weekdays, WeekdayList, {
    remote,
    lower: |days| days.iter().collect(),
    try_lift: |days| Weekdays::new(days).map_err(|_| amiss("page-error-days")),
});

/// From when to when it is quiet; over midnight where the end comes first.
#[derive(Clone, Copy, uniffi::Record)]
pub struct FromTo {
    /// The beginning.
    pub from: ClockTime,
    /// The end.
    pub to: ClockTime,
}

uniffi::custom_type!(QuietHours, FromTo, {
    remote,
    lower: |hours| FromTo { from: hours.from(), to: hours.to() },
    try_lift: |hours| {
        QuietHours::new(hours.from, hours.to).map_err(|_| amiss("page-error-quiet"))
    },
});

// What the core keeps in a form that does not cross, under a name for its place.

/// A month of a year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Record)]
pub struct Month {
    /// The year.
    pub year: i32,
    /// 1 to 12.
    pub month: u32,
}

pub(crate) type MonthAsked = (i32, u32);

uniffi::custom_type!(MonthAsked, Month, {
    remote,
    lower: |asked| Month { year: asked.0, month: asked.1 },
    try_lift: |month| Ok((month.year, month.month)),
});

/// A first and a last day, both included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Record)]
pub struct FirstLast {
    /// The first day.
    pub first: NaiveDate,
    /// The last day.
    pub last: NaiveDate,
}

pub(crate) type DaysAsked = (NaiveDate, NaiveDate);

uniffi::custom_type!(DaysAsked, FirstLast, {
    remote,
    lower: |days| FirstLast { first: days.0, last: days.1 },
    try_lift: |days| Ok((days.first, days.last)),
});

/// What can become of a practice found again, in words.
#[derive(Clone, uniffi::Record)]
pub struct FoundAnswer {
    /// What is chosen.
    pub choice: FoundChoice,
    /// In words.
    pub label: String,
}

pub(crate) type FoundOffer = (FoundChoice, String);

uniffi::custom_type!(FoundOffer, FoundAnswer, {
    remote,
    lower: |offer| FoundAnswer { choice: offer.0, label: offer.1 },
    try_lift: |answer| Ok((answer.choice, answer.label)),
});

/// A count or a place in a row.
pub(crate) type WholeNumber = usize;

uniffi::custom_type!(WholeNumber, i32, {
    remote,
    lower: |number| i32::try_from(number).unwrap_or(i32::MAX),
    try_lift: |number| usize::try_from(number).map_err(|_| amiss("page-error-number")),
});

pub(crate) type HoldAnswers = BTreeMap<HoldCondition, Answer>;
type HoldAnswerMap = HashMap<HoldCondition, Answer>;

uniffi::custom_type!(HoldAnswers, HoldAnswerMap, {
    remote,
    lower: |answers| answers.into_iter().collect(),
    try_lift: |answers| Ok(answers.into_iter().collect()),
});

/// What was answered so far to the whole list of cautions.
#[derive(Clone, uniffi::Record)]
pub struct FullListAnswers {
    /// Group by group.
    pub groups: HashMap<SignGroup, Answer>,
    /// Question by question; goes before that of its group.
    pub signs: HashMap<Sign, Answer>,
}

uniffi::custom_type!(FullList, FullListAnswers, {
    remote,
    lower: |list| FullListAnswers {
        groups: list.groups().clone().into_iter().collect(),
        signs: list.questions().clone().into_iter().collect(),
    },
    try_lift: |answers| {
        let mut list = FullList::default();
        answers.groups.into_iter().for_each(|(group, answer)| list.answer_group(group, answer));
        answers.signs.into_iter().for_each(|(sign, answer)| list.answer(sign, answer));
        Ok(list)
    },
});

/// What a person was handed, as it came.
#[derive(Clone, uniffi::Enum)]
pub enum HandedOver {
    /// The bytes of a file.
    File {
        /// Its bytes.
        bytes: Vec<u8>,
    },
    /// A link, scanned or pasted.
    Link {
        /// Its text.
        link: String,
        /// The spoken words as typed; empty: none.
        words: String,
    },
}

uniffi::custom_type!(Handed, HandedOver, {
    remote,
    lower: |handed| match handed {
        Handed::File(bytes) => HandedOver::File { bytes: bytes.to_vec() },
        Handed::Link { link, words } => {
            HandedOver::Link { link: link.as_ref().to_owned(), words: words.as_ref().to_owned() }
        }
    },
    try_lift: |handed| Ok(match handed {
        HandedOver::File { bytes } => Handed::File(bytes.into()),
        HandedOver::Link { link, words } => Handed::Link { link: link.into(), words: words.into() },
    }),
});
