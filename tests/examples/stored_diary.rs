//! Writes the stored diary of format 1 that `fixtures/diary-v1` holds. Run once, when the format was
//! released; its output is never written again. `stored_diary FOLDER`.

use frond_core::diary::store::{Seq, Store};
use frond_core::ports::sim::SeededRandom;
use frond_core::ports::{Passphrase, PassphraseKeeper, RealDisk, Stretch};
use std::error::Error;
use std::path::PathBuf;
use std::sync::Arc;

fn main() -> Result<(), Box<dyn Error>> {
    let folder = PathBuf::from(std::env::args().nth(1).ok_or("which folder?")?);
    let words = Passphrase::new("an invented passphrase".to_owned())?;
    let keeper = PassphraseKeeper::new(words, Stretch::cheap_for_tests_only());
    let disk = Arc::new(RealDisk);
    let mut store =
        Store::create(disk.clone(), &folder, &keeper, Arc::new(SeededRandom::new(1)))?.store;
    for n in 1..=40u64 {
        let mut entry = format!("invented entry {n} of a diary that nobody kept ").into_bytes();
        if n == 20 {
            entry.resize(3_000, b'.');
        }
        store.append(&entry)?;
    }
    drop(store);

    // The twelfth entry is damaged and opened once, so that the journal holds a mark for it.
    let journal = folder.join("journal");
    let mut bytes = std::fs::read(&journal)?;
    if let Some(byte) = bytes.get_mut(8192 + 11 * 512 + 300) {
        *byte ^= 1;
    }
    std::fs::write(&journal, bytes)?;
    let opened = Store::open(disk, &folder, &keeper, Arc::new(SeededRandom::new(2)))?;
    let covers = Seq::new(30).ok_or("no such place")?;
    opened.store.save_snapshot(covers, b"invented state after entry 30")?;
    opened.store.running().replace(b"invented running practice")?;
    drop(opened);
    std::fs::remove_dir_all(folder.join("aside"))?;
    std::fs::remove_file(folder.join("lock"))?;
    Ok(())
}
