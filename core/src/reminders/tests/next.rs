//! Which reminders come next, rule by rule, and properties over random settings.

use chrono::{Datelike, NaiveDate, Weekday};
use proptest::prelude::*;

use super::*;
use crate::programme::check::load;
use crate::programme::plan::Programme;

const NOW: &str = "2026-03-02T07:00:00+01:00[Europe/Madrid]"; // a Monday

fn done(practice: Practice, at: &str) -> DoneSession {
    DoneSession { practice, happened: stamp(at) }
}

fn breathing_only() -> Programme {
    load(include_bytes!("../../../../fixtures/programmes/3-breathing-only.json")).unwrap().0
}

fn graded() -> Programme {
    load(include_bytes!("../../../../fixtures/programmes/1-graded-then-positions.json")).unwrap().0
}

/// Day of the month and time of each.
fn short(settings: &ReminderSettings, facts: &Facts<'_>, count: usize) -> Vec<String> {
    let at = plan(settings, facts, &moment(NOW), count, &words()).at();
    at.iter().map(|one| one.local().format("%d %H:%M").to_string()).collect()
}

#[test]
fn n1_off_until_turned_on() {
    let off = ReminderSettings::off(EntryId([1; 16]));
    assert!(!off.on && off.reminders.get().is_empty());
    let mut set = settings(vec![daily(Practice::Breathing, &["08:30"])]);
    set.on = false;
    let snoozed = [stamp("2026-03-02T09:00:00+01:00[Europe/Madrid]")];
    let facts = Facts { snoozed: &snoozed, ..Facts::default() };
    assert!(short(&set, &facts, 50).is_empty());
    assert_eq!(snooze(&set, &moment(NOW), SnoozeMinutes::new(10).unwrap()), None);
    // What is written without a word on it is off.
    let written = r#"{"key":"01010101010101010101010101010101"}"#;
    assert!(serde_json::from_str::<ReminderSettings>(written).unwrap() == off);
}

#[test]
fn n2_a_routine_reminds_only_if_its_time_is_said() {
    let routine = Line::new("brushing my teeth").unwrap();
    let tied = |about| Reminder {
        practice: Practice::Breathing,
        when: When::After { routine: routine.clone(), days: Weekdays::ALL, about },
        skip_when_done: true,
    };
    assert!(short(&settings(vec![tied(None)]), &Facts::default(), 5).is_empty());
    let found = short(&settings(vec![tied(Some(time("21:15")))]), &Facts::default(), 2);
    assert_eq!(found, ["02 21:15", "03 21:15"]);
    let line = after_line(&words(), &tied(None).when, "Slow breathing").unwrap();
    assert_eq!(line, "After brushing my teeth: Slow breathing");
    assert_eq!(after_line(&words(), &daily(Practice::Breathing, &["08:00"]).when, "x"), None);
}

#[test]
fn n3_at_most_fifty_and_each_instant_once() {
    let all = settings(vec![
        daily(Practice::Breathing, &["08:30", "21:00"]),
        daily(Practice::Meditation, &["08:30"]),
    ]);
    let found = plan(&all, &Facts::default(), &moment(NOW), 1000, &words());
    assert_eq!(found.at().len(), MOST);
    assert!(found.at().windows(2).all(|two| two[0].millis() < two[1].millis()));
    assert_eq!(found.words, "A moment for you");
    assert!(plan(&all, &Facts::default(), &moment(NOW), 0, &words()).at().is_empty());
    // Strictly after the moment.
    let at = moment("2026-03-02T08:30:00+01:00[Europe/Madrid]");
    assert!(next_at(&all, &Facts::default(), &at, 1)[0].starts_with("2026-03-02T21:00"));
}

#[test]
fn n4_only_what_the_plan_has_and_nothing_while_something_is_open() {
    let all = settings(vec![
        daily(Practice::Trainer, &["08:00"]),
        daily(Practice::Breathing, &["09:00"]),
        daily(Practice::Other("walk".to_owned().try_into().unwrap()), &["10:00"]),
    ]);
    assert_eq!(short(&all, &Facts::default(), 2), ["02 09:00", "02 10:00"]);
    let plan = graded();
    let with = |silence| Facts {
        plan: Some(&plan),
        step: plan.start_at.as_ref(),
        silence,
        ..Facts::default()
    };
    let breathes = plan.practices.iter().any(|own| own.practice == Practice::Breathing);
    assert!(breathes, "the fixture has breathing");
    assert_eq!(short(&all, &with(Silence::Nothing), 2), ["02 08:00", "02 09:00"]);
    assert_eq!(short(&all, &with(Silence::Steps), 2), ["02 09:00", "03 09:00"]);
    let snoozed = [stamp("2026-03-02T09:00:00+01:00[Europe/Madrid]")];
    let everything = Facts { snoozed: &snoozed, ..with(Silence::Everything) };
    assert!(short(&all, &everything, 50).is_empty());
    let plan = breathing_only();
    let facts = Facts { plan: Some(&plan), ..Facts::default() };
    assert_eq!(short(&all, &facts, 2), ["02 09:00", "03 09:00"]);
}

