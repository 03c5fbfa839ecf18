//! Median, quartiles and range of ratings.

use serde::Serialize;

/// The value below which a share `p` of the values lies, by linear interpolation between the closest
/// ranks: Hyndman and Fan's type 7, the one that NumPy and R use unless told otherwise. `None` without
/// values or for a `p` outside 0 to 1.
#[must_use]
pub fn quantile(values: &[u8], p: f64) -> Option<f64> {
    if !(0.0..=1.0).contains(&p) {
        return None;
    }
    let mut sorted = values.to_vec();
    sorted.sort_unstable();
    let last = sorted.len().checked_sub(1)?;
    // Ratings of one diary: far below 2^52, so exact.
    #[allow(clippy::cast_precision_loss, reason = "counts of sessions")]
    let rank = last as f64 * p;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to last")]
    let below = rank.floor() as usize;
    let low = f64::from(*sorted.get(below)?);
    let high = f64::from(*sorted.get((below + 1).min(last))?);
    Some(low + (rank - rank.floor()) * (high - low))
}

/// The median, halfway between the two in the middle where their number is even; `None` without values.
#[must_use]
pub fn median(values: &[u8]) -> Option<f64> {
    quantile(values, 0.5)
}

/// The median of numbers that are sorted already. `None` without numbers.
pub(super) fn middle(sorted: &[f64]) -> Option<f64> {
    let half = sorted.len() / 2;
    let upper = *sorted.get(half)?;
    if sorted.len().is_multiple_of(2) {
        Some(f64::midpoint(*sorted.get(half - 1)?, upper))
    } else {
        Some(upper)
    }
}

/// Numbers in short, in their own unit: minutes, for example.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Range {
    /// The lowest.
    pub least: f64,
    /// The median.
    pub median: f64,
    /// The highest.
    pub most: f64,
}

impl Range {
    /// Of numbers in any order. `None` without numbers, or where one is no finite number.
    #[must_use]
    pub fn of(numbers: &[f64]) -> Option<Self> {
        if numbers.iter().any(|number| !number.is_finite()) {
            return None;
        }
        let mut sorted = numbers.to_vec();
        sorted.sort_by(f64::total_cmp);
        Some(Self { least: *sorted.first()?, median: middle(&sorted)?, most: *sorted.last()? })
    }
}

/// Ratings in short, each 0 to 10.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Spread {
    /// How many were given.
    pub rated: usize,
    /// How many sessions have none.
    pub unrated: usize,
    /// The lowest.
    pub least: u8,
    /// The lower quartile.
    pub lower: f64,
    /// The median.
    pub median: f64,
    /// The upper quartile.
    pub upper: f64,
    /// The highest.
    pub most: u8,
}

impl Spread {
    /// Of the ratings of some sessions, `None` for each session without one. `None` where no rating was
    /// given at all.
    #[must_use]
    pub fn of(ratings: &[Option<u8>]) -> Option<Self> {
        let given: Vec<u8> = ratings.iter().copied().flatten().collect();
        Some(Self {
            rated: given.len(),
            unrated: ratings.len() - given.len(),
            least: *given.iter().min()?,
            lower: quantile(&given, 0.25)?,
            median: median(&given)?,
            upper: quantile(&given, 0.75)?,
            most: *given.iter().max()?,
        })
    }
}
