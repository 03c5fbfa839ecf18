//! Any programme that the types allow, for property tests: readable always, correct by chance.

use std::sync::LazyLock;

use chrono::NaiveDate;
use proptest::collection::vec;
use proptest::option::of;
use proptest::prelude::*;

use super::plan::*;
use super::rule::*;
use super::values::*;
use crate::diary::entry::{EntryId, SignKey};
use crate::moment::{NamedZone, Stamp};
use crate::safety::{Sign, StricterSign, Tier};

/// Every sign, erase mark included.
static SIGNS: LazyLock<Vec<Sign>> =
    LazyLock::new(|| Sign::asked().chain([Sign::ACaution]).collect());

macro_rules! bounded {
    ($($name:ident: $type:ident;)*) => {
        $(fn $name() -> impl Strategy<Value = $type> {
            // The ends of the range as often as what lies between.
            let (least, most) = (u64::from($type::LEAST), u64::from($type::MOST));
            prop_oneof![Just(least), Just(most), least..=most]
                .prop_map(|value| $type::new(value).unwrap())
        })*
    };
}
bounded! {
    rating: Rating;
    rating_at_least: RatingAtLeast;
    size: Size;
    days: Days;
    count: Count;
    last: Last;
    minute: Minutes;
    hours: Hours;
    tenths: Tenths;
    revision: Revision;
}

fn line() -> impl Strategy<Value = Line> {
    "[^\\p{C}\\s]([^\\p{C}]{0,30}[^\\p{C}\\s])?".prop_map(|text| Line::new(&text).unwrap())
}

fn passage() -> impl Strategy<Value = Passage> {
    "[^\\p{C}\\s]([^\\p{C}]{0,20}\n[^\\p{C}]{0,20}[^\\p{C}\\s])?"
        .prop_map(|text| Passage::new(&text).unwrap())
}

fn token() -> impl Strategy<Value = Token> {
    // Few, so that ids meet; and any.
    prop_oneof!["[abc]", "[a-z0-9][a-z0-9-]{0,39}"].prop_map(|text| Token::new(&text).unwrap())
}

fn stamp() -> impl Strategy<Value = Stamp> {
    let offsets = prop_oneof![Just(0), -64_800_i32..=64_800].prop_map(|seconds| seconds / 60 * 60);
    let zones = of(prop::sample::select(NamedZone::names().collect::<Vec<_>>()))
        .prop_map(|name| name.map(|name| name.parse().unwrap()));
    (0..253_402_214_400_000_i64, offsets, zones).prop_map(|(millis, offset, zone)| {
        Stamp::from_millis(millis, chrono::FixedOffset::east_opt(offset).unwrap(), zone).unwrap()
    })
}

fn date() -> impl Strategy<Value = NaiveDate> {
    (0..2_932_000_i32).prop_map(|day| {
        NaiveDate::from_ymd_opt(1970, 1, 1).unwrap() + chrono::Duration::days(i64::from(day))
    })
}

fn kind() -> impl Strategy<Value = RatingKind> {
    prop::sample::select(RatingKind::ALL.to_vec())
}

fn window() -> impl Strategy<Value = Window> {
    (last(), last()).prop_map(|(a, b)| Window::new(a.min(b), a.max(b)).unwrap())
}

fn up_criterion() -> impl Strategy<Value = UpCriterion> {
    prop_oneof![
        days().prop_map(|days| UpCriterion::DaysOnStep { days }),
        (count(), days()).prop_map(|(practised_days, within_days)| UpCriterion::Sessions {
            practised_days,
            within_days
        }),
        (kind(), rating(), last()).prop_map(|(rating, at_most, last)| {
            UpCriterion::DiscomfortAtMost { rating, at_most, last }
        }),
        days().prop_map(|days| UpCriterion::SignFreeDays { days }),
        Just(UpCriterion::FeelsReady {}),
    ]
}

fn back_criterion() -> impl Strategy<Value = BackCriterion> {
    prop_oneof![
        (kind(), rating_at_least(), window()).prop_map(|(rating, at_least, window)| {
            BackCriterion::DiscomfortAtLeast { rating, at_least, window }
        }),
        window().prop_map(|window| BackCriterion::StoppedEarly { window }),
        days().prop_map(|days| BackCriterion::DaysWithoutPractice { days }),
    ]
}

fn pause_criterion() -> impl Strategy<Value = PauseCriterion> {
    prop_oneof![
        (kind(), rating_at_least(), window()).prop_map(|(rating, at_least, window)| {
            PauseCriterion::DiscomfortAtLeast { rating, at_least, window }
        }),
        window().prop_map(|window| PauseCriterion::StoppedEarly { window }),
        days().prop_map(|days| PauseCriterion::DaysWithoutPractice { days }),
        (count(), days())
            .prop_map(|(times, within_days)| PauseCriterion::StepsBack { times, within_days }),
    ]
}

/// Any rule.
pub(crate) fn rule() -> impl Strategy<Value = Rule> {
    let target =
        prop_oneof![Just(Target::Previous), Just(Target::First), token().prop_map(Target::Step)];
    let back = (back_criterion(), target).prop_map(|(when, target)| StepBack { when, target });
    (
        of(vec(up_criterion(), 0..5).prop_map(|all_of| StepUp { all_of })),
        vec(back, 0..3),
        vec(pause_criterion(), 0..3),
        of(days()),
    )
        .prop_map(|(step_up, step_back, pause, after_gap_days)| Rule {
            step_up,
            step_back,
            pause,
            after_gap_days,
        })
}

