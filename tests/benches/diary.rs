//! What the diary on disk costs: `cargo bench -p frond-tests --bench diary`.
//!
//! - one durable append of a typical session of 400 bytes, by turns with the least any durable write
//!   can cost (overwriting blocks that are written already, and `fdatasync`), with SQLite (WAL,
//!   synchronous=FULL) and with redb (its default, durable commit);
//! - opening from the snapshot at 300 and at 11,000 entries (ten years of three a day);
//! - a scrub and a whole reading of 11,000 entries;
//! - the everyday stretching of a passphrase.
//!
//! Goals, set before measuring: append at most 1.10 times the bare overwrite; SQLite and redb at least
//! 1.3 times the append; opening the same at both sizes; a scrub below 100 ms.

#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::disallowed_methods,
    reason = "a measurement: it stops at the first thing that is not as expected, and needs a clock"
)]

mod by_turns;

use by_turns::{Side, by_turns};
use frond_core::diary::store::{ScrubOutcome, Seq, Store};
use frond_core::ports::{
    DataKey, KeyKeeper, OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch,
};
use std::fs::File;
use std::os::unix::fs::FileExt;
use std::path::{Path, PathBuf};
use std::sync::Arc;

const ENTRY: [u8; 400] = [b'e'; 400];
const ROUNDS: usize = 2_000;

fn keeper() -> PassphraseKeeper {
    let words = Passphrase::new("invented words".to_owned()).unwrap();
    PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
}

fn create(folder: &Path) -> Store {
    Store::create(Arc::new(RealDisk), folder, &keeper(), Arc::new(OsRandom)).unwrap().store
}

fn open(folder: &Path) -> frond_core::diary::store::Opened {
    Store::open(Arc::new(RealDisk), folder, &keeper(), Arc::new(OsRandom)).unwrap()
}

/// A closed diary with this many entries, its snapshot ten entries before the end.
fn diary(base: &Path, entries: u64, state: &[u8]) -> PathBuf {
    let folder = base.join(entries.to_string());
    let mut store = create(&folder);
    let mut covers = Seq::FIRST;
    for n in 1..=entries {
        let seq = store.append(&ENTRY).unwrap();
        if n == entries - 10 {
            covers = seq;
        }
    }
    store.save_snapshot(covers, state).unwrap();
    folder
}

