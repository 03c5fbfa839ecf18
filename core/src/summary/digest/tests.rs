//! A digest says what its summary says, and its bytes are read strictly.

use std::sync::Arc;

use zeroize::Zeroizing;

use super::*;
use crate::diary::entry::{Ended, Entry, EntryId, Ratings, Session, SignNoted, UsedPart};
use crate::programme::values::{Position, Practice, Size};
use crate::safety::Sign;
use crate::sealing::SigningKey;
use crate::summary::{DiaryIdentity, Selection, Summary, open_summary};

fn stamp(text: &str) -> Stamp {
    text.parse().unwrap()
}

fn identity() -> DiaryIdentity {
    DiaryIdentity { id: DiaryId([7; 16]), key: SigningKey::from_seed(&Zeroizing::new([9; 32])) }
}

fn entry(number: u8, at: &str, what: Content) -> Entry {
    let at = stamp(at);
    Entry { id: EntryId([number; 16]), written: at, happened: at, uptime: None, what }
}

fn session(signs: Vec<SignNoted>) -> Content {
    Content::Session(Session {
        practice: Practice::Trainer,
        parts: vec![UsedPart {
            widest_diameter_tenths_mm: Some(Size::new(120).unwrap()),
            practised_seconds: 300,
        }],
        position: Position::OnBack,
        ended: Ended::Finished,
        ratings: Ratings::default(),
        signs,
        note: None,
    })
}

fn plan() -> Content {
    let text = include_str!("../../../../bindings/desk/src/scenario/programme-1.json");
    let read: Programme = serde_json::from_str(text).unwrap();
    let carried = Arc::from(text);
    Content::ProgrammeAccepted {
        programme: read.id,
        revision: read.revision,
        carried,
        signed: None,
        although: Vec::new(),
    }
}

fn received(entries: &[Entry], selection: &Selection) -> Received {
    let now = stamp("2026-03-20T20:00:00+00:00");
    let summary = Summary::of(entries, &identity(), selection, &now).unwrap();
    open_summary(&summary.open_form(&identity()).unwrap(), None).unwrap()
}

fn entries() -> Vec<Entry> {
    let fever = SignNoted { sign: Sign::Fever, tier: Sign::Fever.tier() };
    let struck = Content::Strike { of: EntryId([4; 16]) };
    vec![
        entry(1, "2026-03-02T16:00:00+00:00", plan()),
        entry(2, "2026-03-05T19:00:00+00:00", session(Vec::new())),
        entry(3, "2026-03-07T19:00:00+00:00", session(vec![fever])),
        entry(4, "2026-03-09T19:00:00+00:00", session(Vec::new())),
        entry(5, "2026-03-09T19:05:00+00:00", struck),
    ]
}

#[test]
fn it_says_what_the_summary_says_and_comes_back_from_its_bytes() {
    let received = received(&entries(), &Selection::default());
    let digest = Digest::of(&received);
    assert_eq!(digest.nickname.as_ref().map(Line::as_str), Some("Wren (invented)"));
    assert_eq!(digest.programme.as_ref().map(|(_, revision)| revision.get()), Some(1));
    assert_eq!(digest.step.as_ref().map(Line::as_str), Some("Size 1, on your back"));
    // What was left out does not count as practised.
    assert_eq!((digest.sessions, digest.entries), (2, 5));
    assert_eq!(digest.practised.unwrap().to_string(), "2026-03-07");
    assert_eq!((digest.open_signs, digest.gravest), (1, Some(Sign::Fever.tier())));
    assert!(digest.is_open() && !digest.time_alone && !digest.narrowed);
    assert_eq!(
        (digest.first.to_string(), digest.last.to_string()),
        ("2026-03-02".into(), "2026-03-20".into())
    );
    assert_eq!(digest.from(), Some(identity().pin()));
    assert_eq!(Digest::decode(&digest.encode().unwrap()), Some(digest));
}

#[test]
fn a_narrowed_one_shows_the_days_chosen() {
    let from = "2026-03-06".parse().ok();
    let digest = Digest::of(&received(&entries(), &Selection { from, ..Selection::default() }));
    assert_eq!(digest.first.to_string(), "2026-03-06");
    assert!(digest.narrowed);
}

#[test]
fn an_empty_diary_has_one_too() {
    let digest = Digest::of(&received(&[], &Selection::default()));
    assert_eq!((digest.nickname.clone(), digest.practised, digest.sessions), (None, None, 0));
    assert_eq!((digest.first, digest.last), (digest.made.day(), digest.made.day()));
    assert_eq!(Digest::decode(&digest.encode().unwrap()), Some(digest));
}

#[test]
fn bytes_of_another_version_or_cut_short_are_no_digest() {
    let bytes = Digest::of(&received(&entries(), &Selection::default())).encode().unwrap();
    for end in 0..bytes.len() {
        assert_eq!(Digest::decode(&bytes[..end]), None, "{end}");
    }
    let mut other = bytes.clone();
    other[0] += 1;
    assert_eq!(Digest::decode(&other), None);
    let mut longer = bytes;
    longer.push(0);
    assert_eq!(Digest::decode(&longer), None);
}

#[test]
fn the_same_summary_is_known_again_and_another_is_not() {
    let (one, again) =
        (received(&entries(), &Selection::default()), received(&entries(), &Selection::default()));
    assert_eq!(one.id, again.id);
    let other = received(&entries()[..3], &Selection::default());
    assert_ne!(one.id, other.id);
}

#[test]
fn one_holds_more_than_another_only_where_nothing_explains_it() {
    let of = |entries: &[Entry]| Digest::of(&received(entries, &Selection::default()));
    let (whole, part) = (of(&entries()), of(&entries()[..3]));
    assert!(whole.holds_more_than(&part));
    assert!(!part.holds_more_than(&whole) && !whole.holds_more_than(&whole));
    let changed = |change: fn(&mut Digest)| {
        let mut part = part.clone();
        change(&mut part);
        part
    };
    assert!(!whole.holds_more_than(&changed(|part| part.narrowed = true)), "left out");
    assert!(!whole.holds_more_than(&changed(|part| part.erased = 1)), "erased");
    assert!(
        whole.holds_more_than(&changed(|part| part.missing = 1)),
        "two are gone, and one by damage"
    );
    assert!(!whole.holds_more_than(&changed(|part| part.missing = 2)), "damage");
    // What was damaged before both is missing in both.
    let mut before = whole.clone();
    before.missing = 2;
    assert!(before.holds_more_than(&changed(|part| part.missing = 2)));
    // That something was left out of the one that holds more takes nothing from it.
    let mut shorter = whole;
    shorter.narrowed = true;
    assert!(shorter.holds_more_than(&part));
}
