//! The steps, and choosing another. A smaller one is one tap; a larger one comes after its caution (D1).

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::Why;
use frond_core::programme::values::StepId;
use frond_core::screens::{LadderScreen, Rung, Screen, StepCheckScreen};

use super::visit::{Shown, Visit};
use crate::pages::form::Fields;
use crate::pages::parts::{How, Look, Page, Part, Press};

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
    for (number, rung) in screen.rungs.iter().enumerate() {
        let mut parts = vec![Part::Text { says: vec![rung.used.clone()], class: "" }];
        let here = rung.note.clone().filter(|_| rung.present);
        parts.extend(
            rung.note
                .clone()
                .filter(|_| !rung.present)
                .map(|note| Part::Text { says: vec![note], class: "quiet" }),
        );
        if !rung.present {
            parts.push(Part::Presses { presses: vec![choose(visit, number, rung)?] });
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

/// The address names a step by its place alone: what a plan calls it is nobody's business in a browser's
/// history. What is written is the step's own id.
fn choose(
    visit: &mut Visit<'_>,
    number: usize,
    rung: &Rung,
) -> Result<Press, axum::response::Response> {
    let label = rung.choose.clone();
    let how = if rung.larger {
        How::Go(format!("/steps/{}", number + 1))
    } else {
        visit.send("/steps", vec![("why", "own".to_owned()), ("to", rung.id.to_string())])?
    };
    Ok(Press { label, how, look: Look::Quiet })
}

/// The caution before a larger step.
pub(super) fn one(visit: &mut Visit<'_>, number: &str) -> Shown {
    let (screen, rung) = rung(visit, number)?;
    let mut presses =
        vec![Press::go(visit.words.text("action-stay", &[]), "/steps").looking(Look::Next)];
    for (why, label) in [
        ("clinician", visit.words.text("page-step-clinician", &[])),
        ("own", visit.words.text("page-step-own", &[])),
    ] {
        let fields = vec![("why", why.to_owned()), ("to", rung.id.to_string())];
        let how = visit.send("/steps", fields)?;
        presses.push(Press { label, how, look: Look::Equal });
    }
    let caution = if rung.larger { screen.larger_caution } else { screen.smaller_is_fine };
    Ok(Page::new(&visit.frame, rung.name.clone())
        .in_window(visit.words.text("action-ladder", &[]))
        .text([rung.used.clone()])
        .part(Part::Notice { says: vec![caution], press: None })
        .presses(presses)
        .answer())
}

pub(super) fn told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let why = match fields.first("why") {
        Some("own") => Why::OwnChoice,
        Some("clinician") => Why::Clinician,
        _ => return Err(visit.malformed()),
    };
    match fields.first("to").and_then(|to| StepId::new(to).ok()) {
        Some(to) => visit.tell(fields, Told::Step { to, why }),
        None => Err(visit.malformed()),
    }
}

fn rung(
    visit: &mut Visit<'_>,
    number: &str,
) -> Result<(LadderScreen, Rung), axum::response::Response> {
    let at = number.parse::<usize>().ok().and_then(|number| number.checked_sub(1));
    if let Screen::Ladder(screen) = visit.ask(Request::Ladder)?
        && let Some(rung) = at.and_then(|at| screen.rungs.get(at)).cloned()
    {
        return Ok((screen, rung));
    }
    Err(visit.nothing_here())
}
