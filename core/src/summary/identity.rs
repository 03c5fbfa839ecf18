//! Who a summary says it comes from: a diary, by its stable id and its own signing key. Never a person.

use std::borrow::Cow;
use std::fmt;
use std::str::FromStr;

use data_encoding::{HEXLOWER, HEXLOWER_PERMISSIVE};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

use crate::programme::values::ValueError;
use crate::sealing::{SigningKey, VerifyKey};

/// The stable id of a diary: 128 random bits, written as 32 hexadecimal digits. It stays the same over a
/// restore and a new phone.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct DiaryId(pub [u8; 16]);

impl fmt::Display for DiaryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&HEXLOWER.encode(&self.0))
    }
}

impl fmt::Debug for DiaryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("DiaryId(..)")
    }
}

impl TryFrom<String> for DiaryId {
    type Error = ValueError;
    fn try_from(text: String) -> Result<Self, ValueError> {
        let bytes = HEXLOWER_PERMISSIVE.decode(text.as_bytes()).ok();
        bytes
            .and_then(|bytes| <[u8; 16]>::try_from(bytes).ok())
            .map(Self)
            .ok_or(ValueError(Cow::Borrowed("a diary id has 32 hexadecimal digits")))
    }
}

impl From<DiaryId> for String {
    fn from(id: DiaryId) -> String {
        id.to_string()
    }
}

impl JsonSchema for DiaryId {
    fn schema_name() -> Cow<'static, str> {
        "DiaryId".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "pattern": "^[0-9a-fA-F]{32}$" })
    }
}

/// What a diary signs its summaries with.
pub struct DiaryIdentity {
    /// The stable id.
    pub id: DiaryId,
    /// The signing key.
    pub key: SigningKey,
}

impl DiaryIdentity {
    /// What a reader pins: the id and the public key.
    #[must_use]
    pub fn pin(&self) -> Pin {
        Pin { diary: self.id, key: self.key.verify_key() }
    }
}

impl fmt::Debug for DiaryIdentity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("DiaryIdentity(..)")
    }
}

/// What a reader keeps of the first summary of a diary, to know the next one by. Written
/// `DIARY:KEY`, 32 hexadecimal digits and the public key in base64.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Pin {
    /// The diary.
    pub diary: DiaryId,
    /// Its Ed25519 public key.
    pub key: VerifyKey,
}

impl fmt::Display for Pin {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}", self.diary, self.key.to_text())
    }
}

impl fmt::Debug for Pin {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Pin(..)")
    }
}

impl FromStr for Pin {
    type Err = ValueError;
    fn from_str(text: &str) -> Result<Self, ValueError> {
        let wrong = || ValueError(Cow::Borrowed("write DIARY:KEY, as a reading shows it"));
        let (diary, key) = text.split_once(':').ok_or_else(wrong)?;
        let diary = DiaryId::try_from(diary.to_owned()).map_err(|_| wrong())?;
        Ok(Self { diary, key: VerifyKey::parse(key).map_err(|_| wrong())? })
    }
}
