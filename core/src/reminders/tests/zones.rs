//! Local times against the cases of RFC 5545, against Python's zoneinfo, and over a year of changes.

use chrono::{MappedLocalTime, NaiveDateTime};

use super::super::local::{Zone, instant};
use super::*;
use crate::moment::{NamedZone, ZONE_EDITION};

const RANDOM: &str = include_str!("../../../../fixtures/zones/random.txt");
const YEAR: &str = include_str!("../../../../fixtures/zones/year.txt");
const CHANGED: &str = include_str!("../../../../fixtures/zones/changed.txt");

fn local(text: &str) -> NaiveDateTime {
    NaiveDateTime::parse_from_str(text, "%Y-%m-%dT%H:%M").unwrap()
}

fn in_new_york(text: &str) -> String {
    let zone = Zone::Named("America/New_York".parse().unwrap());
    zone.stamp(instant(zone, local(text)).unwrap()).unwrap().to_string()
}

/// RFC 5545, section 3.3.5: the two examples of a local time that comes twice, and of one that does not
/// come.
#[test]
fn n5_rfc_5545_repeated_and_missing_local_times() {
    assert_eq!(in_new_york("2007-11-04T01:30"), "2007-11-04T01:30:00.000-04:00[America/New_York]");
    assert_eq!(in_new_york("2007-03-11T02:30"), "2007-03-11T03:30:00.000-04:00[America/New_York]");
}

/// RFC 5545, section 3.8.5.3: daily from 1997-09-02 09:00 in New York until 1997-12-24T00:00:00Z. 113
/// instances, the last on December 23 (erratum 6212, which asked for December 24, was rejected).
#[test]
fn n5_rfc_5545_daily_until_december_24_has_113_instances() {
    let settings = settings(vec![daily(Practice::Breathing, &["09:00"])]);
    let now = moment("1997-09-02T08:59:00-04:00[America/New_York]");
    let until = stamp("1997-12-24T00:00:00Z").millis();
    let all = all_until(&settings, &Facts::default(), now, until);
    assert_eq!(all.len(), 113);
    assert_eq!(all[0].to_string(), "1997-09-02T09:00:00.000-04:00[America/New_York]");
    let before: Vec<&Stamp> =
        all.iter().filter(|at| at.day() <= "1997-10-25".parse().unwrap()).collect();
    assert_eq!(before.len(), 54);
    for at in &all {
        let summer = at.day() <= "1997-10-25".parse().unwrap();
        let offset = if summer { "09:00:00-04:00" } else { "09:00:00-05:00" };
        assert!(at.local().to_rfc3339().ends_with(offset), "{at}");
    }
    assert_eq!(all[112].day().to_string(), "1997-12-23");
}

/// Rows of a generated table: zone, local time, seconds.
fn rows(table: &'static str) -> Vec<(NamedZone, NaiveDateTime, i64)> {
    let (head, rows) = table.split_once('\n').unwrap();
    let version = head.split("tzdata ").nth(1).unwrap().split(',').next().unwrap();
    // Comparing two editions of the database would find their differences, not ours.
    assert_eq!(
        version, ZONE_EDITION,
        "the program carries another edition: install that one and run fixtures/zones/generate.py"
    );
    let row = |line: &'static str| {
        let mut parts = line.split(' ');
        let zone = parts.next().unwrap().parse().unwrap_or_else(|_| panic!("unknown zone: {line}"));
        (zone, local(parts.next().unwrap()), parts.next().unwrap().parse().unwrap())
    };
    rows.lines().map(row).collect()
}

fn compare(rows: &[(NamedZone, NaiveDateTime, i64)]) {
    let wrong: Vec<String> = rows
        .iter()
        .filter_map(|(zone, local, expected)| {
            let found = instant(Zone::Named(*zone), *local).unwrap().timestamp();
            (found != *expected)
                .then(|| format!("{zone} {local}: {found}, {} s more", found - expected))
        })
        .collect();
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), rows.len(), wrong.join("\n"));
}

#[test]
fn n5_ten_thousand_random_local_times_mean_what_pythons_zoneinfo_says() {
    let rows = rows(RANDOM);
    assert_eq!(rows.len(), 10_000);
    let zones: std::collections::BTreeSet<&str> =
        rows.iter().map(|(zone, ..)| zone.name()).collect();
    assert!(zones.len() > 400, "{}", zones.len());
    compare(&rows);
}

#[test]
fn n5_every_day_of_2026_in_twelve_zones_means_what_pythons_zoneinfo_says() {
    let rows = rows(YEAR);
    assert_eq!(rows.len(), 17 * 365);
    compare(&rows);
    // The table holds what it is for: times that are missing and times that come twice.
    let kinds = rows.iter().map(|(zone, local, _)| match zone.instants(*local) {
        MappedLocalTime::None => "missing",
        MappedLocalTime::Ambiguous(..) => "double",
        MappedLocalTime::Single(_) => "single",
    });
    let count = |kind: &str| kinds.clone().filter(|one| *one == kind).count();
    assert!(
        count("missing") >= 8 && count("double") >= 8,
        "{} {}",
        count("missing"),
        count("double")
    );
}

