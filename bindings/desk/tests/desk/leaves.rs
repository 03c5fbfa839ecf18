//! Everything that the command line leaves on a disk, read as its worst enemy would (`tests/src/sweep`): a diary lived in
//! with every sort of file it can have, the marks outside it, its copies and sealed summaries, and nothing besides.

use std::fs;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use frond_tests::sweep::{self, Kind, Needles, WORDS};

use crate::kept::SESSION;
use crate::kit::{DEMO_PASSPHRASE, Diary, said, write_private};

const NOTE: &str = "it was sore, and Wren is away";
const QUESTION: &str = "is a little soreness usual?";
const WITH: &str = "Imogen Larkfield";
const TYPED: &str = "some invented words";
const OTHER: &str = "quite another passphrase";

/// What each file there may be has to be; `None`: there may be no such file.
fn kind(name: &str) -> Option<Kind> {
    let parts: Vec<&str> = name.split('/').collect();
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    let hex = |text: &str| text.bytes().all(|byte| byte.is_ascii_hexdigit());
    Some(match parts[..] {
        ["diary", "keys"] => Kind::Keys,
        ["diary", "journal"] => Kind::Journal,
        ["diary", "snapshot" | "running"] => Kind::Sealed,
        ["diary", "lock" | "renew"] => Kind::Empty,
        ["diary", "backups", number] if digits(number) => Kind::Backup,
        ["diary", "aside", _] => Kind::Aside,
        ["state", "frond", id] if id.len() == 32 && hex(id) => Kind::Mark,
        ["out", name] if name.ends_with(".age") => Kind::Age,
        _ => return None,
    })
}

/// A folder with everything in it, and nothing that had to be put there by the test.
struct Lived {
    diary: Diary,
    beside: tempfile::TempDir,
    twelve: String,
}

impl Lived {
    fn run(&self, now: &str, args: &[&str]) -> Output {
        let base = self.diary.base.path();
        let mut command = self.diary.command(now, args);
        command.env("HOME", base.join("home")).env("XDG_STATE_HOME", base.join("state"));
        command.env("TMPDIR", base.join("temporary"));
        command.output().unwrap()
    }

    fn say(&self, now: &str, args: &[&str]) -> String {
        said(&self.run(now, args))
    }

    /// Outside the folder that is read: what a person puts down herself is hers to keep.
    fn beside(&self, name: &str, text: &str) -> String {
        let path = self.beside.path().join(name);
        write_private(&path, &format!("{text}\n"));
        path.display().to_string()
    }

    fn new() -> Self {
        let diary = Diary::place();
        let base = diary.base.path().to_path_buf();
        for folder in ["home", "state", "temporary", "out"] {
            fs::create_dir(base.join(folder)).unwrap();
        }
        let beside = tempfile::tempdir().unwrap();
        let mut own = Self { diary, beside, twelve: String::new() };
        let plan = own.beside("plan", include_str!("../../src/scenario/programme-1.json"));
        own.say("02T18:20", &["start", "--programme", &plan, "--yes", "--although", "unsigned"]);
        own.say("02T18:30", &["step", "--confirm"]);
        for day in 3..7 {
            let more =
                ["--minutes", "6", "--peak", "2", "--worry", "rather-not-say", "--note", NOTE];
            own.say(&format!("0{day}T20:00"), &[&SESSION[..], &more].concat());
        }
        own.say("07T08:00", &["tell", "question", QUESTION]);
        own.say("07T08:01", &["sign", "--sign", "fever", "--note", NOTE]);
        own.say("07T08:02", &["spoke", "--with", WITH, "--all-signs", "--go-on"]);
        let printed = own.say("07T08:03", &["phrase", "--yes"]);
        let numbered = printed.lines().filter_map(|line| line.trim().split_once(' '));
        let words = numbered
            .filter(|(number, _)| number.parse::<u8>().is_ok())
            .map(|(_, word)| word.trim());
        own.twelve = words.collect::<Vec<_>>().join(" ");
        assert_eq!(own.twelve.split(' ').count(), 12, "{printed}");
        let out = base.join("out").display().to_string();
        own.say("07T08:04", &["copy", &format!("{out}/away.age")]);
        let passphrase = own.beside("passphrase", OTHER);
        own.say(
            "07T08:05",
            &[
                "summary",
                "--out",
                &out,
                "--to-passphrase-file",
                &passphrase,
                "--yes",
                "--time-alone",
            ],
        );
        own.say("08T08:00", &["backup"]);
        own.damaged(&base.join("diary/journal"));
        own.say("09T08:00", &["tell", "question", QUESTION]);
        own.say("09T08:01", &["restore", "--yes"]);
        let days = ["erase", "--from", "2026-03-03", "--to", "2026-03-03", "--yes"];
        own.say("10T08:00", &days);
        own.damaged(&base.join("diary/journal"));
        own.say("10T08:01", &["today"]);
        own
    }

