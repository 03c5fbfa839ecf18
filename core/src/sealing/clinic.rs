//! The keys of a clinic: one that signs plans, one that summaries are sealed to, one secret under which
//! the desk keeps its own files. They live in one file, an age file under a passphrase, which is its own
//! backup: a copy of it, with the passphrase, is all that is needed on another computer.
//!
//! New keys can take the place of old ones. The old signing key then signs the new one ([`Follows`]), so
//! that a phone that knows the old one can be shown that the change is meant; the old sealing keys stay,
//! to open what was sealed to them.
//!
//! Leaves to the desk where the file lies and what is signed.

mod boxed;
mod follows;

pub use boxed::{BoxError, BoxKey};
pub use follows::Follows;

use std::fmt;

use hkdf::Hkdf;
use serde::{Deserialize, Serialize};
use sha2::Sha256;
use zeroize::{Zeroize, Zeroizing};

use super::{
    Context, Identity, OpenError, OpenWith, Recipient, SealError, SealTo, Signature, SigningKey,
    VerifyKey, open, seal,
};
use crate::ports::{Passphrase, Random, RandomError};
use data_encoding::BASE64;

/// The version of the file of keys that this program writes and reads.
const VERSION: u32 = 1;
/// The longest file of keys: a few kilobytes, with room for many changes of keys.
pub const MOST_BYTES: u64 = 64 * 1024;

/// A clinic's keys, open. Wiped when dropped, never printed.
pub struct ClinicKeys {
    signing: SigningKey,
    /// The first one is sealed to now; the others open what is older.
    identities: Vec<Identity>,
    /// Under which the desk keeps its own files.
    own: Zeroizing<[u8; 32]>,
    /// How the signing key came to follow the one before, newest last.
    follows: Vec<Follows>,
}

/// Why a file of keys did not open. Each says what to do next.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum ClinicKeysError {
    /// The age file did not open.
    #[error(transparent)]
    Open(#[from] OpenError),
    /// It opened and holds something else.
    #[error("this file holds no keys of a clinic; choose the file that was kept as their copy")]
    NotKeys,
    /// A newer version.
    #[error("these keys were written by a newer Frond; update Frond to use them")]
    Newer,
}

/// What stands inside the age file.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Kept {
    frond_clinic_keys: u32,
    /// The seed of the signing key, 32 bytes in base64.
    signing: String,
    /// `AGE-SECRET-KEY-1...`, the newest first.
    sealing: Vec<String>,
    /// 32 bytes in base64.
    own: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    follows: Vec<Follows>,
}

impl Drop for Kept {
    fn drop(&mut self) {
        self.signing.zeroize();
        self.sealing.zeroize();
        self.own.zeroize();
    }
}

impl ClinicKeys {
    /// New keys.
    ///
    /// # Errors
    /// [`RandomError`] when there are no random bytes.
    pub fn new(random: &dyn Random) -> Result<Self, RandomError> {
        let mut own = Zeroizing::new([0u8; 32]);
        random.fill(own.as_mut_slice())?;
        Ok(Self {
            signing: SigningKey::new(random)?,
            identities: vec![new_identity(random)?],
            own,
            follows: Vec::new(),
        })
    }

    /// New keys in the place of these: the old signing key signs the new one, and what was sealed to the
    /// old keys still opens. The desk's own files stay under the secret they are under.
    ///
    /// # Errors
    /// [`RandomError`].
    pub fn renewed(&self, random: &dyn Random) -> Result<Self, RandomError> {
        let signing = SigningKey::new(random)?;
        let mut identities = vec![new_identity(random)?];
        identities.extend(self.identities.iter().cloned());
        let mut follows = self.follows.clone();
        follows.push(Follows::sign(&self.signing, &signing.verify_key()));
        Ok(Self { signing, identities, own: self.own.clone(), follows })
    }

    /// The file of keys, sealed under the passphrase.
    ///
    /// # Errors
    /// [`SealError`] when it could not be sealed.
    pub fn seal(&self, passphrase: Passphrase) -> Result<Vec<u8>, SealError> {
        let kept = Kept {
            frond_clinic_keys: VERSION,
            signing: BASE64.encode(self.signing.seed().as_slice()),
            sealing: self.identities.iter().map(|one| one.to_text().as_str().to_owned()).collect(),
            own: BASE64.encode(self.own.as_slice()),
            follows: self.follows.clone(),
        };
        // Room enough at once: a buffer that grows leaves copies of itself behind.
        let room = 1024 + 128 * kept.sealing.len() + 512 * kept.follows.len();
        let mut text = Zeroizing::new(Vec::with_capacity(room));
        serde_json::to_writer(&mut *text, &kept).map_err(|_| SealError::Together)?;
        debug_assert!(text.len() <= room);
        seal(&text, &SealTo::Passphrase(passphrase))
    }

