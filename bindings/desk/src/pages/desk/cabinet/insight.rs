//! A closer look at the numbers: of one summary, folded at the end of its page; of the cabinet, on a page of its own.
//! What each number can bear stands beside it and is never folded deeper.

use std::collections::HashMap;

use frond_core::screens::{CabinetInsight, InsightPart, InsightScreen, InsightTable, KindInsight};
use frond_core::summary::{DiaryId, Digest, Received};

use super::super::visit::{Shown, Visit};
use crate::pages::parts::{Page, Part, Press, Table};

/// Of one summary.
pub(super) fn of_summary<'a>(visit: &Visit<'_>, page: Page<'a>, received: &Received) -> Page<'a> {
    // A plan that cannot be read was refused when the summary came in.
    let Ok(screen) = InsightScreen::of(&received.summary, &visit.words) else { return page };
    let mut parts = vec![
        Part::Text { says: screen.says.clone(), class: "" },
        Part::Table(table(&screen.counts)),
    ];
    for stretch in &screen.stretches {
        parts.push(Part::Fold {
            title: stretch.heading.clone(),
            open: false,
            parts: stretch.parts.iter().map(part).collect(),
        });
    }
    parts.extend(screen.compared.iter().map(|one| part(&one.part)));
    page.part(Part::Fold { title: screen.title, open: false, parts })
}

fn part(part: &InsightPart) -> Part {
    let mut parts = vec![Part::Text { says: part.says.clone(), class: "" }];
    let beside: Vec<String> = part.bears.iter().chain(&part.source).cloned().collect();
    if !beside.is_empty() {
        parts.push(Part::Text { says: beside, class: "quiet" });
    }
    Part::Reason { criterion: part.heading.clone(), parts }
}

fn table(of: &InsightTable) -> Table {
    Table { caption: of.caption.clone(), columns: of.columns.clone(), rows: of.rows.clone() }
}

/// Of the cabinet: the newest summary of each diary.
pub(super) fn insight(visit: &mut Visit<'_>) -> Shown {
    let opened = visit.cabinet()?;
    let screen = {
        let cabinet = opened.held();
        let mut newest: HashMap<DiaryId, &Digest> = HashMap::new();
        for digest in cabinet.digests() {
            let own = newest.entry(digest.diary).or_insert(digest);
            if (digest.made.millis(), digest.summary) > (own.made.millis(), own.summary) {
                *own = digest;
            }
        }
        CabinetInsight::of(newest.values().map(|digest| &digest.step_times), &visit.words)
    };
    let words = &visit.words;
    let mut page = Page::new(&visit.frame, &screen.title)
        .in_window(words.text("cabinet-insight-all", &[]))
        .text(screen.says.clone());
    for kind in &screen.kinds {
        page =
            page.part(Part::Card { title: kind.heading.clone(), here: None, parts: of_kind(kind) });
    }
    Ok(page
        .quiet([screen.source.clone()])
        .presses(vec![Press::go(words.text("cabinet-visit-back", &[]), "/people")])
        .answer())
}

fn of_kind(kind: &KindInsight) -> Vec<Part> {
    let says = Part::Text { says: kind.says.clone(), class: "" };
    std::iter::once(says).chain(kind.table.as_ref().map(|own| Part::Table(table(own)))).collect()
}
