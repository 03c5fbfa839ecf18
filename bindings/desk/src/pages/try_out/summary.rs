//! A summary for the clinician: what is in it is said before it leaves, who can open it is chosen and never
//! preset, and saving the file is all that happens to it.

use axum::response::Response;
use chrono::NaiveDate;
use frond_core::companion::{Request, Trouble};
use frond_core::screens::{Screen, SummaryClose, SummaryFormScreen};
use frond_core::sealing::SealTo;
use frond_core::summary::{
    FileKind, Selection, Summary, TimeAlone, fhir, file_name, table, to_clinician,
};

use super::log::choices_of;
use super::visit::{Shown, Visit};
use super::when;
use crate::pages::app::file as save;
use crate::pages::form::{Fields, Problem, code};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page, Part};
use crate::secret;

pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    visit.see(Request::Summary(Selection::default()))
}

pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &SummaryFormScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let preview = &screen.preview;
    let points = |points: &[String]| Part::Points { points: points.to_vec() };
    let narrowing = narrowing(screen);
    let closing = closing(visit, screen, fields);
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &preview.title)
        .problems(problems)
        .part(points(&preview.holds))
        .part(points(&preview.leaves_out))
        .text(preview.still_seen.clone())
        .part(Part::Fold {
            title: visit.words.text("page-summary-days", &[]),
            open: screen.selection != Selection::default(),
            parts: vec![Part::Form(narrowing)],
        })
        .text(preview.opens.clone())
        .part(Part::Notice { says: preview.decide.clone(), press: None })
        .form(closing)
        .presses(presses)
        .answer())
}

/// What goes along. What is chosen now stands in it.
fn narrowing(screen: &SummaryFormScreen) -> Form {
    let selection = &screen.selection;
    let day = |name: &str, label: &str, day: Option<NaiveDate>| {
        let value = day.map(|day| day.to_string()).unwrap_or_default();
        let kind = Kind::Line { input: "date", value, mode: "", offers: vec![], short: false };
        Field::new(name, label, kind)
    };
    let with = |value: &str, label: &str, chosen| Choice {
        value: value.to_owned(),
        label: label.to_owned(),
        chosen,
    };
    let mut form = Form::to("/summary", &screen.look_again);
    form.look = Look::Equal;
    form.fields = vec![
        day("from", &screen.from, selection.from),
        day("to", &screen.to, selection.to),
        Field::new(
            "notes",
            &screen.notes,
            Kind::Any(vec![with("yes", &screen.notes, selection.notes)]),
        ),
        Field::new(
            "questions",
            &screen.questions,
            Kind::Any(vec![with("yes", &screen.questions, selection.questions)]),
        ),
    ];
    form
}

/// How it is closed, and the file.
fn closing(visit: &Visit<'_>, screen: &SummaryFormScreen, fields: &Fields) -> Form {
    let words = &visit.words;
    let secret = |name: &str, label: String| {
        let (input, value) = ("password", String::new());
        Field::new(name, label, Kind::Line { input, value, mode: "", offers: vec![], short: false })
    };
    let ways = screen.ways.iter().map(|own| {
        let label = std::iter::once(own.label.clone()).chain(own.says.clone());
        (code(&own.way), label.collect::<Vec<_>>().join("\n"))
    });
    let alone = vec![("yes".to_owned(), screen.time_alone.clone())];
    let mut form = Form::to("/summary/file", words.text("page-summary-file", &[]));
    form.hidden = carried(&screen.selection);
    form.fields = vec![
        Field::new(
            "way",
            words.text("page-summary-who", &[]),
            Kind::One(choices_of("way", ways.collect(), fields)),
        ),
        secret("new", words.text("page-summary-secret", &[])),
        secret("again", words.text("page-new-passphrase-again", &[])),
        Field::new(
            "alone",
            words.text("page-summary-also", &[]),
            Kind::Any(choices_of("alone", alone, fields)),
        )
        .hint(words.text("page-summary-alone-hint", &[])),
    ];
    form.also = vec![
        ("table", words.text("page-summary-table", &[])),
        ("bundle", words.text("out-summary-bundle", &[])),
    ];
    form
}

fn carried(selection: &Selection) -> Vec<(&'static str, String)> {
    let mut hidden = Vec::new();
    hidden.extend(selection.from.map(|day| ("from", day.to_string())));
    hidden.extend(selection.to.map(|day| ("to", day.to_string())));
    if selection.notes {
        hidden.push(("notes", "yes".to_owned()));
    }
    if selection.questions {
        hidden.push(("questions", "yes".to_owned()));
    }
    hidden
}

