//! Controls that live in a shell alone, in Kotlin or in Swift: one build of the copy's app, then for each removal the tests
//! that are said to prove it once more, with the removal named in the environment. Decides what is the same for every
//! shell; what one has of its own stands in `android.rs` and `ios.rs`.

mod android;
mod ios;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use frond_mutants::compile::{cargo, rendered};
use frond_mutants::{Failure, project};

use crate::removals::Removal;
use crate::{Line, Shown, found, tell};

/// Every shell.
pub const ALL: [&Shell; 2] = [&android::SHELL, &ios::SHELL];

/// One shell: how a removal is switched in its language, and how its tests are found and run.
pub struct Shell {
    /// What asks for its removals on the command line.
    pub option: &'static str,
    /// What it is called in a table.
    pub name: &'static str,
    /// How the names of its files end.
    pub ending: &'static str,
    /// The switch, put into the copy beside the app's own files: its place and its text.
    pub switch: (&'static str, &'static str),
    /// The function of the switch, as every file of the app can call it.
    pub asks: &'static str,
    /// Where its tests lie.
    pub tests: &'static str,
    /// What stands between the mark of a test and its name.
    pub function: &'static str,
    /// What has to be there before the app is built, besides the core's library and its generator.
    pub ready: fn(&Place) -> Result<(), Failure>,
    /// Where the reports of its tests come to lie.
    pub reports: fn(&Place) -> PathBuf,
    /// What runs tests of the copy's app with the removal of this number, each test by its name and its file; `first`:
    /// what builds the app too.
    pub command: fn(&Place, &BTreeMap<&str, &str>, u32, bool) -> Command,
}

/// Where things lie.
pub struct Place {
    /// The project.
    pub from: PathBuf,
    /// Its copy.
    pub root: PathBuf,
    /// Where all that is made lies.
    pub to: PathBuf,
}

impl Place {
    /// What Cargo builds goes here.
    pub fn target(&self) -> PathBuf {
        self.to.join("built")
    }

    /// The copy's library and its generator.
    pub fn built(&self) -> PathBuf {
        self.target().join("debug")
    }
}

/// The shell that a removal stands in; none where it is one of Rust.
pub fn of(removal: &Removal) -> Option<&'static Shell> {
    let ending = Path::new(removal.file).extension()?.to_str()?;
    ALL.into_iter().find(|shell| shell.ending == ending)
}

/// The shell that this option asks for.
pub fn asked(option: &str) -> Option<&'static Shell> {
    ALL.into_iter().find(|shell| shell.option == option)
}

/// The file that holds each test, without its ending.
///
/// # Errors
/// Where a test is nowhere.
pub fn files(
    shell: &Shell,
    from: &Path,
    wanted: &BTreeSet<&str>,
) -> Result<BTreeMap<String, String>, Failure> {
    let mut files = BTreeMap::new();
    for path in project::files(from)? {
        let here = path.starts_with(shell.tests)
            && path.extension().is_some_and(|extension| extension == shell.ending);
        let Some(file) = path.file_stem().and_then(|stem| stem.to_str()).filter(|_| here) else {
            continue;
        };
        let text = fs::read_to_string(from.join(&path))?;
        for name in found::names(&text, "@Test", shell.function) {
            if wanted.contains(name) {
                files.insert(name.to_owned(), file.to_owned());
            }
        }
    }
    match wanted.iter().find(|name| !files.contains_key(**name)) {
        Some(test) => Err(format!("there is no test {test}").into()),
        None => Ok(files),
    }
}

/// Builds the copy's app over its own core, and lets each removal meet its tests.
///
/// # Errors
/// Where something cannot be built, or no test runs.
pub fn show<'a>(
    shell: &Shell,
    place: &Place,
    chosen: &[&'a Removal],
) -> Result<Shown<'a>, Failure> {
    // The whole workspace, so that what was built for the other removals is not built again with other features.
    let arguments = ["build", "--workspace", "--lib", "--bin", "frond-bindgen"];
    let (succeeded, messages) = cargo(&place.root, &place.target(), &arguments)?;
    if !succeeded {
        return Err(format!("the copy does not build:\n{}", rendered(&messages)).into());
    }
    (shell.ready)(place)?;
    meet(shell, place, chosen)
}

/// Lets each removal meet its tests.
///
/// # Errors
/// Where no test runs.
pub fn meet<'a>(
    shell: &Shell,
    place: &Place,
    chosen: &[&'a Removal],
) -> Result<Shown<'a>, Failure> {
    let names: BTreeSet<&str> = chosen.iter().flat_map(|one| one.tests.iter().copied()).collect();
    let files = files(shell, &place.from, &names)?;
    let of = |tests: &mut dyn Iterator<Item = &'a str>| -> BTreeMap<&str, &str> {
        tests.filter_map(|test| Some((test, files.get(test)?.as_str()))).collect()
    };
    let without = run(shell, place, &of(&mut names.iter().copied()), 0, true)?;
    let broken: BTreeSet<&str> =
        names.iter().copied().filter(|name| without.get(*name) != Some(&true)).collect();
    let mut shown = Shown { lines: Vec::new(), broken };
    for &removal in chosen {
        let own = of(&mut removal.tests.iter().copied());
        let with = run(shell, place, &own, removal.number(), false)?;
        let fails =
            |test: &&&str| !shown.broken.contains(**test) && with.get(**test) == Some(&false);
        let failed = removal.tests.iter().find(fails).copied();
        let line = Line { removal, failed };
        println!("{}", tell::line(&line));
        shown.lines.push(line);
    }
    Ok(shown)
}

