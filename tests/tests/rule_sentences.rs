//! One test for each numbered sentence of the rule (core/src/progression/RULE.md), named after it, and a
//! table of truth for each criterion. All diaries are invented.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "tests may fail loudly")]

mod rule_diary;

use frond_core::diary::entry::{Content, EntryId, Reason};
use frond_core::programme::values::{Position, Practice, RatingKind};
use frond_core::progression::{
    Bar, Basis, ClockDoubt, Finding, Fold, FoldError, Missing, Outcome, OutcomeKind, Part, Verdict,
    replay,
};
use frond_core::safety::{Sign, Tier};
use rule_diary::*;
use serde_json::{Value, json};

use OutcomeKind::{Hold, PauseAndCall, ReadyToTalk, StepBack, StepUp};
use Verdict::{Met, Unknown, Unmet};

fn comfort(last: u8) -> Value {
    json!({"criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": last})
}
fn hurt(x: u8, j: u8, k: u8) -> Value {
    json!({"criterion": "discomfort_at_least", "rating": "peak", "at_least": x, "window": {"sessions": j, "of_last": k}})
}
fn stops(j: u8, k: u8) -> Value {
    json!({"criterion": "stopped_early", "window": {"sessions": j, "of_last": k}})
}
fn away(days: u16) -> Value {
    json!({"criterion": "days_without_practice", "days": days})
}
fn up(all: Vec<Value>) -> Value {
    json!({"step_up": {"all_of": all}})
}
fn with(rule: Value) -> Value {
    programme(1, ladder(), rule)
}
/// Up after one comfortable full session.
fn easy() -> Value {
    with(up(vec![comfort(1)]))
}
fn on_b(programme: &Value) -> Diary {
    let mut diary = Diary::begun(programme);
    diary.say(at(0, 9), to_step("b"));
    diary
}
fn finding(diary: &Diary, now: i64, part: Part) -> Finding {
    diary.assess(at(now, 20)).findings.into_iter().find(|f| f.part == part).unwrap()
}
fn verdict(diary: &Diary, now: i64, part: Part) -> Verdict {
    finding(diary, now, part).verdict
}
fn bars(diary: &Diary, now: i64) -> Vec<Bar> {
    diary.assess(at(now, 20)).bars
}

#[test]
fn p2_a_gate_talks_first_and_maintain_wins() {
    for (gate, maintain, expected) in [
        (false, false, StepUp),
        (true, false, ReadyToTalk),
        (false, true, Hold),
        (true, true, Hold),
    ] {
        let mut steps = ladder();
        steps[0]["gate"] = json!(gate);
        steps[0]["maintain"] = json!(maintain);
        let mut diary = Diary::begun(&programme(1, steps, up(vec![comfort(1)])));
        diary.sit(at(1, 9), sit(150, Some(1)));
        assert_eq!(diary.kind(at(1, 20)), expected);
    }
    // The last step is like a gate; a step's own rule wins over the programme's.
    let mut steps = ladder();
    steps[2]["rule"] = up(vec![comfort(2)]);
    let mut diary = Diary::begun(&programme(1, steps, up(vec![comfort(1)])));
    diary.say(at(0, 9), to_step("c"));
    diary.sit(at(1, 9), sit(220, Some(1)));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    diary.sit(at(2, 9), sit(220, Some(1)));
    assert_eq!(diary.kind(at(2, 20)), ReadyToTalk);
}

#[test]
fn p3_without_step_up_nothing_above_hold_and_targets_read_as_written() {
    let mut diary = Diary::begun(&with(json!({})));
    diary.sit(at(1, 9), sit(150, Some(0)));
    let assessment = diary.assess(at(1, 20));
    assert_eq!(assessment.outcome.kind(), Hold);
    assert!(assessment.bars.is_empty());
    let mut empty = Diary::begun(&with(json!({"step_up": {"all_of": []}})));
    empty.sit(at(1, 9), sit(150, Some(0)));
    assert_eq!(empty.kind(at(1, 20)), Hold);
    for (target, lands) in [
        (json!("previous"), "b"),
        (json!("first"), "a"),
        (json!({"step": "a"}), "a"),
        (json!({"step": "c"}), "b"),
    ] {
        let rule = json!({"step_back": [{"when": hurt(6, 1, 1), "target": target}]});
        let mut diary = Diary::begun(&with(rule));
        diary.say(at(0, 9), to_step("c"));
        diary.sit(at(1, 9), sit(220, Some(6)));
        assert_eq!(diary.outcome(at(1, 20)), Outcome::StepBack { to: token(lands) });
    }
}

