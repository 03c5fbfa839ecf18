//! The diary as a whole: backups, a lost phone, another passphrase, erasing, the end of it, an older copy.
//! The plan and everything told are invented.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use frond_core::companion::{Companion, Copy, CopyFrom, Recovery, Request, Told, Trouble, Write};
use frond_core::diary::entry::{Content, EntryId};
use frond_core::diary::erase::Erase;
use frond_core::moment::Moment;
use frond_core::ports::sim::{Call, SeededRandom, SimDisk};
use frond_core::ports::{Passphrase, PassphraseKeeper, Stretch};
use frond_core::programme::values::{Line, Passage};
use frond_core::progression::{Bar, OutcomeKind};
use frond_core::safety::Sign;
use frond_core::screens::Screen;
use frond_core::sealing::{RecoveryKeeper, RecoveryPhrase};
use frond_tests::home::{FOLDER, Home, Marks, keeper, ports, session, with_marks};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const SECRET: &str = "an invented secret of the ninth";

fn phrase() -> RecoveryPhrase {
    RecoveryPhrase::new(&SeededRandom::new(77)).unwrap()
}

fn other_keeper() -> PassphraseKeeper {
    let words = Passphrase::new("another invented passphrase".to_owned()).unwrap();
    PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
}

/// Good days enough that the plan would say: try the next step.
fn ready(home: &mut Home) {
    for _ in 0..10 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(1))));
    }
    home.pass(1);
}

fn outcome(companion: &Companion, moment: &Moment) -> OutcomeKind {
    companion.state().rule().assess(&moment.now).outcome.kind()
}

fn with_secret(size: u16) -> Told {
    let mut told = session(size, 8, Some(2));
    told.note = Some(Passage::new(SECRET).unwrap());
    Told::Session(told)
}

fn backups(disk: &SimDisk) -> Vec<PathBuf> {
    let inner = Path::new(FOLDER).join("backups");
    disk.paths().into_iter().filter(|path| path.parent() == Some(&inner)).collect()
}

fn open(disk: &SimDisk, moment: &Moment) -> Result<Companion, Trouble> {
    Companion::open(&ports(disk, 9), Path::new(FOLDER), &keeper(), "en", moment)
}

#[test]
fn a_backup_is_made_before_the_first_entry_of_a_new_day_and_three_are_kept() {
    let mut home = Home::with_plan(START);
    assert_eq!(backups(&home.disk).len(), 1, "the step was confirmed after the plan was kept");
    for day in 1..=5 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(1))));
        home.tell(Told::Session(session(140, 8, Some(1))));
        assert_eq!(backups(&home.disk).len(), (day + 1).min(3));
    }
    let Screen::Keeping(screen) = home.ask(Request::Keeping) else { panic!() };
    // The newest was made before today's two.
    assert_eq!(screen.parts[2].says[0], "10 entries, made today at 08:00");
}

#[test]
fn a_backup_that_cannot_be_made_is_said_and_keeps_no_entry_from_being_written() {
    let mut home = Home::with_plan(START);
    home.pass(24);
    home.disk.set_room(Some(8 * 1024));
    home.tell(Told::Session(session(140, 8, Some(1))));
    let today = home.json(Request::Today);
    assert!(today["notices"].to_string().contains("daily copy could not be made"), "{today}");
    home.disk.set_room(None);
    home.tell(Told::Session(session(140, 8, Some(1))));
    let today = home.json(Request::Today);
    assert!(!today["notices"].to_string().contains("daily copy"), "{today}");
}

