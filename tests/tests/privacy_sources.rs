//! Nothing in the core, its facade or the Android app prints or logs: read off the sources, since what is never called
//! leaves nothing. (The iPhone app's sources are read by `tests/ios/named.py`; a command line prints by trade.)

use std::fs;
use std::path::{Path, PathBuf};

/// What would print or log, by the ending of the file that it stands in.
const RUST: &[&str] = &[
    "println!",
    "eprintln!",
    "print!",
    "eprint!",
    "dbg!",
    "log::info!",
    "log::warn!",
    "log::error!",
    "tracing::",
    "stdout()",
    "stderr()",
];
const KOTLIN: &[&str] = &[
    "Log.",
    "println(",
    "print(",
    "printStackTrace",
    "System.out",
    "System.err",
    "Timber",
    "Slog.",
    "EventLog",
];

fn below(folder: &Path, ending: &str, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if path.is_dir() {
            if name != "tests" {
                below(&path, ending, found);
            }
        } else if name.ends_with(ending) && name != "tests.rs" && !name.ends_with("_tests.rs") {
            found.push(path);
        }
    }
}

/// Where a source would print: lines of a comment and tests at its end left out.
fn prints(source: &str, never: &[&str]) -> Vec<String> {
    let code = source.split("#[cfg(test)]").next().unwrap_or_default();
    let lines = code
        .lines()
        .map(str::trim)
        .filter(|line| !line.starts_with("//") && !line.starts_with('*'));
    let word = |line: &str, what: &str| {
        line.match_indices(what).any(|(at, _)| {
            !line[..at].ends_with(|before: char| before.is_alphanumeric() || before == '_')
        })
    };
    lines.filter(|line| never.iter().any(|what| word(line, what))).map(str::to_owned).collect()
}

#[test]
fn nothing_is_printed_or_logged() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    for (folder, ending, never, least) in [
        ("core/src", ".rs", RUST, 200),
        ("bindings/mobile/src", ".rs", RUST, 20),
        ("android-shell/src/main/kotlin", ".kt", KOTLIN, 60),
    ] {
        let mut files = Vec::new();
        below(&root.join(folder), ending, &mut files);
        assert!(files.len() >= least, "{folder}: {} files", files.len());
        for file in files {
            let found = prints(&fs::read_to_string(&file).unwrap(), never);
            assert_eq!(found, [""; 0], "{}", file.display());
        }
    }
}

#[test]
fn a_line_that_prints_is_found() {
    for line in [
        "println!(\"{note}\");",
        "    eprintln!();",
        "dbg!(x)",
        "log::info!(\"a\")",
        "let o = stdout();",
    ] {
        assert_eq!(prints(line, RUST).len(), 1, "{line}");
    }
    for line in
        ["Log.d(tag, note)", "println(view)", "fault.printStackTrace()", "System.out.println(1)"]
    {
        assert_eq!(prints(line, KOTLIN).len(), 1, "{line}");
    }
    for line in [
        "// println!(\"a\")",
        "/// dbg!",
        "fn f() {}\n#[cfg(test)]\nmod tests { println!() }",
        "writeln!(f)",
    ] {
        assert_eq!(prints(line, RUST), [""; 0], "{line}");
    }
    assert_eq!(prints("val catalog = Catalog.of(1)\nblueprint(1)", KOTLIN), [""; 0]);
}
