//! Forms and their questions. Decides that every control has a label, and a hint or what has to be put right
//! tied to it.

use askama::Template;

use super::Look;
use crate::pages::form::Problem;

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
