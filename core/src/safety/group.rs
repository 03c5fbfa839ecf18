//! Which questions are shown together, under headings that tell a stranger nothing.

use serde::Serialize;

use super::sign::Sign;
use crate::message_id;

/// Questions that are shown together. The names are neutral: a stranger learns nothing from them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SignGroup {
    /// Numbness, strength, control.
    FeelingAndControl,
    /// Pain, fainting, fever.
    PainAndTemperature,
    /// Any bleeding.
    Bleeding,
    /// Pregnant, or recently given birth.
    PregnancyAndBirth,
    /// Chest, breath, calf.
    ChestAndLegs,
    /// The trainer, the lubricant, the skin.
    TrainerAndSkin,
    /// Urine, discharge, infection.
    UrineAndDischarge,
    /// Operations, treatments, medicines, coil, pessary.
    TreatmentAndMedicine,
    /// Distress, safety.
    MoodAndSafety,
}

impl SignGroup {
    /// Every group, in the order to ask.
    pub const ALL: [SignGroup; 9] = [
        SignGroup::FeelingAndControl,
        SignGroup::PainAndTemperature,
        SignGroup::Bleeding,
        SignGroup::PregnancyAndBirth,
        SignGroup::ChestAndLegs,
        SignGroup::TrainerAndSkin,
        SignGroup::UrineAndDischarge,
        SignGroup::TreatmentAndMedicine,
        SignGroup::MoodAndSafety,
    ];

    /// The message id of the group's neutral heading.
    pub fn name_id(self) -> &'static str {
        match self {
            SignGroup::FeelingAndControl => message_id!("group-feeling-and-control"),
            SignGroup::PainAndTemperature => message_id!("group-pain-and-temperature"),
            SignGroup::Bleeding => message_id!("group-bleeding"),
            SignGroup::PregnancyAndBirth => message_id!("group-pregnancy-and-birth"),
            SignGroup::ChestAndLegs => message_id!("group-chest-and-legs"),
            SignGroup::TrainerAndSkin => message_id!("group-trainer-and-skin"),
            SignGroup::UrineAndDischarge => message_id!("group-urine-and-discharge"),
            SignGroup::TreatmentAndMedicine => message_id!("group-treatment-and-medicine"),
            SignGroup::MoodAndSafety => message_id!("group-mood-and-safety"),
        }
    }

    /// The signs of the group, gravest first.
    pub fn signs(self) -> Vec<Sign> {
        let mut signs: Vec<Sign> = Sign::asked().filter(|one| one.group() == Some(self)).collect();
        signs.sort_by_key(|one| std::cmp::Reverse(one.tier()));
        signs
    }
}
