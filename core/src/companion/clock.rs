//! Decides whether the wall clock did something it should not (rule sentence T3). What follows from it
//! is the rule engine's business.

use crate::diary::entry::ClockChange;
use crate::diary::state::State;
use crate::moment::{Moment, Stamp, Uptime};

/// A wall clock that moves this much against the running time was set.
const JUMP: i64 = 60 * 60 * 1000;
/// After a restart, an absence longer than this has to be confirmed.
const LONG_AWAY: i64 = 3 * 24 * 60 * 60 * 1000;

/// What changed since the last reading: the one of this process, or at opening the last entry's.
pub(super) fn changed(
    state: &State,
    observed: Option<&Moment>,
    moment: &Moment,
    opening: bool,
) -> Option<ClockChange> {
    let (then, uptime) = match observed {
        Some(last) => (last.now, last.uptime),
        None => state.last().map(|last| (last.written, last.uptime))?,
    };
    match (uptime, moment.uptime) {
        (Some(before), Some(now)) if before.boot == now.boot => {
            jumped(then, before, moment.now, now).then_some(ClockChange::Jumped)
        }
        // Another start of the device, or none known: nothing ties the two readings together.
        _ if opening => {
            let away = moment.now.millis().saturating_sub(then.millis());
            (away > LONG_AWAY).then_some(ClockChange::LongAway)
        }
        _ => None,
    }
}

fn jumped(then: Stamp, before: Uptime, now: Stamp, after: Uptime) -> bool {
    let wall = now.millis().saturating_sub(then.millis());
    let running = i64::try_from(after.millis)
        .unwrap_or(i64::MAX)
        .saturating_sub(i64::try_from(before.millis).unwrap_or(i64::MAX));
    wall.saturating_sub(running).abs() > JUMP
}
