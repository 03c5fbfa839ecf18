//! The plans that were accepted, their goals, and which step was in use when.

use super::code::Code;
use super::form::{
    Activity, CarePlan, Concept, Detail, Goal, Named, Reference, Repeat, Resource, Timing, Value,
    coded,
};
use super::{Making, date_time, period};
use crate::diary::entry::Content;
use crate::moment::Stamp;
use crate::programme::plan::{MinutesSpan, Part, Programme, Schedule};
use crate::programme::read::read;
use crate::programme::values::{Practice, StepId};
use crate::progression::FoldError;
use crate::summary::looked::Looked;
use crate::summary::stretch::Stretch;

/// A plan that was accepted.
pub(super) struct Accepted {
    pub(super) id: String,
    pub(super) at: Stamp,
    plan: Programme,
}

/// The plans, in the order they were accepted: by place, as the rule engine has them, whatever the clock said.
pub(super) fn accepted(looked: &Looked<'_>) -> Result<Vec<Accepted>, FoldError> {
    let ids = super::Ids::of(looked.summary.diary);
    let mut plans: Vec<Accepted> = Vec::new();
    for row in looked.standing() {
        if let Content::ProgrammeAccepted { carried, .. } = row.content {
            let plan = read(carried.as_bytes())
                .map_err(|_| FoldError::UnreadableProgramme { place: row.place })?;
            let id = ids.entry(row.first.id, Code::Plan);
            plans.push(Accepted { id, at: row.happened, plan });
        }
    }
    Ok(plans)
}

/// Adds plans, goals and the steps in use.
pub(super) fn add(making: &mut Making<'_>) {
    goals(making);
    let last = making.plans.len().saturating_sub(1);
    for index in 0..making.plans.len() {
        if let Some((id, plan)) = care_plan(making, index, index == last) {
            making.push(id, Resource::CarePlan(Box::new(plan)));
        }
    }
    steps(making);
}

/// Every goal once: of the plans, and those she rated besides.
fn goals(making: &mut Making<'_>) {
    let mut seen: Vec<String> = Vec::new();
    let of_plans = making.plans.iter().flat_map(|one| one.plan.goals.iter());
    let rated = making.looked.standing().filter_map(|row| match row.content {
        Content::GoalRated { goal, .. } => Some(goal),
        _ => None,
    });
    for goal in of_plans.chain(rated) {
        if !seen.iter().any(|one| one == goal.as_str()) {
            seen.push(goal.as_str().to_owned());
        }
    }
    for goal in seen {
        let id = making.ids.worded(Code::Goal, &goal);
        let description = coded(Code::Goal).worded(making.texts.of(&goal));
        let subject = making.subject();
        let made = Goal { id: id.clone(), lifecycle_status: "active", description, subject };
        making.push(id, Resource::Goal(Box::new(made)));
    }
}

fn care_plan(making: &Making<'_>, index: usize, newest: bool) -> Option<(String, CarePlan)> {
    let accepted = making.plans.get(index)?;
    let plan = &accepted.plan;
    let before = index.checked_sub(1).and_then(|before| making.plans.get(before));
    let after = making.plans.get(index + 1);
    let goal =
        plan.goals.iter().map(|goal| Reference::to(&making.ids.worded(Code::Goal, goal.as_str())));
    let steps = plan.steps.iter().map(|step| Activity {
        detail: Detail {
            code: practice(&step.practice).worded(making.texts.of(step.name.as_str())),
            status: use_of(making, plan, &step.id, newest),
            scheduled_timing: timing(&step.schedule, total(&step.parts)),
            product_codeable_concept: step
                .main_size()
                .map(|_| Concept::default().worded(Some(sizes(&step.parts)))),
            description: making.texts.of(step.instruction.as_str()),
        },
    });
    let practices = plan.practices.iter().map(|one| Activity {
        detail: Detail {
            code: practice(&one.practice).worded(making.texts.of(one.name.as_str())),
            status: if newest { "in-progress" } else { "stopped" },
            scheduled_timing: timing(&one.schedule, one.minutes),
            product_codeable_concept: None,
            description: making.texts.of(one.instruction.as_str()),
        },
    });
    let author = making
        .texts
        .of(plan.clinician.name.as_str())
        .map(|name| Reference::by_name("Practitioner", name));
    let made = CarePlan {
        id: accepted.id.clone(),
        replaces: before.map(|before| Reference::to(&before.id)).into_iter().collect(),
        // The words of the standard: of two plans, the earlier is withdrawn by the later.
        status: if newest { "active" } else { "revoked" },
        intent: "plan",
        category: vec![coded(Code::Plan)],
        title: format!("Home programme, revision {}", plan.revision.get()),
        subject: making.subject(),
        period: period(&accepted.at, after.map(|after| &after.at)),
        created: date_time(&plan.issued_at),
        author,
        goal: goal.collect(),
        activity: steps.chain(practices).collect(),
    };
    Some((accepted.id.clone(), made))
}

