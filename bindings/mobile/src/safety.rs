//! Cautions: tiers, groups, answers, and stop and call.

use frond_core::safety::{
    Answer, AnythingNew, Calming, Dial, HoldCondition, Line as CallLine, LineKind, Sign, SignGroup,
    StopAndCall, Tier,
};

#[uniffi::remote(Enum)]
pub enum Tier {
    Note,
    AskFirst,
    Stop,
    Emergency,
}

#[uniffi::remote(Enum)]
pub enum SignGroup {
    FeelingAndControl,
    PainAndTemperature,
    Bleeding,
    PregnancyAndBirth,
    ChestAndLegs,
    TrainerAndSkin,
    UrineAndDischarge,
    TreatmentAndMedicine,
    MoodAndSafety,
}

#[uniffi::remote(Enum)]
pub enum Answer {
    Yes,
    No,
    NotSure,
}

#[uniffi::remote(Enum)]
pub enum AnythingNew {
    NothingNew,
    Something,
    NotToday,
}

#[uniffi::remote(Enum)]
pub enum HoldCondition {
    Pregnancy,
    HighBloodPressure,
    HeartTrouble,
    LungTrouble,
}

#[uniffi::remote(Enum)]
pub enum Calming {
    Grounding,
    Breathing,
}

#[uniffi::remote(Record)]
pub struct StopAndCall {
    pub tier: Tier,
    pub lines: Vec<CallLine>,
}

#[uniffi::remote(Record)]
pub struct CallLine {
    pub kind: LineKind,
    pub text: Vec<String>,
    pub dial: Vec<Dial>,
}

#[uniffi::remote(Enum)]
pub enum LineKind {
    EmergencyNumberFirst,
    StopNow,
    WhoToCall,
    ReadAloud,
    NobodyTold,
    MayContinue,
    DidRight,
    Later,
}

#[uniffi::remote(Record)]
pub struct Dial {
    pub label: String,
    pub number: String,
}

#[uniffi::remote(Enum)]
pub enum Sign {
    NumbSaddle,
    CannotPassUrine,
    BowelControlLost,
    BothLegsWeak,
    SeverePain,
    HeavyBleeding,
    Fainting,
    VeryHighTemperature,
    VomitingWithPelvicPain,
    FeverWithRash,
    PregnancySeverePain,
    PregnancyBleedingWithPain,
    AfterBirthHeadacheOrVision,
    AfterBirthSoakingPad,
    AfterBirthLargeClots,
    ChestPain,
    Breathless,
    TrainerStuckWithPainOrBleeding,
    FeverDuringChemotherapy,
    ThoughtsOfSelfHarm,
    DangerAtHome,
    MoreThanALittleBleeding,
    PainThatStays,
    UnusualDischarge,
    Fever,
    BleedingBetweenPeriodsOrAfterSex,
    CannotBeRemoved,
    BleedingWhenPregnant,
    BleedingAfterMenopause,
    Distress,
    PainfulSwollenCalf,
    UrineOrStoolFromVagina,
    SoresOrBlisters,
    RashOrBurningFromMaterial,
    CoilThreadMissingOrStemFelt,
    BloodInUrine,
    NewPainPassingUrine,
    Pregnancy,
    RecentBirthOrStitches,
    RecentPelvicSurgery,
    RadiotherapyNotCleared,
    ActiveInfection,
    NewlyFittedCoil,
    Spotting,
    BloodThinnersOrEasyBleeding,
    CurrentChemotherapy,
    Pessary,
    AllergyToMaterial,
    ACaution,
}
