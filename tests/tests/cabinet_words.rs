//! Every word of the cabinet's screens, in the situations that matter, held still, in English and Spanish. The
//! summaries are invented.

#[path = "cabinet_words/fuller.rs"]
mod fuller;

use frond_core::diary::entry::Entry;
use frond_core::ports::Passphrase;
use frond_core::programme::rule::Rule;
use frond_core::programme::values::Revision;
use frond_core::screens::{
    Brought, BroughtScreen, CabinetWhatIfScreen, ChartsScreen, OlderSummaries, PeopleAsked,
    PeopleOrder, PeopleScreen, PlanNews, RuleVerdict, WentApart, WhatIfScreen, WhyRefused,
};
use frond_core::sealing::{OpenError, OpenWith, SealTo};
use frond_core::summary::{
    DiaryId, Digest, Received, Selection, Summary, SummaryError, TimeAlone, open_summary,
};
use frond_core::words::Words;
use frond_tests::invented::Invented;
use serde_json::{Value, json};

fn both(of: impl Fn(&Words) -> Value) -> Value {
    json!({ "en": of(&Words::for_language("en")), "es": of(&Words::for_language("es")) })
}

macro_rules! value {
    ($screen:expr) => {
        serde_json::to_value($screen).unwrap()
    };
}

fn received(summary: &Summary, of: &Invented) -> Received {
    open_summary(&summary.open_form(&of.identity()).unwrap(), None).unwrap()
}

/// With the wish for time alone, which only a sealed one carries.
fn with_wish(of: &Invented) -> Received {
    let words = || Passphrase::new("invented".to_owned()).unwrap();
    let to = SealTo::Passphrase(words());
    let sealed = of.summary().sealed_form(&of.identity(), &to, TimeAlone::Please).unwrap();
    open_summary(&sealed, Some(&OpenWith::Passphrase(words()))).unwrap()
}

fn digests() -> Vec<Digest> {
    let mut all: Vec<Digest> = (0..8)
        .map(|number| Invented::new(number, 21))
        .map(|one| Digest::of(&received(&one.summary(), &one)))
        .collect();
    let one = Invented::new(8, 21);
    all.push(Digest::of(&with_wish(&one)));
    all.push(Digest::of(&received(&one.earlier(15), &one)));
    let mut identity = one.identity();
    identity.id = DiaryId([7; 16]);
    let empty = Summary::of(&[], &identity, &Selection::default(), &one.end).unwrap();
    let open = empty.open_form(&identity).unwrap();
    all.push(Digest::of(&open_summary(&open, None).unwrap()));
    all
}

#[test]
fn the_list_of_people() {
    let all = digests();
    let asked = |find: &str, order| PeopleAsked { find: find.to_owned(), order, page: 0 };
    let shown = both(|words| {
        json!({
            "nobody": value!(&PeopleScreen::new(words, [].into_iter(), &PeopleAsked::default())),
            "open first": value!(&PeopleScreen::new(words, all.iter(), &PeopleAsked::default())),
            "looked for in vain":
                value!(&PeopleScreen::new(words, all.iter(), &asked("zzz", PeopleOrder::Newest))),
        })
    });
    insta::assert_json_snapshot!(shown);
}

#[test]
fn each_order_is_what_it_says() {
    let (all, words) = (digests(), Words::for_language("en"));
    let names = |order| -> Vec<Digest> {
        let asked = PeopleAsked { order, ..PeopleAsked::default() };
        let screen = PeopleScreen::new(&words, all.iter(), &asked);
        let newest = screen.people.iter().map(|line| line.newest);
        newest.map(|id| all.iter().find(|one| one.summary == id).unwrap().clone()).collect()
    };
    assert_eq!(names(PeopleOrder::OpenFirst).len(), 10, "one line for each diary");
    assert!(names(PeopleOrder::Newest).is_sorted_by_key(|one| -one.made.millis()));
    assert!(names(PeopleOrder::LongestAgo).is_sorted_by_key(|one| one.practised));
    let nickname = |one: &Digest| one.nickname.as_ref().map(|name| name.as_str().to_lowercase());
    assert!(names(PeopleOrder::Nickname).is_sorted_by_key(nickname));
    let open_first = names(PeopleOrder::OpenFirst);
    let closed = open_first.iter().position(|one| !one.is_open()).unwrap();
    assert!(open_first[closed..].iter().all(|one| !one.is_open()), "what is open first");
}

