//! Who signs a programme. Tests need no passphrase for it.

use crate::sealing::{ClinicKeys, Context, Signature, SigningKey, VerifyKey};

/// What signs with a clinic's key.
pub trait Signs {
    /// The public half.
    fn verify_key(&self) -> VerifyKey;
    /// Signs the bytes for the context.
    fn sign(&self, context: Context, bytes: &[u8]) -> Signature;
}

impl Signs for SigningKey {
    fn verify_key(&self) -> VerifyKey {
        self.verify_key()
    }
    fn sign(&self, context: Context, bytes: &[u8]) -> Signature {
        self.sign(context, bytes)
    }
}

impl Signs for ClinicKeys {
    fn verify_key(&self) -> VerifyKey {
        self.verify_key()
    }
    fn sign(&self, context: Context, bytes: &[u8]) -> Signature {
        self.sign(context, bytes)
    }
}
