//! A practice found again after its process ended: what is certain, and what the person can choose
//! (W6, W7).

use std::fmt;

use serde::Serialize;

use super::record::{Running, RunningError, Stage};
use super::result::Done;
use super::timer::Timer;
use super::{SEEN_EVERY_MILLIS, Tick};
use crate::diary::entry::EntryId;
use crate::message_id;
use crate::moment::Stamp;

/// A practice that was under way when its process ended. It is nothing yet: going on, ending and leaving
/// it out each use it up.
pub struct Found {
    running: Running,
}

impl fmt::Debug for Found {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Found(..)")
    }
}

/// What can be chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Choice {
    /// Go on from here.
    GoOn,
    /// End it with the time that is certain.
    Finish,
    /// Leave it out.
    Discard,
}

impl Choice {
    /// The message id of the words on the button.
    #[must_use]
    pub fn word_id(self) -> &'static str {
        match self {
            Choice::GoOn => message_id!("found-go-on"),
            Choice::Finish => message_id!("found-finish"),
            Choice::Discard => message_id!("found-discard"),
        }
    }
}

/// What is said of a practice that was found.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Offer {
    /// When it began, if it had.
    pub began: Option<Stamp>,
    /// Milliseconds that certainly were practised, all parts together.
    pub certain_millis: u64,
    /// Whether it can go on; one that was stopped or had finished cannot.
    pub can_go_on: bool,
}

impl fmt::Debug for Offer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Offer(..)")
    }
}

impl Offer {
    /// The choices, in the order to show.
    #[must_use]
    pub fn choices(&self) -> &'static [Choice] {
        match self.can_go_on {
            true => &[Choice::GoOn, Choice::Finish, Choice::Discard],
            false => &[Choice::Finish, Choice::Discard],
        }
    }
}

impl Found {
    /// Reads a stored practice.
    ///
    /// # Errors
    /// [`RunningError`] says whether to update or to write the session down by hand.
    pub fn open(bytes: &[u8]) -> Result<Self, RunningError> {
        Running::read(bytes).map(|running| Self { running })
    }

    /// The id under which its session would be written.
    #[must_use]
    pub fn id(&self) -> EntryId {
        self.running.id
    }

    /// What is certain at `tick`, and what can be chosen.
    #[must_use]
    pub fn offer(&self, tick: &Tick) -> Offer {
        let running = certain(self.running.clone(), tick);
        Offer {
            began: running.began,
            certain_millis: running.total_millis(),
            can_go_on: !matches!(running.stage, Stage::Stopped | Stage::Finished),
        }
    }

    /// Goes on: a clock that ran runs from now, one that stood still stands still.
    #[must_use]
    pub fn go_on(self, tick: &Tick) -> Timer {
        let mut running = certain(self.running, tick);
        running.seen_uptime = tick.uptime;
        running.seen = tick.now;
        Timer { running }
    }

    /// Ends it with the time that is certain: finished if the last part took its least, else stopped.
    #[must_use]
    pub fn finish(self, tick: &Tick) -> Option<Done> {
        self.ended(tick).done()
    }

    /// The same, as a timer that has ended, to be kept until its session is written down.
    #[must_use]
    pub fn ended(self, tick: &Tick) -> Timer {
        let mut running = certain(self.running, tick);
        if let Stage::Ready { part } | Stage::Running { part } | Stage::Paused { part } =
            running.stage
        {
            running.enough(part);
            // An earlier part was under way: the main one was not reached.
            if matches!(running.stage, Stage::Ready { .. }) {
                running.stage = Stage::Stopped;
            }
        }
        running.seen_uptime = tick.uptime;
        running.seen = tick.now;
        Timer { running }
    }

    /// Leaves it out. Nothing of it is kept; the stored record is to be removed.
    pub fn discard(self) {}
}

/// What is certain. The time since the record was written counts only if it is no longer than an
/// undisturbed practice lets pass between two notes, by the running time and by the wall clock: either
/// can take it away, neither alone can give it.
fn certain(mut running: Running, tick: &Tick) -> Running {
    let passed = tick.since(&running.seen_uptime).unwrap_or_default();
    let by_wall = tick.now.millis().checked_sub(running.seen.millis());
    let by_wall = by_wall.and_then(|millis| u64::try_from(millis).ok());
    let short = |millis: u64| millis <= SEEN_EVERY_MILLIS;
    if short(passed) && by_wall.is_some_and(short) {
        running.count(passed);
    }
    running
}
