//! Decides what a programme is while it is being typed: a [`Draft`] holds every field as it was typed, a
//! choice, or nothing yet, and [`Draft::check`] says what still has to be put right and where. Nothing is
//! filled in by the program and no number in it is Frond's own.
//!
//! Leaves what is written wrongly in a whole programme to [`super::check`] and what is unusual to
//! [`super::warn`]; drafts are kept, sealed, by the clinician's desk. Start at [`Draft`], then `check`;
//! `fields` sets what a form sent, `change` adds, takes out, moves and copies.

mod amiss;
mod change;
mod check;
mod choices;
mod fields;
mod names;
mod of;
mod place;
mod said;
#[cfg(test)]
mod tests;
mod typed;
mod unusual;

pub use amiss::{Amiss, Mistake};
pub use change::{Change, Removed};
pub use check::{Checked, Given};
pub use fields::Tree;
pub use names::{hint, label};
pub use place::Place;
pub use said::{Part, Said};
pub use typed::{Choice, TargetChoice, Typed};
pub use unusual::Notice;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::plan::{IntendedFor, Programme};
use super::read::MOST_BYTES;
use super::values::{Position, Practice, RatingKind, StepId};
use crate::diary::entry::{SignKey, opaque};
use crate::safety::{Sign, Tier};

/// A programme as it is being typed. Its names of lines are those of the form's fields, and never change:
/// drafts are kept.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Draft {
    /// The nickname agreed at the visit.
    pub for_whom: Typed,
    /// Whom the plan may be used by.
    pub intended_for: Choice<IntendedFor>,
    /// Language of the clinician's own texts.
    pub language: Typed,
    /// Who prescribes it.
    pub clinician: ClinicianDraft,
    /// Whom to call within hours.
    pub contact: ContactDraft,
    /// What to do outside those hours.
    pub out_of_hours: OutOfHoursDraft,
    /// The emergency number and its country.
    pub emergency: EmergencyDraft,
    /// The day by which the clinician looks again, as a calendar writes it: `2026-03-01`.
    pub review_by: Typed,
    /// The ladder, lowest first.
    pub steps: Vec<StepDraft>,
    /// The step to begin at.
    pub start_at: Choice<StepId>,
    /// What else is to be practised.
    pub practices: Vec<PracticeDraft>,
    /// The rule for every step that carries none of its own.
    pub rule: Option<RuleDraft>,
    /// The full list of cautions is asked again after so many days.
    pub screening_every_days: Typed,
    /// Signs taken more seriously than usual.
    pub stricter_signs: Vec<StricterDraft>,
    /// After radiotherapy: spotting is to be noted only.
    pub spotting_note_only: bool,
    /// Ratings asked besides peak.
    pub ratings_asked: Vec<RatingKind>,
    /// A session written down later than so many hours does not count for going up.
    pub late_after_hours: Typed,
    /// Who a summary may be sealed to.
    pub recipients: Vec<RecipientDraft>,
    /// Signs of the diary that this revision may close, each ticked or not.
    pub signs_seen: Vec<SeenDraft>,
    /// Activities the person rates.
    pub activities: Vec<Typed>,
    /// Asked about again after so many days; empty: not asked by itself.
    pub activities_every_days: Typed,
    /// The person's own goals.
    pub goals: Vec<Typed>,
    /// Cautions in the clinician's own words.
    pub own_cautions: Vec<Typed>,
    /// How the plan is shown.
    pub manner: MannerDraft,
    /// What was taken out last, so that it can be put back.
    pub removed: Option<Removed>,
    /// Counted up whenever something is added, taken out or moved, so that a page of before is noticed.
    pub shape: u32,
    /// How many ids were given to steps and practices; an id is never given twice.
    pub ids_given: u32,
}

/// Who prescribes it.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct ClinicianDraft {
    /// Name as the person knows it.
    pub name: Typed,
    /// Clinic or practice.
    pub clinic: Typed,
}

/// Whom to call within hours.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct ContactDraft {
    /// Who answers.
    pub name: Typed,
    /// Telephone number.
    pub phone: Typed,
    /// When somebody answers.
    pub hours: Typed,
    /// What to do if nobody answers.
    pub if_nobody_answers: Typed,
}

/// What to do outside the contact's hours.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct OutOfHoursDraft {
    /// In words.
    pub what_to_do: Typed,
    /// A number; may stay empty.
    pub phone: Typed,
}

/// An emergency number with the country it is right for.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct EmergencyDraft {
    /// Telephone number.
    pub number: Typed,
    /// Country in words.
    pub country: Typed,
}

/// One rung of the ladder.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct StepDraft {
    /// Its stable id, given when it is added.
    pub id: String,
    /// What to call it.
    pub name: Typed,
    /// Kind of practice.
    pub practice: Choice<Practice>,
    /// In order; the last is the main one.
    pub parts: Vec<PartDraft>,
    /// Position.
    pub position: Choice<Position>,
    /// How often.
    pub schedule: ScheduleDraft,
    /// In the clinician's words.
    pub instruction: Typed,
    /// Going beyond it is talked about first.
    pub gate: bool,
    /// Keep what there is.
    pub maintain: bool,
    /// A rule of its own.
    pub rule: Option<RuleDraft>,
}

/// A size for a span of minutes.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct PartDraft {
    /// The trainer's label.
    pub label: Typed,
    /// Widest diameter in millimetres: `22`, `22.5` or `22,5`.
    pub size_mm: Typed,
    /// At least so many minutes.
    pub minutes_least: Typed,
    /// At most.
    pub minutes_most: Typed,
}

