//! Every diary of up to four sessions, over a small family of programmes: the safety property and its
//! relatives hold without exception, and every outcome is reached on the way.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, reason = "tests may fail loudly")]

mod rule_diary;

use std::collections::BTreeSet;

use frond_core::diary::entry::{Answer, Content, Entry, Reason, SignNoted};
use frond_core::programme::values::Rating;
use frond_core::progression::{Fold, Outcome, OutcomeKind};
use frond_core::safety::{Sign, Tier};
use rule_diary::*;
use serde_json::{Value, json};

/// One way a session can be; `late` is written two days after it happened.
#[derive(Clone)]
struct Way {
    sit: Sit,
    late: bool,
    earns: bool,
}

fn ways() -> Vec<Way> {
    let way = |sit, late, earns| Way { sit, late, earns };
    vec![
        way(sit(180, Some(1)), false, true),
        way(sit(180, Some(7)), false, true),
        way(sit(180, None), false, false),
        way(sit(180, Some(0)).stopped(Reason::Discomfort), false, false),
        way(sit(150, Some(0)), false, false),
        way(sit(180, Some(0)), true, false),
    ]
}

fn family() -> Vec<Value> {
    let comfort = |last: u8| json!({"criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": last});
    let hurt = |j: u8, k: u8, x: u8| json!({"criterion": "discomfort_at_least", "rating": "peak", "at_least": x, "window": {"sessions": j, "of_last": k}});
    let stopped = |j: u8, k: u8| json!({"criterion": "stopped_early", "window": {"sessions": j, "of_last": k}});
    let mut gate = ladder();
    gate[1]["gate"] = json!(true);
    vec![
        programme(
            1,
            ladder(),
            json!({
                "step_up": {"all_of": [comfort(2), {"criterion": "sessions", "practised_days": 2, "within_days": 7}]},
                "step_back": [{"when": hurt(1, 2, 6), "target": "previous"}],
                "pause": [stopped(2, 3)],
            }),
        ),
        programme(
            1,
            gate,
            json!({
                "step_up": {"all_of": [comfort(1)]},
                "step_back": [{"when": {"criterion": "days_without_practice", "days": 6}, "target": "first"}],
                "pause": [hurt(2, 3, 7)],
                "after_gap_days": 4,
            }),
        ),
        programme(
            1,
            ladder(),
            json!({
                "step_up": {"all_of": [comfort(3)]},
                "step_back": [{"when": stopped(1, 3), "target": "previous"}],
                "pause": [{"criterion": "days_without_practice", "days": 9}, hurt(1, 1, 9)],
            }),
        ),
    ]
}

/// The fold up to where the sessions begin: on the middle step, chosen by the person.
fn ground(programme: &Value) -> (Vec<Entry>, Fold) {
    let mut diary = Diary::begun(programme);
    diary.say(at(0, 9), to_step("b"));
    let fold = diary.fold();
    (diary.0, fold)
}

fn run(ground: &Fold, entries: &[Entry]) -> Fold {
    let mut fold = ground.clone();
    for entry in entries {
        fold.write(entry).unwrap();
    }
    fold
}

/// All sequences of up to four sessions, each one or five days after the one before.
fn each_diary(mut check: impl FnMut(&[Entry], usize)) {
    let (ways, gaps) = (ways(), [1, 5]);
    let choices = ways.len() * gaps.len();
    for length in 0..=4_u32 {
        for code in 0..choices.pow(length) {
            let (mut code, mut day, mut earning) = (code, 0, 0);
            let mut entries = Vec::new();
            for _ in 0..length {
                let (way, gap) = (&ways[code % ways.len()], gaps[code / ways.len() % gaps.len()]);
                code /= choices;
                day += gap;
                let written = if way.late { at(day + 2, 10) } else { at(day, 10) };
                earning += usize::from(way.earns);
                entries.push(Entry {
                    id: id(100 + entries.len()),
                    written,
                    happened: at(day, 10),
                    uptime: None,
                    what: way.sit.what(),
                });
            }
            check(&entries, earning);
        }
    }
}

fn last_moment(entries: &[Entry]) -> i64 {
    entries.iter().map(|e| e.written.millis().max(e.happened.millis())).max().unwrap_or(START)
        - START
}

fn with_peak(what: &Content, peak: u8) -> Content {
    let Content::Session(session) = what else { panic!("a session") };
    let mut session = session.clone();
    session.ratings.peak = Some(Answer::Rated(Rating::new(u64::from(peak)).unwrap()));
    Content::Session(session)
}

