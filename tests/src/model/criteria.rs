//! Whether each criterion is met, unmet, or cannot be known (C1, C2, T4).

use std::collections::BTreeSet;

use frond_core::diary::entry::{Content, FeelsReady};
use frond_core::moment::Stamp;
use frond_core::programme::rule::{BackCriterion, PauseCriterion, UpCriterion, Window};
use frond_core::programme::values::{Days, RatingAtLeast, RatingKind};
use frond_core::progression::Verdict;

use super::facts::{For, Ground, is_below, is_full, rating};
use super::reading::Item;
use super::signs::noted;

fn met(met: bool) -> Verdict {
    if met { Verdict::Met } else { Verdict::Unmet }
}

/// Met as it is; unknown if it would be with every missing rating given as 0; else unmet (C2).
fn met_or_could(with: impl Fn(bool) -> bool) -> Verdict {
    match (with(false), with(true)) {
        (true, _) => Verdict::Met,
        (false, true) => Verdict::Unknown,
        (false, false) => Verdict::Unmet,
    }
}

impl Ground<'_, '_> {
    /// A criterion of going up.
    #[must_use]
    pub fn up(&self, criterion: &UpCriterion) -> Verdict {
        // T4 names them; one that is new has to be put on either side.
        let by_day = match criterion {
            UpCriterion::DaysOnStep { .. }
            | UpCriterion::Sessions { .. }
            | UpCriterion::SignFreeDays { .. } => true,
            UpCriterion::DiscomfortAtMost { .. } | UpCriterion::FeelsReady {} => false,
        };
        if by_day && self.reading.unsure() {
            return Verdict::Unknown;
        }
        let sessions = self.upward();
        match *criterion {
            UpCriterion::DaysOnStep { days } => {
                let since = self.reading.days_since(self.current.began.happened());
                met(since - self.days_off() >= i64::from(days.get()))
            }
            UpCriterion::Sessions { practised_days, within_days } => met_or_could(|fill| {
                let days: BTreeSet<_> = sessions
                    .iter()
                    .filter(|item| is_full(self.current, item, fill))
                    .filter(|item| {
                        self.reading.days_since(item.happened()) < i64::from(within_days.get())
                    })
                    .map(|item| item.happened().day())
                    .collect();
                days.len() >= usize::from(practised_days.get())
            }),
            UpCriterion::DiscomfortAtMost { rating: kind, at_most, last } => met_or_could(|fill| {
                let full: Vec<usize> = (0..sessions.len())
                    .filter(|&index| is_full(self.current, &sessions[index], fill))
                    .collect();
                let Some(first) = full.len().checked_sub(usize::from(last.get())) else {
                    return false;
                };
                sessions[full[first]..].iter().all(|item| {
                    rating(item, kind, fill).is_some_and(|given| given <= at_most.get())
                })
            }),
            UpCriterion::SignFreeDays { days } => {
                let days = i64::from(days.get());
                let quiet = noted(self.reading).values().all(|sign| {
                    let mut times = sign.reported.iter().chain(&sign.closed);
                    times.all(|time| self.reading.days_since(*time) >= days)
                });
                let long_enough = self
                    .ladder
                    .first_accepted
                    .as_ref()
                    .is_some_and(|item| self.reading.days_since(item.happened()) >= days);
                met(quiet && long_enough)
            }
            UpCriterion::FeelsReady {} => {
                let answers = self.answers();
                let last = answers.iter().max_by_key(|item| item.place);
                met(last.is_some_and(|item| {
                    matches!(item.told(), Content::FeelsReady { answer: FeelsReady::Yes })
                }))
            }
        }
    }

    /// Days off since the step began, both ends and today included.
    fn days_off(&self) -> i64 {
        let mut days = BTreeSet::new();
        for item in &self.reading.items {
            if let Content::TimeOff { from, to } = item.told() {
                let first = (*from).max(self.current.began.happened().day());
                let last = (*to).min(self.reading.now.day());
                days.extend(first.iter_days().take_while(|day| *day <= last));
            }
        }
        i64::try_from(days.len()).unwrap_or(i64::MAX)
    }

