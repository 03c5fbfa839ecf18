//! Signing and verifying: Ed25519 (RFC 8032), verified strictly.
//!
//! A signature covers a context and the exact bytes: `length of the context, 8 bytes little-endian |
//! context | bytes`. The length in front leaves one way only to read that, so bytes signed as one
//! thing never pass as another. Bytes that have verified come as [`Verified`]: what asks for that
//! type cannot parse before verifying. Who signs what, and which key is trusted, is decided elsewhere.

use crate::ports::{Random, RandomError};
use data_encoding::BASE64;
use ed25519_dalek::{Signer, SigningKey as Ed25519, VerifyingKey};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use std::fmt;
use zeroize::Zeroizing;

/// What a signature is for. Part of the stored format: a text once used never changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Context(&'static str);

impl Context {
    /// A context of this text.
    #[must_use]
    pub const fn new(text: &'static str) -> Self {
        Self(text)
    }

    fn message(self, bytes: &[u8]) -> Vec<u8> {
        let mut message = Vec::with_capacity(8 + self.0.len() + bytes.len());
        message.extend_from_slice(&(self.0.len() as u64).to_le_bytes());
        message.extend_from_slice(self.0.as_bytes());
        message.extend_from_slice(bytes);
        message
    }
}

/// The signature does not belong to these bytes, this context and this key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error(
    "the signature does not match: the file was altered or comes from somebody else; ask for it again"
)]
pub struct NotGenuine;

/// A text that is no key or signature.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SigningTextError {
    /// Not a public signing key.
    #[error("this is no signing key; copy the whole key again")]
    Key,
    /// Not a signature.
    #[error("this is no signature; get the file once more from where it came from")]
    Signature,
}

/// A secret signing key. Wiped when dropped, never printed. It lies in one place however often it is handed on: what
/// is moved leaves a copy on the stack that nobody wipes.
pub struct SigningKey(Box<Ed25519>);

impl SigningKey {
    /// A new key.
    ///
    /// # Errors
    /// [`RandomError`] when there are no random bytes.
    pub fn new(random: &dyn Random) -> Result<Self, RandomError> {
        let mut seed = Zeroizing::new([0u8; 32]);
        random.fill(seed.as_mut_slice())?;
        Ok(Self::from_seed(&seed))
    }

    /// The key of this seed (RFC 8032 calls it the private key).
    #[must_use]
    pub fn from_seed(seed: &Zeroizing<[u8; 32]>) -> Self {
        Self(Box::new(Ed25519::from_bytes(seed)))
    }

    /// The seed, to be kept sealed.
    #[must_use]
    pub fn seed(&self) -> Zeroizing<[u8; 32]> {
        // Not `to_bytes`: it would leave a copy on the stack.
        let mut seed = Zeroizing::new([0u8; 32]);
        seed.copy_from_slice(self.0.as_bytes());
        seed
    }

    /// The public half.
    #[must_use]
    pub fn verify_key(&self) -> VerifyKey {
        VerifyKey(self.0.verifying_key())
    }

    /// Signs the bytes for the context.
    #[must_use]
    pub fn sign(&self, context: Context, bytes: &[u8]) -> Signature {
        Signature(self.0.sign(&context.message(bytes)))
    }
}

impl fmt::Debug for SigningKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SigningKey(secret)")
    }
}

/// A public signing key. Stored as [its text](VerifyKey::to_text).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct VerifyKey(VerifyingKey);

impl TryFrom<String> for VerifyKey {
    type Error = SigningTextError;
    fn try_from(text: String) -> Result<Self, SigningTextError> {
        Self::parse(&text)
    }
}

impl From<VerifyKey> for String {
    fn from(key: VerifyKey) -> Self {
        key.to_text()
    }
}

impl JsonSchema for VerifyKey {
    fn schema_name() -> Cow<'static, str> {
        "VerifyKey".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "pattern": "^[A-Za-z0-9+/]{43}=$" })
    }
}

