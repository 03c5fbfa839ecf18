//! Keepers of a diary's key by the recovery phrase: one that opens, with the words, and one that only wraps,
//! with the recipient that the words led to, so that new keys can be wrapped while the paper stays where it
//! is. The wrap is an age file of the 32 bytes.

use zeroize::Zeroizing;

use super::age_file::{OpenError, OpenWith, Recipient, SealTo, open, seal};
use super::phrase::RecoveryPhrase;
use crate::ports::{DataKey, KeeperError, KeeperKind, KeyKeeper, Random};

/// Opens with the words.
#[derive(Debug)]
pub struct RecoveryKeeper(RecoveryPhrase);

/// Wraps, and opens nothing.
#[derive(Debug)]
pub struct RecipientKeeper(Recipient);

impl RecoveryKeeper {
    /// A keeper with these words.
    #[must_use]
    pub fn new(phrase: RecoveryPhrase) -> Self {
        Self(phrase)
    }
}

impl RecipientKeeper {
    /// A keeper to this recipient.
    #[must_use]
    pub fn new(recipient: Recipient) -> Self {
        Self(recipient)
    }
}

fn wrapped(key: &DataKey, recipient: &Recipient) -> Result<Vec<u8>, KeeperError> {
    let to = SealTo::Recipients(vec![recipient.clone()]);
    seal(key.expose(), &to).map_err(|_| KeeperError::Refused)
}

impl KeyKeeper for RecoveryKeeper {
    fn kind(&self) -> KeeperKind {
        KeeperKind::RecoveryPhrase
    }

    fn wrap(&self, key: &DataKey, _: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        wrapped(key, &self.0.recipient())
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let with = OpenWith::Identities(vec![self.0.identity()]);
        let bytes = open(wrap, &with, 32).map_err(|error| match error {
            OpenError::WrongKey => KeeperError::WrongSecret,
            _ => KeeperError::WrapDamaged,
        })?;
        let key = <[u8; 32]>::try_from(bytes.as_slice()).map_err(|_| KeeperError::WrapDamaged)?;
        Ok(DataKey::from_bytes(Zeroizing::new(key)))
    }
}

impl KeyKeeper for RecipientKeeper {
    fn kind(&self) -> KeeperKind {
        KeeperKind::RecoveryPhrase
    }

    fn wrap(&self, key: &DataKey, _: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        wrapped(key, &self.0)
    }

    fn unwrap(&self, _: &[u8]) -> Result<DataKey, KeeperError> {
        Err(KeeperError::Refused)
    }
}
