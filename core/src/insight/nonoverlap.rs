//! Two times on the same step, put beside each other: in how many of all pairs of one rating of each is
//! the later time's higher, equal or lower.

use serde::Serialize;

use super::trend::share;

/// Below so many ratings in either of the two nothing is shown. What Works Clearinghouse, standards for
/// single-case designs: at least five points in a phase (read as quoted).
pub const LEAST_COMPARED: usize = 5;

/// Counts of pairs. They say how far two times lie apart, not why.
///
/// Parker RI, Vannest KJ, Davis JL (2011). Effect size in single-case research: a review of nine nonoverlap
/// techniques. Behavior Modification 35:303-322. (Its worked numbers read in another program's tests.)
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Nonoverlap {
    /// Pairs in which the later time's rating is higher.
    pub higher: u64,
    /// Pairs in which both are the same.
    pub equal: u64,
    /// Pairs in which the later time's rating is lower.
    pub lower: u64,
    /// Ratings of the later time above all of the earlier time.
    pub above_all: u64,
    /// Ratings of the later time below all of the earlier time.
    pub below_all: u64,
    /// Ratings of the later time.
    pub later: u64,
}

impl Nonoverlap {
    /// Of the ratings of two times, each in any order. `None` where one of them has none. Whether they are
    /// enough to be shown is said by [`LEAST_COMPARED`].
    #[must_use]
    pub fn of(earlier: &[u8], later: &[u8]) -> Option<Self> {
        let (least, most) = (*earlier.iter().min()?, *earlier.iter().max()?);
        if later.is_empty() {
            return None;
        }
        let mut seen = [0_u64; 256];
        for value in earlier {
            *seen.get_mut(usize::from(*value))? += 1;
        }
        let mut found =
            Self { higher: 0, equal: 0, lower: 0, above_all: 0, below_all: 0, later: 0 };
        for value in later {
            let at = usize::from(*value);
            found.higher += seen.iter().take(at).sum::<u64>();
            found.equal += seen.get(at).copied().unwrap_or(0);
            found.lower += seen.iter().skip(at + 1).sum::<u64>();
            found.above_all += u64::from(*value > most);
            found.below_all += u64::from(*value < least);
            found.later += 1;
        }
        Some(found)
    }

    /// All pairs; at least one.
    #[must_use]
    pub fn pairs(&self) -> u64 {
        self.higher + self.equal + self.lower
    }

    /// Nonoverlap of all pairs where higher is what is looked for: 0 to 1, a half where the two are alike.
    /// An equal pair counts as half.
    #[must_use]
    pub fn nap_higher(&self) -> f64 {
        share(2 * self.higher + self.equal, 2 * self.pairs())
    }

    /// The same where lower is what is looked for.
    #[must_use]
    pub fn nap_lower(&self) -> f64 {
        share(2 * self.lower + self.equal, 2 * self.pairs())
    }

    /// Tau: higher pairs less lower ones as a share of all, -1 to 1. Below 0 the later time is lower.
    #[must_use]
    pub fn tau(&self) -> f64 {
        share(self.higher, self.pairs()) - share(self.lower, self.pairs())
    }
}
