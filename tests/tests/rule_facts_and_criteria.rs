//! Facts (F) and criteria (C): one test for each numbered sentence of the rule
//! (core/src/progression/RULE.md), named after it. All diaries are invented.

#[path = "rule_facts_and_criteria/afresh.rs"]
mod afresh;
mod rule_diary;

use frond_core::diary::entry::{Content, Reason};
use frond_core::programme::values::{Position, Practice};
use frond_core::progression::{Bar, Missing, OutcomeKind, Part, Verdict};
use frond_core::safety::{Sign, Tier};
use rule_diary::short::*;
use rule_diary::*;
use serde_json::json;

use OutcomeKind::{Hold, PauseAndCall, StepBack, StepUp};
use Verdict::{Met, Unknown, Unmet};

#[test]
fn f5_striking_a_session_starts_what_counts_for_going_up_afresh() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    let worse = diary.sit(at(1, 10), sit(180, Some(8)));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    let struck = diary.say(at(1, 11), strike(worse));
    assert_eq!(diary.kind(at(1, 20)), Hold, "leaving a session out opens no way up");
    diary.say(at(1, 11), strike(struck));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    diary.say(at(1, 12), strike(worse));
    diary.sit(at(1, 13), sit(180, Some(1)));
    assert_eq!(diary.kind(at(1, 20)), StepUp, "what is practised afterwards counts");
}

#[test]
fn f1_naming_the_step_again_does_not_start_it_afresh() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.say(at(1, 10), to_step("b"));
    assert_eq!(diary.kind(at(1, 20)), StepUp);
    diary.say(at(1, 11), to_step("a"));
    diary.say(at(1, 12), to_step("b"));
    assert_eq!(diary.kind(at(1, 20)), Hold, "another step between starts it afresh");
    diary.say(at(1, 13), to_step("nowhere"));
    assert_eq!(diary.fold().step().unwrap().id, token("b"));
    // Another practice is no fact of the step.
    let mut breath = sit(0, Some(1));
    breath.practice = Practice::Breathing;
    diary.sit(at(1, 14), breath);
    assert_eq!(diary.kind(at(1, 20)), Hold);
}

#[test]
fn f2_f3_only_a_full_session_counts_for_going_up() {
    let full = sit(180, Some(1));
    let changed = |change: &dyn Fn(&mut Sit)| {
        let mut other = full.clone();
        change(&mut other);
        let mut diary = on_b(&easy());
        diary.sit(at(1, 9), other);
        diary.kind(at(1, 20))
    };
    assert_eq!(changed(&|_| {}), StepUp);
    assert_eq!(changed(&|s| s.seconds = 299), Hold, "not rounded");
    assert_eq!(changed(&|s| s.size = 220), Hold, "a larger size is not on the step");
    assert_eq!(changed(&|s| s.position = Position::Sitting), Hold);
    assert_eq!(changed(&|s| *s = s.clone().stopped(Reason::Interrupted)), Hold);
    assert_eq!(changed(&|s| s.peak = None), Hold);
    assert_eq!(changed(&|s| *s = s.clone().sign(Sign::Spotting, Tier::Note)), StepUp);
}

#[test]
fn f3_a_sign_once_noted_counts_even_if_corrected_away_and_late_does_not() {
    let mut diary = on_b(&easy());
    let session = diary.sit(at(1, 9), sit(180, Some(1)).sign(Sign::Spotting, Tier::AskFirst));
    diary.write(at(1, 10), at(1, 9), correction(session, sit(180, Some(1)).what()));
    diary.say(at(1, 11), clearing(&[(session, Sign::Spotting)], false));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    // Told exactly 24 hours later is in time, a millisecond more is late.
    for (more, expected) in [(0, StepUp), (1, Hold)] {
        let mut diary = on_b(&easy());
        diary.write(ms(2 * DAY + 9 * HOUR + more), at(1, 9), sit(180, Some(1)).what());
        assert_eq!(diary.kind(at(2, 20)), expected);
        let mut diary = on_b(&easy());
        let session = diary.sit(at(1, 9), sit(180, Some(8)));
        let late = ms(2 * DAY + 9 * HOUR + more);
        diary.write(late, at(1, 9), correction(session, sit(180, Some(1)).what()));
        assert_eq!(diary.kind(at(2, 20)), expected, "the rating that counts came late");
        // Moving the session later does not make it in time.
        let mut diary = on_b(&easy());
        let session = diary.sit(at(1, 9), sit(180, Some(8)));
        diary.write(late, at(2, 8), correction(session, sit(180, Some(1)).what()));
        assert_eq!(diary.kind(at(2, 20)), expected);
    }
}

