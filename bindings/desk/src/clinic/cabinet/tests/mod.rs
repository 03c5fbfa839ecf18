//! The cabinet as a whole: what comes in, what is refused, and that nothing but files and pins has to survive.
//! Every summary is invented.

use std::fs;
use std::path::{Path, PathBuf};

use frond_core::ports::{OsRandom, Passphrase};
use frond_core::sealing::{SealTo, seal};
use frond_core::summary::TimeAlone;
use frond_tests::invented::Invented;

use super::*;

mod hostile;

struct Desk {
    room: tempfile::TempDir,
    folder: Arc<Folder>,
    keys: ClinicKeys,
    random: Arc<dyn Random>,
}

impl Desk {
    fn new() -> Self {
        let room = tempfile::tempdir().unwrap();
        let folder = Arc::new(Folder::take(&room.path().join("desk")).unwrap());
        let keys = ClinicKeys::new(&OsRandom).unwrap();
        Self { room, folder, keys, random: Arc::new(OsRandom) }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.room.path().join("desk").join(name)
    }

    fn open(&self, kind: IndexKind) -> Cabinet {
        let mut cabinet = Cabinet::open(&self.folder, &self.keys, &self.random, kind).unwrap();
        cabinet.read_on(&self.keys);
        cabinet.settle().unwrap();
        cabinet
    }

    fn bring(&self, cabinet: &mut Cabinet, bytes: &[u8]) -> Result<Taken, Refused> {
        let arrived = arrive(bytes, &self.keys.open_with(), None)?;
        cabinet.take(bytes, &arrived, false)
    }

    fn read(&self, cabinet: &Cabinet, id: SummaryId) -> Result<Received, Unfit> {
        cabinet.to_open(id, self.keys.open_with()).unwrap().open()
    }

    fn sealed(&self, of: &Invented) -> Vec<u8> {
        let to = SealTo::Recipients(vec![self.keys.recipient().unwrap()]);
        of.summary().sealed_form(&of.identity(), &to, TimeAlone::Please).unwrap()
    }

    /// Everything that lies in the desk's folder, the keys' file left out.
    fn lies_there(&self) -> Vec<(PathBuf, Vec<u8>)> {
        fn all(folder: &Path, found: &mut Vec<(PathBuf, Vec<u8>)>) {
            for entry in fs::read_dir(folder).unwrap() {
                let path = entry.unwrap().path();
                if path.is_dir() {
                    all(&path, found);
                } else {
                    found.push((path.clone(), fs::read(&path).unwrap()));
                }
            }
        }
        let mut found = Vec::new();
        all(&self.room.path().join("desk"), &mut found);
        found.sort();
        found
    }
}

fn invented(number: u64) -> Invented {
    Invented::new(number, 11)
}

fn listed(cabinet: &Cabinet) -> Vec<Digest> {
    let mut all: Vec<Digest> = cabinet.digests().cloned().collect();
    all.sort_by_key(|digest| digest.summary);
    all
}

#[test]
fn what_came_sealed_is_kept_as_it_came_and_what_came_open_is_sealed_first() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let sealed = desk.sealed(&invented(1));
    assert!(matches!(desk.bring(&mut cabinet, &sealed), Ok(Taken::New(_))));
    let open = invented(2).open_file();
    assert!(matches!(desk.bring(&mut cabinet, &open), Ok(Taken::New(_))));
    let words = || Passphrase::new("invented words".to_owned()).unwrap();
    let secret = seal(&invented(3).open_file(), &SealTo::Passphrase(words())).unwrap();
    let said = desk.bring(&mut cabinet, &secret);
    assert_eq!(said, Err(Refused::NeedsPassphrase));
    let with = OpenWith::Passphrase(words());
    let arrived = arrive(&secret, &desk.keys.open_with(), Some(&with)).unwrap();
    assert!(matches!(cabinet.take(&secret, &arrived, false), Ok(Taken::New(_))));
    cabinet.settle().unwrap();
    let names: Vec<FileName> = cabinet.shelf.keys().copied().collect();
    assert_eq!(names.len(), 3);
    let kept: Vec<Vec<u8>> = names.iter().map(|name| cabinet.store.read(*name).unwrap()).collect();
    assert!(kept.contains(&sealed), "as it came");
    assert!(!kept.contains(&open) && !kept.contains(&secret));
    for digest in listed(&cabinet) {
        let back = desk.read(&cabinet, digest.summary).unwrap();
        assert_eq!(Digest::of(&back), digest);
    }
    // Only the one that came sealed can carry the wish.
    assert_eq!(cabinet.digests().filter(|digest| digest.time_alone).count(), 1);
}

