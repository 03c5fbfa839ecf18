//! What a diary holds at a moment: which entries stand, with which content (T1), and what the clock can
//! be trusted for (T3).

use std::collections::BTreeMap;
use std::mem::discriminant;
use std::sync::Arc;

use frond_core::diary::entry::{Content, Entry, EntryId, Place, Session};
use frond_core::moment::Stamp;
use frond_core::programme::plan::Programme;

const TEN_MINUTES: i64 = 10 * 60 * 1000;

/// Every programme text of a diary, read once, because the latch looks at every prefix.
pub type Shelf = BTreeMap<Arc<str>, Programme>;

/// Reads every programme text that the entries carry.
#[must_use]
pub fn shelf(entries: &[Entry]) -> Shelf {
    entries
        .iter()
        .filter_map(|entry| match told(entry) {
            Content::ProgrammeAccepted { carried, .. } => {
                Some((carried.clone(), serde_json::from_str(carried).ok()?))
            }
            _ => None,
        })
        .collect()
}

/// An entry that stands, with the content that counts.
#[derive(Clone)]
pub struct Item<'a> {
    /// Its place: that of the first entry, whatever was corrected later (T1).
    pub place: Place,
    /// Its identity: that of the first entry.
    pub id: EntryId,
    /// The version that counts: the newest correction that stands, or the entry itself.
    pub counts: &'a Entry,
    /// The first entry.
    pub root: &'a Entry,
    /// The first entry and every correction of it, struck or not.
    pub versions: Vec<&'a Entry>,
}

impl<'a> Item<'a> {
    /// When it happened, corrected.
    #[must_use]
    pub fn happened(&self) -> Stamp {
        self.counts.happened
    }
    /// What it tells, corrected.
    #[must_use]
    pub fn told(&self) -> &'a Content {
        told(self.counts)
    }
    /// The session it tells of.
    #[must_use]
    pub fn session(&self) -> Option<&'a Session> {
        match self.told() {
            Content::Session(session) => Some(session),
            _ => None,
        }
    }
}

/// The content an entry carries: its own, or for a correction the new one.
#[must_use]
pub fn told(entry: &Entry) -> &Content {
    match &entry.what {
        Content::Correction { content, .. } => content,
        other => other,
    }
}

/// A diary as read at a moment.
pub struct Reading<'a> {
    /// Everything written so far, struck or not.
    pub entries: &'a [Entry],
    /// The moment.
    pub now: Stamp,
    /// What stands, by place.
    pub items: Vec<Item<'a>>,
    /// Programmes by their text.
    pub shelf: &'a Shelf,
}

/// The index of the entry named, if it was written before index `before`.
fn named(entries: &[Entry], id: EntryId, before: usize) -> Option<usize> {
    entries[..before].iter().position(|entry| entry.id == id)
}

/// The index of the first entry behind a name: naming a correction names what it corrects. A correction
/// that fits nothing is nothing to be named.
#[must_use]
pub fn root(entries: &[Entry], id: EntryId, before: usize) -> Option<usize> {
    let index = named(entries, id, before)?;
    match entries[index].what {
        Content::Correction { .. } => corrects(entries, index),
        _ => Some(index),
    }
}

/// What entry `index` corrects, if it is a correction that can count: of something a person wrote, by
/// something of the same kind. A strike is put right by a strike.
#[must_use]
pub fn corrects(entries: &[Entry], index: usize) -> Option<usize> {
    let Content::Correction { of, content } = &entries[index].what else { return None };
    let root = root(entries, *of, index)?;
    let first = &entries[root].what;
    let fits = first.is_persons()
        && !matches!(first, Content::Strike { .. })
        && discriminant(first) == discriminant(content.as_ref());
    fits.then_some(root)
}

/// Which entries stand, struck ones left out. A strike names only what was written before it, so the
/// last entry is settled first.
fn standing(entries: &[Entry]) -> Vec<bool> {
    let mut stands = vec![true; entries.len()];
    for index in (0..entries.len()).rev() {
        if let (true, Content::Strike { of }) = (stands[index], &entries[index].what) {
            let target = named(entries, *of, index);
            if let Some(target) = target.filter(|&target| entries[target].what.is_persons()) {
                stands[target] = false;
            }
        }
    }
    stands
}

