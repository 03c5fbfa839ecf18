//! A summary being put together: what goes along, what stays, and who could open it, before anything is
//! made. The wish for time alone is asked here and is no part of the record that comes back: it goes with
//! sealing, and is not shown again.

use serde::Serialize;

use super::section::{not_right, today};
use super::{Action, FormField, FormLine, Opens, Problem, Scene, SummaryScreen};
use crate::summary::{Selection, Summary};

/// A summary being put together.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SummaryFormScreen {
    /// What goes along and what stays, for the selection asked. Who can open it is not decided yet.
    pub preview: SummaryScreen,
    /// The selection shown.
    pub selection: Selection,
    /// "From which day? Leave it empty for everything."
    pub from: String,
    /// "Up to and with which day?"
    pub to: String,
    /// "With my notes".
    pub notes: String,
    /// "With my questions for the visit".
    pub questions: String,
    /// Shows the counts anew.
    pub look_again: String,
    /// Heading of what can be left out.
    pub narrow: String,
    /// "Who may open it?"
    pub who: String,
    /// The ways to close it. None is preselected.
    pub ways: Vec<SummaryWay>,
    /// The passphrase, for the way of that name.
    pub new: FormLine,
    /// The same once more.
    pub again: FormLine,
    /// Asked only where it is sealed.
    pub time_alone: String,
    /// Where it can be asked.
    pub time_alone_hint: String,
    /// What can be saved, the first first.
    pub files: Vec<SummaryFile>,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A way to close a summary.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SummaryWay {
    /// Which.
    pub way: SummaryClose,
    /// Its words.
    pub label: String,
    /// Who can open it then.
    pub says: Vec<String>,
    /// Whether "time alone" may be asked with it.
    pub sealed: bool,
}

/// How a summary is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SummaryClose {
    /// To those named in the plan.
    Recipients,
    /// With a passphrase.
    Passphrase,
    /// Not at all.
    Open,
}

/// A file that can be saved.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SummaryFile {
    /// Which.
    pub kind: SummaryKind,
    /// Its words.
    pub label: String,
}

/// What kind of file is saved.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SummaryKind {
    /// The summary.
    Summary,
    /// The sessions as a table; never sealed.
    Table,
    /// For other programs (FHIR); never sealed.
    Bundle,
}

impl SummaryFormScreen {
    pub(crate) fn new(scene: &Scene<'_>, summary: &Summary, selection: Selection) -> Self {
        let words = scene.words;
        let mut preview = SummaryScreen::new(summary, &Opens::Passphrase, false, words);
        preview.opens.clear();
        let way = |way, label: String, opens: &Opens| SummaryWay {
            way,
            label,
            says: super::summary::opens(opens, words),
            sealed: *opens != Opens::Anyone,
        };
        let file = |kind, label: String| SummaryFile { kind, label };
        let mut ways = Vec::new();
        let plan = scene.state.rule().programme();
        let names: Vec<String> = plan
            .map(|plan| plan.recipients.as_slice())
            .unwrap_or_default()
            .iter()
            .map(|to| to.name.as_str().to_owned())
            .collect();
        if !names.is_empty() {
            let label = words.text("summary-way-recipients", &[]);
            ways.push(way(SummaryClose::Recipients, label, &Opens::Recipients(names)));
        }
        ways.push(way(
            SummaryClose::Passphrase,
            words.text("summary-way-passphrase", &[]),
            &Opens::Passphrase,
        ));
        ways.push(way(SummaryClose::Open, words.text("summary-way-open", &[]), &Opens::Anyone));
        Self {
            preview,
            selection,
            from: words.text("summary-from", &[]),
            to: words.text("summary-to", &[]),
            notes: words.text("summary-with-notes", &[]),
            questions: words.text("summary-with-questions", &[]),
            look_again: words.text("action-look-again", &[]),
            narrow: words.text("page-summary-days", &[]),
            who: words.text("page-summary-who", &[]),
            ways,
            new: FormLine::new(FormField::New, words.text("page-summary-secret", &[])),
            again: FormLine::new(FormField::Again, words.text("page-new-passphrase-again", &[])),
            time_alone: words.text("summary-ask-time-alone", &[]),
            time_alone_hint: words.text("page-summary-alone-hint", &[]),
            files: vec![
                file(SummaryKind::Summary, words.text("page-summary-file", &[])),
                file(SummaryKind::Table, words.text("page-summary-table", &[])),
                file(SummaryKind::Bundle, words.text("out-summary-bundle", &[])),
            ],
            problems: Vec::new(),
            actions: vec![not_right(scene), today(scene)],
        }
    }
}
