//! Verifying the whole journal, a slice at a time.

use super::errors::ReadError;
use super::findings::Missing;
use super::frame::{self, Content, FileKey};
use super::header;
use super::layout::{FIRST_FRAME, PREFIX, Seq};
use super::scan::{self, Start, Window};
use crate::ports::{Disk, DiskError, DiskFile};
use std::path::PathBuf;
use std::sync::Arc;

/// The mark in the folder that asks the next opening to read everything and write a new journal.
pub(super) const RENEW: &str = "renew";

/// A scrub under way. Has its own handle: it can run on another thread while entries are appended;
/// it verifies what was there when it began.
#[derive(Debug)]
pub struct Scrub {
    disk: Arc<dyn Disk>,
    folder: PathBuf,
    file: Box<dyn DiskFile>,
    key: FileKey,
    start: Start,
    at: Start,
    end: u64,
    outcome: Option<ScrubOutcome>,
}

/// What a finished scrub found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ScrubOutcome {
    /// Everything is as it was written.
    Sound,
    /// Something is not. Close the diary and open it: the opening keeps the original, repairs what
    /// can be, and reports. The entries listed here cannot be read.
    Damaged(Vec<Missing>),
}

/// How far a scrub is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ScrubProgress {
    /// Bytes verified so far.
    pub done: u64,
    /// Bytes to verify in all.
    pub total: u64,
    /// Set once it is finished.
    pub outcome: Option<ScrubOutcome>,
}

impl Scrub {
    pub(super) fn new(
        disk: Arc<dyn Disk>,
        folder: PathBuf,
        key: FileKey,
        start: Start,
        end: u64,
    ) -> Result<Self, ReadError> {
        let file = disk.open(&folder.join(super::journal::NAME))?;
        Ok(Self { disk, folder, file, key, start, at: start, end, outcome: None })
    }

    /// Verifies about `budget` bytes more (at least one frame).
    ///
    /// # Errors
    /// [`ReadError`] when nothing at all can be read.
    pub fn step(&mut self, budget: u64) -> Result<ScrubProgress, ReadError> {
        if self.outcome.is_none() && !self.slice(budget.max(1))? {
            self.outcome = Some(self.account()?);
        }
        Ok(ScrubProgress {
            done: self.at.offset.saturating_sub(FIRST_FRAME).min(self.total()),
            total: self.total(),
            outcome: self.outcome.clone(),
        })
    }

    fn total(&self) -> u64 {
        self.end.saturating_sub(FIRST_FRAME)
    }

    /// Goes on over frames that verify and follow; `false` at the first that does not.
    fn slice(&mut self, budget: u64) -> Result<bool, DiskError> {
        if self.at.offset == self.start.offset {
            let header = header::read(self.file.as_ref());
            if header.is_err() || header.is_ok_and(|h| h.copy_lost) {
                return Ok(false);
            }
        }
        let stop = self.at.offset.saturating_add(budget).min(self.end);
        let mut window = Window::new(self.file.as_ref(), self.file.length()?);
        while self.at.offset < stop {
            let at = self.at.offset;
            let Some(p) = frame::prefix(window.get(at, PREFIX)?) else { return Ok(false) };
            let Some(f) = frame::open(&self.key, at, window.get(at, p.len)?) else {
                return Ok(false);
            };
            if f.first() != Seq::after(self.at.last) || f.previous != self.at.tag {
                return Ok(false);
            }
            debug_assert!(matches!(f.content, Content::Entry(_) | Content::Gap { .. }));
            self.at = Start { offset: f.end(), last: Some(f.seq), tag: f.tag };
        }
        if self.at.offset >= self.end {
            self.outcome = Some(ScrubOutcome::Sound);
        }
        Ok(true)
    }

    /// What exactly is wrong, once something is; asks the next opening to see to it.
    fn account(&self) -> Result<ScrubOutcome, DiskError> {
        let found = scan::scan(self.file.as_ref(), &self.key, self.start)?;
        let _ = self.disk.create(&self.folder.join(RENEW));
        let missing = found.missing.into_iter().filter(|m| m.new).collect();
        Ok(ScrubOutcome::Damaged(missing))
    }
}
