//! The journal file while it is open: where the next frame goes, and writing it. Leaves to [`super::frame`] what a frame
//! is, and to [`super::scan`] what is found in a journal that is there.

use super::errors::AppendError;
use super::frame::{self, Content, FileKey, Frame, FrameError};
use super::header;
use super::layout::{CHUNK, ENTRY_MOST, FIRST_FRAME, SECTOR, Seq, Tag};
use super::scan::{Scan, Start, usable};
use super::seal::SealKey;
use super::sealed::create_afresh;
use crate::ports::{Disk, DiskError, DiskFile, Random, RandomError, SyncFor};
use std::path::Path;

/// The file's name.
pub(super) const NAME: &str = "journal";
const NEW: &str = "journal.new";

/// Where one frame stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Place {
    pub(super) seq: Seq,
    pub(super) offset: u64,
    pub(super) end: u64,
    pub(super) tag: Tag,
}

impl Place {
    pub(super) fn of(frame: &Frame) -> Self {
        Self { seq: frame.seq, offset: frame.offset, end: frame.end(), tag: frame.tag }
    }
}

/// An open journal.
#[derive(Debug)]
pub(super) struct Journal {
    pub(super) file: Box<dyn DiskFile>,
    pub(super) key: FileKey,
    /// The tag the first frame names.
    pub(super) header_tag: Tag,
    /// Zeros reach to here.
    room: u64,
    /// Where the next frame goes.
    pub(super) end: u64,
    pub(super) last: Option<Seq>,
    tag: Tag,
    /// The frames read or written since opening, in order.
    pub(super) places: Vec<Place>,
}

/// Why a journal was not written anew.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum RewriteError {
    Disk(DiskError),
    Random,
}

impl From<DiskError> for RewriteError {
    fn from(error: DiskError) -> Self {
        Self::Disk(error)
    }
}

impl From<RandomError> for RewriteError {
    fn from(_: RandomError) -> Self {
        Self::Random
    }
}

impl Journal {
    /// A journal that was read and found sound, or is only to be read.
    pub(super) fn adopt(
        file: Box<dyn DiskFile>,
        key: FileKey,
        header_tag: Tag,
        start: Start,
        snapshot: Option<Place>,
        scan: &Scan,
    ) -> Result<Self, DiskError> {
        let room = usable(file.length()?);
        let (last, tag) = match scan.frames.last() {
            Some(frame) => (Some(frame.seq), frame.tag),
            None => (start.last, start.tag),
        };
        // Reading that began after the snapshot still knows the place it began from.
        let before = snapshot.filter(|p| start.last == Some(p.seq));
        let places = before.into_iter().chain(scan.frames.iter().map(Place::of)).collect();
        Ok(Self { file, key, header_tag, room, end: scan.end, last, tag, places })
    }

    /// Writes a new journal with this content under a new file id and key, and puts it in place of
    /// the present one, if any, all or nothing.
    pub(super) fn write_new<'a>(
        disk: &dyn Disk,
        folder: &Path,
        wrapper: &SealKey,
        random: &dyn Random,
        content: impl Iterator<Item = (Seq, &'a Content)>,
    ) -> Result<Self, RewriteError> {
        let (new, path) = (folder.join(NEW), folder.join(NAME));
        let result = Self::write_aside(disk, &new, wrapper, random, content).and_then(|journal| {
            disk.rename(&new, &path)?;
            disk.sync_folder(folder, SyncFor::JournalName)?;
            Ok(journal)
        });
        if result.is_err() {
            let _ = disk.remove(&new);
        }
        result
    }

    /// Writes a new journal under a name that means nothing yet, and syncs its content.
    pub(super) fn write_aside<'a>(
        disk: &dyn Disk,
        new: &Path,
        wrapper: &SealKey,
        random: &dyn Random,
        content: impl Iterator<Item = (Seq, &'a Content)>,
    ) -> Result<Self, RewriteError> {
        let file = create_afresh(disk, new)?;
        Self::write_into(file, wrapper, random, content, SyncFor::JournalContent)
    }

