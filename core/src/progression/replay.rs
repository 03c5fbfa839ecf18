//! The rule over a whole diary: what it says at a moment, and what it would have said all along (T6).

use serde::Serialize;

use super::fold::{Fold, FoldError};
use super::outcome::{Assessment, Outcome};
use crate::diary::entry::{Entry, EntryId, Place};
use crate::moment::Stamp;
use crate::programme::rule::Rule;

/// What the rule says of a diary at a moment.
///
/// # Errors
/// [`FoldError::UnreadableProgramme`] if an accepted programme cannot be read.
pub fn assess(entries: &[Entry], now: &Stamp) -> Result<Assessment, FoldError> {
    let mut fold = Fold::new(None);
    for entry in entries {
        fold.write(entry)?;
    }
    Ok(fold.assess(now))
}

/// What the rule said right after an entry, at the moment it was written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ReplayRow {
    /// Place of the entry.
    pub place: Place,
    /// The entry.
    pub entry: EntryId,
    /// When it was written.
    pub written: Stamp,
    /// What the rule said.
    pub outcome: Outcome,
}

/// What the rule would have said all along: the outcome right after each entry, at the moment it was
/// written, seeing only what the journal held then (T6). A `tried` rule stands in for every rule.
///
/// # Errors
/// [`FoldError::UnreadableProgramme`] if an accepted programme cannot be read.
pub fn replay(entries: &[Entry], tried: Option<&Rule>) -> Result<Vec<ReplayRow>, FoldError> {
    let mut fold = Fold::new(tried.cloned());
    let mut rows = Vec::with_capacity(entries.len());
    for entry in entries {
        fold.write(entry)?;
        rows.push(ReplayRow {
            place: fold.written(),
            entry: entry.id,
            written: entry.written,
            outcome: fold.outcome(&entry.written),
        });
    }
    Ok(rows)
}
