//! Power cuts while a diary is backed up, put under new keys, restored or ended.
//! Whatever reached the disk, these hold:
//!
//! - the diary is wholly the old one or wholly the new one, and the new one once that was said;
//! - what was left out of the new one is in no file that opens, and the old keys are on no sector;
//! - a backup that was acknowledged is there, or a later one, and every backup there is, is whole;
//! - what a restore replaced is kept, byte for byte;
//! - a diary begun after the end of another is not touched by that end.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::{SeededRandom, SimDisk};
use crate::ports::{
    DataKey, KeeperError, KeeperKind, KeyKeeper, PassphraseKeeper, Random, SyncFor,
};
use std::path::PathBuf;
use std::sync::Arc;

/// A keeper of another sort.
#[derive(Debug)]
struct Other(PassphraseKeeper);

impl KeyKeeper for Other {
    fn kind(&self) -> KeeperKind {
        KeeperKind::PhoneKeyStore
    }
    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        self.0.wrap(key, random)
    }
    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        self.0.unwrap(wrap)
    }
}

fn other() -> Other {
    Other(keeper_with("other invented words"))
}

/// What was acknowledged before the power went off.
#[derive(Debug, Default, Clone, Copy)]
struct Told {
    done: bool,
    entry: bool,
    backups: u64,
}

fn seen(store: &Store) -> Vec<Vec<u8>> {
    let mut out = Vec::new();
    store.read_from(Seq::FIRST, |_, bytes| out.push(bytes.to_vec())).unwrap();
    out
}

fn bodies(numbers: &[u64]) -> Vec<Vec<u8>> {
    numbers.iter().map(|n| entry(*n)).collect()
}

/// The wraps as they lie in a keys file: what must be found nowhere any more.
fn wrap_in(keys: &[u8]) -> Vec<u8> {
    keys[14..14 + 101].to_vec()
}

fn in_folder(name: &str) -> PathBuf {
    folder().join(name)
}

fn holds(bytes: &[u8], piece: &[u8]) -> bool {
    bytes.windows(piece.len()).any(|w| w == piece)
}

/// Every backup there is, is whole; gives the entries of the newest.
fn whole_backups(store: &Store, disk: &SimDisk) -> Result<Option<Vec<Vec<u8>>>, String> {
    let mut newest = None;
    for backup in store.backups().unwrap() {
        let about = backup.about.ok_or("a backup does not say what it is")?;
        let read = read_backup(disk, &backup.path, &keeper()).map_err(|e| format!("{e:?}"))?;
        ensure(read.missing.is_empty(), "a backup is not whole")?;
        ensure(read.entries.len() as u64 == about.entries, "a backup has not what it says")?;
        ensure(read.card.as_ref() == Some(store.card()), "a backup is another diary's")?;
        newest.get_or_insert(read.entries);
    }
    Ok(newest)
}

// Backups.

fn backups(disk: &SimDisk) -> Told {
    let mut told = Told::default();
    let mut life = || -> Option<()> {
        let made = Store::create(Arc::new(disk.clone()), &folder(), &keeper(), random());
        let mut store = made.ok()?.store;
        for n in 1..=5 {
            store.append(&entry(n)).ok()?;
            store.back_up(format!("day {n}").as_bytes()).ok()?;
            told.backups = n;
        }
        Some(())
    };
    let _ = life();
    told
}

fn backups_hold(disk: &SimDisk, told: Told) -> Holds {
    let store = try_open(disk).map_err(|e| format!("{e:?}"))?.store;
    let newest = whole_backups(&store, disk)?;
    let newest = newest.map_or(0, |entries| entries.len() as u64);
    ensure(newest >= told.backups, "an acknowledged backup is gone")?;
    let count = store.backups().unwrap().len() as u64;
    ensure(count >= told.backups.min(3), "an older backup went too early")
}

// New keys, two entries left out.

fn before_renewal(disk: &SimDisk) -> (Store, Vec<u8>) {
    let mut store = create(disk);
    for n in 1..=6 {
        store.append(&entry(n)).unwrap();
    }
    store.save_snapshot(seq(6), b"a state that tells of entry number 2").unwrap();
    store.running().replace(b"a practice").unwrap();
    store.back_up(b"before").unwrap();
    let keys = disk.content(&in_folder("keys")).unwrap();
    drop(store);
    // A journal found damaged earlier: its original bytes are among the kept ones.
    let mut bytes = disk.content(&journal()).unwrap();
    bytes[8192 + 512 * 5 + 100] ^= 1;
    disk.tamper(&journal(), bytes);
    let mut store = try_open(disk).unwrap().store;
    store.append(&entry(6)).unwrap();
    (store, keys)
}

