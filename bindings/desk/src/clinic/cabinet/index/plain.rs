//! The index in one plain file, written anew when it is settled: a checksum over all, then each name with the
//! length of its value and the value. For a cabinet of thousands it costs a rewrite of megabytes for one new
//! summary; it is there because sled holds nothing that may not be lost, and something has to hold without it.

use std::collections::BTreeMap;
use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use super::{Index, Lost};
use crate::clinic::cabinet::store::{FileName, sha256};
use crate::clinic::folder::replace;

/// What the file begins with: what it is, and its version.
const MAGIC: &[u8; 8] = b"FROND-I1";

/// One plain file.
pub(super) struct PlainIndex {
    place: PathBuf,
    values: BTreeMap<FileName, Vec<u8>>,
    changed: bool,
}

impl PlainIndex {
    /// Reads it, or begins an empty one.
    ///
    /// # Errors
    /// [`Lost`].
    pub(super) fn open(place: &Path) -> Result<Self, Lost> {
        let values = match fs::read(place) {
            Ok(bytes) => decoded(&bytes).ok_or(Lost)?,
            Err(error) if error.kind() == ErrorKind::NotFound => BTreeMap::new(),
            Err(_) => return Err(Lost),
        };
        Ok(Self { place: place.to_path_buf(), values, changed: false })
    }
}

impl Index for PlainIndex {
    fn all(&self) -> Result<Vec<(FileName, Vec<u8>)>, Lost> {
        Ok(self.values.iter().map(|(name, value)| (*name, value.clone())).collect())
    }

    fn put(&mut self, name: FileName, value: &[u8]) -> Result<(), Lost> {
        self.values.insert(name, value.to_vec());
        self.changed = true;
        Ok(())
    }

    fn remove(&mut self, name: FileName) -> Result<(), Lost> {
        self.changed |= self.values.remove(&name).is_some();
        Ok(())
    }

    fn settle(&mut self) -> Result<(), Lost> {
        if self.changed {
            replace(&self.place, &encoded(&self.values)).map_err(|_| Lost)?;
            self.changed = false;
        }
        Ok(())
    }
}

fn encoded(values: &BTreeMap<FileName, Vec<u8>>) -> Vec<u8> {
    let mut body = Vec::new();
    for (name, value) in values {
        body.extend_from_slice(&name.0);
        body.extend_from_slice(&(value.len() as u64).to_le_bytes());
        body.extend_from_slice(value);
    }
    [MAGIC.as_slice(), &sha256(&body), &body].concat()
}

fn decoded(bytes: &[u8]) -> Option<BTreeMap<FileName, Vec<u8>>> {
    let rest = bytes.strip_prefix(MAGIC)?;
    let (sum, mut body) = rest.split_first_chunk::<32>()?;
    if sha256(body) != *sum {
        return None;
    }
    let mut values = BTreeMap::new();
    while !body.is_empty() {
        let (name, rest) = body.split_first_chunk::<32>()?;
        let (length, rest) = rest.split_first_chunk::<8>()?;
        let length = usize::try_from(u64::from_le_bytes(*length)).ok()?;
        let (value, rest) = rest.split_at_checked(length)?;
        values.insert(FileName(*name), value.to_vec());
        body = rest;
    }
    Some(values)
}
