//! Diaries on which the rule engine and the naive model once differed, shrunk to the least that shows
//! it, each named after the sentence of the rule that decides.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

use frond_core::diary::entry::Entry;
use frond_core::moment::Stamp;
use frond_core::progression::{Finding, Outcome, Part, Verdict, assess};
use frond_tests::model;
use serde_json::{Value, json};

/// A ladder of 20, 22 and 24 mm, on the back, at least one minute, begun on `start`.
fn programme(start: &str, rule: Value) -> Value {
    let step = |id: &str, size: u32| {
        json!({
            "id": id, "name": id, "position": "on_back", "instruction": "Invented.",
            "parts": [{
                "trainer": { "label": id, "widest_diameter_tenths_mm": size },
                "minutes": { "least": 1, "most": 5 }
            }],
            "schedule": { "weekly_least": 3, "weekly_most": 7, "daily_most": 2 }
        })
    };
    let text = json!({
        "frond_programme": 1, "id": "p", "revision": 1, "for": "Invented",
        "intended_for": "adult", "language": "en",
        "clinician": { "name": "Invented", "clinic": "Invented" },
        "contact": {
            "name": "Invented", "phone": "000", "hours": "9 to 5", "if_nobody_answers": "Invented."
        },
        "out_of_hours": { "what_to_do": "Invented." },
        "emergency": { "number": "000", "country": "Nowhere" },
        "issued_at": "2026-03-01T09:00:00Z", "review_by": "2027-03-01",
        "steps": [step("a", 200), step("b", 220), step("c", 240)],
        "start_at": start, "rule": rule, "screening_every_days": 28, "late_after_hours": 48
    });
    json!({
        "kind": "programme_accepted", "programme": "p", "revision": 1, "carried": text.to_string()
    })
}

fn session(size: u32, ended: &Value, peak: Option<u8>) -> Value {
    let ratings = peak.map_or(json!({}), |peak| json!({ "peak": { "rated": peak } }));
    json!({
        "kind": "session", "practice": "trainer", "position": "on_back", "ended": ended,
        "parts": [{ "widest_diameter_tenths_mm": size, "practised_seconds": 60 }],
        "ratings": ratings
    })
}

fn change(to: &str) -> Value {
    json!({ "kind": "step_change", "to": to, "why": "own_choice" })
}

fn id(place: usize) -> String {
    format!("{place:032x}")
}

/// Entries by place, each written at a time and told to have happened at one.
fn diary(told: &[(&str, &str, Value)]) -> Vec<Entry> {
    let entry = |(at, (written, happened, what)): (usize, &(&str, &str, Value))| {
        let text =
            json!({ "id": id(at + 1), "written": written, "happened": happened, "what": what });
        serde_json::from_value(text).unwrap()
    };
    told.iter().enumerate().map(entry).collect()
}

/// What the engine says, after making sure that the model says the same.
fn both(entries: &[Entry], now: &str) -> (Outcome, Vec<Finding>) {
    let now: Stamp = now.parse().unwrap();
    let engine = assess(entries, &now).unwrap();
    let model = model::said(entries, &now, None);
    let verdicts = |part: Part| -> Vec<Verdict> {
        engine.findings.iter().filter(|f| f.part == part).map(|f| f.verdict).collect()
    };
    for part in [Part::Pause, Part::StepBack, Part::StepUp] {
        let modelled: Vec<Verdict> =
            model.verdicts.iter().filter(|f| f.part == part).map(|f| f.verdict).collect();
        assert_eq!(verdicts(part), modelled, "engine, then model: {part:?}");
    }
    assert_eq!(engine.outcome, model.outcome, "engine, then model");
    (engine.outcome, engine.findings)
}

const MAR_1: &str = "2026-03-01T09:00:00Z";

#[test]
fn criteria_stopped_early_looks_at_sessions_below_the_step_too() {
    let rule = json!({
        "step_back": [{
            "when": { "criterion": "stopped_early", "window": { "sessions": 1, "of_last": 1 } },
            "target": "previous"
        }]
    });
    let stopped = json!({ "stopped": "discomfort" });
    let day = "2026-03-02T09:00:00Z";
    let entries =
        diary(&[(MAR_1, MAR_1, programme("b", rule)), (day, day, session(200, &stopped, Some(3)))]);
    let (outcome, _) = both(&entries, "2026-03-02T10:00:00Z");
    assert_eq!(outcome, Outcome::StepBack { to: "a".to_owned().try_into().unwrap() });
}

#[test]
fn c2_practised_days_are_unknown_while_a_missing_peak_could_make_them_enough() {
    let rule = json!({
        "step_up": { "all_of": [
            { "criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": 1 },
            { "criterion": "sessions", "practised_days": 1, "within_days": 7 }
        ] }
    });
    let day = "2026-03-02T09:00:00Z";
    let entries = diary(&[
        (MAR_1, MAR_1, programme("a", rule)),
        (day, day, session(200, &json!("finished"), None)),
    ]);
    let (_, findings) = both(&entries, "2026-03-02T10:00:00Z");
    assert_eq!(findings[1].verdict, Verdict::Unknown);
}

#[test]
fn t4_a_step_back_hours_ahead_but_today_counts_for_steps_back() {
    // T4: unknown only if the very day it counts from lies ahead; T5: what is ahead hides nothing.
    let rule = json!({
        "pause": [{ "criterion": "steps_back", "times": 1, "within_days": 7 }]
    });
    let later = "2026-03-02T12:00:00Z";
    let entries = diary(&[
        (MAR_1, MAR_1, programme("b", rule)),
        ("2026-03-02T09:00:00Z", later, change("a")),
    ]);
    let (outcome, _) = both(&entries, "2026-03-02T09:00:00Z");
    assert_eq!(outcome, Outcome::PauseAndCall);
}

#[test]
fn t4_days_without_practice_are_known_while_the_day_counted_from_is_today() {
    let rule = json!({
        "pause": [{ "criterion": "days_without_practice", "days": 5 }]
    });
    let entries = diary(&[
        (MAR_1, MAR_1, programme("b", rule)),
        ("2026-03-02T09:00:00Z", "2026-03-02T12:00:00Z", session(220, &json!("finished"), Some(1))),
    ]);
    let (_, findings) = both(&entries, "2026-03-02T09:00:00Z");
    assert_eq!(findings[0].verdict, Verdict::Unmet);
}

#[test]
fn f5_an_answer_first_written_before_a_gap_ended_does_not_count() {
    let rule = json!({
        "step_up": { "all_of": [
            { "criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": 1 },
            { "criterion": "feels_ready" }
        ] },
        "after_gap_days": 7
    });
    let finished = json!("finished");
    let yes = json!({ "kind": "feels_ready", "answer": "yes" });
    let day = |day: u32| format!("2026-03-{day:02}T09:00:00Z");
    let put_right = json!({ "kind": "correction", "of": id(3), "content": yes });
    let entries = diary(&[
        (MAR_1, MAR_1, programme("b", rule)),
        (&day(2), &day(2), session(220, &finished, Some(1))),
        (&day(3), &day(3), yes),
        (&day(20), &day(20), session(220, &finished, Some(1))),
        // The same answer, now said to be of the day after the gap; it was written before the gap ended.
        (&day(21), &day(21), put_right),
    ]);
    let (_, findings) = both(&entries, "2026-03-21T10:00:00Z");
    assert_eq!(findings[1].verdict, Verdict::Unmet);
}
