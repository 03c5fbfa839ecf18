//! D2: what each criterion looked at and what it lacks, by hand, criterion by criterion, as
//! core/src/progression/outcome.rs promises it; and the same from a fold that was trimmed after every entry.
//! All diaries are invented.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

#[path = "rule_reasons/handed_out.rs"]
mod handed_out;
mod rule_diary;
#[path = "rule_reasons/trimmed.rs"]
mod trimmed;

use frond_core::diary::entry::{Content, EntryId, Reason};
use frond_core::progression::{Basis, Fold, FoldError, Missing, Part, Verdict};
use frond_core::safety::{Sign, Tier};
use rule_diary::short::*;
use rule_diary::*;
use serde_json::{Value, json};

use Part::{Pause, StepBack, StepUp};
use Verdict::{Met, Unknown, Unmet};

/// A fold that was trimmed after every entry that lies behind the beginning of the ladder.
fn trimmed(diary: &Diary) -> Fold {
    let mut fold = Fold::new(None);
    for (at, entry) in diary.0.iter().enumerate() {
        match fold.write(entry) {
            Ok(()) => {}
            Err(FoldError::NeedsHistory) => fold = folded(&diary.0[..=at]),
            Err(other) => panic!("{other}"),
        }
        fold.trim();
    }
    fold
}

/// What was found for the first criterion of a part, on the evening of a day.
fn found(diary: &Diary, day: i64, part: Part) -> (Verdict, Vec<EntryId>, usize, Missing) {
    let assessment = diary.assess(at(day, 20));
    assert_eq!(trimmed(diary).assess(&at(day, 20)), assessment, "trimmed");
    let found = assessment.findings.into_iter().find(|finding| finding.part == part).unwrap();
    (found.verdict, found.entries, found.looked_at, found.missing)
}

fn ratings(of: &[EntryId]) -> Missing {
    Missing::Ratings { entries: of.to_vec() }
}

fn back(when: Value) -> Value {
    with(json!({"step_back": [{"when": when, "target": "previous"}]}))
}

#[test]
fn d2_discomfort_at_least_names_its_window_and_the_ratings_it_lacks() {
    let mut diary = on_b(&with(json!({"pause": [hurt(8, 2, 3)]})));
    let first = diary.sit(at(1, 9), sit(180, Some(9)));
    assert_eq!(found(&diary, 1, Pause), (Unmet, vec![first], 1, Missing::Nothing));
    diary.sit(at(2, 9), sit(180, Some(1)));
    let third = diary.sit(at(3, 9), sit(180, Some(9)));
    let smaller = diary.sit(at(3, 12), sit(150, None));
    let fourth = diary.sit(at(4, 9), sit(180, Some(2)));
    let fifth = diary.sit(at(5, 9), sit(180, None));
    // What was below the step stands in no window of ratings.
    assert_eq!(
        found(&diary, 5, Pause),
        (Unknown, vec![third, fourth, fifth], 3, ratings(&[fifth])),
        "not {smaller:?}"
    );
    let sixth = diary.sit(at(6, 9), sit(180, Some(2)));
    let unmet = (Unmet, vec![fourth, fifth, sixth], 3, Missing::Nothing);
    assert_eq!(found(&diary, 6, Pause), unmet, "one more could not make two");
}

#[test]
fn d2_stopped_early_names_its_window_below_the_step_too() {
    let mut diary = on_b(&back(stops(2, 3)));
    let first = diary.sit(at(1, 9), sit(180, Some(1)).stopped(Reason::Discomfort));
    assert_eq!(found(&diary, 1, StepBack), (Unmet, vec![first], 1, Missing::Nothing));
    let second = diary.sit(at(2, 9), sit(180, Some(1)));
    let third = diary.sit(at(3, 9), sit(150, Some(1)));
    let fourth = diary.sit(at(4, 9), sit(150, Some(1)).stopped(Reason::Discomfort));
    let unmet = (Unmet, vec![second, third, fourth], 3, Missing::Nothing);
    assert_eq!(found(&diary, 4, StepBack), unmet);
    let fifth = diary.sit(at(5, 9), sit(180, Some(1)).stopped(Reason::Discomfort));
    let met = (Met, vec![third, fourth, fifth], 3, Missing::Nothing);
    assert_eq!(found(&diary, 5, StepBack), met);
}

