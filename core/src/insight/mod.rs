//! Decides what a few numbers say to the clinician: of one step under one revision in one diary, of two
//! times on the same step, and of the time people spent on a step. Each file is one idea, each function
//! says its source, its range, and when it has nothing to say; none gives what is no number.
//!
//! What people tell of themselves is self-reported, bounded, in whole numbers, and leans on the day before.
//! So counts come first, and whatever takes values for independent (limits, intervals, p) is nominal. The
//! functions work out what they are asked from the least they need; the `LEAST_...` numbers say from how
//! many values on it is shown, and [`crate::screens`] keeps to them.
//!
//! `NUMBERS.md`, beside this file, says from how many values on and why. Leaves to [`crate::screens`] how it
//! is said, and to the clinician what it means. There is no line of
//! least squares: it takes bounded, rounded ratings for normal ones and lets one bad day turn it.

mod change;
mod chart;
mod distribution;
mod function;
mod gaps;
mod goal;
mod nonoverlap;
mod practised;
mod proportion;
mod slope;
mod spread;
mod survival;
#[cfg(test)]
mod tests;
mod trend;

pub use change::{Change, LEAST_RATED, Meaningful, meaningful};
pub use chart::{Chart, LEAST_CHARTED};
pub use function::{Function, MDC90_AVERAGE, MDC90_SINGLE};
pub use gaps::Gaps;
pub use goal::attainment;
pub use nonoverlap::{LEAST_COMPARED, Nonoverlap};
pub use practised::Practised;
pub use proportion::{Interval, clopper_pearson, jeffreys, wilson};
pub use slope::{MOST_FITTED, Slope};
pub use spread::{Range, Spread, median, quantile};
pub use survival::{Followed, LEAST_PEOPLE, Survival, SurvivalPoint};
pub use trend::{LEAST_FOR_TREND, MannKendall};

/// The level of every interval shown: common practice, no source.
pub const LEVEL: f64 = 0.95;
