//! Reading the whole diary over while nobody waits. An opening reads the snapshot and what follows it; what lies
//! before it may have gone bad meanwhile. Decides when that is looked for, and that what was found missing is
//! written down at once. What is repaired, and how, is the next opening's.

use super::{Companion, Trouble};
use crate::diary::store::{Scrub, ScrubOutcome};
use crate::moment::Stamp;

/// What is read at a call, in bytes: some milliseconds.
const SLICE: u64 = 2 * 1024 * 1024;

/// How long a reading over holds, in milliseconds: a week.
const HOLDS: i64 = 7 * 24 * 60 * 60 * 1000;

/// How far it is.
#[derive(Debug, Default)]
pub(super) struct ReadingOver {
    under_way: Option<Scrub>,
    ended: Option<Stamp>,
}

impl Companion {
    /// Reads a part more, where it is due: once after each opening, and again after a week.
    pub(super) fn read_over(&mut self) -> Result<(), Trouble> {
        let now = self.observed.map(|moment| moment.now);
        if let (Some(ended), Some(now)) = (self.reading_over.ended, now)
            && (0..HOLDS).contains(&now.millis().saturating_sub(ended.millis()))
        {
            return Ok(());
        }
        let mut scrub = match self.reading_over.under_way.take() {
            Some(scrub) => scrub,
            None => self.store.scrub()?,
        };
        match scrub.step(SLICE)?.outcome {
            None => self.reading_over.under_way = Some(scrub),
            Some(outcome) => {
                self.reading_over.ended = now;
                if let ScrubOutcome::Damaged(missing) = outcome {
                    self.findings.missing.extend(missing);
                    self.mark_missing()?;
                }
            }
        }
        Ok(())
    }
}
