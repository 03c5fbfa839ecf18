//! What is refused while reading, with its place and in bounded time and stack (P1, P2, P4).

use std::time::{Duration, Instant};

use proptest::prelude::*;

use super::*;
use crate::diary::entry::Entry;
use crate::programme::fixtures::{ALL, text, with};
use crate::programme::strict::from_slice;

fn refusal(text: &str) -> String {
    read(text.as_bytes()).unwrap_err().to_string()
}

#[test]
fn p1_the_fixtures_read_and_round_trip() {
    for (name, text) in ALL {
        let programme = read(text.as_bytes()).unwrap_or_else(|error| panic!("{name}: {error}"));
        let written = serde_json::to_string_pretty(&programme).unwrap() + "\n";
        assert_eq!(written, text, "{name} is not written back as it stands");
        assert_eq!(read(written.as_bytes()).unwrap(), programme, "{name}");
    }
}

#[test]
fn p4_every_refusal_is_one_sentence_with_its_place() {
    let one = text("1-graded");
    let cases: Vec<(&str, String)> = vec![
        ("not a programme", "{}".into()),
        ("a list", "[]".into()),
        ("nothing", String::new()),
        ("newer", with("1", "\"frond_programme\": 1", "\"frond_programme\": 2")),
        ("format zero", with("1", "\"frond_programme\": 1", "\"frond_programme\": 0")),
        ("format in words", with("1", "\"frond_programme\": 1", "\"frond_programme\": \"1\"")),
        ("trailing comma", with("1", "\"language\": \"en\",", "\"language\": \"en\",,")),
        ("cut short", one[..one.len() / 2].into()),
        ("trailing text", format!("{one} {{}}")),
        (
            "twice",
            with("1", "\"language\": \"en\",", "\"language\": \"en\", \"language\": \"es\","),
        ),
        ("twice inside", with("1", "\"on_back\",", "\"on_back\", \"position\": \"sitting\",")),
        ("unknown line", with("1", "\"language\"", "\"langauge\"")),
        ("missing line", with("1", "  \"review_by\": \"2026-06-01\",\n", "")),
        ("missing contact", with("1", "    \"hours\": \"Monday to Friday, 9 to 17\",\n", "")),
        ("size in mm with a point", with("1", "_mm\": 100", "_mm\": 10.5")),
        ("size too large", with("1", "_mm\": 100", "_mm\": 2500")),
        ("size as text", with("1", "_mm\": 100", "_mm\": \"10 mm\"")),
        ("below zero", with("1", "_mm\": 100", "_mm\": -100")),
        ("minus zero", with("1", "\"least\": 5", "\"least\": -0")),
        ("huge", with("1", "\"least\": 5", "\"least\": 1e999")),
        ("large", with("1", "\"least\": 5", "\"least\": 99999999999999999999999")),
        ("null", with("1", "\"review_by\": \"2026-06-01\"", "\"review_by\": null")),
        ("a date", with("1", "\"2026-06-01\"", "\"1 June\"")),
        ("a time", with("1", "2026-03-02T10:00:00.000+00:00[Europe/London]", "Monday")),
        ("step id", with("1", "\"id\": \"size-10\"", "\"id\": \"Size 10\"")),
        ("position", with("1", "\"on_back\"", "\"upside_down\"")),
        ("days below 1", with("1", "\"days\": 7", "\"days\": 0")),
        ("rating above 10", with("1", "\"at_most\": 3", "\"at_most\": 11")),
        ("at least 0", with("1", "\"at_least\": 7", "\"at_least\": 0")),
        ("more than 50", with("1", "\"of_last\": 3", "\"of_last\": 51")),
        ("J above K", with("1", "\"sessions\": 2", "\"sessions\": 4")),
        ("J of 0", with("1", "\"sessions\": 2", "\"sessions\": 0")),
        ("surplus in criterion", with("1", "\"days\": 7", "\"days\": 7, \"weeks\": 1")),
        ("lacking in criterion", with("1", "\"within_days\": 7", "\"within_weeks\": 1")),
        ("lacking in window", with("1", "\"sessions\": 2,", "")),
        ("no criterion named", with("1", "\"criterion\": \"days_on_step\",", "")),
        ("trend", with("1", "days_on_step", "discomfort_falling")),
        (
            "window as a list",
            with(
                "4",
                "{\n            \"sessions\": 2,\n            \"of_last\": 3\n          }",
                "[2, 3]",
            ),
        ),
        (
            "struct as a list",
            with("1", "{\n        \"least\": 5,\n        \"most\": 5\n      }", "[5, 5]"),
        ),
        (
            "manner as a list",
            with(
                "7",
                "{\n    \"numbers_folded\": true,\n    \"grounding_first\": true,\n    \"contact_on_stop\": true\n  }",
                "[]",
            ),
        ),
        ("criterion by number", with("1", "\"days_on_step\"", "0")),
        ("target", with("1", "\"previous\"", "\"the one before\"")),
        ("target step", with("8", "\"step\": \"14-18-deeper\"", "\"step\": 3")),
        ("empty name", with("1", "\"name\": \"Trainer 1\"", "\"name\": \"  \"")),
        ("sign", with("5", "\"sign\": \"spotting\"", "\"sign\": \"sneezing\"")),
        ("tab in a line", with("1", "\"Trainer 1\"", "\"Trainer\\t1\"")),
        ("line break in text", with("1", "\"Trainer 1\"", "\"Trainer\n1\"")),
        ("half a surrogate", with("1", "\"Trainer 1\"", "\"\\ud800\"")),
        ("byte order mark", format!("\u{feff}{one}")),
        ("NUL", format!("{one}\0")),
        ("single quotes", "{'frond_programme': 1}".into()),
    ];
    let said: Vec<String> =
        cases.iter().map(|(case, text)| format!("{case}: {}", refusal(text))).collect();
    insta::assert_snapshot!(said.join("\n"));
    // What the clinician wrote never comes back out in a refusal.
    for word in
        ["Size 10", "upside", "10 mm\"", "Juniper", "Monday", "1 June", "sneezing", "one before"]
    {
        assert!(said.iter().all(|line| !line.contains(word)), "{word} is quoted");
    }
}

