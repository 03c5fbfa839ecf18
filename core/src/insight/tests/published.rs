//! Numbers that others published, each source beside its check. *Read*: the published value was read;
//! *computed*: worked out anew with SciPy or Python, no publication seen.

use serde::Deserialize;

use super::super::distribution::{beta_quantile, normal_beyond, normal_quantile, normal_width};
use super::super::proportion::wilson_at;
use super::*;

pub(super) fn near(found: f64, expected: f64, within: f64) {
    assert!((found - expected).abs() <= within, "{found} is not {expected}");
}

fn holds(found: Option<Interval>, lower: f64, upper: f64, within: f64) {
    let found = found.unwrap();
    near(found.lower, lower, within);
    near(found.upper, upper, within);
}

/// NIST/SEMATECH e-Handbook 6.3.2.2. The flow rates are from memory; the published figures are read.
#[test]
fn individuals_chart_of_the_nist_handbook() {
    let rates = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    let chart = Chart::of(&rates).unwrap();
    near(chart.centre, 50.81, 1e-9);
    near(chart.moving_range, 1.8778, 5e-5);
    near(chart.upper, 55.8041, 5e-5);
    near(chart.lower, 45.8159, 5e-5);
    assert_eq!(chart.values, 10);
    assert!(rates.iter().all(|rate| !chart.beyond(*rate)));
    assert!(chart.beyond(45.8) && chart.beyond(55.81));
}

/// NIST/SEMATECH e-Handbook 7.2.4.1, read: one-sided lower bound at z 1.645.
#[test]
fn wilson_of_the_nist_handbook() {
    near(wilson_at(0.13, 200.0, 1.645).unwrap().lower, 0.09577, 5e-6);
    // The same bound as one end of a two-sided interval at 90 %.
    near(wilson(26, 200, 0.90).unwrap().lower, 0.09577, 2e-5);
}

/// NIST/SEMATECH e-Handbook 7.2.4.1 (4 of 20 at 90 %) and influentialpoints.com (5 of 25 at 95 %), read.
#[test]
fn clopper_pearson_as_published() {
    holds(clopper_pearson(4, 20, 0.90), 0.071354, 0.401029, 1e-5);
    holds(clopper_pearson(5, 25, 0.95), 0.068, 0.407, 5e-4);
}

/// 5 of 25 at 95 %, computed with SciPy.
#[test]
fn jeffreys_as_computed() {
    holds(jeffreys(5, 25, 0.95), 0.080679, 0.384202, 5e-7);
}

const SEN: [(f64, f64); 7] =
    [(1.0, 9.0), (2.0, 15.0), (3.0, 19.0), (4.0, 20.0), (10.0, 45.0), (12.0, 55.0), (18.0, 78.0)];

/// Sen 1968, read in the tests of SciPy and of R's package deming: slope 4, 93 % interval 26/7 to 35/8.
#[test]
fn the_slope_of_sen() {
    let found = Slope::of(&SEN, 0.93).unwrap();
    near(found.slope, 4.0, 1e-12);
    holds(found.interval, 26.0 / 7.0, 35.0 / 8.0, 1e-12);
}

/// The same values, computed.
#[test]
fn mann_kendall_of_the_same_values() {
    let test = MannKendall::of(&[9, 15, 19, 20, 45, 55, 78]).unwrap();
    assert_eq!((test.higher, test.lower, test.pairs), (21, 0, 21));
    near(test.variance, 44.3333, 5e-5);
    near(test.z, 3.003757, 5e-7);
    near(test.tau(), 1.0, 0.0);
}

