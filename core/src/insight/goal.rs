//! Goal attainment scaling: several goals in one number.

/// The T-score of goals with their weights and how far each is reached (-2 to 2); 50 where every goal is
/// reached as expected. `None` without goals, or where the weights come to nothing.
///
/// Turner-Stokes L (2009). Goal attainment scaling (GAS) in rehabilitation: a practical guide. Clinical
/// Rehabilitation 23:362-370, with its erratum. (Formula read.)
#[must_use]
pub fn attainment(goals: &[(f64, i8)]) -> Option<f64> {
    let weighted: f64 = goals.iter().map(|(weight, reached)| weight * f64::from(*reached)).sum();
    let squares: f64 = goals.iter().map(|(weight, _)| weight * weight).sum();
    let weights: f64 = goals.iter().map(|(weight, _)| weight).sum();
    let spread = (0.7 * squares + 0.3 * weights * weights).sqrt();
    (spread > 0.0 && spread.is_finite()).then(|| 50.0 + 10.0 * weighted / spread)
}