#[test]
fn p1_every_required_line_is_asked_for_by_name() {
    let schema = crate::schema::programme();
    let required = schema["required"].as_array().unwrap();
    let names: Vec<&str> = required.iter().map(|name| name.as_str().unwrap()).collect();
    for name in
        ["for", "clinician", "contact", "out_of_hours", "emergency", "issued_at", "review_by"]
    {
        assert!(names.contains(&name), "{name} is not required");
    }
    for name in names.iter().filter(|name| **name != "frond_programme") {
        let mut tree: serde_json::Value = serde_json::from_str(text("1")).unwrap();
        tree.as_object_mut().unwrap().remove(*name).unwrap();
        assert_eq!(refusal(&tree.to_string()), format!("{name} is missing; add it."));
    }
    let no_country = with("1", ",\n    \"country\": \"United Kingdom\"", "");
    assert_eq!(refusal(&no_country), "emergency.country is missing; add it.");
}

#[test]
fn p2_a_step_may_be_a_gate_or_maintain_or_carry_its_own_rule() {
    let five = read(text("5").as_bytes()).unwrap();
    assert!(five.steps[0].gate && !five.steps[1].gate);
    assert_eq!(five.rule_on(&five.steps[0]), five.steps[0].rule.as_ref());
    assert_eq!(five.rule_on(&five.steps[1]), five.rule.as_ref());
    assert!(read(text("4").as_bytes()).unwrap().steps[0].maintain);
}

#[test]
fn p2_a_revision_keeps_the_ids_of_the_steps_that_stay() {
    let first = read(text("1-graded-then-positions").as_bytes()).unwrap();
    let second = read(text("1-graded-then-positions-revision-2").as_bytes()).unwrap();
    assert_eq!((&first.id, first.revision.get()), (&second.id, 1));
    assert_eq!(second.revision.get(), 2);
    for step in &first.steps {
        assert!(second.step(&step.id).unwrap().same_work(step), "{}", step.id);
    }
    assert_eq!(second.steps.len(), first.steps.len() + 1);
}

#[test]
fn p4_numbers_are_taken_exactly_within_their_bounds() {
    let window = "\"sessions\": 2,\n            \"of_last\": 3";
    for sessions in 0..=52 {
        for of_last in 0..=52 {
            let changed = format!("\"sessions\": {sessions}, \"of_last\": {of_last}");
            let taken = read(with("1", window, &changed).as_bytes()).is_ok();
            let allowed = 1 <= sessions && sessions <= of_last && of_last <= 50;
            assert_eq!(taken, allowed, "{sessions} of {of_last}");
        }
    }
    let bounds = [
        ("\"at_most\": 3", 0, 10),
        ("\"at_least\": 7", 1, 10),
        ("\"last\": 4", 1, 50),
        ("\"days\": 7", 1, 3660),
        ("\"within_days\": 7", 1, 3660),
        ("\"practised_days\": 4", 1, 3660),
        ("\"after_gap_days\": 14", 1, 3660),
        ("\"widest_diameter_tenths_mm\": 100", 10, 1000),
        ("\"least\": 5", 1, 240),
    ];
    for (line, least, most) in bounds {
        let name = line.split_once(':').unwrap().0;
        for value in (-2..=60).chain([least - 1, least, most, most + 1, 70_000, i64::MAX]) {
            let taken = read(with("1", line, &format!("{name}: {value}")).as_bytes()).is_ok();
            assert_eq!(taken, (least..=most).contains(&value), "{name}: {value}");
        }
    }
}

