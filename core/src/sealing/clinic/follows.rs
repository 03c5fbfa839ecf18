//! That one signing key takes the place of another, said by the older one.

use serde::{Deserialize, Serialize};

use crate::sealing::{Context, Signature, SigningKey, SigningTextError, VerifyKey};

/// What is signed is the new key's 32 bytes.
const FOLLOWS: Context = Context::new("frond key follows 1");

/// "The key that comes after me is that one", signed by the key before. On its own it proves nothing:
/// ask [`holds_for`](Follows::holds_for).
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Written", into = "Written")]
pub struct Follows {
    before: VerifyKey,
    signature: Signature,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    /// The older key, base64.
    before: String,
    /// Its signature over the newer key, base64.
    signature: String,
}

impl Follows {
    /// The older key says that `after` comes after it.
    #[must_use]
    pub fn sign(before: &SigningKey, after: &VerifyKey) -> Self {
        Self { before: before.verify_key(), signature: before.sign(FOLLOWS, &after.to_bytes()) }
    }

    /// What a file says that the older key said.
    #[must_use]
    pub(crate) fn said(before: VerifyKey, signature: Signature) -> Self {
        Self { before, signature }
    }

    /// The older key's signature.
    #[must_use]
    pub(crate) fn signature(&self) -> &Signature {
        &self.signature
    }

    /// The older key.
    #[must_use]
    pub fn before(&self) -> &VerifyKey {
        &self.before
    }

    /// Whether the older key really said so of `after`, which is another.
    #[must_use]
    pub fn holds_for(&self, after: &VerifyKey) -> bool {
        self.before != *after
            && self.before.verify(FOLLOWS, &after.to_bytes(), &self.signature).is_ok()
    }
}

impl TryFrom<Written> for Follows {
    type Error = SigningTextError;
    fn try_from(written: Written) -> Result<Self, SigningTextError> {
        Ok(Self {
            before: VerifyKey::parse(&written.before)?,
            signature: Signature::parse(&written.signature)?,
        })
    }
}

impl From<Follows> for Written {
    fn from(follows: Follows) -> Self {
        Self { before: follows.before.to_text(), signature: follows.signature.to_text() }
    }
}
