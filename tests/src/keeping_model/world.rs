//! What a life sees of a real diary: who opens it, what its backups hold, and whether anything erased opens
//! from any file with any key that was ever used. Decides nothing about what ought to be.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use frond_core::companion::{Companion, Trouble};
use frond_core::diary::entry::Entry;
use frond_core::diary::store::read_backup;
use frond_core::moment::Moment;
use frond_core::ports::sim::{SeededRandom, SimDisk};
use frond_core::ports::{
    Disk, KeyKeeper, MarkError, MarkKeeper, Passphrase, PassphraseKeeper, Stretch,
};
use frond_core::sealing::{RecoveryKeeper, RecoveryPhrase};

use crate::home::{FOLDER, ports};

/// How many passphrases and phrases a life knows.
pub const SECRETS: usize = 3;

/// An invented passphrase.
///
/// # Panics
/// Never: it is not empty.
#[must_use]
pub fn pass(n: usize) -> PassphraseKeeper {
    let words = Passphrase::new(format!("invented herons {n}")).expect("not empty");
    PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
}

/// An invented recovery phrase.
///
/// # Panics
/// Never: there are bytes enough.
#[must_use]
pub fn phrase(n: usize) -> RecoveryPhrase {
    RecoveryPhrase::new(&SeededRandom::new(7_000 + n as u64)).expect("bytes")
}

/// Every keeper a life ever used or will use.
#[must_use]
pub fn keepers() -> Vec<Box<dyn KeyKeeper>> {
    let passes = (0..SECRETS).map(|n| Box::new(pass(n)) as Box<dyn KeyKeeper>);
    let phrases =
        (0..SECRETS).map(|n| Box::new(RecoveryKeeper::new(phrase(n))) as Box<dyn KeyKeeper>);
    passes.chain(phrases).collect()
}

/// Keeps marks, and remembers every keeping.
#[derive(Debug, Default)]
pub struct Notebook(Mutex<Pages>);

#[derive(Debug, Default)]
struct Pages {
    kept: BTreeMap<[u8; 16], Vec<u8>>,
    log: Vec<([u8; 16], Vec<u8>)>,
}

impl Notebook {
    fn pages(&self) -> MutexGuard<'_, Pages> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// What was kept since last asked.
    pub fn news(&self) -> Vec<([u8; 16], Vec<u8>)> {
        std::mem::take(&mut self.pages().log)
    }

    /// The mark of a diary.
    #[must_use]
    pub fn of(&self, diary: &[u8; 16]) -> Option<Vec<u8>> {
        self.pages().kept.get(diary).cloned()
    }
}

impl MarkKeeper for Notebook {
    fn keep(&self, diary: &[u8; 16], mark: &[u8]) -> Result<(), MarkError> {
        let mut pages = self.pages();
        pages.kept.insert(*diary, mark.to_vec());
        pages.log.push((*diary, mark.to_vec()));
        Ok(())
    }
    fn kept(&self, diary: &[u8; 16]) -> Result<Option<Vec<u8>>, MarkError> {
        Ok(self.of(diary))
    }
    fn forget(&self, diary: &[u8; 16]) -> Result<(), MarkError> {
        self.pages().kept.remove(diary);
        Ok(())
    }
}

/// What opens a diary, seen on a copy of the disk.
#[derive(Debug, Default)]
pub struct Seen {
    /// Passphrases that open it.
    pub passes: BTreeSet<usize>,
    /// Phrases that open it.
    pub phrases: BTreeSet<usize>,
    /// The entries, as the first that opened it reads them.
    pub entries: Option<Vec<Entry>>,
    /// What the others were told.
    pub troubles: Vec<Trouble>,
}

/// Tries every secret on a copy of the disk; no mark is looked at.
#[must_use]
pub fn look(disk: &SimDisk, moment: &Moment) -> Seen {
    let mut seen = Seen::default();
    // One copy will do: an opening changes nothing of who opens it, and the first one's entries count.
    let copy = disk.after_kill();
    copy.set_room(None);
    for (n, keeper) in keepers().iter().enumerate() {
        let ports = ports(&copy, 40);
        let opened = Companion::open(&ports, Path::new(FOLDER), keeper.as_ref(), "en", moment);
        match opened {
            Ok(companion) => {
                if n < SECRETS {
                    seen.passes.insert(n);
                } else {
                    seen.phrases.insert(n - SECRETS);
                }
                if let (None, Ok(entries)) = (&seen.entries, companion.entries()) {
                    seen.entries = Some(entries);
                }
            }
            Err(trouble) => seen.troubles.push(trouble),
        }
    }
    seen
}

