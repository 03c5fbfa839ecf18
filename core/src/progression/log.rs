//! Decides which version of an entry counts (T1): corrections, strikes, and strikes of strikes. It keeps
//! every entry in short, so that what was corrected or struck can be put back. A trimmed fold has none.

use std::collections::HashMap;
use std::sync::Arc;

use chrono::Datelike;
use serde::{Deserialize, Serialize};

use super::line::{Day, RawId, Seen, When};
use super::signs::{RawKey, raw};
use crate::diary::entry::{Content, Entry, FeelsReady, Place};
use crate::moment::Stamp;
use crate::programme::plan::Programme;
use crate::programme::values::{Practice, StepId};

/// What a version tells, as far as the rule asks.
#[derive(Clone, Serialize, Deserialize)]
pub(super) enum Tale {
    Session {
        practice: Practice,
        seen: Seen,
    },
    StepChange {
        to: StepId,
        at: Stamp,
    },
    Confirmed {
        step: StepId,
    },
    Accepted {
        text: Arc<str>,
        at: Stamp,
        /// Read again on load; the text is what is kept.
        #[serde(skip)]
        plan: Option<Arc<Programme>>,
    },
    Clearing {
        signs: Vec<RawKey>,
        closes: bool,
    },
    Ready {
        yes: bool,
    },
    Stay {
        stay: bool,
    },
    Off {
        from: Day,
        to: Day,
    },
    TimeConfirmed,
    /// Nothing more than the signs noted when it was written.
    Plain,
}

impl Tale {
    /// What an entry or the content of a correction tells. `plan` is its programme, where it is one.
    pub(super) fn of(
        content: &Content,
        entry: &Entry,
        place: Place,
        plan: Option<Arc<Programme>>,
    ) -> Self {
        match content {
            Content::Session(session) => Self::Session {
                practice: session.practice.clone(),
                seen: Seen::of(session, entry.id.0, When::of(&entry.happened), place),
            },
            Content::StepChange { to, .. } => {
                Self::StepChange { to: to.clone(), at: entry.happened }
            }
            Content::StepConfirmed { step } => Self::Confirmed { step: step.clone() },
            Content::ProgrammeAccepted { carried, .. } => {
                Self::Accepted { text: Arc::clone(carried), at: entry.happened, plan }
            }
            Content::Clearing { signs, closes_pause, .. } => {
                Self::Clearing { signs: signs.iter().map(raw).collect(), closes: *closes_pause }
            }
            Content::FeelsReady { answer } => Self::Ready { yes: *answer == FeelsReady::Yes },
            Content::StayHere { stay } => Self::Stay { stay: *stay },
            Content::TimeOff { from, to } => {
                Self::Off { from: from.num_days_from_ce(), to: to.num_days_from_ce() }
            }
            Content::TimeConfirmed {} => Self::TimeConfirmed,
            _ => Self::Plain,
        }
    }

    /// Whether naming the step or the programme in force hangs on it (S4).
    pub(super) fn names_step(&self) -> bool {
        matches!(self, Self::StepChange { .. } | Self::Accepted { .. })
    }
}

/// One version of an entry: the entry itself, or a correction.
#[derive(Clone, Serialize, Deserialize)]
pub(super) struct Version {
    /// Milliseconds since 1970.
    pub written: i64,
    pub when: When,
    /// How many strikes that count lie on it.
    struck: u32,
    pub tale: Tale,
}

/// An entry with its corrections.
#[derive(Clone, Serialize, Deserialize)]
pub(super) struct Root {
    pub id: RawId,
    pub place: Place,
    kind: u8,
    /// How many strikes that count lie on the whole.
    struck: u32,
    versions: Vec<Version>,
}

impl Root {
    /// The version that counts: the newest unstruck one, unless the whole is struck.
    pub(super) fn counting(&self) -> Option<&Version> {
        if self.struck > 0 {
            return None;
        }
        self.versions.iter().rev().find(|version| version.struck == 0)
    }

    /// Whether it ever could concern the step or programme in force.
    pub(super) fn names_step(&self) -> bool {
        self.versions.iter().any(|version| version.tale.names_step())
    }

    /// The session that counts, with what all versions say about signs and lateness (F3).
    pub(super) fn session(&self) -> Option<(&Practice, Seen)> {
        let version = self.counting()?;
        let Tale::Session { practice, seen } = &version.tale else { return None };
        let earliest = self.versions.iter().map(|version| version.when.t).min()?;
        let first_written = self.versions.first()?.written;
        let flagged = self
            .versions
            .iter()
            .any(|version| matches!(&version.tale, Tale::Session { seen, .. } if seen.flagged));
        let mut seen = *seen;
        seen.id = self.id;
        seen.key.place = self.place;
        seen.flagged = flagged;
        seen.lag = version.written.max(first_written).saturating_sub(earliest);
        Some((practice, seen))
    }

    /// Whether it is a session.
    pub(super) fn is_session(&self) -> bool {
        matches!(self.versions.first(), Some(Version { tale: Tale::Session { .. }, .. }))
    }
}

#[derive(Clone, Copy, Serialize, Deserialize)]
enum Slot {
    Root(usize),
    Version(usize, usize),
    Strike(usize),
}

#[derive(Clone, Serialize, Deserialize)]
struct Strike {
    id: RawId,
    on: Option<Slot>,
    struck: u32,
}

/// Every entry a person wrote, in short.
#[derive(Clone, Default, Serialize, Deserialize)]
pub(super) struct Log {
    pub roots: Vec<Root>,
    strikes: Vec<Strike>,
    corrections: Vec<(RawId, usize, usize)>,
    #[serde(skip)]
    index: HashMap<RawId, Slot>,
}

