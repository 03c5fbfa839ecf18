//! A small project with two controls, one held by a test and one not: from the copy to the table.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::Command;

use crate::removals::Removal;
use crate::show;

const FILES: [(&str, &str); 5] = [
    (
        "Cargo.toml",
        "[workspace]\nresolver = \"3\"\nmembers = [\"core\"]\n[workspace.lints.rust]\nwarnings = \"deny\"\n",
    ),
    ("Cargo.lock", "version = 4\n[[package]]\nname = \"frond-core\"\nversion = \"0.0.0\"\n"),
    (
        "core/Cargo.toml",
        "[package]\nname = \"frond-core\"\nedition = \"2024\"\n[features]\nsim = []\n[lints]\nworkspace = true\n",
    ),
    ("core/src/lib.rs", "pub mod safety;\n"),
    (
        "core/src/safety.rs",
        "pub fn allowed(a: u32) -> bool {\n    a < 3 && a != 1\n}\n\
         #[cfg(test)]\nmod tests {\n    #[test]\n    fn below_three() {\n        \
         assert!(super::allowed(2) && !super::allowed(3));\n    }\n    \
         #[test]\n    fn always_failing() {\n        assert!(super::allowed(7));\n    }\n}\n",
    ),
];

const fn planted(
    control: &'static str,
    from: &'static str,
    test: &'static [&'static str],
) -> Removal {
    Removal { hazard: 1, control, file: "core/src/safety.rs", from, to: "true", tests: test }
}

#[test]
fn a_control_that_a_test_holds_one_that_none_holds_and_a_test_that_always_fails() {
    let folder = tempfile::tempdir().unwrap();
    let from = folder.path().join("project");
    for (name, text) in FILES {
        let path = from.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
    let git = Command::new("git").arg("init").arg("-q").current_dir(&from).status().unwrap();
    assert!(git.success());
    let to = folder.path().join("to");
    let all = [
        planted("held", "a < 3", &["below_three"]),
        planted("not held", "a != 1", &["below_three"]),
        planted(
            "by a test that always fails",
            "pub fn allowed(a: u32) -> bool {\n    a < 3 && a != 1\n}",
            &["always_failing"],
        ),
    ];
    let whole = Removal { to: "pub fn allowed(_: u32) -> bool { REMOVED }", ..all[2] };
    let shown = show(&from, &to, &all[..2], &[]).unwrap();
    let failed: Vec<Option<&str>> = shown.lines.iter().map(|line| line.failed).collect();
    assert_eq!(failed, [Some("below_three"), None]);
    assert!(shown.broken.is_empty());
    let table = fs::read_to_string(to.join("table.md")).unwrap();
    assert!(table.contains("| H1 | held | `below_three` |"), "{table}");
    assert!(table.contains("| H1 | not held | **none** |"), "{table}");
    let always = [whole];
    let shown = show(&from, &to, &always, &[]).unwrap();
    assert_eq!(shown.broken, BTreeSet::from(["always_failing"]));
    assert_eq!(shown.lines[0].failed, None);
    assert!(Path::new(&to).join("copy/core/src/safety.rs").is_file());
}
