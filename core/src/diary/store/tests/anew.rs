//! Backups, new keys, a restore, an end and the mark kept outside, on every disk and with a full one.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::{SeededRandom, SimDisk};
use crate::ports::{Disk, RealDisk};
use std::path::Path;
use std::sync::Arc;

fn on_both(check: fn(Arc<dyn Disk>, &Path)) {
    check(Arc::new(SimDisk::new()), Path::new("/diary"));
    let base = tempfile::tempdir().unwrap();
    check(Arc::new(RealDisk), &base.path().join("diary"));
}

fn with_entries(disk: &Arc<dyn Disk>, at: &Path, entries: u64) -> Store {
    let mut store = create_on(disk.clone(), at);
    for n in 1..=entries {
        store.append(&entry(n)).unwrap();
    }
    store
}

fn all(store: &Store) -> Vec<Vec<u8>> {
    let mut out = Vec::new();
    store.read_from(Seq::FIRST, |_, bytes| out.push(bytes.to_vec())).unwrap();
    out
}

fn bodies(numbers: &[u64]) -> Vec<Vec<u8>> {
    numbers.iter().map(|n| entry(*n)).collect()
}

#[test]
fn three_backups_are_kept_and_each_reads_alone() {
    on_both(|disk, at| {
        let mut store = with_entries(&disk, at, 1);
        for n in 2..=6 {
            store.append(&entry(n)).unwrap();
            store.back_up(format!("day {n}").as_bytes()).unwrap();
        }
        let seen = store.backups().unwrap();
        let labels: Vec<_> = seen.iter().map(|b| b.about.clone().unwrap().label).collect();
        assert_eq!(labels, [b"day 6", b"day 5", b"day 4"]);
        let card = store.card().clone();
        // With nothing but the file and the passphrase, while the diary itself is open.
        let read = read_backup(disk.as_ref(), &seen[2].path, &keeper()).unwrap();
        assert_eq!(read.entries, bodies(&[1, 2, 3, 4]));
        assert_eq!(read.card, Some(card));
        assert!(read.missing.is_empty());
        let wrong = read_backup(disk.as_ref(), &seen[0].path, &keeper_with("wrong"));
        assert!(matches!(wrong, Err(OpenError::Keeper(_))), "{wrong:?}");
    });
}

#[test]
fn a_damaged_backup_gives_what_verifies_and_counts_the_rest() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    for n in 1..=5 {
        store.append(&entry(n)).unwrap();
    }
    store.back_up(b"today").unwrap();
    let path = store.backups().unwrap()[0].path.clone();
    let mut bytes = disk.content(&path).unwrap();
    bytes[2 * 8192 + 8192 + 512 * 2 + 70] ^= 1;
    disk.tamper(&path, bytes);
    let read = read_backup(&disk, &path, &keeper()).unwrap();
    assert_eq!(read.entries, bodies(&[1, 2, 4, 5]));
    assert_eq!(read.missing.len(), 1);
    assert_eq!((read.missing[0].from, read.missing[0].through), (seq(3), seq(3)));
}

#[test]
fn any_changed_byte_of_a_backup_is_no_panic_and_no_changed_entry() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    store.append(&entry(1)).unwrap();
    store.back_up(b"today").unwrap();
    let path = store.backups().unwrap()[0].path.clone();
    let whole = disk.content(&path).unwrap();
    let reach = 3 * 8192 + 512;
    for at in (0..reach).step_by(13) {
        let mut bytes = whole.clone();
        bytes[at] ^= 0x40;
        disk.tamper(&path, bytes);
        if let Ok(read) = read_backup(&disk, &path, &keeper()) {
            assert!(read.entries.is_empty() || read.entries == bodies(&[1]), "byte {at}");
        }
    }
    for len in [0, 1, 4096, 8192, 16384, 20000, 24576, 25000] {
        disk.tamper(&path, whole[..len].to_vec());
        if let Ok(read) = read_backup(&disk, &path, &keeper()) {
            assert!(read.entries.is_empty() || read.entries == bodies(&[1]), "length {len}");
        }
    }
}

