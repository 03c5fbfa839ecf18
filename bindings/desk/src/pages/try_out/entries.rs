//! What was written; what was just kept, with a way to take it back.

use frond_core::companion::Request;
use frond_core::screens::{Does, EntriesScreen, KeptScreen};

use super::visit::{Shown, Visit};
use crate::pages::form::Fields;
use crate::pages::parts::{Look, Page, Part};

/// What a form wrote, found again by its id.
pub(super) fn kept(visit: &mut Visit<'_>, entry: &str) -> Shown {
    match entry.parse() {
        Ok(of) => visit.see(Request::Kept { of }),
        Err(_) => Err(visit.nothing_here()),
    }
}

pub(super) fn strike(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    match fields.first("of").and_then(|of| of.parse().ok()) {
        Some(of) => visit.told(fields, Does::Strike { of }),
        None => Err(visit.malformed()),
    }
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &EntriesScreen) -> Shown {
    let mut cards = Vec::new();
    for entry in &screen.entries {
        let mut parts = vec![Part::Text { says: vec![entry.text.clone()], class: "" }];
        if !entry.notes.is_empty() {
            parts.push(Part::Text { says: entry.notes.clone(), class: "quiet" });
        }
        let presses = vec![visit.press(&entry.opens, Look::Quiet)?];
        parts.push(Part::Presses { presses });
        cards.push(Part::Card { title: entry.when.clone(), here: None, parts });
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page =
        Page::new(&visit.frame, &screen.title).text(screen.empty.clone()).presses(presses);
    for card in cards {
        page = page.part(card);
    }
    Ok(page.answer())
}

pub(super) fn kept_page(visit: &mut Visit<'_>, screen: &KeptScreen) -> Shown {
    let presses = visit.next_and(&screen.next, &screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title).text(screen.says.clone()).presses(presses).answer())
}
