//! What came of a timed practice: what a session needs to be told.

use std::fmt;

use serde::Serialize;

use super::record::{Running, Stage};
use crate::diary::entry::{Ended, EntryId, Reason, UsedPart};
use crate::moment::Stamp;
use crate::programme::values::{Position, Practice};

/// How it ended; the reason of a stop is asked afterwards, and may be left unsaid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum How {
    /// As planned.
    Finished,
    /// Stopped.
    Stopped,
    /// Stopped before any part was begun.
    CouldNotStart,
}

/// An ended practice.
#[derive(Clone, PartialEq, Eq)]
pub struct Done {
    /// The id under which the session is to be written.
    pub id: EntryId,
    /// When it began; if it never did, when it was stopped.
    pub happened: Stamp,
    /// Kind of practice.
    pub practice: Practice,
    /// Position as planned; the person confirms it.
    pub position: Position,
    /// Parts that have time, in order, in whole seconds rounded down; a single part with none if
    /// nothing was practised. Sizes as planned; the person confirms them.
    pub parts: Vec<UsedPart>,
    /// How it ended.
    pub how: How,
}

impl fmt::Debug for Done {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Done(..)")
    }
}

impl Done {
    pub(super) fn of(running: &Running) -> Option<Self> {
        let how = match (running.stage, running.began) {
            (Stage::Finished, _) => How::Finished,
            (Stage::Stopped, Some(_)) => How::Stopped,
            (Stage::Stopped, None) => How::CouldNotStart,
            _ => return None,
        };
        let used = |(part, millis): (&super::PlannedPart, &u64)| UsedPart {
            widest_diameter_tenths_mm: part.widest_diameter_tenths_mm,
            practised_seconds: u32::try_from(millis / 1000).unwrap_or(u32::MAX),
        };
        let both = || running.parts.iter().zip(&running.counted_millis);
        let mut parts: Vec<UsedPart> =
            both().filter(|(_, millis)| **millis > 0).map(used).collect();
        if parts.is_empty() {
            parts.extend(both().next().map(used));
        }
        Some(Self {
            id: running.id,
            happened: running.began.unwrap_or(running.seen),
            practice: running.practice.clone(),
            position: running.position,
            parts,
            how,
        })
    }

    /// The ending as a session tells it. A reason that was not said is "another reason", which counts
    /// as stopped: nothing unsaid makes going up easier.
    #[must_use]
    pub fn ended(&self, reason: Option<Reason>) -> Ended {
        let reason = reason.unwrap_or(Reason::Other);
        match self.how {
            How::Finished => Ended::Finished,
            How::Stopped => Ended::Stopped(reason),
            How::CouldNotStart => Ended::CouldNotStart(reason),
        }
    }
}
