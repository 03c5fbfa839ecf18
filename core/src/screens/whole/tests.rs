//! Every record of this room in each language that people speak, held still; and what must not stand in those that
//! anyone may read.

use serde::Serialize;
use serde_json::Value;

use super::*;
use crate::companion::Trouble;
use crate::diary::entry::EntryId;
use crate::ports::sim::SeededRandom;
use crate::screens::{Covered, Does, Lock};
use crate::sealing::RecoveryPhrase;
use crate::words::Words;

/// The record in every language that people speak, one below the other.
fn held<T: Serialize>(name: &str, make: impl Fn(&Words) -> T) {
    let people = Words::offered(false).into_iter().filter(|one| one.pseudo.is_none());
    let shown: Vec<(&str, Value)> = people
        .map(|language| {
            let words = Words::for_language(language.tag);
            (language.tag, serde_json::to_value(make(&words)).unwrap())
        })
        .collect();
    assert!(shown.len() > 1);
    insta::with_settings!({ omit_expression => true }, {
        insta::assert_json_snapshot!(name, shown);
    });
}

fn phrase() -> RecoveryPhrase {
    RecoveryPhrase::new(&SeededRandom::new(77)).unwrap()
}

#[test]
fn before_the_lock() {
    held("no_diary", NoDiaryScreen::new);
    held("code", |words| CodeScreen::new(words, 0, vec![]));
    held("code_wrong", |words| {
        CodeScreen::new(words, 95_001, vec![Problem::new(words, FormField::Code, Amiss::CodeWrong)])
    });
}

/// Hazards H11 and H36: whoever reads it learns nothing of what is behind it, and whoever needs help is not kept waiting.
#[test]
fn while_a_code_is_asked_for_the_emergency_line_stands_there_and_nothing_else() {
    for language in Words::offered(false) {
        let words = Words::for_language(language.tag);
        let line = words.text("phone-code-wait-emergency", &[]);
        for wait in [0, 5_000] {
            let screen = CodeScreen::new(&words, wait, vec![]);
            let mut texts = Vec::new();
            gather(&serde_json::to_value(&screen).unwrap(), &mut texts);
            let said = texts.iter().filter(|(_, text)| *text == line).count();
            assert_eq!(said, 1, "{}: {wait}", language.tag);
            let does: Vec<Does> = screen.actions.iter().map(|action| action.does).collect();
            assert_eq!(does, [Does::OpenByPhrase], "{}", language.tag);
        }
    }
}

#[test]
fn a_code_is_chosen_and_taken_away() {
    held("set_code_first", |words| SetCodeScreen::new(words, false, false, 0, vec![]));
    held("set_code_again", |words| {
        let short = Amiss::CodeTooShort { least: 4 };
        let problems = vec![
            Problem::new(words, FormField::New, short),
            Problem::new(words, FormField::Again, Amiss::CodesDiffer),
            Problem::new(words, FormField::Code, Amiss::CodeMissing),
        ];
        SetCodeScreen::new(words, true, true, 200_000, problems)
    });
}

#[test]
fn twelve_words() {
    held("phrase", |words| PhraseScreen::new(words, Lock::Phone, &phrase()));
    held("phrase_check", |words| {
        let field = FormField::Word { place: 9 };
        PhraseCheckScreen::new(words, &[3, 9], vec![Problem::new(words, field, Amiss::OtherWord)])
    });
    held("open_by_phrase", |words| {
        let problems = vec![
            Problem::new(words, FormField::Phrase, Amiss::NotAPhrase),
            Problem::new(words, FormField::Phrase, Amiss::OtherPhrase),
        ];
        OpenByPhraseScreen::new(words, Lock::Code, problems)
    });
    held("phrase_at_a_desk", |words| {
        (
            PhraseScreen::new(words, Lock::Passphrase, &phrase()),
            OpenByPhraseScreen::new(words, Lock::Passphrase, vec![]),
        )
    });
}

#[test]
fn copies() {
    held("copy", |words| CopyScreen::new(words, EntryId([7; 16])));
    held("restore_choice", |words| RestoreChoiceScreen::new(words, true, true));
    held("restore_choice_none", |words| RestoreChoiceScreen::new(words, false, false));
    held("restore_copy", |words| {
        let problems = vec![
            Problem::new(words, FormField::File, Amiss::FileMissing),
            Problem::trouble(words, FormField::Phrase, &Trouble::WrongPhrase),
        ];
        RestoreCopyScreen::new(words, true, problems)
    });
}

#[test]
fn erasing_and_a_plan() {
    held("erase_days", |words| {
        let problems = vec![
            Problem::new(words, FormField::From, Amiss::DayMissing),
            Problem::new(words, FormField::To, Amiss::EndBeforeStart),
        ];
        EraseDaysScreen::new(words, "2026-05-04", "2026-05-01", problems)
    });
    held("erased", |words| {
        [Lock::Phone, Lock::Passphrase].map(|lock| ErasedScreen::new(words, lock))
    });
    held("add_plan", |words| {
        let problems = vec![Problem::new(words, FormField::Link, Amiss::LinkMissing)];
        AddPlanScreen::new(words, Lock::Phone, "FROND:AB", problems)
    });
    held("add_plan_at_a_desk", |words| AddPlanScreen::new(words, Lock::Passphrase, "", vec![]));
}

