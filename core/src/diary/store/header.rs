//! The journal's header: sequence 0. Which file this is, and its own key, wrapped.

use super::doubled::{self, BlockKind, Doubled};
use super::errors::OpenError;
use super::frame::FileKey;
use super::layout::{BLOCK, FORMAT, FileId, NONCE, TAG, Tag, Take};
use super::seal::SealKey;
use crate::ports::{DiskFile, Random, RandomError};
use zeroize::Zeroizing;

/// A header as stored: still sealed.
#[derive(Debug, Clone)]
pub(super) struct Header {
    id: FileId,
    nonce: [u8; NONCE],
    sealed: [u8; 32],
    tag: Tag,
    pub(super) copy_lost: bool,
}

/// What the wrapped key is bound to: file, sequence 0, format.
fn bound(id: FileId) -> Vec<u8> {
    [&id.0[..], &0u64.to_le_bytes(), &FORMAT.to_le_bytes()].concat()
}

/// A new file: its key, the tag its first frame names, and the bytes of both header copies.
pub(super) fn new(
    wrapper: &SealKey,
    random: &dyn Random,
) -> Result<(FileKey, Tag, Vec<u8>), RandomError> {
    let mut id = FileId([0u8; 16]);
    random.fill(&mut id.0)?;
    let key = SealKey::random(random)?;
    let mut nonce = [0u8; NONCE];
    random.fill(&mut nonce)?;
    let mut sealed = Zeroizing::new(*key.expose());
    // 32 bytes are never too long to seal.
    let tag = wrapper.seal(nonce, &bound(id), sealed.as_mut_slice()).unwrap_or_default();
    let body = [&id.0[..], &nonce, sealed.as_slice(), &tag].concat();
    let copies = doubled::block(BlockKind::Journal, &body).unwrap_or_default().repeat(2);
    Ok((FileKey { id, key }, tag, copies))
}

/// Reads whichever copy is whole. Needs no key, so that a newer format is refused first.
pub(super) fn read(file: &dyn DiskFile) -> Result<Header, OpenError> {
    let bytes = super::scan::read_salvaging(file, 0, 2 * BLOCK)?;
    match doubled::read(BlockKind::Journal, &bytes) {
        Doubled::Newer => Err(OpenError::NewerFormat),
        Doubled::BothLost | Doubled::Foreign => Err(OpenError::HeaderDamaged),
        Doubled::Read { body, other_lost } => {
            parse(&body, other_lost).ok_or(OpenError::HeaderDamaged)
        }
    }
}

fn parse(body: &[u8], copy_lost: bool) -> Option<Header> {
    let mut take = Take(body);
    Some(Header {
        id: FileId(take.array()?),
        nonce: take.array()?,
        sealed: take.array()?,
        tag: take.array::<TAG>()?,
        copy_lost,
    })
}

impl Header {
    /// The file's key, and the tag its first frame names. `None` under another data key.
    pub(super) fn open(&self, wrapper: &SealKey) -> Option<(FileKey, Tag)> {
        let mut key = Zeroizing::new(self.sealed);
        wrapper.open(self.nonce, &bound(self.id), key.as_mut_slice(), self.tag).ok()?;
        let key = SealKey::from_bytes(key.as_slice())?;
        Some((FileKey { id: self.id, key }, self.tag))
    }
}
