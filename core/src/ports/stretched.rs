//! A data key sealed under a stretched secret: the 101 bytes that the wrap of a passphrase is, and that the wrap of
//! a code begins with. Decides where each number lies and what is bound to what. Leaves what is stretched to
//! [`super::passphrase`] and [`super::coded`], and to them as well which settings are believed.
//!
//! Little-endian: version (1 byte, 1), memory in KiB (4), passes (4), lanes (4), salt (16), nonce (24), sealed key
//! (32) and tag (16). XChaCha20-Poly1305; everything before the nonce is bound to the sealed key as additional data.
//! Stored format: it opens for ever.

use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use zeroize::Zeroizing;

use super::keys::{DataKey, KeeperError};
use super::passphrase::Stretch;
use super::random::{Random, RandomError};

/// The first byte.
pub(super) const VERSION: u8 = 1;
const SALT: std::ops::Range<usize> = 13..29;
const NONCE: std::ops::Range<usize> = 29..53;
const SEALED: std::ops::Range<usize> = 53..101;
/// How long it is, in bytes.
pub(super) const LEN: usize = 101;

/// A wrap, or the beginning of one, that may not hold a key yet.
pub(super) struct StretchedWrap([u8; LEN]);

impl StretchedWrap {
    /// With these settings and a salt and nonce of its own; without a key.
    pub(super) fn new(how: Stretch, random: &dyn Random) -> Result<Self, RandomError> {
        let mut wrap = [0u8; LEN];
        wrap[0] = VERSION;
        wrap[1..5].copy_from_slice(&how.memory_kib.to_le_bytes());
        wrap[5..9].copy_from_slice(&how.passes.to_le_bytes());
        wrap[9..13].copy_from_slice(&how.lanes.to_le_bytes());
        random.fill(&mut wrap[SALT.start..NONCE.end])?;
        Ok(Self(wrap))
    }

    /// The one that these bytes begin with; `None` where they are too few or of another version.
    pub(super) fn read(bytes: &[u8]) -> Option<Self> {
        bytes.first_chunk().filter(|wrap| wrap[0] == VERSION).map(|wrap| Self(*wrap))
    }

    /// The settings it names. Not to be used before they are believed.
    pub(super) fn how(&self) -> Stretch {
        Stretch { memory_kib: self.number(1), passes: self.number(5), lanes: self.number(9) }
    }

    fn number(&self, at: usize) -> u32 {
        let mut four = [0u8; 4];
        for (to, from) in four.iter_mut().zip(self.0.iter().skip(at)) {
            *to = *from;
        }
        u32::from_le_bytes(four)
    }

    /// What the secret is stretched with.
    pub(super) fn salt(&self) -> &[u8] {
        &self.0[SALT]
    }

    fn nonce(&self) -> XNonce {
        let mut nonce = XNonce::default();
        nonce.copy_from_slice(&self.0[NONCE]);
        nonce
    }

    /// The whole, with `key` sealed in it.
    pub(super) fn seal(
        mut self,
        stretched: &[u8; 32],
        key: &DataKey,
    ) -> Result<[u8; LEN], KeeperError> {
        let sealed = XChaCha20Poly1305::new(stretched.into())
            .encrypt(&self.nonce(), Payload { msg: key.expose(), aad: &self.0[..SALT.end] })
            .map_err(|_| KeeperError::WrapDamaged)?;
        self.0[SEALED].copy_from_slice(&sealed);
        Ok(self.0)
    }

    /// The key in it; [`KeeperError::WrongSecret`] where another secret was stretched.
    pub(super) fn open(&self, stretched: &[u8; 32]) -> Result<DataKey, KeeperError> {
        let opened = XChaCha20Poly1305::new(stretched.into())
            .decrypt(&self.nonce(), Payload { msg: &self.0[SEALED], aad: &self.0[..SALT.end] })
            .map(Zeroizing::new)
            .map_err(|_| KeeperError::WrongSecret)?;
        let mut key = Zeroizing::new([0u8; 32]);
        if opened.len() != key.len() {
            return Err(KeeperError::WrapDamaged);
        }
        key.copy_from_slice(&opened);
        Ok(DataKey::from_bytes(key))
    }
}
