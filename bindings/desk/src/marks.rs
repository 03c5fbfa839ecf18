//! Where the mark is kept by which an older copy of a diary's folder is noticed: in the program's own
//! state folder, so that putting back the diary's folder does not put the mark back.
//!
//! `$FROND_STATE`, else `$XDG_STATE_HOME/frond`, else `~/.local/state/frond`. A file is named by the diary's
//! random id and tells nothing of what was written. Without such a folder no mark is kept.

use std::fs;
use std::io::Write;
use std::os::unix::fs::{DirBuilderExt, OpenOptionsExt};
use std::path::PathBuf;
use std::sync::Arc;

use frond_core::ports::{MARK_MOST, MarkError, MarkKeeper, NoMarks};

#[derive(Debug)]
struct StateFolder(PathBuf);

/// The keeper of marks on this machine.
pub(crate) fn keeper() -> Arc<dyn MarkKeeper> {
    let from = |name: &str| std::env::var_os(name).filter(|value| !value.is_empty());
    let folder = from("FROND_STATE").map(PathBuf::from);
    let folder = folder.or_else(|| Some(PathBuf::from(from("XDG_STATE_HOME")?).join("frond")));
    let folder = folder.or_else(|| Some(PathBuf::from(from("HOME")?).join(".local/state/frond")));
    match folder {
        Some(folder) => Arc::new(StateFolder(folder)),
        None => Arc::new(NoMarks),
    }
}

impl StateFolder {
    fn file(&self, diary: &[u8; 16]) -> PathBuf {
        let name: String = diary.iter().map(|byte| format!("{byte:02x}")).collect();
        self.0.join(name)
    }
}

impl MarkKeeper for StateFolder {
    fn keep(&self, diary: &[u8; 16], mark: &[u8]) -> Result<(), MarkError> {
        let write = || -> std::io::Result<()> {
            fs::DirBuilder::new().recursive(true).mode(0o700).create(&self.0)?;
            let path = self.file(diary);
            let new = path.with_extension("new");
            let mut options = fs::OpenOptions::new();
            let mut file =
                options.write(true).create(true).truncate(true).mode(0o600).open(&new)?;
            file.write_all(mark)?;
            file.sync_data()?;
            fs::rename(&new, &path)
        };
        write().map_err(|_| MarkError)
    }

    fn kept(&self, diary: &[u8; 16]) -> Result<Option<Vec<u8>>, MarkError> {
        match fs::read(self.file(diary)) {
            Ok(mark) => Ok(Some(mark).filter(|mark| mark.len() <= MARK_MOST)),
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(None),
            Err(_) => Err(MarkError),
        }
    }

    fn forget(&self, diary: &[u8; 16]) -> Result<(), MarkError> {
        match fs::remove_file(self.file(diary)) {
            Ok(()) => Ok(()),
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(()),
            Err(_) => Err(MarkError),
        }
    }
}
