//! Questions for the visit, activities and goals, time off, and what else can be told.

use frond_core::diary::entry::{EntryId, Goal, Settled};
use frond_core::programme::values::Line;
use frond_core::screens::{
    Action, ActivitiesScreen, ActivityQuestion, DaysField, GoalChoice, GoalQuestion,
    LookForwardScreen, QuestionsScreen, Section, SettledChoice, SettledScreen, TextField,
    TimeOffScreen,
};

use crate::values::{DaysAsked, WholeNumber};

#[uniffi::remote(Record)]
pub struct Section {
    pub title: String,
    pub says: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct TextField {
    pub label: String,
    pub current: Option<String>,
    pub longest: WholeNumber,
    pub save: String,
}

#[uniffi::remote(Record)]
pub struct QuestionsScreen {
    pub id: EntryId,
    pub title: String,
    pub says: Vec<String>,
    pub empty: Option<String>,
    pub questions: Vec<Section>,
    pub new: TextField,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct ActivitiesScreen {
    pub title: String,
    pub says: Vec<String>,
    pub empty: Option<String>,
    pub activities: Vec<ActivityQuestion>,
    pub goals: Vec<GoalQuestion>,
    pub save: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct ActivityQuestion {
    pub id: EntryId,
    pub activity: Line,
    pub question: String,
    pub least: String,
    pub most: String,
}

#[uniffi::remote(Record)]
pub struct GoalQuestion {
    pub id: EntryId,
    pub goal: Line,
    pub question: String,
    pub choices: Vec<GoalChoice>,
}

#[uniffi::remote(Record)]
pub struct GoalChoice {
    pub reached: Goal,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct TimeOffScreen {
    pub id: EntryId,
    pub title: String,
    pub says: Vec<String>,
    pub standing: Vec<Section>,
    pub empty: Option<String>,
    pub days: DaysField,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct DaysField {
    pub from: String,
    pub to: String,
    pub current: Option<DaysAsked>,
    pub save: String,
}

#[uniffi::remote(Record)]
pub struct LookForwardScreen {
    pub id: EntryId,
    pub title: String,
    pub says: Vec<String>,
    pub present: Option<String>,
    pub new: TextField,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct SettledScreen {
    pub id: EntryId,
    pub of: EntryId,
    pub title: String,
    pub says: Vec<String>,
    pub answers: Vec<SettledChoice>,
    pub nobody_told: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct SettledChoice {
    pub answer: Settled,
    pub label: String,
}
