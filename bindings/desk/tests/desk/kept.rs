//! A whole diary kept by commands alone, from its start to a talk with the clinician.

use serde_json::Value;

use crate::kit::{Diary, frond, refused, said};

/// The beginning of a session with the trainer.
pub(crate) const SESSION: [&str; 9] = [
    "log",
    "--practice",
    "trainer",
    "--size-mm",
    "12",
    "--position",
    "on-back",
    "--ended",
    "finished",
];

fn session<'a>(rest: &[&'a str]) -> Vec<&'a str> {
    [&SESSION[..], rest].concat()
}

const NO_TO_ALL: [&str; 20] = [
    "tell",
    "cautions",
    "--no",
    "feeling-and-control",
    "--no",
    "pain-and-temperature",
    "--no",
    "bleeding",
    "--no",
    "pregnancy-and-birth",
    "--no",
    "chest-and-legs",
    "--no",
    "equipment-and-skin",
    "--no",
    "bladder-and-infection",
    "--no",
    "treatment-and-medicine",
    "--no",
    "how-you-are",
];

#[test]
fn a_diary_is_kept_by_commands_alone() {
    let diary = Diary::place();
    let programme = diary.programme();

    let started = diary
        .say("02T18:20", &["start", "--programme", &programme, "--yes", "--although", "unsigned"]);
    assert!(started.contains("This plan is used from now on."));
    diary.say("02T18:25", &NO_TO_ALL);
    diary.say("02T18:30", &["step", "--confirm"]);
    let today = diary.say("02T18:31", &["today"]);
    assert!(today.contains("Trainer 1, 12 mm: 5 to 10 minutes"));
    assert!(today.contains("frond log"));

    diary
        .say("03T20:00", &session(&["--minutes", "6", "--peak", "2", "--worry", "rather-not-say"]));
    let hold = diary.say("03T20:01", &["suggest"]);
    assert!(hold.contains("Stay with what you use now."));
    assert!(hold.contains("6 more days on this step"), "{hold}");

    // A correction: it was size 2. Then the wrong one is taken back.
    let entries: Value =
        serde_json::from_str(&diary.say("03T20:02", &["entries", "--json"])).unwrap();
    let first_session = entries["entries"]
        .as_array()
        .unwrap()
        .iter()
        .find(|entry| entry["text"].as_str().unwrap().starts_with("12 mm"))
        .unwrap();
    let id = first_session["id"].as_str().unwrap().to_owned();
    let mut correction = session(&["--minutes", "7.5", "--peak", "3", "--instead-of", &id]);
    correction[4] = "15";
    assert!(diary.say("03T20:03", &correction).contains("The correction counts from now on."));
    let entries = diary.say("03T20:04", &["entries"]);
    assert!(entries.contains("15 mm, 7 minutes, finished, highest discomfort 3"));
    assert!(entries.contains("Corrected"));
    let taken_back = diary.say("03T20:05", &["entries", "--strike", &id[..16]]);
    assert!(taken_back.contains("left out from now on"));
    assert!(diary.say("03T20:06", &["entries"]).contains("Left out"));

    // Something is not right: stop and call, and the pause.
    let signs = diary.say("04T09:00", &["sign"]);
    assert!(signs.contains("frond sign --sign pain_that_stays"));
    let stop = diary.say("04T09:01", &["sign", "--sign", "pain_that_stays"]);
    assert!(stop.contains("Nobody has been told. Frond sends nothing."));
    assert!(stop.contains("01632 960321"));
    assert!(diary.say("04T09:02", &["suggest"]).contains("Trainers are paused."));
    assert!(diary.say("04T09:03", &["call"]).contains("01632 960654"));
    assert!(!diary.say("04T09:04", &["today"]).contains("Trainer 1, 12 mm"));

    // The talk closes it.
    let open = diary.say("05T10:00", &["spoke"]);
    assert!(open.contains(":pain_that_stays"));
    let key = open.split("--sign ").nth(1).unwrap().split_whitespace().next().unwrap().to_owned();
    let talk = ["spoke", "--with", "Ida Marlowe", "--on", "2026-03-05T09:30", "--sign", &key];
    diary.say("05T10:01", &[&talk[..], &["--go-on"]].concat());
    assert!(diary.say("05T10:02", &["suggest"]).contains("Stay with what you use now."));

    // Further on than the plan says: only as one's own choice, after the caution.
    let caution = refused(&diary.run("05T10:03", &["step", "--to", "size-2-back"]), 2);
    assert!(caution.contains("own choice"));
    diary.say("05T10:04", &["step", "--to", "size-2-back", "--own-choice"]);
    // Back again: one command, no reason.
    diary.say("05T10:05", &["step", "--to", "size-1-back"]);
    assert!(diary.say("05T10:06", &["step"]).contains("> size-1-back"));
}

