//! A process that appends is killed two hundred times. What it said was saved is there.
//!
//! This proves nothing about syncs (the system's memory survives the process; the simulated disk in
//! the core proves those), but it runs the real disk, the real lock and the real opening.

use frond_core::diary::store::{Extent, Store};
use frond_core::ports::sim::SplitMix;
use frond_core::ports::{OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch};
use std::collections::BTreeMap;
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::sync::{Arc, mpsc};
use std::time::Duration;

#[test]
fn two_hundred_kills_lose_nothing_that_was_acknowledged() {
    let base = tempfile::tempdir().unwrap();
    let folder = base.path().join("diary");
    let mut rng = SplitMix::new(2024);
    let mut told = 0u64;
    let mut opened_again = 0u64;
    for round in 0..200 {
        let mut child = Command::new(env!("CARGO_BIN_EXE_appender"))
            .arg(&folder)
            .arg((told + 1).to_string())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let lines = BufReader::new(child.stdout.take().unwrap()).lines();
        // Reads until the pipe closes, so that nothing that was said goes unheard.
        let (first, heard_first) = mpsc::channel();
        let reader = std::thread::spawn(move || {
            let (mut told, mut opened) = (None, false);
            for line in lines.map_while(Result::ok) {
                opened |= line.starts_with("open ");
                if let Some(n) = line.strip_prefix("told ") {
                    told = n.parse().ok().max(told);
                    let _ = first.send(());
                }
            }
            (told, opened)
        });
        // Every other kill waits for work to have begun, however slow the machine is just now; the
        // others may fall into the opening.
        if round % 2 == 0 {
            heard_first.recv_timeout(Duration::from_secs(60)).unwrap();
        }
        std::thread::sleep(Duration::from_micros(rng.below(20_000)));
        child.kill().unwrap();
        let status = child.wait().unwrap();
        assert!(!status.success() && status.code().is_none(), "it ended by itself: {status}");
        let (heard, opened) = reader.join().unwrap();
        told = told.max(heard.unwrap_or(0));
        opened_again += u64::from(opened);
    }
    assert!(told >= 100 && opened_again >= 100, "the kills came before any work");

    let words = Passphrase::new("invented words".to_owned()).unwrap();
    let keeper = PassphraseKeeper::new(words, Stretch::cheap_for_tests_only());
    let opened = Store::open(Arc::new(RealDisk), &folder, &keeper, Arc::new(OsRandom)).unwrap();
    let mut found: BTreeMap<u64, usize> = BTreeMap::new();
    let missing = opened
        .store
        .read_from(frond_core::diary::store::Seq::FIRST, |_, bytes| {
            let text = std::str::from_utf8(bytes).unwrap();
            let n: u64 = text.split(' ').next().unwrap().parse().unwrap();
            assert_eq!(bytes.len(), (50 + (n * 7919 % 9000)) as usize);
            *found.entry(n).or_default() += 1;
        })
        .unwrap();
    for n in 1..=told {
        assert!(found.contains_key(&n), "entry {n} was acknowledged and is gone");
    }
    // A kill within a write of several pages can leave one entry that was never acknowledged.
    assert!(missing.iter().all(|m| m.extent == Extent::Perhaps), "{missing:?}");
    println!("{told} entries acknowledged over {opened_again} openings, {} holes", missing.len());
}
