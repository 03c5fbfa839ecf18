//! Which summaries lie in a folder, and of which diary each is: looked at before anything is believed, only
//! to put them in order. What is written comes from a summary whose signature held.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::path::{Path, PathBuf};

use frond_core::moment::Stamp;
use frond_core::sealing::{OpenWith, is_age, open};
use frond_core::summary::{
    DiaryId, MOST_BYTES, Received, SummaryError, open_summary, read_bounded,
};
use serde::Deserialize;

use crate::failure::Failure;

/// What is said where summaries of one diary are signed with different keys.
pub(super) const TWO_KEYS: &str = "Summaries of this diary are signed with different keys. Look at them one by one, and leave out the \
     one that is not hers.";

/// A summary of a diary.
pub(super) struct Candidate {
    pub(super) path: PathBuf,
    /// Its name within the folder.
    pub(super) name: String,
    /// The key it says it is signed with.
    pub(super) key: String,
    made: i64,
}

/// The summaries of one diary, the newest first.
pub(super) struct Found {
    pub(super) candidates: Vec<Candidate>,
}

impl Found {
    /// Whether all of them say they are signed with the same key. At a desk the cabinet has seen to that.
    pub(super) fn has_one_key(&self) -> bool {
        let mut keys = self.candidates.iter().map(|one| &one.key);
        keys.next().is_none_or(|first| keys.all(|key| key == first))
    }
}

/// Only as much as tells where it belongs.
#[derive(Deserialize)]
struct Peek {
    key: String,
    summary: Inner,
}

#[derive(Deserialize)]
struct Inner {
    diary: DiaryId,
    made: Stamp,
}

/// Every summary in a folder and in the folders within it, by diary.
///
/// # Errors
/// The folder cannot be read.
pub(super) fn all(
    folder: &Path,
    opens: Option<&OpenWith>,
    refused: &mut Vec<(String, String)>,
) -> Result<Vec<Found>, Failure> {
    let mut diaries: BTreeMap<[u8; 16], Vec<Candidate>> = BTreeMap::new();
    for path in files(folder)? {
        let name = path.strip_prefix(folder).unwrap_or(&path).display().to_string();
        match peek(&path, opens) {
            Ok(Peek { key, summary: Inner { diary, made } }) => {
                let made = made.millis();
                diaries.entry(diary.0).or_default().push(Candidate { path, name, key, made });
            }
            Err(error) => refused.push((name, error.to_string())),
        }
    }
    let newest_first = |mut candidates: Vec<Candidate>| {
        candidates.sort_by(|one, other| {
            other.made.cmp(&one.made).then_with(|| one.name.cmp(&other.name))
        });
        Found { candidates }
    };
    Ok(diaries.into_values().map(newest_first).collect())
}

/// The files that may be summaries, by name, in order.
fn files(folder: &Path) -> Result<Vec<PathBuf>, Failure> {
    let cannot = |_| {
        Failure::input(format!(
            "{} cannot be read. Give the folder that holds the summaries.",
            folder.display()
        ))
    };
    let mut files = Vec::new();
    let mut folders = vec![folder.to_path_buf()];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).map_err(cannot)? {
            let entry = entry.map_err(cannot)?;
            // A link could lead round in a circle or out of the folder: it is not followed.
            let kind = entry.file_type().map_err(cannot)?;
            let path = entry.path();
            if kind.is_dir() {
                folders.push(path);
            } else if kind.is_file()
                && path.extension().is_some_and(|ending| ending == "json" || ending == "age")
            {
                files.push(path);
            }
        }
    }
    files.sort();
    Ok(files)
}

fn bytes(path: &Path) -> Result<Vec<u8>, SummaryError> {
    read_bounded(File::open(path).map_err(|_| SummaryError::Unreadable)?)
}

fn peek(path: &Path, opens: Option<&OpenWith>) -> Result<Peek, SummaryError> {
    let mut bytes = bytes(path)?;
    if is_age(&bytes) {
        let with = opens.ok_or(SummaryError::Sealed)?;
        bytes = open(&bytes, with, MOST_BYTES as u64)?.to_vec();
    }
    serde_json::from_slice(&bytes).map_err(|_| SummaryError::NotASummary)
}

/// Opens one, with its signature.
pub(super) fn opened(path: &Path, opens: Option<&OpenWith>) -> Result<Received, SummaryError> {
    open_summary(&bytes(path)?, opens)
}
