//! Any programme and any form, at random.

use proptest::prelude::*;

use super::super::*;
use super::{english, given};
use crate::programme::arbitrary;
use crate::programme::check::check;
use crate::programme::read::read;
use crate::programme::readback::read_back;
use crate::programme::rule::Rule;

/// What the form cannot tell apart: a way up without a condition is no way up.
fn as_typed(mut programme: Programme) -> Programme {
    let tidy = |rule: &mut Rule| {
        if rule.step_up.as_ref().is_some_and(|up| up.all_of.is_empty()) {
            rule.step_up = None;
        }
    };
    programme.rule.iter_mut().for_each(tidy);
    programme.steps.iter_mut().filter_map(|step| step.rule.as_mut()).for_each(tidy);
    programme
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Any programme that the types allow comes back from its draft, whether written correctly or not; and
    /// each mistake and warning stands at a place that the draft has.
    #[test]
    fn p1_any_programme_comes_back_from_its_draft(programme in arbitrary::programme()) {
        let programme = as_typed(programme);
        let draft = Draft::from(&programme);
        let checked = draft.check(&given(&programme));
        prop_assert!(checked.so_far.whole.as_ref() == Some(&programme));
        let found = check(&programme);
        prop_assert_eq!(checked.mistakes.len(), found.errors.len());
        prop_assert_eq!(checked.programme.is_some(), found.errors.is_empty());
        let tree = draft.tree();
        for place in checked.mistakes.iter().map(|one| &one.place)
            .chain(checked.notices.iter().map(|one| &one.place))
        {
            prop_assert!(tree.has(place.as_str()), "{}", place);
        }
        let words = english();
        for mistake in &checked.mistakes {
            prop_assert!(!mistake.say(&draft, &words).is_empty());
        }
        let said: Vec<String> =
            draft.said(&checked, &words).into_iter().flat_map(|said| said.sentences).collect();
        if found.errors.is_empty() {
            prop_assert_eq!(said, read_back(&programme, &words));
        }
    }

    /// Whatever is sent and pressed, a draft stays a draft, can be checked and read back, and is kept whole.
    #[test]
    fn a_draft_bears_anything(
        programme in arbitrary::programme(),
        sent in proptest::collection::vec((field(), "\\PC{0,12}"), 0..12),
        pressed in proptest::collection::vec(press(), 0..8),
    ) {
        let mut draft = Draft::from(&programme);
        let mut presses = pressed.iter();
        for (name, text) in &sent {
            draft.put([(name.as_str(), text.as_str())]);
            if let Some(change) = presses.next() {
                let before = draft.shape;
                if draft.change(change).is_some() {
                    prop_assert_eq!(draft.shape, before + 1);
                }
            }
        }
        let checked = draft.check(&given(&programme));
        let _said = draft.said(&checked, &english());
        let kept = serde_json::to_string(&draft).unwrap();
        prop_assert!(serde_json::from_str::<Draft>(&kept).unwrap() == draft);
        if let Some(programme) = checked.programme {
            prop_assert!(check(&programme).errors.is_empty());
            prop_assert!(read(text_of(&programme).unwrap().as_bytes()).unwrap() == programme);
        }
    }
}

fn field() -> impl Strategy<Value = String> {
    let names: Vec<&'static str> = crate::programme::draft::names::fields().collect();
    (
        prop::sample::select(names),
        0..4_usize,
        0..3_usize,
        prop::sample::select(vec!["step_up", "step_back", "pause"]),
    )
        .prop_map(|(name, one, other, part)| {
            let name = name.replace("rule.#", &format!("rule.{part}.#"));
            name.replacen('#', &one.to_string(), 1).replacen('#', &other.to_string(), 1)
        })
}

fn press() -> impl Strategy<Value = Change> {
    let item = (
        prop::sample::select(vec![
            "steps",
            "steps.0.parts",
            "practices",
            "rule.step_up",
            "recipients",
            "goals",
        ]),
        0..3_usize,
    )
        .prop_map(|(list, at)| format!("{list}.{at}"));
    prop_oneof![
        Just(Change::PutBack),
        Just(Change::Add { list: "steps".to_owned(), sort: None }),
        Just(Change::Add { list: "practices".to_owned(), sort: None }),
        Just(Change::Add { list: "rule".to_owned(), sort: None }),
        Just(Change::Remove("rule".to_owned())),
        item.clone().prop_map(Change::Remove),
        item.clone().prop_map(Change::Up),
        item.clone().prop_map(Change::Down),
        item.prop_map(Change::Copy),
    ]
}
