//! What an entry of the diary is made of, as far as a shell sees it.

use frond_core::diary::entry::{
    Although, Answer as RatingAnswer, Asked, Chosen, Ended, EntryId, FeelsReady, LockAfter,
    Ratings, Reason as StopReason, ScreeningAnswer, Session, Settings, Settled, SignKey, SignNoted,
    UsedPart, Why,
};
use frond_core::practice::breathing::CueKinds;
use frond_core::programme::values::{Line, Passage, Position, Practice, Rating, Size};
use frond_core::safety::{Sign, Tier};

#[uniffi::remote(Record)]
pub struct Session {
    pub practice: Practice,
    pub parts: Vec<UsedPart>,
    pub position: Position,
    pub ended: Ended,
    pub ratings: Ratings,
    pub signs: Vec<SignNoted>,
    pub note: Option<Passage>,
}

#[uniffi::remote(Record)]
pub struct SignNoted {
    pub sign: Sign,
    pub tier: Tier,
}

#[uniffi::remote(Record)]
pub struct UsedPart {
    pub widest_diameter_tenths_mm: Option<Size>,
    pub practised_seconds: u32,
}

#[uniffi::remote(Enum)]
pub enum Ended {
    Finished,
    Stopped(StopReason),
    CouldNotStart(StopReason),
}

#[uniffi::remote(Enum)]
pub enum StopReason {
    Discomfort,
    DidNotGoIn,
    Upset,
    Interrupted,
    Other,
}

#[uniffi::remote(Record)]
pub struct Ratings {
    pub peak: Option<RatingAnswer>,
    pub before: Option<RatingAnswer>,
    pub after: Option<RatingAnswer>,
    pub worry: Option<RatingAnswer>,
}

#[uniffi::remote(Enum)]
pub enum RatingAnswer {
    Rated(Rating),
    RatherNotSay,
}

#[uniffi::remote(Record)]
pub struct SignKey {
    pub entry: EntryId,
    pub sign: Sign,
}

#[uniffi::remote(Enum)]
pub enum Chosen {
    Try,
    Stay,
}

#[uniffi::remote(Enum)]
pub enum Why {
    Suggested,
    OwnChoice,
    Clinician,
    Asked,
}

#[uniffi::remote(Enum)]
pub enum Asked {
    FullList,
    AnythingNew,
}

#[uniffi::remote(Enum)]
pub enum ScreeningAnswer {
    NothingNew,
    Something,
    NotToday,
}

#[uniffi::remote(Enum)]
pub enum FeelsReady {
    Yes,
    NotYet,
    RatherNotSay,
}

#[uniffi::remote(Enum)]
pub enum Settled {
    Yes,
    NotYet,
    RatherNotSay,
}

#[uniffi::remote(Enum)]
pub enum Although {
    Unsigned,
    OtherKey,
    OlderRevision,
    SameRevision,
}

#[uniffi::remote(Record)]
pub struct Settings {
    pub language: Option<Line>,
    pub numbers_open: bool,
    pub cues: CueKinds,
    pub lock_after: LockAfter,
}

#[uniffi::remote(Enum)]
pub enum LockAfter {
    AtOnce,
    TwoMinutes,
    FiveMinutes,
    FifteenMinutes,
}