#[test]
fn a_lost_phone() {
    let mut home = Home::with_plan(START);
    let made = home.companion.new_keys(&keeper(), Recovery::By(&phrase()), &home.moment);
    home.companion = made.ok().unwrap();
    ready(&mut home);
    assert_eq!(outcome(&home.companion, &home.moment), OutcomeKind::StepUp);
    let copy = home.companion.copy_for_elsewhere(&home.moment.now).unwrap();
    home.tell(Told::CopyKept);
    let before = home.companion.entries().unwrap();
    drop(home.companion);

    // Another machine, and nothing but the copy and the paper.
    let empty = SimDisk::new();
    let ports = ports(&empty, 5);
    let paper: Vec<&str> = phrase().words().collect();
    let words = RecoveryPhrase::parse(&paper.join(" ")).unwrap();
    let from = || CopyFrom::Elsewhere { bytes: &copy, phrase: &words };
    let read = Copy::read(&ports, from()).ok().unwrap();
    let moment = Moment::at("2026-03-13T09:00:00+01:00[Europe/Madrid]".parse().unwrap());
    let shown = read.screen(None, "en", &moment.now).unwrap();
    assert!(shown.then.iter().any(|says| says.contains("which size you use now")));
    let restored =
        Companion::restore(&ports, Path::new(FOLDER), &other_keeper(), read, None, "en", &moment);
    let mut companion = restored.ok().unwrap();

    let after = companion.entries().unwrap();
    // The mark that the copy was made came after it.
    assert_eq!(after[..after.len() - 1], before[..before.len() - 1]);
    assert!(matches!(after.last().unwrap().what, Content::RestoredMark { replaced: None, .. }));

    // The size is asked, and until it is answered nothing above hold is said.
    let assessment = companion.state().rule().assess(&moment.now);
    assert_eq!(assessment.outcome.kind(), OutcomeKind::Hold);
    assert!(assessment.bars.contains(&Bar::RestoreNotConfirmed), "{:?}", assessment.bars);
    let today = companion.ask(Request::Today, &moment).ok().unwrap().screen;
    let today = serde_json::to_value(today).unwrap();
    assert!(today["notices"].to_string().contains("is this what you use now?"), "{today}");
    let write = Write { id: EntryId([9; 16]), happened: None, told: Told::ConfirmStep };
    companion.ask(Request::Write(write), &moment).ok().unwrap();
    assert_eq!(outcome(&companion, &moment), OutcomeKind::StepUp);

    // It opens with the new passphrase and with the paper.
    drop(companion);
    let paper = RecoveryKeeper::new(phrase());
    for keeper in [&other_keeper() as &dyn frond_core::ports::KeyKeeper, &paper] {
        let opened = Companion::open(&ports, Path::new(FOLDER), keeper, "en", &moment);
        assert_eq!(opened.ok().unwrap().state().count(), after.len() as u64 + 1);
    }
    // Another paper opens nothing.
    let wrong = RecoveryPhrase::new(&SeededRandom::new(78)).unwrap();
    let wrong = Copy::read(&ports, CopyFrom::Elsewhere { bytes: &copy, phrase: &wrong });
    assert_eq!(wrong.err(), Some(Trouble::WrongPhrase));
}

#[test]
fn a_backup_is_restored_in_place_and_what_was_there_is_kept() {
    let mut home = Home::with_plan(START);
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.pass(1);
    home.tell(Told::Session(session(140, 8, Some(2))));
    let disk = home.disk.clone();
    let path = backups(&disk).pop().unwrap();
    let ports = ports(&disk, 5);
    let from = CopyFrom::Backup { path: &path, keeper: &keeper() };
    let copy = Copy::read(&ports, from).ok().unwrap();
    let shown = copy.screen(Some(&home.companion), "en", &home.moment.now).unwrap();
    assert!(
        shown.says.contains(&"The diary here has 2 entries more.".to_owned()),
        "{:?}",
        shown.says
    );
    let replaced = home.companion.state().count();
    drop(home.companion);
    let journal = disk.content(&Path::new(FOLDER).join("journal")).unwrap();
    let restored = Companion::restore(
        &ports,
        Path::new(FOLDER),
        &keeper(),
        copy,
        Some(replaced),
        "en",
        &home.moment,
    );
    let companion = restored.ok().unwrap();
    let marks = companion.entries().unwrap();
    let Some(Content::RestoredMark { up_to, replaced }) = marks.last().map(|e| e.what.clone())
    else {
        panic!("no mark");
    };
    assert_eq!((up_to, replaced), (2, Some(4)));
    assert!(disk.paths().iter().any(|path| {
        path.starts_with("/diary/aside") && disk.content(path).as_ref() == Some(&journal)
    }));
}

