//! The link that one QR code carries: `FROND:` and base32 without padding (RFC 4648 section 6), which is
//! the alphanumeric mode of a code.
//!
//! | bytes | what |
//! |---|---|
//! | 1 | version: 1 |
//! | 1 | bit 0: sealed; bit 1: a statement that the key follows another; the others 0 |
//! | 16 | salt, where it is sealed |
//! | | the body, where it is sealed with a tag of 16 bytes; bound to all before it |
//! | 4 | CRC-32C of all before it, little-endian |
//!
//! The body: public key (32), signature over the programme (64), where bit 1 is set the old key (32) and its
//! signature (64), then the programme, deflated. The signature is the one of the file: over the exact
//! bytes of the programme, not over the link.
//!
//! The checksum tells a slip of copying from wrong words, and notices every single altered character even
//! where nothing is sealed. Case, spaces and line breaks do not matter when a link is read.

use data_encoding::BASE32_NOPAD;

use super::sealed::{self, SALT};
use super::{HandOverError, LINK_MOST, SpokenWords, pack};
use crate::ports::Stretch;
use crate::sealing::{Follows, Signature, VerifyKey, invisible};

const SCHEME: &str = "FROND:";
const VERSION: u8 = 1;
const SEALED: u8 = 1;
const FOLLOWS: u8 = 2;
const HEAD: usize = 2;
const CHECK: usize = 4;
/// The context of what is sealed, before the link's own head.
const BOUND: &[u8] = b"frond link 1";

/// The most text that is looked at, with all its spaces, in bytes.
pub const LINK_TEXT_MOST: usize = 16 * 1024;

/// What a link carries, not verified yet.
pub(super) struct Parts {
    pub(super) key: VerifyKey,
    pub(super) follows: Option<Follows>,
    pub(super) signature: Signature,
    pub(super) programme: Vec<u8>,
}

/// Whether a text begins like such a link.
#[must_use]
pub fn is_link(text: &str) -> bool {
    let text = text.trim_start_matches(|c: char| c.is_whitespace() || invisible(c));
    text.get(..SCHEME.len()).is_some_and(|begins| begins.eq_ignore_ascii_case(SCHEME))
}

/// Writes the link, sealed or open.
pub(super) fn write(
    parts: &Parts,
    seal: Option<(&SpokenWords, [u8; SALT])>,
    cost: Stretch,
) -> Result<String, HandOverError> {
    let mut body = Vec::new();
    body.extend_from_slice(&parts.key.to_bytes());
    body.extend_from_slice(&parts.signature.to_bytes());
    if let Some(follows) = &parts.follows {
        body.extend_from_slice(&follows.before().to_bytes());
        body.extend_from_slice(&follows.signature().to_bytes());
    }
    if parts.programme.len() > pack::INFLATED_MOST {
        return Err(HandOverError::TooLarge { characters: parts.programme.len() });
    }
    body.extend_from_slice(&pack::deflate(&parts.programme)?);

    let flags =
        if seal.is_some() { SEALED } else { 0 } | if parts.follows.is_some() { FOLLOWS } else { 0 };
    let mut bytes = vec![VERSION, flags];
    match seal {
        None => bytes.extend_from_slice(&body),
        Some((words, salt)) => {
            bytes.extend_from_slice(&salt);
            let sealed = sealed::seal(&body, &bound(&bytes), &salt, words, cost)?;
            bytes.extend_from_slice(&sealed);
        }
    }
    let check = crc32c::crc32c(&bytes);
    bytes.extend_from_slice(&check.to_le_bytes());
    let link = format!("{SCHEME}{}", BASE32_NOPAD.encode(&bytes));
    if link.len() > LINK_MOST {
        return Err(HandOverError::TooLarge { characters: link.len() });
    }
    Ok(link)
}

/// Reads a link; with words where it is sealed.
pub(super) fn read(
    text: &str,
    words: Option<&SpokenWords>,
    cost: Stretch,
) -> Result<Parts, HandOverError> {
    let bytes = bytes_of(text)?;
    let (head, rest) = bytes.split_at_checked(HEAD).ok_or(HandOverError::Garbled)?;
    let &[version, flags] = head else { return Err(HandOverError::Garbled) };
    let (rest, check) =
        rest.split_at_checked(rest.len().wrapping_sub(CHECK)).ok_or(HandOverError::Garbled)?;
    let all = bytes.get(..HEAD + rest.len()).unwrap_or_default();
    // A later version may end otherwise, so its number is looked at first.
    if version > VERSION {
        return Err(HandOverError::Newer);
    }
    if version != VERSION
        || flags & !(SEALED | FOLLOWS) != 0
        || crc32c::crc32c(all).to_le_bytes().as_slice() != check
    {
        return Err(HandOverError::Garbled);
    }
    if flags & SEALED == 0 {
        return body(rest, flags);
    }
    let (salt, sealed) = rest.split_at_checked(SALT).ok_or(HandOverError::Garbled)?;
    let words = words.ok_or(HandOverError::WordsNeeded)?;
    let head = bytes.get(..HEAD + SALT).unwrap_or_default();
    body(&sealed::open(sealed, &bound(head), salt, words, cost)?, flags)
}

fn body(body: &[u8], flags: u8) -> Result<Parts, HandOverError> {
    let mut rest = body;
    let key = key(&mut rest)?;
    let signature = signature(&mut rest)?;
    let follows = if flags & FOLLOWS == 0 {
        None
    } else {
        let before = self::key(&mut rest)?;
        Some(Follows::said(before, self::signature(&mut rest)?))
    };
    Ok(Parts { key, follows, signature, programme: pack::inflate(rest)? })
}

fn key(rest: &mut &[u8]) -> Result<VerifyKey, HandOverError> {
    let (bytes, left) = rest.split_first_chunk::<32>().ok_or(HandOverError::Garbled)?;
    *rest = left;
    VerifyKey::from_bytes(bytes).map_err(|_| HandOverError::Garbled)
}

fn signature(rest: &mut &[u8]) -> Result<Signature, HandOverError> {
    let (bytes, left) = rest.split_first_chunk::<64>().ok_or(HandOverError::Garbled)?;
    *rest = left;
    Ok(Signature::from_bytes(bytes))
}

fn bound(head: &[u8]) -> Vec<u8> {
    [BOUND, head].concat()
}

/// The bytes of a link as typed, pasted or scanned.
fn bytes_of(text: &str) -> Result<Vec<u8>, HandOverError> {
    if text.len() > LINK_TEXT_MOST {
        return Err(HandOverError::TooLong);
    }
    let plain: String = text
        .chars()
        .filter(|c| !c.is_whitespace() && !invisible(*c))
        .map(|c| c.to_ascii_uppercase())
        .collect();
    let base32 = plain.strip_prefix(SCHEME).ok_or(HandOverError::NotALink)?;
    if plain.len() > LINK_MOST {
        return Err(HandOverError::TooLong);
    }
    BASE32_NOPAD.decode(base32.as_bytes()).map_err(|_| HandOverError::Garbled)
}
