//! Backups on this device: the whole diary in one sealed file each, the three newest kept.
//!
//! A backup is the keys as they lie in the `keys` file (8192 bytes), what it says about itself, sealed and
//! in two copies (8192 bytes), and a journal under a file id and key of its own. So it opens with the
//! passphrase, the phone's key or the recovery phrase alone, and what is damaged in it is found and
//! counted as in any journal. When one is due is the companion's decision.

use super::card::Card;
use super::doubled::{self, BlockKind, Doubled};
use super::errors::{BackupError, CreateError, OpenError};
use super::findings::Missing;
use super::frame::{Content, Frame};
use super::journal::{Journal, RewriteError};
use super::layout::{BLOCK, FIRST_FRAME, NONCE, Seq, TAG, Take};
use super::part::Part;
use super::scan::{self, Start, scan};
use super::seal::{Purpose, SealKey};
use super::sealed::create_afresh;
use super::{BACKUPS, State, Store, header, keys_file, scrub, switch};
use crate::ports::{Disk, DiskError, DiskFile, KeyKeeper, Random, SyncFor};
use std::path::{Path, PathBuf};

/// How many are kept.
pub const BACKUPS_KEPT: usize = 3;
/// The longest label, in bytes.
pub const LABEL_MOST: usize = 128;

const ABOUT: u64 = keys_file::LEN as u64;
const IMAGE: u64 = ABOUT + 2 * BLOCK as u64;
const VERSION: u8 = 1;
const TEXT: usize = 192;
const BOUND: &[u8] = b"about";

/// What a backup says about itself.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct About {
    /// The label it was given: when it was made, in the caller's own form.
    pub label: Vec<u8>,
    /// How many entries are in it.
    pub entries: u64,
    /// How often the diary had been put under new keys.
    pub generation: u64,
}

/// A backup on this device.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BackupSeen {
    /// Its file.
    pub path: PathBuf,
    /// What it says about itself; `None` where that cannot be read or another key sealed it.
    pub about: Option<About>,
}

/// A backup that was read.
#[derive(Debug)]
pub struct BackupRead {
    /// Every entry that verifies, in order.
    pub entries: Vec<Vec<u8>>,
    /// What the diary is known by; absent in a diary made before there were cards.
    pub card: Option<Card>,
    /// What it says about itself, where that can be read.
    pub about: Option<About>,
    /// Entries that are missing from it.
    pub missing: Vec<Missing>,
}

impl Store {
    /// Makes a backup of everything written so far and lets the oldest ones go. When it returns, the
    /// backup survives a power cut. The whole journal is verified on the way; a damaged one is not
    /// backed up, so that it cannot push a sound backup out.
    ///
    /// # Errors
    /// [`BackupError`]; no entry and no earlier backup is in danger.
    pub fn back_up(&self, label: &[u8]) -> Result<(), BackupError> {
        if self.state != State::Writable {
            return Err(BackupError::NotNow);
        }
        let journal = &self.journal;
        let found = scan(journal.file.as_ref(), &journal.key, journal.whole())?;
        if !found.is_sound() {
            let _ = self.disk.create(&self.folder.join(scrub::RENEW));
            return Err(BackupError::Damaged);
        }
        let inner = self.folder.join(BACKUPS);
        match self.disk.create_folder(&inner) {
            Ok(()) | Err(DiskError::Exists) => {}
            Err(other) => return Err(other.into()),
        }
        self.disk.sync_folder(&self.folder, SyncFor::BackupFolder)?;
        let numbers = numbers(self.disk.as_ref(), &inner)?;
        let number = numbers.first().map_or(1, |last| last.saturating_add(1));
        let (new, path) = (inner.join(format!("{number}.new")), inner.join(number.to_string()));
        let result = self.write_backup(&new, label, &found.frames).and_then(|()| {
            self.disk.rename(&new, &path)?;
            Ok(self.disk.sync_folder(&inner, SyncFor::BackupName)?)
        });
        if result.is_err() {
            let _ = self.disk.remove(&new);
            return result;
        }
        for old in numbers.iter().skip(BACKUPS_KEPT - 1) {
            // One too many does no harm; the next backup tries again.
            let _ = switch::end(self.disk.as_ref(), &inner.join(old.to_string()));
        }
        Ok(())
    }

    fn write_backup(&self, new: &Path, label: &[u8], frames: &[Frame]) -> Result<(), BackupError> {
        let keys = keys_file::read(self.disk.as_ref(), &self.folder)
            .map_err(|_| BackupError::Damaged)?
            .keys
            .bytes()
            .map_err(|_| BackupError::Damaged)?;
        let entries = frames.iter().filter(|f| matches!(f.content, Content::Entry(_))).count();
        let about = About {
            label: label.iter().copied().take(LABEL_MOST).collect(),
            entries: entries as u64,
            generation: self.card.generation,
        };
        let about = about.sealed(&self.backup_key, self.random.as_ref())?;
        let file = create_afresh(self.disk.as_ref(), new)?;
        file.write_at(0, &keys)?;
        file.write_at(ABOUT, &about)?;
        Journal::write_into(
            Box::new(Part { file, from: IMAGE }),
            &self.backup_key,
            self.random.as_ref(),
            frames.iter().map(|f| (f.seq, &f.content)),
            SyncFor::BackupContent,
        )?;
        Ok(())
    }

