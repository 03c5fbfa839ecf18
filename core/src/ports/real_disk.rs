//! The operating system's file system. Decides nothing: each call of [`Disk`] becomes the system's own, and each of its
//! errors a [`DiskError`].

use super::disk::{Disk, DiskError, DiskFile, DiskLock, SyncFor};
use std::fs::{DirBuilder, File, OpenOptions};
use std::io::ErrorKind;
use std::os::unix::fs::{DirBuilderExt, FileExt, OpenOptionsExt};
use std::path::Path;

/// The real disk (Unix: Linux, Android, macOS, iOS).
///
/// `sync_data` is `fdatasync`, and `F_FULLFSYNC` on Apple systems; the standard library chooses.
/// The lock is `flock` through rustix: the standard library's own does nothing on Android before
/// Rust 1.98.
#[derive(Debug, Clone, Copy, Default)]
pub struct RealDisk;

#[derive(Debug)]
struct RealFile(File);

#[derive(Debug)]
struct RealLock(File);

impl DiskLock for RealLock {}

impl Drop for RealLock {
    fn drop(&mut self) {
        // Closing alone would not do: a child process that was forked off a moment ago holds a copy
        // of the open file until it starts its program, and the lock with it.
        let _ = rustix::fs::flock(&self.0, rustix::fs::FlockOperation::Unlock);
    }
}

fn told(error: &std::io::Error) -> DiskError {
    match error.kind() {
        ErrorKind::NotFound => DiskError::NotFound,
        ErrorKind::AlreadyExists => DiskError::Exists,
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded | ErrorKind::FileTooLarge => {
            DiskError::Full
        }
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => DiskError::Denied,
        ErrorKind::WouldBlock => DiskError::Locked,
        other => DiskError::Failed(other),
    }
}

impl Disk for RealDisk {
    fn create_folder(&self, folder: &Path) -> Result<(), DiskError> {
        DirBuilder::new().mode(0o700).create(folder).map_err(|e| told(&e))
    }

    fn list(&self, folder: &Path) -> Result<Vec<String>, DiskError> {
        let mut names = Vec::new();
        for entry in std::fs::read_dir(folder).map_err(|e| told(&e))? {
            let entry = entry.map_err(|e| told(&e))?;
            names.push(entry.file_name().to_string_lossy().into_owned());
        }
        Ok(names)
    }

    fn create(&self, path: &Path) -> Result<Box<dyn DiskFile>, DiskError> {
        let file = OpenOptions::new()
            .read(true)
            .write(true)
            .create_new(true)
            .mode(0o600)
            .open(path)
            .map_err(|e| told(&e))?;
        Ok(Box::new(RealFile(file)))
    }

    fn open(&self, path: &Path) -> Result<Box<dyn DiskFile>, DiskError> {
        let file = OpenOptions::new().read(true).write(true).open(path).map_err(|e| told(&e))?;
        Ok(Box::new(RealFile(file)))
    }

    fn rename(&self, from: &Path, to: &Path) -> Result<(), DiskError> {
        std::fs::rename(from, to).map_err(|e| told(&e))
    }

    fn remove(&self, path: &Path) -> Result<(), DiskError> {
        std::fs::remove_file(path).map_err(|e| told(&e))
    }

    fn sync_folder(&self, folder: &Path, _why: SyncFor) -> Result<(), DiskError> {
        File::open(folder).and_then(|f| f.sync_all()).map_err(|e| told(&e))
    }

    fn lock(&self, path: &Path) -> Result<Box<dyn DiskLock>, DiskError> {
        let file = OpenOptions::new()
            .read(true)
            .write(true)
            .create(true)
            .truncate(false)
            .mode(0o600)
            .open(path)
            .map_err(|e| told(&e))?;
        rustix::fs::flock(&file, rustix::fs::FlockOperation::NonBlockingLockExclusive)
            .map_err(|e| told(&e.into()))?;
        Ok(Box::new(RealLock(file)))
    }
}

impl DiskFile for RealFile {
    fn length(&self) -> Result<u64, DiskError> {
        self.0.metadata().map(|m| m.len()).map_err(|e| told(&e))
    }

    fn read_at(&self, offset: u64, out: &mut [u8]) -> Result<usize, DiskError> {
        let mut done = 0usize;
        while let Some(rest) = out.get_mut(done..).filter(|rest| !rest.is_empty()) {
            match self.0.read_at(rest, offset.saturating_add(done as u64)) {
                Ok(0) => break,
                Ok(n) => done = done.saturating_add(n),
                Err(e) if e.kind() == ErrorKind::Interrupted => {}
                Err(e) => return Err(told(&e)),
            }
        }
        Ok(done)
    }

    fn write_at(&self, offset: u64, bytes: &[u8]) -> Result<(), DiskError> {
        self.0.write_all_at(bytes, offset).map_err(|e| told(&e))
    }

    fn sync_data(&self, _why: SyncFor) -> Result<(), DiskError> {
        self.0.sync_data().map_err(|e| told(&e))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_lock_given_back_is_free_although_a_forked_child_still_has_the_file_open() {
        let base = tempfile::tempdir().unwrap();
        let path = base.path().join("lock");
        let file = File::create(&path).unwrap();
        let flags = rustix::fs::FlockOperation::NonBlockingLockExclusive;
        rustix::fs::flock(&file, flags).unwrap();
        // What a fork leaves in the child.
        let copy = file.try_clone().unwrap();
        drop(RealLock(file));
        assert!(RealDisk.lock(&path).is_ok());
        drop(copy);
    }

    #[test]
    fn the_disk_says_what_is_wrong() {
        let base = tempfile::tempdir().unwrap();
        let path = base.path().join("a");
        assert_eq!(RealDisk.open(&path).unwrap_err(), DiskError::NotFound);
        let file = RealDisk.create(&path).unwrap();
        assert_eq!(RealDisk.create(&path).unwrap_err(), DiskError::Exists);
        file.write_at(3, b"abc").unwrap();
        let mut out = [9; 8];
        assert_eq!(file.read_at(1, &mut out).unwrap(), 5);
        assert_eq!(&out[..5], b"\0\0abc");
        assert_eq!(RealDisk.list(base.path()).unwrap(), ["a"]);
        let _held = RealDisk.lock(&base.path().join("l")).unwrap();
        let second = RealDisk.lock(&base.path().join("l")).unwrap_err();
        assert_eq!(second, DiskError::Locked);
    }
}
