//! Power cuts. Whatever subset of the unsynced steps reached the disk, at whatever call the power
//! went off, these hold:
//!
//! - every acknowledged entry is there, in its place, unchanged;
//! - an interrupted making of a diary can be repeated;
//! - our own interrupted writes never look as if something outside had cut the file, and the most
//!   they can leave is one entry, never acknowledged, that is perhaps missing;
//! - what one opening has shown is there at the next;
//! - a snapshot once saved is found, or a later one;
//! - where something is repaired, the original bytes are kept.
//!
//! And each sync in the code is needed for one of them: `each_sync_is_needed` leaves out one after
//! the other and asks for a counterexample.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::SyncFor;
use crate::ports::sim::{SeededRandom, SimDisk};
use std::collections::BTreeMap;
use std::sync::Arc;

/// What the person was told before the power went off.
#[derive(Debug, Default, Clone, Copy)]
struct Told {
    created: bool,
    entries: u64,
    snapshot: u64,
    running: u64,
}

/// Entries of one sector, of several, and enough of them to need room twice.
fn body(n: u64) -> Vec<u8> {
    let len = match n {
        3 => 1500,
        5 | 6 => 50_000,
        _ => 100,
    };
    let mut bytes = entry(n);
    bytes.resize(len, b'.');
    bytes
}

/// A life of a diary: made, written to, snapshots and a running practice in between, reopened.
fn live(disk: &SimDisk) -> Told {
    let mut told = Told::default();
    let life = |told: &mut Told| -> Option<()> {
        let created = Store::create(Arc::new(disk.clone()), &folder(), &keeper(), random()).ok()?;
        told.created = true;
        let mut store = created.store;
        for n in 1..=8 {
            if n == 5 {
                drop(store);
                store = try_open(disk).ok()?.store;
            }
            store.append(&body(n)).ok()?;
            told.entries = n;
            if n == 2 || n == 6 {
                store.save_snapshot(seq(n), &body(n)).ok()?;
                told.snapshot = n;
                store.running().replace(&body(n)).ok()?;
                told.running = n;
            }
        }
        store.prepare().ok()
    };
    let _ = life(&mut told);
    told
}

/// Checks the promises on a disk as found after a power cut.
fn promises(disk: &SimDisk, told: Told) -> Holds {
    let opened = match try_open(disk) {
        Ok(opened) => opened,
        Err(error) => {
            ensure(!told.created, &format!("a diary that was made does not open: {error:?}"))?;
            let again = Store::create(Arc::new(disk.clone()), &folder(), &keeper(), random());
            return ensure(again.is_ok(), "a making that was interrupted cannot be repeated");
        }
    };
    let covers = opened.snapshot.as_ref().map_or(0, |s| s.covers.get());
    if let Some(s) = &opened.snapshot {
        ensure(s.bytes == body(covers), "a snapshot came back changed")?;
    }
    ensure(covers >= told.snapshot, "a saved snapshot is not found")?;
    let f = &opened.findings;
    ensure(!f.torn && !f.shortened, "an interrupted write of ours looks like a cut file")?;
    ensure(!f.copy_lost && f.snapshot.is_none(), "an interrupted write of ours looks like damage")?;
    let in_flight = seq(told.entries + 1);
    for m in &f.missing {
        let perhaps = m.from == in_flight && m.through == in_flight && m.extent == Extent::Perhaps;
        ensure(perhaps, &format!("told {} but missing {m:?}", told.entries))?;
    }
    let mut seen = Vec::new();
    let missing = opened.store.read_from(Seq::FIRST, |s, b| seen.push((s, b.to_vec()))).unwrap();
    ensure(missing.iter().all(|m| m.from == in_flight), "an acknowledged entry is missing")?;
    let count = seen.len() as u64;
    ensure(count == told.entries || count == told.entries + 1, "entries are lost or doubled")?;
    for (n, (s, bytes)) in (1..).zip(&seen) {
        ensure(*s == seq(n) && *bytes == body(n), "an entry is changed or not in its place")?;
    }
    match opened.store.running().read() {
        Ok(SealedRead::Content(bytes)) => {
            ensure(bytes == body(2) || bytes == body(6), "the running practice is changed")?;
            ensure(told.running < 6 || bytes == body(6), "the running practice is an older one")?;
        }
        Ok(SealedRead::Absent) => ensure(told.running == 0, "the running practice is lost")?,
        other => return Err(format!("the running practice does not verify: {other:?}")),
    }
    // What was shown stays, even if the power goes off again at once.
    drop(opened);
    let again = disk.after_power_cut(&mut || false);
    let opened = try_open(&again).map_err(|e| format!("shown once, then {e:?}"))?;
    let mut later = Vec::new();
    opened.store.read_from(Seq::FIRST, |s, b| later.push((s, b.to_vec()))).unwrap();
    ensure(later == seen, "an entry that was shown is gone")
}

