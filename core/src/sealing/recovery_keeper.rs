//! Keeps a diary's key under the recovery phrase: the wrap is an age file of the 32 bytes.
//!
//! [`RecoveryKeeper`] holds the phrase and does both; [`RecipientKeeper`] holds only the public half
//! and wraps a new key without asking for the words. When which is used is decided elsewhere.

use super::age_file::{OpenError, OpenWith, SealTo, open, seal};
use super::age_keys::Recipient;
use super::phrase::RecoveryPhrase;
use crate::ports::{DataKey, KeeperError, KeeperKind, KeyKeeper, Random, RandomError, WRAP_MOST};
use zeroize::Zeroizing;

/// Bytes of a data key.
const KEY: usize = 32;

/// Wraps and unwraps with the recovery phrase.
#[derive(Debug)]
pub struct RecoveryKeeper {
    phrase: RecoveryPhrase,
}

/// Wraps to the recovery phrase's public half. It cannot unwrap: it answers
/// [`KeeperError::KeyGone`], which asks for the phrase.
#[derive(Debug)]
pub struct RecipientKeeper {
    recipient: Recipient,
}

impl RecoveryKeeper {
    /// A keeper with these words.
    #[must_use]
    pub fn new(phrase: RecoveryPhrase) -> Self {
        Self { phrase }
    }

    /// The public half, to be stored for [`RecipientKeeper`].
    #[must_use]
    pub fn recipient(&self) -> Recipient {
        self.phrase.recipient()
    }
}

impl RecipientKeeper {
    /// A keeper that seals to this key.
    #[must_use]
    pub fn new(recipient: Recipient) -> Self {
        Self { recipient }
    }
}

fn wrap_to(recipient: Recipient, key: &DataKey) -> Result<Vec<u8>, KeeperError> {
    // Sealing 32 bytes in memory to one key can fail for want of randomness alone.
    let wrap = seal(key.expose(), &SealTo::Recipients(vec![recipient]))
        .map_err(|_| KeeperError::Random(RandomError))?;
    if wrap.len() > WRAP_MOST { Err(KeeperError::WrapDamaged) } else { Ok(wrap) }
}

impl KeyKeeper for RecoveryKeeper {
    fn kind(&self) -> KeeperKind {
        KeeperKind::RecoveryPhrase
    }

    /// The randomness comes from the operating system, see [`super`].
    fn wrap(&self, key: &DataKey, _random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        wrap_to(self.phrase.recipient(), key)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        if wrap.len() > WRAP_MOST {
            return Err(KeeperError::WrapDamaged);
        }
        let with = OpenWith::Identities(vec![self.phrase.identity().clone()]);
        let opened = open(wrap, &with, KEY as u64).map_err(|error| match error {
            OpenError::WrongKey => KeeperError::WrongSecret,
            _ => KeeperError::WrapDamaged,
        })?;
        let mut key = Zeroizing::new([0u8; KEY]);
        if opened.len() != KEY {
            return Err(KeeperError::WrapDamaged);
        }
        key.copy_from_slice(&opened);
        Ok(DataKey::from_bytes(key))
    }
}

impl KeyKeeper for RecipientKeeper {
    fn kind(&self) -> KeeperKind {
        KeeperKind::RecoveryPhrase
    }

    /// The randomness comes from the operating system, see [`super`].
    fn wrap(&self, key: &DataKey, _random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        wrap_to(self.recipient.clone(), key)
    }

    fn unwrap(&self, _wrap: &[u8]) -> Result<DataKey, KeeperError> {
        Err(KeeperError::KeyGone)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::ports::sim::SeededRandom;

    fn keeper(seed: u64) -> RecoveryKeeper {
        RecoveryKeeper::new(RecoveryPhrase::new(&SeededRandom::new(seed)).unwrap())
    }

    #[test]
    fn a_wrap_opens_with_the_same_phrase_only_whoever_made_it() {
        let random = SeededRandom::new(1);
        let key = DataKey::new(&random).unwrap();
        let public = RecipientKeeper::new(keeper(2).recipient());
        for wrap in [keeper(2).wrap(&key, &random).unwrap(), public.wrap(&key, &random).unwrap()] {
            assert_eq!(keeper(2).unwrap(&wrap).unwrap().expose(), key.expose());
            assert_eq!(keeper(3).unwrap(&wrap).unwrap_err(), KeeperError::WrongSecret);
            assert_eq!(public.unwrap(&wrap).unwrap_err(), KeeperError::KeyGone);
        }
        assert_eq!(public.kind(), keeper(2).kind());
    }

    /// The library pads the header with a stanza of random length, so one wrap proves nothing.
    #[test]
    fn a_wrap_always_fits() {
        let random = SeededRandom::new(4);
        let key = DataKey::new(&random).unwrap();
        let keeper = keeper(4);
        let longest = (0..2000).map(|_| keeper.wrap(&key, &random).unwrap().len()).max().unwrap();
        assert!(longest <= WRAP_MOST, "{longest}");
    }

    #[test]
    fn no_altered_or_cut_wrap_passes() {
        let random = SeededRandom::new(5);
        let key = DataKey::new(&random).unwrap();
        let keeper = keeper(5);
        let wrap = keeper.wrap(&key, &random).unwrap();
        for at in 0..wrap.len() {
            let mut garbled = wrap.clone();
            garbled[at] ^= 1;
            assert!(keeper.unwrap(&garbled).is_err(), "byte {at}");
            assert!(keeper.unwrap(&wrap[..at]).is_err(), "cut at {at}");
        }
        let longer = seal(&[0; 33], &SealTo::Recipients(vec![keeper.recipient()])).unwrap();
        let shorter = seal(&[0; 31], &SealTo::Recipients(vec![keeper.recipient()])).unwrap();
        assert_eq!(keeper.unwrap(&longer).unwrap_err(), KeeperError::WrapDamaged);
        assert_eq!(keeper.unwrap(&shorter).unwrap_err(), KeeperError::WrapDamaged);
    }
}
