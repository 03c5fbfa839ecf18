//! The clinician's rule as data (rule sentence P3). What its criteria mean is decided by the rule engine
//! ([`crate::progression`]); whether a rule is written correctly, by [`super::check`].
//!
//! There is one type of criterion for each place a criterion may stand in, so that one in the wrong
//! place cannot be spelled: a higher rating can only make an [`UpCriterion`] harder to meet and a
//! [`BackCriterion`] or [`PauseCriterion`] easier. That is where the safety property comes from.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::values::{Count, Days, Last, Rating, RatingAtLeast, RatingKind, StepId, ValueError};

/// When to go up, come back, or pause, in the clinician's own numbers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// All of these, to go up by one. Without it nothing above hold is ever said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step_up: Option<StepUp>,
    /// Any of these, to come back.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub step_back: Vec<StepBack>,
    /// Any of these, to pause and call.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pause: Vec<PauseCriterion>,
    /// After this many days without a session, what counts towards going up starts afresh.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after_gap_days: Option<Days>,
}

/// The criteria that must all be met to go up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StepUp {
    /// At least one criterion.
    #[schemars(length(min = 1, max = 20))]
    pub all_of: Vec<UpCriterion>,
}

/// A criterion of going up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "criterion", rename_all = "snake_case", deny_unknown_fields)]
pub enum UpCriterion {
    /// So many days on the step, days off left out.
    DaysOnStep {
        /// Days since the step began.
        days: Days,
    },
    /// So many days with a full session within so many days.
    Sessions {
        /// Distinct days with a full session.
        practised_days: Count,
        /// Within this many days, today included.
        within_days: Days,
    },
    /// The last so many full sessions, and every session since the first of them, rated at most this.
    DiscomfortAtMost {
        /// Which rating.
        rating: RatingKind,
        /// The highest rating that still counts.
        at_most: Rating,
        /// How many full sessions.
        last: Last,
    },
    /// So many days without a sign above `note`.
    SignFreeDays {
        /// Days since the later of reported and cleared.
        days: Days,
    },
    /// The person said she would like to try the next step.
    FeelsReady {},
}

// One arm for each kind and no default: a new criterion has to say here whether it looks at a rating. What is
// kept of a diary, which ratings a plan asks for, and what a reason shows all go by the answer.
impl UpCriterion {
    /// The rating it looks at; none where it looks at none.
    #[must_use]
    pub fn rating(self) -> Option<RatingKind> {
        match self {
            Self::DiscomfortAtMost { rating, .. } => Some(rating),
            Self::DaysOnStep { .. }
            | Self::Sessions { .. }
            | Self::SignFreeDays { .. }
            | Self::FeelsReady {} => None,
        }
    }
}

impl BackCriterion {
    /// The rating it looks at; none where it looks at none.
    #[must_use]
    pub fn rating(self) -> Option<RatingKind> {
        match self {
            Self::DiscomfortAtLeast { rating, .. } => Some(rating),
            Self::StoppedEarly { .. } | Self::DaysWithoutPractice { .. } => None,
        }
    }
}

impl PauseCriterion {
    /// The rating it looks at; none where it looks at none.
    #[must_use]
    pub fn rating(self) -> Option<RatingKind> {
        match self {
            Self::DiscomfortAtLeast { rating, .. } => Some(rating),
            Self::StoppedEarly { .. }
            | Self::DaysWithoutPractice { .. }
            | Self::StepsBack { .. } => None,
        }
    }
}

/// At least `sessions` (J) among the last `of_last` (K): 1 <= J <= K <= 50.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "WindowText", into = "WindowText")]
#[schemars(with = "WindowText")]
pub struct Window {
    sessions: Last,
    of_last: Last,
}

/// How a window is written.
#[derive(Clone, Copy, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
struct WindowText {
    /// J: how many sessions.
    sessions: Last,
    /// K: among how many of the latest.
    of_last: Last,
}

impl Window {
    /// At least `sessions` among the last `of_last`.
    ///
    /// # Errors
    /// Refuses more sessions than are looked at.
    pub fn new(sessions: Last, of_last: Last) -> Result<Self, ValueError> {
        if sessions > of_last {
            return Err(ValueError("sessions may not be more than of_last".into()));
        }
        Ok(Self { sessions, of_last })
    }
    /// J: how many sessions.
    #[must_use]
    pub fn sessions(self) -> usize {
        usize::from(self.sessions.get())
    }
    /// K: among how many of the latest.
    #[must_use]
    pub fn of_last(self) -> usize {
        usize::from(self.of_last.get())
    }
}

impl TryFrom<WindowText> for Window {
    type Error = ValueError;
    fn try_from(text: WindowText) -> Result<Self, ValueError> {
        Self::new(text.sessions, text.of_last)
    }
}

impl From<Window> for WindowText {
    fn from(window: Window) -> Self {
        Self { sessions: window.sessions, of_last: window.of_last }
    }
}

/// One way to come back, and to where.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StepBack {
    /// When.
    pub when: BackCriterion,
    /// To which step.
    pub target: Target,
}

/// Where coming back leads. One that is not earlier than the current step reads as previous.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Target {
    /// The step before.
    Previous,
    /// The first step.
    First,
    /// A named earlier step.
    Step(StepId),
}

/// A criterion of coming back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "criterion", rename_all = "snake_case", deny_unknown_fields)]
pub enum BackCriterion {
    /// Among the last sessions so many rated at least this.
    DiscomfortAtLeast {
        /// Which rating.
        rating: RatingKind,
        /// The lowest rating that counts.
        at_least: RatingAtLeast,
        /// How many of how many.
        window: Window,
    },
    /// Among the last sessions so many stopped or not started, interruptions left out.
    StoppedEarly {
        /// How many of how many.
        window: Window,
    },
    /// So many days without a session.
    DaysWithoutPractice {
        /// Days since the last session or the first day of the step.
        days: Days,
    },
}

/// A criterion of pausing: those of coming back, and changes back themselves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "criterion", rename_all = "snake_case", deny_unknown_fields)]
pub enum PauseCriterion {
    /// Among the last sessions so many rated at least this.
    DiscomfortAtLeast {
        /// Which rating.
        rating: RatingKind,
        /// The lowest rating that counts.
        at_least: RatingAtLeast,
        /// How many of how many.
        window: Window,
    },
    /// Among the last sessions so many stopped or not started, interruptions left out.
    StoppedEarly {
        /// How many of how many.
        window: Window,
    },
    /// So many days without a session.
    DaysWithoutPractice {
        /// Days since the last session or the first day of the step.
        days: Days,
    },
    /// So many changes to an earlier step.
    StepsBack {
        /// How many changes.
        times: Count,
        /// Within this many days, today included.
        within_days: Days,
    },
}

#[cfg(test)]
mod tests;
