//! Diaries long enough that something is trimmed, by hand: a fold that was trimmed and stored after every entry says the
//! same as a whole one, at that moment, later, and while the entry still lies ahead; and it is asked to read the diary
//! again only where an entry reaches behind what is left. All diaries are invented.

use frond_core::diary::entry::Entry;
use frond_core::programme::values::Practice;
use frond_tests::lives::Life;

use super::*;

/// Trimmed, stored and read again.
fn stored(mut fold: Fold) -> Fold {
    fold.trim();
    postcard::from_bytes(&postcard::to_stdvec(&fold).unwrap()).unwrap()
}

/// Says how often the diary had to be read again.
fn agrees(diary: &Diary) -> usize {
    let (mut whole, mut trimmed) = (Fold::new(None), Fold::new(None));
    let mut again = 0;
    for (place, entry) in diary.0.iter().enumerate() {
        whole.write(entry).unwrap();
        if trimmed.write(entry).is_err() {
            again += 1;
            trimmed = folded(&diary.0[..=place]);
        }
        trimmed = stored(trimmed);
        let written = entry.written.millis() - START;
        for later in [0, 5 * DAY, -HOUR] {
            let now = ms((written + later).max(0));
            assert_eq!(trimmed.assess(&now), whole.assess(&now), "entry {place}, {later} later");
        }
    }
    again
}

/// Every criterion, so wide that what is trimmed is as much as may be.
fn wide() -> Value {
    let mut rule = up(vec![
        comfort(2),
        json!({"criterion": "discomfort_at_most", "rating": "after", "at_most": 6, "last": 50}),
        json!({"criterion": "sessions", "practised_days": 55, "within_days": 90}),
        json!({"criterion": "days_on_step", "days": 20}),
        json!({"criterion": "sign_free_days", "days": 30}),
        json!({"criterion": "feels_ready"}),
    ]);
    rule["step_back"] = json!([{"when": hurt(8, 9, 50), "target": "previous"}, {"when": away(6), "target": "first"}]);
    rule["pause"] = json!([stops(3, 50), hurt(10, 2, 4),
        {"criterion": "steps_back", "times": 3, "within_days": 40}]);
    rule
}

/// A session a day, some of them unlike the others; `gap` more days after every thirty-first.
fn daily(sessions: i64, gap: i64) -> Diary {
    let mut rule = wide();
    rule["after_gap_days"] = json!(5);
    let mut diary = on_b(&with(rule));
    for n in 1..=sessions {
        let day = n + n / 31 * gap;
        let comfortable = Sit { after: Some(2), ..sit(180, Some(u8::try_from(n % 4).unwrap())) };
        let one = match n % 13 {
            2 => Sit { size: 150, ..comfortable },
            5 => Sit { peak: None, ..comfortable },
            8 => Sit { seconds: 60, peak: Some(9), ..comfortable },
            11 => Sit { after: None, ..comfortable },
            _ => comfortable,
        };
        match n % 17 {
            4 => diary.write(at(day, 20), at(day - 1, 12), one.what()),
            _ => diary.sit(at(day, 9), one),
        };
        if n % 7 == 0 {
            diary.say(at(day, 10), ready(n % 2 == 0));
        }
    }
    diary
}

#[test]
fn a_trimmed_fold_says_the_same_of_a_long_time_on_one_step() {
    for gap in [0, 3, 6] {
        assert_eq!(agrees(&daily(130, gap)), 0, "nothing here reaches back");
    }
}

#[test]
fn a_trimmed_fold_says_the_same_after_clearings_signs_and_steps() {
    let mut diary = daily(60, 0);
    for round in 0..3 {
        let day = 61 + round * 12;
        let sign = diary.say(at(day, 9), report(Sign::Fever, Tier::Stop));
        diary.sit(at(day, 10), sit(180, Some(10)).stopped(Reason::Discomfort));
        diary.say(at(day, 11), clearing(&[(sign, Sign::Fever)], round != 1));
        diary.say(at(day + 1, 9), to_step("a"));
        diary.sit(at(day + 1, 10), sit(150, Some(1)));
        diary.say(at(day + 2, 9), to_step("b"));
        for n in 0..8 {
            diary.sit(at(day + 3 + n, 9), sit(180, Some(2)));
        }
        diary.say(at(day + 11, 9), ready(true));
    }
    assert_eq!(agrees(&diary), 0);
}

