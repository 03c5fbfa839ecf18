//! Ed25519 signatures (RFC 8032), verified strictly, over a context and the exact bytes. The context says
//! what kind of thing is signed, so that a signature of one kind never passes for one of another.

use std::fmt;
use std::str::FromStr;

use data_encoding::BASE64;
use ed25519_dalek::{Signer, SigningKey, VerifyingKey};
use zeroize::Zeroizing;

/// A key that signs. Wiped when dropped, never printed.
#[derive(Clone)]
pub struct SignKey(SigningKey);

/// The public half of a key: what a signature is verified with.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct VerifyKey(VerifyingKey);

/// A signature.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Signature(ed25519_dalek::Signature);

/// The signature is not of these bytes by this key, or no signature at all.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("the signature does not fit: this was changed on the way, or somebody else signed it")]
pub struct BadSignature;

/// What is signed: the context's length and the context, then the bytes.
fn message(context: &str, bytes: &[u8]) -> Vec<u8> {
    let length = u32::try_from(context.len()).unwrap_or(u32::MAX).to_be_bytes();
    [&length[..], context.as_bytes(), bytes].concat()
}

impl SignKey {
    /// The key of a seed.
    #[must_use]
    pub fn from_seed(seed: &Zeroizing<[u8; 32]>) -> Self {
        Self(SigningKey::from_bytes(seed))
    }

    /// Its public half.
    #[must_use]
    pub fn public(&self) -> VerifyKey {
        VerifyKey(self.0.verifying_key())
    }

    /// Signs these bytes as this kind of thing.
    #[must_use]
    pub fn sign(&self, context: &str, bytes: &[u8]) -> Signature {
        Signature(self.0.sign(&message(context, bytes)))
    }
}

impl fmt::Debug for SignKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SignKey(secret)")
    }
}

impl VerifyKey {
    /// Verifies, strictly: no weak key and no second form of a signature passes.
    ///
    /// # Errors
    /// [`BadSignature`].
    pub fn verify(
        &self,
        context: &str,
        bytes: &[u8],
        signature: &Signature,
    ) -> Result<(), BadSignature> {
        let message = message(context, bytes);
        self.0.verify_strict(&message, &signature.0).map_err(|_| BadSignature)
    }

    /// Its 32 bytes.
    #[must_use]
    pub fn bytes(&self) -> [u8; 32] {
        self.0.to_bytes()
    }
}

fn base64<const N: usize>(text: &str) -> Result<[u8; N], BadSignature> {
    let bytes = BASE64.decode(text.as_bytes()).map_err(|_| BadSignature)?;
    bytes.try_into().map_err(|_| BadSignature)
}

impl FromStr for VerifyKey {
    type Err = BadSignature;
    fn from_str(text: &str) -> Result<Self, BadSignature> {
        VerifyingKey::from_bytes(&base64(text)?).map(Self).map_err(|_| BadSignature)
    }
}

impl fmt::Display for VerifyKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&BASE64.encode(self.0.as_bytes()))
    }
}

impl fmt::Debug for VerifyKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl FromStr for Signature {
    type Err = BadSignature;
    fn from_str(text: &str) -> Result<Self, BadSignature> {
        Ok(Self(ed25519_dalek::Signature::from_bytes(&base64(text)?)))
    }
}

impl fmt::Display for Signature {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&BASE64.encode(&self.0.to_bytes()))
    }
}

impl fmt::Debug for Signature {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}
