//! What was written: the calendar, one entry, putting it right, and how the diary is kept.

use chrono::NaiveDate;
use frond_core::diary::entry::{EntryId, Goal};
use frond_core::moment::Stamp;
use frond_core::programme::values::Rating;
use frond_core::safety::Sign;
use frond_core::screens::{
    Action, ActivityQuestion, CalendarDay, CalendarScreen, CannotOpenScreen, CorrectForm,
    CorrectScreen, DaysField, EntriesScreen, EntryLine, EntryScreen, EntryVersion, EraseScreen,
    GoalQuestion, KeepingPart, KeepingScreen, RestoreScreen, SignChoice, TextField,
};

#[uniffi::remote(Record)]
pub struct EntriesScreen {
    pub title: String,
    pub empty: Option<String>,
    pub entries: Vec<EntryLine>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct EntryLine {
    pub id: EntryId,
    pub when: String,
    pub text: String,
    pub notes: Vec<String>,
    pub can_change: bool,
    pub opens: Action,
}

#[uniffi::remote(Record)]
pub struct CalendarScreen {
    pub title: String,
    pub month: String,
    pub weekdays: Vec<String>,
    pub weeks: Vec<Vec<CalendarDay>>,
    pub empty: Option<String>,
    pub earlier: Option<Action>,
    pub later: Option<Action>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct CalendarDay {
    pub date: NaiveDate,
    pub label: String,
    pub in_month: bool,
    pub is_today: bool,
    pub done: Vec<String>,
    pub opens: Option<Action>,
}

#[uniffi::remote(Record)]
pub struct EntryScreen {
    pub id: EntryId,
    pub title: String,
    pub when: String,
    pub says: Vec<String>,
    pub notes: Vec<String>,
    pub nobody_told: Option<String>,
    pub versions_title: String,
    pub versions: Vec<EntryVersion>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct EntryVersion {
    pub written: String,
    pub says: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct CorrectScreen {
    pub id: EntryId,
    pub of: EntryId,
    pub title: String,
    pub was: String,
    pub when: String,
    pub happened: Stamp,
    pub when_label: String,
    pub form: CorrectForm,
    pub says: Vec<String>,
    pub nobody_told: Option<String>,
    pub save: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Enum)]
pub enum CorrectForm {
    Question(TextField),
    LookForward(TextField),
    Function { ask: ActivityQuestion, current: Rating },
    Goal { ask: GoalQuestion, current: Goal },
    TimeOff(DaysField),
    Signs { signs: Vec<SignChoice>, current: Vec<Sign>, note: TextField },
    Nothing,
}

#[uniffi::remote(Record)]
pub struct KeepingScreen {
    pub title: String,
    pub trouble: Vec<KeepingPart>,
    pub parts: Vec<KeepingPart>,
    pub limits: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct KeepingPart {
    pub title: String,
    pub says: Vec<String>,
    pub action: Option<Action>,
}

#[uniffi::remote(Record)]
pub struct EraseScreen {
    pub title: String,
    pub says: Vec<String>,
    pub out_of_reach: Vec<String>,
    pub next: Action,
    pub confirm: Action,
}

#[uniffi::remote(Record)]
pub struct RestoreScreen {
    pub title: String,
    pub says: Vec<String>,
    pub then: Vec<String>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct CannotOpenScreen {
    pub title: String,
    pub says: String,
    pub calm: Option<String>,
    pub help: String,
    pub steps: Vec<Action>,
}
