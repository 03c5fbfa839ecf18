//! Stop and call, as text, in the record's own order.

use frond_core::screens::StopScreen;

use super::Page;
use super::press::actions;

pub(super) fn stop(page: &mut Page, screen: &StopScreen) {
    page.title(&screen.title);
    stop_lines(page, screen, 0);
    actions(page, None, &screen.actions);
}

/// Its lines alone, moved in by `columns`.
pub(crate) fn stop_lines(page: &mut Page, screen: &StopScreen, columns: usize) {
    for line in &screen.call.lines {
        for text in &line.text {
            page.inside(columns, text);
        }
        for dial in &line.dial {
            // The label says the number, with the spaces that make it easy to read.
            page.inside(columns + 4, &dial.label);
        }
        page.gap();
    }
}
