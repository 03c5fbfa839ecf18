//! Mutation testing of the core's rooms in one build: every change is woven into one copy of the sources and chosen by
//! a number when it runs ("mutant schemata": Untch, Offutt and Harrold, "Mutation analysis using mutant schemata",
//! 1993). One build for each mutant, as the usual tools do it, would take days: the core compiles for a minute.
//!
//! Decides the order of things: copy and weave, build, run the tests without a mutant, chase the mutants, say what
//! became of them.

mod build;
mod chase;
mod copy;
mod known;
mod outcome;
mod process;
mod weave;

#[cfg(test)]
mod planted_tests;

use std::collections::HashSet;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::Instant;

use chase::{Chased, Fate};
use copy::{Copy, ROOMS};
use outcome::Line;

/// Whatever went wrong, with words for it.
pub type Failure = Box<dyn std::error::Error + Send + Sync>;

/// What is asked for.
struct Asked {
    /// The project.
    from: PathBuf,
    /// Where the copy, the build and the result lie.
    to: PathBuf,
    rooms: Vec<&'static str>,
    /// Only what survived in the last run.
    survivors: bool,
    /// Only these numbers.
    only: HashSet<u32>,
    jobs: usize,
    tests: Vec<String>,
}

fn asked() -> Result<Asked, Failure> {
    let mut given = std::env::args().skip(1);
    let mut next = |what: &str| given.next().ok_or_else(|| format!("{what} is missing"));
    let (from, to) =
        (PathBuf::from(next("the project's folder")?), PathBuf::from(next("a folder")?));
    let mut asked = Asked {
        from,
        to,
        rooms: Vec::new(),
        survivors: false,
        only: HashSet::new(),
        jobs: std::thread::available_parallelism().map_or(1, usize::from),
        tests: Vec::new(),
    };
    while let Ok(word) = next("") {
        match word.as_str() {
            "--survivors" => asked.survivors = true,
            "--jobs" => asked.jobs = next("how many at a time")?.parse()?,
            "--test" => asked.tests.push(next("a test's name")?),
            "--only" => {
                for number in next("numbers")?.split(',') {
                    asked.only.insert(number.parse()?);
                }
            }
            "--room" => {
                let name = next("a room")?;
                let room = ROOMS.into_iter().find(|room| *room == name);
                asked
                    .rooms
                    .push(room.ok_or_else(|| format!("{name} is no room that is looked at"))?);
            }
            other => return Err(format!("{other} is not understood").into()),
        }
    }
    if asked.rooms.is_empty() {
        asked.rooms.extend(ROOMS);
    }
    Ok(asked)
}

fn main() -> ExitCode {
    match asked().and_then(|asked| go(&asked)) {
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
    let mut copy = Copy::make(&asked.from, &asked.to.join("copy"))?;
    let (refused, survived) =
        if asked.survivors { last(&copy, &asked.to)? } else { Default::default() };
    let built = build::build(&mut copy, &asked.to.join("built"), &asked.tests, refused)?;
    println!("built after {} s", began.elapsed().as_secs());
    let tests = known::tests(&built.programs, &asked.to.join("asked"), asked.jobs)?;
    let reaching = tests.iter().filter(|test| !test.reaches.is_empty()).count();
    let millis: u128 =
        tests.iter().filter(|test| !test.reaches.is_empty()).map(|t| t.takes.as_millis()).sum();
    println!(
        "{} tests pass without a mutant, {reaching} reach one, those in {} s one by one; after {} s",
        tests.len(),
        millis / 1000,
        began.elapsed().as_secs()
    );
    let mut lines = all_lines(&copy, asked, &built.refused);
    if asked.survivors {
        lines.retain(|line| survived.contains(&line.name));
    }
    if !asked.only.is_empty() {
        lines.retain(|line| asked.only.contains(&line.number));
    }
    let chased: Vec<Chased> = lines
        .iter()
        .filter(|line| line.fate != Fate::NotBuildable)
        .map(|line| Chased { number: line.number, room: line.room })
        .collect();
    let fates = chase::all(&chased, &built.programs, &tests, asked.jobs, |count, mutant, fate| {
        if matches!(fate, Fate::Survived(_)) || count % 50 == 0 {
            println!(
                "{count} of {} after {} s: {} {fate:?}",
                chased.len(),
                began.elapsed().as_secs(),
                mutant.number
            );
        }
    })?;
    for (number, fate) in fates {
        for line in lines.iter_mut().filter(|line| line.number == number) {
            line.fate = fate.clone();
        }
    }
    tell(asked, &lines, &built, !asked.survivors && asked.only.is_empty(), began)
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

/// What the last run says: the numbers that the compiler refused, and the names of what survived.
fn last(copy: &Copy, folder: &Path) -> Result<(HashSet<u32>, HashSet<String>), Failure> {
    let text = fs::read_to_string(folder.join("result.tsv"))?;
    let named = |fate: &str| -> HashSet<String> {
        let rows = text.lines().map(|line| line.split('\t').collect::<Vec<_>>());
        let of = rows.filter(|row| row.get(3).is_some_and(|said| said.starts_with(fate)));
        of.filter_map(|row| row.get(4).map(|name| (*name).to_owned())).collect()
    };
    let refused = named("NotBuildable");
    let numbers = copy.sources.iter().flat_map(|source| {
        let of = source.mutants().iter().filter(|one| refused.contains(&name_of(source, one)));
        of.map(|mutant| mutant.number)
    });
    Ok((numbers.collect(), named("Survived")))
}

fn name_of(source: &copy::Source, mutant: &weave::Mutant) -> String {
    format!("{} {}", source.path.display(), mutant.name)
}

fn tell(
    asked: &Asked,
    lines: &[Line],
    built: &build::Built,
    whole: bool,
    began: Instant,
) -> Result<bool, Failure> {
    let mut text = String::new();
    for line in lines {
        writeln!(
            text,
            "{}\t{}\t{}\t{:?}\t{}",
            line.number, line.room, line.line, line.fate, line.name
        )?;
    }
    fs::write(asked.to.join(if whole { "result.tsv" } else { "again.tsv" }), text)?;
    let unreached = lines.iter().filter(|line| line.fate == Fate::Survived(0)).count();
    println!("\n{}", outcome::table(lines));
    println!(
        "{unreached} of those that survived are reached by no test; {} of those not buildable were left out with another \
         of their place; {} s in all",
        built.along.len(),
        began.elapsed().as_secs()
    );
    for line in lines.iter().filter(|line| matches!(line.fate, Fate::Survived(_))) {
        println!(
            "survived: {} (number {}, line {}, {:?})",
            line.name, line.number, line.line, line.fate
        );
    }
    if !whole {
        return Ok(true);
    }
    let list = fs::read_to_string(asked.from.join("tests/mutants/survivors.md"))?;
    let faults = outcome::faults(lines, &list, &asked.rooms);
    for fault in &faults {
        println!("fault: {fault}");
    }
    Ok(faults.is_empty())
}
