//! Gathering: what counts, what is refused, what is never said. All invented.

use std::fs;
use std::path::Path;

use frond_core::diary::entry::Entry;
use frond_core::moment::Stamp;
use frond_core::sealing::{Identity, SealTo, SigningKey};
use frond_core::summary::{DiaryId, DiaryIdentity, Selection, Summary, TimeAlone};
use zeroize::Zeroizing;

use super::gather;
use super::write::SORTS;
use crate::args::{GatherArgs, OpenArgs};
use crate::failure::Failure;

const KEY: &str = "AGE-SECRET-KEY-1V9HZQ6TWWEJKUAR9VSSXKETE9SSXJAPQDACX2MNNYPKXJAR5D3JSRUDF5S";

fn identity(diary: u8, key: u8) -> DiaryIdentity {
    DiaryIdentity {
        id: DiaryId([diary; 16]),
        key: SigningKey::from_seed(&Zeroizing::new([key; 32])),
    }
}

/// The diary of the invented scenario, up to an entry.
fn summary(identity: &DiaryIdentity, entries: usize) -> Summary {
    let played = crate::scenario::played().unwrap();
    let entries: Vec<Entry> = played.entries.into_iter().take(entries).collect();
    let last: Stamp = entries.last().unwrap().written;
    Summary::of(&entries, identity, &Selection::default(), &last).unwrap()
}

fn args(folder: &Path, out: &Path, key: Option<&Path>) -> GatherArgs {
    GatherArgs {
        folder: folder.to_path_buf(),
        open: OpenArgs { passphrase_file: None, identity_file: key.map(Path::to_path_buf) },
        out: out.to_path_buf(),
        fhir: true,
        with_texts: false,
        with_nicknames: false,
    }
}

fn lines(out: &Path, name: &str) -> Vec<serde_json::Value> {
    let text = fs::read_to_string(out.join(format!("{name}.ndjson"))).unwrap();
    text.lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

#[test]
fn the_newest_that_opens_counts_and_every_refusal_is_said() {
    let room = tempfile::tempdir().unwrap();
    let (folder, out) = (room.path().join("in"), room.path().join("out"));
    fs::create_dir_all(folder.join("deeper")).unwrap();
    let one = identity(1, 1);
    let write = |name: &str, bytes: &[u8]| fs::write(folder.join(name), bytes).unwrap();
    write("old.json", &summary(&one, 20).open_form(&one).unwrap());
    write("deeper/new.json", &summary(&one, 60).open_form(&one).unwrap());
    let mut newest = summary(&one, 70).open_form(&one).unwrap();
    let text = String::from_utf8(newest.clone()).unwrap();
    newest = text.replacen("\"rated\":3", "\"rated\":2", 1).into_bytes();
    write("altered.json", &newest);
    write("other.json", b"{\"not\": \"a summary\"}");
    write("note.txt", b"not looked at");
    let key = Identity::parse(KEY).unwrap();
    let to = SealTo::Recipients(vec![key.recipient()]);
    let two = identity(2, 2);
    let sealed = summary(&two, 40).sealed_form(&two, &to, TimeAlone::Please).unwrap();
    write("sealed.age", &sealed);
    let key_file = room.path().join("key.txt");
    fs::write(&key_file, KEY).unwrap();
    // Two keys for one diary: neither is believed.
    for key in [3, 4] {
        let three = identity(3, key);
        write(&format!("three-{key}.json"), &summary(&three, 20).open_form(&three).unwrap());
    }
    gather(&args(&folder, &out, Some(&key_file))).unwrap();
    let diaries = lines(&out, "diaries");
    let ids: Vec<&str> = diaries.iter().map(|one| one["diary"].as_str().unwrap()).collect();
    assert_eq!(ids, ["01".repeat(16), "02".repeat(16)]);
    let expected =
        summary(&one, 60).made.local().to_rfc3339_opts(chrono::SecondsFormat::Secs, false);
    assert_eq!(diaries[0]["made"], expected.as_str(), "the altered one does not count");
    // Without a key the sealed one is refused and the others are gathered all the same.
    let again = room.path().join("again");
    gather(&args(&folder, &again, None)).unwrap();
    assert_eq!(lines(&again, "diaries").len(), 1);
    // Into a folder with something in it nothing is written.
    assert!(matches!(gather(&args(&folder, &out, None)), Err(Failure::Input(_))));
    let nothing = room.path().join("nothing");
    fs::create_dir(&nothing).unwrap();
    let empty = gather(&args(&nothing, &room.path().join("none"), None));
    assert!(matches!(empty, Err(Failure::Input(_))));
}

#[test]
fn every_line_has_every_column_in_order_and_no_word_that_a_person_wrote() {
    let room = tempfile::tempdir().unwrap();
    let (folder, out) = (room.path().join("in"), room.path().join("out"));
    fs::create_dir(&folder).unwrap();
    let one = identity(1, 1);
    fs::write(folder.join("a.json"), summary(&one, 500).open_form(&one).unwrap()).unwrap();
    gather(&args(&folder, &out, None)).unwrap();
    for (name, columns) in SORTS {
        let text = fs::read_to_string(out.join(format!("{name}.ndjson"))).unwrap();
        assert!(!text.is_empty(), "{name}");
        for line in text.lines() {
            let row: serde_json::Map<String, serde_json::Value> =
                serde_json::from_str(line).unwrap();
            assert_eq!(row.len(), columns.len(), "{name}");
            let mut at = 0;
            for column in columns {
                let key = format!("\"{}\":", column.name);
                let found = line[at..].find(&key);
                at += found.unwrap_or_else(|| panic!("{name}: {} is not there", column.name));
            }
        }
    }
    for name in ["diaries", "sessions", "steps", "weeks", "signs", "fhir"] {
        let text = fs::read_to_string(out.join(format!("{name}.ndjson"))).unwrap();
        for word in ["Wren", "film", "examination", "Marlowe", "sea in June", "between 2 and 3"] {
            assert!(!text.contains(word), "{name}: {word}");
        }
    }
    // Asked for, they are there.
    let told = room.path().join("told");
    let asked = GatherArgs { with_texts: true, with_nicknames: true, ..args(&folder, &told, None) };
    gather(&asked).unwrap();
    let text = fs::read_to_string(told.join("fhir.ndjson")).unwrap();
    assert!(text.contains("between 2 and 3") && text.contains("Marlowe"));
    assert!(lines(&told, "diaries")[0]["nickname"].is_string());
}

#[test]
fn the_guide_names_every_column() {
    let guide = include_str!("../../GATHER.md");
    for (name, columns) in SORTS {
        assert!(guide.contains(&format!("## {name}.ndjson")), "{name}");
        for column in columns {
            let row = format!("| `{}` | {:?} | {} |", column.name, column.sort, column.meaning);
            assert!(guide.contains(&row), "{name}: {row}");
        }
    }
}
