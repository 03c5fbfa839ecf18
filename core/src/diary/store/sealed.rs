//! A small sealed file that is replaced as a whole: the snapshot, the running practice.
//!
//! Layout: magic (4), format (2), purpose (2), length of the ciphertext (8), checksum of those
//! sixteen (4), zeros (4), nonce (24), ciphertext, tag (16). The text is the content's length (8),
//! the content, and zeros up to a multiple of 64. The first 24 bytes are bound to it.

use super::aside;
use super::errors::SaveError;
use super::layout::{FORMAT, NONCE, TAG, Take};
use super::seal::{Purpose, SealKey};
use crate::ports::{Disk, DiskError, Random, SyncFor};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

const MAGIC: [u8; 4] = *b"FRS\x1a";
const PREFIX: usize = 24;
const PAD: usize = 64;
/// The largest sealed file that is read, so that a garbled length cannot ask for all memory.
const MOST: u64 = 64 * 1024 * 1024;

/// What is in a sealed file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SealedRead {
    /// There is none.
    Absent,
    /// Its content, exactly as saved.
    Content(Vec<u8>),
    /// It does not verify.
    Damaged,
    /// A newer program wrote it.
    Newer,
}

/// One sealed file of a diary. Clones share one lock, so two savings never mix.
#[derive(Debug, Clone)]
pub struct SealedFile {
    disk: Arc<dyn Disk>,
    random: Arc<dyn Random>,
    folder: PathBuf,
    name: &'static str,
    purpose: Purpose,
    key: SealKey,
    saving: Arc<Mutex<()>>,
}

impl SealedFile {
    pub(super) fn new(
        disk: Arc<dyn Disk>,
        random: Arc<dyn Random>,
        folder: &Path,
        name: &'static str,
        purpose: Purpose,
        key: SealKey,
    ) -> Self {
        let folder = folder.to_path_buf();
        Self { disk, random, folder, name, purpose, key, saving: Arc::default() }
    }

    fn path(&self) -> PathBuf {
        self.folder.join(self.name)
    }

    /// Replaces the content, all or nothing; when it returns, the new content survives a power
    /// cut.
    ///
    /// # Errors
    /// [`SaveError`]; the older content is then still there.
    pub fn replace(&self, content: &[u8]) -> Result<(), SaveError> {
        let _one_at_a_time = self.saving.lock().unwrap_or_else(PoisonError::into_inner);
        let bytes = self.sealed(content)?;
        let new = self.folder.join(format!("{}.new", self.name));
        let names = Names { content: SyncFor::SealedContent, name: SyncFor::SealedName };
        replace_file(self.disk.as_ref(), &self.folder, &new, &self.path(), &bytes, names)?;
        Ok(())
    }

    /// Reads the content.
    ///
    /// # Errors
    /// Only what the file system reports; damage is an answer, not an error.
    pub fn read(&self) -> Result<SealedRead, DiskError> {
        let file = match self.disk.open(&self.path()) {
            Ok(file) => file,
            Err(DiskError::NotFound) => return Ok(SealedRead::Absent),
            Err(other) => return Err(other),
        };
        let len = file.length()?;
        let Some(len) = usize::try_from(len).ok().filter(|_| len <= MOST) else {
            return Ok(SealedRead::Damaged);
        };
        let mut bytes = vec![0u8; len];
        // A sector that cannot be read is damage like any other.
        let Ok(n) = file.read_at(0, &mut bytes) else { return Ok(SealedRead::Damaged) };
        bytes.truncate(n);
        Ok(self.opened(&bytes).unwrap_or(SealedRead::Damaged))
    }

    /// Removes the file, if there is one. Not synced: after a power cut it may be back.
    ///
    /// # Errors
    /// What the file system reports.
    pub fn remove(&self) -> Result<(), DiskError> {
        match self.disk.remove(&self.path()) {
            Ok(()) | Err(DiskError::NotFound) => Ok(()),
            Err(other) => Err(other),
        }
    }

    /// Moves the file among the kept bytes, out of the way of the next one.
    pub(super) fn set_aside(&self) -> Result<PathBuf, DiskError> {
        aside::move_aside(self.disk.as_ref(), &self.folder, self.name)
    }

