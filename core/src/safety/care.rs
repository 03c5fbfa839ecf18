//! General care, cautions about breathing, and grounding after distress: words with their grounds.
//!
//! None of these is a sign and none pauses anything, with one exception: a condition a person
//! reports switches breath holds off, whatever her programme says ([`holds_allowed`]).

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::sign::Sign;
use super::source::{Mark, Source};
use crate::message_id;
use crate::words::Words;

/// General care for trainers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CareNote {
    /// Which lubricant.
    Lubricant,
    /// How to wash a trainer.
    Washing,
    /// Look at the surface first.
    SmoothSurface,
    /// For one person only.
    PersonalUse,
}

impl CareNote {
    /// Every note, in the order to show.
    pub const ALL: [CareNote; 4] =
        [CareNote::Lubricant, CareNote::Washing, CareNote::SmoothSurface, CareNote::PersonalUse];

    /// The message id of its words.
    pub fn word_id(self) -> &'static str {
        match self {
            CareNote::Lubricant => message_id!("care-lubricant"),
            CareNote::Washing => message_id!("care-washing"),
            CareNote::SmoothSurface => message_id!("care-smooth-surface"),
            CareNote::PersonalUse => message_id!("care-personal-use"),
        }
    }

    /// Where it comes from, and how well that was checked.
    pub fn source(self) -> Source {
        let text = match self {
            CareNote::Lubricant => "leaflets of UW Health, UPMC and Plymouth hospitals",
            CareNote::Washing | CareNote::SmoothSurface | CareNote::PersonalUse => {
                "leaflets of the Royal Free, Leeds and UPMC hospitals"
            }
        };
        Source { text, mark: Mark::Read }
    }
}

/// Cautions about breathing practice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BreathCaution {
    /// Signs of over-breathing: stop and breathe normally.
    OverBreathing,
    /// Breath holds, and who leaves them out.
    Holds,
}

impl BreathCaution {
    /// Every caution, in the order to show.
    pub const ALL: [BreathCaution; 2] = [BreathCaution::OverBreathing, BreathCaution::Holds];

    /// The message id of its words.
    pub fn word_id(self) -> &'static str {
        match self {
            BreathCaution::OverBreathing => message_id!("breath-over-breathing"),
            BreathCaution::Holds => message_id!("breath-holds"),
        }
    }

    /// Where it comes from, and how well that was checked.
    pub fn source(self) -> Source {
        Source { text: "no source", mark: Mark::Memory }
    }
}

/// A condition with which breath holds are left out.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum HoldCondition {
    /// Pregnant, or perhaps.
    Pregnancy,
    /// High blood pressure.
    HighBloodPressure,
    /// Heart trouble.
    HeartTrouble,
    /// Lung trouble.
    LungTrouble,
}

impl HoldCondition {
    /// Every condition, in the order to ask.
    pub const ALL: [HoldCondition; 4] = [
        HoldCondition::Pregnancy,
        HoldCondition::HighBloodPressure,
        HoldCondition::HeartTrouble,
        HoldCondition::LungTrouble,
    ];

    /// The message id of the question.
    pub fn question_id(self) -> &'static str {
        match self {
            HoldCondition::Pregnancy => message_id!("hold-pregnancy-ask"),
            HoldCondition::HighBloodPressure => message_id!("hold-high-blood-pressure-ask"),
            HoldCondition::HeartTrouble => message_id!("hold-heart-trouble-ask"),
            HoldCondition::LungTrouble => message_id!("hold-lung-trouble-ask"),
        }
    }

    /// The condition that a sign tells of, even after the sign is closed.
    pub fn told_by(sign: Sign) -> Option<HoldCondition> {
        match sign {
            Sign::Pregnancy
            | Sign::PregnancySeverePain
            | Sign::PregnancyBleedingWithPain
            | Sign::BleedingWhenPregnant => Some(HoldCondition::Pregnancy),
            Sign::ChestPain => Some(HoldCondition::HeartTrouble),
            Sign::Breathless => Some(HoldCondition::LungTrouble),
            _ => None,
        }
    }
}

/// Whether a breathing pattern may hold the breath.
///
/// Only if the programme sets a hold, and no condition is reported. A programme cannot outweigh a
/// reported condition.
pub fn holds_allowed(programme_sets_hold: bool, reported: &[HoldCondition]) -> bool {
    programme_sets_hold && reported.is_empty()
}

/// What is offered first to a person who is upset.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Calming {
    /// Grounding with open eyes.
    Grounding,
    /// Quiet breathing, if she wants it.
    Breathing,
}

/// The order of what is offered after distress: eyes open first. Attention on the breath can make
/// distress stronger while a person feels far away.
pub const AFTER_DISTRESS: [Calming; 2] = [Calming::Grounding, Calming::Breathing];

/// The grounding exercise, one short step each, in order.
pub fn grounding(words: &Words) -> Vec<String> {
    vec![
        words.text("grounding-stopped", &[]),
        words.text("grounding-eyes", &[]),
        words.text("grounding-feet", &[]),
        words.text("grounding-see", &[]),
        words.text("grounding-hear", &[]),
        words.text("grounding-touch", &[]),
        words.text("grounding-time", &[]),
    ]
}

/// Where the grounding exercise comes from, and how well that was checked.
pub fn grounding_source() -> Source {
    super::source::TRAUMA
}
