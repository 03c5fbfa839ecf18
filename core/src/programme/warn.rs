//! What is unusual in a programme and worth a second look. A warning never keeps a programme back: the
//! clinician decides. Each carries its ground and how well that was checked; where there is none, the
//! range is this program's own reading of what is common and says so.

use std::fmt;

use super::plan::{Breath, Programme, Schedule, Step};
use super::rule::{BackCriterion, PauseCriterion, Rule, Target, UpCriterion};
use super::values::{Position, Practice, Size, StepId};
use crate::practice::breathing::Pattern;
use crate::safety::{Mark, Source};

/// Something unusual, where, and why it is called so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Warning {
    /// The line, such as `steps[2].parts[0].minutes`.
    pub place: String,
    /// What is unusual.
    pub unusual: Unusual,
    /// Why it is called so, and how well that was checked; none where it follows from the programme.
    pub ground: Option<Source>,
}

impl fmt::Display for Warning {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} ", self.place, self.unusual)?;
        match self.ground {
            None => f.write_str("(This follows from the programme itself.)"),
            Some(Source { text, mark: Mark::CommonPractice }) => {
                write!(f, "(Common practice, {text}.)")
            }
            Some(Source { text, mark }) => write!(f, "(Source: {text}; {mark}.)"),
        }
    }
}

/// What is unusual.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Unusual {
    /// A step is smaller than an earlier one in the same position.
    #[error(
        "step \"{step}\" ({size}) is smaller than step \"{before}\" ({before_size}) before it."
    )]
    SizeFalls {
        /// The smaller, later step.
        step: StepId,
        /// Its size.
        size: Size,
        /// The larger, earlier step in the same position.
        before: StepId,
        /// Its size.
        before_size: Size,
    },
    /// A step is much larger than the one before it.
    #[error(
        "from step \"{before}\" to step \"{step}\" the size grows by {by}, more than {LARGE_JUMP}."
    )]
    Jump {
        /// The larger, later step.
        step: StepId,
        /// The step before.
        before: StepId,
        /// By how much.
        by: Millimetres,
    },
    /// The first size is far from a little finger's.
    #[error(
        "the first size is {0}; a first size is often about as wide as a little finger, here taken as {FIRST_LEAST} to {FIRST_MOST}."
    )]
    FirstSize(Size),
    /// A size so small that centimetres may have been written.
    #[error("{0} is very small; were centimetres meant? The value is in tenths of a millimetre.")]
    VerySmall(Size),
    /// A size so large that the circumference may have been written.
    #[error(
        "{0} is very large; was it measured around? The value is the diameter at the widest place."
    )]
    VeryLarge(Size),
    /// Minutes outside what is common.
    #[error("{least} to {most} minutes; common is {common_least} to {common_most}.")]
    Minutes {
        /// Written: at least.
        least: u16,
        /// Written: at most.
        most: u16,
        /// Common: at least.
        common_least: u16,
        /// Common: at most.
        common_most: u16,
    },
    /// A breath that Frond does not pace.
    #[error(
        "a breath of {tenths} tenths of a second; Frond paces 3 to 12 breaths a minute (50 to 200 tenths), and offers the even breath beside this one."
    )]
    BreathNotPaced {
        /// One whole breath, in tenths of a second.
        tenths: u16,
    },
    /// Days on a step outside what is common.
    #[error("{0} days on a step; common is one to two weeks.")]
    DaysOnStep(u16),
    /// The first trainer step is not lying on the back.
    #[error("the first trainer step is not lying on the back, as is common.")]
    NotOnBackFirst,
    /// A long absence changes nothing.
    #[error(
        "the rule says nothing about a long time without practice; consider after_gap_days or days_without_practice."
    )]
    NoReturn,
    /// More days of practice are asked for than there are.
    #[error("{asked} days with a full session do not fit into {within} days; this is never met.")]
    NeverMet {
        /// Distinct days asked for.
        asked: u16,
        /// Within so many days.
        within: u16,
    },
    /// More times a week are asked for than the days of rest leave room for.
    #[error("{least} times a week do not fit with that many days of rest and times a day.")]
    ScheduleTooFull {
        /// Times a week, at least.
        least: u16,
    },
    /// A target of a step's own rule that is not earlier.
    #[error(
        "step \"{0}\" is not earlier than the step this rule belongs to; it is read as the previous step."
    )]
    TargetNotEarlier(StepId),
    /// A rule, but nothing it could say.
    #[error("there is a rule but no step; it says nothing.")]
    RuleWithoutSteps,
}

impl Unusual {
    /// A larger growth of size from step to step is worth a second look.
    pub const LARGE_JUMP: Millimetres = LARGE_JUMP;
    /// A first size of less is worth a second look.
    pub const FIRST_LEAST: Millimetres = FIRST_LEAST;
    /// A first size of more is worth a second look.
    pub const FIRST_MOST: Millimetres = FIRST_MOST;
}

/// A difference of sizes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Millimetres {
    /// Tenths of a millimetre.
    pub tenths: u16,
}

