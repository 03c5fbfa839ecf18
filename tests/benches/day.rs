//! What a day costs: opening the diary and showing Today, logging one session through the door, and asking
//! for the suggestion, after a hundred days and after ten years. Everything told is invented.

mod by_turns;

use std::path::Path;
use std::sync::Arc;

use by_turns::{Side, by_turns};
use frond_core::companion::{Companion, Ports, Request, Told, Write};
use frond_core::moment::{Moment, Stamp};
use frond_core::ports::{NoMarks, OsRandom, RealDisk};
use frond_tests::home::{PLAN, keeper, session, stamp};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

fn ports() -> Ports {
    Ports { disk: Arc::new(RealDisk), random: Arc::new(OsRandom), marks: Arc::new(NoMarks) }
}

fn tell(companion: &mut Companion, moment: &Moment, told: Told) {
    let id = companion.new_id().unwrap();
    let write = Write { id, happened: None, told };
    companion.ask(Request::Write(write), moment).ok().unwrap();
}

/// A diary of so many entries, three sessions a day; the moment after the last.
fn lived(folder: &Path, entries: u32) -> Moment {
    let mut companion = Companion::start(&ports(), folder, &keeper(), "en").unwrap_or_else(|_| {
        panic!("the diary could not be made");
    });
    let start = stamp(START);
    let mut moment = Moment::at(start);
    // A plan long enough in force for ten years of invented days.
    let plan = PLAN.replace("2026-12-31", "2046-12-31");
    tell(&mut companion, &moment, Told::unsigned(plan.as_str()));
    tell(&mut companion, &moment, Told::ConfirmStep);
    for number in 2..entries {
        let millis = start.millis() + i64::from(number) * 8 * 60 * 60 * 1000;
        let offset = *start.local().offset();
        moment = Moment::at(Stamp::from_millis(millis, offset, start.zone()).unwrap());
        let peak = u8::try_from(number % 5).unwrap();
        tell(&mut companion, &moment, Told::Session(session(140, 8, Some(peak))));
    }
    companion.save().ok().unwrap();
    companion.tidy().ok().unwrap();
    moment
}

fn open(folder: &Path, moment: &Moment) -> Companion {
    Companion::open(&ports(), folder, &keeper(), "en", moment).ok().unwrap()
}

fn main() {
    let base = tempfile::tempdir().unwrap();
    let (small, large) = (base.path().join("small"), base.path().join("large"));
    let (early, late) = (lived(&small, 300), lived(&large, 11_000));
    let open_and_show = |folder: &Path, moment: &Moment| {
        let mut companion = open(folder, moment);
        assert!(companion.ask(Request::Today, moment).is_ok());
    };
    by_turns(
        "open and show Today, cheap key stretching",
        1_000,
        vec![
            Side::new("300 entries", || open_and_show(&small, &early)),
            Side::new("11,000 entries", || open_and_show(&large, &late)),
        ],
    );

    let mut companion_small = open(&small, &early);
    let mut companion_large = open(&large, &late);
    by_turns(
        "ask for Today",
        1_000,
        vec![
            Side::new("300 entries", || {
                assert!(companion_small.ask(Request::Today, &early).is_ok());
            }),
            Side::new("11,000 entries", || {
                assert!(companion_large.ask(Request::Today, &late).is_ok());
            }),
        ],
    );
    by_turns(
        "log one session through the door, durable",
        1_000,
        vec![
            Side::new("300 entries", || {
                tell(&mut companion_small, &early, Told::Session(session(140, 8, Some(2))));
            }),
            Side::new("11,000 entries", || {
                tell(&mut companion_large, &late, Told::Session(session(140, 8, Some(2))));
            }),
        ],
    );
}
