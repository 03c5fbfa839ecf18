//! What a fold hands out for screens, of one invented diary at a time.

use frond_core::programme::values::{Practice, Rating, RatingKind, Size};
use frond_core::progression::{ClockDoubt, TimeOff};

use super::*;

#[test]
fn the_programme_and_the_step_in_use() {
    let empty = Diary::default().fold();
    assert!(empty.programme().is_none() && empty.step().is_none() && empty.step_index().is_none());
    assert!(empty.step_confirmed(), "there is none to confirm");
    let mut diary = Diary::default();
    diary.say(at(0, 8), accept(&easy()));
    let fold = diary.fold();
    assert_eq!((fold.step().unwrap().id.clone(), fold.step_index()), (token("a"), Some(0)));
    assert!(!fold.step_confirmed(), "a programme was accepted and nothing said yet");
    assert_eq!(fold.programme().unwrap().revision, revision(1));
    diary.say(at(0, 9), to_step("c"));
    let fold = diary.fold();
    assert_eq!((fold.step().unwrap().id.clone(), fold.step_index()), (token("c"), Some(2)));
    assert!(fold.step_confirmed(), "choosing it confirms it");
}

#[test]
fn sessions_of_a_practice_in_the_order_they_happened() {
    let mut diary = on_b(&easy());
    let rated = Sit { before: Some(1), after: None, worry: Some(3), ..sit(180, Some(2)) };
    let second = diary.sit(at(2, 9), Sit { seconds: 250, ..rated });
    let breath = Sit { practice: Practice::Breathing, ..sit(0, None) }.stopped(Reason::Interrupted);
    let other = diary.sit(at(2, 10), breath);
    let first = diary.write(at(2, 11), at(1, 9), sit(150, Some(0)).what());
    let fold = diary.fold();
    let ids = |practice| fold.occasions(&practice).map(|one| one.entry).collect::<Vec<_>>();
    assert_eq!(ids(Practice::Trainer), [first, second]);
    assert_eq!(ids(Practice::Breathing), [other]);
    let one = fold.occasion(second).unwrap();
    assert_eq!((one.entry, one.happened_ms), (second, START + 2 * DAY + 9 * HOUR));
    assert_eq!((one.day, one.size), (at(2, 0).day(), Some(Size::new(180).unwrap())));
    assert_eq!((one.seconds, one.finished), (250, true));
    for (kind, rating) in [
        (RatingKind::Peak, Some(2)),
        (RatingKind::Before, Some(1)),
        (RatingKind::After, None),
        (RatingKind::Worry, Some(3)),
    ] {
        assert_eq!(one.rating(kind).map(Rating::get), rating, "{kind:?}");
    }
    assert!(!fold.occasion(other).unwrap().finished);
    assert_eq!(fold.occasion(first).unwrap().happened_ms, START + DAY + 9 * HOUR);
    assert_eq!(fold.occasion(id(0)), None, "an acceptance is none");
    let today = |day, practice| fold.sessions_today(&practice, &at(day, 20));
    assert_eq!((today(2, Practice::Trainer), today(2, Practice::Breathing)), (1, 1));
    assert_eq!((today(1, Practice::Trainer), today(1, Practice::Breathing)), (1, 0));
    assert_eq!(today(3, Practice::Trainer), 0);
    diary.sit(at(2, 15), sit(180, None));
    assert_eq!(diary.fold().sessions_today(&Practice::Trainer, &at(2, 20)), 2);
}

#[test]
fn days_off_that_touch_are_one_time() {
    let mut diary = on_b(&easy());
    let day = |n| at(n, 0).day();
    for (from, to) in [(9, 9), (2, 3), (4, 5), (4, 4), (7, 7), (20, 19)] {
        diary.say(at(0, 10), Content::TimeOff { from: day(from), to: day(to) });
    }
    let fold = diary.fold();
    let off: Vec<TimeOff> = fold.time_off().collect();
    let span = |from, to| TimeOff { from: day(from), to: day(to) };
    assert_eq!(
        off,
        [span(2, 5), span(7, 7), span(9, 9)],
        "days between part them; none is turned round"
    );
    let is_off: Vec<i64> = (0..25).filter(|n| fold.is_off(day(*n))).collect();
    assert_eq!(is_off, [2, 3, 4, 5, 7, 9]);
}

#[test]
fn a_pause_is_handed_out_that_stands_or_is_met_now() {
    let mut diary = on_b(&with(json!({"pause": [away(10)]})));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(diary.fold().pause(&at(10, 9)), None);
    assert_eq!(diary.fold().pause(&at(11, 9)).unwrap().latched_at, None, "met now");
    diary.sit(at(12, 9), sit(180, Some(1)));
    let pause = diary.fold().pause(&at(12, 10)).unwrap();
    assert_eq!((pause.latched_at, pause.criterion.is_some()), (Some(5), true));
    diary.say(at(12, 11), clearing(&[], true));
    assert_eq!(diary.fold().pause(&at(12, 12)), None);
}

#[test]
fn t3_the_doubt_of_the_clock_and_whether_the_time_is_to_be_confirmed() {
    let mut diary = on_b(&easy());
    let asked = |diary: &Diary, day| {
        let fold = diary.fold();
        (fold.clock_doubt(&at(day, 9)), fold.time_unconfirmed())
    };
    assert_eq!(asked(&diary, 1), (None, false));
    diary.sit(at(5, 9), sit(180, Some(1)));
    assert_eq!(asked(&diary, 1), (Some(ClockDoubt::EntryAhead), false));
    diary.say(at(5, 10), jumped());
    assert_eq!(asked(&diary, 6), (Some(ClockDoubt::NotConfirmed), true));
    diary.say(at(5, 11), Content::TimeConfirmed {});
    assert_eq!(asked(&diary, 6), (None, false));
}

#[test]
fn open_signs_and_staying() {
    let mut diary = on_b(&easy());
    assert!(diary.fold().open_signs().is_empty() && !diary.fold().stay_here());
    let sign = diary.say(at(1, 9), report(Sign::Fever, Tier::Stop));
    diary.say(at(1, 10), Content::StayHere { stay: true });
    let fold = diary.fold();
    let open = fold.open_signs();
    assert_eq!((open.len(), open[0].key.entry, open[0].tier), (1, sign, Tier::Stop));
    assert!(fold.stay_here());
    diary.say(at(1, 11), Content::StayHere { stay: false });
    assert!(!diary.fold().stay_here());
}
