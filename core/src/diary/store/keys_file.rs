//! The `keys` file: the wraps of the data key, one per keeper, in two copies.

use super::doubled::{self, BlockKind, Doubled};
use super::errors::{CreateError, OpenError};
use super::layout::{BLOCK, Take};
use super::sealed::{Names, replace_file};
use crate::ports::{Disk, DiskError, KeeperKind, SyncFor, WRAP_MOST};
use std::path::Path;

/// The file's name.
pub(super) const NAME: &str = "keys";

/// What the keys file says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct KeysFile {
    /// Keeper kind and wrap.
    pub(super) wraps: Vec<(u16, Vec<u8>)>,
    pub(super) copy_lost: bool,
}

impl KeysFile {
    /// The wrap of this sort of keeper.
    pub(super) fn wrap_of(&self, kind: KeeperKind) -> Option<&[u8]> {
        self.wraps.iter().find(|(k, _)| *k == kind.code()).map(|(_, wrap)| wrap.as_slice())
    }
}

/// Writes both copies, all or nothing.
pub(super) fn write(
    disk: &dyn Disk,
    folder: &Path,
    wraps: &[(u16, Vec<u8>)],
) -> Result<(), CreateError> {
    let mut body = Vec::new();
    body.extend_from_slice(&u16::try_from(wraps.len()).unwrap_or(u16::MAX).to_le_bytes());
    for (kind, wrap) in wraps {
        if wrap.len() > WRAP_MOST {
            return Err(CreateError::WrapTooLong);
        }
        body.extend_from_slice(&kind.to_le_bytes());
        body.extend_from_slice(&u16::try_from(wrap.len()).unwrap_or(u16::MAX).to_le_bytes());
        body.extend_from_slice(wrap);
    }
    let copy = doubled::block(BlockKind::Keys, &body).ok_or(CreateError::WrapTooLong)?;
    let names = Names { content: SyncFor::KeysContent, name: SyncFor::KeysName };
    let (new, path) = (folder.join("keys.new"), folder.join(NAME));
    Ok(replace_file(disk, folder, &new, &path, &copy.repeat(2), names)?)
}

/// Reads whichever copy is whole.
pub(super) fn read(disk: &dyn Disk, folder: &Path) -> Result<KeysFile, OpenError> {
    let file = match disk.open(&folder.join(NAME)) {
        Ok(file) => file,
        Err(DiskError::NotFound) => return Err(OpenError::KeysMissing),
        Err(other) => return Err(other.into()),
    };
    let bytes = super::scan::read_salvaging(file.as_ref(), 0, 2 * BLOCK)?;
    match doubled::read(BlockKind::Keys, &bytes) {
        Doubled::Newer => Err(OpenError::NewerFormat),
        Doubled::BothLost | Doubled::Foreign => Err(OpenError::KeysDamaged),
        Doubled::Read { body, other_lost } => {
            let wraps = parse(&body).ok_or(OpenError::KeysDamaged)?;
            Ok(KeysFile { wraps, copy_lost: other_lost || file.length()? != 2 * BLOCK as u64 })
        }
    }
}

fn parse(body: &[u8]) -> Option<Vec<(u16, Vec<u8>)>> {
    let mut take = Take(body);
    let count = take.u16()?;
    (0..count)
        .map(|_| {
            let kind = take.u16()?;
            let len = usize::from(take.u16()?);
            Some((kind, take.bytes(len)?.to_vec()))
        })
        .collect()
}
