//! A summary for the clinician: what is in it is said before it leaves, who can open it is chosen and never
//! preset, and saving the file is all that happens to it.

use axum::response::Response;
use frond_core::programme::plan::Programme;
use frond_core::screens::{Opens, SummaryScreen};
use frond_core::sealing::SealTo;
use frond_core::summary::{
    FileKind, Selection, Summary, TimeAlone, file_name, table, to_clinician,
};

use super::keeping::file as save;
use super::log::choices_of;
use super::visit::{Shown, Visit};
use super::when;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, Kind, Look, Page, Part, Press};
use crate::secret;

/// Who may open the file.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Who {
    Clinician,
    Passphrase,
    Anyone,
}

/// What was chosen.
struct Chosen {
    who: Who,
    selection: Selection,
    alone: bool,
}

pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    asked(visit, &Fields::default(), vec![])
}

fn asked(visit: &mut Visit<'_>, fields: &Fields, problems: Vec<Problem>) -> Shown {
    let named = visit.companion()?.state().rule().programme().is_some_and(names_somebody);
    let words = &visit.words;
    let mut who = vec![
        ("passphrase".to_owned(), words.text("page-summary-passphrase", &[])),
        ("anyone".to_owned(), words.text("page-summary-anyone", &[])),
    ];
    if named {
        who.insert(0, ("clinician".to_owned(), words.text("page-summary-clinician", &[])));
    }
    let line = |name: &str, input| {
        let value = fields.first(name).unwrap_or_default().to_owned();
        Kind::Line { input, value, mode: "", offers: vec![], short: false }
    };
    let days = vec![
        Field::new("from", words.text("page-summary-from", &[]), line("from", "date")),
        Field::new("to", words.text("page-summary-to", &[]), line("to", "date")),
    ];
    let out = vec![
        ("notes".to_owned(), words.text("page-summary-notes", &[])),
        ("questions".to_owned(), words.text("page-summary-questions", &[])),
    ];
    let alone = vec![("yes".to_owned(), words.text("page-summary-alone", &[]))];
    let of = |name: &str, choices| choices_of(name, choices, fields);
    let form = Form {
        to: "/summary".to_owned(),
        upload: false,
        hidden: vec![],
        fields: vec![
            Field::new("who", words.text("page-summary-who", &[]), Kind::One(of("who", who))),
            Field::new("days", words.text("page-summary-days", &[]), Kind::Together(days))
                .hint(words.text("page-summary-days-hint", &[])),
            Field::new("out", words.text("page-summary-leave", &[]), Kind::Any(of("out", out))),
            Field::new(
                "alone",
                words.text("page-summary-also", &[]),
                Kind::Any(of("alone", alone)),
            )
            .hint(words.text("page-summary-alone-hint", &[])),
        ],
        submit: words.text("page-summary-look", &[]),
        look: Look::Next,
        also: vec![],
    };
    Ok(Page::new(&visit.frame, words.text("page-summary", &[]))
        .problems(problems)
        .form(form)
        .presses(vec![Press::go(words.text("action-today", &[]), "/today")])
        .answer())
}

fn names_somebody(plan: &Programme) -> bool {
    to_clinician(plan).is_ok()
}

fn chosen(visit: &Visit<'_>, fields: &Fields) -> Result<Chosen, Vec<Problem>> {
    let mut problems = Vec::new();
    let who = match fields.first("who") {
        Some("clinician") => Some(Who::Clinician),
        Some("passphrase") => Some(Who::Passphrase),
        Some("anyone") => Some(Who::Anyone),
        _ => None,
    };
    if who.is_none() {
        problems.push(Problem::at("who", visit.words.text("page-error-who", &[])));
    }
    let mut day = |name| {
        when::day(visit, fields, name).unwrap_or_else(|problem| {
            problems.push(problem);
            None
        })
    };
    let (from, to) = (day("from"), day("to"));
    if let (Some(from), Some(to)) = (from, to)
        && to < from
    {
        problems.push(Problem::at("to", visit.words.text("refusal-end-before-start", &[])));
    }
    match who {
        Some(who) if problems.is_empty() => Ok(Chosen {
            who,
            selection: Selection {
                from,
                to,
                notes: !fields.has("out", "notes"),
                questions: !fields.has("out", "questions"),
            },
            // An open file has no place for it.
            alone: fields.has("alone", "yes") && who != Who::Anyone,
        }),
        _ => Err(problems),
    }
}

/// What would leave, before it leaves.
pub(super) fn look(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    visit.companion()?;
    match chosen(visit, fields) {
        Ok(chosen) => preview(visit, &chosen, vec![]),
        Err(problems) => asked(visit, fields, problems),
    }
}

fn made(visit: &mut Visit<'_>, chosen: &Chosen) -> Result<Summary, Response> {
    let now = visit.moment.now;
    let summary = visit.companion()?.summary(&chosen.selection, &now);
    summary.map_err(|trouble| visit.trouble(&trouble))
}

