//! Keeps the privacy table from rotting: its form, and that every test it cites exists.

use std::collections::BTreeSet;

use super::proofs::{cited, tests_of_the_repository};

const TABLE: &str = include_str!("../PRIVACY.md");
const HEAD: [&str; 5] = ["place", "what could be read there", "control", "proof", "what remains"];
/// How a place begins its proof where there is none to be had here, followed by the reason.
const NONE: &str = "none: ";

fn cells(line: &str) -> Vec<&str> {
    line.trim().trim_start_matches('|').trim_end_matches('|').split('|').map(str::trim).collect()
}

/// What is wrong with the table, given the tests there are.
fn faults(table: &str, tests: &BTreeSet<String>) -> Vec<String> {
    let (mut wrong, mut places, mut headed) = (Vec::new(), BTreeSet::new(), false);
    let mut rows = 0;
    for line in table.lines() {
        if !line.starts_with('|') {
            headed = false;
            continue;
        }
        let cells = cells(line);
        if cells == HEAD {
            // Another surface: it may have a clipboard, too.
            (headed, places) = (true, BTreeSet::new());
            continue;
        }
        if cells.iter().all(|cell| !cell.is_empty() && cell.bytes().all(|byte| byte == b'-')) {
            continue;
        }
        let place = cells[0];
        rows += 1;
        if !headed {
            wrong.push(format!("{place}: stands under no head"));
        }
        if cells.len() != HEAD.len() || cells.iter().any(|cell| cell.is_empty()) {
            wrong.push(format!("{place}: {} columns, or an empty one", cells.len()));
            continue;
        }
        if !places.insert(place.to_owned()) {
            wrong.push(format!("{place}: stands there twice"));
        }
        let proof = cells[3];
        let missing = cited(proof).filter(|test| !tests.contains(*test));
        wrong.extend(missing.map(|test| format!("{place}: there is no test {test}")));
        let reason = proof.strip_prefix(NONE).is_some_and(|reason| reason.len() > 12);
        if cited(proof).count() == 0 && !reason {
            wrong.push(format!("{place}: neither a proof nor the reason why there is none"));
        }
    }
    if rows == 0 {
        wrong.push("there is no table".to_owned());
    }
    wrong
}

#[test]
fn every_test_cited_in_the_privacy_table_exists() {
    let tests = tests_of_the_repository();
    let wrong = faults(TABLE, &tests);
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    let places = TABLE.lines().filter(|line| line.starts_with("| ")).count();
    assert!(places >= 50, "{places} places");
}

#[test]
fn the_check_of_the_table_finds_what_is_wrong() {
    let tests = BTreeSet::from(["real".to_owned()]);
    let with = |row: &str| format!("| {} |\n|---|---|---|---|---|\n{row}\n", HEAD.join(" | "));
    let said = |row: &str| faults(&with(row), &tests);
    let none: [String; 0] = [];
    assert_eq!(said("| a | b | c | `real` | d |"), none);
    assert_eq!(said("| a | b | c | none: it needs a real phone | d |"), none);
    assert_eq!(said("| a | b | c | `gone` | d |"), ["a: there is no test gone"]);
    assert_eq!(said("| a | b | c | `real`, `gone` | d |").len(), 1);
    assert_eq!(said("| a | b | c | looked at | d |").len(), 1);
    assert_eq!(said("| a | b | c | none: | d |").len(), 1);
    assert_eq!(said("| a | b | | `real` | d |"), ["a: 5 columns, or an empty one"]);
    assert_eq!(said("| a | b | c | `real` |"), ["a: 4 columns, or an empty one"]);
    assert_eq!(said("| a | b | c | `real` | d |\n| a | b | c | `real` | d |").len(), 1);
    assert_eq!(faults("| a | b | c | `real` | d |", &tests).len(), 1, "no head");
    assert_eq!(faults("words alone", &tests), ["there is no table"]);
}
