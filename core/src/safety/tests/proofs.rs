//! What is written under "proof" in the documents beside the code has to be there: the names of all tests of the
//! repository, in each language it is written in. Decides what counts as a test's name; the documents decide their
//! own form ([`super::hazards`], [`super::privacy`]).

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// The names in back-quotes.
pub(super) fn cited(text: &str) -> impl Iterator<Item = &str> {
    text.split('`').skip(1).step_by(2)
}

/// The names of all tests in the repository's Rust, Kotlin, Swift, JavaScript and Python files.
pub(super) fn tests_of_the_repository() -> BTreeSet<String> {
    let core = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = BTreeSet::new();
    for folder in ["../core", "../bindings", "../android-shell", "../ios-shell", "../tests"] {
        collect(&core.join(folder), &mut found);
    }
    assert!(found.contains("the_names_of_tests_are_found_in_each_language"), "the walk is broken");
    found
}

fn collect(folder: &Path, found: &mut BTreeSet<String>) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        let built = ["target", "node_modules", ".build"].contains(&name.as_str());
        if path.is_dir() {
            if !built {
                collect(&path, found);
            }
            continue;
        }
        let ending = path.extension().unwrap_or_default().to_string_lossy().into_owned();
        let marks: &[Mark] = match ending.as_str() {
            "rs" => &[Mark::Before("#[test]", "fn ")],
            "kt" => &[Mark::Before("@Test", "fun ")],
            "swift" => &[Mark::Before("@Test", "func "), Mark::Named("@Test(\"")],
            "mjs" => &[Mark::Named("test(\"")],
            // tests/ios: a check by its name, each with faults planted to find.
            "py" => &[Mark::Named("check(\n\""), Mark::Named("check(\"")],
            _ => continue,
        };
        let source = fs::read_to_string(&path).unwrap();
        for mark in marks {
            mark.names(&source, found);
        }
    }
}

/// How a language writes that something is a test.
enum Mark {
    /// A mark, and then the function, on the same line or a later one.
    Before(&'static str, &'static str),
    /// The name in quotes, right behind.
    Named(&'static str),
}

impl Mark {
    fn names(&self, source: &str, found: &mut BTreeSet<String>) {
        match self {
            Self::Before(mark, function) => {
                let mut marked = false;
                for line in source.lines().map(str::trim_start) {
                    let rest = line.strip_prefix(mark);
                    marked |= rest.is_some();
                    let line = rest.unwrap_or(line);
                    let at = if rest.is_some() {
                        line.find(function)
                    } else {
                        line.starts_with(function).then_some(0)
                    };
                    if let Some(at) = at.filter(|_| marked) {
                        // Kotlin writes a name with spaces between back-quotes.
                        let rest = line[at + function.len()..].trim_start_matches('`');
                        let end = rest.find(['(', '<', '`']).unwrap_or(rest.len());
                        found.insert(rest[..end].to_owned());
                        marked = false;
                    }
                }
            }
            Self::Named(mark) => {
                // A name may stand on the line below; how far in does not matter.
                let lines: Vec<&str> = source.lines().map(str::trim_start).collect();
                let source = lines.join("\n");
                for rest in source.split(mark).skip(1) {
                    found.extend(rest.split('"').next().map(str::to_owned));
                }
            }
        }
    }
}

#[test]
fn the_names_of_tests_are_found_in_each_language() {
    let found = |source: &str, mark: Mark| {
        let mut names = BTreeSet::new();
        mark.names(source, &mut names);
        names.into_iter().collect::<Vec<_>>()
    };
    let rust = "#[test]\nfn one() {}\nfn helper() {}\n";
    assert_eq!(found(rust, Mark::Before("#[test]", "fn ")), ["one"]);
    let kotlin = "@Test\nfun `two words`() {}\n@Test fun three() {}\nfun helper() {}\n";
    assert_eq!(found(kotlin, Mark::Before("@Test", "fun ")), ["three", "two words"]);
    let swift =
        "@Test func four() {}\n@Test(arguments: [1])\nfunc five(_ one: Int) {}\nfunc helper() {}\n";
    assert_eq!(found(swift, Mark::Before("@Test", "func ")), ["five", "four"]);
    assert_eq!(
        found("@Test(\"The whole day\", arguments: a)", Mark::Named("@Test(\"")),
        ["The whole day"]
    );
    assert_eq!(found("test(\"six\", async () => {});\n", Mark::Named("test(\"")), ["six"]);
    let python = "check(\n        \"seven\", never, both,\n)\ncheck(name, look)\n";
    assert_eq!(found(python, Mark::Named("check(\n\"")), ["seven"]);
}