#[test]
fn done_and_sorry() {
    let done = [
        Done::CodeSet,
        Done::CodeRemoved,
        Done::PassphraseSet,
        Done::PhraseKept,
        Done::OpenedByPhrase,
        Done::PassphraseOpens,
        Done::ErasedSome,
        Done::NotMine,
    ];
    held("done", |words| done.map(|what| DoneScreen::new(words, what)));
    held("sorry", |words| {
        [true, false].map(|open| SorryScreen::new(words, &Trouble::FreeSpace, open))
    });
    held("sealing_a_summary", |words| {
        [
            (FormField::New, Amiss::PassphraseMissing),
            (FormField::Again, Amiss::PassphrasesDiffer),
            (FormField::Way, Amiss::WayMissing),
            (FormField::Way, Amiss::NotSealed),
            (FormField::Way, Amiss::NobodyNamed),
        ]
        .map(|(field, amiss)| Problem::new(words, field, amiss))
    });
}

/// What an Android phone does.
const COVERED: Covered = Covered {
    screen: true,
    pictures: true,
    keyboard: true,
    backups: true,
    reminders: true,
    leaves: true,
};

#[test]
fn the_words_of_a_phones_own_controls() {
    held("form_words", |words| FormWords::new(words, COVERED));
}

#[test]
fn an_app_that_cannot_leave_by_itself_does_not_say_that_it_does() {
    let words = Words::for_language("en");
    let frame = FormWords::new(&words, Covered { leaves: false, ..COVERED }).frame;
    assert_eq!(frame.leave, "Hide");
    assert!(frame.leave_spoken.contains("stays in the list of open apps"));
}

/// A wait that is said is never shorter than the wait.
#[test]
fn a_wait_is_said_in_full() {
    let words = Words::for_language("en");
    let said = |millis| Wait::of(&words, millis).map(|wait| wait.says[0].clone());
    assert_eq!(said(0), None);
    assert_eq!(said(1).unwrap(), "You can try again in one second.");
    assert_eq!(said(1_001).unwrap(), "You can try again in 2 seconds.");
    assert_eq!(said(99_000).unwrap(), "You can try again in 99 seconds.");
    assert_eq!(said(99_001).unwrap(), "You can try again in 2 minutes.");
    assert_eq!(said(121_000).unwrap(), "You can try again in 3 minutes.");
}

/// The twelve words are on the screen that shows them, and on no other.
#[test]
fn twelve_words_stand_on_one_screen_only() {
    let words = Words::for_language("en");
    let phrase = phrase();
    let screen = PhraseScreen::new(&words, Lock::Phone, &phrase);
    assert_eq!(screen.words, phrase.words().collect::<Vec<_>>());
    let check = serde_json::to_string(&PhraseCheckScreen::new(&words, &[3, 9], vec![])).unwrap();
    let said: Vec<&str> = check.split(|one: char| !one.is_alphabetic()).collect();
    for place in [3, 9] {
        assert!(!said.contains(&phrase.words().nth(place - 1).unwrap()));
    }
}

/// Every text of a record is said, in every language, the ones for trying out too.
#[test]
fn no_text_is_empty_and_no_message_is_missing() {
    for language in Words::offered(false) {
        let words = Words::for_language(language.tag);
        let all = serde_json::to_value((
            FormWords::new(&words, COVERED),
            NoDiaryScreen::new(&words),
            CodeScreen::new(&words, 5_000, vec![]),
            SetCodeScreen::new(&words, true, false, 5_000, vec![]),
            RestoreCopyScreen::new(&words, true, vec![]),
            AddPlanScreen::new(&words, Lock::Code, "x", vec![]),
        ));
        let mut texts = Vec::new();
        gather(&all.unwrap(), &mut texts);
        assert!(texts.len() > 150, "{}", texts.len());
        for (name, text) in texts.iter().filter(|(name, _)| name != "value") {
            assert!(!text.trim().is_empty(), "{}: {name}", language.tag);
            let id = text.starts_with("phone-") || text.starts_with("leaving-");
            assert!(!id && !text.contains("{$"), "{}: {name} {text}", language.tag);
        }
    }
}

/// Every text of a value, with the name of its field.
fn gather(value: &Value, into: &mut Vec<(String, String)>) {
    match value {
        Value::Array(all) => all.iter().for_each(|one| gather(one, into)),
        Value::Object(all) => {
            for (name, one) in all {
                match one {
                    Value::String(text) => into.push((name.clone(), text.clone())),
                    other => gather(other, into),
                }
            }
        }
        Value::String(text) => into.push((String::new(), text.clone())),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}