#[test]
fn n7_quiet_hours_run_over_midnight_and_time_off_has_both_ends() {
    let mut set = settings(vec![daily(Practice::Breathing, &["06:59", "07:00", "21:59", "22:00"])]);
    set.quiet = Some(QuietHours::new(time("22:00"), time("07:00")).unwrap());
    assert_eq!(short(&set, &Facts::default(), 3), ["02 21:59", "03 07:00", "03 21:59"]);
    let day = |text: &str| text.parse::<NaiveDate>().unwrap();
    let off = [(day("2026-03-02"), day("2026-03-04"))];
    let facts = Facts { time_off: &off, ..Facts::default() };
    assert_eq!(short(&set, &facts, 1), ["05 07:00"]);
    let lines = in_quiet_hours(&words(), &set);
    assert_eq!(lines.len(), 2);
    assert!(lines[0].starts_with("06:59") && lines[1].starts_with("22:00"));
    assert!(QuietHours::new(time("22:00"), time("22:00")).is_err());
}

/// 29 March 2026 in Madrid: 02:30 does not come, and means 03:30.
#[test]
fn n7_quiet_goes_by_the_time_at_which_it_would_really_come() {
    let mut set = settings(vec![daily(Practice::Breathing, &["02:30"])]);
    set.quiet = Some(QuietHours::new(time("03:00"), time("08:00")).unwrap());
    let at = moment("2026-03-28T12:00:00+01:00[Europe/Madrid]");
    let found = next_at(&set, &Facts::default(), &at, 1);
    assert_eq!(found, ["2026-03-30T02:30:00.000+02:00[Europe/Madrid]"]);
}

#[test]
fn n8_a_session_does_away_with_the_nearest_reminder_of_its_day() {
    let mut set = settings(vec![daily(Practice::Breathing, &["09:00", "21:00"])]);
    for (session, left) in [
        ("2026-03-02T06:00:00+01:00", ["02 21:00", "03 09:00"]),
        ("2026-03-02T06:59:00+01:00", ["02 21:00", "03 09:00"]),
        ("2026-03-01T23:00:00+01:00", ["02 09:00", "02 21:00"]),
    ] {
        let sessions = [done(Practice::Breathing, session)];
        let facts = Facts { done: &sessions, ..Facts::default() };
        assert_eq!(short(&set, &facts, 2), left, "{session}");
    }
    // At noon: what was practised at 20:50 yesterday, or another practice, changes nothing; what was
    // practised late this morning belonged to the morning.
    let noon = moment("2026-03-02T17:00:00+01:00[Europe/Madrid]");
    let first = |session: DoneSession| {
        let sessions = [session];
        next_at(&set, &Facts { done: &sessions, ..Facts::default() }, &noon, 1)[0][..16].to_owned()
    };
    assert_eq!(first(done(Practice::Breathing, "2026-03-02T11:00:00+01:00")), "2026-03-02T21:00");
    assert_eq!(
        first(done(Practice::Breathing, "2026-03-02T15:00:00+01:00")),
        "2026-03-02T21:00",
        "as near to both"
    );
    assert_eq!(first(done(Practice::Breathing, "2026-03-02T15:01:00+01:00")), "2026-03-03T09:00");
    assert_eq!(first(done(Practice::Meditation, "2026-03-02T16:59:00+01:00")), "2026-03-02T21:00");
    // Its own offset says on which day and at which time it was.
    assert_eq!(first(done(Practice::Breathing, "2026-03-02T20:00:00+09:00")), "2026-03-03T09:00");
    let mut reminder = daily(Practice::Breathing, &["09:00", "21:00"]);
    reminder.skip_when_done = false;
    set.reminders = vec![reminder].try_into().unwrap();
    let sessions = [done(Practice::Breathing, "2026-03-02T06:00:00+01:00")];
    assert_eq!(short(&set, &Facts { done: &sessions, ..Facts::default() }, 1), ["02 09:00"]);
}

