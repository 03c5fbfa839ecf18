//! Invented lives of a diary against a plain model of what keeping it promises: told, corrected, erased,
//! under new keys, copied, restored, ended, set back, another plan, with power cuts, kills, full, lying and rotting
//! disks, clocks that jump and journeys to other time zones.
//!
//! `FROND_KEEPING_SEED=n` replays one life, `FROND_KEEPING_LIVES=n` lives so many (of each sort),
//! from the seed `FROND_KEEPING_FROM=n` on.

use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use std::sync::Arc;

use frond_core::companion::{Companion, Recovery, Told};
use frond_core::diary::entry::Content;
use frond_core::moment::Moment;
use frond_core::ports::sim::SimDisk;
use frond_core::ports::{PassphraseKeeper, SyncFor};
use frond_tests::home::{FOLDER, Home, Marks, keeper, ports, session, with_marks};
use frond_tests::keeping_model::life::{Fate, Ground, Life};
use frond_tests::keeping_model::world;

const EVENTS: usize = 25;

#[allow(clippy::disallowed_methods, reason = "how many lives, or which one, is asked from outside")]
fn number(name: &str) -> Option<u64> {
    std::env::var(name).ok().map(|text| text.parse().expect("a number"))
}

/// How the lives ended, and how often what was tried came about.
type Lived = (BTreeMap<Fate, u64>, BTreeMap<&'static str, u64>);

/// Lives through each seed; says which failed, with what was done in them.
fn live(usual: u64, ground: impl Fn(u64) -> Ground) -> Lived {
    let lives = number("FROND_KEEPING_LIVES").unwrap_or(usual);
    let seeds = match number("FROND_KEEPING_SEED") {
        Some(seed) => seed..seed + 1,
        None => {
            let from = number("FROND_KEEPING_FROM").unwrap_or(0);
            from..from + lives
        }
    };
    let mut fates = BTreeMap::new();
    let mut tally = BTreeMap::new();
    let mut failed = Vec::new();
    for seed in seeds {
        let mut life = Life::new(seed, ground(seed));
        match catch_unwind(AssertUnwindSafe(|| life.live(EVENTS))) {
            Ok(fate) => {
                *fates.entry(fate).or_insert(0) += 1;
                for (what, often) in life.tally() {
                    *tally.entry(*what).or_insert(0) += often;
                }
            }
            Err(_) => {
                eprintln!("the life of seed {seed} (FROND_KEEPING_SEED={seed}):\n{}", life.told());
                failed.push(seed);
                if failed.len() == 20 {
                    break;
                }
            }
        }
    }
    println!("{fates:?} {tally:#?}");
    assert!(failed.is_empty(), "these lives failed: {failed:?}");
    (fates, tally)
}

#[test]
fn every_life_on_an_honest_disk_is_as_the_model_says() {
    let (fates, tally) = live(1200, |_| Ground::Honest);
    assert!(fates.keys().all(|fate| *fate == Fate::Whole));
    if number("FROND_KEEPING_SEED").is_some() {
        return;
    }
    for what in [
        "barred after a restore",
        "cut short: the new state",
        "cut short: the old state",
        "nothing erased opens",
        "restored, and kept aside",
        "set back, and said",
        "plans changed",
        "clock jumps",
        "zone changes",
        "device restarts",
    ] {
        assert!(tally.contains_key(what), "it never came to this: {what}");
    }
}

#[test]
fn a_lying_disk_loses_nothing_in_silence_but_what_no_mark_knows() {
    let (fates, _) = live(400, |seed| {
        let all = SyncFor::ALL;
        let place = usize::try_from(seed).unwrap_or(0) % all.len();
        Ground::Lies(all[place])
    });
    if number("FROND_KEEPING_SEED").is_none() {
        assert!(fates.contains_key(&Fate::Said) || fates.contains_key(&Fate::Refused), "{fates:?}");
    }
}

#[test]
fn a_rotting_disk_loses_nothing_in_silence() {
    let (fates, tally) = live(400, |_| Ground::Rots);
    let honest = [Fate::Whole, Fate::Said, Fate::Refused];
    assert!(fates.keys().all(|fate| honest.contains(fate)), "{fates:?}");
    if number("FROND_KEEPING_SEED").is_none() {
        assert!(fates.len() == 3, "not every end came about: {fates:?}");
        assert!(
            tally.contains_key("gone bad, and nothing lost"),
            "nothing was ever read from a second copy"
        );
    }
}

/// The power goes off at every call of the opening that finds an older copy of the folder: afterwards it is
/// written down all the same, and once.
#[test]
fn an_older_copy_is_written_down_once_wherever_the_power_fails_meanwhile() {
    let prepared = || {
        let marks = Arc::new(Marks::default());
        let mut home = Home::marked("2026-03-02T08:00:00+00:00[Europe/London]", &marks);
        let older = home.disk.after_kill();
        for _ in 0..4 {
            home.pass(24);
            home.tell(Told::Session(session(140, 8, Some(1))));
        }
        (older, marks, home.moment)
    };
    let open = |disk: &SimDisk, marks: &Arc<Marks>, moment: &Moment| {
        let ports = with_marks(disk, 9, marks.clone());
        Companion::open(&ports, Path::new(FOLDER), &keeper(), "en", moment)
    };
    let calls = {
        let (older, marks, moment) = prepared();
        let begun = older.calls();
        assert!(open(&older, &marks, &moment).is_ok());
        older.calls() - begun
    };
    let mut written = [0, 0];
    for at in 0..calls {
        for survives in [false, true] {
            let (older, marks, moment) = prepared();
            older.power_off_at(older.calls() + at);
            drop(open(&older, &marks, &moment));
            let mut found = older.after_power_cut(&mut || survives);
            let first = look(&found, &moment);
            written[usize::from(first)] += 1;
            for again in 0..2 {
                let companion = open(&found, &marks, &moment);
                let entries = companion.ok().unwrap().entries().unwrap();
                let missing: Vec<u16> = entries
                    .iter()
                    .filter_map(|entry| match entry.what {
                        Content::MissingMark { entries, .. } => Some(entries.get()),
                        _ => None,
                    })
                    .collect();
                // The mark outside is as old as the last backup: before the last session.
                assert_eq!(missing, [3], "call {at}, {survives}, opened again {again}");
                found = found.after_kill();
            }
        }
    }
    assert!(written[0] > 3 && written[1] > 0, "{written:?}: the power never failed on one side");
}

/// Whether the mark is there already, as an opening sees it that knows of no mark outside.
fn look(disk: &SimDisk, moment: &Moment) -> bool {
    let ports = ports(&disk.after_kill(), 9);
    let companion = Companion::open(&ports, Path::new(FOLDER), &keeper(), "en", moment);
    let entries = companion.ok().unwrap().entries().unwrap();
    entries.iter().any(|entry| matches!(entry.what, Content::MissingMark { .. }))
}

/// The process is killed at every call of a change of keys, the next opening finishes it, and then the power
/// goes off: no backup of the old keys has its name back.
#[test]
fn what_an_opening_finished_after_a_kill_stays_finished_after_a_power_cut() {
    let prepared = || {
        let mut home = Home::with_plan("2026-03-02T08:00:00+00:00[Europe/London]");
        home.pass(24);
        home.tell(Told::Session(session(140, 8, Some(1))));
        home
    };
    let renew = |home: Home| {
        let moment = home.moment;
        home.companion.new_keys(&world::pass(1), Recovery::Keep, &moment).map(drop).is_ok()
    };
    let home = prepared();
    let (begun, disk) = (home.disk.calls(), home.disk.clone());
    assert!(renew(home));
    let mut old = 0;
    for at in begun..disk.calls() {
        let home = prepared();
        let (disk, moment) = (home.disk.clone(), home.moment);
        disk.power_off_at(at);
        renew(home);
        let found = disk.after_kill();
        let ports = ports(&found, 9);
        let open = |keeper: &PassphraseKeeper| {
            Companion::open(&ports, Path::new(FOLDER), keeper, "en", &moment)
        };
        if open(&keeper()).is_ok() {
            old += 1;
            continue;
        }
        assert!(open(&world::pass(1)).is_ok(), "call {at}: neither opens it");
        let found = found.after_power_cut(&mut || false);
        for (path, bytes) in world::backups(&found) {
            let by_the_new = world::backup(&bytes).is_some_and(|(_, pass)| pass == 1);
            assert!(by_the_new, "call {at}: {} is there again", path.display());
        }
    }
    assert!(old > 3, "it was never killed before the switch");
}
