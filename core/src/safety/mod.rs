//! Signs and their tiers.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Something a caution asks about. Its serialised name is a stored format and never changes.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Sign {
    /// Numbness around the genitals or where one sits.
    NumbSaddle,
    /// Passing urine cannot be started, felt or controlled.
    CannotPassUrine,
    /// Loss of bowel control.
    BowelControlLost,
    /// Weakness or numbness in both legs.
    BothLegsWeak,
    /// Severe pain, or pain that quickly gets worse.
    SeverePain,
    /// Heavy bleeding.
    HeavyBleeding,
    /// Fainting.
    Fainting,
    /// A very high temperature, or shivering.
    VeryHighTemperature,
    /// Vomiting together with pelvic pain.
    VomitingWithPelvicPain,
    /// Fever with a rash, faintness or confusion, above all with a tampon.
    FeverWithRash,
    /// Possible pregnancy with severe pain low down or at the tip of the shoulder.
    PregnancySeverePain,
    /// Possible pregnancy with bleeding and pain or faintness.
    PregnancyBleedingWithPain,
    /// Recent birth with a severe headache or a change of vision.
    AfterBirthHeadacheOrVision,
    /// Recent birth with bleeding that soaks a pad in an hour.
    AfterBirthSoakingPad,
    /// Recent birth with large clots.
    AfterBirthLargeClots,
    /// Chest pain.
    ChestPain,
    /// Breathlessness.
    Breathless,
    /// A trainer is stuck and there is pain or bleeding.
    TrainerStuckWithPainOrBleeding,
    /// Fever during chemotherapy.
    FeverDuringChemotherapy,
    /// Thoughts of self-harm.
    ThoughtsOfSelfHarm,
    /// Danger at home.
    DangerAtHome,
    /// More than a little bleeding.
    MoreThanALittleBleeding,
    /// Pain that stays after stopping.
    PainThatStays,
    /// Unusual or foul discharge.
    UnusualDischarge,
    /// Fever, 38 degrees Celsius.
    Fever,
    /// Bleeding between periods or after sex.
    BleedingBetweenPeriodsOrAfterSex,
    /// Something that cannot be removed.
    CannotBeRemoved,
    /// Any bleeding when pregnant, even once.
    BleedingWhenPregnant,
    /// Any bleeding after menopause, even once.
    BleedingAfterMenopause,
    /// Distress, flashbacks, feeling detached.
    Distress,
    /// A painful swollen calf.
    PainfulSwollenCalf,
    /// Urine or stool from the vagina.
    UrineOrStoolFromVagina,
    /// Sores or blisters.
    SoresOrBlisters,
    /// Rash or burning from the material or the lubricant.
    RashOrBurningFromMaterial,
    /// The thread of a coil is missing, or its stem is felt.
    CoilThreadMissingOrStemFelt,
    /// Blood in the urine.
    BloodInUrine,
    /// New pain on passing urine.
    NewPainPassingUrine,
    /// Pregnancy.
    Pregnancy,
    /// Recent birth or stitches.
    RecentBirthOrStitches,
    /// Recent pelvic surgery.
    RecentPelvicSurgery,
    /// Radiotherapy, not yet cleared.
    RadiotherapyNotCleared,
    /// An active infection.
    ActiveInfection,
    /// A newly fitted coil.
    NewlyFittedCoil,
    /// Spotting: a few drops of blood.
    Spotting,
    /// Blood thinners, or easy bleeding.
    BloodThinnersOrEasyBleeding,
    /// Current chemotherapy.
    CurrentChemotherapy,
    /// A pessary.
    Pessary,
    /// Allergy to the material or the lubricant.
    AllergyToMaterial,
    /// A caution is open, no more is known: the mark that an erase leaves for an open sign.
    ///
    /// Only an erase writes it. It is never asked about and cannot be reported.
    ACaution,
}

/// How serious a sign is.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Tier {
    /// Noted only.
    Note,
    /// Ask first.
    AskFirst,
    /// Stop and contact.
    Stop,
    /// Emergency now.
    Emergency,
}

/// A line of a programme that makes one sign stricter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StricterSign {
    /// The sign.
    pub sign: Sign,
    /// The tier it has under this programme.
    pub tier: Tier,
}
