//! The numbers against outside sources, each named beside its check.

mod open_data;
mod properties;
mod published;
mod random;

use chrono::NaiveDate;
use proptest::prelude::*;

use super::*;
use crate::programme::plan::Schedule;
use crate::programme::values::Count;

/// NumPy 2.4.6: `numpy.quantile(v, [.25, .5, .75], method="linear")`.
#[test]
fn quartiles_are_those_of_a_general_purpose_reference() {
    for (values, lower, median, upper) in [
        (&[3][..], 3.0, 3.0, 3.0),
        (&[2, 5], 2.75, 3.5, 4.25),
        (&[6, 5, 4, 3, 2, 2], 2.25, 3.5, 4.75),
        (&[3, 3, 2, 2, 1, 1, 7], 1.5, 2.0, 3.0),
        (&[0, 10, 10, 4, 4, 4, 9, 1, 3], 3.0, 4.0, 9.0),
    ] {
        let ratings: Vec<Option<u8>> = values.iter().copied().map(Some).collect();
        let spread = Spread::of(&ratings).unwrap();
        assert_eq!((spread.lower, spread.median, spread.upper), (lower, median, upper));
    }
    assert_eq!(quantile(&[], 0.5), None);
    assert_eq!(quantile(&[1], 1.5), None);
    assert_eq!(Spread::of(&[None, None]), None);
}

proptest! {
    /// Hyndman and Fan (1996), definition 7: the k-th of n sorted values is the quantile of
    /// (k - 1) / (n - 1), and between two such points it is a straight line.
    #[test]
    fn the_quantile_is_what_its_definition_says(
        values in proptest::collection::vec(0u8..=10, 2..40),
        at in 0usize..1000,
        part in 0.0f64..1.0,
    ) {
        let mut sorted = values.clone();
        sorted.sort_unstable();
        let last = sorted.len() - 1;
        let k = at % last;
        let share = |rank: f64| rank / last as f64;
        let (low, high) = (f64::from(sorted[k]), f64::from(sorted[k + 1]));
        let found = quantile(&values, share(k as f64 + part)).unwrap();
        prop_assert!((found - (low + part * (high - low))).abs() < 1e-6, "{found}");
        prop_assert_eq!(quantile(&values, 0.0), Some(f64::from(sorted[0])));
        prop_assert_eq!(quantile(&values, 1.0), Some(f64::from(sorted[last])));
    }
}

/// Farrar 2001, Pain 94:149: about 2 points or 30 %.
#[test]
fn meaningful_change_is_two_points_or_thirty_per_cent() {
    assert_eq!(meaningful(8.0, 6.0), Meaningful::Points);
    assert_eq!(meaningful(5.0, 3.0), Meaningful::Both);
    assert_eq!(meaningful(3.0, 2.0), Meaningful::Share);
    assert_eq!(meaningful(4.0, 3.0), Meaningful::Neither);
    assert_eq!(meaningful(3.0, 5.0), Meaningful::Both, "for the worse too");
    assert_eq!(meaningful(0.0, 1.0), Meaningful::Neither, "a share of nothing is none");
    assert_eq!(meaningful(0.0, 2.0), Meaningful::Points);
}

#[test]
fn nothing_is_said_about_change_below_the_least_amount_of_data() {
    assert_eq!(Change::of(&[5, 5, 5, 1, 1]), None);
    let change = Change::of(&[5, 4, 5, 2, 1, 1]).unwrap();
    assert_eq!((change.first, change.last, change.reaches), (5.0, 1.0, Meaningful::Both));
}

/// Stratford 1995, Physiother Can 47:258: 2 points for the average, 3 for a single activity.
#[test]
fn function_is_the_mean_and_its_change_is_held_against_mdc90() {
    let both = Function::of(&[(4, 8), (0, 2)]).unwrap();
    assert_eq!((both.first, both.last, both.detectable), (2.0, 5.0, 2.0));
    assert!(both.detected());
    assert!(!Function::of(&[(4, 5), (0, 1)]).unwrap().detected());
    assert!(!Function::of(&[(4, 6)]).unwrap().detected(), "a single activity needs 3");
    assert!(Function::of(&[(4, 7)]).unwrap().detected());
    assert_eq!(Function::of(&[]), None);
}

/// Recomputed from the formula of Turner-Stokes 2009 with Python: `50 + 10*sum(w*x) / sqrt(0.7*sum(w*w) +
/// 0.3*sum(w)**2)`.
#[test]
fn goal_attainment_is_the_published_formula() {
    for (goals, score) in [
        (&[(1.0, 1)][..], 60.0),
        (&[(1.0, 2), (1.0, 2)], 74.8069),
        (&[(1.0, -1), (1.0, -1), (1.0, -1)], 36.3069),
        (&[(3.0, 1), (1.0, -1)], 55.8222),
        (&[(1.0, 0)], 50.0),
    ] {
        assert!((attainment(goals).unwrap() - score).abs() < 5e-5, "{score}");
    }
    assert_eq!(attainment(&[]), None);
}

#[test]
fn practised_and_planned_are_counts_over_the_days_that_were_not_off() {
    let day = |number: u32| NaiveDate::from_ymd_opt(2026, 3, number).unwrap();
    let count = |number| Count::new(number).unwrap();
    let schedule = Schedule {
        weekly_least: count(3),
        weekly_most: count(5),
        daily_most: count(1),
        rest_days: None,
    };
    let sessions = [day(1), day(2), day(2), day(4), day(20)];
    let found = Practised::of(&sessions, (day(2), day(15)), &[(day(10), day(12))], &schedule);
    assert_eq!((found.sessions, found.days, found.span, found.off), (3, 2, 14, 3));
    // 11 days: 33 / 7 is 4 and a part, 55 / 7 is 7 and a part.
    assert_eq!((found.planned_least, found.planned_most), (4, 8));
    let all_off = Practised::of(&[], (day(2), day(3)), &[(day(1), day(9))], &schedule);
    assert_eq!((all_off.off, all_off.planned_least, all_off.planned_most), (2, 0, 0));
}