/// Bewick V, Cheek L, Ball J (2004). Statistics review 12: survival analysis. Critical Care 8:389-394,
/// table 2, read.
#[test]
fn kaplan_meier_of_bewick() {
    let times =
        [(1, true), (1, true), (4, true), (5, true), (6, false), (9, true), (9, false), (22, true)];
    let times = times.map(|(days, ended)| Followed { days, ended });
    let found = Survival::of(&times, 0.95).unwrap();
    let published = [(1, 8, 0.750), (4, 6, 0.625), (5, 5, 0.500), (9, 3, 0.333), (22, 1, 0.0)];
    let ends: Vec<_> = found.points.iter().filter(|point| point.ended > 0).collect();
    assert_eq!(ends.len(), published.len());
    for (point, (days, at_risk, lasting)) in ends.into_iter().zip(published) {
        assert_eq!((point.days, point.at_risk), (days, at_risk));
        near(point.lasting, lasting, 5e-4);
    }
    assert_eq!((found.people, found.ended, found.median), (8, 6, Some(5)));
    assert_eq!(found.points[3].censored, 1, "the one censored on day 6 has a point too");
}

/// Parker, Vannest and Davis 2011, Behavior Modification 35:303, read in the tests of R's package
/// SingleCaseES: an increase is wanted; NAP 38.5/42, Tau 35/42, PND 5/7.
#[test]
fn nonoverlap_of_parker() {
    let found = Nonoverlap::of(&[20, 20, 26, 25, 22, 23], &[28, 25, 24, 27, 30, 30, 29]).unwrap();
    near(found.nap_higher(), 38.5 / 42.0, 1e-12);
    near(found.tau(), 35.0 / 42.0, 1e-12);
    assert_eq!((found.above_all, found.later, found.pairs()), (5, 7, 42));
}

/// NIST StRD, Norris. The product has no line of least squares, so its certified line (slope
/// 1.00211681802045) cannot be asked of it: `fixtures/statistics/generate.py` asks it of SciPy, whose
/// Theil-Sen slope is then the reference here. That the certified slope lies within the interval, on
/// nearly straight data, is a check of sense.
#[test]
fn theil_sen_on_the_norris_data() {
    #[derive(Deserialize)]
    struct Norris {
        x: Vec<f64>,
        y: Vec<f64>,
    }
    let text = include_str!("../../../../fixtures/statistics/norris.json");
    let data: Norris = serde_json::from_str(text).unwrap();
    let points: Vec<(f64, f64)> = data.x.into_iter().zip(data.y).collect();
    assert_eq!(points.len(), 36);
    let found = Slope::of(&points, 0.95).unwrap();
    let [slope, lower, upper] = super::random::made().norris_sen;
    near(found.slope, slope, 1e-12);
    holds(found.interval, lower, upper, 1e-12);
    let certified = 1.00211681802045;
    assert!(found.interval.unwrap().lower < certified && certified < found.interval.unwrap().upper);
    near(found.slope, certified, 5e-4);
}

/// The quantiles of the standard normal distribution that every table prints (memory), and SciPy 1.17.1:
/// `beta.ppf(0.025, 5.5, 20.5)`.
#[test]
fn distributions_are_asked_only_what_they_can_answer() {
    near(normal_width(0.95).unwrap(), 1.959963984540054, 1e-9);
    near(normal_quantile(0.975).unwrap(), 1.959963984540054, 1e-9);
    near(normal_beyond(1.959963984540054).unwrap(), 0.05, 1e-9);
    near(beta_quantile(0.025, 5.5, 20.5).unwrap(), 0.080679, 5e-7);
    for level in [0.0, 1.0, -1.0, 2.0, f64::NAN, f64::INFINITY] {
        assert_eq!(normal_width(level), None);
        assert_eq!(wilson(1, 2, level), None);
        assert_eq!(jeffreys(1, 2, level), None);
        assert_eq!(clopper_pearson(1, 2, level), None);
        assert_eq!(Slope::of(&SEN, level), None);
        assert_eq!(Survival::of(&[Followed { days: 1, ended: true }], level), None);
    }
    assert_eq!(normal_quantile(f64::NAN), None);
    assert_eq!(normal_beyond(f64::NAN), None);
    // Tails thinner than one in a million are taken for that thin: the library hangs far below.
    assert_eq!(normal_quantile(0.0), normal_quantile(1e-6));
    assert_eq!(beta_quantile(1e-300, 0.5, 9.5), beta_quantile(1e-6, 0.5, 9.5));
    for (a, b) in [(0.0, 1.0), (1.0, -1.0), (f64::NAN, 1.0), (1.0, 1.1e6), (f64::INFINITY, 1.0)] {
        assert_eq!(beta_quantile(0.5, a, b), None);
    }
    assert_eq!(beta_quantile(f64::NAN, 1.0, 1.0), None);
}

