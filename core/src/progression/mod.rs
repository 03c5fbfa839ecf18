//! Decides what the clinician's rule says about a diary at a moment. Pure: entries and a stamp in, an
//! [`Assessment`] out; no clock, no files, no words. What the sentences are is written in RULE.md beside
//! this file, numbered; code and tests name them.
//!
//! Leaves to [`crate::screens`] how an outcome is said, to [`crate::safety`] which signs there are, and
//! to the person what she does with it.

mod outcome;

pub use outcome::{
    Assessment, Bar, Basis, ClockDoubt, Criterion, Finding, Missing, OpenSign, Outcome,
    OutcomeKind, Part, Pause, RuleOf, Verdict,
};
mod fold;
pub use fold::{Fold, FoldError};
