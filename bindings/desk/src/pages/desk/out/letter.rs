//! The letter: asked for, looked at, saved.

use askama::Template;
use frond_core::screens::{Letter, LetterReader};
use frond_core::summary::Facts;

use super::super::visit::{Shown, Visit};
use super::typed;
use crate::clinic::letter::letter_pdf;
use crate::pages::app::file;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Form, Look, Page, Part, Press};

/// How a saved page looks, on a screen and on paper.
const STYLE: &str = include_str!("../../../../templates/letter.css");

/// A letter as a page of its own, to be saved and printed.
#[derive(Template)]
#[template(path = "letter.html")]
struct Saved<'a> {
    letter: &'a Letter,
    style: &'static str,
}

pub(super) fn ask(visit: &mut Visit<'_>, named: &str) -> Shown {
    page(visit, named, &Fields::of(vec![]), vec![])
}

fn page(visit: &Visit<'_>, named: &str, fields: &Fields, problems: Vec<Problem>) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, _) = visit.diary(&opened, named)?;
    let words = &visit.words;
    let form = typed::form(visit, format!("/people/{diary}/letter"), fields);
    Ok(Page::new(&visit.frame, words.text("letter-form-title", &[]))
        .problems(problems)
        .text([words.text("letter-form-says", &[]), words.text("letter-form-never", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("out-back", &[]), format!("/people/{diary}"))])
        .answer())
}

/// Makes it; or the page on which something has to be put right.
fn made(
    visit: &Visit<'_>,
    named: &str,
    fields: &Fields,
) -> Result<Letter, axum::response::Response> {
    let (typed, agreed) = match typed::typed(visit, fields) {
        Ok(typed) => typed,
        Err(problems) => return Err(page(visit, named, fields, problems)?),
    };
    let received = visit.newest(named)?;
    let facts = Facts::of(&received.summary).map_err(|_| visit.not_made())?;
    Ok(Letter::new(&typed, &facts, agreed, &visit.words, reader(fields)))
}

/// For whom it is worded.
fn reader(fields: &Fields) -> LetterReader {
    if fields.has("reader", "person") { LetterReader::Person } else { LetterReader::Clinician }
}

/// Shows it. Nothing of it is kept, so what was typed goes along in the forms of this page.
pub(super) fn look(visit: &mut Visit<'_>, named: &str, fields: &Fields) -> Shown {
    let letter = made(visit, named, fields)?;
    let words = &visit.words;
    let for_person = reader(fields) == LetterReader::Person;
    let with = |to: &str, label, look, for_person: bool| {
        let mut form = Form::to(format!("/people/{named}/{to}"), label);
        form.look = look;
        form.hidden = typed::carried(fields);
        if for_person {
            form.hidden.push(("reader", "person".to_owned()));
        }
        form
    };
    let other = if for_person {
        with("letter", words.text("letter-look-letter", &[]), Look::Quiet, false)
    } else {
        with("letter", words.text("letter-look-copy", &[]), Look::Quiet, true)
    };
    Ok(Page::new(&visit.frame, words.text("letter-look-title", &[]))
        .text([words.text("letter-look-says", &[])])
        .form(with("letter/pdf", words.text("letter-save-pdf", &[]), Look::Next, for_person))
        .form(with("letter/page", words.text("letter-save-page", &[]), Look::Equal, for_person))
        .form(other)
        .part(Part::Letter { letter })
        .presses(vec![
            Press::go(words.text("letter-write-again", &[]), format!("/people/{named}/letter")),
            Press::go(words.text("out-back", &[]), format!("/people/{named}")),
        ])
        .answer())
}

pub(super) fn pdf(visit: &mut Visit<'_>, named: &str, fields: &Fields) -> Shown {
    let letter = made(visit, named, fields)?;
    let pdf = letter_pdf(&letter).map_err(|_| visit.not_made())?;
    Ok(file(&name(visit, "pdf"), "application/pdf", pdf))
}

pub(super) fn html(visit: &mut Visit<'_>, named: &str, fields: &Fields) -> Shown {
    let letter = made(visit, named, fields)?;
    let html = Saved { letter: &letter, style: STYLE }.render().map_err(|_| visit.not_made())?;
    Ok(file(&name(visit, "html"), "text/html; charset=utf-8", html.into_bytes()))
}

/// Neutral: it says nothing of whom it is about.
fn name(visit: &Visit<'_>, ending: &str) -> String {
    format!("letter-{}.{ending}", visit.moment.now.day())
}
