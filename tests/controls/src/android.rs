//! Controls that live in Kotlin alone: one Maven build of the copy's app, then for each removal the classes that hold its
//! tests once more, with the removal named in the environment.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

use frond_mutants::compile::{cargo, rendered};
use frond_mutants::{Failure, project};

use crate::removals::Removal;
use crate::{Line, Shown, tell};

/// The switch in Kotlin, put into the copy beside the app's own files.
pub const SWITCH: (&str, &str) = (
    "android-shell/src/main/kotlin/frond/home/Removed.kt",
    "package frond.home\n\n/** Whether the removal of this number acts. */\n\
     fun removed(number: Int): Boolean = System.getenv(\"FROND_MUTANT\") == number.toString()\n",
);

/// Whether a removal is one of Kotlin.
pub fn is_one(removal: &Removal) -> bool {
    removal.file.ends_with(".kt")
}

/// The names of the test functions in a file of Kotlin.
pub fn names(source: &str) -> impl Iterator<Item = &str> {
    let mut marked = false;
    source.lines().map(str::trim_start).filter_map(move |line| {
        let rest = line.strip_prefix("@Test");
        marked |= rest.is_some();
        let line = rest.unwrap_or(line).trim_start();
        let name = line.strip_prefix("fun ").filter(|_| marked)?;
        marked = false;
        let name = name.trim_start_matches('`');
        name.split(['`', '(']).next()
    })
}

/// The class that holds each test: its file's name.
///
/// # Errors
/// Where a test is nowhere.
pub fn classes(from: &Path, wanted: &BTreeSet<&str>) -> Result<BTreeMap<String, String>, Failure> {
    let mut classes = BTreeMap::new();
    for path in project::files(from)? {
        let in_kotlin = path.starts_with("android-shell/src/test")
            && path.extension().is_some_and(|extension| extension == "kt");
        let Some(class) = path.file_stem().and_then(|stem| stem.to_str()).filter(|_| in_kotlin)
        else {
            continue;
        };
        let text = fs::read_to_string(from.join(&path))?;
        for name in names(&text).filter(|name| wanted.contains(name)) {
            classes.insert(name.to_owned(), class.to_owned());
        }
    }
    match wanted.iter().find(|name| !classes.contains_key(**name)) {
        Some(test) => Err(format!("there is no test {test}").into()),
        None => Ok(classes),
    }
}

/// Builds the app of the copy at `root` with the library and its generator, which go into `target`, and lets each removal
/// meet its tests.
pub fn show<'a>(
    from: &Path,
    root: &Path,
    target: &Path,
    chosen: &[&'a Removal],
) -> Result<Shown<'a>, Failure> {
    // The whole workspace, so that what was built for the other removals is not built again with other features.
    let (succeeded, messages) =
        cargo(root, target, &["build", "--workspace", "--lib", "--bin", "frond-bindgen"])?;
    if !succeeded {
        return Err(format!("the copy does not build:\n{}", rendered(&messages)).into());
    }
    let built = &target.join("debug");
    let names: BTreeSet<&str> = chosen.iter().flat_map(|one| one.tests.iter().copied()).collect();
    let classes = classes(from, &names)?;
    let all: BTreeSet<&str> = classes.values().map(String::as_str).collect();
    let without = run(root, built, "test", &all, 0)?;
    let broken: BTreeSet<&str> =
        names.iter().copied().filter(|name| without.get(*name) != Some(&true)).collect();
    let mut shown = Shown { lines: Vec::new(), broken };
    for &removal in chosen {
        let own = removal.tests.iter().filter_map(|test| classes.get(*test).map(String::as_str));
        let with = run(root, built, "surefire:test", &own.collect(), removal.number())?;
        let fails =
            |test: &&&str| !shown.broken.contains(**test) && with.get(**test) == Some(&false);
        let failed = removal.tests.iter().find(fails).copied();
        let line = Line { removal, failed };
        println!("{}", tell::line(&line));
        shown.lines.push(line);
    }
    Ok(shown)
}

/// Runs the tests of some classes: for each its name and whether it passed.
fn run(
    root: &Path,
    built: &Path,
    goal: &str,
    classes: &BTreeSet<&str>,
    number: u32,
) -> Result<BTreeMap<String, bool>, Failure> {
    let shell = root.join("android-shell");
    let reports = shell.join("target/surefire-reports");
    let _ = fs::remove_dir_all(&reports);
    let only = format!("-Dtest={}", classes.iter().copied().collect::<Vec<_>>().join(","));
    let mut maven = Command::new("mvn");
    maven.args(["-B", "-ntp", "-q", "-f", "pom.xml", goal, &only]).current_dir(&shell);
    // The first look at the network is that of the build.
    maven.args((goal != "test").then_some("-o"));
    let output = maven
        .env("FROND_BUILT", built)
        .env("FROND_MUTANT", number.to_string())
        .stdin(Stdio::null())
        .output()?;
    let mut found = BTreeMap::new();
    if let Ok(entries) = fs::read_dir(&reports) {
        for entry in entries {
            let path = entry?.path();
            if path.extension().is_some_and(|extension| extension == "xml") {
                found.extend(cases(&fs::read_to_string(path)?));
            }
        }
    }
    if found.is_empty() {
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        return Err(format!("no test of the app ran:\n{said}").into());
    }
    Ok(found)
}

/// The tests in a report of Surefire, and whether each passed.
fn cases(report: &str) -> Vec<(String, bool)> {
    let case = |text: &str| {
        let rest = text.strip_prefix("name=\"").or_else(|| Some(text.split_once(" name=\"")?.1))?;
        let name = rest.split_once('"')?.0;
        let name = [("&apos;", "'"), ("&#39;", "'"), ("&quot;", "\""), ("&amp;", "&")]
            .iter()
            .fold(name.to_owned(), |name, (from, to)| name.replace(from, to));
        let bad = ["<failure", "<error", "<skipped"].iter().any(|one| text.contains(one));
        Some((name, !bad))
    };
    report.split("<testcase ").skip(1).filter_map(case).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_report_is_read() {
        let report = "<testsuite><testcase name=\"a key that&apos;s gone\" time=\"1\"/>\
                      <testcase classname=\"x\" name=\"b\"><failure>no</failure></testcase></testsuite>";
        let read = cases(report);
        assert_eq!(read, [("a key that's gone".to_owned(), true), ("b".to_owned(), false)]);
    }

    #[test]
    fn tests_of_kotlin_are_found() {
        let source = "@Test\nfun `two words`() {}\n@Test fun three() {}\nfun helper() {}\n";
        assert_eq!(names(source).collect::<Vec<_>>(), ["two words", "three"]);
    }
}
