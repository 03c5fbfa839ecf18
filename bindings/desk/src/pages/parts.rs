//! What a page is made of: a frame, and a few sorts of part. Decides that every page has one heading, a
//! language and direction, a way past what repeats, labels for every control, and mistakes told first and
//! linked. Leaves to whoever makes a page which parts it has, and every word to a record or to the words.
//!
//! Text becomes HTML in the templates alone, where it is escaped.

mod fields;
mod figure;

use askama::Template;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};

use super::form::Problem;
pub(crate) use fields::{Button, Choice, Field, Form, Kind, SHEET, Sheet, Tab};
pub(crate) use figure::{Figure, Person, Table};

/// What stands around every page.
#[derive(Clone)]
pub(crate) struct Frame {
    /// BCP 47.
    pub(crate) lang: String,
    /// `ltr` or `rtl`.
    pub(crate) dir: &'static str,
    /// "Skip to the page".
    pub(crate) skip: String,
    /// The name at the top and in the window's title; says nothing about health.
    pub(crate) name: String,
    /// Where the name leads.
    pub(crate) home: &'static str,
    /// What the links at the top are, for who cannot see that they are at the top.
    pub(crate) nav_label: String,
    /// The links at the top.
    pub(crate) nav: Vec<Press>,
    /// What the note at the top is.
    pub(crate) banner_label: String,
    /// What is to be known of every page of this server, in a few words.
    pub(crate) banner: Option<String>,
    /// And what more there is to say of it, folded.
    pub(crate) banner_more: Vec<String>,
    /// "Please put this right".
    pub(crate) problems_title: String,
}

/// A page.
#[derive(Template)]
#[template(path = "page.html")]
pub(crate) struct Page<'a> {
    frame: &'a Frame,
    title: String,
    window: Option<String>,
    under: Option<String>,
    problems: Vec<Problem>,
    parts: Vec<Part>,
    script: Option<&'static str>,
}

/// Something to press: a link, or a form of one button.
#[derive(Template, Clone)]
#[template(path = "parts/press.html")]
pub(crate) struct Press {
    pub(crate) label: String,
    pub(crate) how: How,
    pub(crate) look: Look,
}

/// What pressing does.
#[derive(Clone)]
pub(crate) enum How {
    /// Goes there.
    Go(String),
    /// Opens the telephone.
    Dial(String),
    /// Sends these fields there.
    Send { to: String, fields: Vec<(&'static str, String)> },
    /// Sends the page's own form, with this as `then`, so that what was typed is kept.
    Through(String),
    /// Nothing: it is only looked at.
    Nothing,
}

/// How it looks.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Look {
    /// The next thing to do: the largest on the page.
    Next,
    /// One of several that are equal.
    Equal,
    /// Beside them.
    Quiet,
}

impl Look {
    fn class(self) -> &'static str {
        match self {
            Look::Next => "press next",
            Look::Equal => "press equal",
            Look::Quiet => "press quiet",
        }
    }
}

impl Press {
    /// A link.
    pub(crate) fn go(label: impl Into<String>, to: impl Into<String>) -> Self {
        Self { label: label.into(), how: How::Go(to.into()), look: Look::Quiet }
    }

    /// The same with another look.
    pub(crate) fn looking(mut self, look: Look) -> Self {
        self.look = look;
        self
    }

    fn class(&self) -> &'static str {
        self.look.class()
    }
}

