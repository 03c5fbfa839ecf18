//! Reading a journal: every frame that verifies, and an exact account of what does not.
//!
//! This only looks. What is done about a finding is [`super::repair`]'s affair.

use super::findings::{Extent, Missing};
use super::frame::{self, Content, FileKey, Frame, Prefix};
use super::layout::{CHUNK, PREFIX, SECTOR, Seq, Tag};
use crate::ports::{DiskError, DiskFile};

/// Where reading starts and what is expected there.
#[derive(Debug, Clone, Copy)]
pub(super) struct Start {
    pub(super) offset: u64,
    /// The last sequence before it; `None` at the first frame.
    pub(super) last: Option<Seq>,
    /// The tag of the frame before it, or of the header.
    pub(super) tag: Tag,
}

/// What reading found.
#[derive(Debug, Default)]
pub(super) struct Scan {
    /// Every frame that verifies, by sequence, each once.
    pub(super) frames: Vec<Frame>,
    /// The end of the last frame in the file; where the next one goes when nothing is wrong.
    pub(super) end: u64,
    /// A frame runs past the end of the file, or only a part of a prefix is left.
    pub(super) torn: bool,
    /// Something complete did not verify, or was not in its place.
    pub(super) damaged: bool,
    /// Frames reach into a part of the file that no writing of ours leaves without room after it.
    pub(super) shortened: bool,
    /// Entries that are not there.
    pub(super) missing: Vec<Missing>,
}

impl Scan {
    pub(super) fn is_sound(&self) -> bool {
        !self.torn && !self.damaged && !self.shortened
    }

    pub(super) fn last(&self, before: Option<Seq>) -> Option<Seq> {
        self.frames.last().map(|f| f.seq).or(before)
    }
}

/// How much of the journal is whole chunks; only there does our own writing put frames.
pub(super) fn usable(len: u64) -> u64 {
    len / CHUNK * CHUNK
}

/// A moving window over a file, so that neither memory nor calls grow with the file.
pub(super) struct Window<'a> {
    file: &'a dyn DiskFile,
    pub(super) len: u64,
    start: u64,
    bytes: Vec<u8>,
}

impl<'a> Window<'a> {
    pub(super) fn new(file: &'a dyn DiskFile, len: u64) -> Self {
        Self { file, len, start: 0, bytes: Vec::new() }
    }

    /// `want` bytes from `offset` on, fewer only at the end of the file.
    pub(super) fn get(&mut self, offset: u64, want: usize) -> Result<&[u8], DiskError> {
        let left = usize::try_from(self.len.saturating_sub(offset)).unwrap_or(usize::MAX);
        let want = want.min(left);
        let inside = |start: u64, bytes: &[u8]| {
            let from = usize::try_from(offset.checked_sub(start)?).ok()?;
            let to = from.checked_add(want)?;
            (to <= bytes.len()).then_some(from..to)
        };
        if inside(self.start, &self.bytes).is_none() {
            let size = want.max(CHUNK as usize).min(left);
            self.bytes = read_salvaging(self.file, offset, size)?;
            self.start = offset;
        }
        Ok(inside(self.start, &self.bytes).and_then(|r| self.bytes.get(r)).unwrap_or_default())
    }
}

/// Reads a stretch of a file. A sector the disk refuses to read is filled with 0xFF, which can
/// pass for neither a frame nor an end, so that what stands before and after it can be read.
pub(super) fn read_salvaging(
    file: &dyn DiskFile,
    offset: u64,
    size: usize,
) -> Result<Vec<u8>, DiskError> {
    let mut bytes = vec![0u8; size];
    match file.read_at(offset, &mut bytes) {
        Ok(n) => {
            bytes.truncate(n);
            Ok(bytes)
        }
        Err(error) => {
            let mut any = false;
            for (sector, at) in bytes.chunks_mut(SECTOR).zip((offset..).step_by(SECTOR)) {
                match file.read_at(at, sector) {
                    Ok(_) => any = true,
                    Err(_) => sector.fill(0xff),
                }
            }
            // A file of which nothing can be read is a broken disk, not a damaged diary.
            if any { Ok(bytes) } else { Err(error) }
        }
    }
}

fn all_zero(bytes: &[u8]) -> bool {
    bytes.iter().all(|b| *b == 0)
}

/// What stands after the last frame that verifies and is not zero.
#[derive(Debug, Clone, Copy)]
struct Tail {
    /// Where it begins, and the prefix there if one can be read.
    at: u64,
    prefix: Option<Prefix>,
    /// Where it ends.
    end: u64,
    /// Whole sectors of zeros stand before it or inside it.
    holes: bool,
}

