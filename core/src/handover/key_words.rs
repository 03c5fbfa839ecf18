//! A public key as a few words, to be compared on paper or by telephone.

use bip39::Language;
use sha2::{Digest, Sha256};

use crate::sealing::VerifyKey;

/// How many words stand for a key. Eleven bits a word make 66: to find another key with the same words
/// somebody would have to try about 2^66 keys.
pub const KEY_WORDS: usize = 6;

/// Published form: never changed.
const LABEL: &[u8] = b"frond key words 1";

/// The words of a key: the first 66 bits of SHA-256 over a label and the key's 32 bytes, eleven bits a
/// word, as words of the English list of BIP-39.
///
/// The same list in every language, so that a clinician and a patient who use Frond in different
/// languages read the same words.
#[must_use]
pub fn key_words(key: &VerifyKey) -> Vec<&'static str> {
    let digest = Sha256::new().chain_update(LABEL).chain_update(key.to_bytes()).finalize();
    words(&digest, KEY_WORDS)
}

/// Eleven bits a word, from the front.
pub(super) fn words(bytes: &[u8], count: usize) -> Vec<&'static str> {
    let list = Language::English.word_list();
    let bit = |at: usize| {
        usize::from(bytes.get(at / 8).is_some_and(|byte| byte >> (7 - at % 8) & 1 == 1))
    };
    (0..count)
        .filter_map(|word| {
            let index = (0..11).fold(0, |sum, at| sum << 1 | bit(word * 11 + at));
            list.get(index).copied()
        })
        .collect()
}
