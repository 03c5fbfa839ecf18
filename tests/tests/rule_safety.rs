//! The safety property, on invented diaries: with the programme, the moment and every other entry the
//! same, a higher rating in the place of a given one (in place or by a correction), or one more sign of
//! any tier, never raises the outcome (O5).
#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

use frond_core::diary::entry::{Answer, Content, Entry, EntryId, Ratings, SignNoted};
use frond_core::moment::Stamp;
use frond_core::programme::rule::Rule;
use frond_core::programme::values::{Rating, RatingKind};
use frond_core::progression::{Fold, Outcome};
use frond_core::safety::{Sign, Tier};
use frond_tests::lives::Life;
use frond_tests::lives::dice::Dice;
use frond_tests::model;
use frond_tests::model::reading::{Reading, Shelf, told};

type Says = fn(&[Entry], &Stamp, Option<&Rule>) -> Outcome;

fn told_mut(entry: &mut Entry) -> &mut Content {
    match &mut entry.what {
        Content::Correction { content, .. } => content,
        other => other,
    }
}

/// Raises a rating that was given; says whether there was one to raise.
fn raise(dice: &mut Dice, ratings: &mut Ratings) -> bool {
    let kind = dice.pick(&[
        RatingKind::Peak,
        RatingKind::Peak,
        RatingKind::Before,
        RatingKind::After,
        RatingKind::Worry,
    ]);
    let answer = match kind {
        RatingKind::Peak => &mut ratings.peak,
        RatingKind::Before => &mut ratings.before,
        RatingKind::After => &mut ratings.after,
        RatingKind::Worry => &mut ratings.worry,
    };
    match answer {
        Some(Answer::Rated(given)) if given.get() < 10 => {
            let higher = dice.between(u64::from(given.get()) + 1, 10);
            *answer = Some(Answer::Rated(Rating::new(higher).unwrap()));
            true
        }
        _ => false,
    }
}

fn appended(life: &Life, what: Content, happened: Stamp) -> Life {
    let id = EntryId([0xff; 16]);
    let mut worse = life.clone();
    worse.entries.push(Entry { id, written: life.now, happened, uptime: None, what });
    worse
}

/// A life made worse in one way, with what was done; `None` where there was nothing to do it to.
fn worse(life: &Life, dice: &mut Dice) -> Option<(&'static str, Life)> {
    // A sign that nothing in the diary notes or names: adding a tier to one that is there is not adding.
    let sign = SignNoted {
        sign: Sign::HeavyBleeding,
        tier: dice.pick(&[Tier::Note, Tier::AskFirst, Tier::Stop, Tier::Emergency]),
    };
    if life.entries.is_empty() {
        return None;
    }
    let at = dice.index(life.entries.len());
    let mut worse = life.clone();
    match dice.below(4) {
        0 => match told_mut(&mut worse.entries[at]) {
            Content::Session(session) => {
                raise(dice, &mut session.ratings).then_some(("raised in place", worse))
            }
            _ => None,
        },
        1 => {
            let shelf = Shelf::new();
            let reading = Reading::new(&life.entries, life.now, &shelf);
            let sessions: Vec<_> =
                reading.items.iter().filter(|item| item.session().is_some()).collect();
            let item = (!sessions.is_empty()).then(|| sessions[dice.index(sessions.len())])?;
            let mut content = item.told().clone();
            let Content::Session(session) = &mut content else { return None };
            if !raise(dice, &mut session.ratings) {
                return None;
            }
            let what = Content::Correction { of: item.id, content: Box::new(content) };
            Some(("raised by a correction", appended(life, what, item.happened())))
        }
        2 => match told_mut(&mut worse.entries[at]) {
            Content::Session(session) => {
                session.signs.push(sign);
                Some(("a sign added in place", worse))
            }
            Content::SignReported { signs, .. } | Content::ScreeningAnswered { signs, .. } => {
                signs.push(sign);
                Some(("a sign added in place", worse))
            }
            _ => None,
        },
        _ => {
            let what = Content::SignReported { signs: vec![sign], note: None };
            Some(("a sign reported", appended(life, what, life.now)))
        }
    }
}

/// Looks for a counterexample; prints the smallest one found.
fn never_raises(says: Says, seeds: std::ops::Range<u64>) {
    let mut tried = [0_usize; 2];
    for seed in seeds {
        let life = Life::of_seed(seed);
        for variant in 0..4 {
            let make = |life: &Life| worse(life, &mut Dice::new(seed ^ (variant << 56)));
            let raises = |life: &Life| {
                make(life).filter(|(_, worse)| {
                    let before = says(&life.entries, &life.now, life.tried.as_ref());
                    let after = says(&worse.entries, &worse.now, worse.tried.as_ref());
                    after.kind() > before.kind()
                })
            };
            tried[usize::from(make(&life).is_some())] += 1;
            if raises(&life).is_some() {
                let least = life.shrunk(|less| raises(less).is_some());
                let (what, worse) = raises(&least).unwrap();
                for entry in &least.entries {
                    eprintln!("{}", serde_json::to_string(entry).unwrap());
                }
                for (entry, before) in worse.entries.iter().zip(&least.entries) {
                    if entry != before {
                        eprintln!("becomes {}", serde_json::to_string(told(entry)).unwrap());
                    }
                }
                panic!("seed {seed}: {what} at {} raised the outcome", least.now);
            }
        }
    }
    assert!(tried[1] > tried[0] / 2, "too few lives made worse: {tried:?}");
}

#[test]
fn safety_property_holds_in_the_model() {
    never_raises(model::outcome, 0..20_000);
}

fn engine(entries: &[Entry], now: &Stamp, tried: Option<&Rule>) -> Outcome {
    let mut fold = Fold::new(tried.cloned());
    for entry in entries {
        fold.write(entry).unwrap();
    }
    fold.outcome(now)
}

#[test]
fn safety_property_holds_in_the_engine() {
    never_raises(engine, 0..20_000);
}

/// The check can fail: a reading that takes "worst imaginable" for no discomfort raises outcomes.
#[test]
#[should_panic(expected = "raised the outcome")]
fn a_reading_blind_to_the_worst_rating_is_found_out() {
    never_raises(
        |entries, now, tried| {
            let mut blind = entries.to_vec();
            for entry in &mut blind {
                if let Content::Session(session) = told_mut(entry)
                    && let Some(Answer::Rated(peak)) = &mut session.ratings.peak
                    && peak.get() == 10
                {
                    *peak = Rating::new(0).unwrap();
                }
            }
            model::outcome(&blind, now, tried)
        },
        0..20_000,
    );
}
