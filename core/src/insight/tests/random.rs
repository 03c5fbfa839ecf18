//! Random data, worked out by SciPy, statsmodels, pymannkendall and lifelines:
//! `fixtures/statistics/generate.py` writes the table, its README names the versions.

use serde::Deserialize;

use super::published::near;
use super::*;

#[derive(Deserialize)]
pub(super) struct Made {
    pub(super) norris_sen: [f64; 3],
}

#[derive(Deserialize)]
struct Table {
    made: Made,
    proportions: Vec<Share>,
    series: Vec<Series>,
    pairs: Vec<Pair>,
    survival: Vec<Times>,
}

#[derive(Deserialize)]
struct Share {
    found: u32,
    of: u32,
    level: f64,
    wilson: [f64; 2],
    jeffreys: [f64; 2],
    clopper_pearson: [f64; 2],
}

#[derive(Deserialize)]
struct Series {
    y: Vec<u8>,
    x: Vec<u32>,
    level: f64,
    quantiles: [f64; 5],
    chart: [f64; 4],
    sen: Option<[f64; 3]>,
    mann_kendall: Option<Trend>,
}

#[derive(Deserialize)]
struct Trend {
    s: f64,
    variance: f64,
    z: f64,
    p: f64,
    tau: f64,
}

#[derive(Deserialize)]
struct Pair {
    earlier: Vec<u8>,
    later: Vec<u8>,
    nap_higher: f64,
}

#[derive(Deserialize)]
struct Times {
    days: Vec<u32>,
    ended: Vec<bool>,
    level: f64,
    points: Vec<Point>,
    median: Option<u32>,
}

#[derive(Deserialize)]
struct Point {
    days: u32,
    at_risk: u64,
    ended: u64,
    censored: u64,
    lasting: f64,
    interval: Option<[f64; 2]>,
}

fn table() -> Table {
    serde_json::from_str(include_str!("../../../../fixtures/statistics/random.json")).unwrap()
}

pub(super) fn made() -> Made {
    table().made
}

#[test]
fn intervals_of_shares_are_those_of_scipy_and_statsmodels() {
    let cases = table().proportions;
    assert!(cases.len() >= 50);
    for case in cases {
        let (found, of, level) = (case.found, case.of, case.level);
        for (ours, theirs) in [
            (wilson(found, of, level), case.wilson),
            (jeffreys(found, of, level), case.jeffreys),
            (clopper_pearson(found, of, level), case.clopper_pearson),
        ] {
            let ours = ours.unwrap();
            near(ours.lower, theirs[0], 1e-9);
            near(ours.upper, theirs[1], 1e-9);
        }
    }
}

#[test]
fn quantiles_and_charts_are_those_of_numpy() {
    for case in table().series {
        let range =
            Range::of(&case.y.iter().map(|one| f64::from(*one)).collect::<Vec<_>>()).unwrap();
        let ours = [range.least, range.median, range.most];
        assert_eq!(ours, [case.quantiles[0], case.quantiles[2], case.quantiles[4]]);
        for (p, theirs) in [0.0, 0.25, 0.5, 0.75, 1.0].into_iter().zip(case.quantiles) {
            near(quantile(&case.y, p).unwrap(), theirs, 1e-12);
        }
        let values: Vec<f64> = case.y.iter().map(|rating| f64::from(*rating)).collect();
        let chart = Chart::of(&values).unwrap();
        let ours = [chart.centre, chart.moving_range, chart.lower, chart.upper];
        for (ours, theirs) in ours.into_iter().zip(case.chart) {
            near(ours, theirs, 1e-9);
        }
    }
}

#[test]
fn slopes_are_those_of_scipy() {
    let mut told = 0;
    for case in table().series {
        let points: Vec<(f64, f64)> =
            case.x.iter().zip(&case.y).map(|(x, y)| (f64::from(*x), f64::from(*y))).collect();
        let ours = Slope::of(&points, case.level);
        assert_eq!(ours.is_some(), case.sen.is_some());
        let (Some(ours), Some(theirs)) = (ours, case.sen) else { continue };
        near(ours.slope, theirs[0], 1e-12);
        let Some(interval) = ours.interval else { continue };
        told += 1;
        near(interval.lower, theirs[1], 1e-12);
        near(interval.upper, theirs[2], 1e-12);
    }
    assert!(told >= 50, "{told}");
}

#[test]
fn trends_are_those_of_pymannkendall() {
    let mut told = 0;
    for case in table().series {
        let Some(theirs) = case.mann_kendall else { continue };
        told += 1;
        let ours = MannKendall::of(&case.y).unwrap();
        near(ours.higher as f64 - ours.lower as f64, theirs.s, 0.0);
        near(ours.variance, theirs.variance, 1e-9);
        near(ours.z, theirs.z, 1e-9);
        near(ours.p, theirs.p, 1e-9);
        near(ours.tau(), theirs.tau, 1e-12);
    }
    assert!(told >= 50, "{told}");
}

#[test]
fn nonoverlap_is_scipys_mann_whitney_u_as_a_share_of_all_pairs() {
    let cases = table().pairs;
    assert!(cases.len() >= 50);
    for case in cases {
        let ours = Nonoverlap::of(&case.earlier, &case.later).unwrap();
        near(ours.nap_higher(), case.nap_higher, 1e-12);
        near(ours.tau(), 2.0 * case.nap_higher - 1.0, 1e-12);
    }
}

#[test]
fn time_on_step_is_that_of_lifelines() {
    let cases = table().survival;
    assert!(cases.len() >= 50);
    for case in cases {
        let times: Vec<Followed> = case
            .days
            .iter()
            .zip(&case.ended)
            .map(|(days, ended)| Followed { days: *days, ended: *ended })
            .collect();
        let ours = Survival::of(&times, case.level).unwrap();
        assert_eq!((ours.points.len(), ours.median), (case.points.len(), case.median));
        for (ours, theirs) in ours.points.iter().zip(case.points) {
            let counts = (ours.days, ours.at_risk, ours.ended, ours.censored);
            assert_eq!(counts, (theirs.days, theirs.at_risk, theirs.ended, theirs.censored));
            near(ours.lasting, theirs.lasting, 1e-9);
            assert_eq!(ours.interval.is_some(), theirs.interval.is_some());
            let (Some(ours), Some(theirs)) = (ours.interval, theirs.interval) else { continue };
            near(ours.lower, theirs[0], 1e-8);
            near(ours.upper, theirs[1], 1e-8);
        }
    }
}