#[test]
fn t1_order_is_of_happening_ties_by_place_and_corrections_keep_the_place() {
    // F4 looks at the latest to happen, not at the last written.
    let mut diary = on_b(&easy());
    diary.sit(at(2, 9), sit(180, Some(1)));
    diary.write(at(2, 10), at(1, 9), sit(150, Some(1)).what());
    assert_eq!(diary.kind(at(2, 20)), StepUp);
    let mut diary = on_b(&easy());
    diary.sit(at(2, 9), sit(180, Some(1)));
    let smaller = diary.sit(at(2, 9), sit(150, Some(1)));
    assert_eq!(diary.kind(at(2, 20)), Hold, "a tie goes by place");
    // Corrected to have happened earlier: the order of happening moves.
    diary.write(at(2, 10), at(1, 9), correction(smaller, sit(150, Some(1)).what()));
    assert_eq!(diary.kind(at(2, 20)), StepUp);
}

#[test]
fn t1_the_newest_unstruck_correction_counts_and_a_strike_can_be_struck() {
    let mut diary = on_b(&easy());
    let session = diary.sit(at(1, 9), sit(180, Some(8)));
    // The peak that counts; nothing where the session is left out.
    let counts = |diary: &Diary| {
        let mut fold = Fold::new(None);
        diary.0.iter().for_each(|entry| fold.write(entry).unwrap());
        fold.occasion(session).map(|seen| seen.rating(RatingKind::Peak).unwrap().get())
    };
    let first = diary.write(at(1, 10), at(1, 9), correction(session, sit(180, Some(1)).what()));
    assert_eq!(counts(&diary), Some(1));
    assert_eq!(diary.kind(at(1, 20)), StepUp);
    // Naming the correction leads to the entry.
    let second = diary.write(at(1, 11), at(1, 9), correction(first, sit(180, Some(9)).what()));
    assert_eq!(counts(&diary), Some(9));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    let strike_second = diary.say(at(1, 12), strike(second));
    assert_eq!(counts(&diary), Some(1));
    let freed = diary.say(at(1, 12), strike(strike_second));
    assert_eq!(counts(&diary), Some(9));
    diary.say(at(1, 12), strike(freed));
    assert_eq!(counts(&diary), Some(1));
    let whole = diary.say(at(1, 13), strike(session));
    assert_eq!(counts(&diary), None, "striking leaves corrections out too");
    diary.say(at(1, 13), strike(whole));
    assert_eq!(counts(&diary), Some(1));
    // Another kind does not fit, and what is not there is ignored.
    diary.say(at(1, 14), correction(session, ready(true)));
    diary.say(at(1, 14), strike(id(9_999)));
    assert_eq!(counts(&diary), Some(1));
}

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
fn t1_machine_marks_cannot_be_struck_or_corrected() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    let mark = diary.say(at(1, 10), missing());
    diary.say(at(1, 11), strike(mark));
    diary.say(at(1, 11), correction(mark, missing()));
    assert_eq!(bars(&diary, 1), [Bar::EntriesMissing]);
}

#[test]
fn t2_days_are_local_and_days_off_count_both_ends_and_today() {
    let mut diary =
        on_b(&with(up(vec![json!({"criterion": "days_on_step", "days": 5}), comfort(1)])));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 4, Part::StepUp), Unmet);
    assert_eq!(verdict(&diary, 5, Part::StepUp), Met);
    let day = |n| at(n, 0).day();
    diary.say(at(1, 10), Content::TimeOff { from: day(2), to: day(3) });
    assert_eq!(finding(&diary, 6, Part::StepUp).missing, Missing::Days { more: 1 });
    assert_eq!(verdict(&diary, 7, Part::StepUp), Met);
    // Overlapping spans count once, and today too.
    diary.say(at(1, 10), Content::TimeOff { from: day(3), to: day(7) });
    assert_eq!(finding(&diary, 7, Part::StepUp).missing, Missing::Days { more: 4 });
    // Five minutes before the step began, on the day before: below zero counts as zero.
    let mut ahead = Diary::begun(&with(up(vec![json!({"criterion": "days_on_step", "days": 5})])));
    ahead.say(ms(5 * DAY + 2 * MINUTE), to_step("b"));
    let found = ahead.assess(ms(5 * DAY - 3 * MINUTE)).findings.remove(0);
    assert_eq!(found.missing, Missing::Days { more: 5 });
}

