//! A time as a person types it: a day, a day with a time, or a full stamp; read in the zone of now.

use std::str::FromStr;

use chrono::{NaiveDate, NaiveDateTime, NaiveTime, TimeZone};
use frond_core::moment::Stamp;

use crate::failure::Failure;

/// A time as typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum When {
    /// A day: its noon, or now if it is today.
    Day(NaiveDate),
    /// A local time.
    Local(NaiveDateTime),
    /// A full stamp.
    Stamp(Stamp),
}

impl FromStr for When {
    type Err = &'static str;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        if let Ok(day) = NaiveDate::parse_from_str(text, "%Y-%m-%d") {
            return Ok(Self::Day(day));
        }
        for form in ["%Y-%m-%dT%H:%M", "%Y-%m-%d %H:%M", "%Y-%m-%dT%H:%M:%S"] {
            if let Ok(local) = NaiveDateTime::parse_from_str(text, form) {
                return Ok(Self::Local(local));
            }
        }
        text.parse().map(Self::Stamp).map_err(
            |_| "write the time like 2026-05-04, 2026-05-04T19:30 or 2026-05-04T19:30:00+01:00",
        )
    }
}

impl When {
    /// The stamp meant, seen from now.
    ///
    /// # Errors
    /// A local time that does not exist on the day summer time begins.
    pub(crate) fn seen_from(self, now: &Stamp) -> Result<Stamp, Failure> {
        let local = match self {
            Self::Stamp(stamp) => return Ok(stamp),
            Self::Day(day) if day == now.day() => return Ok(*now),
            Self::Day(day) => day.and_time(NaiveTime::from_hms_opt(12, 0, 0).unwrap_or_default()),
            Self::Local(local) => local,
        };
        let stamp = match now.zone() {
            // A time that comes twice on the night summer time ends: the first of the two.
            Some(zone) => zone
                .instants(local)
                .earliest()
                .and_then(|instant| Stamp::in_zone(instant, zone).ok()),
            None => now
                .local()
                .offset()
                .from_local_datetime(&local)
                .earliest()
                .and_then(|local| Stamp::new(local, None).ok()),
        };
        stamp.ok_or_else(|| {
            Failure::input("That time does not exist on that day. Check the day and the time.")
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_typed_time_is_read_in_the_zone_of_now() {
        let now: Stamp = "2026-05-10T19:30:00+01:00[Europe/London]".parse().unwrap();
        let read =
            |text: &str| text.parse::<When>().unwrap().seen_from(&now).map(|s| s.to_string());
        assert_eq!(read("2026-05-10").unwrap(), now.to_string());
        assert_eq!(read("2026-03-01").unwrap(), "2026-03-01T12:00:00.000+00:00[Europe/London]");
        assert_eq!(
            read("2026-05-04T07:05").unwrap(),
            "2026-05-04T07:05:00.000+01:00[Europe/London]"
        );
        assert_eq!(read("2026-05-04T07:05:00+02:00").unwrap(), "2026-05-04T07:05:00.000+02:00");
        // The hour that summer time leaves out.
        assert!(read("2026-03-29T01:30").is_err());
        assert!("yesterday".parse::<When>().is_err());
    }
}