#[test]
fn what_came_in_and_what_was_refused() {
    let brought = Brought {
        total: 40,
        done: 40,
        ended: true,
        new: 3,
        older: 1,
        known: 2,
        refused_more: 4,
        reading: false,
        failed: true,
    };
    let of = |error| WhyRefused::Summary(error);
    let all = [
        of(SummaryError::TooLong),
        of(SummaryError::NotASummary),
        of(SummaryError::Garbled { line: 1, column: 2 }),
        of(SummaryError::Form),
        of(SummaryError::Newer),
        of(SummaryError::Signature),
        of(SummaryError::Seal(OpenError::WrongKey)),
        of(SummaryError::Seal(OpenError::WrongPassphrase)),
        of(SummaryError::Seal(OpenError::TooMuchWork)),
        WhyRefused::OtherRecord,
        WhyRefused::NeedsPassphrase,
        WhyRefused::OtherKey,
        WhyRefused::Unreadable,
        WhyRefused::NotSealed,
        WhyRefused::NoRoom,
        WhyRefused::NotKept,
    ];
    let refused = || all.iter().map(|why| (Some("record.age".to_owned()), *why));
    let under_way = Brought { done: 12, ended: false, ..brought.clone() };
    let anew = Brought {
        reading: true,
        new: 0,
        older: 0,
        known: 0,
        refused_more: 0,
        failed: false,
        ..under_way.clone()
    };
    let nothing = Brought { total: 0, ended: true, ..Brought::default() };
    let shown = both(|words| {
        json!({
            "ended": value!(&BroughtScreen::new(words, &brought, refused())),
            "under way": value!(&BroughtScreen::new(words, &under_way, [].into_iter())),
            "read anew": value!(&BroughtScreen::new(words, &anew, [].into_iter())),
            "nothing": value!(&BroughtScreen::new(words, &nothing, [(None, WhyRefused::Unreadable)].into_iter())),
        })
    });
    insta::assert_json_snapshot!(shown);
}

#[test]
fn several_summaries_of_one_diary() {
    let one = Invented::new(8, 21);
    let newest = received(&one.summary(), &one);
    let earlier = received(&one.earlier(15), &one);
    let from = Some(one.end.day() - chrono::Days::new(7));
    let narrow = Selection { from, ..Selection::default() };
    let narrowed = Summary::of(&one.entries, &one.identity(), &narrow, &one.end).unwrap();
    let narrowed = received(&narrowed, &one);
    let shown = both(|words| {
        let of = |read: &Received, all: &[&Received], keys| {
            let digests: Vec<Digest> = all.iter().map(|one| Digest::of(one)).collect();
            let older = OlderSummaries::new(words, read.id, digests.iter(), keys);
            older.map(|older| {
                let lines: Vec<&String> = older.summaries.iter().map(|(_, text)| text).collect();
                json!({ "screen": value!(&older), "lines": lines })
            })
        };
        json!({
            "alone": of(&newest, &[&newest], 1),
            "newest": of(&newest, &[&newest, &earlier], 1),
            "an older one": of(&earlier, &[&newest, &earlier], 2),
            "the newest shows less": of(&narrowed, &[&narrowed, &earlier], 1),
        })
    });
    insta::assert_json_snapshot!(shown);
}

#[test]
fn two_that_went_apart() {
    let one = Invented::new(8, 21);
    let of = |entries: &[Entry]| {
        Summary::of(entries, &one.identity(), &Selection::default(), &one.end).unwrap()
    };
    let newest = of(&one.entries[..12]);
    let older = |entries: usize| received(&one.earlier(entries), &one);
    let shown = both(|words| {
        let said = |all: Vec<Received>| value!(&WentApart::new(words, &newest, all.into_iter()));
        json!({
            "goes on": said(vec![older(5), older(12)]),
            "one entry": said(vec![older(5), older(13)]),
            "the one with most": said(vec![older(13), older(one.entries.len()), older(20)]),
        })
    });
    insta::assert_json_snapshot!(shown);
}

#[test]
fn how_new_the_news_of_a_plan_is() {
    let (one, two) = (Invented::new(8, 21), Invented::new(2, 21));
    let digest = |of: &Invented, summary: &Summary| Digest::of(&received(summary, of));
    let mut shared = two.identity();
    shared.id = DiaryId([7; 16]);
    // Another diary with the same plan.
    let copied = Summary::of(&one.entries, &shared, &Selection::default(), &one.end).unwrap();
    let copied = Digest::of(&open_summary(&copied.open_form(&shared).unwrap(), None).unwrap());
    let (newest, earlier) = (digest(&one, &one.summary()), digest(&one, &one.earlier(15)));
    let other = digest(&two, &two.summary());
    let (plan, used) = newest.programme.clone().unwrap();
    let next = |more: u32| Revision::try_from(u64::from(used.get() + more)).unwrap();
    let shown = both(|words| {
        let said = |all: &[&Digest], revision, days: i64| {
            let today = one.end.day() + chrono::TimeDelta::days(days);
            let news = PlanNews::new(words, all.iter().copied(), &plan, revision, today);
            json!({ "says": value!(&news.says), "one diary": news.diary == Some(newest.diary) })
        };
        json!({
            "none": said(&[&other], next(1), 0),
            "today": said(&[&newest, &earlier], next(1), 0),
            "made later than now": said(&[&newest], next(1), -1),
            "a day old": said(&[&earlier, &newest, &other], next(1), 1),
            "an older revision was in use": said(&[&newest], next(2), 40),
            "two diaries": said(&[&newest, &copied], next(1), 3),
        })
    });
    insta::assert_json_snapshot!(shown);
}