fn peak(what: &Content) -> Option<u8> {
    let Content::Session(session) = what else { return None };
    match session.ratings.peak {
        Some(Answer::Rated(rating)) => Some(rating.get()),
        _ => None,
    }
}

const TIERS: [Tier; 4] = [Tier::Note, Tier::AskFirst, Tier::Stop, Tier::Emergency];

#[test]
fn safety_property_every_diary_of_up_to_four_sessions() {
    let mut reached = BTreeSet::new();
    for programme in family() {
        let (_, ground) = ground(&programme);
        each_diary(|entries, _| {
            let now = ms(last_moment(entries) + HOUR);
            let base = run(&ground, entries).outcome(&now).kind();
            reached.insert(base);
            for (at, entry) in entries.iter().enumerate() {
                let given = peak(&entry.what);
                for higher in [2, 4, 6, 8, 10] {
                    if given.is_none_or(|given| higher <= given) {
                        continue;
                    }
                    let raised = with_peak(&entry.what, higher);
                    let mut in_place = entries.to_vec();
                    in_place[at].what = raised.clone();
                    let after = run(&ground, &in_place).outcome(&now).kind();
                    assert!(after <= base, "raised in place: {} {at} {higher}", told(entries));
                    let mut corrected = entries.to_vec();
                    corrected.push(Entry {
                        id: id(500),
                        written: now,
                        happened: entry.happened,
                        uptime: None,
                        what: correction(entry.id, raised),
                    });
                    let after = run(&ground, &corrected).outcome(&now).kind();
                    assert!(
                        after <= base,
                        "raised by a correction: {} {at} {higher}",
                        told(entries)
                    );
                }
                for tier in TIERS {
                    let mut noted = entries.to_vec();
                    let Content::Session(session) = &mut noted[at].what else { panic!() };
                    session.signs.push(SignNoted { sign: Sign::Spotting, tier });
                    let after = run(&ground, &noted).outcome(&now).kind();
                    assert!(after <= base, "a sign at a session: {} {at} {tier:?}", told(entries));
                    assert!(tier == Tier::Note || after == OutcomeKind::PauseAndCall);
                    let mut reported = entries.to_vec();
                    reported.insert(
                        at + 1,
                        Entry {
                            id: id(501),
                            written: entry.written,
                            happened: entry.written,
                            uptime: None,
                            what: report(Sign::Spotting, tier),
                        },
                    );
                    let after = run(&ground, &reported).outcome(&now).kind();
                    assert!(after <= base, "a sign reported: {} {at} {tier:?}", told(entries));
                }
            }
        });
    }
    let all = [
        OutcomeKind::PauseAndCall,
        OutcomeKind::StepBack,
        OutcomeKind::Hold,
        OutcomeKind::ReadyToTalk,
        OutcomeKind::StepUp,
    ];
    assert_eq!(reached, BTreeSet::from(all), "every outcome must be reached");
}

#[test]
fn a_step_is_earned_by_full_sessions_only_and_is_one_step() {
    let mut ups = 0;
    for (programme, least) in family().iter().zip([2, 1, 3]) {
        let (_, ground) = ground(programme);
        each_diary(|entries, earning| {
            let fold = run(&ground, entries);
            for later in [HOUR, 4 * DAY, 30 * DAY] {
                let now = ms(last_moment(entries) + later);
                let assessment = fold.assess(&now);
                assert_eq!(assessment.outcome, fold.outcome(&now));
                match &assessment.outcome {
                    Outcome::StepUp { to } => {
                        ups += 1;
                        assert_eq!(to.as_str(), "c", "never more than one step");
                        assert!(earning >= least, "{}", told(entries));
                    }
                    Outcome::ReadyToTalk => assert!(earning >= least, "{}", told(entries)),
                    _ => {}
                }
            }
        });
    }
    assert!(ups > 0);
}

