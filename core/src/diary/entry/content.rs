//! Every kind of thing an entry can tell, and under which name it is stored; stored names never change. Leaves to
//! [`crate::diary::resolve`] what counts of it, and what it comes to, to [`crate::diary::state`] and the rule.

use std::sync::Arc;

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::accepted::{Although, SignedBy};
use super::id::{EntryId, SignKey, SignNoted};
use super::session::Session;
use crate::moment::Stamp;
use crate::practice::breathing::CueKinds;
use crate::programme::values::{Count, Line, Passage, ProgrammeId, Rating, Revision, StepId};
use crate::reminders::ReminderSettings;
use crate::safety::HoldCondition;

/// What an entry tells.
#[derive(Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Content {
    /// A session of a practice.
    Session(Session),
    /// The whole new content of an earlier entry; the old one stays visible to its owner. `happened` of
    /// this entry is the corrected time.
    Correction {
        /// The entry put right (never a correction itself: name the first entry).
        of: EntryId,
        /// Its whole new content, of the same kind.
        content: Box<Content>,
    },
    /// An entry is left out, its corrections too. A strike can be struck.
    Strike {
        /// The entry left out.
        of: EntryId,
    },
    /// Another step is used from now on. Choosing a step also confirms it.
    StepChange {
        /// The step.
        to: StepId,
        /// Why.
        why: Why,
    },
    /// "This is what I use now."
    StepConfirmed {
        /// The step confirmed.
        step: StepId,
    },
    /// A programme, or a revision of it, was accepted.
    ProgrammeAccepted {
        /// Its id.
        programme: ProgrammeId,
        /// Its revision.
        revision: Revision,
        /// The exact text accepted.
        carried: Arc<str>,
        /// Who signed it; absent: nobody, or it was accepted before plans were signed.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        signed: Option<Box<SignedBy>>,
        /// What the person chose knowingly.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        although: Vec<Although>,
    },
    /// Signs reported outside a session.
    SignReported {
        /// Which, with the tier in force then.
        #[schemars(length(min = 1))]
        signs: Vec<SignNoted>,
        /// In the person's words.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        note: Option<Passage>,
    },
    /// "I spoke with ... on ...". When they spoke is the entry's `happened`.
    Clearing {
        /// With whom.
        with: Line,
        /// The signs it closes.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        signs: Vec<SignKey>,
        /// Whether it closes the pause.
        closes_pause: bool,
    },
    /// The cautions were asked.
    ScreeningAnswered {
        /// Which questions.
        asked: Asked,
        /// What was answered.
        answer: ScreeningAnswer,
        /// Signs answered yes or not sure, with the tier in force then.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        signs: Vec<SignNoted>,
    },
    /// "Would you like to try the next step?"
    FeelsReady {
        /// The answer.
        answer: FeelsReady,
    },
    /// A suggestion was shown.
    SuggestionShown {
        /// The outcome shown.
        outcome: crate::progression::OutcomeKind,
        /// The step it was about.
        step: StepId,
        /// The step it led to, where it led to another.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        to: Option<StepId>,
    },
    /// What was chosen upon a suggestion.
    SuggestionAnswered {
        /// The entry that says it was shown.
        shown: EntryId,
        /// The choice.
        chosen: Chosen,
    },
    /// "Stay here for now", or taking it back.
    StayHere {
        /// Said or taken back.
        stay: bool,
    },
    /// Time off, both ends included.
    TimeOff {
        /// First day.
        from: NaiveDate,
        /// Last day.
        to: NaiveDate,
    },
    /// Something to look forward to.
    LookForward {
        /// In the person's words.
        to: Passage,
    },
    /// How able the person is at an activity (Patient-Specific Functional Scale).
    FunctionRated {
        /// The activity, as the programme or the person words it.
        activity: Line,
        /// 0 unable to 10 able as before.
        able: Rating,
    },
    /// How far a goal is reached (goal attainment scale).
    GoalRated {
        /// The goal.
        goal: Line,
        /// -2 much less than expected to +2 much more.
        reached: Goal,
    },
    /// A question for the visit.
    Question {
        /// In the person's words.
        text: Passage,
    },
    /// "Did it settle?", asked the day after a session. The rule does not look at it.
    Settled {
        /// The session it is about.
        of: EntryId,
        /// The answer.
        answer: Settled,
    },
    /// The questions about breath holds were all answered. The newest counts.
    HoldConditions {
        /// Answered "yes" or "not sure".
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        reported: Vec<HoldCondition>,
    },
    /// Everything set about reminders. The newest counts.
    Reminders(ReminderSettings),
    /// A reminder was put off. The newest counts.
    PutOff {
        /// When it comes again.
        until: Stamp,
    },
    /// How the app behaves.
    Settings(Settings),
    /// The person says the clock is right.
    TimeConfirmed {},
    /// Machine mark: the clock cannot be trusted until confirmed.
    ClockMark {
        /// What was noticed.
        change: ClockChange,
    },
    /// Machine mark: entries are missing.
    MissingMark {
        /// How many are known to be missing.
        entries: Count,
        /// When the last entry before them was written, where there is one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after: Option<Stamp>,
        /// When the first entry behind them was written, where there is one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        before: Option<Stamp>,
    },
    /// Machine mark: this diary was restored from a backup.
    RestoredMark {
        /// The place after which the backup knows nothing.
        up_to: u64,
        /// How many entries the diary had that it took the place of, where that one could be read.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        replaced: Option<u64>,
    },
    /// Machine mark: a copy of the diary was made for elsewhere.
    CopyMade {},
    /// Machine mark: entries were erased. It keeps nothing of what they told.
    ErasedMark {
        /// The latest time an erased entry had; what counts towards going up starts afresh there.
        latest: Stamp,
        /// An erased entry held a sign that is still open.
        caution_open: bool,
        /// A pause stood when it was erased.
        pause_open: bool,
    },
}

