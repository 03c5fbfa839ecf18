//! Times of day, days of the week and quiet hours, as a person sets them: how each is written and what is refused. Leaves
//! to the rest of this room when a reminder comes.

use std::borrow::Cow;
use std::fmt;

use chrono::{NaiveTime, Timelike, Weekday};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

use crate::programme::values::ValueError;

/// A time of day to the minute, written `08:30`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct ClockTime(NaiveTime);

impl ClockTime {
    /// A time of day.
    ///
    /// # Errors
    /// Refuses an hour above 23 and a minute above 59.
    pub fn new(hour: u32, minute: u32) -> Result<Self, ValueError> {
        NaiveTime::from_hms_opt(hour, minute, 0).map(Self).ok_or(NOT_A_TIME)
    }

    /// The time of day, to the minute.
    #[must_use]
    pub fn of(time: NaiveTime) -> Self {
        Self(time.with_second(0).and_then(|time| time.with_nanosecond(0)).unwrap_or(time))
    }

    /// The time.
    #[must_use]
    pub fn get(self) -> NaiveTime {
        self.0
    }
}

const NOT_A_TIME: ValueError =
    ValueError(Cow::Borrowed("a time of day is written like 08:30, from 00:00 to 23:59"));

impl TryFrom<String> for ClockTime {
    type Error = ValueError;
    fn try_from(text: String) -> Result<Self, ValueError> {
        let digits = |text: &str| {
            (text.len() == 2 && text.bytes().all(|b| b.is_ascii_digit())).then(|| text.parse().ok())
        };
        let (hour, minute) = text.split_once(':').ok_or(NOT_A_TIME)?;
        match (digits(hour).flatten(), digits(minute).flatten()) {
            (Some(hour), Some(minute)) => Self::new(hour, minute),
            _ => Err(NOT_A_TIME),
        }
    }
}

impl From<ClockTime> for String {
    fn from(time: ClockTime) -> String {
        time.to_string()
    }
}

impl fmt::Display for ClockTime {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.0.format("%H:%M"))
    }
}

impl JsonSchema for ClockTime {
    fn schema_name() -> Cow<'static, str> {
        "ClockTime".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "pattern": "^([01][0-9]|2[0-3]):[0-5][0-9]$" })
    }
}

/// One to six different times of day, in order.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Vec<ClockTime>", into = "Vec<ClockTime>")]
pub struct ClockTimes(Vec<ClockTime>);

impl ClockTimes {
    /// The times, earliest first.
    #[must_use]
    pub fn get(&self) -> &[ClockTime] {
        &self.0
    }
}

impl TryFrom<Vec<ClockTime>> for ClockTimes {
    type Error = ValueError;
    fn try_from(mut times: Vec<ClockTime>) -> Result<Self, ValueError> {
        times.sort_unstable();
        times.dedup();
        if (1..=6).contains(&times.len()) {
            Ok(Self(times))
        } else {
            Err(ValueError(Cow::Borrowed("choose 1 to 6 times of day")))
        }
    }
}

impl From<ClockTimes> for Vec<ClockTime> {
    fn from(times: ClockTimes) -> Self {
        times.0
    }
}

impl JsonSchema for ClockTimes {
    fn schema_name() -> Cow<'static, str> {
        "ClockTimes".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let item = generator.subschema_for::<ClockTime>();
        json_schema!({ "type": "array", "items": item, "minItems": 1, "maxItems": 6 })
    }
}

/// Some days of the week, at least one; written as a list of `mon` to `sun`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Vec<Day>", into = "Vec<Day>")]
pub struct Weekdays(u8);

/// A day of the week as it is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
enum Day {
    Mon,
    Tue,
    Wed,
    Thu,
    Fri,
    Sat,
    Sun,
}

const DAYS: [Day; 7] = [Day::Mon, Day::Tue, Day::Wed, Day::Thu, Day::Fri, Day::Sat, Day::Sun];

impl Weekdays {
    /// Every day.
    pub const ALL: Weekdays = Weekdays(0b111_1111);

