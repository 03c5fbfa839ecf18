//! Hands out what a fold knows, for screens. Decides nothing.

use chrono::{Datelike, NaiveDate};

use super::fold::Fold;
use super::lens::Lens;
use super::line::{Seen, day_of};
use super::outcome::{ClockDoubt, OpenSign, Pause};
use crate::diary::entry::EntryId;
use crate::moment::Stamp;
use crate::programme::plan::{Programme, Step};
use crate::programme::values::{Position, Practice, Rating, RatingKind, Size};

/// A session that counts, in short.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Occasion {
    /// The entry.
    pub entry: EntryId,
    /// When it started, in milliseconds since 1970-01-01T00:00:00Z.
    pub happened_ms: i64,
    /// The local day it started on, by its own offset.
    pub day: NaiveDate,
    /// Main size, where a trainer was used.
    pub size: Option<Size>,
    /// Position.
    pub position: Position,
    /// Practised on the main part, pauses left out, in seconds.
    pub seconds: u32,
    /// Whether it ended as planned.
    pub finished: bool,
    /// Ratings given, in the order of [`RatingKind::ALL`].
    ratings: [Option<Rating>; 4],
}

impl Occasion {
    fn of(seen: &Seen) -> Option<Self> {
        Some(Self {
            entry: EntryId(seen.id),
            happened_ms: seen.key.t,
            day: NaiveDate::from_num_days_from_ce_opt(seen.day)?,
            size: seen.size,
            position: seen.position,
            seconds: seen.seconds,
            finished: seen.finished,
            ratings: RatingKind::ALL.map(|kind| Rating::new(u64::from(seen.rating(kind))).ok()),
        })
    }

    /// A rating given with it.
    #[must_use]
    pub fn rating(&self, of: RatingKind) -> Option<Rating> {
        RatingKind::ALL
            .into_iter()
            .zip(self.ratings)
            .find_map(|(kind, rating)| (kind == of).then_some(rating).flatten())
    }
}

/// Days off, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TimeOff {
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub to: NaiveDate,
}

impl Fold {
    /// The programme in force.
    #[must_use]
    pub fn programme(&self) -> Option<&Programme> {
        self.plan.as_deref()
    }

    /// The step in use (F1).
    #[must_use]
    pub fn step(&self) -> Option<&Step> {
        let index = self.kept.course.step.as_ref()?.index;
        self.plan.as_deref()?.steps.get(index)
    }

    /// Where the step in use stands on the ladder, from 0.
    #[must_use]
    pub fn step_index(&self) -> Option<usize> {
        self.kept.course.step.as_ref().map(|step| step.index)
    }

    /// Whether the step in use is confirmed (S4); true where there is none.
    #[must_use]
    pub fn step_confirmed(&self) -> bool {
        self.kept.course.step.is_none() || self.kept.confirmed()
    }

    /// Signs above `note` that are open, oldest first.
    #[must_use]
    pub fn open_signs(&self) -> Vec<OpenSign> {
        self.kept.signs.open()
    }

    /// The pause that stands, or is met right now.
    #[must_use]
    pub fn pause(&self, now: &Stamp) -> Option<Pause> {
        let lens = Lens::new(self, now, false);
        lens.pause_standing().or_else(|| {
            lens.pause_met().map(|met| Pause { criterion: Some(met), latched_at: None })
        })
    }

    /// Why the clock is in doubt, if it is (T3).
    #[must_use]
    pub fn clock_doubt(&self, now: &Stamp) -> Option<ClockDoubt> {
        Lens::new(self, now, false).doubt
    }

    /// Whether a mark about the clock waits for the person to confirm the time.
    #[must_use]
    pub fn time_unconfirmed(&self) -> bool {
        self.kept.clock_mark > self.kept.course.time_confirmed
    }

    /// Whether "stay here for now" holds.
    #[must_use]
    pub fn stay_here(&self) -> bool {
        self.kept.course.stays()
    }

    /// The latest sessions of a practice in the order they happened, oldest first: all of them, or at
    /// least the last fifty once trimmed.
    pub fn occasions(&self, practice: &Practice) -> impl DoubleEndedIterator<Item = Occasion> + '_ {
        let seen = self.kept.line(practice).map(|line| line.seen.as_slice());
        seen.unwrap_or_default().iter().filter_map(Occasion::of)
    }

    /// The session of an entry, if it is among those still known.
    #[must_use]
    pub fn occasion(&self, entry: EntryId) -> Option<Occasion> {
        let mut known = self.kept.lines.iter().flat_map(|line| line.seen.iter().rev());
        known.find(|seen| seen.id == entry.0).and_then(Occasion::of)
    }

    /// How many sessions of a practice happened on the day of `now`.
    #[must_use]
    pub fn sessions_today(&self, practice: &Practice, now: &Stamp) -> usize {
        let today = day_of(now);
        let seen = self.kept.line(practice).map(|line| line.seen.as_slice());
        seen.unwrap_or_default().iter().filter(|seen| seen.day == today).count()
    }

    /// Days off, in order, spans that touch made one.
    pub fn time_off(&self) -> impl Iterator<Item = TimeOff> + '_ {
        self.kept.course.off.iter().filter_map(|(from, to)| {
            Some(TimeOff {
                from: NaiveDate::from_num_days_from_ce_opt(*from)?,
                to: NaiveDate::from_num_days_from_ce_opt(*to)?,
            })
        })
    }

    /// Whether a day is off.
    #[must_use]
    pub fn is_off(&self, day: NaiveDate) -> bool {
        let day = day.num_days_from_ce();
        self.kept.course.off.iter().any(|(from, to)| (*from..=*to).contains(&day))
    }
}