#[test]
fn nothing_that_lies_there_can_be_read() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    for number in 0..3 {
        desk.bring(&mut cabinet, &invented(number).open_file()).unwrap();
    }
    cabinet.settle().unwrap();
    let identities: Vec<String> =
        (0..3).map(|number| invented(number).identity().pin().to_string()).collect();
    drop(cabinet);
    for (path, bytes) in desk.lies_there() {
        let text = String::from_utf8_lossy(&bytes);
        for word in ["nvented", "trainer", "practice", "size-1", "discomfort"] {
            assert!(!text.contains(word), "{}: {word}", path.display());
        }
        for pin in &identities {
            let (diary, key) = pin.split_once(':').unwrap();
            assert!(!text.contains(diary) && !text.contains(key), "{}", path.display());
            assert!(!path.to_string_lossy().contains(diary));
        }
    }
}

#[test]
fn the_same_one_again_is_known_however_it_is_sealed() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let one = invented(1).open_file();
    desk.bring(&mut cabinet, &one).unwrap();
    assert!(matches!(desk.bring(&mut cabinet, &one), Ok(Taken::Known(_))));
    let to = SealTo::Recipients(vec![desk.keys.recipient().unwrap()]);
    let sealed = seal(&one, &to).unwrap();
    assert!(matches!(desk.bring(&mut cabinet, &sealed), Ok(Taken::Known(_))));
    assert_eq!(cabinet.store.names().unwrap().len(), 1);
}

#[test]
fn an_older_one_of_a_diary_is_kept_and_said() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let person = invented(4);
    desk.bring(&mut cabinet, &person.open_file()).unwrap();
    let earlier = person.earlier(12).open_form(&person.identity()).unwrap();
    assert!(matches!(desk.bring(&mut cabinet, &earlier), Ok(Taken::Older(_))));
    assert_eq!(cabinet.of(person.identity().id).count(), 2);
    // In the order in which they were made there is nothing to say.
    let elsewhere = Desk::new();
    let mut other = elsewhere.open(IndexKind::Plain);
    assert!(matches!(elsewhere.bring(&mut other, &earlier), Ok(Taken::New(_))));
    assert!(matches!(elsewhere.bring(&mut other, &person.open_file()), Ok(Taken::New(_))));
}

#[test]
fn h35_of_each_diary_the_newest_is_taken_whatever_came_last() {
    let (person, other) = (invented(4), invented(5));
    let earlier = person.earlier(12).open_form(&person.identity()).unwrap();
    let newest = arrive(&person.open_file(), &Desk::new().keys.open_with(), None).unwrap();
    for files in [[&person.open_file(), &earlier], [&earlier, &person.open_file()]] {
        let desk = Desk::new();
        let mut cabinet = desk.open(IndexKind::Plain);
        for file in files {
            desk.bring(&mut cabinet, file).unwrap();
        }
        desk.bring(&mut cabinet, &other.open_file()).unwrap();
        let taken = cabinet.newest();
        assert_eq!(taken.len(), 2, "one for each diary");
        let own = taken.iter().find(|one| one.diary == person.identity().id).unwrap();
        assert_eq!(own.summary, newest.digest.summary);
    }
}

/// The same diary, signed by somebody else.
fn by_another(of: &Invented) -> Vec<u8> {
    let mut identity = invented(999).identity();
    identity.id = of.identity().id;
    of.summary().open_form(&identity).unwrap()
}

#[test]
fn another_key_for_a_known_diary_is_refused_unless_a_person_says_so() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let person = invented(5);
    desk.bring(&mut cabinet, &person.open_file()).unwrap();
    let other = by_another(&person);
    assert_eq!(desk.bring(&mut cabinet, &other), Err(Refused::OtherKey));
    assert_eq!(cabinet.store.names().unwrap().len(), 1);
    cabinet.settle().unwrap();
    drop(cabinet);
    // Remembered over an opening, and over the loss of the index.
    fs::remove_dir_all(desk.path("index")).unwrap();
    let mut cabinet = desk.open(IndexKind::Sled);
    assert_eq!(desk.bring(&mut cabinet, &other), Err(Refused::OtherKey));
    let arrived = arrive(&other, &desk.keys.open_with(), None).unwrap();
    assert!(cabinet.take(&other, &arrived, true).is_ok());
    assert_eq!(cabinet.keys_of(person.identity().id), 2);
    cabinet.settle().unwrap();
    drop(cabinet);
    let mut cabinet = desk.open(IndexKind::Sled);
    assert_eq!(cabinet.of(person.identity().id).count(), 2);
    // Both keys are good from now on.
    let earlier = person.earlier(12).open_form(&person.identity()).unwrap();
    assert!(desk.bring(&mut cabinet, &earlier).is_ok());
}

