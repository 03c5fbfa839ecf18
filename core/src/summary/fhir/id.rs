//! Ids of resources: made from the diary's id and what the resource is about, never drawn. The same entry
//! has the same id whenever and wherever a bundle is made, so that two bundles can be laid together.
//!
//! They are UUIDs of version 8 (RFC 9562): the first 16 bytes of a SHA-256 over a label, the diary, what it is
//! about and a number, with version and variant set.

use sha2::{Digest, Sha256};

use super::code::Code;
use crate::diary::entry::EntryId;
use crate::summary::DiaryId;

/// Makes the ids of one diary.
pub(super) struct Ids {
    diary: DiaryId,
}

impl Ids {
    pub(super) fn of(diary: DiaryId) -> Self {
        Self { diary }
    }

    /// Of an entry.
    pub(super) fn entry(&self, entry: EntryId, code: Code) -> String {
        self.uuid(&[code.code().as_bytes(), &entry.0])
    }

    /// Of one thing among several that an entry tells.
    pub(super) fn of_entry(&self, entry: EntryId, code: Code, which: &str) -> String {
        self.uuid(&[code.code().as_bytes(), &entry.0, which.as_bytes()])
    }

    /// Of what there is once in a diary.
    pub(super) fn about(&self, code: Code) -> String {
        self.uuid(&[code.code().as_bytes()])
    }

    /// Of something known by its words, such as a goal.
    pub(super) fn worded(&self, code: Code, words: &str) -> String {
        self.uuid(&[code.code().as_bytes(), b"words", words.as_bytes()])
    }

    /// Of the bundle made at a moment.
    pub(super) fn made(&self, moment: &str) -> String {
        self.uuid(&[b"bundle", moment.as_bytes()])
    }

    fn uuid(&self, parts: &[&[u8]]) -> String {
        let mut hash = Sha256::new();
        hash.update(b"frond fhir 1");
        hash.update(self.diary.0);
        for part in parts {
            // Lengths first, so that no two lists of parts read alike.
            hash.update((part.len() as u64).to_le_bytes());
            hash.update(part);
        }
        let digest = hash.finalize();
        let mut bytes = [0_u8; 16];
        for (byte, from) in bytes.iter_mut().zip(digest.iter()) {
            *byte = *from;
        }
        written(bytes)
    }
}

/// Sixteen bytes as a UUID of version 8.
fn written(mut bytes: [u8; 16]) -> String {
    bytes[6] = (bytes[6] & 0x0f) | 0x80;
    bytes[8] = (bytes[8] & 0x3f) | 0x80;
    hyphened(bytes)
}

/// Sixteen bytes in the form of a UUID, as they are.
pub(super) fn hyphened(bytes: [u8; 16]) -> String {
    let hex = data_encoding::HEXLOWER.encode(&bytes);
    let mut text = String::with_capacity(36);
    for (at, digit) in hex.chars().enumerate() {
        if matches!(at, 8 | 12 | 16 | 20) {
            text.push('-');
        }
        text.push(digit);
    }
    text
}