/// The files with their bytes.
#[must_use]
pub fn files(disk: &SimDisk) -> Vec<(PathBuf, Vec<u8>)> {
    let paths = disk.paths().into_iter();
    paths.filter_map(|path| disk.content(&path).map(|bytes| (path, bytes))).collect()
}

/// The backups that count: the three of the highest number, the newest first.
#[must_use]
pub fn backups(disk: &SimDisk) -> Vec<(PathBuf, Vec<u8>)> {
    let number = |path: &Path| -> Option<u64> {
        let inside = path.parent() == Some(&Path::new(FOLDER).join("backups"));
        path.file_name()?.to_str()?.parse().ok().filter(|_| inside)
    };
    let mut found: Vec<(u64, PathBuf, Vec<u8>)> = files(disk)
        .into_iter()
        .filter_map(|(path, bytes)| Some((number(&path)?, path, bytes)))
        .collect();
    found.sort_by_key(|(number, ..)| std::cmp::Reverse(*number));
    found.into_iter().take(3).map(|(_, path, bytes)| (path, bytes)).collect()
}

/// The entries of a backup, with the passphrase and the phrases that open it.
#[must_use]
pub fn backup(bytes: &[u8]) -> Option<(Vec<Entry>, usize)> {
    let disk = SimDisk::new();
    let path = Path::new("/b");
    disk.tamper(path, bytes.to_vec());
    (0..SECRETS).find_map(|n| {
        let read = read_backup(&disk, path, &pass(n)).ok()?;
        let entries = read.entries.iter().map(|bytes| serde_json::from_slice(bytes).ok());
        // A hole that was found before it was made is no damage of its own.
        read.missing.iter().all(|hole| !hole.new).then_some(())?;
        Some((entries.collect::<Option<Vec<Entry>>>()?, n))
    })
}

/// Everything that opens from any file of this disk with any key of the life, as one text. `old_keys`:
/// `keys` files that somebody kept.
#[must_use]
pub fn readable(disk: &SimDisk, old_keys: &BTreeSet<Vec<u8>>, moment: &Moment) -> String {
    let mut out = String::new();
    let keepers = keepers();
    let all = files(disk);
    // A file that begins otherwise opens to nobody; the second copy lies a block further.
    let begins = |bytes: &[u8], magic: &[u8]| {
        bytes.starts_with(magic) || bytes.get(4096..).is_some_and(|rest| rest.starts_with(magic))
    };
    let mut keys: BTreeSet<&[u8]> = old_keys.iter().map(Vec::as_slice).collect();
    keys.extend(
        all.iter().map(|(_, b)| b.as_slice()).filter(|b| begins(b, b"FRK\x1a") && b.len() == 8192),
    );
    for (_, bytes) in &all {
        if begins(bytes, b"FRK\x1a") && bytes.len() > 8192 {
            let tried = SimDisk::new();
            tried.tamper(Path::new("/b"), bytes.clone());
            for keeper in &keepers {
                if let Ok(read) = read_backup(&tried, Path::new("/b"), keeper.as_ref()) {
                    for entry in read.entries {
                        out.push_str(&String::from_utf8_lossy(&entry));
                    }
                }
            }
        }
        if begins(bytes, b"FRJ\x1a") {
            for key in &keys {
                let tried = SimDisk::new();
                if tried.create_folder(Path::new(FOLDER)).is_err() {
                    continue;
                }
                tried.tamper(&Path::new(FOLDER).join("keys"), key.to_vec());
                tried.tamper(&Path::new(FOLDER).join("journal"), bytes.clone());
                for keeper in &keepers {
                    let (ports, folder) = (ports(&tried, 41), Path::new(FOLDER));
                    let opened = Companion::open(&ports, folder, keeper.as_ref(), "en", moment);
                    if let Ok(entries) = opened.and_then(|companion| companion.entries()) {
                        out.push_str(&serde_json::to_string(&entries).unwrap_or_default());
                    }
                }
            }
        }
    }
    out
}
