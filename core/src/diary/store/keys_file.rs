//! The `keys` file: the wraps of the data key, one per keeper, and the sealed card, in two copies. Leaves what stands in
//! a wrap to the keepers of [`crate::ports`], and how two copies outlast a torn write to [`super::doubled`].

use super::doubled::{self, BlockKind, Doubled};
use super::errors::{CreateError, OpenError};
use super::layout::{BLOCK, Take};
use super::sealed::{Names, create_afresh, replace_file};
use crate::ports::{Disk, DiskError, DiskFile, KeeperKind, SyncFor, WRAP_MOST};
use std::path::Path;

/// The file's name.
pub(super) const NAME: &str = "keys";
/// The file's length, in bytes.
pub(super) const LEN: usize = 2 * BLOCK;

/// What the keys file says.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(super) struct Keys {
    /// Keeper kind and wrap.
    pub(super) wraps: Vec<(u16, Vec<u8>)>,
    /// The sealed card; diaries made before there were cards have none.
    pub(super) card: Option<Vec<u8>>,
}

/// The keys file as read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct KeysFile {
    pub(super) keys: Keys,
    pub(super) copy_lost: bool,
}

impl Keys {
    /// The wrap of this sort of keeper.
    pub(super) fn wrap_of(&self, kind: KeeperKind) -> Option<&[u8]> {
        self.wraps.iter().find(|(k, _)| *k == kind.code()).map(|(_, wrap)| wrap.as_slice())
    }

    /// Takes a wrap up in place of the one of the same sort.
    pub(super) fn put(&mut self, kind: KeeperKind, wrap: Vec<u8>) {
        self.wraps.retain(|(k, _)| *k != kind.code());
        self.wraps.push((kind.code(), wrap));
    }

    /// Both copies.
    pub(super) fn bytes(&self) -> Result<Vec<u8>, CreateError> {
        let mut body = Vec::new();
        body.extend_from_slice(&short(self.wraps.len()).to_le_bytes());
        for (kind, wrap) in &self.wraps {
            if wrap.len() > WRAP_MOST {
                return Err(CreateError::WrapTooLong);
            }
            body.extend_from_slice(&kind.to_le_bytes());
            body.extend_from_slice(&short(wrap.len()).to_le_bytes());
            body.extend_from_slice(wrap);
        }
        if let Some(card) = &self.card {
            body.extend_from_slice(&short(card.len()).to_le_bytes());
            body.extend_from_slice(card);
        }
        let copy = doubled::block(BlockKind::Keys, &body).ok_or(CreateError::WrapTooLong)?;
        Ok(copy.repeat(2))
    }

    fn parse(body: &[u8]) -> Option<Self> {
        let mut take = Take(body);
        let count = take.u16()?;
        let mut wraps = Vec::new();
        for _ in 0..count {
            let kind = take.u16()?;
            let len = usize::from(take.u16()?);
            wraps.push((kind, take.bytes(len)?.to_vec()));
        }
        let card = match take.u16() {
            Some(len) => Some(take.bytes(usize::from(len))?.to_vec()),
            None => None,
        };
        Some(Self { wraps, card })
    }
}

fn short(number: usize) -> u16 {
    u16::try_from(number).unwrap_or(u16::MAX)
}

/// Replaces the file, all or nothing.
pub(super) fn write(disk: &dyn Disk, folder: &Path, keys: &Keys) -> Result<(), CreateError> {
    let names = Names { content: SyncFor::KeysContent, name: SyncFor::KeysName };
    let (new, path) = (folder.join("keys.new"), folder.join(NAME));
    let old = disk.open(&path).ok();
    replace_file(disk, folder, &new, &path, &keys.bytes()?, names)?;
    if let Some(old) = old {
        // The file has lost its name; its sectors still hold wraps that a later erase could not reach.
        let _ = old.write_at(0, &vec![0u8; LEN]).and_then(|()| old.sync_data(SyncFor::Shredded));
    }
    Ok(())
}

/// Writes the file under a name that means nothing yet, and syncs its content.
pub(super) fn stage(disk: &dyn Disk, path: &Path, keys: &Keys) -> Result<(), CreateError> {
    let bytes = keys.bytes()?;
    let file = create_afresh(disk, path)?;
    file.write_at(0, &bytes)?;
    Ok(file.sync_data(SyncFor::KeysContent)?)
}

/// Reads whichever copy is whole.
pub(super) fn read(disk: &dyn Disk, folder: &Path) -> Result<KeysFile, OpenError> {
    let file = match disk.open(&folder.join(NAME)) {
        Ok(file) => file,
        Err(DiskError::NotFound) => return Err(OpenError::KeysMissing),
        Err(other) => return Err(other.into()),
    };
    let mut read = read_from(file.as_ref())?;
    read.copy_lost |= file.length()? != LEN as u64;
    Ok(read)
}

/// Reads the two copies at the beginning of a file.
pub(super) fn read_from(file: &dyn DiskFile) -> Result<KeysFile, OpenError> {
    let bytes = super::scan::read_salvaging(file, 0, LEN)?;
    match doubled::read(BlockKind::Keys, &bytes) {
        Doubled::Newer => Err(OpenError::NewerFormat),
        Doubled::BothLost | Doubled::Foreign => Err(OpenError::KeysDamaged),
        Doubled::Read { body, other_lost } => {
            let keys = Keys::parse(&body).ok_or(OpenError::KeysDamaged)?;
            Ok(KeysFile { keys, copy_lost: other_lost })
        }
    }
}
