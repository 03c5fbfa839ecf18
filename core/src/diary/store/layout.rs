//! The numbers of the stored format, each in one place. `FORMAT.md` draws the picture.

use std::num::NonZeroU64;

/// The only format there is so far. A file with a higher number is refused untouched.
pub(super) const FORMAT: u16 = 1;

/// The smallest piece a disk writes whole.
pub(super) const SECTOR: usize = 512;
/// The journal grows by this many bytes of zeros, and its length is always a multiple of it.
pub(super) const CHUNK: u64 = 64 * 1024;
/// A header or keys copy fills one of these.
pub(super) const BLOCK: usize = 4096;
/// Where the first frame stands: after two copies of the header.
pub(super) const FIRST_FRAME: u64 = 2 * BLOCK as u64;

/// Magic, length, sequence, zeros, checksum.
pub(super) const PREFIX: usize = 24;
pub(super) const NONCE: usize = 24;
pub(super) const TAG: usize = 16;
/// Everything in a frame that is not ciphertext.
pub(super) const AROUND: usize = PREFIX + NONCE + TAG;
/// Previous tag, kind, payload length.
pub(super) const INNER: usize = TAG + 1 + 4;
/// The longest frame.
pub(super) const FRAME_MOST: usize = 256 * 1024;

/// The longest entry the diary takes, in bytes.
pub const ENTRY_MOST: usize = FRAME_MOST - AROUND - INNER;

/// The authentication tag of a frame: sixteen bytes that no other content could have.
pub(super) type Tag = [u8; TAG];

/// Which file a frame belongs to: random, new for every journal file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct FileId(pub(super) [u8; 16]);

/// An entry's place in the diary: 1 for the first, never given twice, never changed.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize,
)]
#[serde(transparent)]
pub struct Seq(NonZeroU64);

impl Seq {
    /// The first entry's place.
    pub const FIRST: Seq = Seq(NonZeroU64::MIN);

    /// The place with this number; `None` for 0, which is the header's.
    #[must_use]
    pub fn new(number: u64) -> Option<Self> {
        NonZeroU64::new(number).map(Self)
    }

    /// Its number, from 1.
    #[must_use]
    pub fn get(self) -> u64 {
        self.0.get()
    }

    /// The place after it.
    #[must_use]
    pub fn next(self) -> Self {
        Self(self.0.saturating_add(1))
    }

    /// The place before it; `None` before the first.
    #[must_use]
    pub fn before(self) -> Option<Self> {
        Self::new(self.get() - 1)
    }

    /// The place after the last one there is; the first when there is none.
    pub(super) fn after(last: Option<Seq>) -> Self {
        last.map_or(Self::FIRST, Self::next)
    }
}

impl std::fmt::Display for Seq {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.fmt(f)
    }
}

/// Reads little-endian numbers and runs of bytes off the front of a slice; `None` past its end.
pub(super) struct Take<'a>(pub(super) &'a [u8]);

impl<'a> Take<'a> {
    pub(super) fn bytes(&mut self, n: usize) -> Option<&'a [u8]> {
        let (front, rest) = self.0.split_at_checked(n)?;
        self.0 = rest;
        Some(front)
    }

    pub(super) fn array<const N: usize>(&mut self) -> Option<[u8; N]> {
        self.bytes(N)?.try_into().ok()
    }

    pub(super) fn u8(&mut self) -> Option<u8> {
        self.array::<1>().map(|[b]| b)
    }

    pub(super) fn u16(&mut self) -> Option<u16> {
        self.array().map(u16::from_le_bytes)
    }

    pub(super) fn u32(&mut self) -> Option<u32> {
        self.array().map(u32::from_le_bytes)
    }

    pub(super) fn u64(&mut self) -> Option<u64> {
        self.array().map(u64::from_le_bytes)
    }
}