#[test]
fn p4_an_inadmissible_criterion_says_where_it_may_stand() {
    let cases = [
        with("1", "\"days_on_step\"", "\"stopped_early\""),
        with("1", "\"discomfort_at_least\"", "\"feels_ready\""),
        with("4", "\"days_without_practice\"", "\"sessions\""),
        with("8", "\"days_without_practice\"", "\"steps_back\""),
        with("5", "\"days_on_step\"", "\"steps_back\""),
    ];
    let said: Vec<String> = cases.iter().map(|text| refusal(text)).collect();
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn p4_not_utf8_is_refused_with_its_place() {
    let mut bytes = text("1").as_bytes().to_vec();
    let at = text("1").find("Juniper").unwrap();
    bytes[at] = 0xff;
    assert_eq!(
        read(&bytes).unwrap_err().to_string(),
        "At line 5, column 11 stands something that is not UTF-8 text; save the file as UTF-8."
    );
}

#[test]
fn an_entry_is_read_as_strictly_and_the_place_inside_it_is_found() {
    let good = r#"{"id":"000102030405060708090a0b0c0d0e0f","written":"2026-03-01T09:00:00+01:00",
        "happened":"2026-03-01T09:00:00+01:00","what":{"kind":"correction",
        "of":"000102030405060708090a0b0c0d0e0f","content":{"kind":"session","practice":"trainer",
        "parts":[{"widest_diameter_tenths_mm":220,"practised_seconds":300},
        {"widest_diameter_tenths_mm":220,"practised_seconds":300}],"position":"on_back",
        "ended":{"stopped":"upset"},"ratings":{"peak":{"rated":4}}}}}"#;
    from_slice::<Entry>(good.as_bytes(), 10_000).unwrap();
    let cases = [
        ("\"practised_seconds\":300}]", "\"practised_seconds\":-1}]"),
        ("\"practised_seconds\":300}]", "\"practised_secs\":300}]"),
        ("\"practised_seconds\":300}]", "\"widest\":1,\"practised_seconds\":300}]"),
        ("\"rated\":4", "\"rated\":14"),
        ("\"on_back\"", "\"somewhere\""),
        ("{\"stopped\":\"upset\"}", "{\"stopped\":\"bored\"}"),
        ("{\"stopped\":\"upset\"}", "\"stopped\""),
        ("{\"stopped\":\"upset\"}", "{\"finished\":null}"),
        ("\"practice\":\"trainer\",", ""),
        ("\"kind\":\"session\"", "\"kind\":\"sesion\""),
        ("\"kind\":\"session\"", "\"kind\":0"),
        ("{\"peak\":{\"rated\":4}}", "[]"),
        ("\"kind\":\"session\"", "\"kind\":\"session\",\"kind\":\"strike\""),
        ("{\"widest_diameter_tenths_mm\":220,\"practised_seconds\":300},", "[220,300],"),
        ("0e0f\",\"written", "0e0g\",\"written"),
    ];
    let said = cases.map(|(from, to)| {
        assert!(good.contains(from), "{from}");
        from_slice::<Entry>(good.replacen(from, to, 1).as_bytes(), 10_000).unwrap_err().to_string()
    });
    insta::assert_snapshot!(said.join("\n"));
}

/// What this thread has computed so far, where the system tells it (Linux): on a busy machine the clock on the wall says
/// how long it waited.
fn computed() -> Option<Duration> {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    Some(Duration::from_nanos(told.split(' ').next()?.parse().ok()?))
}

/// Runs on a small stack, so that recursion without end would fail loudly, and within a bounded time.
#[allow(clippy::disallowed_methods, reason = "a test measures real time")]
fn refused_quickly(bytes: Vec<u8>) -> String {
    std::thread::Builder::new()
        .stack_size(512 * 1024)
        .spawn(move || {
            let start = Instant::now();
            let said = read(&bytes).unwrap_err().to_string();
            let spent = computed().unwrap_or_else(|| start.elapsed());
            assert!(spent < Duration::from_secs(2), "took {spent:?}: {said}");
            said
        })
        .unwrap()
        .join()
        .unwrap()
}

