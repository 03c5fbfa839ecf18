//! age files, version 1 (C2SP age specification): sealing and opening, with limits on what a stranger's
//! file may ask for.

use std::fmt;
use std::io::{Read, Write};
use std::iter;
use std::str::FromStr;

use age::armor::ArmoredReader;
use age::secrecy::{ExposeSecret, SecretString};
use age::{DecryptError, Decryptor, Encryptor};
use zeroize::Zeroizing;

use crate::ports::Passphrase;

/// The work a passphrase is stretched with when sealing: scrypt with N = 2^16 (64 MiB).
const WORK: u8 = 16;
/// The most work a file may ask for when it is opened: 2^18 (256 MiB, some seconds).
const WORK_MOST: u8 = 18;

const BINARY: &[u8] = b"age-encryption.org/";
const ARMOR: &[u8] = b"-----BEGIN AGE ENCRYPTED FILE-----";

/// Somebody to whom a file can be sealed: an age X25519 public key.
#[derive(Clone, PartialEq, Eq)]
pub struct Recipient(age::x25519::Recipient);

/// What opens a file sealed to its recipient. Never printed.
#[derive(Clone)]
pub struct Identity(age::x25519::Identity);

/// This text is no key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum KeyTextError {
    /// No recipient.
    #[error("this is not an age recipient; it begins with age1 and is copied whole")]
    Recipient,
    /// No identity.
    #[error("this is not an age identity; it begins with AGE-SECRET-KEY-1 and is copied whole")]
    Identity,
}

impl FromStr for Recipient {
    type Err = KeyTextError;
    fn from_str(text: &str) -> Result<Self, KeyTextError> {
        text.trim().parse().map(Self).map_err(|_| KeyTextError::Recipient)
    }
}

impl fmt::Display for Recipient {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl fmt::Debug for Recipient {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl FromStr for Identity {
    type Err = KeyTextError;
    fn from_str(text: &str) -> Result<Self, KeyTextError> {
        text.trim().parse().map(Self).map_err(|_| KeyTextError::Identity)
    }
}

impl fmt::Debug for Identity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Identity(secret)")
    }
}

impl Identity {
    /// A new one, from the operating system's randomness.
    #[must_use]
    pub fn generate() -> Self {
        Self(age::x25519::Identity::generate())
    }

    /// The identity in a file that an age program keeps: its first line that is no comment.
    ///
    /// # Errors
    /// [`KeyTextError::Identity`] when there is none.
    pub fn from_file(text: &str) -> Result<Self, KeyTextError> {
        let line = text.lines().map(str::trim).find(|l| !l.is_empty() && !l.starts_with('#'));
        line.ok_or(KeyTextError::Identity)?.parse()
    }

    /// Its text, for the person who keeps it.
    #[must_use]
    pub fn expose(&self) -> Zeroizing<String> {
        Zeroizing::new(self.0.to_string().expose_secret().to_owned())
    }

    /// To whom a file is sealed that this opens.
    #[must_use]
    pub fn recipient(&self) -> Recipient {
        Recipient(self.0.to_public())
    }
}

/// To whom a file is sealed.
#[derive(Debug)]
pub enum SealTo {
    /// To any of these.
    Recipients(Vec<Recipient>),
    /// To whoever knows the passphrase.
    Passphrase(Passphrase),
}

/// With what a file is opened.
#[derive(Debug)]
pub enum OpenWith {
    /// With any of these.
    Identities(Vec<Identity>),
    /// With the passphrase.
    Passphrase(Passphrase),
}

/// Why nothing was sealed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SealError {
    /// Nobody was named to seal it to.
    #[error("nobody is named to seal this to; choose whom it is for")]
    Nobody,
    /// It could not be written.
    #[error("the sealed file could not be written; check the place and its room")]
    Write,
}

/// Why a file did not open.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum OpenError {
    /// It is no age file.
    #[error("this is not a sealed file; choose the file that was sealed")]
    NotSealed,
    /// A newer program sealed it.
    #[error("this file was sealed in a newer way; update Frond to open it")]
    Newer,
    /// The passphrase or key is not one it was sealed to.
    #[error("this does not open the file; check the passphrase or the key")]
    WrongKey,
    /// It was changed or cut short.
    #[error("this file is damaged or was cut short; ask for it once more")]
    Damaged,
    /// It asks for more work than any file of ours would.
    #[error("this file asks for more work than is reasonable, so it was not opened")]
    TooMuchWork,
    /// It holds more than is expected.
    #[error("this file holds more than is expected, so it was not opened")]
    TooLarge,
    /// It could not be read.
    #[error("the file could not be read; try again")]
    Read,
}

