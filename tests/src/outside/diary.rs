//! What lies on the disk or comes from another one: the journal and what stands beside it, a backup, the copy
//! for elsewhere, the plain lines, and what is kept of a running practice.

use std::path::Path;
use std::sync::OnceLock;

use frond_core::companion::{Companion, Told};
use frond_core::diary::lines;
use frond_core::diary::portable::Portable;
use frond_core::diary::state::State;
use frond_core::diary::store::read_backup;
use frond_core::moment::Moment;
use frond_core::ports::sim::SimDisk;
use frond_core::practice::timed::Found;

use super::edits::edited;
use crate::home::{FOLDER, Home, keeper, ports, session, stamp};

const NOW: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

/// A diary as it lies there, with what it holds.
struct Lying {
    disk: SimDisk,
    entries: Vec<String>,
    moment: Moment,
}

fn lying() -> &'static Lying {
    static LYING: OnceLock<Lying> = OnceLock::new();
    LYING.get_or_init(|| {
        let mut home = Home::with_plan(NOW);
        for peak in 0..6 {
            home.pass(24);
            home.tell(Told::Session(session(140, 8, Some(peak))));
        }
        home.companion.save().expect("saved");
        home.companion.back_up(&home.moment.now).expect("backed up");
        let entries = told(&home.companion).expect("its entries");
        Lying { disk: home.disk.after_kill(), entries, moment: home.moment }
    })
}

fn told(companion: &Companion) -> Option<Vec<String>> {
    let entries = companion.entries().ok()?;
    entries.iter().map(|entry| serde_json::to_string(entry).ok()).collect()
}

/// The files of a diary, changed: the first byte says which. Whatever opens is what was written, in its order,
/// and where something of it is missing there is a mark that says so.
pub fn journal(bytes: &[u8]) -> bool {
    let lying = lying();
    let Some((which, changes)) = bytes.split_first() else { return false };
    let names = ["journal", "keys", "snapshot", "journal"];
    let path = Path::new(FOLDER).join(names[usize::from(which & 3)]);
    let disk = lying.disk.after_kill();
    let Some(sound) = disk.content(&path) else { return false };
    let changed = if which & 4 == 0 { edited(&sound, changes) } else { changes.to_vec() };
    let same = changed == sound;
    disk.tamper(&path, changed);
    let open =
        || Companion::open(&ports(&disk, 7), Path::new(FOLDER), &keeper(), "en", &lying.moment);
    let Ok(mut companion) = open() else { return false };
    let mut found = told(&companion);
    if found.is_none() {
        // Damage behind the snapshot is found by whoever reads it all, and seen to by the next opening.
        drop(companion);
        let Ok(again) = open() else { return false };
        companion = again;
        found = told(&companion);
    }
    let Some(found) = found else { return false };
    let mut written = lying.entries.iter();
    let marks: Vec<&String> =
        found.iter().filter(|line| !written.any(|known| known == *line)).collect();
    let lost = lying.entries.iter().any(|known| !found.contains(known));
    assert!(marks.iter().all(|line| line.contains("missing")), "it opens as something else");
    assert!(!lost || !marks.is_empty() || zeroed(&disk, &path, &sound), "lost, and nothing said");
    assert!(!same || marks.is_empty(), "nothing was changed, and something is missing");
    drop(companion);
    let again = open().ok().and_then(|companion| told(&companion));
    assert_eq!(again.as_ref(), Some(&found), "another opening finds something else");
    true
}

/// Where the last entries are as if they had never been written, byte for byte, no reader can know of them
/// without a mark kept outside: the limit that the format states.
fn zeroed(disk: &SimDisk, path: &Path, sound: &[u8]) -> bool {
    let now = disk.content(path).unwrap_or_default();
    let differs = sound.iter().zip(&now).position(|(was, is)| was != is).unwrap_or(now.len());
    now.get(differs..).is_some_and(|rest| rest.iter().all(|byte| *byte == 0))
}

/// A backup: as it comes, and a sound one with changes.
pub fn backup(bytes: &[u8]) -> bool {
    static SOUND: OnceLock<Vec<u8>> = OnceLock::new();
    let sound = SOUND.get_or_init(|| {
        let (_, backup) = crate::keeping_model::world::backups(&lying().disk).swap_remove(0);
        backup
    });
    let path = Path::new("/b");
    let mut taken = false;
    for file in [bytes.to_vec(), edited(sound, bytes)] {
        let disk = SimDisk::new();
        disk.tamper(path, file);
        let Ok(read) = read_backup(&disk, path, &keeper()) else { continue };
        let mut written = lying().entries.iter();
        for entry in &read.entries {
            let same = written.any(|known| known.as_bytes() == entry.as_slice());
            assert!(same, "a changed backup opens as something else");
        }
        let all = read.entries.len() == lying().entries.len();
        assert!(all || !read.missing.is_empty(), "a backup lost something, and nothing is said");
        taken = true;
    }
    taken
}

/// What is inside a copy for elsewhere, after it was unsealed.
pub fn copy(bytes: &[u8]) -> bool {
    let Ok(copy) = Portable::read(bytes) else { return false };
    let text = copy.write().expect("what was read is written");
    let again = Portable::read(&text).expect("and read");
    assert_eq!(again.write().expect("again").as_slice(), text.as_slice());
    true
}

/// Entries as JSON lines.
pub fn lines(bytes: &[u8]) -> bool {
    let Ok(entries) = lines::read(bytes) else { return false };
    let text = lines::write(&entries).expect("what was read is written");
    let again = lines::read(text.as_bytes()).expect("and read");
    assert_eq!(again, entries, "the lines read otherwise");
    // Whatever order and content they have, the state they come down to is one.
    if let Ok(state) = State::from_history(&entries) {
        let _ = state.rule().assess(&stamp(NOW));
    }
    !entries.is_empty()
}

/// What is kept of a running practice, and of the folded state.
pub fn kept(bytes: &[u8]) -> bool {
    let practice = Found::open(bytes).is_ok();
    let Some(mut state) = State::decode(bytes) else { return practice };
    let text = state.encode().expect("what was read is written");
    assert!(State::decode(&text).is_some());
    true
}
