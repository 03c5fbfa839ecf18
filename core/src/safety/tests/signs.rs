//! Signs, tiers, sources; and that no programme makes a sign milder.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use crate::safety::*;
use crate::words::Words;

/// The table a reviewing clinician reads: every caution with its ground.
#[test]
fn every_caution_with_its_tier_question_source_and_mark() {
    let words = Words::for_language("en");
    let mut table = String::new();
    let mut row = |what: &str, tier: &str, text: &str, source: Source| {
        writeln!(table, "{what} | {tier} | {text} | {} | {}", source.text, source.mark).unwrap();
    };
    for group in SignGroup::ALL {
        for sign in group.signs() {
            let question = words.text(sign.question_id().unwrap(), &[]);
            row(&code(sign), sign.tier().name(), &question, sign.source());
        }
    }
    row("a_caution", Sign::ACaution.tier().name(), "(not asked)", Sign::ACaution.source());
    row("spotting, if the programme says so", "note", "(as above)", spotting_note_source());
    for note in CareNote::ALL {
        row("care", "-", &words.text(note.word_id(), &[]), note.source());
    }
    for caution in BreathCaution::ALL {
        row("breathing", "-", &words.text(caution.word_id(), &[]), caution.source());
    }
    row("grounding", "-", &grounding(&words).join(" "), grounding_source());
    insta::assert_snapshot!(table);
}

#[test]
fn only_what_was_read_needs_no_confirming() {
    let marks = [Mark::Read, Mark::ReadInPart, Mark::Memory, Mark::CommonPractice];
    assert_eq!(marks.map(Mark::needs_confirming), [false, true, true, true]);
}

/// Stored in diaries and programmes: these names never change.
#[test]
fn stored_names_of_signs_and_tiers() {
    let mut names: Vec<String> = Sign::ALL.iter().map(|sign| code(*sign)).collect();
    names.extend(Tier::ALL.map(|tier| {
        let stored = serde_json::to_string(&tier).unwrap().replace('"', "");
        assert_eq!(stored, tier.name());
        stored
    }));
    insta::assert_snapshot!(names.join("\n"));
}

#[test]
fn every_sign_has_a_question_a_name_a_source_and_a_group() {
    let words = Words::for_language("en");
    let mut questions = BTreeSet::new();
    let mut names = BTreeSet::new();
    for sign in Sign::asked() {
        let id = sign.question_id().unwrap();
        assert!(id.ends_with("-ask") && sign.name_id().ends_with("-say"), "{id}");
        let question = words.text(id, &[]);
        let name = words.text(sign.name_id(), &[]);
        assert!(question != id && question.contains('?'), "{sign:?}: {question}");
        assert!(name != sign.name_id() && !name.contains('?'), "{sign:?}: {name}");
        assert!(!sign.source().text.is_empty(), "{sign:?}");
        assert!(questions.insert(question), "{sign:?} asks what another sign asks");
        assert!(names.insert(name), "{sign:?} is named like another sign");
        let group = sign.group().unwrap();
        assert_eq!(group.signs().iter().filter(|one| **one == sign).count(), 1);
    }
    assert_eq!(questions.len(), Sign::ALL.len() - 1);
    assert_eq!(SignGroup::ALL.iter().map(|group| group.signs().len()).sum::<usize>(), 48);
}

#[test]
fn only_the_erase_mark_is_never_asked() {
    let unasked: Vec<Sign> =
        Sign::ALL.iter().copied().filter(|sign| !sign.can_be_asked()).collect();
    assert_eq!(unasked, [Sign::ACaution]);
    assert_eq!(Sign::ACaution.tier(), Tier::Stop);
    assert_eq!((Sign::ACaution.question_id(), Sign::ACaution.group()), (None, None));
}

#[test]
fn tiers_rise_from_note_to_emergency() {
    assert!(Tier::ALL.is_sorted());
    assert_eq!(Tier::ALL.map(Tier::pauses), [false, true, true, true]);
    assert!(Sign::ALL.iter().all(|sign| sign.tier() > Tier::Note), "a note is the plan's choice");
}

#[test]
fn a_programme_never_makes_a_sign_milder() {
    let lines = |sign: Sign| Tier::ALL.map(|tier| StricterSign { sign, tier });
    for &sign in Sign::ALL {
        for first in lines(sign).into_iter().chain(lines(Sign::Fever)) {
            for second in lines(sign).into_iter().chain(lines(Sign::Spotting)) {
                for noted in [false, true] {
                    let with = tier_in_force(sign, &[first, second], noted);
                    let without = tier_in_force(sign, &[], noted);
                    assert!(with >= without, "{sign:?} {first:?} {second:?}");
                    let excepted = sign == Sign::Spotting && noted;
                    assert!(excepted || with >= sign.tier(), "{sign:?} {first:?} {second:?}");
                }
            }
        }
    }
}

#[test]
fn only_spotting_may_be_noted_only_and_only_if_the_programme_says_so() {
    for &sign in Sign::ALL {
        let expected = if sign == Sign::Spotting { Tier::Note } else { sign.tier() };
        assert_eq!(tier_in_force(sign, &[], true), expected, "{sign:?}");
        assert_eq!(tier_in_force(sign, &[], false), sign.tier(), "{sign:?}");
    }
    let stricter = [StricterSign { sign: Sign::Spotting, tier: Tier::Stop }];
    assert_eq!(tier_in_force(Sign::Spotting, &stricter, true), Tier::Stop);
}

#[test]
fn a_stricter_line_takes_effect_and_the_gravest_counts() {
    let line = |tier| StricterSign { sign: Sign::Fever, tier };
    let lines = [line(Tier::Emergency), line(Tier::Stop)];
    assert_eq!(tier_in_force(Sign::Fever, &lines, false), Tier::Emergency);
    assert_eq!(tier_in_force(Sign::Pessary, &lines, false), Tier::AskFirst);
}

#[test]
fn a_milder_line_is_refused_with_the_way_out() {
    let milder = StricterSign { sign: Sign::HeavyBleeding, tier: Tier::AskFirst };
    let error = check_stricter(milder).unwrap_err();
    insta::assert_snapshot!(error, @r#""ask_first" would be milder than this sign is: it is "emergency", and a programme can only make a sign stricter. Give a graver tier or leave the line out."#);
    let mark = StricterSign { sign: Sign::ACaution, tier: Tier::Emergency };
    assert_eq!(check_stricter(mark), Err(StricterError::NotASign));
    for sign in Sign::asked() {
        for tier in Tier::ALL {
            let accepted = check_stricter(StricterSign { sign, tier }).is_ok();
            assert_eq!(accepted, tier >= sign.tier(), "{sign:?} {tier:?}");
        }
    }
}

#[test]
fn a_stricter_line_reads_strictly() {
    let line = r#"{"sign":"fever","tier":"emergency"}"#;
    let read: StricterSign = serde_json::from_str(line).unwrap();
    assert_eq!(read, StricterSign { sign: Sign::Fever, tier: Tier::Emergency });
    assert_eq!(serde_json::to_string(&read).unwrap(), line);
    for bad in [
        r#"{"sign":"fever","tier":"emergency","why":"x"}"#,
        r#"{"sign":"feverish","tier":"emergency"}"#,
        r#"{"sign":"fever","tier":"Emergency"}"#,
        r#"{"sign":"fever"}"#,
    ] {
        assert!(serde_json::from_str::<StricterSign>(bad).is_err(), "{bad}");
    }
}

fn code(sign: Sign) -> String {
    serde_json::to_string(&sign).unwrap().replace('"', "")
}
