//! "Stop and call": the order of its lines, its words, its numbers.

use std::fmt::Write as _;

use crate::safety::*;
use crate::words::Words;

/// Invented.
fn contacts() -> Contacts {
    Contacts {
        clinician: "Invented Clinician".into(),
        contact: "the practice, 01 555 0100".into(),
        contact_phone: Some("01 555 0100".into()),
        hours: "Monday to Friday, 9 to 16".into(),
        out_of_hours: "the doctor on call, 01 555 0199".into(),
        out_of_hours_phone: Some("(01) 555-0199".into()),
        if_nobody_answers: Some("leave your name and go to the walk-in clinic.".into()),
        emergency_number: "+00 555".into(),
        emergency_country: "Inventia".into(),
    }
}

fn screen(tier: Tier, signs: &[Sign], contacts: Option<&Contacts>) -> StopAndCall {
    let call = Call { tier, signs, contacts, when: "today at 14:05" };
    StopAndCall::new(&Words::for_language("en"), &call)
}

fn shown(screen: &StopAndCall) -> String {
    let mut out = String::new();
    for line in &screen.lines {
        writeln!(out, "{:?}", line.kind).unwrap();
        for paragraph in &line.text {
            writeln!(out, "    {paragraph}").unwrap();
        }
        for dial in &line.dial {
            writeln!(out, "    [{}] -> {}", dial.label, dial.number).unwrap();
        }
    }
    out
}

#[test]
fn stop_and_call_lines_come_in_the_stated_order() {
    use LineKind::*;
    let orders: [(Tier, &[LineKind]); 4] = [
        (
            Tier::Emergency,
            &[
                EmergencyNumberFirst,
                StopNow,
                WhoToCall,
                ReadAloud,
                NobodyTold,
                MayContinue,
                DidRight,
                Later,
            ],
        ),
        (Tier::Stop, &[StopNow, WhoToCall, ReadAloud, NobodyTold, MayContinue, DidRight, Later]),
        (
            Tier::AskFirst,
            &[StopNow, WhoToCall, ReadAloud, NobodyTold, MayContinue, DidRight, Later],
        ),
        (Tier::Note, &[NobodyTold, MayContinue, DidRight]),
    ];
    let contacts = contacts();
    for (tier, order) in orders {
        for with in [Some(&contacts), None] {
            for &sign in Sign::ALL {
                let lines = screen(tier, &[sign], with).lines;
                let kinds: Vec<LineKind> = lines.iter().map(|line| line.kind).collect();
                assert_eq!(kinds, order, "{tier:?} {sign:?}");
            }
        }
    }
}

#[test]
fn words_of_each_tier_with_a_programme() {
    let contacts = contacts();
    let examples: [(Tier, &[Sign]); 4] = [
        (Tier::Emergency, &[Sign::Fainting, Sign::HeavyBleeding]),
        (Tier::Stop, &[Sign::PainThatStays]),
        (Tier::AskFirst, &[Sign::Pregnancy]),
        (Tier::Note, &[Sign::Spotting]),
    ];
    let all = examples.map(|(tier, signs)| {
        format!("== {}\n{}", tier.name(), shown(&screen(tier, signs, Some(&contacts))))
    });
    insta::assert_snapshot!(all.join("\n"));
}

#[test]
fn words_of_each_tier_without_a_programme() {
    let examples: [(Tier, &[Sign]); 3] = [
        (Tier::Emergency, &[Sign::BothLegsWeak]),
        (Tier::Stop, &[Sign::UnusualDischarge]),
        (Tier::AskFirst, &[Sign::Pessary]),
    ];
    let all = examples
        .map(|(tier, signs)| format!("== {}\n{}", tier.name(), shown(&screen(tier, signs, None))));
    insta::assert_snapshot!(all.join("\n"));
}

#[test]
fn words_of_the_particular_screens() {
    let contacts = contacts();
    let mut plain = contacts.clone();
    plain.if_nobody_answers = None;
    plain.contact_phone = None;
    plain.out_of_hours_phone = Some("call the ward".into());
    let undated = Call { tier: Tier::Stop, signs: &[Sign::Fever], contacts: None, when: "" };
    let undated = StopAndCall::new(&Words::for_language("en"), &undated);
    let stuck = Sign::TrainerStuckWithPainOrBleeding;
    let all = [
        ("distress", screen(Tier::Stop, &[Sign::Distress], Some(&contacts))),
        ("self-harm", screen(Tier::Emergency, &[Sign::ThoughtsOfSelfHarm], Some(&contacts))),
        ("danger", screen(Tier::Emergency, &[Sign::DangerAtHome], None)),
        ("stuck", screen(Tier::Emergency, &[stuck], Some(&contacts))),
        ("same day", screen(Tier::Stop, &[Sign::PainfulSwollenCalf], None)),
        ("the rule's pause, no number to dial", screen(Tier::AskFirst, &[], Some(&plain))),
        ("what was erased", screen(Tier::Stop, &[Sign::ACaution], Some(&contacts))),
        ("not known when", undated),
    ];
    let all = all.map(|(name, screen)| format!("== {name}\n{}", shown(&screen)));
    insta::assert_snapshot!(all.join("\n"));
}

