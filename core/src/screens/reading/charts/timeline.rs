//! Steps over the days, with what the rule suggested and what was chosen.

use chrono::NaiveDate;
use serde::Serialize;

use super::super::gather::Gathered;
use super::super::say;
use super::{Chart, ChartTable, Drawn, KeyLine, KeyMark, ladder, tick};
use crate::diary::entry::{Chosen, Content, EntryId};
use crate::progression::OutcomeKind;

/// Steps and suggestions over the days.
#[derive(Clone, PartialEq, Serialize)]
pub struct Timeline {
    /// The steps, the first one lowest.
    pub steps: Vec<String>,
    /// Times on a step.
    pub bars: Vec<Bar>,
    /// Suggestions.
    pub signals: Vec<Signal>,
    /// How many days are shown, at least one.
    pub days: u32,
    /// The first and the last day.
    pub ends: (String, String),
}

/// A time on a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Bar {
    /// Index of the step in `steps`.
    pub step: usize,
    /// The first day, counted from 0, the first day shown.
    pub from: u32,
    /// The day after the last, counted in the same way.
    pub to: u32,
}

/// A suggestion.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Signal {
    /// Index of the step in use then in `steps`.
    pub step: usize,
    /// The day, counted from 0, the first day shown.
    pub day: u32,
    /// What was suggested.
    pub kind: SignalKind,
    /// What was chosen.
    pub choice: Choice,
}

/// What was suggested; staying is not drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SignalKind {
    /// The next step.
    Up,
    /// An earlier step.
    Back,
    /// Ready to talk.
    Talk,
    /// Pause and call.
    Pause,
}

/// What was chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Choice {
    /// To try it.
    Tried,
    /// To stay, or nothing told.
    Not,
}

/// A suggestion before it has a place.
struct Found {
    day: NaiveDate,
    step: String,
    kind: SignalKind,
    chosen: Option<Chosen>,
    to: String,
}

pub(super) fn chart(gathered: &Gathered<'_>) -> Option<Chart> {
    let words = gathered.words;
    let first = gathered.stretches.first()?.began.day();
    let first = gathered.summary.narrowed.from.map_or(first, |from| from.max(first));
    let last = gathered.last_day().max(first);
    let at = |day: NaiveDate| {
        u32::try_from(day.clamp(first, last).signed_duration_since(first).num_days()).unwrap_or(0)
    };
    let ladder = ladder(gathered);
    let row = |id: &str| ladder.iter().position(|(own, _)| own == id);
    let mut bars = Vec::new();
    for stretch in &gathered.stretches {
        let Some(step) = row(stretch.step.id.as_str()) else { continue };
        let (from, ended) = (stretch.began.day(), stretch.ended.as_ref().map(|end| end.day()));
        if ended.is_some_and(|end| end < first) || from > last {
            continue;
        }
        let to = ended.map_or_else(|| at(last) + 1, |end| at(end).max(at(from) + 1));
        bars.push(Bar { step, from: at(from), to });
    }
    let found = found(gathered);
    let signals: Vec<Signal> = found
        .iter()
        .filter(|one| first <= one.day && one.day <= last)
        .filter_map(|one| {
            let choice = if one.chosen == Some(Chosen::Try) { Choice::Tried } else { Choice::Not };
            Some(Signal { step: row(&one.step)?, day: at(one.day), kind: one.kind, choice })
        })
        .collect();
    let values = [
        ("steps", say::count(bars.len())),
        ("suggestions", say::count(signals.len())),
        ("first", say::day(gathered, first).into()),
        ("last", say::day(gathered, last).into()),
    ];
    Some(Chart {
        name: "steps",
        title: words.text("cabinet-chart-steps", &[]),
        says: words.text("cabinet-chart-steps-says", &values),
        notes: vec![words.text("cabinet-chart-steps-note", &[])],
        key: key(gathered, &ladder, &signals),
        table: table(gathered, &found),
        drawn: Drawn::Timeline(Timeline {
            steps: ladder.iter().map(|(_, name)| name.clone()).collect(),
            bars,
            signals,
            days: at(last) + 1,
            ends: (tick(gathered, first), tick(gathered, last)),
        }),
    })
}

