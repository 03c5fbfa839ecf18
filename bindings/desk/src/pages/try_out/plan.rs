//! The plan in words, and adding one: from a file or a link, on the page or handed over at the start. It is
//! read in full, what has to be chosen knowingly is chosen, and "is this yours?" is answered before anything
//! is written.

use std::path::Path;

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::Although;
use frond_core::handover::{FILE_MOST, Handed, LINK_MOST};
use frond_core::screens::{AcceptScreen, Action, Card, PlanScreen, Screen};

use super::visit::{Shown, Visit, see};
use crate::failure::Failure;
use crate::file;
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Choice, Field, Form, How, Kind, Look, Page, Part, Press};
use crate::pages::upload::Upload;

/// The longest upload of a programme, in bytes.
pub(super) const MOST: usize = 1024 * 1024;

/// Reads a programme file at the start, whatever it holds: what is wrong with it is said on the page.
///
/// # Errors
/// A file that cannot be read, or is too long.
pub(super) fn read(path: &Path) -> Result<Handed, Failure> {
    Ok(Handed::file(file::read(path, FILE_MOST as u64)?, ""))
}

pub(super) fn plan(visit: &mut Visit<'_>) -> Shown {
    visit.see(Request::Plan)
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &PlanScreen) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.empty.clone())
        .part(Part::Points { points: screen.sentences.clone() })
        .quiet(screen.key.clone())
        .presses(presses)
        .answer())
}

/// What waits is shown; otherwise a file or a link is asked for.
pub(super) fn add(visit: &mut Visit<'_>) -> Shown {
    visit.companion()?;
    match visit.diary.waiting.clone() {
        Some(handed) => is_it_yours(visit, handed),
        None => ask(visit, "", vec![]),
    }
}

/// Asks for a file or a link; a link that only lacks its words is kept.
fn ask(visit: &mut Visit<'_>, link: &str, problems: Vec<Problem>) -> Shown {
    let words = &visit.words;
    let file =
        Kind::Line { input: "file", value: String::new(), mode: "", offers: vec![], short: false };
    let spoken =
        Kind::Line { input: "text", value: String::new(), mode: "", offers: vec![], short: false };
    let form = Form {
        to: "/plan/add".to_owned(),
        upload: true,
        hidden: vec![],
        fields: vec![
            Field::new("file", words.text("page-plan-file", &[]), file),
            Field::new(
                "link",
                words.text("handover-link", &[]),
                Kind::Passage { value: link.to_owned() },
            )
            .hint(words.text("handover-link-hint", &[])),
            Field::new("words", words.text("handover-words", &[]), spoken)
                .hint(words.text("handover-words-hint", &[])),
        ],
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
    let words = upload.fields.first("words").unwrap_or_default();
    let handed = match (upload.file.is_empty(), upload.fields.first("link")) {
        (false, _) => Handed::file(upload.file, words),
        (true, Some(link)) => Handed::Link { link: link.into(), words: words.into() },
        (true, None) => {
            let says = visit.words.text("page-error-file", &[]);
            return ask(visit, "", vec![Problem::at("file", says)]);
        }
    };
    // What cannot be used is put away again when it is shown.
    visit.diary.waiting = Some(handed.clone());
    is_it_yours(visit, handed)
}

fn is_it_yours(visit: &mut Visit<'_>, handed: Handed) -> Shown {
    visit.see(Request::Accept(handed))
}

/// The whole plan in short cards, then "is this yours?".
pub(super) fn accept_page(visit: &mut Visit<'_>, screen: &AcceptScreen) -> Shown {
    show(visit, screen, vec![])
}

fn show(visit: &mut Visit<'_>, screen: &AcceptScreen, problems: Vec<Problem>) -> Shown {
    if let Some(refused) = &screen.refused {
        let refused = refused.clone();
        return match visit.diary.waiting.take() {
            Some(Handed::Link { link, .. }) => {
                let field = if screen.asks_words { "words" } else { "link" };
                // A text that is no link can be of any length; it is not sent back.
                let shown = if link.len() <= 2 * LINK_MOST { &*link } else { "" };
                ask(visit, shown, vec![Problem::at(field, refused)])
            }
            _ => ask(visit, "", vec![Problem::at("file", refused)]),
        };
    }
    let others: Vec<Action> = screen.actions.iter().skip(1).cloned().collect();
    let others = visit.presses(&others)?;
    if screen.handed.is_none() {
        // It is in use already: nothing waits.
        visit.diary.waiting = None;
    }
    let mut page = Page::new(&visit.frame, &screen.title).problems(problems);
    for card in screen.signed.iter().chain(&screen.different).chain(&screen.cards) {
        page = page.part(part(card));
    }
    let title = visit.words.text("action-plan", &[]);
    let parts = vec![Part::Points { points: screen.sentences.clone() }];
    page = page.part(Part::Fold { title, open: false, parts });
    for knowing in &screen.knowing {
        page = page.part(Part::Notice { says: vec![knowing.says.clone()], press: None });
    }
    page =
        page.part(Part::Text { says: screen.yours.clone().into_iter().collect(), class: "lead" });
    let id = screen.id.to_string();
    if screen.handed.is_some() {
        page = page.form(yes(visit, screen, &id));
    }
    // That it is not hers stands first among what else can be done, and puts the plan away.
    let no = screen.actions.iter().take(1).map(|no| Press {
        label: no.label.clone(),
        how: How::Send {
            to: "/plan/accept".to_owned(),
            fields: vec![("answer", "no".to_owned()), ("id", id.clone())],
        },
        look: Look::Equal,
    });
    let no = no.collect();
    Ok(page.presses(no).presses(others).answer())
}

fn part(card: &Card) -> Part {
    let parts = vec![Part::Text { says: card.lines.clone(), class: "" }];
    Part::Card { title: card.title.clone(), here: None, parts }
}

/// "Yes, this is mine", with what has to be chosen knowingly; nothing is chosen beforehand.
fn yes(visit: &Visit<'_>, screen: &AcceptScreen, id: &str) -> Form {
    let choices = screen.knowing.iter().map(|knowing| Choice {
        value: code(&knowing.although),
        label: knowing.label.clone(),
        chosen: false,
    });
    let choices: Vec<Choice> = choices.collect();
    let label = visit.words.text("handover-knowing", &[]);
    let field = Field::new("although", label, Kind::Any(choices));
    let mut form = Form::to("/plan/accept", screen.yes.clone());
    form.hidden = vec![("answer", "yes".to_owned()), ("id", id.to_owned())];
    form.look = Look::Equal;
    if !screen.knowing.is_empty() {
        form.fields = vec![field];
    }
    form
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
    let Some(handed) = visit.diary.waiting.clone() else {
        return Ok(see(&format!("/kept/{id}")));
    };
    let although: Option<Vec<Although>> = fields.all("although").map(decode).collect();
    let although = although.ok_or_else(|| visit.malformed())?;
    match visit.write(id, Told::Programme { handed: handed.clone(), although }, None)? {
        Ok(kept) => {
            visit.diary.waiting = None;
            Ok(kept)
        }
        Err(Problem { says, .. }) => {
            // Looked at again: what was not chosen is asked for at its place.
            let screen = visit.ask(Request::Accept(handed))?;
            match screen {
                Screen::Accept(screen) if screen.handed.is_some() => {
                    show(visit, &screen, vec![Problem::at("although", says)])
                }
                _ => {
                    visit.diary.waiting = None;
                    ask(visit, "", vec![Problem::at("file", says)])
                }
            }
        }
    }
}