#[test]
fn an_erased_entry_is_nowhere_and_a_mark_without_content_stays() {
    let mut home = Home::with_plan(START);
    ready(&mut home);
    let (id, _) = home.tell(with_secret(140));
    let (fever, _) = home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    home.companion.save().unwrap();
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    let Screen::Erase(screen) = home.ask(Request::Erase(Erase::Entry(id))) else { panic!() };
    assert!(screen.says[0].starts_with("One entry is erased"));
    let moment = home.moment;
    home.companion = home.companion.erase(Erase::Entry(id), &keeper(), &moment).ok().unwrap();
    let entries = home.companion.entries().unwrap();
    assert!(!entries.iter().any(|entry| entry.id == id));
    let marks = |companion: &Companion| {
        let entries = companion.entries().unwrap();
        entries
            .iter()
            .filter_map(|entry| match entry.what {
                Content::ErasedMark { latest, caution_open, .. } => Some((latest, caution_open)),
                _ => None,
            })
            .collect::<Vec<_>>()
    };
    assert_eq!(marks(&home.companion).len(), 1);
    assert!(!marks(&home.companion)[0].1);

    // Erasing what holds an open caution leaves a caution open, of which nothing more is known.
    home.companion = home.companion.erase(Erase::Entry(fever), &keeper(), &moment).ok().unwrap();
    assert!(marks(&home.companion)[1].1);
    let open = home.companion.state().rule().assess(&moment.now).open_signs;
    assert_eq!(open.iter().map(|sign| sign.key.sign).collect::<Vec<_>>(), [Sign::ACaution]);
    assert_eq!(outcome(&home.companion, &moment), OutcomeKind::PauseAndCall);
    // A talk closes it.
    let key = open[0].key;
    home.tell(Told::Spoke {
        with: Line::new("Ines Abara").unwrap(),
        signs: vec![key],
        closes_pause: true,
    });
    assert_ne!(outcome(&home.companion, &home.moment), OutcomeKind::PauseAndCall);
}

#[test]
fn what_hangs_on_an_erased_entry_goes_with_it() {
    let mut home = Home::with_plan(START);
    home.pass(24);
    let (id, _) = home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    let told = Told::Signs { signs: vec![Sign::Fever, Sign::Spotting], note: None };
    home.tell(Told::Correct { of: id, told: Box::new(told) });
    let open = home.companion.state().rule().assess(&home.moment.now).open_signs;
    let signs = open.iter().map(|sign| sign.key).collect();
    home.tell(Told::Spoke { with: Line::new("Ines Abara").unwrap(), signs, closes_pause: false });
    home.tell(Told::Strike { of: id });
    let moment = home.moment;
    home.companion = home.companion.erase(Erase::Entry(id), &keeper(), &moment).ok().unwrap();
    let entries = home.companion.entries().unwrap();
    let text = serde_json::to_string(&entries).unwrap();
    assert!(!text.contains(&id.to_string()) && !text.contains("fever"), "{text}");
    assert!(text.contains("Ines Abara"), "the talk itself stays");
    assert!(home.companion.erase(Erase::Entry(id), &keeper(), &moment).is_err());
}

#[test]
fn a_span_takes_what_happened_in_it_and_leaves_plan_and_marks() {
    let mut home = Home::with_plan(START);
    ready(&mut home);
    let day = |text: &str| text.parse().unwrap();
    let span = Erase::Days { from: day("2026-03-04"), to: day("2026-03-08") };
    let moment = home.moment;
    home.companion = home.companion.erase(span, &keeper(), &moment).ok().unwrap();
    let entries = home.companion.entries().unwrap();
    for entry in &entries {
        let inside = (4..=8).contains(&chrono::Datelike::day(&entry.happened.day()));
        assert!(!inside || !entry.what.is_persons(), "{}", entry.happened.day());
    }
    assert!(entries.iter().any(|e| matches!(e.what, Content::ProgrammeAccepted { .. })));
    assert!(matches!(
        home.companion.state().rule().assess(&moment.now).outcome.kind(),
        OutcomeKind::Hold
    ));
    let none = Erase::Days { from: day("2025-01-01"), to: day("2025-01-02") };
    assert!(home.companion.erase(none, &keeper(), &moment).is_err());
}

/// Everything a stranger or an old key could open on this disk, as text.
fn readable(disk: &SimDisk, moment: &Moment) -> String {
    let mut out = String::new();
    let phrase = RecoveryKeeper::new(phrase());
    for keeper in [&keeper() as &dyn frond_core::ports::KeyKeeper, &phrase] {
        let copy = disk.after_kill();
        let ports = ports(&copy, 4);
        if let Ok(companion) = Companion::open(&ports, Path::new(FOLDER), keeper, "en", moment) {
            out.push_str(&serde_json::to_string(&companion.entries().unwrap()).unwrap());
        }
        for path in disk.paths() {
            let from = CopyFrom::Backup { path: &path, keeper };
            if let Ok(copy) = Copy::read(&ports, from) {
                let moment = Moment::at(moment.now);
                let folder = Path::new("/elsewhere");
                let restored =
                    Companion::restore(&ports, folder, &other_keeper(), copy, None, "en", &moment);
                let restored = restored.ok().unwrap();
                out.push_str(&serde_json::to_string(&restored.entries().unwrap()).unwrap());
            }
        }
    }
    out
}

