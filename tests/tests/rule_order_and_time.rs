//! The programme (P) and order and time (T): one test for each numbered sentence of the rule
//! (core/src/progression/RULE.md), named after it. All diaries are invented.

mod rule_diary;

use frond_core::diary::entry::Content;
use frond_core::programme::values::RatingKind;
use frond_core::progression::{
    Bar, ClockDoubt, Fold, Missing, Outcome, OutcomeKind, Part, Verdict, replay,
};
use rule_diary::short::*;
use rule_diary::*;
use serde_json::{Value, json};

use OutcomeKind::{Hold, PauseAndCall, ReadyToTalk, StepBack, StepUp};
use Verdict::{Met, Unknown, Unmet};

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
    for (row, (entry, place)) in replay(&diary.0, None).unwrap().iter().zip(diary.0.iter().zip(1..))
    {
        assert_eq!((row.place, row.entry, row.written), (place, entry.id, entry.written));
    }
    let pausing = json!({"pause": [hurt(5, 1, 1)]});
    assert_eq!(kinds(Some(pausing)), [Hold, Hold, Hold, PauseAndCall, PauseAndCall]);
}

#[test]
fn t1_correcting_what_names_no_step_asks_nothing_again() {
    let mut diary = on_b(&with(up(vec![json!({"criterion": "feels_ready"})])));
    diary.sit(at(1, 9), sit(180, Some(1)));
    let answer = diary.say(at(1, 10), ready(false));
    diary.say(at(1, 11), correction(answer, ready(true)));
    assert_eq!(bars(&diary, 1), [], "the step is confirmed still");
    assert_eq!(diary.kind(at(1, 20)), StepUp);
}

#[test]
fn t1_an_entry_struck_twice_counts_again_when_both_strikes_are_struck() {
    let mut diary = on_b(&with(up(vec![json!({"criterion": "feels_ready"})])));
    let answer = diary.say(at(1, 10), ready(true));
    let counts = |diary: &Diary| verdict(diary, 1, Part::StepUp) == Met;
    let first = diary.say(at(1, 11), strike(answer));
    let second = diary.say(at(1, 12), strike(answer));
    assert!(!counts(&diary));
    diary.say(at(1, 13), strike(first));
    assert!(!counts(&diary), "one still lies on it");
    let third = diary.say(at(1, 14), strike(second));
    assert!(counts(&diary));
    diary.say(at(1, 15), strike(third));
    assert!(!counts(&diary));
}

#[test]
fn t1_a_fold_that_was_stored_whole_takes_corrections_and_strikes() {
    let mut diary = on_b(&easy());
    let session = diary.sit(at(1, 9), sit(180, Some(8)));
    let corrected = diary.say(at(1, 10), correction(session, sit(180, Some(9)).what()));
    let struck = diary.say(at(1, 11), strike(corrected));
    let stored = postcard::to_stdvec(&diary.fold()).unwrap();
    for what in [
        strike(session),
        strike(corrected),
        strike(struck),
        correction(session, sit(180, Some(1)).what()),
        correction(corrected, sit(150, Some(1)).what()),
    ] {
        let mut whole = diary.clone();
        whole.say(at(1, 12), what);
        let mut again: Fold = postcard::from_bytes(&stored).unwrap();
        again.write(whole.0.last().unwrap()).unwrap();
        assert_eq!(again.assess(&at(1, 20)), whole.assess(at(1, 20)));
        assert_eq!(again.occasion(session), whole.fold().occasion(session));
    }
}

#[test]
fn t4_a_later_time_today_is_not_a_day_ahead() {
    let mut diary = on_b(&with(json!({"pause": [away(30)]})));
    diary.write(at(1, 9), at(1, 20), sit(180, Some(1)).what());
    let found = diary.assess(at(1, 12));
    assert_eq!(found.clock, Some(ClockDoubt::EntryAhead));
    assert_eq!(found.findings[0].verdict, Unmet, "counted from today");
    // Some minutes ahead are not ahead, though they lie on tomorrow's side of midnight.
    let mut diary = on_b(&with(json!({"pause": [away(30)]})));
    diary.write(at(1, 8), at(90, 8), to_step("c"));
    diary.sit(ms(2 * DAY + 5 * MINUTE), sit(220, Some(1)));
    let found = diary.assess(ms(2 * DAY - MINUTE));
    assert_eq!(found.findings[0].verdict, Unmet);
}

#[test]
fn t5_ten_minutes_from_now_do_not_lie_ahead_and_a_moment_more_does() {
    let rule = json!({"step_back": [{"when": hurt(6, 1, 1), "target": "previous"}]});
    let mut diary = on_b(&with(rule));
    diary.write(at(1, 8), ms(DAY + 12 * HOUR), sit(180, Some(0)).what());
    diary.sit(at(1, 9), sit(180, Some(7)));
    let kind = |now: i64| diary.kind(ms(DAY + 12 * HOUR - 10 * MINUTE + now));
    assert_eq!(kind(0), Hold, "the comfortable one is the latest");
    assert_eq!(kind(-1), StepBack, "it goes by its place, before the other");
}

#[test]
fn t5_a_clearing_dated_ahead_clears_away_what_was_written_before_it() {
    let rule = json!({"step_back": [{"when": hurt(6, 1, 1), "target": "previous"}]});
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(7)));
    assert_eq!(diary.kind(at(1, 20)), StepBack);
    diary.write(at(1, 10), at(50, 9), clearing(&[], true));
    assert_eq!(diary.kind(at(1, 20)), Hold);
    diary.sit(at(1, 11), sit(180, Some(7)));
    assert_eq!(diary.kind(at(1, 20)), StepBack);
}

#[test]
fn t5_whether_a_step_was_practised_since_going_back_is_known_while_something_lies_ahead() {
    let rule = json!({"step_back": [{"when": away(5), "target": "first"}]});
    let mut diary = Diary::begun(&with(rule));
    diary.say(at(0, 9), to_step("c"));
    diary.say(at(0, 10), to_step("b"));
    diary.write(at(0, 11), at(90, 9), clearing(&[], false));
    assert_eq!(verdict(&diary, 50, Part::StepBack), Unmet);
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(verdict(&diary, 6, Part::StepBack), Met);
}

#[test]
fn t5_f6_beside_something_ahead_a_clearing_clears_only_what_happened_and_was_written_before_it() {
    let rule = json!({"step_back": [{"when": hurt(6, 1, 3), "target": "previous"}]});
    // Written before the clearing and happened after it, or the other way; and both.
    for (session, clears, expected) in
        [((8, 9), (9, 8), Met), ((9, 7), (8, 8), Met), ((8, 8), (9, 9), Unmet)]
    {
        let mut diary = on_b(&with(rule.clone()));
        let mut two = [(session, sit(180, Some(7)).what()), (clears, clearing(&[], true))];
        two.sort_by_key(|((written, _), _)| *written);
        for ((written, happened), what) in two {
            diary.write(at(1, written), at(1, happened), what);
        }
        diary.write(at(1, 10), at(50, 9), clearing(&[], false));
        assert_eq!(verdict(&diary, 1, Part::StepBack), expected, "{session:?} {clears:?}");
    }
}
