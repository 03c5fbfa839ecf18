//! Decides which content of an entry counts now: the newest unstruck correction, or none when the entry
//! is struck (rule sentence T1). Leaves to others what that content means.

use std::borrow::Borrow;
use std::collections::HashMap;
use std::mem::Discriminant;

use super::entry::{Content, Entry, EntryId, Place};
use crate::moment::Stamp;

/// An entry as it counts now.
#[derive(Clone, Debug)]
pub struct Counted<'a> {
    /// Its place.
    pub place: Place,
    /// The entry as first written.
    pub first: &'a Entry,
    /// The content that counts: its own, or that of its newest unstruck correction.
    pub content: &'a Content,
    /// When it happened, as it counts.
    pub happened: Stamp,
    /// Whether it is left out.
    pub struck: bool,
    /// How many unstruck corrections it has.
    pub corrections: usize,
}

/// Every entry that is neither a correction nor a strike, in order of place, as it counts now.
///
/// A correction of another kind than its root and a correction or strike of a machine mark count for
/// nothing, as in the rule engine; the companion refuses to write them.
#[must_use]
pub fn resolve(entries: &[Entry]) -> Vec<Counted<'_>> {
    let threads = Threads::of(entries);
    let at = |index| entries.get(index);
    entries
        .iter()
        .enumerate()
        .filter_map(|(index, entry)| threads.counted(index, entry, at))
        .collect()
}

/// How the entries of a diary hang together, without what they tell: small, so that a long diary need
/// not be held in memory to know what counts of it.
#[derive(Debug, Default)]
struct Threads {
    by_id: HashMap<EntryId, usize>,
    links: Vec<Link>,
    /// Of each entry that was put right, its unstruck corrections.
    corrected: HashMap<usize, Corrected>,
}

#[derive(Clone, Copy, Debug)]
struct Link {
    /// The kind of what it tells, or would put in the place of what it corrects.
    kind: Discriminant<Content>,
    persons: bool,
    does: Does,
    /// Whether an unstruck strike names it.
    struck: bool,
}

/// What an entry does, and to which earlier one; `None`: to one that is not there.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Does {
    Tells,
    Corrects(Option<usize>),
    Strikes(Option<usize>),
}

#[derive(Clone, Copy, Debug)]
struct Corrected {
    newest: usize,
    times: usize,
}

impl Threads {
    /// Of a whole diary, in the order it was written.
    fn of<'a>(entries: impl IntoIterator<Item = &'a Entry>) -> Self {
        let mut threads = Self::default();
        for entry in entries {
            threads.add(entry);
        }
        threads.settle();
        threads
    }

    /// Takes the next entry. After the last one, [`Self::settle`].
    fn add(&mut self, entry: &Entry) {
        let (told, does) = match &entry.what {
            Content::Strike { of } => (&entry.what, Does::Strikes(self.place_of(*of))),
            Content::Correction { of, content } => {
                (content.as_ref(), Does::Corrects(self.place_of(*of)))
            }
            told => (told, Does::Tells),
        };
        let (kind, persons) = (std::mem::discriminant(told), told.is_persons());
        self.by_id.entry(entry.id).or_insert(self.links.len());
        self.links.push(Link { kind, persons, does, struck: false });
    }

    fn place_of(&self, of: EntryId) -> Option<usize> {
        self.by_id.get(&of).copied()
    }

    /// Decides what is struck, from the newest backwards, since a strike can only name what was written
    /// before it; then which correction of an entry is the newest that is not.
    fn settle(&mut self) {
        for index in (0..self.links.len()).rev() {
            if let Some(Link { does: Does::Strikes(Some(of)), struck: false, .. }) =
                self.links.get(index).copied()
                && let Some(target) = self.links.get_mut(of)
            {
                target.struck = true;
            }
        }
        for (index, link) in self.links.iter().enumerate() {
            if !matches!(link.does, Does::Corrects(_)) || link.struck {
                continue;
            }
            let Some(root) = self.root_of(index) else { continue };
            let fits = |one: &Link| one.does == Does::Tells && one.persons && one.kind == link.kind;
            if self.links.get(root).is_some_and(fits) {
                let corrected = self.corrected.entry(root);
                let found = corrected.or_insert(Corrected { newest: index, times: 0 });
                *found = Corrected { newest: index, times: found.times + 1 };
            }
        }
    }

    /// The entry at this index as it counts; `None` for a correction or a strike, which counts in the
    /// entry it is about. `at` gives the corrections, by their index.
    fn counted<'a>(
        &self,
        index: usize,
        first: &'a Entry,
        at: impl Fn(usize) -> Option<&'a Entry>,
    ) -> Option<Counted<'a>> {
        let link = self.links.get(index).filter(|link| link.does == Does::Tells)?;
        let mut counted = Counted {
            place: index as Place + 1,
            first,
            content: &first.what,
            happened: first.happened,
            struck: link.struck && link.persons,
            corrections: 0,
        };
        if let Some(corrected) = self.corrected.get(&index)
            && let Some(newest) = at(corrected.newest)
            && let Content::Correction { content, .. } = &newest.what
        {
            counted.content = content;
            counted.happened = newest.happened;
            counted.corrections = corrected.times;
        }
        Some(counted)
    }

    fn is_struck(&self, index: usize) -> bool {
        self.links.get(index).is_some_and(|link| link.struck)
    }

    /// The entry a correction puts right in the end, following corrections of corrections.
    fn root_of(&self, index: usize) -> Option<usize> {
        let mut at = index;
        // Each step goes to an earlier place, so this ends.
        while let Does::Corrects(of) = self.links.get(at)?.does {
            at = of?;
        }
        Some(at)
    }

    /// The entry named, or the one that a correction or a strike of this name is about in the end.
    fn about(&self, of: EntryId) -> Option<usize> {
        let mut at = self.place_of(of)?;
        // Each step goes to an earlier place, so this ends.
        while let Does::Corrects(of) | Does::Strikes(of) = self.links.get(at)?.does {
            at = of?;
        }
        Some(at)
    }
}