#[test]
fn n8_the_nearest_is_among_the_times_of_the_same_practice() {
    let set = settings(vec![
        daily(Practice::Breathing, &["08:00"]),
        daily(Practice::Meditation, &["09:00"]),
    ]);
    let sessions = [done(Practice::Breathing, "2026-03-02T08:45:00+01:00[Europe/Madrid]")];
    let facts = Facts { done: &sessions, ..Facts::default() };
    assert_eq!(short(&set, &facts, 2), ["02 09:00", "03 08:00"]);
}

#[test]
fn n9_a_reminder_never_asks_for_more_than_the_plan() {
    let mut plan = breathing_only();
    let mut reminder = daily(Practice::Breathing, &["09:00", "21:00"]);
    reminder.skip_when_done = false;
    let set = settings(vec![reminder]);
    let sessions = [
        done(Practice::Breathing, "2026-03-02T06:00:00+01:00"),
        done(Practice::Breathing, "2026-02-28T06:00:00+01:00"),
    ];
    let with = |plan: &Programme, count| {
        short(&set, &Facts { plan: Some(plan), done: &sessions, ..Facts::default() }, count)
    };
    assert_eq!(with(&plan, 1), ["03 09:00"], "at most once a day");
    let schedule = &mut plan.practices[0].schedule;
    schedule.daily_most = 2_u64.try_into().unwrap();
    assert_eq!(with(&plan, 1), ["02 09:00"]);
    // One day a week, which was Monday: the next Monday. Saturday was in the week before.
    plan.practices[0].schedule.weekly_most = 1_u64.try_into().unwrap();
    assert_eq!(with(&plan, 4), ["02 09:00", "02 21:00", "09 09:00", "09 21:00"]);
    plan.practices[0].schedule.weekly_most = 7_u64.try_into().unwrap();
    plan.practices[0].schedule.rest_days = Some(2_u64.try_into().unwrap());
    assert_eq!(
        with(&plan, 3),
        ["05 09:00", "05 21:00", "06 09:00"],
        "Saturday and Monday each rest two days"
    );
    // Days of rest lie between days: a second time today is the plan's own most for a day.
    let today = [done(Practice::Breathing, "2026-03-02T06:00:00+01:00")];
    let facts = Facts { plan: Some(&plan), done: &today, ..Facts::default() };
    assert_eq!(short(&set, &facts, 3), ["02 09:00", "02 21:00", "05 09:00"]);
}

#[test]
fn n13_putting_off_stays_within_today_and_out_of_quiet_hours() {
    let mut set = settings(vec![]);
    set.quiet = Some(QuietHours::new(time("22:00"), time("07:00")).unwrap());
    let put_off = |now: &str, minutes| {
        let now = moment(now);
        snooze(&set, &now, SnoozeMinutes::new(minutes).unwrap()).map(|again| again.to_string())
    };
    let evening = "2026-03-02T21:30:00+01:00[Europe/Madrid]";
    assert_eq!(put_off(evening, 29).unwrap(), "2026-03-02T21:59:00.000+01:00[Europe/Madrid]");
    assert_eq!(put_off(evening, 30), None);
    set.quiet = None;
    let again = snooze(&set, &moment(evening), SnoozeMinutes::new(149).unwrap()).unwrap();
    assert_eq!(snooze(&set, &moment(evening), SnoozeMinutes::new(150).unwrap()), None, "tomorrow");
    let facts_snoozed = [again];
    let found =
        next_at(&set, &Facts { snoozed: &facts_snoozed, ..Facts::default() }, &moment(evening), 5);
    assert_eq!(found, ["2026-03-02T23:59:00.000+01:00[Europe/Madrid]"]);
    assert!(SnoozeMinutes::new(4).is_err() && SnoozeMinutes::new(181).is_err());
}