/// The version of entry `first` that counts.
fn counting(entries: &[Entry], first: usize, stands: &[bool]) -> usize {
    (first + 1..entries.len())
        .rev()
        .find(|&later| stands[later] && corrects(entries, later) == Some(first))
        .unwrap_or(first)
}

/// An entry and all corrections of it, struck or not.
#[must_use]
pub fn versions(entries: &[Entry], first: usize) -> Vec<&Entry> {
    let corrections =
        (first + 1..entries.len()).filter(|&later| corrects(entries, later) == Some(first));
    std::iter::once(first).chain(corrections).map(|index| &entries[index]).collect()
}

impl<'a> Reading<'a> {
    /// F5: the strikes that touch a session in the end, through strikes of strikes and corrections, struck
    /// themselves or not.
    #[must_use]
    pub fn session_strikes(&self) -> Vec<&'a Entry> {
        let touches = |mut index: usize| loop {
            let Content::Strike { of } = &self.entries[index].what else {
                return matches!(self.entries[index].what, Content::Session(_));
            };
            match root(self.entries, *of, index) {
                Some(target) => index = target,
                None => return false,
            }
        };
        let strikes = (0..self.entries.len())
            .filter(|&index| matches!(self.entries[index].what, Content::Strike { .. }));
        strikes.filter(|&index| touches(index)).map(|index| &self.entries[index]).collect()
    }

    /// Reads what stands.
    #[must_use]
    pub fn new(entries: &'a [Entry], now: Stamp, shelf: &'a Shelf) -> Self {
        let stands = standing(entries);
        let items = (0..entries.len())
            .filter(|&index| {
                stands[index] && !matches!(entries[index].what, Content::Correction { .. })
            })
            .map(|index| Item {
                place: index as Place + 1,
                id: entries[index].id,
                counts: &entries[counting(entries, index, &stands)],
                root: &entries[index],
                versions: versions(entries, index),
            })
            .collect();
        Self { entries, now, items, shelf }
    }

    /// Whether a time lies more than ten minutes ahead.
    #[must_use]
    pub fn ahead(&self, stamp: Stamp) -> bool {
        stamp.millis() > self.now.millis() + TEN_MINUTES
    }

    /// T3, first half: a stored entry, struck or not, lies ahead.
    #[must_use]
    pub fn entry_ahead(&self) -> bool {
        self.entries.iter().any(|entry| self.ahead(entry.written) || self.ahead(entry.happened))
    }

    /// T3, second half: a jump or a long absence was noticed and not confirmed since.
    #[must_use]
    pub fn jump_unconfirmed(&self) -> bool {
        let last = |wanted: fn(&Content) -> bool| {
            self.items.iter().filter(|item| wanted(item.told())).map(|item| item.place).max()
        };
        last(|content| matches!(content, Content::ClockMark { .. }))
            > last(|content| matches!(content, Content::TimeConfirmed {}))
    }

    /// Whether the clock is unsure.
    #[must_use]
    pub fn unsure(&self) -> bool {
        self.entry_ahead() || self.jump_unconfirmed()
    }

    /// T2: calendar days from then to now; below zero counts as zero.
    #[must_use]
    pub fn days_since(&self, then: Stamp) -> i64 {
        (self.now.day() - then.day()).num_days().max(0)
    }

    /// Every clearing.
    pub fn clearings(&self) -> impl Iterator<Item = &Item<'a>> {
        self.items.iter().filter(|item| matches!(item.told(), Content::Clearing { .. }))
    }

    /// The clearings that close the pause.
    pub fn pause_clearings(&self) -> impl Iterator<Item = &Item<'a>> {
        self.items
            .iter()
            .filter(|item| matches!(item.told(), Content::Clearing { closes_pause: true, .. }))
    }
}
