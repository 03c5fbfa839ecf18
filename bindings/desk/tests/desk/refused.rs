//! What is refused, how it is said, and that nothing was written.

use std::fs;
use std::process::Stdio;

use frond_core::companion::{Companion, Ports};
use frond_core::moment::Moment;
use frond_core::ports::{NoMarks, OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch};

use crate::kit::{Diary, frond, mode, refused, run, write_private};

#[test]
fn bad_input_writes_nothing() {
    let diary = Diary::place();
    let programme = diary.programme();
    let broken = diary.base.path().join("broken.json");
    fs::write(
        &broken,
        fs::read_to_string(&programme).unwrap().replace("\"review_by\"", "\"reviewed\""),
    )
    .unwrap();
    let broken = broken.display().to_string();

    // Before there is a diary: no folder is made.
    refused(
        &diary
            .run("02T18:00", &["start", "--programme", &broken, "--yes", "--although", "unsigned"]),
        2,
    );
    for (given, missing) in
        [(vec!["--although", "unsigned"], "--yes"), (vec!["--yes"], "--although unsigned")]
    {
        let all = [vec!["start", "--programme", &programme], given].concat();
        assert!(refused(&diary.run("02T18:00", &all), 2).contains(missing));
    }
    assert!(refused(&diary.run("02T18:00", &["today"]), 2).contains("no diary in this folder"));
    assert!(!diary.folder.exists());

    crate::kit::said(
        &diary.run(
            "02T18:20",
            &["start", "--programme", &programme, "--yes", "--although", "unsigned"],
        ),
    );
    let before = diary.bytes();
    let trainer = ["log", "--practice", "trainer", "--position", "on-back"];
    let log = |rest: &[&'static str]| [&trainer[..], rest].concat();
    for (args, says) in [
        (vec!["start"], "holds something already"),
        (
            vec!["accept", &broken, "--yes", "--although", "unsigned"],
            "reviewed is not a line known here",
        ),
        (
            vec!["accept", &programme, "--yes", "--although", "unsigned"],
            "You use this plan already",
        ),
        (log(&["--ended", "finished", "--minutes", "5", "--peak", "2"]), "which size"),
        (log(&["--ended", "stopped", "--minutes", "5", "--size-mm", "12"]), "--reason"),
        (
            log(&["--ended", "finished", "--minutes", "5", "--size-mm", "12", "--peak", "11"]),
            "0 to 10",
        ),
        (log(&["--ended", "finished", "--minutes", "5", "--size-mm", "1.2.3"]), "millimetres"),
        (
            log(&[
                "--ended",
                "finished",
                "--minutes",
                "5",
                "--size-mm",
                "12",
                "--happened",
                "2026-03-09T10:00",
            ]),
            "future",
        ),
        (vec!["log"], "no terminal"),
        (vec!["step", "--to", "nowhere"], "no such step"),
        (vec!["sign", "--sign", "a_caution"], "no such caution"),
        (
            vec!["spoke", "--with", "Ida", "--sign", "00000000000000000000000000000001:fever"],
            "not open",
        ),
        (vec!["entries", "--strike", "ffffffffffff"], "No entry"),
        (vec!["suggest", "--try"], "nothing to choose"),
        (vec!["tell", "time-off", "--from", "2026-03-05", "--to", "2026-03-04"], "last day"),
        (vec!["tell", "cautions", "--no", "bleeding"], "have no answer yet"),
        (vec!["tell", "cautions", "--anything-new", "something"], "--sign"),
        (vec!["tell", "goal", "--goal", "x", "--reached", "3"], "-2 to 2"),
    ] {
        let said = refused(&diary.run("02T18:40", &args), 2);
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.contains(says), "{args:?}: {said}");
    }
    assert!(before == diary.bytes(), "every file is as it was");
}