#[test]
fn f4_a_smaller_session_last_means_this_size_first() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(2, 9), sit(150, Some(0)));
    assert_eq!(bars(&diary, 2), [Bar::SmallerLast]);
    diary.sit(at(3, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(3, 20)), StepUp);
}

#[test]
fn f5_a_gap_starts_facts_afresh_even_one_that_still_runs() {
    let mut rule = up(vec![comfort(2)]);
    rule["after_gap_days"] = json!(7);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(8, 20)), StepUp);
    assert_eq!(diary.kind(at(9, 20)), Hold, "the gap runs up to now");
    diary.sit(at(9, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(9, 20)), Hold);
    // A session told late, of any ending, closes the gap.
    diary.write(at(9, 10), at(5, 9), sit(150, None).stopped(Reason::Upset).what());
    assert_eq!(verdict(&diary, 9, Part::StepUp), Unknown, "but it is unrated and in the window");
    diary.sit(at(10, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(10, 20)), StepUp);
}

#[test]
fn f5_an_erase_and_a_clearing_of_a_pause_start_facts_afresh() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    let mut cleared = diary.clone();
    cleared.say(at(1, 10), clearing(&[], false));
    assert_eq!(cleared.kind(at(1, 20)), StepUp, "one that closes no pause restarts nothing");
    cleared.say(at(1, 11), clearing(&[], true));
    assert_eq!(cleared.kind(at(1, 20)), Hold);
    cleared.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(cleared.kind(at(2, 20)), StepUp);
    // Happened after the clearing but written before it, or the other way: neither counts.
    let mut early = on_b(&easy());
    early.sit(at(1, 9), sit(180, Some(1)));
    early.write(at(1, 10), at(1, 8), clearing(&[], true));
    assert_eq!(early.kind(at(1, 20)), Hold);
    early.write(at(1, 11), at(1, 7), sit(180, Some(1)).what());
    assert_eq!(early.kind(at(1, 20)), Hold);
    let erased = Content::ErasedMark { latest: at(1, 9), caution_open: false, pause_open: false };
    diary.say(at(1, 12), erased);
    diary.say(at(1, 13), confirm("b"));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    diary.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(2, 20)), StepUp);
}

#[test]
fn f6_before_a_clearing_means_happened_and_written_before_it() {
    let programme = with(json!({"step_back": [{"when": hurt(6, 2, 2), "target": "previous"}]}));
    let mut diary = on_b(&programme);
    diary.sit(at(1, 9), sit(180, Some(7)));
    diary.sit(at(2, 9), sit(180, Some(7)));
    assert_eq!(diary.kind(at(2, 20)), StepBack);
    diary.say(at(2, 10), clearing(&[], true));
    assert_eq!(diary.kind(at(2, 20)), Hold);
    diary.sit(at(3, 9), sit(180, Some(7)));
    assert_eq!(diary.kind(at(3, 20)), Hold, "one after it is not two");
    // Happened before, written after: still counts.
    diary.write(at(3, 10), at(2, 8), sit(180, Some(7)).what());
    assert_eq!(diary.kind(at(3, 20)), StepBack);
}

