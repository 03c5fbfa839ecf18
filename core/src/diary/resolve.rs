//! Decides which content of an entry counts now: the newest unstruck correction, or none when the entry
//! is struck (rule sentence T1). Leaves to others what that content means.

use std::collections::HashMap;

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
    let by_id: HashMap<EntryId, usize> =
        entries.iter().enumerate().map(|(index, entry)| (entry.id, index)).collect();
    let struck = struck(entries, &by_id);
    let mut counted: Vec<Counted<'_>> = Vec::with_capacity(entries.len());
    let mut at: HashMap<usize, usize> = HashMap::new();
    for (index, entry) in entries.iter().enumerate() {
        let is_struck = struck.get(index).copied().unwrap_or(false);
        match &entry.what {
            Content::Strike { .. } => {}
            Content::Correction { content, .. } => {
                let Some(root) = root_of(index, entries, &by_id) else { continue };
                let Some(row) = at.get(&root).and_then(|row| counted.get_mut(*row)) else {
                    continue;
                };
                let same_kind = std::mem::discriminant(&row.first.what)
                    == std::mem::discriminant(content.as_ref());
                if !is_struck && same_kind && row.first.what.is_persons() {
                    row.content = content;
                    row.happened = entry.happened;
                    row.corrections += 1;
                }
            }
            content => {
                at.insert(index, counted.len());
                counted.push(Counted {
                    place: index as Place + 1,
                    first: entry,
                    content,
                    happened: entry.happened,
                    struck: is_struck && content.is_persons(),
                    corrections: 0,
                });
            }
        }
    }
    counted
}

/// For each entry, whether an unstruck strike names it. Decided from the newest backwards, since a
/// strike can only name what was written before it.
fn struck(entries: &[Entry], by_id: &HashMap<EntryId, usize>) -> Vec<bool> {
    let mut struck = vec![false; entries.len()];
    for (index, entry) in entries.iter().enumerate().rev() {
        let Content::Strike { of } = &entry.what else { continue };
        if struck.get(index).copied().unwrap_or(false) {
            continue;
        }
        if let Some(target) = by_id.get(of).filter(|target| **target < index)
            && let Some(flag) = struck.get_mut(*target)
        {
            *flag = true;
        }
    }
    struck
}

/// The entry a correction puts right in the end, following corrections of corrections.
fn root_of(index: usize, entries: &[Entry], by_id: &HashMap<EntryId, usize>) -> Option<usize> {
    let mut at = index;
    // Each step goes to an earlier place, so this ends.
    while let Content::Correction { of, .. } = &entries.get(at)?.what {
        let before = *by_id.get(of)?;
        if before >= at {
            return None;
        }
        at = before;
    }
    Some(at)
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
    let by_id: HashMap<EntryId, usize> =
        entries.iter().enumerate().map(|(index, entry)| (entry.id, index)).collect();
    let struck = struck(entries, &by_id);
    let is_struck = |index: usize| struck.get(index).copied().unwrap_or(false);
    let mut at = *by_id.get(&of)?;
    // Each step goes to an earlier place, so this ends.
    while let Content::Strike { of } | Content::Correction { of, .. } = &entries.get(at)?.what {
        at = *by_id.get(of).filter(|before| **before < at)?;
    }
    let first = entries.get(at)?;
    let counted = resolve(entries).into_iter().find(|row| row.first.id == first.id)?;
    let mut versions = vec![Version { entry: first, content: &first.what, struck: false }];
    let mut struck_by = None;
    for (index, entry) in entries.iter().enumerate().skip(at) {
        match &entry.what {
            Content::Correction { content, .. } if root_of(index, entries, &by_id) == Some(at) => {
                versions.push(Version { entry, content, struck: is_struck(index) });
            }
            Content::Strike { of } if *of == first.id && !is_struck(index) => {
                struck_by = Some(entry.id);
            }
            _ => {}
        }
    }
    Some(Whole { counted, versions, struck_by })
}
