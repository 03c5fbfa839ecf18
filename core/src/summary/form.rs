//! The summary itself, version 1: what stands in it, and nothing else may.

use std::borrow::Cow;

use chrono::NaiveDate;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

use super::identity::DiaryId;
use super::present::Present;
use crate::diary::entry::Entry;
use crate::moment::Stamp;
use crate::programme::values::{StepId, ValueError};

/// The version that this program writes and reads.
pub const VERSION: u32 = 1;

/// Always `frond-summary`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Form;

impl Form {
    /// The name.
    pub const NAME: &'static str = "frond-summary";
}

impl TryFrom<String> for Form {
    type Error = ValueError;
    fn try_from(text: String) -> Result<Self, ValueError> {
        let wrong = || ValueError(Cow::Borrowed("the form is frond-summary"));
        (text == Self::NAME).then_some(Self).ok_or_else(wrong)
    }
}

impl From<Form> for String {
    fn from(_: Form) -> String {
        Form::NAME.to_owned()
    }
}

impl JsonSchema for Form {
    fn schema_name() -> Cow<'static, str> {
        "Form".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "const": Self::NAME })
    }
}

/// What a person hands over of her diary.
///
/// Lines with which the app is set up, and what she looks forward to, are nobody's business: in their
/// place stands an empty settings line, so that the rule still replays exactly. The device's running
/// time is left out everywhere.
#[derive(Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Summary {
    /// What this is.
    pub form: Form,
    /// Version of the form; 1.
    #[schemars(range(min = 1, max = 1))]
    pub version: u32,
    /// The diary it comes from.
    pub diary: DiaryId,
    /// When it was made.
    pub made: Stamp,
    /// Language of the screens it was made with, a BCP 47 tag.
    #[schemars(length(min = 2, max = 40))]
    pub language: String,
    /// By what it was narrowed.
    pub narrowed: Narrowed,
    /// "I would like time alone with you." Written only into a sealed summary.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub(super) time_alone: bool,
    /// The entries in their stored form, in the order they were written, corrections and strikes
    /// included. Words of versions that no longer count are taken out.
    pub entries: Vec<Entry>,
    /// What the rule said when this was made, of the whole diary.
    pub present: Present,
    /// Marks about the diary's own files, of the whole diary.
    pub marks: Marks,
}

impl Summary {
    /// Where the days shown begin, and the step in use then.
    pub(crate) fn begins(&self) -> Option<(Stamp, &StepId)> {
        let midnight = self.narrowed.from?.and_hms_opt(0, 0, 0)?;
        let day = midnight.and_local_timezone(self.made.local().timezone()).single()?;
        Some((Stamp::new(day, None).ok()?, self.narrowed.begins_on.as_ref()?))
    }

    /// Whether she would like time alone with whoever reads this.
    #[must_use]
    pub fn asks_time_alone(&self) -> bool {
        self.time_alone
    }
}

impl std::fmt::Debug for Summary {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Summary(..)")
    }
}

/// By what a summary was narrowed. Where all of it is empty or false, it is whole.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Narrowed {
    /// Nothing that happened before this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<NaiveDate>,
    /// Nothing that happened after this day.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<NaiveDate>,
    /// The step in use when the days shown begin, where `from` is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub begins_on: Option<StepId>,
    /// Notes are left out.
    #[serde(default)]
    pub notes_left_out: bool,
    /// Questions for the visit are left out.
    #[serde(default)]
    pub questions_left_out: bool,
}

impl Narrowed {
    /// Whether entries are left out, so that the rule cannot be replayed from what is here.
    #[must_use]
    pub fn leaves_out_entries(&self) -> bool {
        self.from.is_some() || self.to.is_some() || self.questions_left_out
    }

    /// Whether anything is left out.
    #[must_use]
    pub fn is_narrowed(&self) -> bool {
        self.leaves_out_entries() || self.notes_left_out
    }
}

/// Marks about the diary's own files.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Marks {
    /// Entries known to be missing.
    pub missing_entries: u64,
    /// Times it was restored from a backup.
    pub restored: u32,
    /// Times something was erased.
    pub erased: u32,
}
