//! Peak discomfort, session after session, by the step in use.

use serde::Serialize;

use super::super::gather::{Gathered, Sat};
use super::super::say;
use super::{Chart, ChartTable, Drawn, KeyLine, KeyMark, ladder, tick};
use crate::diary::entry::Ended;
use crate::programme::values::RatingKind;

/// The most sessions that one chart shows; more would no longer be told apart.
const MOST: usize = 120;

/// Which sort of session.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum DotMark {
    /// Finished, with the step's own size and position.
    Finished,
    /// Stopped, or not started.
    Stopped,
    /// Finished, with another size or position.
    Different,
}

/// Ratings, session after session.
#[derive(Clone, PartialEq, Serialize)]
pub struct Dots {
    /// The sessions, in order.
    pub columns: Vec<RatedColumn>,
    /// The steps they were on, in order, without gaps.
    pub spans: Vec<StepSpan>,
    /// The least and the most of the scale.
    pub scale: (u8, u8),
    /// What the axis of ratings is called.
    pub axis: String,
    /// The first and the last day.
    pub ends: (String, String),
}

/// A session.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct RatedColumn {
    /// Its peak, 0 to 10; `None` where it was not rated: then nothing stands there.
    pub peak: Option<u8>,
    /// Which sort.
    pub mark: DotMark,
}

/// Sessions on one step.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct StepSpan {
    /// Index of the first.
    pub from: usize,
    /// Index after the last.
    pub to: usize,
    /// The step's number in the drawing; the key says its name.
    pub number: usize,
}

fn mark(sat: &Sat<'_>) -> DotMark {
    match sat.session.ended {
        Ended::Stopped(_) | Ended::CouldNotStart(_) => DotMark::Stopped,
        Ended::Finished if sat.on_step => DotMark::Finished,
        Ended::Finished => DotMark::Different,
    }
}

pub(super) fn chart(gathered: &Gathered<'_>) -> Option<Chart> {
    let words = gathered.words;
    let of_ladder: Vec<&Sat<'_>> =
        gathered.sat.iter().filter(|sat| sat.stretch().is_some()).collect();
    let shown = of_ladder.get(of_ladder.len().saturating_sub(MOST)..).unwrap_or_default();
    let (first, last) = (shown.first()?, shown.last()?);
    let columns: Vec<RatedColumn> = shown
        .iter()
        .map(|sat| RatedColumn {
            peak: sat.session.ratings.given(RatingKind::Peak).map(|rating| rating.get()),
            mark: mark(sat),
        })
        .collect();
    let unrated = columns.iter().filter(|column| column.peak.is_none()).count();
    let values = [
        ("sessions", say::count(columns.len())),
        ("unrated", say::count(unrated)),
        ("first", say::on(gathered, &first.row.happened)),
        ("last", say::on(gathered, &last.row.happened)),
    ];
    let spans = spans(gathered, shown);
    let mut notes = Vec::new();
    if of_ladder.len() > shown.len() {
        let values = [("shown", say::count(shown.len())), ("all", say::count(of_ladder.len()))];
        notes.push(words.text("cabinet-chart-newest", &values));
    }
    Some(Chart {
        name: "discomfort",
        title: words.text("cabinet-chart-discomfort", &[]),
        says: words.text("cabinet-chart-discomfort-says", &values),
        notes,
        key: key(gathered, &spans, &columns),
        table: table(gathered, shown),
        drawn: Drawn::Dots(Dots {
            spans,
            scale: (0, 10),
            axis: words.text("cabinet-chart-discomfort-axis", &[]),
            ends: (
                tick(gathered, first.row.happened.day()),
                tick(gathered, last.row.happened.day()),
            ),
            columns,
        }),
    })
}

fn step_of(gathered: &Gathered<'_>, sat: &Sat<'_>) -> String {
    let stretch = sat.stretch().and_then(|index| gathered.stretches.get(index));
    stretch.map(|on| say::step(gathered.words, &on.step)).unwrap_or_default()
}

fn spans(gathered: &Gathered<'_>, shown: &[&Sat<'_>]) -> Vec<StepSpan> {
    let ladder = ladder(gathered);
    let mut spans: Vec<(Option<usize>, StepSpan)> = Vec::new();
    for (index, sat) in shown.iter().enumerate() {
        match spans.last_mut() {
            Some((stretch, span)) if *stretch == sat.stretch() => span.to = index + 1,
            _ => {
                let on = sat.stretch().and_then(|index| gathered.stretches.get(index));
                let row =
                    on.and_then(|on| ladder.iter().position(|(id, _)| id == on.step.id.as_str()));
                let number = row.map_or(0, |row| row + 1);
                spans.push((sat.stretch(), StepSpan { from: index, to: index + 1, number }));
            }
        }
    }
    spans.into_iter().map(|(_, span)| span).collect()
}

fn key(gathered: &Gathered<'_>, spans: &[StepSpan], columns: &[RatedColumn]) -> Vec<KeyLine> {
    let words = gathered.words;
    let mut key: Vec<KeyLine> = ladder(gathered)
        .into_iter()
        .enumerate()
        .filter(|(index, _)| spans.iter().any(|span| span.number == index + 1))
        .map(|(index, (_, name))| KeyLine { mark: KeyMark::Step(index + 1), text: name })
        .collect();
    for (mark, text) in [
        (DotMark::Finished, words.text("cabinet-mark-finished", &[])),
        (DotMark::Stopped, words.text("cabinet-mark-stopped", &[])),
        (DotMark::Different, words.text("cabinet-mark-different", &[])),
    ] {
        if columns.iter().any(|column| column.mark == mark && column.peak.is_some()) {
            key.push(KeyLine { mark: KeyMark::Dot(mark), text });
        }
    }
    if columns.iter().any(|column| column.peak.is_none()) {
        let text = words.text("cabinet-mark-unrated", &[]);
        key.push(KeyLine { mark: KeyMark::Unrated, text });
    }
    key
}

fn table(gathered: &Gathered<'_>, shown: &[&Sat<'_>]) -> ChartTable {
    let words = gathered.words;
    let row = |sat: &&Sat<'_>| {
        let peak = sat.session.ratings.given(RatingKind::Peak);
        vec![
            say::day(gathered, sat.row.happened.day()),
            step_of(gathered, sat),
            match peak {
                Some(rating) => rating.get().to_string(),
                None => words.text("cabinet-unrated", &[]),
            },
            match mark(sat) {
                DotMark::Finished => words.text("cabinet-mark-finished", &[]),
                DotMark::Stopped => say::ended(words, sat.session.ended),
                DotMark::Different => say::used(words, sat.session),
            },
        ]
    };
    ChartTable {
        caption: words.text("cabinet-chart-discomfort", &[]),
        columns: vec![
            words.text("cabinet-column-day", &[]),
            words.text("cabinet-column-step", &[]),
            words.text("cabinet-column-peak", &[]),
            words.text("cabinet-column-how", &[]),
        ],
        rows: shown.iter().map(row).collect(),
    }
}
