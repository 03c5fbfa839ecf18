//! Decides which sessions count for what on the step in use (F1 to F6), and keeps them so that each
//! criterion is answered without going through the diary: lists sorted in the order of happening, which
//! a session written late or corrected enters and leaves at its own point.

use serde::{Deserialize, Serialize};

use super::course::Course;
use super::line::{Day, Key, Line, MISSING, RawId, Rung, Seen, days_between, put_by, take_by};
use crate::diary::entry::Place;
use crate::programme::rule::Rule;
use crate::programme::values::RatingKind;

/// A session that is full, or would be with a peak rating.
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct Full {
    pub key: Key,
    pub day: Day,
    pub id: RawId,
    /// How many sessions came before it since the facts began; set when those are trimmed away.
    rank: u32,
}

/// A session without a certain rating.
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct Absent {
    pub key: Key,
    pub id: RawId,
}

/// Where each value of one kind of rating was given.
#[derive(Clone, Serialize, Deserialize)]
pub(super) struct Scale {
    kind: RatingKind,
    given: [Vec<Key>; 11],
    pub missing: Vec<Absent>,
}

impl Scale {
    fn new(kind: RatingKind) -> Self {
        Self { kind, given: Default::default(), missing: Vec::new() }
    }

    /// Whether a rating above `most` was given at `since` or later.
    pub(super) fn above(&self, most: u8, since: Key) -> bool {
        self.given
            .iter()
            .skip(usize::from(most) + 1)
            .any(|keys| keys.last().is_some_and(|last| *last >= since))
    }

    /// Whether a rating is missing at `since` or later.
    pub(super) fn lacks(&self, since: Key) -> bool {
        self.missing.last().is_some_and(|last| last.key >= since)
    }
}

/// The sessions since the step in use began, by what they count for.
#[derive(Clone, Default, Serialize, Deserialize)]
pub(super) struct StepFacts {
    /// Not before a clearing: what pause and step back look at.
    pub since: Vec<Seen>,
    /// Of these, the ones not below the step: what their ratings are taken from.
    pub window: Vec<Seen>,
    /// Written after the last clearing of a pause: what step up looks at.
    ups: Vec<Key>,
    ups_trimmed: u32,
    pub full: Vec<Full>,
    pub full_once_rated: Vec<Full>,
    pub scales: Vec<Scale>,
    /// Whether older ones of `since` or `window` were trimmed away.
    since_trimmed: bool,
    window_trimmed: bool,
    /// Sessions before which there was a gap (F5).
    gaps: Vec<Gap>,
    /// The latest place among those trimmed away.
    gaps_trimmed: Place,
}

/// A session before which there was a gap.
#[derive(Clone, Copy, Serialize, Deserialize)]
struct Gap {
    key: Key,
    /// As in [`Full`].
    rank: u32,
}

impl StepFacts {
    /// Everything afresh from the sessions of the step's practice.
    pub(super) fn of(rung: &Rung<'_>, rule: Option<&Rule>, course: &Course, line: &Line) -> Self {
        let mut facts = Self::default();
        let kinds = rule.and_then(|rule| rule.step_up.as_ref()).map(|up| up.all_of.as_slice());
        for criterion in kinds.unwrap_or_default() {
            if let Some(rating) = criterion.rating()
                && facts.scale(rating).is_none()
            {
                facts.scales.push(Scale::new(rating));
            }
        }
        let Some(current) = &course.step else { return facts };
        let first = line.seen.partition_point(|seen| seen.key <= current.began);
        for at in first..line.seen.len() {
            let Some(seen) = line.seen.get(at) else { continue };
            facts.add(seen, rung, course);
            facts.look_for_gap(at, rule, current.began, line);
        }
        facts
    }

    /// A session since the step began is added.
    pub(super) fn add(&mut self, seen: &Seen, rung: &Rung<'_>, course: &Course) {
        if !course.cleared_away(seen.key) {
            put_by(&mut self.since, *seen, |seen| seen.key);
            if !rung.below(seen) {
                put_by(&mut self.window, *seen, |seen| seen.key);
            }
        }
        if seen.key.place <= course.last_closing() {
            return;
        }
        put_by(&mut self.ups, seen.key, |key| *key);
        if rung.full_once_rated(seen) {
            let full = Full { key: seen.key, day: seen.day, id: seen.id, rank: 0 };
            put_by(&mut self.full_once_rated, full, |full| full.key);
            if seen.rating(RatingKind::Peak) != MISSING {
                put_by(&mut self.full, full, |full| full.key);
            }
        }
        for scale in &mut self.scales {
            let rating = seen.rating(scale.kind);
            match scale.given.get_mut(usize::from(rating)) {
                Some(keys) => put_by(keys, seen.key, |key| *key),
                None => {
                    let absent = Absent { key: seen.key, id: seen.id };
                    put_by(&mut scale.missing, absent, |absent| absent.key)
                }
            };
        }
    }

