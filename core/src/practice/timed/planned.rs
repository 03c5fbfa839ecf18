//! What is to be practised, as the timer needs it. Decides which plans cannot be timed; every minute is the plan's.

use serde::{Deserialize, Serialize};

use crate::practice::breathing::Breathing;
use crate::programme::plan::{MinutesSpan, PracticePlan, Step};
use crate::programme::values::{Minutes, Position, Practice, Size};

/// Longest part: the most minutes a plan can ask, and one breath of the slowest pattern.
const LONGEST_MILLIS: u64 = Minutes::MOST as u64 * 60_000 + 20_000;

/// The most parts of a practice.
pub(super) const MOST_PARTS: usize = 6;

/// One part with its time.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlannedPart {
    /// Widest diameter of its trainer in tenths of a millimetre; absent where none is used.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) widest_diameter_tenths_mm: Option<Size>,
    pub(super) least_millis: u64,
    pub(super) most_millis: u64,
}

impl PlannedPart {
    /// A part of so many minutes.
    #[must_use]
    pub fn new(size: Option<Size>, minutes: MinutesSpan) -> Self {
        let millis = |minutes: Minutes| u64::from(minutes.get()) * 60_000;
        Self {
            widest_diameter_tenths_mm: size,
            least_millis: millis(minutes.least),
            most_millis: millis(minutes.most),
        }
    }

    /// Its size, where a trainer is used.
    #[must_use]
    pub fn size(&self) -> Option<Size> {
        self.widest_diameter_tenths_mm
    }

    /// Milliseconds it takes at least.
    #[must_use]
    pub fn least_millis(&self) -> u64 {
        self.least_millis
    }

    /// Milliseconds after which it is over.
    #[must_use]
    pub fn most_millis(&self) -> u64 {
        self.most_millis
    }

    fn fits(&self) -> bool {
        self.least_millis <= self.most_millis && (1..=LONGEST_MILLIS).contains(&self.most_millis)
    }
}

/// A practice to time: what, how, and 1 to 6 parts in order, the last the main one.
#[derive(Clone, PartialEq, Eq)]
pub struct Planned {
    pub(super) practice: Practice,
    pub(super) position: Position,
    pub(super) parts: Vec<PlannedPart>,
}

/// Why something cannot be timed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PlanError {
    /// Not 1 to 6 parts.
    #[error("a practice has 1 to 6 parts")]
    Parts,
    /// A part without time, with more than the most, or with its least above its most.
    #[error("each part takes some time, up to four hours, and its least is not above its most")]
    Time,
    /// A trainer without a size, or a size without a trainer.
    #[error("a part has a size where a trainer is used, and only there")]
    Size,
}

impl Planned {
    /// Checks what is to be timed.
    ///
    /// # Errors
    /// [`PlanError`] says which bound is broken.
    pub fn new(
        practice: Practice,
        position: Position,
        parts: Vec<PlannedPart>,
    ) -> Result<Self, PlanError> {
        if parts.is_empty() || parts.len() > MOST_PARTS {
            return Err(PlanError::Parts);
        }
        if !parts.iter().all(PlannedPart::fits) {
            return Err(PlanError::Time);
        }
        let trainer = practice == Practice::Trainer;
        if parts.iter().any(|part| part.widest_diameter_tenths_mm.is_some() != trainer) {
            return Err(PlanError::Size);
        }
        Ok(Self { practice, position, parts })
    }

    /// A step of the plan, as it is written there.
    ///
    /// # Errors
    /// [`PlanError`] where the step does not keep the bounds; a checked programme does.
    pub fn of_step(step: &Step) -> Result<Self, PlanError> {
        let parts = step.parts.iter().map(|part| PlannedPart::new(part.size(), part.minutes));
        Self::new(step.practice.clone(), step.position, parts.collect())
    }

    /// Another practice of the plan.
    ///
    /// # Errors
    /// [`PlanError`] where it does not keep the bounds; a checked programme does.
    pub fn of_practice(plan: &PracticePlan, position: Position) -> Result<Self, PlanError> {
        Self::new(plan.practice.clone(), position, vec![PlannedPart::new(None, plan.minutes)])
    }

    /// A paced breathing practice: over at its last breath, whole from `least` minutes on.
    ///
    /// # Errors
    /// [`PlanError`] where `practice` is one with trainers.
    pub fn of_breathing(
        practice: Practice,
        position: Position,
        breathing: &Breathing,
        least: Minutes,
    ) -> Result<Self, PlanError> {
        let most_millis = breathing.whole_millis();
        let least_millis = (u64::from(least.get()) * 60_000).min(most_millis);
        let part = PlannedPart { widest_diameter_tenths_mm: None, least_millis, most_millis };
        Self::new(practice, position, vec![part])
    }
}
