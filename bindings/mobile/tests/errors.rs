//! Errors at the border: one for each of the core's, in words; a keeper that fails, throws or gives back
//! nonsense; a fault of the program; a second opener; a second caller.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

mod kit;

use std::sync::{Arc, Mutex};

use frond_core::companion::{Refusal, Request, Trouble};
use frond_core::screens::{CannotOpenScreen, WholeScreen};
use frond_core::whole::{Seen, View, WholeRequest};
use frond_core::words::Words;
use frond_mobile::frond::Frond;
use frond_mobile::keeper::KeeperTrouble;
use frond_mobile::trouble::FrondError;
use kit::{Behaves, MemoryKeeper, SECRET, frond, moment, started};

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
        Trouble::CodeAsked,
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
            Trouble::CodeAsked => "CodeAsked",
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
    for language in Words::offered(false) {
        let words = Words::for_language(language.tag);
        for (trouble, name) in every_trouble() {
            let error = FrondError::of(&trouble, &words);
            let debug = format!("{error:?}");
            assert_eq!(debug.split([' ', '{']).next(), Some(name));
            assert_eq!(error.to_string(), trouble.say(&words));
            assert!(error.to_string().contains(' '), "{debug} has no words");
        }
    }
}

fn begin(frond: &Frond) -> Result<Seen, FrondError> {
    frond.whole(WholeRequest::Begin, moment(0))
}

/// What stands in the way of the open diary.
fn in_the_way(frond: &Frond) -> CannotOpenScreen {
    match begin(frond).unwrap().view {
        View::Whole(WholeScreen::CannotOpen(screen)) => screen,
        _ => panic!("it opened, or another screen stands there"),
    }
}

fn opens(frond: &Frond) -> bool {
    matches!(begin(frond).unwrap().view, View::Screen(_))
}

fn said(trouble: &Trouble) -> String {
    trouble.say(&Words::for_language("en"))
}

#[test]
fn a_keeper_that_fails_leads_to_a_screen_with_something_to_do() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    drop(started(folder.path(), keeper.clone()));
    let cases = [
        (Behaves::Fails(KeeperTrouble::KeyGone), Trouble::Restore),
        (Behaves::Fails(KeeperTrouble::Refused), Trouble::TryAgain),
        (Behaves::Fails(KeeperTrouble::Failed), Trouble::TryAgain),
        (Behaves::Garbles, Trouble::Restore),
    ];
    for (behaves, trouble) in cases {
        keeper.behave(behaves);
        let frond = frond(folder.path(), keeper.clone());
        let screen = in_the_way(&frond);
        assert_eq!(screen.says, said(&trouble), "{behaves:?}");
        assert!(!screen.steps.is_empty());
        // Nothing is left half done: once the keeper works again, so does everything.
        keeper.behave(Behaves::Well);
        assert!(opens(&frond), "{behaves:?}");
    }
}

#[test]
fn what_a_keeper_throws_unexpectedly_is_a_plain_failure_and_no_word_of_it_goes_on() {
    let trouble = KeeperTrouble::from(uniffi::UnexpectedUniFFICallbackError::new(SECRET));
    assert_eq!(trouble, KeeperTrouble::Failed);
    assert!(!format!("{trouble} {trouble:?}").contains("Keys.kt"));
}

#[test]
fn a_fault_of_the_program_comes_back_as_an_error_and_the_next_request_opens_the_diary_again() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    drop(started(folder.path(), keeper.clone()));
    let frond = frond(folder.path(), keeper.clone());
    keeper.behave(Behaves::Panics);
    let error = begin(&frond).err().unwrap();
    assert_eq!(error, FrondError::OpenAgain { says: said(&Trouble::OpenAgain) });
    assert!(!format!("{error} {error:?}").contains("Keys.kt"));
    keeper.behave(Behaves::Well);
    assert!(opens(&frond));
}

/// The test above once more, in a process of its own whose output is read.
#[test]
fn a_fault_of_the_program_tells_no_log_a_word() {
    let test =
        "a_fault_of_the_program_comes_back_as_an_error_and_the_next_request_opens_the_diary_again";
    let mut again = std::process::Command::new(std::env::current_exe().unwrap());
    let out = again.args(["--exact", test, "--nocapture"]).output().unwrap();
    let said =
        format!("{}{}", String::from_utf8_lossy(&out.stdout), String::from_utf8_lossy(&out.stderr));
    assert!(out.status.success() && said.contains("1 passed"), "{said}");
    assert!(!said.contains("panicked") && !said.contains("Keys.kt"), "{said}");
}

#[test]
fn a_second_opener_is_told_to_close_the_first() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    let first = started(folder.path(), keeper.clone());
    let second = frond(folder.path(), keeper);
    assert_eq!(in_the_way(&second).says, said(&Trouble::CloseElsewhere));
    drop(first);
    assert!(opens(&second));
}

#[test]
fn while_the_keeper_is_asked_nothing_is_locked_and_a_second_caller_tries_again() {
    let folder = tempfile::tempdir().unwrap();
    let keeper = MemoryKeeper::new();
    drop(started(folder.path(), keeper.clone()));
    let one = frond(folder.path(), keeper.clone());
    let seen: Arc<Mutex<Vec<Option<FrondError>>>> = Arc::default();
    let (inner, log) = (one.clone(), seen.clone());
    *keeper.during.lock().unwrap() = Some(Box::new(move || {
        // On another thread, as a shell's would be; a lock held here would never come back.
        let again = inner.clone();
        let answer = std::thread::spawn(move || begin(&again).err()).join().unwrap();
        log.lock().unwrap().push(answer);
    }));
    assert!(opens(&one));
    *keeper.during.lock().unwrap() = None;
    let seen = seen.lock().unwrap();
    assert!(!seen.is_empty());
    assert!(seen.iter().all(|answer| matches!(answer, Some(FrondError::TryAgain { .. }))));
}

#[test]
fn a_phone_without_a_known_zone_keeps_its_offset_and_a_broken_clock_says_try_again() {
    let folder = tempfile::tempdir().unwrap();
    let frond = started(folder.path(), MemoryKeeper::new());
    let mut strange = moment(0);
    strange.zone = "Mars/Olympus".to_owned();
    strange.offset_minutes = -330;
    assert_eq!(strange.stamped().unwrap().now.to_string(), "2026-03-01T02:30:00.000-05:30");
    frond.ask(Request::Today, strange.clone()).unwrap();
    strange.offset_minutes = 100_000;
    let error = frond.ask(Request::Today, strange).err().unwrap();
    assert!(matches!(error, FrondError::TryAgain { .. }));
    let mut before = moment(0);
    before.wall_millis = -1;
    let error = frond.ask(Request::Today, before).err().unwrap();
    assert!(matches!(error, FrondError::TryAgain { .. }));
}