/// What was put right and struck in a whole diary: all of it that has to be known before its first entry can be
/// folded. Holds the corrections and no other entry.
#[derive(Debug)]
pub(crate) struct Amended<E> {
    threads: Threads,
    corrections: HashMap<usize, E>,
}

impl<E: Borrow<Entry>> Amended<E> {
    /// Of all entries of a diary, in the order they were written.
    ///
    /// # Errors
    /// What reading an entry tells.
    pub(crate) fn read<T>(entries: impl Iterator<Item = Result<E, T>>) -> Result<Self, T> {
        let (mut threads, mut corrections) = (Threads::default(), HashMap::new());
        for (index, entry) in entries.enumerate() {
            let entry = entry?;
            threads.add(entry.borrow());
            if matches!(entry.borrow().what, Content::Correction { .. }) {
                corrections.insert(index, entry);
            }
        }
        threads.settle();
        Ok(Self { threads, corrections })
    }

    /// As [`Threads::counted`].
    pub(super) fn counted<'a>(&'a self, index: usize, first: &'a Entry) -> Option<Counted<'a>> {
        self.threads.counted(index, first, |at| self.corrections.get(&at).map(Borrow::borrow))
    }
}

/// An entry with everything that became of it.
#[derive(Clone, Debug)]
pub struct Whole<'a> {
    /// As it counts now.
    pub counted: Counted<'a>,
    /// Its versions in the order they were written, the first one first.
    pub versions: Vec<Version<'a>>,
    /// The newest strike by which it is left out.
    pub struck_by: Option<EntryId>,
}

/// One version of an entry.
#[derive(Clone, Copy, Debug)]
pub struct Version<'a> {
    /// The entry that wrote it.
    pub entry: &'a Entry,
    /// What it tells.
    pub content: &'a Content,
    /// Whether this version itself was taken back.
    pub struck: bool,
}

/// The entry named, or the one that a correction or a strike of this name is about; `None` where there is
/// none.
#[must_use]
pub fn whole(entries: &[Entry], of: EntryId) -> Option<Whole<'_>> {
    let threads = Threads::of(entries);
    let at = threads.about(of)?;
    let first = entries.get(at)?;
    let counted = threads.counted(at, first, |index| entries.get(index))?;
    let mut versions = vec![Version { entry: first, content: &first.what, struck: false }];
    let mut struck_by = None;
    for (index, entry) in entries.iter().enumerate().skip(at) {
        match &entry.what {
            Content::Correction { content, .. } if threads.root_of(index) == Some(at) => {
                versions.push(Version { entry, content, struck: threads.is_struck(index) });
            }
            Content::Strike { of } if *of == first.id && !threads.is_struck(index) => {
                struck_by = Some(entry.id);
            }
            _ => {}
        }
    }
    Some(Whole { counted, versions, struck_by })
}

#[cfg(test)]
mod tests;
