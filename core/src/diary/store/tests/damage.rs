//! Damage. Every byte flipped, the file cut at every byte, frames dropped, swapped and repeated:
//! never a panic, every entry that verifies is read, what is missing is said exactly, and the
//! original bytes are kept.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::SimDisk;
use std::path::Path;

const ENTRIES: u64 = 30;
const FRAMES: usize = 8192;
const SECTOR: usize = 512;
/// Where the frames end.
const END: usize = FRAMES + SECTOR * ENTRIES as usize;

fn tampered(original: &SimDisk, path: &Path, content: Vec<u8>) -> SimDisk {
    let disk = original.after_kill();
    disk.tamper(path, content);
    disk
}

fn kept(disk: &SimDisk, opened: &Opened, original: &[u8]) -> bool {
    opened.findings.kept_aside.iter().any(|p| disk.content(p).as_deref() == Some(original))
}

fn all_but(missing: &[u64], last: u64) -> Vec<u64> {
    (1..=last).filter(|n| !missing.contains(n)).collect()
}

fn hole(from: u64, through: u64, extent: Extent) -> Missing {
    Missing { from: seq(from), through: seq(through), extent, new: true }
}

/// Opening once more finds nothing new, has not forgotten what is missing, and takes entries.
fn assert_repaired(disk: &SimDisk, first: Opened) {
    let missing = first.findings.missing.clone();
    let seen = numbers(&first.tail);
    drop(first);
    let mut again = open(disk);
    assert_eq!(numbers(&again.tail), seen);
    let f = &again.findings;
    assert!(!f.damaged && !f.torn && !f.shortened && !f.newly_missing() && f.read_only.is_none());
    assert_eq!(f.missing.len(), missing.len());
    for (now, then) in f.missing.iter().zip(&missing) {
        assert_eq!((now.from, now.through, now.extent), (then.from, then.through, then.extent));
    }
    let next = again.store.append(b"goes on").unwrap();
    assert!(seen.iter().all(|n| *n < next.get()));
    assert!(missing.iter().all(|m| m.through < next));
}

/// Flips one bit of every byte of the journal in this range.
fn flip_journal(range: std::ops::Range<usize>) {
    let original = diary(ENTRIES);
    let bytes = original.content(&journal()).unwrap();
    for at in range {
        let mut garbled = bytes.clone();
        garbled[at] ^= 1 << (at % 8);
        let disk = tampered(&original, &journal(), garbled.clone());
        // Behind the frames most of the flips are only looked at, to save time: a full disk keeps
        // the repair from being made.
        let look = at >= END && at % 7 != 0;
        if look {
            disk.set_room(Some(0));
        }
        let opened = open(&disk);
        let f = &opened.findings;
        assert_eq!(kept(&disk, &opened, &garbled), !look, "byte {at}");
        assert_eq!(f.read_only, look.then_some(ReadOnly::DiskFull), "byte {at}");
        // The last sector is zeros in every journal of ours, or something has cut it.
        assert_eq!(f.shortened, at >= bytes.len() - SECTOR, "byte {at}");
        assert!(!f.torn);
        let frame = at.checked_sub(FRAMES).map(|b| (b / SECTOR) as u64 + 1);
        let lost: Vec<u64> = frame.filter(|n| *n <= ENTRIES).into_iter().collect();
        assert_eq!(numbers(&opened.tail), all_but(&lost, ENTRIES), "byte {at}");
        match frame {
            None => assert!(f.copy_lost && !f.damaged && f.missing.is_empty(), "byte {at}"),
            Some(n) if n < ENTRIES => {
                assert_eq!(f.missing, [hole(n, n, Extent::Exactly)], "byte {at}");
            }
            // The last frame: known exactly while its prefix can be read.
            Some(ENTRIES) if (at - FRAMES) % SECTOR >= 24 => {
                assert_eq!(f.missing, [hole(ENTRIES, ENTRIES, Extent::Exactly)], "byte {at}");
            }
            Some(ENTRIES) => {
                assert_eq!(f.missing, [hole(ENTRIES, ENTRIES, Extent::AtLeast)], "byte {at}");
            }
            // A byte that is not zero where nothing was ever written.
            Some(n) => {
                let sure = n == ENTRIES + 1 || f.shortened;
                let extent = if sure { Extent::AtLeast } else { Extent::Perhaps };
                assert_eq!(f.missing, [hole(ENTRIES + 1, ENTRIES + 1, extent)], "byte {at}");
            }
        }
        if at % 97 == 0 && !look {
            assert_true_to_place(&opened.tail);
            assert_repaired(&disk, opened);
        }
    }
}

