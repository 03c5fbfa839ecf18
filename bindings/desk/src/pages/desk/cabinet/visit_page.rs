//! One diary, as it is read in the ten minutes before a visit: the reading's own order, charts after it, and what can
//! be done next.

use frond_core::screens::{
    Chart, ChartsScreen, OlderSummaries, Point, ReadingPart, ReadingPartKind, ReadingScreen,
    WentApart,
};
use frond_core::summary::{DiaryId, Digest, Received, SummaryId};

use super::super::visit::{Shown, Visit};
use super::{Opened, insight};
use crate::charts;
use crate::pages::parts::{Figure, How, Look, Page, Part, Press, Table};

pub(super) fn newest(visit: &mut Visit<'_>, diary: &str) -> Shown {
    of_diary(visit, diary, false)
}

pub(super) fn with_notes(visit: &mut Visit<'_>, diary: &str) -> Shown {
    of_diary(visit, diary, true)
}

fn of_diary(visit: &Visit<'_>, named: &str, notes: bool) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, digest) = visit.diary(&opened, named)?;
    shown(visit, &opened, diary, digest.summary, notes)
}

/// One summary of several, by its hash.
pub(super) fn one(visit: &mut Visit<'_>, named: &str) -> Shown {
    let opened = visit.cabinet()?;
    let id = summary_id(named).ok_or_else(|| visit.nothing_here())?;
    let diary = opened.held().digests().find(|one| one.summary == id).map(|one| one.diary);
    let diary = diary.ok_or_else(|| visit.nothing_here())?;
    shown(visit, &opened, diary, id, false)
}

fn summary_id(named: &str) -> Option<SummaryId> {
    crate::clinic::cabinet::hash(named).map(SummaryId)
}

fn shown(visit: &Visit<'_>, opened: &Opened, diary: DiaryId, id: SummaryId, notes: bool) -> Shown {
    let received = visit.received(opened, id)?;
    let unread = |_| visit.sorry(visit.words.text("cabinet-cannot-open", &[]));
    let screen = ReadingScreen::new(&received, &visit.words, notes).map_err(unread)?;
    let drawn = ChartsScreen::new(&received.summary, &visit.words).map_err(unread)?;
    let older = {
        let cabinet = opened.held();
        OlderSummaries::new(&visit.words, id, cabinet.of(diary), cabinet.keys_of(diary))
    };
    let words = &visit.words;
    let apart = WentApart::new(words, &received.summary, older_ones(opened, diary, id));
    // What a window is called is seen in lists of windows; the heading is seen by who reads.
    let mut page =
        Page::new(&visit.frame, &screen.title).in_window(words.text("cabinet-visit-window", &[]));
    if let Some(alone) = &screen.time_alone {
        page = page.part(Part::Notice { says: vec![alone.clone()], press: None });
    }
    if !screen.narrowed.is_empty() {
        page = page.part(Part::Notice { says: screen.narrowed.clone(), press: None });
    }
    if let Some(apart) = apart {
        let read = Press::go(apart.read, format!("/summaries/{}", apart.older));
        page = page.part(Part::Notice { says: apart.says, press: Some(read.looking(Look::Equal)) });
    }
    page = page.text(screen.about.clone());
    for part in &screen.parts {
        page = self::part(visit, page, part, &received, notes);
    }
    page = charts_of(page, &drawn);
    page = insight::of_summary(visit, page, &received);
    if let Some(older) = older {
        let presses = older
            .summaries
            .iter()
            .map(|(id, text)| Press::go(text, format!("/summaries/{id}")))
            .collect();
        let parts =
            vec![Part::Text { says: older.says.clone(), class: "" }, Part::Presses { presses }];
        page = page.part(Part::Card { title: older.title, here: None, parts });
    }
    Ok(page
        .quiet(screen.cautions.clone())
        .presses(vec![
            Press {
                label: words.text("cabinet-revise", &[]),
                how: How::Send { to: format!("/people/{diary}/revise"), fields: vec![] },
                look: Look::Equal,
            },
            Press::go(words.text("cabinet-what-if", &[]), format!("/people/{diary}/rule"))
                .looking(Look::Equal),
            Press::go(words.text("out-title", &[]), format!("/people/{diary}/out"))
                .looking(Look::Equal),
            Press::go(words.text("cabinet-visit-back", &[]), "/people"),
            Press::go(words.text("cabinet-remove", &[]), format!("/people/{diary}/remove")),
        ])
        .answer())
}

