//! What the tests share. All content is invented.

use crate::diary::store::{OpenError, Opened, Seq, Store};
use crate::ports::sim::{SeededRandom, SimDisk, SplitMix};
use crate::ports::{Disk, Passphrase, PassphraseKeeper, Random, Stretch, SyncFor};
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

/// A promise that holds, or how it does not.
pub type Holds = Result<(), String>;

pub fn ensure(holds: bool, what: &str) -> Holds {
    if holds { Ok(()) } else { Err(what.to_owned()) }
}

/// The disks that a power cut may leave: all steps, none, every subset if they are few, seeded
/// subsets otherwise (dense, even and sparse).
pub fn cuts(disk: &SimDisk, seed: u64) -> Vec<SimDisk> {
    let pending = disk.pending();
    if pending <= 6 {
        return (0..1u32 << pending)
            .map(|mask| {
                let mut step = 0;
                disk.after_power_cut(&mut || {
                    step += 1;
                    mask >> (step - 1) & 1 == 1
                })
            })
            .collect();
    }
    let mut out = vec![disk.after_power_cut(&mut || true), disk.after_power_cut(&mut || false)];
    for (n, odds) in [1, 4, 8, 12, 15].iter().cycle().take(20).enumerate() {
        let mut rng = SplitMix::new(seed * 1000 + n as u64);
        out.push(disk.after_power_cut(&mut || rng.below(16) < *odds));
    }
    out
}

pub fn disk(left_out: Option<SyncFor>) -> SimDisk {
    let disk = SimDisk::new();
    if let Some(why) = left_out {
        disk.leave_out(why);
    }
    disk
}
