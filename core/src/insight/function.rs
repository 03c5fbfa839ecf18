//! The Patient-Specific Functional Scale: the mean of how able she is at activities of her own choice.
//!
//! Stratford P, Gill C, Westaway M, Binkley J (1995). Assessing disability and change on individual
//! patients: a report of a patient specific measure. Physiotherapy Canada 47:258-263. (Abstract read.)

use serde::Serialize;

/// The smallest change of the mean of several activities that is more than error, with 90 % confidence.
/// The same source.
pub const MDC90_AVERAGE: f64 = 2.0;
/// The smallest such change of a single activity. The same source.
pub const MDC90_SINGLE: f64 = 3.0;

/// The mean at first and at last, over the activities that were rated at least twice.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Function {
    /// How many activities.
    pub activities: usize,
    /// Mean of their first ratings, 0 to 10.
    pub first: f64,
    /// Mean of their latest ratings, 0 to 10.
    pub last: f64,
    /// The change that is more than error, in points of that scale.
    pub detectable: f64,
}

impl Function {
    /// Of the first and the latest rating of each activity. `None` where none was rated twice.
    #[must_use]
    pub fn of(activities: &[(u8, u8)]) -> Option<Self> {
        let mean = |pick: fn(&(u8, u8)) -> u8| {
            let sum: u32 = activities.iter().map(|one| u32::from(pick(one))).sum();
            #[allow(clippy::cast_precision_loss, reason = "a handful of activities")]
            let mean = f64::from(sum) / activities.len() as f64;
            mean
        };
        if activities.is_empty() {
            return None;
        }
        let detectable = if activities.len() == 1 { MDC90_SINGLE } else { MDC90_AVERAGE };
        Some(Self {
            activities: activities.len(),
            first: mean(|one| one.0),
            last: mean(|one| one.1),
            detectable,
        })
    }

    /// Whether the change is more than error.
    #[must_use]
    pub fn detected(&self) -> bool {
        (self.last - self.first).abs() >= self.detectable
    }
}
