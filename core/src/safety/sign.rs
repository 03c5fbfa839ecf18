//! The signs: what each one is, its tier, where it comes from and how it is asked about.
//!
//! One table. It decides nothing about a programme (see [`super::stricter`]) and words nothing
//! itself; the ids stand here, the words in the language's `safety.ftl`.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::source::{self, Source};
use super::tier::Tier;
use crate::message_id;

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

/// Questions that are shown together. The names are neutral: a stranger learns nothing from them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
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

/// What the table holds for one sign that can be asked about.
struct Facts {
    tier: Tier,
    source: Source,
    group: SignGroup,
    ask: &'static str,
    say: &'static str,
}

impl Sign {
    /// Every sign, the erase mark included, in the order of the table.
    pub const ALL: [Sign; 49] = [
        Sign::NumbSaddle,
        Sign::CannotPassUrine,
        Sign::BowelControlLost,
        Sign::BothLegsWeak,
        Sign::SeverePain,
        Sign::HeavyBleeding,
        Sign::Fainting,
        Sign::VeryHighTemperature,
        Sign::VomitingWithPelvicPain,
        Sign::FeverWithRash,
        Sign::PregnancySeverePain,
        Sign::PregnancyBleedingWithPain,
        Sign::AfterBirthHeadacheOrVision,
        Sign::AfterBirthSoakingPad,
        Sign::AfterBirthLargeClots,
        Sign::ChestPain,
        Sign::Breathless,
        Sign::TrainerStuckWithPainOrBleeding,
        Sign::FeverDuringChemotherapy,
        Sign::ThoughtsOfSelfHarm,
        Sign::DangerAtHome,
        Sign::MoreThanALittleBleeding,
        Sign::PainThatStays,
        Sign::UnusualDischarge,
        Sign::Fever,
        Sign::BleedingBetweenPeriodsOrAfterSex,
        Sign::CannotBeRemoved,
        Sign::BleedingWhenPregnant,
        Sign::BleedingAfterMenopause,
        Sign::Distress,
        Sign::PainfulSwollenCalf,
        Sign::UrineOrStoolFromVagina,
        Sign::SoresOrBlisters,
        Sign::RashOrBurningFromMaterial,
        Sign::CoilThreadMissingOrStemFelt,
        Sign::BloodInUrine,
        Sign::NewPainPassingUrine,
        Sign::Pregnancy,
        Sign::RecentBirthOrStitches,
        Sign::RecentPelvicSurgery,
        Sign::RadiotherapyNotCleared,
        Sign::ActiveInfection,
        Sign::NewlyFittedCoil,
        Sign::Spotting,
        Sign::BloodThinnersOrEasyBleeding,
        Sign::CurrentChemotherapy,
        Sign::Pessary,
        Sign::AllergyToMaterial,
        Sign::ACaution,
    ];

    /// The signs a person can be asked about and can report: all but the erase mark.
    pub fn asked() -> impl Iterator<Item = Sign> {
        Self::ALL.into_iter().filter(|sign| sign.can_be_asked())
    }

    /// Whether a person can be asked about it and can report it.
    pub fn can_be_asked(self) -> bool {
        self.facts().is_some()
    }

    /// The tier where the programme says nothing about the sign.
    pub fn tier(self) -> Tier {
        // What was erased is not known, so it counts as something to stop for.
        self.facts().map_or(Tier::Stop, |facts| facts.tier)
    }

    /// Where the caution comes from, and how well that was checked.
    pub fn source(self) -> Source {
        self.facts().map_or(source::OWN_RULE, |facts| facts.source)
    }

    /// The group it is shown in; none for the erase mark.
    pub fn group(self) -> Option<SignGroup> {
        self.facts().map(|facts| facts.group)
    }

