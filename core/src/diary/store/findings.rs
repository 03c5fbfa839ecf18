//! What opening or scrubbing found. Counts and places only, never content.

use super::layout::Seq;
use std::path::PathBuf;

/// How sure it is which entries a hole held.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Extent {
    /// Exactly these entries.
    Exactly,
    /// These, and perhaps more after them: the file ends too early.
    AtLeast,
    /// Perhaps none at all, perhaps this one and more. What stands there looks like a write that a
    /// power cut interrupted (then it was never acknowledged), but a worn disk can look the same;
    /// or frames were moved about, and whether there was another one after them cannot be told.
    Perhaps,
}

impl Extent {
    pub(super) fn code(self) -> u8 {
        match self {
            Extent::Exactly => 0,
            Extent::AtLeast => 1,
            Extent::Perhaps => 2,
        }
    }

    pub(super) fn from_code(code: u8) -> Self {
        match code {
            0 => Extent::Exactly,
            1 => Extent::AtLeast,
            _ => Extent::Perhaps,
        }
    }
}

/// Entries that the journal once had, or may have had, and that cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Missing {
    /// The first of them.
    pub from: Seq,
    /// The last of them.
    pub through: Seq,
    /// How sure that is.
    pub extent: Extent,
    /// Found just now. `false`: an earlier opening found it and wrote a mark in its place. Such a
    /// mark is reported at every opening until a snapshot covers an entry after it.
    pub new: bool,
}

impl Missing {
    /// How many entries that is.
    #[must_use]
    pub fn entries(&self) -> u64 {
        self.through.get().saturating_sub(self.from.get()).saturating_add(1)
    }
}

/// Why the snapshot could not be used. The folded state is then rebuilt from the whole journal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SnapshotTrouble {
    /// It does not verify.
    Damaged,
    /// It belongs to another journal file.
    OtherJournal,
    /// It covers entries that the journal does not have: the journal was cut or set back.
    Ahead,
    /// The journal has another entry at the place it covers: one of the two was set back.
    Differs,
    /// Entries it covers are missing from the journal.
    CoversMissing,
}

/// Why nothing can be written. What verifies can still be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReadOnly {
    /// Something was found damaged, and there is no room to keep the original and write a new
    /// journal.
    DiskFull,
    /// Something was found damaged, and keeping the original or writing a new journal failed.
    DiskFailed,
}

/// Everything opening found that is not as it was written.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Findings {
    /// Entries that are gone, in order, those known from earlier openings included.
    pub missing: Vec<Missing>,
    /// The journal's tail was cut off within a frame.
    pub torn: bool,
    /// A complete frame did not verify, or frames were out of order, repeated or dropped.
    pub damaged: bool,
    /// The journal is shorter than it was ever written: something outside cut it.
    pub shortened: bool,
    /// One of the two header copies, or of the two copies of the keys, was lost and written anew
    /// from the other.
    pub copy_lost: bool,
    /// The journal was copied into a new file because an earlier write or sync had failed.
    pub renewed: bool,
    /// Why there is no snapshot although there was one.
    pub snapshot: Option<SnapshotTrouble>,
    /// Set when the diary is open for reading only.
    pub read_only: Option<ReadOnly>,
    /// Where the original bytes of what was damaged are kept.
    pub kept_aside: Vec<PathBuf>,
}

impl Findings {
    /// Whether nothing at all was found.
    #[must_use]
    pub fn is_clean(&self) -> bool {
        *self == Self::default()
    }

    /// Whether an earlier opening did not know of all that is missing.
    #[must_use]
    pub fn newly_missing(&self) -> bool {
        self.missing.iter().any(|m| m.new)
    }
}
