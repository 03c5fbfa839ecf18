//! How long one person was on each kind of step, as far as her summary shows it, for counting over many
//! diaries. Decides which times can be relied on; leaves what they say together to [`crate::insight`] and
//! the words to [`crate::screens`].

use serde::{Deserialize, Serialize};

use super::form::Summary;
use super::stretch::{Stretch, stretches};
use crate::diary::resolve::resolve;
use crate::programme::plan::Step;
use crate::programme::values::{Position, Practice, Size};
use crate::progression::FoldError;

/// What makes steps of different programmes alike: practice, size of the main part, position.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kind {
    /// The practice.
    pub practice: Practice,
    /// The size of the main part, where a trainer is used.
    pub size: Option<Size>,
    /// The position.
    pub position: Position,
}

impl Kind {
    /// Of a step.
    #[must_use]
    pub fn of(step: &Step) -> Self {
        Self { practice: step.practice.clone(), size: step.main_size(), position: step.position }
    }
}

/// How a time on a step went out of sight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Left {
    /// For a step farther up the same ladder.
    ForLater,
    /// For a step farther down the same ladder.
    ForEarlier,
    /// A new revision or another programme began: how long it would have lasted is not known.
    NewPlan,
    /// Still on it where the summary ends.
    StillOn,
}

impl Left {
    /// Whether the end of the time was seen.
    #[must_use]
    pub fn seen(self) -> bool {
        matches!(self, Self::ForLater | Self::ForEarlier)
    }
}

/// A person's first time on a kind of step.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepTime {
    /// Which kind of step.
    pub kind: Kind,
    /// Calendar days from its beginning to its end, or to where it went out of sight; days off included.
    pub days: u32,
    /// How it went out of sight.
    pub left: Left,
}

/// What a summary tells about times on steps.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StepTimes {
    /// Entries are missing or were erased, so no time in it can be relied on, and none is told.
    pub unsure: bool,
    /// The first time on each kind of step.
    pub times: Vec<StepTime>,
}

impl StepTimes {
    /// Of a summary. A time that began before the days shown is left out: nobody sees when. Of each kind
    /// of step only the first time counts, since a second time of the same person is not another person's.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn of(summary: &Summary) -> Result<Self, FoldError> {
        if summary.marks.missing_entries > 0 || summary.marks.erased > 0 {
            return Ok(Self { unsure: true, times: Vec::new() });
        }
        let all = stretches(&resolve(&summary.entries), summary.begins())?;
        let narrowed = &summary.narrowed;
        let made = summary.made.day();
        let last = narrowed.to.map_or(made, |to| to.min(made));
        let mut known: Vec<Kind> = Vec::new();
        let mut times = Vec::new();
        for (index, stretch) in all.iter().enumerate() {
            let kind = Kind::of(&stretch.step);
            if known.contains(&kind) {
                continue;
            }
            known.push(kind.clone());
            let began = stretch.began.day();
            // On the first day shown only the step in use is known, not since when.
            if narrowed.from.is_some_and(|from| began <= from) || began > last {
                continue;
            }
            let ended = stretch.ended.map(|at| at.day()).filter(|day| *day <= last);
            let left = match (ended, all.get(index + 1)) {
                (Some(_), Some(next)) => went(stretch, next),
                _ => Left::StillOn,
            };
            let days = ended.unwrap_or(last).signed_duration_since(began).num_days();
            // A clock that went back is no time at all.
            if let Ok(days) = u32::try_from(days) {
                times.push(StepTime { kind, days, left });
            }
        }
        Ok(Self { unsure: false, times })
    }
}

fn went(from: &Stretch, to: &Stretch) -> Left {
    if from.programme != to.programme || from.revision != to.revision {
        Left::NewPlan
    } else if to.place > from.place {
        Left::ForLater
    } else {
        Left::ForEarlier
    }
}
