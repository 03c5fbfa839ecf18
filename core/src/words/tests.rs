//! The words of each language, how they are filled in, and the gate for a release.

use super::files::Files;
use super::language::{nearest, offered};
use super::*;

mod blame;
mod frozen;
mod isolation;
mod locale;
mod pseudo;

const PLAIN: &str = "\
t-plain = Some words
t-days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
t-size = { $size } mm
t-name = Hello { $name }
";

static INVENTED: Language = Language {
    tag: "en-GB",
    name: "Invented for a test",
    rules: "en-GB",
    direction: Direction::LeftToRight,
    safety_text: Review::NotYet,
    pseudo: None,
    files: Files::Plain(&[("safety.ftl", PLAIN)]),
};

/// Reviewed, by an invented person, with the hash of `PLAIN`.
static REVIEWED: Language = Language {
    tag: "xx",
    name: "Invented and reviewed",
    rules: "en",
    direction: Direction::RightToLeft,
    safety_text: Review::Reviewed {
        by: "Invented Reviewer, physiotherapist",
        on: "2026-01-31",
        sha256: "2369f6331728003fab59642dc6cc86a5e43086540c815a9adc7b1632d42d43e5",
    },
    pseudo: None,
    files: Files::Plain(&[("safety.ftl", PLAIN)]),
};

fn invented(isolating: bool) -> Words {
    let bundle = Arc::new(bundle(&INVENTED, isolating));
    Words { language: &INVENTED, asked_for: None, isolation: Isolation::Never, bundle }
}

#[test]
fn every_file_parses_and_says_nothing_twice() {
    for language in Words::offered(false) {
        let mut bundle = FluentBundle::new_concurrent(vec![language.tag.parse().unwrap()]);
        for (name, source) in language.files() {
            let resource = FluentResource::try_new(source)
                .unwrap_or_else(|(_, errors)| panic!("{} {name}: {errors:?}", language.tag));
            bundle
                .add_resource(resource)
                .unwrap_or_else(|errors| panic!("{} {name}: {errors:?}", language.tag));
        }
    }
}

#[test]
fn every_message_fills_in_without_a_slip() {
    for language in Words::offered(false) {
        let words = Words::for_language(language.tag);
        for (id, names) in used::messages(language) {
            for number in [0, 1, 2, 11] {
                let values: Vec<(&str, Value)> =
                    names.iter().map(|name| (name.as_str(), number.into())).collect();
                let mut slips = Vec::new();
                let text = words.filled(&id, &values, &mut slips);
                assert!(slips.is_empty() && text.is_some(), "{} {id}: {slips:?}", language.tag);
            }
        }
    }
}

#[test]
fn numbers_and_their_plurals() {
    let words = invented(false);
    assert_eq!(words.text("t-days", &[("days", 1.into())]), "1 day");
    assert_eq!(words.text("t-days", &[("days", 14u16.into())]), "14 days");
    assert_eq!(words.text("t-size", &[("size", Value::decimal(22.0, 1))]), "22.0 mm");
    assert_eq!(words.text("t-size", &[("size", Value::decimal(22.449, 1))]), "22.4 mm");
    assert_eq!(words.text("t-size", &[("size", Value::decimal(22.5, 0))]), "23 mm");
    assert_eq!(words.text("t-size", &[("size", Value::decimal(-0.04, 1))]), "0.0 mm");
    let most = 1u64 << 53;
    assert_eq!(words.text("t-size", &[("size", most.into())]), "9,007,199,254,740,992 mm");
    assert_eq!(words.text("t-size", &[("size", (-3).into())]), "-3 mm");
}

#[test]
fn a_missing_message_or_value_still_gives_something_to_read() {
    let words = invented(false);
    assert_eq!(words.text("t-absent", &[]), "t-absent");
    assert_eq!(words.text("t-name", &[]), "Hello {$name}");
    assert_eq!(words.text("t-name", &[("other", "x".into())]), "Hello {$name}");
    assert_eq!(words.text("", &[]), "");
}

#[test]
fn text_of_a_person_goes_in_as_it_is() {
    let odd = "{ $name } { t-plain } \\u0041 \"quoted\"\nnext";
    assert_eq!(invented(false).text("t-name", &[("name", odd.into())]), format!("Hello {odd}"));
}

#[test]
fn an_unknown_language_falls_back_to_english_and_says_so() {
    for tag in ["en", "en-GB", "en_US", "EN", " en "] {
        let words = Words::for_language(tag);
        assert_eq!((words.language().tag, words.fell_back()), ("en", None), "{tag}");
    }
    for tag in ["tlh", "", "not a tag", "../../en", "e"] {
        let words = Words::for_language(tag);
        assert_eq!((words.language().tag, words.fell_back()), ("en", Some(tag)));
    }
}

#[test]
fn the_exact_region_goes_before_the_bare_language() {
    let all = vec![&en::LANGUAGE, &INVENTED];
    assert_eq!(nearest("en-GB", all.clone()).map(|one| one.tag), Some("en-GB"));
    assert_eq!(nearest("en-AU", all).map(|one| one.tag), Some("en"));
}

#[test]
fn a_release_offers_only_languages_with_reviewed_safety_text() {
    let all = [&en::LANGUAGE, &INVENTED, &REVIEWED];
    let tags = |release| offered(&all, release).iter().map(|one| one.tag).collect::<Vec<_>>();
    assert_eq!(tags(false), ["en", "en-GB", "xx"]);
    assert_eq!(tags(true), ["xx"]);
}

#[test]
fn a_review_holds_only_for_the_exact_text_a_person_and_a_day() {
    let Review::Reviewed { by, on, sha256 } = REVIEWED.safety_text else { panic!() };
    let with = |safety_text, files| Language { safety_text, files, ..REVIEWED_PARTS };
    let reviewed = |by, on, sha256| Review::Reviewed { by, on, sha256 };
    let files = REVIEWED.files;
    assert!(with(reviewed(by, on, sha256), files).safety_text_reviewed());
    let changed = Files::Plain(&[("safety.ftl", "t-plain = Some other words\n")]);
    assert!(!with(reviewed(by, on, sha256), changed).safety_text_reviewed());
    assert!(!with(reviewed(by, on, sha256), Files::Plain(&[])).safety_text_reviewed());
    assert!(!with(reviewed(" ", on, sha256), files).safety_text_reviewed());
    assert!(!with(reviewed(by, "soon", sha256), files).safety_text_reviewed());
    assert!(!with(reviewed(by, on, ""), files).safety_text_reviewed());
}

const REVIEWED_PARTS: Language = Language {
    tag: "xx",
    name: "",
    rules: "en",
    direction: Direction::LeftToRight,
    safety_text: Review::NotYet,
    pseudo: None,
    files: Files::Plain(&[]),
};

/// A mark that outlived a change of the text is taken back, or the text is read again.
#[test]
fn no_language_carries_a_review_of_another_text() {
    for language in Words::offered(false) {
        let marked = language.safety_text != Review::NotYet;
        assert_eq!(marked, language.safety_text_reviewed(), "language {}", language.tag);
    }
}

/// This test is to be turned round on the day a licensed clinician has signed a text off; until then no
/// release can be made.
#[test]
fn no_safety_text_is_reviewed_yet() {
    for language in Words::offered(false) {
        assert_eq!(language.safety_text, Review::NotYet, "{}", language.tag);
    }
    assert!(Words::offered(true).is_empty());
}

#[test]
fn debug_text_holds_no_words_of_a_person() {
    let shown = format!("{:?} {:?}", Value::from("secret"), Words::for_language("secret"));
    assert!(!shown.contains("secret"), "{shown}");
}
