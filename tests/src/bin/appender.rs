//! Appends entries to a diary and says so, until it is killed. Used by the test `killed`.
//!
//! `appender FOLDER FIRST`: opens the diary in FOLDER (makes it if there is none), prints what it
//! finds, then appends invented entries numbered from FIRST and prints `told N` after each
//! acknowledgement.

use frond_core::diary::store::{OpenError, Seq, Store};
use frond_core::ports::{OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch};
use std::error::Error;
use std::io::Write;
use std::path::PathBuf;
use std::sync::Arc;

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let folder = PathBuf::from(args.next().ok_or("which folder?")?);
    let first: u64 = args.next().ok_or("from which number?")?.parse()?;
    let words = Passphrase::new("invented words".to_owned())?;
    let keeper = PassphraseKeeper::new(words, Stretch::cheap_for_tests_only());
    let (disk, random) = (Arc::new(RealDisk), Arc::new(OsRandom));
    let opened = match Store::open(disk.clone(), &folder, &keeper, random.clone()) {
        Err(OpenError::NotADiary | OpenError::JournalMissing) => {
            Store::create(disk, &folder, &keeper, random)?
        }
        other => other?,
    };
    let mut out = std::io::stdout().lock();
    if opened.findings.read_only.is_some() {
        return Err("read-only".into());
    }
    let mut store = opened.store;
    writeln!(out, "open {}", store.last().map_or(0, Seq::get))?;
    for n in first.. {
        let mut entry = format!("{n} ").into_bytes();
        // From one sector to some pages, so that a kill can fall within a write.
        let len = 50 + usize::try_from(n * 7919 % 9000)?;
        entry.resize(len.max(entry.len()), b'.');
        let seq = store.append(&entry)?;
        writeln!(out, "told {n}")?;
        out.flush()?;
        if n % 25 == 0 {
            store.save_snapshot(seq, format!("state {n}").as_bytes())?;
        }
        if n % 40 == 0 {
            store.prepare()?;
        }
    }
    Ok(())
}
