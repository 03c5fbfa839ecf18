//! What lies on the disk tells a stranger nothing: neither a word of the diary, nor the passphrase, nor a
//! name of the plan; and what can be printed for debugging tells nothing either.

use std::path::Path;

use frond_core::companion::{Recovery, Request, Told};
use frond_core::diary::entry::Reason;
use frond_core::ports::sim::SeededRandom;
use frond_core::programme::values::Passage;
use frond_core::safety::Sign;
use frond_core::sealing::RecoveryPhrase;
use frond_tests::home::{FOLDER, Home, PASSPHRASE, keeper, session, stopped};

/// Words of the field, of the plan and of the told diary.
const WORDS: [&str; 22] = [
    "pelvic",
    "trainer",
    "session",
    "discomfort",
    "peak",
    "practice",
    "breath",
    "sign",
    "fever",
    "bleeding",
    "pain",
    "clinic",
    "programme",
    "step",
    "note",
    "entry",
    "Ines",
    "Abara",
    "Wren",
    "heron",
    "140",
    "on_back",
];

fn lived_in() -> Home {
    let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
    for peak in [2, 3, 8, 9] {
        home.pass(24);
        let mut told = session(140, 8, Some(peak));
        told.note = Some(Passage::new("pain and fever, said Wren").unwrap());
        home.tell(Told::Session(told));
    }
    home.tell(Told::Session(stopped(140, 1, Reason::Discomfort)));
    home.tell(Told::Signs { signs: vec![Sign::Fever, Sign::HeavyBleeding], note: None });
    home.ask(Request::Suggestion);
    home.companion.save().unwrap();
    home.companion.tidy().unwrap();
    with_copies_and_damage(home)
}

/// The same with a recovery phrase, backups, and a damaged journal whose bytes were kept aside.
fn with_copies_and_damage(mut home: Home) -> Home {
    let phrase = RecoveryPhrase::new(&SeededRandom::new(77)).unwrap();
    let moment = home.moment;
    home.companion =
        home.companion.new_keys(&keeper(), Recovery::By(&phrase), &moment).ok().unwrap();
    for _ in 0..2 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    home.companion.save().unwrap();
    let journal = Path::new(FOLDER).join("journal");
    let mut bytes = home.disk.content(&journal).unwrap();
    bytes[8192 + 100] ^= 1;
    home.disk.tamper(&journal, bytes);
    home.disk.tamper(&Path::new(FOLDER).join("renew"), Vec::new());
    let mut home = home.reopen();
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(2))));
    let below = |inner: &str| {
        let inner = Path::new(FOLDER).join(inner);
        home.disk.paths().iter().filter(|path| path.parent() == Some(&inner)).count()
    };
    assert!(below("aside") >= 1 && below("backups") == 3, "nothing was kept, so nothing is tried");
    home
}

#[test]
fn no_health_word_no_name_and_no_passphrase_lies_in_the_folder() {
    let home = lived_in();
    let paths = home.disk.paths();
    let mut searched = 0;
    for path in &paths {
        let name = path.to_string_lossy().to_lowercase();
        for word in ["pelvic", "trainer", "session", "health", "wren"] {
            assert!(!name.contains(word), "the file name {name} tells something");
        }
        let Some(bytes) = home.disk.content(path) else { continue };
        searched += bytes.len();
        let text = String::from_utf8_lossy(&bytes).to_lowercase();
        for word in WORDS.iter().chain([&PASSPHRASE]) {
            // Three digits or four letters can stand in random bytes by chance; longer words cannot.
            if word.len() > 4 {
                assert!(!text.contains(&word.to_lowercase()), "{word} stands in {name}");
            }
        }
    }
    assert!(searched > 64 * 1024, "only {searched} bytes were searched");
}

#[test]
fn sealed_bytes_look_random() {
    let home = lived_in();
    let mut looked_at = 0;
    for path in home.disk.paths() {
        let name = path.to_string_lossy();
        // `keys` is too short to count in: two wraps and a card. What stands in it is held by a snapshot.
        let long = |bytes: &Vec<u8>| bytes.len() > 1024 && !name.ends_with("keys");
        let Some(bytes) = home.disk.content(&path).filter(long) else { continue };
        looked_at += 1;
        // Room that is kept free is written with zeros; it is no sealed content.
        let sealed: Vec<u8> = bytes
            .chunks(16)
            .filter(|chunk| chunk.iter().any(|byte| *byte != 0))
            .flatten()
            .copied()
            .collect();
        let mut counts = [0u32; 256];
        for byte in &sealed {
            counts[usize::from(*byte)] += 1;
        }
        let total = f64::from(u32::try_from(sealed.len()).unwrap());
        // Shannon entropy in bits a byte (C. E. Shannon 1948): 8 for random bytes, 4 to 5 for text.
        let entropy: f64 = counts
            .iter()
            .filter(|count| **count > 0)
            .map(|count| {
                let share = f64::from(*count) / total;
                -share * share.log2()
            })
            .sum();
        assert!(entropy > 7.5, "{name} has {entropy:.2} bits a byte");
    }
    assert!(looked_at >= 6, "{looked_at} files");
}

#[test]
fn troubles_tell_nothing_that_was_written() {
    let mut home = lived_in();
    let told = Told::unsigned(r#"{"for":"Wren","pelvic":"pain"}"#);
    let trouble = home.refused(None, told);
    let shown = format!("{trouble:?} {trouble} {}", trouble.say(home.companion.words()));
    for word in ["Wren", "pain"] {
        assert!(!shown.contains(word), "{shown}");
    }
}