fn span() -> impl Strategy<Value = MinutesSpan> {
    (minute(), minute()).prop_map(|(least, most)| MinutesSpan { least, most })
}

fn schedule() -> impl Strategy<Value = Schedule> {
    (count(), count(), count(), of(days())).prop_map(
        |(weekly_least, weekly_most, daily_most, rest_days)| Schedule {
            weekly_least,
            weekly_most,
            daily_most,
            rest_days,
        },
    )
}

fn practice() -> impl Strategy<Value = Practice> {
    prop_oneof![
        4 => Just(Practice::Trainer),
        1 => Just(Practice::Breathing),
        1 => Just(Practice::BellyBreathing),
        1 => Just(Practice::Meditation),
        1 => token().prop_map(Practice::Other),
    ]
}

fn step() -> impl Strategy<Value = Step> {
    let trainer = (line(), size()).prop_map(|(label, widest_diameter_tenths_mm)| Trainer {
        label,
        widest_diameter_tenths_mm,
    });
    let part = (of(trainer), span()).prop_map(|(trainer, minutes)| Part { trainer, minutes });
    let position = prop::sample::select(vec![
        Position::OnBack,
        Position::SideLying,
        Position::Sitting,
        Position::Standing,
        Position::Other,
    ]);
    let what = (token(), line(), practice(), vec(part, 0..4), position);
    (what, schedule(), passage(), any::<bool>(), any::<bool>(), of(rule())).prop_map(
        |((id, name, practice, parts, position), schedule, instruction, gate, maintain, rule)| {
            Step {
                id,
                name,
                practice,
                parts,
                position,
                schedule,
                instruction,
                gate,
                maintain,
                rule,
            }
        },
    )
}

fn practice_plan() -> impl Strategy<Value = PracticePlan> {
    let breath = (tenths(), tenths(), tenths(), tenths()).prop_map(
        |(in_tenths, hold_in_tenths, out_tenths, hold_out_tenths)| Breath {
            in_tenths,
            hold_in_tenths,
            out_tenths,
            hold_out_tenths,
        },
    );
    (practice(), line(), span(), schedule(), of(breath), passage()).prop_map(
        |(practice, name, minutes, schedule, breath, instruction)| PracticePlan {
            practice,
            name,
            minutes,
            schedule,
            breath,
            instruction,
        },
    )
}

/// Any programme.
pub(crate) fn programme() -> impl Strategy<Value = Programme> {
    let intended_for =
        prop::sample::select(vec![IntendedFor::Adult, IntendedFor::YoungerSafeguardingConfirmed]);
    let who = (token(), revision(), line(), intended_for, line()).boxed();
    let call = (vec(line(), 7), passage(), passage(), of(line())).boxed();
    let when = (stamp(), date(), days(), hours()).boxed();
    let ladder = (vec(step(), 0..4), of(token()), vec(practice_plan(), 0..3), of(rule())).boxed();
    let stricter = (prop::sample::select(SIGNS.clone()), prop::sample::select(Tier::ALL.to_vec()))
        .prop_map(|(sign, tier)| StricterSign { sign, tier });
    let seen = (any::<[u8; 16]>(), prop::sample::select(SIGNS.clone()))
        .prop_map(|(id, sign)| SignKey { entry: EntryId(id), sign });
    let signs = (vec(stricter, 0..3), any::<bool>(), vec(seen, 0..3)).boxed();
    let recipient = (line(), line()).prop_map(|(name, key)| Recipient { name, key });
    let asked = (vec(kind(), 0..3), vec(recipient, 0..3)).boxed();
    let own = (vec(line(), 0..3), of(days()), vec(line(), 0..3), vec(passage(), 0..3)).boxed();
    let manner = any::<(bool, bool, bool)>();
    (who, call, when, ladder, signs, asked, own, manner).prop_map(
        |(who, call, when, ladder, signs, asked, own, manner)| {
            let (lines, if_nobody_answers, what_to_do, phone) = call;
            Programme {
                frond_programme: Programme::FORMAT,
                id: who.0,
                revision: who.1,
                for_whom: who.2,
                intended_for: who.3,
                language: who.4,
                clinician: Clinician { name: lines[0].clone(), clinic: lines[1].clone() },
                contact: Contact {
                    name: lines[2].clone(),
                    phone: lines[3].clone(),
                    hours: lines[4].clone(),
                    if_nobody_answers,
                },
                out_of_hours: OutOfHours { what_to_do, phone },
                emergency: Emergency { number: lines[5].clone(), country: lines[6].clone() },
                issued_at: when.0,
                review_by: when.1,
                steps: ladder.0,
                start_at: ladder.1,
                practices: ladder.2,
                rule: ladder.3,
                screening_every_days: when.2,
                stricter_signs: signs.0,
                spotting_note_only: signs.1,
                ratings_asked: asked.0,
                late_after_hours: when.3,
                recipients: asked.1,
                signs_seen: signs.2,
                activities: own.0,
                activities_every_days: own.1,
                goals: own.2,
                own_cautions: own.3,
                manner: Manner {
                    numbers_folded: manner.0,
                    grounding_first: manner.1,
                    contact_on_stop: manner.2,
                },
            }
        },
    )
}
