//! The letter for another clinician: what stands in it, what never can, and its words. All invented.

#[path = "fhir/made.rs"]
mod made;
mod rule_diary;

use frond_core::programme::values::{Line, Passage};
use frond_core::screens::{Agreed, Letter, LetterReader, LetterTyped};
use frond_core::sealing::{Identity, OpenWith, SealTo};
use frond_core::summary::{Facts, Summary, TimeAlone, open_summary};
use frond_core::words::Words;
use rule_diary::at;

fn typed() -> LetterTyped {
    LetterTyped {
        person: Line::new("Invented Person").unwrap(),
        known_by: Some(Line::new("Born 1 January 1990").unwrap()),
        to: Passage::new("Dr Ada Invented\n\nWillow Lane clinic").unwrap(),
        from: Line::new("Ida Invented, physical therapist").unwrap(),
        reached_at: None,
        date: at(41, 0).day(),
        view: Some(Passage::new("The second step came too soon.").unwrap()),
        next: None,
        request: Passage::new("Please look again before we go on.").unwrap(),
    }
}

fn letter(summary: &Summary, language: &str, reader: LetterReader) -> Letter {
    let facts = Facts::of(summary).unwrap();
    let agreed = Agreed::ticked(true).unwrap();
    Letter::new(&typed(), &facts, agreed, &Words::for_language(language), reader)
}

fn text(letter: &Letter) -> String {
    letter.lines().collect::<Vec<_>>().join("\n")
}

#[test]
fn its_words_are_held_still() {
    let summary = made::plain();
    insta::assert_snapshot!("letter", text(&letter(&summary, "en", LetterReader::Clinician)));
    insta::assert_snapshot!("copy", text(&letter(&summary, "en", LetterReader::Person)));
    insta::assert_snapshot!("letter_es", text(&letter(&summary, "es", LetterReader::Clinician)));
    insta::assert_snapshot!("copy_es", text(&letter(&summary, "es", LetterReader::Person)));
    insta::assert_snapshot!(
        "letter_narrowed",
        text(&letter(&made::narrowed(), "en", LetterReader::Clinician))
    );
    insta::assert_snapshot!(
        "letter_empty",
        text(&letter(&made::empty(), "en", LetterReader::Clinician))
    );
}

#[test]
fn no_note_question_nickname_name_or_wish_can_stand_in_it() {
    // A made-up word for each thing that must stay away, wherever words may stand.
    let plan = rule_diary::programme(1, rule_diary::ladder(), serde_json::json!({}));
    let diary = made::told(&plan, &["NOTEONE", "NOTETWO", "WITHWHOM"]);
    let summary = made::summary(&diary, 40, &Default::default());
    let key = Identity::parse(
        "AGE-SECRET-KEY-1V9HZQ6TWWEJKUAR9VSSXKETE9SSXJAPQDACX2MNNYPKXJAR5D3JSRUDF5S",
    )
    .unwrap();
    let to = SealTo::Recipients(vec![key.recipient()]);
    let sealed = summary.sealed_form(&made::identity(), &to, TimeAlone::Please).unwrap();
    let received = open_summary(&sealed, Some(&OpenWith::Identities(vec![key]))).unwrap().summary;
    assert!(received.asks_time_alone());
    let carried = serde_json::to_string(&received).unwrap();
    for language in ["en", "es"] {
        for reader in [LetterReader::Clinician, LetterReader::Person] {
            let with = letter(&received, language, reader);
            let said = serde_json::to_string(&with).unwrap();
            for word in ["NOTEONE", "NOTETWO", "WITHWHOM", "QUESTION", "Wren"] {
                assert!(carried.contains(word), "the summary carries {word}");
                assert!(!said.contains(word), "{language}: {word}");
            }
            // With the wish or without it, the letter is the same.
            assert_eq!(with, letter(&summary, language, reader));
        }
    }
    assert!(Agreed::ticked(false).is_none(), "without agreement there is no letter");
}

#[test]
fn what_is_open_is_told_whatever_days_were_chosen() {
    let plan = rule_diary::programme(1, rule_diary::ladder(), serde_json::json!({}));
    let diary = made::told(&plan, &["One", "Two"]);
    let selection =
        frond_core::summary::Selection { from: Some(at(28, 0).day()), ..Default::default() };
    let facts = Facts::of(&made::summary(&diary, 40, &selection)).unwrap();
    let open: Vec<_> = facts
        .signs
        .iter()
        .filter(|one| one.since == frond_core::summary::facts::SignSince::Open)
        .collect();
    assert!(!open.is_empty(), "signs that are open lie before the days chosen");
}
