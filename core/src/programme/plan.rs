//! The programme as the clinician wrote it (rule sentences P1 and P2). Plain data: reading it strictly
//! is [`super::read`], judging it is [`super::check`].

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::rule::Rule;
use super::values::{
    Count, Days, Hours, Line, Minutes, Passage, Position, Practice, ProgrammeId, RatingKind,
    Revision, Size, StepId, Tenths,
};
use crate::moment::Stamp;
use crate::safety::StricterSign;

/// The clinician's written plan. Every number in it is the clinician's own.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Programme {
    /// Version of this format; this program reads 1.
    #[schemars(range(min = 1, max = 1))]
    pub frond_programme: u32,
    /// Unchanged over all revisions.
    pub id: ProgrammeId,
    /// Counted up with every change.
    pub revision: Revision,
    /// The nickname agreed at the visit, by which the person knows the plan is hers.
    #[serde(rename = "for")]
    pub for_whom: Line,
    /// Whom the plan may be used by.
    pub intended_for: IntendedFor,
    /// Language of the clinician's own texts, a BCP 47 tag such as `en`.
    pub language: Line,
    /// Who prescribed it.
    pub clinician: Clinician,
    /// Whom to call within hours.
    pub contact: Contact,
    /// What to do outside those hours.
    pub out_of_hours: OutOfHours,
    /// The emergency number, and the one country it is right for.
    pub emergency: Emergency,
    /// When the clinician issued this revision.
    pub issued_at: Stamp,
    /// After this day no step up is said until the clinician has looked again.
    pub review_by: NaiveDate,
    /// The ladder, lowest first. May be empty.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 60))]
    pub steps: Vec<Step>,
    /// The step to begin at; required when there are steps.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start_at: Option<StepId>,
    /// What else is to be practised.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 20))]
    pub practices: Vec<PracticePlan>,
    /// The rule for every step that carries none of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rule: Option<Rule>,
    /// The full list of cautions is asked again after so many days.
    pub screening_every_days: Days,
    /// Signs taken more seriously than usual.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub stricter_signs: Vec<StricterSign>,
    /// After radiotherapy: spotting is to be noted only. The one place where a tier may be milder.
    #[serde(default, skip_serializing_if = "is_false")]
    pub spotting_note_only: bool,
    /// Ratings asked besides peak.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 3))]
    pub ratings_asked: Vec<RatingKind>,
    /// A session written down later than this after it began does not count for going up.
    pub late_after_hours: Hours,
    /// Who a summary may be sealed to.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 10))]
    pub recipients: Vec<Recipient>,
    /// Open signs the clinician has seen and closes with this revision.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub signs_seen: Vec<crate::diary::entry::SignKey>,
    /// Activities the person rates (Patient-Specific Functional Scale).
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 5))]
    pub activities: Vec<Line>,
    /// Those activities are asked about again after so many days; absent: not asked by itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub activities_every_days: Option<Days>,
    /// The person's own goals.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 5))]
    pub goals: Vec<Line>,
    /// Cautions in the clinician's own words, shown with the usual ones.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 10))]
    pub own_cautions: Vec<Passage>,
    /// How the plan is shown.
    #[serde(default, skip_serializing_if = "Manner::is_plain")]
    pub manner: Manner,
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "the signature serde asks for")]
fn is_false(value: &bool) -> bool {
    !value
}

/// Whom a plan may be used by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum IntendedFor {
    /// An adult.
    Adult,
    /// Someone younger, and the clinician confirms that local safeguarding was followed.
    YoungerSafeguardingConfirmed,
}

/// Who prescribed the plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Clinician {
    /// Name as the person knows it.
    pub name: Line,
    /// Clinic or practice.
    pub clinic: Line,
}

/// Whom to call within hours.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Contact {
    /// Who answers.
    pub name: Line,
    /// Telephone number.
    pub phone: Line,
    /// When somebody answers.
    pub hours: Line,
    /// What to do if nobody answers.
    pub if_nobody_answers: Passage,
}

/// What to do outside the contact's hours.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OutOfHours {
    /// In words.
    pub what_to_do: Passage,
    /// A number, where there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub phone: Option<Line>,
}

/// An emergency number with the country it is right for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Emergency {
    /// Telephone number.
    pub number: Line,
    /// Country in words, in the plan's language.
    pub country: Line,
}

/// Someone a summary may be sealed to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Recipient {
    /// Who it is.
    pub name: Line,
    /// An age public key (`age1...`).
    pub key: Line,
}

