//! Today, the suggestion, the ladder, and what is said after something was kept.

use frond_core::diary::entry::{EntryId, FeelsReady};
use frond_core::programme::values::StepId;
use frond_core::progression::{OutcomeKind, Verdict};
use frond_core::screens::{
    Action, KeptScreen, LadderScreen, MoreScreen, Notice, PracticeCard, ReadyChoice, ReadyScreen,
    Reason, ReasonGroup, Rung, Section, StepCard, SuggestionScreen, TodayScreen, Welcome,
};

#[uniffi::remote(Record)]
pub struct TodayScreen {
    pub title: String,
    pub date: String,
    pub welcome: Option<Welcome>,
    pub notices: Vec<Notice>,
    pub step: Option<StepCard>,
    pub practices: Vec<PracticeCard>,
    pub routines: Vec<String>,
    pub enough: Option<String>,
    pub look_forward: Option<String>,
    pub cautions: Vec<String>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Welcome {
    pub title: String,
    pub says: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Notice {
    pub text: String,
    pub action: Option<Action>,
}

#[uniffi::remote(Record)]
pub struct StepCard {
    pub name: String,
    pub parts: Vec<String>,
    pub position: String,
    pub instruction: String,
    pub schedule: String,
    pub done: Vec<String>,
    pub enough: bool,
    pub folded: bool,
}

#[uniffi::remote(Record)]
pub struct PracticeCard {
    pub name: String,
    pub minutes: String,
    pub instruction: String,
    pub schedule: String,
    pub done: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct SuggestionScreen {
    pub title: String,
    pub outcome: Option<OutcomeKind>,
    pub says: Vec<String>,
    pub whose: Option<String>,
    pub bars: Vec<String>,
    pub reasons: Vec<ReasonGroup>,
    pub cautions: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct ReasonGroup {
    pub heading: String,
    pub reasons: Vec<Reason>,
}

#[uniffi::remote(Record)]
pub struct Reason {
    pub criterion: String,
    pub verdict: Verdict,
    pub verdict_text: String,
    pub looked_at: Vec<String>,
    pub missing: Option<String>,
}

#[uniffi::remote(Record)]
pub struct LadderScreen {
    pub title: String,
    pub empty: Option<String>,
    pub rungs: Vec<Rung>,
    pub smaller_is_fine: String,
    pub larger_caution: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Rung {
    pub id: StepId,
    pub name: String,
    pub used: String,
    pub present: bool,
    pub note: Option<String>,
    pub choose: String,
    pub larger: bool,
}

#[uniffi::remote(Record)]
pub struct ReadyScreen {
    pub id: EntryId,
    pub title: String,
    pub says: Vec<String>,
    pub answers: Vec<ReadyChoice>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct ReadyChoice {
    pub answer: FeelsReady,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct KeptScreen {
    pub title: String,
    pub entry: EntryId,
    pub says: Vec<String>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct MoreScreen {
    pub title: String,
    pub groups: Vec<Section>,
    pub actions: Vec<Action>,
}
