//! The form for logging a session.

use frond_core::diary::entry::{Ended, EntryId, Session, UsedPart};
use frond_core::moment::Stamp;
use frond_core::programme::values::{Position, Practice, RatingKind, Size};
use frond_core::screens::{
    Action, EndedChoice, LogSessionScreen, PositionChoice, PracticeChoice, PresentSession,
    RateScreen, RatingQuestion, SignChoice, SizeChoice,
};

#[uniffi::remote(Record)]
pub struct LogSessionScreen {
    pub id: EntryId,
    pub title: String,
    pub current: Option<PresentSession>,
    pub practice_label: String,
    pub practices: Vec<PracticeChoice>,
    pub size_label: String,
    pub sizes: Vec<SizeChoice>,
    pub size_other: String,
    pub position_label: String,
    pub positions: Vec<PositionChoice>,
    pub minutes_label: String,
    pub ended_label: String,
    pub ended: Vec<EndedChoice>,
    pub ratings: Vec<RatingQuestion>,
    pub signs_label: String,
    pub signs: Vec<SignChoice>,
    pub note_label: String,
    pub note_caution: String,
    pub cautions: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct PresentSession {
    pub of: EntryId,
    pub happened: Stamp,
    pub when: String,
    pub session: Session,
    pub says: Vec<String>,
    pub signs: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct PracticeChoice {
    pub practice: Practice,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct SizeChoice {
    pub widest_diameter_tenths_mm: Size,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct PositionChoice {
    pub position: Position,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct EndedChoice {
    pub ended: Ended,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct RatingQuestion {
    pub rating: RatingKind,
    pub question: String,
    pub least: String,
    pub most: String,
    pub rather_not_say: String,
}

#[uniffi::remote(Record)]
pub struct RateScreen {
    pub id: EntryId,
    pub title: String,
    pub what: Vec<String>,
    pub happened: Stamp,
    pub practice: Practice,
    pub parts: Vec<UsedPart>,
    pub position: Position,
    pub ended_label: Option<String>,
    pub ended: Vec<EndedChoice>,
    pub ended_unsaid: Ended,
    pub ratings: Vec<RatingQuestion>,
    pub note_label: String,
    pub note_caution: String,
    pub keep: String,
    pub keep_and_tell: String,
    pub different: Option<Action>,
    pub cautions: Vec<String>,
    pub actions: Vec<Action>,
}
