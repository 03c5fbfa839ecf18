//! Putting the whole diary under new keys at one stroke, or ending it: an erase, a restore, a new
//! passphrase. A power cut at any point leaves the old state or the new one, and what is not wanted any
//! more is gone in the new one.
//!
//! 1. The new state is written beside the old one: `keys.next`, `journal.next`, synced. Until the next
//!    point they mean nothing, and an opening removes them.
//! 2. An empty file is made whose **name** says what is to be done, and its name is synced. From here on
//!    the old state never comes back. (A name cannot be garbled, as content can.)
//! 3. It is carried out. Every step may be done twice, and none needs a key, so whoever opens the
//!    folder next can go on from wherever it stopped.
//! 4. The file goes.

use super::errors::OpenError;
use super::journal;
use super::layout::CHUNK;
use super::sealed::create_afresh;
use super::{BACKUPS, LOCK, aside, keys_file, scrub, snapshot};
use crate::ports::{Disk, DiskError, SyncFor};
use std::path::Path;

/// The new keys, until they take the place of the present ones.
pub(super) const NEXT_KEYS: &str = "keys.next";
/// The new journal, until it takes the place of the present one.
pub(super) const NEXT_JOURNAL: &str = "journal.next";

/// What is to be done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Switch {
    /// The new state takes over, and nothing of the old one stays: no key, no backup, nothing kept
    /// aside.
    Renewed,
    /// The new state takes over; what it replaces lies among the kept bytes already.
    Restored,
    /// Everything goes.
    Ended,
}

impl Switch {
    const ALL: [Self; 3] = [Self::Renewed, Self::Restored, Self::Ended];

    /// The name of the file that says so. Part of the stored format.
    fn name(self) -> &'static str {
        match self {
            Self::Renewed => "switch-a",
            Self::Restored => "switch-b",
            Self::Ended => "switch-c",
        }
    }

    /// What an earlier process began and did not end.
    pub(super) fn begun(names: &[String]) -> Option<Self> {
        Self::ALL.into_iter().find(|switch| names.iter().any(|name| name == switch.name()))
    }
}

/// Makes the staged state (or the end) the one that counts, and carries it out.
///
/// # Errors
/// Before the name is synced, the old state stays and may be used; afterwards the diary has to be opened
/// again, which goes on.
pub(super) fn commit(disk: &dyn Disk, folder: &Path, switch: Switch) -> Result<(), DiskError> {
    disk.sync_folder(folder, SyncFor::StagedNames)?;
    create_afresh(disk, &folder.join(switch.name()))?;
    disk.sync_folder(folder, SyncFor::Switched)?;
    carry_out(disk, folder, switch)
}

/// Whether there is anything for [`resume`] to do.
pub(super) fn is_left(names: &[String]) -> bool {
    Switch::begun(names).is_some() || names.iter().any(|n| n == NEXT_KEYS || n == NEXT_JOURNAL)
}

/// Finishes what an earlier process began, and removes what one wrote that did not get so far. Needs
/// the lock. Returns what was finished.
pub(super) fn resume(disk: &dyn Disk, folder: &Path) -> Result<Option<Switch>, OpenError> {
    let names = disk.list(folder)?;
    if let Some(switch) = Switch::begun(&names) {
        carry_out(disk, folder, switch)?;
        return Ok(Some(switch));
    }
    for name in [NEXT_KEYS, NEXT_JOURNAL] {
        if names.iter().any(|n| n == name) {
            // Means nothing; if it stays, the next opening tries again.
            let _ = disk.remove(&folder.join(name));
        }
    }
    Ok(None)
}

fn carry_out(disk: &dyn Disk, folder: &Path, switch: Switch) -> Result<(), DiskError> {
    let path = |name: &str| folder.join(name);
    // What a restore replaces lies among the kept bytes; anything else old must open to nobody any more.
    let shreds = switch != Switch::Restored;
    for (next, name) in [(NEXT_KEYS, keys_file::NAME), (NEXT_JOURNAL, journal::NAME)] {
        if switch == Switch::Ended {
            end(disk, &path(name))?;
            end(disk, &path(next))?;
        } else if disk.list(folder)?.iter().any(|n| n == next) {
            // As long as the new one has not taken its name, what has it is the old one.
            if shreds {
                shred(disk, &path(name))?;
            }
            disk.rename(&path(next), &path(name))?;
        }
    }
    for name in [snapshot::NAME, super::RUNNING] {
        end(disk, &path(name))?;
    }
    gone(disk, &path(scrub::RENEW))?;
    if shreds {
        empty(disk, &path(aside::FOLDER))?;
        empty(disk, &path(BACKUPS))?;
    }
    for name in disk.list(folder)? {
        // Files that were being written when a process ended; the lock is ours, so nobody writes now.
        if name.ends_with(".new") && name != LOCK {
            gone(disk, &path(&name))?;
        }
    }
    disk.sync_folder(folder, SyncFor::SwitchCarriedOut)?;
    // Not synced: should it come back, nothing is left to carry out, because whatever is written into
    // the folder later (a backup, a snapshot, a new diary) syncs the folder before it is acknowledged.
    gone(disk, &path(switch.name()))
}

/// Removes every file in a folder, and makes sure of it.
fn empty(disk: &dyn Disk, inner: &Path) -> Result<(), DiskError> {
    let names = match disk.list(inner) {
        Ok(names) => names,
        Err(DiskError::NotFound) => return Ok(()),
        Err(other) => return Err(other),
    };
    for name in &names {
        end(disk, &inner.join(name))?;
    }
    // Even where there is nothing any more: whoever removed it may have been killed before making sure.
    disk.sync_folder(inner, SyncFor::SwitchCarriedOut)
}

/// Makes a file open to nobody, then removes it.
pub(super) fn end(disk: &dyn Disk, path: &Path) -> Result<(), DiskError> {
    shred(disk, path)?;
    gone(disk, path)
}

/// Writes zeros over the beginning of a file, where wraps and file keys lie (a small file is all
/// beginning). On a disk that writes in place it then opens to nobody for good, not even to somebody who
/// kept the old keys and finds the old sectors.
pub(super) fn shred(disk: &dyn Disk, path: &Path) -> Result<(), DiskError> {
    let file = match disk.open(path) {
        Ok(file) => file,
        Err(DiskError::NotFound) => return Ok(()),
        Err(other) => return Err(other),
    };
    let len = file.length()?.min(CHUNK);
    file.write_at(0, &vec![0u8; usize::try_from(len).unwrap_or(0)])?;
    file.sync_data(SyncFor::Shredded)
}

fn gone(disk: &dyn Disk, path: &Path) -> Result<(), DiskError> {
    match disk.remove(path) {
        Ok(()) | Err(DiskError::NotFound) => Ok(()),
        Err(other) => Err(other),
    }
}
