//! The invented diaries must reach every outcome, every bar and every verdict on every criterion;
//! otherwise two readings that agree on them would prove little.
#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

use std::collections::BTreeMap;

use frond_core::programme::rule::{BackCriterion, PauseCriterion, UpCriterion};
use frond_core::progression::{Bar, Criterion, OutcomeKind, Part, Verdict};
use frond_tests::lives::{Life, criteria};
use frond_tests::model::said;

fn name(criterion: &Criterion) -> &'static str {
    match criterion {
        Criterion::Pause(PauseCriterion::DiscomfortAtLeast { .. })
        | Criterion::Back(BackCriterion::DiscomfortAtLeast { .. }) => "discomfort_at_least",
        Criterion::Pause(PauseCriterion::StoppedEarly { .. })
        | Criterion::Back(BackCriterion::StoppedEarly { .. }) => "stopped_early",
        Criterion::Pause(PauseCriterion::DaysWithoutPractice { .. })
        | Criterion::Back(BackCriterion::DaysWithoutPractice { .. }) => "days_without_practice",
        Criterion::Pause(PauseCriterion::StepsBack { .. }) => "steps_back",
        Criterion::Up(UpCriterion::DaysOnStep { .. }) => "days_on_step",
        Criterion::Up(UpCriterion::Sessions { .. }) => "sessions",
        Criterion::Up(UpCriterion::DiscomfortAtMost { .. }) => "discomfort_at_most",
        Criterion::Up(UpCriterion::SignFreeDays { .. }) => "sign_free_days",
        Criterion::Up(UpCriterion::FeelsReady {}) => "feels_ready",
    }
}

#[test]
fn lives_reach_every_outcome_bar_and_verdict() {
    let mut outcomes: BTreeMap<OutcomeKind, usize> = BTreeMap::new();
    let mut bars: BTreeMap<Bar, usize> = BTreeMap::new();
    let mut sole_bars: BTreeMap<Bar, usize> = BTreeMap::new();
    let mut verdicts: BTreeMap<String, usize> = BTreeMap::new();
    for seed in 0..20_000 {
        let life = Life::of_seed(seed);
        let said = said(&life.entries, &life.now, life.tried.as_ref());
        *outcomes.entry(said.outcome.kind()).or_default() += 1;
        for bar in &said.bars {
            *bars.entry(*bar).or_default() += 1;
        }
        if let (1, Some(bar)) = (said.bars.len(), said.bars.first()) {
            let up = |part| part == Part::StepUp;
            if said.verdicts.iter().all(|j| !up(j.part) || j.verdict == Verdict::Met) {
                *sole_bars.entry(*bar).or_default() += 1;
            }
        }
        for judged in &said.verdicts {
            let key = format!("{:?} {} {:?}", judged.part, name(&judged.criterion), judged.verdict);
            *verdicts.entry(key).or_default() += 1;
        }
    }
    eprintln!("{outcomes:#?}\n{bars:#?}\nonly bar {sole_bars:#?}\n{verdicts:#?}");
    assert_eq!(outcomes.len(), 5);
    assert_eq!(bars.len(), 9);
    // A restore not confirmed is also a step not confirmed, so it never stands alone.
    assert_eq!(sole_bars.len(), 8, "each bar alone must keep a step up from being said");
    let parts = [
        (Part::StepUp, "UpCriterion"),
        (Part::StepBack, "BackCriterion"),
        (Part::Pause, "PauseCriterion"),
    ];
    let mut never = Vec::new();
    for (part, of) in parts {
        for name in criteria(of) {
            // These two look at nothing that could be missing.
            let known = ["stopped_early", "feels_ready"].contains(&name.as_str());
            let all = [Verdict::Met, Verdict::Unmet, Verdict::Unknown];
            for verdict in all.into_iter().filter(|one| !known || *one != Verdict::Unknown) {
                let key = format!("{part:?} {name} {verdict:?}");
                if verdicts.remove(&key).is_none() {
                    never.push(key);
                }
            }
        }
    }
    assert!(never.is_empty(), "no life of tests/src/lives comes to {never:?}");
    assert!(verdicts.is_empty(), "not expected: {verdicts:?}");
}
