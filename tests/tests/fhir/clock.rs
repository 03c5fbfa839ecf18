//! A clock that stood wrong when a plan was accepted or a step began. Which plan is in force is told by the order in
//! which they were accepted, never by a clock.

use chrono::{DateTime, NaiveDate};
use frond_core::summary::fhir::Texts;
use serde_json::{Value, json as value};

use super::rule_diary::{Diary, at, ladder, programme, to_step};
use super::{addresses, all, every, json, made};

#[test]
fn the_plan_accepted_last_is_the_active_one_whatever_the_clock_said() {
    let bundle = json(&made::clock_put_right(), Texts::Carried);
    let entries = bundle["entry"].as_array().unwrap();
    let plans: Vec<&Value> = entries
        .iter()
        .map(|entry| &entry["resource"])
        .filter(|one| one["resourceType"] == "CarePlan")
        .collect();
    let told: Vec<(&str, &str)> = plans
        .iter()
        .map(|plan| (plan["title"].as_str().unwrap(), plan["status"].as_str().unwrap()))
        .collect();
    let expected =
        [("Home programme, revision 1", "revoked"), ("Home programme, revision 2", "active")];
    assert_eq!(told, expected);
    let first = format!("urn:uuid:{}", plans[0]["id"].as_str().unwrap());
    assert_eq!(plans[1]["replaces"][0]["reference"], first);
    assert!(plans[1]["period"]["end"].is_null(), "it is in force");
    assert!(!plans[0]["period"]["end"].is_null(), "it is over");
}

/// FHIR R4, data type Period, invariant per-1: the start is not after the end.
#[test]
fn no_period_ends_before_it_starts() {
    let mut seen = 0;
    let put_right = ("a clock put right".to_owned(), made::clock_put_right());
    for (name, summary) in every().into_iter().chain([put_right]) {
        let bundle = json(&summary, Texts::Carried);
        for key in ["period", "effectivePeriod"] {
            for period in all(&bundle, key) {
                // The other `period` of the standard is how often something is done.
                let (Some(start), Some(end)) = (period["start"].as_str(), period["end"].as_str())
                else {
                    continue;
                };
                assert!(begins(start) <= begins(end), "{name}: from {start} to {end}");
                seen += 1;
            }
        }
    }
    assert!(seen > 100, "only {seen} periods were looked at");
}

/// FHIR R4, Bundle, invariant bdl-7: no address twice.
#[test]
fn a_step_left_and_taken_up_again_in_one_moment_is_told_twice() {
    let mut diary = Diary::begun(&programme(1, ladder(), value!({})));
    for step in ["b", "a", "b", "a", "b"] {
        diary.say(at(3, 8), to_step(step));
    }
    let bundle = json(&made::summary(&diary, 5, &Default::default()), Texts::Carried);
    let addresses = addresses(&bundle);
    let unique: std::collections::BTreeSet<&String> = addresses.iter().collect();
    assert_eq!(unique.len(), addresses.len(), "an address is there twice");
    let steps = bundle["entry"].as_array().unwrap().iter();
    let steps = steps.filter(|one| one["resource"]["code"]["coding"][0]["code"] == "step-in-use");
    assert_eq!(steps.count(), 6);
}

/// When a day or a moment begins, in seconds.
fn begins(text: &str) -> i64 {
    let day = |_| text.parse::<NaiveDate>().unwrap().and_hms_opt(0, 0, 0).unwrap().and_utc();
    DateTime::parse_from_rfc3339(text).map(|at| at.to_utc()).unwrap_or_else(day).timestamp()
}
