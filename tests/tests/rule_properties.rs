//! Random invented diaries of every kind of entry, clocks out of order included: what must hold of all.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "tests may fail loudly")]

mod rule_diary;

use frond_core::diary::entry::{Answer, Content, Entry, Reason, SignNoted};
use frond_core::moment::Stamp;
use frond_core::programme::values::{Practice, Rating};
use frond_core::progression::{Fold, FoldError, Outcome, OutcomeKind, replay};
use frond_core::safety::{Sign, Tier};
use proptest::prelude::*;
use rule_diary::*;
use serde_json::{Value, json};

fn rules() -> Vec<Value> {
    let up = |rating: &str, most: u8, last: u8| json!({"criterion": "discomfort_at_most", "rating": rating, "at_most": most, "last": last});
    let hurt = |rating: &str, x: u8, j: u8, k: u8| json!({"criterion": "discomfort_at_least", "rating": rating, "at_least": x, "window": {"sessions": j, "of_last": k}});
    vec![
        json!({
            "step_up": {"all_of": [up("peak", 4, 1)]},
            "step_back": [{"when": hurt("peak", 8, 2, 3), "target": "previous"}],
            "pause": [hurt("peak", 9, 2, 4)],
        }),
        json!({
            "step_up": {"all_of": [up("peak", 4, 2), up("after", 5, 1), {"criterion": "feels_ready"}]},
            "step_back": [{"when": {"criterion": "days_without_practice", "days": 12}, "target": {"step": "a"}}],
            "pause": [{"criterion": "steps_back", "times": 2, "within_days": 20},
                      {"criterion": "stopped_early", "window": {"sessions": 3, "of_last": 4}}],
            "after_gap_days": 6,
        }),
        json!({
            "step_up": {"all_of": [{"criterion": "days_on_step", "days": 3}, up("peak", 6, 1),
                {"criterion": "sessions", "practised_days": 1, "within_days": 9},
                {"criterion": "sign_free_days", "days": 2}]},
            "pause": [{"criterion": "days_without_practice", "days": 40}],
        }),
    ]
}

/// Else what is trimmed, stored and raised is never tried with it.
#[test]
fn every_criterion_stands_in_one_of_the_rules() {
    let written = serde_json::to_string(&rules()).unwrap();
    for of in ["UpCriterion", "BackCriterion", "PauseCriterion"] {
        for name in frond_tests::lives::criteria(of) {
            let named = format!("\"criterion\":\"{name}\"");
            assert!(written.contains(&named), "no rule of `rules()` has {name}");
        }
    }
}

#[derive(Clone, Debug)]
struct Act {
    kind: u8,
    size: u8,
    peak: u8,
    after: u8,
    of: prop::sample::Index,
    hours: i64,
    back: i64,
    flag: bool,
}

fn act() -> impl Strategy<Value = Act> {
    (
        0_u8..40,
        0_u8..4,
        0_u8..12,
        0_u8..12,
        any::<prop::sample::Index>(),
        prop_oneof![8 => 0_i64..40, 1 => 100_i64..500, 1 => -200_i64..0],
        prop_oneof![8 => Just(0_i64), 3 => 0_i64..60, 1 => -300_i64..0],
        any::<bool>(),
    )
        .prop_map(|(kind, size, peak, after, of, hours, back, flag)| Act {
            kind,
            size,
            peak,
            after,
            of,
            hours,
            back,
            flag,
        })
}

