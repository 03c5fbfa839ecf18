//! The clinician's first reading of a summary: one record, for the ten minutes before a visit. What must
//! not be missed stands first; what can wait is folded.
//!
//! It decides the order and what is left out where there is nothing to say. Numbers come from
//! [`crate::insight`], what the rule said from the summary itself. Everything in it is self-reported, and
//! it says so.

mod charts;
pub(super) mod gather;
mod person;
mod record;
mod rule;
pub(super) mod say;
mod sessions;
mod signs;
pub(super) mod steps;

use serde::Serialize;

use crate::progression::FoldError;
use crate::summary::Received;
use crate::words::Words;
pub use charts::{
    Bar, Chart, ChartTable, ChartsScreen, Choice, DotMark, Dots, Drawn, KeyLine, KeyMark,
    RatedColumn, Signal, SignalKind, StepSpan, Timeline, Week, Weeks,
};
use gather::Gathered;

/// A summary as read.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReadingScreen {
    /// Heading.
    pub title: String,
    /// "She would like time alone with you." Stands above everything.
    pub time_alone: Option<String>,
    /// That this is not the whole diary, and what is left out.
    pub narrowed: Vec<String>,
    /// When it was made, what it covers, and by whose diary it is signed.
    pub about: Vec<String>,
    /// The parts, in order; a part with nothing to say is left out, those that must be seen never.
    pub parts: Vec<ReadingPart>,
    /// What this reading is not.
    pub cautions: Vec<String>,
}

/// Which part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// Open signs and a pause.
    Open,
    /// Her questions for the visit.
    Questions,
    /// The present step, since when.
    Present,
    /// Step by step: practised beside planned, discomfort, worry, settling.
    Steps,
    /// Other practices.
    Practices,
    /// Sessions stopped or not started.
    Stopped,
    /// Sizes and positions used that are not the step's.
    Different,
    /// What the rule suggested and what she chose.
    Suggestions,
    /// Steps she or the clinician chose.
    OwnSteps,
    /// How the diary was kept: late, put right, left out, missing.
    Kept,
    /// Time off.
    TimeOff,
    /// Talks, and signs that are closed since.
    Talks,
    /// Activities and goals.
    Function,
    /// Notes.
    Notes,
    /// What the rule says now and why.
    Rule,
}

/// A part.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReadingPart {
    /// Which.
    pub part: Part,
    /// Its heading.
    pub heading: String,
    /// Its points.
    pub points: Vec<Point>,
}

/// A point, and what belongs under it.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Point {
    /// The point.
    pub text: String,
    /// Under it.
    pub inner: Vec<String>,
}

impl Point {
    fn plain(text: String) -> Self {
        Self { text, inner: Vec::new() }
    }
}

impl ReadingScreen {
    /// Reads a summary; `notes` unfolds her notes.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn new(received: &Received, words: &Words, notes: bool) -> Result<Self, FoldError> {
        let summary = &received.summary;
        let gathered = Gathered::of(summary, words)?;
        let parts = [
            Some(signs::open(&gathered)),
            person::questions(&gathered),
            Some(steps::present(&gathered)),
            steps::by_step(&gathered),
            steps::practices(&gathered),
            sessions::stopped(&gathered),
            sessions::different(&gathered),
            sessions::suggestions(&gathered),
            sessions::own_steps(&gathered),
            record::kept(&gathered),
            person::time_off(&gathered),
            signs::talks(&gathered),
            person::function(&gathered),
            person::notes(&gathered, notes),
            Some(rule::rule(&gathered)?),
        ];
        let alone = summary.asks_time_alone();
        Ok(Self {
            title: words.text("reading-title", &[]),
            time_alone: alone.then(|| words.text("reading-time-alone", &[])),
            narrowed: record::narrowed(&gathered),
            about: record::about(&gathered, received),
            parts: parts.into_iter().flatten().collect(),
            cautions: vec![
                words.text("reading-self-reported", &[]),
                words.text("reading-does-not-decide", &[]),
                words.text("reading-practice-decides", &[]),
            ],
        })
    }
}