    /// One bit of a sealed entry turns, as on a worn disk, and all of the journal is read at the next opening.
    fn damaged(&self, journal: &Path) {
        let mut bytes = fs::read(journal).unwrap();
        bytes[8192 + 100] ^= 1;
        fs::write(journal, bytes).unwrap();
        write_private(&journal.with_file_name("renew"), "");
    }

    fn needles(&self) -> Needles {
        let three: Vec<&str> = self.twelve.split(' ').take(3).collect();
        let typed = [
            NOTE,
            QUESTION,
            WITH,
            TYPED,
            OTHER,
            "Marlowe",
            "01632 960",
            &self.twelve,
            &three.join(" "),
        ];
        Needles::new(&WORDS).and(&typed)
    }
}

#[test]
fn nothing_that_the_command_line_leaves_can_be_read() {
    let lived = Lived::new();
    let base = lived.diary.base.path();
    fs::remove_file(base.join("secret")).unwrap();
    for folder in ["home", "state", "temporary", "out"] {
        // Made by the test, as a system would have them.
        crate::kit::mode(&base.join(folder), 0o700);
    }
    let left = sweep::left_in(base);
    assert_eq!(sweep::faults(&left, &lived.needles(), kind), [""; 0]);
    let there =
        |what: &str| left.iter().any(|one| one.name.starts_with(what) && !one.name.ends_with('/'));
    for what in
        ["diary/keys", "diary/journal", "diary/backups/", "diary/aside/", "state/frond/", "out/"]
    {
        assert!(there(what), "there is no {what}, so it was not read");
    }
    let given = left.iter().filter(|one| one.name.starts_with("out/") && one.name != "out/");
    assert_eq!(given.count(), 2, "copy and summary");
    // The same reading finds one leak that is planted.
    fs::write(base.join("diary/snapshot"), format!("{{\"note\":\"{NOTE}\"}}")).unwrap();
    let wrong = sweep::faults(&sweep::left_in(base), &lived.needles(), kind);
    assert!(wrong.iter().any(|it| it.starts_with("diary/snapshot")), "{wrong:?}");
}

#[test]
fn a_refused_command_says_nothing_of_what_lies_in_the_diary() {
    let lived = Lived::new();
    let needles = Needles::new(&[NOTE, QUESTION, WITH, TYPED, "Marlowe"]);
    let secret = lived.diary.base.path().join("secret");
    write_private(&secret, "not the passphrase\n");
    let wrong = lived.run("11T08:00", &["today"]);
    write_private(&secret, &format!("{TYPED}\n"));
    let none = lived.run("11T08:01", &["entries", "--strike", "0000"]);
    let early = lived.run("11T08:02", &["erase", "--entry", "ffff", "--yes"]);
    for output in [wrong, none, early] {
        assert!(!output.status.success());
        assert_eq!(
            needles.found(&output.stderr),
            [].into(),
            "{}",
            String::from_utf8_lossy(&output.stderr)
        );
        assert_eq!(output.stdout, b"");
    }
}

/// Linux says of each process how it may be dumped, and what it was started with.
#[cfg(target_os = "linux")]
#[test]
fn while_it_runs_no_core_is_written_and_its_command_line_holds_no_passphrase() {
    let diary = Diary::place();
    let secret = diary.base.path().join("secret").display().to_string();
    let folder = diary.folder.display().to_string();
    let mut child = Command::new(env!("CARGO_BIN_EXE_frond"))
        .args(["try", "--no-open", "--diary", &folder, "--passphrase-file", &secret])
        .env_clear()
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    // The address comes once the diary is open.
    let mut line = String::new();
    std::io::BufRead::read_line(
        &mut std::io::BufReader::new(child.stdout.take().unwrap()),
        &mut line,
    )
    .unwrap();
    let of = |what: &str| fs::read_to_string(format!("/proc/{}/{what}", child.id())).unwrap();
    let limits = of("limits");
    let started = of("cmdline");
    child.kill().unwrap();
    child.wait().unwrap();
    let core = limits.lines().find(|line| line.starts_with("Max core file size")).unwrap();
    assert_eq!(core.split_whitespace().nth(4), Some("0"), "{core}");
    assert!(line.starts_with("http://127.0.0.1:"), "{line}");
    assert!(!started.contains(TYPED) && !started.contains(DEMO_PASSPHRASE), "{started:?}");
}
