//! General care, breath holds, and grounding.

use crate::safety::*;
use crate::words::Words;

#[test]
fn a_reported_condition_switches_breath_holds_off() {
    for chosen in 0u8..16 {
        let reported: Vec<HoldCondition> = (0..4)
            .filter(|bit| chosen & (1 << bit) != 0)
            .map(|bit| HoldCondition::ALL[bit])
            .collect();
        for set in [false, true] {
            let expected = set && chosen == 0;
            assert_eq!(holds_allowed(set, &reported), expected, "{set} {reported:?}");
        }
    }
}

#[test]
fn a_sign_of_pregnancy_heart_or_lungs_tells_of_a_condition() {
    let told: Vec<(Sign, HoldCondition)> =
        Sign::ALL.iter().filter_map(|sign| Some((*sign, HoldCondition::told_by(*sign)?))).collect();
    assert_eq!(
        told,
        [
            (Sign::PregnancySeverePain, HoldCondition::Pregnancy),
            (Sign::PregnancyBleedingWithPain, HoldCondition::Pregnancy),
            (Sign::ChestPain, HoldCondition::HeartTrouble),
            (Sign::Breathless, HoldCondition::LungTrouble),
            (Sign::BleedingWhenPregnant, HoldCondition::Pregnancy),
            (Sign::Pregnancy, HoldCondition::Pregnancy),
        ]
    );
}

#[test]
fn after_distress_grounding_comes_before_breathing() {
    assert_eq!(AFTER_DISTRESS, [Calming::Grounding, Calming::Breathing]);
    let steps = grounding(&Words::for_language("en"));
    assert_eq!(steps[1], "Keep your eyes open.");
    assert!(steps.iter().all(|step| !step.contains("breath")), "breathing can wait");
}

#[test]
fn words_of_care_breathing_and_grounding() {
    let words = Words::for_language("en");
    let mut said: Vec<String> = Vec::new();
    said.extend(CareNote::ALL.map(|note| words.text(note.word_id(), &[])));
    said.extend(BreathCaution::ALL.map(|caution| words.text(caution.word_id(), &[])));
    said.extend(HoldCondition::ALL.map(|one| words.text(one.question_id(), &[])));
    said.extend(grounding(&words));
    insta::assert_snapshot!(said.join("\n"));
}