/// The zones that the latest editions of the database changed: there chrono-tz, with which the others are compared to
/// the second, has an older one.
#[test]
fn n5_around_each_change_of_the_zones_that_were_changed_lately() {
    let rows = rows(CHANGED);
    assert_eq!(rows.len(), 4_520);
    compare(&rows);
}

/// The planner over a whole year of each zone: every day once, at the instant of the table.
#[test]
fn n3_n5_a_year_of_daily_reminders_in_twelve_zones() {
    let rows = rows(YEAR);
    for year in rows.chunks(365) {
        let (zone, first, seconds) = year[0];
        let settings =
            settings(vec![daily(Practice::Breathing, &[&first.format("%H:%M").to_string()])]);
        let zone = Zone::Named(zone);
        let at = |seconds: i64| chrono::DateTime::from_timestamp(seconds, 0).unwrap();
        let now = Moment::at(zone.stamp(at(seconds - 1)).unwrap());
        let until = year[364].2 * 1000 + 1;
        let found: Vec<i64> = all_until(&settings, &Facts::default(), now, until)
            .iter()
            .map(|one| one.millis() / 1000)
            .collect();
        let expected: Vec<i64> = year.iter().map(|(_, _, seconds)| *seconds).collect();
        assert_eq!(found, expected, "{zone:?}");
    }
}

/// A gap of a whole day: Apia left out 30 December 2011.
#[test]
fn n5_a_day_that_never_was() {
    let zone = Zone::Named("Pacific/Apia".parse().unwrap());
    let stamp = zone.stamp(instant(zone, local("2011-12-30T10:00")).unwrap()).unwrap();
    assert_eq!(stamp.to_string(), "2011-12-31T10:00:00.000+14:00[Pacific/Apia]");
    // The planner says it once: both days mean the same instant.
    let settings = settings(vec![daily(Practice::Breathing, &["10:00"])]);
    let found = next_at(
        &settings,
        &Facts::default(),
        &moment("2011-12-29T11:00:00-10:00[Pacific/Apia]"),
        2,
    );
    assert_eq!(
        found,
        [
            "2011-12-31T10:00:00.000+14:00[Pacific/Apia]",
            "2012-01-01T10:00:00.000+14:00[Pacific/Apia]"
        ]
    );
}

/// A time of the day that was left out comes on the day after it, behind an earlier time of that day: once enough was found,
/// one day more is looked at.
#[test]
fn n5_a_time_of_the_next_day_comes_before_one_that_a_gap_moved() {
    let days = |day: chrono::Weekday, at: &str| {
        let mut reminder = daily(Practice::Breathing, &[at]);
        let day = day.to_string().to_lowercase();
        let days = serde_json::from_value(serde_json::json!([day])).unwrap();
        reminder.when = When::Times { days, at: times(&[at]) };
        reminder
    };
    // 2011-12-30 was the Friday that Apia left out.
    let settings =
        settings(vec![days(chrono::Weekday::Fri, "10:00"), days(chrono::Weekday::Sat, "07:00")]);
    let now = moment("2011-12-29T11:00:00-10:00[Pacific/Apia]");
    let found = next_at(&settings, &Facts::default(), &now, 1);
    assert_eq!(found, ["2011-12-31T07:00:00.000+14:00[Pacific/Apia]"]);
}

#[test]
fn n6_local_times_follow_the_person_and_an_unknown_zone_keeps_its_offset() {
    let settings = settings(vec![daily(Practice::Breathing, &["08:30"])]);
    for (now, expected) in [
        (
            "2026-03-28T20:00:00+01:00[Europe/Madrid]",
            "2026-03-29T08:30:00.000+02:00[Europe/Madrid]",
        ),
        ("2026-03-28T14:00:00-05:00[America/Lima]", "2026-03-29T08:30:00.000-05:00[America/Lima]"),
        ("2026-03-28T20:00:00+01:00", "2026-03-29T08:30:00.000+01:00"),
    ] {
        assert_eq!(next_at(&settings, &Facts::default(), &moment(now), 1), [expected]);
    }
}

#[test]
fn n2_february_29_is_a_day_like_any_other() {
    let settings = settings(vec![daily(Practice::Breathing, &["08:30"])]);
    let days = |now: &str| -> Vec<String> {
        let at = plan(&settings, &Facts::default(), &moment(now), 2, &words()).at();
        at.iter().map(|one| one.day().to_string()).collect()
    };
    assert_eq!(days("2028-02-28T09:00:00+01:00[Europe/Madrid]"), ["2028-02-29", "2028-03-01"]);
    assert_eq!(days("2026-02-28T09:00:00+01:00[Europe/Madrid]"), ["2026-03-01", "2026-03-02"]);
}
