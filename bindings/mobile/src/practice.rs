//! Practising: what happens to a practice, where it stands, breathing, and what is shown after a stop.

use frond_core::practice::breathing::{CueKind, CueKinds, Phase, PresetId};
use frond_core::practice::stopped::{AfterStop, AnswerChoice as AfterStopChoice, Calm, Stopped};
use frond_core::practice::timed::{
    Choice as FoundChoice, Event as PracticeEvent, State as TimerState, View as TimerView,
};
use frond_core::programme::values::{Position, Practice, RatingKind, Size, Token};
use frond_core::progression::{OutcomeKind, Verdict};
use frond_core::safety::{Calming, Dial};

use crate::values::WholeNumber;

#[uniffi::remote(Enum)]
pub enum PracticeEvent {
    Begin { part: WholeNumber },
    Pause,
    GoOn,
    Enough { part: WholeNumber },
    Smaller { part: WholeNumber, size: Size },
    Stop,
    Seen,
}

#[uniffi::remote(Enum)]
pub enum FoundChoice {
    GoOn,
    Finish,
    Discard,
}

#[uniffi::remote(Record)]
pub struct TimerView {
    pub state: TimerState,
    pub part: WholeNumber,
    pub parts: WholeNumber,
    pub part_millis: u64,
    pub least_millis: u64,
    pub most_millis: u64,
    pub total_millis: u64,
    pub least_reached: bool,
    pub next_in_millis: Option<u64>,
}

#[uniffi::remote(Enum)]
pub enum TimerState {
    Ready,
    Running,
    Paused,
    Stopped,
    Finished,
}

#[uniffi::remote(Record)]
pub struct Stopped {
    pub title: String,
    pub let_out: Option<String>,
    pub question: String,
    pub answers: Vec<AfterStopChoice>,
    pub calm: Vec<Calm>,
    pub call: Vec<String>,
    pub dial: Vec<Dial>,
    pub nobody_told: String,
    pub tomorrow: String,
}

#[uniffi::remote(Enum)]
pub enum AfterStop {
    Something,
    NotSure,
    Nothing,
    Later,
}

#[uniffi::remote(Record)]
pub struct AfterStopChoice {
    pub answer: AfterStop,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct Calm {
    pub kind: Calming,
    pub steps: Vec<String>,
}

#[uniffi::remote(Enum)]
pub enum Phase {
    In,
    HoldIn,
    Out,
    HoldOut,
}

#[uniffi::remote(Enum)]
pub enum PresetId {
    Plan(u8),
    Even,
}

#[uniffi::remote(Enum)]
pub enum CueKind {
    Tone,
    Vibration,
    Word,
}

#[uniffi::remote(Record)]
pub struct CueKinds {
    pub tone: bool,
    pub vibration: bool,
    pub word: bool,
}

#[uniffi::remote(Enum)]
pub enum Practice {
    Trainer,
    Breathing,
    BellyBreathing,
    Meditation,
    Other(Token),
}

#[uniffi::remote(Enum)]
pub enum Position {
    OnBack,
    SideLying,
    Sitting,
    Standing,
    Other,
}

#[uniffi::remote(Enum)]
pub enum RatingKind {
    Peak,
    Before,
    After,
    Worry,
}

#[uniffi::remote(Enum)]
pub enum OutcomeKind {
    PauseAndCall,
    StepBack,
    Hold,
    ReadyToTalk,
    StepUp,
}

#[uniffi::remote(Enum)]
pub enum Verdict {
    Met,
    Unmet,
    Unknown,
}
