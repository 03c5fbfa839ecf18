//! What starts afresh for going up (F5), and what counts no more after a clearing (F6), where times and places part.

use super::*;

#[test]
fn f5_the_session_that_ends_a_gap_counts_itself() {
    let sessions = json!({"criterion": "sessions", "practised_days": 1, "within_days": 30});
    let mut rule = up(vec![sessions, comfort(1)]);
    rule["after_gap_days"] = json!(5);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(6, 9), sit(180, Some(1)));
    assert_eq!(diary.kind(at(6, 20)), StepUp);
}

#[test]
fn f5_an_answer_given_before_facts_start_afresh_does_not_count() {
    let mut rule = up(vec![json!({"criterion": "feels_ready"})]);
    rule["after_gap_days"] = json!(5);
    let mut diary = on_b(&with(rule));
    let slip = diary.sit(at(1, 8), sit(180, Some(1)));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.say(at(1, 10), ready(true));
    assert_eq!(verdict(&diary, 5, Part::StepUp), Met);
    assert_eq!(verdict(&diary, 6, Part::StepUp), Unmet, "a gap still runs");
    diary.say(at(1, 11), strike(slip));
    assert_eq!(verdict(&diary, 1, Part::StepUp), Unmet, "a session was struck after it");
    diary.say(at(1, 12), ready(true));
    assert_eq!(verdict(&diary, 1, Part::StepUp), Met);
    // Given before the session that ended a gap, and corrected to after it.
    let answer = diary.say(at(1, 13), ready(true));
    diary.sit(at(9, 9), sit(180, Some(1)));
    diary.write(at(9, 11), at(9, 10), correction(answer, ready(true)));
    assert_eq!(verdict(&diary, 9, Part::StepUp), Unmet);
    diary.say(at(9, 12), ready(true));
    assert_eq!(verdict(&diary, 9, Part::StepUp), Met);
}

#[test]
fn f6_an_earlier_clearing_closes_what_the_last_one_does_not() {
    let rule = json!({
        "step_back": [{"when": hurt(6, 1, 3), "target": "previous"}],
        "pause": [{"criterion": "steps_back", "times": 1, "within_days": 90}],
    });
    let mut diary = on_b(&with(rule));
    let change = diary.say(at(0, 10), to_step("c"));
    diary.say(at(0, 11), to_step("b"));
    let sore = diary.sit(at(3, 9), sit(180, Some(7)));
    diary.say(at(4, 9), clearing(&[], true));
    // Told of later, but it happened before that session and that change back.
    diary.write(at(5, 9), at(0, 10), clearing(&[], true));
    let both = |diary: &Diary| [Part::StepBack, Part::Pause].map(|part| verdict(diary, 6, part));
    assert_eq!(both(&diary), [Unmet, Unmet]);
    // The facts worked out again: one session by its correction, all by that of a naming.
    diary.write(at(5, 10), at(3, 9), correction(sore, sit(180, Some(8)).what()));
    assert_eq!(both(&diary), [Unmet, Unmet]);
    diary.write(at(5, 11), at(0, 10), correction(change, to_step("c")));
    assert_eq!(both(&diary), [Unmet, Unmet]);
    // A clearing of signs alone, written last of all, takes nothing away and gives nothing back.
    diary.say(at(5, 12), clearing(&[], false));
    diary.write(at(5, 13), at(3, 9), correction(sore, sit(180, Some(9)).what()));
    assert_eq!(both(&diary), [Unmet, Unmet]);
    diary.write(at(5, 14), at(3, 9), sit(180, Some(7)).what());
    assert_eq!(both(&diary), [Met, Unmet], "written after them all");
}

#[test]
fn f6_at_the_same_time_what_was_written_before_the_clearing_is_before_it() {
    let rule = json!({"step_back": [{"when": hurt(6, 1, 3), "target": "previous"}]});
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(7)));
    diary.say(at(1, 9), clearing(&[], true));
    assert_eq!(verdict(&diary, 1, Part::StepBack), Unmet);
    diary.sit(at(1, 9), sit(180, Some(7)));
    assert_eq!(verdict(&diary, 1, Part::StepBack), Met);
}
