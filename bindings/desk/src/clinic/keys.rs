//! The clinic's keys on this computer: made at first use, opened by a passphrase, copied elsewhere, changed.
//! Decides that keys which are there are never overwritten by others, and that a copy counts as made only
//! when a file was looked at that really opens. Leaves what keys are to the core.

use frond_core::ports::{Passphrase, Random};
use frond_core::sealing::{ClinicKeys, ClinicKeysError, OpenError};

use super::folder::{Folder, FolderError};

const KEYS: &str = "keys";
const COPIED: &str = "keys-copied";

/// Why keys were not made, opened or kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum KeysError {
    /// There are keys already.
    There,
    /// There are none.
    None,
    /// The passphrase is another one.
    Passphrase,
    /// The file is none of keys, or damaged.
    NotKeys,
    /// Written by a newer program.
    Newer,
    /// A copy of other keys than these.
    OtherKeys,
    /// The keys could not be sealed, or there are no random bytes.
    NotSealed,
    /// The folder.
    Folder(FolderError),
}

impl From<FolderError> for KeysError {
    fn from(error: FolderError) -> Self {
        Self::Folder(error)
    }
}

impl From<ClinicKeysError> for KeysError {
    fn from(error: ClinicKeysError) -> Self {
        match error {
            ClinicKeysError::Open(OpenError::WrongPassphrase) => Self::Passphrase,
            ClinicKeysError::Newer | ClinicKeysError::Open(OpenError::Newer) => Self::Newer,
            ClinicKeysError::Open(_) | ClinicKeysError::NotKeys => Self::NotKeys,
        }
    }
}

/// Whether there are keys.
///
/// # Errors
/// The folder cannot be read.
pub(crate) fn there(folder: &Folder) -> Result<bool, KeysError> {
    Ok(folder.read(KEYS)?.is_some())
}

/// Makes keys where there are none.
///
/// # Errors
/// [`KeysError`]; nothing was then kept.
pub(crate) fn make(
    folder: &Folder,
    random: &dyn Random,
    passphrase: Passphrase,
) -> Result<ClinicKeys, KeysError> {
    if there(folder)? {
        return Err(KeysError::There);
    }
    let keys = ClinicKeys::new(random).map_err(|_| KeysError::NotSealed)?;
    keep(folder, &keys, passphrase)?;
    Ok(keys)
}

/// Opens the keys that are there.
///
/// # Errors
/// [`KeysError`].
pub(crate) fn open(folder: &Folder, passphrase: Passphrase) -> Result<ClinicKeys, KeysError> {
    let file = folder.read(KEYS)?.ok_or(KeysError::None)?;
    Ok(ClinicKeys::open(&file, passphrase)?)
}

/// Takes a copy over where there are no keys: a new computer, or one that lost them.
///
/// # Errors
/// [`KeysError`]; nothing was then kept.
pub(crate) fn restore(
    folder: &Folder,
    copy: &[u8],
    passphrase: Passphrase,
) -> Result<ClinicKeys, KeysError> {
    if there(folder)? {
        return Err(KeysError::There);
    }
    let keys = ClinicKeys::open(copy, passphrase)?;
    folder.put(KEYS, copy)?;
    folder.put(COPIED, b"")?;
    Ok(keys)
}

/// Keeps keys under a passphrase, in the place of those that are there. A copy made before opens no new keys,
/// so it no longer counts.
///
/// # Errors
/// [`KeysError`]; the keys that were there are then still there.
pub(crate) fn keep(
    folder: &Folder,
    keys: &ClinicKeys,
    passphrase: Passphrase,
) -> Result<(), KeysError> {
    let sealed = keys.seal(passphrase).map_err(|_| KeysError::NotSealed)?;
    folder.remove(COPIED)?;
    Ok(folder.put(KEYS, &sealed)?)
}

/// The copy to put elsewhere: the sealed file as it is.
///
/// # Errors
/// [`KeysError`].
pub(crate) fn copy(folder: &Folder) -> Result<Vec<u8>, KeysError> {
    folder.read(KEYS)?.ok_or(KeysError::None)
}

/// Whether a copy was looked at that is one of these keys.
///
/// # Errors
/// The folder cannot be read.
pub(crate) fn is_copied(folder: &Folder) -> Result<bool, KeysError> {
    Ok(folder.read(COPIED)?.is_some())
}

/// Looks at a copy: it opens with the passphrase and holds these keys. Then it counts as made.
///
/// # Errors
/// [`KeysError`].
pub(crate) fn look_at_copy(
    folder: &Folder,
    keys: &ClinicKeys,
    copy: &[u8],
    passphrase: Passphrase,
) -> Result<(), KeysError> {
    let copied = ClinicKeys::open(copy, passphrase)?;
    if copied.verify_key() != keys.verify_key() {
        return Err(KeysError::OtherKeys);
    }
    Ok(folder.put(COPIED, b"")?)
}

#[cfg(test)]
mod tests {
    use frond_core::ports::OsRandom;

    use super::*;

    fn words(text: &str) -> Passphrase {
        Passphrase::new(text.to_owned()).unwrap()
    }

    #[test]
    fn keys_are_made_once_opened_copied_and_restored() {
        let room = tempfile::tempdir().unwrap();
        let folder = Folder::take(&room.path().join("one")).unwrap();
        assert_eq!(open(&folder, words("w")).unwrap_err(), KeysError::None);
        let made = make(&folder, &OsRandom, words("w")).unwrap();
        assert_eq!(make(&folder, &OsRandom, words("w")).unwrap_err(), KeysError::There);
        assert_eq!(open(&folder, words("w")).unwrap().verify_key(), made.verify_key());
        assert_eq!(open(&folder, words("x")).unwrap_err(), KeysError::Passphrase);
        let kept = copy(&folder).unwrap();
        assert!(!is_copied(&folder).unwrap());
        look_at_copy(&folder, &made, &kept, words("w")).unwrap();
        assert!(is_copied(&folder).unwrap());
        // On another computer.
        let other = Folder::take(&room.path().join("two")).unwrap();
        assert_eq!(restore(&other, b"no keys", words("w")).unwrap_err(), KeysError::NotKeys);
        assert!(!there(&other).unwrap());
        let again = restore(&other, &kept, words("w")).unwrap();
        assert_eq!(again.verify_key(), made.verify_key());
        assert_eq!(restore(&other, &kept, words("w")).unwrap_err(), KeysError::There);
    }

    #[test]
    fn a_copy_of_other_keys_or_of_older_ones_does_not_count() {
        let room = tempfile::tempdir().unwrap();
        let folder = Folder::take(&room.path().join("one")).unwrap();
        let made = make(&folder, &OsRandom, words("w")).unwrap();
        let old = copy(&folder).unwrap();
        look_at_copy(&folder, &made, &old, words("w")).unwrap();
        let new = made.renewed(&OsRandom).unwrap();
        keep(&folder, &new, words("other")).unwrap();
        assert!(!is_copied(&folder).unwrap(), "the copy is of the keys before");
        let said = look_at_copy(&folder, &new, &old, words("w")).unwrap_err();
        assert_eq!(said, KeysError::OtherKeys);
        assert!(!is_copied(&folder).unwrap());
    }
}
