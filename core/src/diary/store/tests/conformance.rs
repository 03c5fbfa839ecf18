//! One suite for every disk: what a diary does when nothing goes wrong, and who is turned away.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::SimDisk;
use crate::ports::{Disk, KeeperError, RealDisk};
use std::path::Path;
use std::sync::Arc;

type Check = fn(Arc<dyn Disk>, &Path);

/// Runs a check on both disks.
fn on_both(check: Check) {
    check(Arc::new(SimDisk::new()), Path::new("/diary"));
    let base = tempfile::tempdir().unwrap();
    check(Arc::new(RealDisk), &base.path().join("diary"));
}

fn reopen(disk: &Arc<dyn Disk>, at: &Path) -> Opened {
    Store::open(disk.clone(), at, &keeper(), random()).unwrap()
}

#[test]
fn what_was_appended_is_read_back_in_order() {
    on_both(|disk, at| {
        let mut store = create_on(disk.clone(), at);
        assert_eq!(store.last(), None);
        for n in 1..=200 {
            assert_eq!(store.append(&entry(n)).unwrap(), seq(n));
        }
        drop(store);
        let opened = reopen(&disk, at);
        assert!(opened.findings.is_clean(), "{:?}", opened.findings);
        assert_eq!(opened.store.last(), Some(seq(200)));
        assert_eq!(numbers(&opened.tail), (1..=200).collect::<Vec<_>>());
        assert_true_to_place(&opened.tail);
    });
}

#[test]
fn entries_of_every_length_survive() {
    on_both(|disk, at| {
        let lengths = [0, 1, 426, 427, 428, 511, 939, 4096, 65_536, 100_000, ENTRY_MOST];
        let mut store = create_on(disk.clone(), at);
        for (n, len) in lengths.iter().enumerate() {
            store.append(&vec![n as u8; *len]).unwrap();
        }
        assert_eq!(store.append(&vec![0; ENTRY_MOST + 1]).unwrap_err(), AppendError::TooLong);
        drop(store);
        let opened = reopen(&disk, at);
        assert!(opened.findings.is_clean(), "{:?}", opened.findings);
        for ((n, len), (_, bytes)) in lengths.iter().enumerate().zip(&opened.tail) {
            assert_eq!(bytes, &vec![n as u8; *len]);
        }
        assert_eq!(opened.tail.len(), lengths.len());
    });
}

#[test]
fn opening_reads_on_from_the_snapshot() {
    on_both(|disk, at| {
        let mut store = create_on(disk.clone(), at);
        for n in 1..=5 {
            store.append(&entry(n)).unwrap();
        }
        store.save_snapshot(seq(3), b"state after three").unwrap();
        drop(store);
        let opened = reopen(&disk, at);
        assert!(opened.findings.is_clean());
        let snapshot = opened.snapshot.unwrap();
        assert_eq!(
            (snapshot.covers, snapshot.bytes.as_slice()),
            (seq(3), &b"state after three"[..])
        );
        assert_eq!(numbers(&opened.tail), [4, 5]);
        // The place the snapshot stands on can be used again, an earlier one cannot.
        opened.store.save_snapshot(seq(3), b"again").unwrap();
        let early = opened.store.save_snapshot(seq(2), b"").unwrap_err();
        assert_eq!(early, SaveError::NoSuchPlace(seq(2)));
        assert_eq!(
            opened.store.save_snapshot(seq(6), b"").unwrap_err(),
            SaveError::NoSuchPlace(seq(6))
        );
        let mut all = Vec::new();
        let missing = opened.store.read_from(Seq::FIRST, |s, b| all.push((s, b.to_vec()))).unwrap();
        assert!(missing.is_empty());
        assert_eq!(numbers(&all), [1, 2, 3, 4, 5]);
        let mut some = Vec::new();
        opened.store.read_from(seq(5), |s, _| some.push(s)).unwrap();
        assert_eq!(some, [seq(5)]);
    });
}

#[test]
fn appending_goes_on_after_reopening_from_a_snapshot_that_covers_all() {
    on_both(|disk, at| {
        let mut store = create_on(disk.clone(), at);
        for n in 1..=3 {
            store.append(&entry(n)).unwrap();
        }
        store.save_snapshot(seq(3), b"all").unwrap();
        drop(store);
        let mut opened = reopen(&disk, at);
        assert_eq!(opened.store.last(), Some(seq(3)));
        assert!(opened.tail.is_empty());
        assert_eq!(opened.store.append(&entry(4)).unwrap(), seq(4));
        drop(opened);
        let opened = reopen(&disk, at);
        assert!(opened.findings.is_clean());
        assert_eq!(numbers(&opened.tail), [4]);
    });
}

#[test]
fn a_second_opener_is_turned_away_until_the_first_has_gone() {
    on_both(|disk, at| {
        let store = create_on(disk.clone(), at);
        let second = Store::open(disk.clone(), at, &keeper(), random()).unwrap_err();
        assert_eq!(second, OpenError::InUse);
        drop(store);
        reopen(&disk, at);
    });
}

#[test]
fn a_wrong_passphrase_and_a_folder_without_a_diary_are_told_apart() {
    on_both(|disk, at| {
        let nothing = Store::open(disk.clone(), at, &keeper(), random()).unwrap_err();
        assert_eq!(nothing, OpenError::NotADiary);
        drop(create_on(disk.clone(), at));
        let wrong = Store::open(disk.clone(), at, &keeper_with("other words"), random());
        assert_eq!(wrong.unwrap_err(), OpenError::Keeper(KeeperError::WrongSecret));
        let again = Store::create(disk.clone(), at, &keeper(), random()).unwrap_err();
        assert_eq!(again, CreateError::AlreadyThere);
    });
}

#[test]
fn the_running_practice_is_replaced_read_and_removed() {
    on_both(|disk, at| {
        let store = create_on(disk.clone(), at);
        assert_eq!(store.running().read().unwrap(), SealedRead::Absent);
        store.running().replace(b"started").unwrap();
        store.running().replace(b"paused").unwrap();
        drop(store);
        let opened = reopen(&disk, at);
        let running = opened.store.running();
        assert_eq!(running.read().unwrap(), SealedRead::Content(b"paused".to_vec()));
        running.remove().unwrap();
        running.remove().unwrap();
        assert_eq!(running.read().unwrap(), SealedRead::Absent);
    });
}

#[test]
fn a_scrub_verifies_everything_in_slices() {
    on_both(|disk, at| {
        let mut store = create_on(disk.clone(), at);
        for n in 1..=300 {
            store.append(&entry(n)).unwrap();
        }
        let mut scrub = store.scrub().unwrap();
        store.append(&entry(301)).unwrap();
        let mut steps = 0;
        let outcome = loop {
            steps += 1;
            let progress = scrub.step(16 * 1024).unwrap();
            assert!(progress.done <= progress.total);
            if let Some(outcome) = progress.outcome {
                assert_eq!(progress.done, progress.total);
                break outcome;
            }
        };
        assert_eq!(outcome, ScrubOutcome::Sound);
        assert!(steps > 5);
    });
}

#[test]
fn room_is_made_ahead_once_and_not_again() {
    on_both(|disk, at| {
        let mut store = create_on(disk.clone(), at);
        for n in 1..=100 {
            store.append(&entry(n)).unwrap();
        }
        store.prepare().unwrap();
        let len = disk.open(&at.join("journal")).unwrap().length().unwrap();
        assert_eq!(len, 128 * 1024);
        store.prepare().unwrap();
        assert_eq!(disk.open(&at.join("journal")).unwrap().length().unwrap(), len);
    });
}