fn other_rule() -> Rule {
    serde_json::from_str(include_str!("../../bindings/desk/src/scenario/another-rule.json"))
        .unwrap()
}

#[test]
fn another_rule_on_one_diary_and_on_many() {
    let rule = other_rule();
    let one = Invented::new(3, 21);
    let summary = one.summary();
    let narrow = Selection { questions: false, ..Selection::default() };
    let narrowed = Summary::of(&one.entries, &one.identity(), &narrow, &one.end).unwrap();
    assert_eq!(RuleVerdict::of(&narrowed, &rule).unwrap(), None, "nothing is replayed from a part");
    let verdicts: Vec<(DiaryId, Option<String>, RuleVerdict)> = (0..8)
        .map(|number| Invented::new(number, 21))
        .map(|one| {
            let verdict = RuleVerdict::of(&one.summary(), &rule).unwrap().unwrap();
            let name = one.summary().plan().map(|plan| plan.for_whom.to_string());
            (one.identity().id, name, verdict)
        })
        .collect();
    let shown = both(|words| {
        let mut screen = WhatIfScreen::new(words, &summary, &rule).unwrap();
        screen.all.truncate(3);
        json!({
            "one": value!(&screen),
            "narrowed": value!(&WhatIfScreen::new(words, &narrowed, &rule).unwrap()),
            "many": value!(&CabinetWhatIfScreen::new(words, &verdicts, 2)),
        })
    });
    insta::assert_json_snapshot!(shown);
}

/// What is counted over many is what stands side by side on one.
#[test]
fn the_count_over_many_is_that_of_each() {
    let (rule, words) = (other_rule(), Words::for_language("en"));
    let mut differing = 0;
    for number in 0..20 {
        let summary = Invented::new(number, 22).summary();
        let verdict = RuleVerdict::of(&summary, &rule).unwrap().unwrap();
        let screen = WhatIfScreen::new(&words, &summary, &rule).unwrap();
        let lines = screen.all.iter().filter(|line| line.differs.is_some()).count();
        assert_eq!(verdict.differs, lines, "diary {number}");
        assert_eq!(verdict.entries, screen.all.len());
        differing += usize::from(lines > 0);
        // A rule never differs from itself.
        let own = summary.plan().unwrap().rule.unwrap();
        let same = RuleVerdict::of(&summary, &own).unwrap().unwrap();
        assert_eq!((same.differs, same.own), (0, same.tried), "diary {number}");
    }
    assert!(differing > 5, "too few to tell anything");
}

#[test]
fn the_charts_of_a_summary() {
    let one = Invented::new(5, 21);
    let short = one.earlier(40);
    let shown = both(|words| value!(&ChartsScreen::new(&short, words).unwrap()));
    insta::assert_json_snapshot!(shown);
    let words = Words::for_language("en");
    let from = Some(one.end.day() - chrono::Days::new(10));
    let narrow = Selection { from, ..Selection::default() };
    let narrowed = Summary::of(&one.entries, &one.identity(), &narrow, &one.end).unwrap();
    let charts = ChartsScreen::new(&narrowed, &words).unwrap();
    for chart in &charts.charts {
        assert!(chart.table.rows.len() < 40, "{}: only the days shown", chart.name);
    }
}

#[test]
fn h35_the_same_nickname_is_said_beside_each() {
    let named = |all: &[Digest]| -> Vec<String> {
        let screen = PeopleScreen::new(
            &Words::for_language("en"),
            all.iter(),
            &PeopleAsked { order: PeopleOrder::Nickname, ..PeopleAsked::default() },
        );
        let said = |line: &frond_core::screens::PersonLine| {
            let mut facts = line.facts.iter();
            facts.find(|fact| fact.contains("Another diary has the same nickname")).cloned()
        };
        screen.people.iter().filter_map(said).collect()
    };
    let one = |number: u64| {
        let one = Invented::new(number, 21);
        Digest::of(&received(&one.summary(), &one))
    };
    let (first, mut second) = (one(1), one(2));
    assert!(named(&[first.clone(), second.clone()]).is_empty());
    second.nickname.clone_from(&first.nickname);
    let said = named(&[first.clone(), second.clone()]);
    assert_eq!(said.len(), 2, "beside each");
    assert_ne!(said[0], said[1], "each with the beginning of its own mark");
}