/// The power goes off at every call of a diary's life.
fn a_life_cut_short(left_out: Option<SyncFor>) -> Holds {
    let whole = disk(left_out);
    live(&whole);
    for call in 0..=whole.calls() {
        let disk = disk(left_out);
        disk.power_off_at(call);
        let told = live(&disk);
        for (n, found) in cuts(&disk, call).iter().enumerate() {
            if let Some(why) = left_out {
                found.leave_out(why);
            }
            promises(found, told).map_err(|e| format!("call {call}, cut {n}: {e}"))?;
        }
    }
    Ok(())
}

/// The process is killed at every call, the next one shows the diary, and then the power goes off.
fn a_life_killed(left_out: Option<SyncFor>) -> Holds {
    let whole = disk(left_out);
    live(&whole);
    for call in 0..=whole.calls() {
        let disk = disk(left_out);
        disk.power_off_at(call);
        let told = live(&disk);
        let found = disk.after_kill();
        if let Some(why) = left_out {
            found.leave_out(why);
        }
        promises(&found, told).map_err(|e| format!("killed at call {call}: {e}"))?;
    }
    Ok(())
}

/// A diary of four entries whose second is damaged, and one copy of whose keys is.
struct Damaged {
    disk: SimDisk,
    journal: Vec<u8>,
    keys: Vec<u8>,
}

fn damaged(left_out: Option<SyncFor>) -> Damaged {
    let disk = diary(4).after_power_cut(&mut || true);
    let mut bytes = disk.content(&journal()).unwrap();
    bytes[8192 + 512 + 100] ^= 1;
    disk.tamper(&journal(), bytes.clone());
    let path = folder().join("keys");
    let mut keys = disk.content(&path).unwrap();
    keys[20] ^= 1;
    disk.tamper(&path, keys.clone());
    if let Some(why) = left_out {
        disk.leave_out(why);
    }
    Damaged { disk, journal: bytes, keys }
}

/// A damaged diary is opened, and the power goes off at every call of the repair.
fn a_repair_cut_short(left_out: Option<SyncFor>) -> Holds {
    let whole = damaged(left_out).disk;
    let before = whole.calls();
    let _ = try_open(&whole);
    for call in before..=whole.calls() {
        let Damaged { disk, journal: bytes, keys: garbled } = damaged(left_out);
        disk.power_off_at(call);
        let _ = try_open(&disk);
        for (n, found) in cuts(&disk, call).iter().enumerate() {
            let kept = |original: &Vec<u8>| {
                found.paths().iter().any(|p| found.content(p).as_ref() == Some(original))
            };
            let at = format!("repair cut at call {call}, cut {n}");
            ensure(kept(&bytes), &format!("{at}: the damaged journal is not kept"))?;
            ensure(kept(&garbled), &format!("{at}: the damaged keys are not kept"))?;
            let opened = try_open(found).map_err(|e| format!("{at}: {e:?}"))?;
            let mut seen = Vec::new();
            let missing = opened.store.read_from(Seq::FIRST, |s, _| seen.push(s.get())).unwrap();
            ensure(seen == [1, 3, 4], &format!("{at}: {seen:?}"))?;
            let lost = missing.iter().any(|m| m.from == seq(2) && m.through == seq(2));
            ensure(lost, &format!("{at}: the loss is forgotten"))?;
            ensure(kept(&bytes), &format!("{at}: reopened, the damaged journal is not kept"))?;
        }
    }
    Ok(())
}

