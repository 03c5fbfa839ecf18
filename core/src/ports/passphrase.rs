//! A key keeper for the desk and the try-out: a passphrase, stretched with Argon2id.
//!
//! The wrap is the 101 bytes of [`super::stretched`]. Decides how a secret is stretched and which stored settings are
//! believed.

use super::keys::{DataKey, KeeperError, KeeperKind, KeyKeeper};
use super::random::Random;
use super::stretched::{LEN, StretchedWrap};
use argon2::{Algorithm, Argon2, Params, Version};
use std::fmt;
use unicode_normalization::UnicodeNormalization;
use zeroize::Zeroizing;

/// What a person types. Wiped when dropped, never printed.
pub struct Passphrase(Zeroizing<String>);

/// A passphrase without a single character.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("the passphrase is empty; choose a few words that only you would put together")]
pub struct EmptyPassphrase;

impl Passphrase {
    /// Takes the words over as typed, with letters composed (Unicode NFC, as RFC 8265 section 4.2 has
    /// it), so that one keyboard's accents open what another's sealed.
    ///
    /// # Errors
    /// [`EmptyPassphrase`] when there is nothing in it.
    pub fn new(words: String) -> Result<Self, EmptyPassphrase> {
        let words = Zeroizing::new(words);
        // Room enough at once: a text that grows leaves copies of itself behind.
        let mut composed = Zeroizing::new(String::with_capacity(words.len().saturating_mul(3)));
        composed.extend(words.nfc());
        if composed.is_empty() { Err(EmptyPassphrase) } else { Ok(Self(composed)) }
    }

    /// The words, for what seals with them.
    pub(crate) fn expose(&self) -> &str {
        &self.0
    }
}

impl fmt::Debug for Passphrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Passphrase(secret)")
    }
}

/// How hard a passphrase is stretched. Stored with each wrap.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stretch {
    pub(super) memory_kib: u32,
    pub(super) passes: u32,
    pub(super) lanes: u32,
}

/// The weakest stretching ever released for real use. Later settings may ask for more; a diary
/// made with this one must open forever.
const LEAST: Stretch = Stretch { memory_kib: 64 * 1024, passes: 3, lanes: 1 };

/// The most that is believed of a stored wrap: a garbled file cannot ask for more memory or time.
const MOST: Stretch = Stretch { memory_kib: 256 * 1024, passes: 10, lanes: 4 };

impl Stretch {
    /// The setting for real use: 64 MiB, 3 passes, 1 lane.
    ///
    /// RFC 9106, section 4, recommends 64 MiB and 3 passes where memory is scarce, with 4 lanes;
    /// one lane is used because the library computes lanes one after the other.
    #[must_use]
    pub fn everyday() -> Self {
        Self { memory_kib: 64 * 1024, passes: 3, lanes: 1 }
    }

    /// **Protects nothing.** For tests and invented diaries that must open a thousand times a
    /// second: 8 KiB, 1 pass.
    #[must_use]
    pub fn cheap_for_tests_only() -> Self {
        Self { memory_kib: 8, passes: 1, lanes: 1 }
    }

    /// Whether a stored setting lies between the weakest ever released (weaker only for a keeper
    /// that is itself weaker: a test's) and the most a device can be expected to give.
    pub(super) fn believes(self, stored: Stretch) -> bool {
        (self.memory_kib.min(LEAST.memory_kib)..=MOST.memory_kib).contains(&stored.memory_kib)
            && (self.passes.min(LEAST.passes)..=MOST.passes).contains(&stored.passes)
            && (self.lanes.min(LEAST.lanes)..=MOST.lanes).contains(&stored.lanes)
    }
}

/// Keeps the data key under a passphrase.
#[derive(Debug)]
pub struct PassphraseKeeper {
    passphrase: Passphrase,
    stretch: Stretch,
}

impl PassphraseKeeper {
    /// A keeper that wraps with this stretching and refuses a stored wrap with a weaker one.
    #[must_use]
    pub fn new(passphrase: Passphrase, stretch: Stretch) -> Self {
        Self { passphrase, stretch }
    }

    fn stretched(&self, how: Stretch, salt: &[u8]) -> Result<Zeroizing<[u8; 32]>, KeeperError> {
        let mut key = Zeroizing::new([0u8; 32]);
        stretch(self.passphrase.0.as_bytes(), &[], salt, how, key.as_mut_slice())?;
        Ok(key)
    }
}

