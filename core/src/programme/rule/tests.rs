//! Every criterion is known wherever it has to be. Which there are is read from the types themselves, so that a new
//! one is missed here by its name where no compiler misses it.

use std::collections::{BTreeMap, BTreeSet};

use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use schemars::schema_for;
use serde_json::{Value, json};

use super::*;
use crate::programme::arbitrary;
use crate::programme::draft::{Change, Draft};
use crate::programme::fixtures::ALL;
use crate::programme::read::PARTS;

/// The parts of a rule, with the stored names of the criteria that may stand in each.
type Parts = BTreeMap<&'static str, BTreeSet<String>>;

fn known() -> Parts {
    let named = |schema: Value| -> BTreeSet<String> {
        let kinds = schema["oneOf"].as_array().unwrap().iter();
        kinds
            .map(|kind| kind["properties"]["criterion"]["const"].as_str().unwrap().to_owned())
            .collect()
    };
    BTreeMap::from([
        ("step_up", named(schema_for!(UpCriterion).to_value())),
        ("step_back", named(schema_for!(BackCriterion).to_value())),
        ("pause", named(schema_for!(PauseCriterion).to_value())),
    ])
}

/// Adds the criteria of a rule, written as in a programme.
fn add(rule: &Value, found: &mut Parts) {
    let mut put = |part, criterion: &Value| {
        let names: &mut BTreeSet<String> = found.entry(part).or_default();
        names.insert(criterion["criterion"].as_str().unwrap().to_owned());
    };
    let list = |at: &str| rule.pointer(at).and_then(Value::as_array).cloned().unwrap_or_default();
    list("/step_up/all_of").iter().for_each(|one| put("step_up", one));
    list("/step_back").iter().for_each(|one| put("step_back", &one["when"]));
    list("/pause").iter().for_each(|one| put("pause", one));
}

#[test]
fn the_types_are_found() {
    let known = known();
    assert!(known["step_up"].contains("discomfort_at_most"));
    assert!(known["step_back"].contains("stopped_early"));
    assert!(known["pause"].contains("steps_back"));
}

#[test]
fn the_reader_knows_where_each_may_stand() {
    let mut told = Parts::new();
    for (name, parts) in PARTS {
        for part in parts {
            told.entry(part).or_default().insert(name.to_owned());
        }
    }
    assert_eq!(told, known(), "left: the table PARTS in programme/read.rs; right: the types");
}

/// What stands in no fixture is typed by no test, neither into a draft nor on the composer's page.
#[test]
fn each_stands_in_a_fixture_in_each_part_it_may_stand_in() {
    let mut found = Parts::new();
    for (_, text) in ALL {
        let programme: Value = serde_json::from_str(text).unwrap();
        let own = programme["steps"].as_array().into_iter().flatten().map(|step| &step["rule"]);
        for rule in own.chain([&programme["rule"]]) {
            add(rule, &mut found);
        }
    }
    assert_eq!(found, known(), "left: in fixtures/programmes; right: the types");
}

#[test]
fn the_form_adds_each_empty() {
    for (part, names) in known() {
        for name in names {
            let mut draft = Draft::new();
            for change in ["add:rule".to_owned(), format!("add:rule.{part}:{name}")] {
                let added = draft.change(&change.parse::<Change>().unwrap());
                assert!(
                    added.is_some(),
                    "`empty` in programme/draft/change.rs has no {part}:{name}"
                );
            }
        }
    }
}

/// Else no random programme has it, and reading, writing and composing it are never tried.
#[test]
fn each_is_drawn_at_random() {
    let mut runner = TestRunner::deterministic();
    let rules = arbitrary::rule();
    let mut found = Parts::new();
    for _ in 0..500 {
        add(&json!(rules.new_tree(&mut runner).unwrap().current()), &mut found);
    }
    assert_eq!(found, known(), "left: drawn by programme/arbitrary.rs; right: the types");
}

#[test]
fn each_has_its_line_in_the_rule_as_it_is_written() {
    let written = include_str!("../../progression/RULE.md");
    for name in known().into_values().flatten() {
        let line = format!("| `{name}`");
        assert!(written.contains(&line), "no line begins {line:?} in progression/RULE.md");
    }
}
