//! The people whose summaries are in the cabinet: one line for each diary, made from the newest summary of it.

use std::collections::HashMap;

use serde::{Deserialize, Serialize};

use super::{count, day, moment};
use crate::safety::Tier;
use crate::summary::{DiaryId, Digest, SummaryId};
use crate::words::Words;

/// In which order.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PeopleOrder {
    /// What is open first, then the newest summary.
    #[default]
    OpenFirst,
    /// The newest summary first.
    Newest,
    /// By nickname.
    Nickname,
    /// Who practised longest ago first.
    LongestAgo,
}

/// What is looked for.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PeopleAsked {
    /// Part of a nickname, or the beginning of a diary's id; empty: everybody.
    pub find: String,
    /// In which order.
    pub order: PeopleOrder,
    /// Which page, from 0.
    pub page: usize,
}

/// So many people stand on a page.
const ON_A_PAGE: usize = 50;
/// So many digits of a diary's id tell two of the same nickname apart.
const ID_SHOWN: usize = 8;

/// The list.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PeopleScreen {
    /// Heading.
    pub title: String,
    /// How many there are, and what was looked for.
    pub says: Vec<String>,
    /// Said where the cabinet is empty: how the first summary comes in.
    pub empty: Vec<String>,
    /// What the search is called, and what it says now.
    pub find: String,
    /// What is looked for now.
    pub found_by: String,
    /// A hint for the search.
    pub find_hint: String,
    /// What the order is called.
    pub order: String,
    /// The orders there are.
    pub orders: Vec<OrderChoice>,
    /// What makes the list anew.
    pub look: String,
    /// The people, at most as many as fit a page.
    pub people: Vec<PersonLine>,
    /// The page before: its number and what leads there.
    pub before: Option<(usize, String)>,
    /// The page after.
    pub after: Option<(usize, String)>,
}

/// An order to choose.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct OrderChoice {
    /// Which.
    pub order: PeopleOrder,
    /// In words.
    pub label: String,
    /// Whether it is the one in use.
    pub chosen: bool,
}

/// One diary.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PersonLine {
    /// Which.
    pub diary: DiaryId,
    /// Its newest summary.
    #[serde(skip)]
    pub newest: SummaryId,
    /// The nickname of the plan.
    pub name: String,
    /// What must not be missed, gravest first.
    pub marks: Vec<String>,
    /// What is known of it.
    pub facts: Vec<String>,
}

/// A diary with its newest summary.
struct Person<'a> {
    newest: &'a Digest,
    /// Another one that holds more, as where the phone's clock was put back since; of several the one with most.
    fuller: Option<&'a Digest>,
    summaries: usize,
    /// Another diary has the same nickname.
    doubled: bool,
}

impl PeopleScreen {
    /// The list of these summaries.
    #[must_use]
    pub fn new<'a>(
        words: &Words,
        digests: impl Iterator<Item = &'a Digest>,
        asked: &PeopleAsked,
    ) -> Self {
        let people = people(digests);
        let (all, summaries) = (people.len(), people.iter().map(|one| one.summaries).sum());
        let wanted = asked.find.trim().to_lowercase();
        let mut found: Vec<Person<'_>> =
            people.into_iter().filter(|one| is_meant(one, &wanted)).collect();
        sort(&mut found, asked.order);
        let pages = found.len().div_ceil(ON_A_PAGE).max(1);
        let page = asked.page.min(pages - 1);
        let mut says = Vec::new();
        if all > 0 {
            says.push(words.text(
                "cabinet-people-count",
                &[("people", count(all)), ("summaries", count(summaries))],
            ));
        }
        if !wanted.is_empty() && all > 0 {
            says.push(words.text("cabinet-people-found", &[("count", count(found.len()))]));
        }
        if pages > 1 {
            let values = [("page", count(page + 1)), ("pages", count(pages))];
            says.push(words.text("cabinet-people-page", &values));
        }
        let shown = found.iter().skip(page * ON_A_PAGE).take(ON_A_PAGE);
        Self {
            title: words.text("cabinet-people", &[]),
            says,
            empty: if all == 0 { empty(words) } else { Vec::new() },
            find: words.text("cabinet-find", &[]),
            found_by: asked.find.trim().to_owned(),
            find_hint: words.text("cabinet-find-hint", &[]),
            order: words.text("cabinet-order", &[]),
            orders: orders(words, asked.order),
            look: words.text("cabinet-look", &[]),
            people: shown.map(|one| line(words, one)).collect(),
            before: page.checked_sub(1).map(|to| (to, words.text("cabinet-page-before", &[]))),
            after: (page + 1 < pages).then(|| (page + 1, words.text("cabinet-page-after", &[]))),
        }
    }
}

