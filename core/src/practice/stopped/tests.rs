//! The words after a stop, and their order.

use super::*;

fn contacts() -> Contacts {
    Contacts {
        clinician: "Ada Invented".into(),
        contact: "Willow Lane clinic, 01632 960123".into(),
        contact_phone: Some("01632 960123".into()),
        hours: "Monday to Friday, 9 to 17".into(),
        out_of_hours: "Ring the out-of-hours line of your practice.".into(),
        out_of_hours_phone: Some("01632 960199".into()),
        if_nobody_answers: None,
        emergency_number: "999".into(),
        emergency_country: "United Kingdom".into(),
    }
}

#[test]
fn w9_words_after_a_stop_in_their_order() {
    let words = Words::for_language("en");
    insta::assert_json_snapshot!([
        Stopped::new(&words, &Practice::Trainer, Some(&contacts())),
        Stopped::new(&words, &Practice::Breathing, None)
    ]);
}

#[test]
fn w9_eyes_open_grounding_comes_before_breathing_and_not_sure_counts() {
    let shown = Stopped::new(&Words::for_language("en"), &Practice::Meditation, None);
    let kinds: Vec<Calming> = shown.calm.iter().map(|calm| calm.kind).collect();
    assert_eq!(kinds, [Calming::Grounding, Calming::Breathing]);
    assert!(shown.calm[0].steps.iter().any(|step| step.contains("eyes open")));
    let signs: Vec<bool> = AfterStop::ALL.iter().map(|answer| answer.shows_signs()).collect();
    assert_eq!(signs, [true, true, false, false]);
    assert_eq!(shown.let_out, None, "only where there can be a trainer inside");
    assert_eq!(shown.answers.len(), AfterStop::ALL.len());
}

#[test]
fn debug_text_of_a_stop_tells_nothing() {
    let shown = format!(
        "{:?}",
        Stopped::new(&Words::for_language("en"), &Practice::Trainer, Some(&contacts()))
    );
    assert_eq!(shown, "Stopped(..)");
}
