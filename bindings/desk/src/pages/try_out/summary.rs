//! A summary for the clinician: what is in it is said before it leaves, who can open it is chosen and never
//! preset, and saving the file is all that happens to it.

use chrono::NaiveDate;
use frond_core::companion::Request;
use frond_core::screens::{FormField, Screen, SummaryClose, SummaryFormScreen, SummaryKind};
use frond_core::summary::Selection;
use frond_core::whole::{View, WholeRequest};

use super::lines;
use super::log::choices_of;
use super::own_code::typed;
use super::visit::{Shown, Visit, share};
use super::when;
use crate::pages::form::{Fields, Problem, code};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page, Part};

pub(super) fn page(visit: &mut Visit<'_>, screen: &SummaryFormScreen, fields: &Fields) -> Shown {
    shown(visit, screen, fields, lines::problems(&screen.problems))
}

fn shown(
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
            title: screen.narrow.clone(),
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

/// How it is closed, and the files that can be made of it.
fn closing(visit: &Visit<'_>, screen: &SummaryFormScreen, fields: &Fields) -> Form {
    let ways = screen.ways.iter().map(|own| {
        let label = std::iter::once(own.label.clone()).chain(own.says.clone());
        (code(&own.way), label.collect::<Vec<_>>().join("\n"))
    });
    let way = lines::name(FormField::Way);
    let who = Kind::One(choices_of(&way, ways.collect(), fields));
    let alone = vec![("yes".to_owned(), screen.time_alone.clone())];
    let alone = Kind::Any(choices_of("alone", alone, fields));
    let also = visit.words.text("page-summary-also", &[]);
    let mut files = screen.files.iter();
    let mut form = Form::to("/summary/file", "");
    form.hidden = carried(&screen.selection);
    form.fields = vec![
        Field::new(&way, &screen.who, who),
        lines::field(&screen.new),
        lines::field(&screen.again),
        Field::new("alone", also, alone).hint(&screen.time_alone_hint),
    ];
    if let Some(first) = files.next() {
        form.submit.clone_from(&first.label);
    }
    form.also = files.map(|file| (then(file.kind), file.label.clone())).collect();
    form
}

/// What a button sends that saves this file.
fn then(kind: SummaryKind) -> &'static str {
    match kind {
        SummaryKind::Summary => "summary",
        SummaryKind::Table => "table",
        SummaryKind::Bundle => "bundle",
    }
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

/// What another choice would hold.
pub(super) fn look(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let (selection, problems) = match selected(visit, fields) {
        Ok(selection) => (selection, vec![]),
        Err(problem) => (Selection::default(), vec![problem]),
    };
    match visit.ask(Request::Summary(selection))? {
        Screen::Summary(screen) => shown(visit, &screen, fields, problems),
        other => visit.screen(&other),
    }
}

/// The file itself, under a name that says nothing; or what has to be put right first.
pub(super) fn file(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let Ok(selection) = selected(visit, fields) else { return Err(visit.malformed()) };
    let close = [SummaryClose::Recipients, SummaryClose::Passphrase, SummaryClose::Open]
        .into_iter()
        .find(|way| fields.first("way") == Some(code(way).as_str()));
    let kind = [SummaryKind::Table, SummaryKind::Bundle]
        .into_iter()
        .find(|kind| fields.has("then", then(*kind)))
        .unwrap_or(SummaryKind::Summary);
    let seen = visit.whole(WholeRequest::SummaryFile {
        selection,
        close,
        passphrase: typed(fields, "new"),
        again: typed(fields, "again"),
        time_alone: fields.has("alone", "yes"),
        kind,
    })?;
    match share(seen) {
        Ok(saved) => Ok(saved),
        Err(View::Screen(Screen::Summary(screen))) => page(visit, &screen, fields),
        Err(other) => visit.show(&other),
    }
}