    /// The message id of the question; none for the erase mark.
    pub fn question_id(self) -> Option<&'static str> {
        self.facts().map(|facts| facts.ask)
    }

    /// The message id of its name, as a person would say it: "heavy bleeding".
    pub fn name_id(self) -> &'static str {
        self.facts().map_or(message_id!("sign-a-caution-say"), |facts| facts.say)
    }

    /// Whether the person should speak with someone on the same day, even if the clinic is closed.
    pub fn same_day(self) -> bool {
        matches!(self, Sign::PainfulSwollenCalf) || self.tier() == Tier::Emergency
    }

    fn facts(self) -> Option<Facts> {
        use SignGroup::*;
        use Tier::{AskFirst, Emergency, Stop};
        let (tier, group, source, ask, say) = match self {
            Sign::NumbSaddle => (
                Emergency,
                FeelingAndControl,
                source::CAUDA,
                message_id!("sign-numb-saddle-ask"),
                message_id!("sign-numb-saddle-say"),
            ),
            Sign::CannotPassUrine => (
                Emergency,
                FeelingAndControl,
                source::CAUDA,
                message_id!("sign-cannot-pass-urine-ask"),
                message_id!("sign-cannot-pass-urine-say"),
            ),
            Sign::BowelControlLost => (
                Emergency,
                FeelingAndControl,
                source::CAUDA,
                message_id!("sign-bowel-control-lost-ask"),
                message_id!("sign-bowel-control-lost-say"),
            ),
            Sign::BothLegsWeak => (
                Emergency,
                FeelingAndControl,
                source::CAUDA,
                message_id!("sign-both-legs-weak-ask"),
                message_id!("sign-both-legs-weak-say"),
            ),
            Sign::SeverePain => (
                Emergency,
                PainAndTemperature,
                source::PID,
                message_id!("sign-severe-pain-ask"),
                message_id!("sign-severe-pain-say"),
            ),
            Sign::HeavyBleeding => (
                Emergency,
                Bleeding,
                source::PID,
                message_id!("sign-heavy-bleeding-ask"),
                message_id!("sign-heavy-bleeding-say"),
            ),
            Sign::Fainting => (
                Emergency,
                PainAndTemperature,
                source::PID,
                message_id!("sign-fainting-ask"),
                message_id!("sign-fainting-say"),
            ),
            Sign::VeryHighTemperature => (
                Emergency,
                PainAndTemperature,
                source::PID,
                message_id!("sign-very-high-temperature-ask"),
                message_id!("sign-very-high-temperature-say"),
            ),
            Sign::VomitingWithPelvicPain => (
                Emergency,
                PainAndTemperature,
                source::PID,
                message_id!("sign-vomiting-with-pelvic-pain-ask"),
                message_id!("sign-vomiting-with-pelvic-pain-say"),
            ),
            Sign::FeverWithRash => (
                Emergency,
                PainAndTemperature,
                source::TOXIC,
                message_id!("sign-fever-with-rash-ask"),
                message_id!("sign-fever-with-rash-say"),
            ),
            Sign::PregnancySeverePain => (
                Emergency,
                PregnancyAndBirth,
                source::ECTOPIC,
                message_id!("sign-pregnancy-severe-pain-ask"),
                message_id!("sign-pregnancy-severe-pain-say"),
            ),
            Sign::PregnancyBleedingWithPain => (
                Emergency,
                PregnancyAndBirth,
                source::ECTOPIC,
                message_id!("sign-pregnancy-bleeding-with-pain-ask"),
                message_id!("sign-pregnancy-bleeding-with-pain-say"),
            ),
            Sign::AfterBirthHeadacheOrVision => (
                Emergency,
                PregnancyAndBirth,
                source::BIRTH,
                message_id!("sign-after-birth-headache-or-vision-ask"),
                message_id!("sign-after-birth-headache-or-vision-say"),
            ),
            Sign::AfterBirthSoakingPad => (
                Emergency,
                PregnancyAndBirth,
                source::BIRTH,
                message_id!("sign-after-birth-soaking-pad-ask"),
                message_id!("sign-after-birth-soaking-pad-say"),
            ),
            Sign::AfterBirthLargeClots => (
                Emergency,
                PregnancyAndBirth,
                source::BIRTH,
                message_id!("sign-after-birth-large-clots-ask"),
                message_id!("sign-after-birth-large-clots-say"),
            ),
            Sign::ChestPain => (
                Emergency,
                ChestAndLegs,
                source::MEMORY,
                message_id!("sign-chest-pain-ask"),
                message_id!("sign-chest-pain-say"),
            ),
            Sign::Breathless => (
                Emergency,
                ChestAndLegs,
                source::MEMORY,
                message_id!("sign-breathless-ask"),
                message_id!("sign-breathless-say"),
            ),
            Sign::TrainerStuckWithPainOrBleeding => (
                Emergency,
                TrainerAndSkin,
                source::MEMORY,
                message_id!("sign-trainer-stuck-with-pain-or-bleeding-ask"),
                message_id!("sign-trainer-stuck-with-pain-or-bleeding-say"),
            ),
            Sign::FeverDuringChemotherapy => (
                Emergency,
                TreatmentAndMedicine,
                source::MEMORY,
                message_id!("sign-fever-during-chemotherapy-ask"),
                message_id!("sign-fever-during-chemotherapy-say"),
            ),
            Sign::ThoughtsOfSelfHarm => (
                Emergency,
                MoodAndSafety,
                source::MEMORY,
                message_id!("sign-thoughts-of-self-harm-ask"),
                message_id!("sign-thoughts-of-self-harm-say"),
            ),
            Sign::DangerAtHome => (
                Emergency,
                MoodAndSafety,
                source::MEMORY,
                message_id!("sign-danger-at-home-ask"),
                message_id!("sign-danger-at-home-say"),
            ),
            Sign::MoreThanALittleBleeding => (
                Stop,
                Bleeding,
                source::DILATION,
                message_id!("sign-more-than-a-little-bleeding-ask"),
                message_id!("sign-more-than-a-little-bleeding-say"),
            ),
            Sign::PainThatStays => (
                Stop,
                PainAndTemperature,
                source::DILATION,
                message_id!("sign-pain-that-stays-ask"),
                message_id!("sign-pain-that-stays-say"),
            ),
            Sign::UnusualDischarge => (
                Stop,
                UrineAndDischarge,
                source::DILATION,
                message_id!("sign-unusual-discharge-ask"),
                message_id!("sign-unusual-discharge-say"),
            ),
            Sign::Fever => (
                Stop,
                PainAndTemperature,
                source::DILATION,
                message_id!("sign-fever-ask"),
                message_id!("sign-fever-say"),
            ),
            Sign::BleedingBetweenPeriodsOrAfterSex => (
                Stop,
                Bleeding,
                source::DILATION,
                message_id!("sign-bleeding-between-periods-or-after-sex-ask"),
                message_id!("sign-bleeding-between-periods-or-after-sex-say"),
            ),
            Sign::CannotBeRemoved => (
                Stop,
                TrainerAndSkin,
                source::DILATION,
                message_id!("sign-cannot-be-removed-ask"),
                message_id!("sign-cannot-be-removed-say"),
            ),
            Sign::BleedingWhenPregnant => (
                Stop,
                PregnancyAndBirth,
                source::NHS_BLEEDING,
                message_id!("sign-bleeding-when-pregnant-ask"),
                message_id!("sign-bleeding-when-pregnant-say"),
            ),
            Sign::BleedingAfterMenopause => (
                Stop,
                Bleeding,
                source::NHS_BLEEDING,
                message_id!("sign-bleeding-after-menopause-ask"),
                message_id!("sign-bleeding-after-menopause-say"),
            ),
            Sign::Distress => (
                Stop,
                MoodAndSafety,
                source::TRAUMA,
                message_id!("sign-distress-ask"),
                message_id!("sign-distress-say"),
            ),
            Sign::PainfulSwollenCalf => (
                Stop,
                ChestAndLegs,
                source::MEMORY,
                message_id!("sign-painful-swollen-calf-ask"),
                message_id!("sign-painful-swollen-calf-say"),
            ),
            Sign::UrineOrStoolFromVagina => (
                Stop,
                UrineAndDischarge,
                source::MEMORY,
                message_id!("sign-urine-or-stool-from-vagina-ask"),
                message_id!("sign-urine-or-stool-from-vagina-say"),
            ),
            Sign::SoresOrBlisters => (
                Stop,
                TrainerAndSkin,
                source::MEMORY,
                message_id!("sign-sores-or-blisters-ask"),
                message_id!("sign-sores-or-blisters-say"),
            ),
            Sign::RashOrBurningFromMaterial => (
                Stop,
                TrainerAndSkin,
                source::MEMORY,
                message_id!("sign-rash-or-burning-from-material-ask"),
                message_id!("sign-rash-or-burning-from-material-say"),
            ),
            Sign::CoilThreadMissingOrStemFelt => (
                Stop,
                TreatmentAndMedicine,
                source::MEMORY,
                message_id!("sign-coil-thread-missing-or-stem-felt-ask"),
                message_id!("sign-coil-thread-missing-or-stem-felt-say"),
            ),
            Sign::BloodInUrine => (
                Stop,
                UrineAndDischarge,
                source::MEMORY,
                message_id!("sign-blood-in-urine-ask"),
                message_id!("sign-blood-in-urine-say"),
            ),
            Sign::NewPainPassingUrine => (
                Stop,
                UrineAndDischarge,
                source::MEMORY,
                message_id!("sign-new-pain-passing-urine-ask"),
                message_id!("sign-new-pain-passing-urine-say"),
            ),
            Sign::Pregnancy => (
                AskFirst,
                PregnancyAndBirth,
                source::ASK_FIRST,
                message_id!("sign-pregnancy-ask"),
                message_id!("sign-pregnancy-say"),
            ),
            Sign::RecentBirthOrStitches => (
                AskFirst,
                PregnancyAndBirth,
                source::ASK_FIRST,
                message_id!("sign-recent-birth-or-stitches-ask"),
                message_id!("sign-recent-birth-or-stitches-say"),
            ),
            Sign::RecentPelvicSurgery => (
                AskFirst,
                TreatmentAndMedicine,
                source::ASK_FIRST,
                message_id!("sign-recent-pelvic-surgery-ask"),
                message_id!("sign-recent-pelvic-surgery-say"),
            ),
            Sign::RadiotherapyNotCleared => (
                AskFirst,
                TreatmentAndMedicine,
                source::ASK_FIRST,
                message_id!("sign-radiotherapy-not-cleared-ask"),
                message_id!("sign-radiotherapy-not-cleared-say"),
            ),
            Sign::ActiveInfection => (
                AskFirst,
                UrineAndDischarge,
                source::ASK_FIRST,
                message_id!("sign-active-infection-ask"),
                message_id!("sign-active-infection-say"),
            ),
            Sign::NewlyFittedCoil => (
                AskFirst,
                TreatmentAndMedicine,
                source::ASK_FIRST,
                message_id!("sign-newly-fitted-coil-ask"),
                message_id!("sign-newly-fitted-coil-say"),
            ),
            Sign::Spotting => (
                AskFirst,
                Bleeding,
                source::ASK_FIRST,
                message_id!("sign-spotting-ask"),
                message_id!("sign-spotting-say"),
            ),
            Sign::BloodThinnersOrEasyBleeding => (
                AskFirst,
                TreatmentAndMedicine,
                source::MEMORY,
                message_id!("sign-blood-thinners-or-easy-bleeding-ask"),
                message_id!("sign-blood-thinners-or-easy-bleeding-say"),
            ),
            Sign::CurrentChemotherapy => (
                AskFirst,
                TreatmentAndMedicine,
                source::MEMORY,
                message_id!("sign-current-chemotherapy-ask"),
                message_id!("sign-current-chemotherapy-say"),
            ),
            Sign::Pessary => (
                AskFirst,
                TreatmentAndMedicine,
                source::MEMORY,
                message_id!("sign-pessary-ask"),
                message_id!("sign-pessary-say"),
            ),
            Sign::AllergyToMaterial => (
                AskFirst,
                TrainerAndSkin,
                source::MEMORY,
                message_id!("sign-allergy-to-material-ask"),
                message_id!("sign-allergy-to-material-say"),
            ),
            Sign::ACaution => return None,
        };
        Some(Facts { tier, source, group, ask, say })
    }
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
