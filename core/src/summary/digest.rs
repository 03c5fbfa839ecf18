//! What is kept of a summary beside its sealed file, so that a list of many need not open them all: whom it
//! is for, what it covers, how much stands in it, and what must not be missed.
//!
//! A digest is made from a summary that was checked, and can always be made again. It is health data like the
//! summary itself: whoever keeps it seals it.

use std::fmt;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::form::Summary;
use super::identity::{DiaryId, Pin};
use super::receive::Received;
use super::step_times::StepTimes;
use crate::diary::entry::Content;
use crate::diary::resolve::resolve;
use crate::moment::Stamp;
use crate::programme::plan::Programme;
use crate::programme::values::{Line, ProgrammeId, Revision};
use crate::progression::{Fold, OutcomeKind};
use crate::safety::Tier;

/// What a summary is known by: the SHA-256 of its diary's key and of the exact bytes that were signed. It is
/// the same however the summary was sealed.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct SummaryId(pub [u8; 32]);

impl fmt::Display for SummaryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&data_encoding::HEXLOWER.encode(&self.0))
    }
}

impl fmt::Debug for SummaryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SummaryId(..)")
    }
}

/// Version of the encoding of a digest. Another one is not read, but made anew from the summary.
const VERSION: u8 = 2;

/// The digest.
#[derive(Clone, PartialEq, Serialize, Deserialize)]
pub struct Digest {
    version: u8,
    /// Which summary.
    pub summary: SummaryId,
    /// The diary.
    pub diary: DiaryId,
    /// The key that signed it, as text.
    key: String,
    /// The nickname of the plan in force, where there is one.
    pub nickname: Option<Line>,
    /// The plan in force.
    pub programme: Option<(ProgrammeId, Revision)>,
    /// When it was made.
    pub made: Stamp,
    /// The first day it shows: that of its first entry, or the one it was narrowed to.
    pub first: NaiveDate,
    /// The last day it shows.
    pub last: NaiveDate,
    /// The name of the step in use.
    pub step: Option<Line>,
    /// The day of the latest session that counts.
    pub practised: Option<NaiveDate>,
    /// Entries in it.
    pub entries: u32,
    /// Entries known to be missing by damage.
    missing: u64,
    /// How often something was erased.
    erased: u32,
    /// Sessions that count.
    pub sessions: u32,
    /// Whether time alone was asked for.
    pub time_alone: bool,
    /// Signs that are open.
    pub open_signs: u32,
    /// The gravest of them.
    pub gravest: Option<Tier>,
    /// Whether a pause stands.
    pub paused: bool,
    /// What the rule said when it was made.
    pub outcome: OutcomeKind,
    /// Whether anything was left out of it.
    pub narrowed: bool,
    /// Questions for the visit in it.
    pub questions: u32,
    /// How long she was on each kind of step, to be counted over many diaries.
    pub step_times: StepTimes,
}

impl fmt::Debug for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Digest(..)")
    }
}

impl Digest {
    /// The digest of a summary that was checked.
    #[must_use]
    pub fn of(received: &Received) -> Self {
        let summary = &received.summary;
        let counted = resolve(&summary.entries);
        let standing = || counted.iter().filter(|row| !row.struck);
        let sessions = || standing().filter(|row| matches!(row.content, Content::Session(_)));
        let questions = standing().filter(|row| matches!(row.content, Content::Question { .. }));
        let plan = summary.plan();
        let made = summary.made.day();
        let first = summary.entries.iter().map(|entry| entry.happened.day()).min();
        let first = summary.narrowed.from.or(first).unwrap_or(made).min(made);
        let open = &summary.present.open_signs;
        let step = summary.present.step.as_ref().and_then(|now| {
            let step = plan.as_ref()?.steps.iter().find(|step| step.id == now.step)?;
            Some(step.name.clone())
        });
        Self {
            version: VERSION,
            summary: received.id,
            diary: received.from.diary,
            key: received.from.key.to_text(),
            nickname: plan.as_ref().map(|plan| plan.for_whom.clone()),
            programme: plan.as_ref().map(|plan| (plan.id.clone(), plan.revision)),
            made: summary.made,
            first,
            last: summary.narrowed.to.map_or(made, |to| to.min(made)).max(first),
            step,
            practised: sessions().map(|row| row.happened.day()).max(),
            entries: small(summary.entries.len()),
            missing: summary.marks.missing_entries,
            erased: summary.marks.erased,
            sessions: small(sessions().count()),
            time_alone: summary.asks_time_alone(),
            open_signs: small(open.len()),
            gravest: open.iter().map(|sign| sign.tier).max(),
            paused: summary.present.pause.is_some(),
            outcome: summary.present.outcome,
            narrowed: summary.narrowed.is_narrowed(),
            questions: small(questions.count()),
            // A plan that cannot be read tells no time.
            step_times: StepTimes::of(summary)
                .unwrap_or_else(|_| StepTimes { unsure: true, times: Vec::new() }),
        }
    }

    /// The diary and the key that signed the summary.
    #[must_use]
    pub fn from(&self) -> Option<Pin> {
        let key = crate::sealing::VerifyKey::parse(&self.key).ok()?;
        Some(Pin { diary: self.diary, key })
    }

    /// As bytes, to be sealed. `None` where the encoding fails.
    #[must_use]
    pub fn encode(&self) -> Option<Vec<u8>> {
        postcard::to_stdvec(self).ok()
    }

    /// Reads the bytes back; `None` for another version or anything else.
    #[must_use]
    pub fn decode(bytes: &[u8]) -> Option<Self> {
        if bytes.first() != Some(&VERSION) {
            return None;
        }
        let (digest, rest) = postcard::take_from_bytes::<Self>(bytes).ok()?;
        (rest.is_empty() && digest.from().is_some()).then_some(digest)
    }

    /// Whether it holds more entries than another summary of the same diary although nothing explains that: nothing was
    /// left out of the other, nothing was erased in only one of the two, and no more are missing there by damage. The
    /// other is then no newer one, whatever the clock said when it was made, or the diary went two ways.
    #[must_use]
    pub fn holds_more_than(&self, other: &Self) -> bool {
        let damaged = other.missing.saturating_sub(self.missing);
        !other.narrowed
            && self.erased == other.erased
            && u64::from(self.entries) > u64::from(other.entries).saturating_add(damaged)
    }

    /// Whether something in it must be seen before anything else.
    #[must_use]
    pub fn is_open(&self) -> bool {
        self.open_signs > 0 || self.paused
    }
}

fn small(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

impl Summary {
    /// The plan in force, as the rule sees it; `None` where there is none, or one that cannot be read.
    #[must_use]
    pub fn plan(&self) -> Option<Programme> {
        let mut fold = Fold::new(None);
        for entry in &self.entries {
            fold.write(entry).ok()?;
        }
        fold.programme().cloned()
    }
}

#[cfg(test)]
mod tests;