/// Stretches a secret with Argon2id into as many bytes as `made` has. `also`: a second secret without which
/// the first leads nowhere (the secret value K of RFC 9106, section 3.1); empty: none.
pub(crate) fn stretch(
    secret: &[u8],
    also: &[u8],
    salt: &[u8],
    how: Stretch,
    made: &mut [u8],
) -> Result<(), KeeperError> {
    let params = Params::new(how.memory_kib, how.passes, how.lanes, Some(made.len()))
        .map_err(|_| KeeperError::WrapDamaged)?;
    // The blocks are reserved by hand: a phone without the memory must get an answer, not an abort.
    let mut blocks = Vec::new();
    blocks.try_reserve_exact(params.block_count()).map_err(|_| KeeperError::TooLittleMemory)?;
    blocks.resize(params.block_count(), argon2::Block::new());
    let mut blocks = Zeroizing::new(blocks);
    Argon2::new_with_secret(also, Algorithm::Argon2id, Version::V0x13, params)
        .map_err(|_| KeeperError::WrapDamaged)?
        .hash_password_into_with_memory(secret, salt, made, blocks.as_mut_slice())
        .map_err(|_| KeeperError::WrapDamaged)
}

impl KeyKeeper for PassphraseKeeper {
    fn kind(&self) -> KeeperKind {
        KeeperKind::Passphrase
    }

    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        let wrap = StretchedWrap::new(self.stretch, random)?;
        let stretched = self.stretched(self.stretch, wrap.salt())?;
        Ok(wrap.seal(&stretched, key)?.to_vec())
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let wrap = StretchedWrap::read(wrap).filter(|_| wrap.len() == LEN);
        let wrap = wrap.ok_or(KeeperError::WrapDamaged)?;
        let stored = wrap.how();
        if !self.stretch.believes(stored) {
            return Err(KeeperError::WrapDamaged);
        }
        let stretched = self.stretched(stored, wrap.salt())?;
        wrap.open(&stretched)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ports::sim::SeededRandom;

    fn keeper(words: &str) -> PassphraseKeeper {
        let words = Passphrase::new(words.to_owned()).unwrap();
        PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
    }

    #[test]
    fn the_way_an_accent_was_typed_does_not_matter() {
        let random = SeededRandom::new(1);
        let key = DataKey::new(&random).unwrap();
        let wrap = keeper("caf\u{e9} ma\u{f1}ana").wrap(&key, &random).unwrap();
        let other = keeper("cafe\u{301} man\u{303}ana").unwrap(&wrap).unwrap();
        assert_eq!(other.expose(), key.expose());
        assert!(keeper("cafe manana").unwrap(&wrap).is_err());
    }

    #[test]
    fn a_wrap_opens_with_the_same_words_only() {
        let random = SeededRandom::new(1);
        let key = DataKey::new(&random).unwrap();
        let wrap = keeper("invented words").wrap(&key, &random).unwrap();
        assert_eq!(wrap.len(), LEN);
        assert_eq!(keeper("invented words").unwrap(&wrap).unwrap().expose(), key.expose());
        let wrong = keeper("other words").unwrap(&wrap).unwrap_err();
        assert_eq!(wrong, KeeperError::WrongSecret);
    }

    #[test]
    fn no_changed_byte_of_a_wrap_passes_and_none_asks_for_too_much() {
        let random = SeededRandom::new(2);
        let key = DataKey::new(&random).unwrap();
        let wrap = keeper("invented words").wrap(&key, &random).unwrap();
        for at in 0..wrap.len() {
            for bit in 0..8 {
                // Passes 1 -> 3, 5, 9 and memory within 256 MiB are in bounds: they are stretched
                // and then refused. The costliest of them would make this test slow.
                if (1..5).contains(&at) && 8u32 ^ (1 << (8 * (at - 1) + bit)) > 4096 {
                    continue;
                }
                let mut garbled = wrap.clone();
                garbled[at] ^= 1 << bit;
                assert!(keeper("invented words").unwrap(&garbled).is_err(), "byte {at} bit {bit}");
            }
        }
    }

    #[test]
    fn a_wrap_that_asks_for_100_gigabytes_is_refused_before_any_stretching() {
        let random = SeededRandom::new(3);
        let key = DataKey::new(&random).unwrap();
        let mut wrap = keeper("invented words").wrap(&key, &random).unwrap();
        wrap[1..5].copy_from_slice(&(100u32 * 1024 * 1024).to_le_bytes());
        assert_eq!(keeper("invented words").unwrap(&wrap).unwrap_err(), KeeperError::WrapDamaged);
    }

    #[test]
    fn a_keeper_for_real_use_refuses_a_weak_wrap() {
        let random = SeededRandom::new(4);
        let key = DataKey::new(&random).unwrap();
        let weak = keeper("invented words").wrap(&key, &random).unwrap();
        let words = Passphrase::new("invented words".to_owned()).unwrap();
        let real = PassphraseKeeper::new(words, Stretch::everyday());
        assert_eq!(real.unwrap(&weak).unwrap_err(), KeeperError::WrapDamaged);
    }

    #[test]
    fn secrets_do_not_print() {
        let random = SeededRandom::new(5);
        let key = DataKey::new(&random).unwrap();
        assert_eq!(format!("{key:?}"), "DataKey(secret)");
        assert!(!format!("{:?}", keeper("invented words")).contains("invented"));
    }
}