#[test]
fn t2_each_entry_counts_by_its_own_offset() {
    use chrono::FixedOffset;
    use frond_core::moment::Stamp;
    let rule = up(vec![
        json!({"criterion": "sessions", "practised_days": 2, "within_days": 9}),
        comfort(1),
    ]);
    let mut diary = on_b(&with(rule));
    let east = |millis: i64, hours: i32| {
        Stamp::from_millis(START + millis, FixedOffset::east_opt(hours * 3600).unwrap(), None)
            .unwrap()
    };
    // Half an hour apart: two days in Tokyo's offset against Greenwich's, one by the same offset.
    diary.sit(east(DAY + 14 * HOUR, 0), sit(180, Some(1)));
    diary.sit(east(DAY + 14 * HOUR + 30 * MINUTE, 0), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 3, Part::StepUp), Unmet);
    diary.sit(east(DAY + 15 * HOUR + 30 * MINUTE, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 3, Part::StepUp), Met);
}

#[test]
fn t3_the_clock_is_unsure_while_an_entry_lies_ahead_or_a_mark_is_open() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    let now = at(1, 9).millis() - START;
    assert_eq!(diary.assess(ms(now - 10 * MINUTE)).clock, None);
    assert_eq!(diary.assess(ms(now - 10 * MINUTE - 1)).clock, Some(ClockDoubt::EntryAhead));
    diary.say(at(1, 10), jumped());
    assert_eq!(diary.assess(at(1, 11)).clock, Some(ClockDoubt::NotConfirmed));
    let said = diary.say(at(1, 12), Content::TimeConfirmed {});
    assert_eq!(diary.assess(at(1, 13)).clock, None);
    diary.say(at(1, 14), strike(said));
    assert_eq!(diary.assess(at(1, 15)).clock, Some(ClockDoubt::NotConfirmed));
}

#[test]
fn t4_an_unsure_clock_gives_no_step_up_and_unknown_days() {
    let days = |c: &str| json!({"criterion": c, "days": 1});
    let rule = json!({
        "step_up": {"all_of": [days("days_on_step"), comfort(1), days("sign_free_days"),
            {"criterion": "sessions", "practised_days": 1, "within_days": 9}]},
        "step_back": [{"when": away(30), "target": "previous"}],
        "pause": [away(60), {"criterion": "steps_back", "times": 9, "within_days": 9}],
    });
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(2, 9)), StepUp);
    diary.say(at(2, 9), jumped());
    let assessment = diary.assess(at(200, 9));
    assert_eq!(assessment.outcome.kind(), Hold, "a wrong clock latches nothing");
    for finding in &assessment.findings {
        let comfort = finding.entries.len() == 1;
        assert_eq!(finding.verdict, if comfort { Met } else { Unknown }, "{finding:?}");
    }
    assert!(assessment.bars.contains(&Bar::UnsureClock));
}

#[test]
fn t4_the_time_just_before_a_clock_mark_is_in_doubt_already() {
    let mut diary = on_b(&with(json!({"pause": [away(30)]})));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.say(at(400, 9), jumped());
    assert_eq!(diary.assess(at(2, 9)).pause, None);
    // Without the mark the same absence is real, and latches.
    let mut diary = on_b(&with(json!({"pause": [away(30)]})));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(400, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(400, 10)), PauseAndCall);
}

#[test]
fn t4_with_an_entry_ahead_days_are_unknown_only_if_counted_from_it() {
    let mut diary = on_b(&with(json!({"pause": [away(30)]})));
    // Ahead, but written first: the real session after it is the last by place.
    diary.write(at(1, 8), at(90, 8), sit(180, Some(1)).what());
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 20, Part::Pause), Unmet);
    assert_eq!(verdict(&diary, 31, Part::Pause), Met);
    // Ahead and last: unknown.
    diary.write(at(2, 8), at(90, 8), sit(180, Some(1)).what());
    assert_eq!(verdict(&diary, 31, Part::Pause), Unknown);
}

