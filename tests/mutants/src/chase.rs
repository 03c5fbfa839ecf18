//! Decides in which order a mutant meets the tests, and what became of it.

use std::collections::BTreeMap;
use std::fmt;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

use frond_mutants::compile::Program;
use frond_mutants::process::{Ended, Limits, run};

use crate::Failure;
use crate::known::Test;

/// What became of a mutant.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fate {
    /// The compiler refused it.
    NotBuildable,
    /// A test failed; its program.
    Killed(String),
    /// The tests went on for more than five times as long as without it.
    TimedOut(String),
    /// Every test that reaches it passed; so many.
    Survived(usize),
}

impl fmt::Display for Fate {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Fate::NotBuildable => f.write_str("not buildable"),
            Fate::Killed(by) => write!(f, "killed by {by}"),
            Fate::TimedOut(in_) => write!(f, "timed out in {in_}"),
            Fate::Survived(tests) => write!(f, "survived {tests}"),
        }
    }
}

impl Fate {
    /// Reads what was written.
    pub fn read(text: &str) -> Option<Self> {
        if text == "not buildable" {
            return Some(Fate::NotBuildable);
        }
        let killed = text.strip_prefix("killed by ").map(|by| Fate::Killed(by.to_owned()));
        let timed_out =
            text.strip_prefix("timed out in ").map(|in_| Fate::TimedOut(in_.to_owned()));
        let survived = text.strip_prefix("survived ").and_then(|tests| tests.parse().ok());
        killed.or(timed_out).or(survived.map(Fate::Survived))
    }
}

/// A mutant to be chased.
#[derive(Clone, Copy, Debug)]
pub struct Chased {
    /// Its number.
    pub number: u32,
    /// The room it lies in.
    pub room: &'static str,
}

/// A test elsewhere comes as late as one of the room that takes so many times longer.
const ELSEWHERE: u32 = 3;
/// What the tests of the first process take together; each process after it may take four times as much.
const FIRST: Duration = Duration::from_millis(150);
/// How many times as long as without a mutant.
const TIMES: u32 = 5;
/// What every process may take besides: that of beginning, and what a clock of whole seconds cannot measure.
const SPARE: Duration = Duration::from_secs(3);

/// What a test's name or its program's says of the room it was written for.
fn is_of(room: &str, program: &str, test: &str) -> bool {
    let named = match room {
        "progression" => program.starts_with("rule_"),
        "safety" => program == "rule_safety",
        "practice" => program.starts_with("practising") || program.starts_with("practice"),
        _ => false,
    };
    named || test.starts_with(&format!("{room}::"))
}

/// The tests that reach a mutant, quickest first, in the processes they are run in.
fn processes<'t>(
    mutant: &Chased,
    programs: &[Program],
    tests: &'t [Test],
) -> Vec<(usize, Vec<&'t Test>)> {
    let weight = |test: &Test| {
        let program = programs.get(test.program).map_or("", |program| &program.name);
        if is_of(mutant.room, program, &test.name) { test.takes } else { test.takes * ELSEWHERE }
    };
    let mut reaching: Vec<&Test> =
        tests.iter().filter(|test| test.reaches.contains(&mutant.number)).collect();
    reaching.sort_by_key(|test| weight(test));
    let mut all = Vec::new();
    let mut most = FIRST;
    let mut rest = reaching.as_slice();
    while !rest.is_empty() {
        let mut sum = Duration::ZERO;
        let fits = rest
            .iter()
            .take_while(|test| {
                sum += test.takes;
                sum <= most
            })
            .count()
            .max(1);
        let (now, later) = rest.split_at(fits.min(rest.len()));
        let mut by_program: BTreeMap<usize, Vec<&Test>> = BTreeMap::new();
        for test in now {
            by_program.entry(test.program).or_default().push(test);
        }
        all.extend(by_program);
        rest = later;
        most *= 4;
    }
    all
}

/// Lets every test that reaches a mutant try to notice it.
fn fate(mutant: &Chased, programs: &[Program], tests: &[Test]) -> Result<Fate, Failure> {
    let mut tried = 0;
    for (number, together) in processes(mutant, programs, tests) {
        let Some(program) = programs.get(number) else { continue };
        let without: Duration = together.iter().map(|test| test.takes).sum();
        let computing = without * TIMES + SPARE;
        let limits = Limits { computing, waiting: computing * TIMES + Duration::from_secs(30) };
        let names: Vec<String> = together.iter().map(|test| test.name.clone()).collect();
        let environment = [("FROND_MUTANT", mutant.number.to_string())];
        match run(program, &names, &environment, &limits)?.0 {
            Ended::Failed => return Ok(Fate::Killed(program.name.clone())),
            Ended::TooLong => return Ok(Fate::TimedOut(program.name.clone())),
            Ended::Passed => tried += names.len(),
        }
    }
    Ok(Fate::Survived(tried))
}

/// What becomes of each mutant, in no order; `told` hears of each as it is known.
///
/// # Errors
/// Where a program of tests cannot be run.
pub fn all(
    mutants: &[Chased],
    programs: &[Program],
    tests: &[Test],
    jobs: usize,
    told: impl Fn(usize, &Chased, &Fate) + Sync,
) -> Result<Vec<(u32, Fate)>, Failure> {
    let next = AtomicUsize::new(0);
    let known = Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for _ in 0..jobs {
            scope.spawn(|| {
                while let Some(mutant) = mutants.get(next.fetch_add(1, Ordering::Relaxed)) {
                    let fate = fate(mutant, programs, tests);
                    let Ok(mut known) = known.lock() else { break };
                    if let Ok(fate) = &fate {
                        told(known.len() + 1, mutant, fate);
                    }
                    known.push(fate.map(|fate| (mutant.number, fate)));
                }
            });
        }
    });
    known.into_inner().map_err(|_| "a thread gave up")?.into_iter().collect()
}
