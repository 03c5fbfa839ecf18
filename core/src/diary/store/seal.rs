//! Sealing: one key per purpose, one fresh nonce per sealing. Leaves who keeps the data key to [`crate::ports`], and
//! where sealed bytes lie to the files beside this one.

use super::layout::{NONCE, TAG, Tag};
use crate::ports::{DataKey, Random, RandomError};
use chacha20poly1305::aead::{AeadInOut, KeyInit};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use hkdf::Hkdf;
use sha2::{Digest, Sha256};
use std::fmt;
use zeroize::Zeroizing;

/// What a key derived from the data key is for. Keys of different purposes have nothing in common,
/// so bytes sealed for one can never pass for another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// Wraps a journal's file key.
    Journal = 1,
    /// Seals the snapshot of the folded state.
    Snapshot = 2,
    /// Seals the practice that is running.
    Running = 3,
    /// Seals rebuildable indexes.
    Index = 4,
    /// Wraps the file key of a backup kept on this device, and seals what it says about itself.
    Backup = 5,
    /// Seals what the diary is known by.
    Card = 6,
    /// Fingerprints an entry for the mark kept outside.
    Mark = 7,
}

impl Purpose {
    /// The HKDF info string; part of the stored format, never changed.
    pub(super) fn label(self) -> &'static [u8] {
        match self {
            Purpose::Journal => b"frond 1 journal",
            Purpose::Snapshot => b"frond 1 snapshot",
            Purpose::Running => b"frond 1 running",
            Purpose::Index => b"frond 1 index",
            Purpose::Backup => b"frond 1 backup",
            Purpose::Card => b"frond 1 card",
            Purpose::Mark => b"frond 1 mark",
        }
    }
}

/// A key that seals for one purpose. Wiped when dropped, never printed.
#[derive(Clone)]
pub struct SealKey(Zeroizing<[u8; 32]>);

impl fmt::Debug for SealKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SealKey(secret)")
    }
}

/// The bytes were not sealed with this key for this place, or have changed since.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct NotAuthentic;

impl SealKey {
    /// The key for this purpose: HKDF-SHA256 (RFC 5869) of the data key, without salt.
    pub(super) fn derive(data_key: &DataKey, purpose: Purpose) -> Self {
        let mut key = Zeroizing::new([0u8; 32]);
        // 32 bytes are always within what HKDF can give, so this cannot fail.
        let given = Hkdf::<Sha256>::new(None, data_key.expose())
            .expand(purpose.label(), key.as_mut_slice());
        debug_assert!(given.is_ok());
        Self(key)
    }

    /// A random key of its own, for one file.
    pub(super) fn random(random: &dyn Random) -> Result<Self, RandomError> {
        let mut key = Zeroizing::new([0u8; 32]);
        random.fill(key.as_mut_slice())?;
        Ok(Self(key))
    }

    pub(super) fn from_bytes(bytes: &[u8]) -> Option<Self> {
        let mut key = Zeroizing::new([0u8; 32]);
        if bytes.len() != key.len() {
            return None;
        }
        key.copy_from_slice(bytes);
        Some(Self(key))
    }

    pub(super) fn expose(&self) -> &[u8; 32] {
        &self.0
    }

    /// Sixteen bytes that no other content at this place has, and that tell nothing without the key.
    pub(super) fn fingerprint(&self, place: u64, content: &[u8]) -> [u8; 16] {
        let digest = Sha256::digest(content);
        let mut out = [0u8; 16];
        // So few bytes are always within what HKDF can give, so this cannot fail.
        let given = Hkdf::<Sha256>::new(None, self.0.as_slice())
            .expand_multi_info(&[&place.to_le_bytes(), digest.as_slice()], &mut out);
        debug_assert!(given.is_ok());
        out
    }

    /// Seals `text` in place.
    pub(super) fn seal(
        &self,
        nonce: [u8; NONCE],
        bound: &[u8],
        text: &mut [u8],
    ) -> Result<Tag, NotAuthentic> {
        XChaCha20Poly1305::new((&*self.0).into())
            .encrypt_inout_detached(&XNonce::from(nonce), bound, text.into())
            .map(Into::into)
            .map_err(|_| NotAuthentic)
    }

    /// Opens `text` in place; on failure its content is meaningless.
    pub(super) fn open(
        &self,
        nonce: [u8; NONCE],
        bound: &[u8],
        text: &mut [u8],
        tag: Tag,
    ) -> Result<(), NotAuthentic> {
        debug_assert_eq!(tag.len(), TAG);
        XChaCha20Poly1305::new((&*self.0).into())
            .decrypt_inout_detached(&XNonce::from(nonce), bound, text.into(), &tag.into())
            .map_err(|_| NotAuthentic)
    }
}