    /// A session is taken out.
    pub(super) fn remove(&mut self, key: Key) {
        take_by(&mut self.since, key, |seen| seen.key);
        take_by(&mut self.window, key, |seen| seen.key);
        take_by(&mut self.ups, key, |key| *key);
        take_by(&mut self.full, key, |full| full.key);
        take_by(&mut self.full_once_rated, key, |full| full.key);
        take_by(&mut self.gaps, key, |gap| gap.key);
        for scale in &mut self.scales {
            for keys in &mut scale.given {
                take_by(keys, key, |key| *key);
            }
            take_by(&mut scale.missing, key, |absent| absent.key);
        }
    }

    /// Whether the session at `at` in the line comes after a gap is looked up anew.
    pub(super) fn look_for_gap(&mut self, at: usize, rule: Option<&Rule>, began: Key, line: &Line) {
        let Some(seen) = line.seen.get(at) else { return };
        take_by(&mut self.gaps, seen.key, |gap| gap.key);
        let before = at.checked_sub(1).and_then(|before| line.seen.get(before));
        let days = rule.and_then(|rule| rule.after_gap_days).map(|days| i32::from(days.get()));
        if let (Some(before), Some(days)) = (before.filter(|before| before.key > began), days)
            && days_between(before.day, seen.day) >= days
        {
            put_by(&mut self.gaps, Gap { key: seen.key, rank: 0 }, |gap| gap.key);
        }
    }

    /// A clearing of a pause was written last: F5 and F6.
    pub(super) fn close(&mut self, course: &Course) {
        self.since.retain(|seen| !course.cleared_away(seen.key));
        self.window.retain(|seen| !course.cleared_away(seen.key));
        // A window that lost its later part may need what was trimmed only if nothing older is cleared
        // away as well; it always is, being older in both orders.
        self.ups.clear();
        self.ups_trimmed = 0;
        self.full.clear();
        self.full_once_rated.clear();
        for scale in &mut self.scales {
            *scale = Scale::new(scale.kind);
        }
    }

    /// The first session after the last gap.
    pub(super) fn last_gap(&self) -> Option<Key> {
        self.gaps.last().map(|gap| gap.key)
    }

    /// The latest place of a session that ended a gap; 0 if there is none. An answer written before it
    /// was given before going up started afresh.
    pub(super) fn gap_written(&self) -> Place {
        self.gaps.iter().map(|gap| gap.key.place).fold(self.gaps_trimmed, Place::max)
    }

    pub(super) fn scale(&self, kind: RatingKind) -> Option<&Scale> {
        self.scales.iter().find(|scale| scale.kind == kind)
    }

    /// How many sessions that count for going up lie at this one or later.
    pub(super) fn count_since(&self, full: &Full) -> usize {
        self.count_after(self.before(full.key, full.rank))
    }

    /// How many sessions count for going up from the floor on.
    pub(super) fn count_from(&self, floor: Key) -> usize {
        let rank = self.gaps.last().filter(|gap| gap.key == floor).map_or(0, |gap| gap.rank);
        self.count_after(self.before(floor, rank))
    }

    fn count_after(&self, before: usize) -> usize {
        (self.ups_trimmed as usize + self.ups.len()).saturating_sub(before)
    }

    /// How many came before a key; by its rank where that can no longer be counted.
    fn before(&self, key: Key, rank: u32) -> usize {
        if self.ups_trimmed > 0 && self.ups.first().is_none_or(|first| *first > key) {
            rank as usize
        } else {
            self.ups_trimmed as usize + self.ups.partition_point(|other| *other < key)
        }
    }

    /// The latest sessions that count for going up, from `since` on, at most 50, oldest first.
    pub(super) fn ups_since(&self, since: Key) -> &[Key] {
        let first = self.ups.partition_point(|key| *key < since);
        let all = self.ups.get(first..).unwrap_or_default();
        all.get(all.len().saturating_sub(NAMED)..).unwrap_or_default()
    }

