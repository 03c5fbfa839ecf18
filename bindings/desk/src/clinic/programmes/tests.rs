//! Drafts and finished revisions in their sealed folder: kept, thrown away and back, and never believed when changed.

use frond_core::ports::OsRandom;
use frond_core::sealing::ClinicKeys;

use super::*;

const GRADED: &str =
    include_str!("../../../../../fixtures/programmes/1-graded-then-positions.json");

fn clinic(path: &std::path::Path) -> Clinic {
    Clinic {
        folder: Arc::new(Folder::take(path).unwrap()),
        keys: ClinicKeys::new(&OsRandom).unwrap(),
        random: Arc::new(OsRandom),
        cabinet: crate::clinic::cabinet::Shelf::default(),
    }
}

fn now() -> Stamp {
    "2026-03-01T09:00:00+00:00".parse().unwrap()
}

#[test]
fn a_draft_is_kept_sealed_finished_and_followed_by_a_revision() {
    let room = tempfile::tempdir().unwrap();
    let clinic = clinic(room.path());
    let programmes = Programmes::of(&clinic).unwrap();
    let id = programmes.begin(now()).unwrap();
    let mut kept = programmes.draft(&id).unwrap();
    assert!(kept.draft == Draft::new());
    assert_eq!(programmes.finish(&id, now()).err(), Some(ProgrammesError::NotFinished));
    kept.draft = Draft::from(&read(GRADED.as_bytes()).unwrap());
    programmes.save(&id, &kept).unwrap();
    // Nothing that was typed can be read on the disk, nor in a name.
    for entry in walk(room.path()) {
        let bytes = fs::read(&entry).unwrap();
        let name = entry.display().to_string();
        assert!(!bytes.windows(7).any(|seven| seven == b"Trainer"), "{name}");
        assert!(!name.contains("Wren") && !name.contains("graded"), "{name}");
    }
    let finished = programmes.finish(&id, now()).unwrap();
    assert_eq!(finished.programme.revision.get(), 1);
    assert_eq!(finished.programme.issued_at, now());
    assert_eq!(read(finished.text.as_bytes()).unwrap(), finished.programme);
    let next = programmes.begin_next(&finished.programme, [], now()).unwrap();
    let kept = programmes.draft(&next).unwrap();
    assert_eq!((kept.revision.get(), &kept.programme), (2, &finished.programme.id));
    assert_eq!(kept.earlier().unwrap(), finished.programme);
    assert!(kept.draft.signs_seen.is_empty());
    // A second one begun beside it does not get the same number.
    let other = programmes.begin_next(&finished.programme, [], now()).unwrap();
    assert_eq!(programmes.draft(&other).unwrap().revision.get(), 3);
    let listed = programmes.list().unwrap();
    assert_eq!((listed.drafts.len(), listed.finished.len(), listed.unread), (2, 1, 0));
    assert_eq!(listed.away, std::slice::from_ref(&id));
    // Finished out of order, or brought back and finished again: no number is given twice, and none falls.
    assert_eq!(programmes.finish(&other, now()).unwrap().programme.revision.get(), 3);
    assert_eq!(programmes.finish(&next, now()).unwrap().programme.revision.get(), 4);
    programmes.bring_back(&id).unwrap();
    assert_eq!(programmes.finish(&id, now()).unwrap().programme.revision.get(), 5);
}

#[test]
fn what_was_thrown_away_comes_back_until_the_next_start() {
    let room = tempfile::tempdir().unwrap();
    let clinic = clinic(room.path());
    let programmes = Programmes::of(&clinic).unwrap();
    let id = programmes.begin(now()).unwrap();
    programmes.throw_away(&id).unwrap();
    assert_eq!(programmes.draft(&id).err(), Some(ProgrammesError::NoSuch));
    assert_eq!(programmes.throw_away(&id), Err(ProgrammesError::NoSuch));
    programmes.bring_back(&id).unwrap();
    assert!(programmes.draft(&id).is_ok());
    programmes.throw_away(&id).unwrap();
    sweep(&clinic.folder);
    assert_eq!(programmes.bring_back(&id), Err(ProgrammesError::NoSuch));
    assert!(programmes.list().unwrap().away.is_empty());
}

#[test]
fn a_file_that_was_changed_or_put_in_anothers_place_does_not_open_and_hides_nothing_else() {
    let room = tempfile::tempdir().unwrap();
    let clinic = clinic(room.path());
    let programmes = Programmes::of(&clinic).unwrap();
    let (one, other) = (programmes.begin(now()).unwrap(), programmes.begin(now()).unwrap());
    let path = |id: &FileId| room.path().join(DRAFTS).join(id.as_str());
    fs::copy(path(&one), path(&other)).unwrap();
    assert_eq!(programmes.draft(&other).err(), Some(ProgrammesError::Damaged));
    let listed = programmes.list().unwrap();
    assert_eq!((listed.drafts.len(), listed.unread), (1, 1));
    // Half a file that a crash left aside is no draft.
    fs::write(path(&one).with_extension("new"), b"half").unwrap();
    assert_eq!(programmes.list().unwrap().drafts.len(), 1);
    for name in ["", "../keys", "x", &"a".repeat(33), &"A".repeat(32)] {
        assert!(FileId::parse(name).is_none(), "{name}");
    }
}

fn walk(path: &std::path::Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(path).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() { found.extend(walk(&path)) } else { found.push(path) }
    }
    found
}