#[test]
fn a_damaged_diary_is_not_backed_up() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    for n in 1..=3 {
        store.append(&entry(n)).unwrap();
    }
    store.back_up(b"sound").unwrap();
    let mut bytes = disk.content(&journal()).unwrap();
    bytes[8192 + 512 + 100] ^= 1;
    disk.tamper(&journal(), bytes);
    assert_eq!(store.back_up(b"damaged").unwrap_err(), BackupError::Damaged);
    assert_eq!(store.backups().unwrap().len(), 1);
    drop(store);
    let opened = open(&disk);
    assert!(!opened.findings.missing.is_empty());
    // Repaired, with a mark for the hole, it is backed up again; the backup names the hole.
    opened.store.back_up(b"repaired").unwrap();
    let path = opened.store.backups().unwrap()[0].path.clone();
    let read = read_backup(&disk, &path, &keeper()).unwrap();
    assert_eq!(read.entries, bodies(&[1, 3]));
    assert_eq!(read.missing.len(), 1);
}

#[test]
fn under_new_keys_only_what_was_kept_is_there() {
    on_both(|disk, at| {
        let store = with_entries(&disk, at, 5);
        let card = store.card().clone();
        store.back_up(b"old").unwrap();
        let opened =
            store.renew(&bodies(&[1, 4]), Keepers::only(&keeper_with("new")), None).unwrap();
        assert_eq!(numbers(&opened.tail), [1, 2]);
        assert!(opened.store.backups().unwrap().is_empty());
        assert_eq!(opened.store.card().generation, card.generation + 1);
        assert_eq!(opened.store.card().diary, card.diary);
        assert_eq!(opened.store.card().seed, card.seed);
        drop(opened);
        let old = Store::open(disk.clone(), at, &keeper(), random());
        assert!(matches!(old, Err(OpenError::Keeper(_))));
        let opened = Store::open(disk.clone(), at, &keeper_with("new"), random()).unwrap();
        assert!(opened.findings.is_clean(), "{:?}", opened.findings);
        assert_eq!(all(&opened.store), bodies(&[1, 4]));
    });
}

#[test]
fn an_ended_diary_leaves_an_empty_lock_and_nothing_else() {
    on_both(|disk, at| {
        let store = with_entries(&disk, at, 3);
        store.back_up(b"old").unwrap();
        store.save_snapshot(seq(3), b"state").unwrap();
        store.end(&keeper()).unwrap();
        assert!(matches!(
            Store::open(disk.clone(), at, &keeper(), random()),
            Err(OpenError::NotADiary)
        ));
        let mut names = disk.list(at).unwrap();
        names.sort();
        assert_eq!(names, ["backups", "lock"]);
        assert!(disk.list(&at.join("backups")).unwrap().is_empty());
        assert_eq!(disk.open(&at.join("lock")).unwrap().length().unwrap(), 0);
    });
}

#[test]
fn a_backup_is_restored_into_an_empty_place_and_over_a_diary_that_does_not_open() {
    on_both(|disk, at| {
        let store = with_entries(&disk, at, 3);
        store.back_up(b"old").unwrap();
        let path = store.backups().unwrap()[0].path.clone();
        let read = read_backup(disk.as_ref(), &path, &keeper()).unwrap();
        drop(store);
        let card = Card { generation: 2, ..read.card.unwrap() };
        // The keys are lost, so the diary does not open any more.
        disk.remove(&at.join("keys")).unwrap();
        let fresh = keeper_with("fresh");
        let empty = at.with_file_name("elsewhere");
        for place in [at, empty.as_path()] {
            let opened = Store::restore(
                disk.clone(),
                place,
                Keepers::only(&fresh),
                random(),
                &read.entries,
                card.clone(),
            )
            .unwrap();
            assert_eq!(numbers(&opened.tail), [1, 2, 3]);
            drop(opened);
            let opened = Store::open(disk.clone(), place, &fresh, random()).unwrap();
            assert!(opened.findings.is_clean());
            assert_eq!(opened.store.card(), &card);
        }
        let kept = disk.list(&at.join("aside")).unwrap();
        assert_eq!(kept, ["journal-1"]);
        assert!(disk.list(&at.join("backups")).unwrap().contains(&"1".to_owned()));
    });
}

