//! What an assessment says, as data: the outcome and every reason for it. Nothing here decides anything.

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::diary::entry::{EntryId, Place, SignKey};
use crate::moment::Stamp;
use crate::programme::rule::{BackCriterion, PauseCriterion, UpCriterion};
use crate::programme::values::{ProgrammeId, Revision, StepId};
use crate::safety::Tier;

/// The five outcomes in their order (O5): the lower, the more careful.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum OutcomeKind {
    /// Pause the trainers and call.
    PauseAndCall,
    /// Come back to an earlier step.
    StepBack,
    /// Stay on this step.
    Hold,
    /// Ready to talk about what comes next.
    ReadyToTalk,
    /// Try the next step.
    StepUp,
}

/// The outcome, with where it leads.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "outcome", rename_all = "snake_case")]
pub enum Outcome {
    /// Pause the trainers and call.
    PauseAndCall,
    /// Come back.
    StepBack {
        /// To this step.
        to: StepId,
    },
    /// Stay.
    Hold {
        /// A step back was met on the first step: the clinician should know (O2).
        tell_clinician: bool,
    },
    /// Ready to talk about what comes next.
    ReadyToTalk,
    /// Try the next step.
    StepUp {
        /// The next step.
        to: StepId,
    },
}

impl Outcome {
    /// Which of the five.
    #[must_use]
    pub fn kind(&self) -> OutcomeKind {
        match self {
            Self::PauseAndCall => OutcomeKind::PauseAndCall,
            Self::StepBack { .. } => OutcomeKind::StepBack,
            Self::Hold { .. } => OutcomeKind::Hold,
            Self::ReadyToTalk => OutcomeKind::ReadyToTalk,
            Self::StepUp { .. } => OutcomeKind::StepUp,
        }
    }
}

/// What the rule says at a moment, and why.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Assessment {
    /// The outcome.
    #[serde(flatten)]
    pub outcome: Outcome,
    /// What it rests on.
    pub basis: Basis,
    /// Every criterion of the rule in force, in the order it is written: pause, step back, step up.
    pub findings: Vec<Finding>,
    /// What keeps a step up from being said although nothing else might (O3). Empty unless a step up
    /// could otherwise be written in this rule.
    pub bars: Vec<Bar>,
    /// Signs above `note` that are open (O1), oldest first.
    pub open_signs: Vec<OpenSign>,
    /// The pause that stands, if one does.
    pub pause: Option<Pause>,
    /// Why the clock is in doubt, if it is (T3).
    pub clock: Option<ClockDoubt>,
}

/// What an assessment rests on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "on", rename_all = "snake_case")]
pub enum Basis {
    /// No programme was accepted: signs and nothing else.
    NoProgramme,
    /// The programme has no steps.
    NoSteps {
        /// Whose plan.
        rule_of: RuleOf,
    },
    /// A step of a programme.
    Step {
        /// Whose rule.
        rule_of: RuleOf,
        /// The current step.
        step: StepId,
        /// When it began.
        began: Stamp,
        /// Whether the person confirmed that it is the one used now (S4).
        confirmed: bool,
        /// Whether there is any rule for it.
        has_rule: bool,
    },
}

/// Whose rule it is (D2).
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct RuleOf {
    /// The programme.
    pub programme: ProgrammeId,
    /// Its revision.
    pub revision: Revision,
    /// The day it was issued.
    pub issued: NaiveDate,
    /// Who wrote it, as the programme says.
    pub clinician: String,
}

/// Which part of the rule a criterion stands in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// `pause`.
    Pause,
    /// `step_back`.
    StepBack,
    /// `step_up`.
    StepUp,
}

/// A criterion as the rule writes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum Criterion {
    /// Of pause.
    Pause(PauseCriterion),
    /// Of step back.
    Back(BackCriterion),
    /// Of step up.
    Up(UpCriterion),
}

/// Three-valued.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Met.
    Met,
    /// Not met.
    Unmet,
    /// Missing ratings, or a clock in doubt, could make it either (C2).
    Unknown,
}

/// What was found for one criterion.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Finding {
    /// Which part of the rule.
    pub part: Part,
    /// The criterion.
    pub criterion: Criterion,
    /// Where it would lead back to, for step back.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub target: Option<StepId>,
    /// The verdict.
    pub verdict: Verdict,
    /// The sessions (or, for changes back, the entries) it looked at, in order of happening. At most
    /// the latest 50 are named; `looked_at` counts all.
    pub entries: Vec<EntryId>,
    /// How many it looked at, those beyond the 50 that are named too.
    pub looked_at: usize,
    /// What is missing, if not met.
    pub missing: Missing,
}

/// What a criterion lacks, for kind words.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "lacks", rename_all = "snake_case", deny_unknown_fields)]
pub enum Missing {
    /// Nothing, or nothing that could be said as lacking.
    Nothing,
    /// So many more days.
    Days {
        /// Days to go, at least 1.
        more: u32,
    },
    /// So many more days with a full session.
    PractisedDays {
        /// Days to go, at least 1.
        more: u32,
    },
    /// So many more full sessions.
    FullSessions {
        /// Sessions to go, at least 1.
        more: u32,
    },
    /// The latest session was on a smaller size or earlier step: practise this one again first (F4).
    SmallerLast,
    /// Ratings lie above what the rule asks.
    Comfort,
    /// These sessions have no such rating.
    Ratings {
        /// Which sessions (at most the latest 50).
        entries: Vec<EntryId>,
    },
    /// The question whether she feels ready has not been answered yes.
    Answer,
    /// The clock is in doubt.
    Clock,
}

/// What bars a step up (O3).
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Bar {
    /// A pause or step-back criterion is not known to be unmet.
    NotKnownUnmet,
    /// The clock is in doubt.
    UnsureClock,
    /// The present step has not been confirmed.
    StepNotConfirmed,
    /// The programme's review day has passed.
    ReviewPassed,
    /// "Stay here for now."
    StayHere,
    /// Entries are missing.
    EntriesMissing,
    /// A restore has not been confirmed.
    RestoreNotConfirmed,
    /// The step is to be maintained.
    Maintain,
    /// The latest session was below the current step (F4).
    SmallerLast,
}

/// An open sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OpenSign {
    /// Its identity.
    pub key: SignKey,
    /// The highest tier it was noted with.
    pub tier: Tier,
    /// When it was (last) opened.
    pub since: Stamp,
}

/// A pause that stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Pause {
    /// The criterion that was met; absent where only an erase mark keeps the pause.
    pub criterion: Option<PauseCriterion>,
    /// The place of the entry at which it latched; absent while it is met right now and nothing has been
    /// written since.
    pub latched_at: Option<Place>,
}

/// Why the clock is in doubt (T3).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ClockDoubt {
    /// A stored entry lies more than ten minutes ahead of now.
    EntryAhead,
    /// A jump or a long absence has not been confirmed.
    NotConfirmed,
}
