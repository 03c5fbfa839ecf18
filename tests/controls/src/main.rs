//! Shows of each control of the hazard log that a test fails when it is taken away: every removal stands in one copy of
//! the project behind a switch, the copy is built once, and each removal meets the tests that are said to prove the
//! control, first without it and then with it.
//!
//! Decides the order of things and what is told. What is removed stands in `removals/`; how it is put into the copy in
//! `weave.rs`; where the tests lie in `found.rs`. Copying, building and running are those of `tests/mutants`.

#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        reason = "tests may fail loudly"
    )
)]

mod found;
mod removals;
mod shells;
mod tell;
mod weave;

#[cfg(test)]
mod planted_tests;
#[cfg(test)]
mod tests;

use std::collections::{BTreeMap, BTreeSet, HashSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::{Duration, Instant};

use frond_mutants::Failure;
use frond_mutants::compile::{Program, cargo, programs, rendered};
use frond_mutants::process::{Ended, Limits, listed, run};
use frond_mutants::project;

use found::Home;
use removals::Removal;
use shells::Place;

/// What became of a removal: the test that failed, or none.
pub struct Line<'a> {
    removal: &'a Removal,
    failed: Option<&'a str>,
}

/// A test may take so long.
const LONGEST: Duration = Duration::from_secs(900);

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match arguments.as_slice() {
        [from, to, only @ ..] => match go(Path::new(from), Path::new(to), only) {
            Ok(true) => ExitCode::SUCCESS,
            Ok(false) => ExitCode::FAILURE,
            Err(failure) => {
                eprintln!("controls: {failure}");
                ExitCode::from(2)
            }
        },
        _ => {
            eprintln!("controls PROJECT FOLDER [--android | --ios] [H17 ...]");
            ExitCode::from(2)
        }
    }
}

/// What was shown.
pub struct Shown<'a> {
    lines: Vec<Line<'a>>,
    /// Tests that do not pass with every control in place, and so show nothing.
    broken: BTreeSet<&'a str>,
}

fn go(from: &Path, to: &Path, only: &[String]) -> Result<bool, Failure> {
    let began = Instant::now();
    let all = removals::all();
    let shown = show(from, to, &all, only)?;
    let unnoticed = shown.lines.iter().filter(|line| line.failed.is_none()).count();
    for test in &shown.broken {
        println!("fault: {test} does not pass with every control in place");
    }
    println!(
        "{} controls removed, {unnoticed} unnoticed; {} hazards; {} s",
        shown.lines.len(),
        shown.lines.iter().map(|line| line.removal.hazard).collect::<BTreeSet<_>>().len(),
        began.elapsed().as_secs()
    );
    Ok(unnoticed == 0 && shown.broken.is_empty())
}

/// Copies, builds, and lets each removal meet its tests; the table goes into `to`.
fn show<'a>(
    from: &Path,
    to: &Path,
    all: &'a [Removal],
    only: &[String],
) -> Result<Shown<'a>, Failure> {
    let root = to.join("copy");
    fs::create_dir_all(&root)?;
    copy(from, &root, all)?;
    let shell = only.first().and_then(|first| shells::asked(first));
    let only = only.get(usize::from(shell.is_some())..).unwrap_or_default();
    let asked = |one: &Removal| only.is_empty() || only.contains(&format!("H{}", one.hazard));
    let here =
        |one: &Removal| shells::of(one).map(|of| of.option) == shell.map(|shell| shell.option);
    let chosen: Vec<&Removal> = all.iter().filter(|one| asked(one) && here(one)).collect();
    if chosen.is_empty() {
        return Err("nothing in the list is of that kind".into());
    }
    let place = Place { from: from.to_path_buf(), root: root.clone(), to: to.to_path_buf() };
    if let Some(shell) = shell {
        let shown = shells::show(shell, &place, &chosen)?;
        let table = format!("table-{}.md", shell.option.trim_start_matches('-'));
        fs::write(to.join(table), tell::table(&shown.lines))?;
        return Ok(shown);
    }
    let names: BTreeSet<&str> = chosen.iter().flat_map(|one| one.tests.iter().copied()).collect();
    let homes = found::homes(from, &names)?;
    let programs = build(&root, &place.target(), &homes)?;
    let mut places = BTreeMap::new();
    for program in &programs {
        for path in listed(program, &[])? {
            let name = path.rsplit("::").next().unwrap_or(&path).to_owned();
            if names.contains(name.as_str()) {
                places.entry(name).or_insert_with(Vec::new).push((program, path));
            }
        }
    }
    let mut shown = Shown { lines: Vec::new(), broken: BTreeSet::new() };
    let mut tried = BTreeSet::new();
    for removal in chosen {
        let mut failed = None;
        for test in removal.tests {
            let at = places.get(*test).ok_or_else(|| format!("no program has the test {test}"))?;
            if tried.insert(*test) && !passes(at, 0)? {
                shown.broken.insert(test);
            }
            if failed.is_none() && !shown.broken.contains(test) && !passes(at, removal.number())? {
                failed = Some(*test);
            }
        }
        let line = Line { removal, failed };
        println!("{}", tell::line(&line));
        shown.lines.push(line);
    }
    fs::write(to.join("table.md"), tell::table(&shown.lines))?;
    Ok(shown)
}

/// Copies the project and puts every removal into the copy, each behind its switch.
fn copy(from: &Path, root: &Path, all: &[Removal]) -> Result<(), Failure> {
    let files = project::files(from)?;
    let woven = weave::woven(from, all)?;
    for path in &files {
        if let Some(text) = woven.get(path) {
            project::put(root, path, text.as_bytes())?;
        } else if path == Path::new("Cargo.toml") {
            let text = project::quick(&fs::read_to_string(from.join(path))?, false);
            project::put(root, path, text.as_bytes())?;
        } else {
            project::put(root, path, &fs::read(from.join(path))?)?;
            // What is run while the app is built.
            fs::set_permissions(root.join(path), fs::metadata(from.join(path))?.permissions())?;
        }
    }
    let mut kept: HashSet<PathBuf> = files.into_iter().collect();
    for shell in shells::ALL {
        if all.iter().filter_map(shells::of).any(|of| of.option == shell.option) {
            let (name, text) = shell.switch;
            project::put(root, Path::new(name), text.as_bytes())?;
            kept.insert(PathBuf::from(name));
        }
    }
    project::forget(root, Path::new(""), &kept)
}

/// Builds the programs that hold the tests.
fn build(root: &Path, target: &Path, homes: &BTreeSet<Home>) -> Result<Vec<Program>, Failure> {
    let arguments = found::command(homes);
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let (succeeded, messages) = cargo(root, target, &arguments)?;
    if !succeeded {
        return Err(format!("the copy does not build:\n{}", rendered(&messages)).into());
    }
    Ok(programs(&messages))
}

/// Whether a test passes, in every program that has one of its name, with the removal of this number; 0 is none.
fn passes(at: &[(&Program, String)], number: u32) -> Result<bool, Failure> {
    let limits = Limits { computing: LONGEST, waiting: LONGEST };
    for (program, path) in at {
        let environment = [("FROND_MUTANT", number.to_string())];
        let (ended, _) = run(program, std::slice::from_ref(path), &environment, &limits)?;
        if ended != Ended::Passed {
            return Ok(false);
        }
    }
    Ok(true)
}
