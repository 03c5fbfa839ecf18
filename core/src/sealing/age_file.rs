//! age files, version 1 (C2SP, age.md): sealing to public keys or to a passphrase, and opening.
//!
//! Decides how hard a passphrase is stretched, how much a stored file may ask for, and what each
//! failure means to a person. Written is the binary form; the armored text form is read too. What is
//! in a file, and its name, are decided elsewhere.
//!
//! The library takes its randomness from the operating system itself: the one exception to the
//! [`Random`](crate::ports::Random) port.
//!
//! Nothing of a file's content is given out before all of it has verified.

use super::age_keys::{Identity, Recipient};
use crate::ports::Passphrase;
use age::armor::ArmoredReader;
use age::secrecy::SecretString;
use age::{DecryptError, Decryptor, EncryptError, Encryptor};
use std::io::{self, BufRead, BufReader, Read, Write};
use std::{fmt, iter};
use zeroize::Zeroizing;

/// How hard a passphrase is stretched when sealing: scrypt with N = 2^16, which takes 64 MiB.
pub const SEAL_WORK: u8 = 16;

/// The hardest stretching a file may ask for when opening: scrypt with N = 2^18, 256 MiB.
pub const OPEN_WORK_MOST: u8 = 18;

/// The longest header that is read, in bytes. A hundred recipients take about a tenth of it. Without
/// a bound the library would parse a hostile header over and over.
const HEADER_MOST: u64 = 128 * 1024;

const MAGIC: &str = "age-encryption.org/";
const ARMOR: &str = "-----BEGIN AGE ENCRYPTED FILE-----";

/// Whom a file is sealed to.
#[derive(Debug)]
pub enum SealTo {
    /// Each of these can open it.
    Recipients(Vec<Recipient>),
    /// Whoever knows the passphrase can open it.
    Passphrase(Passphrase),
}

/// What a file is opened with.
#[derive(Debug)]
pub enum OpenWith {
    /// Any of these secret keys.
    Identities(Vec<Identity>),
    /// The passphrase.
    Passphrase(Passphrase),
}

/// Why nothing was sealed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SealError {
    /// Nobody could open it.
    #[error("there is nobody to seal this for; name a key or choose a passphrase")]
    NoRecipient,
    /// The place it is written to failed.
    #[error("the sealed file could not be written; check that there is space and try again")]
    Write(io::ErrorKind),
    /// The library refused.
    #[error("these keys cannot be used together; seal the file for each of them separately")]
    Together,
}

/// Why a file was not opened. Holds nothing of the file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum OpenError {
    /// Not an age file.
    #[error("this is not a sealed file; choose the file that was sealed")]
    NotAge,
    /// A later version of the format.
    #[error("this file was sealed by a newer program; update this program and try again")]
    Newer,
    /// The passphrase is another one.
    #[error("this passphrase does not open the file; check it and type it again")]
    WrongPassphrase,
    /// Sealed to other keys.
    #[error("this key does not open the file; use the key it was sealed for")]
    WrongKey,
    /// Keys were given, a passphrase is needed.
    #[error("this file was sealed with a passphrase; type the passphrase")]
    NeedsPassphrase,
    /// A passphrase was given, a key is needed.
    #[error("this file was sealed for a key, not with a passphrase; use that key")]
    NeedsKey,
    /// The stretching it asks for is above [`OPEN_WORK_MOST`].
    #[error("this file asks for too much work to open; ask for it to be sealed again")]
    TooMuchWork,
    /// The content or the header is larger than is allowed here.
    #[error("this file holds more than can be read here; check that it is the right file")]
    TooLarge,
    /// Cut short, or altered.
    #[error("this file is damaged or cut short; get it once more from where it came from")]
    Damaged,
    /// The file could not be read.
    #[error("the sealed file could not be read; check that it is still there and try again")]
    Read(io::ErrorKind),
}

/// Whether these bytes begin like an age file, of any version, binary or armored.
#[must_use]
pub fn is_age(bytes: &[u8]) -> bool {
    bytes.starts_with(MAGIC.as_bytes()) || bytes.trim_ascii_start().starts_with(ARMOR.as_bytes())
}

