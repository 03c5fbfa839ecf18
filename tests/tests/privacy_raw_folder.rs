//! What lies on the disk tells a stranger nothing: neither a word of the diary, nor the passphrase, nor a
//! name of the plan; and what can be printed for debugging tells nothing either.

use std::path::Path;

use frond_core::companion::{Recovery, Request, Told};
use frond_core::diary::entry::Reason;
use frond_core::ports::sim::SeededRandom;
use frond_core::programme::values::Passage;
use frond_core::safety::Sign;
use frond_core::sealing::RecoveryPhrase;
use frond_tests::home::{FOLDER, Home, PASSPHRASE, keeper, session, stopped};
use frond_tests::sweep::{self, Kind, Left, Needles, WORDS};

/// What was typed.
const NOTE: &str = "pain and fever, said Wren";

fn lived_in() -> Home {
    let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
    for peak in [2, 3, 8, 9] {
        home.pass(24);
        let mut told = session(140, 8, Some(peak));
        told.note = Some(Passage::new(NOTE).unwrap());
        home.tell(Told::Session(told));
    }
    home.tell(Told::Session(stopped(140, 1, Reason::Discomfort)));
    home.tell(Told::Signs { signs: vec![Sign::Fever, Sign::HeavyBleeding], note: None });
    home.ask(Request::Suggestion);
    home.companion.save().unwrap();
    home.companion.tidy().unwrap();
    with_copies_and_damage(home)
}

/// The same with a recovery phrase, backups, and a damaged journal whose bytes were kept aside.
fn with_copies_and_damage(mut home: Home) -> Home {
    let phrase = RecoveryPhrase::new(&SeededRandom::new(77)).unwrap();
    let moment = home.moment;
    home.companion =
        home.companion.new_keys(&keeper(), Recovery::By(&phrase), &moment).ok().unwrap();
    for _ in 0..2 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    home.companion.save().unwrap();
    let journal = Path::new(FOLDER).join("journal");
    let mut bytes = home.disk.content(&journal).unwrap();
    bytes[8192 + 100] ^= 1;
    home.disk.tamper(&journal, bytes);
    home.disk.tamper(&Path::new(FOLDER).join("renew"), Vec::new());
    let mut home = home.reopen();
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(2))));
    home.companion.save().unwrap();
    let below = |inner: &str| {
        let inner = Path::new(FOLDER).join(inner);
        home.disk.paths().iter().filter(|path| path.parent() == Some(&inner)).count()
    };
    assert!(below("aside") >= 1 && below("backups") == 3, "nothing was kept, so nothing is tried");
    home
}

/// Every file of the folder, as [`sweep`](frond_tests::sweep) takes it.
fn left(home: &Home) -> Vec<Left> {
    let paths = home.disk.paths();
    let read = paths.iter().filter_map(|path| {
        let name = path.strip_prefix(FOLDER).unwrap_or(path).to_string_lossy().into_owned();
        home.disk.content(path).map(|bytes| Left { name, bytes, mode: None })
    });
    read.collect()
}

/// What each file of the folder has to be (`core/src/diary/store/FORMAT.md`).
fn kind(name: &str) -> Option<Kind> {
    Some(match name.split_once('/') {
        None if name == "keys" => Kind::Keys,
        None if name == "journal" => Kind::Journal,
        None if name == "snapshot" || name == "running" => Kind::Sealed,
        None if name == "lock" || name == "renew" => Kind::Empty,
        Some(("backups", _)) => Kind::Backup,
        Some(("aside", _)) => Kind::Aside,
        _ => return None,
    })
}

#[test]
fn no_health_word_no_name_and_no_passphrase_lies_in_the_folder() {
    let home = lived_in();
    let needles = Needles::new(&WORDS).and(&[NOTE, "Ines Abara", PASSPHRASE]);
    let left = left(&home);
    let searched: usize = left.iter().map(|one| one.bytes.len()).sum();
    assert!(searched > 64 * 1024, "only {searched} bytes were searched");
    for one in &left {
        let found: Vec<String> = needles
            .found(one.name.as_bytes())
            .into_iter()
            .chain(needles.found(&one.bytes))
            .collect();
        assert_eq!(found, [""; 0], "{}", one.name);
    }
}

#[test]
fn every_byte_is_sealed_or_of_a_documented_head() {
    let left = left(&lived_in());
    let wrong = sweep::faults(&left, &Needles::new(&WORDS).and(&[NOTE]), kind);
    assert_eq!(wrong, [""; 0]);
    for what in ["keys", "journal", "snapshot", "backups/", "aside/"] {
        assert!(left.iter().any(|one| one.name.starts_with(what)), "there is no {what}");
    }
}

/// The same sweep over the same folder, with one entry left open in it.
#[test]
fn one_entry_left_open_is_found() {
    let mut left = left(&lived_in());
    let journal = left.iter_mut().find(|one| one.name == "journal").unwrap();
    let entry = format!(r#"{{"session":{{"practice":"trainer","note":"{NOTE}"}}}}"#);
    // In the zeros that are kept free behind the entries, and in place of a sealed one.
    for at in [journal.bytes.len() - 600, 8192 + 64] {
        let sound = journal.bytes.clone();
        journal.bytes[at..at + entry.len()].copy_from_slice(entry.as_bytes());
        let planted =
            [Left { name: "journal".to_owned(), bytes: journal.bytes.clone(), mode: None }];
        let wrong = sweep::faults(&planted, &Needles::new(&[NOTE]), kind);
        assert!(wrong.iter().any(|it| it.contains("UTF-8")), "{wrong:?}");
        let blind = Needles::new(&["of another person"]);
        let wrong = sweep::faults(&planted, &blind, kind);
        assert!(!wrong.is_empty(), "without knowing what was written");
        journal.bytes = sound;
    }
}

#[test]
fn troubles_tell_nothing_that_was_written() {
    let mut home = lived_in();
    let told = Told::unsigned(r#"{"for":"Wren","pelvic":"pain"}"#);
    let trouble = home.refused(None, told);
    let shown = format!("{trouble:?} {trouble} {}", trouble.say(home.companion.words()));
    for word in ["Wren", "pain"] {
        assert!(!shown.contains(word), "{shown}");
    }
}
