//! Decides which mutants can be built, by asking the compiler until it is content, and where the tests lie then.

use std::collections::HashSet;
use std::ops::Range;
use std::path::Path;

use frond_mutants::compile::{Program, cargo, errors, programs, rendered};
use serde_json::Value;

use crate::Failure;
use crate::copy::Copy;

/// What was built.
pub struct Built {
    /// The programs of tests.
    pub programs: Vec<Program>,
    /// Mutants that the compiler refused.
    pub refused: HashSet<u32>,
    /// Those of them that were not refused themselves: the message spoke of their place as a whole.
    pub along: HashSet<u32>,
}

/// How often the compiler is asked; it finds faults in a few stages, each hidden by the one before.
const MOST_ROUNDS: usize = 12;

/// Builds the tests named and those of the core itself, until no mutant is refused. `known` are those that are known to
/// be refused.
///
/// # Errors
/// Where the compiler refuses something that no mutant explains.
pub fn build(
    copy: &mut Copy,
    target: &Path,
    tests: &[String],
    known: HashSet<u32>,
) -> Result<Built, Failure> {
    let mut built = Built { programs: Vec::new(), refused: known, along: HashSet::new() };
    for round in 1..=MOST_ROUNDS {
        copy.weave(&built.refused)?;
        eprintln!("building, round {round}; {} mutants left out so far", built.refused.len());
        let (succeeded, messages) = both(copy, target, tests)?;
        if succeeded {
            built.programs = programs(&messages);
            return Ok(built);
        }
        let spoken = spoken_of(copy, &messages)?;
        if spoken.is_empty() {
            return Err(format!("the tests do not build:\n{}", rendered(&messages)).into());
        }
        for numbers in spoken {
            if numbers.len() > 1 {
                built.along.extend(numbers.iter().copied());
            }
            built.refused.extend(numbers);
        }
    }
    Err("the compiler still refuses mutants after as many rounds as it has stages".into())
}

/// The core's own tests and those of frond-tests, in one command, so that nothing below them is built twice; the core's
/// alone where no other is named.
fn both(copy: &Copy, target: &Path, tests: &[String]) -> Result<(bool, Vec<Value>), Failure> {
    let mut arguments = vec!["test", "--no-run", "-p", "frond-core", "--lib"];
    if tests.is_empty() {
        arguments.extend(["--features", "sim"]);
    } else {
        arguments.extend(["-p", "frond-tests"]);
        arguments.extend(tests.iter().flat_map(|test| ["--test", test.as_str()]));
    }
    cargo(&copy.root, target, &arguments)
}

/// The mutants that each error speaks of.
fn spoken_of(copy: &Copy, messages: &[Value]) -> Result<Vec<Vec<u32>>, Failure> {
    let mut all = Vec::new();
    for error in errors(messages) {
        let spans = error["spans"].as_array().map(Vec::as_slice).unwrap_or_default();
        let of = |primary: bool| {
            let mut chosen = spans.iter().filter(move |span| span["is_primary"] == primary);
            chosen.find_map(|span| mutants_at(copy, span))
        };
        let Some(numbers) = of(true).or_else(|| of(false)) else {
            let text = error["rendered"].as_str().unwrap_or_default();
            return Err(format!("the compiler refuses what no mutant explains:\n{text}").into());
        };
        all.push(numbers);
    }
    Ok(all)
}

fn mutants_at(copy: &Copy, span: &Value) -> Option<Vec<u32>> {
    let file = span["file_name"].as_str()?;
    let place = |name: &str| span[name].as_u64().and_then(|at| usize::try_from(at).ok());
    let bytes: Range<usize> = place("byte_start")?..place("byte_end")?;
    let source = copy.sources.iter().find(|source| source.path == Path::new(file))?;
    let numbers = source.woven.spoken_of(&bytes);
    (!numbers.is_empty()).then(|| numbers.to_vec())
}