#[test]
fn t5_what_lies_ahead_hides_nothing_from_pause_and_step_back() {
    // A step beginning dated ahead does not hide the session written after it.
    let rule = json!({"step_back": [{"when": hurt(6, 1, 1), "target": "previous"}]});
    let mut diary = Diary::begun(&with(rule.clone()));
    diary.write(at(0, 9), at(50, 9), to_step("b"));
    diary.sit(at(1, 9), sit(180, Some(7)));
    assert_eq!(diary.kind(at(1, 20)), StepBack);
    // A clearing dated ahead goes by place: what is written after it still counts.
    let mut diary = on_b(&with(json!({"pause": [hurt(6, 1, 1)]})));
    diary.write(at(0, 10), at(50, 9), clearing(&[], true));
    diary.sit(at(1, 9), sit(180, Some(7)));
    assert_eq!(diary.kind(at(1, 20)), PauseAndCall);
    // A comfortable session dated ahead is not the latest for ever.
    let mut diary = on_b(&with(rule));
    diary.write(at(0, 10), at(50, 9), sit(180, Some(0)).what());
    diary.sit(at(1, 9), sit(180, Some(7)));
    assert_eq!(diary.kind(at(1, 20)), StepBack);
}

#[test]
fn t6_replay_sees_what_was_there_and_a_tried_rule_replaces_every_rule() {
    let mut steps = ladder();
    steps[1]["rule"] = up(vec![comfort(9)]);
    let mut diary = Diary::begun(&programme(1, steps, json!({"pause": [hurt(5, 1, 1)]})));
    diary.say(at(0, 9), to_step("b"));
    let session = diary.sit(at(1, 9), sit(180, Some(6)));
    diary.write(at(1, 10), at(1, 9), correction(session, sit(180, Some(1)).what()));
    let kinds = |tried: Option<Value>| -> Vec<OutcomeKind> {
        let tried = tried.map(rule);
        replay(&diary.0, tried.as_ref()).unwrap().iter().map(|row| row.outcome.kind()).collect()
    };
    assert_eq!(kinds(None), [Hold, Hold, Hold, Hold, Hold]);
    assert_eq!(kinds(Some(up(vec![comfort(1)]))), [Hold, Hold, Hold, Hold, StepUp]);
    let pausing = json!({"pause": [hurt(5, 1, 1)]});
    assert_eq!(kinds(Some(pausing)), [Hold, Hold, Hold, PauseAndCall, PauseAndCall]);
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
fn o1_an_open_sign_pauses_with_or_without_a_programme() {
    for tier in [Tier::AskFirst, Tier::Stop, Tier::Emergency] {
        let mut diary = Diary::default();
        let sign = diary.say(at(1, 9), report(Sign::Fever, tier));
        assert_eq!(diary.kind(at(1, 20)), PauseAndCall);
        assert_eq!(diary.assess(at(1, 20)).basis, Basis::NoProgramme);
        diary.say(at(2, 9), clearing(&[(sign, Sign::Fever)], false));
        assert_eq!(diary.kind(at(2, 20)), Hold);
    }
    let mut diary = Diary::default();
    diary.say(at(1, 9), report(Sign::Spotting, Tier::Note));
    assert_eq!(diary.kind(at(1, 20)), Hold);
}

#[test]
fn o1_a_pause_latches_until_a_clearing_closes_it_and_a_correction_does_not_unlatch() {
    let mut diary = on_b(&with(json!({"pause": [hurt(8, 1, 1)]})));
    let session = diary.sit(at(1, 9), sit(180, Some(9)));
    diary.write(at(1, 10), at(1, 9), correction(session, sit(180, Some(1)).what()));
    diary.sit(at(2, 9), sit(180, Some(1)));
    let pause = diary.assess(at(2, 20)).pause.unwrap();
    assert_eq!(pause.latched_at, Some(4));
    diary.say(at(2, 10), clearing(&[], false));
    assert_eq!(diary.kind(at(2, 20)), PauseAndCall, "it did not say that it closes the pause");
    let closing = diary.say(at(2, 11), clearing(&[], true));
    assert_eq!(diary.kind(at(2, 20)), Hold);
    let struck = diary.say(at(2, 12), strike(closing));
    assert_eq!(diary.kind(at(2, 20)), PauseAndCall, "what it closed stands again");
    diary.say(at(2, 13), strike(struck));
    assert_eq!(diary.kind(at(2, 20)), Hold);
}

#[test]
fn o1_just_before_an_entry_counts_too() {
    // The absence ends with the session; just before it the criterion was met.
    let mut diary = on_b(&with(json!({"pause": [away(10)]})));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(11, 9), sit(180, Some(1)));
    let pause = diary.assess(at(11, 20)).pause.unwrap();
    assert_eq!(pause.latched_at, Some(5));
    // Met now, with nothing written since: it stands, not latched.
    let mut diary = on_b(&with(json!({"pause": [away(10)]})));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(diary.assess(at(11, 20)).pause.unwrap().latched_at, None);
}

