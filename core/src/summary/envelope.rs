//! The envelope: who signed a summary, and over which bytes. It is checked before anything inside is
//! read.
//!
//! ```json
//! { "signed": "frond summary 1", "key": "base64", "signature": "base64", "summary": { } }
//! ```
//!
//! The Ed25519 signature covers the length of the text of `signed` (8 bytes, little-endian), that text, and the
//! exact bytes of the value of `summary` as they stand in the file. Key and signature are base64 with
//! padding (RFC 4648 section 4).

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

use super::form::Summary;
use super::identity::DiaryIdentity;
use super::receive::SummaryError;
use crate::sealing::{Context, Signature, VerifyKey};

/// What `signed` says in the version that this program writes and reads.
pub const CONTEXT: &str = "frond summary 1";
/// The same, to sign with.
const SIGNED: Context = Context::new(CONTEXT);
/// What `signed` begins with in every version.
const EVERY_CONTEXT: &str = "frond summary ";

#[derive(Serialize)]
struct Written<'a> {
    signed: &'a str,
    key: String,
    signature: String,
    summary: &'a RawValue,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Read<'a> {
    signed: String,
    key: String,
    signature: String,
    #[serde(borrow)]
    summary: &'a RawValue,
}

/// The envelope's form, for the published schema.
#[derive(JsonSchema)]
#[schemars(rename = "Envelope", deny_unknown_fields)]
#[allow(dead_code, reason = "only its schema is used")]
pub(crate) struct Published {
    /// Which form, and that it is signed: `frond summary 1`.
    #[schemars(regex(pattern = r"^frond summary 1$"))]
    signed: String,
    /// The diary's Ed25519 public key, 32 bytes in base64.
    #[schemars(regex(pattern = r"^[A-Za-z0-9+/]{43}=$"))]
    key: String,
    /// The signature, 64 bytes in base64, over the length of the context, the context and the bytes of `summary`.
    #[schemars(regex(pattern = r"^[A-Za-z0-9+/]{86}==$"))]
    signature: String,
    /// The summary.
    summary: Summary,
}

/// Puts a summary's text into a signed envelope.
pub(super) fn close(text: String, identity: &DiaryIdentity) -> serde_json::Result<Vec<u8>> {
    let summary = RawValue::from_string(text)?;
    let signature = identity.key.sign(SIGNED, summary.get().as_bytes());
    let mut bytes = serde_json::to_vec(&Written {
        signed: CONTEXT,
        key: identity.key.verify_key().to_text(),
        signature: signature.to_text(),
        summary: &summary,
    })?;
    bytes.push(b'\n');
    Ok(bytes)
}

/// The bytes inside, and the key that signed exactly them.
pub(super) fn open(bytes: &[u8]) -> Result<(&[u8], VerifyKey), SummaryError> {
    let text = std::str::from_utf8(bytes).map_err(|_| SummaryError::NotASummary)?;
    let read: Read<'_> = match serde_json::from_str(text) {
        Ok(read) => read,
        Err(error) => return Err(not_read(text, &error)),
    };
    if read.signed != CONTEXT {
        return Err(other_context(&read.signed));
    }
    let key = VerifyKey::parse(&read.key).map_err(|_| SummaryError::Signature)?;
    let signature = Signature::parse(&read.signature).map_err(|_| SummaryError::Signature)?;
    let verified = key
        .verify(SIGNED, read.summary.get().as_bytes(), &signature)
        .map_err(|_| SummaryError::Signature)?;
    Ok((verified.bytes(), key))
}

/// Why it is no envelope: a newer one, broken JSON, or something else altogether.
fn not_read(text: &str, error: &serde_json::Error) -> SummaryError {
    #[derive(Deserialize)]
    struct Head {
        signed: Option<String>,
    }
    if error.is_eof() || error.is_syntax() {
        // What does not begin like JSON was never a summary.
        return if text.trim_start().starts_with('{') {
            SummaryError::Garbled { line: error.line(), column: error.column() }
        } else {
            SummaryError::NotASummary
        };
    }
    match serde_json::from_str::<Head>(text) {
        Ok(Head { signed: Some(signed) }) => other_context(&signed),
        _ => SummaryError::NotASummary,
    }
}

fn other_context(signed: &str) -> SummaryError {
    let number = signed.strip_prefix(EVERY_CONTEXT).and_then(|rest| rest.parse::<u32>().ok());
    match number {
        Some(number) if number > super::VERSION => SummaryError::Newer,
        _ => SummaryError::NotASummary,
    }
}