    /// These days.
    ///
    /// # Errors
    /// Refuses none at all.
    pub fn new(days: impl IntoIterator<Item = Weekday>) -> Result<Self, ValueError> {
        let bits = days.into_iter().fold(0, |bits, day| bits | 1 << day.num_days_from_monday());
        if bits == 0 { Err(NO_DAY) } else { Ok(Self(bits)) }
    }

    /// The days, Monday first.
    pub fn iter(self) -> impl Iterator<Item = Weekday> {
        const WEEK: [Weekday; 7] = [
            Weekday::Mon,
            Weekday::Tue,
            Weekday::Wed,
            Weekday::Thu,
            Weekday::Fri,
            Weekday::Sat,
            Weekday::Sun,
        ];
        WEEK.into_iter().filter(move |day| self.has(*day))
    }

    /// Whether a day is among them.
    #[must_use]
    pub fn has(self, day: Weekday) -> bool {
        self.0 & (1 << day.num_days_from_monday()) != 0
    }
}

const NO_DAY: ValueError = ValueError(Cow::Borrowed("choose at least one day of the week"));

impl TryFrom<Vec<Day>> for Weekdays {
    type Error = ValueError;
    fn try_from(days: Vec<Day>) -> Result<Self, ValueError> {
        let bits = days.into_iter().fold(0u8, |bits, day| bits | 1 << day as u8);
        if bits == 0 { Err(NO_DAY) } else { Ok(Self(bits)) }
    }
}

impl From<Weekdays> for Vec<Day> {
    fn from(days: Weekdays) -> Self {
        DAYS.into_iter().filter(|day| days.0 & (1 << *day as u8) != 0).collect()
    }
}

impl JsonSchema for Weekdays {
    fn schema_name() -> Cow<'static, str> {
        "Weekdays".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let item = generator.subschema_for::<Day>();
        json_schema!({ "type": "array", "items": item, "minItems": 1, "maxItems": 7 })
    }
}

/// Hours in which nothing is shown; may run over midnight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "QuietWritten", into = "QuietWritten")]
pub struct QuietHours {
    from: ClockTime,
    to: ClockTime,
}

/// Quiet hours as they are written.
#[derive(Clone, Copy, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(rename = "QuietHours")]
struct QuietWritten {
    /// The first quiet minute.
    from: ClockTime,
    /// The first minute that is no longer quiet.
    to: ClockTime,
}

impl QuietHours {
    /// From the first quiet minute to the first that no longer is.
    ///
    /// # Errors
    /// Refuses the same time twice: it could mean nothing or the whole day.
    pub fn new(from: ClockTime, to: ClockTime) -> Result<Self, ValueError> {
        if from == to {
            return Err(ValueError(Cow::Borrowed(
                "quiet hours begin and end at different times; turn reminders off for a whole day",
            )));
        }
        Ok(Self { from, to })
    }

    /// The first quiet minute.
    #[must_use]
    pub fn from(self) -> ClockTime {
        self.from
    }

    /// The first minute that is no longer quiet.
    #[must_use]
    pub fn to(self) -> ClockTime {
        self.to
    }

    /// Whether a time of day is quiet: from the beginning on, and no longer at the end itself.
    #[must_use]
    pub fn has(&self, time: NaiveTime) -> bool {
        let (from, to) = (self.from.0, self.to.0);
        if from < to { (from..to).contains(&time) } else { time >= from || time < to }
    }
}

impl TryFrom<QuietWritten> for QuietHours {
    type Error = ValueError;
    fn try_from(written: QuietWritten) -> Result<Self, ValueError> {
        Self::new(written.from, written.to)
    }
}

impl From<QuietHours> for QuietWritten {
    fn from(hours: QuietHours) -> Self {
        Self { from: hours.from, to: hours.to }
    }
}

impl JsonSchema for QuietHours {
    fn schema_name() -> Cow<'static, str> {
        "QuietHours".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        QuietWritten::json_schema(generator)
    }
}
