//! A small project with planted functions, whose mutants end as they must: through copy, build, tests and chase.

use std::collections::{BTreeMap, HashSet};
use std::fs;
use std::path::Path;
use std::process::Command;

use crate::chase::{self, Chased, Fate};
use crate::copy::Copy;
use crate::{build, known};

const FILES: [(&str, &str); 9] = [
    (
        "Cargo.toml",
        "[workspace]\nresolver = \"3\"\nmembers = [\"core\", \"tests\"]\n[workspace.lints.rust]\nwarnings = \"deny\"\n",
    ),
    (
        "Cargo.lock",
        "version = 4\n[[package]]\nname = \"frond-core\"\nversion = \"0.0.0\"\n\n\
         [[package]]\nname = \"frond-tests\"\nversion = \"0.0.0\"\ndependencies = [\n \"frond-core\",\n]\n",
    ),
    (
        "core/Cargo.toml",
        "[package]\nname = \"frond-core\"\nedition = \"2024\"\n[features]\nsim = []\n[lints]\nworkspace = true\n",
    ),
    ("core/src/lib.rs", "pub mod practice;\npub mod safety;\n"),
    (
        "core/src/safety/mod.rs",
        "#[cfg(test)]\nmod tests;\n\
         pub fn fits(a: u32, b: u32) -> bool {\n    a < b\n}\n\
         pub fn adds(a: u32, b: u32) -> u32 {\n    a + b\n}\n\
         pub fn untold(a: bool) -> bool {\n    !a\n}\n\
         pub struct Made;\n\
         pub fn makes() -> Made {\n    Made\n}\n",
    ),
    (
        "core/src/safety/tests.rs",
        "use super::*;\n\
         #[test]\nfn fitting() {\n    assert!(fits(1, 2) && !fits(2, 2) && !fits(3, 2));\n}\n\
         #[test]\nfn adding() {\n    assert_eq!(adds(2, 2), 4);\n    let _ = makes();\n}\n",
    ),
    (
        "core/src/practice/mod.rs",
        "pub fn spins(mut n: u8) -> u8 {\n    while n != 0 {\n        n -= 1;\n    }\n    n\n}\n",
    ),
    (
        "tests/Cargo.toml",
        "[package]\nname = \"frond-tests\"\nedition = \"2024\"\n[dependencies]\nfrond-core = { path = \"../core\" }\n",
    ),
    (
        "tests/tests/practising.rs",
        "#[test]\nfn spinning() {\n    assert_eq!(frond_core::practice::spins(3), 0);\n}\n",
    ),
];

fn plant(root: &Path) {
    for (name, text) in FILES.into_iter().chain([("tests/src/lib.rs", "")]) {
        let path = root.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
    assert!(
        Command::new("git").args(["init", "--quiet"]).current_dir(root).status().unwrap().success()
    );
}

/// What became of each mutant by its name.
fn fates(from: &Path, to: &Path) -> BTreeMap<String, Fate> {
    let mut copy = Copy::make(from, &to.join("copy")).unwrap();
    let built =
        build::build(&mut copy, &to.join("built"), &["practising".to_owned()], HashSet::new())
            .unwrap();
    let tests = known::tests(&built.programs, &[], &to.join("asked"), 1, None).unwrap();
    assert_eq!(tests.len(), 3);
    let mut names = BTreeMap::new();
    let mut chased = Vec::new();
    for source in &copy.sources {
        for mutant in source.mutants() {
            names.insert(mutant.number, mutant.name.clone());
            if !built.refused.contains(&mutant.number) {
                chased.push(Chased { number: mutant.number, room: source.room });
            }
        }
    }
    let all = chase::all(&chased, &built.programs, &tests, 2, |_, _, _| {}).unwrap();
    let refused = built.refused.iter().map(|number| (*number, Fate::NotBuildable));
    all.into_iter().chain(refused).map(|(number, fate)| (names[&number].clone(), fate)).collect()
}

#[test]
fn planted_mutants_end_as_they_must() {
    let folder = tempfile::tempdir().unwrap();
    let (from, to) = (folder.path().join("from"), folder.path().join("to"));
    plant(&from);
    let by_core = || Fate::Killed("frond_core".to_owned());
    let by_practising = || Fate::Killed("practising".to_owned());
    let expected = [
        ("fits: body => return true;", by_core()),
        ("fits: body => return false;", by_core()),
        ("fits: a < b => a <= b", by_core()),
        ("fits: a < b => a >= b", by_core()),
        ("adds: body => return 0;", by_core()),
        ("adds: body => return 1;", by_core()),
        ("adds: a + b => a - b", by_core()),
        // Two and two are four either way: the test is too weak.
        ("adds: a + b => a * b", Fate::Survived(1)),
        ("untold: body => return true;", Fate::Survived(0)),
        ("untold: body => return false;", Fate::Survived(0)),
        ("untold: !a => a", Fate::Survived(0)),
        ("makes: body => return ::std::default::Default::default();", Fate::NotBuildable),
        ("spins: body => return 0;", Fate::Survived(1)),
        ("spins: body => return 1;", by_practising()),
        ("spins: n != 0 => n == 0", by_practising()),
        ("spins: n -= 1 => n += 1", by_practising()),
        ("spins: n -= 1 => n /= 1", Fate::TimedOut("practising".to_owned())),
    ];
    let expected: BTreeMap<String, Fate> =
        expected.into_iter().map(|(name, fate)| (name.to_owned(), fate)).collect();
    assert_eq!(fates(&from, &to), expected);
}

#[test]
fn a_test_that_fails_without_a_mutant_stops_everything() {
    let folder = tempfile::tempdir().unwrap();
    let (from, to) = (folder.path().join("from"), folder.path().join("to"));
    plant(&from);
    fs::write(
        from.join("core/src/safety/tests.rs"),
        "#[test]\nfn wrong() {\n    assert!(false);\n}\n",
    )
    .unwrap();
    let mut copy = Copy::make(&from, &to.join("copy")).unwrap();
    let built = build::build(&mut copy, &to.join("built"), &[], HashSet::new()).unwrap();
    let failure = known::tests(&built.programs, &[], &to.join("asked"), 1, None).unwrap_err();
    assert!(failure.to_string().contains("does not pass without a mutant"), "{failure}");
}
