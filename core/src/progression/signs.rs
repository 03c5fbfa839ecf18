//! Decides which signs are open (S1 to S3). What signs there are, and their tiers, is decided in
//! [`crate::safety`] when they are noted; the tier written in the entry is trusted here.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::line::{Day, RawId};
use super::outcome::OpenSign;
use crate::diary::entry::{EntryId, Place, SignKey};
use crate::moment::Stamp;
use crate::safety::{Sign, Tier};

/// The identity of a sign, compact.
pub(super) type RawKey = (RawId, Sign);

/// Compacts a key.
pub(super) fn raw(key: &SignKey) -> RawKey {
    (key.entry.0, key.sign)
}

/// What is known of one sign.
#[derive(Clone, Serialize, Deserialize)]
struct Known {
    /// Highest tier noted.
    tier: Tier,
    /// Place of the entry that opened it, or opened it anew by a higher tier.
    opened: Place,
    since: Stamp,
    /// Latest day on which it was said to have happened.
    reported: Day,
    /// The day of the clearing that closed it, if one did.
    closed: Option<Day>,
}

/// Every sign noted and which are open.
#[derive(Clone, Default, Serialize, Deserialize)]
pub(super) struct Signs {
    known: BTreeMap<RawKey, Known>,
    open: BTreeSet<(Place, RawKey)>,
    /// Latest day a sign above `note` was reported or cleared on, and the entry that noted it.
    latest: Option<(Day, RawId)>,
}

impl Signs {
    /// A sign is noted in an entry, or in a correction of it, at `place`.
    pub(super) fn note(&mut self, key: RawKey, tier: Tier, place: Place, at: &Stamp, day: Day) {
        let known = self.known.entry(key).or_insert_with(|| Known {
            tier: Tier::Note,
            opened: place,
            since: *at,
            reported: day,
            closed: None,
        });
        known.reported = known.reported.max(day);
        if tier > known.tier {
            self.open.remove(&(known.opened, key));
            let was_closed = known.closed.take().is_some();
            known.tier = tier;
            known.opened = place;
            known.since = *at;
            self.open.insert((place, key));
            if was_closed {
                self.find_latest();
                return;
            }
        }
        if known.tier > Tier::Note {
            self.latest = self.latest.max(Some((known.reported, key.0)));
        }
    }

    /// A clearing, or a revision that lists the sign as seen, written at `place`. Only the first one
    /// after the sign was opened closes it.
    pub(super) fn close(&mut self, key: RawKey, place: Place, day: Day) {
        let Some(known) = self.known.get_mut(&key) else { return };
        if known.tier == Tier::Note || place <= known.opened || known.closed.is_some() {
            return;
        }
        known.closed = Some(day);
        self.open.remove(&(known.opened, key));
        self.latest = self.latest.max(Some((day, key.0)));
    }

    fn find_latest(&mut self) {
        self.latest = self
            .known
            .iter()
            .filter(|(_, known)| known.tier > Tier::Note)
            .map(|(key, known)| {
                (known.closed.map_or(known.reported, |day| day.max(known.reported)), key.0)
            })
            .max();
    }

    /// Before all clearings are applied again.
    pub(super) fn forget_closings(&mut self) {
        self.open.clear();
        for (key, known) in &mut self.known {
            known.closed = None;
            if known.tier > Tier::Note {
                self.open.insert((known.opened, *key));
            }
        }
        self.find_latest();
    }

    /// Whether any is open.
    pub(super) fn any_open(&self) -> bool {
        !self.open.is_empty()
    }

    /// The open signs, oldest first.
    pub(super) fn open(&self) -> Vec<OpenSign> {
        self.open
            .iter()
            .filter_map(|(_, key)| {
                self.known.get(key).map(|known| OpenSign {
                    key: SignKey { entry: EntryId(key.0), sign: key.1 },
                    tier: known.tier,
                    since: known.since,
                })
            })
            .collect()
    }

    /// The latest day a sign above `note` was reported or cleared on, with the entry that noted it.
    pub(super) fn latest(&self) -> Option<(Day, RawId)> {
        self.latest
    }

    /// Keeps the open ones only; `latest` speaks for the rest.
    pub(super) fn trim(&mut self) {
        let open: BTreeSet<RawKey> = self.open.iter().map(|(_, key)| *key).collect();
        self.known.retain(|key, _| open.contains(key));
    }
}

#[cfg(test)]
mod tests;