impl fmt::Display for Millimetres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.tenths / 10, self.tenths % 10) {
            (whole, 0) => write!(f, "{whole} mm"),
            (whole, tenth) => write!(f, "{whole}.{tenth} mm"),
        }
    }
}

const fn mm(millimetres: u16) -> Millimetres {
    Millimetres { tenths: millimetres * 10 }
}

// Where a range is this program's own reading of common practice, it is here and nowhere else. None
// of them ever enters a suggestion.
const LARGE_JUMP: Millimetres = mm(6);
const FIRST_LEAST: Millimetres = mm(8);
const FIRST_MOST: Millimetres = mm(16);
const VERY_SMALL: Millimetres = mm(5);
const VERY_LARGE: Millimetres = mm(45);
const TRAINER_MINUTES: (u16, u16) = (5, 15);
const MAINTAIN_MINUTES: (u16, u16) = (1, 15);
const BREATHING_MINUTES: (u16, u16) = (3, 10);
const BELLY_MINUTES: (u16, u16) = (5, 10);
const MEDITATION_MINUTES: (u16, u16) = (10, 30);
const DAYS_ON_STEP: (u16, u16) = (7, 14);

const FOLLOWS: Option<Source> = None;
const COMMON: Source = Source { text: "no source", mark: Mark::CommonPractice };
pub(super) const OWN_RANGE: Source =
    Source { text: "no source; the range is Frond's own reading", mark: Mark::CommonPractice };
const KEEPING: Source = Source {
    text: "1 to 3 minutes in Bakker 2014, Int J Gynecol Cancer 24:1499; 5 to 15 in hospital leaflets",
    mark: Mark::Read,
};
const BREATHING: Source = Source {
    text: "3 to 5 minutes in NHS trust leaflets; up to 10: common practice, no source",
    mark: Mark::ReadInPart,
};

/// Everything unusual, in the order of the programme.
pub(super) fn warnings(programme: &Programme) -> Vec<Warning> {
    let mut all = Vec::new();
    ladder(programme, &mut all);
    for (index, step) in programme.steps.iter().enumerate() {
        step_alone(step, &format!("steps[{index}]"), &mut all);
    }
    practices(programme, &mut all);
    rules(programme, &mut all);
    all
}

fn add(
    all: &mut Vec<Warning>,
    place: impl Into<String>,
    unusual: Unusual,
    ground: impl Into<Option<Source>>,
) {
    all.push(Warning { place: place.into(), unusual, ground: ground.into() });
}

fn ladder(programme: &Programme, all: &mut Vec<Warning>) {
    let trainers = || {
        let steps = programme.steps.iter().enumerate();
        steps.filter(|(_, step)| step.practice == Practice::Trainer)
    };
    if let Some((index, first)) = trainers().next() {
        if first.position != Position::OnBack {
            add(all, format!("steps[{index}].position"), Unusual::NotOnBackFirst, COMMON);
        }
        let smallest = first.parts.iter().filter_map(|part| part.size()).min();
        // Keeping what there is begins where the person is.
        if let Some(size) = smallest.filter(|_| !first.maintain)
            && !(FIRST_LEAST.tenths..=FIRST_MOST.tenths).contains(&size.get())
        {
            add(all, format!("steps[{index}].parts"), Unusual::FirstSize(size), OWN_RANGE);
        }
    }
    let mut earlier: Vec<(&Step, Size)> = Vec::new();
    for (index, step) in trainers() {
        let Some(size) = step.main_size() else { continue };
        let place = format!("steps[{index}].parts");
        let same_position = earlier.iter().rev().find(|(other, _)| other.position == step.position);
        if let Some((before, before_size)) = same_position
            && size < *before_size
        {
            let unusual = Unusual::SizeFalls {
                step: step.id.clone(),
                size,
                before: before.id.clone(),
                before_size: *before_size,
            };
            add(all, place.clone(), unusual, COMMON);
        }
        if let Some((before, before_size)) = earlier.last() {
            let by = Millimetres { tenths: size.get().saturating_sub(before_size.get()) };
            if by > LARGE_JUMP {
                let (step, before) = (step.id.clone(), before.id.clone());
                add(all, place, Unusual::Jump { step, before, by }, OWN_RANGE);
            }
        }
        earlier.push((step, size));
    }
}

fn step_alone(step: &Step, place: &str, all: &mut Vec<Warning>) {
    for (index, part) in step.parts.iter().enumerate() {
        let Some(size) = part.size() else { continue };
        let place = format!("{place}.parts[{index}].trainer.widest_diameter_tenths_mm");
        if size.get() < VERY_SMALL.tenths {
            add(all, place, Unusual::VerySmall(size), OWN_RANGE);
        } else if size.get() > VERY_LARGE.tenths {
            add(all, place, Unusual::VeryLarge(size), OWN_RANGE);
        }
    }
    schedule(step.schedule, place, all);
    if step.practice == Practice::Trainer {
        let least = step.parts.iter().map(|part| u16::from(part.minutes.least.get())).sum();
        let most = step.parts.iter().map(|part| u16::from(part.minutes.most.get())).sum();
        let (common, ground) =
            if step.maintain { (MAINTAIN_MINUTES, KEEPING) } else { (TRAINER_MINUTES, COMMON) };
        minutes((least, most), common, format!("{place}.parts"), ground, all);
    }
}