    fn prefix(&self, sealed_len: usize) -> Option<[u8; PREFIX]> {
        let mut out = Vec::with_capacity(PREFIX);
        out.extend_from_slice(&MAGIC);
        out.extend_from_slice(&FORMAT.to_le_bytes());
        out.extend_from_slice(&(self.purpose as u16).to_le_bytes());
        out.extend_from_slice(&u64::try_from(sealed_len).ok()?.to_le_bytes());
        out.extend_from_slice(&crc32c::crc32c(&out).to_le_bytes());
        out.resize(PREFIX, 0);
        out.try_into().ok()
    }

    fn sealed(&self, content: &[u8]) -> Result<Vec<u8>, SaveError> {
        let sealed_len = content.len().saturating_add(8).div_ceil(PAD).saturating_mul(PAD);
        let too_big = SaveError::Disk(DiskError::Failed(std::io::ErrorKind::FileTooLarge));
        let prefix = self.prefix(sealed_len).ok_or(too_big)?;
        if sealed_len as u64 > MOST - (PREFIX + NONCE + TAG) as u64 {
            return Err(too_big);
        }
        let mut nonce = [0u8; NONCE];
        self.random.fill(&mut nonce)?;
        let mut out = Vec::with_capacity(sealed_len.saturating_add(PREFIX + NONCE + TAG));
        out.extend_from_slice(&prefix);
        out.extend_from_slice(&nonce);
        out.extend_from_slice(&(content.len() as u64).to_le_bytes());
        out.extend_from_slice(content);
        out.resize(sealed_len.saturating_add(PREFIX + NONCE), 0);
        let (_, text) = out.split_at_mut(PREFIX + NONCE);
        let tag = self.key.seal(nonce, &prefix, text).map_err(|_| too_big)?;
        out.extend_from_slice(&tag);
        Ok(out)
    }

    fn opened(&self, bytes: &[u8]) -> Option<SealedRead> {
        let mut take = Take(bytes);
        let prefix = take.array::<PREFIX>()?;
        let mut fields = Take(&prefix);
        if fields.array::<4>()? != MAGIC {
            return None;
        }
        let format = fields.u16()?;
        fields.u16()?;
        let sealed_len = usize::try_from(fields.u64()?).ok()?;
        if fields.u32()? != crc32c::crc32c(prefix.get(..16)?) {
            return None;
        }
        if format > FORMAT {
            return Some(SealedRead::Newer);
        }
        if self.prefix(sealed_len)? != prefix {
            return None;
        }
        let nonce = take.array::<NONCE>()?;
        let mut text = take.bytes(sealed_len)?.to_vec();
        let tag = take.array::<TAG>()?;
        if !take.0.is_empty() {
            return None;
        }
        self.key.open(nonce, &prefix, &mut text, tag).ok()?;
        let len = usize::try_from(Take(&text).u64()?).ok()?;
        let end = len.checked_add(8).filter(|end| *end <= text.len())?;
        text.truncate(end);
        text.drain(..8);
        Some(SealedRead::Content(text))
    }
}

/// What the two syncs of a replacement are for.
#[derive(Debug, Clone, Copy)]
pub(super) struct Names {
    pub(super) content: SyncFor,
    pub(super) name: SyncFor,
}

/// Writes aside, syncs, renames, syncs the folder.
pub(super) fn replace_file(
    disk: &dyn Disk,
    folder: &Path,
    new: &Path,
    path: &Path,
    bytes: &[u8],
    why: Names,
) -> Result<(), DiskError> {
    let result = (|| {
        let file = create_afresh(disk, new)?;
        file.write_at(0, bytes)?;
        file.sync_data(why.content)?;
        disk.rename(new, path)?;
        disk.sync_folder(folder, why.name)
    })();
    if result.is_err() {
        // Nothing depends on what is left under the temporary name; it goes to free its room.
        let _ = disk.remove(new);
    }
    result
}

/// Makes a file, in place of what an interrupted earlier attempt left under this temporary name.
pub(super) fn create_afresh(
    disk: &dyn Disk,
    path: &Path,
) -> Result<Box<dyn crate::ports::DiskFile>, DiskError> {
    match disk.create(path) {
        Err(DiskError::Exists) => {
            disk.remove(path)?;
            disk.create(path)
        }
        other => other,
    }
}
