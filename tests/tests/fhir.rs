//! The FHIR bundle: every reference leads somewhere, the same diary has the same ids, what was narrowed away
//! stays away. That it is FHIR R4 at all is checked by an independent validator, in `tests/fhir`. All invented.

#[path = "fhir/clock.rs"]
mod clock;
#[path = "fhir/made.rs"]
mod made;
mod rule_diary;

use std::collections::{BTreeMap, BTreeSet};

use frond_core::sealing::{Identity, OpenWith, SealTo};
use frond_core::summary::fhir::{Texts, bundle, code};
use frond_core::summary::{Summary, TimeAlone, open_summary};
use serde_json::Value;

fn json(summary: &Summary, texts: Texts) -> Value {
    serde_json::to_value(bundle(summary, texts).unwrap()).unwrap()
}

fn every() -> Vec<(String, Summary)> {
    let named = [
        ("empty", made::empty()),
        ("breathing", made::breathing()),
        ("years", made::ten_years(200)),
        ("hostile", made::hostile()),
        ("plain", made::plain()),
        ("narrowed", made::narrowed()),
    ];
    let lives = made::lives(0..200);
    let lives = lives.into_iter().enumerate().map(|(at, life)| (format!("life {at}"), life));
    named.into_iter().map(|(name, one)| (name.to_owned(), one)).chain(lives).collect()
}

/// Every value under a key, anywhere.
fn under<'a>(value: &'a Value, key: &str, found: &mut Vec<&'a Value>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                if name == key {
                    found.push(value);
                }
                under(value, key, found);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| under(item, key, found)),
        _ => {}
    }
}

fn all<'a>(value: &'a Value, key: &str) -> Vec<&'a Value> {
    let mut found = Vec::new();
    under(value, key, &mut found);
    found
}

fn addresses(bundle: &Value) -> Vec<String> {
    let entries = bundle["entry"].as_array().unwrap();
    entries.iter().map(|entry| entry["fullUrl"].as_str().unwrap().to_owned()).collect()
}

#[test]
fn every_reference_leads_to_a_resource_of_the_same_bundle_and_no_address_is_there_twice() {
    let mut seen = 0;
    for (name, summary) in every() {
        let bundle = json(&summary, Texts::Carried);
        let addresses = addresses(&bundle);
        let unique: BTreeSet<&String> = addresses.iter().collect();
        assert_eq!(unique.len(), addresses.len(), "{name}: an address is there twice");
        for reference in all(&bundle, "reference") {
            let reference = reference.as_str().unwrap().to_owned();
            assert!(unique.contains(&reference), "{name}: {reference} leads nowhere");
            seen += 1;
        }
        for entry in bundle["entry"].as_array().unwrap() {
            let id = entry["resource"]["id"].as_str().unwrap();
            assert_eq!(entry["fullUrl"], format!("urn:uuid:{id}"));
        }
    }
    assert!(seen > 1_000, "only {seen} references were looked at");
}

#[test]
fn the_same_entry_has_the_same_id_in_a_later_bundle_and_in_a_narrowed_one() {
    let diary = made::told(
        &rule_diary::programme(1, rule_diary::ladder(), serde_json::json!({})),
        &["One", "Two"],
    );
    let whole = made::summary(&diary, 40, &Default::default());
    assert_eq!(json(&whole, Texts::Carried), json(&whole, Texts::Carried));
    let later = made::summary(&diary, 50, &Default::default());
    let ids = |summary: &Summary| -> BTreeSet<String> {
        addresses(&json(summary, Texts::Carried)).into_iter().collect()
    };
    assert_eq!(ids(&whole), ids(&later));
    let bundles = [json(&whole, Texts::Carried), json(&later, Texts::Carried)];
    assert_ne!(bundles[0]["id"], bundles[1]["id"], "each bundle is its own");
    let narrowed = made::summary(
        &diary,
        40,
        &frond_core::summary::Selection {
            from: Some(rule_diary::at(12, 0).day()),
            ..Default::default()
        },
    );
    let sessions = |summary: &Summary| -> BTreeSet<String> {
        let bundle = json(summary, Texts::Carried);
        let entries = bundle["entry"].as_array().unwrap().iter();
        entries
            .filter(|entry| entry["resource"]["code"]["coding"][0]["code"] == "trainer")
            .map(|entry| entry["fullUrl"].as_str().unwrap().to_owned())
            .collect()
    };
    assert!(!sessions(&narrowed).is_empty());
    assert!(sessions(&narrowed).is_subset(&sessions(&whole)));
}

#[test]
fn what_was_narrowed_away_and_what_nobody_may_know_is_not_in_it() {
    let text = json(&made::narrowed(), Texts::Carried).to_string();
    for word in ["A note that stays at home", "QUESTION", "Wren", "2026-01-05", "2026-01-25"] {
        assert!(!text.contains(word), "{word}");
    }
    assert!(text.contains("shown-from"));
    // The nickname, contacts and recipients of the plan are nobody's business here.
    let whole = json(&made::plain(), Texts::Carried).to_string();
    for word in ["Wren", "Invented Desk", "Nowhere", "Leave a message", "out-of-hours"] {
        assert!(!whole.contains(word), "{word}");
    }
    assert!(whole.contains("An invented note") && whole.contains("QUESTION"));
}

