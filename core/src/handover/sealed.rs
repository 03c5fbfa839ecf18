//! Sealing a link under spoken words: Argon2id (RFC 9106), then XChaCha20-Poly1305.
//!
//! What is stretched is a random salt of 16 bytes and the words; key and nonce both come out of the
//! stretching, so that a link carries no nonce. A salt is used once. The cost is fixed by the link's
//! version: a link cannot ask a phone for more. Overhead: 16 bytes of salt and 16 of tag.

use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use zeroize::Zeroizing;

use super::{HandOverError, SpokenWords};
use crate::ports::{KeeperError, Stretch, stretch};

/// Bytes of salt.
pub(super) const SALT: usize = 16;

const KEY: usize = 32;
const NONCE: usize = 24;

/// Stretched words of one link.
struct Stretched {
    cipher: XChaCha20Poly1305,
    nonce: XNonce,
}

impl Stretched {
    fn of(words: &SpokenWords, salt: &[u8], cost: Stretch) -> Result<Self, HandOverError> {
        let mut made = Zeroizing::new([0u8; KEY + NONCE]);
        stretch(words.secret(), &[], salt, cost, made.as_mut_slice())
            .map_err(|_: KeeperError| HandOverError::NoRoom)?;
        let (key, rest) = made.split_first_chunk::<KEY>().ok_or(HandOverError::NoRoom)?;
        let mut nonce = XNonce::default();
        for (to, from) in nonce.iter_mut().zip(rest) {
            *to = *from;
        }
        Ok(Self { cipher: XChaCha20Poly1305::new(key.into()), nonce })
    }
}

/// Seals; `head` is bound to what is sealed.
pub(super) fn seal(
    plain: &[u8],
    head: &[u8],
    salt: &[u8],
    words: &SpokenWords,
    cost: Stretch,
) -> Result<Vec<u8>, HandOverError> {
    let made = Stretched::of(words, salt, cost)?;
    made.cipher
        .encrypt(&made.nonce, Payload { msg: plain, aad: head })
        .map_err(|_| HandOverError::NoRoom)
}

/// Opens what [`seal`] made with the same words, salt and head.
pub(super) fn open(
    sealed: &[u8],
    head: &[u8],
    salt: &[u8],
    words: &SpokenWords,
    cost: Stretch,
) -> Result<Vec<u8>, HandOverError> {
    let made = Stretched::of(words, salt, cost)?;
    made.cipher
        .decrypt(&made.nonce, Payload { msg: sealed, aad: head })
        .map_err(|_| HandOverError::WrongWords)
}
