//! The diary as a whole, by commands alone: keys, copies, restore, erase, a summary handed over and read.

use std::fs;
use std::path::Path;

use crate::kit::{Diary, bytes_of, frond, refused, said, write_private};

fn with_plan() -> Diary {
    let diary = Diary::place();
    let programme = diary.programme();
    diary.say("02T18:20", &["start", "--programme", &programme, "--yes", "--although", "unsigned"]);
    diary.say("02T18:30", &["step", "--confirm"]);
    diary
}

/// The twelve words as printed.
fn words(printed: &str) -> String {
    let words: Vec<&str> = printed
        .lines()
        .filter_map(|line| {
            let (number, word) = line.trim().split_once(' ')?;
            number.parse::<u8>().ok().map(|_| word.trim())
        })
        .collect();
    assert_eq!(words.len(), 12, "{printed}");
    words.join(" ")
}

fn file(diary: &Diary, name: &str, text: &str) -> String {
    let path = diary.base.path().join(name);
    write_private(&path, &format!("{text}\n"));
    path.display().to_string()
}

#[test]
fn a_forgotten_passphrase_and_a_lost_machine() {
    let diary = with_plan();
    let paper = words(&diary.say("02T19:00", &["phrase", "--yes"]));
    let paper = file(&diary, "paper", &paper);
    let copy = diary.base.path().join("away.age").display().to_string();
    diary.say("02T19:05", &["copy", &copy]);
    let keeping = diary.say("02T19:06", &["keeping"]);
    assert!(keeping.contains("The last one was made on Monday 2 March 2026"), "{keeping}");
    assert!(refused(&diary.run("02T19:07", &["copy", &copy]), 2).contains("there already"));

    // Forgotten: the words set a new one, and the old one opens nothing.
    let new = file(&diary, "new", "quite another passphrase");
    let folder = diary.folder.display().to_string();
    let output = frond()
        .args(["passphrase", "--diary", &folder, "--phrase-file", &paper])
        .args(["--new-passphrase-file", &new])
        .output()
        .unwrap();
    assert!(said(&output).contains("The old one opens nothing here"));
    let old = refused(&diary.run("02T19:10", &["today"]), 2);
    assert!(old.contains("frond passphrase --phrase"), "{old}");
    assert!(!old.contains("quite another"));

    // Lost: an empty machine, the copy and the paper.
    let elsewhere = diary.base.path().join("elsewhere").display().to_string();
    let restore = |more: &[&str]| {
        frond()
            .args(["restore", &copy, "--diary", &elsewhere, "--phrase-file", &paper])
            .args(["--new-passphrase-file", &new])
            .args(more)
            .output()
            .unwrap()
    };
    assert!(said(&restore(&["--look"])).contains("It has 2 entries"));
    assert!(!Path::new(&elsewhere).exists());
    assert!(said(&restore(&["--yes"])).contains("Restored."));
    let today =
        frond().args(["today", "--diary", &elsewhere, "--passphrase-file", &new]).output().unwrap();
    assert!(said(&today).contains("is this what you use now?"));
    // Other words are told apart from words that are none.
    let wrong = file(
        &diary,
        "wrong",
        "legal winner thank year wave sausage worth useful legal winner thank yellow",
    );
    let slip = file(
        &diary,
        "slip",
        "legal winner thank year wave sausage worth useful legal winner thank legal",
    );
    for (paper, says) in [(&wrong, "another recovery phrase"), (&slip, "do not belong together")] {
        let output = frond()
            .args(["restore", &copy, "--diary", &elsewhere, "--phrase-file", paper, "--look"])
            .output()
            .unwrap();
        assert!(refused(&output, 2).contains(says));
    }
}

