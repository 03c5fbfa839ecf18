//! The invented scenario from end to end.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use serde_json::Value;
use tempfile::TempDir;

use crate::kit::{DEMO_END, DEMO_PASSPHRASE, bytes_of, frond, refused, run, said, write_private};

struct Demo {
    base: TempDir,
    story: String,
}

impl Demo {
    fn make() -> Self {
        let base = tempfile::tempdir().unwrap();
        let out = base.path().join("out");
        let story = said(&run(&["demo", "--out", &out.display().to_string()]));
        Self { base, story }
    }

    fn file(&self, name: &str) -> PathBuf {
        self.base.path().join("out").join(name)
    }

    fn name(&self, name: &str) -> String {
        self.file(name).display().to_string()
    }
}

static DEMO: LazyLock<Demo> = LazyLock::new(Demo::make);

#[test]
fn the_story_is_the_same_at_every_run() {
    assert_eq!(Demo::make().story, DEMO.story);
    insta::assert_snapshot!(DEMO.story);
}

#[test]
fn the_story_goes_through_everything_that_a_plan_has_to_answer() {
    for part in [
        "Plan accepted, revision 1",
        "Plan accepted, revision 2",
        "At your next session you could try: Size 2",
        "At your next session, go back to: Size 2",
        "Nobody has been told. Frond sends nothing.",
        "Trainers are paused.",
        "Spoke with Ida Marlowe (invented)",
        "(nothing was written)",
        "Time off from Friday 3 April 2026 to Monday 6 April 2026",
        "Practise this size again first",
        "Corrected: 15 mm",
        "An earlier entry is left out",
        "For now, this step",
        DEMO_PASSPHRASE,
        "It is not meant to hurt. Never push or force.",
    ] {
        assert!(DEMO.story.contains(part), "{part}");
    }
    let last = DEMO.story.lines().last().unwrap();
    assert_eq!(last, "Licensed practice and local codes decide what happens next.");
}

#[test]
fn no_line_is_wider_than_80_columns() {
    for line in DEMO.story.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
}

#[test]
fn its_files_are_there_and_say_that_all_is_invented() {
    let readme = fs::read_to_string(DEMO.file("README.txt")).unwrap();
    assert!(readme.contains("Everything in this folder is invented"));
    assert!(readme.contains(DEMO_PASSPHRASE));
    for name in ["programme.json", "programme-1.json", "another-rule.json", "entries.jsonl"] {
        assert!(DEMO.file(name).is_file(), "{name}");
        assert!(readme.contains(name), "{name}");
    }
    for (name, number) in [("programme.json", 2), ("programme-1.json", 1)] {
        let text = fs::read_to_string(DEMO.file(name)).unwrap();
        let plan: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(plan["revision"], number);
        let checked: Value =
            serde_json::from_str(&said(&run(&["check", &DEMO.name(name), "--json"]))).unwrap();
        assert_eq!(checked["errors"].as_array().unwrap().len(), 0);
        assert_eq!(checked["warnings"].as_array().unwrap().len(), 0);
    }
}

#[test]
fn the_commands_that_its_readme_names_work() {
    let readme = fs::read_to_string(DEMO.file("README.txt")).unwrap();
    let secret = DEMO.base.path().join("readme-secret");
    write_private(&secret, DEMO_PASSPHRASE);
    let mut tried = 0;
    for line in readme.lines().filter_map(|line| line.strip_prefix("    frond ")) {
        // A copy: looking at a diary long after writes down that the clock was in doubt.
        let copy = copy_of_diary();
        let mut command = frond();
        command.current_dir(DEMO.file(""));
        for word in line.split(' ') {
            if word == "diary" {
                command.arg(copy.path().join("diary"));
                command.arg("--passphrase-file").arg(&secret);
            } else {
                command.arg(word);
            }
        }
        said(&command.output().unwrap());
        tried += 1;
    }
    assert_eq!(tried, 8);
}

fn copy_of_diary() -> TempDir {
    let copy = tempfile::tempdir().unwrap();
    let folder = copy.path().join("diary");
    fs::create_dir(&folder).unwrap();
    for (name, bytes) in bytes_of(&DEMO.file("diary")) {
        let path = folder.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, bytes).unwrap();
    }
    copy
}

