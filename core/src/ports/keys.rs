//! The keeping of the one key that opens a diary.
//!
//! A diary is sealed under a random [`DataKey`]. The key itself never reaches the disk: a
//! [`KeyKeeper`] wraps it (a phone's key store, a passphrase) and only the wrap is stored.

use super::random::{Random, RandomError};
use std::fmt;
use zeroize::Zeroizing;

/// The longest wrap that fits into the `keys` file, in bytes.
pub const WRAP_MOST: usize = 1024;

/// The key everything in one diary hangs on: 32 random bytes, wiped when dropped, never printed.
pub struct DataKey(Zeroizing<[u8; 32]>);

impl DataKey {
    /// A new key.
    ///
    /// # Errors
    /// [`RandomError`] when there are no random bytes.
    pub fn new(random: &dyn Random) -> Result<Self, RandomError> {
        let mut bytes = Zeroizing::new([0u8; 32]);
        random.fill(bytes.as_mut_slice())?;
        Ok(Self(bytes))
    }

    /// The key a keeper has unwrapped.
    #[must_use]
    pub fn from_bytes(bytes: Zeroizing<[u8; 32]>) -> Self {
        Self(bytes)
    }

    /// The key's bytes, for a keeper to wrap.
    #[must_use]
    pub fn expose(&self) -> &[u8; 32] {
        &self.0
    }
}

impl fmt::Debug for DataKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("DataKey(secret)")
    }
}

/// Which sort of keeper made a wrap. Stored beside it, so that a diary can carry several.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum KeeperKind {
    /// A passphrase, stretched.
    Passphrase,
    /// The phone's own key store.
    PhoneKeyStore,
    /// The words written down at first use.
    RecoveryPhrase,
}

impl KeeperKind {
    /// The number stored for it.
    #[must_use]
    pub fn code(self) -> u16 {
        match self {
            KeeperKind::Passphrase => 1,
            KeeperKind::PhoneKeyStore => 2,
            KeeperKind::RecoveryPhrase => 3,
        }
    }
}

/// Why a keeper did not give the key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum KeeperError {
    /// The passphrase is not the one this diary was made with.
    #[error("this passphrase or phrase does not open this diary; check it and type it again")]
    WrongSecret,
    /// The wrap opens with a code as well, and none was given.
    #[error("a code is needed to open this diary; give it and try again")]
    CodeAsked,
    /// A newer program made the wrap.
    #[error("a newer version made this key; update to open the diary")]
    Newer,
    /// The stored wrap makes no sense, or asks for a stretching outside the allowed bounds.
    #[error("the stored key cannot be used; restore the diary from a backup")]
    WrapDamaged,
    /// The key store has no such key any more (the phone was reset, or its screen lock removed).
    #[error("this phone no longer holds the key; restore the diary with the recovery phrase")]
    KeyGone,
    /// The person or the system refused just now.
    #[error("the key could not be read just now; unlock the phone and try again")]
    Refused,
    /// Too little memory for the stretching.
    #[error("too little memory to open the diary; close other programs and try again")]
    TooLittleMemory,
    /// No random bytes.
    #[error(transparent)]
    Random(#[from] RandomError),
}

/// Wraps and unwraps a diary's data key. Called when a diary is made, opened, put under new keys,
/// erased or restored, and at no other time; no lock inside the process is held meanwhile.
pub trait KeyKeeper: fmt::Debug {
    /// Which sort it is.
    fn kind(&self) -> KeeperKind;

    /// Wraps the key into at most [`WRAP_MOST`] bytes that reveal nothing without the keeper.
    ///
    /// # Errors
    /// [`KeeperError`] when the keeper cannot do it now.
    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError>;

    /// Unwraps what [`wrap`](KeyKeeper::wrap) gave. The bytes come from disk: they may be garbled.
    ///
    /// # Errors
    /// [`KeeperError`] when the secret is wrong, the bytes are garbled or the keeper refuses.
    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError>;

    /// Destroys whatever else this keeper still holds for this diary: from now on only this wrap has
    /// to open. Called when the diary was put under new keys, perhaps more than once. A keeper that
    /// holds nothing outside its wraps has nothing to do.
    fn keep_only(&self, _wrap: &[u8]) {}

    /// Destroys everything this keeper holds for this diary: it was erased. Perhaps called more than
    /// once.
    fn forget(&self) {}
}
