//! The one thing a shell brings: the keeping of the diary's key, and of the mark by which an older copy of
//! the diary is noticed. Decides that whatever a shell's code throws is a plain failure: no word of it is
//! passed on. Leaves what follows from a failure to the core.

use std::fmt;
use std::sync::Arc;

use frond_core::ports::{
    DataKey, KeeperError, KeeperKind, KeyKeeper as CoreKeeper, MarkError, MarkKeeper, Random,
};
use zeroize::Zeroizing;

/// Why a shell's keeper did not do it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error, uniffi::Error)]
pub enum KeeperTrouble {
    /// The phone's key store has no such key any more.
    #[error("the key is gone")]
    KeyGone,
    /// The person or the system refused just now.
    #[error("the key store refused just now")]
    Refused,
    /// It did not work, whatever it was.
    #[error("the key store failed")]
    Failed,
}

impl From<uniffi::UnexpectedUniFFICallbackError> for KeeperTrouble {
    fn from(_: uniffi::UnexpectedUniFFICallbackError) -> Self {
        // Its reason may be a whole stack trace: it ends here.
        Self::Failed
    }
}

/// The phone's keeping of the diary's key. Never called while a lock of the facade is held; called on the
/// thread of the request.
#[uniffi::export(foreign)]
pub trait KeyKeeper: Send + Sync {
    /// Wraps the key: what is given back opens only with this phone's key store.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn wrap(&self, key: Vec<u8>) -> Result<Vec<u8>, KeeperTrouble>;

    /// Unwraps what `wrap` gave.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn unwrap(&self, wrap: Vec<u8>) -> Result<Vec<u8>, KeeperTrouble>;

    /// From now on only this wrap has to open: older keys are destroyed.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn keep_only(&self, wrap: Vec<u8>) -> Result<(), KeeperTrouble>;

    /// Destroys every key: the diary was erased.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn forget(&self) -> Result<(), KeeperTrouble>;

    /// Keeps the mark of a diary, outside of the diary's folder, in place of the one before.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn keep_mark(&self, diary: Vec<u8>, mark: Vec<u8>) -> Result<(), KeeperTrouble>;

    /// The mark kept last.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn kept_mark(&self, diary: Vec<u8>) -> Result<Option<Vec<u8>>, KeeperTrouble>;

    /// Removes the mark.
    ///
    /// # Errors
    /// [`KeeperTrouble`].
    fn forget_mark(&self, diary: Vec<u8>) -> Result<(), KeeperTrouble>;
}

/// The shell's keeper as the core knows one.
#[derive(Clone)]
pub(crate) struct Brought(pub(crate) Arc<dyn KeyKeeper>);

impl fmt::Debug for Brought {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Brought(secret)")
    }
}

fn failed(trouble: KeeperTrouble) -> KeeperError {
    match trouble {
        KeeperTrouble::KeyGone => KeeperError::KeyGone,
        KeeperTrouble::Refused | KeeperTrouble::Failed => KeeperError::Refused,
    }
}

impl CoreKeeper for Brought {
    fn kind(&self) -> KeeperKind {
        KeeperKind::PhoneKeyStore
    }

    fn wrap(&self, key: &DataKey, _: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        self.0.wrap(key.expose().to_vec()).map_err(failed)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let given = Zeroizing::new(self.0.unwrap(wrap.to_vec()).map_err(failed)?);
        let mut key = Zeroizing::new([0u8; 32]);
        if given.len() != key.len() {
            return Err(KeeperError::WrapDamaged);
        }
        key.copy_from_slice(&given);
        Ok(DataKey::from_bytes(key))
    }

    fn keep_only(&self, wrap: &[u8]) {
        // What is left of older keys opens nothing that still lies on the disk.
        let _left = self.0.keep_only(wrap.to_vec());
    }

    fn forget(&self) {
        let _left = self.0.forget();
    }
}

impl MarkKeeper for Brought {
    fn keep(&self, diary: &[u8; 16], mark: &[u8]) -> Result<(), MarkError> {
        self.0.keep_mark(diary.to_vec(), mark.to_vec()).map_err(|_| MarkError)
    }

    fn kept(&self, diary: &[u8; 16]) -> Result<Option<Vec<u8>>, MarkError> {
        self.0.kept_mark(diary.to_vec()).map_err(|_| MarkError)
    }

    fn forget(&self, diary: &[u8; 16]) -> Result<(), MarkError> {
        self.0.forget_mark(diary.to_vec()).map_err(|_| MarkError)
    }
}
