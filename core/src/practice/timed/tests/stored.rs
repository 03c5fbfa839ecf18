//! The stored form: frozen, strict, and read without a panic whatever it holds.

use proptest::prelude::*;
use serde_json::{Value, json};

use super::*;

fn running() -> Timer {
    let timer = timer(&[(60, 120), (300, 600)], &tick(1, 1_000, 0));
    let timer = timer.after(Event::Begin { part: 0 }, &tick(1, 1_002, 2));
    let timer = timer.after(Event::Enough { part: 0 }, &tick(1, 1_072, 72));
    timer
        .after(Event::Begin { part: 1 }, &tick(1, 1_090, 90))
        .after(Event::Seen, &tick(1, 1_105, 105))
}

fn value(timer: &Timer) -> Value {
    serde_json::from_slice(&timer.stored().unwrap()).unwrap()
}

fn opens(value: &Value) -> Result<(), RunningError> {
    Found::open(&serde_json::to_vec(value).unwrap()).map(|_| ())
}

#[test]
fn w6_the_stored_form_of_every_state_is_frozen() {
    let at = tick(1, 1_110, 110);
    let ready = timer(&[(60, 120), (300, 600)], &tick(1, 1_000, 0));
    let states = [
        value(&ready),
        value(&running()),
        value(&running().after(Event::Pause, &at)),
        value(&running().after(Event::Stop, &at)),
        value(&running().after(Event::Seen, &tick(1, 9_000, 8_000))),
    ];
    insta::assert_json_snapshot!(states);
}

/// A practice that ended just at its least is a whole one, and is read again.
#[test]
fn w5_an_end_at_the_least_is_kept() {
    let timer = timer(&[(60, 120)], &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let timer = timer.after(Event::Enough { part: 0 }, &tick(1, 60, 60));
    assert_eq!(value(&timer)["stage"], json!("finished"));
    assert_eq!(opens(&value(&timer)), Ok(()));
}

#[test]
fn what_was_stored_opens_as_it_was() {
    let kept = running();
    let again = found(&kept).go_on(&tick(1, 1_105, 105));
    assert_eq!(again.stored().unwrap(), kept.stored().unwrap());
}

/// Each of these breaks one rule that every record keeps.
#[test]
fn a_record_that_breaks_a_rule_is_refused() {
    let good = value(&running());
    assert_eq!(opens(&good), Ok(()));
    let with = |place: &str, new: Value| {
        let mut changed = good.clone();
        *changed.pointer_mut(place).unwrap_or_else(|| panic!("no {place}")) = new;
        changed
    };
    let long = json!([60_000_u64, u64::MAX]);
    let surplus = {
        let mut changed = good.clone();
        changed["further"] = json!(1);
        changed
    };
    let unbegun = {
        let mut changed = good.clone();
        changed.as_object_mut().unwrap().remove("began");
        changed
    };
    for wrong in [
        surplus,
        unbegun,
        with("/frond_running", json!(0)),
        with("/frond_running", json!("1")),
        with("/id", json!("7")),
        with("/practice", json!("dance")),
        with("/practice", json!("meditation")),
        with("/parts", json!([])),
        with("/parts/0/most_millis", json!(0)),
        with("/parts/0/least_millis", json!(999_999_999)),
        with("/parts/1/widest_diameter_tenths_mm", json!(null)),
        with("/counted_millis", json!([70_000])),
        with("/counted_millis", long),
        with("/counted_millis", json!([-1, 0])),
        with("/counted_millis", json!([0, 0, 0])),
        with("/counted_millis", json!([120_001, 0])),
        with("/counted_millis", json!([70_000, 600_000])),
        with("/stage", json!({"running": {"part": 2}})),
        with("/stage", json!({"running": {"part": u64::MAX}})),
        with("/stage", json!({"ready": {"part": 1}})),
        with("/stage", json!({"ready": {"part": 2}})),
        with("/stage", json!({"running": {"part": 0}})),
        with("/stage", json!({"paused": {"part": 1, "further": 1}})),
        with("/stage", json!("finished")),
        with("/stage", json!("asleep")),
        with("/began", json!("yesterday")),
        with("/seen_uptime/millis", json!(-5)),
    ] {
        assert_eq!(opens(&wrong), Err(RunningError::Unreadable), "{wrong}");
    }
    let mut bytes = serde_json::to_vec(&good).unwrap();
    bytes.extend(b"{}");
    assert_eq!(Found::open(&bytes).err(), Some(RunningError::Unreadable));
    let twice = String::from_utf8(serde_json::to_vec(&good).unwrap()).unwrap();
    let twice = twice.replacen('{', "{\"position\":\"sitting\",", 1);
    assert_eq!(Found::open(twice.as_bytes()).err(), Some(RunningError::Unreadable));
}

#[test]
fn a_newer_record_asks_for_an_update_whatever_else_it_holds() {
    let newer = json!({"frond_running": 2, "anything": [1, 2, 3]});
    assert_eq!(opens(&newer), Err(RunningError::Newer));
}

#[test]
fn debug_text_tells_nothing_of_a_practice() {
    let timer = running();
    let done = timer.clone().after(Event::Stop, &tick(1, 1_110, 110)).done();
    let at = tick(1, 1_110, 110);
    let (view, offer) = (timer.view(&at), found(&timer).offer(&at));
    let shown = format!("{timer:?} {:?} {done:?} {view:?} {offer:?}", found(&timer));
    assert_eq!(shown, "Timer(..) Found(..) Some(Done(..)) View(..) Offer(..)");
}

proptest! {
    #[test]
    fn damaged_bytes_are_refused_or_keep_every_rule(at in 0usize..600, new: u8, cut in 0usize..700) {
        let mut bytes = running().stored().unwrap();
        let length = bytes.len();
        if let Some(byte) = bytes.get_mut(at) {
            *byte = new;
        }
        bytes.truncate(cut.min(length));
        if let Ok(found) = Found::open(&bytes) {
            // Whatever it says now, nothing in it can count without end.
            let at = tick(1, 2_000_000, 2_000_000);
            let total = found.offer(&at).certain_millis;
            prop_assert!(total <= 6 * 14_420_000);
            let timer = found.go_on(&at).after(Event::Seen, &at).after(Event::Stop, &at);
            prop_assert!(timer.done().is_some());
        }
    }
}
