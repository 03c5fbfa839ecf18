//! Decides each criterion: met, unmet or unknown (C1, C2, T4), and what it lacks.
//!
//! A higher rating can only turn a pause or step-back criterion from unmet to met and a step-up
//! criterion from met to unmet: each asks whether a rating lies above or below a fixed number, never how
//! ratings compare with one another. The safety property rests on that.

use super::facts::{Floor, Full, NAMED};
use super::lens::{Behind, Ground, Lens};
use super::line::{Key, MISSING, RawId, Seen, days_between};
use super::outcome::{Missing, Verdict};
use crate::diary::entry::EntryId;
use crate::programme::rule::{PauseCriterion, UpCriterion, Window};
use crate::programme::values::{Days, Last, Rating, RatingKind};

/// What was found.
pub(super) struct Judged {
    pub verdict: Verdict,
    pub entries: Vec<EntryId>,
    pub looked_at: usize,
    pub missing: Missing,
}

impl Judged {
    fn plain(verdict: Verdict, missing: Missing) -> Self {
        Self { verdict, entries: Vec::new(), looked_at: 0, missing }
    }

    fn of(met: bool, missing: Missing) -> Self {
        if met {
            Self::plain(Verdict::Met, Missing::Nothing)
        } else {
            Self::plain(Verdict::Unmet, missing)
        }
    }

    fn clock() -> Self {
        Self::plain(Verdict::Unknown, Missing::Clock)
    }
}

/// At most the latest fifty, in order.
fn named(ids: impl DoubleEndedIterator<Item = RawId>) -> Vec<EntryId> {
    let mut latest: Vec<EntryId> = ids.rev().take(NAMED).map(EntryId).collect();
    latest.reverse();
    latest
}

fn number(more: i32) -> u32 {
    u32::try_from(more).unwrap_or(0)
}

