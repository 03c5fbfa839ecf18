//! Data of real studies that nobody here made: fixtures/open-data.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::published::near;
use super::*;

const REFERENCE: [[f64; 3]; 4] =
    [[0.0, 0.0, 1.0], [0.0, 0.0, 0.0], [0.0, 0.0, 1.0], [0.0, 0.0, 1.0]];

/// Throat pain, 0 to 10, of 235 people at four times: fixtures/open-data. Means published in its
/// documentation; quartiles by NumPy 2.4.6, `numpy.quantile(x, [.25, .5, .75])`.
#[test]
fn quartiles_of_open_data_that_nobody_here_made() {
    let text = include_str!("../../../../fixtures/open-data/throat-pain.csv");
    let reference = [
        ("pacu30min_throatPain", 0.6481, REFERENCE[0]),
        ("pacu90min_throatPain", 0.4764, REFERENCE[1]),
        ("postOp4hour_throatPain", 0.6309, REFERENCE[2]),
        ("pod1am_throatPain", 0.4807, REFERENCE[3]),
    ];
    for (name, mean, quartiles) in reference {
        let row = text.lines().find_map(|line| line.strip_prefix(&format!("{name},"))).unwrap();
        let counts: Vec<usize> = row.split(',').map(|cell| cell.parse().unwrap()).collect();
        let mut ratings: Vec<Option<u8>> = Vec::new();
        for (rating, count) in counts.iter().take(11).enumerate() {
            ratings.extend(std::iter::repeat_n(Some(u8::try_from(rating).unwrap()), *count));
        }
        ratings.extend(std::iter::repeat_n(None, counts[11]));
        let spread = Spread::of(&ratings).unwrap();
        assert_eq!(spread.rated + spread.unrated, 235);
        assert_eq!(spread.unrated, counts[11]);
        let sum: u32 = ratings.iter().flatten().map(|rating| u32::from(*rating)).sum();
        assert!(
            (f64::from(sum) / f64::from(u32::try_from(spread.rated).unwrap()) - mean).abs() < 5e-5
        );
        assert_eq!([spread.lower, spread.median, spread.upper], quartiles, "{name}");
    }
}

#[derive(Deserialize)]
struct Time {
    nap_licorice_higher: f64,
    arms: BTreeMap<String, Arm>,
}

#[derive(Deserialize)]
struct Arm {
    some_pain: u32,
    rated: u32,
    wilson: [f64; 2],
    quartiles: [f64; 5],
    mean: f64,
}

/// The two arms beside each other: pandas 2.3.3, NumPy 2.4.6, SciPy 1.17.1 and statsmodels 0.15.0 made the
/// numbers (`fixtures/statistics/open_data.py`).
#[test]
fn two_arms_of_open_data_side_by_side() {
    let numbers: BTreeMap<String, Time> =
        serde_json::from_str(include_str!("../../../../fixtures/open-data/throat-pain.json"))
            .unwrap();
    let mut rows: BTreeMap<(String, String), Vec<Option<u8>>> = BTreeMap::new();
    for row in include_str!("../../../../fixtures/open-data/throat-pain-by-arm.csv").lines().skip(1)
    {
        let cells: Vec<&str> = row.split(',').collect();
        let of = rows.entry((cells[0].to_owned(), cells[1].to_owned())).or_default();
        for (rating, count) in cells[2..].iter().enumerate() {
            let rating = (rating < 11).then(|| u8::try_from(rating).unwrap());
            of.extend(std::iter::repeat_n(rating, count.parse().unwrap()));
        }
    }
    assert_eq!(rows.values().map(Vec::len).sum::<usize>(), 4 * 235);
    assert_eq!(numbers.len(), 4);
    for (time, theirs) in numbers {
        let given = |arm: &str| {
            let ratings = &rows[&(time.clone(), arm.to_owned())];
            ratings.iter().copied().flatten().collect::<Vec<u8>>()
        };
        for (name, arm) in &theirs.arms {
            let ratings = given(name);
            let spread = Spread::of(&rows[&(time.clone(), name.clone())]).unwrap();
            assert_eq!(spread.rated, arm.rated as usize);
            let ours = [
                f64::from(spread.least),
                spread.lower,
                spread.median,
                spread.upper,
                f64::from(spread.most),
            ];
            assert_eq!(ours, arm.quartiles, "{time} {name}");
            let some = u32::try_from(ratings.iter().filter(|one| **one > 0).count()).unwrap();
            assert_eq!(some, arm.some_pain);
            let share = wilson(some, arm.rated, 0.95).unwrap();
            near(share.lower, arm.wilson[0], 1e-9);
            near(share.upper, arm.wilson[1], 1e-9);
            let values: Vec<f64> = ratings.iter().map(|one| f64::from(*one)).collect();
            near(Chart::of(&values).unwrap().centre, arm.mean, 1e-12);
        }
        let compared = Nonoverlap::of(&given("sugar"), &given("licorice")).unwrap();
        near(compared.nap_higher(), theirs.nap_licorice_higher, 1e-12);
    }
}