/// How the plan is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Manner {
    /// Sizes and counts stay folded on Today until the person opens them.
    #[serde(default)]
    pub numbers_folded: bool,
    /// Eyes-open grounding is offered before each trainer session.
    #[serde(default)]
    pub grounding_first: bool,
    /// The contact is offered whenever a session was stopped.
    #[serde(default)]
    pub contact_on_stop: bool,
}

impl Manner {
    fn is_plain(&self) -> bool {
        *self == Self::default()
    }
}

/// One rung of the ladder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Step {
    /// Stable id.
    pub id: StepId,
    /// What to call it.
    pub name: Line,
    /// Kind of practice; trainer unless said otherwise.
    #[serde(default = "trainer", skip_serializing_if = "is_trainer")]
    pub practice: Practice,
    /// In order; the last is the main one.
    #[schemars(length(min = 1, max = 6))]
    pub parts: Vec<Part>,
    /// Position.
    pub position: Position,
    /// How often.
    pub schedule: Schedule,
    /// In the clinician's words.
    pub instruction: Passage,
    /// Going beyond this step is talked about first.
    #[serde(default, skip_serializing_if = "is_false")]
    pub gate: bool,
    /// Keep what there is; nothing above hold is said. Wins over gate and last step.
    #[serde(default, skip_serializing_if = "is_false")]
    pub maintain: bool,
    /// A rule of its own, instead of the programme's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rule: Option<Rule>,
}

fn trainer() -> Practice {
    Practice::Trainer
}

fn is_trainer(practice: &Practice) -> bool {
    *practice == Practice::Trainer
}

impl Step {
    /// The main part: the last one.
    #[must_use]
    pub fn main_part(&self) -> Option<&Part> {
        self.parts.last()
    }
    /// The size of the main part.
    #[must_use]
    pub fn main_size(&self) -> Option<Size> {
        self.main_part().and_then(|part| part.size())
    }
    /// Whether another step asks for the same thing: practice, parts and position (S4).
    #[must_use]
    pub fn same_work(&self, other: &Self) -> bool {
        self.practice == other.practice
            && self.parts == other.parts
            && self.position == other.position
    }
}

/// A size for a span of minutes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The trainer; required where the practice is `trainer`, absent elsewhere.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub trainer: Option<Trainer>,
    /// For how long.
    pub minutes: MinutesSpan,
}

impl Part {
    /// The size, where a trainer is used.
    #[must_use]
    pub fn size(&self) -> Option<Size> {
        self.trainer.as_ref().map(|trainer| trainer.widest_diameter_tenths_mm)
    }
}

/// The graded device.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Trainer {
    /// The clinician's label, such as a number or a colour.
    pub label: Line,
    /// Widest diameter (not circumference), in tenths of a millimetre.
    pub widest_diameter_tenths_mm: Size,
}

/// From `least` to `most` minutes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MinutesSpan {
    /// At least.
    pub least: Minutes,
    /// At most.
    pub most: Minutes,
}

/// How often.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Schedule {
    /// Times a week, at least.
    pub weekly_least: Count,
    /// Times a week, at most.
    pub weekly_most: Count,
    /// Times a day, at most.
    pub daily_most: Count,
    /// Whole days of rest between two days of practice; absent: none needed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rest_days: Option<Days>,
}

/// Something else to practise.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PracticePlan {
    /// Kind of practice. For `other:ID` this entry is what the id means.
    pub practice: Practice,
    /// What to call it.
    pub name: Line,
    /// For how long.
    pub minutes: MinutesSpan,
    /// How often.
    pub schedule: Schedule,
    /// A breathing pattern, for breathing practices.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub breath: Option<Breath>,
    /// In the clinician's words.
    pub instruction: Passage,
}

/// One breath, phase by phase.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Breath {
    /// In, in tenths of a second.
    pub in_tenths: Tenths,
    /// Held after breathing in.
    pub hold_in_tenths: Tenths,
    /// Out.
    pub out_tenths: Tenths,
    /// Held after breathing out.
    pub hold_out_tenths: Tenths,
}

impl Programme {
    /// The format version this program reads and writes.
    pub const FORMAT: u32 = 1;

    /// Index of a step on the ladder.
    #[must_use]
    pub fn step_index(&self, id: &StepId) -> Option<usize> {
        self.steps.iter().position(|step| step.id == *id)
    }

    /// A step by id.
    #[must_use]
    pub fn step(&self, id: &StepId) -> Option<&Step> {
        self.steps.iter().find(|step| step.id == *id)
    }

    /// The rule in force on a step: its own, or the programme's.
    #[must_use]
    pub fn rule_on<'a>(&'a self, step: &'a Step) -> Option<&'a Rule> {
        step.rule.as_ref().or(self.rule.as_ref())
    }
}
