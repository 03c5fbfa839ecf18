//! Writes what the fuzzer begins with, into `tests/fuzz/corpus`: for each reader something that it takes.
//! Everything in it is invented.

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};

use frond_core::companion::Told;
use frond_core::diary::lines;
use frond_core::diary::portable::Portable;
use frond_core::diary::state::State;
use frond_core::diary::store::read_backup;
use frond_core::handover::{HandOver, LinkTo, SpokenWords};
use frond_core::ports::sim::SeededRandom;
use frond_core::safety::Sign;
use frond_core::sealing::{RecoveryPhrase, SigningKey};
use frond_tests::home::{Home, PLAN, keeper, session};
use frond_tests::invented::Invented;
use frond_tests::keeping_model::world::backups;

/// Every state of a running practice as it is kept: the frozen form.
const RUNNING: &str = include_str!(
    "../../core/src/practice/timed/tests/snapshots/frond_core__practice__timed__tests__stored__w6_the_stored_form_of_every_state_is_frozen.snap"
);

fn main() -> Result<(), Box<dyn Error>> {
    let top = Path::new(env!("CARGO_MANIFEST_DIR"));
    let corpus = top.join("fuzz/corpus");
    let put = |reader: &str, name: &str, bytes: &[u8]| -> Result<(), Box<dyn Error>> {
        let folder: PathBuf = corpus.join(reader);
        fs::create_dir_all(&folder)?;
        fs::write(folder.join(format!("seed-{name}")), bytes)?;
        Ok(())
    };
    let key = SigningKey::new(&SeededRandom::new(1))?;
    for file in fs::read_dir(top.join("../fixtures/programmes"))? {
        let path = file?.path();
        if path.extension().is_some_and(|kind| kind == "json") {
            let name = path.file_stem().and_then(|name| name.to_str()).ok_or("a name")?;
            let text = fs::read(&path)?;
            put("programme", name, &text)?;
            let plan = HandOver::sign(&text, &key, None)?;
            put("signed_plan", name, &plan.file())?;
            put("link", name, plan.link(LinkTo::Anybody, &SeededRandom::new(2))?.as_bytes())?;
        }
    }
    put("programme", "plan", PLAN.as_bytes())?;
    // No change at all: the sound file of each.
    for reader in ["signed_plan", "link", "sealed_file", "backup"] {
        put(reader, "sound", &[])?;
    }
    for which in 0..8u8 {
        put("journal", &format!("{which}"), &[which, 0, 0, 32, 1, 7])?;
        put("journal", &format!("sound-{which}"), &[which & 3])?;
        put("backup", &format!("{which}"), &[which, which, 40, 0, 9])?;
        put("sealed_file", &format!("{which}"), &[which, 30 * which, 0, 0, 9])?;
    }
    for name in ["x25519", "scrypt", "armor_x25519", "stanza_bad_start", "stream_bad_tag"] {
        put("sealed_file", name, &fs::read(top.join("../fixtures/age-testkit").join(name))?)?;
    }
    for number in 0..12 {
        let file = Invented::new(number, 5).earlier(3 + 2 * usize::try_from(number)?);
        put("signed_summary", &number.to_string(), &serde_json::to_vec(&file)?)?;
        put("summary", &number.to_string(), &Invented::new(number, 5).open_file())?;
    }
    diary(&put)?;
    let phrase = RecoveryPhrase::new(&SeededRandom::new(3))?;
    put("words", "phrase", phrase.words().collect::<Vec<_>>().join(" ").as_bytes())?;
    let spoken = SpokenWords::new(&SeededRandom::new(4))?;
    put("words", "spoken", spoken.words().collect::<Vec<_>>().join(" ").as_bytes())?;
    put("words", "identity", phrase.identity().to_text().as_bytes())?;
    put("words", "recipient", phrase.recipient().to_string().as_bytes())?;
    put("words", "key", key.verify_key().to_text().as_bytes())?;
    put("words", "stamp", b"2026-03-02T18:30:00+10:30[Australia/Lord_Howe]")?;
    put("words", "stamp-twice", b"2026-10-25T01:30:00+00:00[Europe/London]")?;
    Ok(())
}

/// Writes a file: for which reader, its name, its bytes.
type Put<'a> = &'a dyn Fn(&str, &str, &[u8]) -> Result<(), Box<dyn Error>>;

fn diary(put: Put<'_>) -> Result<(), Box<dyn Error>> {
    let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
    for peak in 0..8 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(peak))));
    }
    home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    let entries = home.companion.entries()?;
    for (name, many) in [("all", entries.len()), ("some", 4), ("one", 1)] {
        put("lines", name, lines::write(entries.get(..many).unwrap_or_default())?.as_bytes())?;
        let mut state = State::from_history(entries.get(..many).unwrap_or_default())?;
        put("kept", name, &state.encode()?)?;
    }
    let states = RUNNING.splitn(3, "---\n").nth(2).ok_or("a snapshot")?;
    for (number, state) in
        serde_json::from_str::<Vec<serde_json::Value>>(states)?.iter().enumerate()
    {
        put("kept", &format!("running-{number}"), state.to_string().as_bytes())?;
    }
    home.companion.back_up(&home.moment.now)?;
    let (path, _) = backups(&home.disk).swap_remove(0);
    let read = read_backup(&home.disk, &path, &keeper())?;
    let card = read.card.ok_or("a card")?;
    for (name, many) in [("all", read.entries.len()), ("none", 0)] {
        let entries = read.entries.get(..many).unwrap_or_default().to_vec();
        let copy = Portable { card: card.clone(), made: home.moment.now, entries };
        put("copy", name, &copy.write()?)?;
    }
    Ok(())
}
