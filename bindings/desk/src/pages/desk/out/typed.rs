//! The form of a letter: what is asked, and what was typed.

use chrono::NaiveDate;
use frond_core::programme::values::{Line, Passage};
use frond_core::screens::{Agreed, LetterTyped};

use super::super::visit::Visit;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Choice, Field, Form, Kind};

/// The names the fields send under, in the order they are asked.
pub(super) const NAMES: [&str; 10] =
    ["person", "known", "to", "from", "reached", "date", "view", "next", "request", "agreed"];

/// The form, with what was typed in it.
pub(super) fn form(visit: &Visit<'_>, to: String, fields: &Fields) -> Form {
    let words = &visit.words;
    let typed = |name: &str| fields.first(name).unwrap_or_default().to_owned();
    let line = |name: &str, label: String, input| {
        let value = typed(name);
        let kind = Kind::Line { input, value, mode: "", offers: vec![], short: false };
        Field::new(name, label, kind)
    };
    let passage =
        |name: &str, label: String| Field::new(name, label, Kind::Passage { value: typed(name) });
    let today = visit.moment.now.day().to_string();
    let mut date = line("date", words.text("letter-form-date", &[]), "date");
    if let Kind::Line { value, .. } = &mut date.kind
        && value.is_empty()
    {
        *value = today;
    }
    let agreed = Choice {
        value: "yes".to_owned(),
        label: words.text("letter-form-agreed", &[]),
        chosen: fields.has("agreed", "yes"),
    };
    let mut form = Form::to(to, words.text("letter-form-look", &[]));
    form.fields = vec![
        line("person", words.text("letter-form-person", &[]), "text")
            .hint(words.text("letter-form-person-hint", &[])),
        line("known", words.text("letter-form-known", &[]), "text"),
        passage("to", words.text("letter-form-to", &[])),
        line("from", words.text("letter-form-from", &[]), "text"),
        passage("reached", words.text("letter-form-reached", &[])),
        date,
        passage("view", words.text("letter-form-view", &[])),
        passage("next", words.text("letter-form-next", &[])),
        passage("request", words.text("letter-form-request", &[])),
        Field::new("agreed", words.text("letter-form-agreement", &[]), Kind::Any(vec![agreed]))
            .hint(words.text("letter-form-agreed-hint", &[])),
    ];
    form
}

/// What was typed, or what has to be put right.
pub(super) fn typed(
    visit: &Visit<'_>,
    fields: &Fields,
) -> Result<(LetterTyped, Agreed), Vec<Problem>> {
    let mut reading = Reading { visit, fields, problems: Vec::new() };
    let person = reading.line("person");
    let known_by = reading.optional_line("known");
    let to = reading.passage("to");
    let from = reading.line("from");
    let reached_at = reading.optional_text("reached");
    let date = reading.day("date");
    let view = reading.optional_text("view");
    let next = reading.optional_text("next");
    let request = reading.passage("request");
    let agreed = Agreed::ticked(fields.has("agreed", "yes"));
    if agreed.is_none() {
        reading.wrong("agreed", visit.words.text("letter-error-agreed", &[]));
    }
    let Reading { problems, .. } = reading;
    match (person, to, from, date, request, agreed) {
        (Some(person), Some(to), Some(from), Some(date), Some(request), Some(agreed))
            if problems.is_empty() =>
        {
            let typed =
                LetterTyped { person, known_by, to, from, reached_at, date, view, next, request };
            Ok((typed, agreed))
        }
        _ => Err(problems),
    }
}

/// What was typed, to go along in another form of the same page.
pub(super) fn carried(fields: &Fields) -> Vec<(&'static str, String)> {
    let given = NAMES.into_iter().map(|name| (name, fields.first(name).unwrap_or_default()));
    given.filter(|(_, value)| !value.is_empty()).map(|(n, v)| (n, v.to_owned())).collect()
}

struct Reading<'a, 'b> {
    visit: &'a Visit<'b>,
    fields: &'a Fields,
    problems: Vec<Problem>,
}

impl<'a> Reading<'a, '_> {
    fn wrong(&mut self, name: &str, says: String) {
        self.problems.push(Problem::at(name, says));
    }

    fn given(&self, name: &str) -> Option<&'a str> {
        self.fields.first(name).map(str::trim).filter(|text| !text.is_empty())
    }

    fn needed<T>(&mut self, name: &str, read: fn(&str) -> Option<T>) -> Option<T> {
        if self.given(name).is_none() {
            self.wrong(name, self.visit.words.text("letter-error-needed", &[]));
            return None;
        }
        self.optional(name, read)
    }

    fn optional<T>(&mut self, name: &str, read: fn(&str) -> Option<T>) -> Option<T> {
        let text = self.given(name)?;
        let read = read(text);
        if read.is_none() {
            self.wrong(name, self.visit.words.text("letter-error-text", &[]));
        }
        read
    }

    fn line(&mut self, name: &str) -> Option<Line> {
        self.needed(name, a_line)
    }

    fn optional_line(&mut self, name: &str) -> Option<Line> {
        self.optional(name, a_line)
    }

    fn passage(&mut self, name: &str) -> Option<Passage> {
        self.needed(name, a_passage)
    }

    fn optional_text(&mut self, name: &str) -> Option<Passage> {
        self.optional(name, a_passage)
    }

    fn day(&mut self, name: &str) -> Option<NaiveDate> {
        let read = self.given(name).and_then(|text| text.parse().ok());
        if read.is_none() {
            self.wrong(name, self.visit.words.text("letter-error-date", &[]));
        }
        read
    }
}

fn a_line(text: &str) -> Option<Line> {
    Line::new(text).ok()
}

/// A browser sends line breaks as carriage return and line feed.
fn a_passage(text: &str) -> Option<Passage> {
    Passage::new(&text.replace("\r\n", "\n")).ok()
}