#[test]
fn every_byte_of_the_header_flipped() {
    flip_journal(0..FRAMES);
}

#[test]
fn every_byte_of_the_frames_flipped() {
    flip_journal(FRAMES..END);
}

#[test]
fn every_byte_after_the_frames_flipped() {
    flip_journal(END..65_536);
}

#[test]
fn every_byte_of_the_keys_flipped() {
    let original = diary(3);
    let path = folder().join("keys");
    let bytes = original.content(&path).unwrap();
    for at in 0..bytes.len() {
        let mut garbled = bytes.clone();
        garbled[at] ^= 1 << (at % 8);
        let disk = tampered(&original, &path, garbled.clone());
        let opened = open(&disk);
        assert!(opened.findings.copy_lost && kept(&disk, &opened, &garbled), "byte {at}");
        assert_eq!(numbers(&opened.tail), [1, 2, 3]);
        assert_eq!(disk.content(&path).unwrap(), bytes, "written anew");
    }
}

#[test]
fn every_byte_of_the_snapshot_flipped() {
    let original = diary(5);
    open(&original).store.save_snapshot(seq(4), b"state after four").unwrap();
    let path = folder().join("snapshot");
    let bytes = original.content(&path).unwrap();
    for at in 0..bytes.len() {
        for bit in 0..8 {
            let mut garbled = bytes.clone();
            garbled[at] ^= 1 << bit;
            let disk = tampered(&original, &path, garbled.clone());
            let opened = open(&disk);
            assert_eq!(opened.findings.snapshot, Some(SnapshotTrouble::Damaged), "byte {at}");
            assert!(opened.snapshot.is_none() && kept(&disk, &opened, &garbled));
            assert_eq!(numbers(&opened.tail), [1, 2, 3, 4, 5]);
            assert!(opened.findings.missing.is_empty());
        }
    }
}

#[test]
fn every_length_of_the_journal() {
    let original = diary(ENTRIES);
    let bytes = original.content(&journal()).unwrap();
    for len in 0..bytes.len() {
        let disk = tampered(&original, &journal(), bytes[..len].to_vec());
        if len < 4096 {
            assert_eq!(try_open(&disk).unwrap_err(), OpenError::HeaderDamaged, "length {len}");
            assert_eq!(disk.content(&journal()).unwrap(), bytes[..len], "touched");
            continue;
        }
        let look = len > END && len % 7 != 0;
        if look {
            disk.set_room(Some(0));
        }
        let opened = open(&disk);
        let f = &opened.findings;
        let whole = (len.saturating_sub(FRAMES) / SECTOR).min(ENTRIES as usize) as u64;
        assert_eq!(numbers(&opened.tail), (1..=whole).collect::<Vec<_>>(), "length {len}");
        assert!(f.shortened, "length {len}");
        assert_eq!(kept(&disk, &opened, &bytes[..len]), !look, "length {len}");
        let part = len.saturating_sub(FRAMES) % SECTOR;
        let cut = whole < ENTRIES && part > 0 && len > FRAMES;
        let extent = if cut { Extent::AtLeast } else { Extent::Perhaps };
        assert_eq!(f.torn, cut, "length {len}");
        assert_eq!(f.missing, [hole(whole + 1, whole + 1, extent)], "length {len}");
        assert!(!f.damaged);
        if len % 97 == 0 && !look {
            assert_repaired(&disk, opened);
        }
    }
}

/// A journal made of the original's frames in this order.
fn rearranged(original: &SimDisk, order: &[usize]) -> SimDisk {
    let mut bytes = original.content(&journal()).unwrap();
    let frames = bytes[FRAMES..].to_vec();
    bytes[FRAMES..].fill(0);
    for (to, from) in order.iter().enumerate() {
        let (to, from) = (FRAMES + to * SECTOR, from * SECTOR);
        bytes[to..to + SECTOR].copy_from_slice(&frames[from..from + SECTOR]);
    }
    tampered(original, &journal(), bytes)
}