    /// Whether a session at this time would come among those trimmed away.
    pub(super) fn reaches_back(&self, t: i64) -> bool {
        (self.ups_trimmed > 0 && self.ups.first().is_none_or(|first| t < first.t))
            || (self.window_trimmed && self.window.first().is_none_or(|first| t < first.key.t))
            || (self.since_trimmed && self.since.first().is_none_or(|first| t < first.key.t))
    }

    /// Drops what no evaluation in order can need. `within` is how many days back the rule looks for full
    /// sessions; `by_time` is where facts start by clearings and erased entries; no session before
    /// `settled` will be told any more.
    pub(super) fn trim(&mut self, within: i32, by_time: Key, settled: Option<Key>) {
        self.since_trimmed |= self.since.len() > NAMED;
        keep_last(&mut self.since, NAMED);
        self.window_trimmed |= self.window.len() > NAMED;
        keep_last(&mut self.window, NAMED);
        let first_kept = match self.ups.len().checked_sub(NAMED) {
            Some(at) if at > 0 => self.ups.get(at),
            _ => self.ups.first().filter(|_| self.ups_trimmed > 0),
        };
        // A gap that a session told late could still fill does not count as lasting.
        let settled = settled.max(first_kept.copied());
        let lasting = self.gaps.partition_point(|gap| Some(gap.key) <= settled);
        let kept = self.gaps.len() - lasting.saturating_sub(1);
        let dropped = self.gaps.iter().rev().skip(kept).map(|gap| gap.key.place);
        self.gaps_trimmed = dropped.fold(self.gaps_trimmed, Place::max);
        keep_last(&mut self.gaps, kept);
        let gap = self.gaps.first().filter(|_| lasting > 0).map(|gap| gap.key);
        let floor = gap.map_or(by_time, |gap| gap.max(by_time));
        let outdated = self.ups.partition_point(|key| *key < floor);
        if outdated > 0 {
            self.ups.drain(..outdated);
            self.ups_trimmed = 0;
        }
        self.full.retain(|full| full.key >= floor);
        self.full_once_rated.retain(|full| full.key >= floor);
        let (ups, trimmed) = (&self.ups, self.ups_trimmed);
        let rank = |key: Key, rank: &mut u32| {
            if trimmed == 0 || ups.first().is_some_and(|first| *first <= key) {
                let before = ups.partition_point(|other| *other < key);
                *rank = trimmed.saturating_add(u32::try_from(before).unwrap_or(u32::MAX));
            }
        };
        for gap in &mut self.gaps {
            rank(gap.key, &mut gap.rank);
        }
        for list in [&mut self.full, &mut self.full_once_rated] {
            for full in list.iter_mut() {
                rank(full.key, &mut full.rank);
            }
            let Some(last) = list.last().map(|last| last.day) else { continue };
            // Some days more, because days go by each session's own offset.
            let outside = |full: &Full| days_between(full.day, last) >= within.saturating_add(3);
            let outside = list.iter().take_while(|full| outside(full)).count();
            keep_last(list, NAMED.max(list.len() - outside));
        }
        let dropped = self.ups.len().saturating_sub(NAMED);
        self.ups.drain(..dropped);
        self.ups_trimmed =
            self.ups_trimmed.saturating_add(u32::try_from(dropped).unwrap_or(u32::MAX));
        for scale in &mut self.scales {
            for keys in &mut scale.given {
                keep_last(keys, 1);
            }
            keep_last(&mut scale.missing, NAMED);
        }
    }

    /// The earliest session that may still be looked at or named.
    pub(super) fn oldest_needed(&self) -> Option<Key> {
        let first = |list: &[Seen]| list.get(list.len().saturating_sub(NAMED)).map(|seen| seen.key);
        let up = self.ups.get(self.ups.len().saturating_sub(NAMED)).copied();
        [first(&self.since), first(&self.window), up].into_iter().flatten().min()
    }
}

/// The most sessions a criterion looks at (P4), and the most that a finding names.
pub(super) const NAMED: usize = 50;

/// Keeps the last `count`.
pub(super) fn keep_last<T>(list: &mut Vec<T>, count: usize) {
    let drop = list.len().saturating_sub(count);
    list.drain(..drop);
}

/// What a step-up criterion may look at: nothing before this.
#[derive(Clone, Copy)]
pub(super) struct Floor {
    /// The earliest key that counts.
    pub key: Key,
    /// Answers count if written after this place.
    pub place: Place,
    /// A gap runs up to now: nothing counts.
    pub nothing: bool,
}

#[cfg(test)]
mod tests;
