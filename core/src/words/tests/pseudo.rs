//! The two languages for trying out.

use super::super::pseudo::{MARK, OVERRIDE, POP, is_file_name};
use super::*;

/// Every message of a language, filled with numbers, and with the English beside it.
fn beside_english(tag: &str) -> Vec<(String, String, String)> {
    let (english, other) = (Words::for_language("en"), Words::for_language(tag));
    assert_eq!(other.language().tag, tag);
    let messages = used::messages(&en::LANGUAGE);
    let say = |(id, names): (String, std::collections::BTreeSet<String>)| {
        let values: Vec<(&str, Value)> =
            names.iter().map(|name| (name.as_str(), 7.into())).collect();
        let (english, other) = (english.text(&id, &values), other.text(&id, &values));
        (id, english, other)
    };
    messages.into_iter().map(say).filter(|(_, english, _)| !is_file_name(english)).collect()
}

#[test]
fn longer_is_about_40_per_cent_longer_and_says_the_same() {
    let said = beside_english("en-XA");
    let letters = |pick: fn(&(String, String, String)) -> &String| {
        said.iter().map(|one| pick(one).chars().count()).sum::<usize>()
    };
    let ratio = letters(|one| &one.2) as f64 / letters(|one| &one.1) as f64;
    println!("longer: {ratio:.3} times the length of English");
    assert!((1.35..1.45).contains(&ratio), "{ratio}");
    for (id, english, longer) in said {
        assert!(longer.chars().count() >= english.chars().count(), "{id}");
        assert!(!longer.chars().any(|one| one.is_ascii_alphabetic()), "{id}: {longer}");
    }
}

#[test]
fn a_mirrored_message_is_english_with_every_word_between_marks() {
    for (id, english, mirrored) in beside_english("ar-XB") {
        let bare: String =
            mirrored.chars().filter(|one| ![MARK, OVERRIDE, POP].contains(one)).collect();
        assert_eq!(bare, english, "{id}");
        let mut inside = false;
        for letter in mirrored.chars() {
            match letter {
                OVERRIDE => {
                    assert!(!inside, "{id}: {mirrored:?}");
                    inside = true;
                }
                POP => {
                    assert!(inside, "{id}: {mirrored:?}");
                    inside = false;
                }
                _ => assert_eq!(inside, letter.is_alphabetic(), "{id}: {letter:?} in {mirrored:?}"),
            }
        }
        assert!(!inside, "{id}: {mirrored:?}");
    }
    let words = Words::for_language("ar-XB");
    assert_eq!(words.text("today-title", &[]), "\u{200F}\u{202E}Today\u{202C}\u{200F}");
    assert_eq!(words.language().direction, Direction::RightToLeft);
}

#[test]
fn what_is_put_into_a_message_stays_as_it_is() {
    let values = [("label", "Trainer “large”".into()), ("size", "22.5 mm".into())];
    for tag in ["en-XA", "ar-XB"] {
        let said = Words::for_language(tag).text("common-trainer", &values);
        assert_eq!(said, "Trainer “large”, 22.5 mm", "{tag}");
    }
    for tag in ["en-XA", "ar-XB"] {
        let name = Words::for_language(tag).text("leaving-calendar-file", &[]);
        assert_eq!(name, "calendar.ics", "{tag}");
    }
    let said = Words::for_language("en-XA").text("common-minutes", &[("minutes", 1.into())]);
    assert_eq!(said, "1 ɱîîñûûţéé");
}

#[test]
fn a_release_never_offers_them_whatever_is_reviewed() {
    let Review::Reviewed { by, on, .. } = REVIEWED.safety_text else { panic!() };
    let hash: &'static str = en::LANGUAGE.safety_text_hash().unwrap().leak();
    let safety_text = Review::Reviewed { by, on, sha256: hash };
    for pseudo in [Pseudo::Longer, Pseudo::Mirrored] {
        let with = |pseudo| -> &'static Language {
            Box::leak(Box::new(Language { safety_text, pseudo, ..en::LANGUAGE }))
        };
        assert_eq!(offered(&[with(Some(pseudo))], true).len(), 0);
        assert_eq!(offered(&[with(Some(pseudo))], false).len(), 1);
        assert_eq!(offered(&[with(None)], true).len(), 1);
    }
    let tags = |release| Words::offered(release).iter().map(|one| one.tag).collect::<Vec<_>>();
    assert!(tags(false).starts_with(&["en"]), "English first");
    assert!(tags(false).ends_with(&["en-XA", "ar-XB"]), "these two last");
    assert!(tags(true).is_empty(), "nothing is reviewed");
}

#[test]
fn nobody_gets_one_by_asking_for_a_language_that_people_speak() {
    for (tag, given) in [("ar", "en"), ("ar-EG", "en"), ("en-AU", "en"), ("es-MX", "es")] {
        assert_eq!(Words::for_language(tag).language().tag, given, "{tag}");
    }
    for tag in ["en-XA", "en_xa", "ar-XB"] {
        assert!(Words::for_language(tag).language().pseudo.is_some(), "{tag}");
    }
}