impl Content {
    /// Whether a person writes this kind, and so may correct or strike it (T1).
    #[must_use]
    pub fn is_persons(&self) -> bool {
        !matches!(
            self,
            Self::ClockMark { .. }
                | Self::MissingMark { .. }
                | Self::RestoredMark { .. }
                | Self::CopyMade {}
                | Self::ErasedMark { .. }
        )
    }

    /// The signs this content itself notes.
    #[must_use]
    pub fn signs(&self) -> &[SignNoted] {
        match self {
            Self::Session(session) => &session.signs,
            Self::SignReported { signs, .. } | Self::ScreeningAnswered { signs, .. } => signs,
            _ => &[],
        }
    }
}

/// Why another step is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// A suggestion was tried.
    Suggested,
    /// The person chose it.
    OwnChoice,
    /// The clinician said so.
    Clinician,
    /// Said after a restore or a struck entry, when the step was asked.
    Asked,
}

/// Which cautions were asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Asked {
    /// The whole list.
    FullList,
    /// "Anything new since last time?"
    AnythingNew,
}

/// What was answered to the cautions.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ScreeningAnswer {
    /// Nothing new; in the whole list, every question answered no.
    NothingNew,
    /// Something; "not sure" counts as yes.
    Something,
    /// Not today.
    NotToday,
}

/// "Would you like to try the next step?"
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum FeelsReady {
    /// Yes.
    Yes,
    /// Not yet.
    NotYet,
    /// Rather not say.
    RatherNotSay,
}

/// "Did it settle?": whether what was felt after a session has gone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Settled {
    /// Yes.
    Yes,
    /// Not yet.
    NotYet,
    /// Rather not say.
    RatherNotSay,
}

/// What was chosen upon a suggestion; equals.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Chosen {
    /// Try it.
    Try,
    /// Stay.
    Stay,
}

/// How far a goal is reached, -2 to +2.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "i8", into = "i8")]
pub struct Goal(i8);

impl Goal {
    /// The number.
    #[must_use]
    pub fn get(self) -> i8 {
        self.0
    }
}

impl TryFrom<i8> for Goal {
    type Error = crate::programme::values::ValueError;
    fn try_from(value: i8) -> Result<Self, Self::Error> {
        if (-2..=2).contains(&value) {
            Ok(Self(value))
        } else {
            Err(crate::programme::values::ValueError("a goal is rated -2 to 2".into()))
        }
    }
}

impl From<Goal> for i8 {
    fn from(goal: Goal) -> i8 {
        goal.0
    }
}

impl JsonSchema for Goal {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Goal".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "integer", "minimum": -2, "maximum": 2 })
    }
}

/// How the app behaves.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Settings {
    /// Language of the screens, a BCP 47 tag; absent: the device's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub language: Option<Line>,
    /// Show sizes and counts on Today even where the programme folds them.
    #[serde(default)]
    pub numbers_open: bool,
    /// How a change of breath is told without looking; nothing unless chosen.
    #[serde(default, skip_serializing_if = "CueKinds::is_none")]
    pub cues: CueKinds,
    /// After how long behind other programs a phone locks; only where there is a code.
    #[serde(default, skip_serializing_if = "LockAfter::is_usual")]
    pub lock_after: LockAfter,
}

/// After how long behind other programs a phone asks for the code again. Two minutes unless chosen, enough to look
/// something up in another program; which times are offered is common practice, no source.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum LockAfter {
    /// As soon as another program is in front.
    AtOnce,
    /// Two minutes.
    #[default]
    TwoMinutes,
    /// Five minutes.
    FiveMinutes,
    /// A quarter of an hour.
    FifteenMinutes,
}

impl LockAfter {
    /// All of them, the shortest first.
    pub const ALL: [Self; 4] =
        [Self::AtOnce, Self::TwoMinutes, Self::FiveMinutes, Self::FifteenMinutes];

    /// In minutes, 0 to 15.
    #[must_use]
    pub fn minutes(self) -> u8 {
        match self {
            Self::AtOnce => 0,
            Self::TwoMinutes => 2,
            Self::FiveMinutes => 5,
            Self::FifteenMinutes => 15,
        }
    }

    /// Whether it is what holds unless chosen.
    #[must_use]
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "the signature serde asks for")]
    pub fn is_usual(&self) -> bool {
        *self == Self::default()
    }
}

/// What was noticed about the clock (T3).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ClockChange {
    /// The wall clock jumped by more than an hour within one start of the device.
    Jumped,
    /// The first opening after a restart lay more than three days after the last entry.
    LongAway,
}
