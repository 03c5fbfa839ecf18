//! Erasing: what goes and what no erasing can reach is said first; not erasing is the larger button.

use axum::response::Response;
use frond_core::diary::entry::EntryId;
use frond_core::screens::{Does, EraseDaysScreen, EraseScreen};
use frond_core::whole::WholeRequest;

use super::lines;
use super::own_code::typed;
use super::visit::{Shown, Visit};
use crate::pages::form::Fields;
use crate::pages::parts::{Look, Page, Part};

pub(super) fn page(visit: &mut Visit<'_>, screen: &EraseScreen) -> Shown {
    let next = visit.press(&screen.next, Look::Next)?;
    let confirm = visit.press(&screen.confirm, Look::Equal)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .part(Part::Notice { says: screen.out_of_reach.clone(), press: None })
        .presses(vec![next, confirm])
        .answer())
}

fn gone(visit: &mut Visit<'_>, does: Does) -> Shown {
    let seen = visit.pressed(does)?;
    visit.lead_on(seen.view)
}

fn named(visit: &Visit<'_>, entry: &str) -> Result<EntryId, Response> {
    entry.parse().map_err(|_| visit.nothing_here())
}

pub(super) fn entry(visit: &mut Visit<'_>, entry: &str) -> Shown {
    let of = named(visit, entry)?;
    visit.look(Does::EraseEntry { of })
}

pub(super) fn entry_gone(visit: &mut Visit<'_>, entry: &str, _: &Fields) -> Shown {
    let of = named(visit, entry)?;
    gone(visit, Does::EraseEntryNow { of })
}

/// Which days?
pub(super) fn days_page(visit: &mut Visit<'_>, screen: &EraseDaysScreen) -> Shown {
    let mut form = lines::form("/erase/days", &screen.submit, [&screen.from, &screen.to]);
    form.look = Look::Equal;
    lines::page(visit, &screen.title, &screen.says, &screen.problems, form, &screen.actions)
}

pub(super) fn days_asked(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let (from, to) = (typed(fields, "from"), typed(fields, "to"));
    let seen = visit.whole(WholeRequest::LookEraseDays { from, to })?;
    visit.show(&seen.view)
}

pub(super) fn days_gone(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let day = |name: &str| fields.first(name).and_then(|day| day.parse().ok());
    match (day("from"), day("to")) {
        (Some(from), Some(to)) => gone(visit, Does::EraseDaysNow { from, to }),
        _ => Err(visit.malformed()),
    }
}

pub(super) fn all_gone(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    gone(visit, Does::EraseAllNow)
}