#[test]
fn n14_each_says_until_when_it_may_be_shown() {
    let until = |set: &ReminderSettings, now: &str| {
        let found = plan(set, &Facts::default(), &moment(now), 2, &words());
        assert_eq!(found.put_off.get(), 15);
        found.reminders.iter().map(|one| one.until.to_string()).collect::<Vec<_>>()
    };
    let mut set = settings(vec![daily(Practice::Breathing, &["08:30", "21:00"])]);
    let midnight = "2026-03-03T00:00:00.000+01:00[Europe/Madrid]";
    assert_eq!(until(&set, NOW), [midnight, midnight]);
    set.quiet = Some(QuietHours::new(time("22:00"), time("07:00")).unwrap());
    let ten = "2026-03-02T22:00:00.000+01:00[Europe/Madrid]";
    assert_eq!(until(&set, NOW), [ten, ten]);
    // Quiet hours in the middle of the day end the one before them; those of the morning end nothing.
    set.quiet = Some(QuietHours::new(time("13:00"), time("15:00")).unwrap());
    assert_eq!(until(&set, NOW), ["2026-03-02T13:00:00.000+01:00[Europe/Madrid]", midnight]);
    set.quiet = Some(QuietHours::new(time("00:00"), time("06:00")).unwrap());
    assert_eq!(until(&set, NOW), [midnight, midnight]);
    // The night of a change of the clocks is an hour shorter.
    let before = "2026-03-28T20:00:00+01:00[Europe/Madrid]";
    set.quiet = Some(QuietHours::new(time("02:30"), time("06:00")).unwrap());
    set.reminders = vec![daily(Practice::Breathing, &["00:30"])].try_into().unwrap();
    assert_eq!(until(&set, before)[0], "2026-03-29T03:30:00.000+02:00[Europe/Madrid]");
}

fn clock_time() -> impl Strategy<Value = ClockTime> {
    (0u32..24, prop_oneof![Just(0u32), Just(30), 0u32..60])
        .prop_map(|(h, m)| ClockTime::new(h, m).unwrap())
}

fn reminder() -> impl Strategy<Value = Reminder> {
    let practice = prop_oneof![Just(Practice::Breathing), Just(Practice::Meditation)];
    let days = prop::collection::vec(0u8..7, 1..7).prop_map(|days| {
        Weekdays::new(days.into_iter().map(|day| Weekday::try_from(day).unwrap())).unwrap()
    });
    let at =
        prop::collection::vec(clock_time(), 1..6).prop_map(|at| ClockTimes::try_from(at).unwrap());
    (practice, days, at, any::<bool>()).prop_map(|(practice, days, at, skip_when_done)| Reminder {
        practice,
        when: When::Times { days, at },
        skip_when_done,
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn n3_n7_whatever_is_set_what_comes_is_in_order_wanted_and_steady(
        reminders in prop::collection::vec(reminder(), 0..6),
        quiet in prop::option::of((clock_time(), clock_time())),
        start in 1_600_000_000_000i64..1_900_000_000_000,
        zone in prop_oneof![
            Just("Europe/Madrid"), Just("America/Santiago"), Just("Australia/Lord_Howe"),
            Just("Africa/Cairo"), Just("UTC"),
        ],
        off in prop::option::of((0i64..40, 0i64..20)),
        count in 0usize..80,
    ) {
        let mut set = settings(reminders);
        set.quiet = quiet.and_then(|(from, to)| QuietHours::new(from, to).ok());
        let instant = chrono::DateTime::from_timestamp_millis(start).unwrap();
        let now = Moment::at(Stamp::in_zone(instant, zone.parse().unwrap()).unwrap());
        let off: Vec<(NaiveDate, NaiveDate)> = off.into_iter().map(|(from, length)| {
            let from = now.now.day() + chrono::Days::new(from as u64);
            (from, from + chrono::Days::new(length as u64))
        }).collect();
        let facts = Facts { time_off: &off, ..Facts::default() };
        let found = plan(&set, &facts, &now, count, &words()).at();
        prop_assert!(found.len() <= count.min(MOST));
        prop_assert!(found.windows(2).all(|two| two[0].millis() < two[1].millis()));
        for at in &found {
            prop_assert!(at.millis() > start);
            prop_assert!(!set.quiet.is_some_and(|quiet| quiet.has(at.local().time())));
            prop_assert!(off.iter().all(|(from, to)| at.day() < *from || at.day() > *to));
            // It is the local time of a reminder on its day, or one that a gap moved by up to an hour.
            let wanted = set.reminders.get().iter().any(|one| one.when.times().iter().any(|time| {
                let late = (at.local().time() - time.get()).num_minutes().rem_euclid(1440);
                late <= 60 && (one.when.days().has(at.day().weekday()) || late > 0)
            }));
            prop_assert!(wanted, "{} was not asked for", at);
        }
        // Planned from the first on, the rest is the same.
        if let Some((first, rest)) = found.split_first() {
            let later = plan(&set, &facts, &Moment::at(*first), rest.len(), &words()).at();
            prop_assert_eq!(later, rest.to_vec());
        }
        // If something can come, something does.
        let can = set.reminders.get().iter().any(|one| {
            one.when.times().iter().any(|time| !set.quiet.is_some_and(|quiet| quiet.has(time.get())))
        });
        prop_assert!(!can || count == 0 || !found.is_empty());
    }
}