impl From<DecryptError> for OpenError {
    fn from(error: DecryptError) -> Self {
        match error {
            DecryptError::ExcessiveWork { .. } => Self::TooMuchWork,
            // The last is what a wrong passphrase gives; a changed header or content gives others.
            DecryptError::NoMatchingKeys
            | DecryptError::KeyDecryptionFailed
            | DecryptError::DecryptionFailed => Self::WrongKey,
            DecryptError::UnknownFormat => Self::Newer,
            DecryptError::Io(error) => Self::from(error),
            _ => Self::Damaged,
        }
    }
}

impl From<std::io::Error> for OpenError {
    fn from(error: std::io::Error) -> Self {
        use std::io::ErrorKind::{InvalidData, InvalidInput, UnexpectedEof};
        match error.kind() {
            InvalidData | InvalidInput | UnexpectedEof => Self::Damaged,
            _ => Self::Read,
        }
    }
}

/// Whether these bytes begin like an age file, binary or armored.
#[must_use]
pub fn is_age(bytes: &[u8]) -> bool {
    bytes.starts_with(BINARY) || bytes.trim_ascii_start().starts_with(ARMOR)
}

/// Seals bytes, in the binary form.
///
/// # Errors
/// [`SealError`].
pub fn seal(plain: &[u8], to: &SealTo) -> Result<Vec<u8>, SealError> {
    let mut out = Vec::with_capacity(plain.len().saturating_add(plain.len() / 1000 + 1024));
    let mut from = plain;
    seal_into(&mut from, to, &mut out)?;
    Ok(out)
}

/// Seals what is read, as it is read; memory does not grow with it.
///
/// # Errors
/// [`SealError`]; what was written is then no file.
pub fn seal_into(plain: &mut dyn Read, to: &SealTo, out: &mut dyn Write) -> Result<(), SealError> {
    let encryptor = match to {
        SealTo::Recipients(recipients) => {
            Encryptor::with_recipients(recipients.iter().map(|r| &r.0 as &dyn age::Recipient))
                .map_err(|_| SealError::Nobody)?
        }
        SealTo::Passphrase(passphrase) => {
            let mut recipient = age::scrypt::Recipient::new(secret(passphrase));
            recipient.set_work_factor(WORK);
            Encryptor::with_recipients(iter::once(&recipient as &dyn age::Recipient))
                .map_err(|_| SealError::Nobody)?
        }
    };
    let mut writer = encryptor.wrap_output(out).map_err(|_| SealError::Write)?;
    std::io::copy(plain, &mut writer).map_err(|_| SealError::Write)?;
    writer.finish().map(|_| ()).map_err(|_| SealError::Write)
}

/// Opens a file, binary or armored, that holds at most `most` bytes.
///
/// # Errors
/// [`OpenError`]; nothing of the content is given then.
pub fn open(bytes: &[u8], with: &OpenWith, most: u64) -> Result<Zeroizing<Vec<u8>>, OpenError> {
    if !is_age(bytes) {
        return Err(OpenError::NotSealed);
    }
    let decryptor = Decryptor::new_buffered(ArmoredReader::new(bytes))?;
    let reader = match with {
        OpenWith::Identities(identities) => {
            decryptor.decrypt(identities.iter().map(|i| &i.0 as &dyn age::Identity))?
        }
        OpenWith::Passphrase(passphrase) => {
            let mut identity = age::scrypt::Identity::new(secret(passphrase));
            identity.set_max_work_factor(WORK_MOST);
            decryptor.decrypt(iter::once(&identity as &dyn age::Identity))?
        }
    };
    // Large enough at once: a buffer that grows leaves copies of itself behind. The content is always
    // shorter than the file.
    let room = usize::try_from(most).unwrap_or(usize::MAX).min(bytes.len());
    let mut plain = Zeroizing::new(Vec::with_capacity(room.saturating_add(32)));
    reader.take(most.saturating_add(1)).read_to_end(&mut plain)?;
    if plain.len() as u64 > most {
        return Err(OpenError::TooLarge);
    }
    Ok(plain)
}

fn secret(passphrase: &Passphrase) -> SecretString {
    SecretString::from(passphrase.expose().to_owned())
}