    /// The backups on this device, the newest first.
    ///
    /// # Errors
    /// What the file system reports.
    pub fn backups(&self) -> Result<Vec<BackupSeen>, DiskError> {
        let inner = self.folder.join(BACKUPS);
        let seen = |number: u64| {
            let path = inner.join(number.to_string());
            let about = self.disk.open(&path).ok();
            let about = about.and_then(|file| About::read(file.as_ref(), &self.backup_key));
            BackupSeen { path, about }
        };
        // Any beyond these are on their way out, and may be half gone after a power cut.
        let numbers = numbers(self.disk.as_ref(), &inner)?.into_iter().take(BACKUPS_KEPT);
        Ok(numbers.map(seen).collect())
    }
}

/// Reads a backup file, wherever it lies.
///
/// # Errors
/// [`OpenError`]; where only parts are damaged, what verifies is given and the rest counted.
pub fn read_backup(
    disk: &dyn Disk,
    path: &Path,
    keeper: &dyn KeyKeeper,
) -> Result<BackupRead, OpenError> {
    let file = match disk.open(path) {
        Ok(file) => file,
        Err(DiskError::NotFound) => return Err(OpenError::NotADiary),
        Err(other) => return Err(other.into()),
    };
    let keys = keys_file::read_from(file.as_ref())?.keys;
    let wrap = keys.wrap_of(keeper.kind()).ok_or(OpenError::NoWrap)?;
    let data_key = keeper.unwrap(wrap)?;
    let card = keys.card.as_deref().and_then(|card| Card::opened(card, &data_key));
    let wrapper = SealKey::derive(&data_key, Purpose::Backup);
    let about = About::read(file.as_ref(), &wrapper);
    let image = Part { file, from: IMAGE };
    let (key, tag) = header::read(&image)?.open(&wrapper).ok_or(OpenError::KeysDoNotFit)?;
    let found = scan(&image, &key, Start { offset: FIRST_FRAME, last: None, tag })?;
    let entries = found.frames.into_iter().filter_map(|frame| match frame.content {
        Content::Entry(bytes) => Some(bytes),
        Content::Gap { .. } => None,
    });
    Ok(BackupRead { entries: entries.collect(), card, about, missing: found.missing })
}

impl About {
    fn sealed(&self, key: &SealKey, random: &dyn Random) -> Result<Vec<u8>, BackupError> {
        let mut text = vec![VERSION];
        text.extend_from_slice(&self.generation.to_le_bytes());
        text.extend_from_slice(&self.entries.to_le_bytes());
        text.push(u8::try_from(self.label.len()).unwrap_or(0));
        text.extend_from_slice(&self.label);
        text.resize(TEXT, 0);
        let mut nonce = [0u8; NONCE];
        random.fill(&mut nonce)?;
        // So few bytes are never too long to seal.
        let tag = key.seal(nonce, BOUND, &mut text).unwrap_or_default();
        let body = [&nonce[..], &text, &tag].concat();
        Ok(doubled::block(BlockKind::Backup, &body).unwrap_or_default().repeat(2))
    }

    fn read(file: &dyn DiskFile, key: &SealKey) -> Option<Self> {
        let bytes = scan::read_salvaging(file, ABOUT, 2 * BLOCK).ok()?;
        let Doubled::Read { body, .. } = doubled::read(BlockKind::Backup, &bytes) else {
            return None;
        };
        let mut take = Take(&body);
        let nonce = take.array::<NONCE>()?;
        let mut text = take.bytes(TEXT)?.to_vec();
        let tag = take.array::<TAG>()?;
        key.open(nonce, BOUND, &mut text, tag).ok()?;
        let mut take = Take(&text);
        if take.u8()? != VERSION {
            return None;
        }
        let (generation, entries) = (take.u64()?, take.u64()?);
        let len = usize::from(take.u8()?);
        Some(Self { label: take.bytes(len)?.to_vec(), entries, generation })
    }
}

/// The numbers of the backups that are there, the newest first.
fn numbers(disk: &dyn Disk, inner: &Path) -> Result<Vec<u64>, DiskError> {
    let names = match disk.list(inner) {
        Ok(names) => names,
        Err(DiskError::NotFound) => return Ok(Vec::new()),
        Err(other) => return Err(other),
    };
    let mut numbers: Vec<u64> = names.iter().filter_map(|name| name.parse().ok()).collect();
    numbers.sort_unstable_by(|a, b| b.cmp(a));
    Ok(numbers)
}

impl From<RewriteError> for BackupError {
    fn from(error: RewriteError) -> Self {
        match error {
            RewriteError::Disk(error) => error.into(),
            RewriteError::Random => Self::Random(crate::ports::RandomError),
        }
    }
}

impl From<CreateError> for OpenError {
    fn from(error: CreateError) -> Self {
        match error {
            CreateError::Disk(error) => Self::Disk(error),
            CreateError::DiskFull => Self::Disk(DiskError::Full),
            CreateError::InUse => Self::InUse,
            _ => Self::KeysDamaged,
        }
    }
}

/// The place of an entry that a caller numbers from 1.
pub(super) fn place(index: usize) -> Seq {
    Seq::new((index as u64).saturating_add(1)).unwrap_or(Seq::FIRST)
}
