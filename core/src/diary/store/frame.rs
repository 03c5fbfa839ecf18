//! One frame: a sealed piece of the journal that opens alone and names its predecessor. Decides what is bound to it.
//! Leaves where it goes to [`super::journal`], and what one that is missing or broken means to [`super::scan`].

use super::layout::{
    AROUND, FRAME_MOST, FileId, INNER, NONCE, PREFIX, SECTOR, Seq, TAG, Tag, Take,
};
use super::seal::SealKey;
use crate::ports::{Random, RandomError};

const MAGIC: [u8; 4] = *b"fr\xf7\x01";

/// The identity and key of one journal file.
#[derive(Debug, Clone)]
pub(super) struct FileKey {
    pub(super) id: FileId,
    pub(super) key: SealKey,
}

/// What a frame holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Content {
    /// An entry's bytes.
    Entry(Vec<u8>),
    /// The mark that the entries from here to the frame's own sequence were lost.
    Gap { from: Seq, extent: u8 },
}

/// A frame that was opened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Frame {
    pub(super) seq: Seq,
    pub(super) previous: Tag,
    pub(super) tag: Tag,
    pub(super) content: Content,
    pub(super) offset: u64,
    /// Length on disk, in bytes.
    pub(super) len: usize,
}

impl Frame {
    /// The first sequence this frame accounts for.
    pub(super) fn first(&self) -> Seq {
        match self.content {
            Content::Entry(_) => self.seq,
            Content::Gap { from, .. } => from,
        }
    }

    pub(super) fn end(&self) -> u64 {
        self.offset.saturating_add(self.len as u64)
    }
}

/// What the readable prefix of a frame says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Prefix {
    pub(super) seq: Seq,
    /// Length on disk, in bytes: a whole number of sectors.
    pub(super) len: usize,
}

fn bound(id: FileId, seq: u64) -> [u8; 24] {
    let mut out = [0u8; 24];
    let (file, place) = out.split_at_mut(16);
    file.copy_from_slice(&id.0);
    place.copy_from_slice(&seq.to_le_bytes());
    out
}

/// How long a frame with a payload of this many bytes is on disk: whole sectors, so that a typical
/// entry is one sector, which a disk writes whole or not at all, and no later write touches the
/// sector of an earlier entry. The text inside is then a multiple of 64.
pub(super) fn frame_len(payload: usize) -> usize {
    payload.saturating_add(INNER + AROUND).div_ceil(SECTOR).saturating_mul(SECTOR)
}

/// Why no frame was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum FrameError {
    TooLong,
    Random,
}

impl From<RandomError> for FrameError {
    fn from(_: RandomError) -> Self {
        FrameError::Random
    }
}

/// Seals one frame; returns its bytes and its tag.
pub(super) fn seal(
    file: &FileKey,
    seq: Seq,
    previous: Tag,
    content: &Content,
    random: &dyn Random,
) -> Result<(Vec<u8>, Tag), FrameError> {
    let gap;
    let (kind, payload): (u8, &[u8]) = match content {
        Content::Entry(payload) => (0, payload),
        Content::Gap { from, extent } => {
            gap = [&from.get().to_le_bytes()[..], &[*extent]].concat();
            (1, &gap)
        }
    };
    seal_payload(file, seq, previous, kind, payload, random)
}

/// Seals an entry without copying it first.
pub(super) fn seal_payload(
    file: &FileKey,
    seq: Seq,
    previous: Tag,
    kind: u8,
    payload: &[u8],
    random: &dyn Random,
) -> Result<(Vec<u8>, Tag), FrameError> {
    let len = frame_len(payload.len());
    let payload_len = u32::try_from(payload.len()).map_err(|_| FrameError::TooLong)?;
    let frame_len = u32::try_from(len).map_err(|_| FrameError::TooLong)?;
    if len > FRAME_MOST {
        return Err(FrameError::TooLong);
    }
    let mut nonce = [0u8; NONCE];
    random.fill(&mut nonce)?;

    let mut out = Vec::with_capacity(len);
    out.extend_from_slice(&MAGIC);
    out.extend_from_slice(&frame_len.to_le_bytes());
    out.extend_from_slice(&seq.get().to_le_bytes());
    out.extend_from_slice(&[0u8; 4]);
    let sum = crc32c::crc32c(&out);
    out.extend_from_slice(&sum.to_le_bytes());
    out.extend_from_slice(&nonce);
    out.extend_from_slice(&previous);
    out.push(kind);
    out.extend_from_slice(&payload_len.to_le_bytes());
    out.extend_from_slice(payload);
    out.resize(len.saturating_sub(TAG), 0);
    let (_, text) = out.split_at_mut(PREFIX + NONCE);
    let tag =
        file.key.seal(nonce, &bound(file.id, seq.get()), text).map_err(|_| FrameError::TooLong)?;
    out.extend_from_slice(&tag);
    Ok((out, tag))
}

/// Reads a prefix: whole and with a true checksum, or nothing.
pub(super) fn prefix(bytes: &[u8]) -> Option<Prefix> {
    let summed = bytes.get(..PREFIX - 4)?;
    let mut take = Take(bytes);
    if take.array::<4>()? != MAGIC {
        return None;
    }
    let len = usize::try_from(take.u32()?).ok()?;
    let seq = take.u64()?;
    if take.u32()? != 0 || take.u32()? != crc32c::crc32c(summed) {
        return None;
    }
    let sound = (SECTOR..=FRAME_MOST).contains(&len) && len.is_multiple_of(SECTOR);
    if sound { Some(Prefix { seq: Seq::new(seq)?, len }) } else { None }
}

/// Opens the frame these bytes are; `None` when anything about it does not verify.
pub(super) fn open(file: &FileKey, offset: u64, bytes: &[u8]) -> Option<Frame> {
    let Prefix { seq, len } = prefix(bytes)?;
    let mut take = Take(bytes.get(PREFIX..len)?);
    let nonce = take.array::<NONCE>()?;
    let mut text = take.bytes(len.checked_sub(AROUND)?)?.to_vec();
    let tag = take.array::<TAG>()?;
    file.key.open(nonce, &bound(file.id, seq.get()), &mut text, tag).ok()?;

    let mut take = Take(&text);
    let previous = take.array::<TAG>()?;
    let kind = take.u8()?;
    let payload_len = usize::try_from(take.u32()?).ok()?;
    let payload = take.bytes(payload_len)?;
    let content = match kind {
        0 => {
            // The text is reused: the entry's bytes move to its front, and what filled its sectors is given
            // back, since many frames are held at a time.
            let start = INNER;
            let end = start.checked_add(payload_len)?;
            text.truncate(end);
            text.drain(..start);
            text.shrink_to_fit();
            Content::Entry(text)
        }
        1 => {
            let mut take = Take(payload);
            let from = Seq::new(take.u64()?).filter(|from| *from <= seq)?;
            Content::Gap { from, extent: take.u8()? }
        }
        _ => return None,
    };
    Some(Frame { seq, previous, tag, content, offset, len })
}