fn found(gathered: &Gathered<'_>) -> Vec<Found> {
    let answer = |shown: EntryId| {
        gathered.standing().find_map(|row| match row.content {
            Content::SuggestionAnswered { shown: of, chosen } if *of == shown => Some(*chosen),
            _ => None,
        })
    };
    let mut found: Vec<Found> = gathered
        .standing()
        .filter_map(|row| {
            let Content::SuggestionShown { outcome, step, to } = row.content else { return None };
            let kind = match outcome {
                OutcomeKind::StepUp => SignalKind::Up,
                OutcomeKind::StepBack => SignalKind::Back,
                OutcomeKind::ReadyToTalk => SignalKind::Talk,
                OutcomeKind::PauseAndCall => SignalKind::Pause,
                OutcomeKind::Hold => return None,
            };
            Some(Found {
                day: row.happened.day(),
                step: step.to_string(),
                kind,
                chosen: answer(row.first.id),
                to: to.as_ref().map(ToString::to_string).unwrap_or_default(),
            })
        })
        .collect();
    found.sort_by_key(|one| one.day);
    found
}

fn key(gathered: &Gathered<'_>, ladder: &[(String, String)], signals: &[Signal]) -> Vec<KeyLine> {
    let words = gathered.words;
    let steps = ladder
        .iter()
        .enumerate()
        .map(|(index, (_, name))| KeyLine { mark: KeyMark::Step(index + 1), text: name.clone() });
    let span = KeyLine { mark: KeyMark::Span, text: words.text("cabinet-mark-span", &[]) };
    let all = [
        (SignalKind::Up, Choice::Tried, words.text("cabinet-mark-up-tried", &[])),
        (SignalKind::Up, Choice::Not, words.text("cabinet-mark-up-not", &[])),
        (SignalKind::Back, Choice::Tried, words.text("cabinet-mark-back-tried", &[])),
        (SignalKind::Back, Choice::Not, words.text("cabinet-mark-back-not", &[])),
        (SignalKind::Talk, Choice::Tried, words.text("cabinet-mark-talk", &[])),
        (SignalKind::Talk, Choice::Not, words.text("cabinet-mark-talk", &[])),
        (SignalKind::Pause, Choice::Tried, words.text("cabinet-mark-pause", &[])),
        (SignalKind::Pause, Choice::Not, words.text("cabinet-mark-pause", &[])),
    ];
    let there = all.into_iter().filter(|(kind, choice, _)| {
        signals.iter().any(|signal| (signal.kind, signal.choice) == (*kind, *choice))
    });
    steps
        .chain(std::iter::once(span))
        .chain(
            there.map(|(kind, choice, text)| KeyLine { mark: KeyMark::Signal(kind, choice), text }),
        )
        .collect()
}

fn table(gathered: &Gathered<'_>, found: &[Found]) -> ChartTable {
    let words = gathered.words;
    let ladder = ladder(gathered);
    let name = |id: &str| {
        let row = ladder.iter().find(|(own, _)| own == id);
        row.map_or_else(|| id.to_owned(), |(_, name)| name.clone())
    };
    let mut rows: Vec<(NaiveDate, Vec<String>)> = gathered
        .stretches
        .iter()
        .map(|stretch| {
            let began = words.text("cabinet-step-began", &[]);
            let day = stretch.began.day();
            (
                day,
                vec![say::day(gathered, day), name(stretch.step.id.as_str()), began, String::new()],
            )
        })
        .collect();
    rows.extend(found.iter().map(|one| {
        let to = [("step", name(&one.to).into())];
        let said = match one.kind {
            SignalKind::Up => words.text("replay-up", &to),
            SignalKind::Back => words.text("replay-back", &to),
            SignalKind::Talk => words.text("replay-talk", &[]),
            SignalKind::Pause => words.text("replay-pause", &[]),
        };
        let chosen = match one.chosen {
            Some(Chosen::Try) => words.text("reading-tried", &[]),
            Some(Chosen::Stay) => words.text("reading-stayed", &[]),
            None => words.text("reading-not-answered", &[]),
        };
        (one.day, vec![say::day(gathered, one.day), name(&one.step), said, chosen])
    }));
    // A step begins before what is suggested on it.
    rows.sort_by_key(|(day, _)| *day);
    ChartTable {
        caption: words.text("cabinet-chart-steps", &[]),
        columns: vec![
            words.text("cabinet-column-day", &[]),
            words.text("cabinet-column-step", &[]),
            words.text("cabinet-column-what", &[]),
            words.text("cabinet-column-chosen", &[]),
        ],
        rows: rows.into_iter().map(|(_, row)| row).collect(),
    }
}