/// Reads every frame from `start` to the end of the file.
pub(super) fn scan(file: &dyn DiskFile, key: &FileKey, start: Start) -> Result<Scan, DiskError> {
    let mut window = Window::new(file, file.length()?);
    let mut found = Scan { end: start.offset, ..Scan::default() };
    let mut at = start.offset;
    let (mut last, mut tag) = (start.last, start.tag);
    let mut highest = start.last;
    let mut tail: Option<Tail> = None;
    // Something stands, or stood, where no sequence is amiss; and frames are not in order.
    let (mut unexplained, mut strays, mut disorder) = (false, false, false);
    while at < window.len {
        let next = at.saturating_add(SECTOR as u64).min(window.len);
        let bytes = window.get(at, SECTOR)?;
        if all_zero(bytes) {
            at = next;
            continue;
        }
        let too_short = bytes.len() < PREFIX;
        let prefix = frame::prefix(bytes);
        let cut = prefix.is_some_and(|p| at.saturating_add(p.len as u64) > window.len);
        let whole = match prefix.filter(|_| !cut) {
            Some(p) => frame::open(key, at, window.get(at, p.len)?),
            None => None,
        };
        let repeated = whole.as_ref().is_some_and(|f| {
            f.seq <= highest.unwrap_or(f.seq) && (Some(f.seq) <= start.last || has(&found, f.seq))
        });
        match whole {
            Some(frame) if !repeated => {
                // Zeros end the log: a frame behind a hole is out of its place.
                let follows = frame.first() == Seq::after(last) && frame.previous == tag;
                let gap = at != found.end;
                found.damaged |= !follows || gap;
                unexplained |= gap && frame.first() <= Seq::after(last);
                strays |= gap;
                disorder |= Some(frame.seq) < highest;
                (last, tag) = (Some(frame.seq), frame.tag);
                highest = highest.max(last);
                found.end = frame.end();
                at = found.end;
                tail = None;
                found.frames.push(frame);
            }
            other => {
                // A repeated frame stands where another one may have stood, like any stray bytes.
                let end = match other {
                    Some(frame) => frame.end(),
                    None if cut => window.len,
                    None => next,
                };
                // Torn is only what the end of the file cuts; anything else that fails is damage.
                found.torn |= cut || too_short;
                found.damaged |= !(cut || too_short);
                let ended = tail.map_or(found.end, |t| t.end);
                let begun = tail.unwrap_or(Tail { at, prefix, end: at, holes: false });
                tail = Some(Tail { end, holes: begun.holes || at > ended, ..begun });
                at = end;
            }
        }
    }
    let reach = tail.map_or(found.end, |t| t.end);
    found.shortened = reach.saturating_add(SECTOR as u64) > usable(window.len);
    settle_order(&mut found.frames, start.last);
    account(&mut found, start.last, tail, unexplained || strays && disorder);
    Ok(found)
}

/// Whether a frame of this sequence was found already.
fn has(found: &Scan, seq: Seq) -> bool {
    // Only asked when something is out of order, so going through all of them is no matter.
    found.frames.iter().any(|f| f.seq == seq)
}

/// Puts frames in order of sequence, each once.
fn settle_order(frames: &mut Vec<Frame>, before: Option<Seq>) {
    frames.sort_by_key(|f| f.seq);
    let mut last = before;
    frames.retain(|f| {
        let fresh = f.first() >= Seq::after(last);
        if fresh {
            last = Some(f.seq);
        }
        fresh
    });
}

/// Lists the holes between frames, the marks of holes found earlier, and what the tail has lost.
///
/// With `loose`, something has been moved about or lies between, and what the last entries were
/// cannot be told from what is left.
fn account(found: &mut Scan, before: Option<Seq>, tail: Option<Tail>, loose: bool) {
    let mut last = before;
    for f in &found.frames {
        let from = Seq::after(last);
        if let Some(through) = f.first().before().filter(|through| *through >= from) {
            found.missing.push(Missing { from, through, extent: Extent::Exactly, new: true });
        }
        if let Content::Gap { from, extent } = f.content {
            let extent = Extent::from_code(extent);
            found.missing.push(Missing { from, through: f.seq, extent, new: false });
        }
        last = Some(f.seq);
    }
    let from = Seq::after(last);
    let lost = match tail {
        Some(tail) => match tail_lost(tail, from, found.end, found.shortened) {
            (through, Extent::Exactly) if loose => Some((through, Extent::AtLeast)),
            told => Some(told),
        },
        None if found.shortened || loose => Some((from, Extent::Perhaps)),
        None => None,
    };
    if let Some((through, extent)) = lost {
        found.missing.push(Missing { from, through, extent, new: true });
    }
}

/// How much the tail has lost: one entry whose own prefix says where it ends, or at least one.
fn tail_lost(tail: Tail, from: Seq, end: u64, shortened: bool) -> (Seq, Extent) {
    let named = tail.prefix.filter(|p| p.seq >= from);
    let through = named.map_or(from, |p| p.seq);
    if shortened {
        return (through, Extent::AtLeast);
    }
    match named {
        Some(p) if tail.at == end && p.seq == from => {
            let frame_end = tail.at.saturating_add(p.len as u64);
            let unfinished = tail.holes || frame_end > tail.end;
            if tail.end > frame_end {
                (from, Extent::AtLeast)
            } else if unfinished {
                (from, Extent::Perhaps)
            } else {
                (from, Extent::Exactly)
            }
        }
        // Its beginning is zeros: a write whose first sector never arrived.
        None if tail.at > end => (from, Extent::Perhaps),
        _ => (through, Extent::AtLeast),
    }
}