fn renewed(disk: &SimDisk, store: Store) -> Told {
    let mut told = Told::default();
    let life = || -> Option<()> {
        let keep = bodies(&[1, 3, 5]);
        let mut store = store.renew(&keep, Keepers::only(&keeper()), None).ok()?.store;
        told.done = true;
        store.append(&entry(7)).ok()?;
        told.entry = true;
        store.back_up(b"after").ok()?;
        told.backups = 1;
        store.save_snapshot(seq(4), b"a state").ok()?;
        let _ = disk;
        Some(())
    };
    let _ = life();
    told
}

fn renewal_holds(disk: &SimDisk, told: Told, old_keys: &[u8]) -> Holds {
    let opened = try_open(disk).map_err(|e| format!("does not open: {e:?}"))?;
    let now = seen(&opened.store);
    if now == bodies(&[1, 2, 3, 4, 5, 6]) {
        return ensure(!told.done, "the old diary came back");
    }
    let whole = now == bodies(&[1, 3, 5, 7]) || now == bodies(&[1, 3, 5]);
    ensure(whole, &format!("a mixture: {} entries", now.len()))?;
    ensure(!told.entry || now.len() == 4, "an acknowledged entry is gone")?;
    let newest = whole_backups(&opened.store, disk)?;
    ensure(told.backups == 0 || newest == Some(bodies(&[1, 3, 5, 7])), "a backup is gone")?;
    if let Some(entries) = newest {
        ensure(!entries.contains(&entry(2)), "an entry left out is in a backup")?;
    }
    if let Some(state) = opened.snapshot {
        ensure(state.bytes == b"a state", "the old state is still there")?;
    }
    for path in disk.paths() {
        let inner = path.strip_prefix(folder()).map(|p| p.display().to_string());
        // What an interrupted writing leaves is written over by the next.
        let known = [
            "backups/1.new",
            "snapshot.new",
            "",
            "keys",
            "journal",
            "snapshot",
            "lock",
            "aside",
            "backups",
            "backups/1",
        ];
        let name = inner.unwrap_or_default();
        ensure(known.contains(&name.as_str()), &format!("{name} is left"))?;
    }
    for bytes in disk.after_power_cut(&mut || false).remains() {
        ensure(!holds(&bytes, &wrap_in(old_keys)), "old keys lie on a sector")?;
    }
    Ok(())
}

// The end.

/// A new diary, under keys that share nothing with those of the one before.
fn begin(disk: &SimDisk) -> Result<Opened, CreateError> {
    let random = Arc::new(SeededRandom::new(1234));
    Store::create(Arc::new(disk.clone()), &folder(), &keeper(), random)
}

fn ended(disk: &SimDisk, store: Store) -> Told {
    let mut told = Told::default();
    let life = || -> Option<()> {
        store.end(&keeper()).ok()?;
        told.done = true;
        let mut store = begin(disk).ok()?.store;
        store.append(&entry(9)).ok()?;
        told.entry = true;
        store.back_up(b"new").ok()?;
        told.backups = 1;
        Some(())
    };
    let _ = life();
    told
}

fn end_holds(disk: &SimDisk, told: Told, old_keys: &[u8]) -> Holds {
    match try_open(disk) {
        Ok(opened) => {
            let now = seen(&opened.store);
            if now == bodies(&[1, 2, 3, 4, 5, 6]) {
                return ensure(!told.done, "the old diary came back");
            }
            ensure(now.is_empty() || now == bodies(&[9]), "a mixture")?;
            ensure(!told.entry || now == bodies(&[9]), "an acknowledged entry is gone")?;
            let newest = whole_backups(&opened.store, disk)?;
            ensure(told.backups == 0 || newest == Some(bodies(&[9])), "a backup is gone")?;
        }
        // The making of the new diary was cut short, or not begun.
        Err(OpenError::NotADiary | OpenError::JournalMissing) => {
            ensure(!told.entry, "the new diary is gone")?;
            let again = begin(disk);
            ensure(again.is_ok(), "no new diary can be begun")?;
        }
        Err(other) => return Err(format!("{other:?}")),
    }
    for bytes in disk.after_power_cut(&mut || false).remains() {
        ensure(!holds(&bytes, &wrap_in(old_keys)), "old keys lie on a sector")?;
    }
    Ok(())
}

// A restore over another diary.

fn restored(disk: &SimDisk, card: Card) -> Told {
    let done = Store::restore(
        Arc::new(disk.clone()),
        &folder(),
        Keepers { main: &keeper_with("new words"), also: &[&other()] },
        random(),
        &bodies(&[11, 12]),
        card,
    );
    Told { done: done.is_ok(), ..Told::default() }
}

