//! What is kept beside the sealed files so that the list opens without opening them: for each file's name a
//! sealed value. Decides only how such values lie on disk. Everything in it can be made again from the files,
//! so an index that is lost, damaged or doubted is moved aside and made anew; nothing is ever read from it that
//! the value's own seal does not vouch for.
//!
//! [`sled_index`] is the one in use, [`plain`] the second; one suite of tests runs on both.

mod plain;
mod sled_index;
#[cfg(test)]
mod tests;

use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

use super::store::FileName;

/// The index cannot be used any longer: it has to be made anew.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Lost;

/// Sealed values by file name.
pub(crate) trait Index: Send {
    /// Every value.
    ///
    /// # Errors
    /// [`Lost`].
    fn all(&self) -> Result<Vec<(FileName, Vec<u8>)>, Lost>;

    /// Puts a value in place.
    ///
    /// # Errors
    /// [`Lost`].
    fn put(&mut self, name: FileName, value: &[u8]) -> Result<(), Lost>;

    /// Takes a value away; one that is not there is away already.
    ///
    /// # Errors
    /// [`Lost`].
    fn remove(&mut self, name: FileName) -> Result<(), Lost>;

    /// Makes what was put so far last.
    ///
    /// # Errors
    /// [`Lost`].
    fn settle(&mut self) -> Result<(), Lost>;
}

/// Which index.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum IndexKind {
    /// In a sled database.
    #[default]
    Sled,
    /// In one plain file.
    Plain,
    /// One that cannot be used.
    #[cfg(test)]
    Never,
}

impl IndexKind {
    /// Every kind.
    #[cfg(test)]
    pub(crate) const ALL: [Self; 2] = [Self::Sled, Self::Plain];

    fn name(self) -> &'static str {
        match self {
            Self::Sled => "sled",
            Self::Plain => "plain",
            #[cfg(test)]
            Self::Never => "never",
        }
    }

    /// Where it lies in the room of indexes.
    pub(crate) fn place(self, room: &Path) -> PathBuf {
        room.join(self.name())
    }

    /// Opens it, or makes an empty one where there is none.
    ///
    /// # Errors
    /// [`Lost`]; what is there is then still there.
    pub(crate) fn open(self, room: &Path) -> Result<Box<dyn Index>, Lost> {
        let place = self.place(room);
        Ok(match self {
            Self::Sled => Box::new(sled_index::SledIndex::open(&place)?),
            Self::Plain => Box::new(plain::PlainIndex::open(&place)?),
            #[cfg(test)]
            Self::Never => return Err(Lost),
        })
    }

    /// Moves what is there out of the way, in the place of what was moved there before. An index holds nothing
    /// that is not in the files, so one of them is enough to look into.
    ///
    /// # Errors
    /// [`Lost`] where it can be neither moved nor taken away.
    pub(crate) fn move_aside(self, room: &Path) -> Result<(), Lost> {
        let place = self.place(room);
        if fs::symlink_metadata(&place).is_err() {
            return Ok(());
        }
        let mut aside: OsString = self.name().into();
        aside.push("-aside");
        let aside = room.join(aside);
        take_away(&aside)?;
        match fs::rename(&place, &aside) {
            Ok(()) => Ok(()),
            Err(_) => take_away(&place),
        }
    }
}

fn take_away(path: &Path) -> Result<(), Lost> {
    let Ok(about) = fs::symlink_metadata(path) else { return Ok(()) };
    let gone = if about.is_dir() { fs::remove_dir_all(path) } else { fs::remove_file(path) };
    gone.map_err(|_| Lost)
}
