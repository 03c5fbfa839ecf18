//! The plan in words, and adding one: from a file or a link, on the page or handed over at the start. It is
//! read in full, what has to be chosen knowingly is chosen, and "is this yours?" is answered before anything
//! is written.

use std::path::Path;

use frond_core::companion::Told;
use frond_core::diary::entry::Although;
use frond_core::handover::FILE_MOST;
use frond_core::screens::{
    AcceptScreen, Action, AddPlanScreen, Card, Does, PlanScreen, Screen, WholeScreen,
};
use frond_core::whole::{View, WholeRequest};

use super::lines;
use super::own_code::typed;
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
pub(super) fn read(path: &Path) -> Result<Vec<u8>, Failure> {
    file::read(path, FILE_MOST as u64)
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

/// A file or a link is asked for; a link that only lacks its words stands there again.
pub(super) fn add_page(visit: &mut Visit<'_>, screen: &AddPlanScreen) -> Shown {
    let mut form =
        lines::form("/plan/add", &screen.submit, [&screen.file, &screen.link, &screen.words]);
    form.upload = true;
    lines::page(visit, &screen.title, &screen.says, &screen.problems, form, &screen.actions)
}

pub(super) fn added(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    let (link, words) = (typed(&upload.fields, "link"), typed(&upload.fields, "words"));
    let seen = visit.whole(if upload.file.is_empty() && !link.trim().is_empty() {
        WholeRequest::PlanLink { link, words }
    } else {
        WholeRequest::PlanFile { bytes: upload.file, words }
    })?;
    visit.show(&seen.view)
}

/// The whole plan in short cards, then "is this yours?".
pub(super) fn accept_page(
    visit: &mut Visit<'_>,
    screen: &AcceptScreen,
    problems: Vec<Problem>,
) -> Shown {
    let others: Vec<Action> = screen.actions.iter().skip(1).cloned().collect();
    let others = visit.presses(&others)?;
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
            let seen = visit.pressed(Does::NotMine)?;
            return visit.lead_on(seen.view);
        }
        _ => return Err(visit.malformed()),
    }
    let although: Option<Vec<Although>> = fields.all("although").map(decode).collect();
    let although = although.ok_or_else(|| visit.malformed())?;
    let handed = match waiting(visit)? {
        Ok(screen) => screen.handed,
        // Sent twice, the second finds nothing waiting and what the first has kept.
        Err(View::Screen(_) | View::Whole(WholeScreen::AddPlan(_))) => None,
        Err(in_the_way) => return visit.show(&in_the_way),
    };
    let Some(handed) = handed else { return Ok(see(&format!("/kept/{id}"))) };
    match visit.write(id, Told::Programme { handed, although }, None)? {
        Ok(kept) => Ok(kept),
        // Looked at again: what was not chosen is asked for at its place.
        Err(Problem { says, .. }) => match waiting(visit)? {
            Ok(screen) => accept_page(visit, &screen, vec![Problem::at("although", says)]),
            Err(other) => visit.show(&other),
        },
    }
}

/// The plan that waits; otherwise what is shown in its place.
fn waiting(visit: &mut Visit<'_>) -> Result<Result<AcceptScreen, View>, axum::response::Response> {
    Ok(match visit.pressed(Does::AcceptProgramme)?.view {
        View::Screen(Screen::Accept(screen)) => Ok(screen),
        other => Err(other),
    })
}
