//! What of a diary goes into a summary: the person's choice, and what never leaves whatever she chooses.

use std::collections::{HashMap, HashSet};

use chrono::NaiveDate;
use serde::Serialize;

use super::form::{Form, Marks, Narrowed, Summary, VERSION};
use super::identity::DiaryIdentity;
use super::present::Present;
use crate::diary::entry::{Content, Entry, EntryId, Settings};
use crate::diary::resolve::{Counted, resolve};
use crate::diary::state::State;
use crate::moment::Stamp;
use crate::programme::values::{Line, Passage};
use crate::progression::{FoldError, assess};
use crate::words::Words;

/// What she chose to hand over. Whether she would like time alone is no part of it: that is asked only
/// where the summary is sealed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Selection {
    /// Nothing that happened before this day.
    pub from: Option<NaiveDate>,
    /// Nothing that happened after this day.
    pub to: Option<NaiveDate>,
    /// With her notes.
    pub notes: bool,
    /// With her questions for the visit.
    pub questions: bool,
}

impl Default for Selection {
    /// Everything.
    fn default() -> Self {
        Self { from: None, to: None, notes: true, questions: true }
    }
}

impl Selection {
    fn holds(&self, day: NaiveDate) -> bool {
        self.from.is_none_or(|from| from <= day) && self.to.is_none_or(|to| day <= to)
    }
}

/// Stands where words were taken out of a version that no longer counts.
const TAKEN_OUT: &str = "…";

impl Summary {
    /// The summary of a diary at a moment. It carries no wish for time alone: that comes with sealing.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in the diary cannot be read.
    pub fn of(
        entries: &[Entry],
        identity: &DiaryIdentity,
        selection: &Selection,
        now: &Stamp,
    ) -> Result<Self, FoldError> {
        let state = State::from_history(entries)?;
        let words = Words::for_language(state.language().unwrap_or("en"));
        let present = Present::of(&assess(entries, now)?, entries, *now);
        let counted = resolve(entries);
        let begins_on = match selection.from {
            Some(from) => step_at(&counted, from)?,
            None => None,
        };
        Ok(Self {
            form: Form,
            version: VERSION,
            diary: identity.id,
            made: *now,
            language: words.language().tag.to_owned(),
            narrowed: Narrowed {
                from: selection.from,
                to: selection.to,
                begins_on,
                notes_left_out: !selection.notes,
                questions_left_out: !selection.questions,
            },
            time_alone: false,
            entries: selected(entries, &counted, selection),
            present,
            marks: marks(entries),
        })
    }
}

fn marks(entries: &[Entry]) -> Marks {
    let mut marks = Marks::default();
    for entry in entries {
        match &entry.what {
            Content::MissingMark { entries, .. } => {
                marks.missing_entries += u64::from(entries.get());
            }
            Content::RestoredMark { .. } => marks.restored += 1,
            Content::ErasedMark { .. } => marks.erased += 1,
            _ => {}
        }
    }
    marks
}

/// The step in use when a day begins, by what counts.
fn step_at(
    counted: &[Counted<'_>],
    day: NaiveDate,
) -> Result<Option<crate::programme::values::StepId>, FoldError> {
    let stretches = super::stretch::stretches(counted, None)?;
    let before = stretches.iter().rfind(|stretch| stretch.began.day() < day);
    Ok(before.map(|stretch| stretch.step.id.clone()))
}

fn selected(entries: &[Entry], counted: &[Counted<'_>], selection: &Selection) -> Vec<Entry> {
    let whole = selection.from.is_none() && selection.to.is_none() && selection.questions;
    // By id: whether the first entry goes along, and the content of each that counts.
    let mut goes: HashMap<EntryId, bool> = HashMap::new();
    let mut counts: HashSet<*const Content> = HashSet::new();
    for row in counted {
        goes.insert(row.first.id, row_goes(row, selection));
        if !row.struck {
            counts.insert(std::ptr::from_ref(row.content));
        }
    }
    let mut kept = Vec::with_capacity(entries.len());
    for entry in entries {
        // What puts an entry right or leaves it out goes where that entry goes.
        let follows = match &entry.what {
            Content::Correction { of, .. } | Content::Strike { of } => goes.get(of).copied(),
            _ => goes.get(&entry.id).copied(),
        };
        // One that leads nowhere, where entries are missing, belongs to the whole alone.
        let follows = follows.unwrap_or(whole);
        goes.insert(entry.id, follows);
        if follows {
            kept.push(Entry {
                id: entry.id,
                written: entry.written,
                happened: entry.happened,
                uptime: None,
                what: bared(&entry.what, &counts, selection),
            });
        }
    }
    kept
}

/// Whether an entry goes along, by how it counts.
pub(super) fn row_goes(row: &Counted<'_>, selection: &Selection) -> bool {
    match row.content {
        // The clinician's own plan, without which nothing else can be read; and the machine's marks, which
        // say how far the rest can be trusted.
        Content::ProgrammeAccepted { .. } => true,
        content if !content.is_persons() => true,
        Content::Question { .. } if !selection.questions => false,
        // A span of days goes if any of it lies in the days chosen.
        Content::TimeOff { from, to } => {
            selection.from.is_none_or(|first| first <= *to)
                && selection.to.is_none_or(|last| *from <= last)
        }
        _ => selection.holds(row.happened.day()),
    }
}

/// The content as it leaves.
fn bared(content: &Content, counts: &HashSet<*const Content>, selection: &Selection) -> Content {
    let mut bare = match content {
        Content::Correction { of, content } => {
            let content = Box::new(bared(content, counts, selection));
            return Content::Correction { of: *of, content };
        }
        Content::LookForward { .. }
        | Content::HoldConditions { .. }
        | Content::Reminders(_)
        | Content::PutOff { .. }
        | Content::Settings(_) => {
            return Content::Settings(Settings::default());
        }
        other => other.clone(),
    };
    let counting = counts.contains(&std::ptr::from_ref(content));
    if !(counting && selection.notes) {
        match &mut bare {
            Content::Session(session) => session.note = None,
            Content::SignReported { note, .. } => *note = None,
            _ => {}
        }
    }
    if !counting {
        take_words_out(&mut bare);
    }
    bare
}

/// Other words of a version that no longer counts.
fn take_words_out(content: &mut Content) {
    let line = || Line::new(TAKEN_OUT);
    match content {
        Content::Question { text } => {
            if let Ok(out) = Passage::new(TAKEN_OUT) {
                *text = out;
            }
        }
        Content::FunctionRated { activity: words, .. }
        | Content::GoalRated { goal: words, .. }
        | Content::Clearing { with: words, .. } => {
            if let Ok(out) = line() {
                *words = out;
            }
        }
        _ => {}
    }
}
