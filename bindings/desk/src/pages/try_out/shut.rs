//! Pages while no diary is open: there is none yet, it does not open, or everything was erased; and what was done
//! to it as a whole, or was not.

use axum::http::StatusCode;
use frond_core::screens::{
    Action, CannotOpenScreen, Does, DoneScreen, ErasedScreen, NoDiaryScreen, SorryScreen,
};
use frond_core::whole::View;

use super::visit::{Shown, Visit, see};
use crate::pages::form::Fields;
use crate::pages::parts::{Look, Page, Press};

/// The first the largest, the others beside it.
fn equals(
    visit: &mut Visit<'_>,
    actions: &[Action],
) -> Result<Vec<Press>, axum::response::Response> {
    let looks = std::iter::once(Look::Next).chain(std::iter::repeat(Look::Equal));
    actions.iter().zip(looks).map(|(action, look)| visit.press(action, look)).collect()
}

/// There is no diary yet.
pub(super) fn no_diary_page(visit: &mut Visit<'_>, screen: &NoDiaryScreen) -> Shown {
    let presses = visit.next_and(&screen.next, &screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title).text(screen.says.clone()).presses(presses).answer())
}

/// A diary that does not open: what is the matter, and what can be done.
pub(super) fn cannot_open_page(visit: &mut Visit<'_>, screen: &CannotOpenScreen) -> Shown {
    let presses = equals(visit, &screen.steps)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .text([screen.says.clone()])
        .text(screen.calm.clone())
        .text([screen.help.clone()])
        .presses(presses)
        .answer_as(StatusCode::SERVICE_UNAVAILABLE))
}

/// Everything was erased.
pub(super) fn erased_page(visit: &mut Visit<'_>, screen: &ErasedScreen) -> Shown {
    let mut presses = Vec::new();
    for action in &screen.actions {
        presses.push(visit.press(action, Look::Equal)?);
    }
    Ok(Page::new(&visit.frame, &screen.title).text(screen.says.clone()).presses(presses).answer())
}

/// Starts a new diary where there is none; what is written in it is nobody's invention.
pub(super) fn start(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let before = visit.diary.is_open();
    let seen = visit.pressed(Does::StartNew)?;
    if !before && matches!(seen.view, View::Screen(_)) {
        visit.diary.invented = false;
    }
    visit.lead_on(seen.view)
}

/// What was done last, looked at again; it is not done again.
pub(super) fn done(visit: &mut Visit<'_>) -> Shown {
    match visit.diary.done.clone() {
        Some(screen) if visit.diary.is_open() => done_page(visit, &screen),
        _ => Ok(see("/today")),
    }
}

pub(super) fn done_page(visit: &mut Visit<'_>, screen: &DoneScreen) -> Shown {
    let presses = visit.next_and(&screen.next, &screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title).text(screen.says.clone()).presses(presses).answer())
}

pub(super) fn sorry_page(visit: &mut Visit<'_>, screen: &SorryScreen) -> Shown {
    sorry_as(visit, screen, StatusCode::CONFLICT)
}

pub(super) fn sorry_as(visit: &mut Visit<'_>, screen: &SorryScreen, status: StatusCode) -> Shown {
    let presses = equals(visit, &screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .presses(presses)
        .answer_as(status))
}
