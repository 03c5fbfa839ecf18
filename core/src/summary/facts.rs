//! What a letter to another clinician may know of a summary. It decides what that is, and by being all that
//! [`crate::screens::Letter`] is made from it decides what cannot stand in one: there is no field for a session's
//! note, for a question, for the wish for time alone, for the nickname, or for whom she spoke with.

use chrono::NaiveDate;

use super::flat::noted;
use super::form::Summary;
use super::looked::{Looked, Sat};
use crate::diary::entry::{Content, Ended, SignKey};
use crate::insight::{Practised, Spread};
use crate::programme::plan::{Programme, Schedule};
use crate::programme::values::{Line, Position, RatingKind, Revision, Size};
use crate::progression::FoldError;
use crate::safety::{Sign, Tier};

/// All that a letter may know of a summary.
#[derive(Clone, Debug)]
pub struct Facts {
    /// The first day it tells of: of the plan, of what was written, or the one she chose; none of an empty diary.
    pub first: Option<NaiveDate>,
    /// The last day it shows.
    pub last: NaiveDate,
    /// Whether she left days out.
    pub narrowed: bool,
    /// Whether entries are known to be missing.
    pub missing: bool,
    /// The plan in force.
    pub plan: Option<PlanFacts>,
    /// Times on a step, in order.
    pub steps: Vec<StepFacts>,
    /// Other practices of the plan in force.
    pub practices: Vec<PracticeFacts>,
    /// Activities, 0 unable to 10 able as before.
    pub activities: Vec<Followed>,
    /// Goals, -2 to +2.
    pub goals: Vec<Followed>,
    /// Signs that were noted, in order of day.
    pub signs: Vec<SignFacts>,
    /// Whether a pause stands.
    pub paused: bool,
}

/// The plan in force.
#[derive(Clone, Debug)]
pub struct PlanFacts {
    /// Who wrote it.
    pub clinician: Line,
    /// Which revision.
    pub revision: Revision,
    /// The day it was issued.
    pub issued: NaiveDate,
    /// The day by which it is looked at again.
    pub review_by: NaiveDate,
}

/// A time on one step under one revision.
#[derive(Clone, Debug)]
pub struct StepFacts {
    /// What the plan calls the step.
    pub name: Line,
    /// Widest diameter of its main part.
    pub size: Option<Size>,
    /// Position.
    pub position: Position,
    /// The first and the last day shown, both included.
    pub days: (NaiveDate, NaiveDate),
    /// How often it was planned.
    pub schedule: Schedule,
    /// Sessions and days beside what was planned.
    pub practised: Practised,
    /// Sessions with another size or position.
    pub elsewhere: usize,
    /// Sessions stopped early.
    pub stopped: usize,
    /// Sessions that could not start.
    pub not_started: usize,
    /// The highest discomfort of the sessions on the step; none where none was rated.
    pub peak: Option<Spread>,
    /// Whether it is the one in use.
    pub in_use: bool,
}

/// Another practice.
#[derive(Clone, Debug)]
pub struct PracticeFacts {
    /// What the plan calls it.
    pub name: Line,
    /// Sessions.
    pub sessions: usize,
    /// Distinct days.
    pub days: usize,
    /// How often it is planned.
    pub schedule: Schedule,
}

/// Something rated again and again: the first and the last rating with their days.
#[derive(Clone, Debug)]
pub struct Followed {
    /// What.
    pub name: Line,
    /// The first.
    pub first: (NaiveDate, i8),
    /// The last; the same as the first where there is only one.
    pub last: (NaiveDate, i8),
    /// How many.
    pub times: usize,
}

/// A sign that was noted.
#[derive(Clone, Copy, Debug)]
pub struct SignFacts {
    /// Which.
    pub sign: Sign,
    /// As grave as it was ever taken.
    pub tier: Tier,
    /// The day it was noted.
    pub day: NaiveDate,
    /// What became of it.
    pub since: SignSince,
}

/// What became of a sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SignSince {
    /// It is open.
    Open,
    /// A talk closed it.
    Talked(NaiveDate),
    /// A revision of the plan, or nothing that this summary tells of; also a sign that is never open.
    NotOpen,
}

impl Facts {
    /// The facts of a summary.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn of(summary: &Summary) -> Result<Self, FoldError> {
        let looked = Looked::through(summary)?;
        let plan = looked.state.rule().programme();
        Ok(Self {
            first: first_day(&looked),
            last: looked.last_day(),
            narrowed: summary.narrowed.from.is_some() || summary.narrowed.to.is_some(),
            missing: summary.marks.missing_entries > 0,
            plan: plan.map(|plan| PlanFacts {
                clinician: plan.clinician.name.clone(),
                revision: plan.revision,
                issued: plan.issued_at.day(),
                review_by: plan.review_by,
            }),
            steps: steps(&looked),
            practices: plan.map(|plan| practices(&looked, plan)).unwrap_or_default(),
            activities: followed(&looked, |content| match content {
                Content::FunctionRated { activity, able } => {
                    Some((activity, i8::try_from(able.get()).unwrap_or(i8::MAX)))
                }
                _ => None,
            }),
            goals: followed(&looked, |content| match content {
                Content::GoalRated { goal, reached } => Some((goal, reached.get())),
                _ => None,
            }),
            signs: signs(&looked),
            paused: summary.present.pause.is_some(),
        })
    }
}

