//! Decides what a few numbers of one step and one revision say, for the clinician. Everything here is
//! about what a person told herself: self-reported, bounded, whole numbers that lean on the day before.
//! So there are counts, medians, ranges and published thresholds of change; no p-values, no percentages,
//! no trend.
//!
//! Leaves to [`crate::screens`] how it is said, and to the clinician what it means.

mod change;
mod function;
mod goal;
mod practised;
mod spread;
#[cfg(test)]
mod tests;

pub use change::{Change, LEAST_RATED, Meaningful, meaningful};
pub use function::{Function, MDC90_AVERAGE, MDC90_SINGLE};
pub use goal::attainment;
pub use practised::Practised;
pub use spread::{Spread, median, quantile};
