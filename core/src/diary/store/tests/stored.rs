//! What lies on the disk: frozen byte for byte, and unreadable to a stranger.

use super::kit::*;
use crate::diary::store::*;
use crate::ports::sim::SimDisk;
use crate::ports::{OsRandom, Passphrase, PassphraseKeeper, RealDisk, Stretch};
use std::fmt::Write;
use std::path::Path;
use std::sync::Arc;

/// The bytes, sixteen a line; lines of zeros are left out and counted.
fn dump(bytes: &[u8]) -> String {
    let mut out = String::new();
    let mut zeros = 0;
    for (n, line) in bytes.chunks(16).enumerate() {
        if line.iter().all(|b| *b == 0) {
            zeros += line.len();
            continue;
        }
        if zeros > 0 {
            writeln!(out, "        {zeros} zeros").unwrap();
            zeros = 0;
        }
        let hex: Vec<String> = line.iter().map(|b| format!("{b:02x}")).collect();
        writeln!(out, "{:06x}  {}", n * 16, hex.join(" ")).unwrap();
    }
    if zeros > 0 {
        writeln!(out, "        {zeros} zeros").unwrap();
    }
    out
}

#[test]
fn the_stored_files_are_frozen() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    store.append(b"an invented entry").unwrap();
    store.append(&[0x55; 600]).unwrap();
    store.save_snapshot(seq(1), b"an invented state").unwrap();
    store.running().replace(b"an invented practice").unwrap();
    drop(store);
    let mut out = String::new();
    for name in ["keys", "journal", "snapshot", "running"] {
        writeln!(out, "== {name}\n{}", dump(&disk.content(&folder().join(name)).unwrap())).unwrap();
    }
    let mut names: Vec<_> = disk.paths().iter().map(|p| p.display().to_string()).collect();
    names.sort();
    writeln!(out, "== names\n{}", names.join("\n")).unwrap();
    insta::assert_snapshot!("stored_files", out);
}

fn files(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let mut out = Vec::new();
    for item in std::fs::read_dir(folder).unwrap() {
        let path = item.unwrap().path();
        if path.is_dir() {
            out.extend(files(&path));
        } else {
            out.push((path.display().to_string(), std::fs::read(&path).unwrap()));
        }
    }
    out
}

fn holds(bytes: &[u8], word: &str) -> bool {
    let lower = bytes.to_ascii_lowercase();
    let utf16: Vec<u8> = word.encode_utf16().flat_map(u16::to_le_bytes).collect();
    lower.windows(word.len()).any(|w| w == word.as_bytes())
        || bytes.windows(utf16.len()).any(|w| w == utf16)
}

#[test]
fn nothing_in_the_raw_folder_tells_what_it_is_about() {
    let words =
        ["trainer", "discomfort", "dilator", "pelvic", "breathing", "session", "horsestaple"];
    let base = tempfile::tempdir().unwrap();
    let at = base.path().join("d");
    let keeper = || {
        let words = Passphrase::new("correct horsestaple".to_owned()).unwrap();
        PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
    };
    let text = words.join(" ").repeat(30);
    let create = Store::create(Arc::new(RealDisk), &at, &keeper(), Arc::new(OsRandom));
    let mut store = create.unwrap().store;
    for _ in 0..40 {
        store.append(text.as_bytes()).unwrap();
    }
    store.save_snapshot(seq(40), text.as_bytes()).unwrap();
    store.running().replace(text.as_bytes()).unwrap();
    drop(store);
    let journal = at.join("journal");
    let mut bytes = std::fs::read(&journal).unwrap();
    bytes[9000] ^= 1;
    std::fs::write(&journal, bytes).unwrap();
    std::fs::write(at.join("renew"), "").unwrap();
    let opened = Store::open(Arc::new(RealDisk), &at, &keeper(), Arc::new(OsRandom)).unwrap();
    assert!(!opened.findings.kept_aside.is_empty());

    assert!(holds(text.as_bytes(), "pelvic"), "the search itself finds a word that is there");
    let files = files(&at);
    assert!(files.len() >= 6, "{}", files.len());
    for (name, bytes) in files {
        for word in words.into_iter().chain(["correct", "frond", "diary", "patient"]) {
            let own_name = name.strip_prefix(at.to_str().unwrap()).unwrap();
            assert!(!holds(own_name.as_bytes(), word), "{own_name} names {word}");
            assert!(!holds(&bytes, word), "{name} holds {word}");
        }
    }
}

#[test]
fn the_same_entry_twice_looks_different_and_short_ones_look_alike() {
    let disk = SimDisk::new();
    let mut store = create(&disk);
    store.append(b"x").unwrap();
    store.append(b"x").unwrap();
    store.append(&[b'x'; 400]).unwrap();
    let bytes = disk.content(&journal()).unwrap();
    let frame = |n: usize| &bytes[8192 + n * 512..8192 + (n + 1) * 512];
    assert_ne!(frame(0)[48..], frame(1)[48..]);
    // Same length on disk for one byte and for four hundred.
    assert_eq!(frame(0)[..8], frame(2)[..8]);
}

#[test]
fn no_error_says_anything_but_what_to_do() {
    let opened = open(&diary(1));
    let printed = format!("{:?}", opened.store);
    assert!(!printed.contains("invented"), "{printed}");
    for error in [OpenError::InUse, OpenError::NewerFormat, OpenError::KeysDamaged] {
        assert!(error.to_string().contains(';'), "{error}: no way out is named");
    }
}