fn empty(words: &Words) -> Vec<String> {
    vec![
        words.text("cabinet-empty", &[]),
        words.text("cabinet-empty-how", &[]),
        words.text("cabinet-empty-invented", &[]),
    ]
}

fn people<'a>(digests: impl Iterator<Item = &'a Digest>) -> Vec<Person<'a>> {
    let mut by_diary: HashMap<DiaryId, Vec<&'a Digest>> = HashMap::new();
    for digest in digests {
        by_diary.entry(digest.diary).or_default().push(digest);
    }
    let person = |all: Vec<&'a Digest>| {
        let newest = newest(&all)?;
        let fuller = fuller(&all, newest);
        Some(Person { newest, fuller, summaries: all.len(), doubled: false })
    };
    let mut people: Vec<Person<'a>> = by_diary.into_values().filter_map(person).collect();
    let mut names: HashMap<String, usize> = HashMap::new();
    for person in &people {
        *names.entry(name_of(person.newest)).or_default() += 1;
    }
    for person in &mut people {
        let name = name_of(person.newest);
        person.doubled = !name.is_empty() && names.get(&name).is_some_and(|count| *count > 1);
    }
    people
}

/// By when it was made; of two of one moment the larger id is the newer, so that the order is one.
pub(super) fn age(one: &Digest) -> (i64, SummaryId) {
    (one.made.millis(), one.summary)
}

/// The newest of these.
pub(super) fn newest<'a>(all: &[&'a Digest]) -> Option<&'a Digest> {
    all.iter().copied().max_by_key(|one| age(one))
}

/// Of these summaries of one diary the one that holds most, where it holds more than the newest.
pub(super) fn fuller<'a>(all: &[&'a Digest], newest: &Digest) -> Option<&'a Digest> {
    let more = all.iter().copied().filter(|one| one.holds_more_than(newest));
    more.max_by_key(|one| (one.entries, age(one)))
}

fn name_of(digest: &Digest) -> String {
    digest.nickname.as_ref().map(|name| name.as_str().to_lowercase()).unwrap_or_default()
}

fn is_meant(person: &Person<'_>, wanted: &str) -> bool {
    name_of(person.newest).contains(wanted) || person.newest.diary.to_string().starts_with(wanted)
}

/// What is open counts by its gravest sign; a pause without a sign after all signs. What is open in a fuller summary is
/// open.
fn gravity(person: &Person<'_>) -> (bool, Option<Tier>) {
    let of = |digest: &Digest| (digest.is_open(), digest.gravest);
    let newest = of(person.newest);
    person.fuller.map_or(newest, |fuller| of(fuller).max(newest))
}