#[test]
fn a_full_disk_changes_nothing() {
    for room in (0..90_000u64).step_by(1500) {
        let disk = SimDisk::new();
        let store = with_entries(&(Arc::new(disk.clone()) as Arc<dyn Disk>), &folder(), 4);
        disk.set_room(Some(room));
        let backup = store.back_up(b"today");
        let renewed = store.renew(&bodies(&[1]), Keepers::only(&keeper()), None);
        let done = renewed.is_ok();
        drop(renewed);
        disk.set_room(None);
        let opened = open(&disk);
        let expected = if done { bodies(&[1]) } else { bodies(&[1, 2, 3, 4]) };
        assert_eq!(all(&opened.store), expected, "room {room}");
        assert!(opened.findings.is_clean());
        if !done {
            let count = usize::from(backup.is_ok());
            assert_eq!(opened.store.backups().unwrap().len(), count, "room {room}");
        }
    }
}

#[test]
fn a_mark_kept_outside_tells_an_older_copy_of_the_folder() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    assert_eq!(store.mark().unwrap(), None);
    for n in 1..=3 {
        store.append(&entry(n)).unwrap();
    }
    let at_three = disk.after_kill();
    store.append(&entry(4)).unwrap();
    store.save_snapshot(seq(4), b"state").unwrap();
    store.append(&entry(5)).unwrap();
    let mark = store.mark().unwrap().unwrap();
    assert!(mark.len() <= crate::ports::MARK_MOST);
    store.append(&entry(6)).unwrap();
    assert_eq!(store.judge(&mark).unwrap(), None);
    let at_six = disk.after_kill();
    drop(store);

    // The same, opened afresh, from the snapshot or without it, and in a file written anew.
    assert_eq!(open(&disk).store.judge(&mark).unwrap(), None);
    disk.tamper_remove(&folder().join("snapshot"));
    assert_eq!(open(&disk).store.judge(&mark).unwrap(), None);
    disk.tamper(&folder().join("renew"), Vec::new());
    let opened = open(&disk);
    assert!(opened.findings.renewed);
    assert_eq!(opened.store.judge(&mark).unwrap(), None);

    // Set back, and set back and gone on.
    let mut store = open(&at_three).store;
    assert_eq!(store.judge(&mark).unwrap(), Some(Rollback::Shorter { known: seq(5) }));
    for n in 1..=3 {
        store.append(&entry(100 + n)).unwrap();
    }
    assert_eq!(store.judge(&mark).unwrap(), Some(Rollback::Differs { at: seq(5) }));

    // An erase does not look like it; a copy from before the erase does.
    drop(opened);
    let store = open(&disk).store;
    let renewed = store.renew(&bodies(&[1, 6]), Keepers::only(&keeper()), None).unwrap();
    assert_eq!(renewed.store.judge(&mark).unwrap(), None);
    let later = renewed.store.mark().unwrap().unwrap();
    assert_eq!(mark_generation(&later), Some(2));
    let set_back = open(&at_six).store.judge(&later).unwrap();
    assert_eq!(set_back, Some(Rollback::BeforeRenewal { known: seq(2) }));

    // What is no mark says nothing.
    for bytes in [&b""[..], b"x", &later[..later.len() - 1]] {
        assert_eq!(open(&at_six).store.judge(bytes).unwrap(), None);
    }
}

#[test]
fn a_lost_entry_is_reported_as_lost_and_not_as_a_set_back_diary() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    for n in 1..=4 {
        store.append(&entry(n)).unwrap();
    }
    let mark = store.mark().unwrap().unwrap();
    store.append(&entry(5)).unwrap();
    drop(store);
    let mut bytes = disk.content(&journal()).unwrap();
    bytes[8192 + 512 * 3 + 100] ^= 1;
    disk.tamper(&journal(), bytes);
    let opened = open(&disk);
    assert_eq!(opened.findings.missing.len(), 1);
    assert_eq!(opened.store.judge(&mark).unwrap(), None);
}

#[test]
fn a_diary_from_before_there_were_cards_gets_one_that_stays() {
    let disk = diary(0);
    for name in ["keys", "journal", "snapshot"] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/diary-v1").join(name);
        disk.tamper(&folder().join(name), std::fs::read(path).unwrap());
    }
    // Which passphrase the fixture has is written in its README.
    let keeper = keeper_with("an invented passphrase");
    let open = |seed| {
        let random = Arc::new(SeededRandom::new(seed));
        Store::open(Arc::new(disk.clone()), &folder(), &keeper, random).unwrap()
    };
    let first = open(1).store.card().clone();
    let second = open(2).store.card().clone();
    assert!(first == second);
    assert_eq!(first.generation, 1);
}
