//! How a pause that was met is remembered (O1).

use serde::{Deserialize, Serialize};

use crate::diary::entry::Place;
use crate::programme::rule::{PauseCriterion, Window};
use crate::programme::values::{Count, Days, RatingAtLeast, RatingKind};

/// A pause criterion was met just before or just after an entry.
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct Latch {
    /// Place of the entry.
    pub place: Place,
    /// Just after it, with it; else just before, without it.
    after: bool,
    criterion: Criterion,
}

/// A pause criterion in a form that needs no names to be read back.
#[derive(Clone, Copy, Serialize, Deserialize)]
enum Criterion {
    DiscomfortAtLeast { rating: RatingKind, at_least: RatingAtLeast, window: Window },
    StoppedEarly { window: Window },
    DaysWithoutPractice { days: Days },
    StepsBack { times: Count, within_days: Days },
}

impl Latch {
    pub(super) fn new(place: Place, after: bool, criterion: PauseCriterion) -> Self {
        let criterion = match criterion {
            PauseCriterion::DiscomfortAtLeast { rating, at_least, window } => {
                Criterion::DiscomfortAtLeast { rating, at_least, window }
            }
            PauseCriterion::StoppedEarly { window } => Criterion::StoppedEarly { window },
            PauseCriterion::DaysWithoutPractice { days } => Criterion::DaysWithoutPractice { days },
            PauseCriterion::StepsBack { times, within_days } => {
                Criterion::StepsBack { times, within_days }
            }
        };
        Self { place, after, criterion }
    }

    /// Whether it came after what the clearing at `clearing` saw. A pause met just after the clearing
    /// itself is a new one; 0 stands for no clearing.
    pub(super) fn stands_after(&self, clearing: Place) -> bool {
        self.place > clearing || (self.place == clearing && self.after)
    }

    /// The criterion that was met.
    pub(super) fn criterion(&self) -> PauseCriterion {
        match self.criterion {
            Criterion::DiscomfortAtLeast { rating, at_least, window } => {
                PauseCriterion::DiscomfortAtLeast { rating, at_least, window }
            }
            Criterion::StoppedEarly { window } => PauseCriterion::StoppedEarly { window },
            Criterion::DaysWithoutPractice { days } => PauseCriterion::DaysWithoutPractice { days },
            Criterion::StepsBack { times, within_days } => {
                PauseCriterion::StepsBack { times, within_days }
            }
        }
    }
}
