//! The record of a running practice: what it holds, how it is written, and what is refused when it is
//! read. JSON, strict, with a version; every rule that the timer keeps is checked again.

use serde::{Deserialize, Serialize};

use super::planned::{MOST_PARTS, Planned, PlannedPart};
use crate::diary::entry::EntryId;
use crate::message_id;
use crate::moment::{Stamp, Uptime};
use crate::programme::values::{Position, Practice, Size};

/// The version this program writes and reads.
const FORMAT: u32 = 1;

/// Where a practice stands.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub(super) enum Stage {
    /// The part waits for the person to begin it.
    Ready { part: usize },
    /// The clock of the part runs.
    Running { part: usize },
    /// The clock of the part stands still.
    Paused { part: usize },
    /// Stopped. Final.
    Stopped,
    /// Over as planned.
    Finished,
}

/// The running practice as it is kept.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Running {
    /// The form of this record, [`FORMAT`].
    pub frond_running: u32,
    /// The id of the request that will write the session: asking twice writes once.
    pub id: EntryId,
    pub practice: Practice,
    pub position: Position,
    pub parts: Vec<PlannedPart>,
    /// Milliseconds that certainly were practised, part by part, up to `seen`.
    pub counted_millis: Vec<u64>,
    pub stage: Stage,
    /// When the first part began.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub began: Option<Stamp>,
    /// Running time and wall time of the last event.
    pub seen_uptime: Uptime,
    pub seen: Stamp,
}

/// Why a record cannot be used or was not written. None of its texts holds anything of the record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum RunningError {
    /// A newer program wrote it.
    #[error("a newer program began this practice: update to go on with it")]
    Newer,
    /// It is not a record, or breaks a rule every record keeps.
    #[error("the record of the running practice cannot be read: write the session down by hand")]
    Unreadable,
    /// It could not be written.
    #[error("the running practice could not be noted: write it down by hand when it has ended")]
    NotKept,
}

impl RunningError {
    /// The message id of what the person is told.
    #[must_use]
    pub fn word_id(self) -> &'static str {
        match self {
            RunningError::Newer => message_id!("running-update"),
            RunningError::Unreadable => message_id!("running-unreadable"),
            RunningError::NotKept => message_id!("running-not-kept"),
        }
    }
}

/// Read first: says which version the rest is.
#[derive(Deserialize)]
struct Version {
    frond_running: u32,
}

impl Running {
    pub fn new(planned: Planned, id: EntryId, seen_uptime: Uptime, seen: Stamp) -> Self {
        Self {
            frond_running: FORMAT,
            id,
            practice: planned.practice,
            position: planned.position,
            counted_millis: vec![0; planned.parts.len()],
            parts: planned.parts,
            stage: Stage::Ready { part: 0 },
            began: None,
            seen_uptime,
            seen,
        }
    }

    pub fn write(&self) -> Result<Vec<u8>, RunningError> {
        serde_json::to_vec(self).map_err(|_| RunningError::NotKept)
    }

    pub fn read(bytes: &[u8]) -> Result<Self, RunningError> {
        let version: Version =
            serde_json::from_slice(bytes).map_err(|_| RunningError::Unreadable)?;
        if version.frond_running > FORMAT {
            return Err(RunningError::Newer);
        }
        let running: Self = serde_json::from_slice(bytes).map_err(|_| RunningError::Unreadable)?;
        if running.holds() { Ok(running) } else { Err(RunningError::Unreadable) }
    }

    /// Whether it keeps every rule that a timer keeps.
    fn holds(&self) -> bool {
        let planned =
            Planned::new(self.practice.clone(), self.position, self.parts.clone()).is_ok();
        let counts = self.counted_millis.len() == self.parts.len()
            && self.parts.iter().zip(&self.counted_millis).all(|(p, c)| *c <= p.most_millis);
        let begun = self.began.is_some();
        let counted_of = |part: usize| self.counted_millis.get(part).copied().unwrap_or_default();
        let none_after = |part: usize| self.counted_millis.iter().skip(part).all(|c| *c == 0);
        let stage = match self.stage {
            Stage::Ready { part } => part < self.parts.len() && none_after(part),
            Stage::Running { part } | Stage::Paused { part } => {
                let open = self.parts.get(part).is_some_and(|p| counted_of(part) < p.most_millis);
                begun && open && none_after(part + 1)
            }
            Stage::Finished => {
                let last = self.parts.len().saturating_sub(1);
                begun && self.parts.get(last).is_some_and(|p| counted_of(last) >= p.least_millis)
            }
            Stage::Stopped => true,
        };
        self.frond_running == FORMAT && planned && counts && stage && (begun || none_after(0))
    }

    /// The part that the stage is about.
    pub fn part(&self) -> usize {
        match self.stage {
            Stage::Ready { part } | Stage::Running { part } | Stage::Paused { part } => part,
            // The last part that has time, for what is shown of an ended practice.
            Stage::Stopped | Stage::Finished => {
                self.counted_millis.iter().rposition(|counted| *counted > 0).unwrap_or_default()
            }
        }
    }

    /// Milliseconds practised of a part, counted from 0; none of one that is not there.
    pub fn counted(&self, part: usize) -> u64 {
        self.counted_millis.get(part).copied().unwrap_or_default()
    }

    /// Of all parts together.
    pub fn total_millis(&self) -> u64 {
        self.counted_millis.iter().sum()
    }

    fn is_last(&self, part: usize) -> bool {
        part + 1 >= self.parts.len()
    }

    /// Counts `millis` for the part that runs. Time beyond its end is not practised time (W4).
    pub fn count(&mut self, millis: u64) {
        let Stage::Running { part } = self.stage else { return };
        let Some(most) = self.parts.get(part).map(|part| part.most_millis) else { return };
        if let Some(counted) = self.counted_millis.get_mut(part) {
            *counted = counted.saturating_add(millis).min(most);
            if *counted == most {
                self.stage = match self.is_last(part) {
                    true => Stage::Finished,
                    false => Stage::Ready { part: part + 1 },
                };
            }
        }
    }

    /// A smaller trainer is used from here on (W10). What was practised with the larger one stays as it
    /// is; what was still to come is left out; one part with the smaller one waits to be begun.
    pub fn smaller(&mut self, part: usize, size: Size) {
        let (Some(now), Some(main)) = (self.parts.get(part), self.parts.last()) else { return };
        let smaller = now.widest_diameter_tenths_mm.is_some_and(|now| size < now);
        let used = if self.is_last(part) { self.counted(part) } else { 0 };
        let most_millis = main.most_millis.saturating_sub(used);
        let next = PlannedPart {
            widest_diameter_tenths_mm: Some(size),
            least_millis: main.least_millis.min(most_millis),
            most_millis,
        };
        let kept = if self.counted(part) > 0 { part + 1 } else { part };
        if !smaller || kept >= MOST_PARTS {
            return;
        }
        self.parts.truncate(kept);
        self.parts.push(next);
        self.counted_millis.truncate(kept);
        self.counted_millis.push(0);
        self.stage = Stage::Ready { part: kept };
    }

    /// The person says that a part is enough. Finished only if it is the last and took its least.
    pub fn enough(&mut self, part: usize) {
        let least = self.parts.get(part).map_or(u64::MAX, |part| part.least_millis);
        self.stage = match (self.is_last(part), self.began) {
            (false, _) => Stage::Ready { part: part + 1 },
            (true, Some(_)) if self.counted(part) >= least => Stage::Finished,
            (true, _) => Stage::Stopped,
        };
    }
}
