//! What the desk opens with: what can be done next, and what should not be forgotten.

use super::visit::{Shown, Visit};
use crate::clinic::keys;
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn home(visit: &mut Visit<'_>) -> Shown {
    let _clinic = visit.clinic()?;
    let words = &visit.words;
    let mut page = Page::new(&visit.frame, words.text("desk-home-title", &[]));
    let copied = keys::is_copied(visit.desk.folder());
    if !copied.map_err(|error| visit.sorry(visit.says(error)))? {
        page = page.part(Part::Notice {
            says: vec![words.text("desk-not-copied", &[])],
            press: Some(Press::go(words.text("desk-copy", &[]), "/keys/copy")),
        });
    }
    Ok(page
        .presses(vec![
            Press::go(words.text("compose-list-title", &[]), "/programmes").looking(Look::Equal),
            Press::go(words.text("handover-title", &[]), "/hand-over").looking(Look::Equal),
            Press::go(words.text("cabinet-people", &[]), "/people").looking(Look::Equal),
            Press::go(words.text("desk-keys", &[]), "/keys").looking(Look::Equal),
            Press {
                label: words.text("desk-lock", &[]),
                how: How::Send { to: "/lock".to_owned(), fields: vec![] },
                look: Look::Quiet,
            },
        ])
        .answer())
}
