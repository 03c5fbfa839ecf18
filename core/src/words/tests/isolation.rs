//! Values that run the other way than the sentence around them.

use super::*;

const ISOLATE: char = '\u{2068}';
const POP_ISOLATE: char = '\u{2069}';

#[test]
fn isolation_marks_only_when_asked_for() {
    let value = [("name", "Anna".into())];
    assert_eq!(invented(false).text("t-name", &value), "Hello Anna");
    assert_eq!(invented(true).text("t-name", &value), "Hello \u{2068}Anna\u{2069}");
    for language in Words::offered(false) {
        let plain = Words::for_language(language.tag);
        assert!(!plain.text("call-emergency", &call()).contains(ISOLATE), "{}", language.tag);
        let marked = Words::with_isolation(language.tag).in_language(language.tag);
        let said = marked.text("call-emergency", &call());
        assert_eq!(said.matches(ISOLATE).count(), 2, "{}: {said:?}", language.tag);
        let needed = Words::isolated("en", Isolation::InRightToLeft).in_language(language.tag);
        let said = needed.text("call-emergency", &call()).contains(ISOLATE);
        assert_eq!(said, language.direction == Direction::RightToLeft, "{}", language.tag);
    }
}

fn call() -> [(&'static str, Value); 2] {
    [("number", "112".into()), ("country", "Ireland".into())]
}

/// A name in Hebrew inside a Latin sentence, and a Latin one inside a mirrored sentence: each stands
/// between its own pair of marks, so that the sentence around it keeps its order.
#[test]
fn a_value_of_the_other_direction_is_isolated_in_every_message() {
    for language in Words::offered(false) {
        let words = Words::with_isolation(language.tag);
        for (id, names) in used::messages(language) {
            let value =
                if language.direction == Direction::LeftToRight { "שלום" } else { "Anna" };
            let values: Vec<(&str, Value)> =
                names.iter().map(|name| (name.as_str(), value.into())).collect();
            let said = words.filled(&id, &values, &mut Vec::new()).unwrap();
            let inserted = said.matches(value).count();
            // A message that is nothing but its value has nothing to be isolated from.
            let alone = said.trim_matches([ISOLATE, POP_ISOLATE]) == value;
            let isolated = said.matches(&format!("{ISOLATE}{value}{POP_ISOLATE}")).count();
            assert!(alone || isolated == inserted, "{} {id}: {said:?}", language.tag);
            let opened = said.matches(ISOLATE).count();
            assert_eq!(opened, said.matches(POP_ISOLATE).count(), "{} {id}", language.tag);
        }
    }
}
