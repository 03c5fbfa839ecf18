//! The high-water mark: a few bytes kept outside the folder, by which an older copy of the whole folder
//! is noticed. Where they are kept is [`crate::ports::MarkKeeper`]'s affair.
//!
//! A mark says how often the diary was put under new keys, how far it went, and a fingerprint of the
//! entry there. It is 57 bytes: version (1), generation (8), sequence (8), fingerprint (16), file id (16),
//! offset of the frame (8), little-endian. File and offset only spare reading the whole journal.

use super::frame::{self, Content, FileKey, Frame};
use super::journal::Journal;
use super::layout::{FileId, Seq, Take};
use super::scan::{self, Window};
use super::seal::SealKey;
use crate::ports::{DiskError, DiskFile};

const VERSION: u8 = 1;
const PRINT: usize = 16;

/// A mark.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Mark {
    generation: u64,
    seq: Seq,
    print: [u8; PRINT],
    file: FileId,
    offset: u64,
}

/// What a mark says about the diary that was opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rollback {
    /// The diary went on to this entry once, and does not any more.
    Shorter {
        /// The last entry it is known to have had.
        known: Seq,
    },
    /// It has another entry where the mark knows one: it was set back and went on from there.
    Differs {
        /// The entry that is another one.
        at: Seq,
    },
    /// It is a copy from before it was put under new keys: what was erased since is in it again.
    BeforeRenewal {
        /// The last entry the later diary is known to have had.
        known: Seq,
    },
}

/// How often the diary had been put under new keys when this mark was made; `None` for bytes that are
/// no mark this program understands.
#[must_use]
pub fn mark_generation(mark: &[u8]) -> Option<u64> {
    Mark::decode(mark).map(|mark| mark.generation)
}

/// The fingerprint in a mark: of the entry it knows, so the same for the same loss; `None` as above.
#[must_use]
pub fn mark_print(mark: &[u8]) -> Option<[u8; 16]> {
    Mark::decode(mark).map(|mark| mark.print)
}

impl Mark {
    /// The mark of an open journal; `None` while it is empty.
    pub(super) fn of(
        journal: &Journal,
        generation: u64,
        key: &SealKey,
    ) -> Result<Option<Self>, DiskError> {
        let Some(seq) = journal.last else { return Ok(None) };
        let frame = match journal.place(seq) {
            Some(place) => at(journal.file.as_ref(), &journal.key, place.offset)?,
            None => None,
        };
        let frame = match frame.filter(|frame| frame.seq == seq) {
            Some(frame) => Some(frame),
            None => find(journal, seq)?,
        };
        Ok(frame.map(|frame| Self {
            generation,
            seq,
            print: print(&frame, key),
            file: journal.key.id,
            offset: frame.offset,
        }))
    }

    pub(super) fn encode(&self) -> Vec<u8> {
        [
            &[VERSION][..],
            &self.generation.to_le_bytes(),
            &self.seq.get().to_le_bytes(),
            &self.print,
            &self.file.0,
            &self.offset.to_le_bytes(),
        ]
        .concat()
    }

    /// `None` for bytes that are no mark; a mark of a later version is one this program cannot judge.
    pub(super) fn decode(bytes: &[u8]) -> Option<Self> {
        let mut take = Take(bytes);
        if take.u8()? != VERSION {
            return None;
        }
        let generation = take.u64()?;
        let seq = Seq::new(take.u64()?)?;
        let print = take.array()?;
        let file = FileId(take.array()?);
        let offset = take.u64()?;
        take.0.is_empty().then_some(Self { generation, seq, print, file, offset })
    }

    /// Judges the diary that was opened.
    pub(super) fn judge(
        &self,
        journal: &Journal,
        generation: u64,
        key: &SealKey,
    ) -> Result<Option<Rollback>, DiskError> {
        if generation > self.generation {
            // Put under new keys, and the power went off before the new mark was kept.
            return Ok(None);
        }
        if generation < self.generation {
            return Ok(Some(Rollback::BeforeRenewal { known: self.seq }));
        }
        if journal.last < Some(self.seq) {
            return Ok(Some(Rollback::Shorter { known: self.seq }));
        }
        let quick = if journal.key.id == self.file {
            at(journal.file.as_ref(), &journal.key, self.offset)?
        } else {
            None
        };
        let frame = match quick.filter(|frame| frame.seq == self.seq) {
            Some(frame) => Some(frame),
            None => find(journal, self.seq)?,
        };
        Ok(match frame {
            Some(frame @ Frame { content: Content::Entry(_), .. })
                if print(&frame, key) != self.print =>
            {
                Some(Rollback::Differs { at: self.seq })
            }
            // Where the entry is gone, the holes are reported as what they are.
            _ => None,
        })
    }
}

/// A fingerprint of an entry and its place, the same in whatever file it lies.
fn print(frame: &Frame, key: &SealKey) -> [u8; PRINT] {
    let content: &[u8] = match &frame.content {
        Content::Entry(bytes) => bytes,
        // A hole has no content to compare; its mark only keeps its place.
        Content::Gap { .. } => &[],
    };
    key.fingerprint(frame.seq.get(), content)
}

fn at(file: &dyn DiskFile, key: &FileKey, offset: u64) -> Result<Option<Frame>, DiskError> {
    let mut window = Window::new(file, file.length()?);
    let Some(prefix) = frame::prefix(window.get(offset, super::layout::PREFIX)?) else {
        return Ok(None);
    };
    Ok(frame::open(key, offset, window.get(offset, prefix.len)?))
}

fn find(journal: &Journal, seq: Seq) -> Result<Option<Frame>, DiskError> {
    let found = scan::scan(journal.file.as_ref(), &journal.key, journal.whole())?;
    Ok(found.frames.into_iter().find(|frame| frame.first() <= seq && frame.seq >= seq))
}
