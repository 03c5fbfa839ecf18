//! How Frond behaves: the first run, settings, reminders, and what can be seen by others.

use frond_core::diary::entry::{EntryId, LockAfter, Settings};
use frond_core::programme::values::Practice;
use frond_core::reminders::{NeutralWords, QuietHours, Reminder};
use frond_core::screens::{
    Action, CalendarOffer, Covered, DayChoice, FirstRunPage, FirstRunScreen, LanguageChoice,
    LanguageForm, LockChoice, LockForm, NumbersForm, ReminderForm, ReminderLine, ReminderPractice,
    RemindersScreen, Section, SettingsScreen, Shown, ShowsScreen, WordsChoice,
};

#[uniffi::remote(Record)]
pub struct FirstRunScreen {
    pub page: FirstRunPage,
    pub title: String,
    pub says: Vec<String>,
    pub language: Option<LanguageForm>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Enum)]
pub enum FirstRunPage {
    Breathe,
    About,
    Lock,
    Language,
    Copy,
}

#[uniffi::remote(Record)]
pub struct SettingsScreen {
    pub title: String,
    pub language: LanguageForm,
    pub numbers: NumbersForm,
    pub lock: Option<LockForm>,
    pub parts: Vec<Section>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct LanguageForm {
    pub id: EntryId,
    pub label: String,
    pub languages: Vec<LanguageChoice>,
    pub present: Settings,
    pub save: String,
}

#[uniffi::remote(Record)]
pub struct LanguageChoice {
    pub tag: String,
    pub name: String,
    pub reviewed: String,
    pub present: bool,
}

#[uniffi::remote(Record)]
pub struct NumbersForm {
    pub id: EntryId,
    pub label: String,
    pub folded: String,
    pub open: String,
    pub present: Settings,
    pub save: String,
}

#[uniffi::remote(Record)]
pub struct LockForm {
    pub id: EntryId,
    pub label: String,
    pub hint: String,
    pub choices: Vec<LockChoice>,
    pub present: Settings,
    pub save: String,
}

#[uniffi::remote(Record)]
pub struct LockChoice {
    pub after: LockAfter,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct RemindersScreen {
    pub id: EntryId,
    pub title: String,
    pub on: bool,
    pub off: Option<String>,
    pub switch: String,
    pub reminders: Vec<ReminderLine>,
    pub empty: Option<String>,
    pub coming: Vec<String>,
    pub says: String,
    pub unheard: Vec<String>,
    pub quiet: Option<QuietHours>,
    pub quiet_label: String,
    pub quiet_line: String,
    pub words: Vec<WordsChoice>,
    pub words_label: String,
    pub practices: Vec<ReminderPractice>,
    pub days: Vec<DayChoice>,
    pub form: ReminderForm,
    pub calendar: Option<CalendarOffer>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct ReminderLine {
    pub reminder: Reminder,
    pub text: String,
    pub remove: String,
}

#[uniffi::remote(Record)]
pub struct WordsChoice {
    pub words: NeutralWords,
    pub label: String,
    pub on: bool,
}

#[uniffi::remote(Record)]
pub struct ReminderPractice {
    pub practice: Practice,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct DayChoice {
    pub day: u8,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct ReminderForm {
    pub title: String,
    pub practice: String,
    pub days: String,
    pub times: String,
    pub after: String,
    pub about: String,
    pub skip: String,
    pub add: String,
    pub from: String,
    pub to: String,
    pub keep: String,
    pub no_quiet: String,
}

#[uniffi::remote(Record)]
pub struct CalendarOffer {
    pub note: String,
    pub action: Action,
}

#[uniffi::remote(Record)]
pub struct ShowsScreen {
    pub title: String,
    pub says: Vec<String>,
    pub parts: Vec<Shown>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Shown {
    pub title: String,
    pub frond: String,
    pub you: String,
}

#[uniffi::remote(Record)]
pub struct Covered {
    pub screen: bool,
    pub pictures: bool,
    pub keyboard: bool,
    pub backups: bool,
    pub reminders: bool,
    pub leaves: bool,
}
