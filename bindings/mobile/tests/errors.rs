//! Errors at the border: one for each of the core's, in words; a keeper that fails, throws or gives back
//! nonsense; a fault of the program; a second opener; a second caller.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

mod kit;

use std::sync::{Arc, Mutex};

use frond_core::companion::{Refusal, Request, Trouble};
use frond_core::words::Words;
use frond_mobile::frond::Frond;
use frond_mobile::keeper::KeeperTrouble;
use frond_mobile::trouble::FrondError;
use kit::{Behaves, MemoryKeeper, SECRET, frond, moment};

/// Every trouble, with the name of its error. A new one has to be put in here: the match does not compile
/// without it.
fn every_trouble() -> Vec<(Trouble, &'static str)> {
    let all = vec![
        Trouble::PutRight(Refusal::Future),
        Trouble::FreeSpace,
        Trouble::OpenAgain,
        Trouble::ReadOnly,
        Trouble::CloseElsewhere,
        Trouble::Update,
        Trouble::WrongSecret,
        Trouble::WrongPhrase,
        Trouble::Restore,
        Trouble::NotADiary,
        Trouble::AlreadyThere,
        Trouble::TryAgain,
    ];
    let named = |trouble: Trouble| {
        let name = match &trouble {
            Trouble::PutRight(_) => "PutRight",
            Trouble::FreeSpace => "FreeSpace",
            Trouble::OpenAgain => "OpenAgain",
            Trouble::ReadOnly => "ReadOnly",
            Trouble::CloseElsewhere => "CloseElsewhere",
            Trouble::Update => "Update",
            Trouble::WrongSecret => "WrongSecret",
            Trouble::WrongPhrase => "WrongPhrase",
            Trouble::Restore => "Restore",
            Trouble::NotADiary => "NotADiary",
            Trouble::AlreadyThere => "AlreadyThere",
            Trouble::TryAgain => "TryAgain",
        };
        (trouble, name)
    };
    all.into_iter().map(named).collect()
}

#[test]
fn each_trouble_is_an_error_of_its_own_and_says_what_the_core_says() {
    for language in ["en", "es"] {
        let words = Words::for_language(language);
        for (trouble, name) in every_trouble() {
            let error = FrondError::of(&trouble, &words);
            let debug = format!("{error:?}");
            assert_eq!(debug.split([' ', '{']).next(), Some(name));
            assert_eq!(error.to_string(), trouble.say(&words));
            assert!(error.to_string().contains(' '), "{debug} has no words");
        }
    }
}

fn home(frond: &Frond) -> Result<(), FrondError> {
    frond.ask(Request::Home, moment(0)).map(|_| ())
}

#[test]
fn a_keeper_that_fails_is_an_error_with_something_to_do_and_none_of_its_words() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    home(&frond(folder.path(), keeper.clone())).unwrap();
    let cases = [
        (Behaves::Fails(KeeperTrouble::KeyGone), "Restore"),
        (Behaves::Fails(KeeperTrouble::Refused), "TryAgain"),
        (Behaves::Fails(KeeperTrouble::Failed), "TryAgain"),
        (Behaves::Garbles, "Restore"),
        (Behaves::Panics, "OpenAgain"),
    ];
    for (behaves, name) in cases {
        keeper.behave(behaves);
        let frond = frond(folder.path(), keeper.clone());
        let error = home(&frond).unwrap_err();
        let all = format!("{error} {error:?}");
        assert!(all.contains(name), "{behaves:?}: {all}");
        assert!(!all.contains("Keys.kt") && !all.contains(SECRET), "{all}");
        // Nothing is left half done: once the keeper works again, so does everything.
        keeper.behave(Behaves::Well);
        home(&frond).unwrap();
    }
}

#[test]
fn what_a_keeper_throws_unexpectedly_is_a_plain_failure() {
    let thrown = uniffi::UnexpectedUniFFICallbackError::new(SECRET);
    let trouble = KeeperTrouble::from(thrown);
    assert_eq!(trouble, KeeperTrouble::Failed);
    assert!(!format!("{trouble} {trouble:?}").contains("Keys.kt"));
}

#[test]
fn a_second_opener_is_told_to_close_the_first() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    let first = frond(folder.path(), keeper.clone());
    home(&first).unwrap();
    let second = frond(folder.path(), keeper);
    assert!(matches!(home(&second), Err(FrondError::CloseElsewhere { .. })));
    drop(first);
    home(&second).unwrap();
}

#[test]
fn while_the_keeper_is_asked_nothing_is_locked_and_a_second_caller_tries_again() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    let one = frond(folder.path(), keeper.clone());
    let seen: Arc<Mutex<Vec<Result<(), FrondError>>>> = Arc::default();
    let (inner, log) = (one.clone(), seen.clone());
    *keeper.during.lock().unwrap() = Some(Box::new(move || {
        // On another thread, as a shell's would be; a lock held here would never come back.
        let again = inner.clone();
        let answer = std::thread::spawn(move || home(&again)).join().unwrap();
        log.lock().unwrap().push(answer);
    }));
    home(&one).unwrap();
    *keeper.during.lock().unwrap() = None;
    let seen = seen.lock().unwrap();
    assert!(!seen.is_empty());
    assert!(seen.iter().all(|answer| matches!(answer, Err(FrondError::TryAgain { .. }))));
}

#[test]
fn a_phone_without_a_known_zone_keeps_its_offset_and_a_broken_clock_says_try_again() {
    let folder = tempfile::tempdir().unwrap();
    let frond = frond(folder.path(), MemoryKeeper::new());
    let mut strange = moment(0);
    strange.zone = "Mars/Olympus".to_owned();
    strange.offset_minutes = -330;
    assert_eq!(strange.stamped().unwrap().now.to_string(), "2026-03-01T02:30:00.000-05:30");
    frond.ask(Request::Home, strange.clone()).unwrap();
    strange.offset_minutes = 100_000;
    assert!(matches!(frond.ask(Request::Home, strange), Err(FrondError::TryAgain { .. })));
    let mut before = moment(0);
    before.wall_millis = -1;
    assert!(matches!(frond.ask(Request::Home, before), Err(FrondError::TryAgain { .. })));
}
