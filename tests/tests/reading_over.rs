//! Damage behind the snapshot, which no opening reads: it is found when nobody waits, and whenever the whole
//! diary is needed; it is said, and nothing is passed on without what is missing.

use std::path::Path;

use frond_core::companion::{Companion, Request, Told, Trouble};
use frond_core::diary::entry::Content;
use frond_core::moment::Moment;
use frond_core::ports::sim::SimDisk;
use frond_core::screens::Screen;
use frond_core::summary::Selection;
use frond_tests::home::{FOLDER, Home, keeper, ports, session};

/// A diary whose first session went bad behind a snapshot that covers all of it.
fn gone_bad() -> Home {
    let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
    for _ in 0..4 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(1))));
    }
    home.companion.save().unwrap();
    let journal = Path::new(FOLDER).join("journal");
    let mut bytes = home.disk.content(&journal).unwrap();
    bytes[8192 + 60] ^= 1;
    home.disk.tamper(&journal, bytes);
    home.reopen()
}

fn open(disk: &SimDisk, home: &Home) -> Companion {
    let opened = Companion::open(&ports(disk, 5), Path::new(FOLDER), &keeper(), "en", &home.moment);
    opened.ok().unwrap()
}

fn missing(companion: &Companion) -> usize {
    let entries = companion.entries().unwrap();
    entries.iter().filter(|entry| matches!(entry.what, Content::MissingMark { .. })).count()
}

fn is_said(companion: &mut Companion, moment: &Moment) -> bool {
    let screen = companion.ask(Request::Keeping, moment).map(|answer| answer.screen);
    matches!(screen, Ok(Screen::Keeping(screen)) if !screen.trouble.is_empty())
}

#[test]
fn what_needs_the_whole_diary_is_refused_and_the_next_opening_says_what_is_missing() {
    let home = gone_bad();
    assert_eq!(home.companion.entries().err(), Some(Trouble::OpenAgain));
    let everything = Selection::default();
    assert!(home.companion.summary(&everything, &home.moment.now).is_err(), "a summary without it");
    let mut companion = open(&home.disk.after_kill(), &home);
    assert_eq!(missing(&companion), 1);
    assert!(is_said(&mut companion, &home.moment));
}

#[test]
fn it_is_found_when_nobody_waits_and_written_down_once() {
    let mut home = gone_bad();
    let moment = home.moment;
    assert!(!is_said(&mut home.companion, &moment));
    home.companion.tidy().unwrap();
    // Whatever is asked next writes the mark.
    home.ask(Request::Today);
    let disk = home.disk.after_kill();
    for _ in 0..2 {
        let mut companion = open(&disk, &home);
        assert_eq!(missing(&companion), 1);
        assert!(is_said(&mut companion, &home.moment));
    }
}

#[test]
fn a_sound_diary_is_read_over_once_and_again_after_a_week() {
    let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
    home.companion.tidy().unwrap();
    let journal = Path::new(FOLDER).join("journal");
    let mut bytes = home.disk.content(&journal).unwrap();
    bytes[8192 + 60] ^= 1;
    home.disk.tamper(&journal, bytes);
    let mut found = |hours: i64| {
        home.pass(hours);
        home.ask(Request::Today);
        home.companion.tidy().unwrap();
        home.companion.findings().missing.len()
    };
    assert_eq!(found(24), 0);
    assert_eq!(found(7 * 24), 1);
}