fn appending(base: &Path) {
    let mut store = create(&base.join("append"));
    let mut prepared = create(&base.join("prepared"));

    let bare = File::create(base.join("bare")).unwrap();
    // In pieces like the diary's: a system that keeps what is written at one go as one large page
    // takes longer over each small change to it.
    for piece in 0..32 {
        bare.write_all_at(&[1u8; 64 << 10], piece << 16).unwrap();
        bare.sync_all().unwrap();
    }
    let mut at = 0u64;

    let growing = File::create(base.join("growing")).unwrap();
    let mut end = 0u64;

    let sqlite = rusqlite::Connection::open(base.join("sqlite")).unwrap();
    sqlite.pragma_update(None, "journal_mode", "WAL").unwrap();
    sqlite.pragma_update(None, "synchronous", "FULL").unwrap();
    sqlite
        .execute("CREATE TABLE entry (seq INTEGER PRIMARY KEY, bytes BLOB NOT NULL)", [])
        .unwrap();
    let mut insert = sqlite.prepare("INSERT INTO entry (bytes) VALUES (?1)").unwrap();

    let table: redb::TableDefinition<'_, u64, &[u8]> = redb::TableDefinition::new("entry");
    let redb = redb::Database::create(base.join("redb")).unwrap();
    let mut key = 0u64;

    let measured = by_turns(
        "One durable append of 400 bytes",
        ROUNDS,
        vec![
            Side::new("bare: overwrite 512 written bytes, fdatasync", || {
                bare.write_all_at(&[2u8; 512], at).unwrap();
                bare.sync_data().unwrap();
                at = (at + 512) % (2 << 20);
            }),
            Side::new("diary, room made when needed (1 append in 128)", || {
                store.append(&ENTRY).unwrap();
            }),
            Side::new("bare: lengthen a file by 512 bytes, fdatasync", || {
                growing.write_all_at(&[2u8; 512], end).unwrap();
                growing.sync_data().unwrap();
                end += 512;
            }),
            Side::new("SQLite, WAL, synchronous=FULL", || {
                insert.execute([&ENTRY[..]]).unwrap();
            }),
            Side::new("redb, durable commit", || {
                let write = redb.begin_write().unwrap();
                write.open_table(table).unwrap().insert(key, &ENTRY[..]).unwrap();
                write.commit().unwrap();
                key += 1;
            }),
        ],
    );
    let ratio = |a: usize, b: usize| {
        measured[a].median().as_secs_f64() / measured[b].median().as_secs_f64()
    };
    println!("diary / bare overwrite: {:.3} (goal: at most 1.10)", ratio(1, 0));
    println!(
        "SQLite / diary: {:.2}, redb / diary: {:.2} (goal: at least 1.30)",
        ratio(3, 1),
        ratio(4, 1)
    );

    // With the room made ahead, off the path: what a person waits for.
    let mut n = 0;
    let mut times: Vec<_> = (0..ROUNDS)
        .map(|_| {
            n += 1;
            if n % 32 == 0 {
                prepared.prepare().unwrap();
            }
            let begun = std::time::Instant::now();
            prepared.append(&ENTRY).unwrap();
            begun.elapsed()
        })
        .collect();
    times.sort();
    println!(
        "diary alone, room made ahead: median {:.1} us, p99 {:.1} us",
        times[ROUNDS / 2].as_secs_f64() * 1e6,
        times[ROUNDS * 99 / 100].as_secs_f64() * 1e6
    );
}

fn opening(few: &Path, many: &Path) {
    by_turns(
        "Opening from the snapshot (64 KiB of state, 10 entries after it, cheap key stretching)",
        1_000,
        vec![
            Side::new("300 entries", || assert_eq!(open(few).tail.len(), 10)),
            Side::new("11,000 entries", || assert_eq!(open(many).tail.len(), 10)),
        ],
    );
}

fn reading(many: &Path) {
    let store = open(many).store;
    by_turns(
        "11,000 entries, all of them",
        100,
        vec![
            Side::new("scrub in slices of 256 KiB", || {
                let mut scrub = store.scrub().unwrap();
                let outcome = loop {
                    if let Some(outcome) = scrub.step(256 * 1024).unwrap().outcome {
                        break outcome;
                    }
                };
                assert_eq!(outcome, ScrubOutcome::Sound);
            }),
            Side::new("read and verify every entry", || {
                let mut bytes = 0;
                store.read_from(Seq::FIRST, |_, b| bytes += b.len()).unwrap();
                assert_eq!(bytes, 11_000 * ENTRY.len());
            }),
        ],
    );
}

/// What a passphrase costs at every opening, whatever the diary's size.
fn stretching() {
    let words = Passphrase::new("invented words".to_owned()).unwrap();
    let everyday = PassphraseKeeper::new(words, Stretch::everyday());
    let key = DataKey::new(&OsRandom).unwrap();
    let wrap = everyday.wrap(&key, &OsRandom).unwrap();
    by_turns(
        "Key stretching",
        20,
        vec![Side::new("everyday (64 MiB, 3 passes)", || {
            everyday.unwrap(&wrap).unwrap();
        })],
    );
}

fn main() {
    // `cargo test --benches` asks every bench to run as a test; there is nothing to test here.
    if !std::env::args().any(|a| a == "--bench") {
        return;
    }
    let base = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    println!("on {}", base.path().display());
    appending(base.path());
    let state = vec![7u8; 64 * 1024];
    let few = diary(base.path(), 300, &state);
    let many = diary(base.path(), 11_000, &state);
    opening(&few, &many);
    reading(&many);
    stretching();
}