fn restore_holds(disk: &SimDisk, told: Told, before: &[(PathBuf, Vec<u8>)]) -> Holds {
    let new = Store::open(Arc::new(disk.clone()), &folder(), &keeper_with("new words"), random());
    match new {
        Ok(opened) => {
            ensure(seen(&opened.store) == bodies(&[11, 12]), "a mixture")?;
            for (_, bytes) in before {
                let kept = disk.paths().iter().any(|path| {
                    path.starts_with(in_folder("aside"))
                        && disk.content(path).as_ref() == Some(bytes)
                });
                ensure(kept, "what was replaced is not kept")?;
            }
            drop(opened);
            let phone = Store::open(Arc::new(disk.clone()), &folder(), &other(), random());
            ensure(phone.is_ok(), "the further keeper does not open it")
        }
        Err(_) => {
            ensure(!told.done, "the restored diary is gone")?;
            let opened = try_open(disk).map_err(|e| format!("neither opens: {e:?}"))?;
            ensure(seen(&opened.store) == bodies(&[1, 2, 3]), "a mixture")
        }
    }
}

/// The power goes off at every call after `prepare`, then what holds is checked; the same with the
/// process killed and the power going off after the next opening.
fn cut_everywhere<P>(
    left_out: Option<SyncFor>,
    prepare: impl Fn(&SimDisk) -> P,
    live: impl Fn(&SimDisk, P) -> Told,
    check: impl Fn(&SimDisk, Told) -> Holds,
) -> Holds {
    let whole = SimDisk::new();
    let prepared = prepare(&whole);
    let before = whole.calls();
    if let Some(why) = left_out {
        whole.leave_out(why);
    }
    live(&whole, prepared);
    for call in before..=whole.calls() {
        let disk = SimDisk::new();
        let prepared = prepare(&disk);
        if let Some(why) = left_out {
            disk.leave_out(why);
        }
        disk.power_off_at(call);
        let told = live(&disk, prepared);
        for (n, found) in cuts(&disk, call).iter().enumerate() {
            if let Some(why) = left_out {
                found.leave_out(why);
            }
            check(found, told).map_err(|e| format!("call {call}, cut {n}: {e}"))?;
            let again = found.after_power_cut(&mut || false);
            check(&again, told).map_err(|e| format!("call {call}, cut {n}, and again: {e}"))?;
        }
        let found = disk.after_kill();
        check(&found, told).map_err(|e| format!("killed at call {call}: {e}"))?;
    }
    Ok(())
}

fn all_backups(left_out: Option<SyncFor>) -> Holds {
    cut_everywhere(left_out, |_| (), |disk, ()| backups(disk), backups_hold_or_no_diary)
}

/// The making of the diary itself is cut short too; `power` looks at that.
fn backups_hold_or_no_diary(disk: &SimDisk, told: Told) -> Holds {
    if told.backups == 0 { Ok(()) } else { backups_hold(disk, told) }
}

fn all_renewals(left_out: Option<SyncFor>) -> Holds {
    let keys = before_renewal(&SimDisk::new()).1;
    cut_everywhere(
        left_out,
        |disk| before_renewal(disk).0,
        renewed,
        |disk, told| renewal_holds(disk, told, &keys),
    )
}

fn all_ends(left_out: Option<SyncFor>) -> Holds {
    let keys = before_renewal(&SimDisk::new()).1;
    cut_everywhere(
        left_out,
        |disk| before_renewal(disk).0,
        ended,
        |disk, told| end_holds(disk, told, &keys),
    )
}

fn all_restores(left_out: Option<SyncFor>) -> Holds {
    let card = Card { generation: 7, ..Card::new(random().as_ref()).unwrap() };
    let old = diary(3);
    let before: Vec<(PathBuf, Vec<u8>)> = ["keys", "journal"]
        .iter()
        .map(|name| (in_folder(name), old.content(&in_folder(name)).unwrap()))
        .collect();
    cut_everywhere(
        left_out,
        |disk| {
            let mut store = create(disk);
            for n in 1..=3 {
                store.append(&entry(n)).unwrap();
            }
        },
        |disk, ()| restored(disk, card.clone()),
        |disk, told| restore_holds(disk, told, &before),
    )
}

pub fn everything(left_out: Option<SyncFor>) -> Holds {
    all_restores(left_out)?;
    all_ends(left_out)?;
    all_renewals(left_out)?;
    all_backups(left_out)
}

#[test]
fn a_backup_cut_short_breaks_no_promise() {
    all_backups(None).unwrap();
}

#[test]
fn a_renewal_cut_short_leaves_the_old_diary_or_the_new_one() {
    all_renewals(None).unwrap();
}

#[test]
fn an_end_cut_short_leaves_the_diary_or_nothing() {
    all_ends(None).unwrap();
}

#[test]
fn a_restore_cut_short_leaves_the_old_diary_or_the_restored_one() {
    all_restores(None).unwrap();
}