fn lived_in(home: &mut Home) -> EntryId {
    let made = std::mem::replace(&mut home.companion, {
        // Never used: only to have something in its place for a moment.
        Companion::start(&ports(&SimDisk::new(), 3), Path::new(FOLDER), &keeper(), "en")
            .ok()
            .unwrap()
    })
    .new_keys(&keeper(), Recovery::By(&phrase()), &home.moment);
    home.companion = made.ok().unwrap();
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    let (id, _) = home.tell(with_secret(140));
    home.pass(24);
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.companion.save().unwrap();
    id
}

/// The power goes off at every call of an erase; afterwards the entry is there or it is nowhere.
#[test]
fn an_erase_cut_short_anywhere_leaves_all_of_it_or_nothing_that_opens() {
    let prepared = || {
        let mut home = Home::with_plan(START);
        let id = lived_in(&mut home);
        (home, id)
    };
    let (home, id) = prepared();
    let begun = home.disk.calls();
    let disk = home.disk.clone();
    assert!(readable(&disk, &home.moment).contains(SECRET));
    home.companion.erase(Erase::Entry(id), &keeper(), &home.moment).ok().unwrap();
    let ended = disk.calls();
    assert!(!readable(&disk, &home.moment).contains(SECRET));
    let mut both = [0, 0];
    for at in begun..ended {
        let (home, id) = prepared();
        let Home { disk, companion, moment } = home;
        disk.power_off_at(at);
        let acknowledged = companion.erase(Erase::Entry(id), &keeper(), &moment).is_ok();
        for survives in [false, true] {
            let found = disk.after_power_cut(&mut || survives);
            // What was begun is finished at the next opening.
            let companion = open(&found, &moment).ok().unwrap();
            let there = companion.entries().unwrap().iter().any(|entry| entry.id == id);
            drop(companion);
            assert!(!(acknowledged && there), "call {at}: the erased entry came back");
            assert_eq!(readable(&found, &moment).contains(SECRET), there, "call {at}");
            both[usize::from(there)] += 1;
        }
    }
    assert!(both[0] > 3 && both[1] > 3, "{both:?}: the power never failed on one of the sides");
}

#[test]
fn another_passphrase_cut_short_anywhere_opens_by_the_old_one_or_the_new_one() {
    let prepared = || {
        let mut home = Home::with_plan(START);
        lived_in(&mut home);
        home
    };
    let home = prepared();
    let (begun, disk) = (home.disk.calls(), home.disk.clone());
    home.companion.new_keys(&other_keeper(), Recovery::Keep, &home.moment).ok().unwrap();
    let ended = disk.calls();
    for at in begun..=ended {
        let Home { disk, companion, moment } = prepared();
        disk.power_off_at(at);
        let done = companion.new_keys(&other_keeper(), Recovery::Keep, &moment).is_ok();
        for survives in [false, true] {
            let found = disk.after_power_cut(&mut || survives);
            let by = |keeper: &dyn frond_core::ports::KeyKeeper| {
                let found = found.after_kill();
                Companion::open(&ports(&found, 9), Path::new(FOLDER), keeper, "en", &moment).is_ok()
            };
            let (old, new) = (by(&keeper()), by(&other_keeper()));
            assert!(old != new, "call {at}: old {old}, new {new}");
            assert!(new || !done, "call {at}: the old passphrase opens it again");
            assert!(by(&RecoveryKeeper::new(phrase())), "call {at}: the phrase is lost");
        }
    }
}