    /// A criterion of coming back.
    #[must_use]
    pub fn back(&self, criterion: &BackCriterion) -> Verdict {
        match *criterion {
            BackCriterion::DiscomfortAtLeast { rating, at_least, window } => {
                self.discomfort_at_least(rating, at_least, window)
            }
            BackCriterion::StoppedEarly { window } => self.stopped_early(window),
            BackCriterion::DaysWithoutPractice { days } => {
                let practised = !self.since_began(For::Careful).is_empty();
                if self.current.came_back && !practised {
                    return Verdict::Unmet;
                }
                self.days_without_practice(days)
            }
        }
    }

    /// A criterion of pausing.
    #[must_use]
    pub fn pause(&self, criterion: &PauseCriterion) -> Verdict {
        match *criterion {
            PauseCriterion::DiscomfortAtLeast { rating, at_least, window } => {
                self.discomfort_at_least(rating, at_least, window)
            }
            PauseCriterion::StoppedEarly { window } => self.stopped_early(window),
            PauseCriterion::DaysWithoutPractice { days } => self.days_without_practice(days),
            PauseCriterion::StepsBack { times, within_days } => {
                if self.reading.jump_unconfirmed() {
                    return Verdict::Unknown;
                }
                let within = |item: &&Item<'_>| {
                    self.reading.days_since(item.happened()) < i64::from(within_days.get())
                        && !self.before_a_clearing(item)
                };
                let all: Vec<_> = self.ladder.backs.iter().filter(within).collect();
                let sure = all.iter().filter(|item| !self.day_ahead(item.happened())).count();
                let times = usize::from(times.get());
                match (sure >= times, all.len() >= times) {
                    (true, _) => Verdict::Met,
                    (false, true) => Verdict::Unknown,
                    (false, false) => Verdict::Unmet,
                }
            }
        }
    }

    /// Whether the very day of something lies ahead (T4).
    fn day_ahead(&self, stamp: Stamp) -> bool {
        self.reading.ahead(stamp) && stamp.day() > self.reading.now.day()
    }

    fn discomfort_at_least(
        &self,
        kind: RatingKind,
        at_least: RatingAtLeast,
        of: Window,
    ) -> Verdict {
        let mut sessions = self.careful();
        sessions.retain(|item| item.session().is_some_and(|s| !is_below(s, self.current)));
        let last = &sessions[sessions.len().saturating_sub(of.of_last())..];
        let given: Vec<_> = last.iter().map(|item| rating(item, kind, false)).collect();
        let known = given.iter().flatten().filter(|rating| **rating >= at_least.get()).count();
        let missing = given.iter().filter(|rating| rating.is_none()).count();
        if known >= of.sessions() {
            Verdict::Met
        } else if known + missing >= of.sessions() {
            Verdict::Unknown
        } else {
            Verdict::Unmet
        }
    }

    fn stopped_early(&self, of: Window) -> Verdict {
        let sessions = self.careful();
        let last = &sessions[sessions.len().saturating_sub(of.of_last())..];
        let stopped = |item: &&Item<'_>| {
            item.session().is_some_and(|session| session.ended.counts_as_stopped())
        };
        met(last.iter().filter(stopped).count() >= of.sessions())
    }

    fn days_without_practice(&self, days: Days) -> Verdict {
        if self.reading.jump_unconfirmed() {
            return Verdict::Unknown;
        }
        let counted: Vec<_> = std::iter::once(self.current.began.clone())
            .chain(self.since_began(For::Careful).pop())
            .chain(self.reading.pause_clearings().cloned())
            .collect();
        let last = counted.iter().max_by_key(|item| self.order(item, For::Careful));
        if last.is_none_or(|last| self.day_ahead(last.happened())) {
            return Verdict::Unknown;
        }
        let from = counted
            .iter()
            .map(Item::happened)
            .filter(|stamp| !self.day_ahead(*stamp))
            .max_by_key(Stamp::day);
        met(from.is_some_and(|from| self.reading.days_since(from) >= i64::from(days.get())))
    }
}