impl VerifyKey {
    /// A key of 32 bytes.
    ///
    /// # Errors
    /// [`SigningTextError::Key`] when they are no point of the curve, or a weak one, for which
    /// anybody could make signatures.
    pub fn from_bytes(bytes: &[u8; 32]) -> Result<Self, SigningTextError> {
        match VerifyingKey::from_bytes(bytes) {
            Ok(key) if !key.is_weak() => Ok(Self(key)),
            _ => Err(SigningTextError::Key),
        }
    }

    /// The key's 32 bytes.
    #[must_use]
    pub fn to_bytes(&self) -> [u8; 32] {
        self.0.to_bytes()
    }

    /// The key as base64 (RFC 4648 section 4), 44 characters.
    #[must_use]
    pub fn to_text(&self) -> String {
        BASE64.encode(self.0.as_bytes())
    }

    /// Reads [`to_text`](VerifyKey::to_text); spaces around it do not matter.
    ///
    /// # Errors
    /// [`SigningTextError::Key`].
    pub fn parse(text: &str) -> Result<Self, SigningTextError> {
        Self::from_bytes(&decoded(text).ok_or(SigningTextError::Key)?)
    }

    /// The bytes, if this key signed exactly them for the context.
    ///
    /// # Errors
    /// [`NotGenuine`] otherwise.
    pub fn verify<'a>(
        &self,
        context: Context,
        bytes: &'a [u8],
        signature: &Signature,
    ) -> Result<Verified<'a>, NotGenuine> {
        self.0
            .verify_strict(&context.message(bytes), &signature.0)
            .map(|()| Verified(bytes))
            .map_err(|_| NotGenuine)
    }
}

/// Bytes whose signature was verified. There is no other way to make one.
#[derive(Clone, Copy)]
pub struct Verified<'a>(&'a [u8]);

impl<'a> Verified<'a> {
    /// The bytes, now to be parsed.
    #[must_use]
    pub fn bytes(self) -> &'a [u8] {
        self.0
    }
}

impl fmt::Debug for Verified<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Verified")
    }
}

/// A signature, 64 bytes. Stored as [its text](Signature::to_text).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Signature(ed25519_dalek::Signature);

impl TryFrom<String> for Signature {
    type Error = SigningTextError;
    fn try_from(text: String) -> Result<Self, SigningTextError> {
        Self::parse(&text)
    }
}

impl From<Signature> for String {
    fn from(signature: Signature) -> Self {
        signature.to_text()
    }
}

impl JsonSchema for Signature {
    fn schema_name() -> Cow<'static, str> {
        "Signature".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "pattern": "^[A-Za-z0-9+/]{86}==$" })
    }
}

impl Signature {
    /// A signature of 64 bytes, not verified yet.
    #[must_use]
    pub fn from_bytes(bytes: &[u8; 64]) -> Self {
        Self(ed25519_dalek::Signature::from_bytes(bytes))
    }

    /// Its 64 bytes.
    #[must_use]
    pub fn to_bytes(&self) -> [u8; 64] {
        self.0.to_bytes()
    }

    /// The signature as base64 (RFC 4648 section 4), 88 characters.
    #[must_use]
    pub fn to_text(&self) -> String {
        BASE64.encode(&self.0.to_bytes())
    }

    /// Reads [`to_text`](Signature::to_text); spaces around it do not matter.
    ///
    /// # Errors
    /// [`SigningTextError::Signature`].
    pub fn parse(text: &str) -> Result<Self, SigningTextError> {
        decoded(text).map(|bytes| Self::from_bytes(&bytes)).ok_or(SigningTextError::Signature)
    }
}

/// Exactly `N` bytes of base64. The length is looked at first: a long text is not decoded.
fn decoded<const N: usize>(text: &str) -> Option<[u8; N]> {
    let text = text.trim().as_bytes();
    if text.len() != BASE64.encode_len(N) {
        return None;
    }
    BASE64.decode(text).ok()?.try_into().ok()
}

#[cfg(test)]
#[path = "signing_tests.rs"]
mod tests;