#[test]
fn a_clock_in_doubt_or_an_unconfirmed_step_earns_nothing() {
    for programme in family() {
        let (_, ground) = ground(&programme);
        each_diary(|entries, _| {
            let now = ms(last_moment(entries) + HOUR);
            let mark = |what: Content, n| Entry {
                id: id(n),
                written: now,
                happened: now,
                uptime: None,
                what,
            };
            for what in
                [jumped(), Content::RestoredMark { up_to: 1, replaced: None }, accept(&programme)]
            {
                // The acceptance goes on with the same step, so all facts stand but the confirmation.
                if matches!(what, Content::ProgrammeAccepted { .. }) && entries.len() > 2 {
                    continue;
                }
                let mut marked = entries.to_vec();
                marked.push(mark(what, 600));
                let fold = run(&ground, &marked);
                for later in [0, 8 * DAY] {
                    let now = ms(now.millis() - START + later);
                    assert!(fold.outcome(&now).kind() <= OutcomeKind::Hold, "{}", told(entries));
                }
            }
            // A session dated ahead: the clock is unsure until then.
            let earlier = ms(last_moment(entries) - HOUR);
            if !entries.is_empty() {
                let outcome = run(&ground, entries).outcome(&earlier).kind();
                assert!(outcome <= OutcomeKind::Hold, "{}", told(entries));
            }
        });
    }
}

/// An erased session may have been the one that held a step back; what is left has to earn the step by
/// itself, after the erased time, and only once the step is confirmed again.
#[test]
fn erasing_and_striking_never_open_a_way_up() {
    for (programme, least) in family().iter().zip([2, 1, 3]) {
        let (before, ground) = ground(programme);
        each_diary(|entries, _| {
            let now = ms(last_moment(entries) + HOUR);
            let whole = run(&ground, entries);
            let base = whole.outcome(&now).kind();
            let pause_open = whole.pause(&now).is_some();
            let said = |n: usize, what: Content| Entry {
                id: id(n),
                written: now,
                happened: now,
                uptime: None,
                what,
            };
            for at in 0..entries.len() {
                let mut erased = entries.to_vec();
                erased[at].what = Content::ErasedMark {
                    latest: entries[at].happened,
                    caution_open: false,
                    pause_open,
                };
                let kind = run(&ground, &erased).outcome(&now).kind();
                assert!(kind <= OutcomeKind::Hold, "{} {at}", told(entries));
                assert!(!pause_open || kind == OutcomeKind::PauseAndCall);
                erased.push(said(700, confirm("b")));
                let kind = run(&ground, &erased).outcome(&now).kind();
                let earned = entries[at + 1..].iter().filter(|e| earns(e)).count();
                assert!(kind <= OutcomeKind::Hold || earned >= least, "{} {at}", told(entries));
            }
            // The acceptance, the confirmation and the choice of the step, and every session.
            for entry in before.iter().chain(entries) {
                let mut struck = entries.to_vec();
                struck.push(said(701, strike(entry.id)));
                let kind = run(&ground, &struck).outcome(&now).kind();
                assert!(kind <= base.max(OutcomeKind::Hold), "{}", told(entries));
            }
        });
    }
}

/// A full session, told in time.
fn earns(entry: &Entry) -> bool {
    let Content::Session(session) = &entry.what else { return false };
    session.ended == frond_core::diary::entry::Ended::Finished
        && session.main_size().is_some_and(|size| size.get() == 180)
        && peak(&entry.what).is_some()
        && entry.written.millis() - entry.happened.millis() <= DAY
}

#[test]
fn an_accepted_step_back_is_not_followed_by_another_without_practice() {
    let mut backs = 0;
    for programme in family() {
        let (_, ground) = ground(&programme);
        each_diary(|entries, _| {
            let now = ms(last_moment(entries) + 6 * DAY);
            let mut fold = run(&ground, entries);
            if let Outcome::StepBack { to } = fold.outcome(&now) {
                backs += 1;
                let what = to_step(to.as_str());
                fold.write(&Entry { id: id(800), written: now, happened: now, uptime: None, what })
                    .unwrap();
                for days in [0, 1, 7, 100] {
                    let outcome = fold.outcome(&ms(now.millis() - START + days * DAY));
                    assert_ne!(outcome.kind(), OutcomeKind::StepBack, "{}", told(entries));
                }
            }
        });
    }
    assert!(backs > 0);
}

#[test]
fn trimmed_and_stored_say_the_same() {
    for programme in family() {
        let (_, ground) = ground(&programme);
        each_diary(|entries, _| {
            if entries.len() > 3 {
                return;
            }
            let now = ms(last_moment(entries) + HOUR);
            let whole = run(&ground, entries);
            let mut trimmed = whole.clone();
            trimmed.trim();
            assert_eq!(trimmed.assess(&now), whole.assess(&now));
        });
    }
}
