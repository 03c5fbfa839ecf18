//! Short ways to say a rule and to ask what was found, for the tests of the sentences.

use frond_core::progression::{Bar, Finding, Part, Verdict};
use serde_json::{Value, json};

use super::{Diary, at, ladder, programme, to_step};

pub fn comfort(last: u8) -> Value {
    json!({"criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": last})
}
pub fn hurt(x: u8, j: u8, k: u8) -> Value {
    json!({"criterion": "discomfort_at_least", "rating": "peak", "at_least": x, "window": {"sessions": j, "of_last": k}})
}
pub fn stops(j: u8, k: u8) -> Value {
    json!({"criterion": "stopped_early", "window": {"sessions": j, "of_last": k}})
}
pub fn away(days: u16) -> Value {
    json!({"criterion": "days_without_practice", "days": days})
}
pub fn up(all: Vec<Value>) -> Value {
    json!({"step_up": {"all_of": all}})
}
pub fn with(rule: Value) -> Value {
    programme(1, ladder(), rule)
}
/// Up after one comfortable full session.
pub fn easy() -> Value {
    with(up(vec![comfort(1)]))
}
pub fn on_b(programme: &Value) -> Diary {
    let mut diary = Diary::begun(programme);
    diary.say(at(0, 9), to_step("b"));
    diary
}
pub fn finding(diary: &Diary, now: i64, part: Part) -> Finding {
    diary.assess(at(now, 20)).findings.into_iter().find(|f| f.part == part).unwrap()
}
pub fn verdict(diary: &Diary, now: i64, part: Part) -> Verdict {
    finding(diary, now, part).verdict
}
pub fn bars(diary: &Diary, now: i64) -> Vec<Bar> {
    diary.assess(at(now, 20)).bars
}