/// Seals bytes into one age file.
///
/// # Errors
/// [`SealError`] when there is nobody to seal for.
pub fn seal(plain: &[u8], to: &SealTo) -> Result<Vec<u8>, SealError> {
    let mut sealing = seal_into(Vec::with_capacity(plain.len() + 1024), to)?;
    sealing.write_all(plain).map_err(|error| SealError::Write(error.kind()))?;
    sealing.finish()
}

/// A file being sealed as it is written. It is complete only after [`finish`](Sealing::finish);
/// without it, it will not open.
pub struct Sealing<W: Write>(age::stream::StreamWriter<W>);

/// Begins an age file: writes its header and gives back where to write the content.
///
/// # Errors
/// [`SealError`] when there is nobody to seal for, or the header could not be written.
pub fn seal_into<W: Write>(output: W, to: &SealTo) -> Result<Sealing<W>, SealError> {
    let encryptor = match to {
        SealTo::Recipients(recipients) => Encryptor::with_recipients(
            recipients.iter().map(|recipient| &recipient.0 as &dyn age::Recipient),
        ),
        SealTo::Passphrase(passphrase) => {
            let mut recipient = age::scrypt::Recipient::new(secret(passphrase));
            recipient.set_work_factor(SEAL_WORK);
            Encryptor::with_recipients(iter::once(&recipient as &dyn age::Recipient))
        }
    };
    let encryptor = encryptor.map_err(|error| match error {
        EncryptError::MissingRecipients => SealError::NoRecipient,
        EncryptError::Io(error) => SealError::Write(error.kind()),
        _ => SealError::Together,
    })?;
    encryptor.wrap_output(output).map(Sealing).map_err(|error| SealError::Write(error.kind()))
}

impl<W: Write> Sealing<W> {
    /// Completes the file and gives the output back, which the caller flushes or syncs.
    ///
    /// # Errors
    /// [`SealError::Write`] when the end could not be written.
    pub fn finish(self) -> Result<W, SealError> {
        self.0.finish().map_err(|error| SealError::Write(error.kind()))
    }
}

impl<W: Write> Write for Sealing<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.0.write(bytes)
    }
    fn flush(&mut self) -> io::Result<()> {
        self.0.flush()
    }
}

impl<W: Write> fmt::Debug for Sealing<W> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Sealing")
    }
}

/// Opens an age file of at most `most` bytes of content.
///
/// # Errors
/// [`OpenError`] says what to do next.
pub fn open(sealed: &[u8], with: &OpenWith, most: u64) -> Result<Zeroizing<Vec<u8>>, OpenError> {
    open_from(sealed, with, most)
}

/// Opens an age file of at most `most` bytes of content as it is read. Memory stays in proportion to
/// `most`, whatever the file holds.
///
/// # Errors
/// [`OpenError`] says what to do next.
pub fn open_from<R: Read>(
    sealed: R,
    with: &OpenWith,
    most: u64,
) -> Result<Zeroizing<Vec<u8>>, OpenError> {
    // Armor takes 65 bytes for 48, and each chunk of 64 KiB a tag of 16: twice the content is enough.
    let left = most.saturating_mul(2).saturating_add(4 * HEADER_MOST);
    let mut rest = BufReader::new(ArmoredReader::new(BufReader::new(Bounded { sealed, left })));
    let head = header(&mut rest)?;
    let decryptor = Decryptor::new_buffered(head.as_slice().chain(rest)).map_err(reason)?;
    let mut plain = match with {
        OpenWith::Identities(_) if decryptor.is_scrypt() => return Err(OpenError::NeedsPassphrase),
        OpenWith::Identities(identities) => decryptor
            .decrypt(identities.iter().map(|identity| &identity.0 as &dyn age::Identity))
            .map_err(|error| match error {
                DecryptError::NoMatchingKeys => OpenError::WrongKey,
                other => reason(other),
            })?,
        OpenWith::Passphrase(_) if !decryptor.is_scrypt() => return Err(OpenError::NeedsKey),
        OpenWith::Passphrase(passphrase) => {
            let mut identity = age::scrypt::Identity::new(secret(passphrase));
            identity.set_max_work_factor(OPEN_WORK_MOST);
            decryptor.decrypt(iter::once(&identity as &dyn age::Identity)).map_err(|error| {
                match error {
                    DecryptError::KeyDecryptionFailed
                    | DecryptError::DecryptionFailed
                    | DecryptError::NoMatchingKeys => OpenError::WrongPassphrase,
                    other => reason(other),
                }
            })?
        }
    };
    read_whole(&mut plain, most)
}

