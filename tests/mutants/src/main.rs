//! Mutation testing of the core's rooms in one build: every change is woven into one copy of the sources and chosen by
//! a number when it runs ("mutant schemata": Untch, Offutt and Harrold, "Mutation analysis using mutant schemata",
//! 1993). One build for each mutant, as the usual tools do it, would take days: the core compiles for a minute.
//!
//! Decides the order of things: copy and weave, build, run the tests without a mutant, chase the mutants, say what
//! became of them.

#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        reason = "tests may fail loudly"
    )
)]

mod asked;
mod build;
mod chase;
mod copy;
mod kept;
mod known;
mod outcome;
mod weave;

#[cfg(test)]
mod planted_tests;

use std::collections::{HashMap, HashSet};
use std::fs;
use std::process::ExitCode;
use std::time::{Duration, Instant};

use asked::Asked;
use chase::{Chased, Fate};
use copy::{Copy, ROOMS};
use outcome::Line;

use frond_mutants::Failure;

fn main() -> ExitCode {
    match Asked::read(std::env::args().skip(1)).and_then(|asked| go(&asked)) {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(failure) => {
            eprintln!("mutants: {failure}");
            ExitCode::from(2)
        }
    }
}

fn go(asked: &Asked) -> Result<bool, Failure> {
    let began = Instant::now();
    let seconds = || began.elapsed().as_secs();
    let mut copy = Copy::make(&asked.from, &asked.to.join("copy"))?;
    if asked.list {
        for line in lines(&copy, &asked.rooms, &HashSet::new()) {
            println!("{}\t{}\t{}\t{}", line.number, line.room, line.line, line.name);
        }
        return Ok(true);
    }
    let known = if asked.afresh { HashSet::new() } else { kept::refused(&asked.to) };
    let all = lines(&copy, &ROOMS, &HashSet::new());
    let refused = all.iter().filter(|line| known.contains(&line.name)).map(|line| line.number);
    let built = build::build(&mut copy, &asked.to.join("built"), &asked.tests, refused.collect())?;
    println!("built after {} s", seconds());
    kept::write_refused(&asked.to, &lines(&copy, &ROOMS, &built.refused))?;
    let tests = reaching(asked, &built)?;
    println!("looked at without a mutant after {} s", seconds());
    let mut lines = lines(&copy, &asked.rooms, &built.refused);
    if !asked.only.is_empty() {
        lines.retain(|line| asked.only.contains(&line.number));
    }
    for room in &asked.rooms {
        chase(asked, room, &built, &tests, &mut lines, &seconds)?;
        if asked.only.is_empty() {
            kept::write(&asked.to, room, &lines)?;
        }
    }
    tell(asked, &lines, &built, seconds())
}

/// Every mutant of the rooms, not run yet.
fn lines(copy: &Copy, rooms: &[&'static str], refused: &HashSet<u32>) -> Vec<Line> {
    let fate = |number: u32| {
        if refused.contains(&number) { Fate::NotBuildable } else { Fate::Survived(0) }
    };
    let of = |source: &copy::Source| -> Vec<Line> {
        let line = |mutant: &weave::Mutant| Line {
            number: mutant.number,
            room: source.room,
            name: format!("{} {}", source.path.display(), mutant.name),
            line: mutant.line,
            fate: fate(mutant.number),
        };
        source.mutants().iter().map(line).collect()
    };
    copy.sources.iter().filter(|source| rooms.contains(&source.room)).flat_map(of).collect()
}

/// The tests that reach a mutant at all.
fn reaching(asked: &Asked, built: &build::Built) -> Result<Vec<known::Test>, Failure> {
    let folder = asked.to.join("asked");
    let mut tests =
        known::tests(&built.programs, &asked.named, &folder, asked.jobs, asked.longest)?;
    let all = tests.len();
    tests.retain(|test| !test.reaches.is_empty());
    let together: Duration = tests.iter().map(|test| test.takes).sum();
    println!(
        "{all} tests pass without a mutant; {} of them reach one and take {} s one by one",
        tests.len(),
        together.as_secs()
    );
    if let Some(longest) = asked.longest {
        tests.retain(|test| test.takes <= longest);
        println!("{} of them take no longer than {} s", tests.len(), longest.as_secs());
    }
    Ok(tests)
}

/// Chases the mutants of a room, and writes down what became of them.
fn chase(
    asked: &Asked,
    room: &str,
    built: &build::Built,
    tests: &[known::Test],
    lines: &mut [Line],
    seconds: &(impl Fn() -> u64 + Sync),
) -> Result<(), Failure> {
    // What is tried in between takes nothing from a run that was broken off.
    let name = if asked.only.is_empty() { room } else { "only" };
    let (so_far, mut known) = kept::SoFar::open(&asked.to, name, asked.go_on)?;
    if asked.survivors {
        let noticed = |fate: &Fate| matches!(fate, Fate::Killed(_) | Fate::TimedOut(_));
        known.extend(kept::last(&asked.to, room)?.into_iter().filter(|(_, fate)| noticed(fate)));
    }
    let mut chased = Vec::new();
    for line in lines.iter_mut().filter(|line| line.room == room) {
        match known.get(&line.name) {
            _ if line.fate == Fate::NotBuildable => {}
            Some(fate) => line.fate = fate.clone(),
            None => chased.push(Chased { number: line.number, room: line.room }),
        }
    }
    let by_number: HashMap<u32, &Line> = lines.iter().map(|line| (line.number, line)).collect();
    let fates = chase::all(&chased, &built.programs, tests, asked.jobs, |count, mutant, fate| {
        let Some(line) = by_number.get(&mutant.number) else { return };
        so_far.note(line, fate);
        if matches!(fate, Fate::Survived(_)) || count % 50 == 0 {
            println!(
                "{room} {count}/{} after {} s: {fate}: {}",
                chased.len(),
                seconds(),
                line.name
            );
        }
    })?;
    let fates: HashMap<u32, Fate> = fates.into_iter().collect();
    for line in lines.iter_mut() {
        if let Some(fate) = fates.get(&line.number) {
            line.fate = fate.clone();
        }
    }
    Ok(())
}

fn tell(
    asked: &Asked,
    lines: &[Line],
    built: &build::Built,
    seconds: u64,
) -> Result<bool, Failure> {
    println!("\n{}", outcome::table(lines));
    let survived = || lines.iter().filter(|line| matches!(line.fate, Fate::Survived(_)));
    println!(
        "{} of those that survived are reached by no test; {} of those not buildable were left \
         out with another of their place; {seconds} s in all",
        survived().filter(|line| line.fate == Fate::Survived(0)).count(),
        built.along.len(),
    );
    for line in survived() {
        println!("survived: {} (number {}, line {})", line.name, line.number, line.line);
    }
    if !asked.only.is_empty() {
        return Ok(true);
    }
    let list = fs::read_to_string(asked.from.join("tests/mutants/survivors.md"))?;
    let faults = outcome::faults(lines, &list, &asked.rooms);
    for fault in &faults {
        println!("fault: {fault}");
    }
    Ok(faults.is_empty())
}
