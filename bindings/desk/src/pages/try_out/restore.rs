//! Restoring a copy: one of this device, or one from elsewhere with the recovery phrase. What it holds is
//! said before anything is replaced; what was there is kept aside.

use frond_core::screens::{Does, RestoreChoiceScreen, RestoreCopyScreen, RestoreScreen};
use frond_core::whole::WholeRequest;

use super::lines;
use super::own_code::typed;
use super::visit::{Shown, Visit};
use crate::pages::form::Fields;
use crate::pages::parts::{How, Look, Page, Part, Press};
use crate::pages::upload::Upload;

/// The longest copy taken from a page, in bytes: ten years of entries are a tenth of it.
pub(super) const MOST: usize = 64 * 1024 * 1024;

pub(super) fn choice_page(visit: &mut Visit<'_>, screen: &RestoreChoiceScreen) -> Shown {
    let others = visit.presses(&screen.actions)?;
    let newest = screen.newest.iter().map(|label| Press {
        label: label.clone(),
        how: How::Send { to: "/restore".to_owned(), fields: vec![] },
        look: Look::Next,
    });
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .presses(newest.chain(others).collect())
        .answer())
}

pub(super) fn look(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let seen = visit.whole(WholeRequest::LookIntoBackup)?;
    visit.lead_on(seen.view)
}

pub(super) fn copy_page(visit: &mut Visit<'_>, screen: &RestoreCopyScreen) -> Shown {
    let mut form = lines::form("/restore/copy", &screen.submit, [&screen.file, &screen.phrase]);
    form.upload = true;
    lines::page(visit, &screen.title, &screen.says, &screen.problems, form, &screen.actions)
}

pub(super) fn copied(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    let phrase = typed(&upload.fields, "phrase");
    let seen = visit.whole(WholeRequest::LookIntoCopy { bytes: upload.file, phrase })?;
    visit.lead_on(seen.view)
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &RestoreScreen) -> Shown {
    let next = visit.press(&screen.next, Look::Equal)?;
    let mut presses = vec![next];
    for action in &screen.actions {
        presses.push(visit.press(action, Look::Equal)?);
    }
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .part(Part::Notice { says: screen.then.clone(), press: None })
        .presses(presses)
        .answer())
}

pub(super) fn now(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let seen = visit.pressed(Does::RestoreNow)?;
    visit.lead_on(seen.view)
}
