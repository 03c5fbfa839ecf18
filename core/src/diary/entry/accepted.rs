//! How a programme came to be accepted: who signed it, and what the person knew when she said yes all the
//! same. The names are stored and never change.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::sealing::{Signature, VerifyKey};

/// The signature that a programme was accepted with. The key is pinned from then on.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SignedBy {
    /// The clinic's public key.
    pub key: VerifyKey,
    /// Its signature over the exact text carried.
    pub signature: Signature,
    /// How the key stood to the one that was pinned.
    pub stood: KeyStood,
}

/// How a key stands to the one that is pinned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum KeyStood {
    /// None was pinned before.
    First,
    /// It is the one.
    Same,
    /// The pinned key says that this one follows it.
    Follows,
    /// It is another, and nothing says that it follows.
    Other,
}

/// What a person has to choose knowingly before a programme is accepted. Never chosen for her.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Although {
    /// Nobody signed it.
    Unsigned,
    /// It is signed with another key than the one pinned.
    OtherKey,
    /// It is older than the revision in use.
    OlderRevision,
    /// It has the number of the revision in use and says something else.
    SameRevision,
}

impl Although {
    /// Each of them.
    pub const ALL: [Self; 4] =
        [Self::Unsigned, Self::OtherKey, Self::OlderRevision, Self::SameRevision];
}