#[test]
fn c1_windows_count_sessions_rated_or_not_and_look_at_those_there_are() {
    let mut diary =
        on_b(&with(json!({"step_back": [{"when": hurt(6, 1, 2), "target": "previous"}]})));
    diary.sit(at(1, 9), sit(180, Some(7)));
    assert_eq!(verdict(&diary, 1, Part::StepBack), Met, "fewer than K are looked at as they are");
    diary.sit(at(2, 9), sit(180, None));
    assert_eq!(verdict(&diary, 2, Part::StepBack), Met);
    diary.sit(at(3, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 3, Part::StepBack), Unknown);
    diary.sit(at(4, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 4, Part::StepBack), Unmet);
    // Sessions below the step are left out, larger ones are not.
    diary.sit(at(5, 9), sit(150, Some(9)));
    assert_eq!(verdict(&diary, 5, Part::StepBack), Unmet);
    diary.sit(at(6, 9), sit(220, Some(9)));
    assert_eq!(verdict(&diary, 6, Part::StepBack), Met);
}

/// Peaks in order, `None` for unrated; what the two discomfort criteria say.
#[test]
fn c2_tables_of_truth_for_discomfort() {
    let rows: [(&[Option<u8>], Verdict); 9] = [
        (&[], Unmet),
        (&[Some(3)], Unmet),
        (&[Some(3), Some(3)], Met),
        (&[Some(9), Some(3), Some(0)], Met),
        (&[Some(3), Some(4)], Unmet),
        (&[Some(3), None], Unknown),
        (&[None, Some(3), Some(3)], Met),
        (&[Some(3), None, Some(3)], Unknown),
        (&[Some(4), None, Some(3)], Unknown),
    ];
    for (peaks, expected) in rows {
        let mut diary = on_b(&with(up(vec![comfort(2)])));
        for (day, peak) in peaks.iter().enumerate() {
            diary.sit(at(day as i64 + 1, 9), sit(180, *peak));
        }
        assert_eq!(verdict(&diary, 9, Part::StepUp), expected, "at most: {peaks:?}");
    }
    let rows: [(&[Option<u8>], Verdict); 7] = [
        (&[], Unmet),
        (&[Some(6)], Unmet),
        (&[Some(6), Some(5), Some(10)], Met),
        (&[Some(6), Some(5), Some(5)], Unmet),
        (&[Some(6), None, Some(5)], Unknown),
        (&[None, None, None], Unknown),
        (&[Some(9), Some(9), Some(0), Some(0), None], Unmet),
    ];
    for (peaks, expected) in rows {
        let mut diary =
            on_b(&with(json!({"step_back": [{"when": hurt(6, 2, 3), "target": "first"}]})));
        for (day, peak) in peaks.iter().enumerate() {
            diary.sit(at(day as i64 + 1, 9), sit(180, *peak));
        }
        assert_eq!(verdict(&diary, 9, Part::StepBack), expected, "at least: {peaks:?}");
    }
}

#[test]
fn c2_missing_ratings_are_named() {
    let mut diary = on_b(&with(up(vec![comfort(2)])));
    diary.sit(at(1, 9), sit(180, Some(1)));
    let lacking = diary.sit(at(2, 9), sit(180, None));
    let found = finding(&diary, 2, Part::StepUp);
    assert_eq!(found.missing, Missing::Ratings { entries: vec![lacking] });
    assert_eq!(bars(&diary, 2), []);
}

#[test]
fn criterion_sessions_counts_distinct_days_of_full_sessions() {
    let rule = up(vec![
        json!({"criterion": "sessions", "practised_days": 2, "within_days": 4}),
        comfort(1),
    ]);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(1, 18), sit(180, Some(1)));
    assert_eq!(finding(&diary, 1, Part::StepUp).missing, Missing::PractisedDays { more: 1 });
    diary.sit(at(3, 9), sit(180, Some(9)));
    assert_eq!(verdict(&diary, 3, Part::StepUp), Met);
    assert_eq!(verdict(&diary, 4, Part::StepUp), Met);
    assert_eq!(verdict(&diary, 5, Part::StepUp), Unmet, "day 1 is four days ago");
}

