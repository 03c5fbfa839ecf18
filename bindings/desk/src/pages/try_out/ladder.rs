//! The steps, and choosing another. A smaller one is one tap; a larger one comes after its caution (D1).

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::Why;
use frond_core::programme::values::StepId;
use frond_core::screens::{LadderScreen, Rung, Screen, StepCheckScreen};

use super::visit::{Shown, Visit};
use crate::pages::form::Fields;
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn steps(visit: &mut Visit<'_>) -> Shown {
    visit.see(Request::Ladder)
}

pub(super) fn confirm(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    visit.tell(fields, Told::ConfirmStep)
}

pub(super) fn check(visit: &mut Visit<'_>) -> Shown {
    visit.see(Request::StepCheck)
}

/// "Is this what you use now?"
pub(super) fn check_page(visit: &mut Visit<'_>, screen: &StepCheckScreen) -> Shown {
    let presses = visit.next_and(&screen.next, &screen.actions)?;
    let step = screen.step.clone().map(|step| Part::Text { says: vec![step], class: "lead" });
    let mut page = Page::new(&visit.frame, &screen.title).text(screen.empty.clone());
    if let Some(step) = step {
        page = page.part(step);
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &LadderScreen) -> Shown {
    let mut cards = Vec::new();
    for rung in &screen.rungs {
        let mut parts = vec![Part::Text { says: vec![rung.used.clone()], class: "" }];
        let here = rung.note.clone().filter(|_| rung.present);
        parts.extend(
            rung.note
                .clone()
                .filter(|_| !rung.present)
                .map(|note| Part::Text { says: vec![note], class: "quiet" }),
        );
        if !rung.present {
            parts.push(Part::Presses { presses: vec![choose(visit, rung)?] });
        }
        cards.push(Part::Card { title: rung.name.clone(), here, parts });
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title).text(screen.empty.clone());
    if screen.empty.is_none() {
        page = page.text([screen.smaller_is_fine.clone()]);
    }
    for card in cards {
        page = page.part(card);
    }
    Ok(page.presses(presses).answer())
}

fn choose(visit: &mut Visit<'_>, rung: &Rung) -> Result<Press, axum::response::Response> {
    let label = visit.words.text("page-use-step", &[("step", rung.name.as_str().into())]);
    let to = format!("/steps/{}", rung.id);
    let how =
        if rung.larger { How::Go(to) } else { visit.send(&to, vec![("why", "own".to_owned())])? };
    Ok(Press { label, how, look: Look::Quiet })
}

/// The caution before a larger step.
pub(super) fn one(visit: &mut Visit<'_>, step: &str) -> Shown {
    let (screen, rung) = rung(visit, step)?;
    let mut presses =
        vec![Press::go(visit.words.text("action-stay", &[]), "/steps").looking(Look::Next)];
    for (why, label) in [
        ("clinician", visit.words.text("page-step-clinician", &[])),
        ("own", visit.words.text("page-step-own", &[])),
    ] {
        let how = visit.send(&format!("/steps/{}", rung.id), vec![("why", why.to_owned())])?;
        presses.push(Press { label, how, look: Look::Equal });
    }
    let caution = if rung.larger { screen.larger_caution } else { screen.smaller_is_fine };
    Ok(Page::new(&visit.frame, rung.name.clone())
        .text([rung.used.clone()])
        .part(Part::Notice { says: vec![caution], press: None })
        .presses(presses)
        .answer())
}

pub(super) fn told(visit: &mut Visit<'_>, step: &str, fields: &Fields) -> Shown {
    let why = match fields.first("why") {
        Some("own") => Why::OwnChoice,
        Some("clinician") => Why::Clinician,
        _ => return Err(visit.malformed()),
    };
    let Ok(to) = StepId::new(step) else { return Err(visit.nothing_here()) };
    visit.tell(fields, Told::Step { to, why })
}

fn rung(
    visit: &mut Visit<'_>,
    step: &str,
) -> Result<(LadderScreen, Rung), axum::response::Response> {
    if let Screen::Ladder(screen) = visit.ask(Request::Ladder)?
        && let Some(rung) = screen.rungs.iter().find(|rung| rung.id.as_str() == step).cloned()
    {
        return Ok((screen, rung));
    }
    Err(visit.nothing_here())
}
