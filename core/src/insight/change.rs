//! Whether ratings on one step have changed by as much as people with pain call a real change.

use serde::Serialize;

use super::spread::median;

/// Points on the 0 to 10 scale. Farrar JT, Young JP, LaMoreaux L, Werth JL, Poole RM (2001). Clinical
/// importance of changes in chronic pain intensity measured on an 11-point numerical pain rating scale.
/// Pain 94:149-158: a fall of about 2 points or 30 % went with "much improved". (Abstract read.)
const POINTS: f64 = 2.0;
/// The same source.
const SHARE: f64 = 0.3;
/// Ratings at each end that are compared, by their medians: common practice, no source.
const END: usize = 3;
/// Below so many ratings nothing is said about change: common practice, no source.
pub const LEAST_RATED: usize = 2 * END;

/// Which of the two published thresholds is reached.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Meaningful {
    /// Neither.
    Neither,
    /// 2 points.
    Points,
    /// 30 %.
    Share,
    /// Both.
    Both,
}

/// The first ratings on a step beside the last.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Change {
    /// Median of the first three, 0 to 10.
    pub first: f64,
    /// Median of the last three, 0 to 10.
    pub last: f64,
    /// Which threshold the difference reaches, up or down.
    pub reaches: Meaningful,
}

impl Change {
    /// Of the ratings given on one step under one revision, in order of happening. `None` below
    /// [`LEAST_RATED`].
    #[must_use]
    pub fn of(given: &[u8]) -> Option<Self> {
        if given.len() < LEAST_RATED {
            return None;
        }
        let first = median(given.get(..END)?)?;
        let last = median(given.get(given.len() - END..)?)?;
        Some(Self { first, last, reaches: meaningful(first, last) })
    }
}

/// Which threshold the way from one value to another reaches. A share of nothing is none: from 0 only
/// points count.
#[must_use]
pub fn meaningful(first: f64, last: f64) -> Meaningful {
    let by = (last - first).abs();
    match (by >= POINTS, first > 0.0 && by >= SHARE * first) {
        (true, true) => Meaningful::Both,
        (true, false) => Meaningful::Points,
        (false, true) => Meaningful::Share,
        (false, false) => Meaningful::Neither,
    }
}