/// Runs tests: for each its name and whether it passed.
fn run(
    shell: &Shell,
    place: &Place,
    tests: &BTreeMap<&str, &str>,
    number: u32,
    first: bool,
) -> Result<BTreeMap<String, bool>, Failure> {
    let reports = (shell.reports)(place);
    let _ = fs::remove_dir_all(&reports);
    fs::create_dir_all(&reports)?;
    let output = (shell.command)(place, tests, number, first).stdin(Stdio::null()).output()?;
    let mut found = BTreeMap::new();
    for entry in fs::read_dir(&reports)? {
        let path = entry?.path();
        if path.extension().is_some_and(|extension| extension == "xml") {
            for (name, passed) in cases(&fs::read_to_string(path)?) {
                // One that ran several times passed where it did each time.
                *found.entry(name).or_insert(true) &= passed;
            }
        }
    }
    if found.is_empty() {
        let said = [output.stdout, output.stderr].concat();
        return Err(format!("no test ran:\n{}", String::from_utf8_lossy(&said)).into());
    }
    Ok(found)
}

/// The tests in a report of JUnit's form, and whether each passed. Swift writes a function's brackets behind its name.
fn cases(report: &str) -> Vec<(String, bool)> {
    let case = |text: &str| {
        let rest = text.strip_prefix("name=\"").or_else(|| Some(text.split_once(" name=\"")?.1))?;
        let name = rest.split_once('"')?.0.split('(').next()?;
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
                      <testcase classname=\"x\" name=\"b\"><failure>no</failure></testcase>\
                      <testcase classname=\"x\" name=\"c(one:)\" /></testsuite>";
        let read = cases(report);
        let expected = [("a key that's gone", true), ("b", false), ("c", true)];
        assert_eq!(read, expected.map(|(name, passed)| (name.to_owned(), passed)));
    }

    /// A shell whose tests are one line of `sh`: one of them notices the removal of a number, the other notices nothing.
    const PLANTED: Shell = Shell {
        option: "--planted",
        name: "planted",
        ending: "kt",
        switch: ("", ""),
        asks: "",
        tests: "tests",
        function: "fun ",
        ready: |_| Ok(()),
        reports: |place| place.to.join("reports"),
        command: |place, tests, number, _| {
            let report: String = tests
                .keys()
                .map(|name| {
                    let bad = *name == "fails" || (*name == "notices" && number != 0);
                    let inside = if bad { "<failure/>" } else { "" };
                    format!("<testcase name=\"{name}\">{inside}</testcase>")
                })
                .collect();
            let mut command = Command::new("sh");
            command.args(["-c", "printf %s \"$1\" > \"$2\"", "sh", &report]);
            command.arg(place.to.join("reports/one.xml"));
            command
        },
    };

    #[test]
    fn a_removal_that_a_test_notices_one_that_none_does_and_a_test_that_always_fails() {
        let folder = tempfile::tempdir().unwrap();
        let at = |name| folder.path().join(name);
        let place = Place { from: at("from"), root: at("root"), to: at("to") };
        fs::create_dir_all(place.from.join("tests")).unwrap();
        let source = "@Test fun notices() {}\n@Test\nfun sleeps() {}\n@Test fun fails() {}\n";
        fs::write(place.from.join("tests/OneTest.kt"), source).unwrap();
        let git = Command::new("git").args(["init", "-q"]).current_dir(&place.from).status();
        assert!(git.unwrap().success());
        let one = |tests| Removal { hazard: 1, control: "", file: "a.kt", from: "", to: "", tests };
        let all = [one(&["sleeps", "notices"]), one(&["sleeps"]), one(&["fails"])];
        let shown = meet(&PLANTED, &place, &all.iter().collect::<Vec<_>>()).unwrap();
        let failed: Vec<Option<&str>> = shown.lines.iter().map(|line| line.failed).collect();
        assert_eq!(failed, [Some("notices"), None, None]);
        assert_eq!(shown.broken, BTreeSet::from(["fails"]));
        let nowhere = one(&["nowhere"]);
        assert!(meet(&PLANTED, &place, &[&nowhere]).is_err());
        let silent = Shell { command: |_, _, _, _| Command::new("true"), ..PLANTED };
        assert!(meet(&silent, &place, &[&all[0]]).is_err(), "where nothing ran nothing is shown");
    }
}