#[test]
fn d2_steps_back_names_the_changes_within_its_days() {
    let rule = json!({"pause": [{"criterion": "steps_back", "times": 3, "within_days": 10}]});
    let mut diary = on_b(&with(rule));
    diary.say(at(1, 9), to_step("c"));
    let first = diary.say(at(2, 9), to_step("b"));
    let second = diary.say(at(4, 9), to_step("a"));
    let both = (Unmet, vec![first, second], 2, Missing::Nothing);
    assert_eq!(found(&diary, 5, Pause), both);
    assert_eq!(found(&diary, 11, Pause), both, "nine days ago");
    let one = (Unmet, vec![second], 1, Missing::Nothing);
    assert_eq!(found(&diary, 12, Pause), one, "ten days ago");
    assert_eq!(found(&diary, 14, Pause), (Unmet, vec![], 0, Missing::Nothing));
}

#[test]
fn d2_days_without_practice_names_nothing() {
    let mut diary = on_b(&back(away(5)));
    diary.sit(at(1, 9), sit(180, Some(1)));
    assert_eq!(found(&diary, 5, StepBack), (Unmet, vec![], 0, Missing::Nothing));
    assert_eq!(found(&diary, 6, StepBack), (Met, vec![], 0, Missing::Nothing));
}

#[test]
fn d2_sessions_names_full_ones_within_its_days_and_unrated_ones_that_could_settle_it() {
    let rule = json!({"criterion": "sessions", "practised_days": 3, "within_days": 7});
    let mut diary = on_b(&with(up(vec![rule])));
    let none = (Unmet, vec![], 0, Missing::PractisedDays { more: 3 });
    assert_eq!(found(&diary, 1, StepUp), none);
    let first = diary.sit(at(1, 9), sit(180, Some(1)));
    let second = diary.sit(at(2, 9), sit(180, Some(1)));
    let again = diary.sit(at(2, 18), sit(180, Some(7)));
    diary.sit(at(3, 8), sit(150, Some(1)));
    let three = vec![first, second, again];
    let one_more = (Unmet, three.clone(), 3, Missing::PractisedDays { more: 1 });
    assert_eq!(found(&diary, 3, StepUp), one_more);
    let unrated = diary.sit(at(3, 9), sit(180, None));
    assert_eq!(found(&diary, 5, StepUp), (Unknown, three, 3, ratings(&[unrated])));
    let less = (Unmet, vec![second, again], 2, Missing::PractisedDays { more: 2 });
    assert_eq!(found(&diary, 8, StepUp), less, "the first was seven days ago");
    let late: Vec<EntryId> = (6..=8).map(|day| diary.sit(at(day, 9), sit(180, Some(1)))).collect();
    let met = (Met, [vec![second, again], late].concat(), 5, Missing::Nothing);
    assert_eq!(found(&diary, 8, StepUp), met, "all of them, though three were enough");
}

#[test]
fn d2_discomfort_at_most_names_every_session_since_the_earliest_full_one() {
    let mut diary = on_b(&with(up(vec![comfort(2)])));
    assert_eq!(found(&diary, 0, StepUp), (Unmet, vec![], 0, Missing::FullSessions { more: 2 }));
    let first = diary.sit(at(1, 9), sit(180, Some(1)));
    let smaller = diary.sit(at(1, 18), sit(150, Some(1)));
    let one_more = (Unmet, vec![first, smaller], 2, Missing::FullSessions { more: 1 });
    assert_eq!(found(&diary, 1, StepUp), one_more);
    let second = diary.sit(at(2, 9), sit(180, Some(3)));
    let met = (Met, vec![first, smaller, second], 3, Missing::Nothing);
    assert_eq!(found(&diary, 2, StepUp), met);
    let between = diary.sit(at(3, 9), sit(150, None));
    let third = diary.sit(at(4, 9), sit(180, Some(1)));
    let since = vec![second, between, third];
    assert_eq!(found(&diary, 4, StepUp), (Unknown, since, 3, ratings(&[between])));
    let fourth = diary.sit(at(5, 9), sit(180, Some(4)));
    let above = (Unmet, vec![third, fourth], 2, Missing::Comfort);
    assert_eq!(found(&diary, 5, StepUp), above);
}