#[test]
fn everything_a_person_can_tell_can_be_told() {
    let diary = Diary::place();
    diary.say(
        "02T18:20",
        &["start", "--programme", &diary.programme(), "--yes", "--although", "unsigned"],
    );
    for told in [
        &["tell", "time-off", "--from", "2026-03-05", "--to", "2026-03-06"][..],
        &["tell", "question", "May I swim?"],
        &["tell", "look-forward", "A walk by the sea"],
        &["tell", "able", "--activity", "Sitting through a film", "--rating", "4"],
        &["tell", "goal", "--goal", "An examination without dread", "--reached", "-1"],
        &["tell", "settings", "--language", "en", "--numbers-open", "yes"],
        &["tell", "time-right"],
        &["tell", "cautions", "--anything-new", "nothing"],
        &["suggest", "--ready", "not-yet"],
        &["suggest", "--stay-here", "yes"],
        &[
            "log",
            "--practice",
            "breathing",
            "--minutes",
            "8",
            "--position",
            "on-back",
            "--ended",
            "finished",
        ],
        &[
            "log",
            "--practice",
            "trainer",
            "--part",
            "12:3",
            "15:5",
            "--position",
            "side-lying",
            "--ended",
            "stopped",
            "--reason",
            "upset",
            "--peak",
            "rather-not-say",
            "--happened",
            "2026-03-02T07:00",
        ],
    ] {
        diary.say("02T18:40", told);
    }
    let entries = diary.say("02T18:41", &["entries"]);
    for text in [
        "Time off from Thursday 5 March 2026",
        "May I swim?",
        "A walk by the sea",
        "Sitting through a film: 4 of 10",
        "An examination without dread: Less than hoped",
        "Slow breathing, 8 minutes",
        "15 mm, 8 minutes, stopped, not rated",
        "today at 07:00",
    ] {
        assert!(entries.contains(text), "{text}");
    }
    assert!(diary.say("02T18:42", &["plan"]).contains("Wren (invented)"));
}

#[test]
fn what_a_program_reads_is_json_and_the_environment_can_name_the_folder() {
    let diary = Diary::place();
    diary.say(
        "02T18:20",
        &["start", "--programme", &diary.programme(), "--yes", "--although", "unsigned"],
    );
    for (command, screen) in [
        ("today", "today"),
        ("log", "log_session"),
        ("step", "ladder"),
        ("suggest", "suggestion"),
        ("sign", "signs"),
        ("call", "stop_and_call"),
        ("spoke", "spoke"),
        ("entries", "entries"),
        ("plan", "plan"),
    ] {
        let json = diary.say("02T18:21", &[command, "--json"]);
        let record: Value = serde_json::from_str(&json).unwrap();
        assert_eq!(record["screen"], screen);
    }
    let mut command = frond();
    command.env("FROND_DIARY", &diary.folder).args(["today", "--passphrase-stdin"]);
    command.write_stdin("some invented words\n");
    let plain = said(&command.output().unwrap());
    // Neither way of asking for colour or none changes a byte: there is none.
    command.env("NO_COLOR", "1");
    assert_eq!(said(&command.output().unwrap()), plain);
    assert!(!plain.contains('\u{1b}'));
}
