//! Putting an entry right. What stands there now is filled in: it is hers. What only records that something
//! was looked at, chosen or asked cannot sensibly be changed and can be left out instead. A session has a
//! form of its own.

use serde::Serialize;

use super::activities::{ActivityQuestion, GoalQuestion};
use super::entries::tell;
use super::section::{TextField, not_right, today};
use super::signs::{SignChoice, choices};
use super::time_off::DaysField;
use super::{Action, Does, Scene, plain};
use crate::diary::entry::{Content, EntryId, Goal};
use crate::diary::resolve::Counted;
use crate::moment::Stamp;
use crate::programme::values::Rating;
use crate::safety::{Sign, nobody_told};

/// Putting an entry right.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CorrectScreen {
    /// The id to send the correction under, so that sending twice writes once.
    pub id: EntryId,
    /// The entry that is put right.
    pub of: EntryId,
    /// Heading.
    pub title: String,
    /// What it tells now.
    pub was: String,
    /// When it happened, in words.
    pub when: String,
    /// When it happened, to be changed.
    pub happened: Stamp,
    /// "When was it?"
    pub when_label: String,
    /// The form.
    pub form: CorrectForm,
    /// What to know: the first version stays visible; where there is no form, what can be done instead.
    pub says: Vec<String>,
    /// "Nobody has been told", where it tells of a sign.
    pub nobody_told: Option<String>,
    /// What keeps it.
    pub save: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// What can be changed.
#[derive(Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "form", rename_all = "snake_case")]
pub enum CorrectForm {
    /// A question for the visit.
    Question(TextField),
    /// Something to look forward to.
    LookForward(TextField),
    /// How able she is at an activity.
    Function {
        /// The question.
        ask: ActivityQuestion,
        /// What stands there now.
        current: Rating,
    },
    /// How far a goal is reached.
    Goal {
        /// The question.
        ask: GoalQuestion,
        /// What stands there now.
        current: Goal,
    },
    /// Time off.
    TimeOff(DaysField),
    /// Signs that were noted.
    Signs {
        /// Every sign that can be reported.
        signs: Vec<SignChoice>,
        /// Those that stand there now.
        current: Vec<Sign>,
        /// In her words.
        note: TextField,
    },
    /// It cannot be changed.
    Nothing,
}

/// Whether an entry of this kind can be put right; a session too, in its own form.
pub(super) fn can_be_put_right(content: &Content) -> bool {
    matches!(
        content,
        Content::Session(_)
            | Content::Question { .. }
            | Content::LookForward { .. }
            | Content::FunctionRated { .. }
            | Content::GoalRated { .. }
            | Content::TimeOff { .. }
            | Content::SignReported { .. }
    )
}

impl CorrectScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId, row: &Counted<'_>) -> Self {
        let words = scene.words;
        let of = row.first.id;
        let form = if row.struck { CorrectForm::Nothing } else { form(scene, id, row.content) };
        let mut actions = Vec::new();
        let says = if form == CorrectForm::Nothing {
            if row.content.is_persons() && !row.struck {
                let label = words.text("action-leave-out", &[]);
                actions.push(Action::new(label, Does::Strike { of }));
                words.text("correct-only-left-out", &[])
            } else {
                words.text("correct-not-here", &[])
            }
        } else {
            words.text("correct-stays-visible", &[])
        };
        actions.push(Action::new(words.text("action-open-entry", &[]), Does::Entry { of }));
        actions.push(not_right(scene));
        actions.push(today(scene));
        Self {
            id,
            of,
            title: words.text("correct-title", &[]),
            was: tell(words, row.content),
            when: plain::when(words, row.happened, scene.now),
            happened: row.happened,
            when_label: words.text("correct-when", &[]),
            nobody_told: (!row.content.signs().is_empty()).then(|| nobody_told(words)),
            form,
            says: vec![says],
            save: words.text("action-keep", &[]),
            actions,
        }
    }
}

fn form(scene: &Scene<'_>, id: EntryId, content: &Content) -> CorrectForm {
    let words = scene.words;
    match content {
        Content::Question { text } => CorrectForm::Question(TextField::new(
            scene,
            words.text("questions-new", &[]),
            Some(text.as_str()),
        )),
        Content::LookForward { to } => CorrectForm::LookForward(TextField::new(
            scene,
            words.text("look-forward-new", &[]),
            Some(to.as_str()),
        )),
        Content::FunctionRated { activity, able } => CorrectForm::Function {
            ask: ActivityQuestion::new(scene, id, activity),
            current: *able,
        },
        Content::GoalRated { goal, reached } => {
            CorrectForm::Goal { ask: GoalQuestion::new(scene, id, goal), current: *reached }
        }
        Content::TimeOff { from, to } => {
            CorrectForm::TimeOff(DaysField::new(scene, Some((*from, *to))))
        }
        Content::SignReported { signs, note } => CorrectForm::Signs {
            signs: choices(scene),
            current: signs.iter().map(|noted| noted.sign).collect(),
            note: TextField::new(
                scene,
                words.text("log-note", &[]),
                note.as_ref().map(crate::programme::values::Passage::as_str),
            ),
        },
        _ => CorrectForm::Nothing,
    }
}
