//! Patterns, instants and cues: exhaustive over all admissible patterns in steps of half a second.

use super::*;
use crate::programme::plan::Breath;
use crate::programme::values::{Minutes, Tenths};
use crate::safety::{HoldCondition, Mark, Sign};
use crate::words::Words;

const ALL_CUES: CueKinds = CueKinds { tone: true, vibration: true, word: true };
const ONE_CUE: CueKinds = CueKinds { tone: true, vibration: false, word: false };

fn breath(tenths: [u16; 4]) -> Breath {
    let [a, b, c, d] = tenths.map(|one| Tenths::new(u64::from(one)).unwrap());
    Breath { in_tenths: a, hold_in_tenths: b, out_tenths: c, hold_out_tenths: d }
}

fn healthy() -> Conditions {
    Conditions::answered([])
}

fn minutes(number: u64) -> Minutes {
    Minutes::new(number).unwrap()
}

/// Every pattern whose phases are whole multiples of `step` tenths, up to beyond the longest breath.
fn every_breath(step: u16) -> impl Iterator<Item = [u16; 4]> {
    let lengths = move || (0..=210).step_by(usize::from(step));
    lengths().flat_map(move |a| {
        lengths().flat_map(move |b| {
            lengths().flat_map(move |c| {
                // Beyond the longest breath nothing new comes.
                lengths().filter(move |d| a + b + c + d <= 215).map(move |d| [a, b, c, d])
            })
        })
    })
}

#[test]
fn b1_b2_exactly_the_patterns_from_3_to_12_breaths_a_minute_are_paced() {
    let mut paced = 0;
    for tenths in every_breath(5) {
        let found = Pattern::prescribed(&breath(tenths), &healthy());
        let [breathe_in, _, out, _] = tenths;
        let whole: u16 = tenths.iter().sum();
        // Breaths a minute: 600 / whole, compared without dividing.
        let rate_fits = 3 * whole <= 600 && 12 * whole >= 600;
        assert_eq!(found.is_ok(), breathe_in > 0 && out > 0 && rate_fits, "{tenths:?}");
        paced += usize::from(found.is_ok());
    }
    assert!(paced > 50_000, "{paced} only: is the walk broken?");
    let why = |tenths| Pattern::prescribed(&breath(tenths), &healthy()).unwrap_err();
    assert_eq!(why([20, 0, 29, 0]), PatternError::TooFast);
    assert_eq!(why([100, 0, 101, 0]), PatternError::TooSlow);
    assert_eq!(why([0, 0, 100, 0]), PatternError::InOrOutMissing);
    assert_eq!(why([300, 300, 300, 300]), PatternError::TooSlow);
}

#[test]
fn b3_a_hold_stays_only_if_the_plan_sets_it_and_nothing_forbids_it() {
    let every: Vec<Vec<HoldCondition>> = (0u8..16)
        .map(|chosen| {
            let set = |bit: &usize| chosen & (1 << bit) != 0;
            (0..4).filter(set).map(|bit| HoldCondition::ALL[bit]).collect()
        })
        .collect();
    let mut looked = 0;
    for tenths in every_breath(15) {
        let set = tenths[1] > 0 || tenths[3] > 0;
        for reported in &every {
            for (asked, conditions) in
                [(true, Conditions::answered(reported.clone())), (false, Conditions::not_asked())]
            {
                let Ok((pattern, holds)) = Pattern::prescribed(&breath(tenths), &conditions) else {
                    continue;
                };
                let kept = set && asked && reported.is_empty();
                assert_eq!(pattern.holds(), kept, "{tenths:?}");
                let expected = match (set, kept) {
                    (false, _) => Holds::NoneSet,
                    (true, true) => Holds::Kept,
                    (true, false) => Holds::LeftOut,
                };
                assert_eq!(holds, expected, "{tenths:?}");
                // In and out are never changed.
                let moving = |phase| pattern.phases().find(|(one, _)| *one == phase).unwrap().1;
                assert_eq!(moving(Phase::In), u64::from(tenths[0]) * 100);
                assert_eq!(moving(Phase::Out), u64::from(tenths[2]) * 100);
                looked += 1;
            }
        }
    }
    assert!(looked > 10_000, "{looked}");
}

#[test]
fn b3_a_sign_of_pregnancy_heart_or_lungs_forbids_holds_whatever_was_answered() {
    let held = breath([40, 20, 40, 0]);
    for &sign in Sign::ALL {
        for (asked, conditions) in [(true, healthy()), (false, Conditions::not_asked())] {
            let with = conditions.with_signs([sign]);
            let (pattern, _) = Pattern::prescribed(&held, &with).unwrap();
            // Every other sign leaves a hold where the plan sets it.
            let kept = asked && HoldCondition::told_by(sign).is_none();
            assert_eq!(pattern.holds(), kept, "{sign:?}");
        }
    }
    assert!(Pattern::prescribed(&held, &healthy()).unwrap().0.holds());
    assert!(healthy().with([]).allow_holds());
    for condition in HoldCondition::ALL {
        assert!(!healthy().with([condition]).allow_holds(), "{condition:?}");
    }
}