fn practices(programme: &Programme, all: &mut Vec<Warning>) {
    for (index, plan) in programme.practices.iter().enumerate() {
        schedule(plan.schedule, &format!("practices[{index}]"), all);
        if let Some(breath) = plan.breath {
            breath_paced(breath, format!("practices[{index}].breath"), all);
        }
        let (common, ground) = match plan.practice {
            Practice::Breathing => (BREATHING_MINUTES, BREATHING),
            Practice::BellyBreathing => (BELLY_MINUTES, COMMON),
            Practice::Meditation => (MEDITATION_MINUTES, OWN_RANGE),
            Practice::Trainer | Practice::Other(_) => continue,
        };
        let span = (plan.minutes.least.get().into(), plan.minutes.most.get().into());
        minutes(span, common, format!("practices[{index}].minutes"), ground, all);
    }
}

fn breath_paced(breath: Breath, place: String, all: &mut Vec<Warning>) {
    let phases =
        [breath.in_tenths, breath.hold_in_tenths, breath.out_tenths, breath.hold_out_tenths];
    let tenths = phases.into_iter().map(|phase| phase.get()).sum();
    if !(Pattern::SHORTEST_TENTHS..=Pattern::LONGEST_TENTHS).contains(&tenths) {
        add(all, place, Unusual::BreathNotPaced { tenths }, FOLLOWS);
    }
}

fn schedule(schedule: Schedule, place: &str, all: &mut Vec<Warning>) {
    let rest = schedule.rest_days.map_or(0, |days| u32::from(days.get()));
    // In the fullest week practice begins on its first day.
    let room = 7_u32.div_ceil(rest + 1) * u32::from(schedule.daily_most.get());
    let least = schedule.weekly_least.get();
    if u32::from(least) > room {
        let unusual = Unusual::ScheduleTooFull { least };
        add(all, format!("{place}.schedule"), unusual, FOLLOWS);
    }
}

fn minutes(
    (least, most): (u16, u16),
    (common_least, common_most): (u16, u16),
    place: String,
    ground: Source,
    all: &mut Vec<Warning>,
) {
    if least < common_least || most > common_most {
        add(all, place, Unusual::Minutes { least, most, common_least, common_most }, ground);
    }
}

fn rules(programme: &Programme, all: &mut Vec<Warning>) {
    if let Some(rule) = &programme.rule {
        if programme.steps.is_empty() {
            add(all, "rule", Unusual::RuleWithoutSteps, FOLLOWS);
        }
        rule_alone(rule, "rule", all);
    }
    for (index, step) in programme.steps.iter().enumerate() {
        let Some(rule) = &step.rule else { continue };
        let place = format!("steps[{index}].rule");
        rule_alone(rule, &place, all);
        for (number, back) in rule.step_back.iter().enumerate() {
            if let Target::Step(id) = &back.target
                && programme.step_index(id).is_some_and(|target| target >= index)
            {
                let place = format!("{place}.step_back[{number}].target");
                add(all, place, Unusual::TargetNotEarlier(id.clone()), FOLLOWS);
            }
        }
    }
}

fn rule_alone(rule: &Rule, place: &str, all: &mut Vec<Warning>) {
    let absence_back = rule
        .step_back
        .iter()
        .any(|back| matches!(back.when, BackCriterion::DaysWithoutPractice { .. }));
    let absence_pause =
        rule.pause.iter().any(|one| matches!(one, PauseCriterion::DaysWithoutPractice { .. }));
    if rule.after_gap_days.is_none() && !absence_back && !absence_pause {
        add(all, place, Unusual::NoReturn, COMMON);
    }
    let all_of = rule.step_up.iter().flat_map(|up| up.all_of.iter().enumerate());
    for (index, criterion) in all_of {
        let place = format!("{place}.step_up.all_of[{index}]");
        match criterion {
            UpCriterion::DaysOnStep { days } => {
                if !(DAYS_ON_STEP.0..=DAYS_ON_STEP.1).contains(&days.get()) {
                    add(all, place, Unusual::DaysOnStep(days.get()), COMMON);
                }
            }
            UpCriterion::Sessions { practised_days, within_days } => {
                let (asked, within) = (practised_days.get(), within_days.get());
                if asked > within {
                    add(all, place, Unusual::NeverMet { asked, within }, FOLLOWS);
                }
            }
            // Nothing about these alone is known to be unusual.
            UpCriterion::DiscomfortAtMost { .. }
            | UpCriterion::SignFreeDays { .. }
            | UpCriterion::FeelsReady {} => {}
        }
    }
}
