//! The copies of every format once landed are restored forever.

use std::path::Path;
use std::sync::Arc;

use frond_core::companion::{Companion, Copy, CopyFrom};
use frond_core::diary::entry::Content;
use frond_core::moment::Moment;
use frond_core::ports::RealDisk;
use frond_core::ports::sim::{SeededRandom, SimDisk};
use frond_core::sealing::RecoveryPhrase;
use frond_tests::home::{FOLDER, keeper, ports, stamp};

fn fixture(name: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/copies-v1").join(name)
}

/// What both hold: the plan, the step confirmed, three sessions, one question.
fn holds_it_all(copy: Copy) {
    let disk = SimDisk::new();
    let moment = Moment::at(stamp("2026-03-06T08:00:00+00:00[Europe/London]"));
    let place = Path::new(FOLDER);
    let restored =
        Companion::restore(&ports(&disk, 1), place, &keeper(), copy, None, "en", &moment);
    let entries = restored.ok().unwrap().entries().unwrap();
    assert_eq!(entries.len(), 2 + 3 + 1 + 1);
    assert!(matches!(&entries[5].what, Content::Question { text }
        if text.as_str() == "an invented question"));
    assert!(matches!(entries[6].what, Content::RestoredMark { up_to: 6, .. }));
}

#[test]
fn a_backup_of_format_1_is_restored() {
    let ports =
        frond_core::companion::Ports { disk: Arc::new(RealDisk), ..ports(&SimDisk::new(), 2) };
    let from = CopyFrom::Backup { path: &fixture("backup"), keeper: &keeper() };
    holds_it_all(Copy::read(&ports, from).ok().unwrap());
}

#[test]
fn a_copy_for_elsewhere_of_format_1_is_restored() {
    let phrase = RecoveryPhrase::new(&SeededRandom::new(77)).unwrap();
    let bytes = std::fs::read(fixture("copy.age")).unwrap();
    let from = CopyFrom::Elsewhere { bytes: &bytes, phrase: &phrase };
    holds_it_all(Copy::read(&ports(&SimDisk::new(), 2), from).ok().unwrap());
}
