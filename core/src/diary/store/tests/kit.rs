//! What the tests share. All content is invented.

use crate::diary::store::{OpenError, Opened, Seq, Store};
use crate::ports::sim::{SeededRandom, SimDisk};
use crate::ports::{Disk, Passphrase, PassphraseKeeper, Random, Stretch};
use std::path::{Path, PathBuf};
use std::sync::Arc;

pub fn folder() -> PathBuf {
    PathBuf::from("/diary")
}

pub fn keeper() -> PassphraseKeeper {
    keeper_with("invented words")
}

pub fn keeper_with(words: &str) -> PassphraseKeeper {
    let words = Passphrase::new(words.to_owned()).unwrap();
    PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
}

pub fn random() -> Arc<dyn Random> {
    Arc::new(SeededRandom::new(7))
}

/// An entry that says which one it is.
pub fn entry(n: u64) -> Vec<u8> {
    format!("invented entry number {n}").into_bytes()
}

pub fn create(disk: &SimDisk) -> Store {
    create_on(Arc::new(disk.clone()), &folder())
}

pub fn create_on(disk: Arc<dyn Disk>, folder: &Path) -> Store {
    Store::create(disk, folder, &keeper(), random()).unwrap().store
}

pub fn open(disk: &SimDisk) -> Opened {
    try_open(disk).unwrap()
}

pub fn try_open(disk: &SimDisk) -> Result<Opened, OpenError> {
    Store::open(Arc::new(disk.clone()), &folder(), &keeper(), Arc::new(SeededRandom::new(99)))
}

/// A disk with a diary of this many entries, closed.
pub fn diary(entries: u64) -> SimDisk {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    for n in 1..=entries {
        assert_eq!(store.append(&entry(n)).unwrap().get(), n);
    }
    drop(store);
    disk
}

pub fn seq(n: u64) -> Seq {
    Seq::new(n).unwrap()
}

pub fn numbers(tail: &[(Seq, Vec<u8>)]) -> Vec<u64> {
    tail.iter().map(|(seq, _)| seq.get()).collect()
}

/// Every entry says that it is the one its place says.
pub fn assert_true_to_place(tail: &[(Seq, Vec<u8>)]) {
    for (seq, bytes) in tail {
        assert_eq!(bytes, &entry(seq.get()));
    }
}

pub fn journal() -> PathBuf {
    folder().join("journal")
}
