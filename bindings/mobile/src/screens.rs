//! What is shown, named again.

use chrono::NaiveDate;
use frond_core::diary::entry::{Chosen, EntryId};
use frond_core::practice::breathing::PresetId;
use frond_core::programme::values::Minutes;
use frond_core::screens::{
    Action, Begin, Does, FirstRunPage, Notice, PracticeCard, StepCard, TodayScreen, Welcome,
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
pub struct Welcome {
    pub title: String,
    pub says: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Action {
    pub label: String,
    pub does: Does,
}

#[uniffi::remote(Enum)]
pub enum Does {
    Today,
    LogSession,
    Ladder,
    Suggestion,
    Signs,
    StopAndCall,
    Spoke,
    Entries,
    Plan,
    AcceptProgramme,
    ConfirmStep,
    ConfirmTime,
    StayHere {
        stay: bool,
    },
    FeelsReady,
    Choose {
        shown: EntryId,
        chosen: Chosen,
    },
    Strike {
        of: EntryId,
    },
    Keeping,
    NewKeys,
    MakePhrase,
    OpenByPhrase,
    MakeCopy,
    Restore,
    RestoreCopy,
    StartNew,
    EraseEntry {
        of: EntryId,
    },
    EraseDays {
        from: NaiveDate,
        to: NaiveDate,
    },
    EraseAll,
    FirstRun {
        page: FirstRunPage,
    },
    More,
    Calendar {
        month: Option<(i32, u32)>,
    },
    Day {
        day: NaiveDate,
    },
    Entry {
        of: EntryId,
    },
    Correct {
        of: EntryId,
    },
    Questions,
    Activities,
    TimeOff,
    LookForward,
    Settled {
        of: EntryId,
    },
    Ending,
    Shows,
    Settings,
    Summary,
    Practices,
    Breathing,
    Begin(Begin),
    Practice,
    Rate,
    LogAsPlanned,
    Screening,
    HoldQuestions,
    StepCheck,
    Reminders,
    CalendarFile,
}

#[uniffi::remote(Enum)]
pub enum Begin {
    Step,
    Practice(u8),
    Breathing {
        preset: PresetId,
        minutes: Minutes,
    },
}

#[uniffi::remote(Enum)]
pub enum FirstRunPage {
    Breathe,
    About,
    Lock,
    Language,
    Copy,
}

