//! Today: one thing to do, the largest; what the plan asks; that breathing is enough.

use axum::response::Response;
use frond_core::screens::{Does, PracticeCard, StepCard, TodayScreen};
use frond_core::whole::WholeRequest;
use frond_core::words::Words;

use super::press::Presses;
use super::visit::{Shown, Visit};
use crate::pages::parts::{Look, Page, Part, Press};

/// The first page: what the start led to, then what the core says is the most pressing.
pub(super) fn first(visit: &mut Visit<'_>) -> Shown {
    let view = match visit.diary.first.pop() {
        Some(view) => view,
        None => visit.whole(WholeRequest::Begin)?.view,
    };
    visit.lead_on(view)
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &TodayScreen) -> Shown {
    let parts = parts(visit, screen)?;
    let page = Page::new(&visit.frame, &screen.title).under(&screen.date);
    Ok(parts.into_iter().fold(page, Page::part).answer())
}

/// What stands on the page, in order.
pub(super) fn parts(visit: &mut impl Presses, screen: &TodayScreen) -> Result<Vec<Part>, Response> {
    let mut notices = Vec::new();
    for notice in &screen.notices {
        // What is next stands below, large, and not twice.
        let action = notice.action.as_ref().filter(|action| action.does != screen.next.does);
        let press = action.map(|action| visit.press(action, Look::Equal)).transpose()?;
        notices.push(Part::Notice { says: vec![notice.text.clone()], press });
    }
    let welcome = match &screen.welcome {
        None => None,
        Some(welcome) => {
            let presses: Result<Vec<Press>, Response> =
                welcome.actions.iter().map(|action| visit.press(action, Look::Equal)).collect();
            let says = Part::Text { says: welcome.says.clone(), class: "" };
            let parts = vec![says, Part::Presses { presses: presses? }];
            Some(Part::Card { title: welcome.title.clone(), here: None, parts })
        }
    };
    // "Breathing is enough" is an answer, so its button stands right beside it.
    let (breathing, rest): (Vec<_>, Vec<_>) = screen
        .actions
        .iter()
        .filter(|action| action.does != screen.next.does)
        .cloned()
        .partition(|action| action.does == Does::Breathing);
    let breathing: Result<Vec<Press>, Response> =
        breathing.iter().map(|action| visit.press(action, Look::Equal)).collect();
    let next = vec![visit.press(&screen.next, Look::Next)?];
    let others = visit.presses(&rest)?;
    let texts = |says: Vec<String>| Part::Text { says, class: "" };
    let mut parts: Vec<Part> = welcome.into_iter().chain(notices).collect();
    if let Some(step) = &screen.step {
        parts.push(step_card(visit.words(), step));
    }
    parts.push(Part::Presses { presses: next });
    let enough = screen.routines.iter().chain(&screen.enough);
    parts.push(texts(enough.cloned().collect()));
    parts.extend(some(breathing?));
    parts.extend(screen.practices.iter().map(practice_card));
    parts.push(texts(screen.look_forward.iter().cloned().collect()));
    parts.extend(some(others));
    let title = visit.words().text("page-cautions", &[]);
    let points = Part::Points { points: screen.cautions.clone() };
    parts.push(Part::Card { title, here: None, parts: vec![points] });
    Ok(parts)
}

/// Things to press, where there are any.
fn some(presses: Vec<Press>) -> Option<Part> {
    (!presses.is_empty()).then_some(Part::Presses { presses })
}

fn step_card(words: &Words, step: &StepCard) -> Part {
    let text = |says: Vec<String>| Part::Text { says, class: "" };
    let quiet = |says: Vec<String>| Part::Text { says, class: "quiet" };
    let numbers = vec![
        Part::Points { points: step.parts.clone() },
        text(vec![step.position.clone()]),
        quiet(std::iter::once(step.schedule.clone()).chain(step.done.clone()).collect()),
    ];
    let mut parts = vec![text(vec![step.instruction.clone()])];
    if step.folded {
        let title = words.text("page-numbers", &[]);
        parts.push(Part::Fold { title, open: false, parts: numbers });
    } else {
        parts.extend(numbers);
    }
    Part::Card { title: step.name.clone(), here: None, parts }
}

fn practice_card(practice: &PracticeCard) -> Part {
    let quiet = [practice.minutes.clone(), practice.schedule.clone()];
    let quiet = quiet.into_iter().chain(practice.done.clone()).collect();
    let parts = vec![
        Part::Text { says: vec![practice.instruction.clone()], class: "" },
        Part::Text { says: quiet, class: "quiet" },
    ];
    Part::Card { title: practice.name.clone(), here: None, parts }
}