/// A repair is killed at every call; the next process opens the diary, an entry is acknowledged, and
/// then the power goes off.
fn a_repair_killed(left_out: Option<SyncFor>) -> Holds {
    let whole = damaged(left_out).disk;
    let before = whole.calls();
    let _ = try_open(&whole);
    for call in before..=whole.calls() {
        let Damaged { disk, .. } = damaged(left_out);
        disk.power_off_at(call);
        let _ = try_open(&disk);
        let found = disk.after_kill();
        if let Some(why) = left_out {
            found.leave_out(why);
        }
        let at = format!("repair killed at call {call}");
        let mut opened = try_open(&found).map_err(|e| format!("{at}: {e:?}"))?;
        let told = opened.store.append(&entry(5)).map_err(|e| format!("{at}: {e:?}"))?;
        ensure(told == seq(5), &format!("{at}: the entry went to {told}"))?;
        drop(opened);
        for (n, after) in cuts(&found, call).iter().enumerate() {
            let opened = try_open(after).map_err(|e| format!("{at}, cut {n}: {e:?}"))?;
            let mut seen = Vec::new();
            opened.store.read_from(Seq::FIRST, |s, _| seen.push(s.get())).unwrap();
            ensure(seen == [1, 3, 4, 5], &format!("{at}, cut {n}: {seen:?}"))?;
        }
    }
    Ok(())
}

fn everything(left_out: Option<SyncFor>) -> Holds {
    a_life_killed(left_out)?;
    a_repair_cut_short(left_out)?;
    a_repair_killed(left_out)?;
    super::power_switch::everything(left_out)?;
    a_life_cut_short(left_out)
}

#[test]
fn a_power_cut_at_any_call_breaks_no_promise() {
    a_life_cut_short(None).unwrap();
}

#[test]
fn being_killed_at_any_call_breaks_no_promise() {
    a_life_killed(None).unwrap();
}

#[test]
fn a_power_cut_at_any_call_of_a_repair_breaks_no_promise() {
    a_repair_cut_short(None).unwrap();
}

#[test]
fn a_repair_killed_at_any_call_breaks_no_promise() {
    a_repair_killed(None).unwrap();
}

#[test]
fn each_sync_is_needed() {
    let mut table = BTreeMap::new();
    for why in SyncFor::ALL {
        table.insert(why, everything(Some(why)).err());
    }
    for (why, lost) in &table {
        println!("{why:?}: {}", lost.as_deref().unwrap_or("NOT NEEDED"));
    }
    let useless: Vec<_> = table.iter().filter(|(_, lost)| lost.is_none()).collect();
    assert!(useless.is_empty(), "no run needs {useless:?}");
}

#[test]
fn an_append_is_one_write_and_one_sync() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    store.append(&entry(1)).unwrap();
    let (calls, entry_syncs) = (disk.calls(), disk.syncs()[&SyncFor::Entry]);
    for n in 2..=100 {
        store.append(&entry(n)).unwrap();
    }
    assert_eq!(disk.calls() - calls, 2 * 99);
    assert_eq!(disk.syncs()[&SyncFor::Entry] - entry_syncs, 99);
}

#[test]
fn a_failed_sync_is_not_trusted_by_the_next_handle() {
    // The system shows the bytes after the failure but has given them up; only writing them anew
    // brings them to the disk.
    for marker_fails in [false, true] {
        let disk = SimDisk::new();
        let mut store = create(&disk);
        store.append(&entry(1)).unwrap();
        disk.fail(crate::ports::sim::Call::Sync, 0, false);
        assert_eq!(store.append(&entry(2)).unwrap_err(), AppendError::Poisoned);
        assert_eq!(store.append(&entry(2)).unwrap_err(), AppendError::Poisoned);
        drop(store);
        if marker_fails {
            disk.tamper_remove(&folder().join("renew"));
        }
        let random = Arc::new(SeededRandom::new(11));
        let mut opened = Store::open(Arc::new(disk.clone()), &folder(), &keeper(), random).unwrap();
        assert_eq!(opened.findings.renewed, !marker_fails);
        assert_eq!(numbers(&opened.tail), [1, 2]);
        opened.store.append(&entry(3)).unwrap();
        drop(opened);
        let after = disk.after_power_cut(&mut || false);
        assert_eq!(numbers(&open(&after).tail), [1, 2, 3]);
    }
}