    /// Writes a new journal into a file in which nothing stands yet, and syncs it.
    pub(super) fn write_into<'a>(
        file: Box<dyn DiskFile>,
        wrapper: &SealKey,
        random: &dyn Random,
        content: impl Iterator<Item = (Seq, &'a Content)>,
        why: SyncFor,
    ) -> Result<Self, RewriteError> {
        let (key, header_tag, copies) = header::new(wrapper, random)?;
        let mut pending = copies;
        let mut written = 0u64;
        let (mut last, mut tag) = (None, header_tag);
        let mut places = Vec::new();
        for (seq, content) in content {
            let (bytes, its_tag) =
                frame::seal(&key, seq, tag, content, random).map_err(|_| RewriteError::Random)?;
            let offset = written.saturating_add(pending.len() as u64);
            let end = offset.saturating_add(bytes.len() as u64);
            pending.extend_from_slice(&bytes);
            places.push(Place { seq, offset, end, tag: its_tag });
            (last, tag) = (Some(seq), its_tag);
            if pending.len() as u64 >= CHUNK {
                file.write_at(written, &pending)?;
                written = written.saturating_add(pending.len() as u64);
                pending.clear();
            }
        }
        let end = written.saturating_add(pending.len() as u64);
        let room = room_for(end);
        pending.resize(usize::try_from(room.saturating_sub(written)).unwrap_or(0), 0);
        file.write_at(written, &pending)?;
        file.sync_data(why)?;
        Ok(Self { file, key, header_tag, room, end, last, tag, places })
    }

    /// Writes one entry and syncs it. After any error but `TooLong`, `DiskFull` and `Random` the
    /// handle is dead.
    pub(super) fn append(
        &mut self,
        payload: &[u8],
        random: &dyn Random,
    ) -> Result<Seq, AppendError> {
        if payload.len() > ENTRY_MOST {
            return Err(AppendError::TooLong);
        }
        let seq = Seq::after(self.last);
        let (bytes, tag) = frame::seal_payload(&self.key, seq, self.tag, 0, payload, random)
            .map_err(|e| match e {
                FrameError::TooLong => AppendError::TooLong,
                FrameError::Random => AppendError::Random(RandomError),
            })?;
        let end = self.end.saturating_add(bytes.len() as u64);
        self.make_room(end)?;
        self.file.write_at(self.end, &bytes).map_err(|_| AppendError::Poisoned)?;
        self.file.sync_data(SyncFor::Entry).map_err(|_| AppendError::Poisoned)?;
        self.places.push(Place { seq, offset: self.end, end, tag });
        (self.end, self.last, self.tag) = (end, Some(seq), tag);
        Ok(seq)
    }

    /// Lengthens the file by zeros until a frame may end at `end` with a sector of zeros after it,
    /// and syncs them. From then on the file's length itself tells whether something was cut off.
    fn make_room(&mut self, end: u64) -> Result<(), AppendError> {
        let room = room_for(end);
        if room <= self.room {
            return Ok(());
        }
        let zeros = vec![0u8; usize::try_from(room.saturating_sub(self.room)).unwrap_or(0)];
        match self.file.write_at(self.room, &zeros) {
            Ok(()) => {}
            // No frame has been touched, and no byte given up: there is just no room.
            Err(DiskError::Full) => return Err(AppendError::DiskFull),
            Err(_) => return Err(AppendError::Poisoned),
        }
        self.file.sync_data(SyncFor::Zeros).map_err(|_| AppendError::Poisoned)?;
        self.room = room;
        Ok(())
    }

    /// Makes room for the next entries ahead of time, so that appending one costs one write and
    /// one sync and nothing else.
    pub(super) fn make_room_ahead(&mut self) -> Result<(), AppendError> {
        self.make_room(self.end.saturating_add(CHUNK / 2))
    }

    /// Where a frame stands, if it was read or written since opening.
    pub(super) fn place(&self, seq: Seq) -> Option<Place> {
        let at = self.places.binary_search_by_key(&seq, |p| p.seq).ok()?;
        self.places.get(at).copied()
    }

    /// Reading from the very beginning.
    pub(super) fn whole(&self) -> Start {
        Start { offset: FIRST_FRAME, last: None, tag: self.header_tag }
    }
}

/// Makes sure that the last frame read is on the disk and not only in the system's memory: it may
/// come from a write that was never synced, or whose sync failed. The same bytes are written once
/// more, because a system that gave them up after an error calls them clean.
pub(super) fn settle(file: &dyn DiskFile, frame: &Frame) -> Result<(), DiskError> {
    let mut bytes = vec![0u8; frame.len];
    file.read_at(frame.offset, &mut bytes)?;
    file.write_at(frame.offset, &bytes)?;
    file.sync_data(SyncFor::Settled)
}

/// The shortest length a file may have with a frame ending here: whole chunks, and at least one
/// sector of zeros, which end the log.
fn room_for(end: u64) -> u64 {
    end.saturating_add(SECTOR as u64).div_ceil(CHUNK).saturating_mul(CHUNK)
}
