//! Writes the stored copies that `fixtures/copies-v1` holds: a backup of this device and a copy for
//! elsewhere, both of format 1. Run once, when the formats landed; its output is never written again.
//! `stored_copies FOLDER`.

use std::error::Error;
use std::path::{Path, PathBuf};

use frond_core::companion::{Recovery, Told};
use frond_core::ports::Disk;
use frond_core::ports::sim::SeededRandom;
use frond_core::programme::values::Passage;
use frond_core::sealing::RecoveryPhrase;
use frond_tests::home::{FOLDER, Home, keeper, session};

fn main() -> Result<(), Box<dyn Error>> {
    let folder = PathBuf::from(std::env::args().nth(1).ok_or("which folder?")?);
    let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
    let phrase = RecoveryPhrase::new(&SeededRandom::new(77))?;
    let moment = home.moment;
    let companion = home.companion.new_keys(&keeper(), Recovery::By(&phrase), &moment);
    home.companion = companion.map_err(|trouble| trouble.to_string())?;
    for day in 1..=3 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(day))));
    }
    home.tell(Told::Question(Passage::new("an invented question")?));
    home.companion.back_up(&home.moment.now).map_err(|trouble| trouble.to_string())?;
    let copy = home.companion.copy_for_elsewhere(&home.moment.now);
    std::fs::write(folder.join("copy.age"), copy.map_err(|trouble| trouble.to_string())?)?;
    let backups = Path::new(FOLDER).join("backups");
    let numbers = home.disk.list(&backups)?;
    let newest = numbers.iter().filter_map(|name| name.parse::<u64>().ok()).max().ok_or("none")?;
    let bytes = home.disk.content(&backups.join(newest.to_string())).ok_or("no backup")?;
    std::fs::write(folder.join("backup"), bytes)?;
    // For the README beside them.
    println!("{}", phrase.words().collect::<Vec<_>>().join(" "));
    println!("{}", *phrase.identity().to_text());
    Ok(())
}
