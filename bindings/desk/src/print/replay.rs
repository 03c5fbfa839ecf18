//! A replay, one entry after the other.

use frond_core::screens::ReplayScreen;

use super::Page;

/// The replay as text.
pub(crate) fn replay(page: &mut Page, screen: &ReplayScreen) {
    page.title(&screen.title);
    if let Some(tried) = &screen.tried {
        page.paragraph(&tried.about).paragraph(&tried.summary).gap();
    }
    if let Some(empty) = &screen.empty {
        page.paragraph(empty);
    }
    let mut day = "";
    for line in &screen.lines {
        if line.date != day {
            page.heading(&line.date);
            day = &line.date;
        }
        page.beside(&format!("  {}", line.time), &line.what, 9);
        match &line.tried {
            None => page.inside(11, &format!("-> {}", line.said.text)),
            Some(tried) => {
                let mark = if line.differs { " *" } else { "" };
                page.inside(11, &format!("-> {} | {}{mark}", line.said.text, tried.text))
            }
        };
    }
}
