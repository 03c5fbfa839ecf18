//! The state machine of a timed practice: what each event does to its stage and its clock. Leaves what is kept of it to
//! [`super::record`], what it comes to as a session to [`super::result`], and what a part takes to the plan.

use std::fmt;

use serde::Serialize;

use super::Tick;
use super::planned::{Planned, PlannedPart};
use super::record::{Running, RunningError, Stage};
use super::result::Done;
use crate::diary::entry::EntryId;
use crate::programme::values::{Position, Practice, Size};

/// Something that happens to a practice. One that does not fit changes nothing but the clock (W3).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Event {
    /// Begin a part, by its number from 0. Naming it keeps a second tap from beginning the one after.
    Begin {
        /// The part shown when it was tapped.
        part: usize,
    },
    /// The clock is to stand still.
    Pause,
    /// The clock is to run again.
    GoOn,
    /// This part is enough, by its number from 0.
    Enough {
        /// The part shown when it was tapped.
        part: usize,
    },
    /// A smaller trainer from here on. Larger ones are no event: they are chosen before a practice.
    Smaller {
        /// The part shown when it was tapped.
        part: usize,
        /// The smaller size.
        size: Size,
    },
    /// Stop. Heard in every state.
    Stop,
    /// The practice goes on; noted every [`super::SEEN_EVERY_MILLIS`].
    Seen,
}

/// Where a practice stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// A part waits for the person to begin it.
    Ready,
    /// The clock runs.
    Running,
    /// The clock stands still.
    Paused,
    /// Stopped by the person. Final.
    Stopped,
    /// Over as planned.
    Finished,
}

/// A practice with its clock.
#[derive(Clone, PartialEq, Eq)]
pub struct Timer {
    pub(super) running: Running,
}

// A practice is the person's own affair.
impl fmt::Debug for Timer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Timer(..)")
    }
}

/// What a screen shows of a timer at one instant.
#[derive(Clone, Copy, PartialEq, Eq, Serialize)]
pub struct View {
    /// Where it stands.
    pub state: State,
    /// The part it is about, counted from 0; of an ended practice the last that has time.
    pub part: usize,
    /// How many parts there are.
    pub parts: usize,
    /// Milliseconds practised of that part.
    pub part_millis: u64,
    /// Milliseconds that part takes at least.
    pub least_millis: u64,
    /// Milliseconds after which it is over.
    pub most_millis: u64,
    /// Milliseconds practised of all parts.
    pub total_millis: u64,
    /// Whether that part has taken its least.
    pub least_reached: bool,
    /// Milliseconds until the clock by itself reaches the part's least or its end; `None` while it
    /// stands still. A shell wakes then, and needs no alarm besides.
    pub next_in_millis: Option<u64>,
}

impl fmt::Debug for View {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("View(..)")
    }
}

impl Timer {
    /// A practice that waits to be begun. `id` is that of the request which will write the session.
    #[must_use]
    pub fn new(planned: Planned, id: EntryId, tick: &Tick) -> Self {
        Self { running: Running::new(planned, id, tick.uptime, tick.now) }
    }

    /// The same practice after `event`. Total: every event in every state.
    #[must_use]
    pub fn after(mut self, event: Event, tick: &Tick) -> Self {
        self.pass(tick);
        let running = &mut self.running;
        match (event, running.stage) {
            (Event::Begin { part }, Stage::Ready { part: at }) if part == at => {
                running.began.get_or_insert(tick.now);
                running.stage = Stage::Running { part };
            }
            (Event::Pause, Stage::Running { part }) => running.stage = Stage::Paused { part },
            (Event::GoOn, Stage::Paused { part }) => running.stage = Stage::Running { part },
            (
                Event::Enough { part },
                Stage::Ready { part: at }
                | Stage::Running { part: at }
                | Stage::Paused { part: at },
            ) if part == at => running.enough(part),
            (
                Event::Smaller { part, size },
                Stage::Ready { part: at }
                | Stage::Running { part: at }
                | Stage::Paused { part: at },
            ) if part == at => running.smaller(part, size),
            (Event::Stop, _) => running.stage = Stage::Stopped,
            _ => {}
        }
        self
    }

    /// Lets the clock come up to `tick`.
    pub(super) fn pass(&mut self, tick: &Tick) {
        let passed = tick.since(&self.running.seen_uptime);
        self.running.count(passed.unwrap_or_default());
        self.running.seen_uptime = tick.uptime;
        self.running.seen = tick.now;
    }

    /// Where it stands as of the last event.
    #[must_use]
    pub fn state(&self) -> State {
        match self.running.stage {
            Stage::Ready { .. } => State::Ready,
            Stage::Running { .. } => State::Running,
            Stage::Paused { .. } => State::Paused,
            Stage::Stopped => State::Stopped,
            Stage::Finished => State::Finished,
        }
    }

    /// What a screen shows at `tick`. Changes nothing.
    #[must_use]
    pub fn view(&self, tick: &Tick) -> View {
        let mut then = self.clone();
        then.pass(tick);
        let running = &then.running;
        let part = running.part();
        let part_millis = running.counted(part);
        let (least_millis, most_millis) =
            running.parts.get(part).map_or((0, 0), |p| (p.least_millis, p.most_millis));
        let state = then.state();
        let mark = if part_millis < least_millis { least_millis } else { most_millis };
        View {
            state,
            part,
            parts: running.parts.len(),
            part_millis,
            least_millis,
            most_millis,
            total_millis: running.total_millis(),
            least_reached: part_millis >= least_millis,
            next_in_millis: (state == State::Running).then(|| mark - part_millis),
        }
    }

    /// The size of the part it is about, where a trainer is used: smaller ones than this can be offered
    /// at any moment ([`Event::Smaller`]).
    #[must_use]
    pub fn size(&self) -> Option<Size> {
        self.running.parts.get(self.running.part()).and_then(|part| part.size())
    }

    /// The id under which the session is to be written.
    #[must_use]
    pub fn id(&self) -> EntryId {
        self.running.id
    }

    /// Kind of practice.
    #[must_use]
    pub fn practice(&self) -> &Practice {
        &self.running.practice
    }

    /// The parts as planned, in order; those of a smaller trainer as changed on the way.
    #[must_use]
    pub fn parts(&self) -> &[PlannedPart] {
        &self.running.parts
    }

    /// Position as planned.
    #[must_use]
    pub fn position(&self) -> Position {
        self.running.position
    }

    /// What to keep now, so that the practice outlives this process. To be replaced as a whole after
    /// each event.
    ///
    /// # Errors
    /// [`RunningError::NotKept`] if it cannot be written.
    pub fn stored(&self) -> Result<Vec<u8>, RunningError> {
        self.running.write()
    }

    /// What came of it; `None` until it is stopped or finished.
    #[must_use]
    pub fn done(&self) -> Option<Done> {
        Done::of(&self.running)
    }
}
