//! The copy for elsewhere, before it is sealed: everything a diary is, in a form that needs nothing but
//! the recovery phrase. Leaves the sealing to [`crate::sealing`] and the writing of a new diary to
//! [`super::store`].
//!
//! One line of JSON says what it is, then each entry is a line, byte for byte as in the journal; spaces
//! fill up to a multiple of 16 KiB, so that the length tells little. It is the same text that other
//! programs find who open such a copy with an age program and the key of the phrase.

use data_encoding::HEXLOWER;
use serde::{Deserialize, Serialize};
use zeroize::{Zeroize, Zeroizing};

use super::store::Card;
use crate::moment::Stamp;

const FORM: &str = "frond-copy";
const VERSION: u32 = 1;
const PAD: usize = 16 * 1024;

/// The largest copy that is read, in bytes: some hundred years of three entries a day.
pub const PORTABLE_MOST: u64 = 64 * 1024 * 1024;

/// A copy.
pub struct Portable {
    /// What the diary is known by.
    pub card: Card,
    /// When it was made.
    pub made: Stamp,
    /// Every entry, as in the journal.
    pub entries: Vec<Vec<u8>>,
}

/// Why these bytes are no copy.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PortableError {
    /// It is something else, or was changed before it was sealed.
    #[error("this is not a copy of a diary; choose the file that Frond made")]
    NotACopy,
    /// A newer program wrote it.
    #[error("this copy was made by a newer version; update Frond to restore it")]
    Newer,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Head {
    form: String,
    version: u32,
    diary: String,
    seed: String,
    generation: u64,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    recovery: Option<String>,
    made: Stamp,
    entries: usize,
}

impl Drop for Head {
    fn drop(&mut self) {
        self.seed.zeroize();
    }
}

/// Only what says which version it is, so that a newer one is told from a garbled one.
#[derive(Deserialize)]
struct Which {
    form: String,
    version: u32,
}

impl Portable {
    /// The text to seal.
    ///
    /// # Errors
    /// [`PortableError::NotACopy`] if an entry has a line break, which none that Frond writes has.
    pub fn write(&self) -> Result<Zeroizing<Vec<u8>>, PortableError> {
        let head = Head {
            form: FORM.to_owned(),
            version: VERSION,
            diary: HEXLOWER.encode(&self.card.diary),
            seed: HEXLOWER.encode(self.card.seed.as_slice()),
            generation: self.card.generation,
            recovery: self.card.recovery.clone(),
            made: self.made,
            entries: self.entries.len(),
        };
        let room: usize = self.entries.iter().map(|entry| entry.len() + 1).sum();
        // Made large enough at once: a buffer that grows leaves copies of itself behind.
        let mut text = Zeroizing::new(Vec::with_capacity(room + 1024 + PAD));
        serde_json::to_writer(&mut *text, &head).map_err(|_| PortableError::NotACopy)?;
        text.push(b'\n');
        for entry in &self.entries {
            if entry.contains(&b'\n') {
                return Err(PortableError::NotACopy);
            }
            text.extend_from_slice(entry);
            text.push(b'\n');
        }
        let full = text.len().div_ceil(PAD).saturating_mul(PAD);
        text.resize(full, b' ');
        Ok(text)
    }

    /// Reads what [`Portable::write`] gave.
    ///
    /// # Errors
    /// [`PortableError`].
    pub fn read(text: &[u8]) -> Result<Self, PortableError> {
        let mut lines = text.split(|byte| *byte == b'\n');
        let first = lines.next().unwrap_or_default();
        let which: Which = serde_json::from_slice(first).map_err(|_| PortableError::NotACopy)?;
        if which.form != FORM {
            return Err(PortableError::NotACopy);
        }
        if which.version > VERSION {
            return Err(PortableError::Newer);
        }
        let head: Head = serde_json::from_slice(first).map_err(|_| PortableError::NotACopy)?;
        let mut entries: Vec<Vec<u8>> = lines.map(<[u8]>::to_vec).collect();
        let fill = entries.pop().unwrap_or_default();
        if entries.len() != head.entries || fill.iter().any(|byte| *byte != b' ') {
            return Err(PortableError::NotACopy);
        }
        let card = Card {
            diary: hex(&head.diary)?,
            seed: seed(&head.seed)?,
            generation: head.generation,
            recovery: head.recovery.clone(),
        };
        Ok(Self { card, made: head.made, entries })
    }
}

/// The seed; what it passes through is wiped.
fn seed(text: &str) -> Result<Zeroizing<[u8; 32]>, PortableError> {
    let bytes = HEXLOWER.decode(text.as_bytes()).map(Zeroizing::new);
    let bytes = bytes.map_err(|_| PortableError::NotACopy)?;
    let mut seed = Zeroizing::new([0u8; 32]);
    if bytes.len() != seed.len() {
        return Err(PortableError::NotACopy);
    }
    seed.copy_from_slice(&bytes);
    Ok(seed)
}

fn hex<const N: usize>(text: &str) -> Result<[u8; N], PortableError> {
    let bytes = HEXLOWER.decode(text.as_bytes()).map_err(|_| PortableError::NotACopy)?;
    bytes.try_into().map_err(|_| PortableError::NotACopy)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn copy(entries: usize) -> Portable {
        Portable {
            card: Card {
                diary: [7; 16],
                seed: Zeroizing::new([9; 32]),
                generation: 3,
                recovery: Some("age1invented".to_owned()),
            },
            made: "2026-03-01T09:30:00+01:00[Europe/Madrid]".parse().unwrap(),
            entries: (0..entries).map(|n| format!("{{\"invented\":{n}}}").into_bytes()).collect(),
        }
    }

    #[test]
    fn the_form_of_a_copy_is_frozen() {
        let text = copy(2).write().unwrap();
        assert_eq!(text.len(), PAD);
        insta::assert_snapshot!(std::str::from_utf8(&text).unwrap().trim_end());
    }

    #[test]
    fn what_was_written_is_read_back_whatever_its_length() {
        for entries in [0, 1, 2, 100, 3000] {
            let read = Portable::read(&copy(entries).write().unwrap()).unwrap();
            assert_eq!(read.entries, copy(entries).entries);
            assert!(read.card == copy(0).card);
            assert_eq!(read.made, copy(0).made);
        }
    }

    #[test]
    fn what_is_no_copy_is_refused_and_a_newer_one_is_told_apart() {
        let good = copy(2).write().unwrap();
        let text = std::str::from_utf8(&good).unwrap();
        for (from, to, why) in [
            ("frond-copy", "frond-copi", PortableError::NotACopy),
            ("\"version\":1", "\"version\":2", PortableError::Newer),
            ("\"entries\":2", "\"entries\":3", PortableError::NotACopy),
            ("\"generation\"", "\"more\":1,\"generation\"", PortableError::NotACopy),
            ("0707", "07", PortableError::NotACopy),
        ] {
            let bad = text.replacen(from, to, 1);
            assert_ne!(bad, text);
            assert_eq!(Portable::read(bad.as_bytes()).err(), Some(why), "{from}");
        }
        for bytes in [&b""[..], b"{}", b"\n\n", &good[..100]] {
            assert_eq!(Portable::read(bytes).err(), Some(PortableError::NotACopy));
        }
    }
}
