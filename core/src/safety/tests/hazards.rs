//! Keeps the hazard log from rotting: its form, and that every test it cites exists.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

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

/// The names in back-quotes.
fn cited(text: &str) -> impl Iterator<Item = &str> {
    text.split('`').skip(1).step_by(2)
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

/// The names of all test functions in the repository's Rust and Kotlin files.
fn tests_of_the_repository() -> BTreeSet<String> {
    let core = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = BTreeSet::new();
    for folder in ["../core", "../bindings", "../android-shell", "../tests"] {
        collect(&core.join(folder), &mut found);
    }
    found
}

fn collect(folder: &Path, found: &mut BTreeSet<String>) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if path.is_dir() && name != "target" && name != "node_modules" {
            collect(&path, found);
        } else if name.ends_with(".rs") {
            test_names(&fs::read_to_string(&path).unwrap(), "#[test]", found);
        } else if name.ends_with(".kt") {
            test_names(&fs::read_to_string(&path).unwrap(), "@Test", found);
        }
    }
}

/// The functions that follow this mark, on a line of their own or on the same one.
fn test_names(source: &str, mark: &str, found: &mut BTreeSet<String>) {
    let mut marked = false;
    for line in source.lines().map(str::trim_start) {
        let rest = line.strip_prefix(mark);
        marked |= rest.is_some();
        let line = rest.unwrap_or(line).trim_start();
        let name = line.strip_prefix("fn ").or_else(|| line.strip_prefix("fun "));
        if let Some(rest) = name.filter(|_| marked) {
            // Kotlin writes a name with spaces between back-quotes.
            let rest = rest.trim_start_matches('`');
            let end = rest.find(['(', '<', '`']).unwrap_or(rest.len());
            found.insert(rest[..end].to_owned());
            marked = false;
        }
    }
}

#[test]
fn test_functions_of_both_languages_are_found() {
    let found = |source: &str, mark: &str| {
        let mut names = BTreeSet::new();
        test_names(source, mark, &mut names);
        names.into_iter().collect::<Vec<_>>()
    };
    assert_eq!(found("#[test]\nfn one() {}\nfn helper() {}\n", "#[test]"), ["one"]);
    let kotlin = "@Test\nfun `two words`() {}\n@Test fun three() {}\nfun helper() {}\n";
    assert_eq!(found(kotlin, "@Test"), ["three", "two words"]);
}

#[test]
fn every_test_cited_in_the_hazard_log_exists() {
    let tests = tests_of_the_repository();
    assert!(tests.contains("every_test_cited_in_the_hazard_log_exists"), "the walk is broken");
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
