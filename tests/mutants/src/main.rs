//! Mutation testing of the core's rooms in one build: every change is woven into one copy of the sources and chosen by
//! a number when it runs ("mutant schemata": Untch, Offutt and Harrold, "Mutation analysis using mutant schemata",
//! 1993). One build for each mutant, as the usual tools do it, would take days: the core compiles for a minute.
//!
//! Decides the order of things: copy and weave, build, run the tests without a mutant, chase the mutants, say what
//! became of them.

mod asked;
mod build;
mod chase;
mod copy;
mod known;
mod outcome;
mod process;
mod weave;

#[cfg(test)]
mod planted_tests;

use std::collections::{HashMap, HashSet};
use std::fmt::Write as _;
use std::fs;
use std::path::Path;
use std::process::ExitCode;
use std::time::{Duration, Instant};

use asked::Asked;
use chase::{Chased, Fate};
use copy::Copy;
use outcome::Line;

/// Whatever went wrong, with words for it.
pub type Failure = Box<dyn std::error::Error + Send + Sync>;

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
    let last = if asked.survivors { last(&asked.to)? } else { HashMap::new() };
    let list = asked.to.join("refused");
    let known =
        if asked.afresh { String::new() } else { fs::read_to_string(&list).unwrap_or_default() };
    let known: HashSet<&str> = known.lines().collect();
    let refused = numbers_of(&copy, |name| known.contains(name));
    let built = build::build(&mut copy, &asked.to.join("built"), &asked.tests, refused)?;
    println!("built after {} s", seconds());
    let mut lines = all_lines(&copy, asked, &built.refused);
    write_refused(&list, &copy, &built.refused)?;
    let mut tests = known::tests(&built.programs, &asked.to.join("asked"), asked.jobs)?;
    let all = tests.len();
    tests.retain(|test| !test.reaches.is_empty());
    let together: Duration = tests.iter().map(|test| test.takes).sum();
    println!(
        "{all} tests pass without a mutant; {} of them reach one and take {} s one by one; after {} s",
        tests.len(),
        together.as_secs(),
        seconds()
    );
    if let Some(longest) = asked.longest {
        tests.retain(|test| test.takes <= longest);
        println!("{} of them take no longer than {} s", tests.len(), longest.as_secs());
    }
    let mut chased = Vec::new();
    for line in &mut lines {
        match last.get(&line.name) {
            _ if line.fate == Fate::NotBuildable => {}
            Some(fate @ (Fate::Killed(_) | Fate::TimedOut(_))) => line.fate = fate.clone(),
            _ if !asked.only.is_empty() && !asked.only.contains(&line.number) => {}
            _ => chased.push(Chased { number: line.number, room: line.room }),
        }
    }
    let fates = chase::all(&chased, &built.programs, &tests, asked.jobs, |count, mutant, fate| {
        if matches!(fate, Fate::Survived(_)) || count % 50 == 0 {
            println!("{count} of {} after {} s: {} {fate}", chased.len(), seconds(), mutant.number);
        }
    })?;
    for (number, fate) in fates {
        for line in lines.iter_mut().filter(|line| line.number == number) {
            line.fate = fate.clone();
        }
    }
    if !asked.only.is_empty() {
        lines.retain(|line| asked.only.contains(&line.number));
    }
    tell(asked, &lines, &built, began)
}

/// Every mutant of the rooms asked for, not run yet.
fn all_lines(copy: &Copy, asked: &Asked, refused: &HashSet<u32>) -> Vec<Line> {
    let rooms = copy.sources.iter().filter(|source| asked.rooms.contains(&source.room));
    rooms
        .flat_map(|source| {
            source.mutants().iter().map(move |mutant| Line {
                number: mutant.number,
                room: source.room,
                name: name_of(source, mutant),
                line: mutant.line,
                fate: if refused.contains(&mutant.number) {
                    Fate::NotBuildable
                } else {
                    Fate::Survived(0)
                },
            })
        })
        .collect()
}

/// Keeps what the compiler refused: a build begins with what built last time, and is not done twice.
fn write_refused(list: &Path, copy: &Copy, refused: &HashSet<u32>) -> Result<(), Failure> {
    let mut names = String::new();
    for source in &copy.sources {
        for mutant in source.mutants().iter().filter(|mutant| refused.contains(&mutant.number)) {
            writeln!(names, "{}", name_of(source, mutant))?;
        }
    }
    Ok(fs::write(list, names)?)
}

/// What became of each in the last run, by name.
fn last(folder: &Path) -> Result<HashMap<String, Fate>, Failure> {
    let text = fs::read_to_string(folder.join("result.tsv"))?;
    let rows = text.lines().map(|line| line.split('\t').collect::<Vec<_>>());
    let row = |row: Vec<&str>| {
        let name = row.get(4)?;
        Some(((*name).to_owned(), Fate::read(row.get(3)?)?))
    };
    Ok(rows.filter_map(row).collect())
}

/// The mutants with such names.
fn numbers_of(copy: &Copy, so: impl Fn(&str) -> bool) -> HashSet<u32> {
    let of = |source: &copy::Source| -> Vec<u32> {
        let all = source.mutants().iter().filter(|mutant| so(&name_of(source, mutant)));
        all.map(|mutant| mutant.number).collect()
    };
    copy.sources.iter().flat_map(of).collect()
}

fn name_of(source: &copy::Source, mutant: &weave::Mutant) -> String {
    format!("{} {}", source.path.display(), mutant.name)
}

fn tell(
    asked: &Asked,
    lines: &[Line],
    built: &build::Built,
    began: Instant,
) -> Result<bool, Failure> {
    println!("\n{}", outcome::table(lines));
    let survived = || lines.iter().filter(|line| matches!(line.fate, Fate::Survived(_)));
    println!(
        "{} of those that survived are reached by no test; {} of those not buildable were left \
         out with another of their place; {} s in all",
        survived().filter(|line| line.fate == Fate::Survived(0)).count(),
        built.along.len(),
        began.elapsed().as_secs()
    );
    for line in survived() {
        println!("survived: {} (number {}, line {})", line.name, line.number, line.line);
    }
    if !asked.only.is_empty() {
        return Ok(true);
    }
    let mut text = String::new();
    for line in lines {
        writeln!(
            text,
            "{}\t{}\t{}\t{}\t{}",
            line.number, line.room, line.line, line.fate, line.name
        )?;
    }
    fs::write(asked.to.join("result.tsv"), text)?;
    let list = fs::read_to_string(asked.from.join("tests/mutants/survivors.md"))?;
    let faults = outcome::faults(lines, &list, &asked.rooms);
    for fault in &faults {
        println!("fault: {fault}");
    }
    Ok(faults.is_empty())
}
