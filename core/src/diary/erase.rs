//! Decides what goes along when entries are erased, so that nothing of what they told is left: their
//! corrections and strikes, what was answered upon them, and where a talk names a caution of theirs.
//! Leaves to [`super::store`] that it really goes, and to the companion who may ask for it.
//!
//! A programme, settings and what Frond wrote itself stay when a span is erased: they are not what the
//! person told of those days.

use std::collections::HashSet;

use chrono::NaiveDate;

use super::entry::{Content, Entry, EntryId, SignKey};
use crate::moment::Stamp;

/// What is to be erased.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Erase {
    /// One entry, with its corrections.
    Entry(EntryId),
    /// Everything that happened on these days, both ends included, or was ever said to have.
    Days {
        /// First day.
        from: NaiveDate,
        /// Last day.
        to: NaiveDate,
    },
}

/// What is kept and what goes.
#[derive(Clone)]
pub struct Erasure {
    /// What stays, in order: the place it has now (counted from 0), and its new content where something
    /// in it named what goes.
    pub keep: Vec<(usize, Option<Entry>)>,
    /// How many entries go, corrections, strikes and answers not counted.
    pub entries: usize,
    /// The latest time any of them was ever said to have.
    pub latest: Stamp,
    /// Whether one of them holds a caution that is still open.
    pub caution_open: bool,
}

/// Whether this entry can be erased on its own.
#[must_use]
pub fn can_go(content: &Content) -> bool {
    content.is_persons()
        && !matches!(content, Content::ProgrammeAccepted { .. } | Content::Strike { .. })
}

impl Erase {
    /// What this comes to in a diary in which these cautions are open; `None` when nothing goes.
    #[must_use]
    pub fn of(self, entries: &[Entry], open: &[SignKey]) -> Option<Erasure> {
        let roots = self.roots(entries);
        let gone = with_all_that_hangs_on(entries, &roots);
        let going = || entries.iter().filter(|entry| gone.contains(&entry.id));
        let latest = going().map(|entry| entry.happened).max_by_key(Stamp::millis)?;
        let keep = entries
            .iter()
            .enumerate()
            .filter(|(_, entry)| !gone.contains(&entry.id))
            .map(|(place, entry)| (place, unnamed(entry, &gone)))
            .collect();
        let caution_open = open.iter().any(|key| gone.contains(&key.entry));
        Some(Erasure { keep, entries: roots.len(), latest, caution_open })
    }

    /// The first versions of what was chosen.
    fn roots(self, entries: &[Entry]) -> HashSet<EntryId> {
        let root = |id: EntryId| {
            let mut at = id;
            // A correction names an entry before it, so this ends.
            for entry in entries.iter().rev() {
                if entry.id == at
                    && let Content::Correction { of, .. } = &entry.what
                {
                    at = *of;
                }
            }
            at
        };
        let goes =
            |id: &EntryId| entries.iter().any(|entry| entry.id == *id && can_go(&entry.what));
        match self {
            Self::Entry(id) => std::iter::once(root(id)).filter(goes).collect(),
            Self::Days { from, to } => entries
                .iter()
                .filter(|entry| (from..=to).contains(&entry.happened.day()))
                .filter(|entry| match &entry.what {
                    Content::Correction { content, .. } => is_of_a_day(content),
                    other => is_of_a_day(other),
                })
                .map(|entry| root(entry.id))
                .filter(goes)
                .collect(),
        }
    }
}

/// Whether it tells something of a day, rather than how the app is set up.
fn is_of_a_day(content: &Content) -> bool {
    can_go(content)
        && !matches!(
            content,
            Content::Settings(_)
                | Content::LookForward { .. }
                | Content::HoldConditions { .. }
                | Content::Reminders(_)
                | Content::PutOff { .. }
        )
}

/// The entries and whatever corrects, strikes or answers one of them, whatever strikes that, and so on.
fn with_all_that_hangs_on(entries: &[Entry], roots: &HashSet<EntryId>) -> HashSet<EntryId> {
    let mut gone = roots.clone();
    // Each of these names an entry before it, so once through is enough.
    for entry in entries {
        let on = match &entry.what {
            Content::Correction { of, .. }
            | Content::Strike { of }
            | Content::Settled { of, .. } => Some(of),
            Content::SuggestionAnswered { shown, .. } => Some(shown),
            _ => None,
        };
        if on.is_some_and(|on| gone.contains(on)) {
            gone.insert(entry.id);
        }
    }
    gone
}

/// The entry without the cautions it names that go; `None` where it names none.
fn unnamed(entry: &Entry, gone: &HashSet<EntryId>) -> Option<Entry> {
    let what = without(&entry.what, gone)?;
    Some(Entry { what, ..entry.clone() })
}

fn without(content: &Content, gone: &HashSet<EntryId>) -> Option<Content> {
    match content {
        Content::Clearing { with, signs, closes_pause } => {
            let left: Vec<SignKey> =
                signs.iter().filter(|key| !gone.contains(&key.entry)).copied().collect();
            (left.len() < signs.len()).then(|| Content::Clearing {
                with: with.clone(),
                signs: left,
                closes_pause: *closes_pause,
            })
        }
        Content::Correction { of, content } => {
            let content = Box::new(without(content, gone)?);
            Some(Content::Correction { of: *of, content })
        }
        _ => None,
    }
}
