//! What can be asked, of the open diary and of the diary as a whole, and what can be told.

use chrono::NaiveDate;
use frond_core::companion::{ReminderChange, Request, SessionTold, Told, Write};
use frond_core::diary::entry::{
    Although, Asked, Chosen, Ended, EntryId, FeelsReady, Goal, Ratings, ScreeningAnswer, Settings,
    Settled, SignKey, UsedPart, Why,
};
use frond_core::diary::erase::Erase;
use frond_core::handover::Handed;
use frond_core::moment::Stamp;
use frond_core::practice::breathing::PresetId;
use frond_core::practice::timed::{Choice as FoundChoice, Event as PracticeEvent};
use frond_core::programme::values::{Line, Minutes, Passage, Position, Practice, Rating, StepId};
use frond_core::reminders::{NeutralWords, QuietHours, Reminder, SnoozeMinutes};
use frond_core::safety::{FullList, Sign};
use frond_core::screens::{Begin, Covered, FirstRunPage, SummaryClose, SummaryKind};
use frond_core::summary::Selection;
use frond_core::whole::WholeRequest;

use crate::values::{HoldAnswers, MonthAsked};

#[uniffi::remote(Enum)]
pub enum Request {
    Today,
    LogSession,
    Ladder,
    Suggestion,
    Signs,
    StopAndCall,
    Spoke,
    Entries,
    Kept { of: EntryId },
    Plan,
    Keeping,
    Erase(Erase),
    EraseAll,
    Dial { number: String },
    Home,
    Practices,
    Breathing,
    Begin(Begin),
    Practice,
    During(PracticeEvent),
    Found(FoundChoice),
    Rate,
    LogAsPlanned,
    Screening { so_far: FullList, sent: bool },
    HoldQuestions,
    Accept(Handed),
    StepCheck,
    Reminders,
    CalendarFile,
    FirstRun(FirstRunPage),
    More,
    Calendar { month: Option<MonthAsked> },
    Day(NaiveDate),
    Entry(EntryId),
    Correct(EntryId),
    Questions,
    Activities,
    TimeOff,
    Ready,
    LookForward,
    Settled(EntryId),
    Ending,
    Shows(Covered),
    Settings,
    Summary(Selection),
    Write(Write),
}

#[uniffi::remote(Record)]
pub struct Write {
    pub id: EntryId,
    pub happened: Option<Stamp>,
    pub told: Told,
}

#[uniffi::remote(Enum)]
pub enum Told {
    Session(SessionTold),
    Correct { of: EntryId, told: Box<Told> },
    Strike { of: EntryId },
    Step { to: StepId, why: Why },
    ConfirmStep,
    Programme { handed: Handed, although: Vec<Although> },
    Signs { signs: Vec<Sign>, note: Option<Passage> },
    Spoke { with: Line, signs: Vec<SignKey>, closes_pause: bool },
    Screening { asked: Asked, answer: ScreeningAnswer, signs: Vec<Sign> },
    FeelsReady(FeelsReady),
    Choose { shown: EntryId, chosen: Chosen },
    StayHere(bool),
    TimeOff { from: NaiveDate, to: NaiveDate },
    LookForward(Passage),
    Function { activity: Line, able: Rating },
    Goal { goal: Line, reached: Goal },
    Question(Passage),
    Settled { of: EntryId, answer: Settled },
    FullList(FullList),
    HoldConditions(HoldAnswers),
    Reminders(ReminderChange),
    PutOff(SnoozeMinutes),
    Settings(Settings),
    TimeConfirmed,
    CopyKept,
}

#[uniffi::remote(Record)]
pub struct SessionTold {
    pub practice: Practice,
    pub parts: Vec<UsedPart>,
    pub position: Position,
    pub ended: Ended,
    pub ratings: Ratings,
    pub signs: Vec<Sign>,
    pub note: Option<Passage>,
}

#[uniffi::remote(Enum)]
pub enum ReminderChange {
    On(bool),
    Add(Reminder),
    Remove(Reminder),
    Quiet(Option<QuietHours>),
    Words(NeutralWords),
}

#[uniffi::remote(Enum)]
pub enum Erase {
    Entry(EntryId),
    Days { from: NaiveDate, to: NaiveDate },
}

#[uniffi::remote(Record)]
pub struct Selection {
    pub from: Option<NaiveDate>,
    pub to: Option<NaiveDate>,
    pub notes: bool,
    pub questions: bool,
}

#[uniffi::remote(Enum)]
pub enum Begin {
    Step,
    Practice(u8),
    Breathing { preset: PresetId, minutes: Minutes },
}

#[uniffi::remote(Enum)]
pub enum WholeRequest {
    Begin,
    StartNew,
    GiveCode {
        code: String,
    },
    CodeForm,
    SetCode {
        new: String,
        again: String,
    },
    RemoveCode {
        code: String,
    },
    Lock,
    NewPhrase,
    PhraseWritten,
    CheckPhrase {
        words: Vec<String>,
    },
    CopyForm,
    MakeCopy,
    RestoreForm,
    LookIntoBackup,
    RestoreCopyForm,
    LookIntoCopy {
        bytes: Vec<u8>,
        phrase: String,
    },
    RestoreNow,
    OpenByPhraseForm,
    OpenByPhrase {
        phrase: String,
    },
    EraseDaysForm,
    LookEraseDays {
        from: String,
        to: String,
    },
    Erase(Erase),
    EraseAll,
    AddPlanForm,
    PlanFile {
        bytes: Vec<u8>,
        words: String,
    },
    PlanLink {
        link: String,
        words: String,
    },
    PlanNotMine,
    SummaryFile {
        selection: Selection,
        close: Option<SummaryClose>,
        passphrase: String,
        again: String,
        time_alone: bool,
        kind: SummaryKind,
    },
    TryAgain,
}
