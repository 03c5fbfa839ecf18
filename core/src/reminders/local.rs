//! Which instant a local time means (N5), by the rules of RFC 5545, section 3.3.5: a time that comes
//! twice is its first occurrence; a time that does not come is read with the offset from before the gap.

use chrono::{DateTime, FixedOffset, MappedLocalTime, NaiveDateTime, TimeDelta, TimeZone, Utc};

use crate::moment::{NamedZone, Stamp, StampError};

/// Where local times are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Zone {
    /// A zone of the time zone database.
    Named(NamedZone),
    /// A plain offset, where the zone is not known.
    Fixed(FixedOffset),
}

impl Zone {
    /// The zone a stamp was lived in; its offset where the zone is not known.
    #[must_use]
    pub fn of(stamp: &Stamp) -> Self {
        stamp.zone().map_or(Zone::Fixed(*stamp.local().offset()), Zone::Named)
    }

    /// The instant as lived here.
    ///
    /// # Errors
    /// [`StampError::OutOfRange`] outside the years 1970 to 9999.
    pub fn stamp(self, instant: DateTime<Utc>) -> Result<Stamp, StampError> {
        match self {
            Zone::Named(zone) => Stamp::in_zone(instant, zone),
            Zone::Fixed(offset) => Stamp::new(instant.with_timezone(&offset), None),
        }
    }

    fn offset_at(self, instant: DateTime<Utc>) -> Option<TimeDelta> {
        let offset = match self {
            Zone::Named(zone) => zone.offset_at(instant)?,
            Zone::Fixed(offset) => offset,
        };
        Some(TimeDelta::seconds(i64::from(offset.local_minus_utc())))
    }
}

/// The instant that a local time means in a zone; `None` only at the ends of the calendar.
#[must_use]
pub fn instant(zone: Zone, local: NaiveDateTime) -> Option<DateTime<Utc>> {
    let found = match zone {
        Zone::Named(named) => named.instants(local),
        Zone::Fixed(offset) => offset.from_local_datetime(&local).map(|time| time.to_utc()),
    };
    match found {
        MappedLocalTime::Single(instant) => Some(instant),
        MappedLocalTime::Ambiguous(one, other) => Some(one.min(other)),
        MappedLocalTime::None => {
            local.and_utc().checked_sub_signed(offset_before_gap(zone, local)?)
        }
    }
}

/// The offset just before the gap in which a local time lies.
fn offset_before_gap(zone: Zone, local: NaiveDateTime) -> Option<TimeDelta> {
    // Offsets lie within 16 hours of UTC, so local time is before `local` at the one end and after it
    // at the other. In between it passes over `local` exactly once, without touching it: at the gap.
    let away = TimeDelta::hours(20);
    let mut before = local.and_utc().checked_sub_signed(away)?;
    let mut after = local.and_utc().checked_add_signed(away)?;
    while after - before > TimeDelta::seconds(1) {
        let middle = before + (after - before) / 2;
        let passed = middle.naive_utc().checked_add_signed(zone.offset_at(middle)?)? > local;
        if passed {
            after = middle;
        } else {
            before = middle;
        }
    }
    zone.offset_at(before)
}
