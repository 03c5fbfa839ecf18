//! Keeps the hazard log from rotting: its form, and that every test it cites exists.

use std::collections::BTreeSet;

use super::proofs::{cited, tests_of_the_repository};

const LOG: &str = include_str!("../HAZARDS.md");

struct Hazard {
    title: String,
    lines: Vec<(String, String)>,
}

fn hazards(log: &str) -> Vec<Hazard> {
    let mut found: Vec<Hazard> = Vec::new();
    for line in log.lines() {
        if let Some(title) = line.strip_prefix("## H") {
            found.push(Hazard { title: title.to_owned(), lines: Vec::new() });
        } else if let (Some(item), Some(hazard)) = (line.strip_prefix("- "), found.last_mut()) {
            let (name, text) = item.split_once(": ").unwrap_or((item, ""));
            hazard.lines.push((name.to_owned(), text.to_owned()));
        }
    }
    found
}

/// What is wrong with the log, given the test functions there are.
fn faults(log: &str, tests: &BTreeSet<String>) -> Vec<String> {
    let mut wrong = Vec::new();
    for (index, hazard) in hazards(log).iter().enumerate() {
        let id = format!("H{}", index + 1);
        if !hazard.title.starts_with(&format!("{}. ", index + 1)) {
            wrong.push(format!("{id}: the numbers do not follow each other at H{}", hazard.title));
        }
        let text = |name: &str| hazard.lines.iter().find(|(one, _)| one == name);
        for needed in ["Sequence", "Harm", "Severity", "Control", "Residual risk"] {
            if text(needed).is_none_or(|(_, text)| text.trim().is_empty()) {
                wrong.push(format!("{id}: no {needed}"));
            }
        }
        if !text("Severity").is_some_and(|(_, one)| one == "serious" || one == "critical") {
            wrong.push(format!("{id}: severity is neither serious nor critical"));
        }
        let mut stands = false;
        for (name, text) in &hazard.lines {
            match name.as_str() {
                "Proof" => {
                    stands |= cited(text).count() > 0;
                    wrong.extend(
                        cited(text)
                            .filter(|test| !tests.contains(*test))
                            .map(|test| format!("{id}: there is no test {test}")),
                    );
                }
                "Proof to be confirmed" => {
                    stands |= cited(text).count() > 0;
                    wrong.extend(
                        cited(text)
                            .filter(|test| tests.contains(*test))
                            .map(|test| format!("{id}: {test} exists now: move it to Proof")),
                    );
                }
                "Not built yet" => stands |= !text.is_empty(),
                "Sequence" | "Harm" | "Severity" | "Control" | "Residual risk" => {}
                other => wrong.push(format!("{id}: unknown line {other:?}")),
            }
        }
        if !stands {
            wrong.push(format!("{id}: neither a proof nor a word on what is missing"));
        }
    }
    wrong
}

#[test]
fn every_test_cited_in_the_hazard_log_exists() {
    let tests = tests_of_the_repository();
    assert!(hazards(LOG).len() >= 28);
    let wrong = faults(LOG, &tests);
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn the_check_of_the_log_finds_what_is_wrong() {
    let tests = BTreeSet::from(["real".to_owned()]);
    let with = |proof: &str| {
        format!(
            "## H1. X\n- Sequence: a\n- Harm: b\n- Severity: serious\n- Control: c\n{proof}- Residual risk: d\n"
        )
    };
    let none: [String; 0] = [];
    assert_eq!(faults(&with("- Proof: `real`\n"), &tests), none);
    assert_eq!(faults(&with("- Proof to be confirmed: `coming`\n"), &tests), none);
    assert_eq!(faults(&with("- Not built yet: all of it\n"), &tests), none);
    assert_eq!(faults(&with("- Proof: `gone`\n"), &tests), ["H1: there is no test gone"]);
    assert_eq!(
        faults(&with("- Proof to be confirmed: `real`\n"), &tests),
        ["H1: real exists now: move it to Proof"]
    );
    assert_eq!(faults(&with(""), &tests), ["H1: neither a proof nor a word on what is missing"]);
    assert_eq!(faults(&with("- Prof: `real`\n"), &tests).len(), 2);
    let mild = with("- Proof: `real`\n").replace("serious", "mild").replace("- Harm: b\n", "");
    assert_eq!(faults(&mild, &tests).len(), 2);
    assert_eq!(faults(&with("- Proof: `real`\n").replace("H1", "H2"), &tests).len(), 1);
}
