//! Decides what "now", "then" and "that day" mean. Leaves to others what follows from them: whether
//! the clock can be trusted is the rule engine's business ([`crate::progression`]).
//!
//! Three values: [`NamedZone`], a zone of the time zone database; [`Stamp`], an instant with the local
//! offset and, where known, the zone it was lived in; and [`Moment`], a stamp with the device's running
//! time, which is what a shell hands in.

mod stamp;
mod zone;
#[cfg(test)]
mod zone_tests;

pub use stamp::{Stamp, StampError};
pub use zone::{NamedZone, ZONE_EDITION};

use serde::{Deserialize, Serialize};

/// Time since the device started, and which start that was.
///
/// A wall clock can be set; this cannot. Two readings of the same start whose wall clocks disagree by
/// more than their running times show that the wall clock was changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Uptime {
    /// An opaque number that differs between any two starts of the device.
    pub boot: u64,
    /// Milliseconds since that start, sleep included.
    pub millis: u64,
}

/// The moment of a request: what the wall clock says, where, and how long the device has been running.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Moment {
    /// Wall clock with offset and zone.
    pub now: Stamp,
    /// Running time; `None` where the surface has none to give (a replay from a file).
    pub uptime: Option<Uptime>,
}

impl Moment {
    /// A moment without running time.
    #[must_use]
    pub fn at(now: Stamp) -> Self {
        Self { now, uptime: None }
    }
}
