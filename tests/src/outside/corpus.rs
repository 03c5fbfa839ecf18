//! The corpus that the fuzzer found, run without a fuzzer: every file of `fuzz/corpus/NAME` for the reader of that
//! name, and each with a few changes, the same in every run.

use std::fs;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

use crate::lives::dice::Dice;

fn corpus(name: &str) -> Vec<(String, Vec<u8>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/corpus").join(name);
    let files = fs::read_dir(&folder).expect("a folder of its corpus");
    let mut files: Vec<(String, Vec<u8>)> = files
        .map(|file| file.expect("a file").path())
        .map(|path| (path.display().to_string(), fs::read(&path).expect("its bytes")))
        .collect();
    files.sort();
    files
}

/// Runs each file of each corpus.
///
/// # Panics
/// Where a corpus is none, or nothing of it is taken, or a reader does not hold.
pub fn every_file<'a>(names: impl Iterator<Item = &'a str>, read: impl Fn(&str, &[u8]) -> bool) {
    let mut failed = Vec::new();
    for name in names {
        let files = corpus(name);
        assert!(files.len() >= 2, "{name}: {} files are no corpus", files.len());
        let mut taken = 0;
        for (file, bytes) in files {
            match catch_unwind(AssertUnwindSafe(|| read(name, &bytes))) {
                Ok(true) => taken += 1,
                Ok(false) => {}
                Err(_) => failed.push(file),
            }
        }
        // Where nothing is ever taken, only the door is tried and not what is behind it.
        assert!(taken > 0, "{name}: nothing of its corpus is taken");
    }
    assert!(failed.is_empty(), "these are not taken: {failed:#?}");
}

/// Runs each file of each corpus with a few changes.
///
/// # Panics
/// Where a reader does not hold.
pub fn changed_files<'a>(names: impl Iterator<Item = &'a str>, read: impl Fn(&str, &[u8]) -> bool) {
    let mut failed = Vec::new();
    for name in names {
        for (number, (file, bytes)) in corpus(name).into_iter().enumerate() {
            let mut dice = Dice::new(number as u64);
            let mut changed = bytes;
            for _ in 0..dice.between(1, 4) {
                let at = dice.index(changed.len().max(1));
                match dice.below(3) {
                    0 if !changed.is_empty() => changed[at] = dice.bits().to_le_bytes()[0],
                    1 if !changed.is_empty() => drop(changed.remove(at)),
                    _ => changed.insert(at.min(changed.len()), dice.bits().to_le_bytes()[0]),
                }
            }
            if catch_unwind(AssertUnwindSafe(|| read(name, &changed))).is_err() {
                failed.push(format!("{file}, changed"));
            }
        }
    }
    assert!(failed.is_empty(), "these are not taken: {failed:#?}");
}
