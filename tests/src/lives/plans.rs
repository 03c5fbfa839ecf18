//! Invented programmes with small numbers, so that every criterion is met and missed within a few
//! entries. No number here is advice.

use frond_core::diary::entry::SignKey;
use frond_core::moment::Stamp;
use frond_core::programme::plan::{
    Clinician, Contact, Emergency, IntendedFor, Manner, MinutesSpan, OutOfHours, Part, Programme,
    Schedule, Step, Trainer,
};
use frond_core::programme::rule::{
    BackCriterion, PauseCriterion, Rule, StepBack, StepUp, Target, UpCriterion, Window,
};
use frond_core::programme::values::{
    Count, Days, Hours, Last, Line, Minutes, Passage, Position, Practice, Rating, RatingAtLeast,
    RatingKind, Revision, Size, Token,
};

use super::dice::Dice;

fn days(dice: &mut Dice, most: u64) -> Days {
    Days::new(dice.between(1, most)).unwrap()
}

fn count(value: u64) -> Count {
    Count::new(value).unwrap()
}

fn token(text: &str) -> Token {
    Token::new(text).unwrap()
}

fn line(text: &str) -> Line {
    Line::new(text).unwrap()
}

fn window(dice: &mut Dice) -> Window {
    let of_last = dice.between(1, 4);
    let sessions = dice.between(1, of_last);
    Window::new(Last::new(sessions).unwrap(), Last::new(of_last).unwrap()).unwrap()
}

/// A rule. `gentle` ones rarely pause or lead back.
pub fn rule(dice: &mut Dice, gentle: bool) -> Rule {
    let mut asked = vec![RatingKind::Peak];
    if dice.percent(20) {
        asked.push(dice.pick(&[RatingKind::Before, RatingKind::After, RatingKind::Worry]));
    }
    let mut all_of: Vec<_> = asked
        .iter()
        .map(|&rating| UpCriterion::DiscomfortAtMost {
            rating,
            at_most: Rating::new(dice.pick(&[1, 2, 3, 3, 4, 10])).unwrap(),
            last: Last::new(dice.between(1, 3)).unwrap(),
        })
        .collect();
    if dice.percent(25) {
        all_of.push(UpCriterion::DaysOnStep { days: days(dice, 6) });
    }
    if dice.percent(25) {
        let practised_days = count(dice.between(1, 3));
        all_of.push(UpCriterion::Sessions { practised_days, within_days: days(dice, 9) });
    }
    if dice.percent(25) {
        all_of.push(UpCriterion::SignFreeDays { days: days(dice, 6) });
    }
    if dice.percent(25) {
        all_of.push(UpCriterion::FeelsReady {});
    }
    let backs = if gentle { dice.below(2) } else { dice.below(4) };
    let pauses = if gentle { dice.below(2) } else { dice.below(3) };
    Rule {
        step_back: (0..backs)
            .map(|_| StepBack {
                when: back(dice, &asked, gentle),
                target: match dice.below(4) {
                    0 => Target::First,
                    1 => Target::Step(token(dice.pick(&["a", "b", "c", "d", "z"]))),
                    _ => Target::Previous,
                },
            })
            .collect(),
        pause: (0..pauses).map(|_| pause(dice, &asked, gentle)).collect(),
        step_up: (!dice.percent(6)).then_some(StepUp { all_of }),
        after_gap_days: dice
            .percent(45)
            .then(|| Days::new(dice.pick(&[1, 2, 3, 5, 7, 14])).unwrap()),
    }
}

fn at_least(dice: &mut Dice, gentle: bool) -> RatingAtLeast {
    let least = if gentle { 6 } else { 1 };
    RatingAtLeast::new(dice.between(least, 10)).unwrap()
}

fn away(dice: &mut Dice, gentle: bool) -> Days {
    let least = if gentle { 8 } else { 1 };
    Days::new(dice.between(least, 14)).unwrap()
}

fn back(dice: &mut Dice, asked: &[RatingKind], gentle: bool) -> BackCriterion {
    match dice.below(3) {
        0 => BackCriterion::DiscomfortAtLeast {
            rating: dice.pick(asked),
            at_least: at_least(dice, gentle),
            window: window(dice),
        },
        1 => BackCriterion::StoppedEarly { window: window(dice) },
        _ => BackCriterion::DaysWithoutPractice { days: away(dice, gentle) },
    }
}

fn pause(dice: &mut Dice, asked: &[RatingKind], gentle: bool) -> PauseCriterion {
    match dice.below(4) {
        0 => PauseCriterion::DiscomfortAtLeast {
            rating: dice.pick(asked),
            at_least: at_least(dice, gentle),
            window: window(dice),
        },
        1 => PauseCriterion::StoppedEarly { window: window(dice) },
        2 => PauseCriterion::DaysWithoutPractice { days: away(dice, gentle) },
        _ => PauseCriterion::StepsBack {
            times: count(dice.between(1, 3)),
            within_days: days(dice, 20),
        },
    }
}

