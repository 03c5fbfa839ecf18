//! What is offered for breathing: what the plan prescribes, and always one plain even breath (B4, B5).

use std::fmt;

use serde::Serialize;

use super::pattern::{Conditions, Holds, Pattern, PatternError};
use crate::programme::plan::{MinutesSpan, Programme};
use crate::programme::values::{Line, Practice};
use crate::safety::{Mark, Source};
use crate::words::Words;

/// Minutes the leaflets give for the even breath: least and most. A leaflet's words for everyone, not a
/// dose for anyone.
pub const EVEN_MINUTES: (u8, u8) = (3, 5);

/// Where a preset comes from.
#[derive(Clone, PartialEq, Eq)]
pub enum Origin {
    /// The plan.
    Plan {
        /// Kind of practice.
        practice: Practice,
        /// What the plan calls it.
        name: Line,
        /// For how long.
        minutes: MinutesSpan,
        /// What became of its holds.
        holds: Holds,
    },
    /// The plain even breath.
    Even,
}

// What was prescribed is private.
impl fmt::Debug for Origin {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Origin(..)")
    }
}

/// Which pattern: what a choice is kept as, because a pattern itself never is (B5).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PresetId {
    /// That of the plan's practice with this number, counted from 0.
    Plan(u8),
    /// The plain even breath.
    Even,
}

/// A pattern to choose.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Preset {
    /// Which it is.
    pub id: PresetId,
    /// Where it comes from.
    pub origin: Origin,
    /// The pattern.
    pub pattern: Pattern,
}

impl Preset {
    /// What to call it.
    #[must_use]
    pub fn name(&self, words: &Words) -> String {
        match &self.origin {
            Origin::Plan { name, .. } => name.as_str().to_owned(),
            Origin::Even => words.text("breathing-even-name", &[]),
        }
    }

    /// How to do it, where it is not the plan's: a plan has its own instruction.
    #[must_use]
    pub fn how(&self, words: &Words) -> Option<String> {
        match self.origin {
            Origin::Plan { .. } => None,
            Origin::Even => Some(words.text("breathing-even-how", &[])),
        }
    }

    /// What became of its holds.
    #[must_use]
    pub fn holds(&self) -> Holds {
        match self.origin {
            Origin::Plan { holds, .. } => holds,
            Origin::Even => Holds::NoneSet,
        }
    }
}

/// A pattern of the plan that is not paced.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// What the plan calls the practice.
    pub name: Line,
    /// Why.
    pub why: PatternError,
}

/// What can be chosen, and what of the plan cannot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offered {
    /// To choose from: those of the plan in its order, then the even breath. Never empty.
    pub presets: Vec<Preset>,
    /// Said beside them, so that nobody looks for them in vain.
    pub refused: Vec<Refused>,
}

/// What is offered under a plan, or without one.
#[must_use]
pub fn offered(programme: Option<&Programme>, conditions: &Conditions) -> Offered {
    let mut found = Offered { presets: Vec::new(), refused: Vec::new() };
    let plans = programme.map(|plan| plan.practices.as_slice()).unwrap_or_default();
    for (number, plan) in (0u8..).zip(plans) {
        let Some(breath) = plan.breath else { continue };
        match Pattern::prescribed(&breath, conditions) {
            Ok((pattern, holds)) => {
                let origin = Origin::Plan {
                    practice: plan.practice.clone(),
                    name: plan.name.clone(),
                    minutes: plan.minutes,
                    holds,
                };
                found.presets.push(Preset { id: PresetId::Plan(number), origin, pattern });
            }
            Err(why) => found.refused.push(Refused { name: plan.name.clone(), why }),
        }
    }
    found.presets.push(Preset { id: PresetId::Even, origin: Origin::Even, pattern: Pattern::EVEN });
    found
}

/// Where the even breath comes from, and how well that was checked.
#[must_use]
pub fn even_source() -> Source {
    Source {
        text: "leaflets of NHS trusts: count 1 to 5 in and 1 to 5 out, 3 to 5 minutes, nothing held",
        mark: Mark::Read,
    }
}
