//! Whether a summary goes on from an older one: what it lacks is found, and nothing that it says itself is held against it.

use frond_core::diary::entry::{Content, Entry, EntryId, SignNoted};
use frond_core::moment::Stamp;
use frond_core::programme::values::Count;
use frond_core::safety::{Sign, Tier};
use frond_core::summary::{Lacking, Selection, Summary};
use frond_tests::invented::Invented;

use super::rule_diary::{Diary, at, sit, strike};
use super::{diary, identity};

/// Made of these entries alone.
fn of(entries: &[Entry], selection: &Selection) -> Summary {
    Summary::of(entries, &identity(), selection, &at(17, 9)).unwrap()
}

fn whole(entries: &[Entry]) -> Summary {
    of(entries, &Selection::default())
}

/// What a person wrote first: neither what puts it right or leaves it out, nor a machine's mark.
fn written_first(entry: &Entry) -> bool {
    let later = matches!(entry.what, Content::Correction { .. } | Content::Strike { .. });
    !later && entry.what.is_persons()
}

/// The diary with a mark behind it. Ids are counted in these tests; this one is no other's.
fn mark(what: Content) -> Diary {
    let mut diary = diary();
    diary.say(at(16, 21), what);
    diary.0.last_mut().unwrap().id = EntryId([0xaa; 16]);
    diary
}

fn erased(latest: Stamp) -> Content {
    Content::ErasedMark { latest, caution_open: false, pause_open: false }
}

#[test]
fn what_goes_on_lacks_nothing_of_what_was_before() {
    for number in 0..12 {
        let one = Invented::new(number, 38);
        let newest = one.summary();
        for entries in (1..one.entries.len()).step_by(7) {
            assert_eq!(newest.lacks_of(&one.earlier(entries)), None, "{number}: {entries}");
        }
        assert_eq!(newest.lacks_of(&newest), None);
    }
    let all = diary().0;
    for entries in 1..all.len() {
        assert_eq!(whole(&all).lacks_of(&whole(&all[..entries])), None, "{entries}");
    }
}

#[test]
fn every_entry_that_only_the_older_one_holds_is_counted_with_its_days() {
    let all = diary().0;
    // The older one was made of the first; the newer one never had those in between.
    for from in 1..all.len() {
        for to in from + 1..=all.len() {
            let newer = [&all[..from], &all[to..]].concat();
            let lost: Vec<&Entry> =
                all[from..to].iter().filter(|entry| written_first(entry)).collect();
            let lacking = whole(&newer).lacks_of(&whole(&all[..to]));
            assert_eq!(lacking.map_or(0, |lacking| lacking.entries), lost.len(), "{from}..{to}");
            let Some(lacking) = lacking else { continue };
            // The first entry was put right before anything here is cut, and its day with it.
            let days = || lost.iter().map(|entry| entry.happened.day());
            assert_eq!(Some((lacking.first, lacking.last)), days().min().zip(days().max()));
            let signs = lost.iter().any(|entry| !entry.what.signs().is_empty());
            assert_eq!(lacking.signs, signs, "{from}..{to}");
        }
    }
}

#[test]
fn a_sign_that_was_left_out_again_is_none() {
    let mut diary = diary();
    let before = diary.0.clone();
    let signs = vec![SignNoted { sign: Sign::Fever, tier: Tier::Stop }];
    let sign = diary.say(at(16, 21), Content::SignReported { signs, note: None });
    let lacking = whole(&before).lacks_of(&whole(&diary.0)).unwrap();
    assert_eq!((lacking.entries, lacking.signs), (1, true));
    diary.say(at(16, 22), strike(sign));
    let lacking = whole(&before).lacks_of(&whole(&diary.0)).unwrap();
    assert_eq!((lacking.entries, lacking.signs), (1, false));
}

#[test]
fn what_was_erased_is_nobodys_business() {
    let mut older = diary();
    let newer = mark(erased(at(16, 20)));
    older.say(at(16, 21), sit(150, Some(2)).what());
    assert!(whole(&diary().0).lacks_of(&whole(&older.0)).is_some());
    assert_eq!(whole(&newer.0).lacks_of(&whole(&older.0)), None);
    // Nor where it was the older one in which something was erased.
    older.say(at(16, 22), erased(at(16, 20)));
    assert_eq!(whole(&diary().0).lacks_of(&whole(&older.0)), None);
    // An erasing that both know explains nothing.
    assert!(whole(&newer.0).lacks_of(&whole(&older.0)).is_some());
}

#[test]
fn as_many_as_damage_took_are_explained_by_it_and_no_more() {
    let missing = |count: u64| {
        let entries = Count::try_from(count).unwrap();
        mark(Content::MissingMark { entries, after: None, before: None }).0
    };
    let mut older = diary();
    older.say(at(16, 20), sit(150, Some(2)).what());
    older.say(at(16, 21), sit(150, Some(3)).what());
    let older = whole(&older.0);
    assert!(whole(&missing(1)).lacks_of(&older).is_some_and(|lacking| lacking.entries == 2));
    assert_eq!(whole(&missing(2)).lacks_of(&older), None);
}

#[test]
fn what_was_left_out_by_choice_is_not_lacking() {
    let all = diary().0;
    let older = whole(&all);
    for selection in [
        Selection { from: Some(at(9, 0).day()), ..Selection::default() },
        Selection { to: Some(at(4, 0).day()), ..Selection::default() },
        Selection { questions: false, notes: false, ..Selection::default() },
    ] {
        assert_eq!(of(&all, &selection).lacks_of(&older), None, "{selection:?}");
    }
    // Of the days that it does show nothing may be lacking.
    let last = all.len() - 1;
    let from = Selection { from: Some(all[last].happened.day()), ..Selection::default() };
    let lacking = of(&all[..last], &from).lacks_of(&older).unwrap();
    let day = all[last].happened.day();
    assert_eq!(lacking, Lacking { entries: 1, first: day, last: day, signs: true });
}
