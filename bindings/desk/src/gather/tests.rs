//! Gathering: what counts, what is refused, what is never said. All invented.

use std::fs;
use std::path::Path;

use frond_core::diary::entry::Entry;
use frond_core::moment::Stamp;
use frond_core::sealing::{Identity, SealTo, SigningKey};
use frond_core::summary::{DiaryId, DiaryIdentity, Selection, Summary, TimeAlone};
use zeroize::Zeroizing;

use super::gathered;
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
    let (all, _) = crate::scenario::played();
    let entries: Vec<Entry> = all.iter().take(entries).cloned().collect();
    let last: Stamp = entries.last().unwrap().written;
    Summary::of(&entries, identity, &Selection::default(), &last).unwrap()
}

fn args(folder: &Path, out: &Path, key: Option<&Path>) -> GatherArgs {
    GatherArgs {
        folder: folder.to_path_buf(),
        desk: false,
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
    let found = gathered(&args(&folder, &out, Some(&key_file))).unwrap();
    assert_eq!((found.diaries, found.older), (2, 1));
    let names: Vec<&str> = found.refused.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(names, ["other.json", "altered.json", "three-3.json", "three-4.json"]);
    let diaries = lines(&out, "diaries");
    let ids: Vec<&str> = diaries.iter().map(|one| one["diary"].as_str().unwrap()).collect();
    assert_eq!(ids, ["01".repeat(16), "02".repeat(16)]);
    let expected =
        summary(&one, 60).made.local().to_rfc3339_opts(chrono::SecondsFormat::Secs, false);
    assert_eq!(diaries[0]["made"], expected.as_str(), "the altered one does not count");
    // Without a key the sealed one is refused and the others are gathered all the same.
    let again = room.path().join("again");
    gathered(&args(&folder, &again, None)).unwrap();
    assert_eq!(lines(&again, "diaries").len(), 1);
    // Into a folder with something in it nothing is written.
    assert!(matches!(gathered(&args(&folder, &out, None)), Err(Failure::Input(_))));
    let nothing = room.path().join("nothing");
    fs::create_dir(&nothing).unwrap();
    let empty = gathered(&args(&nothing, &room.path().join("none"), None)).unwrap();
    assert_eq!((empty.diaries, empty.refused.len()), (0, 0));
}

#[test]
fn a_desks_cabinet_is_gathered_with_its_own_passphrase() {
    let room = tempfile::tempdir().unwrap();
    let desk = room.path().join("desk");
    let passphrase = || frond_core::ports::Passphrase::new("invented words".to_owned()).unwrap();
    let folder = crate::clinic::folder::Folder::take(&desk).unwrap();
    let keys =
        crate::clinic::keys::make(&folder, &frond_core::ports::OsRandom, passphrase()).unwrap();
    let one = identity(1, 1);
    let to = SealTo::Recipients(vec![keys.recipient().unwrap()]);
    let sealed = summary(&one, 40).sealed_form(&one, &to, TimeAlone::NotAsked).unwrap();
    fs::create_dir_all(desk.join("summaries")).unwrap();
    fs::write(desk.join("summaries/one.age"), sealed).unwrap();
    let secret = room.path().join("passphrase");
    crate::file::write_new(&secret, b"invented words\n").unwrap();
    let asked = |out: &str, secret: &Path| GatherArgs {
        desk: true,
        open: OpenArgs { passphrase_file: Some(secret.to_path_buf()), identity_file: None },
        ..args(&desk, &room.path().join(out), None)
    };
    // A desk that is open holds its folder.
    assert!(matches!(gathered(&asked("held", &secret)), Err(Failure::Else(_))));
    drop(folder);
    gathered(&asked("out", &secret)).unwrap();
    assert_eq!(lines(&room.path().join("out"), "diaries").len(), 1);
    let wrong = room.path().join("wrong");
    crate::file::write_new(&wrong, b"other words\n").unwrap();
    assert!(matches!(gathered(&asked("none", &wrong)), Err(Failure::Input(_))));
}

#[test]
fn every_line_has_every_column_in_order_and_no_word_that_a_person_wrote() {
    let room = tempfile::tempdir().unwrap();
    let (folder, out) = (room.path().join("in"), room.path().join("out"));
    fs::create_dir(&folder).unwrap();
    let one = identity(1, 1);
    fs::write(folder.join("a.json"), summary(&one, 500).open_form(&one).unwrap()).unwrap();
    gathered(&args(&folder, &out, None)).unwrap();
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
    gathered(&asked).unwrap();
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