#[test]
fn o2_the_lowest_target_and_on_the_first_step_hold_and_tell() {
    let rule = json!({"step_back": [
        {"when": hurt(5, 1, 1), "target": "previous"}, {"when": hurt(7, 1, 1), "target": "first"}]});
    let mut diary = Diary::begun(&with(rule));
    diary.sit(at(0, 10), sit(150, Some(9)));
    assert_eq!(diary.outcome(at(0, 20)), Outcome::Hold { tell_clinician: true });
    diary.say(at(1, 8), to_step("c"));
    diary.sit(at(1, 9), sit(220, Some(5)));
    assert_eq!(diary.outcome(at(1, 20)), Outcome::StepBack { to: token("b") });
    diary.sit(at(2, 9), sit(220, Some(7)));
    assert_eq!(diary.outcome(at(2, 20)), Outcome::StepBack { to: token("a") });
}

#[test]
fn o3_each_bar_bars_and_ends_as_written() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(diary.outcome(at(1, 20)), Outcome::StepUp { to: token("c") });
    diary.say(at(1, 10), Content::StayHere { stay: true });
    assert_eq!(bars(&diary, 1), [Bar::StayHere]);
    diary.say(at(1, 11), to_step("b"));
    assert_eq!(bars(&diary, 1), [Bar::StayHere], "naming the same step changes no step");
    diary.say(at(1, 12), Content::StayHere { stay: false });
    assert_eq!(bars(&diary, 1), []);
    diary.say(at(1, 13), Content::StayHere { stay: true });
    diary.say(at(1, 14), to_step("a"));
    diary.say(at(1, 15), to_step("b"));
    assert_eq!(bars(&diary, 1), [], "the step changed");
    diary.sit(at(2, 9), sit(180, Some(1)));
    diary.say(at(2, 10), missing());
    assert_eq!(bars(&diary, 2), [Bar::EntriesMissing]);
    diary.say(at(2, 11), clearing(&[], false));
    assert_eq!(bars(&diary, 2), []);
    diary.say(at(2, 12), Content::RestoredMark { up_to: 3 });
    assert_eq!(bars(&diary, 2), [Bar::StepNotConfirmed, Bar::RestoreNotConfirmed]);
    diary.say(at(2, 13), confirm("a"));
    assert!(!bars(&diary, 2).is_empty(), "another step was named");
    diary.say(at(2, 14), confirm("b"));
    assert_eq!(diary.kind(at(2, 20)), StepUp);
}

#[test]
fn o3_review_by_and_unknown_criteria_bar() {
    let mut plan = easy();
    plan["review_by"] = json!("2026-01-05");
    let mut diary = on_b(&plan);
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(4, 20)), StepUp, "on the day itself it still holds");
    assert_eq!(bars(&diary, 5), [Bar::ReviewPassed]);
    let mut rule = up(vec![comfort(1)]);
    rule["pause"] = json!([hurt(8, 1, 2)]);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, None));
    diary.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(bars(&diary, 2), [Bar::NotKnownUnmet]);
}

#[test]
fn o4_hold_says_what_is_missing() {
    let mut diary = on_b(&with(up(vec![comfort(3)])));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(diary.outcome(at(1, 20)), Outcome::Hold { tell_clinician: false });
    assert_eq!(finding(&diary, 1, Part::StepUp).missing, Missing::FullSessions { more: 2 });
    diary.sit(at(2, 9), sit(180, Some(5)));
    diary.sit(at(3, 9), sit(180, Some(1)));
    assert_eq!(finding(&diary, 3, Part::StepUp).missing, Missing::Comfort);
}

#[test]
fn o5_the_order_of_outcomes() {
    assert!(
        PauseAndCall < StepBack && StepBack < Hold && Hold < ReadyToTalk && ReadyToTalk < StepUp
    );
}

