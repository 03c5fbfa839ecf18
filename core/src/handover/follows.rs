//! Who signs, and the statement that one key follows another: the old key signs the new one. So a clinic that
//! changes its key need not be a stranger to the people it looks after.

use crate::sealing::{Context, Signature, SigningKey, VerifyKey};

/// What the signature over a new key is for.
const FOLLOWS: Context = Context::new("frond key follows 1");

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

/// An old key's word that a new one follows it. Whether it holds is known only together with the new key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Follows {
    /// The key that was used before.
    pub old: VerifyKey,
    /// Its signature over the 32 bytes of the new one.
    pub signature: Signature,
}

impl Follows {
    /// The statement that `new` follows the key of `old`.
    #[must_use]
    pub fn new(old: &dyn Signs, new: &VerifyKey) -> Self {
        Self { old: old.verify_key(), signature: old.sign(FOLLOWS, &new.to_bytes()) }
    }

    /// Whether the old key signed exactly this new one, and is another.
    #[must_use]
    pub fn holds_for(&self, new: &VerifyKey) -> bool {
        self.old != *new && self.old.verify(FOLLOWS, &new.to_bytes(), &self.signature).is_ok()
    }
}