#[test]
fn d2_a_rating_that_could_settle_it_may_be_that_of_the_peak() {
    let rule =
        json!({"criterion": "discomfort_at_most", "rating": "after", "at_most": 3, "last": 2});
    let mut diary = on_b(&with(up(vec![rule])));
    let after = |peak, after| Sit { after, ..sit(180, peak) };
    diary.sit(at(1, 9), after(Some(1), None));
    let first = diary.sit(at(2, 9), after(Some(1), Some(1)));
    let unpeaked = diary.sit(at(3, 9), after(None, Some(1)));
    let unrated = diary.sit(at(4, 9), after(Some(1), None));
    let since = vec![first, unpeaked, unrated];
    assert_eq!(found(&diary, 4, StepUp), (Unknown, since, 3, ratings(&[unpeaked, unrated])));
}

#[test]
fn d2_the_earliest_session_itself_may_lack_the_rating() {
    let after = |last| json!({"criterion": "discomfort_at_most", "rating": "after", "at_most": 3, "last": last});
    let mut diary = on_b(&with(up(vec![after(1)])));
    let unpeaked = diary.sit(at(1, 9), Sit { after: Some(1), ..sit(180, None) });
    assert_eq!(found(&diary, 1, StepUp), (Unknown, vec![unpeaked], 1, ratings(&[unpeaked])));
    let lacking = diary.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(found(&diary, 2, StepUp), (Unknown, vec![lacking], 1, ratings(&[lacking])));
    // After a gap the first session is where it begins.
    let mut rule = up(vec![after(1)]);
    rule["after_gap_days"] = json!(5);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), Sit { after: Some(1), ..sit(180, None) });
    let unpeaked = diary.sit(at(6, 9), Sit { after: Some(1), ..sit(180, None) });
    assert_eq!(found(&diary, 6, StepUp), (Unknown, vec![unpeaked], 1, ratings(&[unpeaked])));
}

#[test]
fn d2_after_a_gap_only_what_came_after_it_is_looked_at() {
    let mut rule = up(vec![comfort(2)]);
    rule["after_gap_days"] = json!(5);
    let mut diary = on_b(&with(rule));
    diary.sit(at(1, 9), sit(180, Some(1)));
    diary.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(found(&diary, 6, StepUp).0, Met, "four days are no gap");
    let nothing = found(&diary, 7, StepUp);
    assert_eq!((nothing.0, nothing.3), (Unmet, Missing::FullSessions { more: 2 }), "five are");
    let after = diary.sit(at(7, 9), sit(180, Some(1)));
    let one_more = (Unmet, vec![after], 1, Missing::FullSessions { more: 1 });
    assert_eq!(found(&diary, 7, StepUp), one_more);
}

#[test]
fn d2_at_most_the_latest_fifty_are_named_and_all_are_counted() {
    let mut diary = on_b(&with(up(vec![comfort(1)])));
    let mut all = vec![diary.sit(at(1, 9), sit(180, Some(1)))];
    let short = Sit { seconds: 60, ..sit(180, Some(1)) };
    for hour in 1..=70 {
        all.push(diary.sit(at(2, hour), short.clone()));
    }
    let met = (Met, all[all.len() - 50..].to_vec(), 71, Missing::Nothing);
    assert_eq!(found(&diary, 6, StepUp), met);
    // A full one more, and only that one counts.
    let full = diary.sit(at(6, 9), sit(180, Some(1)));
    assert_eq!(found(&diary, 6, StepUp), (Met, vec![full], 1, Missing::Nothing));
}

