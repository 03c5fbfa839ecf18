//! The plan: read before it is accepted, read again later, and the step that is used.

use frond_core::diary::entry::{Although, EntryId};
use frond_core::handover::Handed;
use frond_core::screens::{
    AcceptScreen, Action, Card, EndingScreen, Knowing, PlanScreen, Section, StepCheckScreen,
};

#[uniffi::remote(Record)]
pub struct AcceptScreen {
    pub id: EntryId,
    pub title: String,
    pub handed: Option<Handed>,
    pub refused: Option<String>,
    pub asks_words: bool,
    pub signed: Option<Card>,
    pub different: Option<Card>,
    pub cards: Vec<Card>,
    pub sentences: Vec<String>,
    pub knowing: Vec<Knowing>,
    pub yours: Option<String>,
    pub yes: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Card {
    pub title: String,
    pub lines: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct Knowing {
    pub although: Although,
    pub says: String,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct StepCheckScreen {
    pub title: String,
    pub step: Option<String>,
    pub empty: Option<String>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct PlanScreen {
    pub title: String,
    pub empty: Option<String>,
    pub sentences: Vec<String>,
    pub key: Option<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct EndingScreen {
    pub title: String,
    pub says: Vec<String>,
    pub ways: Vec<Section>,
    pub actions: Vec<Action>,
}
