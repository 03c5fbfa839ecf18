//! The plan in words, and adding one: from a file chosen on the page or handed over at the start. It is read
//! in full and "is this yours?" is answered before anything is written.

use std::path::Path;
use std::sync::Arc;

use frond_core::companion::{Refusal, Request, Told, Trouble};
use frond_core::programme::read::MOST_BYTES;
use frond_core::screens::{AcceptScreen, Action, PlanScreen};

use super::visit::{Shown, Visit, see};
use crate::failure::Failure;
use crate::file;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, How, Kind, Look, Page, Part, Press};
use crate::pages::upload::Upload;

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
        also: vec![],
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
            // What cannot be used is put away again when it is shown.
            visit.diary.waiting = Some(text.clone());
            is_it_yours(visit, &text)
        }
        Err(_) => {
            let says = Trouble::from(Refusal::Plan(Vec::new())).say(&visit.words);
            ask(visit, vec![Problem::at("file", says)])
        }
    }
}

fn is_it_yours(visit: &mut Visit<'_>, text: &Arc<str>) -> Shown {
    visit.see(Request::Accept { text: text.clone() })
}

/// The whole plan in short cards, then "is this yours?".
pub(super) fn accept_page(visit: &mut Visit<'_>, screen: &AcceptScreen) -> Shown {
    if let Some(refused) = &screen.refused {
        visit.diary.waiting = None;
        return ask(visit, vec![Problem::at("file", refused.clone())]);
    }
    let id = screen.id.to_string();
    let press = |label: String, answer: &str| Press {
        label,
        how: How::Send {
            to: "/plan/accept".to_owned(),
            fields: vec![("answer", answer.to_owned()), ("id", id.clone())],
        },
        look: Look::Equal,
    };
    let mut presses = vec![press(screen.yes.clone(), "yes")];
    // That it is not hers stands first among what else can be done, and puts the plan away.
    presses.extend(screen.actions.iter().take(1).map(|no| press(no.label.clone(), "no")));
    let others: Vec<Action> = screen.actions.iter().skip(1).cloned().collect();
    let others = visit.presses(&others)?;
    let mut page = Page::new(&visit.frame, &screen.title);
    for card in &screen.cards {
        let parts = vec![Part::Text { says: card.lines.clone(), class: "" }];
        page = page.part(Part::Card { title: card.title.clone(), here: None, parts });
    }
    let title = visit.words.text("action-plan", &[]);
    let parts = vec![Part::Points { points: screen.sentences.clone() }];
    page = page.part(Part::Fold { title, open: false, parts });
    page =
        page.part(Part::Text { says: screen.yours.clone().into_iter().collect(), class: "lead" });
    Ok(page.presses(presses).presses(others).answer())
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
        return Ok(see(&format!("/kept/{id}")));
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
