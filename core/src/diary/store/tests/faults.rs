//! Single calls that fail, and a full disk. An acknowledged entry is there afterwards, whatever
//! failed; what is refused says so.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::{Call, SimDisk};
use std::sync::Arc;

const CALLS: [Call; 6] =
    [Call::Create, Call::Write, Call::Sync, Call::SyncFolder, Call::Rename, Call::Remove];

/// Somebody who does what the documentation says: makes a diary, appends, and after a failure opens
/// again, looks, and appends what is not there. Returns the entries acknowledged.
fn patient(disk: &SimDisk, entries: u64) -> u64 {
    let arc: Arc<SimDisk> = Arc::new(disk.clone());
    let mut told = 0;
    let made = (0..3).find_map(|_| Store::create(arc.clone(), &folder(), &keeper(), random()).ok());
    let mut store = match made {
        Some(opened) => opened.store,
        None => match try_open(disk) {
            Ok(opened) => opened.store,
            Err(_) => return 0,
        },
    };
    let mut tries = 0;
    while told < entries && tries < 20 {
        tries += 1;
        match store.append(&entry(told + 1)) {
            Ok(seq) => {
                assert_eq!(seq.get(), told + 1);
                told += 1;
                if told % 3 == 0 {
                    let _ = store.save_snapshot(seq, &entry(told));
                }
            }
            Err(AppendError::DiskFull | AppendError::Random(_)) => {}
            Err(_) => {
                drop(store);
                let Some(opened) = (0..3).find_map(|_| try_open(disk).ok()) else { return told };
                let last = opened.store.last().map_or(0, Seq::get);
                assert!(last >= told, "told {told}, but the last is {last}");
                if opened.store.is_writable() {
                    // Shown by a handle that may write: as good as acknowledged.
                    told = told.max(last);
                }
                store = opened.store;
            }
        }
    }
    told
}

/// What was acknowledged is there, for the next process and after a power cut.
fn assert_kept(disk: &SimDisk, told: u64) {
    for found in [disk.after_kill(), disk.after_power_cut(&mut || false)] {
        if told == 0 {
            let _ = try_open(&found);
            continue;
        }
        let opened = open(&found);
        let mut seen = Vec::new();
        let missing =
            opened.store.read_from(Seq::FIRST, |s, b| seen.push((s, b.to_vec()))).unwrap();
        assert!(missing.is_empty(), "{missing:?}");
        assert!(seen.len() as u64 >= told, "told {told}, found {}", seen.len());
        assert_true_to_place(&seen);
    }
}

#[test]
fn any_single_call_may_fail() {
    for call in CALLS {
        let whole = SimDisk::new();
        assert_eq!(patient(&whole, 12), 12);
        for nth in 0..whole.calls_of(call) {
            let disk = SimDisk::new();
            disk.fail(call, nth, false);
            let told = patient(&disk, 12);
            assert_eq!(told, 12, "{call:?} number {nth}");
            assert_kept(&disk, told);
        }
    }
}

#[test]
fn all_calls_of_a_sort_may_fail_from_some_moment_on() {
    for call in CALLS {
        let whole = SimDisk::new();
        patient(&whole, 12);
        for nth in 0..whole.calls_of(call) {
            let disk = SimDisk::new();
            disk.fail(call, nth, true);
            let told = patient(&disk, 12);
            assert_kept(&disk, told);
        }
    }
}

#[test]
fn any_single_call_may_fail_while_damage_is_repaired() {
    let original = diary(6);
    let mut bytes = original.content(&journal()).unwrap();
    bytes[8192 + 2 * 512 + 80] ^= 1;
    original.tamper(&journal(), bytes.clone());
    for call in CALLS.into_iter().chain([Call::Read]) {
        let whole = original.after_kill();
        drop(open(&whole));
        for nth in 0..whole.calls_of(call) {
            let disk = original.after_kill();
            disk.fail(call, nth, false);
            let Ok(opened) = try_open(&disk) else {
                // Nothing was changed.
                assert_eq!(disk.content(&journal()).unwrap(), bytes, "{call:?} number {nth}");
                continue;
            };
            assert_eq!(numbers(&opened.tail), [1, 2, 4, 5, 6], "{call:?} number {nth}");
            let mut read = Vec::new();
            opened.store.read_from(Seq::FIRST, |s, _| read.push(s.get())).unwrap();
            assert_eq!(read, [1, 2, 4, 5, 6], "{call:?} number {nth}");
            drop(opened);
            for found in [disk.after_kill(), disk.after_power_cut(&mut || false)] {
                let opened = open(&found);
                assert_eq!(numbers(&opened.tail), [1, 2, 4, 5, 6], "{call:?} number {nth}");
                assert!(opened.findings.missing.iter().any(|m| m.from == seq(3)));
                let kept = found.paths().iter().any(|p| found.content(p).as_ref() == Some(&bytes));
                assert!(kept, "{call:?} number {nth}");
            }
        }
    }
}

#[test]
fn a_full_disk_refuses_and_the_same_handle_goes_on_when_there_is_room() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    disk.set_room(Some(10_000));
    let mut told = 0;
    let error = loop {
        match store.append(&entry(told + 1)) {
            Ok(_) => told += 1,
            Err(error) => break error,
        }
    };
    assert_eq!(error, AppendError::DiskFull);
    assert_eq!(told, 111, "all there was room for, with a sector of zeros after it");
    assert!(store.save_snapshot(seq(told), &[1; 20_000]).is_err());
    assert_kept(&disk, told);
    disk.set_room(None);
    assert_eq!(store.append(&entry(told + 1)).unwrap(), seq(told + 1));
    assert_kept(&disk, told + 1);
}

#[test]
fn any_amount_of_room_at_any_moment() {
    for room in (0..200_000).step_by(3_000) {
        let disk = SimDisk::new();
        disk.set_room(Some(room));
        let told = patient(&disk, 130);
        disk.set_room(None);
        assert_kept(&disk, told);
    }
}

#[test]
fn damage_on_a_full_disk_is_read_only_until_there_is_room() {
    let original = diary(6);
    let mut bytes = original.content(&journal()).unwrap();
    bytes[8192 + 2 * 512 + 80] ^= 1;
    original.tamper(&journal(), bytes.clone());
    for room in [0, 30_000, 70_000, 100_000] {
        let disk = original.after_kill();
        disk.set_room(Some(room));
        let mut opened = open(&disk);
        assert_eq!(opened.findings.read_only, Some(ReadOnly::DiskFull), "room {room}");
        assert_eq!(numbers(&opened.tail), [1, 2, 4, 5, 6]);
        assert_eq!(opened.store.append(b"x").unwrap_err(), AppendError::ReadOnly);
        assert_eq!(opened.store.save_snapshot(seq(6), b"x").unwrap_err(), SaveError::ReadOnly);
        let mut read = Vec::new();
        opened.store.read_from(seq(2), |s, _| read.push(s.get())).unwrap();
        assert_eq!(read, [2, 4, 5, 6]);
        assert_eq!(disk.content(&journal()).unwrap(), bytes, "touched");
        drop(opened);
        disk.set_room(None);
        let opened = open(&disk);
        assert!(opened.store.is_writable());
        assert_eq!(numbers(&opened.tail), [1, 2, 4, 5, 6]);
    }
}
