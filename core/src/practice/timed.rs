//! Practising with a clock: parts in order, pauses, and one action that stops at any moment (W1 to W8).
//!
//! It decides how much time certainly was practised. Running time alone makes time count; a wall clock
//! can be set, so it only says when a practice began, and it can only take time away. What is on the
//! way is kept as one small record ([`Timer::stored`]) that outlives the process and the device's start;
//! a record that is found again ([`Found`]) counts for nothing until the person has chosen what becomes
//! of it.
//!
//! It leaves to the companion where the record lies and when it is removed, and to the shells the clock
//! on the screen, which they draw from [`Timer::view`].

mod found;
mod planned;
mod record;
mod result;
#[cfg(test)]
mod tests;
mod timer;
mod words;

pub use found::{Choice, Found, Offer};
pub use planned::{PlanError, Planned, PlannedPart};
pub use record::RunningError;
pub use result::{Done, How};
pub use timer::{Event, State, Timer, View};
pub use words::FoundCard;

use crate::moment::{Moment, Stamp, Uptime};

/// How often a shell notes that a practice goes on, in milliseconds ([`Event::Seen`]). After a crash at
/// most so much is not certain. A technical number: it says nothing about a practice.
pub const SEEN_EVERY_MILLIS: u64 = 15_000;

/// An instant as a timer needs it: running time to count with, wall time to say when.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tick {
    /// Running time.
    pub uptime: Uptime,
    /// Wall time.
    pub now: Stamp,
}

impl Tick {
    /// The instant of a moment; `None` where the surface has no running time, and so cannot time.
    #[must_use]
    pub fn of(moment: &Moment) -> Option<Self> {
        moment.uptime.map(|uptime| Self { uptime, now: moment.now })
    }

    /// Milliseconds from `earlier` to this within one start of the device. Another start, or a running
    /// time that went backwards: unknown.
    fn since(&self, earlier: &Uptime) -> Option<u64> {
        if self.uptime.boot != earlier.boot {
            return None;
        }
        self.uptime.millis.checked_sub(earlier.millis)
    }
}
