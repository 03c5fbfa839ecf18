//! The snapshot of the folded state, and where in the journal it stands.
//!
//! It remembers the file, offset and tag of the last frame it covers, so that opening reads on
//! from there and nothing before it. It is only ever a short cut: what does not fit the journal is
//! ignored, kept aside and rebuilt.

use super::errors::SaveError;
use super::frame::{self, FileKey};
use super::journal::Place;
use super::layout::{FileId, Seq, Take};
use super::scan::{Start, Window};
use super::sealed::SealedFile;
use crate::ports::{DiskError, DiskFile};

/// The file's name.
pub(super) const NAME: &str = "snapshot";

/// A snapshot as stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Snapshot {
    pub(super) file: FileId,
    pub(super) place: Place,
    pub(super) bytes: Vec<u8>,
}

/// How a snapshot stands to the journal it is found beside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Fit {
    /// The frame it covers is where it says, unchanged.
    Fits,
    /// It is another file's.
    OtherJournal,
    /// The journal has no such frame there.
    NotThere,
}

impl Snapshot {
    fn encode(file: FileId, place: Place, bytes: &[u8]) -> Vec<u8> {
        [
            &file.0[..],
            &place.seq.get().to_le_bytes(),
            &place.offset.to_le_bytes(),
            &place.end.to_le_bytes(),
            &place.tag,
            bytes,
        ]
        .concat()
    }

    pub(super) fn decode(content: &[u8]) -> Option<Self> {
        let mut take = Take(content);
        let file = FileId(take.array()?);
        let seq = Seq::new(take.u64()?)?;
        let place = Place { seq, offset: take.u64()?, end: take.u64()?, tag: take.array()? };
        Some(Self { file, place, bytes: take.0.to_vec() })
    }

    /// Opens the one frame it stands on and compares.
    pub(super) fn fit(&self, file: &dyn DiskFile, key: &FileKey) -> Result<Fit, DiskError> {
        if self.file != key.id {
            return Ok(Fit::OtherJournal);
        }
        let Place { seq, offset, end, tag } = self.place;
        let len = usize::try_from(end.saturating_sub(offset)).unwrap_or(0);
        let mut window = Window::new(file, file.length()?);
        let frame = frame::open(key, offset, window.get(offset, len)?);
        let there = frame.is_some_and(|f| f.seq == seq && f.tag == tag && f.end() == end);
        Ok(if there { Fit::Fits } else { Fit::NotThere })
    }

    /// Where reading goes on.
    pub(super) fn start(&self) -> Start {
        Start { offset: self.place.end, last: Some(self.place.seq), tag: self.place.tag }
    }
}

/// Saves one snapshot. Holds all it needs, so it can run on another thread while entries are
/// appended.
#[derive(Debug, Clone)]
pub struct SnapshotSaver {
    pub(super) sealed: SealedFile,
    pub(super) file: FileId,
    pub(super) place: Place,
}

impl SnapshotSaver {
    /// Seals the folded state as it was after the entry this saver was made for, and replaces the
    /// older snapshot. When it returns, the snapshot survives a power cut.
    ///
    /// # Errors
    /// [`SaveError`]; the older snapshot is then still there, and no entry is in danger.
    pub fn save(&self, state: &[u8]) -> Result<(), SaveError> {
        self.sealed.replace(&Snapshot::encode(self.file, self.place, state))
    }
}
