//! What the rule said when a summary was made: the assessment in a form that can be read back. It stands
//! beside the entries, so that it holds even where narrowing leaves too little to replay it.

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::diary::entry::{Entry, EntryId};
use crate::moment::Stamp;
use crate::programme::rule::{BackCriterion, PauseCriterion, UpCriterion};
use crate::programme::values::{Line, ProgrammeId, Revision, StepId};
use crate::progression::{
    Assessment, Bar, Basis, ClockDoubt, Criterion, Finding, Missing, OpenSign, Outcome,
    OutcomeKind, Part, Pause, RuleOf, Verdict,
};

/// What the rule said, and why.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Present {
    /// At which moment.
    pub at: Stamp,
    /// The outcome.
    pub outcome: OutcomeKind,
    /// Where it leads, for a step back or up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<StepId>,
    /// A step back was met on the first step: the clinician should know (O2).
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub tell_clinician: bool,
    /// Whose rule it is; absent without a programme.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rule_of: Option<WhoseRule>,
    /// The step in use.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<StepNow>,
    /// What was found for each criterion.
    pub findings: Findings,
    /// What bars a step up.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub bars: Vec<Bar>,
    /// Signs that are open, oldest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub open_signs: Vec<OpenSign>,
    /// The pause that stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pause: Option<PauseNow>,
    /// Why the clock is in doubt, if it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clock: Option<ClockDoubt>,
}

/// Whose rule it is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct WhoseRule {
    /// The programme.
    pub programme: ProgrammeId,
    /// Its revision.
    pub revision: Revision,
    /// The day it was issued.
    pub issued: NaiveDate,
    /// Who wrote it, as the programme says.
    pub clinician: Line,
}

/// The step in use.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StepNow {
    /// Which.
    pub step: StepId,
    /// When it began.
    pub began: Stamp,
    /// Whether she confirmed that it is the one used now.
    pub confirmed: bool,
    /// Whether there is any rule for it.
    pub has_rule: bool,
}

/// A pause that stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PauseNow {
    /// The criterion that was met; absent where only an erase mark keeps the pause.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub criterion: Option<PauseCriterion>,
    /// When the entry was written at which it latched.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub since: Option<Stamp>,
}

/// The findings, by the part of the rule they stand in.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Findings {
    /// Of pause.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pause: Vec<PauseFinding>,
    /// Of step back.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub step_back: Vec<BackFinding>,
    /// Of step up.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub step_up: Vec<UpFinding>,
}

macro_rules! finding {
    ($(#[$doc:meta])* $name:ident, $criterion:ty) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            /// The criterion.
            pub criterion: $criterion,
            /// Where it would lead back to, for step back.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub target: Option<StepId>,
            /// Met, unmet or unknown.
            pub verdict: Verdict,
            /// The entries it looked at, at most the latest 50.
            #[serde(default, skip_serializing_if = "Vec::is_empty")]
            pub entries: Vec<EntryId>,
            /// How many it looked at, those beyond the 50 that are named too.
            pub looked_at: u32,
            /// What is missing.
            pub missing: Missing,
        }

        impl $name {
            fn of(finding: &Finding, criterion: $criterion) -> Self {
                Self {
                    criterion,
                    target: finding.target.clone(),
                    verdict: finding.verdict,
                    entries: finding.entries.clone(),
                    looked_at: u32::try_from(finding.looked_at).unwrap_or(u32::MAX),
                    missing: finding.missing.clone(),
                }
            }

            fn back(&self, part: Part, criterion: Criterion) -> Finding {
                Finding {
                    part,
                    criterion,
                    target: self.target.clone(),
                    verdict: self.verdict,
                    entries: self.entries.clone(),
                    looked_at: usize::try_from(self.looked_at).unwrap_or(usize::MAX),
                    missing: self.missing.clone(),
                }
            }
        }
    };
}

finding!(
    /// What was found for a criterion of pause.
    PauseFinding,
    PauseCriterion
);
finding!(
    /// What was found for a criterion of step back.
    BackFinding,
    BackCriterion
);
finding!(
    /// What was found for a criterion of step up.
    UpFinding,
    UpCriterion
);