/// An invented life. `tidy` keeps clocks going forward and writes nothing ahead.
fn life(acts: &[Act], rule: usize, tidy: bool) -> Vec<Entry> {
    let plan = programme(1, ladder(), rules()[rule].clone());
    let mut diary = Diary::begun(&plan);
    let mut now = 24;
    let mut number = 1;
    for act in acts {
        now += if tidy { act.hours.abs() } else { act.hours };
        now = now.max(10);
        let back = if tidy { act.back.abs() } else { act.back };
        let (written, happened) = (ms(now * HOUR), ms((now - back).max(1) * HOUR));
        let id = act.of.get(&diary.0).id;
        let rated = |r: u8| (r <= 10).then_some(r);
        let size = [150, 180, 220, 180][usize::from(act.size)];
        let mut one = sit(size, rated(act.peak));
        one.after = rated(act.after);
        let step = ["a", "b", "c", "b"][usize::from(act.size)];
        let tier = [Tier::Note, Tier::AskFirst, Tier::Stop, Tier::Emergency][usize::from(act.size)];
        let sign = if act.flag { Sign::Spotting } else { Sign::Fever };
        let what = match act.kind {
            0..15 => one.what(),
            15 => one.stopped(Reason::Discomfort).what(),
            16 => one.stopped(Reason::Interrupted).what(),
            17 => {
                one.practice = Practice::Breathing;
                one.what()
            }
            18..21 => to_step(step),
            21..23 => confirm(step),
            23 => ready(act.flag),
            24 => report(sign, tier),
            25 => one.sign(sign, tier).what(),
            26 | 27 => clearing(&[(id, Sign::Spotting), (id, Sign::Fever)], act.flag),
            28 | 29 => correction(id, one.what()),
            30 => strike(id),
            31 => strike(diary.0.last().unwrap().id),
            32 => Content::StayHere { stay: act.flag },
            33 => Content::TimeOff { from: written.day(), to: ms((now + back) * HOUR).day() },
            34 if !tidy || act.flag => jumped(),
            35 => Content::TimeConfirmed {},
            36 => missing(),
            37 => Content::RestoredMark { up_to: 1, replaced: None },
            38 => Content::ErasedMark {
                latest: happened,
                caution_open: act.flag,
                pause_open: act.size == 0,
            },
            39 if act.flag => {
                number += 1;
                accept(&programme(number, ladder(), rules()[usize::from(act.size) % 3].clone()))
            }
            _ => correction(id, to_step(step)),
        };
        diary.write(written, happened, what);
    }
    diary.0
}

