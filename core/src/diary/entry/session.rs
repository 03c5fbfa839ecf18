//! What a session was: what was actually used, how long, how it ended, how it felt. Decides which part is the main one
//! and which endings count as stopped; whether it is a full session is the rule's to say.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::id::SignNoted;
use crate::programme::values::{Passage, Position, Practice, Rating, RatingKind, Size};

/// One occasion of one practice.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Session {
    /// Kind of practice.
    pub practice: Practice,
    /// Parts actually used, in order; the last is the main one.
    #[schemars(length(min = 1, max = 6))]
    pub parts: Vec<UsedPart>,
    /// Position actually used.
    pub position: Position,
    /// How it ended.
    pub ended: Ended,
    /// How it felt.
    #[serde(default, skip_serializing_if = "Ratings::is_empty")]
    pub ratings: Ratings,
    /// Signs noted with it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub signs: Vec<SignNoted>,
    /// The person's own note.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<Passage>,
}

impl Session {
    /// The main size: that of the last part used.
    #[must_use]
    pub fn main_size(&self) -> Option<Size> {
        self.parts.last().and_then(|part| part.widest_diameter_tenths_mm)
    }
    /// Time practised on the main part, pauses left out, in seconds.
    #[must_use]
    pub fn main_seconds(&self) -> u32 {
        self.parts.last().map_or(0, |part| part.practised_seconds)
    }
}

/// A size and the time it was practised with.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct UsedPart {
    /// Widest diameter of the trainer used, in tenths of a millimetre; absent where none is used.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub widest_diameter_tenths_mm: Option<Size>,
    /// Time practised, pauses left out, in seconds; 0 where it could not start.
    #[schemars(range(max = 86_400))]
    pub practised_seconds: u32,
}

/// How a session ended.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Ended {
    /// As planned.
    Finished,
    /// Stopped before the planned end. Always right.
    Stopped(Reason),
    /// Could not start.
    CouldNotStart(Reason),
}

impl Ended {
    /// Whether it counts as stopped for the rule: any reason but an interruption.
    #[must_use]
    pub fn counts_as_stopped(self) -> bool {
        match self {
            Self::Finished => false,
            Self::Stopped(reason) | Self::CouldNotStart(reason) => reason != Reason::Interrupted,
        }
    }
}

/// Why a session was stopped or could not start.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Reason {
    /// Discomfort.
    Discomfort,
    /// The trainer did not go in.
    DidNotGoIn,
    /// Upset.
    Upset,
    /// Something from outside came between.
    Interrupted,
    /// Something else.
    Other,
}

/// What was answered where a rating was asked.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// A rating.
    Rated(Rating),
    /// "Rather not say": an answer, and no rating.
    RatherNotSay,
}

/// The answers of one session; absent where not asked or not yet answered.
#[derive(Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Ratings {
    /// Highest discomfort during the session.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub peak: Option<Answer>,
    /// Discomfort before starting.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub before: Option<Answer>,
    /// Discomfort after ending.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after: Option<Answer>,
    /// Worry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub worry: Option<Answer>,
}

impl Ratings {
    /// The rating given, if one was.
    #[must_use]
    pub fn given(&self, kind: RatingKind) -> Option<Rating> {
        let answer = match kind {
            RatingKind::Peak => self.peak,
            RatingKind::Before => self.before,
            RatingKind::After => self.after,
            RatingKind::Worry => self.worry,
        };
        match answer {
            Some(Answer::Rated(rating)) => Some(rating),
            Some(Answer::RatherNotSay) | None => None,
        }
    }

    /// Whether nothing was answered.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}