fn step(dice: &mut Dice, id: &str, practice: &Practice, gentle: bool) -> Step {
    let trainer = |dice: &mut Dice| {
        (*practice == Practice::Trainer).then(|| {
            let size = dice.pick(&[180_u64, 220, 260, 300]);
            Trainer {
                label: line(&format!("{size}")),
                widest_diameter_tenths_mm: Size::new(size).unwrap(),
            }
        })
    };
    let parts = (0..dice.between(1, 2))
        .map(|_| Part {
            trainer: trainer(dice),
            minutes: MinutesSpan {
                least: Minutes::new(dice.between(1, 5)).unwrap(),
                most: Minutes::new(10).unwrap(),
            },
        })
        .collect();
    Step {
        id: token(id),
        name: line(&format!("Step {id}")),
        practice: practice.clone(),
        parts,
        position: dice.pick(&[Position::OnBack, Position::OnBack, Position::Sitting]),
        schedule: schedule(),
        instruction: Passage::new("Invented.").unwrap(),
        gate: dice.percent(12),
        maintain: dice.percent(6),
        rule: dice.percent(15).then(|| rule(dice, gentle)),
    }
}

fn schedule() -> Schedule {
    Schedule {
        weekly_least: count(3),
        weekly_most: count(7),
        daily_most: count(2),
        rest_days: None,
    }
}

/// The first revision of a programme.
pub fn first(dice: &mut Dice, id: &str, issued_at: Stamp, gentle: bool) -> Programme {
    let practice = if dice.percent(92) { Practice::Trainer } else { Practice::Breathing };
    let ids = ["a", "b", "c", "d"];
    let steps: Vec<Step> = if dice.percent(4) {
        Vec::new()
    } else {
        let mut steps: Vec<_> = ids[..usize::try_from(dice.between(1, 4)).unwrap()]
            .iter()
            .map(|id| step(dice, id, &practice, gentle))
            .collect();
        // Mostly a ladder that rises; now and then one that does not.
        if !dice.percent(10) {
            let mut sizes: Vec<_> = steps.iter().map(|step| step.parts.last().cloned()).collect();
            sizes.sort_by_key(|part| part.as_ref().and_then(Part::size));
            for (step, part) in steps.iter_mut().zip(sizes) {
                step.parts.pop();
                step.parts.extend(part);
            }
        }
        steps
    };
    Programme {
        frond_programme: 1,
        id: token(id),
        revision: Revision::new(1).unwrap(),
        for_whom: line("Invented"),
        intended_for: IntendedFor::Adult,
        language: line("en"),
        clinician: Clinician { name: line("Invented"), clinic: line("Invented") },
        contact: Contact {
            name: line("Invented"),
            phone: line("000"),
            hours: line("9 to 5"),
            if_nobody_answers: Passage::new("Invented.").unwrap(),
        },
        out_of_hours: OutOfHours { what_to_do: Passage::new("Invented.").unwrap(), phone: None },
        emergency: Emergency { number: line("000"), country: line("Nowhere") },
        issued_at,
        review_by: issued_at.day() + chrono::Days::new(dice.pick(&[20, 90, 365, 365])),
        start_at: (!steps.is_empty()).then(|| steps[dice.index(steps.len())].id.clone()),
        steps,
        practices: Vec::new(),
        rule: (!dice.percent(4)).then(|| rule(dice, gentle)),
        screening_every_days: Days::new(28).unwrap(),
        stricter_signs: Vec::new(),
        spotting_note_only: false,
        ratings_asked: vec![RatingKind::Before, RatingKind::After, RatingKind::Worry],
        late_after_hours: Hours::new(dice.pick(&[1, 24, 48])).unwrap(),
        recipients: Vec::new(),
        signs_seen: Vec::new(),
        activities: Vec::new(),
        activities_every_days: None,
        goals: Vec::new(),
        own_cautions: Vec::new(),
        manner: Manner::default(),
    }
}

/// Another revision, which may keep, change or remove any step, and list signs as seen.
pub fn revise(
    dice: &mut Dice,
    before: &Programme,
    issued_at: Stamp,
    signs: &[SignKey],
    gentle: bool,
) -> Programme {
    let mut next = before.clone();
    let number = u64::from(before.revision.get());
    let number = match dice.below(10) {
        0 => number,
        1 => number.saturating_sub(1).max(1),
        _ => number + 1,
    };
    next.revision = Revision::new(number).unwrap();
    next.issued_at = issued_at;
    if dice.percent(50) {
        next.review_by = issued_at.day() + chrono::Days::new(dice.pick(&[5, 90, 365]));
    }
    next.signs_seen = signs.iter().filter(|_| dice.percent(60)).copied().collect();
    if dice.percent(40) {
        next.rule = Some(rule(dice, gentle));
    }
    if !next.steps.is_empty() && dice.percent(50) {
        let at = dice.index(next.steps.len());
        match dice.below(5) {
            0 => {
                next.steps.remove(at);
            }
            1 => next.steps[at].position = Position::SideLying,
            2 => next.steps[at].parts.truncate(1),
            3 => next.steps[at].gate = !next.steps[at].gate,
            _ => next.steps.swap(0, at),
        }
    }
    if next.start_at.as_ref().is_none_or(|id| next.step(id).is_none()) || dice.percent(30) {
        next.start_at =
            (!next.steps.is_empty()).then(|| next.steps[dice.index(next.steps.len())].id.clone());
    }
    next
}
