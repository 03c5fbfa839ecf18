//! The zones against chrono-tz, which has its own tables made from the IANA's sources by its own program: every
//! zone, every day from 1970 to 2037, and to the second wherever either of the two changes its offset.
//!
//! The two carry different editions of the database. Where they differ is written down here, from the database's own
//! news (as the package tzdata of PyPI repeats them), and nowhere else may they differ. What is right in those zones
//! is compared with Python's zoneinfo on the same edition, in `reminders/tests/zones.rs`.

use std::collections::BTreeSet;

use chrono::{DateTime, NaiveDate, Offset, TimeZone, Utc};
use chrono_tz::{IANA_TZDB_VERSION, TZ_VARIANTS, Tz};

use super::{NamedZone, ZONE_EDITION};

const DAY: i64 = 24 * 60 * 60;
/// The zones whose offsets the editions 2025c to 2026f changed, and the days from and before which they differ.
const CHANGED: [(&str, &str, &str); 12] = [
    ("Africa/Casablanca Africa/El_Aaiun", "2026-09-20", "2038-01-01"), // 2026c: no more changes
    ("America/Bogota", "1992-05-02", "1992-05-04"),                    // 2026d: 1992-05-02 at 00:00
    ("America/Edmonton Canada/Mountain America/Yellowknife", "2026-11-01", "2038-01-01"), // 2026c
    ("America/Havana Cuba", "2026-11-01", "2027-03-15"),               // 2026f: not back in 2026
    ("America/Inuvik", "2026-11-01", "2038-01-01"),                    // 2026d
    ("America/Tijuana Mexico/BajaNorte", "1970-01-01", "1975-12-31"),  // 2025c: as in California
    ("America/Ensenada America/Santa_Isabel", "1970-01-01", "1975-12-31"),
    ("America/Vancouver Canada/Pacific", "2026-11-01", "2038-01-01"), // 2026b
    ("America/Winnipeg Canada/Central America/Rainy_River", "2026-11-01", "2038-01-01"), // 2026e
    ("Asia/Tehran Iran", "1979-05-25", "1979-05-28"),                 // 2026d: 1979-05-26 at 00:00
    ("Europe/Chisinau", "2022-03-26", "2038-01-01"),                  // 2026a: hours as in the EU
    ("Europe/Tiraspol", "2022-03-26", "2038-01-01"),
];

fn at(seconds: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(seconds, 0).unwrap()
}

fn midnight(day: &str) -> i64 {
    day.parse::<NaiveDate>().unwrap().and_hms_opt(0, 0, 0).unwrap().and_utc().timestamp()
}

/// The offset in seconds, as each says it.
fn ours(zone: NamedZone, seconds: i64) -> i32 {
    zone.offset_at(at(seconds)).unwrap().local_minus_utc()
}

fn theirs(zone: Tz, seconds: i64) -> i32 {
    zone.offset_from_utc_datetime(&at(seconds).naive_utc()).fix().local_minus_utc()
}

/// The first second after `before` at which the offset is another, where it is another at `after`.
fn change(offset: impl Fn(i64) -> i32, before: i64, after: i64) -> i64 {
    let (mut before, mut after, old) = (before, after, offset(before));
    while after - before > 1 {
        let middle = before + (after - before) / 2;
        if offset(middle) == old { before = middle } else { after = middle }
    }
    after
}

/// The days on which the two differ; and how many changes were looked at.
fn compare(zone: NamedZone, other: Tz, from: i64, until: i64) -> (BTreeSet<NaiveDate>, usize) {
    let mut wrong = BTreeSet::new();
    let mut changes = BTreeSet::new();
    for day in (from..until).step_by(usize::try_from(DAY).unwrap()) {
        let next = day + DAY;
        if ours(zone, day) != ours(zone, next) {
            changes.insert(change(|seconds| ours(zone, seconds), day, next));
        }
        if theirs(other, day) != theirs(other, next) {
            changes.insert(change(|seconds| theirs(other, seconds), day, next));
        }
        if ours(zone, day) != theirs(other, day) {
            wrong.insert(at(day).date_naive());
        }
    }
    for &moved in &changes {
        for seconds in [moved - 1, moved, moved + 1] {
            if ours(zone, seconds) != theirs(other, seconds) {
                wrong.insert(at(seconds).date_naive());
            }
        }
        // Local times at and around both ends of the gap or of what comes twice, and in its middle.
        let (old, new) = (i64::from(theirs(other, moved - 1)), i64::from(theirs(other, moved)));
        let ends = [moved + old, moved + new, moved + (old + new) / 2];
        for local in ends.iter().flat_map(|end| [end - 1, *end, end + 1]) {
            let local = at(local).naive_utc();
            let expected = other.from_local_datetime(&local).map(|time| time.to_utc());
            if zone.instants(local) != expected {
                wrong.insert(local.date());
            }
        }
    }
    (wrong, changes.len())
}

#[test]
fn every_zone_is_read_and_chrono_tz_knows_the_same_ones() {
    let ours: BTreeSet<&str> = NamedZone::names().collect();
    for name in &ours {
        assert_eq!(name.parse::<NamedZone>().unwrap().name(), *name);
    }
    let theirs: BTreeSet<&str> = TZ_VARIANTS.iter().map(|zone| zone.name()).collect();
    // A name for "not set yet", at UTC; chrono-tz leaves it out.
    let more: Vec<&&str> = ours.symmetric_difference(&theirs).collect();
    assert_eq!(more, [&"Factory"]);
    for wrong in ["", "europe/madrid", "Europe/Madrid ", "Europe", "Mars/Olympus", "+01:00"] {
        assert!(wrong.parse::<NamedZone>().is_err(), "{wrong}");
    }
}

#[test]
fn every_zone_says_what_chrono_tz_says_but_where_the_editions_differ() {
    assert_eq!(
        (ZONE_EDITION, IANA_TZDB_VERSION),
        ("2026f", "2025b"),
        "another edition: read its news, correct CHANGED, run fixtures/zones/generate.py"
    );
    let (from, until) = (midnight("1970-01-01"), midnight("2038-01-01"));
    let mut looked_at = 0;
    for other in TZ_VARIANTS {
        let (wrong, changes) = compare(other.name().parse().unwrap(), other, from, until);
        looked_at += changes;
        let expected = CHANGED.iter().find(|row| row.0.split(' ').any(|name| name == other.name()));
        let Some((_, first, before)) = expected else {
            assert!(wrong.is_empty(), "{other}: {wrong:?}");
            continue;
        };
        let (first, before): (NaiveDate, NaiveDate) =
            (first.parse().unwrap(), before.parse().unwrap());
        let outside: Vec<_> = wrong.iter().filter(|day| **day < first || **day >= before).collect();
        assert!(outside.is_empty(), "{other}: {outside:?}");
        // A row that is no longer needed is taken out.
        assert!(!wrong.is_empty(), "{other}");
    }
    assert!(looked_at > 30_000, "{looked_at}");
}

#[test]
fn far_from_today_there_is_still_an_offset() {
    for name in NamedZone::names() {
        let zone: NamedZone = name.parse().unwrap();
        for day in ["1970-01-01", "2038-01-19", "2100-07-01", "9999-12-31"] {
            assert!(zone.offset_at(at(midnight(day))).is_some(), "{name} {day}");
            let instants = zone.instants(at(midnight(day)).naive_utc());
            assert!(instants.latest().is_some(), "{name} {day}");
        }
    }
}
