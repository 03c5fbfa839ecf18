//! How the days with a session lie: from one to the next, and the longest time between two.

use chrono::NaiveDate;
use serde::Serialize;

use super::spread::middle;

/// Days between neighbouring days with a session.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Gaps {
    /// How many days had a session.
    pub days: usize,
    /// The median of the days from one to the next; 1 where they follow each other.
    pub median: f64,
    /// The most days from one to the next.
    pub longest: u32,
}

impl Gaps {
    /// Of days in any order; a day given twice counts once. `None` where there are not two different days.
    #[must_use]
    pub fn of(days: &[NaiveDate]) -> Option<Self> {
        let mut distinct = days.to_vec();
        distinct.sort_unstable();
        distinct.dedup();
        let mut between: Vec<u32> = distinct
            .iter()
            .zip(distinct.iter().skip(1))
            .map(|(one, next)| {
                u32::try_from(next.signed_duration_since(*one).num_days()).unwrap_or(u32::MAX)
            })
            .collect();
        between.sort_unstable();
        let longest = *between.last()?;
        let as_numbers: Vec<f64> = between.iter().map(|days| f64::from(*days)).collect();
        Some(Self { days: distinct.len(), median: middle(&as_numbers)?, longest })
    }
}
