//! The sealed files: one for each summary, named by its content. Decides that a file is whole under its name or
//! not there, and that what a file holds is what its name says. Leaves what is in it to whoever opens it.

use std::fmt;
use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};

use frond_core::summary::MOST_BYTES;
use sha2::{Digest, Sha256};

use crate::clinic::folder::{FolderError, replace};

/// What a sealed file is called: the SHA-256 of its bytes. It tells nothing of what is in it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub(crate) struct FileName(pub(crate) [u8; 32]);

impl fmt::Display for FileName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for FileName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("FileName(..)")
    }
}

impl FileName {
    /// The name of these bytes.
    pub(crate) fn of(bytes: &[u8]) -> Self {
        Self(sha256(bytes))
    }

    /// The name that a text is, in the one spelling there is.
    pub(crate) fn parse(text: &str) -> Option<Self> {
        let mut name = [0; 32];
        if text.len() != 64 {
            return None;
        }
        for (byte, pair) in name.iter_mut().zip(text.as_bytes().chunks_exact(2)) {
            let pair = std::str::from_utf8(pair).ok()?;
            if pair.bytes().any(|digit| !matches!(digit, b'0'..=b'9' | b'a'..=b'f')) {
                return None;
            }
            *byte = u8::from_str_radix(pair, 16).ok()?;
        }
        Some(Self(name))
    }
}

/// SHA-256.
pub(crate) fn sha256(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}

/// What a file's name ends with.
const ENDING: &str = ".age";
/// What sealing adds to a summary at most, with room.
const SEALING: u64 = 1024 * 1024;

/// The folder of sealed files.
#[derive(Clone, Debug)]
pub(crate) struct Store(PathBuf);

/// Why a file was not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum NotRead {
    /// It is not there, or cannot be read.
    Unreadable,
    /// It holds something else than its name says.
    Damaged,
}

impl Store {
    /// The store in this folder.
    pub(crate) fn new(room: PathBuf) -> Self {
        Self(room)
    }

    fn path(&self, name: FileName) -> PathBuf {
        self.0.join(format!("{name}{ENDING}"))
    }

    /// The names of all files. What is called otherwise is none of ours, and stays.
    ///
    /// # Errors
    /// The folder cannot be read.
    pub(crate) fn names(&self) -> Result<Vec<FileName>, FolderError> {
        let mut names = Vec::new();
        for entry in fs::read_dir(&self.0)? {
            let name = entry?.file_name();
            let name = name.to_str().and_then(|name| name.strip_suffix(ENDING));
            names.extend(name.and_then(FileName::parse));
        }
        Ok(names)
    }

    /// Keeps a file.
    ///
    /// # Errors
    /// [`FolderError`]; nothing was then kept.
    pub(crate) fn keep(&self, bytes: &[u8]) -> Result<FileName, FolderError> {
        let name = FileName::of(bytes);
        replace(&self.path(name), bytes)?;
        Ok(name)
    }

    /// Takes a file away.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn remove(&self, name: FileName) -> Result<(), FolderError> {
        match fs::remove_file(self.path(name)) {
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(()),
            other => Ok(other?),
        }
    }

    /// The bytes of a file, compared with its name.
    ///
    /// # Errors
    /// [`NotRead`].
    pub(crate) fn read(&self, name: FileName) -> Result<Vec<u8>, NotRead> {
        let most = MOST_BYTES as u64 + SEALING;
        let bytes = bounded(&self.path(name), most).map_err(|_| NotRead::Unreadable)?;
        if FileName::of(&bytes) == name { Ok(bytes) } else { Err(NotRead::Damaged) }
    }
}

/// A file of at most so many bytes, and one more where it is longer.
fn bounded(path: &Path, most: u64) -> std::io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    fs::File::open(path)?.take(most + 1).read_to_end(&mut bytes)?;
    Ok(bytes)
}
