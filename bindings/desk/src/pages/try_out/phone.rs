//! The key store of a phone that is only tried out: it lives in this process's memory and is gone with it, as is
//! the diary whose key it keeps. Decides nothing about a code; the core puts that around it, as on a phone.

use frond_core::ports::{
    DataKey, KeeperError, KeeperKind, KeyKeeper, OsRandom, PassphraseKeeper, Random,
};
use zeroize::Zeroizing;

use crate::failure::Failure;
use crate::secret;

/// Wraps with a secret that nobody knows.
#[derive(Debug)]
pub(super) struct TriedPhone(PassphraseKeeper);

impl TriedPhone {
    /// A phone's key store with a key of its own.
    ///
    /// # Errors
    /// No random bytes.
    pub(super) fn new() -> Result<Self, Failure> {
        let mut bytes = Zeroizing::new([0u8; 16]);
        OsRandom.fill(bytes.as_mut()).map_err(|_| {
            Failure::Else("There are no random bytes just now. Try again.".to_owned())
        })?;
        // Room enough at once: a text that grows leaves copies of itself behind.
        let mut words = Zeroizing::new(String::with_capacity(2 * bytes.len()));
        for half in bytes.iter().flat_map(|byte| [byte >> 4, byte & 15]) {
            words.extend(char::from_digit(u32::from(half), 16));
        }
        Ok(Self(secret::keeper(&words)?))
    }
}

impl KeyKeeper for TriedPhone {
    fn kind(&self) -> KeeperKind {
        KeeperKind::PhoneKeyStore
    }

    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        self.0.wrap(key, random)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        // What this store did not make is what a phone that was reset finds: the twelve words open it.
        self.0.unwrap(wrap).map_err(|error| match error {
            KeeperError::WrongSecret => KeeperError::KeyGone,
            other => other,
        })
    }
}