fn sort(people: &mut [Person<'_>], order: PeopleOrder) {
    // Last of all by id, so that the same list always stands in the same order.
    people.sort_by_key(|one| one.newest.diary.0);
    let newest = |one: &Person<'_>| std::cmp::Reverse(one.newest.made.millis());
    match order {
        PeopleOrder::OpenFirst => {
            people.sort_by_key(|one| (std::cmp::Reverse(gravity(one)), newest(one)))
        }
        PeopleOrder::Newest => people.sort_by_key(newest),
        PeopleOrder::Nickname => people.sort_by_cached_key(|one| name_of(one.newest)),
        // Who never practised stands first: nothing is longer ago.
        PeopleOrder::LongestAgo => people.sort_by_key(|one| one.newest.practised),
    }
}

fn orders(words: &Words, chosen: PeopleOrder) -> Vec<OrderChoice> {
    let choice = |order, label| OrderChoice { order, label, chosen: order == chosen };
    vec![
        choice(PeopleOrder::OpenFirst, words.text("cabinet-order-open", &[])),
        choice(PeopleOrder::Newest, words.text("cabinet-order-newest", &[])),
        choice(PeopleOrder::Nickname, words.text("cabinet-order-nickname", &[])),
        choice(PeopleOrder::LongestAgo, words.text("cabinet-order-longest", &[])),
    ]
}

/// The nickname, or that there is none.
pub(super) fn name(words: &Words, digest: &Digest) -> String {
    match &digest.nickname {
        Some(name) => name.to_string(),
        None => {
            let id: String = digest.diary.to_string().chars().take(ID_SHOWN).collect();
            words.text("cabinet-no-nickname", &[("id", id.into())])
        }
    }
}

fn line(words: &Words, person: &Person<'_>) -> PersonLine {
    let digest = person.newest;
    let mut marks = Vec::new();
    if digest.time_alone || person.fuller.is_some_and(|fuller| fuller.time_alone) {
        marks.push(words.text("cabinet-time-alone", &[]));
    }
    if let Some(fuller) = person.fuller {
        let values = [("made", moment(words, &fuller.made).into())];
        marks.push(words.text("cabinet-fuller", &values));
        if fuller.is_open() {
            marks.push(words.text("cabinet-fuller-open", &[]));
        }
    }
    if let Some(tier) = digest.gravest {
        let number = [("count", digest.open_signs.into())];
        marks.push(match tier {
            Tier::Emergency => words.text("cabinet-open-emergency", &number),
            Tier::Stop => words.text("cabinet-open-stop", &number),
            Tier::AskFirst => words.text("cabinet-open-ask-first", &number),
            Tier::Note => words.text("cabinet-open-note", &number),
        });
    }
    if digest.paused {
        marks.push(words.text("cabinet-paused", &[]));
    }
    PersonLine {
        diary: digest.diary,
        newest: digest.summary,
        name: name(words, digest),
        marks,
        facts: facts(words, person),
    }
}

fn facts(words: &Words, person: &Person<'_>) -> Vec<String> {
    let digest = person.newest;
    let mut facts = vec![words.text(
        "cabinet-made",
        &[
            ("made", moment(words, &digest.made).into()),
            ("first", day(words, digest.first).into()),
            ("last", day(words, digest.last).into()),
        ],
    )];
    let sessions = [("sessions", digest.sessions.into())];
    facts.push(match digest.practised {
        Some(last) => words.text(
            "cabinet-practised",
            &[("sessions", digest.sessions.into()), ("last", day(words, last).into())],
        ),
        None => words.text("cabinet-not-practised", &sessions[..0]),
    });
    if let Some(step) = &digest.step {
        facts.push(words.text("cabinet-step", &[("step", step.as_str().into())]));
    }
    if digest.questions > 0 {
        facts.push(words.text("cabinet-questions", &[("count", digest.questions.into())]));
    }
    if digest.narrowed {
        facts.push(words.text("cabinet-narrowed", &[]));
    }
    if person.summaries > 1 {
        facts.push(words.text("cabinet-older-too", &[("count", count(person.summaries - 1))]));
    }
    if person.doubled {
        let id: String = digest.diary.to_string().chars().take(ID_SHOWN).collect();
        facts.push(words.text("cabinet-same-nickname", &[("id", id.into())]));
    }
    facts
}
