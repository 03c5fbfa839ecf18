//! What a few numbers say of one summary, and of the time many people spent on a step: for the clinician
//! who unfolds it, counts first.
//!
//! It decides from how many values on a number is shown at all, in which order, and that beside each
//! stands what it can bear and where it comes from. Nothing here is a verdict: there is no threshold
//! besides published ones and the least counts of [`crate::insight`]. The numbers stand in the record too,
//! for charts.

mod cabinet;
mod compared;
mod say;
mod stretch;

use serde::Serialize;

use super::reading::gather::Gathered;
use crate::insight::Nonoverlap;
use crate::progression::FoldError;
use crate::summary::Summary;
use crate::words::Words;

pub use cabinet::{CabinetInsight, KindInsight, WentOn};
pub use stretch::{SessionPoint, StretchInsight, StretchNumbers, Trend};

/// The numbers of one summary.
#[derive(Clone, PartialEq, Serialize)]
pub struct InsightScreen {
    /// Heading.
    pub title: String,
    /// What all of it can bear.
    pub says: Vec<String>,
    /// The counts of every stretch.
    pub counts: InsightTable,
    /// Stretch by stretch, the latest first.
    pub stretches: Vec<StretchInsight>,
    /// Two times on the same step, side by side, the latest first.
    pub compared: Vec<ComparedInsight>,
}

/// A table.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct InsightTable {
    /// What it shows.
    pub caption: String,
    /// The heads of its columns.
    pub columns: Vec<String>,
    /// Its rows, each with as many cells as there are columns; the first names the row.
    pub rows: Vec<Vec<String>>,
}

/// What a part is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum InsightAbout {
    /// What was done.
    Counts,
    /// Medians and ranges.
    Ratings,
    /// Published meaningful change.
    Change,
    /// The individuals chart.
    Chart,
    /// Theil-Sen and Mann-Kendall.
    Trend,
    /// What needs more ratings than there are.
    TooFew,
    /// Nonoverlap of two times on the same step.
    Compared,
}

/// One kind of number, in words.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct InsightPart {
    /// What it is about.
    pub about: InsightAbout,
    /// Its heading.
    pub heading: String,
    /// What it says.
    pub says: Vec<String>,
    /// What it can bear. Belongs beside what it says.
    pub bears: Option<String>,
    /// Where it comes from.
    pub source: Option<String>,
}

/// Two times on the same step.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ComparedInsight {
    /// The counts; absent where one of the times has too few ratings.
    pub numbers: Option<Nonoverlap>,
    /// In words.
    pub part: InsightPart,
}

impl InsightScreen {
    /// Of a summary.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn of(summary: &Summary, words: &Words) -> Result<Self, FoldError> {
        let gathered = Gathered::of(summary, words)?;
        let of_stretches = stretch::numbers(&gathered);
        Ok(Self {
            title: words.text("insight-title", &[]),
            says: vec![
                words.text("insight-self-reported", &[]),
                words.text("insight-nominal", &[]),
                words.text("insight-no-verdict", &[]),
            ],
            counts: stretch::counts(&gathered, &of_stretches),
            stretches: of_stretches.iter().map(|one| stretch::worded(&gathered, one)).collect(),
            compared: compared::compared(&gathered, &of_stretches),
        })
    }
}