#[test]
fn s1_signs_keep_their_identity_and_close_only_by_naming() {
    let mut diary = on_b(&easy());
    let sign = diary.say(at(1, 9), report(Sign::Fever, Tier::AskFirst));
    diary.say(at(1, 10), strike(sign));
    assert_eq!(diary.kind(at(1, 20)), PauseAndCall, "striking does not close it");
    diary.say(at(1, 11), correction(sign, report(Sign::Fever, Tier::Note)));
    assert_eq!(diary.kind(at(1, 20)), PauseAndCall, "a correction does not lower it");
    diary.say(at(1, 12), clearing(&[(id(77), Sign::Fever)], true));
    assert_eq!(diary.kind(at(1, 20)), PauseAndCall, "it did not name this one");
    let closing = diary.say(at(1, 13), clearing(&[(sign, Sign::Fever)], false));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    diary.say(at(1, 14), correction(sign, report(Sign::Fever, Tier::AskFirst)));
    assert_eq!(diary.kind(at(1, 20)), Hold, "the same tier carries on");
    diary.say(at(1, 15), correction(sign, report(Sign::Fever, Tier::Stop)));
    assert_eq!(diary.assess(at(1, 20)).open_signs[0].tier, Tier::Stop, "raised: open anew");
    diary.say(at(1, 16), clearing(&[(sign, Sign::Fever)], false));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    diary.say(at(1, 17), strike(closing));
    assert_eq!(diary.kind(at(1, 20)), Hold, "the later clearing still closes it");
}

#[test]
fn s1_a_revision_that_lists_it_closes_a_sign() {
    let mut diary = on_b(&easy());
    let sign = diary.say(at(1, 9), report(Sign::Fever, Tier::Stop));
    let seen = json!([{"entry": sign.to_string(), "sign": "fever"}]);
    let mut same = easy();
    same["signs_seen"] = seen.clone();
    diary.say(at(2, 9), accept(&same));
    assert_eq!(diary.kind(at(2, 20)), PauseAndCall, "not a higher number");
    let mut higher = programme(2, ladder(), json!({}));
    higher["signs_seen"] = seen;
    diary.say(at(3, 9), accept(&higher));
    assert_eq!(diary.kind(at(3, 20)), Hold);
}

#[test]
fn s2_a_clearing_of_signs_leaves_a_pause_standing() {
    let mut diary = on_b(&with(json!({"pause": [hurt(8, 1, 1)]})));
    let session = diary.sit(at(1, 9), sit(180, Some(9)).sign(Sign::Spotting, Tier::AskFirst));
    diary.say(at(1, 10), clearing(&[(session, Sign::Spotting)], false));
    let assessment = diary.assess(at(1, 20));
    assert!(assessment.open_signs.is_empty() && assessment.pause.is_some());
}

#[test]
fn s3_erase_marks_keep_a_caution_and_a_pause_open() {
    let mut diary = on_b(&easy());
    let mark = diary.say(
        at(1, 9),
        Content::ErasedMark { latest: at(1, 8), caution_open: true, pause_open: true },
    );
    let assessment = diary.assess(at(1, 20));
    assert_eq!(assessment.open_signs[0].key.sign, Sign::ACaution);
    assert_eq!(assessment.open_signs[0].key.entry, mark);
    assert_eq!(assessment.pause.unwrap().criterion, None);
    diary.say(at(1, 10), clearing(&[(mark, Sign::ACaution)], false));
    assert_eq!(diary.kind(at(1, 20)), PauseAndCall);
    diary.say(at(1, 11), clearing(&[], true));
    assert_eq!(diary.kind(at(1, 20)), Hold);
}

