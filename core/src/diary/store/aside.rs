//! Keeping the original bytes of what is damaged. There is no other copy, so nothing is deleted.

use super::layout::CHUNK;
use super::sealed::create_afresh;
use crate::ports::{Disk, DiskError, SyncFor};
use std::path::{Path, PathBuf};

/// The folder for kept bytes, inside the diary's folder.
pub(super) const FOLDER: &str = "aside";

/// Makes sure of the folder; returns it and a name in it that nothing has.
fn free_name(disk: &dyn Disk, folder: &Path, name: &str) -> Result<(PathBuf, PathBuf), DiskError> {
    let kept = folder.join(FOLDER);
    match disk.create_folder(&kept) {
        Ok(()) | Err(DiskError::Exists) => {}
        Err(other) => return Err(other),
    }
    disk.sync_folder(folder, SyncFor::AsideFolder)?;
    let taken = disk.list(&kept)?;
    let free = (1u64..).map(|n| format!("{name}-{n}")).find(|n| !taken.contains(n));
    let path = kept.join(free.unwrap_or_else(|| name.to_owned()));
    Ok((kept, path))
}

/// Copies a file's bytes, every one of them, and returns once the copy would survive a power cut.
pub(super) fn copy_aside(disk: &dyn Disk, folder: &Path, name: &str) -> Result<PathBuf, DiskError> {
    let (kept, path) = free_name(disk, folder, name)?;
    let new = kept.join(format!("{name}.new"));
    let result = (|| {
        let from = disk.open(&folder.join(name))?;
        let to = create_afresh(disk, &new)?;
        let mut bytes = vec![0u8; CHUNK as usize];
        let mut at = 0u64;
        // Not salvaging: where a sector cannot be read now, the file itself must stay, because a
        // later attempt may read it.
        loop {
            let n = from.read_at(at, &mut bytes)?;
            let Some(some) = bytes.get(..n).filter(|some| !some.is_empty()) else { break };
            to.write_at(at, some)?;
            at = at.saturating_add(n as u64);
        }
        to.sync_data(SyncFor::AsideContent)?;
        disk.rename(&new, &path)?;
        disk.sync_folder(&kept, SyncFor::AsideName)
    })();
    if result.is_err() {
        let _ = disk.remove(&new);
    }
    result.map(|()| path)
}

/// Copies a rebuildable file among the kept bytes, then removes it from its own place. The removal
/// is not synced: after a power cut the file is found damaged once more.
pub(super) fn move_aside(disk: &dyn Disk, folder: &Path, name: &str) -> Result<PathBuf, DiskError> {
    let path = copy_aside(disk, folder, name)?;
    disk.remove(&folder.join(name))?;
    Ok(path)
}