#[test]
fn criterion_stopped_early_leaves_interruptions_out() {
    let mut diary =
        on_b(&with(json!({"step_back": [{"when": stops(2, 3), "target": "previous"}]})));
    diary.sit(at(1, 9), sit(180, None).stopped(Reason::DidNotGoIn));
    diary.sit(at(2, 9), sit(180, None).stopped(Reason::Interrupted));
    assert_eq!(verdict(&diary, 2, Part::StepBack), Unmet);
    let mut never = sit(180, None);
    never.ended = frond_core::diary::entry::Ended::CouldNotStart(Reason::Upset);
    diary.sit(at(3, 9), never);
    assert_eq!(verdict(&diary, 3, Part::StepBack), Met);
    diary.sit(at(4, 9), sit(180, Some(0)));
    assert_eq!(verdict(&diary, 4, Part::StepBack), Unmet);
}

#[test]
fn criterion_days_without_practice_counts_from_the_latest_of_three() {
    let rule = json!({"step_back": [{"when": away(5), "target": "previous"}]});
    let mut diary = on_b(&with(rule));
    diary.say(at(0, 9), Content::TimeOff { from: at(0, 0).day(), to: at(9, 0).day() });
    assert_eq!(verdict(&diary, 4, Part::StepBack), Unmet);
    assert_eq!(verdict(&diary, 5, Part::StepBack), Met, "days off do not stop it");
    diary.sit(at(5, 9), sit(150, None).stopped(Reason::Upset));
    assert_eq!(verdict(&diary, 9, Part::StepBack), Unmet);
    assert_eq!(verdict(&diary, 10, Part::StepBack), Met);
    diary.say(at(10, 9), clearing(&[], true));
    assert_eq!(verdict(&diary, 14, Part::StepBack), Unmet);
    assert_eq!(verdict(&diary, 15, Part::StepBack), Met);
    // Reached by going back: unmet until practised.
    let mut back = Diary::begun(&with(
        json!({"step_back": [{"when": away(5), "target": "first"}], "pause": [away(60)]}),
    ));
    back.say(at(0, 9), to_step("c"));
    back.say(at(0, 10), to_step("b"));
    assert_eq!(verdict(&back, 50, Part::StepBack), Unmet);
    assert_eq!(verdict(&back, 60, Part::Pause), Met, "in pause it counts all the same");
    back.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(verdict(&back, 6, Part::StepBack), Met);
}

#[test]
fn criterion_steps_back_counts_changes_to_an_earlier_step() {
    let rule = json!({"pause": [{"criterion": "steps_back", "times": 2, "within_days": 10}]});
    let mut diary = on_b(&with(rule.clone()));
    diary.say(at(1, 9), to_step("a"));
    diary.say(at(2, 9), to_step("c"));
    assert_eq!(verdict(&diary, 2, Part::Pause), Unmet);
    // A revision that starts lower is none.
    let mut steps = ladder();
    steps[2]["position"] = json!("sitting");
    diary.say(at(3, 9), accept(&programme(2, steps, rule)));
    assert_eq!(diary.fold().step().unwrap().id, token("a"));
    assert_eq!(verdict(&diary, 3, Part::Pause), Unmet);
    diary.say(at(4, 9), to_step("b"));
    diary.say(at(10, 9), to_step("a"));
    assert_eq!(verdict(&diary, 10, Part::Pause), Met);
    assert_eq!(verdict(&diary, 11, Part::Pause), Unmet);
    assert_eq!(diary.kind(at(11, 20)), PauseAndCall, "it latched");
    diary.say(at(12, 9), clearing(&[], true));
    assert_eq!(diary.kind(at(12, 20)), Hold);
}

