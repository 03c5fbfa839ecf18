//! Whether a summary goes on from an older one of the same diary. Decides which entries of the older one it ought to hold
//! and does not. Leaves to [`crate::screens`] what is said of it.

use std::collections::HashSet;

use chrono::NaiveDate;

use super::form::{Narrowed, Summary};
use super::select::{Selection, row_goes};
use crate::diary::entry::EntryId;
use crate::diary::resolve::resolve;

/// What an older summary holds and a newer one lacks, although the newer one says nothing that explains it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lacking {
    /// Entries that a person wrote, at least 1. Corrections and what was left out are not counted apart.
    pub entries: usize,
    /// The first day of them, as the older summary has it.
    pub first: NaiveDate,
    /// The last day of them.
    pub last: NaiveDate,
    /// Whether one of them that counts there notes a sign.
    pub signs: bool,
}

impl Summary {
    /// What of an older summary of the same diary ought to be here and is not: two copies of the diary then went apart,
    /// or one was put back from a copy.
    ///
    /// `None` where nothing is lacking, and where it may be explained: this one was narrowed so that it does not
    /// show it, something was erased in only one of the two, or as many entries are known to be missing by damage.
    #[must_use]
    pub fn lacks_of(&self, older: &Self) -> Option<Lacking> {
        if self.marks.erased != older.marks.erased {
            return None;
        }
        let here: HashSet<EntryId> = self.entries.iter().map(|entry| entry.id).collect();
        let selection = self.narrowed.selection();
        let counted = resolve(&older.entries);
        let gone = counted.iter().filter(|row| {
            let id = row.first.id;
            row.first.what.is_persons() && row_goes(row, &selection) && !here.contains(&id)
        });
        let mut lacking: Option<Lacking> = None;
        for row in gone {
            let day = row.happened.day();
            let signs = !row.struck && !row.content.signs().is_empty();
            lacking = Some(match lacking {
                None => Lacking { entries: 1, first: day, last: day, signs },
                Some(so_far) => Lacking {
                    entries: so_far.entries + 1,
                    first: so_far.first.min(day),
                    last: so_far.last.max(day),
                    signs: so_far.signs || signs,
                },
            });
        }
        let damaged = self.marks.missing_entries.saturating_sub(older.marks.missing_entries);
        lacking.filter(|lacking| u64::try_from(lacking.entries).is_ok_and(|gone| gone > damaged))
    }
}

impl Narrowed {
    /// The choice that it came from.
    fn selection(&self) -> Selection {
        Selection {
            from: self.from,
            to: self.to,
            notes: !self.notes_left_out,
            questions: !self.questions_left_out,
        }
    }
}