#[test]
fn every_sign_screen_says_that_nobody_has_been_told() {
    let contacts = contacts();
    for tier in Tier::ALL {
        for with in [Some(&contacts), None] {
            for &sign in Sign::ALL {
                let lines = screen(tier, &[sign], with).lines;
                let said = lines.iter().find(|line| line.kind == LineKind::NobodyTold).unwrap();
                assert_eq!(said.text, ["Nobody has been told. Frond sends nothing."]);
            }
        }
    }
}

#[test]
fn no_number_is_guessed_without_a_programme() {
    for tier in Tier::ALL {
        for &sign in Sign::ALL {
            let screen = screen(tier, &[sign], None);
            assert_eq!(screen.dials().count(), 0);
            let about_numbers = screen.lines.iter().filter(|line| {
                matches!(line.kind, LineKind::EmergencyNumberFirst | LineKind::WhoToCall)
            });
            for text in about_numbers.flat_map(|line| &line.text) {
                assert!(!text.contains(|one: char| one.is_ascii_digit()), "{text}");
            }
        }
    }
}

#[test]
fn the_emergency_number_always_stands_with_its_country() {
    let contacts = contacts();
    for tier in [Tier::Emergency, Tier::Stop, Tier::AskFirst] {
        let screen = screen(tier, &[Sign::Fever], Some(&contacts));
        let number = |text: &str| text.contains("+00 555");
        let texts = screen.lines.iter().flat_map(|line| &line.text).filter(|text| number(text));
        let labels = screen.dials().map(|dial| &dial.label).filter(|label| number(label));
        let all: Vec<&String> = texts.chain(labels).collect();
        assert!(all.len() >= 2, "{tier:?}");
        assert!(all.iter().all(|text| text.contains("Inventia")), "{tier:?}");
        let elsewhere = |text: &String| text.contains("In another country");
        assert!(screen.lines.iter().flat_map(|line| &line.text).any(elsewhere), "{tier:?}");
    }
}

#[test]
fn an_emergency_offers_its_number_first() {
    let contacts = contacts();
    let screen = screen(Tier::Emergency, &[Sign::ChestPain], Some(&contacts));
    let numbers: Vec<&str> = screen.dials().map(|dial| dial.number.as_str()).collect();
    assert_eq!(numbers, ["+00555", "015550100", "015550199"]);
    assert_eq!(screen.lines[0].dial.len(), 1);
}

#[test]
fn an_emergency_lets_nothing_continue() {
    for &sign in Sign::ALL {
        let lines = screen(Tier::Emergency, &[sign], None).lines;
        let line = lines.iter().find(|line| line.kind == LineKind::MayContinue).unwrap();
        assert!(line.text[0].starts_with("There is nothing to practise now."), "{sign:?}");
    }
}

#[test]
fn every_screen_is_worded_to_the_end() {
    let mut contacts = contacts();
    for missing in [false, true] {
        if missing {
            contacts.if_nobody_answers = None;
        }
        for tier in Tier::ALL {
            for with in [Some(&contacts), None] {
                for &sign in Sign::ALL {
                    for when in ["", "today at 14:05"] {
                        let call = Call { tier, signs: &[sign], contacts: with, when };
                        let screen = StopAndCall::new(&Words::for_language("en"), &call);
                        for text in screen.lines.iter().flat_map(|line| &line.text) {
                            assert!(!text.contains(['{', '}', '$']), "{text}");
                            assert!(!text.starts_with("call-"), "{text}");
                        }
                        assert!(screen.lines.iter().all(|line| !line.text.is_empty()));
                    }
                }
            }
        }
    }
}

#[test]
fn only_a_telephone_number_is_dialled() {
    let good = [("112", "112"), ("+44 (0)20 7946 0018", "+4402079460018"), ("*1#", "*1#")];
    for (text, number) in good {
        assert_eq!(dialable(text).as_deref(), Some(number), "{text}");
    }
    for text in
        ["", "the ward", "01 or 02", "12;ext=3", "tel:112", "1,2", "1+2", "+", "112\u{202e}"]
    {
        assert_eq!(dialable(text), None, "{text}");
    }
}

#[test]
fn debug_text_says_nothing_about_a_person() {
    let contacts = contacts();
    let signs = [Sign::HeavyBleeding];
    let call = Call { tier: Tier::Emergency, signs: &signs, contacts: Some(&contacts), when: "x" };
    let screen = StopAndCall::new(&Words::for_language("en"), &call);
    let dials: Vec<&Dial> = screen.dials().collect();
    let text = format!("{call:?} {screen:?} {:?} {contacts:?} {dials:?}", screen.lines);
    for telling in ["leed", "555", "Invent", "rainer"] {
        assert!(!text.contains(telling), "{text}");
    }
}