    /// Opens a file of keys.
    ///
    /// # Errors
    /// [`ClinicKeysError`] says what to do next.
    pub fn open(file: &[u8], passphrase: Passphrase) -> Result<Self, ClinicKeysError> {
        let text = open(file, &OpenWith::Passphrase(passphrase), MOST_BYTES)?;
        let kept: Kept = serde_json::from_slice(&text).map_err(|_| not_keys(&text))?;
        if kept.frond_clinic_keys != VERSION {
            return Err(not_keys(&text));
        }
        let signing = SigningKey::from_seed(&bytes(&kept.signing)?);
        let identities: Result<Vec<Identity>, _> =
            kept.sealing.iter().map(|text| Identity::parse(text)).collect();
        let identities = identities.map_err(|_| ClinicKeysError::NotKeys)?;
        let own = bytes(&kept.own)?;
        if identities.is_empty() || !linked(&kept.follows, &signing.verify_key()) {
            return Err(ClinicKeysError::NotKeys);
        }
        Ok(Self { signing, identities, own, follows: kept.follows.clone() })
    }

    /// The public half of the signing key: what phones pin.
    #[must_use]
    pub fn verify_key(&self) -> VerifyKey {
        self.signing.verify_key()
    }

    /// Signs the bytes for the context.
    #[must_use]
    pub fn sign(&self, context: Context, bytes: &[u8]) -> Signature {
        self.signing.sign(context, bytes)
    }

    /// The signing key, for what signs with it by itself.
    #[must_use]
    pub fn signing(&self) -> &SigningKey {
        &self.signing
    }

    /// How this key came to follow those before it, oldest first; empty for first keys.
    #[must_use]
    pub fn follows(&self) -> &[Follows] {
        &self.follows
    }

    /// Whom summaries are sealed to now; stands in a plan's `recipients`. There is always one.
    #[must_use]
    pub fn recipient(&self) -> Option<Recipient> {
        self.identities.first().map(Identity::recipient)
    }

    /// What opens summaries sealed to these keys and to those before them.
    #[must_use]
    pub fn open_with(&self) -> OpenWith {
        OpenWith::Identities(self.identities.clone())
    }

    /// The key under which the desk keeps its own files of one kind: HKDF-SHA256 (RFC 5869) of the clinic's
    /// own secret. A label once used never changes; keys of different labels have nothing in common.
    #[must_use]
    pub fn box_key(&self, label: &'static str) -> BoxKey {
        let mut key = Zeroizing::new([0u8; 32]);
        // 32 bytes are always within what HKDF can give, so this cannot fail.
        let given = Hkdf::<Sha256>::new(None, self.own.as_slice())
            .expand_multi_info(&[b"frond 1 desk ", label.as_bytes()], key.as_mut_slice());
        debug_assert!(given.is_ok());
        BoxKey::from_key(key)
    }
}

impl fmt::Debug for ClinicKeys {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("ClinicKeys(secret)")
    }
}

fn new_identity(random: &dyn Random) -> Result<Identity, RandomError> {
    let mut secret = Zeroizing::new([0u8; 32]);
    random.fill(secret.as_mut_slice())?;
    Identity::from_secret(&secret).map_err(|_| RandomError)
}

fn bytes(text: &str) -> Result<Zeroizing<[u8; 32]>, ClinicKeysError> {
    let decoded = BASE64.decode(text.as_bytes()).map(Zeroizing::new);
    let decoded = decoded.map_err(|_| ClinicKeysError::NotKeys)?;
    let mut key = Zeroizing::new([0u8; 32]);
    if decoded.len() != key.len() {
        return Err(ClinicKeysError::NotKeys);
    }
    key.copy_from_slice(&decoded);
    Ok(key)
}

/// Whether each key of the line signed the next, and the last of them `now`.
fn linked(follows: &[Follows], now: &VerifyKey) -> bool {
    let next = follows.iter().skip(1).map(|one| *one.before()).chain([*now]);
    follows.iter().zip(next).all(|(one, next)| one.holds_for(&next))
}

fn not_keys(text: &[u8]) -> ClinicKeysError {
    #[derive(Deserialize)]
    struct Head {
        frond_clinic_keys: u32,
    }
    match serde_json::from_slice::<Head>(text) {
        Ok(Head { frond_clinic_keys }) if frond_clinic_keys > VERSION => ClinicKeysError::Newer,
        _ => ClinicKeysError::NotKeys,
    }
}

#[cfg(test)]
mod tests;
