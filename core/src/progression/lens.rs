//! Decides what is known at a moment: the day, whether the clock is in doubt (T3), and, for pause and
//! step back, which sessions stand in which order then (T5, F6).

use std::borrow::Cow;

use chrono::NaiveDate;

use super::course::{Current, WentBack};
use super::fold::Fold;
use super::line::{Day, Key, Line, Rung, Seen, day_of};
use super::outcome::ClockDoubt;
use crate::diary::entry::Place;
use crate::moment::Stamp;
use crate::programme::rule::{PauseCriterion, Rule};

/// How far ahead of now a time may lie before the clock is in doubt (T3): ten minutes.
const AHEAD: i64 = 10 * 60 * 1000;

/// A fold looked at from a moment.
pub(super) struct Lens<'a> {
    pub fold: &'a Fold,
    pub today: Day,
    /// The same day, for comparing with dates.
    pub day: NaiveDate,
    /// A later time than this is ahead.
    limit: i64,
    /// A jump or long absence is not confirmed.
    pub jump: bool,
    pub doubt: Option<ClockDoubt>,
    /// Whether findings are to be explained.
    pub explain: bool,
}

/// The step in use with everything needed to judge it.
pub(super) struct Ground<'a> {
    pub current: &'a Current,
    pub rung: Rung<'a>,
    pub rule: &'a Rule,
    /// The sessions of the step's practice, if there ever were any.
    pub line: Option<&'a Line>,
    /// The latest session since the step began.
    pub last: Option<&'a Seen>,
    backs: &'a [WentBack],
}

impl<'a> Ground<'a> {
    /// Changes to an earlier step, where the rule asks for them.
    fn backs(&self) -> impl Iterator<Item = &'a WentBack> + use<'a> {
        let asked = self.rule.pause.iter().any(|c| matches!(c, PauseCriterion::StepsBack { .. }));
        let backs: &'a [WentBack] = if asked { self.backs } else { &[] };
        backs.iter()
    }
}

impl<'a> Lens<'a> {
    pub(super) fn new(fold: &'a Fold, now: &Stamp, explain: bool) -> Self {
        let limit = now.millis().saturating_add(AHEAD);
        let jump = fold.kept.clock_mark > fold.kept.course.time_confirmed;
        let doubt = if fold.kept.latest > limit {
            Some(ClockDoubt::EntryAhead)
        } else {
            jump.then_some(ClockDoubt::NotConfirmed)
        };
        Self { fold, today: day_of(now), day: now.day(), limit, jump, doubt, explain }
    }

    /// For the time just before an entry that says the clock jumped: that clock is not to be trusted.
    pub(super) fn doubting(mut self) -> Self {
        self.jump = true;
        self
    }

    /// Whether a time lies ahead of now (T3).
    pub(super) fn ahead(&self, t: i64) -> bool {
        t > self.limit
    }

    /// Whether something lies ahead and so does its very day (T4).
    fn day_ahead(&self, t: i64, day: Day) -> bool {
        self.ahead(t) && day > self.today
    }

