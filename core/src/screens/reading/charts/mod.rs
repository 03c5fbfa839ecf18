//! What is drawn of a summary, as records: the marks, their places and every word. Decides what is drawn and how
//! much of a long diary; leaves colours and lines to the surface. Beside each chart stands the same as a table, for
//! whoever does not see it and for whoever wants the numbers.
//!
//! What is not known is a gap and never a nought. Nothing is told by colour alone: marks differ in shape.

mod discomfort;
mod timeline;
mod weeks;

pub use discomfort::{DotMark, Dots, RatedColumn, StepSpan};
pub use timeline::{Bar, Choice, Signal, SignalKind, Timeline};
pub use weeks::{Week, Weeks};

use chrono::NaiveDate;
use serde::Serialize;

use super::gather::Gathered;
use crate::progression::FoldError;
use crate::summary::Summary;
use crate::words::Words;

/// The charts of a summary.
#[derive(Clone, PartialEq, Serialize)]
pub struct ChartsScreen {
    /// Heading.
    pub title: String,
    /// What the table beside a chart is called, folded.
    pub table_title: String,
    /// The charts; one with nothing to draw is left out.
    pub charts: Vec<Chart>,
}

/// A chart.
#[derive(Clone, PartialEq, Serialize)]
pub struct Chart {
    /// Its name in addresses and ids.
    pub name: &'static str,
    /// Its title.
    pub title: String,
    /// What it shows, for whoever does not see it.
    pub says: String,
    /// What was left out of it, or has to be known.
    pub notes: Vec<String>,
    /// What each mark means.
    pub key: Vec<KeyLine>,
    /// What is drawn.
    pub drawn: Drawn,
    /// The same as a table.
    pub table: ChartTable,
}

/// A mark and what it means.
#[derive(Clone, PartialEq, Serialize)]
pub struct KeyLine {
    /// The mark.
    pub mark: KeyMark,
    /// In words.
    pub text: String,
}

/// Every mark that is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum KeyMark {
    /// A rating of a session.
    Dot(DotMark),
    /// A session without a rating.
    Unrated,
    /// What was practised in a week.
    Bar,
    /// What was planned for it, least to most.
    Planned,
    /// A time on a step.
    Span,
    /// A suggestion.
    Signal(SignalKind, Choice),
    /// A step by its number in the drawing.
    Step(usize),
}

/// What is drawn.
#[derive(Clone, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Drawn {
    /// Ratings, session after session.
    Dots(Dots),
    /// Practised beside planned, week after week.
    Weeks(Weeks),
    /// Steps and suggestions over the days.
    Timeline(Timeline),
}

/// The same as a table.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ChartTable {
    /// What it is.
    pub caption: String,
    /// Its columns.
    pub columns: Vec<String>,
    /// Its rows.
    pub rows: Vec<Vec<String>>,
}

impl ChartsScreen {
    /// The charts of a summary.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn new(summary: &Summary, words: &Words) -> Result<Self, FoldError> {
        let gathered = Gathered::of(summary, words)?;
        let charts = [
            discomfort::chart(&gathered),
            weeks::days(&gathered),
            weeks::minutes(&gathered),
            timeline::chart(&gathered),
        ];
        Ok(Self {
            title: words.text("cabinet-charts", &[]),
            table_title: words.text("cabinet-chart-table", &[]),
            charts: charts.into_iter().flatten().collect(),
        })
    }
}

/// The steps that are numbered: those of the plan in force in its order, then others that were in use. Ids and names.
fn ladder(gathered: &Gathered<'_>) -> Vec<(String, String)> {
    let mut ladder: Vec<(String, String)> = Vec::new();
    let plan = gathered.programme().map(|plan| plan.steps.as_slice()).unwrap_or_default();
    for step in plan.iter().chain(gathered.stretches.iter().map(|stretch| &stretch.step)) {
        if !ladder.iter().any(|(id, _)| id == step.id.as_str()) {
            ladder.push((step.id.to_string(), super::say::step(gathered.words, step)));
        }
    }
    ladder
}

/// "3 Mar", short enough to stand under an axis.
fn tick(gathered: &Gathered<'_>, day: NaiveDate) -> String {
    use chrono::Datelike;
    let values = [
        ("day", super::super::plain::whole(day.day())),
        ("month", super::super::plain::whole(day.month())),
    ];
    gathered.words.text("cabinet-chart-day", &values)
}
