//! Copies: for elsewhere, of this device, restored; and erasing, which no copy on the device outlives.

use super::kit::*;
use crate::companion::{Duty, Refusal, Request, SharedFile, Told, Trouble, Write};
use crate::diary::erase::Erase;
use crate::screens::{Does, FormField, Screen, WholeScreen};
use crate::whole::{Seen, View, WholeRequest};

fn shared(seen: &Seen) -> &SharedFile {
    match seen.duties.as_slice() {
        [Duty::ShareFile(file)] => file,
        _ => panic!("no file"),
    }
}

fn look(bytes: Vec<u8>, phrase: &str) -> WholeRequest {
    WholeRequest::LookIntoCopy { bytes, phrase: phrase.to_owned() }
}

fn problems(view: &View) -> Vec<FormField> {
    let problems = match view {
        View::Whole(WholeScreen::RestoreCopy(screen)) => &screen.problems,
        View::Whole(WholeScreen::EraseDays(screen)) => &screen.problems,
        View::Whole(WholeScreen::PhraseCheck(screen)) => &screen.problems,
        other => panic!("{}", name(other)),
    };
    problems.iter().map(|problem| problem.field).collect()
}

#[test]
fn twelve_words_open_nothing_before_they_were_found_on_the_paper() {
    let mut home = Home::begun();
    // None were shown yet, or they were forgotten with the program.
    assert_eq!(name(&home.whole(WholeRequest::PhraseWritten)), "keeping");
    let words = vec!["a".to_owned(), "b".to_owned()];
    assert_eq!(name(&home.whole(WholeRequest::CheckPhrase { words: words.clone() })), "keeping");
    assert_eq!(name(&home.whole(WholeRequest::NewPhrase)), "phrase");
    let places = [FormField::Word { place: 3 }, FormField::Word { place: 9 }];
    for typed in [words, vec![]] {
        let view = home.whole(WholeRequest::CheckPhrase { words: typed });
        assert_eq!(problems(&view), places);
    }
    let no_phrase = Trouble::PutRight(Refusal::NoPhrase);
    assert_eq!(home.try_press(Does::MakeCopy).err(), Some(no_phrase.clone()));
    assert_eq!(home.try_whole(WholeRequest::MakeCopy).err(), Some(no_phrase));
    home.phrase();
    assert_eq!(name(&home.press(Does::MakeCopy)), "copy");
}

#[test]
fn a_copy_for_elsewhere_brings_the_diary_to_another_phone() {
    let mut home = Home::begun();
    let words = home.phrase();
    let View::Whole(WholeScreen::Copy(form)) = home.whole(WholeRequest::CopyForm) else {
        panic!("no form");
    };
    let seen = home.seen(WholeRequest::MakeCopy);
    let file = shared(&seen).clone();
    assert!(file.sealed);
    assert_eq!(file.name, "copy-2026-03-02.age");
    home.ask(Request::Write(Write { id: form.id, happened: None, told: Told::CopyKept }));
    assert_eq!(home.entries().len(), 4);

    let mut other = Home::new();
    other.begin();
    assert_eq!(name(&other.press(Does::RestoreCopy)), "restore copy");
    let view = other.whole(look(vec![], "one two"));
    assert_eq!(problems(&view), [FormField::File, FormField::Phrase]);
    let view = other.whole(look(b"no copy".to_vec(), &words));
    assert_eq!(problems(&view), [FormField::File]);
    let abandon = "abandon ".repeat(11) + "about";
    let view = other.whole(look(file.bytes.clone(), &abandon));
    assert_eq!(problems(&view), [FormField::Phrase]);
    assert_eq!(name(&other.whole(WholeRequest::RestoreNow)), "no diary", "nothing was looked into");
    assert_eq!(name(&other.whole(look(file.bytes, &words))), "restoring");
    let seen = other.seen(WholeRequest::RestoreNow);
    assert_eq!(name(&seen.view), "today");
    assert!(seen.duties.iter().any(|duty| matches!(duty, Duty::PlanReminders(_))));
    assert_eq!(name(&other.whole(WholeRequest::RestoreNow)), "today", "asked twice");
    // What was told before the copy, and the mark of the restore.
    assert_eq!(other.entries()[..3], home.entries()[..3]);
    other.again();
    assert_eq!(name(&other.begin()), "today", "the phone's own key opens it");
}