/// Those made before this one, one after the other: never are two open at once. One that cannot be opened is told where it
/// is looked at.
fn older_ones(
    opened: &Opened,
    diary: DiaryId,
    read: SummaryId,
) -> impl Iterator<Item = Received> + '_ {
    let older = {
        let cabinet = opened.held();
        let made = cabinet.of(diary).find(|one| one.summary == read).map(|one| one.made.millis());
        let before = |one: &&Digest| one.summary != read && Some(one.made.millis()) <= made;
        cabinet.of(diary).filter(before).map(|one| one.summary).collect::<Vec<_>>()
    };
    older.into_iter().filter_map(|id| {
        let reader = opened.held().to_open(id, opened.own())?;
        reader.open().ok()
    })
}

/// A part of the reading. What may wait is folded.
fn part<'a>(
    visit: &Visit<'_>,
    page: Page<'a>,
    part: &ReadingPart,
    received: &Received,
    notes: bool,
) -> Page<'a> {
    let mut parts: Vec<Part> = part.points.iter().map(point).collect();
    if part.part == ReadingPartKind::Notes && !notes {
        let to = format!("/people/{}/notes", received.from.diary);
        let open = Press::go(visit.words.text("cabinet-notes-open", &[]), to);
        parts.push(Part::Presses { presses: vec![open] });
    }
    let present = &received.summary.present;
    if part.part == ReadingPartKind::Open
        && (!present.open_signs.is_empty() || present.pause.is_some())
    {
        let says = part.points.iter().map(|point| point.text.clone()).collect();
        return page
            .part(Part::Heading { text: part.heading.clone() })
            .part(Part::Notice { says, press: None });
    }
    let folded = matches!(
        part.part,
        ReadingPartKind::Kept | ReadingPartKind::TimeOff | ReadingPartKind::Talks
    );
    if folded {
        return page.part(Part::Fold { title: part.heading.clone(), open: false, parts });
    }
    let mut page = page.part(Part::Heading { text: part.heading.clone() });
    for one in parts {
        page = page.part(one);
    }
    page
}

fn point(point: &Point) -> Part {
    if point.inner.is_empty() {
        return Part::Text { says: vec![point.text.clone()], class: "" };
    }
    Part::Reason {
        criterion: point.text.clone(),
        parts: vec![Part::Points { points: point.inner.clone() }],
    }
}

fn charts_of<'a>(page: Page<'a>, drawn: &ChartsScreen) -> Page<'a> {
    if drawn.charts.is_empty() {
        return page;
    }
    let mut page = page.part(Part::Heading { text: drawn.title.clone() });
    for chart in &drawn.charts {
        page = page.part(Part::Chart(figure(chart, &drawn.table_title)));
    }
    page
}

fn figure(chart: &Chart, table_title: &str) -> Figure {
    let key = chart.key.iter().map(|line| {
        let mark = charts::mark(line.mark).unwrap_or_default();
        (mark, line.text.clone())
    });
    Figure {
        title: chart.title.clone(),
        drawing: charts::draw(chart),
        notes: chart.notes.clone(),
        key: key.collect(),
        table_title: table_title.to_owned(),
        table: Table {
            caption: chart.table.caption.clone(),
            columns: chart.table.columns.clone(),
            rows: chart.table.rows.clone(),
        },
    }
}