#[test]
fn hostile_texts_are_refused_within_bounded_time_and_stack() {
    let deep_lists = format!("{}{}", "[".repeat(10_000), "]".repeat(10_000));
    let deep_objects = format!("{}1{}", "{\"a\":".repeat(10_000), "}".repeat(10_000));
    let only_open = "[".repeat(150_000);
    let inside = with("1", "\"language\": \"en\"", &format!("\"language\": {deep_lists}"));
    for text in [deep_lists, deep_objects, only_open, inside] {
        assert!(refused_quickly(text.into_bytes()).contains("nested deeper"));
    }
    assert!(refused_quickly(vec![b' '; 100_000_000]).contains("is longer than 196608 bytes"));
    assert!(refused_quickly(vec![0; 1000]).contains("not JSON"));
    assert!(refused_quickly(b"1e999".to_vec()).contains("too large to be read"));
    assert!(refused_quickly("9".repeat(190_000).into_bytes()).contains("too large to be read"));

    // As large as allowed: many names, many items, many complaints to place.
    let names: String = (0..20_000).map(|n| format!(",\"{n}\":1")).collect();
    refused_quickly(format!("{{\"frond_programme\":1{names}}}").into_bytes());
    let items = "1,".repeat(90_000);
    refused_quickly(format!("{{\"frond_programme\":1,\"steps\":[{items}1]}}").into_bytes());
    let many: String = (0..9_000).map(|n| format!(",\"n{n}\":[1,2]")).collect();
    let bad = with("1", "\"days\": 7", &format!("\"days\": 7{many}"));
    assert!(bad.len() < MOST_BYTES);
    refused_quickly(bad.into_bytes());
}

#[test]
fn a_line_written_twice_is_refused_at_every_level() {
    // Every line of every fixture, doubled in turn.
    for (name, text) in ALL {
        let lines: Vec<&str> = text.lines().collect();
        for (index, line) in lines.iter().enumerate() {
            let Some((key, value)) = line.trim().split_once(": ") else { continue };
            if !(key.starts_with('"') && key.ends_with('"')) || value.starts_with(['{', '[']) {
                continue;
            }
            let value = value.trim_end_matches(',');
            let mut doubled = lines.clone();
            let extra = format!("{key}: {value},");
            doubled.insert(index, &extra);
            let said = refusal(&doubled.join("\n"));
            assert!(said.contains("stands twice"), "{name}, line {index}: {said}");
        }
    }
}

#[test]
fn entries_nested_as_deep_as_allowed_need_little_stack() {
    let nested = |levels: usize| {
        let id = "000102030405060708090a0b0c0d0e0f";
        let open = format!("{{\"kind\":\"correction\",\"of\":\"{id}\",\"content\":").repeat(levels);
        let at = "2026-03-01T09:00:00Z";
        format!(
            "{{\"id\":\"{id}\",\"written\":\"{at}\",\"happened\":\"{at}\",\"what\":{open}{{\"kind\":\"x\"}}{}}}",
            "}".repeat(levels)
        )
    };
    let said = |levels| {
        let bytes = nested(levels).into_bytes();
        let work = move || from_slice::<Entry>(&bytes, 200_000).unwrap_err().to_string();
        std::thread::Builder::new().stack_size(512 * 1024).spawn(work).unwrap().join().unwrap()
    };
    assert!(said(22).contains("content.kind is none of the"), "{}", said(22));
    assert!(said(23).contains("nested deeper"));
    assert!(said(1000).contains("nested deeper"));
}

proptest! {
    #[test]
    fn any_bytes_are_read_or_refused_without_panic(bytes: Vec<u8>) {
        let _ = read(&bytes).map_err(|error| error.to_string());
    }

    #[test]
    fn spoilt_programmes_are_read_or_refused_without_panic(
        which in 0..ALL.len(),
        edits in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>(), 0..3u8), 1..6),
    ) {
        let mut bytes = ALL[which].1.as_bytes().to_vec();
        for (place, byte, how) in edits {
            let at = place.index(bytes.len());
            match how {
                0 => bytes[at] = byte,
                1 => bytes.insert(at, byte),
                _ => { bytes.remove(at); }
            }
        }
        if let Err(error) = read(&bytes) {
            prop_assert!(error.to_string().ends_with('.'));
        }
    }

    /// Swapping whole values for others of any kind reaches deeper than spoilt bytes do.
    #[test]
    fn swapped_values_are_read_or_refused_with_a_place(
        which in 0..ALL.len(),
        line in any::<prop::sample::Index>(),
        value in prop::sample::select(vec![
            "0", "-1", "-0", "2.5", "1e3", "65536", "18446744073709551615", "null", "true", "\"\"",
            "\"x\"", "[]", "{}", "[{}]", "{\"criterion\":\"sessions\"}", "\"\\u0000\"",
        ]),
    ) {
        let text = ALL[which].1;
        let places: Vec<usize> = text.match_indices("\": ").map(|(at, _)| at + 3).collect();
        let at = places[line.index(places.len())];
        let rest = &text[at..];
        let end = rest.find([',', '\n']).unwrap();
        let spoilt = format!("{}{value}{}", &text[..at], &rest[end..]);
        if let Err(error) = read(spoilt.as_bytes()) {
            prop_assert!(error.to_string().ends_with('.'));
        }
    }
}
