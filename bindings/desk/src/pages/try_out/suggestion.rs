//! What the clinician's rule says, why, and the choices: equals where there are two; where there is none, going back.

use axum::response::Response;
use frond_core::companion::Told;
use frond_core::diary::entry::{Chosen, FeelsReady};
use frond_core::screens::{Does, ReadyScreen, Reason, SuggestionScreen};

use super::press::Presses;
use super::visit::{Shown, Visit};
use crate::pages::form::{Fields, code};
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn page(visit: &mut Visit<'_>, screen: &SuggestionScreen) -> Shown {
    let parts = parts(visit, screen)?;
    let page = Page::new(&visit.frame, &screen.title);
    Ok(parts.into_iter().fold(page, Page::part).answer())
}

/// What stands on the page, in order.
pub(super) fn parts(
    visit: &mut impl Presses,
    screen: &SuggestionScreen,
) -> Result<Vec<Part>, Response> {
    let (mut choices, mut others) = (Vec::new(), Vec::new());
    for action in &screen.actions {
        match action.does {
            Does::Choose { .. } => choices.push(visit.press(action, Look::Equal)?),
            Does::StopAndCall => choices.push(visit.press(action, Look::Next)?),
            _ => others.push(action),
        }
    }
    if choices.is_empty() && !others.is_empty() {
        choices.push(visit.press(others.remove(0), Look::Equal)?);
    }
    let others: Result<Vec<Press>, Response> =
        others.into_iter().map(|action| visit.press(action, Look::Quiet)).collect();
    let others = others?;
    let mut parts = Vec::new();
    let mut says = screen.says.iter().cloned();
    if let Some(first) = says.next() {
        parts.push(Part::Text { says: vec![first], class: "lead" });
    }
    let says = says.chain(screen.bars.iter().cloned()).collect();
    parts.push(Part::Text { says, class: "" });
    parts.push(Part::Text { says: screen.whose.iter().cloned().collect(), class: "quiet" });
    if !choices.is_empty() {
        parts.push(Part::Presses { presses: choices });
    }
    if !screen.reasons.is_empty() {
        let mut why = Vec::new();
        for group in &screen.reasons {
            why.push(Part::Heading { text: group.heading.clone() });
            why.extend(group.reasons.iter().map(reason));
        }
        let title = visit.words().text("page-why", &[]);
        parts.push(Part::Fold { title, open: false, parts: why });
    }
    if !others.is_empty() {
        parts.push(Part::Presses { presses: others });
    }
    let title = visit.words().text("page-cautions", &[]);
    let points = Part::Points { points: screen.cautions.clone() };
    parts.push(Part::Card { title, here: None, parts: vec![points] });
    Ok(parts)
}

fn reason(reason: &Reason) -> Part {
    let mut parts = vec![Part::Text {
        says: std::iter::once(reason.verdict_text.clone()).chain(reason.missing.clone()).collect(),
        class: "",
    }];
    if !reason.looked_at.is_empty() {
        parts.push(Part::Points { points: reason.looked_at.clone() });
    }
    Part::Reason { criterion: reason.criterion.clone(), parts }
}

pub(super) fn ready_page(visit: &mut Visit<'_>, screen: &ReadyScreen) -> Shown {
    let answers = screen.answers.iter().map(|own| Press {
        label: own.label.clone(),
        how: How::Send {
            to: "/ready".to_owned(),
            fields: vec![("answer", code(&own.answer)), ("id", screen.id.to_string())],
        },
        look: Look::Equal,
    });
    let answers = answers.collect();
    let others = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .quiet(screen.says.clone())
        .presses(answers)
        .presses(others)
        .answer())
}

pub(super) fn ready_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let answer = match fields.first("answer") {
        Some("yes") => FeelsReady::Yes,
        Some("not_yet") => FeelsReady::NotYet,
        Some("rather_not_say") => FeelsReady::RatherNotSay,
        _ => return Err(visit.malformed()),
    };
    visit.tell(fields, Told::FeelsReady(answer))
}

pub(super) fn choose(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let shown = fields.first("shown").and_then(|shown| shown.parse().ok());
    let chosen = match fields.first("chosen") {
        Some("try") => Some(Chosen::Try),
        Some("stay") => Some(Chosen::Stay),
        _ => None,
    };
    match (shown, chosen) {
        (Some(shown), Some(chosen)) => visit.told(fields, Does::Choose { shown, chosen }),
        _ => Err(visit.malformed()),
    }
}

pub(super) fn stay_here(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    match fields.first("stay") {
        Some("yes") => visit.told(fields, Does::StayHere { stay: true }),
        Some("no") => visit.told(fields, Does::StayHere { stay: false }),
        _ => Err(visit.malformed()),
    }
}
