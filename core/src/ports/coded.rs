//! A key keeper with a code of the app's own around a phone's key store.
//!
//! The wrap begins with one byte that says what opens it.
//!
//! - `0`: no code. The rest is the phone's own wrap of the data key.
//! - `1`: a code as well, little-endian: memory in KiB (4 bytes), passes (4), lanes (4), salt (16), nonce (24),
//!   sealed data key (32) and tag (16), then the phone's wrap of a helper key made for this wrap alone. The
//!   data key is sealed with XChaCha20-Poly1305 under what Argon2id makes of the code, the salt and, as the
//!   secret value K (RFC 9106, section 3.1), the helper key. The first 29 bytes are bound to it.
//!
//! So whoever has the files alone cannot try codes: each try needs the phone's key store too. And whoever has
//! the unlocked phone needs the code. A byte that is neither was written by a newer program. Stored format: it
//! opens for ever.
//!
//! Decides how the two are put together. How often a code may be tried belongs to [`crate::whole`].

use super::keys::{DataKey, KeeperError, KeeperKind, KeyKeeper};
use super::passphrase::{Passphrase, Stretch, stretch};
use super::random::Random;
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use zeroize::Zeroizing;

const WITHOUT: u8 = 0;
const WITH: u8 = 1;
const SALT: std::ops::Range<usize> = 13..29;
const NONCE: std::ops::Range<usize> = 29..53;
const SEALED: std::ops::Range<usize> = 53..101;
/// Where the phone's wrap begins behind a code.
const HEAD: usize = 101;

/// A phone's keeper, and the code if there is one.
#[derive(Debug)]
pub struct CodedKeeper<'a> {
    phone: &'a dyn KeyKeeper,
    code: Option<&'a Passphrase>,
    stretch: Stretch,
}

impl<'a> CodedKeeper<'a> {
    /// Wraps with this code, and opens what asks for one with it.
    #[must_use]
    pub fn new(
        phone: &'a dyn KeyKeeper,
        code: Option<&'a Passphrase>,
        stretch: Stretch,
    ) -> CodedKeeper<'a> {
        CodedKeeper { phone, code, stretch }
    }
}

/// The key of the code and the helper key together.
fn both(
    code: &Passphrase,
    helper: &DataKey,
    salt: &[u8],
    how: Stretch,
) -> Result<Zeroizing<[u8; 32]>, KeeperError> {
    let mut key = Zeroizing::new([0u8; 32]);
    stretch(code.expose().as_bytes(), helper.expose(), salt, how, key.as_mut_slice())?;
    Ok(key)
}

fn number(head: &[u8; HEAD], at: usize) -> u32 {
    let mut four = [0u8; 4];
    for (to, from) in four.iter_mut().zip(head.iter().skip(at)) {
        *to = *from;
    }
    u32::from_le_bytes(four)
}

/// The phone's own wrap within ours, whatever opens it.
fn phones(wrap: &[u8]) -> Result<&[u8], KeeperError> {
    match wrap.split_first() {
        Some((&WITHOUT, rest)) => Ok(rest),
        Some((&WITH, _)) => wrap.get(HEAD..).ok_or(KeeperError::WrapDamaged),
        Some(_) => Err(KeeperError::Newer),
        None => Err(KeeperError::WrapDamaged),
    }
}

impl KeyKeeper for CodedKeeper<'_> {
    fn kind(&self) -> KeeperKind {
        self.phone.kind()
    }

    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        let Some(code) = self.code else {
            let mut wrap = vec![WITHOUT];
            wrap.extend(self.phone.wrap(key, random)?);
            return Ok(wrap);
        };
        let mut head = [0u8; HEAD];
        head[0] = WITH;
        head[1..5].copy_from_slice(&self.stretch.memory_kib.to_le_bytes());
        head[5..9].copy_from_slice(&self.stretch.passes.to_le_bytes());
        head[9..13].copy_from_slice(&self.stretch.lanes.to_le_bytes());
        random.fill(&mut head[SALT.start..NONCE.end])?;
        let helper = DataKey::new(random)?;
        let stretched = both(code, &helper, &head[SALT], self.stretch)?;
        let mut nonce = XNonce::default();
        nonce.copy_from_slice(&head[NONCE]);
        let sealed = XChaCha20Poly1305::new((&*stretched).into())
            .encrypt(&nonce, Payload { msg: key.expose(), aad: &head[..SALT.end] })
            .map_err(|_| KeeperError::WrapDamaged)?;
        head[SEALED].copy_from_slice(&sealed);
        let mut wrap = head.to_vec();
        wrap.extend(self.phone.wrap(&helper, random)?);
        Ok(wrap)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let phones = phones(wrap)?;
        if wrap.first() == Some(&WITHOUT) {
            return self.phone.unwrap(phones);
        }
        let head: &[u8; HEAD] = wrap.first_chunk().ok_or(KeeperError::WrapDamaged)?;
        let stored = Stretch {
            memory_kib: number(head, 1),
            passes: number(head, 5),
            lanes: number(head, 9),
        };
        if !self.stretch.believes(stored) {
            return Err(KeeperError::WrapDamaged);
        }
        let code = self.code.ok_or(KeeperError::CodeAsked)?;
        let helper = self.phone.unwrap(phones)?;
        let stretched = both(code, &helper, &head[SALT], stored)?;
        let mut nonce = XNonce::default();
        nonce.copy_from_slice(&head[NONCE]);
        let opened = XChaCha20Poly1305::new((&*stretched).into())
            .decrypt(&nonce, Payload { msg: &head[SEALED], aad: &head[..SALT.end] })
            .map(Zeroizing::new)
            .map_err(|_| KeeperError::WrongSecret)?;
        let mut key = Zeroizing::new([0u8; 32]);
        if opened.len() != key.len() {
            return Err(KeeperError::WrapDamaged);
        }
        key.copy_from_slice(&opened);
        Ok(DataKey::from_bytes(key))
    }

    fn keep_only(&self, wrap: &[u8]) {
        if let Ok(phones) = phones(wrap) {
            self.phone.keep_only(phones);
        }
    }

    fn forget(&self) {
        self.phone.forget();
    }
}

#[cfg(test)]
#[path = "coded_tests.rs"]
mod tests;