#[test]
fn a_backup_of_this_device_is_looked_into_before_it_replaces_anything() {
    let mut home = Home::new();
    home.whole(WholeRequest::StartNew);
    assert_eq!(name(&home.press(Does::Restore)), "restore");
    assert_eq!(name(&home.whole(WholeRequest::LookIntoBackup)), "restore", "there is none");
    for number in 0..3 {
        home.tell(number);
    }
    home.pass(24 * 3_600_000);
    home.tell(3);
    home.tell(4);
    let View::Whole(WholeScreen::Restoring(screen)) = home.whole(WholeRequest::LookIntoBackup)
    else {
        panic!("no backup");
    };
    assert_eq!(screen.next.does, Does::RestoreNow);
    assert_eq!(home.entries().len(), 5, "looking changes nothing");
    assert_eq!(name(&home.press(Does::RestoreNow)), "today");
    assert_eq!(home.entries().len(), 4, "the three of yesterday and the mark");
}

#[test]
fn nothing_is_restored_past_the_code() {
    let mut home = Home::begun();
    let words = home.phrase();
    let seen = home.seen(WholeRequest::MakeCopy);
    let bytes = shared(&seen).bytes.clone();
    home.whole(set("4711"));
    assert_eq!(name(&home.whole(look(bytes.clone(), &words))), "restoring");
    home.whole(WholeRequest::Lock);
    for request in [WholeRequest::RestoreNow, look(bytes, &words), WholeRequest::LookIntoBackup] {
        assert_eq!(name(&home.whole(request)), "code");
    }
    home.give("4711");
    assert_eq!(name(&home.whole(WholeRequest::RestoreNow)), "today", "it was forgotten");
    assert_eq!(home.entries().len(), 3);
}

#[test]
fn some_days_are_erased_after_it_was_said_what_goes() {
    let mut home = Home::coded("4711");
    home.pass(24 * 3_600_000);
    let kept = home.tell(7);
    let days = |from: &str, to: &str| WholeRequest::LookEraseDays {
        from: from.to_owned(),
        to: to.to_owned(),
    };
    assert_eq!(name(&home.press(Does::EraseSomeDays)), "erase days");
    for (from, to, fields) in [
        ("", "", [FormField::From, FormField::To].as_slice()),
        ("2026-03-02", "tomorrow", &[FormField::To]),
        ("2026-03-03", "2026-03-02", &[FormField::To]),
        ("2020-01-01", "2020-01-02", &[FormField::From]),
    ] {
        let view = home.whole(days(from, to));
        assert_eq!(problems(&view), fields, "{from} {to}");
        if let View::Whole(WholeScreen::EraseDays(screen)) = view {
            assert_eq!([screen.from.value.as_str(), screen.to.value.as_str()], [from, to]);
        }
    }
    let View::Screen(Screen::Erase(screen)) = home.whole(days("2026-03-02", " 2026-03-02 ")) else {
        panic!("not said");
    };
    assert_eq!(home.entries().len(), 4, "looking erases nothing");
    let Does::EraseDaysNow { from, to } = screen.confirm.does else { panic!("another") };
    let seen = home.seen(WholeRequest::Erase(Erase::Days { from, to }));
    assert_eq!(name(&seen.view), "done");
    assert!(seen.duties.iter().any(|duty| matches!(duty, Duty::PlanReminders(_))));
    let left = home.entries();
    assert_eq!((left.len(), left[0]), (2, kept));
    assert_eq!(home.phone.keys(), 1);
    home.again();
    home.begin();
    assert_eq!(name(&home.give("4711")), "today", "the code stays");
    // One entry.
    assert_eq!(name(&home.press(Does::EraseEntry { of: kept })), "erase");
    assert_eq!(name(&home.press(Does::EraseEntryNow { of: kept })), "done");
    assert!(!home.entries().contains(&kept));
}
