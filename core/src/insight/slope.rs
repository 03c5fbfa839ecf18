//! The Theil-Sen slope: the median of the slopes between all pairs, which a few odd values hardly move.

use serde::Serialize;

use super::distribution::normal_width;
use super::proportion::Interval;
use super::spread::middle;

/// Beyond so many points the slope is not worked out: its pairs grow with the square, and nobody stays on
/// one step for so many rated sessions.
pub const MOST_FITTED: usize = 1000;

/// A slope and its interval. The interval takes each value for independent of the one before.
///
/// Sen PK (1968). Estimates of the regression coefficient based on Kendall's tau. Journal of the American
/// Statistical Association 63:1379-1389. (Its worked number read in other programs' tests.)
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Slope {
    /// The median of the slopes between all pairs with different `x`: change of `y` for one of `x`.
    pub slope: f64,
    /// Between which of those slopes the true one lies, at the level asked for. Absent where too few
    /// pairs tell.
    pub interval: Option<Interval>,
}

impl Slope {
    /// Of points in any order. `None` where no two have a different `x`, where one is no finite number,
    /// for a level outside 0 to 1, or beyond [`MOST_FITTED`] points.
    #[must_use]
    pub fn of(points: &[(f64, f64)], level: f64) -> Option<Self> {
        let width = normal_width(level)?;
        if points.len() > MOST_FITTED
            || points.iter().any(|(x, y)| !x.is_finite() || !y.is_finite())
        {
            return None;
        }
        let mut slopes = Vec::new();
        for (at, (x, y)) in points.iter().enumerate() {
            for (later_x, later_y) in points.iter().skip(at + 1) {
                let run = later_x - x;
                if run != 0.0 {
                    slopes.push((later_y - y) / run);
                }
            }
        }
        if slopes.iter().any(|slope| !slope.is_finite()) {
            return None;
        }
        slopes.sort_by(f64::total_cmp);
        let slope = middle(&slopes)?;
        Some(Self { slope, interval: between(points, &slopes, width) })
    }
}

/// The slopes between which the true one lies, by the variance of Kendall's score with ties on both axes.
fn between(points: &[(f64, f64)], sorted: &[f64], width: f64) -> Option<Interval> {
    let ties = |of: fn(&(f64, f64)) -> f64| {
        let mut values: Vec<f64> = points.iter().map(of).collect();
        values.sort_by(f64::total_cmp);
        values.chunk_by(|one, next| one == next).map(|tied| term(tied.len())).sum::<f64>()
    };
    let variance = (term(points.len()) - ties(|point| point.0) - ties(|point| point.1)) / 18.0;
    if variance <= 0.0 {
        return None;
    }
    #[allow(clippy::cast_precision_loss, reason = "at most half a million slopes")]
    let pairs = sorted.len() as f64;
    let reach = width * variance.sqrt();
    // A rank that falls outside stands at the end, as in SciPy's `theilslopes`.
    let last = sorted.len().checked_sub(1)?;
    let upper = rank(((pairs + reach) / 2.0).round_ties_even()).min(last);
    let lower = rank(((pairs - reach) / 2.0).round_ties_even() - 1.0).min(last);
    Some(Interval { lower: *sorted.get(lower)?, upper: *sorted.get(upper)? })
}

/// n (n - 1) (2n + 5).
pub(super) fn term(count: usize) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "counts of sessions")]
    let n = count as f64;
    n * (n - 1.0) * (2.0 * n + 5.0)
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held at 0 and rounded")]
fn rank(number: f64) -> usize {
    number.max(0.0) as usize
}
