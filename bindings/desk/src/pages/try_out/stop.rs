//! Stop and call, in the order of the record; the first number stands before everything that is read.

use axum::response::Response;
use frond_core::safety::{Dial, LineKind};
use frond_core::screens::StopScreen;

use super::press::Presses;
use super::visit::{Shown, Visit};
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn page(visit: &mut Visit<'_>, screen: &StopScreen) -> Shown {
    let parts = parts(visit, screen)?;
    let page = Page::new(&visit.frame, &screen.title);
    Ok(parts.into_iter().fold(page, Page::part).answer())
}

/// What stands on the page, in order.
pub(super) fn parts(visit: &mut impl Presses, screen: &StopScreen) -> Result<Vec<Part>, Response> {
    let presses = visit.presses(&screen.actions)?;
    let dialled = |dial: &Dial, look| Press {
        label: dial.label.clone(),
        how: How::Dial(dial.number.clone()),
        look,
    };
    let mut parts = Vec::new();
    let first = screen.call.dials().next();
    if let Some(first) = first {
        parts.push(Part::Presses { presses: vec![dialled(first, Look::Next)] });
    }
    let mut skipped = usize::from(first.is_some());
    for line in &screen.call.lines {
        let class = match line.kind {
            LineKind::EmergencyNumberFirst | LineKind::StopNow | LineKind::ReadAloud => "lead",
            LineKind::WhoToCall
            | LineKind::NobodyTold
            | LineKind::MayContinue
            | LineKind::DidRight
            | LineKind::Later => "",
        };
        parts.push(Part::Text { says: line.text.clone(), class });
        let others = line.dial.iter().skip(skipped.min(line.dial.len()));
        skipped = skipped.saturating_sub(line.dial.len());
        let dials: Vec<Press> = others.map(|dial| dialled(dial, Look::Equal)).collect();
        if !dials.is_empty() {
            parts.push(Part::Presses { presses: dials });
        }
    }
    if !presses.is_empty() {
        parts.push(Part::Presses { presses });
    }
    Ok(parts)
}