/// By their definition: only what lies beyond every earlier rating is beyond all.
#[test]
fn the_same_as_the_highest_or_lowest_is_not_beyond_it() {
    let found = Nonoverlap::of(&[3, 5, 7], &[3, 7, 2, 8, 8]).unwrap();
    assert_eq!((found.below_all, found.above_all, found.later), (1, 2, 5));
}

/// By their definition: two sessions on one day are one day, and the order of telling is none.
#[test]
fn gaps_are_between_different_days() {
    let day = |number: u32| NaiveDate::from_ymd_opt(2026, 3, number).unwrap();
    let found = Gaps::of(&[day(9), day(2), day(2), day(3), day(3), day(5)]).unwrap();
    assert_eq!((found.days, found.median, found.longest), (4, 2.0, 4));
    assert_eq!(Gaps::of(&[day(2), day(2)]), None);
}

#[test]
fn nothing_is_said_of_nothing() {
    assert_eq!(Chart::of(&[]), None);
    assert_eq!(Chart::of(&[1.0]), None);
    assert_eq!(Chart::of(&[1.0, f64::NAN]), None);
    assert_eq!(Chart::of(&[f64::MAX, -f64::MAX]), None);
    assert_eq!(MannKendall::of(&[]), None);
    assert_eq!(MannKendall::of(&[1]), None);
    assert_eq!(Slope::of(&[], 0.95), None);
    assert_eq!(Slope::of(&[(1.0, 1.0), (1.0, 2.0)], 0.95), None, "no time went by");
    assert_eq!(Slope::of(&[(1.0, 1.0), (f64::INFINITY, 2.0)], 0.95), None);
    assert_eq!(Slope::of(&vec![(0.0, 0.0); MOST_FITTED + 1], 0.95), None);
    assert_eq!(Nonoverlap::of(&[], &[1]), None);
    assert_eq!(Nonoverlap::of(&[1], &[]), None);
    assert_eq!(Survival::of(&[], 0.95), None);
    assert_eq!(Gaps::of(&[]), None);
    assert_eq!((Range::of(&[]), Range::of(&[1.0, f64::NAN])), (None, None));
    assert_eq!((wilson(0, 0, 0.95), wilson(3, 2, 0.95)), (None, None));
    assert_eq!(jeffreys(1, 2_000_000, 0.95), None, "beyond what the library was tried with");
    assert_eq!(clopper_pearson(1, 2_000_000, 0.95), None);
}

/// All the same: no trend, no chance of one, and nothing divided by nothing.
#[test]
fn values_that_never_change_say_nothing_about_a_trend() {
    let test = MannKendall::of(&[4; 30]).unwrap();
    assert_eq!((test.higher, test.lower, test.variance, test.z, test.p), (0, 0, 0.0, 0.0, 1.0));
    let flat: Vec<(f64, f64)> = (0..30).map(|day| (f64::from(day), 4.0)).collect();
    let slope = Slope::of(&flat, 0.95).unwrap();
    assert_eq!((slope.slope, slope.interval), (0.0, None), "no variance, no interval");
    let chart = Chart::of(&[4.0; 30]).unwrap();
    assert_eq!((chart.lower, chart.upper), (4.0, 4.0));
    assert!(!chart.beyond(4.0));
}