#[test]
fn a_file_put_into_the_folder_by_hand_is_not_believed_more_than_one_that_arrives() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let person = invented(6);
    desk.bring(&mut cabinet, &person.open_file()).unwrap();
    cabinet.settle().unwrap();
    let to = SealTo::Recipients(vec![desk.keys.recipient().unwrap()]);
    let foreign = seal(&by_another(&person), &to).unwrap();
    let mine = seal(&invented(7).open_file(), &to).unwrap();
    let nobodys = seal(&invented(8).open_file(), &SealTo::Recipients(vec![stranger()])).unwrap();
    for bytes in [&foreign, &mine, &nobodys, &b"noise".to_vec()] {
        cabinet.store.keep(bytes).unwrap();
    }
    fs::write(desk.path("summaries/record.age"), b"none of ours").unwrap();
    drop(cabinet);
    let cabinet = desk.open(IndexKind::Sled);
    assert_eq!(cabinet.digests().count(), 2);
    let unfit = |which| cabinet.unfit().iter().filter(|(_, unfit)| *unfit == which).count();
    assert_eq!((unfit(Unfit::OtherKey), unfit(Unfit::NotOpened), unfit(Unfit::Damaged)), (1, 2, 0));
    assert!(desk.path("summaries/record.age").exists(), "what is not ours stays");
}

fn stranger() -> Recipient {
    // A key of nobody's, made for this test.
    ClinicKeys::new(&OsRandom).unwrap().recipient().unwrap()
}

#[test]
fn an_index_that_is_lost_cut_or_garbled_is_made_anew_from_the_files() {
    for kind in IndexKind::ALL {
        let desk = Desk::new();
        let mut cabinet = desk.open(kind);
        for number in 0..6 {
            desk.bring(&mut cabinet, &invented(number).open_file()).unwrap();
        }
        cabinet.settle().unwrap();
        let before = listed(&cabinet);
        drop(cabinet);
        let opened = desk.open(kind);
        assert!(!opened.was_remade() && listed(&opened) == before, "{kind:?}");
        drop(opened);
        for damage in 0..6 {
            for path in database(&kind.place(&desk.path("index"))) {
                let bytes = fs::read(&path).unwrap();
                let changed: Vec<u8> = match damage {
                    0 => Vec::new(),
                    1 => bytes[..bytes.len() / 4].to_vec(),
                    2 => bytes[..bytes.len() * 9 / 10].to_vec(),
                    3 => bytes.iter().enumerate().map(|(at, _)| (at * 131 % 251) as u8).collect(),
                    4 => bytes.iter().map(|byte| byte ^ 0x55).collect(),
                    _ => {
                        fs::remove_file(&path).unwrap();
                        continue;
                    }
                };
                fs::write(&path, changed).unwrap();
            }
            let cabinet = desk.open(kind);
            assert_eq!(listed(&cabinet), before, "{kind:?} {damage}");
            assert_eq!(cabinet.unfit().len(), 0);
            drop(cabinet);
            let cabinet = desk.open(kind);
            assert!(!cabinet.was_remade(), "{kind:?} {damage}: once is enough");
            assert_eq!(listed(&cabinet), before);
        }
    }
}

#[test]
fn where_sled_cannot_be_used_at_all_the_plain_index_takes_its_place() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Never);
    for number in 0..3 {
        desk.bring(&mut cabinet, &invented(number).open_file()).unwrap();
    }
    cabinet.settle().unwrap();
    let before = listed(&cabinet);
    drop(cabinet);
    assert_eq!(listed(&desk.open(IndexKind::Plain)), before);
    let again = Cabinet::open(&desk.folder, &desk.keys, &desk.random, IndexKind::Never);
    let again = again.unwrap();
    assert!(again.unread() == 0 && listed(&again) == before, "taken from the plain one");
}

