//! Small, precious content written twice: the journal's header, the wraps of the data key, what a
//! backup says about itself.
//!
//! Two copies, each a block of 4096 bytes with a checksum over all of it, so that any changed byte
//! shows and the other copy serves. The checksum finds accidents; what must withstand intent is
//! sealed inside.

use super::layout::{BLOCK, FORMAT, Take};

/// What a doubled block holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum BlockKind {
    Journal,
    Keys,
    /// What a backup says about itself.
    Backup,
}

impl BlockKind {
    fn magic(self) -> [u8; 4] {
        match self {
            BlockKind::Journal => *b"FRJ\x1a",
            BlockKind::Keys => *b"FRK\x1a",
            BlockKind::Backup => *b"FRB\x1a",
        }
    }
}

/// The most a block can hold: all but magic, version, length and checksum.
pub(super) const BODY_MOST: usize = BLOCK - 4 - 2 - 2 - 4;

/// The outcome of reading two copies.
#[derive(Debug, PartialEq, Eq)]
pub(super) enum Doubled {
    /// A copy is whole; `other_lost` when the other is not, or differs.
    Read { body: Vec<u8>, other_lost: bool },
    /// A newer program wrote it.
    Newer,
    /// Neither copy is whole, and at least one once was such a block.
    BothLost,
    /// Nothing says that this ever was such a file.
    Foreign,
}

/// One copy. `None` when the body is too long to fit.
pub(super) fn block(kind: BlockKind, body: &[u8]) -> Option<Vec<u8>> {
    if body.len() > BODY_MOST {
        return None;
    }
    let mut out = Vec::with_capacity(BLOCK);
    out.extend_from_slice(&kind.magic());
    out.extend_from_slice(&FORMAT.to_le_bytes());
    out.extend_from_slice(&u16::try_from(body.len()).ok()?.to_le_bytes());
    out.extend_from_slice(body);
    out.resize(BLOCK - 4, 0);
    let sum = crc32c::crc32c(&out);
    out.extend_from_slice(&sum.to_le_bytes());
    Some(out)
}

enum One {
    Whole(Vec<u8>),
    Newer,
    Lost { had_magic: bool },
}

fn one(kind: BlockKind, bytes: &[u8]) -> One {
    let had_magic = bytes.get(..4) == Some(&kind.magic()[..]);
    let parsed = || {
        let bytes = bytes.get(..BLOCK)?;
        let (content, sum) = bytes.split_at_checked(BLOCK - 4)?;
        if !had_magic || Take(sum).u32()? != crc32c::crc32c(content) {
            return None;
        }
        let mut take = Take(content);
        take.bytes(4)?;
        if take.u16()? > FORMAT {
            return Some(One::Newer);
        }
        let len = usize::from(take.u16()?);
        Some(One::Whole(take.bytes(len)?.to_vec()))
    };
    parsed().unwrap_or(One::Lost { had_magic })
}

/// Reads two copies that stand one after the other.
pub(super) fn read(kind: BlockKind, bytes: &[u8]) -> Doubled {
    let second = bytes.get(BLOCK..).unwrap_or_default();
    match (one(kind, bytes), one(kind, second)) {
        (One::Newer, _) | (_, One::Newer) => Doubled::Newer,
        (One::Whole(body), One::Whole(other)) => {
            let other_lost = body != other;
            Doubled::Read { body, other_lost }
        }
        (One::Whole(body), One::Lost { .. }) | (One::Lost { .. }, One::Whole(body)) => {
            Doubled::Read { body, other_lost: true }
        }
        (One::Lost { had_magic: false }, One::Lost { had_magic: false }) => Doubled::Foreign,
        (One::Lost { .. }, One::Lost { .. }) => Doubled::BothLost,
    }
}