/// What a suggestion says and why; what a diary can offer beyond a file of entries is left out.
fn spoken(text: &str) -> Value {
    let mut screen: Value = serde_json::from_str(text).unwrap();
    let fields = screen.as_object_mut().unwrap();
    fields.remove("actions");
    fields.remove("screen");
    screen
}

#[test]
fn the_entries_the_diary_and_the_story_end_with_the_same_suggestion() {
    let entries = DEMO.name("entries.jsonl");
    let from_lines = said(&run(&["suggest", "--entries", &entries, "--now", DEMO_END, "--json"]));
    let (copy, secret) = (copy_of_diary(), DEMO.base.path().join("same-secret"));
    write_private(&secret, DEMO_PASSPHRASE);
    let mut command = frond();
    command.args(["suggest", "--now", DEMO_END, "--json", "--diary"]);
    command.arg(copy.path().join("diary")).arg("--passphrase-file").arg(&secret);
    let from_diary = said(&command.output().unwrap());
    assert_eq!(spoken(&from_lines), spoken(&from_diary));
    assert_eq!(spoken(&from_lines)["outcome"], "step_up");

    let text = said(&run(&["suggest", "--entries", &entries, "--now", DEMO_END]));
    let (story, _) = DEMO.story.split_once("\nTIME ALONE").unwrap();
    assert!(story.trim_end().ends_with(text.trim()), "her side ends with the suggestion");
    let key = DEMO.name("invented-clinic-key.txt");
    let read = said(&run(&["read", &DEMO.name("summary.age"), "--identity-file", &key]));
    assert!(DEMO.story.ends_with(&read), "and the clinician's with the reading");

    // And the last line of a replay says it too.
    let replay: Value =
        serde_json::from_str(&said(&run(&["replay", "--entries", &entries, "--json"]))).unwrap();
    let lines = replay["lines"].as_array().unwrap();
    assert_eq!(lines.len(), fs::read_to_string(&entries).unwrap().lines().count());
    assert_eq!(lines.last().unwrap()["said"]["outcome"], "step_up");

    // The diary gives back the very lines.
    let mut command = frond();
    command.args(["entries", "--export", "--now", DEMO_END, "--diary"]);
    command.arg(copy.path().join("diary")).arg("--passphrase-file").arg(&secret);
    assert_eq!(said(&command.output().unwrap()), fs::read_to_string(&entries).unwrap());
}

#[test]
fn another_rule_stands_beside_the_diarys_own_and_the_same_rule_never_differs() {
    let entries = DEMO.name("entries.jsonl");
    let replay = |rule: &str| -> Value {
        let rule = DEMO.name(rule);
        let args = ["replay", "--entries", &entries, "--rule", &rule, "--json"];
        serde_json::from_str(&said(&run(&args))).unwrap()
    };
    assert_eq!(replay("programme.json")["tried"]["differs"], 0);
    let other = replay("another-rule.json");
    let lines = other["lines"].as_array().unwrap();
    let differs = lines.iter().filter(|line| line["said"] != line["tried"]).count();
    assert!(differs > 0);
    assert_eq!(other["tried"]["differs"], differs);
}

#[test]
fn nothing_can_be_read_in_the_folder_of_the_diary() {
    let words = [
        "Wren",
        "Marlowe",
        "Larkfield",
        "Trainer",
        "trainer",
        "discomfort",
        "session",
        "session",
        "programme",
        "pain_that_stays",
        "happened",
        "kettle",
        "orchard",
        "2026-03",
        "01632",
    ];
    for (name, bytes) in bytes_of(&DEMO.file("diary")) {
        for word in words {
            let found = bytes.windows(word.len()).any(|window| window == word.as_bytes());
            assert!(!found, "{word} in {name}");
        }
    }
}

#[test]
fn a_folder_that_holds_something_is_refused_and_left_alone() {
    let base = tempfile::tempdir().unwrap();
    fs::write(base.path().join("mine.txt"), "mine").unwrap();
    let output = run(&["demo", "--out", &base.path().display().to_string()]);
    assert!(refused(&output, 2).contains("Choose a new or an empty folder"));
    assert_eq!(bytes_of(base.path()), [("mine.txt".to_owned(), b"mine".to_vec())]);
    let missing = Path::new("/nowhere/at/all").display().to_string();
    refused(&run(&["demo", "--out", &missing]), 1);
}
