//! Decides which tests there are, how long each takes and which mutants it reaches, by running each once alone without
//! a mutant.

use std::collections::{BTreeSet, HashSet};
use std::fs;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

use frond_mutants::compile::Program;
use frond_mutants::process::{Ended, Limits, listed, run};

use crate::Failure;

/// A test, as it is without a mutant.
#[derive(Clone, Debug)]
pub struct Test {
    /// Number of its program.
    pub program: usize,
    /// Its name there.
    pub name: String,
    /// How long it takes alone.
    pub takes: Duration,
    /// The mutants whose place it passes.
    pub reaches: BTreeSet<u32>,
}

/// A test may take so long without a mutant: longer, and something is wrong with it.
const LONGEST: Duration = Duration::from_secs(600);

/// While it is written down what is asked for, a test takes longer than it does alone; how many times at most.
const RECORDED: u32 = 10;

/// Runs every test of `programs` once alone; of the core's own only those whose names begin as `begin` says. Where only tests
/// up to `longest` are wanted, one that goes on for much longer is left out, and that is said.
///
/// # Errors
/// Where one fails: what a mutant does cannot be told from it then.
pub fn tests(
    programs: &[Program],
    begin: &[String],
    folder: &Path,
    jobs: usize,
    longest: Option<Duration>,
) -> Result<Vec<Test>, Failure> {
    let limit = longest.map_or(LONGEST, |longest| LONGEST.min(longest * RECORDED));
    let mut named = Vec::new();
    for (number, program) in programs.iter().enumerate() {
        let ignored: HashSet<String> = listed(program, &["--ignored"])?.into_iter().collect();
        let wanted = |name: &String| {
            let all = begin.is_empty() || program.name != "frond_core";
            !ignored.contains(name) && (all || begin.iter().any(|one| name.starts_with(one)))
        };
        let all = listed(program, &[])?.into_iter().filter(wanted);
        named.extend(all.map(|name| (number, name)));
    }
    fs::create_dir_all(folder)?;
    let next = AtomicUsize::new(0);
    let found = Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for _ in 0..jobs {
            scope.spawn(|| {
                while let Some((program, name)) = named.get(next.fetch_add(1, Ordering::Relaxed)) {
                    let Some(of) = programs.get(*program) else { continue };
                    let file = folder.join(format!("{}-{}", of.name, name.replace("::", "-")));
                    let test = alone(of, *program, name, &file, limit);
                    if longest.is_some() && matches!(test, Ok(None)) {
                        println!("left out, too long: {}: {name}", of.name);
                        continue;
                    }
                    let test = test.and_then(|test| test.ok_or_else(|| too_long(of, name)));
                    if let Ok(mut found) = found.lock() {
                        found.push(test);
                    }
                }
            });
        }
    });
    let found = found.into_inner().map_err(|_| "a thread gave up")?;
    let (passed, failed): (Vec<_>, Vec<_>) = found.into_iter().partition(Result::is_ok);
    let faults: Vec<String> =
        failed.into_iter().filter_map(Result::err).map(|f| f.to_string()).collect();
    if !faults.is_empty() {
        return Err(faults.join("\n").into());
    }
    let tests: Vec<Test> = passed.into_iter().flatten().collect();
    if tests.is_empty() {
        return Err("no test was found".into());
    }
    Ok(tests)
}

fn too_long(program: &Program, name: &str) -> Failure {
    format!("{}: {name} does not come to an end without a mutant", program.name).into()
}

/// Runs a test alone, or reads what an earlier run of the same program wrote down of it; `None` where it goes on for longer
/// than `limit`.
fn alone(
    program: &Program,
    number: usize,
    name: &str,
    file: &Path,
    limit: Duration,
) -> Result<Option<Test>, Failure> {
    let test = |takes: u64, numbers: &str| -> Result<Test, Failure> {
        let reaches = numbers.lines().map(str::parse).collect::<Result<_, _>>()?;
        let takes = Duration::from_millis(takes);
        Ok(Test { program: number, name: name.to_owned(), takes, reaches })
    };
    let done = file.with_extension("done");
    let written = |path: &Path| fs::metadata(path).and_then(|it| it.modified());
    if let (Ok(then), Ok(built)) = (written(&done), written(&program.path))
        && then > built
        && let Some((takes, numbers)) = fs::read_to_string(&done)?.split_once('\n')
    {
        return test(takes.parse()?, numbers).map(Some);
    }
    let _ = fs::remove_file(file);
    let environment = [("FROND_MUTANTS_ASKED", file.display().to_string())];
    let limits = Limits { computing: limit, waiting: LONGEST };
    let (ended, takes) = run(program, &[name.to_owned()], &environment, &limits)?;
    if ended == Ended::TooLong {
        return Ok(None);
    }
    if ended != Ended::Passed {
        let fault = format!("{}: {name} does not pass without a mutant: {ended:?}", program.name);
        return Err(fault.into());
    }
    let numbers = if file.exists() { fs::read_to_string(file)? } else { String::new() };
    let millis = u64::try_from(takes.as_millis())?;
    fs::write(&done, format!("{millis}\n{numbers}"))?;
    test(millis, &numbers).map(Some)
}