#[test]
fn s4_a_step_goes_on_over_a_revision_that_leaves_it_unchanged() {
    let rule = up(vec![comfort(2)]);
    let mut diary = on_b(&with(rule.clone()));
    diary.sit(at(1, 9), sit(180, Some(1)));
    let mut steps = ladder();
    steps[1]["instruction"] = json!("Said otherwise.");
    steps[2]["position"] = json!("sitting");
    diary.say(at(2, 9), accept(&programme(2, steps.clone(), rule.clone())));
    diary.sit(at(2, 10), sit(180, Some(1)));
    assert_eq!(bars(&diary, 2), [Bar::StepNotConfirmed]);
    diary.say(at(2, 11), confirm("b"));
    assert_eq!(diary.kind(at(2, 20)), StepUp);
    // Changed parts, or another programme of the same steps: anew at its start.
    let mut other = programme(3, steps.clone(), rule.clone());
    other["id"] = json!("another");
    let mut foreign = diary.clone();
    foreign.say(at(3, 9), accept(&other));
    assert_eq!(foreign.fold().step().unwrap().id, token("a"));
    steps[1]["parts"][0]["minutes"]["least"] = json!(6);
    diary.say(at(3, 9), accept(&programme(3, steps, rule)));
    let assessment = diary.assess(at(3, 20));
    let Basis::Step { step, began, confirmed, .. } = assessment.basis else { panic!() };
    assert_eq!((step, began, confirmed), (token("a"), at(3, 9), false));
}

#[test]
fn s4_striking_or_correcting_a_step_or_acceptance_asks_again() {
    let mut diary = on_b(&easy());
    diary.sit(at(1, 9), sit(180, Some(1)));
    let up_to_c = diary.say(at(1, 10), to_step("c"));
    let struck = diary.say(at(1, 11), strike(up_to_c));
    assert_eq!(diary.fold().step().unwrap().id, token("b"), "the naming before counts again");
    assert_eq!(bars(&diary, 1), [Bar::StepNotConfirmed]);
    diary.say(at(1, 12), confirm("b"));
    assert_eq!(diary.kind(at(1, 20)), StepUp);
    diary.say(at(1, 13), strike(struck));
    assert_eq!(diary.fold().step().unwrap().id, token("c"));
    assert!(bars(&diary, 1).contains(&Bar::StepNotConfirmed));
    diary.say(at(1, 14), correction(up_to_c, to_step("a")));
    assert_eq!(diary.fold().step().unwrap().id, token("a"));
    assert!(bars(&diary, 1).contains(&Bar::StepNotConfirmed));
}

#[test]
fn d1_going_smaller_and_staying_are_the_persons_own() {
    let mut diary = on_b(&easy());
    diary.say(at(1, 9), to_step("a"));
    assert_eq!(diary.fold().step().unwrap().id, token("a"));
    diary.say(at(1, 10), to_step("c"));
    assert_eq!(diary.fold().step().unwrap().id, token("c"), "a larger one can be recorded");
    assert!(diary.fold().step_confirmed());
}

#[test]
fn d2_an_assessment_says_whose_rule_and_which_sessions() {
    let mut diary = on_b(&easy());
    let session = diary.sit(at(1, 9), sit(180, Some(1)));
    let assessment = diary.assess(at(1, 20));
    let Basis::Step { rule_of, .. } = &assessment.basis else { panic!() };
    assert_eq!(rule_of.clinician, "Invented Clinician");
    assert_eq!(assessment.findings[0].entries, [session]);
    assert_eq!(assessment.findings[0].looked_at, 1);
}

#[test]
fn a_trimmed_fold_asks_for_history_and_stays_as_it_was() {
    let mut diary = on_b(&easy());
    let mut first = EntryId([0; 16]);
    for day in 1..200 {
        first = diary.sit(at(day, 9), sit(180, Some(1)));
    }
    let mut fold = diary.fold();
    fold.trim();
    let before = fold.assess(&at(200, 9));
    let mut write = |written, happened, what| {
        let entry =
            frond_core::diary::entry::Entry { id: id(5000), written, happened, uptime: None, what };
        fold.write(&entry)
    };
    let now = at(200, 8);
    assert_eq!(write(now, now, strike(first)), Err(FoldError::NeedsHistory));
    assert_eq!(write(now, now, accept(&easy())), Err(FoldError::NeedsHistory));
    assert_eq!(write(now, at(3, 9), sit(180, Some(9)).what()), Err(FoldError::NeedsHistory));
    assert_eq!(write(now, at(3, 9), to_step("c")), Err(FoldError::NeedsHistory));
    assert_eq!(fold.assess(&at(200, 9)), before);
    let mut text = accept(&easy());
    if let Content::ProgrammeAccepted { carried, .. } = &mut text {
        *carried = "not a programme".into();
    }
    let entry = frond_core::diary::entry::Entry {
        id: id(1),
        written: now,
        happened: now,
        uptime: None,
        what: text,
    };
    assert_eq!(Fold::new(None).write(&entry), Err(FoldError::UnreadableProgramme { place: 1 }));
}