#[test]
fn t5_a_trimmed_fold_still_has_the_sessions_of_its_windows_when_something_lies_ahead() {
    let mut diary = on_b(&with(json!({"pause": [hurt(9, 1, 50)], "step_back": [
        {"when": stops(1, 50), "target": "previous"}]})));
    // Two of three are below the step: the window of ratings goes back three times as far as that of stops.
    for n in 1..=150 {
        let one = if n % 3 == 0 { sit(180, Some(1)) } else { sit(150, None) };
        diary.sit(at(n, 9), if n == 3 { Sit { peak: Some(9), ..one } } else { one });
        if n == 140 {
            diary.say(at(n, 10), clearing(&[], true));
            diary.say(at(n, 11), to_step("c"));
            diary.say(at(n, 12), to_step("b"));
        }
    }
    agrees(&diary);
    diary.0.truncate(3 + 139);
    diary.write(at(139, 10), at(145, 9), sit(180, Some(2)).what());
    assert_eq!(agrees(&diary), 0);
    // Of another practice fifty stay, and are needed by nobody.
    for n in 0..60 {
        let breath = Sit { practice: Practice::Breathing, ..sit(0, None) };
        diary.sit(ms(146 * DAY + n * MINUTE), breath);
    }
    agrees(&diary);
}

#[test]
fn d2_sessions_of_more_days_than_were_asked_for_are_all_named_after_trimming() {
    let rule = json!({"criterion": "sessions", "practised_days": 60, "within_days": 200});
    let mut diary = on_b(&with(up(vec![rule])));
    for day in 1..=59 {
        diary.sit(at(day, 9), sit(180, Some(1)));
    }
    for hour in 0..60 {
        diary.sit(ms(60 * DAY + hour * 20 * MINUTE), sit(180, None));
    }
    assert_eq!(agrees(&diary), 0);
    let first = |diary: &Diary| stored(diary.fold()).assess(&at(140, 20)).findings.remove(0);
    assert_eq!(first(&diary).verdict, Unknown, "a sixtieth day, if one of its sessions had a peak");
    for day in 61..=139 {
        diary.sit(at(day, 9), sit(180, Some(1)));
    }
    assert_eq!(agrees(&diary), 0);
    let found = first(&diary);
    assert_eq!((found.verdict, found.looked_at, found.entries.len()), (Met, 138, 50));
}

/// What the next entry comes to for a diary that is kept trimmed; where it is refused, nothing has changed.
fn next(diary: &Diary, written: i64, happened: i64, what: Content) -> Result<(), FoldError> {
    let mut fold = stored(diary.fold());
    let before = fold.assess(&ms(written));
    let entry =
        Entry { id: id(999), written: ms(written), happened: ms(happened), uptime: None, what };
    let came = fold.write(&entry);
    if came.is_err() {
        assert_eq!(fold.assess(&ms(written)), before);
    }
    came
}

const AGAIN: Result<(), FoldError> = Err(FoldError::NeedsHistory);

#[test]
fn only_what_reaches_behind_what_is_left_asks_for_the_whole_diary() {
    let breath = Sit { practice: Practice::Breathing, ..sit(0, None) };
    let mut diary = on_b(&easy());
    for day in 1..=60 {
        diary.sit(at(day, 9), sit(180, Some(1)));
        if day > 30 {
            diary.sit(at(day, 10), breath.clone());
        }
    }
    let (now, first_left) = (61 * DAY, 11 * DAY + 9 * HOUR);
    let next = |happened, what| next(&diary, now, happened, what);
    let session = || sit(180, Some(1)).what();
    assert_eq!(next(first_left, session()), Ok(()), "at the same time it comes after");
    assert_eq!(next(first_left - 1, session()), AGAIN);
    assert_eq!(next(now, session()), Ok(()));
    assert_eq!(next(DAY, breath.what()), Ok(()), "thirty of it are all there ever were");
    assert_eq!(next(first_left, to_step("c")), Ok(()));
    assert_eq!(next(first_left - 1, to_step("c")), AGAIN);
    for what in [ready(true), clearing(&[], true), confirm("b"), missing(), jumped()] {
        assert_eq!(next(DAY, what.clone()), Ok(()), "{what:?}");
    }
    let erased = Content::ErasedMark { latest: at(60, 9), caution_open: false, pause_open: false };
    for what in [correction(id(70), session()), strike(id(70)), accept(&easy()), erased] {
        assert_eq!(next(now, what.clone()), AGAIN, "{what:?}");
    }
}

#[test]
fn a_session_among_those_gone_from_a_window_asks_for_the_whole_diary() {
    // Every third is on the step: fifty of those lie further back than fifty of all.
    let mut diary = on_b(&easy());
    for day in 1..=150 {
        diary.sit(at(day, 9), sit(if day % 3 == 0 { 180 } else { 150 }, Some(1)));
    }
    let next = |day| next(&diary, 151 * DAY, day * DAY, sit(180, Some(1)).what());
    assert_eq!(next(2), AGAIN, "it is gone from all");
    assert_eq!(next(50), AGAIN, "of the last sessions of any size it was none");
    assert_eq!(next(102), Ok(()));
}

/// A few of the lives that `rule_model.rs` goes through by the thousand, so that a quick run has some too.
#[test]
fn a_trimmed_fold_says_the_same_of_some_seeded_lives() {
    for seed in 0..80 {
        agrees(&Diary(Life::of_seed(seed).entries));
    }
}
