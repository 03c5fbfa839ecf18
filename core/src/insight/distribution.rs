//! The only door to the distributions of `statrs`. Decides what is asked of them: nothing that is not a
//! number, no tail thinner than one in a million, no shape beyond [`LARGEST_SHAPE`], where that library has
//! been seen to hang or to panic. Leaves every statistic to its own file.

use statrs::distribution::{Beta, ContinuousCDF, Normal};

/// The thinnest tail that is asked for.
const THINNEST: f64 = 1e-6;
/// The largest shape of a beta distribution that is asked for: counts of one clinic stay far below.
pub(super) const LARGEST_SHAPE: f64 = 1e6;

/// The value below which a share `p` of the standard normal distribution lies. `p` is held within one in a
/// million of its ends. `None` for what is no number.
pub(super) fn normal_quantile(p: f64) -> Option<f64> {
    if p.is_nan() {
        return None;
    }
    finite(Normal::new(0.0, 1.0).ok()?.inverse_cdf(p.clamp(THINNEST, 1.0 - THINNEST)))
}

/// How many standard deviations to each side hold the share `level` of the standard normal distribution.
/// `None` unless `level` lies between 0 and 1, without its ends.
pub(super) fn normal_width(level: f64) -> Option<f64> {
    is_level(level).then(|| normal_quantile(0.5 + level / 2.0)).flatten()
}

/// The share of the standard normal distribution farther out than `z`, both sides together: 0 to 1.
/// `None` for what is no number.
pub(super) fn normal_beyond(z: f64) -> Option<f64> {
    if !z.is_finite() {
        return None;
    }
    finite(2.0 * Normal::new(0.0, 1.0).ok()?.sf(z.abs())).map(|share| share.clamp(0.0, 1.0))
}

/// The value below which a share `p` of a beta distribution lies, 0 to 1. `p` is held within one in a
/// million of its ends. `None` for what is no number, and for shapes that are not positive or beyond
/// [`LARGEST_SHAPE`].
pub(super) fn beta_quantile(p: f64, a: f64, b: f64) -> Option<f64> {
    let shape = |one: f64| one > 0.0 && one <= LARGEST_SHAPE;
    if p.is_nan() || !shape(a) || !shape(b) {
        return None;
    }
    finite(Beta::new(a, b).ok()?.inverse_cdf(p.clamp(THINNEST, 1.0 - THINNEST)))
        .map(|value| value.clamp(0.0, 1.0))
}

/// Whether a share can be the level of an interval.
pub(super) fn is_level(level: f64) -> bool {
    level > 0.0 && level < 1.0
}

fn finite(number: f64) -> Option<f64> {
    number.is_finite().then_some(number)
}