#[test]
fn d2_sign_free_days_names_the_entry_of_the_sign_and_the_days_to_go() {
    let rule = json!({"criterion": "sign_free_days", "days": 10});
    let mut diary = on_b(&with(up(vec![rule])));
    let days = |more| Missing::Days { more };
    assert_eq!(found(&diary, 3, StepUp), (Unmet, vec![], 0, days(7)), "since the acceptance");
    let sign = diary.say(at(3, 9), report(Sign::Fever, Tier::Stop));
    diary.say(at(4, 9), clearing(&[(sign, Sign::Fever)], false));
    assert_eq!(found(&diary, 4, StepUp), (Unmet, vec![sign], 1, days(10)));
    assert_eq!(found(&diary, 13, StepUp), (Unmet, vec![sign], 1, days(1)));
    assert_eq!(found(&diary, 14, StepUp), (Met, vec![], 0, Missing::Nothing));
}

#[test]
fn d2_feels_ready_names_the_answer() {
    let rule = json!({"criterion": "feels_ready"});
    let mut diary = on_b(&with(up(vec![rule])));
    assert_eq!(found(&diary, 1, StepUp), (Unmet, vec![], 0, Missing::Answer));
    let no = diary.say(at(1, 9), ready(false));
    assert_eq!(found(&diary, 1, StepUp), (Unmet, vec![no], 1, Missing::Answer));
    let yes = diary.say(at(1, 10), ready(true));
    assert_eq!(found(&diary, 1, StepUp), (Met, vec![yes], 1, Missing::Nothing));
    diary.sit(at(2, 9), sit(180, Some(1)));
    assert_eq!(found(&diary, 2, StepUp), (Unmet, vec![], 0, Missing::Answer), "asked again");
}

#[test]
fn d2_days_on_step_says_the_days_to_go() {
    let rule = json!({"criterion": "days_on_step", "days": 7});
    let mut diary = on_b(&with(up(vec![rule])));
    let found = |diary: &Diary, day| found(diary, day, StepUp);
    assert_eq!(found(&diary, 3), (Unmet, vec![], 0, Missing::Days { more: 4 }));
    assert_eq!(found(&diary, 7), (Met, vec![], 0, Missing::Nothing));
    let day = |stamp: frond_core::moment::Stamp| stamp.day();
    diary.say(at(1, 9), Content::TimeOff { from: day(at(2, 0)), to: day(at(3, 0)) });
    assert_eq!(found(&diary, 7), (Unmet, vec![], 0, Missing::Days { more: 2 }));
    assert_eq!(found(&diary, 2), (Unmet, vec![], 0, Missing::Days { more: 6 }), "today is off");
    assert_eq!(found(&diary, 9), (Met, vec![], 0, Missing::Nothing));
}

#[test]
fn d2_the_basis_says_whose_rule_since_when_and_whether_it_was_confirmed() {
    let mut diary = on_b(&easy());
    let basis = |diary: &Diary| {
        let basis = diary.assess(at(3, 20)).basis;
        assert_eq!(trimmed(diary).assess(&at(3, 20)).basis, basis);
        basis
    };
    let Basis::Step { rule_of, step, began, confirmed, has_rule } = basis(&diary) else { panic!() };
    assert_eq!((rule_of.programme, rule_of.revision), (token("invented"), revision(1)));
    assert_eq!((rule_of.issued.to_string().as_str(), step.as_str()), ("2025-12-20", "b"));
    assert_eq!((began, confirmed, has_rule), (at(0, 9), true, true));
    diary.say(at(1, 9), Content::RestoredMark { up_to: 3, replaced: None });
    let Basis::Step { confirmed, .. } = basis(&diary) else { panic!() };
    assert!(!confirmed);
    let mut without = easy();
    without.as_object_mut().unwrap().remove("rule");
    let Basis::Step { has_rule, confirmed, .. } = basis(&Diary::begun(&without)) else { panic!() };
    assert!(!has_rule && confirmed);
    let empty = Diary::begun(&programme(1, json!([]), json!({})));
    let Basis::NoSteps { rule_of } = basis(&empty) else { panic!() };
    assert_eq!(rule_of.clinician, "Invented Clinician");
}
