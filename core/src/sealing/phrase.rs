//! The recovery phrase: twelve words of the published English list of BIP-39, whose checksum finds most
//! slips. They stand for 16 random bytes, from which an age identity follows, so that with paper and any age
//! program a copy can be opened for as long as there are age programs.
//!
//! The identity is HKDF-SHA256 (RFC 5869) of the 16 bytes, without salt, with the info `frond 1 recovery`,
//! 32 bytes, as an X25519 secret key. Part of the stored format, never changed.

use std::fmt;

use bech32::{Bech32, Hrp};
use bip39::{Language, Mnemonic};
use hkdf::Hkdf;
use sha2::Sha256;
use zeroize::Zeroizing;

use super::age_file::{Identity, Recipient};
use crate::ports::{Random, RandomError};

/// How many words a phrase has.
pub const PHRASE_WORDS: usize = 12;

const ENTROPY: usize = 16;
const INFO: &[u8] = b"frond 1 recovery";

/// Twelve words. Wiped when dropped, never printed by accident.
pub struct RecoveryPhrase {
    words: Mnemonic,
    identity: Identity,
}

/// Why what was typed is no recovery phrase. Names places, never words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PhraseError {
    /// Too few words or too many.
    #[error(
        "a recovery phrase has {PHRASE_WORDS} words, and these are {0}; compare with your paper"
    )]
    HowMany(usize),
    /// A word that is not in the list.
    #[error("word {0} is not one of the words a recovery phrase is made of; check its spelling")]
    NotAWord(usize),
    /// Every word is in the list, but they do not belong together.
    #[error("these words do not belong together; check each word and their order")]
    NotTogether,
}

impl RecoveryPhrase {
    /// A new phrase.
    ///
    /// # Errors
    /// [`RandomError`] when there are no random bytes.
    pub fn new(random: &dyn Random) -> Result<Self, RandomError> {
        let mut entropy = Zeroizing::new([0u8; ENTROPY]);
        random.fill(entropy.as_mut_slice())?;
        // Sixteen bytes always make twelve words and an identity.
        Self::of(&entropy).ok_or(RandomError)
    }

    fn of(entropy: &[u8; ENTROPY]) -> Option<Self> {
        let words = Mnemonic::from_entropy_in(Language::English, entropy).ok()?;
        let mut key = Zeroizing::new([0u8; 32]);
        Hkdf::<Sha256>::new(None, entropy).expand(INFO, key.as_mut_slice()).ok()?;
        let hrp = Hrp::parse("age-secret-key-").ok()?;
        let text = bech32::encode_upper::<Bech32>(hrp, key.as_slice()).ok()?;
        let identity = Zeroizing::new(text).parse().ok()?;
        Some(Self { words, identity })
    }

    /// Reads what a person typed: in any case, with any spaces, with or without numbers between, each word
    /// whole or its first four letters, which tell it from every other.
    ///
    /// # Errors
    /// [`PhraseError`], with the number of the word that is wrong.
    pub fn parse(typed: &str) -> Result<Self, PhraseError> {
        let lower = Zeroizing::new(typed.to_lowercase());
        let given: Vec<&str> = lower
            .split(|letter: char| !letter.is_alphabetic())
            .filter(|word| !word.is_empty())
            .collect();
        if given.len() != PHRASE_WORDS {
            return Err(PhraseError::HowMany(given.len()));
        }
        let list = Language::English.word_list();
        let mut whole = Zeroizing::new(String::with_capacity(PHRASE_WORDS * 9));
        for (index, word) in given.iter().enumerate() {
            let fits = |known: &&&str| **known == *word || is_beginning(word, known);
            let found = list.iter().find(fits).ok_or(PhraseError::NotAWord(index + 1))?;
            if !whole.is_empty() {
                whole.push(' ');
            }
            whole.push_str(found);
        }
        let words = Mnemonic::parse_in_normalized(Language::English, &whole)
            .map_err(|_| PhraseError::NotTogether)?;
        let (bytes, length) = words.to_entropy_array();
        let bytes = Zeroizing::new(bytes);
        let entropy = bytes.get(..length).and_then(|bytes| <&[u8; ENTROPY]>::try_from(bytes).ok());
        entropy.and_then(Self::of).ok_or(PhraseError::NotTogether)
    }

    /// Its words, to be shown once and written down.
    pub fn words(&self) -> impl Iterator<Item = &'static str> + '_ {
        self.words.words()
    }

    /// What opens a copy that was sealed to this phrase.
    #[must_use]
    pub fn identity(&self) -> Identity {
        self.identity.clone()
    }

    /// To whom a copy is sealed that only this phrase opens.
    #[must_use]
    pub fn recipient(&self) -> Recipient {
        self.identity.recipient()
    }
}

/// No two words of the list share their first four letters.
fn is_beginning(typed: &str, known: &str) -> bool {
    typed.len() >= 4 && known.starts_with(typed)
}

impl fmt::Debug for RecoveryPhrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("RecoveryPhrase(secret)")
    }
}
