//! Identities inside a diary, and how a sign is noted in it.

use std::borrow::Cow;
use std::fmt;
use std::str::FromStr;

use data_encoding::HEXLOWER_PERMISSIVE;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

use crate::programme::values::ValueError;
use crate::safety::{Sign, Tier};

/// 128 random bits, written as 32 hexadecimal digits.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct EntryId(pub [u8; 16]);

impl fmt::Display for EntryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&data_encoding::HEXLOWER.encode(&self.0))
    }
}

impl fmt::Debug for EntryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl FromStr for EntryId {
    type Err = ValueError;
    fn from_str(text: &str) -> Result<Self, ValueError> {
        let bytes = HEXLOWER_PERMISSIVE.decode(text.as_bytes()).ok();
        bytes
            .and_then(|bytes| <[u8; 16]>::try_from(bytes).ok())
            .map(Self)
            .ok_or(ValueError(Cow::Borrowed("an entry id has 32 hexadecimal digits")))
    }
}

impl TryFrom<String> for EntryId {
    type Error = ValueError;
    fn try_from(text: String) -> Result<Self, ValueError> {
        text.parse()
    }
}

impl From<EntryId> for String {
    fn from(id: EntryId) -> String {
        id.to_string()
    }
}

impl JsonSchema for EntryId {
    fn schema_name() -> Cow<'static, str> {
        "EntryId".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "pattern": "^[0-9a-fA-F]{32}$" })
    }
}

/// The identity of a sign: the entry that first noted it, and which sign it is (S1).
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SignKey {
    /// The entry that first noted it (the corrected entry, where a correction brought it in).
    pub entry: EntryId,
    /// Which sign.
    pub sign: Sign,
}

/// A sign with the tier that was in force when it was noted.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SignNoted {
    /// Which.
    pub sign: Sign,
    /// Its tier then.
    pub tier: Tier,
}