#[test]
fn criterion_days_on_step_table_of_truth() {
    let rule = up(vec![json!({"criterion": "days_on_step", "days": 3}), comfort(1)]);
    // The day asked on, a day off in between, an unconfirmed clock, and the verdict.
    for (day, off, doubt, expected) in [
        (2, false, false, Unmet),
        (3, false, false, Met),
        (3, true, false, Unmet),
        (4, true, false, Met),
        (2, false, true, Unknown),
        (4, false, true, Unknown),
    ] {
        let mut diary = on_b(&with(rule.clone()));
        diary.sit(at(1, 9), sit(180, Some(1)));
        if off {
            let day = at(2, 0).day();
            diary.say(at(1, 10), Content::TimeOff { from: day, to: day });
        }
        if doubt {
            diary.say(at(1, 11), jumped());
        }
        let found = verdict(&diary, day, Part::StepUp);
        assert_eq!(found, expected, "day {day}, off {off}, doubt {doubt}");
    }
    // Choosing another step begins the count anew; naming the same one again does not.
    let mut diary = on_b(&with(rule));
    diary.say(at(2, 9), to_step("b"));
    assert_eq!(verdict(&diary, 3, Part::StepUp), Met);
    diary.say(at(3, 9), to_step("a"));
    diary.say(at(3, 10), to_step("b"));
    assert_eq!(verdict(&diary, 5, Part::StepUp), Unmet);
    assert_eq!(verdict(&diary, 6, Part::StepUp), Met);
}

#[test]
fn criterion_sign_free_days_counts_from_report_and_clearing() {
    let rule = up(vec![json!({"criterion": "sign_free_days", "days": 5}), comfort(1)]);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 4, Part::StepUp), Unmet, "the first programme is too young");
    assert_eq!(verdict(&diary, 5, Part::StepUp), Met);
    diary.say(at(6, 8), report(Sign::Spotting, Tier::Note));
    assert_eq!(verdict(&diary, 6, Part::StepUp), Met, "a note is none");
    let sign = diary.say(at(6, 9), report(Sign::Fever, Tier::Stop));
    diary.say(at(8, 9), clearing(&[(sign, Sign::Fever)], false));
    assert_eq!(verdict(&diary, 12, Part::StepUp), Unmet);
    assert_eq!(verdict(&diary, 13, Part::StepUp), Met);
}

#[test]
fn criterion_feels_ready_takes_the_answer_written_last_since_the_last_session() {
    let rule = up(vec![json!({"criterion": "feels_ready"}), comfort(1)]);
    let mut diary = on_b(&with(rule));
    let answered = |diary: &Diary, day| verdict(diary, day, Part::StepUp);
    diary.say(at(0, 10), ready(true));
    assert_eq!(answered(&diary, 0), Met, "none yet: since the step began");
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(answered(&diary, 1), Unmet);
    diary.say(at(1, 10), ready(true));
    assert_eq!(answered(&diary, 1), Met);
    // Written last, though said to have happened earlier.
    let not_yet = diary.write(at(1, 12), ms(DAY + 9 * HOUR + MINUTE), ready(false));
    assert_eq!(answered(&diary, 1), Unmet);
    diary.say(at(1, 13), strike(not_yet));
    assert_eq!(answered(&diary, 1), Met);
    diary.say(at(1, 14), clearing(&[], true));
    assert_eq!(answered(&diary, 1), Unmet);
}

#[test]
fn f2_below_is_an_earlier_step_or_a_smaller_size_and_not_another_position() {
    // The same size on the back, then sitting, then standing.
    let mut steps = json!([step("a", 180), step("b", 180), step("c", 180)]);
    steps[1]["position"] = json!("sitting");
    steps[2]["position"] = json!("standing");
    let mut rule = up(vec![comfort(1)]);
    rule["step_back"] = json!([{"when": hurt(6, 1, 1), "target": "first"}]);
    let mut diary = Diary::begun(&programme(1, steps, rule));
    diary.say(at(0, 9), to_step("b"));
    let sitting = Sit { position: Position::Sitting, ..sit(180, Some(1)) };
    diary.sit(at(1, 9), sitting);
    assert_eq!(diary.kind(at(1, 20)), StepUp);
    let mut earlier = diary.clone();
    earlier.sit(at(2, 9), sit(180, Some(9)));
    assert_eq!(bars(&earlier, 2), [Bar::SmallerLast], "as on the step before");
    assert_eq!(verdict(&earlier, 2, Part::StepBack), Unmet, "and in no window of ratings");
    // A later step's position, at the same size: neither on the step nor below it.
    diary.sit(at(2, 9), Sit { position: Position::Standing, ..sit(180, Some(9)) });
    assert_eq!(bars(&diary, 2), [Bar::NotKnownUnmet]);
    assert_eq!(verdict(&diary, 2, Part::StepBack), Met);
}