fn preview(visit: &mut Visit<'_>, chosen: &Chosen, problems: Vec<Problem>) -> Shown {
    let summary = made(visit, chosen)?;
    let names = visit
        .companion()?
        .state()
        .rule()
        .programme()
        .map(|plan| plan.recipients.iter().map(|one| one.name.to_string()).collect::<Vec<_>>());
    let opens = match chosen.who {
        Who::Clinician => Opens::Recipients(names.unwrap_or_default()),
        Who::Passphrase => Opens::Passphrase,
        Who::Anyone => Opens::Anyone,
    };
    let words = &visit.words;
    let screen = SummaryScreen::new(&summary, &opens, chosen.alone, words);
    let points = |points: Vec<String>| Part::Points { points };
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .part(points(screen.holds))
        .part(points(screen.leaves_out))
        .text(screen.still_seen)
        .text(screen.opens)
        .text(screen.time_alone)
        .part(Part::Notice { says: screen.decide, press: None });
    let form = |kind: &str, submit: String, fields| Form {
        to: "/summary/file".to_owned(),
        upload: false,
        hidden: hidden(chosen, kind),
        fields,
        submit,
        look: Look::Next,
        also: vec![],
    };
    let secret = |name: &str, label: String| {
        let kind = Kind::Line {
            input: "password",
            value: String::new(),
            mode: "",
            offers: vec![],
            short: false,
        };
        Field::new(name, label, kind)
    };
    let fields = match chosen.who {
        Who::Passphrase => vec![
            secret("new", words.text("page-new-passphrase", &[])),
            secret("again", words.text("page-new-passphrase-again", &[])),
        ],
        Who::Clinician | Who::Anyone => vec![],
    };
    page = page.form(form("file", words.text("page-summary-file", &[]), fields));
    if chosen.who == Who::Anyone {
        let mut form = form("table", words.text("page-summary-table", &[]), vec![]);
        form.look = Look::Equal;
        page = page.form(form);
    }
    let back = vec![
        Press::go(words.text("page-summary", &[]), "/summary"),
        Press::go(words.text("action-today", &[]), "/today"),
    ];
    Ok(page.presses(back).answer())
}

fn hidden(chosen: &Chosen, kind: &str) -> Vec<(&'static str, String)> {
    let who = match chosen.who {
        Who::Clinician => "clinician",
        Who::Passphrase => "passphrase",
        Who::Anyone => "anyone",
    };
    let mut hidden = vec![("who", who.to_owned()), ("kind", kind.to_owned())];
    hidden.extend(chosen.selection.from.map(|day| ("from", day.to_string())));
    hidden.extend(chosen.selection.to.map(|day| ("to", day.to_string())));
    if !chosen.selection.notes {
        hidden.push(("out", "notes".to_owned()));
    }
    if !chosen.selection.questions {
        hidden.push(("out", "questions".to_owned()));
    }
    if chosen.alone {
        hidden.push(("alone", "yes".to_owned()));
    }
    hidden
}

/// The file itself, under a name that says nothing.
pub(super) fn file(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    visit.companion()?;
    let chosen = chosen(visit, fields).map_err(|_| visit.malformed())?;
    let to = match chosen.who {
        Who::Anyone => None,
        Who::Clinician => {
            let plan = visit.companion()?.state().rule().programme().cloned();
            let to = plan.and_then(|plan| to_clinician(&plan).ok());
            if to.is_none() {
                let says = visit.words.text("page-summary-nobody", &[]);
                return asked(visit, fields, vec![Problem::at("who", says)]);
            }
            to
        }
        Who::Passphrase => match passphrase(visit, fields) {
            Ok(to) => Some(to),
            Err(problem) => return preview(visit, &chosen, vec![problem]),
        },
    };
    let summary = made(visit, &chosen)?;
    let identity = visit.companion()?.identity();
    let day = visit.moment.now.day();
    let alone = if chosen.alone { TimeAlone::Please } else { TimeAlone::NotAsked };
    let (kind, mime, bytes) = match (&to, fields.first("kind")) {
        (Some(to), _) => (
            FileKind::Sealed,
            "application/octet-stream",
            summary.sealed_form(&identity, to, alone).ok(),
        ),
        (None, Some("table")) => (
            FileKind::Table,
            "text/csv; charset=utf-8",
            table::csv(&summary).ok().map(String::into_bytes),
        ),
        (None, _) => (FileKind::Open, "application/json", summary.open_form(&identity).ok()),
    };
    match bytes {
        Some(bytes) => Ok(save(&file_name(kind, day), mime, bytes)),
        None => Err(visit.trouble(&frond_core::companion::Trouble::TryAgain)),
    }
}

fn passphrase(visit: &Visit<'_>, fields: &Fields) -> Result<SealTo, Problem> {
    let new = fields.all("new").next().unwrap_or_default();
    if fields.all("again").next() != Some(new) {
        return Err(Problem::at("again", visit.words.text("page-error-not-the-same", &[])));
    }
    secret::passphrase(new)
        .map(SealTo::Passphrase)
        .map_err(|_| Problem::at("new", visit.words.text("page-error-passphrase", &[])))
}