#[test]
fn b3_what_is_too_fast_without_its_holds_is_not_paced() {
    let held = breath([20, 40, 20, 40]);
    assert!(Pattern::prescribed(&held, &healthy()).is_ok());
    let error = Pattern::prescribed(&held, &Conditions::not_asked()).unwrap_err();
    assert_eq!(error, PatternError::TooFastWithoutHolds);
}

#[test]
fn b4_the_plan_comes_first_and_the_even_breath_is_always_there() {
    let plan = include_bytes!("../../../../fixtures/programmes/3-breathing-only.json");
    let (plan, _) = crate::programme::check::load(plan).unwrap();
    let offered = offered(Some(&plan), &healthy());
    let words = Words::for_language("en");
    let names: Vec<String> = offered.presets.iter().map(|preset| preset.name(&words)).collect();
    assert_eq!(names, ["Slow breathing", "Even breathing"]);
    assert!(offered.refused.is_empty());
    assert_eq!(offered.presets[0].pattern.breath_millis(), 10_000);
    assert_eq!(offered.presets[0].holds(), Holds::Kept);
    let asked_nothing = super::offered(Some(&plan), &Conditions::not_asked());
    assert_eq!(asked_nothing.presets[0].holds(), Holds::LeftOut);
    assert_eq!(super::offered(None, &healthy()).presets.len(), 1);
}

#[test]
fn b4_a_pattern_of_the_plan_that_is_not_paced_is_named() {
    let plan = include_str!("../../../../fixtures/programmes/3-breathing-only.json");
    let plan = plan.replace("\"in_tenths\": 40", "\"in_tenths\": 4");
    let plan = plan.replace("\"out_tenths\": 50", "\"out_tenths\": 5");
    let (plan, _) = crate::programme::check::load(plan.as_bytes()).unwrap();
    let offered = offered(Some(&plan), &healthy());
    assert_eq!(offered.presets.len(), 1);
    assert_eq!(offered.refused[0].why, PatternError::TooFast);
}

/// Source: leaflets of NHS trusts, as carried by [`even_source`].
#[test]
fn b4_the_even_breath_is_five_seconds_in_and_five_out() {
    let phases: Vec<(Phase, u64)> = Pattern::EVEN.phases().collect();
    assert_eq!(phases, [(Phase::In, 5_000), (Phase::Out, 5_000)]);
    assert!(!Pattern::EVEN.holds());
    assert_eq!(even_source().mark, Mark::Read);
    assert_eq!(EVEN_MINUTES, (3, 5));
    assert_eq!(Breathing::of_minutes(Pattern::EVEN, minutes(3)).breaths(), 18);
}

#[test]
fn b6_a_practice_is_the_least_whole_number_of_breaths_that_fills_the_minutes() {
    for tenths in every_breath(5) {
        let Ok((pattern, _)) = Pattern::prescribed(&breath(tenths), &healthy()) else { continue };
        for asked in [1, 3, 8, 240] {
            let breathing = Breathing::of_minutes(pattern, minutes(asked));
            let whole = breathing.whole_millis();
            assert_eq!(whole % pattern.breath_millis(), 0);
            assert!(whole >= asked * 60_000 && whole - pattern.breath_millis() < asked * 60_000);
        }
    }
}

#[test]
fn b7_b8_every_instant_lies_in_one_phase_and_nothing_jumps() {
    // Coarser patterns and all their instants in steps of 50 ms, for one minute.
    for tenths in every_breath(15) {
        let Ok((pattern, _)) = Pattern::prescribed(&breath(tenths), &healthy()) else { continue };
        let breathing = Breathing::of_minutes(pattern, minutes(1));
        let whole = breathing.whole_millis();
        let mut spent = [0u64; 4];
        let mut before = 0u16;
        for at in (0..whole).step_by(50) {
            let now = breathing.at(at).unwrap();
            // Worked out again from the lengths alone, adding up from the beginning.
            let mut begins = (now.breath - 1) * pattern.breath_millis();
            for (phase, millis) in pattern.phases() {
                let inside = (begins..begins + millis).contains(&at);
                assert_eq!(inside, phase == now.phase, "{tenths:?} at {at}");
                if inside {
                    assert_eq!((now.into_millis, now.phase_millis), (at - begins, millis));
                }
                begins += millis;
            }
            assert_eq!(now.left_millis, whole - at);
            let slot = Phase::ALL.iter().position(|one| *one == now.phase).unwrap();
            spent[slot] += 50;
            // In 50 ms the fullness moves by its share of the shortest phase, and one for rounding.
            let shortest = pattern.phases().map(|(_, millis)| millis).min().unwrap();
            let most = u16::try_from(50 * 1000 / shortest).unwrap() + 2;
            assert!(now.fullness.abs_diff(before) <= most, "{tenths:?} at {at}");
            before = now.fullness;
        }
        assert!(before <= 100, "it ends breathed out");
        assert_eq!(breathing.at(whole), None);
        assert_eq!(breathing.at(u64::MAX), None);
        let lengths = tenths.map(|one| u64::from(one) * 100 * breathing.breaths());
        assert_eq!(spent, lengths, "{tenths:?}");
        assert_eq!(spent.iter().sum::<u64>(), whole);
    }
}