impl Lens<'_> {
    /// A criterion of pause, or (`for_back`) of step back.
    pub(super) fn behind_criterion(
        &self,
        criterion: &PauseCriterion,
        for_back: bool,
        ground: &Ground<'_>,
        behind: &Behind<'_>,
    ) -> Judged {
        match criterion {
            PauseCriterion::DiscomfortAtLeast { rating, at_least, window } => {
                self.discomfort_at_least(*rating, at_least.get(), *window, behind)
            }
            PauseCriterion::StoppedEarly { window } => {
                let looked_at = last_of(&behind.since, window.of_last());
                let stopped = looked_at.iter().filter(|seen| seen.stopped).count();
                self.over(looked_at, Judged::of(stopped >= window.sessions(), Missing::Nothing))
            }
            PauseCriterion::DaysWithoutPractice { days } => {
                self.days_without_practice(*days, for_back, ground, behind)
            }
            PauseCriterion::StepsBack { times, within_days } => {
                if self.jump {
                    return Judged::clock();
                }
                let days = i32::from(within_days.get());
                let within = |day| days_between(day, self.today) < days;
                let sure = behind.backs.iter().filter(|(b, ahead)| !ahead && within(b.day)).count();
                let ahead = behind.backs.iter().filter(|(_, ahead)| *ahead).count();
                let times = usize::from(times.get());
                let mut judged = if sure >= times || sure + ahead < times {
                    Judged::of(sure >= times, Missing::Nothing)
                } else {
                    Judged::clock()
                };
                if self.explain {
                    let looked_at =
                        behind.backs.iter().filter(|(b, ahead)| *ahead || within(b.day));
                    judged.entries = named(looked_at.map(|(back, _)| back.id));
                    judged.looked_at = sure + ahead;
                }
                judged
            }
        }
    }

    fn discomfort_at_least(
        &self,
        kind: RatingKind,
        at_least: u8,
        window: Window,
        behind: &Behind<'_>,
    ) -> Judged {
        let looked_at = last_of(&behind.window, window.of_last());
        let (mut reached, mut missing) = (0, 0);
        for seen in looked_at {
            match seen.rating(kind) {
                MISSING => missing += 1,
                rating if rating >= at_least => reached += 1,
                _ => {}
            }
        }
        let judged = if reached >= window.sessions() || reached + missing < window.sessions() {
            Judged::of(reached >= window.sessions(), Missing::Nothing)
        } else {
            let lacking = looked_at.iter().filter(|seen| seen.rating(kind) == MISSING);
            let entries =
                if self.explain { named(lacking.map(|seen| seen.id)) } else { Vec::new() };
            Judged::plain(Verdict::Unknown, Missing::Ratings { entries })
        };
        self.over(looked_at, judged)
    }

    fn days_without_practice(
        &self,
        days: Days,
        for_back: bool,
        ground: &Ground<'_>,
        behind: &Behind<'_>,
    ) -> Judged {
        if for_back && ground.current.by_going_back && !behind.practised {
            return Judged::of(false, Missing::Nothing);
        }
        match behind.counts_from {
            Some(day) if !self.jump => {
                Judged::of(days_between(day, self.today) >= i32::from(days.get()), Missing::Nothing)
            }
            _ => Judged::clock(),
        }
    }

    fn over(&self, looked_at: &[Seen], mut judged: Judged) -> Judged {
        if self.explain {
            judged.entries = named(looked_at.iter().map(|seen| seen.id));
            judged.looked_at = looked_at.len();
        }
        judged
    }

    /// From where sessions and answers count for going up (F5).
    pub(super) fn floor(&self, ground: &Ground<'_>) -> Floor {
        let kept = &self.fold.kept;
        let nothing = match (ground.last, ground.rule.after_gap_days) {
            (Some(last), Some(days)) => days_between(last.day, self.today) >= i32::from(days.get()),
            _ => false,
        };
        let place = kept.course.last_closing().max(kept.facts.gap_written());
        Floor { key: kept.floor(), place, nothing }
    }

    /// A criterion of step up.
    pub(super) fn up_criterion(
        &self,
        criterion: &UpCriterion,
        ground: &Ground<'_>,
        floor: Floor,
    ) -> Judged {
        match criterion {
            UpCriterion::DaysOnStep { days } => {
                if self.doubt.is_some() {
                    return Judged::clock();
                }
                let began = ground.current.day;
                let off = self.fold.kept.course.days_off(began, self.today);
                let spent = (days_between(began, self.today) - off).max(0);
                let more = i32::from(days.get()) - spent;
                Judged::of(more <= 0, Missing::Days { more: number(more) })
            }
            UpCriterion::Sessions { practised_days, within_days } => {
                let wanted = usize::from(practised_days.get());
                self.practised_days(wanted, i32::from(within_days.get()), floor)
            }
            UpCriterion::DiscomfortAtMost { rating, at_most, last } => {
                self.discomfort_at_most(*rating, *at_most, *last, floor)
            }
            UpCriterion::SignFreeDays { days } => {
                if self.doubt.is_some() {
                    return Judged::clock();
                }
                self.sign_free_days(i32::from(days.get()))
            }
            UpCriterion::FeelsReady {} => self.feels_ready(ground, floor),
        }
    }

    fn practised_days(&self, wanted: usize, within: i32, floor: Floor) -> Judged {
        if self.doubt.is_some() {
            return Judged::clock();
        }
        let facts = &self.fold.kept.facts;
        let (days, looked_at) = self.distinct_days(&facts.full, wanted, within, floor);
        let more = u32::try_from(wanted.saturating_sub(days)).unwrap_or(u32::MAX);
        let mut judged = Judged::of(more == 0, Missing::PractisedDays { more });
        if more > 0 {
            // C2: with every missing peak given.
            let once_rated = &facts.full_once_rated;
            let (days, ids) = self.distinct_days(once_rated, wanted, within, floor);
            if days >= wanted {
                let unrated = ids.into_iter().rev().filter(|id| !looked_at.contains(id));
                let entries = if self.explain { named(unrated) } else { Vec::new() };
                judged = Judged::plain(Verdict::Unknown, Missing::Ratings { entries });
            }
        }
        if self.explain {
            judged.looked_at = looked_at.len();
            judged.entries = named(looked_at.into_iter().rev());
        }
        judged
    }

    /// On how many distinct days the sessions of a list fall within so many days, up to the number
    /// wanted; and, where it is to be explained, all of them, latest first.
    fn distinct_days(
        &self,
        list: &[Full],
        wanted: usize,
        within: i32,
        floor: Floor,
    ) -> (usize, Vec<RawId>) {
        // Distinct days, latest first. Days go by each session's own offset, so that those of
        // neighbours in time may be out of order by a little.
        let mut distinct = Vec::new();
        let mut looked_at = Vec::new();
        if floor.nothing {
            return (0, looked_at);
        }
        for full in list.iter().rev().take_while(|full| full.key >= floor.key) {
            let age = days_between(full.day, self.today);
            if age >= within.saturating_add(3) {
                break;
            }
            if age >= within {
                continue;
            }
            if self.explain {
                looked_at.push(full.id);
            }
            let at = distinct.partition_point(|day| *day > full.day);
            if distinct.get(at) != Some(&full.day) {
                distinct.insert(at, full.day);
                if distinct.len() >= wanted && !self.explain {
                    break;
                }
            }
        }
        (distinct.len(), looked_at)
    }

    fn discomfort_at_most(
        &self,
        kind: RatingKind,
        at_most: Rating,
        last: Last,
        floor: Floor,
    ) -> Judged {
        let facts = &self.fold.kept.facts;
        let (wanted, most) = (usize::from(last.get()), at_most.get());
        let Some(scale) = facts.scale(kind).filter(|_| !floor.nothing) else {
            return Judged::of(false, Missing::FullSessions { more: u32::from(last.get()) });
        };
        let nth = |list: &[Full]| {
            let at = list.len().checked_sub(wanted)?;
            list.get(at).copied().filter(|full| full.key >= floor.key)
        };
        let earliest = nth(&facts.full);
        let met = earliest
            .is_some_and(|earliest| !scale.lacks(earliest.key) && !scale.above(most, earliest.key));
        // C2: with every missing rating filled in at its lowest.
        let possible =
            nth(&facts.full_once_rated).is_some_and(|earliest| !scale.above(most, earliest.key));
        if !self.explain {
            return match (met, possible) {
                (true, _) => Judged::of(true, Missing::Nothing),
                (false, true) => Judged::plain(Verdict::Unknown, Missing::Nothing),
                (false, false) => Judged::of(false, Missing::Nothing),
            };
        }
        let full = facts.full.iter().rev().take_while(|full| full.key >= floor.key).take(wanted);
        let so_many = full.count();
        let since = earliest.map_or(floor.key, |earliest| earliest.key);
        let missing = if met {
            Missing::Nothing
        } else if possible {
            self.unrated(kind, since)
        } else if so_many < wanted {
            Missing::FullSessions { more: u32::try_from(wanted - so_many).unwrap_or(u32::MAX) }
        } else {
            Missing::Comfort
        };
        let verdict = match (met, possible) {
            (true, _) => Verdict::Met,
            (false, true) => Verdict::Unknown,
            (false, false) => Verdict::Unmet,
        };
        let line = self.fold.step_line();
        let find = |key: &Key| {
            let seen = &line?.seen;
            let at = seen.partition_point(|seen| seen.key < *key);
            seen.get(at).filter(|seen| seen.key == *key).map(|seen| seen.id)
        };
        let entries = facts.ups_since(since).iter().filter_map(find);
        let looked_at = match &earliest {
            Some(earliest) => facts.count_since(earliest),
            None => facts.count_from(floor.key),
        };
        Judged { verdict, entries: named(entries), looked_at, missing }
    }

    /// The sessions whose rating would settle it: those without this rating, or without a peak.
    fn unrated(&self, kind: RatingKind, since: Key) -> Missing {
        let facts = &self.fold.kept.facts;
        let mut keys: Vec<(Key, RawId)> = facts
            .scale(kind)
            .map(|scale| scale.missing.as_slice())
            .unwrap_or_default()
            .iter()
            .filter(|absent| absent.key >= since)
            .map(|absent| (absent.key, absent.id))
            .collect();
        let rated: Vec<Key> = facts.full.iter().rev().take(NAMED).map(|full| full.key).collect();
        let unpeaked = facts.full_once_rated.iter().rev().take(NAMED);
        keys.extend(
            unpeaked
                .filter(|full| full.key >= since && !rated.contains(&full.key))
                .map(|full| (full.key, full.id)),
        );
        keys.sort_unstable();
        keys.dedup();
        Missing::Ratings { entries: named(keys.into_iter().map(|(_, id)| id)) }
    }

    fn sign_free_days(&self, days: i32) -> Judged {
        let kept = &self.fold.kept;
        let latest = kept.signs.latest();
        let since_sign = latest.map(|(day, _)| days_between(day, self.today));
        let since_first = kept.course.first_accepted.map_or(0, |day| days_between(day, self.today));
        let more = days - since_sign.map_or(since_first, |since| since.min(since_first));
        let mut judged = Judged::of(more <= 0, Missing::Days { more: number(more) });
        if self.explain
            && let Some((_, id)) = latest.filter(|_| since_sign.is_some_and(|since| since < days))
        {
            judged.entries = vec![EntryId(id)];
            judged.looked_at = 1;
        }
        judged
    }

    fn feels_ready(&self, ground: &Ground<'_>, floor: Floor) -> Judged {
        let since = ground.last.map_or(ground.current.began, |last| last.key);
        let answer = self
            .fold
            .kept
            .course
            .answers
            .iter()
            .rev()
            .take_while(|answer| answer.key > since && answer.key >= floor.key)
            .filter(|answer| answer.key.place > floor.place && !floor.nothing)
            .max_by_key(|answer| answer.key.place);
        let mut judged = Judged::of(answer.is_some_and(|answer| answer.yes), Missing::Answer);
        if let Some(answer) = answer.filter(|_| self.explain) {
            judged.entries = vec![EntryId(answer.id)];
            judged.looked_at = 1;
        }
        judged
    }
}

fn last_of(window: &[Seen], count: usize) -> &[Seen] {
    window.get(window.len().saturating_sub(count)..).unwrap_or_default()
}
