//! How long a suggestion and a replay take after ten years of three sessions a day (11,000 entries).
//! Run with `cargo bench -p frond-tests --bench rule`. Prints the median and the 99th percentile.
//! All diaries are invented.
#![allow(clippy::unwrap_used, clippy::disallowed_methods, reason = "a measurement reads the clock")]

#[path = "../tests/rule_diary/mod.rs"]
mod rule_diary;

use std::hint::black_box;
use std::time::{Duration, Instant};

use frond_core::diary::entry::{Entry, Reason};
use frond_core::progression::{Fold, replay};
use frond_core::safety::{Sign, Tier};
use rule_diary::*;
use serde_json::{Value, json};

fn plan() -> Value {
    programme(
        1,
        ladder(),
        json!({
            "step_up": {"all_of": [
                {"criterion": "days_on_step", "days": 7},
                {"criterion": "sessions", "practised_days": 5, "within_days": 10},
                {"criterion": "discomfort_at_most", "rating": "peak", "at_most": 2, "last": 3},
                {"criterion": "sign_free_days", "days": 7},
            ]},
            "step_back": [
                {"when": {"criterion": "discomfort_at_least", "rating": "peak", "at_least": 7, "window": {"sessions": 2, "of_last": 3}}, "target": "previous"},
                {"when": {"criterion": "days_without_practice", "days": 14}, "target": "previous"},
            ],
            "pause": [
                {"criterion": "discomfort_at_least", "rating": "peak", "at_least": 9, "window": {"sessions": 3, "of_last": 50}},
                {"criterion": "stopped_early", "window": {"sessions": 4, "of_last": 5}},
                {"criterion": "steps_back", "times": 3, "within_days": 30},
            ],
            "after_gap_days": 10,
        }),
    )
}

#[derive(Clone, Copy)]
enum Life {
    Varied,
    OneStep,
    FewFull,
}

/// `entries` entries, three sessions a day, in order of writing.
fn diary(entries: usize, life: Life) -> Vec<Entry> {
    let mut diary = Diary::begun(&plan());
    let mut seed = 7_u64;
    let mut random = move |below: u64| {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (seed >> 33) % below
    };
    let (mut session, mut step) = (0_i64, 0_usize);
    let (ids, sizes) = (["a", "b", "c"], [150, 180, 220]);
    while diary.0.len() < entries {
        session += 1;
        let when = at(1 + session / 3, 8 + 5 * (session % 3));
        let rated = u8::try_from(random(4)).unwrap();
        match life {
            Life::OneStep => {
                diary.sit(when, sit(150, Some(rated)));
            }
            Life::FewFull if session % 1000 != 0 => {
                let mut short = sit(150, Some(rated));
                short.seconds = 60;
                diary.sit(when, short);
            }
            Life::FewFull => {
                diary.sit(when, sit(150, Some(1)));
            }
            Life::Varied => {
                let mut one = sit(sizes[step], (random(20) > 0).then_some(rated));
                match random(100) {
                    0..5 => one = one.stopped(Reason::Discomfort),
                    5..8 => one.peak = Some(8),
                    8..10 => one = one.sign(Sign::Spotting, Tier::AskFirst),
                    10..14 => one.size = 150,
                    _ => {}
                }
                let late = random(15) == 0;
                let happened = if late { at((session / 3 - 1).max(1), 7) } else { when };
                let written = when;
                let entry = diary.write(written, happened, one.what());
                match random(40) {
                    0 => {
                        one.peak = Some(3);
                        diary.say(written, correction(entry, one.what()));
                    }
                    1 => {
                        step = usize::try_from(random(3)).unwrap();
                        diary.say(written, to_step(ids[step]));
                    }
                    2 => {
                        diary.say(written, strike(entry));
                    }
                    3..6 => {
                        diary.say(written, clearing(&[(entry, Sign::Spotting)], true));
                    }
                    6..9 => {
                        diary.say(written, ready(true));
                    }
                    _ => {}
                }
            }
        }
    }
    diary.0.truncate(entries);
    diary.0
}

fn measure(name: &str, runs: usize, mut run: impl FnMut()) -> Duration {
    let mut times: Vec<Duration> = (0..runs)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed()
        })
        .collect();
    times.sort_unstable();
    let (median, p99) = (times[runs / 2], times[runs * 99 / 100]);
    println!("{name:<52} median {median:>10.1?}  p99 {p99:>10.1?}  ({runs} runs)");
    median
}

fn main() {
    for (name, life) in
        [("varied life", Life::Varied), ("one step", Life::OneStep), ("few full", Life::FewFull)]
    {
        let entries = diary(11_000, life);
        let mut fold = Fold::new(None);
        for entry in &entries {
            fold.write(entry).unwrap();
        }
        let now = ms(entries.last().unwrap().written.millis() - START + HOUR);
        let whole = fold.assess(&now);
        fold.trim();
        let stored = postcard::to_stdvec(&fold).unwrap();
        println!("{name}: a trimmed fold takes {} bytes", stored.len());
        let fold: Fold = postcard::from_bytes(&stored).unwrap();
        assert_eq!(fold.assess(&now), whole);
        measure(&format!("{name}: load a trimmed fold"), 500, || {
            black_box(postcard::from_bytes::<Fold>(&stored).unwrap());
        });
        measure(&format!("{name}: assess at 11,000"), 5_000, || {
            black_box(fold.assess(black_box(&now)));
        });
        measure(&format!("{name}: outcome at 11,000"), 5_000, || {
            black_box(fold.outcome(black_box(&now)));
        });
        for size in [2_750, 5_500, 11_000, 22_000, 44_000] {
            let entries = diary(size, life);
            let took = measure(&format!("{name}: replay of {size}"), 30, || {
                black_box(replay(&entries, None).unwrap());
            });
            println!("    {:.0} ns an entry", took.as_secs_f64() * 1e9 / size as f64);
        }
    }
}
