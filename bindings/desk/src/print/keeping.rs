//! How the diary is kept, what erasing comes to, what a copy holds.

use frond_core::screens::{EraseScreen, KeepingPart, KeepingScreen, RestoreScreen, SummaryScreen};

use super::Page;
use super::press::{actions, command_of};

pub(super) fn keeping(page: &mut Page, screen: &KeepingScreen) {
    page.title(&screen.title);
    for part in screen.trouble.iter().chain(&screen.parts) {
        one(page, part);
    }
    page.gap();
    for limit in &screen.limits {
        page.paragraph(limit);
    }
    actions(page, None, &screen.actions);
}

fn one(page: &mut Page, part: &KeepingPart) {
    page.heading(&part.title);
    for says in &part.says {
        page.inside(2, says);
    }
    if let Some(line) = part.action.as_ref().and_then(command_of) {
        page.inside(2, &line);
    }
}

/// What erasing comes to.
pub(crate) fn erase(page: &mut Page, screen: &EraseScreen) {
    page.title(&screen.title).sentences(&screen.says);
    page.gap();
    for out_of_reach in &screen.out_of_reach {
        page.paragraph(out_of_reach);
    }
}

/// What a copy holds.
pub(crate) fn restore(page: &mut Page, screen: &RestoreScreen) {
    page.title(&screen.title).sentences(&screen.says);
    page.gap();
    for then in &screen.then {
        page.paragraph(then);
    }
}

/// What a summary holds, before it leaves.
pub(crate) fn summary(page: &mut Page, screen: &SummaryScreen) {
    page.title(&screen.title).sentences(&screen.holds);
    for part in [&screen.leaves_out, &screen.still_seen, &screen.opens] {
        page.gap();
        for says in part {
            page.paragraph(says);
        }
    }
    if let Some(alone) = &screen.time_alone {
        page.gap().paragraph(alone);
    }
    page.gap();
    for decide in &screen.decide {
        page.paragraph(decide);
    }
}
