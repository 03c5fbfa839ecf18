//! Every numbered sentence and every criterion of RULE.md has a test named after it. Reads the rule and the tests as
//! text; whether a test holds what the sentence says is for a person to judge.
#![allow(clippy::unwrap_used, reason = "tests may fail loudly")]

use std::fs;
use std::path::Path;

const RULE: &str = include_str!("../../core/src/progression/RULE.md");

/// The names of all functions of the core and of these tests.
fn functions() -> Vec<String> {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut folders = vec![top.join("core/src"), top.join("tests/tests")];
    let mut found = Vec::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let source = fs::read_to_string(&path).unwrap();
                let names = source.lines().filter_map(|line| line.trim_start().strip_prefix("fn "));
                found.extend(names.filter_map(|rest| Some(rest.split_once('(')?.0.to_owned())));
            }
        }
    }
    found
}

#[test]
fn every_sentence_has_a_test_named_after_it() {
    let functions = functions();
    let named = |line: &str| Some(line.strip_prefix("**")?.split_once("**")?.0.to_lowercase());
    let sentences: Vec<String> = RULE.lines().filter_map(named).collect();
    let sentences = sentences.iter().filter(|id| id.len() == 2);
    assert!(sentences.clone().count() > 25, "the rule is read wrongly");
    for id in sentences {
        // `f3_a_sign_once_noted...`, `f2_f3_only_a_full_session...`
        let has = |name: &String| name.split('_').take(3).any(|part| part == id.as_str());
        assert!(
            functions.iter().any(has),
            "no test is named `{id}_...` after its sentence of RULE.md"
        );
    }
}

#[test]
fn every_criterion_has_a_test_named_after_it() {
    let functions = functions();
    let named = |line: &str| Some(line.strip_prefix("| `")?.split_once('`')?.0.to_owned());
    let criteria: Vec<String> = RULE.lines().filter_map(named).collect();
    assert!(criteria.len() > 8, "the rule is read wrongly");
    for name in criteria {
        let about = |one: &&String| one.starts_with("criterion_") || one.starts_with("c2_");
        // Both of discomfort stand in one table of truth.
        let short = name.split("_at_").next().unwrap();
        let has = functions.iter().filter(about).any(|one| one.contains(short));
        assert!(
            has,
            "no test is named `criterion_{name}_...` (tests/tests/rule_facts_and_criteria.rs)"
        );
    }
}