#[test]
fn frames_dropped_swapped_and_repeated() {
    const N: usize = 6;
    let original = diary(N as u64);
    let usual: Vec<usize> = (0..N).collect();
    for i in 0..N - 1 {
        let mut dropped = usual.clone();
        dropped.remove(i);
        let disk = rearranged(&original, &dropped);
        let opened = open(&disk);
        let n = i as u64 + 1;
        assert!(opened.findings.damaged);
        assert_eq!(opened.findings.missing, [hole(n, n, Extent::Exactly)]);
        assert_eq!(numbers(&opened.tail), all_but(&[n], N as u64));
        assert_repaired(&disk, opened);
    }
    for i in 0..N {
        for j in 0..N {
            let mut repeated = usual.clone();
            repeated.insert(j, i);
            let mut swapped = usual.clone();
            swapped.swap(i, j);
            for order in [repeated, swapped] {
                if order == usual {
                    continue;
                }
                let disk = rearranged(&original, &order);
                let opened = open(&disk);
                assert!(opened.findings.damaged, "{order:?}");
                // Whatever a repeated frame covers, or covers no more, was after the last one.
                for m in &opened.findings.missing {
                    assert!(m.from == seq(N as u64 + 1) && m.extent != Extent::Exactly);
                }
                assert_eq!(opened.findings.missing.is_empty(), order.len() == N, "{order:?}");
                assert_eq!(numbers(&opened.tail), all_but(&[], N as u64), "{order:?}");
                assert_true_to_place(&opened.tail);
                assert_repaired(&disk, opened);
            }
            let mut over = usual.clone();
            over[j] = i;
            if i != j {
                let disk = rearranged(&original, &over);
                let opened = open(&disk);
                let n = j as u64 + 1;
                assert!(opened.findings.damaged);
                assert_eq!(numbers(&opened.tail), all_but(&[n], N as u64));
                let extents: Vec<_> =
                    opened.findings.missing.iter().map(|m| (m.from, m.through, m.extent)).collect();
                assert!(
                    extents.iter().any(|(from, through, _)| (*from..=*through).contains(&seq(n)))
                );
                if i < j && j < N - 1 {
                    assert_eq!(extents, [(seq(n), seq(n), Extent::Exactly)]);
                }
            }
        }
    }
}

#[test]
fn a_frame_of_another_diary_does_not_pass() {
    let (one, other) = (diary(3), SimDisk::new());
    let mut store = Store::create(
        std::sync::Arc::new(other.clone()),
        &folder(),
        &keeper(),
        std::sync::Arc::new(crate::ports::sim::SeededRandom::new(1234)),
    )
    .unwrap()
    .store;
    for n in 1..=3 {
        store.append(&entry(n)).unwrap();
    }
    let mut bytes = one.content(&journal()).unwrap();
    let foreign = other.content(&journal()).unwrap();
    bytes[FRAMES + SECTOR..FRAMES + 2 * SECTOR]
        .copy_from_slice(&foreign[FRAMES + SECTOR..FRAMES + 2 * SECTOR]);
    let opened = open(&tampered(&one, &journal(), bytes));
    assert_eq!(numbers(&opened.tail), [1, 3]);
    assert_eq!(opened.findings.missing, [hole(2, 2, Extent::Exactly)]);
    // Nor does a whole foreign journal.
    let disk = tampered(&one, &journal(), foreign.clone());
    assert_eq!(try_open(&disk).unwrap_err(), OpenError::KeysDoNotFit);
    assert_eq!(disk.content(&journal()).unwrap(), foreign);
}

#[test]
fn a_sector_that_cannot_be_read_costs_one_entry_and_changes_nothing() {
    let disk = diary(5);
    let from = (FRAMES + SECTOR) as u64;
    disk.spoil(&journal(), from, from + SECTOR as u64);
    let before = disk.content(&journal()).unwrap();
    let mut opened = open(&disk);
    assert_eq!(numbers(&opened.tail), [1, 3, 4, 5]);
    assert_eq!(opened.findings.missing, [hole(2, 2, Extent::Exactly)]);
    // The original could not be copied, so it stays where it is.
    assert_eq!(opened.findings.read_only, Some(ReadOnly::DiskFailed));
    assert_eq!(opened.store.append(b"x").unwrap_err(), AppendError::ReadOnly);
    assert_eq!(disk.content(&journal()).unwrap(), before);
    drop(opened);
    // A disk that can be read again gives everything back.
    let again = open(&disk.after_kill());
    assert!(again.findings.is_clean());
    assert_eq!(numbers(&again.tail), [1, 2, 3, 4, 5]);
}

