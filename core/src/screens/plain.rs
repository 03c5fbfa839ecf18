//! How dates, sizes, steps and times are said, the same on every screen.

use chrono::NaiveDate;

use super::Scene;
use crate::moment::Stamp;
use crate::programme::plan::{Part, Schedule, Step};
use crate::programme::values::{Position, Practice, RatingKind, Size};
use crate::words::{Value, Words};

/// "Monday 3 August 2026".
pub(super) fn date(words: &Words, day: NaiveDate) -> String {
    words.date(day)
}

/// "today at 14:05", "yesterday at 14:05" or "on Monday 3 August 2026 at 14:05".
pub(super) fn when(words: &Words, then: Stamp, now: Stamp) -> String {
    let local = then.local();
    let time: Value = words.time(local.time()).into();
    match now.day().signed_duration_since(then.day()).num_days() {
        0 => words.text("common-today-at", &[("time", time)]),
        1 => words.text("common-yesterday-at", &[("time", time)]),
        _ => {
            let date = date(words, then.day()).into();
            words.text("common-date-at", &[("date", date), ("time", time)])
        }
    }
}

/// A number for a message.
pub(super) fn whole(number: impl Into<i64>) -> Value {
    Value::Whole(number.into())
}

/// "22 mm" or "22.5 mm".
pub(super) fn size(words: &Words, size: Size) -> String {
    let places = u8::from(!size.get().is_multiple_of(10));
    words.text("common-size", &[("mm", Value::decimal(size.millimetres(), places))])
}

/// "Trainer 2, 22 mm", "lying on your back" and the like for a whole step, as it is confirmed (S4).
pub(super) fn step(words: &Words, step: &Step) -> String {
    let used: Vec<String> = step
        .parts
        .iter()
        .filter_map(|part| part.trainer.as_ref())
        .map(|trainer| {
            let mm = size(words, trainer.widest_diameter_tenths_mm).into();
            words.text("common-trainer", &[("label", trainer.label.as_str().into()), ("size", mm)])
        })
        .collect();
    let position = position(words, step.position).into();
    if used.is_empty() {
        let name = step.name.as_str().into();
        words.text("common-step-plain", &[("step", name), ("position", position)])
    } else {
        let used = used.join(&words.text("common-then", &[])).into();
        words.text("common-step-used", &[("used", used), ("position", position)])
    }
}

/// "Trainer 2, 22 mm", with the plan's label; a size the plan does not have is said alone.
pub(super) fn trainer(scene: &Scene<'_>, used: Size) -> String {
    let plan = scene.state.rule().programme();
    let steps = plan.map(|plan| plan.steps.as_slice()).unwrap_or_default();
    let mut trainers = steps.iter().flat_map(|step| &step.parts).filter_map(|p| p.trainer.as_ref());
    let mm = size(scene.words, used);
    match trainers.find(|trainer| trainer.widest_diameter_tenths_mm == used) {
        Some(trainer) => {
            let values = [("label", trainer.label.as_str().into()), ("size", mm.into())];
            scene.words.text("common-trainer", &values)
        }
        None => mm,
    }
}

/// "3 to 5 times a week".
pub(super) fn schedule(words: &Words, schedule: &Schedule) -> String {
    let (least, most) = (schedule.weekly_least.get(), schedule.weekly_most.get());
    if least == most {
        words.text("today-weekly", &[("times", whole(least))])
    } else {
        words.text("today-weekly-span", &[("least", whole(least)), ("most", whole(most))])
    }
}

/// "Trainer 2, 22 mm: 5 to 10 minutes".
pub(super) fn part(words: &Words, part: &Part) -> String {
    let minutes = minutes(words, part.minutes.least.get(), part.minutes.most.get());
    match &part.trainer {
        None => minutes,
        Some(trainer) => {
            let mm = size(words, trainer.widest_diameter_tenths_mm).into();
            let label = trainer.label.as_str().into();
            let used = words.text("common-trainer", &[("label", label), ("size", mm)]);
            words.text("common-part", &[("used", used.into()), ("minutes", minutes.into())])
        }
    }
}

/// "5 to 10 minutes", or "8 minutes".
pub(super) fn minutes(words: &Words, least: u8, most: u8) -> String {
    if least == most {
        words.text("common-minutes", &[("minutes", whole(least))])
    } else {
        words.text("common-minutes-span", &[("least", whole(least)), ("most", whole(most))])
    }
}

/// "5 minutes", "40 seconds" or "5 minutes 40 seconds".
pub(super) fn duration(words: &Words, seconds: u64) -> String {
    let number = |number: u64| whole(i64::try_from(number).unwrap_or(i64::MAX));
    let (minutes, seconds) = (seconds / 60, seconds % 60);
    match (minutes, seconds) {
        (0, _) => words.text("running-seconds", &[("seconds", number(seconds))]),
        (_, 0) => words.text("common-minutes", &[("minutes", number(minutes))]),
        _ => {
            let seconds = words.text("running-seconds", &[("seconds", number(seconds))]).into();
            let minutes = words.text("common-minutes", &[("minutes", number(minutes))]).into();
            words.text("running-clock", &[("minutes", minutes), ("seconds", seconds)])
        }
    }
}

/// "lying on your back".
pub(super) fn position(words: &Words, position: Position) -> String {
    match position {
        Position::OnBack => words.text("common-on-back", &[]),
        Position::SideLying => words.text("common-side-lying", &[]),
        Position::Sitting => words.text("common-sitting", &[]),
        Position::Standing => words.text("common-standing", &[]),
        Position::Other => words.text("common-position-other", &[]),
    }
}

/// The name of a kind of practice; a programme's own name where it has one.
pub(super) fn practice(words: &Words, practice: &Practice, own_name: Option<&str>) -> String {
    match (practice, own_name) {
        (_, Some(name)) => name.to_owned(),
        (Practice::Trainer, None) => words.text("common-practice-trainer", &[]),
        (Practice::Breathing, None) => words.text("common-practice-breathing", &[]),
        (Practice::BellyBreathing, None) => words.text("common-practice-belly-breathing", &[]),
        (Practice::Meditation, None) => words.text("common-practice-meditation", &[]),
        (Practice::Other(_), None) => words.text("common-practice-other", &[]),
    }
}

/// As the plan calls a practice, where it has a name for it.
pub(super) fn practice_of_plan(scene: &Scene<'_>, kind: &Practice) -> String {
    let plan = scene.state.rule().programme();
    let own = plan.and_then(|plan| plan.practices.iter().find(|own| own.practice == *kind));
    practice(scene.words, kind, own.map(|own| own.name.as_str()))
}

/// "highest discomfort" and the like, to stand in a sentence.
pub(super) fn rating_name(words: &Words, kind: RatingKind) -> String {
    match kind {
        RatingKind::Peak => words.text("common-rating-peak", &[]),
        RatingKind::Before => words.text("common-rating-before", &[]),
        RatingKind::After => words.text("common-rating-after", &[]),
        RatingKind::Worry => words.text("common-rating-worry", &[]),
    }
}
