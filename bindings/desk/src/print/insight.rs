//! The closer look at a summary's numbers, as text.

use frond_core::screens::{InsightPart, InsightScreen, InsightTable};

use super::Page;

/// Counts first, then stretch by stretch, each number with what it can bear.
pub(crate) fn insight(page: &mut Page, screen: &InsightScreen) {
    page.title(&screen.title);
    for says in &screen.says {
        page.paragraph(says);
    }
    table(page, &screen.counts);
    for stretch in &screen.stretches {
        page.heading(&stretch.heading);
        for part in &stretch.parts {
            part_of(page, part);
        }
    }
    for compared in &screen.compared {
        page.gap();
        part_of(page, &compared.part);
    }
}

/// Each row under the name it begins with: a terminal is too narrow for its columns.
fn table(page: &mut Page, table: &InsightTable) {
    page.heading(&table.caption);
    for row in &table.rows {
        let Some((name, cells)) = row.split_first() else { continue };
        page.point(name);
        for (column, cell) in table.columns.iter().skip(1).zip(cells) {
            page.inner_point(&format!("{column}: {cell}"));
        }
    }
}

fn part_of(page: &mut Page, part: &InsightPart) {
    page.point(&part.heading);
    for says in part.says.iter().chain(&part.bears).chain(&part.source) {
        page.inner_point(says);
    }
}
