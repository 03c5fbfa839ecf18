//! What every index must do, asked of each kind.

use super::*;

/// Bytes that no compression shortens, the same each time.
fn noise(seed: u64, length: usize) -> Vec<u8> {
    let mut state = seed;
    (0..length)
        .map(|_| {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) as u8
        })
        .collect()
}

fn name(number: u8) -> FileName {
    FileName(super::super::store::sha256(&[number]))
}

fn on_each(test: impl Fn(IndexKind, &Path)) {
    for kind in IndexKind::ALL {
        let room = tempfile::tempdir().unwrap();
        test(kind, room.path());
    }
}

fn sorted(index: &dyn Index) -> Vec<(FileName, Vec<u8>)> {
    let mut all = index.all().unwrap();
    all.sort();
    all
}

#[test]
fn what_was_settled_is_there_at_the_next_opening() {
    on_each(|kind, room| {
        let mut index = kind.open(room).unwrap();
        assert_eq!(index.all().unwrap(), []);
        for number in 0..50 {
            index.put(name(number), &noise(u64::from(number), 400)).unwrap();
        }
        index.put(name(7), b"another").unwrap();
        index.remove(name(8)).unwrap();
        index.remove(name(200)).unwrap();
        index.settle().unwrap();
        let before = sorted(&*index);
        assert_eq!(before.len(), 49, "{kind:?}");
        drop(index);
        let index = kind.open(room).unwrap();
        assert_eq!(sorted(&*index), before, "{kind:?}");
        assert!(before.contains(&(name(7), b"another".to_vec())));
    });
}

#[test]
fn a_database_that_is_let_go_of_a_moment_later_is_waited_for() {
    let room = tempfile::tempdir().unwrap();
    let kind = IndexKind::Sled;
    let mut index = kind.open(room.path()).unwrap();
    index.put(name(1), b"kept").unwrap();
    index.settle().unwrap();
    drop(index);
    let held = fs::File::open(kind.place(room.path()).join("db")).unwrap();
    held.lock().unwrap();
    let holding = std::thread::spawn(move || {
        std::thread::sleep(std::time::Duration::from_millis(300));
        drop(held);
    });
    let index = kind.open(room.path()).unwrap();
    assert_eq!(sorted(&*index), [(name(1), b"kept".to_vec())]);
    holding.join().unwrap();
}

#[test]
fn an_empty_value_and_a_large_one_are_kept() {
    on_each(|kind, room| {
        let mut index = kind.open(room).unwrap();
        index.put(name(1), b"").unwrap();
        index.put(name(2), &noise(1, 100_000)).unwrap();
        index.settle().unwrap();
        drop(index);
        let all = sorted(&*kind.open(room).unwrap());
        let value = |of| all.iter().find(|(name, _)| *name == of).map(|(_, value)| value.clone());
        assert_eq!(value(name(1)), Some(Vec::new()), "{kind:?}");
        assert_eq!(value(name(2)), Some(noise(1, 100_000)), "{kind:?}");
    });
}

#[test]
fn what_lies_there_is_moved_aside_and_an_empty_one_opens() {
    on_each(|kind, room| {
        for _ in 0..2 {
            let mut index = kind.open(room).unwrap();
            index.put(name(1), b"one").unwrap();
            index.settle().unwrap();
            drop(index);
            kind.move_aside(room).unwrap();
            assert_eq!(kind.open(room).unwrap().all().unwrap(), [], "{kind:?}");
            kind.move_aside(room).unwrap();
        }
        let names = fs::read_dir(room).unwrap().count();
        assert_eq!(names, 1, "{kind:?}: one is enough to look into");
        kind.move_aside(room).unwrap();
    });
}

/// Every file under a folder.
fn files(place: &Path) -> Vec<PathBuf> {
    if place.is_file() {
        return vec![place.to_path_buf()];
    }
    let entries = fs::read_dir(place).unwrap().map(|entry| entry.unwrap().path());
    entries.flat_map(|path| files(&path)).collect()
}

#[test]
fn a_damaged_one_is_lost_or_holds_only_what_was_put() {
    on_each(|kind, room| {
        for damage in 0..6 {
            let _ = take_away(&kind.place(room));
            let mut index = kind.open(room).unwrap();
            for number in 0..60 {
                index.put(name(number), &noise(u64::from(number), 300)).unwrap();
            }
            index.settle().unwrap();
            let before = sorted(&*index);
            drop(index);
            for file in files(&kind.place(room)) {
                let bytes = fs::read(&file).unwrap();
                let changed = match damage {
                    0 => Vec::new(),
                    1 => bytes[..bytes.len() / 4].to_vec(),
                    2 => bytes[..bytes.len() * 9 / 10].to_vec(),
                    3 => noise(3, bytes.len()),
                    4 => {
                        let mut bytes = bytes;
                        let from = bytes.len() / 3;
                        let to = (from + 4000).min(bytes.len());
                        bytes[from..to].copy_from_slice(&noise(9, to - from));
                        bytes
                    }
                    _ => [bytes.clone(), noise(5, 700)].concat(),
                };
                fs::write(&file, changed).unwrap();
            }
            // Lost, or less than there was; who reads it compares with the files. Never a fault that goes through.
            let found = kind.open(room).and_then(|index| index.all());
            if let Ok(found) = found {
                assert!(found.len() <= before.len(), "{kind:?} {damage}");
            }
            kind.move_aside(room).unwrap();
            assert_eq!(kind.open(room).unwrap().all().unwrap(), [], "{kind:?} {damage}");
        }
    });
}

#[test]
fn a_place_that_cannot_be_used_is_lost_and_no_fault() {
    on_each(|kind, room| {
        // A folder where a file should be, and the other way about.
        match kind {
            IndexKind::Sled => fs::write(kind.place(room), b"no folder").unwrap(),
            IndexKind::Plain => fs::create_dir(kind.place(room)).unwrap(),
            IndexKind::Never => {}
        }
        assert_eq!(kind.open(room).err(), Some(Lost), "{kind:?}");
        kind.move_aside(room).unwrap();
        assert!(kind.open(room).is_ok(), "{kind:?}");
    });
}
