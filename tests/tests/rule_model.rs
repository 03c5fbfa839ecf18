//! The rule engine held against the naive model, on invented diaries: the same outcome, the same verdict
//! on every criterion, the same bars, open signs and pause, with the programme's rule and with a tried
//! one, at the end of a diary and at every entry of it. Which outcomes, bars and verdicts the same seeds
//! reach is asserted in `rule_lives.rs`.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

use frond_core::diary::entry::Entry;
use frond_core::moment::Stamp;
use frond_core::programme::rule::Rule;
use frond_core::progression::{Assessment, Fold, Outcome, assess, replay};
use frond_tests::lives::{Life, lives};
use frond_tests::model::{Judged, Said, outcome, said};
use proptest::prelude::*;

fn engine(entries: &[Entry], now: &Stamp, tried: Option<&Rule>) -> Said {
    let mut fold = Fold::new(tried.cloned());
    for entry in entries {
        fold.write(entry).unwrap();
    }
    let assessment = fold.assess(now);
    assert_eq!(assessment.outcome, fold.outcome(now), "with and without reasons");
    if tried.is_none() {
        assert_eq!(assessment, assess(entries, now).unwrap());
    }
    as_said(assessment)
}

fn as_said(assessment: Assessment) -> Said {
    let judged = |finding: frond_core::progression::Finding| Judged {
        part: finding.part,
        criterion: finding.criterion,
        target: finding.target,
        verdict: finding.verdict,
    };
    Said {
        outcome: assessment.outcome,
        verdicts: assessment.findings.into_iter().map(judged).collect(),
        bars: assessment.bars.into_iter().collect(),
        open_signs: assessment.open_signs.into_iter().map(|sign| (sign.key, sign.tier)).collect(),
        pause: assessment.pause.is_some(),
    }
}

fn agree(life: &Life) -> bool {
    let tried = life.tried.as_ref();
    engine(&life.entries, &life.now, tried) == said(&life.entries, &life.now, tried)
}

/// What differs, in a few words, and the smallest life on which it does.
fn difference(life: &Life) -> String {
    let least = life.shrunk(|less| !agree(less));
    let tried = least.tried.as_ref();
    format!(
        "{least}\nengine {:#?}\nmodel {:#?}",
        engine(&least.entries, &least.now, tried),
        said(&least.entries, &least.now, tried)
    )
}

#[test]
fn engine_and_model_agree_on_seeded_lives() {
    for seed in 0..20_000 {
        let life = Life::of_seed(seed);
        assert!(agree(&life), "seed {seed}\n{}", difference(&life));
    }
}

#[test]
fn t6_replay_agrees_with_the_model_at_every_entry() {
    for seed in 0..1_500 {
        let life = Life::of_seed(seed);
        let tried = life.tried.as_ref();
        let said: Vec<Outcome> = (1..=life.entries.len())
            .map(|place| outcome(&life.entries[..place], &life.entries[place - 1].written, tried))
            .collect();
        let rows = replay(&life.entries, tried).unwrap();
        let replayed: Vec<Outcome> = rows.into_iter().map(|row| row.outcome).collect();
        assert_eq!(replayed, said, "seed {seed}");
    }
}

/// A fold kept as a snapshot: trimmed and stored after every entry, read again from the start only when
/// it asks for that.
#[test]
fn a_trimmed_and_stored_fold_agrees_with_a_whole_one() {
    let (mut kept, mut again) = (0_usize, 0_usize);
    for seed in 0..5_000 {
        let life = Life::of_seed(seed);
        let mut fold = Fold::new(life.tried.clone());
        for (at, entry) in life.entries.iter().enumerate() {
            if fold.write(entry).is_ok() {
                kept += 1;
            } else {
                again += 1;
                fold = Fold::new(life.tried.clone());
                for entry in &life.entries[..=at] {
                    fold.write(entry).unwrap();
                }
            }
            fold.trim();
            fold = postcard::from_bytes(&postcard::to_stdvec(&fold).unwrap()).unwrap();
            let whole = engine(&life.entries[..=at], &entry.written, life.tried.as_ref());
            assert_eq!(as_said(fold.assess(&entry.written)), whole, "seed {seed} entry {at}");
        }
        let whole = engine(&life.entries, &life.now, life.tried.as_ref());
        assert_eq!(as_said(fold.assess(&life.now)), whole, "seed {seed}");
    }
    assert!(kept > again, "the snapshot hardly ever served: {kept} against {again}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, ..ProptestConfig::default() })]
    #[test]
    fn engine_and_model_agree(life in lives()) {
        prop_assert!(agree(&life), "{}", difference(&life));
    }
}