impl Log {
    /// Adds an entry.
    pub(super) fn add(&mut self, entry: &Entry, place: Place, version: Version) {
        self.index.entry(entry.id.0).or_insert(Slot::Root(self.roots.len()));
        self.roots.push(Root {
            id: entry.id.0,
            place,
            kind: kind(&entry.what),
            struck: 0,
            versions: vec![version],
        });
    }

    /// The entry a correction puts right, if its content may stand there. A correction named instead
    /// of the entry leads to the entry.
    pub(super) fn corrected(&self, of: RawId, content: &Content) -> Option<usize> {
        let root = match self.index.get(&of)? {
            Slot::Root(root) | Slot::Version(root, _) => *root,
            Slot::Strike(_) => return None,
        };
        (self.roots.get(root)?.kind == kind(content)).then_some(root)
    }

    /// Adds a correction.
    pub(super) fn correct(&mut self, root: usize, entry: &Entry, tale: Tale) {
        if let Some(found) = self.roots.get_mut(root) {
            let version = found.versions.len();
            found.versions.push(Version::of(entry, tale));
            self.corrections.push((entry.id.0, root, version));
            self.index.entry(entry.id.0).or_insert(Slot::Version(root, version));
        }
    }

    /// The entry that a strike of `of` would touch in the end, through strikes of strikes.
    pub(super) fn touched(&self, of: RawId) -> Option<usize> {
        let mut slot = *self.index.get(&of)?;
        loop {
            match slot {
                Slot::Root(root) | Slot::Version(root, _) => return Some(root),
                // A strike names what was written before it, so this ends.
                Slot::Strike(strike) => slot = self.strikes.get(strike)?.on?,
            }
        }
    }

    /// Adds a strike.
    pub(super) fn strike(&mut self, id: RawId, of: RawId) {
        let on = self.index.get(&of).copied();
        self.index.entry(id).or_insert(Slot::Strike(self.strikes.len()));
        self.strikes.push(Strike { id, on, struck: 0 });
        let (mut next, mut more) = (on, true);
        while let Some(slot) = next {
            let Some(count) = self.count(slot) else { return };
            let before = *count > 0;
            *count = if more { count.saturating_add(1) } else { count.saturating_sub(1) };
            let after = *count > 0;
            if before == after {
                return;
            }
            // A strike that is struck no longer counts, one that is freed counts again.
            next = match slot {
                Slot::Strike(strike) => self.strikes.get(strike).and_then(|strike| strike.on),
                _ => None,
            };
            more = !after;
        }
    }

    fn count(&mut self, slot: Slot) -> Option<&mut u32> {
        match slot {
            Slot::Root(root) => self.roots.get_mut(root).map(|root| &mut root.struck),
            Slot::Version(root, version) => self
                .roots
                .get_mut(root)
                .and_then(|root| root.versions.get_mut(version))
                .map(|version| &mut version.struck),
            Slot::Strike(strike) => self.strikes.get_mut(strike).map(|strike| &mut strike.struck),
        }
    }

    /// After loading: the index, and the programmes read by `read`.
    pub(super) fn awaken<E>(
        &mut self,
        mut read: impl FnMut(&str) -> Result<Arc<Programme>, E>,
    ) -> Result<(), E> {
        self.index.clear();
        for (at, root) in self.roots.iter_mut().enumerate() {
            self.index.entry(root.id).or_insert(Slot::Root(at));
            for version in &mut root.versions {
                if let Tale::Accepted { text, plan, .. } = &mut version.tale {
                    *plan = Some(read(text)?);
                }
            }
        }
        for (id, root, version) in &self.corrections {
            self.index.entry(*id).or_insert(Slot::Version(*root, *version));
        }
        for (at, strike) in self.strikes.iter().enumerate() {
            self.index.entry(strike.id).or_insert(Slot::Strike(at));
        }
        Ok(())
    }
}

impl Version {
    pub(super) fn of(entry: &Entry, tale: Tale) -> Self {
        Self { written: entry.written.millis(), when: When::of(&entry.happened), struck: 0, tale }
    }
}

/// A number for each kind that can be corrected; a correction may not change the kind.
fn kind(content: &Content) -> u8 {
    match content {
        Content::Session(_) => 1,
        Content::StepChange { .. } => 2,
        Content::StepConfirmed { .. } => 3,
        Content::ProgrammeAccepted { .. } => 4,
        Content::SignReported { .. } => 5,
        Content::Clearing { .. } => 6,
        Content::ScreeningAnswered { .. } => 7,
        Content::FeelsReady { .. } => 8,
        Content::SuggestionShown { .. } => 9,
        Content::SuggestionAnswered { .. } => 10,
        Content::StayHere { .. } => 11,
        Content::TimeOff { .. } => 12,
        Content::LookForward { .. } => 13,
        Content::FunctionRated { .. } => 14,
        Content::GoalRated { .. } => 15,
        Content::Question { .. } => 16,
        Content::Settings(_) => 17,
        Content::TimeConfirmed {} => 18,
        Content::Settled { .. } => 19,
        Content::HoldConditions { .. } => 20,
        Content::Reminders(_) => 21,
        Content::PutOff { .. } => 22,
        // Never a root: a correction with such content fits nothing.
        Content::Correction { .. }
        | Content::Strike { .. }
        | Content::ClockMark { .. }
        | Content::MissingMark { .. }
        | Content::RestoredMark { .. }
        | Content::CopyMade {}
        | Content::ErasedMark { .. } => 0,
    }
}
