//! The stored diary of every released format opens forever.

use frond_core::diary::store::{Extent, Missing, SealedRead, Seq, Store};
use frond_core::ports::{OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch};
use std::path::{Path, PathBuf};
use std::sync::Arc;

fn fixture() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/diary-v1")
}

const FILES: [&str; 4] = ["keys", "journal", "snapshot", "running"];

fn entry(n: u64) -> Vec<u8> {
    let mut entry = format!("invented entry {n} of a diary that nobody kept ").into_bytes();
    if n == 20 {
        entry.resize(3_000, b'.');
    }
    entry
}

#[test]
fn format_1_opens_and_only_its_keys_are_changed_by_opening() {
    let base = tempfile::tempdir().unwrap();
    for name in FILES {
        std::fs::copy(fixture().join(name), base.path().join(name)).unwrap();
    }
    let words = Passphrase::new("an invented passphrase".to_owned()).unwrap();
    let keeper = PassphraseKeeper::new(words, Stretch::cheap_for_tests_only());
    let open =
        || Store::open(Arc::new(RealDisk), base.path(), &keeper, Arc::new(OsRandom)).unwrap();

    let opened = open();
    assert!(opened.findings.is_clean(), "{:?}", opened.findings);
    let snapshot = opened.snapshot.unwrap();
    assert_eq!(snapshot.covers.get(), 30);
    assert_eq!(snapshot.bytes, b"invented state after entry 30");
    for (n, (seq, bytes)) in (31..).zip(&opened.tail) {
        assert_eq!((seq.get(), bytes), (n, &entry(n)));
    }
    assert_eq!(opened.tail.len(), 10);
    let running = opened.store.running().read().unwrap();
    assert_eq!(running, SealedRead::Content(b"invented running practice".to_vec()));
    let mut seen = Vec::new();
    let missing = opened
        .store
        .read_from(Seq::FIRST, |seq, bytes| {
            assert_eq!(bytes, entry(seq.get()));
            seen.push(seq.get());
        })
        .unwrap();
    assert_eq!(seen, (1..=40).filter(|n| *n != 12).collect::<Vec<_>>());
    let twelve = Seq::new(12).unwrap();
    let mark = Missing { from: twelve, through: twelve, extent: Extent::Exactly, new: false };
    assert_eq!(missing, [mark]);
    for name in FILES {
        let now = std::fs::read(base.path().join(name)).unwrap();
        let then = std::fs::read(fixture().join(name)).unwrap();
        if name == "keys" {
            // It was made before there were cards, and was given one; the wraps stay as they are.
            assert_eq!(now.len(), then.len());
            assert_eq!(now[8..115], then[8..115], "the wraps were changed");
            assert_ne!(now, then, "no card was given");
        } else {
            assert_eq!(now, then, "{name} was changed");
        }
    }

    // And it takes entries.
    let mut store = opened.store;
    assert_eq!(store.append(b"one more").unwrap().get(), 41);
    drop(store);
    assert_eq!(open().tail.len(), 11);
}
