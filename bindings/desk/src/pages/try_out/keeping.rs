//! How the diary is kept, and the copy for elsewhere.

use axum::response::Response;
use frond_core::companion::Told;
use frond_core::screens::{CopyScreen, KeepingPart, KeepingScreen};
use frond_core::whole::WholeRequest;

use super::visit::{Shown, Visit, share};
use crate::pages::form::Fields;
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn page(visit: &mut Visit<'_>, screen: &KeepingScreen) -> Shown {
    let mut parts = Vec::new();
    for part in &screen.trouble {
        parts.push(card(visit, part, true)?);
    }
    for part in &screen.parts {
        parts.push(card(visit, part, false)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title);
    for part in parts {
        page = page.part(part);
    }
    Ok(page.quiet(screen.limits.clone()).presses(presses).answer())
}

fn card(visit: &mut Visit<'_>, part: &KeepingPart, trouble: bool) -> Result<Part, Response> {
    let mut parts = vec![Part::Text { says: part.says.clone(), class: "" }];
    if let Some(action) = &part.action {
        let look = if trouble { Look::Equal } else { Look::Quiet };
        parts.push(Part::Presses { presses: vec![visit.press(action, look)?] });
    }
    Ok(Part::Card { title: part.title.clone(), here: None, parts })
}

pub(super) fn copy_page(visit: &mut Visit<'_>, screen: &CopyScreen) -> Shown {
    let others = visit.presses(&screen.actions)?;
    let send = |to: &str, fields| How::Send { to: to.to_owned(), fields };
    let presses = vec![
        Press { label: screen.save.clone(), how: send("/keeping/copy", vec![]), look: Look::Next },
        Press {
            label: screen.kept.clone(),
            how: send("/keeping/copy/kept", vec![("id", screen.id.to_string())]),
            look: Look::Equal,
        },
    ];
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .presses(presses.into_iter().chain(others).collect())
        .answer())
}

pub(super) fn copy_file(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let seen = visit.whole(WholeRequest::MakeCopy)?;
    share(seen).or_else(|view| visit.show(&view))
}

pub(super) fn copy_kept(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    visit.tell(fields, Told::CopyKept)
}
