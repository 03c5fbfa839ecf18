//! The signed file. It always works.
//!
//! ```json
//! {"signed":"frond programme 1","key":"...","signature":"...","programme":{ }}
//! {"signed":"frond programme 1","key":"...","follows":{"key":"...","signature":"..."},"signature":"...","programme":{ }}
//! ```
//!
//! One line of JSON in exactly this form: no space, no other order, nothing else. The signature covers the
//! length of the text of `signed` (8 bytes, little-endian), that text, and the exact bytes of `programme`;
//! that of `follows` covers `frond key follows 1` in the same way and the 32 bytes of the new key. Keys and
//! signatures are base64 with padding (RFC 4648 section 4). Because the form is exact, it is cut apart by its
//! own letters and nothing is parsed before the signature holds. Spaces and line breaks after its end,
//! which mail programs add, do not matter.

use schemars::JsonSchema;

use super::HandOverError;
use crate::programme::plan::Programme;
use crate::programme::read::MOST_BYTES;
use crate::sealing::{Follows, Signature, VerifyKey};

/// The file's form, for the published schema. A schema cannot say in what order the parts stand and that nothing stands
/// between them, and it verifies no signature.
#[derive(JsonSchema)]
#[schemars(rename = "SignedProgramme", deny_unknown_fields)]
#[allow(dead_code, reason = "only its schema is used")]
pub(crate) struct Published {
    /// Which form, and that it is signed: `frond programme 1`.
    #[schemars(regex(pattern = r"^frond programme 1$"))]
    signed: String,
    /// The clinic's Ed25519 public key, 32 bytes in base64.
    key: VerifyKey,
    /// The word of the key used before that this one follows it, where it follows one.
    #[serde(default)]
    #[schemars(with = "PublishedFollows")]
    follows: Option<PublishedFollows>,
    /// The signature, 64 bytes in base64, over the length of the text of `signed`, that text and the exact bytes of
    /// `programme`.
    signature: Signature,
    /// The programme.
    programme: Programme,
}

/// One key's word that another follows it.
#[derive(JsonSchema)]
#[schemars(rename = "Follows", deny_unknown_fields)]
#[allow(dead_code, reason = "only its schema is used")]
struct PublishedFollows {
    /// The Ed25519 public key used before, 32 bytes in base64.
    key: VerifyKey,
    /// Its signature, 64 bytes in base64, over the length of the text `frond key follows 1`, that text and the 32 bytes of
    /// the new key.
    signature: Signature,
}

/// The longest signed file that is read, in bytes.
pub const FILE_MOST: usize = MOST_BYTES + 1024;

/// How every version begins.
const EVERY: &[u8] = br#"{"signed":"frond programme "#;
const BEGIN: &[u8] = br#"{"signed":"frond programme 1","key":""#;
const FOLLOWS: &[u8] = br#"","follows":{"key":""#;
const FOLLOWS_SIGNATURE: &[u8] = br#"","signature":""#;
const FOLLOWS_END: &[u8] = br#""},"signature":""#;
const SIGNATURE: &[u8] = br#"","signature":""#;
const PROGRAMME: &[u8] = br#"","programme":"#;
const END: &[u8] = b"}";

/// The parts of a file, not verified yet.
pub(super) struct Parts<'a> {
    pub(super) key: VerifyKey,
    pub(super) follows: Option<Follows>,
    pub(super) signature: Signature,
    pub(super) programme: &'a [u8],
}

/// Whether these bytes begin like a signed programme, of any version.
#[must_use]
pub fn is_signed(bytes: &[u8]) -> bool {
    bytes.starts_with(EVERY)
}

/// Writes the file.
pub(super) fn write(parts: &Parts<'_>) -> Vec<u8> {
    let mut file = Vec::with_capacity(parts.programme.len() + 512);
    file.extend_from_slice(BEGIN);
    file.extend_from_slice(parts.key.to_text().as_bytes());
    if let Some(follows) = &parts.follows {
        file.extend_from_slice(FOLLOWS);
        file.extend_from_slice(follows.before().to_text().as_bytes());
        file.extend_from_slice(FOLLOWS_SIGNATURE);
        file.extend_from_slice(follows.signature().to_text().as_bytes());
        file.extend_from_slice(FOLLOWS_END);
    } else {
        file.extend_from_slice(SIGNATURE);
    }
    file.extend_from_slice(parts.signature.to_text().as_bytes());
    file.extend_from_slice(PROGRAMME);
    file.extend_from_slice(parts.programme);
    file.extend_from_slice(END);
    file
}

/// Cuts a file apart.
pub(super) fn cut(bytes: &[u8]) -> Result<Parts<'_>, HandOverError> {
    if bytes.len() > FILE_MOST {
        return Err(HandOverError::TooLong);
    }
    if !is_signed(bytes) {
        return Err(HandOverError::NotSigned);
    }
    let mut rest = Rest(bytes.trim_ascii_end());
    if rest.word(BEGIN).is_err() {
        return Err(other_version(bytes));
    }
    let key = rest.key()?;
    let follows = if rest.word(FOLLOWS).is_ok() {
        let before = rest.key()?;
        rest.word(FOLLOWS_SIGNATURE)?;
        let signature = rest.signature()?;
        rest.word(FOLLOWS_END)?;
        Some(Follows::said(before, signature))
    } else {
        rest.word(SIGNATURE)?;
        None
    };
    let signature = rest.signature()?;
    rest.word(PROGRAMME)?;
    let programme = rest.0.strip_suffix(END).ok_or(HandOverError::Damaged)?;
    Ok(Parts { key, follows, signature, programme })
}

/// A number above 1 in the place of the version is a newer one; anything else is damage.
fn other_version(bytes: &[u8]) -> HandOverError {
    let digits: Vec<u8> =
        bytes.iter().skip(EVERY.len()).copied().take_while(u8::is_ascii_digit).take(10).collect();
    let number = std::str::from_utf8(&digits).ok().and_then(|text| text.parse::<u64>().ok());
    match number {
        Some(number) if number > 1 => HandOverError::Newer,
        _ => HandOverError::Damaged,
    }
}

struct Rest<'a>(&'a [u8]);

impl<'a> Rest<'a> {
    fn word(&mut self, word: &[u8]) -> Result<(), HandOverError> {
        self.0 = self.0.strip_prefix(word).ok_or(HandOverError::Damaged)?;
        Ok(())
    }

    /// Up to the next quotation mark, of exactly so many characters.
    fn text(&mut self, length: usize) -> Result<&'a str, HandOverError> {
        let (text, rest) = self.0.split_at_checked(length).ok_or(HandOverError::Damaged)?;
        self.0 = rest;
        std::str::from_utf8(text).map_err(|_| HandOverError::Damaged)
    }

    fn key(&mut self) -> Result<VerifyKey, HandOverError> {
        let text = self.text(44)?;
        let key = VerifyKey::parse(text).map_err(|_| HandOverError::Damaged)?;
        // One way only to write a key: the reader of keys also takes spaces around it.
        if key.to_text() == text { Ok(key) } else { Err(HandOverError::Damaged) }
    }

    fn signature(&mut self) -> Result<Signature, HandOverError> {
        let text = self.text(88)?;
        let signature = Signature::parse(text).map_err(|_| HandOverError::Damaged)?;
        if signature.to_text() == text { Ok(signature) } else { Err(HandOverError::Damaged) }
    }
}