/// Every file of a database.
fn database(place: &Path) -> Vec<PathBuf> {
    if place.is_file() {
        return vec![place.to_path_buf()];
    }
    let entries = fs::read_dir(place).unwrap().map(|entry| entry.unwrap().path());
    entries.flat_map(|path| database(&path)).collect()
}

#[test]
fn a_digest_put_in_anothers_place_or_kept_under_other_keys_is_not_believed() {
    for kind in IndexKind::ALL {
        let desk = Desk::new();
        let mut cabinet = desk.open(kind);
        for number in 0..2 {
            desk.bring(&mut cabinet, &invented(number).open_file()).unwrap();
        }
        cabinet.settle().unwrap();
        let before = listed(&cabinet);
        drop(cabinet);
        let rooms = desk.path("index");
        let mut index = kind.open(&rooms).unwrap();
        let all = index.all().unwrap();
        let [(one, first), (other, second)] = &all[..] else { panic!("two") };
        index.put(*one, second).unwrap();
        index.put(*other, first).unwrap();
        index.settle().unwrap();
        drop(index);
        let cabinet = desk.open(kind);
        assert!(cabinet.was_remade(), "{kind:?}");
        assert_eq!(listed(&cabinet), before, "{kind:?}");
    }
}

#[test]
fn what_was_taken_away_elsewhere_is_not_listed_any_longer() {
    for kind in IndexKind::ALL {
        let desk = Desk::new();
        let mut cabinet = desk.open(kind);
        for number in 0..3 {
            desk.bring(&mut cabinet, &invented(number).open_file()).unwrap();
        }
        cabinet.settle().unwrap();
        let name = *cabinet.shelf.keys().next().unwrap();
        drop(cabinet);
        fs::remove_file(desk.path(&format!("summaries/{name}.age"))).unwrap();
        let cabinet = desk.open(kind);
        assert_eq!(cabinet.digests().count(), 2, "{kind:?}");
        assert!(!cabinet.was_remade());
    }
}

#[test]
fn taking_a_diary_away_leaves_the_others_and_the_mark_it_is_known_by() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let (person, other) = (invented(1), invented(2));
    desk.bring(&mut cabinet, &person.open_file()).unwrap();
    desk.bring(&mut cabinet, &other.open_file()).unwrap();
    cabinet.settle().unwrap();
    cabinet.take_away(person.identity().id).unwrap();
    drop(cabinet);
    let mut cabinet = desk.open(IndexKind::Sled);
    assert_eq!(cabinet.digests().count(), 1);
    assert_eq!(cabinet.store.names().unwrap().len(), 1);
    assert_eq!(desk.bring(&mut cabinet, &by_another(&person)), Err(Refused::OtherKey));
    assert!(matches!(desk.bring(&mut cabinet, &person.open_file()), Ok(Taken::New(_))));
}

#[test]
fn pins_that_are_damaged_are_moved_aside_and_what_is_here_counts_as_accepted() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let person = invented(5);
    desk.bring(&mut cabinet, &person.open_file()).unwrap();
    cabinet.settle().unwrap();
    drop(cabinet);
    fs::write(desk.path("diaries"), b"garbled").unwrap();
    let mut cabinet = desk.open(IndexKind::Sled);
    assert!(cabinet.lost_pins());
    assert_eq!(cabinet.digests().count(), 1);
    assert_eq!(fs::read(desk.path("diaries-aside")).unwrap(), b"garbled");
    assert_eq!(desk.bring(&mut cabinet, &by_another(&person)), Err(Refused::OtherKey));
    cabinet.settle().unwrap();
    drop(cabinet);
    assert!(!desk.open(IndexKind::Sled).lost_pins());
}

#[test]
fn old_sealing_keys_still_open_what_was_kept() {
    let mut desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    let sealed = desk.sealed(&invented(1));
    desk.bring(&mut cabinet, &sealed).unwrap();
    cabinet.settle().unwrap();
    let before = listed(&cabinet);
    drop(cabinet);
    desk.keys = desk.keys.renewed(&OsRandom).unwrap();
    let mut cabinet = desk.open(IndexKind::Sled);
    assert!(!cabinet.was_remade() && listed(&cabinet) == before);
    assert!(desk.read(&cabinet, before[0].summary).is_ok());
    desk.bring(&mut cabinet, &invented(2).open_file()).unwrap();
    assert_eq!(cabinet.digests().count(), 2);
}