#[test]
fn criterion_sessions_is_answered_the_same_with_and_without_reasons() {
    let sessions = json!({"criterion": "sessions", "practised_days": 2, "within_days": 4});
    let mut diary = on_b(&with(up(vec![sessions, comfort(1)])));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(2, 9), sit(180, Some(1)));
    // `kind` compares the two.
    assert_eq!(diary.kind(at(2, 20)), StepUp);
    assert_eq!(diary.kind(at(4, 20)), StepUp);
    assert_eq!(diary.kind(at(5, 20)), Hold);
}

#[test]
fn criterion_sign_free_days_counts_a_sign_from_the_clearing_that_closed_it() {
    let mut diary = on_b(&with(up(vec![json!({"criterion": "sign_free_days", "days": 5})])));
    let found = |diary: &Diary, day| verdict(diary, day, Part::StepUp);
    let note = diary.say(at(1, 9), report(Sign::Spotting, Tier::Note));
    let sign = diary.say(at(2, 9), report(Sign::Fever, Tier::Stop));
    let naming = clearing(&[(sign, Sign::Fever), (note, Sign::Spotting)], false);
    let first = diary.say(at(10, 9), naming.clone());
    assert_eq!((found(&diary, 14), found(&diary, 15)), (Unmet, Met));
    // Named again: it was closed already. A note needs no clearing and restarts nothing.
    diary.say(at(13, 9), naming);
    assert_eq!((found(&diary, 14), found(&diary, 15)), (Unmet, Met));
    // Without the first clearing the second is what closed it.
    diary.say(at(13, 10), strike(first));
    assert_eq!((found(&diary, 17), found(&diary, 18)), (Unmet, Met));
    // A note on a later day, and everything worked out again: it still counts for nothing.
    diary.say(at(16, 9), report(Sign::Spotting, Tier::Note));
    let stay = diary.say(at(16, 10), Content::StayHere { stay: true });
    diary.say(at(16, 11), strike(stay));
    assert_eq!((found(&diary, 17), found(&diary, 18)), (Unmet, Met));
    assert_eq!(diary.kind(at(18, 20)), StepUp);
    // Without any clearing the day of the report is left, though the sign is open.
    let third = diary.say(at(16, 12), report(Sign::Fever, Tier::AskFirst));
    let last = diary.say(at(20, 9), clearing(&[(third, Sign::Fever)], false));
    assert_eq!((found(&diary, 24), found(&diary, 25)), (Unmet, Met));
    diary.say(at(20, 10), strike(last));
    assert_eq!((found(&diary, 20), found(&diary, 21)), (Unmet, Met));
}

#[test]
fn criterion_steps_back_is_unknown_by_a_change_dated_ahead() {
    for (times, expected) in [(1, Met), (2, Unknown), (3, Unmet)] {
        let pause = json!({"criterion": "steps_back", "times": times, "within_days": 10});
        let mut diary = on_b(&with(json!({"pause": [pause]})));
        let sure = diary.say(at(3, 9), to_step("a"));
        diary.say(at(3, 10), to_step("b"));
        let ahead = diary.write(at(3, 11), at(50, 9), to_step("a"));
        let found = finding(&diary, 4, Part::Pause);
        assert_eq!((found.verdict, found.looked_at), (expected, 2), "{times}");
        assert_eq!(found.entries, [sure, ahead]);
        // Thirty days later the sure one is too long ago, and one alone lies ahead.
        let found = finding(&diary, 34, Part::Pause);
        assert_eq!((found.looked_at, found.entries), (1, vec![ahead]), "{times}");
    }
}
