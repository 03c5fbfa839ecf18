//! A part of a file that is read and written as if it were a file of its own.

use crate::ports::{DiskError, DiskFile, SyncFor};

/// Everything from `from` on.
#[derive(Debug)]
pub(super) struct Part {
    pub(super) file: Box<dyn DiskFile>,
    pub(super) from: u64,
}

impl DiskFile for Part {
    fn length(&self) -> Result<u64, DiskError> {
        Ok(self.file.length()?.saturating_sub(self.from))
    }

    fn read_at(&self, offset: u64, out: &mut [u8]) -> Result<usize, DiskError> {
        self.file.read_at(self.from.saturating_add(offset), out)
    }

    fn write_at(&self, offset: u64, bytes: &[u8]) -> Result<(), DiskError> {
        self.file.write_at(self.from.saturating_add(offset), bytes)
    }

    fn sync_data(&self, why: SyncFor) -> Result<(), DiskError> {
        self.file.sync_data(why)
    }
}
