//! Which sessions count, in which order, and what each of them is (F1 to F6, T5).

use frond_core::diary::entry::{Content, Ended, Place, Session};
use frond_core::programme::plan::Step;
use frond_core::programme::rule::Rule;
use frond_core::programme::values::RatingKind;
use frond_core::safety::Tier;

use super::ladder::{Current, Ladder};
use super::reading::{Item, Reading, told};

/// What everything is judged on.
pub struct Ground<'r, 'a> {
    /// The diary as read.
    pub reading: &'r Reading<'a>,
    /// The ladder.
    pub ladder: &'r Ladder<'a>,
    /// The current step.
    pub current: &'r Current<'a>,
    /// The rule in force.
    pub rule: &'r Rule,
}

/// For which part of the rule the facts are gathered.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum For {
    /// Going up: by the times as told.
    Up,
    /// Coming back or pausing: what lies ahead goes by place (T5).
    Careful,
}

/// Where an item stands in the order of happening, ties by place (T1).
type Order = (Option<i64>, Place);

impl<'a> Ground<'_, 'a> {
    /// The sessions of the practice of the current step.
    fn sessions(&self) -> impl Iterator<Item = &Item<'a>> {
        let practice = &self.current.step().practice;
        let of_practice = move |item: &&Item<'a>| {
            item.session().is_some_and(|session| session.practice == *practice)
        };
        self.reading.items.iter().filter(of_practice)
    }

    /// The order of an item. For the careful parts an item ahead takes the latest time of the sessions,
    /// step beginnings, acceptances and clearings that were placed before it and are not ahead.
    #[must_use]
    pub fn order(&self, item: &Item<'_>, side: For) -> Order {
        let own = item.happened();
        if side == For::Up || !self.reading.ahead(own) {
            return (Some(own.millis()), item.place);
        }
        let earlier = self
            .sessions()
            .chain(&self.ladder.namings)
            .chain(self.reading.clearings())
            .filter(|other| other.place < item.place && !self.reading.ahead(other.happened()))
            .map(|other| other.happened().millis())
            .max();
        (earlier, item.place)
    }

    /// F1: the sessions of the step's practice since it began, in order of happening.
    #[must_use]
    pub fn since_began(&self, side: For) -> Vec<Item<'a>> {
        let began = self.order(&self.current.began, side);
        let mut sessions: Vec<_> =
            self.sessions().filter(|item| self.order(item, side) > began).cloned().collect();
        sessions.sort_by_key(|item| self.order(item, side));
        sessions
    }

    /// F6: the sessions that pause and step back look at.
    #[must_use]
    pub fn careful(&self) -> Vec<Item<'a>> {
        let mut sessions = self.since_began(For::Careful);
        sessions.retain(|session| !self.before_a_clearing(session));
        sessions
    }

    /// F6: happened before a clearing of a pause, and written before it.
    #[must_use]
    pub fn before_a_clearing(&self, item: &Item<'_>) -> bool {
        self.reading.pause_clearings().any(|clearing| {
            item.place < clearing.place
                && self.order(item, For::Careful) < self.order(clearing, For::Careful)
        })
    }

    /// F5: whether an item still counts for going up; `since` are the sessions since the step began.
    fn counts_for_up(&self, since: &[Item<'_>], item: &Item<'_>) -> bool {
        let at = self.order(item, For::Up);
        let cleared = self
            .reading
            .pause_clearings()
            .all(|clearing| item.place > clearing.place && at > self.order(clearing, For::Up));
        let erased = self.reading.items.iter().all(|mark| match mark.told() {
            Content::ErasedMark { latest, .. } => item.happened().millis() > latest.millis(),
            _ => true,
        });
        let struck = self.reading.session_strikes();
        let untouched =
            struck.iter().all(|strike| item.happened().millis() > strike.written.millis());
        let gap = self.rule.after_gap_days.map_or(i64::MAX, |days| i64::from(days.get()));
        let gaps_over = since.windows(2).all(|pair| {
            let [before, after] = pair else { return true };
            let days = (after.happened().day() - before.happened().day()).num_days();
            // An answer also has to be written after the gap; a session told late still ends one.
            let written = item.session().is_some() || item.place > after.place;
            days < gap || (at >= self.order(after, For::Up) && written)
        });
        let none_now =
            since.last().is_none_or(|last| self.reading.days_since(last.happened()) < gap);
        cleared && erased && untouched && gaps_over && none_now
    }

    /// F5: the sessions that going up looks at.
    #[must_use]
    pub fn upward(&self) -> Vec<Item<'a>> {
        let since = self.since_began(For::Up);
        let mut sessions = since.clone();
        sessions.retain(|item| self.counts_for_up(&since, item));
        sessions
    }

    /// The answers to "would you like to try the next step?" that may count: since the last session, or
    /// since the step began.
    #[must_use]
    pub fn answers(&self) -> Vec<Item<'a>> {
        let since = self.since_began(For::Up);
        let from = self.order(since.last().unwrap_or(&self.current.began), For::Up);
        self.reading
            .items
            .iter()
            .filter(|item| matches!(item.told(), Content::FeelsReady { .. }))
            .filter(|item| self.order(item, For::Up) > from)
            .filter(|item| self.counts_for_up(&since, item))
            .cloned()
            .collect()
    }
}

/// F2: whether a session is on a step.
#[must_use]
pub fn is_on(session: &Session, step: &Step) -> bool {
    session.practice == step.practice
        && session.main_size() == step.main_size()
        && session.position == step.position
}

/// F2: whether a session is below the current step.
#[must_use]
pub fn is_below(session: &Session, current: &Current<'_>) -> bool {
    let earlier = &current.programme.steps[..current.index];
    let smaller = match (session.main_size(), current.step().main_size()) {
        (Some(used), Some(asked)) => used < asked,
        _ => false,
    };
    !is_on(session, current.step()) && (smaller || earlier.iter().any(|step| is_on(session, step)))
}

/// A rating given; with `fill` a missing one reads as 0.
#[must_use]
pub fn rating(item: &Item<'_>, kind: RatingKind, fill: bool) -> Option<u8> {
    let given = item.session()?.ratings.given(kind).map(|rating| rating.get());
    given.or(fill.then_some(0))
}

/// F3: whether a session is full; with `fill`, whether it would be with its missing ratings given.
#[must_use]
pub fn is_full(current: &Current<'_>, item: &Item<'_>, fill: bool) -> bool {
    let Some(session) = item.session() else { return false };
    let step = current.step();
    let least = step.main_part().map_or(0, |part| u32::from(part.minutes.least.get()) * 60);
    let signs = item.versions.iter().flat_map(|version| told(version).signs());
    let earliest = item.versions.iter().map(|version| version.happened.millis()).min();
    let late_after = i64::from(current.programme.late_after_hours.get()) * 3_600_000;
    let late = |written: i64| earliest.is_some_and(|earliest| written - earliest > late_after);
    is_on(session, step)
        && session.main_seconds() >= least
        && session.ended == Ended::Finished
        && rating(item, RatingKind::Peak, fill).is_some()
        && signs.into_iter().all(|sign| sign.tier == Tier::Note)
        && !late(item.root.written.millis())
        && !late(item.counts.written.millis())
}
