//! The clinician's reading, as text.

use frond_core::screens::ReadingScreen;

use super::Page;

/// The reading as text: what must not be missed first.
pub(crate) fn reading(page: &mut Page, screen: &ReadingScreen) {
    if let Some(alone) = &screen.time_alone {
        page.gap().paragraph(alone);
    }
    page.title(&screen.title);
    if let Some((says, what)) = screen.narrowed.split_first() {
        page.paragraph(says);
        page.sentences(what);
        page.gap();
    }
    for about in &screen.about {
        page.paragraph(about);
    }
    for part in &screen.parts {
        page.heading(&part.heading);
        for point in &part.points {
            page.point(&point.text);
            for inner in &point.inner {
                page.inner_point(inner);
            }
        }
    }
    page.gap();
    for caution in &screen.cautions {
        page.paragraph(caution);
    }
}
