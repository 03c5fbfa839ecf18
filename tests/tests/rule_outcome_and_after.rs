//! Outcome (O), signs, clearings, erasing and revisions (S), and what the person decides (D): one test for
//! each numbered sentence of the rule (core/src/progression/RULE.md), named after it. All diaries are
//! invented.

mod rule_diary;

use frond_core::diary::entry::{Content, EntryId};
use frond_core::progression::{Bar, Basis, Fold, FoldError, Missing, Outcome, OutcomeKind, Part};
use frond_core::safety::{Sign, Tier};
use rule_diary::short::*;
use rule_diary::*;
use serde_json::json;

use OutcomeKind::{Hold, PauseAndCall, ReadyToTalk, StepBack, StepUp};

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
    for tier in [Tier::AskFirst, Tier::Stop, Tier::Emergency] {
        let mut diary = on_b(&easy());
        let sign = diary.say(at(1, 9), report(Sign::Fever, tier));
        // Two ways to the same outcome, each on its own: with the reasons and without.
        let kinds = |diary: &Diary| {
            let fold = diary.fold();
            [fold.assess(&at(1, 20)).outcome.kind(), fold.outcome(&at(1, 20)).kind()]
        };
        assert_eq!(kinds(&diary), [PauseAndCall; 2], "{tier:?} with a programme");
        diary.say(at(1, 10), clearing(&[(sign, Sign::Fever)], false));
        assert_eq!(kinds(&diary), [Hold; 2]);
    }
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
fn o1_a_clearing_closes_what_was_met_just_before_it_and_not_what_is_met_just_after() {
    // Nothing was written while the absence lasted but the clearing that ends it.
    let mut diary = on_b(&with(json!({"pause": [away(10)]})));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.say(at(12, 9), clearing(&[], true));
    assert_eq!(diary.kind(at(12, 20)), Hold);
    // It is told of later than a session that happened after it: that session is still met.
    let mut diary = on_b(&with(json!({"pause": [hurt(8, 1, 1)]})));
    diary.sit(at(1, 9), sit(180, Some(9)));
    diary.write(at(1, 10), at(1, 8), clearing(&[], true));
    diary.sit(at(1, 11), sit(180, Some(0)));
    assert_eq!(diary.assess(at(1, 20)).pause.unwrap().latched_at, Some(5), "a new one");
    diary.say(at(1, 12), clearing(&[], true));
    assert_eq!(diary.kind(at(1, 20)), Hold);
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
    diary.say(at(2, 12), Content::RestoredMark { up_to: 3, replaced: None });
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
    let other = diary.say(at(1, 10), report(Sign::BloodInUrine, Tier::Stop));
    let seen = json!([{"entry": sign.to_string(), "sign": "fever"}]);
    let mut same = easy();
    same["signs_seen"] = seen.clone();
    diary.say(at(2, 9), accept(&same));
    assert_eq!(diary.kind(at(2, 20)), PauseAndCall, "not a higher number");
    let mut higher = programme(2, ladder(), json!({}));
    higher["signs_seen"] = seen;
    diary.say(at(3, 9), accept(&higher));
    let open: Vec<EntryId> =
        diary.assess(at(3, 20)).open_signs.iter().map(|one| one.key.entry).collect();
    assert_eq!(open, [other], "the one it does not name stays open");
    diary.say(at(3, 10), clearing(&[(other, Sign::BloodInUrine)], false));
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

#[test]
fn o2_on_the_first_step_there_is_nothing_to_lead_back_to() {
    let rule = json!({"step_back": [{"when": hurt(5, 1, 1), "target": "first"}]});
    let mut diary = Diary::begun(&with(rule));
    diary.sit(at(1, 9), sit(150, Some(9)));
    assert_eq!(finding(&diary, 1, Part::StepBack).target, None);
    diary.say(at(1, 10), to_step("b"));
    assert_eq!(finding(&diary, 1, Part::StepBack).target, Some(token("a")));
}

#[test]
fn o3_only_a_restore_has_to_be_confirmed_as_one() {
    let mut diary = Diary::default();
    diary.say(at(0, 8), accept(&easy()));
    assert_eq!(bars(&diary, 0), [Bar::StepNotConfirmed]);
}

#[test]
fn s1_only_a_clearing_written_after_a_sign_was_raised_closes_it() {
    let mut diary = on_b(&easy());
    let sign = diary.say(at(1, 9), report(Sign::Fever, Tier::AskFirst));
    let note = diary.say(at(1, 10), report(Sign::Spotting, Tier::Note));
    let named = [(sign, Sign::Fever), (note, Sign::Spotting)];
    diary.say(at(1, 11), clearing(&named, false));
    diary.say(at(1, 12), correction(sign, report(Sign::Fever, Tier::Stop)));
    let open = |diary: &Diary| diary.fold().open_signs().len();
    assert_eq!(open(&diary), 1);
    // Everything worked out again: the clearing before it still does not close it, and a note is not open.
    let stay = diary.say(at(1, 13), Content::StayHere { stay: true });
    diary.say(at(1, 14), strike(stay));
    assert_eq!((open(&diary), diary.kind(at(1, 20))), (1, PauseAndCall));
    diary.say(at(1, 15), clearing(&named, false));
    assert_eq!((open(&diary), diary.kind(at(1, 20))), (0, Hold));
}

#[test]
fn s4_a_revision_may_change_the_rule_on_a_step_that_goes_on() {
    let mut diary = on_b(&easy());
    let rated = Sit { after: Some(2), ..sit(180, Some(1)) };
    diary.sit(at(1, 9), rated);
    let after =
        json!({"criterion": "discomfort_at_most", "rating": "after", "at_most": 3, "last": 1});
    diary.say(at(2, 9), accept(&programme(2, ladder(), up(vec![after]))));
    diary.say(at(2, 10), confirm("b"));
    assert_eq!(diary.kind(at(2, 20)), StepUp, "by a rating that was not asked for before");
}
