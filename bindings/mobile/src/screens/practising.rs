//! What can be practised, and practising with the clock.

use frond_core::diary::entry::{EntryId, Settings};
use frond_core::practice::breathing::{CueKind, Phase, PresetId};
use frond_core::practice::stopped::Stopped;
use frond_core::practice::timed::{Event as PracticeEvent, View as TimerView};
use frond_core::safety::AnythingNew;
use frond_core::screens::{
    Action, AnythingNewScreen, Begin, BreathingScreen, Button, CueChoice, FoundScreen, Length,
    Mark, NewChoice, Pacer, PacerPhase, PracticeOption, PracticesScreen, PresetCard, RunningScreen,
    SmallerChoice, StoppedScreen,
};

use crate::values::FoundOffer;

#[uniffi::remote(Record)]
pub struct PracticesScreen {
    pub title: String,
    pub enough: String,
    pub empty: Option<String>,
    pub options: Vec<PracticeOption>,
    pub cautions: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct PracticeOption {
    pub name: String,
    pub parts: Vec<String>,
    pub instruction: String,
    pub action: Action,
}

#[uniffi::remote(Record)]
pub struct AnythingNewScreen {
    pub id: EntryId,
    pub title: String,
    pub grounding: Vec<String>,
    pub answers: Vec<NewChoice>,
    pub not_sure: String,
    pub cautions: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct NewChoice {
    pub answer: AnythingNew,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct BreathingScreen {
    pub title: String,
    pub enough: String,
    pub presets: Vec<PresetCard>,
    pub refused: Vec<String>,
    pub holds: Option<Action>,
    pub belly_title: String,
    pub belly: Vec<String>,
    pub cues_label: String,
    pub cues: Vec<CueChoice>,
    pub id: EntryId,
    pub settings: Settings,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct PresetCard {
    pub preset: PresetId,
    pub name: String,
    pub how: String,
    pub rhythm: String,
    pub lengths: Vec<Length>,
    pub notes: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct Length {
    pub label: String,
    pub begin: Begin,
}

#[uniffi::remote(Record)]
pub struct CueChoice {
    pub cue: CueKind,
    pub label: String,
    pub on: bool,
}

#[uniffi::remote(Record)]
pub struct RunningScreen {
    pub title: String,
    pub part: Option<String>,
    pub used: String,
    pub position: Option<String>,
    pub instruction: Option<String>,
    pub line: Option<String>,
    pub clock: String,
    pub clock_spoken: String,
    pub view: TimerView,
    pub buttons: Vec<Button>,
    pub smaller: Vec<SmallerChoice>,
    pub mark: Option<Mark>,
    pub pacer: Option<Pacer>,
    pub seen_every_millis: u64,
    pub cautions: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Button {
    pub event: PracticeEvent,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct SmallerChoice {
    pub event: PracticeEvent,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct Mark {
    pub in_millis: u64,
    pub cues: Vec<CueKind>,
    pub says: String,
}

#[uniffi::remote(Record)]
pub struct Pacer {
    pub phases: Vec<PacerPhase>,
    pub breath_millis: u64,
    pub breaths: u64,
    pub whole_millis: u64,
    pub cues: Vec<CueKind>,
    pub over: String,
}

#[uniffi::remote(Record)]
pub struct PacerPhase {
    pub phase: Phase,
    pub millis: u64,
    pub word: String,
}

#[uniffi::remote(Record)]
pub struct FoundScreen {
    pub title: String,
    pub lines: Vec<String>,
    pub choices: Vec<FoundOffer>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct StoppedScreen {
    pub stopped: Stopped,
    pub next: Action,
    pub actions: Vec<Action>,
}
