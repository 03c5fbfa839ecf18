//! Intervals for a share of people, where they can be taken for a sample of more people like them.
//!
//! Not for the sessions of one diary: those are all there are, they lean on one another, and their count
//! says everything. Which of the three is shown, and with which words, is left to the screens.

use serde::Serialize;

use super::distribution::{LARGEST_SHAPE, beta_quantile, is_level, normal_width};

/// From where to where; both ends within what is measured.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Interval {
    /// The lower end.
    pub lower: f64,
    /// The upper end, never below the lower.
    pub upper: f64,
}

/// Wilson's score interval of a share, 0 to 1, at a level such as 0.95. It always holds the share itself.
/// `None` where nothing was counted, where more were found than counted, or for a level outside 0 to 1.
///
/// Wilson EB (1927). Journal of the American Statistical Association 22:209-212 (memory); the form and a
/// worked number in the NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1 (read).
#[must_use]
pub fn wilson(found: u32, of: u32, level: f64) -> Option<Interval> {
    wilson_at(share(found, of)?, f64::from(of), normal_width(level)?)
}

/// The same from the share, the count and the number of standard deviations to each side.
pub(super) fn wilson_at(share: f64, of: f64, z: f64) -> Option<Interval> {
    let stretch = z * z / of;
    let middle = share + stretch / 2.0;
    let half = z * (share * (1.0 - share) / of + stretch / (4.0 * of)).max(0.0).sqrt();
    within(share, (middle - half) / (1.0 + stretch), (middle + half) / (1.0 + stretch))
}

/// Jeffreys' interval: the equal tails of a beta distribution with half a case more on each side, its
/// lower end 0 where none was found and its upper end 1 where all were, so that it always holds the share.
/// `None` as for [`wilson`], and beyond a million cases.
///
/// Brown LD, Cai TT, DasGupta A (2001). Interval estimation for a binomial proportion. Statistical Science
/// 16:101-133 (memory).
#[must_use]
pub fn jeffreys(found: u32, of: u32, level: f64) -> Option<Interval> {
    let share = share(found, of)?;
    let (a, b) = (f64::from(found) + 0.5, f64::from(of - found) + 0.5);
    let (low, high) = tails(level)?;
    let lower = if found == 0 { 0.0 } else { beta_quantile(low, a, b)? };
    let upper = if found == of { 1.0 } else { beta_quantile(high, a, b)? };
    within(share, lower, upper)
}

/// The interval of Clopper and Pearson, which is never too short and often too long: the outer check of
/// the other two. `None` as for [`jeffreys`].
///
/// Clopper CJ, Pearson ES (1934). Biometrika 26:404-413 (memory); a worked number in the NIST/SEMATECH
/// e-Handbook, 7.2.4.1 (read).
#[must_use]
pub fn clopper_pearson(found: u32, of: u32, level: f64) -> Option<Interval> {
    let share = share(found, of)?;
    let (found_f, rest) = (f64::from(found), f64::from(of - found));
    if f64::from(of) >= LARGEST_SHAPE {
        return None;
    }
    let (low, high) = tails(level)?;
    let lower = if found == 0 { 0.0 } else { beta_quantile(low, found_f, rest + 1.0)? };
    let upper = if found == of { 1.0 } else { beta_quantile(high, found_f + 1.0, rest)? };
    within(share, lower, upper)
}

fn share(found: u32, of: u32) -> Option<f64> {
    (of > 0 && found <= of).then(|| f64::from(found) / f64::from(of))
}

fn tails(level: f64) -> Option<(f64, f64)> {
    let tail = (1.0 - level) / 2.0;
    is_level(level).then_some((tail, 1.0 - tail))
}

/// Rounding must not put the share itself outside, nor an end beyond 0 or 1.
fn within(share: f64, lower: f64, upper: f64) -> Option<Interval> {
    let fine = lower.is_finite() && upper.is_finite();
    fine.then(|| Interval { lower: lower.clamp(0.0, share), upper: upper.clamp(share, 1.0) })
}
