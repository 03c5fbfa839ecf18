//! Small values sealed for oneself: XChaCha20-Poly1305 (draft-irtf-cfrg-xchacha-03) under one key.
//!
//! `nonce, 24 random bytes | sealed bytes | tag, 16 bytes`. What the value is and where it belongs is bound
//! to it as additional data, so one put in another's place does not open.

use std::fmt;

use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};
use zeroize::Zeroizing;

use crate::ports::{Random, RandomError};

const NONCE: usize = 24;

/// A key for sealed values of one kind. Wiped when dropped, never printed.
#[derive(Clone)]
pub struct BoxKey(Zeroizing<[u8; 32]>);

/// Why a value was not sealed or opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum BoxError {
    /// No random bytes.
    #[error(transparent)]
    Random(#[from] RandomError),
    /// Not sealed with this key for this place, or changed since.
    #[error("this was changed, or was kept under other keys")]
    NotAuthentic,
}

impl BoxKey {
    pub(super) fn from_key(key: Zeroizing<[u8; 32]>) -> Self {
        Self(key)
    }

    /// Seals a value for a place.
    ///
    /// # Errors
    /// [`BoxError::Random`] when there are no random bytes.
    pub fn seal(
        &self,
        random: &dyn Random,
        place: &[u8],
        value: &[u8],
    ) -> Result<Vec<u8>, BoxError> {
        let mut nonce = [0u8; NONCE];
        random.fill(&mut nonce)?;
        let sealed = XChaCha20Poly1305::new((&*self.0).into())
            .encrypt(&XNonce::from(nonce), Payload { msg: value, aad: place })
            .map_err(|_| BoxError::NotAuthentic)?;
        Ok([nonce.as_slice(), &sealed].concat())
    }

    /// Opens what was sealed for the same place.
    ///
    /// # Errors
    /// [`BoxError::NotAuthentic`].
    pub fn open(&self, place: &[u8], sealed: &[u8]) -> Result<Zeroizing<Vec<u8>>, BoxError> {
        let (nonce, rest) = sealed.split_first_chunk::<NONCE>().ok_or(BoxError::NotAuthentic)?;
        XChaCha20Poly1305::new((&*self.0).into())
            .decrypt(&XNonce::from(*nonce), Payload { msg: rest, aad: place })
            .map(Zeroizing::new)
            .map_err(|_| BoxError::NotAuthentic)
    }
}

impl fmt::Debug for BoxKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("BoxKey(secret)")
    }
}