    /// The step in use and its rule; `None` where there is none.
    pub(super) fn ground(&self) -> Option<Ground<'a>> {
        let fold = self.fold;
        let current = fold.kept.course.step.as_ref()?;
        let rung = Rung::new(fold.plan.as_deref()?, current.index)?;
        let rule = fold.rule_on(&rung)?;
        let line = fold.kept.line(&rung.step.practice);
        let last = line.and_then(|line| line.seen.last()).filter(|last| last.key > current.began);
        Some(Ground { current, rung, rule, line, last, backs: &fold.kept.course.backs })
    }

    /// What pause and step back look at.
    pub(super) fn behind(&self, ground: &Ground<'a>) -> Behind<'a> {
        let course = &self.fold.kept.course;
        let last_session = ground.line.and_then(|line| line.seen.last()).map(|last| last.key.t);
        if !self.ahead(course.last_milestone) && !last_session.is_some_and(|t| self.ahead(t)) {
            self.behind_in_time(ground)
        } else {
            self.behind_by_place(ground)
        }
    }

    /// The ordinary case: nothing lies ahead, the lists kept are right as they are.
    fn behind_in_time(&self, ground: &Ground<'a>) -> Behind<'a> {
        let course = &self.fold.kept.course;
        let cleared = course.closed_day;
        let last = ground.last.map(|last| last.day);
        Behind {
            since: Cow::Borrowed(&self.fold.kept.facts.since),
            window: Cow::Borrowed(&self.fold.kept.facts.window),
            practised: ground.last.is_some(),
            counts_from: Some(
                ground.current.day.max(last.unwrap_or(Day::MIN)).max(cleared.unwrap_or(Day::MIN)),
            ),
            backs: ground
                .backs()
                .filter(|back| !course.cleared_away(back.key))
                .map(|back| (*back, false))
                .collect(),
        }
    }

    /// T5: what lies ahead goes by its place, at the latest time of what was written before it and does
    /// not lie ahead.
    fn behind_by_place(&self, ground: &Ground<'a>) -> Behind<'a> {
        let course = &self.fold.kept.course;
        let sessions = ground.line.map_or(&[][..], |line| line.seen.as_slice());
        let cut = ground.line.and_then(|line| line.cut);
        let mut keys: Vec<Key> = course
            .milestones
            .iter()
            .copied()
            .chain(sessions.iter().map(|seen| seen.key))
            .chain(cut)
            .collect();
        keys.sort_unstable_by_key(|key| key.place);
        let mut so_far = i64::MIN;
        let moved: Vec<(Place, i64)> = keys
            .into_iter()
            .map(|key| {
                if !self.ahead(key.t) {
                    so_far = so_far.max(key.t);
                    (key.place, key.t)
                } else {
                    (key.place, so_far)
                }
            })
            .collect();
        let moved = |key: Key| {
            let at = moved.partition_point(|(place, _)| *place < key.place);
            let t = moved.get(at).filter(|(place, _)| *place == key.place).map_or(key.t, |m| m.1);
            Key { t, place: key.place }
        };
        let closings: Vec<(Key, &super::course::Cleared)> =
            course.closings().map(|closing| (moved(closing.key), closing)).collect();
        let cleared_away = |key: Key| {
            closings.iter().any(|(closing, _)| closing.place > key.place && closing.t >= key.t)
        };
        let began = moved(ground.current.began);
        let mut since: Vec<(Key, &Seen)> = sessions
            .iter()
            .map(|seen| (moved(seen.key), seen))
            .filter(|(key, _)| *key > began)
            .collect();
        since.sort_unstable_by_key(|(key, _)| *key);
        // The day counted from: that of whatever comes last, unless it lies ahead (T4).
        let candidates = [(began, ground.current.began.t, ground.current.day)]
            .into_iter()
            .chain(since.last().map(|(key, seen)| (*key, seen.key.t, seen.day)))
            .chain(closings.iter().map(|(key, closing)| (*key, closing.key.t, closing.day)));
        let last = candidates.clone().max_by_key(|(key, ..)| *key);
        let counts_from = match last {
            Some((_, t, day)) if self.day_ahead(t, day) => None,
            _ => candidates
                .filter(|(_, t, day)| !self.day_ahead(*t, *day))
                .map(|(.., day)| day)
                .max(),
        };
        let practised = !since.is_empty();
        since.retain(|(key, _)| !cleared_away(*key));
        let window = since.iter().filter(|(_, seen)| !ground.rung.below(seen));
        Behind {
            practised,
            counts_from,
            backs: ground
                .backs()
                .filter(|back| !cleared_away(moved(back.key)))
                .map(|back| (*back, self.day_ahead(back.key.t, back.day)))
                .collect(),
            window: Cow::Owned(window.map(|(_, seen)| **seen).collect()),
            since: Cow::Owned(since.into_iter().map(|(_, seen)| *seen).collect()),
        }
    }
}

/// What pause and step back look at, at a moment.
pub(super) struct Behind<'a> {
    /// Sessions not before a clearing, oldest first.
    pub since: Cow<'a, [Seen]>,
    /// Of these, the ones not below the step.
    pub window: Cow<'a, [Seen]>,
    /// Whether the step was practised since it began.
    pub practised: bool,
    /// The day that days without practice are counted from; `None` where it lies ahead.
    pub counts_from: Option<Day>,
    /// Changes to an earlier step, and whether the day of each lies ahead.
    pub backs: Vec<(WentBack, bool)>,
}