#[test]
fn bad_files_are_refused_with_their_place() {
    let base = tempfile::tempdir().unwrap();
    let file = |name: &str, text: &str| {
        let path = base.path().join(name);
        fs::write(&path, text).unwrap();
        path.display().to_string()
    };
    let lines = file(
        "lines.jsonl",
        "{\"happened\":\"2026-03-02T18:00:00+00:00\",\"what\":{\"kind\":\"x\"}}\n",
    );
    let now = "2026-03-02T18:00:00+00:00";
    let output = run(&["suggest", "--entries", &lines, "--now", now]);
    assert!(refused(&output, 2).contains("Line 1: what.kind"));
    assert!(refused(&run(&["replay", "--entries", "/nowhere"]), 2).contains("cannot be read"));
    let rule = file("rule.json", "{\"step_up\":{\"all_of\":[{\"criterion\":\"steps_back\"}]}}");
    let empty = file("empty.jsonl", "");
    refused(&run(&["replay", "--entries", &empty, "--rule", &rule]), 2);
    assert!(crate::kit::said(&run(&["replay", "--entries", &empty])).contains("no entry"));
    assert!(refused(&run(&["check", &lines]), 2).contains("frond_programme"));
    assert_eq!(run(&["check", &lines, "--json"]).status.code(), Some(2));
    // Usage.
    assert_eq!(run(&["suggest", "--entries", &lines]).status.code(), Some(2));
    assert_eq!(run(&["nonsense"]).status.code(), Some(2));
}

#[test]
fn the_passphrase_has_to_be_right_and_its_file_private() {
    let diary = Diary::place();
    crate::kit::said(&diary.run("02T18:20", &["start"]));
    let open = |args: &[&str], typed: &str| {
        let mut command = frond();
        command.args(["today", "--diary"]).arg(&diary.folder).args(args);
        command.write_stdin(typed.to_owned()).output().unwrap()
    };
    assert!(
        refused(&open(&["--passphrase-stdin"], "other words\n"), 2)
            .contains("Check what you typed")
    );
    assert!(refused(&open(&["--passphrase-stdin"], "\n"), 2).contains("empty"));
    assert!(refused(&open(&[], ""), 2).contains("no terminal"));
    let secret = diary.base.path().join("open-secret");
    write_private(&secret, "some invented words\n");
    let name = secret.display().to_string();
    crate::kit::said(&open(&["--passphrase-file", &name], ""));
    for readable in [0o640, 0o604, 0o644] {
        mode(&secret, readable);
        let said = refused(&open(&["--passphrase-file", &name], ""), 2);
        assert!(said.contains("chmod 600"));
        assert!(!said.contains("invented words"));
    }
    // Never on the command line.
    assert_eq!(open(&["--passphrase", "some invented words"], "").status.code(), Some(2));
}

#[test]
fn a_diary_that_is_open_elsewhere_is_left_alone() {
    let diary = Diary::place();
    crate::kit::said(&diary.run("02T18:20", &["start"]));
    let ports = Ports {
        disk: std::sync::Arc::new(RealDisk),
        random: std::sync::Arc::new(OsRandom),
        marks: std::sync::Arc::new(NoMarks),
    };
    let words = Passphrase::new("some invented words".to_owned()).unwrap();
    let keeper = PassphraseKeeper::new(words, Stretch::everyday());
    let moment = Moment::at("2026-03-02T18:30:00+00:00".parse().unwrap());
    let held =
        Companion::open(&ports, &diary.folder, &keeper, "en", &moment).map_err(|_| ()).unwrap();
    let output = diary.run("02T18:31", &["today"]);
    assert!(refused(&output, 1).contains("open somewhere else"));
    drop(held);
    crate::kit::said(&diary.run("02T18:32", &["today"]));
}

#[test]
fn a_reader_that_goes_away_is_no_trouble() {
    let out = tempfile::tempdir().unwrap();
    let folder = out.path().join("demo");
    let mut child = std::process::Command::new(assert_cmd::cargo::cargo_bin!("frond"))
        .args(["demo", "--out"])
        .arg(&folder)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    assert!(child.wait().unwrap().success());
    assert!(folder.join("README.txt").is_file());
}