#[test]
fn erasing_by_command() {
    let diary = with_plan();
    diary.say("03T20:00", &["tell", "question", "an invented question"]);
    let before = bytes_of(&diary.folder);
    let asks = diary.run("04T08:00", &["erase", "--from", "2026-03-03", "--to", "2026-03-03"]);
    assert_eq!(asks.status.code(), Some(2), "it asks, and there is nobody to answer");
    assert_eq!(bytes_of(&diary.folder), before);
    let erased =
        diary.say("04T08:00", &["erase", "--from", "2026-03-03", "--to", "2026-03-03", "--yes"]);
    assert!(erased.contains("One entry is erased") && erased.ends_with("Erased.\n"), "{erased}");
    let entries = diary.say("04T08:01", &["entries"]);
    assert!(!entries.contains("invented question") && entries.contains("Erased"), "{entries}");
    let again = ["erase", "--from", "2026-03-03", "--to", "2026-03-03", "--yes"];
    assert!(refused(&diary.run("04T08:02", &again), 2).contains("nothing there"));
    diary.say("04T08:03", &["erase", "--everything", "--yes"]);
    assert_eq!(bytes_of(&diary.folder), [("lock".to_owned(), Vec::new())]);
    assert!(refused(&diary.run("04T08:04", &["today"]), 2).contains("no diary in this folder"));
    diary.say("04T08:05", &["start"]);
}

#[test]
fn a_backup_is_made_looked_into_and_restored() {
    let diary = with_plan();
    diary.say("03T20:00", &["tell", "question", "an invented question"]);
    diary.say("03T20:01", &["backup"]);
    diary.say("03T20:02", &["tell", "question", "another invented question"]);
    let look = diary.say("03T20:03", &["restore", "--look"]);
    assert!(look.contains("The diary here has one entry more."), "{look}");
    assert!(diary.say("03T20:04", &["restore", "--yes"]).contains("Restored."));
    let entries = diary.say("03T20:05", &["entries"]);
    assert!(entries.contains("an invented question") && !entries.contains("another"), "{entries}");
    let none = file(&diary, "none", "no copy of anything");
    assert!(
        refused(&diary.run("03T20:06", &["restore", &none, "--look"]), 2).contains("not a copy")
    );
}

#[test]
fn a_summary_is_looked_at_sealed_and_read() {
    let diary = with_plan();
    diary.say("03T20:00", &["tell", "question", "an invented question"]);
    let out = diary.base.path().join("out");
    fs::create_dir(&out).unwrap();
    let out_name = out.display().to_string();
    let secret = file(&diary, "told", "told on the phone");
    let look = ["summary", "--out", &out_name, "--open", "--look"];
    assert!(diary.say("04T08:00", &look).contains("Anyone"));
    assert!(bytes_of(&out).is_empty());
    let sealed =
        ["summary", "--out", &out_name, "--to-passphrase-file", &secret, "--time-alone", "--yes"];
    diary.say("04T08:01", &sealed);
    assert!(refused(&diary.run("04T08:02", &sealed), 2).contains("there already"));
    let names: Vec<String> = bytes_of(&out).into_iter().map(|(name, _)| name).collect();
    assert_eq!(names, ["record-2026-03-04.age"]);
    let record = out.join(&names[0]).display().to_string();
    let read = frond().args(["read", &record, "--passphrase-file", &secret]).output().unwrap();
    let read = said(&read);
    assert!(read.contains("an invented question") && read.contains("time alone"), "{read}");
    // The table comes with the open form only, and time alone never.
    diary.say("04T08:03", &["summary", "--out", &out_name, "--open", "--no-questions", "--yes"]);
    let open = fs::read_to_string(out.join("record-2026-03-04.json")).unwrap();
    assert!(!open.contains("invented question") && !open.contains("time_alone"));
    assert!(out.join("record-2026-03-04.csv").exists());
    let nobody = ["summary", "--out", &out_name, "--to-clinician", "--yes"];
    let answer = diary.run("04T08:04", &nobody);
    assert_eq!(answer.status.code(), Some(2));
}

#[test]
fn a_folder_put_back_is_noticed() {
    let diary = with_plan();
    let state = diary.base.path().join("state");
    let run = |now: &str, args: &[&str]| {
        said(&diary.command(now, args).env("FROND_STATE", &state).output().unwrap())
    };
    run("03T20:00", &["tell", "question", "an invented question"]);
    let older = bytes_of(&diary.folder);
    run("04T20:00", &["tell", "question", "another"]);
    run("05T20:00", &["tell", "question", "a third"]);
    fs::remove_dir_all(&diary.folder).unwrap();
    for (name, bytes) in older {
        let path = diary.folder.join(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, bytes).unwrap();
    }
    let today = run("06T08:00", &["today"]);
    assert!(today.contains("This diary is an older copy"), "{today}");
    let later = run("06T08:01", &["today"]);
    assert!(!later.contains("older copy") && later.contains("may be missing"), "{later}");
}