#[test]
fn damage_before_the_snapshot_is_found_by_the_scrub_and_repaired_at_the_next_opening() {
    let original = diary(20);
    open(&original).store.save_snapshot(seq(15), b"state after fifteen").unwrap();
    let mut bytes = original.content(&journal()).unwrap();
    bytes[FRAMES + 4 * SECTOR + 60] ^= 4;
    let disk = tampered(&original, &journal(), bytes);
    let opened = open(&disk);
    assert!(opened.findings.is_clean() && opened.snapshot.is_some());
    let mut scrub = opened.store.scrub().unwrap();
    let outcome = loop {
        if let Some(outcome) = scrub.step(1024).unwrap().outcome {
            break outcome;
        }
    };
    assert_eq!(outcome, ScrubOutcome::Damaged(vec![hole(5, 5, Extent::Exactly)]));
    drop(opened);
    let opened = open(&disk);
    assert_eq!(opened.findings.missing, [hole(5, 5, Extent::Exactly)]);
    assert_eq!(opened.findings.snapshot, Some(SnapshotTrouble::CoversMissing));
    assert_eq!(numbers(&opened.tail), all_but(&[5], 20));
    assert_repaired(&disk, opened);
}

#[test]
fn damage_after_the_snapshot_leaves_the_snapshot_in_use() {
    let original = diary(20);
    open(&original).store.save_snapshot(seq(15), b"state after fifteen").unwrap();
    let mut bytes = original.content(&journal()).unwrap();
    bytes[FRAMES + 17 * SECTOR + 60] ^= 4;
    let disk = tampered(&original, &journal(), bytes);
    for new in [true, false] {
        let opened = open(&disk);
        let missing = Missing { new, ..hole(18, 18, Extent::Exactly) };
        assert_eq!(opened.findings.missing, [missing]);
        assert_eq!(opened.snapshot.as_ref().unwrap().covers, seq(15));
        assert_eq!(numbers(&opened.tail), [16, 17, 19, 20]);
        assert_eq!(opened.findings.damaged, new);
    }
    // Once a snapshot covers an entry after the hole, the hole is history.
    open(&disk).store.save_snapshot(seq(19), b"state after nineteen").unwrap();
    assert!(open(&disk).findings.is_clean());
}

#[test]
fn a_journal_set_back_is_seen_by_its_snapshot() {
    let early = diary(10);
    let later = early.after_kill();
    let mut store = open(&later).store;
    for n in 11..=20 {
        store.append(&entry(n)).unwrap();
    }
    store.save_snapshot(seq(18), b"state after eighteen").unwrap();
    drop(store);
    let disk = tampered(&later, &journal(), early.content(&journal()).unwrap());
    let opened = open(&disk);
    assert_eq!(opened.findings.snapshot, Some(SnapshotTrouble::Ahead));
    assert_eq!(opened.findings.missing, [hole(11, 18, Extent::AtLeast)]);
    assert_eq!(numbers(&opened.tail), (1..=10).collect::<Vec<_>>());
    assert_repaired(&disk, opened);
}

#[test]
fn a_journal_set_back_and_written_on_is_seen_by_its_snapshot() {
    let early = diary(10);
    let later = early.after_kill();
    let mut store = open(&later).store;
    store.append(&entry(11)).unwrap();
    store.save_snapshot(seq(11), b"state after eleven").unwrap();
    drop(store);
    // The other life of the same file, with other random bytes.
    let random = std::sync::Arc::new(crate::ports::sim::SeededRandom::new(555));
    let disk = std::sync::Arc::new(early.after_kill());
    let mut other = Store::open(disk.clone(), &folder(), &keeper(), random).unwrap().store;
    other.append(b"another entry").unwrap();
    drop(other);
    let disk = tampered(&later, &journal(), disk.content(&journal()).unwrap());
    let opened = open(&disk);
    assert_eq!(opened.findings.snapshot, Some(SnapshotTrouble::Differs));
    assert!(opened.findings.missing.is_empty() && opened.snapshot.is_none());
    assert_eq!(opened.tail.len(), 11);
}

