//! What a summary contains, before it leaves: in counts and words, so that the person decides.

use serde::Serialize;

use super::plain;
use crate::diary::entry::Content;
use crate::diary::resolve::resolve;
use crate::summary::Summary;
use crate::words::Words;

/// Who can open the file.
#[derive(Clone, PartialEq, Eq)]
pub enum Opens {
    /// Those named in the plan, and nobody else.
    Recipients(Vec<String>),
    /// Whoever knows the passphrase.
    Passphrase,
    /// Anyone who gets it.
    Anyone,
}

/// A summary before it leaves.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SummaryScreen {
    /// Heading.
    pub title: String,
    /// What is in it.
    pub holds: Vec<String>,
    /// What is left out.
    pub leaves_out: Vec<String>,
    /// What is seen although it was put right or left out.
    pub still_seen: Vec<String>,
    /// Who can open it.
    pub opens: Vec<String>,
    /// The wish for time alone, where it goes along.
    pub time_alone: Option<String>,
    /// That it is hers to decide, and what cannot be taken back.
    pub decide: Vec<String>,
}

impl SummaryScreen {
    /// The screen. `time_alone` is asked only where the file is sealed; in an open one it is left out.
    #[must_use]
    pub fn new(summary: &Summary, opens: &Opens, time_alone: bool, words: &Words) -> Self {
        let counted = resolve(&summary.entries);
        let standing = || counted.iter().filter(|row| !row.struck);
        let count = |is: fn(&Content) -> bool| standing().filter(|row| is(row.content)).count();
        let sessions = count(|what| matches!(what, Content::Session(_)));
        let questions = count(|what| matches!(what, Content::Question { .. }));
        let notes = count(|what| match what {
            Content::Session(session) => session.note.is_some(),
            Content::SignReported { note, .. } => note.is_some(),
            _ => false,
        });
        let rated =
            count(|what| matches!(what, Content::FunctionRated { .. } | Content::GoalRated { .. }));
        let sealed = *opens != Opens::Anyone;
        Self {
            title: words.text("summary-title", &[]),
            holds: vec![
                words.text("summary-sessions", &[("count", sessions.into())]),
                words.text("summary-questions", &[("count", questions.into())]),
                words.text("summary-notes", &[("count", notes.into())]),
                words.text("summary-rated", &[("count", rated.into())]),
                words.text("summary-signs", &[]),
                words.text("summary-plan", &[]),
            ],
            leaves_out: leaves_out(summary, words),
            still_seen: still_seen(&counted, words),
            opens: self::opens(opens, words),
            time_alone: (sealed && time_alone).then(|| words.text("summary-time-alone", &[])),
            decide: vec![
                words.text("summary-decide", &[]),
                words.text("summary-cannot-take-back", &[]),
                words.text("summary-nobody-told", &[]),
            ],
        }
    }
}

fn leaves_out(summary: &Summary, words: &Words) -> Vec<String> {
    let narrowed = &summary.narrowed;
    let mut says = Vec::new();
    if let Some(from) = narrowed.from {
        says.push(words.text("summary-before", &[("day", plain::date(words, from).into())]));
    }
    if let Some(to) = narrowed.to {
        says.push(words.text("summary-after", &[("day", plain::date(words, to).into())]));
    }
    if narrowed.notes_left_out {
        says.push(words.text("summary-no-notes", &[]));
    }
    if narrowed.questions_left_out {
        says.push(words.text("summary-no-questions", &[]));
    }
    if narrowed.is_narrowed() {
        says.push(words.text("summary-narrowing-shows", &[]));
    }
    says.push(words.text("summary-never", &[]));
    says
}

/// Corrected and left-out versions go along as numbers.
fn still_seen(counted: &[crate::diary::resolve::Counted<'_>], words: &Words) -> Vec<String> {
    let put_right = counted.iter().filter(|row| row.corrections > 0).count();
    let struck = counted.iter().filter(|row| row.struck).count();
    let mut says = Vec::new();
    if put_right > 0 {
        says.push(words.text("summary-put-right", &[("count", put_right.into())]));
    }
    if struck > 0 {
        says.push(words.text("summary-left-out", &[("count", struck.into())]));
    }
    says
}

pub(super) fn opens(opens: &Opens, words: &Words) -> Vec<String> {
    match opens {
        Opens::Recipients(names) => {
            vec![words.text("summary-opens-recipients", &[("names", names.join(", ").into())])]
        }
        Opens::Passphrase => vec![words.text("summary-opens-passphrase", &[])],
        Opens::Anyone => vec![words.text("summary-opens-anyone", &[])],
    }
}
