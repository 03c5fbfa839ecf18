//! A letter to the clinician who referred the person, or to another whom she agreed to tell; and a copy of it
//! for herself, in plain words.
//!
//! It decides the order and the words. What may stand in it is decided by what it is made from: [`Facts`], which
//! has no place for her notes, her questions or her wish for time alone, and [`Typed`], which the clinician typed
//! for this letter alone. Every number in it is self-reported, and it says so. How it looks on paper is left to
//! the surface.

mod say;
mod typed;

use serde::Serialize;

pub use typed::{Agreed, Typed};

use crate::summary::Facts;
use crate::words::Words;
use say::Saying;

/// For whom it is worded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reader {
    /// The other clinician.
    Clinician,
    /// The person herself.
    Person,
}

/// A letter, fully worded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Letter {
    /// Language of it, a BCP 47 tag.
    pub language: String,
    /// Whether it runs from right to left.
    pub right_to_left: bool,
    /// Its title.
    pub title: String,
    /// The date.
    pub date: String,
    /// To whom it goes, line by line.
    pub to: Vec<String>,
    /// About whom.
    pub about: Vec<String>,
    /// Its parts, in order.
    pub parts: Vec<LetterPart>,
    /// Who writes, line by line.
    pub from: Vec<String>,
    /// What stands at the foot of every page, before the page's number.
    pub foot: String,
    /// What is said where a font lacks a character of it, whose number then stands in its place.
    pub cannot_print: String,
}

/// A part of a letter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LetterPart {
    /// Its heading; the first part has none.
    pub heading: Option<String>,
    /// What it says.
    pub paragraphs: Vec<String>,
    /// And what it lists.
    pub points: Vec<String>,
}

impl LetterPart {
    fn plain(paragraphs: Vec<String>) -> Self {
        Self { heading: None, paragraphs, points: vec![] }
    }

    fn of(heading: String, paragraphs: Vec<String>, points: Vec<String>) -> Self {
        Self { heading: Some(heading), paragraphs, points }
    }
}

impl Letter {
    /// The letter, or the person's copy of it. Only with her agreement.
    #[must_use]
    pub fn new(typed: &Typed, facts: &Facts, _: Agreed, words: &Words, reader: Reader) -> Self {
        let say = Saying { typed, facts, words, reader };
        let own = |heading, text: &Option<crate::programme::values::Passage>| {
            text.as_ref().map(|text| LetterPart::of(heading, lines(text.as_str()), vec![]))
        };
        let parts = [
            Some(say.opening()),
            Some(say.done()),
            say.function(),
            Some(say.signs()),
            Some(say.plan()),
            own(words.text("letter-view", &[]), &typed.view),
            own(words.text("letter-next", &[]), &typed.next),
            Some(LetterPart::of(say.request_heading(), lines(typed.request.as_str()), vec![])),
            Some(say.closing()),
        ];
        let mut about = vec![words.text("letter-about", &[("name", typed.person.as_str().into())])];
        about.extend(typed.known_by.as_ref().map(ToString::to_string));
        let mut from = vec![typed.from.to_string()];
        from.extend(typed.reached_at.iter().flat_map(|at| lines(at.as_str())));
        Self {
            language: words.language().tag.to_owned(),
            right_to_left: words.language().direction == crate::words::Direction::RightToLeft,
            title: say.title(),
            date: say.date(typed.date),
            to: lines(typed.to.as_str()),
            about,
            parts: parts.into_iter().flatten().collect(),
            from,
            foot: words.text("letter-foot", &[]),
            cannot_print: words.text("letter-cannot-print", &[]),
        }
    }

    /// Every line of it, in order, as it is read.
    pub fn lines(&self) -> impl Iterator<Item = &str> {
        let head = [self.title.as_str(), self.date.as_str()].into_iter();
        let who = self.to.iter().chain(&self.about).map(String::as_str);
        let parts = self.parts.iter().flat_map(|part| {
            let text = part.heading.iter().chain(&part.paragraphs).chain(&part.points);
            text.map(String::as_str)
        });
        head.chain(who).chain(parts).chain(self.from.iter().map(String::as_str))
    }
}

/// Typed text, line by line; empty lines are gone.
fn lines(text: &str) -> Vec<String> {
    text.lines().map(str::trim).filter(|line| !line.is_empty()).map(str::to_owned).collect()
}