#[test]
fn a_snapshot_deleted_or_older_or_of_another_journal_costs_nothing_but_time() {
    let original = diary(10);
    let path = folder().join("snapshot");
    open(&original).store.save_snapshot(seq(4), b"state after four").unwrap();
    let older = original.content(&path).unwrap();
    open(&original).store.save_snapshot(seq(8), b"state after eight").unwrap();

    let disk = original.after_kill();
    disk.tamper_remove(&path);
    let opened = open(&disk);
    assert!(opened.findings.is_clean() && opened.snapshot.is_none());
    assert_eq!(opened.tail.len(), 10);
    drop(opened);

    let opened = open(&tampered(&original, &path, older.clone()));
    assert!(opened.findings.is_clean());
    assert_eq!(opened.snapshot.unwrap().bytes, b"state after four");
    assert_eq!(numbers(&opened.tail), (5..=10).collect::<Vec<_>>());

    let disk = original.after_kill();
    disk.tamper(&folder().join("renew"), Vec::new());
    drop(open(&disk));
    let opened = open(&tampered(&disk, &path, older));
    assert_eq!(opened.findings.snapshot, Some(SnapshotTrouble::OtherJournal));
    assert_eq!(opened.tail.len(), 10);
}

/// Raises the format number of both copies and makes the checksums true again.
fn newer(bytes: &mut [u8]) {
    for block in bytes[..8192].chunks_mut(4096) {
        block[4] = 2;
        let sum = crc32c::crc32c(&block[..4092]);
        block[4092..].copy_from_slice(&sum.to_le_bytes());
    }
}

#[test]
fn a_newer_format_is_refused_and_nothing_is_touched() {
    for name in ["journal", "keys", "snapshot"] {
        let disk = diary(3);
        open(&disk).store.save_snapshot(seq(3), b"state").unwrap();
        let path = folder().join(name);
        let mut bytes = disk.content(&path).unwrap();
        if name == "snapshot" {
            bytes[4] = 2;
            let sum = crc32c::crc32c(&bytes[..16]);
            bytes[16..20].copy_from_slice(&sum.to_le_bytes());
        } else {
            newer(&mut bytes);
        }
        disk.tamper(&path, bytes);
        let before: Vec<_> = disk.paths().into_iter().map(|p| (disk.content(&p), p)).collect();
        assert_eq!(try_open(&disk).unwrap_err(), OpenError::NewerFormat, "{name}");
        let after: Vec<_> = disk.paths().into_iter().map(|p| (disk.content(&p), p)).collect();
        assert_eq!(before, after, "{name}");
    }
}

#[test]
fn what_is_not_there_is_named() {
    let disk = diary(3);
    let keys = folder().join("keys");
    let wrap = disk.content(&keys).unwrap();
    disk.tamper_remove(&keys);
    assert_eq!(try_open(&disk).unwrap_err(), OpenError::KeysMissing);
    disk.tamper(&keys, vec![7; wrap.len()]);
    assert_eq!(try_open(&disk).unwrap_err(), OpenError::KeysDamaged);
    disk.tamper(&keys, Vec::new());
    assert_eq!(try_open(&disk).unwrap_err(), OpenError::KeysDamaged);
    disk.tamper(&keys, wrap);
    let bytes = disk.content(&journal()).unwrap();
    disk.tamper(&journal(), vec![7; bytes.len()]);
    assert_eq!(try_open(&disk).unwrap_err(), OpenError::HeaderDamaged);
    disk.tamper_remove(&journal());
    assert_eq!(try_open(&disk).unwrap_err(), OpenError::JournalMissing);
}

#[test]
fn large_frames_damaged_in_the_middle_and_at_the_end() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    for n in 1..=4u8 {
        store.append(&vec![n; 5_000]).unwrap();
    }
    drop(store);
    let frame = 10 * SECTOR;
    let bytes = disk.content(&journal()).unwrap();
    for (n, extent) in [(2u64, Extent::Exactly), (4, Extent::Exactly)] {
        for sector in 0..10 {
            let at = FRAMES + (n as usize - 1) * frame + sector * SECTOR;
            let mut garbled = bytes.clone();
            garbled[at + 100] ^= 1;
            let opened = open(&tampered(&disk, &journal(), garbled));
            assert_eq!(opened.findings.missing, [hole(n, n, extent)]);
            // A sector that never arrived looks like an interrupted write, at the end only.
            let mut zeroed = bytes.clone();
            zeroed[at..at + SECTOR].fill(0);
            let opened = open(&tampered(&disk, &journal(), zeroed));
            let extent = if n == 4 { Extent::Perhaps } else { Extent::Exactly };
            assert_eq!(opened.findings.missing, [hole(n, n, extent)], "sector {sector}");
        }
    }
}