/// In 4 s, held 2 s, out 5 s, held 1 s: worked out by hand.
#[test]
fn b8_the_breath_fills_evenly_stays_full_and_empties_evenly() {
    let (held, _) = Pattern::prescribed(&breath([40, 20, 50, 10]), &healthy()).unwrap();
    let breathing = Breathing::of_minutes(held, minutes(1));
    let fullness = |at: u64| breathing.at(at).unwrap().fullness;
    for (at, expected) in [
        (0, 0),
        (1_000, 250),
        (3_000, 750),
        (3_999, 999),
        (4_000, 1_000),
        (5_999, 1_000),
        (6_000, 1_000),
        (7_000, 800),
        (10_000, 200),
        (10_999, 1),
        (11_000, 0),
        (11_999, 0),
        (12_000, 0),
        (13_000, 250),
    ] {
        assert_eq!(fullness(at), expected, "{at}");
    }
}

#[test]
fn b9_cues_agree_with_the_phases_and_stretches_with_the_whole() {
    for tenths in every_breath(15) {
        let Ok((pattern, _)) = Pattern::prescribed(&breath(tenths), &healthy()) else { continue };
        let breathing = Breathing::of_minutes(pattern, minutes(1));
        let cues = breathing.cues(ONE_CUE);
        let (over, begins) = cues.split_last().unwrap();
        assert_eq!((over.at_millis, over.tells), (breathing.whole_millis(), Tells::Over));
        let phases = pattern.phases().count() as u64;
        assert_eq!(begins.len() as u64, breathing.breaths() * phases);
        for cue in begins {
            let now = breathing.at(cue.at_millis).unwrap();
            assert_eq!((cue.tells, now.into_millis), (Tells::Begins(now.phase), 0));
        }
        assert!(cues.windows(2).all(|two| two[0].at_millis < two[1].at_millis));
        for length in [700, 5_000, 13_300] {
            let mut joined = Vec::new();
            let mut from = 0;
            while from <= breathing.whole_millis() {
                joined.extend(breathing.cues_between(ONE_CUE, from, from + length));
                from += length;
            }
            assert_eq!(joined, cues, "{tenths:?} in stretches of {length}");
        }
    }
}

#[test]
fn b9_nothing_sounds_until_it_is_chosen() {
    let breathing = Breathing::of_minutes(Pattern::EVEN, minutes(3));
    assert!(breathing.cues(CueKinds::default()).is_empty());
    assert_eq!(breathing.cues(ALL_CUES).len(), 3 * breathing.cues(ONE_CUE).len());
    let begins_late = breathing.cues_between(ALL_CUES, u64::MAX - 1, u64::MAX);
    assert!(begins_late.is_empty() && breathing.cues_between(ALL_CUES, 9, 3).is_empty());
}

#[test]
fn b10_words_and_grounds_beside_breathing() {
    let words = Words::for_language("en");
    let mut said = String::new();
    let mut note = |text: &str, source: crate::safety::Source| {
        said += &format!("{text} | {} | {}\n", source.text, source.mark);
    };
    let (held, _) = Pattern::prescribed(&breath([40, 20, 40, 0]), &healthy()).unwrap();
    for (pattern, holds) in
        [(Pattern::EVEN, Holds::NoneSet), (Pattern::EVEN, Holds::LeftOut), (held, Holds::Kept)]
    {
        let notes = notes(&words, &pattern, holds);
        assert_eq!(
            notes[0].text,
            words.text("breath-over-breathing", &[]),
            "always there, and first"
        );
        for one in notes {
            note(&one.text, one.source);
        }
        note("--", even_source());
    }
    for line in belly_position(&words) {
        note(&line, belly_position_source());
    }
    let even = super::offered(None, &healthy()).presets.remove(0);
    note(&even.how(&words).unwrap(), even_source());
    let refusals = [
        PatternError::TooFast,
        PatternError::TooSlow,
        PatternError::InOrOutMissing,
        PatternError::TooFastWithoutHolds,
    ];
    let cues = Phase::ALL.map(Tells::Begins).into_iter().chain([Tells::Over]).map(Tells::word_id);
    for id in refusals.map(PatternError::word_id).into_iter().chain(cues) {
        said += &format!("{}\n", words.text(id, &[]));
    }
    insta::assert_snapshot!(said);
}

#[test]
fn debug_text_of_conditions_tells_nothing() {
    let conditions = Conditions::answered([HoldCondition::Pregnancy]);
    assert_eq!(format!("{conditions:?}"), "Conditions(..)");
}

/// Said again of a practice that runs: the same breaths come out of its length.
#[test]
fn b6_the_breaths_of_a_length_are_those_it_was_made_from() {
    for number in [1, 5, 20] {
        let asked = Breathing::of_minutes(Pattern::EVEN, minutes(number));
        let again = Breathing::of_millis(Pattern::EVEN, asked.whole_millis());
        assert_eq!((again, again.breaths()), (asked, asked.breaths()));
    }
}
