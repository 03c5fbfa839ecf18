//! What keeps the list from rotting: every removal still fits the code of today, every test it names exists and stands
//! under its hazard, and every hazard is either in the list or in the README as not shown.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::PathBuf;

use crate::removals::{self, Removal};
use crate::{found, shells, weave};

fn project() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// The tests cited under each hazard.
fn cited() -> BTreeMap<u32, BTreeSet<String>> {
    let log = fs::read_to_string(project().join("core/src/safety/HAZARDS.md")).unwrap();
    let mut hazards: BTreeMap<u32, BTreeSet<String>> = BTreeMap::new();
    let mut now = 0;
    for line in log.lines() {
        if let Some(title) = line.strip_prefix("## H") {
            now = title.split('.').next().unwrap().parse().unwrap();
            hazards.insert(now, BTreeSet::new());
        } else if let Some(proof) = line.strip_prefix("- Proof: ") {
            let names = proof.split('`').skip(1).step_by(2).map(str::to_owned);
            hazards.get_mut(&now).unwrap().extend(names);
        }
    }
    hazards
}

/// The hazards that the README says are not shown, or not wholly.
fn not_shown() -> BTreeSet<u32> {
    let readme = include_str!("../README.md");
    let (_, rest) = readme.split_once("## Not shown by removal").unwrap();
    let section = rest.split("\n## ").next().unwrap();
    section
        .lines()
        .filter_map(|line| line.strip_prefix("- H"))
        .map(|line| line.split([':', ' ']).next().unwrap().parse().unwrap())
        .collect()
}

#[test]
fn every_removal_fits_the_code_of_today() {
    let all = removals::all();
    let alone = |one| weave::woven(&project(), std::slice::from_ref(one)).err();
    let faults: Vec<String> = all.iter().filter_map(alone).map(|fault| fault.to_string()).collect();
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
    let woven = weave::woven(&project(), &all).unwrap();
    assert!(woven.len() > 20);
}

#[test]
fn every_test_that_is_named_exists() {
    let all = removals::all();
    let names = |option: Option<&str>| -> BTreeSet<&str> {
        let of = all.iter().filter(|one| shells::of(one).map(|shell| shell.option) == option);
        of.flat_map(|one| one.tests.iter().copied()).collect()
    };
    let nowhere = BTreeSet::from(["there_is_no_such_test"]);
    assert!(names(None).len() > 60);
    found::homes(&project(), &names(None)).unwrap();
    assert!(found::homes(&project(), &nowhere).is_err());
    for shell in shells::ALL {
        let names = names(Some(shell.option));
        assert!(names.len() > 8, "{}", shell.name);
        shells::files(shell, &project(), &names).unwrap();
        assert!(shells::files(shell, &project(), &nowhere).is_err());
        assert!(!project().join(shell.switch.0).exists(), "the switch stands in the copy alone");
    }
}

#[test]
fn every_test_that_is_named_stands_under_its_hazard() {
    let cited = cited();
    let mut missing = Vec::new();
    for removal in removals::all() {
        for test in removal.tests {
            if !cited.get(&removal.hazard).is_some_and(|all| all.contains(*test)) {
                missing.push(format!("H{}: {test}", removal.hazard));
            }
        }
    }
    missing.dedup();
    assert!(missing.is_empty(), "\n{}", missing.join("\n"));
}

#[test]
fn every_hazard_has_a_removal_or_is_named_as_not_shown() {
    let shown: BTreeSet<u32> = removals::all().iter().map(|one| one.hazard).collect();
    let not_shown = not_shown();
    let silent: Vec<u32> = cited()
        .into_keys()
        .filter(|one| !shown.contains(one) && !not_shown.contains(one))
        .collect();
    assert!(silent.is_empty(), "neither shown nor named: {silent:?}");
}

#[test]
fn no_removal_stands_there_twice_and_each_takes_something_away() {
    let all = removals::all();
    let (mut seen, mut numbers) = (BTreeSet::new(), BTreeSet::new());
    for one in &all {
        assert!(numbers.insert(one.number()), "H{} {}: its number", one.hazard, one.control);
        assert!(seen.insert((one.hazard, one.control)), "H{} {} twice", one.hazard, one.control);
        assert_ne!(one.from.trim(), one.to.trim(), "H{} {}", one.hazard, one.control);
        assert!(!one.tests.is_empty(), "H{} {}", one.hazard, one.control);
    }
}

#[test]
fn what_does_not_fit_is_said() {
    let with = |from| Removal {
        hazard: 1,
        control: "something",
        file: "core/src/safety/tier.rs",
        from,
        to: "",
        tests: &[],
    };
    assert!(weave::woven(&project(), &[with("this stands nowhere")]).is_err());
    assert!(weave::woven(&project(), &[with("pub ")]).is_err(), "more than once");
    let within = [with("pub enum Tier"), with("enum Tier")];
    assert!(weave::woven(&project(), &within).is_err(), "one within the other");
    let file = "ios-shell/Sources/FrondHome/Ways/Ways.swift";
    let swift = |to| Removal { file, to, ..with("at: does, view, beside.words") };
    assert!(weave::woven(&project(), &[swift("REMOVED ? x : y")]).is_ok());
    assert!(weave::woven(&project(), &[swift("x")]).is_err(), "in Swift the text says when");
}
