//! Every word of the screens about the diary as a whole, held still. Everything told is invented.

use std::path::Path;
use std::sync::Arc;

use frond_core::companion::{Companion, Recovery, Request, Told, Trouble};
use frond_core::diary::erase::Erase;
use frond_core::ports::sim::SeededRandom;
use frond_core::safety::Sign;
use frond_core::screens::{CannotOpenScreen, FirstRunPage, Lock};
use frond_core::sealing::RecoveryPhrase;
use frond_core::words::Words;
use frond_tests::home::{FOLDER, Home, Marks, keeper, session, with_marks};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

#[test]
fn how_the_diary_is_kept() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!("keeping_new", home.json(Request::Keeping));
    home = Home::with_plan(START);
    let phrase = RecoveryPhrase::new(&SeededRandom::new(77)).unwrap();
    let moment = home.moment;
    let companion = home.companion.new_keys(&keeper(), Recovery::By(&phrase), &moment);
    home.companion = companion.ok().unwrap();
    insta::assert_json_snapshot!("keeping_phrase", home.json(Request::Keeping)["parts"]);
    home.tell(Told::CopyKept);
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    insta::assert_json_snapshot!("keeping_copy", home.json(Request::Keeping)["parts"]);
}

/// A phone says what opens the diary there: its own key, with or without a code, and nothing of a passphrase.
#[test]
fn what_opens_the_diary_of_a_phone() {
    let mut home = Home::new(START);
    for (lock, name) in [(Lock::Phone, "phone_without_a_code"), (Lock::Code, "phone_with_a_code")] {
        home.companion.locked_by(lock);
        let said = [
            home.json(Request::Keeping),
            home.json(Request::FirstRun(FirstRunPage::Lock)),
            home.json(Request::Settings)["parts"][0].clone(),
        ];
        let text = serde_json::to_string(&said).unwrap().to_lowercase();
        for word in ["passphrase", "computer", "folder"] {
            assert!(!text.contains(word), "{name}: {word}");
        }
        insta::assert_json_snapshot!(name, said);
    }
}

#[test]
fn erasing() {
    let mut home = Home::with_plan(START);
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    let day = home.moment.now.day();
    let mut days = home.json(Request::Erase(Erase::Days { from: day, to: day }));
    assert_eq!(days["screen"], "erase");
    days["confirm"].take();
    insta::assert_json_snapshot!("erase_days", days);
    insta::assert_json_snapshot!("erase_all", home.json(Request::EraseAll));
}

#[test]
fn damaged_and_set_back() {
    let marks = Arc::new(Marks::default());
    let mut home = Home::marked(START, &marks);
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    let older = home.disk.after_kill();
    let damaged = home.disk.after_kill();
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    let moment = home.moment;
    drop(home.companion);
    let shown = |disk, marks: &Arc<Marks>| {
        let ports = with_marks(disk, 9, marks.clone());
        let opened = Companion::open(&ports, Path::new(FOLDER), &keeper(), "en", &moment);
        let screen = opened.ok().unwrap().ask(Request::Keeping, &moment).ok().unwrap().screen;
        serde_json::to_value(screen).unwrap()["trouble"].clone()
    };
    insta::assert_json_snapshot!("trouble_set_back", shown(&older, &marks));
    let journal = Path::new(FOLDER).join("journal");
    let mut bytes = damaged.content(&journal).unwrap();
    let at = bytes.iter().rposition(|byte| *byte != 0).unwrap();
    bytes[at] ^= 1;
    damaged.tamper(&journal, bytes);
    insta::assert_json_snapshot!("trouble_damaged", shown(&damaged, &Arc::default()));
}

#[test]
fn a_diary_that_does_not_open_says_what_can_be_done() {
    let words = Words::for_language("en");
    let screens: Vec<_> = [
        Trouble::WrongSecret,
        Trouble::Restore,
        Trouble::NotADiary,
        Trouble::CloseElsewhere,
        Trouble::Update,
        Trouble::TryAgain,
    ]
    .iter()
    .map(|trouble| CannotOpenScreen::new(&words, trouble))
    .collect();
    insta::assert_json_snapshot!("cannot_open", screens);
}
