//! The plan in words, and adding one: from a file chosen on the page or handed over at the start. It is read
//! in full and "is this yours?" is answered before anything is written.

use std::path::Path;
use std::sync::Arc;

use frond_core::companion::{Refusal, Request, Told, Trouble};
use frond_core::programme::check::load;
use frond_core::programme::read::MOST_BYTES;
use frond_core::programme::readback::read_back;
use frond_core::screens::PlanScreen;

use super::upload::Upload;
use super::visit::{Shown, Visit};
use crate::failure::Failure;
use crate::file;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, Kind, Look, Page, Part, Press};

/// The longest upload of a programme, in bytes.
pub(super) const MOST: usize = 1024 * 1024;

/// Reads a programme file at the start, whatever it holds: what is wrong with it is said on the page.
///
/// # Errors
/// A file that cannot be read, is too long, or is no text.
pub(super) fn read(path: &Path) -> Result<Arc<str>, Failure> {
    let bytes = file::read(path, MOST_BYTES as u64)?;
    let text = String::from_utf8(bytes).map_err(|_| {
        Failure::input(format!("{} is no text. Check that it is a programme.", path.display()))
    })?;
    Ok(text.into())
}

pub(super) fn plan(visit: &mut Visit<'_>) -> Shown {
    visit.see(Request::Plan)
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &PlanScreen) -> Shown {
    let mut presses = visit.presses(&screen.actions)?;
    presses.push(Press::go(visit.words.text("action-accept-programme", &[]), "/plan/add"));
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.empty.clone())
        .part(Part::Points { points: screen.sentences.clone() })
        .presses(presses)
        .answer())
}

/// What waits is shown; otherwise a file is asked for.
pub(super) fn add(visit: &mut Visit<'_>) -> Shown {
    visit.companion()?;
    match visit.diary.waiting.clone() {
        Some(text) => is_it_yours(visit, &text),
        None => ask(visit, vec![]),
    }
}

fn ask(visit: &mut Visit<'_>, problems: Vec<Problem>) -> Shown {
    let words = &visit.words;
    let kind =
        Kind::Line { input: "file", value: String::new(), mode: "", offers: vec![], short: false };
    let form = Form {
        to: "/plan/add".to_owned(),
        upload: true,
        hidden: vec![],
        fields: vec![Field::new("file", words.text("page-plan-file", &[]), kind)],
        submit: words.text("page-plan-read", &[]),
        look: Look::Next,
    };
    Ok(Page::new(&visit.frame, words.text("action-accept-programme", &[]))
        .problems(problems)
        .text([words.text("page-plan-how", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("action-today", &[]), "/today")])
        .answer())
}

pub(super) fn added(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    visit.companion()?;
    if upload.file.is_empty() {
        let says = visit.words.text("page-error-file", &[]);
        return ask(visit, vec![Problem::at("file", says)]);
    }
    match String::from_utf8(upload.file) {
        Ok(text) => {
            let text: Arc<str> = text.into();
            let shown = is_it_yours(visit, &text);
            // Only what can be read waits for an answer.
            visit.diary.waiting = load(text.as_bytes()).is_ok().then_some(text);
            shown
        }
        Err(_) => ask(visit, vec![refused(visit, Vec::new())]),
    }
}

fn refused(visit: &Visit<'_>, sentences: Vec<String>) -> Problem {
    Problem::at("file", Trouble::from(Refusal::Plan(sentences)).say(&visit.words))
}

fn is_it_yours(visit: &mut Visit<'_>, text: &Arc<str>) -> Shown {
    let plan = match load(text.as_bytes()) {
        Ok((plan, _)) => plan,
        Err(error) => {
            visit.diary.waiting = None;
            let sentences = error.to_string().lines().map(str::to_owned).collect();
            return ask(visit, vec![refused(visit, sentences)]);
        }
    };
    let id = visit.id()?.to_string();
    let words = &visit.words;
    let press = |label: String, answer: &str, look| Press {
        label,
        how: crate::pages::parts::How::Send {
            to: "/plan/accept".to_owned(),
            fields: vec![("answer", answer.to_owned()), ("id", id.clone())],
        },
        look,
    };
    let whose = words.text("page-plan-whose", &[("name", plan.for_whom.to_string().into())]);
    Ok(Page::new(&visit.frame, words.text("page-plan-yours", &[]))
        .text([whose])
        .part(Part::Points { points: read_back(&plan) })
        .presses(vec![
            press(words.text("page-plan-yes", &[]), "yes", Look::Equal),
            press(words.text("page-plan-no", &[]), "no", Look::Equal),
        ])
        .answer())
}

pub(super) fn accept(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    match fields.first("answer") {
        Some("yes") => {}
        Some("no") => {
            visit.diary.waiting = None;
            let says = visit.words.text("page-plan-not-yours", &[]);
            return Ok(visit.sorry(axum::http::StatusCode::OK, says));
        }
        _ => return Err(visit.malformed()),
    }
    // Sent twice, the second finds nothing waiting and what the first has kept.
    let Some(text) = visit.diary.waiting.clone() else {
        return visit.see(Request::Kept { of: id });
    };
    match visit.write(id, Told::Programme { text }, None)? {
        Ok(kept) => {
            visit.diary.waiting = None;
            Ok(kept)
        }
        Err(problem) => {
            visit.diary.waiting = None;
            ask(visit, vec![problem])
        }
    }
}