fn selected(visit: &Visit<'_>, fields: &Fields) -> Result<Selection, Problem> {
    let (from, to) = (when::day(visit, fields, "from")?, when::day(visit, fields, "to")?);
    if let (Some(from), Some(to)) = (from, to)
        && to < from
    {
        return Err(Problem::at("to", visit.words.text("refusal-end-before-start", &[])));
    }
    let (notes, questions) = (fields.has("notes", "yes"), fields.has("questions", "yes"));
    Ok(Selection { from, to, notes, questions })
}

fn again(
    visit: &mut Visit<'_>,
    selection: Selection,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    match visit.ask(Request::Summary(selection))? {
        Screen::Summary(screen) => page(visit, &screen, fields, problems),
        other => visit.show(&other),
    }
}

/// What another choice would hold.
pub(super) fn look(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    match selected(visit, fields) {
        Ok(selection) => again(visit, selection, fields, vec![]),
        Err(problem) => again(visit, Selection::default(), fields, vec![problem]),
    }
}

/// The file itself, under a name that says nothing.
pub(super) fn file(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let Ok(selection) = selected(visit, fields) else { return Err(visit.malformed()) };
    let way = [SummaryClose::Recipients, SummaryClose::Passphrase, SummaryClose::Open]
        .into_iter()
        .find(|way| fields.first("way") == Some(code(way).as_str()));
    let Some(way) = way else {
        let problem = Problem::at("way", visit.words.text("page-error-who", &[]));
        return again(visit, selection, fields, vec![problem]);
    };
    let to = match seal_to(visit, way, fields)? {
        Ok(to) => to,
        Err(problem) => return again(visit, selection, fields, vec![problem]),
    };
    let now = visit.moment.now;
    let summary = visit.companion()?.summary(&selection, &now);
    let summary = summary.map_err(|trouble| visit.trouble(&trouble))?;
    let made = made(visit, &summary, to.as_ref(), fields)?;
    match made {
        (kind, mime, Some(bytes)) => Ok(save(&file_name(kind, now.day()), mime, bytes)),
        (_, _, None) => Err(visit.trouble(&Trouble::TryAgain)),
    }
}

type Made = (FileKind, &'static str, Option<Vec<u8>>);

fn made(
    visit: &mut Visit<'_>,
    summary: &Summary,
    to: Option<&SealTo>,
    fields: &Fields,
) -> Result<Made, Response> {
    let identity = visit.companion()?.identity();
    let asked = fields.has("alone", "yes");
    let alone = if asked { TimeAlone::Please } else { TimeAlone::NotAsked };
    let table = fields.has("then", "table");
    Ok(match to {
        Some(to) => (
            FileKind::Sealed,
            "application/octet-stream",
            summary.sealed_form(&identity, to, alone).ok(),
        ),
        None if fields.has("then", "bundle") => (
            FileKind::Bundle,
            "application/fhir+json",
            fhir::bundle(summary, fhir::Texts::Carried)
                .ok()
                .and_then(|bundle| crate::file::json(&bundle).ok()),
        ),
        None if table => (
            FileKind::Table,
            "text/csv; charset=utf-8",
            table::csv(summary).ok().map(String::into_bytes),
        ),
        // An open file has no place for the wish.
        None => (FileKind::Open, "application/json", summary.open_form(&identity).ok()),
    })
}

/// To whom it is sealed; nobody where it stays open. A table or a list is never sealed, so
/// it needs the open way.
fn seal_to(
    visit: &mut Visit<'_>,
    way: SummaryClose,
    fields: &Fields,
) -> Result<Result<Option<SealTo>, Problem>, Response> {
    let plain = fields.has("then", "table") || fields.has("then", "bundle");
    if plain && way != SummaryClose::Open {
        let says = visit.words.text("page-error-table", &[]);
        return Ok(Err(Problem::at("way", says)));
    }
    Ok(match way {
        SummaryClose::Open => Ok(None),
        SummaryClose::Recipients => {
            let plan = visit.companion()?.state().rule().programme().cloned();
            match plan.and_then(|plan| to_clinician(&plan).ok()) {
                Some(to) => Ok(Some(to)),
                None => Err(Problem::at("way", visit.words.text("page-summary-nobody", &[]))),
            }
        }
        SummaryClose::Passphrase => passphrase(visit, fields).map(Some),
    })
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
