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

/// The names of the test functions in a file: a mark, and then the function, on the same line or a later one.
pub fn names<'a>(
    source: &'a str,
    mark: &'a str,
    function: &'a str,
) -> impl Iterator<Item = &'a str> {
    let mut marked = false;
    source.lines().map(str::trim_start).filter_map(move |line| {
        let rest = line.strip_prefix(mark);
        marked |= rest.is_some();
        let name = match rest {
            Some(rest) => rest.split_once(function)?.1,
            None => line.strip_prefix(function).filter(|_| marked)?,
        };
        marked = false;
        // Kotlin writes a name with spaces between back-quotes.
        name.trim_start_matches('`').split(['`', '(', '<']).next()
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
        for name in names(&text, "#[test]", "fn ").filter(|name| wanted.contains(name)) {
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
    // The desk is a library too: its program is three lines.
    let own = homes.iter().any(|(_, name)| name.is_none());
    command.extend(own.then(|| "--lib".to_owned()));
    for name in homes.iter().filter_map(|(_, name)| name.as_ref()).collect::<BTreeSet<_>>() {
        command.extend(["--test".to_owned(), name.clone()]);
    }
    command
}

#[cfg(test)]
mod tests {
    use super::names;

    #[test]
    fn tests_are_found_in_each_language() {
        let found = |source: &'static str, mark, function| -> Vec<&str> {
            names(source, mark, function).collect()
        };
        let rust = "#[test]\n#[ignore]\nfn one() {}\nfn helper() {}\n";
        assert_eq!(found(rust, "#[test]", "fn "), ["one"]);
        let kotlin = "@Test\nfun `two words`() {}\n@Test fun three() {}\nfun helper() {}\n";
        assert_eq!(found(kotlin, "@Test", "fun "), ["two words", "three"]);
        let swift = "@Test func four() {}\n@Test(arguments: [\n1,\n])\nfunc five(_ one: Int) {}\n\
                     @Test(\"Six\", arguments: [1]) func six(one: Int) {}\nfunc helper() {}\n";
        assert_eq!(found(swift, "@Test", "func "), ["four", "five", "six"]);
    }
}