/// A part of a page.
#[derive(Template)]
pub(crate) enum Part {
    /// Paragraphs.
    #[template(path = "parts/text.html")]
    Text { says: Vec<String>, class: &'static str },
    /// A heading over what follows.
    #[template(path = "parts/heading.html")]
    Heading { text: String },
    /// Something to know, with what to do about it.
    #[template(path = "parts/notice.html")]
    Notice { says: Vec<String>, press: Option<Press> },
    /// Something that belongs together.
    #[template(path = "parts/card.html")]
    Card { title: String, here: Option<String>, parts: Vec<Part> },
    /// One condition of a rule, with what was found.
    #[template(path = "parts/reason.html")]
    Reason { criterion: String, parts: Vec<Part> },
    /// Points.
    #[template(path = "parts/points.html")]
    Points { points: Vec<String> },
    /// Points with their numbers.
    #[template(path = "parts/numbered.html")]
    Numbered { points: Vec<String> },
    /// Something that waits behind its heading.
    #[template(path = "parts/fold.html")]
    Fold { title: String, open: bool, parts: Vec<Part> },
    /// A month: each day with what was done on it.
    #[template(path = "parts/month.html")]
    Month { caption: String, weekdays: Vec<(String, String)>, weeks: Vec<Vec<Day>> },
    /// A place that a link of the same page leads to.
    #[template(path = "parts/place.html")]
    Place { id: &'static str },
    /// A clock that a small script draws; without it, it says how it stood.
    #[template(path = "parts/clock.html")]
    Clock(Clock),
    /// A code to scan: SVG with a title and a description, its texts escaped.
    #[template(path = "parts/scan.html")]
    Scan { svg: String },
    /// A table.
    #[template(path = "parts/table.html")]
    Table(Table),
    /// A drawing with what its marks mean, and the same as a table, folded.
    #[template(path = "parts/chart.html")]
    Chart(Figure),
    /// How far long work is; a small script asks again by itself.
    #[template(path = "parts/progress.html")]
    Progress { label: String, done: usize, total: usize, says: String, again: String },
    /// People, each with what must not be missed.
    #[template(path = "parts/people.html")]
    People { people: Vec<Person> },
    /// A letter, to be read before it is sent.
    #[template(path = "parts/letter.html")]
    Letter { letter: frond_core::screens::Letter },
    /// Things to press.
    #[template(path = "parts/presses.html")]
    Presses { presses: Vec<Press> },
    /// A form.
    #[template(path = "parts/form.html")]
    Form(Form),
    /// A form beside which it is said what was written.
    #[template(path = "parts/sheet.html")]
    Sheet(Sheet),
    /// The ways between pages that belong together.
    #[template(path = "parts/tabs.html")]
    Tabs { label: String, tabs: Vec<Tab> },
    /// What another person sees, to be looked at only.
    #[template(path = "parts/phone.html")]
    Phone { lang: String, label: String, parts: Vec<Part> },
    /// Links to fields, such as what still has to be put right elsewhere.
    #[template(path = "parts/links.html")]
    Links { links: Vec<(String, String)> },
}

/// A day of a month.
pub(crate) struct Day {
    /// Its number.
    pub(crate) number: String,
    /// Its date and what was done, in words.
    pub(crate) label: String,
    /// Where what was written of it stands.
    pub(crate) to: Option<String>,
    /// Whether it belongs to the month.
    pub(crate) in_month: bool,
    /// Whether it is today.
    pub(crate) is_today: bool,
}

/// A clock, and the breath to follow beside it. The script reads it from the page.
pub(crate) struct Clock {
    /// "3:05"
    pub(crate) text: String,
    /// The same for those who listen.
    pub(crate) spoken: String,
    /// Whether it runs.
    pub(crate) runs: bool,
    /// Milliseconds it shows.
    pub(crate) millis: u64,
    /// Milliseconds until the page is to be asked for again.
    pub(crate) next_in: Option<u64>,
    /// Milliseconds between two notes that it goes on.
    pub(crate) seen_every: u64,
    /// The breath to follow, as JSON.
    pub(crate) pacer: Option<String>,
    /// What to do where no script runs.
    pub(crate) without: String,
}

impl<'a> Page<'a> {
    /// A page with its heading.
    pub(crate) fn new(frame: &'a Frame, title: impl Into<String>) -> Self {
        let title = title.into();
        Self {
            frame,
            title,
            window: None,
            under: None,
            problems: Vec::new(),
            parts: Vec::new(),
            script: None,
        }
    }

    /// With another title of the window than the heading: whoever sees the list of windows learns nothing.
    pub(crate) fn in_window(mut self, title: impl Into<String>) -> Self {
        self.window = Some(title.into());
        self
    }

    fn window(&self) -> &str {
        self.window.as_deref().unwrap_or(&self.title)
    }

    /// A line under the heading.
    pub(crate) fn under(mut self, text: impl Into<String>) -> Self {
        self.under = Some(text.into());
        self
    }

    /// With a small script of ours.
    pub(crate) fn script(mut self, name: &'static str) -> Self {
        self.script = Some(name);
        self
    }

    /// What is to be put right, told first and at each field.
    pub(crate) fn problems(mut self, problems: Vec<Problem>) -> Self {
        self.problems = problems;
        self
    }

    /// One more part.
    pub(crate) fn part(mut self, part: Part) -> Self {
        self.parts.push(part);
        self
    }

    /// Paragraphs; nothing where there are none.
    pub(crate) fn text(self, says: impl IntoIterator<Item = String>) -> Self {
        self.says(says, "")
    }

    /// Paragraphs in the quieter look.
    pub(crate) fn quiet(self, says: impl IntoIterator<Item = String>) -> Self {
        self.says(says, "quiet")
    }

    fn says(self, says: impl IntoIterator<Item = String>, class: &'static str) -> Self {
        let says: Vec<String> = says.into_iter().collect();
        if says.is_empty() { self } else { self.part(Part::Text { says, class }) }
    }

    /// Things to press; nothing where there are none.
    pub(crate) fn presses(self, presses: Vec<Press>) -> Self {
        if presses.is_empty() { self } else { self.part(Part::Presses { presses }) }
    }

    /// A form, its mistakes marked.
    pub(crate) fn form(self, mut form: Form) -> Self {
        form.fields.iter_mut().for_each(|field| field.mark(&self.problems));
        self.part(Part::Form(form))
    }

    /// The answer.
    pub(crate) fn answer(self) -> Response {
        let status = if self.problems.is_empty() {
            StatusCode::OK
        } else {
            StatusCode::UNPROCESSABLE_ENTITY
        };
        self.answer_as(status)
    }

    /// The answer with another status.
    pub(crate) fn answer_as(self, status: StatusCode) -> Response {
        let html = [(header::CONTENT_TYPE, "text/html; charset=utf-8")];
        match self.render() {
            Ok(text) => (status, html, text).into_response(),
            // Writing into memory does not fail.
            Err(_) => StatusCode::INTERNAL_SERVER_ERROR.into_response(),
        }
    }
}