impl Present {
    /// An assessment at a moment. `entries` are those it was made from: they date the pause.
    #[must_use]
    pub fn of(assessment: &Assessment, entries: &[Entry], at: Stamp) -> Self {
        let (to, tell_clinician) = match &assessment.outcome {
            Outcome::StepBack { to } | Outcome::StepUp { to } => (Some(to.clone()), false),
            Outcome::Hold { tell_clinician } => (None, *tell_clinician),
            Outcome::PauseAndCall | Outcome::ReadyToTalk => (None, false),
        };
        let (rule_of, step) = match &assessment.basis {
            Basis::NoProgramme => (None, None),
            Basis::NoSteps { rule_of } => (Some(rule_of), None),
            Basis::Step { rule_of, step, began, confirmed, has_rule } => (
                Some(rule_of),
                Some(StepNow {
                    step: step.clone(),
                    began: *began,
                    confirmed: *confirmed,
                    has_rule: *has_rule,
                }),
            ),
        };
        let since = |pause: &Pause| {
            let place = usize::try_from(pause.latched_at?).ok()?;
            entries.get(place.checked_sub(1)?).map(|entry| entry.written)
        };
        Self {
            at,
            outcome: assessment.outcome.kind(),
            to,
            tell_clinician,
            rule_of: rule_of.and_then(WhoseRule::of),
            step,
            findings: Findings::of(&assessment.findings),
            bars: assessment.bars.clone(),
            open_signs: assessment.open_signs.clone(),
            pause: assessment
                .pause
                .as_ref()
                .map(|pause| PauseNow { criterion: pause.criterion, since: since(pause) }),
            clock: assessment.clock,
        }
    }

    /// The same as an assessment, to be worded like one.
    #[must_use]
    pub fn assessment(&self) -> Assessment {
        let hold = Outcome::Hold { tell_clinician: self.tell_clinician };
        let outcome = match (self.outcome, &self.to) {
            (OutcomeKind::PauseAndCall, _) => Outcome::PauseAndCall,
            (OutcomeKind::StepBack, Some(to)) => Outcome::StepBack { to: to.clone() },
            (OutcomeKind::StepUp, Some(to)) => Outcome::StepUp { to: to.clone() },
            (OutcomeKind::ReadyToTalk, _) => Outcome::ReadyToTalk,
            // A step that leads nowhere is no step.
            (OutcomeKind::Hold | OutcomeKind::StepBack | OutcomeKind::StepUp, _) => hold,
        };
        let basis = match (&self.rule_of, &self.step) {
            (None, _) => Basis::NoProgramme,
            (Some(whose), None) => Basis::NoSteps { rule_of: whose.back() },
            (Some(whose), Some(now)) => Basis::Step {
                rule_of: whose.back(),
                step: now.step.clone(),
                began: now.began,
                confirmed: now.confirmed,
                has_rule: now.has_rule,
            },
        };
        Assessment {
            outcome,
            basis,
            findings: self.findings.back(),
            bars: self.bars.clone(),
            open_signs: self.open_signs.clone(),
            pause: self.pause.map(|now| Pause { criterion: now.criterion, latched_at: None }),
            clock: self.clock,
        }
    }
}

impl WhoseRule {
    fn of(rule: &RuleOf) -> Option<Self> {
        Some(Self {
            programme: rule.programme.clone(),
            revision: rule.revision,
            issued: rule.issued,
            clinician: Line::new(&rule.clinician).ok()?,
        })
    }

    fn back(&self) -> RuleOf {
        RuleOf {
            programme: self.programme.clone(),
            revision: self.revision,
            issued: self.issued,
            clinician: self.clinician.as_str().to_owned(),
        }
    }
}

impl Findings {
    fn of(findings: &[Finding]) -> Self {
        let mut of = Self::default();
        for finding in findings {
            match finding.criterion {
                Criterion::Pause(criterion) => of.pause.push(PauseFinding::of(finding, criterion)),
                Criterion::Back(criterion) => {
                    of.step_back.push(BackFinding::of(finding, criterion));
                }
                Criterion::Up(criterion) => of.step_up.push(UpFinding::of(finding, criterion)),
            }
        }
        of
    }

    fn back(&self) -> Vec<Finding> {
        let pause =
            self.pause.iter().map(|one| one.back(Part::Pause, Criterion::Pause(one.criterion)));
        let back = self
            .step_back
            .iter()
            .map(|one| one.back(Part::StepBack, Criterion::Back(one.criterion)));
        let up =
            self.step_up.iter().map(|one| one.back(Part::StepUp, Criterion::Up(one.criterion)));
        pause.chain(back).chain(up).collect()
    }
}
