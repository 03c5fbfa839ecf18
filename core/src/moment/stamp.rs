//! An instant with the offset and zone it was lived in, written as RFC 9557 text:
//! `2026-03-01T09:00:00.000+01:00[Europe/Madrid]`. Without a zone it is plain RFC 3339.

use std::fmt;
use std::str::FromStr;

use chrono::{DateTime, FixedOffset, NaiveDate, SecondsFormat, Utc};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::NamedZone;

/// An instant (to the millisecond), the local offset then, and the zone where known.
///
/// Days are counted by the stamp's own offset (rule sentence T2): a session at 23:30 in Madrid stays on
/// that day even when read in Lima.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Stamp {
    local: DateTime<FixedOffset>,
    zone: Option<NamedZone>,
}

/// Why a text is not a stamp.
#[derive(Debug, thiserror::Error, PartialEq, Eq)]
pub enum StampError {
    /// Not RFC 3339 or RFC 9557.
    #[error(
        "write the time like 2026-03-01T09:00:00+01:00 or 2026-03-01T09:00:00+01:00[Europe/Madrid]"
    )]
    NotATime,
    /// Outside the years 1970 to 9999.
    #[error("the year must lie between 1970 and 9999")]
    OutOfRange,
    /// The zone is not in the time zone database this program carries.
    #[error("this time zone name is not known; leave the name out and keep the offset")]
    UnknownZone,
}

impl Stamp {
    /// A stamp from a local time with its offset. Below a millisecond is cut off.
    ///
    /// # Errors
    /// [`StampError::OutOfRange`] outside the years 1970 to 9999.
    pub fn new(local: DateTime<FixedOffset>, zone: Option<NamedZone>) -> Result<Self, StampError> {
        Self::from_millis(local.timestamp_millis(), *local.offset(), zone)
    }

    /// A stamp from milliseconds since 1970-01-01T00:00:00Z.
    ///
    /// # Errors
    /// [`StampError::OutOfRange`] outside the years 1970 to 9999.
    pub fn from_millis(
        millis: i64,
        offset: FixedOffset,
        zone: Option<NamedZone>,
    ) -> Result<Self, StampError> {
        // 9999-12-31T00:00:00Z: a day's room, so that no local date leaves the range.
        const LAST: i64 = 253_402_214_400_000;
        if !(0..=LAST).contains(&millis) {
            return Err(StampError::OutOfRange);
        }
        let instant =
            DateTime::<Utc>::from_timestamp_millis(millis).ok_or(StampError::OutOfRange)?;
        Ok(Self { local: instant.with_timezone(&offset), zone })
    }

    /// The stamp of an instant as lived in a zone.
    ///
    /// # Errors
    /// [`StampError::OutOfRange`] outside the years 1970 to 9999.
    pub fn in_zone(instant: DateTime<Utc>, zone: NamedZone) -> Result<Self, StampError> {
        let offset = zone.offset_at(instant).ok_or(StampError::OutOfRange)?;
        Self::from_millis(instant.timestamp_millis(), offset, Some(zone))
    }

    /// The instant in UTC.
    #[must_use]
    pub fn instant(&self) -> DateTime<Utc> {
        self.local.with_timezone(&Utc)
    }

    /// Milliseconds since 1970-01-01T00:00:00Z.
    #[must_use]
    pub fn millis(&self) -> i64 {
        self.local.timestamp_millis()
    }

    /// The local time with its offset.
    #[must_use]
    pub fn local(&self) -> DateTime<FixedOffset> {
        self.local
    }

    /// The zone, where known.
    #[must_use]
    pub fn zone(&self) -> Option<NamedZone> {
        self.zone
    }

    /// The local calendar day by the stamp's own offset (T2).
    #[must_use]
    pub fn day(&self) -> NaiveDate {
        self.local.date_naive()
    }
}

impl fmt::Display for Stamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.local.to_rfc3339_opts(SecondsFormat::Millis, false))?;
        match self.zone {
            Some(zone) => write!(f, "[{}]", zone.name()),
            None => Ok(()),
        }
    }
}

impl fmt::Debug for Stamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl FromStr for Stamp {
    type Err = StampError;

    fn from_str(text: &str) -> Result<Self, StampError> {
        let (time, zone) = match text.split_once('[') {
            Some((time, rest)) => {
                let name = rest.strip_suffix(']').ok_or(StampError::NotATime)?;
                (time, Some(name.parse()?))
            }
            None => (text, None),
        };
        let local = DateTime::parse_from_rfc3339(time).map_err(|_| StampError::NotATime)?;
        Self::new(local, zone)
    }
}

impl Serialize for Stamp {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Stamp {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Visitor;
        impl de::Visitor<'_> for Visitor {
            type Value = Stamp;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a time such as 2026-03-01T09:00:00+01:00[Europe/Madrid]")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<Stamp, E> {
                match text.parse() {
                    // A zone newer than our database must not make an old diary unreadable.
                    Err(StampError::UnknownZone) => {
                        let time = text.split_once('[').map_or(text, |(time, _)| time);
                        time.parse().map_err(E::custom)
                    }
                    other => other.map_err(E::custom),
                }
            }
        }
        deserializer.deserialize_str(Visitor)
    }
}

impl schemars::JsonSchema for Stamp {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Stamp".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "A time with its offset (RFC 3339), optionally with its zone in brackets (RFC 9557).",
            "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}[Tt][0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]+)?([Zz]|[+-][0-9]{2}:[0-9]{2})(\\[[A-Za-z0-9_+/-]+\\])?$"
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_round_trips_with_and_without_zone() {
        for text in
            ["2026-03-01T09:00:00.000+01:00[Europe/Madrid]", "2026-03-01T09:00:00.120-05:00"]
        {
            assert_eq!(text.parse::<Stamp>().unwrap().to_string(), text);
        }
    }

    #[test]
    fn t2_the_day_is_the_stamps_own() {
        let late: Stamp = "2026-03-01T23:30:00+01:00".parse().unwrap();
        assert_eq!(late.day().to_string(), "2026-03-01");
        let same_instant: Stamp = "2026-03-02T07:30:00+09:00".parse().unwrap();
        assert_eq!(late.millis(), same_instant.millis());
        assert_eq!(same_instant.day().to_string(), "2026-03-02");
    }

    #[test]
    fn bad_times_are_refused_and_an_unknown_zone_keeps_the_offset_when_stored() {
        assert_eq!("yesterday".parse::<Stamp>(), Err(StampError::NotATime));
        assert_eq!("1969-01-01T00:00:00Z".parse::<Stamp>(), Err(StampError::OutOfRange));
        let future_zone = "2026-03-01T09:00:00+01:00[Mars/Olympus]";
        assert_eq!(future_zone.parse::<Stamp>(), Err(StampError::UnknownZone));
        let stored: Stamp = serde_json::from_str(&format!("\"{future_zone}\"")).unwrap();
        assert_eq!(stored.zone(), None);
        assert_eq!(stored.local().to_rfc3339(), "2026-03-01T09:00:00+01:00");
    }
}
