//! The Mann-Kendall test: whether later values are higher or lower than earlier ones more often than by
//! chance, whatever the shape.

use serde::Serialize;

use super::distribution::normal_beyond;
use super::slope::term;

/// Below so many ratings no trend is shown: up to ten the normal approximation is not used (Gilbert RO
/// (1987). Statistical Methods for Environmental Pollution Monitoring; read in another program's manual).
pub const LEAST_FOR_TREND: usize = 11;

/// What the test found. Its p takes each value for independent of the one before; ratings of one person
/// are not, so it is nominal.
///
/// Mann HB (1945). Econometrica 13:245-259; Kendall MG (1975). Rank Correlation Methods (both memory). With
/// the correction for ties and for continuity.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct MannKendall {
    /// Pairs in which the later value is higher.
    pub higher: u64,
    /// Pairs in which the later value is lower.
    pub lower: u64,
    /// All pairs; the rest are equal.
    pub pairs: u64,
    /// The variance of `higher` less `lower`, were the order chance; 0 where all values are equal.
    pub variance: f64,
    /// The score in standard deviations, corrected for continuity; 0 where all values are equal.
    pub z: f64,
    /// Two-sided p, 0 to 1; 1 where all values are equal.
    pub p: f64,
}

impl MannKendall {
    /// Of ratings in the order in which they happened. `None` below two. Whether they are enough to be
    /// shown is said by [`LEAST_FOR_TREND`].
    #[must_use]
    pub fn of(values: &[u8]) -> Option<Self> {
        if values.len() < 2 {
            return None;
        }
        // How often each value was seen so far: time grows with the count, not with its square.
        let mut seen = [0_u64; 256];
        let (mut higher, mut lower, mut pairs) = (0_u64, 0_u64, 0_u64);
        for (so_far, value) in values.iter().enumerate() {
            let at = usize::from(*value);
            higher += seen.iter().take(at).sum::<u64>();
            lower += seen.iter().skip(at + 1).sum::<u64>();
            pairs += so_far as u64;
            *seen.get_mut(at)? += 1;
        }
        let tied: f64 =
            seen.iter().map(|count| term(usize::try_from(*count).unwrap_or(usize::MAX))).sum();
        let variance = (term(values.len()) - tied) / 18.0;
        #[allow(clippy::cast_precision_loss, reason = "pairs of sessions: far below 2^52")]
        let score = higher as f64 - lower as f64;
        let z = if variance > 0.0 && score != 0.0 {
            (score - score.signum()) / variance.sqrt()
        } else {
            0.0
        };
        Some(Self { higher, lower, pairs, variance, z, p: normal_beyond(z)? })
    }

    /// `higher` less `lower`, as a share of all pairs: -1 where every later value is lower, 1 where every
    /// later value is higher. Kendall's tau without regard to ties.
    #[must_use]
    pub fn tau(&self) -> f64 {
        share(self.higher, self.pairs) - share(self.lower, self.pairs)
    }
}

/// A share of pairs. There is at least one pair.
pub(super) fn share(some: u64, all: u64) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "pairs of sessions: far below 2^52")]
    let share = some as f64 / all.max(1) as f64;
    share
}