fn first_day(looked: &Looked<'_>) -> Option<NaiveDate> {
    let told = looked.standing().filter(|row| row.content.is_persons());
    let first = told.map(|row| row.happened.day()).min()?;
    Some(looked.summary.narrowed.from.map_or(first, |from| from.max(first)))
}

fn steps(looked: &Looked<'_>) -> Vec<StepFacts> {
    let last = looked.stretches.len().saturating_sub(1);
    let shown = looked.stretches.iter().enumerate();
    shown
        .filter_map(|(index, stretch)| {
            let (first, until) = looked.shown(stretch)?;
            let of: Vec<&Sat<'_>> =
                looked.sat.iter().filter(|sat| sat.during == Some(index) && sat.of_step).collect();
            let days: Vec<NaiveDate> =
                of.iter().map(|sat| sat.row.happened.day().clamp(first, until)).collect();
            let on: Vec<&&Sat<'_>> = of.iter().filter(|sat| sat.on_step).collect();
            let peaks: Vec<Option<u8>> = on
                .iter()
                .map(|sat| sat.session.ratings.given(RatingKind::Peak).map(|one| one.get()))
                .collect();
            let ended =
                |which: fn(Ended) -> bool| of.iter().filter(|sat| which(sat.session.ended)).count();
            let schedule = stretch.step.schedule;
            Some(StepFacts {
                name: stretch.step.name.clone(),
                size: stretch.step.main_size(),
                position: stretch.step.position,
                days: (first, until),
                schedule,
                practised: Practised::of(&days, (first, until), &looked.off, &schedule),
                elsewhere: of.len() - on.len(),
                stopped: ended(|ended| matches!(ended, Ended::Stopped(_))),
                not_started: ended(|ended| matches!(ended, Ended::CouldNotStart(_))),
                peak: Spread::of(&peaks),
                in_use: index == last,
            })
        })
        .collect()
}

fn practices(looked: &Looked<'_>, plan: &Programme) -> Vec<PracticeFacts> {
    let of = |practice| {
        let sat = looked.sat.iter().filter(move |sat| sat.session.practice == practice);
        sat.map(|sat| sat.row.happened.day()).collect::<Vec<NaiveDate>>()
    };
    plan.practices
        .iter()
        .map(|one| {
            let mut days = of(one.practice.clone());
            let sessions = days.len();
            days.sort_unstable();
            days.dedup();
            PracticeFacts {
                name: one.name.clone(),
                sessions,
                days: days.len(),
                schedule: one.schedule,
            }
        })
        .collect()
}

fn followed(looked: &Looked<'_>, rated: impl Fn(&Content) -> Option<(&Line, i8)>) -> Vec<Followed> {
    let mut rows: Vec<_> = looked.standing().collect();
    rows.sort_by_key(|row| (row.happened.millis(), row.place));
    let mut found: Vec<Followed> = Vec::new();
    for row in rows {
        let Some((name, rating)) = rated(row.content) else { continue };
        let now = (row.happened.day(), rating);
        match found.iter_mut().find(|one| one.name == *name) {
            Some(one) => {
                one.last = now;
                one.times += 1;
            }
            None => found.push(Followed { name: name.clone(), first: now, last: now, times: 1 }),
        }
    }
    found
}

fn signs(looked: &Looked<'_>) -> Vec<SignFacts> {
    let open = &looked.summary.present.open_signs;
    let talked = |key: SignKey| {
        looked.standing().find_map(|row| match row.content {
            Content::Clearing { signs, .. } if signs.contains(&key) => Some(row.happened.day()),
            _ => None,
        })
    };
    let mut found: Vec<SignFacts> = looked
        .standing()
        .flat_map(|row| noted(row).into_iter().map(move |one| (row, one)))
        .map(|(row, one)| {
            let key = SignKey { entry: row.first.id, sign: one.sign };
            let since = if open.iter().any(|there| there.key == key) {
                SignSince::Open
            } else {
                talked(key).map_or(SignSince::NotOpen, SignSince::Talked)
            };
            SignFacts { sign: one.sign, tier: one.tier, day: row.happened.day(), since }
        })
        .collect();
    // What is open is told whatever the days; safety goes before narrowing.
    let there: Vec<(Sign, NaiveDate)> = found.iter().map(|one| (one.sign, one.day)).collect();
    found.extend(
        open.iter()
            .filter(|one| !there.contains(&(one.key.sign, one.since.day())))
            .filter(|one| !looked.standing().any(|row| row.first.id == one.key.entry))
            .map(|one| SignFacts {
                sign: one.key.sign,
                tier: one.tier,
                day: one.since.day(),
                since: SignSince::Open,
            }),
    );
    found.sort_by_key(|one| one.day);
    found
}