fn secret(passphrase: &Passphrase) -> SecretString {
    SecretString::from(passphrase.expose().to_owned())
}

/// The header up to and with its last line, so that its length is known before it is parsed.
fn header(input: &mut impl BufRead) -> Result<Vec<u8>, OpenError> {
    let mut head = Vec::new();
    loop {
        let begins = head.len();
        let room = HEADER_MOST.saturating_sub(begins as u64);
        input.take(room).read_until(b'\n', &mut head).map_err(|error| {
            match (begins, from_io(&error)) {
                // Bytes that are no text at all: the armor's reader refuses them before anything else.
                (0, OpenError::Damaged) => OpenError::NotAge,
                (_, other) => other,
            }
        })?;
        let line = head.get(begins..).unwrap_or_default();
        if begins == 0 {
            let Some(version) = line.strip_prefix(MAGIC.as_bytes()) else {
                return Err(OpenError::NotAge);
            };
            match version.trim_ascii_end() {
                b"v1" if version == b"v1\n" => continue,
                b"v1" | b"v" | b"" => return Err(OpenError::Damaged),
                _ => return Err(OpenError::Newer),
            }
        }
        if !line.ends_with(b"\n") {
            let full = head.len() as u64 >= HEADER_MOST;
            return Err(if full { OpenError::TooLarge } else { OpenError::Damaged });
        }
        if line.starts_with(b"---") {
            return Ok(head);
        }
    }
}

/// Reads to the end, so that the last chunk's mark is verified. The buffer is grown by hand: what a
/// vector leaves behind when it moves would not be wiped.
fn read_whole(plain: &mut impl Read, most: u64) -> Result<Zeroizing<Vec<u8>>, OpenError> {
    let mut whole = Zeroizing::new(Vec::with_capacity(4096));
    let mut chunk = Zeroizing::new(vec![0u8; 16 * 1024]);
    loop {
        let got = match plain.read(&mut chunk) {
            Ok(got) => got,
            Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
            Err(error) => return Err(from_io(&error)),
        };
        if got == 0 {
            return Ok(whole);
        }
        let needed = whole.len() + got;
        if needed as u64 > most {
            return Err(OpenError::TooLarge);
        }
        if needed > whole.capacity() {
            let mut larger = Zeroizing::new(Vec::with_capacity(needed.saturating_mul(2)));
            larger.extend_from_slice(&whole);
            whole = larger;
        }
        whole.extend_from_slice(chunk.get(..got).unwrap_or_default());
    }
}

fn reason(error: DecryptError) -> OpenError {
    match error {
        DecryptError::ExcessiveWork { .. } => OpenError::TooMuchWork,
        DecryptError::UnknownFormat => OpenError::Newer,
        DecryptError::NoMatchingKeys => OpenError::WrongKey,
        DecryptError::Io(error) => from_io(&error),
        _ => OpenError::Damaged,
    }
}

fn from_io(error: &io::Error) -> OpenError {
    if error.get_ref().is_some_and(|inner| inner.is::<Over>()) {
        return OpenError::TooLarge;
    }
    match error.kind() {
        io::ErrorKind::UnexpectedEof | io::ErrorKind::InvalidData | io::ErrorKind::InvalidInput => {
            OpenError::Damaged
        }
        kind => OpenError::Read(kind),
    }
}

/// Reads no more than so many bytes, and says so instead of pretending that the file ends there.
struct Bounded<R> {
    sealed: R,
    left: u64,
}

#[derive(Debug, thiserror::Error)]
#[error("larger than allowed")]
struct Over;

impl<R: Read> Read for Bounded<R> {
    fn read(&mut self, out: &mut [u8]) -> io::Result<usize> {
        if self.left == 0 && !out.is_empty() {
            let more = self.sealed.read(&mut [0])?;
            return if more == 0 { Ok(0) } else { Err(io::Error::other(Over)) };
        }
        let room = out.len().min(usize::try_from(self.left).unwrap_or(usize::MAX));
        let got = self.sealed.read(out.get_mut(..room).unwrap_or_default())?;
        self.left = self.left.saturating_sub(got as u64);
        Ok(got)
    }
}

#[cfg(test)]
#[path = "age_file_tests.rs"]
mod tests;
