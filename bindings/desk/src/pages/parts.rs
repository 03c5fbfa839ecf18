//! What a page is made of: a frame, and a few sorts of part. Decides that every page has one heading, a
//! language and direction, a way past what repeats, labels for every control, and mistakes told first and
//! linked. Leaves to whoever makes a page which parts it has, and every word to a record or to the words.
//!
//! Text becomes HTML in the templates alone, where it is escaped.

mod figure;

use askama::Template;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};

use super::form::Problem;
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

/// A form.
#[derive(Template)]
#[template(path = "parts/form_body.html")]
pub(crate) struct Form {
    pub(crate) to: String,
    /// Whether it carries a file.
    pub(crate) upload: bool,
    pub(crate) hidden: Vec<(&'static str, String)>,
    pub(crate) fields: Vec<Field>,
    pub(crate) submit: String,
    pub(crate) look: Look,
    /// Other ways to send it: the value of `then`, and the words.
    pub(crate) also: Vec<(&'static str, String)>,
}

impl Form {
    /// A form without fields, to be sent to this address.
    pub(crate) fn to(to: impl Into<String>, submit: impl Into<String>) -> Self {
        Self {
            to: to.into(),
            upload: false,
            hidden: Vec::new(),
            fields: Vec::new(),
            submit: submit.into(),
            look: Look::Next,
            also: Vec::new(),
        }
    }

    fn class(&self) -> &'static str {
        self.look.class()
    }
}

/// A question of a form.
#[derive(Template)]
#[template(path = "parts/field.html")]
pub(crate) struct Field {
    /// What its value is sent as.
    pub(crate) name: String,
    /// What the page knows it by; the name, unless several questions send under one.
    pub(crate) id: String,
    pub(crate) label: String,
    pub(crate) hint: Option<String>,
    pub(crate) problem: Option<String>,
    pub(crate) kind: Kind,
}

/// How a question is answered.
pub(crate) enum Kind {
    /// One of these.
    One(Vec<Choice>),
    /// Any of these.
    Any(Vec<Choice>),
    /// A number with words at both ends, and "rather not say".
    Scale { least: String, most: String, numbers: Vec<Choice>, unsaid: Option<Choice> },
    /// One line, a number, a day, a time, a secret, a file.
    Line {
        input: &'static str,
        value: String,
        mode: &'static str,
        offers: Vec<String>,
        short: bool,
    },
    /// Files, many at once; or all files of a folder, where a browser can choose one.
    Files { folder: bool },
    /// Several lines.
    Passage { value: String },
    /// Questions that are folded until wanted.
    Folded { parts: Vec<Field>, open: bool },
    /// Not asked; for two fields that belong together.
    Together(Vec<Field>),
    /// One of many, folded away until it is opened.
    Select(Vec<Choice>),
    /// One thing to tick; sent as `yes`, or empty.
    Tick { chosen: bool },
    /// Any of these; sent empty first, so that none is an answer too.
    AnyOf(Vec<Choice>),
    /// Not asked; fields of one thing of a list, with what can be done to it.
    Group { fields: Vec<Field>, buttons: Vec<Button> },
    /// Not asked; a list under its heading.
    List { fields: Vec<Field>, buttons: Vec<Button> },
}

/// A way to another page of those that belong together.
pub(crate) struct Tab {
    pub(crate) label: String,
    pub(crate) to: String,
    /// Whether it is this one.
    pub(crate) here: bool,
    /// What the page's form sends as `then`, so that what was typed is kept on the way; a link without it.
    pub(crate) then: Option<String>,
}

/// The form of a page that has ways through it.
pub(crate) const SHEET: &str = "sheet";

/// A button that sends the form it stands in, and says what for.
#[derive(Clone)]
pub(crate) struct Button {
    /// What is sent as `then`.
    pub(crate) then: String,
    pub(crate) label: String,
    /// What it is about, for who cannot see where it stands.
    pub(crate) about: Option<String>,
}

/// A form beside which it is said what was written.
#[derive(Template)]
#[template(path = "parts/sheet_body.html")]
pub(crate) struct Sheet {
    pub(crate) to: String,
    /// Where its fields are sent to be said back, without being kept.
    pub(crate) say_to: String,
    pub(crate) hidden: Vec<(String, String)>,
    pub(crate) fields: Vec<Field>,
    pub(crate) submit: String,
    pub(crate) also: Vec<Button>,
    pub(crate) said_title: String,
    pub(crate) said: Vec<String>,
}

/// An answer to choose.
#[derive(Clone)]
pub(crate) struct Choice {
    pub(crate) value: String,
    pub(crate) label: String,
    pub(crate) chosen: bool,
}

/// The most characters of an answer that stands beside others.
const SHORT_ANSWER: usize = 12;

impl Field {
    /// A question.
    pub(crate) fn new(name: &str, label: impl Into<String>, kind: Kind) -> Self {
        Self {
            name: name.to_owned(),
            id: name.to_owned(),
            label: label.into(),
            hint: None,
            problem: None,
            kind,
        }
    }

    /// Known to the page by another name than it sends under.
    pub(crate) fn known_as(mut self, id: String) -> Self {
        self.id = id;
        self
    }

    /// With a hint under the question.
    pub(crate) fn hint(mut self, hint: impl Into<String>) -> Self {
        self.hint = Some(hint.into());
        self
    }

    /// A few short answers stand beside each other, so that a long list stays short.
    fn beside(&self) -> bool {
        match &self.kind {
            Kind::One(choices) => {
                choices.len() <= 3
                    && choices.iter().all(|one| one.label.chars().count() <= SHORT_ANSWER)
            }
            _ => false,
        }
    }

    fn described(&self) -> Option<String> {
        let hint = self.hint.is_some().then(|| format!("{}-hint", self.id));
        let problem = self.problem.is_some().then(|| format!("{}-problem", self.id));
        match (hint, problem) {
            (Some(hint), Some(problem)) => Some(format!("{hint} {problem}")),
            (one, other) => one.or(other),
        }
    }

    /// Marks what is to be put right in it.
    pub(crate) fn mark(&mut self, problems: &[Problem]) {
        self.problem = problems.iter().find(|own| own.field == self.id).map(|own| own.says.clone());
        match &mut self.kind {
            Kind::Folded { parts, open } => {
                for part in parts.iter_mut() {
                    part.mark(problems);
                    *open |= part.problem.is_some();
                }
            }
            Kind::Together(parts)
            | Kind::Group { fields: parts, .. }
            | Kind::List { fields: parts, .. } => {
                parts.iter_mut().for_each(|part| part.mark(problems));
            }
            _ => {}
        }
    }
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
