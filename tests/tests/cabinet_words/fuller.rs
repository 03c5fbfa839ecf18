//! A summary that was made while the phone's clock stood ahead seems the newest for as long. What a fuller one of the same
//! diary holds is then said in the list of people and beside a plan's next revision. All invented.

use chrono::TimeDelta;
use frond_core::moment::Stamp;
use frond_core::programme::values::Revision;
use frond_core::screens::{
    OlderSummaries, PeopleAsked, PeopleOrder, PeopleScreen, PersonLine, PlanNews,
};
use frond_core::summary::{Digest, Selection, Summary};
use frond_core::words::Words;
use frond_tests::invented::Invented;
use serde_json::json;

use super::{both, received};

/// So many days after this.
fn later(than: &Stamp, days: i64) -> Stamp {
    let millis = than.millis() + TimeDelta::days(days).num_milliseconds();
    Stamp::from_millis(millis, *than.local().offset(), None).unwrap()
}

/// Whose summary has something open, with the digest of it and of one that was made before that was written, while the
/// clock stood three hundred days ahead.
fn clock_ahead() -> (Invented, Digest, Digest) {
    let one = (0..50).map(|number| Invented::new(number, 21)).find(|one| digest(one).is_open());
    let one = one.unwrap();
    let ahead = later(&one.end, 300);
    let of = |entries: usize| {
        let entries = &one.entries[..entries];
        let summary = Summary::of(entries, &one.identity(), &Selection::default(), &ahead).unwrap();
        Digest::of(&received(&summary, &one))
    };
    let before = (1..one.entries.len()).rev().map(of).find(|digest| !digest.is_open()).unwrap();
    let whole = digest(&one);
    (one, whole, before)
}

fn digest(of: &Invented) -> Digest {
    Digest::of(&received(&of.summary(), of))
}

fn list(words: &Words, all: &[&Digest]) -> Vec<PersonLine> {
    let asked = PeopleAsked { order: PeopleOrder::OpenFirst, ..PeopleAsked::default() };
    PeopleScreen::new(words, all.iter().copied(), &asked).people
}

#[test]
fn h38_a_fuller_summary_is_said_in_the_list_whatever_the_clock_said() {
    let (one, whole, before) = clock_ahead();
    let words = Words::for_language("en");
    let closed: Vec<Digest> = (50..90)
        .map(|number| Invented::new(number, 21))
        .filter(|other| !digest(other).is_open())
        .map(|other| {
            let summary = Summary::of(
                &other.entries,
                &other.identity(),
                &Selection::default(),
                &later(&one.end, 400),
            );
            Digest::of(&received(&summary.unwrap(), &other))
        })
        .filter(|other| !other.is_open())
        .collect();
    assert!(closed.len() > 2);
    let mut all: Vec<&Digest> = closed.iter().collect();
    let alone = all.len();
    all.push(&before);
    let line = |people: &[PersonLine]| {
        people.iter().position(|line| line.diary == whole.diary).map(|at| (at, people[at].clone()))
    };
    let (_, without) = line(&list(&words, &all)).unwrap();
    assert!(!without.marks.iter().any(|mark| mark.contains("holds more")));
    all.push(&whole);
    let people = list(&words, &all);
    let (at, with) = line(&people).unwrap();
    assert_eq!((at, people.len()), (0, alone + 1), "what is open in it stands first");
    assert_eq!(with.newest, before.summary);
    assert!(with.marks.iter().any(|mark| mark.contains("holds more entries")));
    assert!(with.marks.iter().any(|mark| mark.contains("is open in that one")));
    // In the order in which they were made there is nothing to say.
    let earlier = Digest::of(&received(&one.earlier(5), &one));
    let (_, plain) = line(&list(&words, &[&whole, &earlier])).unwrap();
    assert!(!plain.marks.iter().any(|mark| mark.contains("holds more")));
}

#[test]
fn h35_a_diary_stands_in_the_list_by_its_newest_summary() {
    let one = Invented::new(8, 21);
    let (newest, earlier) = (digest(&one), Digest::of(&received(&one.earlier(15), &one)));
    for all in [[&newest, &earlier], [&earlier, &newest]] {
        let people = list(&Words::for_language("en"), &all);
        let read: Vec<_> = people.iter().map(|line| line.newest).collect();
        assert_eq!(read, [newest.summary], "one line, and the newest is read");
    }
}

#[test]
fn h42_a_fuller_summary_is_said_beside_the_next_revision() {
    let (one, whole, before) = clock_ahead();
    let (plan, used) = whole.programme.clone().unwrap();
    let next = Revision::try_from(u64::from(used.get()) + 1).unwrap();
    let shown = both(|words| {
        let all = [&before, &whole];
        let today = later(&one.end, 1).day();
        let news = PlanNews::new(words, all.into_iter(), &plan, next, today);
        let beside = |read: &Digest| {
            OlderSummaries::new(words, read.summary, all.into_iter(), 1).unwrap().says
        };
        let (list, fuller, seems_newest) = (list(words, &all), beside(&whole), beside(&before));
        json!({ "list": list, "news": news.says, "read": fuller, "seems newest": seems_newest })
    });
    let says = shown["en"]["news"].as_array().unwrap();
    assert!(says.iter().any(|line| line.as_str().unwrap().contains("holds more entries")));
    insta::assert_json_snapshot!(shown);
}
