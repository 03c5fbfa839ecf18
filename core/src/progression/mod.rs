//! Decides what the clinician's rule says about a diary at a moment. Pure: entries and a stamp in, an
//! [`Assessment`] out; no clock, no files, no words. What the sentences are is written in RULE.md beside
//! this file, numbered; code and tests name them.
//!
//! [`Fold`] takes the diary entry by entry; [`assess`] and [`replay`] are short for it.
//!
//! Leaves to [`crate::screens`] how an outcome is said, to [`crate::safety`] which signs there are, and
//! to the person what she does with it.

mod course;
mod criteria;
mod facts;
mod fold;
mod judge;
mod latch;
mod lens;
mod line;
mod log;
mod outcome;
mod replay;
mod report;
mod signs;
mod trim;

pub use fold::{Fold, FoldError};
pub use outcome::{
    Assessment, Bar, Basis, ClockDoubt, Criterion, Finding, Missing, OpenSign, Outcome,
    OutcomeKind, Part, Pause, RuleOf, Verdict,
};
pub use replay::{ReplayRow, assess, replay};
pub use report::{Occasion, TimeOff};
