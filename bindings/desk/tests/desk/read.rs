//! `frond read`: an invented summary as it comes, sealed, altered, and not one at all.

use std::fs;
use std::io::{Seek, SeekFrom, Write};

use tempfile::TempDir;

use crate::kit::{refused, run, said};

fn demo() -> TempDir {
    let base = tempfile::tempdir().unwrap();
    said(&run(&["demo", "--out", &base.path().join("out").display().to_string()]));
    base
}

#[test]
fn a_summary_is_read_sealed_or_open_and_every_fault_is_one_sentence_with_exit_2() {
    let base = demo();
    let out = base.path().join("out");
    let name = |name: &str| out.join(name).display().to_string();
    let (open, sealed, key) =
        (name("summary.json"), name("summary.age"), name("invented-clinic-key.txt"));

    let reading = said(&run(&["read", &open]));
    let first = reading.find("Open signs").unwrap();
    assert!(first < reading.find("Questions for the visit").unwrap());
    assert!(!reading.contains("TIME ALONE"), "the open one carries no wish");
    let reading = said(&run(&["read", &sealed, "--identity-file", &key]));
    assert!(reading.starts_with("TIME ALONE, PLEASE"), "{reading}");
    let mark = reading.split_whitespace().find(|word| word.len() == 32 + 1 + 44).unwrap();
    said(&run(&["read", &open, "--pin", mark]));

    let closer = said(&run(&["read", &open, "--insight"]));
    let counts = closer.find("Counts, latest time on a step first").unwrap();
    assert!(counts < closer.find("What was done").unwrap(), "{closer}");
    assert!(closer.contains("no interval belongs"), "{closer}");
    assert!(closer.lines().all(|line| line.chars().count() <= 80), "{closer}");
    let numbers: serde_json::Value =
        serde_json::from_str(&said(&run(&["read", &open, "--insight", "--json"]))).unwrap();
    assert!(numbers["stretches"].as_array().is_some_and(|all| !all.is_empty()));

    let one = |args: &[&str]| {
        let says = refused(&run(args), 2);
        assert!(says.trim_end().ends_with('.'), "{says}");
        assert_eq!(says.matches(". ").count(), says.matches(". Do not rely").count(), "{says}");
        says
    };
    one(&["read", &name("nothing-there.json")]);
    one(&["read", &name("README.txt")]);
    one(&["read", &sealed]);
    let other = mark.replacen('6', "7", 1);
    assert!(one(&["read", &open, "--pin", &other]).contains("another diary"));
    let text = fs::read_to_string(&open).unwrap();
    let altered = name("altered.json");
    fs::write(&altered, text.replacen("\"rated\":3", "\"rated\":2", 1)).unwrap();
    assert!(one(&["read", &altered]).contains("signature"));
    fs::write(&altered, &text[..text.len() / 2]).unwrap();
    assert!(one(&["read", &altered]).contains("damaged"));

    // A gigabyte, without a gigabyte on the disk: nested lists, then a hole.
    let large = name("large.json");
    let mut file = fs::File::create(&large).unwrap();
    file.write_all(&vec![b'['; 1 << 20]).unwrap();
    file.seek(SeekFrom::Start((1 << 30) - 1)).unwrap();
    file.write_all(b"[").unwrap();
    assert!(one(&["read", &large]).contains("longer"));
}
