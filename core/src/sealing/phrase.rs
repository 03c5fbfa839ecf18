//! The recovery phrase: twelve words that open a diary when the phone is gone.
//!
//! The words are those of BIP-39 (English list): 16 random bytes and a checksum of 4 bits, 11 bits a
//! word, so that most slips of the pen are noticed. Decides how typed words are read, and which age key they
//! make. Where the phrase is shown and what it seals is decided elsewhere.
//!
//! The key is `HKDF-SHA256(16 bytes, no salt, info "frond 1 recovery")`, 32 bytes, taken as an X25519
//! secret. That is a stored format: it never changes. (BIP-39's own way of making a seed, for
//! wallets, is not used: the bytes are random already and need no stretching.)

use super::age_keys::{Identity, IdentityError, Recipient};
use super::typed::{TypedError, typed_words};
use crate::ports::{Random, RandomError};
use bip39::{Language, Mnemonic};
use hkdf::Hkdf;
use sha2::Sha256;
use std::fmt;
use zeroize::Zeroizing;

/// How many words a phrase has.
pub const RECOVERY_WORDS: usize = 12;

/// Bytes the words stand for.
const ENTROPY: usize = 16;

/// Stored format: never changed.
const INFO: &[u8] = b"frond 1 recovery";

/// The twelve words. Wiped when dropped, never printed.
pub struct RecoveryPhrase {
    mnemonic: Mnemonic,
    identity: Identity,
}

/// What is wrong with typed words. Never holds a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PhraseError {
    /// Word `number`, counted from 1, is not in the list.
    #[error("word {number} is not one of the list; check its spelling")]
    NotInList {
        /// Which word, counted from 1.
        number: usize,
    },
    /// Fewer than twelve.
    #[error("there are {found} words and 12 are needed; type the missing ones")]
    TooFew {
        /// How many there are.
        found: usize,
    },
    /// More than twelve.
    #[error("there are more than 12 words; type the 12 words of the phrase and nothing else")]
    TooMany,
    /// Every word is in the list, but the checksum is wrong.
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
        // Sixteen bytes are always a phrase and 32 bytes always a key; only the types allow otherwise.
        Mnemonic::from_entropy_in(Language::English, entropy.as_slice())
            .ok()
            .and_then(|mnemonic| Self::of(mnemonic).ok())
            .ok_or(RandomError)
    }

    /// Reads typed words. Case, spaces, line breaks, commas, accents, numbers before the words and the
    /// way letters are encoded do not matter; the first four letters of a word are enough.
    ///
    /// # Errors
    /// [`PhraseError`] says which word is wrong, without the word.
    pub fn parse(text: &str) -> Result<Self, PhraseError> {
        let joined = typed_words(text, RECOVERY_WORDS).map_err(|error| match error {
            TypedError::NotInList { number } => PhraseError::NotInList { number },
            TypedError::TooFew { found } => PhraseError::TooFew { found },
            TypedError::TooMany => PhraseError::TooMany,
        })?;
        Mnemonic::parse_in_normalized(Language::English, &joined)
            .ok()
            .and_then(|mnemonic| Self::of(mnemonic).ok())
            .ok_or(PhraseError::NotTogether)
    }

    fn of(mnemonic: Mnemonic) -> Result<Self, IdentityError> {
        let (entropy, _) = mnemonic.to_entropy_array();
        let entropy = Zeroizing::new(entropy);
        let mut secret = Zeroizing::new([0u8; 32]);
        Hkdf::<Sha256>::new(None, entropy.get(..ENTROPY).unwrap_or_default())
            .expand(INFO, secret.as_mut_slice())
            .map_err(|_| IdentityError::Wrong)?;
        let identity = Identity::from_secret(&secret)?;
        Ok(Self { mnemonic, identity })
    }

    /// The words in order, to be shown once and written down.
    pub fn words(&self) -> impl Iterator<Item = &'static str> + '_ {
        self.mnemonic.words()
    }

    /// The age key the words make. It opens what was sealed to [`recipient`](Self::recipient).
    #[must_use]
    pub fn identity(&self) -> &Identity {
        &self.identity
    }

    /// The public half, which may be stored: with it new data can be sealed without the words.
    #[must_use]
    pub fn recipient(&self) -> Recipient {
        self.identity.recipient()
    }
}

impl fmt::Debug for RecoveryPhrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("RecoveryPhrase(secret)")
    }
}

#[cfg(test)]
#[path = "phrase_tests.rs"]
mod tests;
