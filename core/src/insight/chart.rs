//! The individuals chart: how far single values usually lie from their mean, judged by how much they
//! differ from one to the next.

use serde::Serialize;

/// Below so many ratings no limits are shown. Provost LP, Murray SK, The Health Care Data Guide, page 155:
/// the most recent 20 to 30 (read as quoted); authors do not agree, others begin at 5 or 12.
pub const LEAST_CHARTED: usize = 20;

/// The mean moving range of two neighbours, in standard deviations of independent normal values.
/// NIST/SEMATECH e-Handbook 6.3.2.2.
const D2: f64 = 1.128;
/// Limits lie three standard deviations out. The same source.
const WIDTH: f64 = 3.0;

/// Centre and limits of values in their order. They take each value for independent of the one before,
/// which ratings of one person are not: then limits come out too narrow.
///
/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Chart {
    /// How many values.
    pub values: usize,
    /// Their mean; like all that follows in the unit of the values.
    pub centre: f64,
    /// The mean of the differences between neighbours, without their sign.
    pub moving_range: f64,
    /// The lower limit; it may lie below the scale.
    pub lower: f64,
    /// The upper limit; it may lie above the scale.
    pub upper: f64,
}

impl Chart {
    /// Of values in order. `None` below two, or where one is no finite number. Whether they are enough to
    /// be shown is said by [`LEAST_CHARTED`].
    #[must_use]
    pub fn of(values: &[f64]) -> Option<Self> {
        if values.len() < 2 {
            return None;
        }
        let moves: Vec<f64> = values
            .iter()
            .zip(values.iter().skip(1))
            .map(|(one, next)| (next - one).abs())
            .collect();
        let (centre, moving_range) = (mean(values)?, mean(&moves)?);
        let reach = WIDTH * moving_range / D2;
        let (lower, upper) = (centre - reach, centre + reach);
        (lower.is_finite() && upper.is_finite()).then_some(Self {
            values: values.len(),
            centre,
            moving_range,
            lower,
            upper,
        })
    }

    /// Whether a value lies beyond a limit.
    #[must_use]
    pub fn beyond(&self, value: f64) -> bool {
        value < self.lower || value > self.upper
    }
}

fn mean(values: &[f64]) -> Option<f64> {
    #[allow(clippy::cast_precision_loss, reason = "counts of sessions")]
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    mean.is_finite().then_some(mean)
}
