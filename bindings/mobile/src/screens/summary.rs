//! A summary that is put together.

use frond_core::screens::{
    Action, FormLine, Problem, SummaryClose, SummaryFile, SummaryFormScreen, SummaryKind,
    SummaryScreen, SummaryWay,
};
use frond_core::summary::Selection;

#[uniffi::remote(Record)]
pub struct SummaryFormScreen {
    pub preview: SummaryScreen,
    pub selection: Selection,
    pub from: String,
    pub to: String,
    pub notes: String,
    pub questions: String,
    pub look_again: String,
    pub narrow: String,
    pub who: String,
    pub ways: Vec<SummaryWay>,
    pub new: FormLine,
    pub again: FormLine,
    pub time_alone: String,
    pub time_alone_hint: String,
    pub files: Vec<SummaryFile>,
    pub problems: Vec<Problem>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct SummaryScreen {
    pub title: String,
    pub holds: Vec<String>,
    pub leaves_out: Vec<String>,
    pub still_seen: Vec<String>,
    pub opens: Vec<String>,
    pub time_alone: Option<String>,
    pub decide: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct SummaryWay {
    pub way: SummaryClose,
    pub label: String,
    pub says: Vec<String>,
    pub sealed: bool,
}

#[uniffi::remote(Enum)]
pub enum SummaryClose {
    Recipients,
    Passphrase,
    Open,
}

#[uniffi::remote(Record)]
pub struct SummaryFile {
    pub kind: SummaryKind,
    pub label: String,
}

#[uniffi::remote(Enum)]
pub enum SummaryKind {
    Summary,
    Table,
    Bundle,
}
