//! The calendar file: frozen, the same at every writing, and complete by RFC 5545. An independent parser
//! reads the frozen file in `fixtures/calendar`.

use super::*;
use crate::programme::check::load;

const FROZEN: &str = include_str!("../../../../fixtures/calendar/reminders.ics");

/// Two practices that share a time, one of them at weekends only; a time in the quiet hours; days off.
fn file(now: &str) -> CalendarFile {
    let plan =
        load(include_bytes!("../../../../fixtures/programmes/3-breathing-only.json")).unwrap().0;
    let weekend = Weekdays::new([chrono::Weekday::Sat, chrono::Weekday::Sun]).unwrap();
    let mut set = settings(vec![
        daily(Practice::Breathing, &["08:30", "23:00"]),
        Reminder {
            practice: Practice::Meditation,
            when: When::Times { days: weekend, at: times(&["08:30", "17:15"]) },
            skip_when_done: true,
        },
        daily(Practice::Trainer, &["12:00"]),
    ]);
    set.quiet = Some(QuietHours::new(time("22:00"), time("07:00")).unwrap());
    let day = |text: &str| text.parse::<chrono::NaiveDate>().unwrap();
    let off = [(day("2026-03-06"), day("2026-03-08")), (day("2026-03-08"), day("2026-03-09"))];
    let facts = Facts { plan: Some(&plan), time_off: &off, ..Facts::default() };
    calendar(&set, &facts, &moment(now), &words()).unwrap()
}

const NOW: &str = "2026-03-02T08:31:00+01:00[Europe/Madrid]";

#[test]
fn n11_the_calendar_file_is_frozen_and_the_same_at_every_writing() {
    let written = file(NOW);
    assert_eq!(written.name, "calendar.ics");
    assert_eq!(written.text, file(NOW).text, "no clock and no dice of its own");
    if written.text != FROZEN {
        let path = std::env::temp_dir().join("reminders.ics");
        std::fs::write(&path, &written.text).unwrap();
        panic!("not as frozen; what is written now lies in {}", path.display());
    }
}

#[test]
fn n11_ids_stay_over_exports_and_differ_between_diaries() {
    let ids = |text: &str| -> Vec<String> {
        text.lines().filter(|line| line.starts_with("UID")).map(str::to_owned).collect()
    };
    let (first, later) = (file(NOW).text, file("2026-03-20T10:00:00Z[Europe/London]").text);
    assert_ne!(first, later);
    assert_eq!(ids(&first), ids(&later));
    let of = |key: u8| {
        let mut set = settings(vec![daily(Practice::Breathing, &["08:30"])]);
        set.key = EntryId([key; 16]);
        ids(&calendar(&set, &Facts::default(), &moment(NOW), &words()).unwrap().text)
    };
    assert_ne!(of(1), of(2));
}

#[test]
fn n11_lines_are_folded_and_ended_as_rfc_5545_asks() {
    let text = file(NOW).text;
    assert!(text.ends_with("END:VCALENDAR\r\n"));
    assert!(text.split("\r\n").all(|line| line.len() <= 75 && !line.contains('\n')));
    assert!(!text.contains("TZID") && !text.contains("DTSTART:20260303T083000Z"), "times float");
}

#[test]
fn n11_nothing_to_come_gives_no_file() {
    let none = settings(vec![]);
    assert!(calendar(&none, &Facts::default(), &moment(NOW), &words()).is_none());
    // The plan's review has passed.
    let plan =
        load(include_bytes!("../../../../fixtures/programmes/3-breathing-only.json")).unwrap().0;
    let set = settings(vec![daily(Practice::Breathing, &["08:30"])]);
    let facts = Facts { plan: Some(&plan), ..Facts::default() };
    let late = moment("2026-03-30T09:00:00+02:00[Europe/Madrid]");
    assert!(calendar(&set, &facts, &late, &words()).is_none());
    let last = moment("2026-03-30T08:00:00+02:00[Europe/Madrid]");
    assert!(calendar(&set, &facts, &last, &words()).is_some());
}

/// The lines of a calendar of one daily time, 08:30, that begin with a name.
fn lines(name: &str, facts: &Facts<'_>, now: &str) -> Vec<String> {
    let set = settings(vec![daily(Practice::Breathing, &["08:30"])]);
    let text = calendar(&set, facts, &moment(now), &words()).unwrap().text;
    text.lines().filter_map(|line| line.strip_prefix(name)).map(str::to_owned).collect()
}

#[test]
fn n11_it_begins_with_the_first_time_that_is_still_ahead() {
    let begins = |now: &str| lines("DTSTART:", &Facts::default(), now);
    assert_eq!(begins("2026-03-02T08:29:59+01:00[Europe/Madrid]"), ["20260302T083000"]);
    assert_eq!(begins("2026-03-02T08:30:00+01:00[Europe/Madrid]"), ["20260303T083000"]);
}

#[test]
fn n11_days_off_are_left_out_with_a_plan_up_to_its_review_and_without_one_too() {
    let day = |text: &str| text.parse::<chrono::NaiveDate>().unwrap();
    let off = [(day("2026-03-29"), day("2026-04-01")), (day("2026-10-05"), day("2026-10-05"))];
    let without = Facts { time_off: &off, ..Facts::default() };
    assert_eq!(
        lines("EXDATE:", &without, NOW),
        [
            "20260329T083000",
            "20260330T083000",
            "20260331T083000",
            "20260401T083000",
            "20261005T083000"
        ]
    );
    let plan =
        load(include_bytes!("../../../../fixtures/programmes/3-breathing-only.json")).unwrap().0;
    let with = Facts { plan: Some(&plan), ..without };
    assert_eq!(lines("EXDATE:", &with, NOW), ["20260329T083000", "20260330T083000"]);
}
