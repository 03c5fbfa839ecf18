//! The steps, what was written, and what was just kept.

use frond_core::screens::{EntriesScreen, KeptScreen, LadderScreen};

use super::Page;
use super::press::{actions, short};

pub(super) fn ladder(page: &mut Page, screen: &LadderScreen) {
    page.title(&screen.title);
    if let Some(empty) = &screen.empty {
        page.paragraph(empty);
    }
    for rung in &screen.rungs {
        let mark = if rung.present { "> " } else { "  " };
        page.beside(&format!("{mark}{}", rung.id), &rung.name, 20);
        page.inside(20, &rung.used);
        if let Some(note) = &rung.note {
            page.inside(20, note);
        }
    }
    page.gap().paragraph(&screen.smaller_is_fine);
    page.gap().beside("  Another step", "frond step --to ID", 20);
    actions(page, None, &screen.actions);
}

pub(super) fn entries(page: &mut Page, screen: &EntriesScreen) {
    page.title(&screen.title);
    if let Some(empty) = &screen.empty {
        page.paragraph(empty);
    }
    for entry in &screen.entries {
        let notes: String = entry.notes.iter().map(|note| format!(" · {note}")).collect();
        page.paragraph(&format!("{}{notes}", entry.when));
        page.inside(4, &entry.text);
        if entry.can_change {
            page.inside(4, &short(entry.id));
        }
        page.gap();
    }
    actions(page, None, &screen.actions);
}

pub(super) fn kept(page: &mut Page, screen: &KeptScreen) {
    page.paragraph(&screen.title);
    for says in &screen.says {
        page.paragraph(says);
    }
    actions(page, Some(&screen.next), &screen.actions);
}