#[test]
fn after_everything_was_erased_nothing_old_opens_anything() {
    let marks = Arc::new(Marks::default());
    let mut home = Home::marked(START, &marks);
    home.tell(with_secret(140));
    let moment = home.moment;
    home.companion =
        home.companion.new_keys(&keeper(), Recovery::By(&phrase()), &moment).ok().unwrap();
    home.tell(with_secret(160));
    assert_eq!(marks.count(), 1);
    let old_keys = home.disk.content(&Path::new(FOLDER).join("keys")).unwrap();
    assert!(!backups(&home.disk).is_empty());
    home.companion.end(&keeper()).ok().unwrap();
    assert_eq!(marks.count(), 0);
    let disk = home.disk;
    assert!(matches!(open(&disk, &moment), Err(Trouble::NotADiary)));
    // Whatever is left, sectors of removed files included, put beside the old keys: it opens nothing.
    let remains = disk.after_power_cut(&mut || true).remains();
    for bytes in &remains {
        let tried = SimDisk::new();
        frond_core::ports::Disk::create_folder(&tried, Path::new(FOLDER)).unwrap();
        tried.tamper(&Path::new(FOLDER).join("keys"), old_keys.clone());
        tried.tamper(&Path::new(FOLDER).join("journal"), bytes.clone());
        assert!(open(&tried, &moment).is_err(), "an old journal opens with the old keys");
        let by_phrase = RecoveryKeeper::new(phrase());
        let ports = ports(&tried, 2);
        let opened = Companion::open(&ports, Path::new(FOLDER), &by_phrase, "en", &moment);
        assert!(opened.is_err(), "an old journal opens with the old phrase");
        let path = Path::new("/tried");
        tried.tamper(path, bytes.clone());
        for keeper in [&keeper() as &dyn frond_core::ports::KeyKeeper, &by_phrase] {
            let from = CopyFrom::Backup { path, keeper };
            assert!(Copy::read(&ports, from).is_err(), "an old backup opens");
        }
    }
    assert!(remains.len() > 5);
    for path in disk.paths() {
        assert!(disk.content(&path).is_none_or(|bytes| bytes.is_empty()), "{}", path.display());
    }
    // And a new diary begins in the same place.
    let started = Companion::start(&ports(&disk, 8), Path::new(FOLDER), &keeper(), "en");
    assert!(started.is_ok());
}

#[test]
fn an_older_copy_of_the_folder_is_noticed_once_and_written_down() {
    let marks = Arc::new(Marks::default());
    let mut home = Home::marked(START, &marks);
    ready(&mut home);
    let older = home.disk.after_kill();
    for _ in 0..3 {
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(1))));
    }
    let moment = home.moment;
    drop(home.companion);
    let ports = with_marks(&older, 9, marks.clone());
    let open = || Companion::open(&ports, Path::new(FOLDER), &keeper(), "en", &moment);
    let mut companion = open().ok().unwrap();
    let today = companion.ask(Request::Today, &moment).ok().unwrap().screen;
    let today = serde_json::to_value(today).unwrap()["notices"].to_string();
    assert!(today.contains("older copy") && today.contains("missing"), "{today}");
    let screen = companion.ask(Request::Keeping, &moment).ok().unwrap().screen;
    let screen = serde_json::to_value(screen).unwrap()["trouble"].to_string();
    assert!(screen.contains("put it back"), "{screen}");
    let assessment = companion.state().rule().assess(&moment.now);
    assert!(assessment.bars.contains(&Bar::EntriesMissing));
    let missing = |companion: &Companion| {
        let entries = companion.entries().unwrap();
        entries.iter().filter(|e| matches!(e.what, Content::MissingMark { .. })).count()
    };
    assert_eq!(missing(&companion), 1);
    drop(companion);
    let companion = open().ok().unwrap();
    assert_eq!(missing(&companion), 1, "it was written down twice");
}

#[test]
fn a_copy_from_before_an_erase_is_noticed() {
    let marks = Arc::new(Marks::default());
    let mut home = Home::marked(START, &marks);
    home.pass(24);
    let (id, _) = home.tell(with_secret(140));
    let older = home.disk.after_kill();
    let moment = home.moment;
    home.companion = home.companion.erase(Erase::Entry(id), &keeper(), &moment).ok().unwrap();
    drop(home.companion);
    let ports = with_marks(&older, 9, marks);
    let opened = Companion::open(&ports, Path::new(FOLDER), &keeper(), "en", &moment);
    let screen = opened.ok().unwrap().ask(Request::Keeping, &moment).ok().unwrap().screen;
    let screen = serde_json::to_value(screen).unwrap()["trouble"].to_string();
    assert!(screen.contains("erase again"), "{screen}");
}

#[test]
fn a_failing_disk_during_an_erase_or_a_restore_changes_nothing() {
    for call in [Call::Create, Call::Write, Call::Sync, Call::Rename] {
        for nth in 0..6 {
            let mut home = Home::with_plan(START);
            let id = lived_in(&mut home);
            let Home { disk, companion, moment } = home;
            disk.fail(call, nth, false);
            let erased = companion.erase(Erase::Entry(id), &keeper(), &moment);
            let done = erased.is_ok();
            drop(erased);
            let companion = open(&disk.after_kill(), &moment).ok().unwrap();
            let there = companion.entries().unwrap().iter().any(|entry| entry.id == id);
            assert!(!(done && there), "{call:?} {nth}");
        }
    }
}