/// How often.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct ScheduleDraft {
    /// Times a week, at least.
    pub weekly_least: Typed,
    /// Times a week, at most.
    pub weekly_most: Typed,
    /// Times a day, at most.
    pub daily_most: Typed,
    /// Whole days of rest between two days of practice; may stay empty.
    pub rest_days: Typed,
}

/// Something else to practise.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct PracticeDraft {
    /// The id it has where it is none of the known kinds, given when it is added.
    pub id: String,
    /// Kind of practice.
    pub practice: Choice<Practice>,
    /// What to call it.
    pub name: Typed,
    /// At least so many minutes.
    pub minutes_least: Typed,
    /// At most.
    pub minutes_most: Typed,
    /// How often.
    pub schedule: ScheduleDraft,
    /// A breathing pattern; may stay empty.
    pub breath: BreathDraft,
    /// In the clinician's words.
    pub instruction: Typed,
}

/// One breath, in seconds: `4` or `4.5`.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct BreathDraft {
    /// In.
    pub in_seconds: Typed,
    /// Held after breathing in; empty: not held.
    pub hold_in_seconds: Typed,
    /// Out.
    pub out_seconds: Typed,
    /// Held after breathing out; empty: not held.
    pub hold_out_seconds: Typed,
}

/// When to go up, come back, or pause.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct RuleDraft {
    /// All of these, to go up; none: going up is never said.
    pub step_up: Vec<UpDraft>,
    /// Any of these, to come back.
    pub step_back: Vec<StepBackDraft>,
    /// Any of these, to pause and call.
    pub pause: Vec<PauseDraft>,
    /// After so many days without a session what counts towards going up starts afresh; may stay empty.
    pub after_gap_days: Typed,
}

/// A condition of going up.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "criterion", rename_all = "snake_case")]
#[allow(missing_docs, reason = "as the criteria of the rule that they become")]
pub enum UpDraft {
    /// So many days on the step.
    DaysOnStep { days: Typed },
    /// So many days with a full session within so many days.
    Sessions { practised_days: Typed, within_days: Typed },
    /// The last so many full sessions rated at most this.
    DiscomfortAtMost { rating: Choice<RatingKind>, at_most: Typed, last: Typed },
    /// So many days without a sign.
    SignFreeDays { days: Typed },
    /// She would like to try the next step.
    FeelsReady {},
}

/// One way to come back, and to where.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct StepBackDraft {
    /// When.
    #[serde(flatten)]
    pub when: BackDraft,
    /// To which step.
    pub target: Choice<TargetChoice>,
}

/// A condition of coming back.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "criterion", rename_all = "snake_case")]
#[allow(missing_docs, reason = "as the criteria of the rule that they become")]
pub enum BackDraft {
    /// Among the last sessions so many rated at least this.
    DiscomfortAtLeast {
        rating: Choice<RatingKind>,
        at_least: Typed,
        sessions: Typed,
        of_last: Typed,
    },
    /// Among the last sessions so many stopped or not started.
    StoppedEarly { sessions: Typed, of_last: Typed },
    /// So many days without a session.
    DaysWithoutPractice { days: Typed },
}

/// A condition of pausing.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "criterion", rename_all = "snake_case")]
#[allow(missing_docs, reason = "as the criteria of the rule that they become")]
pub enum PauseDraft {
    /// Among the last sessions so many rated at least this.
    DiscomfortAtLeast {
        rating: Choice<RatingKind>,
        at_least: Typed,
        sessions: Typed,
        of_last: Typed,
    },
    /// Among the last sessions so many stopped or not started.
    StoppedEarly { sessions: Typed, of_last: Typed },
    /// So many days without a session.
    DaysWithoutPractice { days: Typed },
    /// So many changes to an earlier step.
    StepsBack { times: Typed, within_days: Typed },
}

/// A sign taken more seriously than usual.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct StricterDraft {
    /// The sign.
    pub sign: Choice<Sign>,
    /// How seriously.
    pub tier: Choice<Tier>,
}

/// Someone a summary may be sealed to.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct RecipientDraft {
    /// Who it is.
    pub name: Typed,
    /// An age public key.
    pub key: Typed,
}

/// A sign of the diary that this revision may close.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SeenDraft {
    /// Which.
    pub key: SignKey,
    /// On which day it was told, where that is known.
    #[serde(default)]
    pub told: Option<NaiveDate>,
    /// The clinician has seen it, and closes it.
    #[serde(default)]
    pub seen: bool,
}

/// How the plan is shown.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct MannerDraft {
    /// Sizes and counts stay folded on Today.
    pub numbers_folded: bool,
    /// Eyes-open grounding is offered before each trainer session.
    pub grounding_first: bool,
    /// The contact is offered whenever a session was stopped.
    pub contact_on_stop: bool,
}

opaque!(Draft);

impl Draft {
    /// A draft in which nothing stands yet.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Offers signs of a diary to be closed, each with the day it was told on. None is ticked.
    pub fn offer_signs(&mut self, open: impl IntoIterator<Item = (SignKey, NaiveDate)>) {
        for (key, day) in open {
            match self.signs_seen.iter_mut().find(|own| own.key == key) {
                Some(own) => own.told = Some(day),
                None => self.signs_seen.push(SeenDraft { key, told: Some(day), seen: false }),
            }
        }
    }
}

/// A programme as text: what is signed and handed over, byte for byte. [`super::read::read`] takes exactly
/// this.
///
/// # Errors
/// [`TooLong`] where it would not be accepted.
pub fn text_of(programme: &Programme) -> Result<String, TooLong> {
    let mut text = serde_json::to_string_pretty(programme).map_err(|_| TooLong)?;
    text.push('\n');
    if text.len() > MOST_BYTES { Err(TooLong) } else { Ok(text) }
}

/// A programme whose texts are too long together to be handed over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("the programme's texts are too long together; shorten some of them")]
pub struct TooLong;
