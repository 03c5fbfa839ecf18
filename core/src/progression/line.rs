//! Decides how a session is remembered by the rule, and in which order sessions stand (T1). A [`Line`]
//! holds the sessions of one practice in the order they happened; it leaves to [`super::facts`] what
//! they mean for a step.

use chrono::Datelike;
use serde::{Deserialize, Serialize};

use crate::diary::entry::{Place, Session};
use crate::moment::Stamp;
use crate::programme::plan::{Programme, Step};
use crate::programme::values::{Position, Practice, RatingKind, Size};
use crate::safety::Tier;

/// A local calendar day, counted from the common era, so that differences are plain subtractions (T2).
pub(super) type Day = i32;
/// An entry id without its text form, to keep the snapshot small.
pub(super) type RawId = [u8; 16];

/// The local calendar day of a stamp (T2).
pub(super) fn day_of(stamp: &Stamp) -> Day {
    stamp.day().num_days_from_ce()
}

/// `later - earlier` in days; below zero counts as zero (T2).
pub(super) fn days_between(earlier: Day, later: Day) -> i32 {
    later.saturating_sub(earlier).max(0)
}

/// The order of happening: the instant, ties by place (T1).
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub(super) struct Key {
    /// Milliseconds since 1970.
    pub t: i64,
    /// Place in the journal.
    pub place: Place,
}

/// When something happened.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct When {
    /// Milliseconds since 1970.
    pub t: i64,
    /// Local day.
    pub day: Day,
}

impl When {
    pub(super) fn of(stamp: &Stamp) -> Self {
        Self { t: stamp.millis(), day: day_of(stamp) }
    }
}

/// Stands for a rating that was not given.
pub(super) const MISSING: u8 = u8::MAX;

/// Where a rating kind is kept in [`Seen::ratings`].
pub(super) fn slot(kind: RatingKind) -> usize {
    match kind {
        RatingKind::Peak => 0,
        RatingKind::Before => 1,
        RatingKind::After => 2,
        RatingKind::Worry => 3,
    }
}

/// A session as the rule sees it.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Seen {
    pub key: Key,
    pub day: Day,
    pub id: RawId,
    pub size: Option<Size>,
    pub position: Position,
    /// Practised on the main part, pauses left out, in seconds.
    pub seconds: u32,
    /// Milliseconds from the earliest time it was ever said to have happened until the later of its
    /// first writing and the writing of the version that counts (F3).
    pub lag: i64,
    pub ratings: [u8; 4],
    pub finished: bool,
    /// Stopped or could not start, for a reason other than interrupted.
    pub stopped: bool,
    /// A sign above `note` was noted with it, in any version (F3).
    pub flagged: bool,
}

impl Seen {
    /// What one version tells. Order, lag and signs of other versions are the log's to add.
    pub(super) fn of(session: &Session, id: RawId, when: When, place: Place) -> Self {
        let mut ratings = [MISSING; 4];
        for kind in RatingKind::ALL {
            if let (Some(given), Some(kept)) =
                (session.ratings.given(kind), ratings.get_mut(slot(kind)))
            {
                *kept = given.get();
            }
        }
        Self {
            key: Key { t: when.t, place },
            day: when.day,
            id,
            size: session.main_size(),
            position: session.position,
            seconds: session.main_seconds(),
            lag: 0,
            ratings,
            finished: session.ended == crate::diary::entry::Ended::Finished,
            stopped: session.ended.counts_as_stopped(),
            flagged: session.signs.iter().any(|noted| noted.tier > Tier::Note),
        }
    }

    /// The rating of a kind, or [`MISSING`].
    pub(super) fn rating(&self, kind: RatingKind) -> u8 {
        self.ratings.get(slot(kind)).copied().unwrap_or(MISSING)
    }
}

/// A step with what is earlier on its ladder: what a session is held against (F2, F3).
#[derive(Clone, Copy)]
pub(super) struct Rung<'a> {
    pub plan: &'a Programme,
    /// Of the step on the ladder, from 0.
    pub index: usize,
    pub step: &'a Step,
}

impl<'a> Rung<'a> {
    pub(super) fn new(plan: &'a Programme, index: usize) -> Option<Self> {
        plan.steps.get(index).map(|step| Self { plan, index, step })
    }

    fn is_on(practice: &Practice, step: &Step, seen: &Seen) -> bool {
        step.practice == *practice
            && step.main_size() == seen.size
            && step.position == seen.position
    }

    /// On the step (F2). The session is known to be of the step's practice.
    pub(super) fn on(&self, seen: &Seen) -> bool {
        Self::is_on(&self.step.practice, self.step, seen)
    }

    /// Below the step (F2).
    pub(super) fn below(&self, seen: &Seen) -> bool {
        if self.on(seen) {
            return false;
        }
        let smaller = match (seen.size, self.step.main_size()) {
            (Some(used), Some(asked)) => used < asked,
            _ => false,
        };
        smaller
            || self
                .plan
                .steps
                .iter()
                .take(self.index)
                .any(|earlier| Self::is_on(&self.step.practice, earlier, seen))
    }

    /// Full but for the peak rating (F3); with a peak rating given it is full.
    pub(super) fn full_once_rated(&self, seen: &Seen) -> bool {
        let least =
            self.step.main_part().map_or(u32::MAX, |part| u32::from(part.minutes.least.get()) * 60);
        let late = i64::from(self.plan.late_after_hours.get()) * 3_600_000;
        self.on(seen) && seen.finished && seen.seconds >= least && !seen.flagged && seen.lag <= late
    }
}

/// The sessions of one practice in the order they happened.
#[derive(Clone, Serialize, Deserialize)]
pub(super) struct Line {
    pub practice: Practice,
    pub seen: Vec<Seen>,
    /// The latest time and place among those trimmed away; every one left is later in both.
    pub cut: Option<Key>,
}

impl Line {
    pub(super) fn new(practice: Practice) -> Self {
        Self { practice, seen: Vec::new(), cut: None }
    }

    /// Puts a session where it belongs; says where that is.
    pub(super) fn put(&mut self, seen: Seen) -> usize {
        put_by(&mut self.seen, seen, |seen| seen.key)
    }

    /// Takes a session out; says where it was.
    pub(super) fn take(&mut self, key: Key) -> Option<usize> {
        take_by(&mut self.seen, key, |seen| seen.key)
    }
}

/// Inserts into a list kept sorted by key; says where.
pub(super) fn put_by<T>(list: &mut Vec<T>, item: T, key: impl Fn(&T) -> Key) -> usize {
    let mine = key(&item);
    let at = list.partition_point(|other| key(other) < mine);
    list.insert(at, item);
    at
}

/// Removes from a list kept sorted by key; says from where.
pub(super) fn take_by<T>(list: &mut Vec<T>, mine: Key, key: impl Fn(&T) -> Key) -> Option<usize> {
    let at = list.partition_point(|other| key(other) < mine);
    if list.get(at).is_some_and(|found| key(found) == mine) {
        list.remove(at);
        Some(at)
    } else {
        None
    }
}

#[cfg(test)]
impl Seen {
    /// An invented session of five minutes, full and without ratings.
    pub(super) fn invented(key: Key) -> Self {
        Self {
            key,
            day: 0,
            id: [0; 16],
            size: None,
            position: Position::OnBack,
            seconds: 300,
            lag: 0,
            ratings: [MISSING; 4],
            finished: true,
            stopped: false,
            flagged: false,
        }
    }
}