fn end(entries: &[Entry]) -> Stamp {
    let last = entries.iter().map(|e| e.written.millis()).max().unwrap_or(START);
    ms(last - START + HOUR)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 600, ..ProptestConfig::default() })]

    #[test]
    fn outcome_agrees_and_nothing_but_pause_while_a_sign_is_open(
        acts in prop::collection::vec(act(), 0..40), rule in 0_usize..3, later in 0_i64..900)
    {
        let entries = life(&acts, rule, false);
        let fold = folded(&entries);
        let now = ms(end(&entries).millis() - START + (later - 300) * HOUR.min(later.max(1) * HOUR));
        let assessment = fold.assess(&now);
        prop_assert_eq!(&assessment.outcome, &fold.outcome(&now));
        if !assessment.open_signs.is_empty() || assessment.pause.is_some() {
            prop_assert_eq!(assessment.outcome.kind(), OutcomeKind::PauseAndCall);
        }
        if let Outcome::StepUp { to } = &assessment.outcome {
            let plan = fold.programme().unwrap();
            prop_assert_eq!(plan.step_index(to), fold.step_index().map(|at| at + 1));
            prop_assert!(assessment.clock.is_none() && assessment.bars.is_empty());
        }
    }

    #[test]
    fn t6_replay_is_asking_at_that_moment(
        acts in prop::collection::vec(act(), 0..30), rule in 0_usize..3)
    {
        let entries = life(&acts, rule, false);
        let rows = replay(&entries, None).unwrap();
        for (at, row) in rows.iter().enumerate() {
            let then = folded(&entries[..=at]);
            prop_assert_eq!(&then.assess(&entries[at].written).outcome, &row.outcome);
        }
        let own: frond_core::programme::rule::Rule = serde_json::from_value(rules()[rule].clone()).unwrap();
        let other = entries.iter().skip(1).any(|e| matches!(&e.what, Content::ProgrammeAccepted { .. }));
        if !other {
            prop_assert_eq!(replay(&entries, Some(&own)).unwrap(), rows);
        }
    }

    #[test]
    fn trimmed_and_stored_folds_say_the_same(
        acts in prop::collection::vec(act(), 0..120), rule in 0_usize..3, tidy in any::<bool>(),
        later in -400_i64..900)
    {
        let entries = life(&acts, rule, tidy);
        let mut whole = Fold::new(None);
        let mut trimmed = Fold::new(None);
        for (at, entry) in entries.iter().enumerate() {
            whole.write(entry).unwrap();
            match trimmed.write(entry) {
                Ok(()) => {}
                Err(FoldError::NeedsHistory) => trimmed = folded(&entries[..=at]),
                Err(other) => panic!("{other}"),
            }
            trimmed.trim();
            if at % 3 == 0 {
                trimmed = postcard::from_bytes(&postcard::to_stdvec(&trimmed).unwrap()).unwrap();
            }
            if at % 7 == 0 || at + 1 == entries.len() {
                for now in [entry.written, end(&entries), ms((entry.written.millis() - START + later * HOUR).max(0))] {
                    prop_assert_eq!(trimmed.assess(&now), whole.assess(&now));
                }
            }
        }
        let stored: Fold = postcard::from_bytes(&postcard::to_stdvec(&whole).unwrap()).unwrap();
        prop_assert_eq!(stored.assess(&end(&entries)), whole.assess(&end(&entries)));
        // A stored fold takes corrections and strikes as the one it came from.
        let mut again = stored;
        for n in 0..entries.len().min(8) {
            let now = end(&entries);
            let entry = Entry { id: id(9000 + n), written: now, happened: now, uptime: None, what: strike(entries[n].id) };
            again.write(&entry).unwrap();
            whole.write(&entry).unwrap();
            prop_assert_eq!(again.assess(&now), whole.assess(&now));
        }
    }

    #[test]
    fn safety_property_on_random_diaries(
        acts in prop::collection::vec(act(), 1..30), rule in 0_usize..3, tidy in any::<bool>(),
        which in any::<prop::sample::Index>(), more in 1_u8..=10, tier in 0_usize..4)
    {
        let entries = life(&acts, rule, tidy);
        let now = end(&entries);
        let base = folded(&entries).outcome(&now).kind();
        let at = which.index(entries.len());
        let tier = [Tier::Note, Tier::AskFirst, Tier::Stop, Tier::Emergency][tier];
        if let Some(raised) = raised(&entries[at].what, more) {
            let mut in_place = entries.clone();
            in_place[at].what = raised.clone();
            prop_assert!(folded(&in_place).outcome(&now).kind() <= base, "in place {at}");
        }
        let mut signed = entries.clone();
        if let Some(what) = signed_content(&entries[at].what, tier) {
            signed[at].what = what;
            prop_assert!(folded(&signed).outcome(&now).kind() <= base, "sign at {at}");
        }
        let mut reported = entries.clone();
        let extra = Entry { id: id(9999), what: report(Sign::Breathless, tier), ..entries[at].clone() };
        reported.insert(at + 1, extra);
        prop_assert!(folded(&reported).outcome(&now).kind() <= base, "report at {at}");
    }
}

fn raised(what: &Content, more: u8) -> Option<Content> {
    let raise = |session: &frond_core::diary::entry::Session| {
        let mut session = session.clone();
        let Some(Answer::Rated(rating)) = session.ratings.peak else { return None };
        let higher = (rating.get() + more).min(10);
        session.ratings.peak = Some(Answer::Rated(Rating::new(u64::from(higher)).unwrap()));
        if let Some(Answer::Rated(rating)) = session.ratings.after {
            let higher = (rating.get() + more).min(10);
            session.ratings.after = Some(Answer::Rated(Rating::new(u64::from(higher)).unwrap()));
        }
        Some(Content::Session(session))
    };
    match what {
        Content::Session(session) => raise(session),
        Content::Correction { of, content } => match &**content {
            Content::Session(session) => raise(session).map(|what| correction(*of, what)),
            _ => None,
        },
        _ => None,
    }
}

fn signed_content(what: &Content, tier: Tier) -> Option<Content> {
    match what {
        Content::Session(session) => {
            let mut session = session.clone();
            session.signs.push(SignNoted { sign: Sign::Breathless, tier });
            Some(Content::Session(session))
        }
        _ => None,
    }
}