#[test]
fn the_wish_for_time_alone_has_no_place_in_it() {
    let key = "AGE-SECRET-KEY-1V9HZQ6TWWEJKUAR9VSSXKETE9SSXJAPQDACX2MNNYPKXJAR5D3JSRUDF5S";
    let key = Identity::parse(key).unwrap();
    let to = SealTo::Recipients(vec![key.recipient()]);
    let summary = made::plain();
    let sealed = summary.sealed_form(&made::identity(), &to, TimeAlone::Please).unwrap();
    let received = open_summary(&sealed, Some(&OpenWith::Identities(vec![key]))).unwrap();
    assert!(received.summary.asks_time_alone());
    assert_eq!(json(&received.summary, Texts::Carried), json(&summary, Texts::Carried));
}

#[test]
fn without_texts_no_word_that_a_person_wrote_is_left() {
    for (name, summary) in [("hostile", made::hostile()), ("plain", made::plain())] {
        let text = json(&summary, Texts::LeftOut).to_string();
        let parts = made::HOSTILE.iter().flat_map(|hostile| hostile.split(' '));
        for word in
            parts.chain(["An invented", "A second", "Sitting through", "QUESTION", "As shown"])
        {
            let quoted = serde_json::to_string(word).unwrap();
            let word = quoted.trim_matches('"');
            assert!(word.len() < 4 || !text.contains(word), "{name}: {word}");
        }
    }
}

#[test]
fn hostile_words_come_back_exactly_as_they_were_written() {
    let summary = made::hostile();
    let text = serde_json::to_string(&bundle(&summary, Texts::Carried).unwrap()).unwrap();
    let back: Value = serde_json::from_str(&text).unwrap();
    let notes: Vec<&str> =
        all(&back, "note").into_iter().filter_map(|note| note[0]["text"].as_str()).collect();
    for word in made::HOSTILE {
        assert!(notes.contains(&word), "a note was changed");
    }
    assert!(notes.iter().any(|note| note.chars().count() == 2_000));
}

#[test]
fn every_code_is_in_the_published_code_system_and_the_published_one_is_the_one_of_the_program() {
    let published: Value =
        serde_json::from_str(include_str!("../../fixtures/schema/fhir-code-system.json")).unwrap();
    assert_eq!(published, code::system(), "run the example write_schemas");
    let concepts = published["concept"].as_array().unwrap();
    let known: BTreeMap<&str, &str> = concepts
        .iter()
        .map(|one| (one["code"].as_str().unwrap(), one["display"].as_str().unwrap()))
        .collect();
    assert_eq!(known.len(), concepts.len(), "a code is there twice");
    for (name, summary) in every() {
        let bundle = json(&summary, Texts::Carried);
        for coding in all(&bundle, "coding").into_iter().flat_map(|list| list.as_array().unwrap()) {
            if coding["system"] == code::SYSTEM {
                let code = coding["code"].as_str().unwrap();
                assert_eq!(known.get(code).copied(), coding["display"].as_str(), "{name}: {code}");
            }
        }
    }
}

#[test]
fn numbers_carry_their_units_and_an_answer_that_was_not_given_says_so() {
    let bundle = json(&made::plain(), Texts::Carried);
    let units: BTreeSet<&str> = all(&bundle, "valueQuantity")
        .into_iter()
        .map(|one| one["code"].as_str().unwrap())
        .collect();
    assert_eq!(units, BTreeSet::from(["min", "mm", "{score}"]));
    let declined = all(&bundle, "dataAbsentReason");
    assert_eq!(declined.len(), 1, "one rating was rather not said");
    assert_eq!(declined[0]["coding"][0]["code"], "asked-declined");
}

#[test]
fn its_form_is_held_still() {
    let mut bundle = json(&made::plain(), Texts::Carried);
    // One of each sort says how it looks; the counts say the rest.
    let entries = bundle["entry"].as_array().unwrap().clone();
    let kind = |entry: &Value| {
        let resource = &entry["resource"];
        let code = if resource["code"].is_null() { &resource["topic"] } else { &resource["code"] };
        let own = code["coding"].as_array().and_then(|list| list.last());
        format!(
            "{} {}",
            resource["resourceType"].as_str().unwrap(),
            own.map_or("", |own| own["code"].as_str().unwrap())
        )
    };
    let mut firsts: BTreeMap<String, (usize, Value)> = BTreeMap::new();
    for entry in &entries {
        firsts.entry(kind(entry)).or_insert_with(|| (0, entry.clone())).0 += 1;
    }
    bundle["entry"] = serde_json::to_value(firsts).unwrap();
    insta::assert_json_snapshot!(bundle);
}