/// How far a step was used, as far as this summary shows. Whether it was completed is for nobody's program
/// to say: a step that was left is `stopped`.
fn use_of(making: &Making<'_>, plan: &Programme, step: &StepId, newest: bool) -> &'static str {
    let looked = &making.looked;
    let used = |one: &Stretch| {
        one.step.id == *step
            && one.revision == plan.revision
            && one.programme == plan.id
            && looked.shown(one).is_some()
    };
    if newest && looked.stretches.last().is_some_and(used) {
        "in-progress"
    } else if looked.stretches.iter().any(used) {
        "stopped"
    } else if looked.summary.narrowed.leaves_out_entries() {
        "unknown"
    } else {
        "not-started"
    }
}

pub(super) fn practice(practice: &Practice) -> Concept {
    coded(match practice {
        Practice::Trainer => Code::Trainer,
        Practice::Breathing => Code::Breathing,
        Practice::BellyBreathing => Code::BellyBreathing,
        Practice::Meditation => Code::Meditation,
        Practice::Other(_) => Code::OtherPractice,
    })
}

/// All parts together.
fn total(parts: &[Part]) -> (u32, u32) {
    let least = parts.iter().map(|part| u32::from(part.minutes.least.get())).sum();
    let most = parts.iter().map(|part| u32::from(part.minutes.most.get())).sum();
    (least, most)
}

impl From<MinutesSpan> for Total {
    fn from(span: MinutesSpan) -> Self {
        Self(u32::from(span.least.get()), u32::from(span.most.get()))
    }
}

impl From<(u32, u32)> for Total {
    fn from((least, most): (u32, u32)) -> Self {
        Self(least, most)
    }
}

/// From so many to so many minutes.
struct Total(u32, u32);

fn timing(schedule: &Schedule, minutes: impl Into<Total>) -> Timing {
    let Total(duration, duration_max) = minutes.into();
    Timing {
        repeat: Repeat {
            duration,
            duration_max,
            duration_unit: "min",
            frequency: u32::from(schedule.weekly_least.get()),
            frequency_max: u32::from(schedule.weekly_most.get()),
            period: 1,
            period_unit: "wk",
        },
    }
}

/// The sizes of a step's parts, in order: numbers only, no label.
fn sizes(parts: &[Part]) -> String {
    let sizes: Vec<String> =
        parts.iter().filter_map(|part| part.size()).map(|size| size.to_string()).collect();
    sizes.join(", ")
}

/// Each stretch on a step, over the days it was used.
fn steps(making: &mut Making<'_>) {
    let looked = &making.looked;
    let mut made = Vec::new();
    for (index, stretch) in looked.stretches.iter().enumerate() {
        let Some((first, _)) = looked.shown(stretch) else { continue };
        let mut words =
            format!("{} {} {}", stretch.step.id, stretch.revision.get(), stretch.began.millis());
        // Left and taken up again in one moment, it is in use twice.
        let same = looked.stretches.iter().take(index).filter(|one| {
            (&one.step.id, one.revision) == (&stretch.step.id, stretch.revision)
                && one.began.millis() == stretch.began.millis()
        });
        match same.count() {
            0 => {}
            before => words = format!("{words} {before}"),
        }
        let id = making.ids.worded(Code::StepInUse, &words);
        let mut used = making.observation(&id, Code::StepInUse, Named::Activity);
        let mut days = period(&stretch.began, stretch.ended.as_ref());
        // What lay before the days that are shown is not told.
        if stretch.began.day() < first {
            days.start = first.to_string();
        }
        used.effective_period = Some(days);
        used.value = Some(Value::Text(stretch.step.id.to_string()));
        used.based_on = making.plan_at(&stretch.began).into_iter().collect();
        made.push((id, used));
    }
    for (id, used) in made {
        making.push(id, Resource::Observation(Box::new(used)));
    }
}
