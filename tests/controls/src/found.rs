//! Decides which program of tests holds a test, from where its function stands, and how those programs are built.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use frond_mutants::{Failure, project};

/// A program of tests: its package, and its name, or none for that of the library itself.
pub type Home = (&'static str, Option<String>);

/// The packages with tests in Rust, by folder.
const PACKAGES: [(&str, &str); 4] = [
    ("core", "frond-core"),
    ("bindings/desk", "frond"),
    ("bindings/mobile", "frond-mobile"),
    ("tests", "frond-tests"),
];

/// The names of the test functions in a file of Rust.
pub fn names(source: &str) -> impl Iterator<Item = &str> {
    let mut marked = false;
    source.lines().map(str::trim_start).filter_map(move |line| {
        marked |= line.starts_with("#[test]");
        let rest = line.strip_prefix("fn ").filter(|_| marked)?;
        marked = false;
        rest.split(['(', '<']).next()
    })
}

/// The programs that hold the tests of these names.
///
/// # Errors
/// Where a test is nowhere.
pub fn homes(from: &Path, wanted: &BTreeSet<&str>) -> Result<BTreeSet<Home>, Failure> {
    let mut missing: BTreeSet<&str> = wanted.clone();
    let mut homes = BTreeSet::new();
    for path in project::files(from)? {
        let Some(home) = home(&path) else { continue };
        let text = fs::read_to_string(from.join(&path))?;
        for name in names(&text).filter(|name| wanted.contains(name)) {
            missing.remove(name);
            homes.insert(home.clone());
        }
    }
    match missing.first() {
        Some(test) => Err(format!("there is no test {test}").into()),
        None => Ok(homes),
    }
}

/// The program a file of tests belongs to.
fn home(path: &Path) -> Option<Home> {
    if path.extension()? != "rs" {
        return None;
    }
    for (folder, package) in PACKAGES {
        let Ok(within) = path.strip_prefix(folder) else { continue };
        let mut parts = within.iter().filter_map(|part| part.to_str());
        match (parts.next()?, parts.next()) {
            ("src", _) => return Some((package, None)),
            ("tests", Some(part)) => {
                return Some((package, Some(part.trim_end_matches(".rs").to_owned())));
            }
            _ => return None,
        }
    }
    None
}

/// The options of cargo that build these programs: one command for the whole workspace, as `tests/run` has it, so that
/// what has been built for that is not built again with other features.
pub fn command(homes: &BTreeSet<Home>) -> Vec<String> {
    let mut command = ["test", "--no-run", "--workspace"].map(str::to_owned).to_vec();
    // The desk is a program and no library.
    let own = |desk: bool| {
        homes.iter().any(|(package, name)| name.is_none() && (*package == "frond") == desk)
    };
    for (option, wanted) in [("--lib", own(false)), ("--bins", own(true))] {
        command.extend(wanted.then(|| option.to_owned()));
    }
    for name in homes.iter().filter_map(|(_, name)| name.as_ref()).collect::<BTreeSet<_>>() {
        command.extend(["--test".to_owned(), name.clone()]);
    }
    command
}
