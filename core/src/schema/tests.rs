//! The published JSON Schemas against the types, read by an independent validator.

use jsonschema::Validator;
use serde_json::json;

use super::*;
use crate::programme::check::check;
use crate::programme::fixtures::{ALL, text as fixture, with};
use crate::programme::read::read;
use crate::programme::strict::from_slice;

const PROGRAMME: &str = include_str!("../../../fixtures/schema/programme.schema.json");
const SIGNED: &str = include_str!("../../../fixtures/schema/signed-programme.schema.json");
const ENTRY: &str = include_str!("../../../fixtures/schema/entry.schema.json");
const HOW: &str = "the types changed: if that is wanted, run `cargo run -p frond-core --example \
                   write_schemas` and look at the difference";

fn validator(schema: &str) -> Validator {
    let schema: Value = serde_json::from_str(schema).unwrap();
    assert_eq!(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
    jsonschema::draft202012::meta::validate(&schema).unwrap();
    jsonschema::draft202012::new(&schema).unwrap()
}

#[test]
fn the_committed_schemas_are_those_of_the_types() {
    // Not `assert_eq`: it would print two whole schemas before it says what to do.
    assert!(text(&programme()) == PROGRAMME, "programme: {HOW}");
    assert!(text(&signed_programme()) == SIGNED, "signed programme: {HOW}");
    assert!(text(&entry()) == ENTRY, "entry: {HOW}");
}

#[test]
fn the_fixtures_fit_the_schema() {
    let schema = validator(PROGRAMME);
    for (name, text) in ALL {
        let value: Value = serde_json::from_str(text).unwrap();
        let said: Vec<String> = schema.iter_errors(&value).map(|e| e.to_string()).collect();
        assert!(said.is_empty(), "{name}: {said:?}");
    }
}

/// Who refuses a text: the schema (through an independent validator), the reader, or the check.
fn refused_by(schema: &Validator, text: &str) -> (bool, bool, bool) {
    // A validator sees the last of two equal lines; texts that are no JSON it does not see at all.
    let schema = serde_json::from_str(text).map_or(true, |value: Value| !schema.is_valid(&value));
    match read(text.as_bytes()) {
        Ok(programme) => (schema, false, !check(&programme).errors.is_empty()),
        Err(_) => (schema, true, false),
    }
}

#[test]
fn where_schema_reader_and_check_agree_and_where_not() {
    let schema = validator(PROGRAMME);
    let cases: Vec<(&str, String)> = vec![
        ("format 2", with("1", "\"frond_programme\": 1", "\"frond_programme\": 2")),
        ("unknown line", with("1", "\"language\"", "\"langauge\"")),
        ("missing line", with("1", "  \"review_by\": \"2026-06-01\",\n", "")),
        ("size below 1 mm", with("1", "_mm\": 100", "_mm\": 9")),
        ("size with a fraction", with("1", "_mm\": 100", "_mm\": 10.5")),
        ("rating 11", with("1", "\"at_most\": 3", "\"at_most\": 11")),
        ("at least 0", with("1", "\"at_least\": 7", "\"at_least\": 0")),
        ("days 0", with("1", "\"days\": 7", "\"days\": 0")),
        ("last 51", with("1", "\"of_last\": 3", "\"of_last\": 51")),
        ("id with a blank", with("1", "\"id\": \"size-10\"", "\"id\": \"size 10\"")),
        ("unknown position", with("1", "\"on_back\"", "\"upside_down\"")),
        ("criterion in the wrong part", with("1", "\"days_on_step\"", "\"stopped_early\"")),
        ("unknown criterion", with("1", "days_on_step", "discomfort_falling")),
        ("surplus line in a criterion", with("1", "\"days\": 7", "\"days\": 7, \"weeks\": 1")),
        ("empty name", with("1", "\"name\": \"Trainer 1\"", "\"name\": \"\"")),
        ("time in words", with("1", "2026-03-02T10:00:00.000+00:00[Europe/London]", "Monday")),
        (
            "struct as a list",
            with("1", "{\n        \"least\": 5,\n        \"most\": 5\n      }", "[5, 5]"),
        ),
        (
            "no parts",
            with(
                "3",
                "\"practices\"",
                "\"steps\": [{\"id\": \"a\", \"name\": \"A\", \"parts\": [], \"position\": \"on_back\", \"schedule\": {\"weekly_least\": 1, \"weekly_most\": 1, \"daily_most\": 1}, \"instruction\": \"x\"}], \"start_at\": \"a\", \"practices\"",
            ),
        ),
        (
            "all of nothing",
            with("3", "\"practices\"", "\"rule\": {\"step_up\": {\"all_of\": []}}, \"practices\""),
        ),
        // From here on the schema cannot see it.
        (
            "a line twice",
            with("1", "\"language\": \"en\",", "\"language\": \"en\", \"language\": \"en\","),
        ),
        ("whole number written 5.0", with("1", "\"least\": 5", "\"least\": 5.0")),
        ("name of blanks", with("1", "\"name\": \"Trainer 1\"", "\"name\": \"  \"")),
        ("tab in a name", with("1", "\"Trainer 1\"", "\"Trainer\\t1\"")),
        ("30 February", with("1", "\"2026-06-01\"", "\"2026-02-30\"")),
        ("month 13 in a time", with("1", "2026-03-02T", "2026-13-02T")),
        ("J above K", with("1", "\"sessions\": 2", "\"sessions\": 4")),
        ("unknown start", with("1", "\"start_at\": \"size-10\"", "\"start_at\": \"size-11\"")),
        (
            "least above most",
            with(
                "1",
                "\"least\": 5,\n            \"most\": 10",
                "\"least\": 11,\n            \"most\": 10",
            ),
        ),
        ("review before issue", with("1", "\"2026-06-01\"", "\"2026-01-01\"")),
        ("rating not asked", with("7", "\"ratings_asked\": [\n    \"worry\"\n  ],", "")),
        ("sign milder", with("5", "\"tier\": \"emergency\"", "\"tier\": \"note\"")),
        (
            "breath of no time",
            with(
                "9",
                "\"in_tenths\": 50,\n        \"hold_in_tenths\": 0,\n        \"out_tenths\": 50",
                "\"in_tenths\": 0,\n        \"hold_in_tenths\": 0,\n        \"out_tenths\": 0",
            ),
        ),
        ("nothing wrong", fixture("1").to_owned()),
    ];
    let table: Vec<String> = cases
        .iter()
        .map(|(case, text)| {
            let (schema, reader, check) = refused_by(&schema, text);
            // Whatever the schema refuses, the reader or the check refuses too: never the other way.
            assert!(!schema || reader || check, "{case}: only the schema refuses it");
            let word = |refused| if refused { "refuses" } else { "-" };
            format!(
                "{case:30} schema {:8} reader {:8} check {}",
                word(schema),
                word(reader),
                word(check)
            )
        })
        .collect();
    insta::assert_snapshot!(table.join("\n"));
}

#[test]
fn signed_files_fit_their_schema_and_spoilt_ones_do_not() {
    let schema = validator(SIGNED);
    let kept = include_str!("../../../fixtures/handover-v1/signed.json");
    let kept: Value = serde_json::from_str(kept).unwrap();
    let fits = |change: fn(&mut Value)| {
        let mut file = kept.clone();
        change(&mut file);
        schema.is_valid(&file)
    };
    assert!(fits(|_| ()) && fits(|file| drop(file.as_object_mut().unwrap().remove("follows"))));
    let spoilt: [fn(&mut Value); 7] = [
        |file| file["signed"] = "frond programme 2".into(),
        |file| file["key"] = "short".into(),
        |file| file["follows"] = Value::Null,
        |file| file["follows"]["more"] = 1.into(),
        |file| drop(file.as_object_mut().unwrap().remove("signature")),
        |file| file["programme"]["frond_programme"] = 2.into(),
        |file| file["more"] = 1.into(),
    ];
    for (which, spoil) in spoilt.into_iter().enumerate() {
        assert!(!fits(spoil), "{which}");
    }
}

#[test]
fn entries_fit_their_schema_and_spoilt_ones_do_not() {
    let schema = validator(ENTRY);
    let entry = |what: Value| {
        json!({"id": "000102030405060708090a0b0c0d0e0f", "written": "2026-03-01T09:00:00+01:00",
               "happened": "2026-03-01T09:00:00+01:00[Europe/Madrid]", "what": what})
    };
    let session = json!({"kind": "session", "practice": "trainer", "position": "on_back",
        "parts": [{"widest_diameter_tenths_mm": 220, "practised_seconds": 300}],
        "ended": {"stopped": "upset"}, "ratings": {"peak": {"rated": 4}, "worry": "rather_not_say"},
        "signs": [{"sign": "spotting", "tier": "ask_first"}]});
    let good = [
        session.clone(),
        json!({"kind": "correction", "of": "000102030405060708090a0b0c0d0e0f", "content": session}),
        json!({"kind": "stay_here", "stay": true}),
        json!({"kind": "time_confirmed"}),
        json!({"kind": "time_off", "from": "2026-03-01", "to": "2026-03-08"}),
        json!({"kind": "settings", "numbers_open": true}),
        json!({"kind": "goal_rated", "goal": "A walk", "reached": -2}),
        json!({"kind": "clearing", "with": "the clinic", "closes_pause": true}),
        json!({"kind": "step_change", "to": "size-14", "why": "suggested"}),
    ];
    let bad = [
        json!({"kind": "sesion"}),
        json!({"kind": "stay_here"}),
        json!({"kind": "stay_here", "stay": "yes"}),
        json!({"kind": "stay_here", "stay": true, "more": 1}),
        json!({"kind": "time_confirmed", "more": 1}),
        json!({"kind": "goal_rated", "goal": "A walk", "reached": 3}),
        json!({"kind": "step_change", "to": "size 14", "why": "suggested"}),
        json!({"stay": true}),
        json!([]),
    ];
    let reads = |value: &Value| from_slice::<Entry>(value.to_string().as_bytes(), 10_000).is_ok();
    for what in good {
        let value = entry(what);
        assert!(schema.is_valid(&value) && reads(&value), "{value}");
    }
    for what in bad {
        let value = entry(what);
        assert!(!schema.is_valid(&value) && !reads(&value), "{value}");
    }
}

proptest::proptest! {
    /// Two independent judges of the same types: whatever the reader takes, the schema takes too, except
    /// where lists are longer or shorter than allowed, which is the check's to say.
    #[test]
    fn what_is_read_and_correct_fits_the_schema(
        which in 0..ALL.len(),
        line in proptest::prelude::any::<proptest::sample::Index>(),
        value in proptest::sample::select(vec![
            "0", "-1", "2.5", "1", "11", "51", "3661", "1001", "null", "true", "\"\"", "\" \"", "\"x\"",
            "\"X\"", "[]", "{}", "\"first\"", "\"other:x\"", "\"peak\"", "\"2026-01-01\"",
            "{\"step\":\"x\"}", "{\"criterion\":\"feels_ready\"}", "\"feels_ready\"",
        ]),
    ) {
        use std::sync::LazyLock;
        static SCHEMA: LazyLock<Validator> = LazyLock::new(|| validator(PROGRAMME));
        let text = ALL[which].1;
        let places: Vec<usize> = text.match_indices("\": ").map(|(at, _)| at + 3).collect();
        let at = places[line.index(places.len())];
        let rest = &text[at..];
        // A whole value: up to the line's end, or over its whole list or object.
        let end = match rest.as_bytes()[0] {
            b'{' | b'[' => {
                let indent = text[..at].rsplit('\n').next().unwrap();
                let indent = &indent[..indent.len() - indent.trim_start().len()];
                let close = format!("\n{indent}{}", if rest.starts_with('{') { "}" } else { "]" });
                rest.find(&close).unwrap() + close.len()
            }
            _ => rest.find('\n').unwrap() - usize::from(rest[..rest.find('\n').unwrap()].ends_with(',')),
        };
        let spoilt = format!("{}{value}{}", &text[..at], &rest[end..]);
        let json: Value = serde_json::from_str(&spoilt).unwrap();
        if let Ok(programme) = read(spoilt.as_bytes()) {
            let correct = check(&programme).errors.is_empty();
            proptest::prop_assert!(!correct || SCHEMA.is_valid(&json), "only the schema refuses: {}", spoilt);
        }
    }

    #[test]
    fn any_programme_fits_the_schema(programme in crate::programme::arbitrary::programme()) {
        use std::sync::LazyLock;
        static SCHEMA: LazyLock<Validator> = LazyLock::new(|| validator(PROGRAMME));
        let mut programme = programme;
        // Lists that must hold something are the check's to say.
        programme.steps.retain(|step| !step.parts.is_empty());
        let full = |rule: &crate::programme::rule::Rule| {
            rule.step_up.as_ref().is_none_or(|up| !up.all_of.is_empty())
        };
        programme.steps.retain(|step| step.rule.as_ref().is_none_or(full));
        programme.rule = programme.rule.filter(full);
        let json = serde_json::to_value(&programme).unwrap();
        let said: Vec<String> = SCHEMA.iter_errors(&json).map(|error| error.to_string()).collect();
        proptest::prop_assert!(said.is_empty(), "{:?}", said);
    }
}
