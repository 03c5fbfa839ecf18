//! The signs: what each one is, its tier, where it comes from and how it is asked about.
//!
//! One table: a line of it is a caution, and a new caution is a new line. It decides nothing about a
//! programme (see [`super::stricter`]) and words nothing itself: the ids of the question and of the
//! name stand here, their words in the language's `safety.ftl`.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::group::SignGroup;
use super::source::{self, Source};
use super::tier::Tier;
use crate::message_id;

/// What the table holds for one sign that can be asked about.
struct Facts {
    tier: Tier,
    group: SignGroup,
    source: Source,
    question: &'static str,
    name: &'static str,
}

/// `Variant: tier, group, source, question, name;` for each sign that can be asked about.
macro_rules! signs {
    ($($(#[$doc:meta])* $sign:ident: $tier:ident, $group:ident, $source:ident, $question:expr, $name:expr;)+) => {
        /// Something a caution asks about. Its serialised name is a stored format, never changed.
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
        )]
        #[serde(rename_all = "snake_case")]
        pub enum Sign {
            $($(#[$doc])* $sign,)+
            /// A caution is open, no more is known: the mark that an erase leaves for an open sign.
            ///
            /// Only an erase writes it. It is never asked about and cannot be reported.
            ACaution,
        }

        impl Sign {
            /// Every sign, the erase mark included, in the order of the table.
            pub const ALL: &'static [Sign] = &[$(Sign::$sign,)+ Sign::ACaution];

            fn facts(self) -> Option<Facts> {
                match self {
                    $(Sign::$sign => Some(Facts {
                        tier: Tier::$tier,
                        group: SignGroup::$group,
                        source: source::$source,
                        question: $question,
                        name: $name,
                    }),)+
                    Sign::ACaution => None,
                }
            }
        }
    };
}

signs! {
    /// Numbness around the genitals or where one sits.
    NumbSaddle: Emergency, FeelingAndControl, CAUDA,
        message_id!("sign-numb-saddle-ask"), message_id!("sign-numb-saddle-say");
    /// Passing urine cannot be started, felt or controlled.
    CannotPassUrine: Emergency, FeelingAndControl, CAUDA,
        message_id!("sign-cannot-pass-urine-ask"), message_id!("sign-cannot-pass-urine-say");
    /// Loss of bowel control.
    BowelControlLost: Emergency, FeelingAndControl, CAUDA,
        message_id!("sign-bowel-control-lost-ask"), message_id!("sign-bowel-control-lost-say");
    /// Weakness or numbness in both legs.
    BothLegsWeak: Emergency, FeelingAndControl, CAUDA,
        message_id!("sign-both-legs-weak-ask"), message_id!("sign-both-legs-weak-say");
    /// Severe pain, or pain that quickly gets worse.
    SeverePain: Emergency, PainAndTemperature, PID,
        message_id!("sign-severe-pain-ask"), message_id!("sign-severe-pain-say");
    /// Heavy bleeding.
    HeavyBleeding: Emergency, Bleeding, PID,
        message_id!("sign-heavy-bleeding-ask"), message_id!("sign-heavy-bleeding-say");
    /// Fainting.
    Fainting: Emergency, PainAndTemperature, PID,
        message_id!("sign-fainting-ask"), message_id!("sign-fainting-say");
    /// A very high temperature, or shivering.
    VeryHighTemperature: Emergency, PainAndTemperature, PID,
        message_id!("sign-very-high-temperature-ask"), message_id!("sign-very-high-temperature-say");
    /// Vomiting together with pelvic pain.
    VomitingWithPelvicPain: Emergency, PainAndTemperature, PID,
        message_id!("sign-vomiting-with-pelvic-pain-ask"), message_id!("sign-vomiting-with-pelvic-pain-say");
    /// Fever with a rash, faintness or confusion, above all with a tampon.
    FeverWithRash: Emergency, PainAndTemperature, TOXIC,
        message_id!("sign-fever-with-rash-ask"), message_id!("sign-fever-with-rash-say");
    /// Possible pregnancy with severe pain low down or at the tip of the shoulder.
    PregnancySeverePain: Emergency, PregnancyAndBirth, ECTOPIC,
        message_id!("sign-pregnancy-severe-pain-ask"), message_id!("sign-pregnancy-severe-pain-say");
    /// Possible pregnancy with bleeding and pain or faintness.
    PregnancyBleedingWithPain: Emergency, PregnancyAndBirth, ECTOPIC,
        message_id!("sign-pregnancy-bleeding-with-pain-ask"), message_id!("sign-pregnancy-bleeding-with-pain-say");
    /// Recent birth with a severe headache or a change of vision.
    AfterBirthHeadacheOrVision: Emergency, PregnancyAndBirth, BIRTH,
        message_id!("sign-after-birth-headache-or-vision-ask"), message_id!("sign-after-birth-headache-or-vision-say");
    /// Recent birth with bleeding that soaks a pad in an hour.
    AfterBirthSoakingPad: Emergency, PregnancyAndBirth, BIRTH,
        message_id!("sign-after-birth-soaking-pad-ask"), message_id!("sign-after-birth-soaking-pad-say");
    /// Recent birth with large clots.
    AfterBirthLargeClots: Emergency, PregnancyAndBirth, BIRTH,
        message_id!("sign-after-birth-large-clots-ask"), message_id!("sign-after-birth-large-clots-say");
    /// Chest pain.
    ChestPain: Emergency, ChestAndLegs, MEMORY,
        message_id!("sign-chest-pain-ask"), message_id!("sign-chest-pain-say");
    /// Breathlessness.
    Breathless: Emergency, ChestAndLegs, MEMORY,
        message_id!("sign-breathless-ask"), message_id!("sign-breathless-say");
    /// A trainer is stuck and there is pain or bleeding.
    TrainerStuckWithPainOrBleeding: Emergency, TrainerAndSkin, MEMORY,
        message_id!("sign-trainer-stuck-with-pain-or-bleeding-ask"), message_id!("sign-trainer-stuck-with-pain-or-bleeding-say");
    /// Fever during chemotherapy.
    FeverDuringChemotherapy: Emergency, TreatmentAndMedicine, MEMORY,
        message_id!("sign-fever-during-chemotherapy-ask"), message_id!("sign-fever-during-chemotherapy-say");
    /// Thoughts of self-harm.
    ThoughtsOfSelfHarm: Emergency, MoodAndSafety, MEMORY,
        message_id!("sign-thoughts-of-self-harm-ask"), message_id!("sign-thoughts-of-self-harm-say");
    /// Danger at home.
    DangerAtHome: Emergency, MoodAndSafety, MEMORY,
        message_id!("sign-danger-at-home-ask"), message_id!("sign-danger-at-home-say");
    /// More than a little bleeding.
    MoreThanALittleBleeding: Stop, Bleeding, DILATION,
        message_id!("sign-more-than-a-little-bleeding-ask"), message_id!("sign-more-than-a-little-bleeding-say");
    /// Pain that stays after stopping.
    PainThatStays: Stop, PainAndTemperature, DILATION,
        message_id!("sign-pain-that-stays-ask"), message_id!("sign-pain-that-stays-say");
    /// Unusual or foul discharge.
    UnusualDischarge: Stop, UrineAndDischarge, DILATION,
        message_id!("sign-unusual-discharge-ask"), message_id!("sign-unusual-discharge-say");
    /// Fever, 38 degrees Celsius.
    Fever: Stop, PainAndTemperature, DILATION,
        message_id!("sign-fever-ask"), message_id!("sign-fever-say");
    /// Bleeding between periods or after sex.
    BleedingBetweenPeriodsOrAfterSex: Stop, Bleeding, DILATION,
        message_id!("sign-bleeding-between-periods-or-after-sex-ask"), message_id!("sign-bleeding-between-periods-or-after-sex-say");
    /// Something that cannot be removed.
    CannotBeRemoved: Stop, TrainerAndSkin, DILATION,
        message_id!("sign-cannot-be-removed-ask"), message_id!("sign-cannot-be-removed-say");
    /// Any bleeding when pregnant, even once.
    BleedingWhenPregnant: Stop, PregnancyAndBirth, NHS_BLEEDING,
        message_id!("sign-bleeding-when-pregnant-ask"), message_id!("sign-bleeding-when-pregnant-say");
    /// Any bleeding after menopause, even once.
    BleedingAfterMenopause: Stop, Bleeding, NHS_BLEEDING,
        message_id!("sign-bleeding-after-menopause-ask"), message_id!("sign-bleeding-after-menopause-say");
    /// Distress, flashbacks, feeling detached.
    Distress: Stop, MoodAndSafety, TRAUMA,
        message_id!("sign-distress-ask"), message_id!("sign-distress-say");
    /// A painful swollen calf.
    PainfulSwollenCalf: Stop, ChestAndLegs, MEMORY,
        message_id!("sign-painful-swollen-calf-ask"), message_id!("sign-painful-swollen-calf-say");
    /// Urine or stool from the vagina.
    UrineOrStoolFromVagina: Stop, UrineAndDischarge, MEMORY,
        message_id!("sign-urine-or-stool-from-vagina-ask"), message_id!("sign-urine-or-stool-from-vagina-say");
    /// Sores or blisters.
    SoresOrBlisters: Stop, TrainerAndSkin, MEMORY,
        message_id!("sign-sores-or-blisters-ask"), message_id!("sign-sores-or-blisters-say");
    /// Rash or burning from the material or the lubricant.
    RashOrBurningFromMaterial: Stop, TrainerAndSkin, MEMORY,
        message_id!("sign-rash-or-burning-from-material-ask"), message_id!("sign-rash-or-burning-from-material-say");
    /// The thread of a coil is missing, or its stem is felt.
    CoilThreadMissingOrStemFelt: Stop, TreatmentAndMedicine, MEMORY,
        message_id!("sign-coil-thread-missing-or-stem-felt-ask"), message_id!("sign-coil-thread-missing-or-stem-felt-say");
    /// Blood in the urine.
    BloodInUrine: Stop, UrineAndDischarge, MEMORY,
        message_id!("sign-blood-in-urine-ask"), message_id!("sign-blood-in-urine-say");
    /// New pain on passing urine.
    NewPainPassingUrine: Stop, UrineAndDischarge, MEMORY,
        message_id!("sign-new-pain-passing-urine-ask"), message_id!("sign-new-pain-passing-urine-say");
    /// Pregnancy.
    Pregnancy: AskFirst, PregnancyAndBirth, ASK_FIRST,
        message_id!("sign-pregnancy-ask"), message_id!("sign-pregnancy-say");
    /// Recent birth or stitches.
    RecentBirthOrStitches: AskFirst, PregnancyAndBirth, ASK_FIRST,
        message_id!("sign-recent-birth-or-stitches-ask"), message_id!("sign-recent-birth-or-stitches-say");
    /// Recent pelvic surgery.
    RecentPelvicSurgery: AskFirst, TreatmentAndMedicine, ASK_FIRST,
        message_id!("sign-recent-pelvic-surgery-ask"), message_id!("sign-recent-pelvic-surgery-say");
    /// Radiotherapy, not yet cleared.
    RadiotherapyNotCleared: AskFirst, TreatmentAndMedicine, ASK_FIRST,
        message_id!("sign-radiotherapy-not-cleared-ask"), message_id!("sign-radiotherapy-not-cleared-say");
    /// An active infection.
    ActiveInfection: AskFirst, UrineAndDischarge, ASK_FIRST,
        message_id!("sign-active-infection-ask"), message_id!("sign-active-infection-say");
    /// A newly fitted coil.
    NewlyFittedCoil: AskFirst, TreatmentAndMedicine, ASK_FIRST,
        message_id!("sign-newly-fitted-coil-ask"), message_id!("sign-newly-fitted-coil-say");
    /// Spotting: a few drops of blood.
    Spotting: AskFirst, Bleeding, ASK_FIRST,
        message_id!("sign-spotting-ask"), message_id!("sign-spotting-say");
    /// Blood thinners, or easy bleeding.
    BloodThinnersOrEasyBleeding: AskFirst, TreatmentAndMedicine, MEMORY,
        message_id!("sign-blood-thinners-or-easy-bleeding-ask"), message_id!("sign-blood-thinners-or-easy-bleeding-say");
    /// Current chemotherapy.
    CurrentChemotherapy: AskFirst, TreatmentAndMedicine, MEMORY,
        message_id!("sign-current-chemotherapy-ask"), message_id!("sign-current-chemotherapy-say");
    /// A pessary.
    Pessary: AskFirst, TreatmentAndMedicine, MEMORY,
        message_id!("sign-pessary-ask"), message_id!("sign-pessary-say");
    /// Allergy to the material or the lubricant.
    AllergyToMaterial: AskFirst, TrainerAndSkin, MEMORY,
        message_id!("sign-allergy-to-material-ask"), message_id!("sign-allergy-to-material-say");
}

impl Sign {
    /// The signs a person can be asked about and can report: all but the erase mark.
    pub fn asked() -> impl Iterator<Item = Sign> {
        Self::ALL.iter().copied().filter(|sign| sign.can_be_asked())
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
        self.facts().map(|facts| facts.question)
    }

    /// The message id of its name, as a person would say it: "heavy bleeding".
    pub fn name_id(self) -> &'static str {
        self.facts().map_or(message_id!("sign-a-caution-say"), |facts| facts.name)
    }

    /// Whether to speak with someone on the same day, even if the clinic is closed.
    pub fn same_day(self) -> bool {
        self == Sign::PainfulSwollenCalf || self.tier() == Tier::Emergency
    }
}
