//! Invented lives of a diary against a plain model of what keeping it promises: told, corrected, erased,
//! under new keys, copied, restored, ended, set back, with power cuts, kills, full and lying disks.
//!
//! `FROND_KEEPING_SEED=n` replays one life, `FROND_KEEPING_LIVES=n` lives so many (of each sort).

use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};

use frond_core::ports::SyncFor;
use frond_tests::keeping_model::life::{Fate, Life};

const EVENTS: usize = 25;

fn number(name: &str) -> Option<u64> {
    std::env::var(name).ok().map(|text| text.parse().expect("a number"))
}

/// Lives through each seed; the fates, or the first lives that failed.
fn live(usual: u64, lies: impl Fn(u64) -> Option<SyncFor>) -> BTreeMap<Fate, u64> {
    let lives = number("FROND_KEEPING_LIVES").unwrap_or(usual);
    let seeds = match number("FROND_KEEPING_SEED") {
        Some(seed) => seed..seed + 1,
        None => 0..lives,
    };
    let mut fates = BTreeMap::new();
    let mut failed = Vec::new();
    for seed in seeds {
        let mut life = Life::new(seed, lies(seed));
        match catch_unwind(AssertUnwindSafe(|| life.live(EVENTS))) {
            Ok(fate) => *fates.entry(fate).or_insert(0) += 1,
            Err(_) => {
                eprintln!("the life of seed {seed} (FROND_KEEPING_SEED={seed}):\n{}", life.told());
                failed.push(seed);
                if failed.len() == 20 {
                    break;
                }
            }
        }
    }
    println!("{fates:?}");
    assert!(failed.is_empty(), "these lives failed: {failed:?}");
    fates
}

#[test]
fn every_life_on_an_honest_disk_is_as_the_model_says() {
    let fates = live(300, |_| None);
    assert!(fates.keys().all(|fate| *fate == Fate::Whole));
}

#[test]
fn a_lying_disk_loses_nothing_in_silence_but_what_no_mark_knows() {
    let fates = live(100, |seed| {
        let all = SyncFor::ALL;
        usize::try_from(seed).ok().and_then(|seed| all.get(seed % all.len())).copied()
    });
    if number("FROND_KEEPING_SEED").is_none() {
        assert!(fates.contains_key(&Fate::Said) || fates.contains_key(&Fate::Refused), "{fates:?}");
    }
}
