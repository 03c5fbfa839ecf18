//! Arbitrary vandalism. Whatever is done to the files, opening answers; what it reads is true; and
//! a diary that opened for writing goes on.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::{SimDisk, SplitMix};
use proptest::prelude::*;
use std::sync::OnceLock;

/// Something done to a file behind everybody's back.
#[derive(Debug, Clone)]
enum Deed {
    Garble { at: usize, seed: u64, len: usize },
    Zero { at: usize, len: usize },
    Cut { len: usize },
    Lengthen { seed: u64, len: usize },
    Copy { from: usize, to: usize, len: usize },
    Empty,
    Remove,
}

const NAMES: [&str; 5] = ["journal", "keys", "snapshot", "running", "renew"];

fn deed() -> impl Strategy<Value = Deed> {
    // Mostly where something is written, and mostly at sectors.
    let at = || prop_oneof![0..66_000usize, (0..60usize).prop_map(|n| n * 512), 8192..24_000usize];
    let len = || prop_oneof![1..20usize, Just(512usize), 1..3000usize];
    prop_oneof![
        4 => (at(), any::<u64>(), len()).prop_map(|(at, seed, len)| Deed::Garble { at, seed, len }),
        2 => (at(), len()).prop_map(|(at, len)| Deed::Zero { at, len }),
        2 => at().prop_map(|len| Deed::Cut { len }),
        1 => (any::<u64>(), len()).prop_map(|(seed, len)| Deed::Lengthen { seed, len }),
        3 => (at(), at(), len()).prop_map(|(from, to, len)| Deed::Copy { from, to, len }),
        1 => Just(Deed::Empty),
        1 => Just(Deed::Remove),
    ]
}

fn noise(seed: u64, len: usize) -> Vec<u8> {
    let mut rng = SplitMix::new(seed);
    (0..len).map(|_| rng.next_u64() as u8).collect()
}

fn do_to(disk: &SimDisk, name: &str, deed: &Deed) {
    let path = folder().join(name);
    let mut bytes = disk.content(&path).unwrap_or_default();
    let put = |bytes: &mut Vec<u8>, at: usize, what: &[u8]| {
        for (to, from) in bytes.iter_mut().skip(at).zip(what) {
            *to = *from;
        }
    };
    match deed {
        Deed::Garble { at, seed, len } => put(&mut bytes, *at, &noise(*seed, *len)),
        Deed::Zero { at, len } => put(&mut bytes, *at, &vec![0; *len]),
        Deed::Cut { len } => bytes.truncate(*len),
        Deed::Lengthen { seed, len } => bytes.extend(noise(*seed, *len)),
        Deed::Copy { from, to, len } => {
            let piece: Vec<u8> = bytes.iter().skip(*from).take(*len).copied().collect();
            put(&mut bytes, *to, &piece);
        }
        Deed::Empty => bytes.clear(),
        Deed::Remove => return disk.tamper_remove(&path),
    }
    disk.tamper(&path, bytes);
}

/// Thirty entries, some longer than a sector; a snapshot that covers twenty.
fn original() -> SimDisk {
    static ONCE: OnceLock<SimDisk> = OnceLock::new();
    ONCE.get_or_init(|| {
        let disk = SimDisk::new();
        let mut store = create(&disk);
        for n in 1..=30u64 {
            store.append(&body(n)).unwrap();
        }
        store.save_snapshot(seq(20), b"state after twenty").unwrap();
        store.running().replace(b"running").unwrap();
        disk
    })
    .after_kill()
}

fn body(n: u64) -> Vec<u8> {
    let mut bytes = entry(n);
    if n.is_multiple_of(7) {
        bytes.resize(1300, b'.');
    }
    bytes
}

/// The first entry from whose place on there are only zeros.
fn blank_from(bytes: &[u8]) -> u64 {
    let mut at = 8192;
    for n in 1..=30u64 {
        if bytes.get(at..).is_none_or(|rest| rest.iter().all(|b| *b == 0)) {
            return n;
        }
        at += if n.is_multiple_of(7) { 1536 } else { 512 };
    }
    31
}

fn deeds() -> impl Strategy<Value = Vec<(&'static str, Deed)>> {
    let name = prop_oneof![6 => Just(NAMES[0]), 4 => prop::sample::select(&NAMES[1..])];
    prop::collection::vec((name, deed()), 1..5)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, ..ProptestConfig::default() })]

    #[test]
    fn whatever_is_done_opening_answers_and_what_it_reads_is_true(deeds in deeds()) {
        let disk = original();
        for (name, deed) in &deeds {
            do_to(&disk, name, deed);
        }
        let before = disk.content(&journal());
        let opened = match try_open(&disk) {
            Ok(opened) => opened,
            Err(_) => {
                prop_assert_eq!(disk.content(&journal()), before, "an error has touched it");
                return Ok(());
            }
        };
        let mut seen = Vec::new();
        let missing = opened.store.read_from(Seq::FIRST, |s, b| seen.push((s, b.to_vec()))).unwrap();
        for (s, bytes) in &seen {
            prop_assert_eq!(bytes, &body(s.get()));
        }
        // Every entry that was ever acknowledged is read, or said to be missing, or lies behind a
        // hole that says "at least" or "perhaps". The one exception is the limit that FORMAT.md
        // names: exact zeros over the last entries look as if those were never written.
        let blank_from = blank_from(before.as_deref().unwrap_or_default());
        for n in (1..=30).map(seq) {
            let told = missing.iter().any(|m| {
                (m.from..=m.through).contains(&n) || n > m.through && m.extent != Extent::Exactly
            });
            let read = seen.iter().any(|(s, _)| *s == n);
            prop_assert!(read || told || n.get() >= blank_from, "{} is passed over", n);
        }
        let changed = disk.content(&journal()) != before;
        if changed {
            let kept = disk.paths().iter().any(|p| disk.content(p) == before);
            prop_assert!(kept || opened.findings.renewed, "the original is not kept");
        }
        drop(opened);
        let mut again = open(&disk);
        prop_assert!(again.findings.read_only.is_none());
        prop_assert!(!again.findings.damaged && !again.findings.newly_missing());
        let next = again.store.append(b"goes on").unwrap();
        prop_assert!(seen.iter().all(|(s, _)| *s < next));
    }

    #[test]
    fn files_of_noise_never_panic(
        keys in prop::collection::vec(any::<u8>(), 0..200),
        journal_bytes in prop::collection::vec(any::<u8>(), 0..9000),
    ) {
        let disk = original();
        disk.tamper(&journal(), journal_bytes);
        prop_assert!(try_open(&disk).is_err());
        disk.tamper(&folder().join("keys"), keys);
        prop_assert!(try_open(&disk).is_err());
    }
}
