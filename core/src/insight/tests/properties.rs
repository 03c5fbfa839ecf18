//! What must hold whatever the data.

use proptest::collection::vec;
use proptest::prelude::*;

use super::super::*;

fn ratings() -> impl Strategy<Value = Vec<u8>> {
    vec(0u8..=10, 1..40)
}

fn times() -> impl Strategy<Value = Vec<Followed>> {
    vec((0u32..60, any::<bool>()).prop_map(|(days, ended)| Followed { days, ended }), 1..60)
}

fn points() -> impl Strategy<Value = Vec<(f64, f64)>> {
    vec((0u32..40, 0u8..=10).prop_map(|(x, y)| (f64::from(x), f64::from(y))), 2..40)
}

fn shuffled<T: Clone + std::fmt::Debug>(of: Vec<T>) -> impl Strategy<Value = (Vec<T>, Vec<T>)> {
    (Just(of.clone()), Just(of).prop_shuffle())
}

proptest! {
    #[test]
    fn every_interval_holds_its_share_and_stays_within_0_and_1(
        of in 1u32..3000,
        part in 0.0f64..=1.0,
        level in 0.01f64..0.999,
    ) {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let found = (f64::from(of) * part) as u32;
        let share = f64::from(found) / f64::from(of);
        for of_three in [wilson, jeffreys, clopper_pearson] {
            let interval = of_three(found, of, level).unwrap();
            prop_assert!(0.0 <= interval.lower && interval.lower <= share);
            prop_assert!(share <= interval.upper && interval.upper <= 1.0);
        }
    }

    /// More found of as many: neither end goes down. A higher level: the interval never shrinks.
    #[test]
    fn intervals_move_with_what_was_found_and_widen_with_the_level(
        of in 1u32..300,
        part in 0.0f64..1.0,
        level in 0.5f64..0.99,
    ) {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let found = (f64::from(of) * part) as u32;
        for of_three in [wilson, jeffreys, clopper_pearson] {
            let one = of_three(found, of, level).unwrap();
            let more = of_three(found + 1, of, level).unwrap();
            prop_assert!(one.lower <= more.lower + 1e-12 && one.upper <= more.upper + 1e-12);
            let wider = of_three(found, of, level + 0.005).unwrap();
            prop_assert!(wider.lower <= one.lower + 1e-12 && one.upper <= wider.upper + 1e-12);
        }
    }

    /// Clopper and Pearson's interval holds Jeffreys': it is the outer check.
    #[test]
    fn clopper_pearson_is_never_shorter_than_jeffreys(of in 1u32..500, part in 0.0f64..=1.0) {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let found = (f64::from(of) * part) as u32;
        let outer = clopper_pearson(found, of, LEVEL).unwrap();
        let inner = jeffreys(found, of, LEVEL).unwrap();
        prop_assert!(outer.lower <= inner.lower + 1e-12 && inner.upper <= outer.upper + 1e-12);
    }

    #[test]
    fn nonoverlap_seen_from_the_other_side_is_the_rest_to_one(a in ratings(), b in ratings()) {
        let (ab, ba) = (Nonoverlap::of(&a, &b).unwrap(), Nonoverlap::of(&b, &a).unwrap());
        prop_assert!((ab.nap_higher() + ba.nap_higher() - 1.0).abs() < 1e-12);
        prop_assert!((ab.nap_higher() + ab.nap_lower() - 1.0).abs() < 1e-12);
        prop_assert!((ab.tau() + ba.tau()).abs() < 1e-12);
        prop_assert!((2.0 * ab.nap_higher() - 1.0 - ab.tau()).abs() < 1e-12);
        prop_assert_eq!(ab.pairs(), (a.len() * b.len()) as u64);
        prop_assert_eq!((ab.higher, ab.lower, ab.equal), (ba.lower, ba.higher, ba.equal));
    }

    /// Raising a rating of the later time never lowers the nonoverlap that looks for higher ones.
    #[test]
    fn nonoverlap_goes_up_with_a_rating(a in ratings(), b in ratings(), at in any::<prop::sample::Index>()) {
        let mut raised = b.clone();
        raised[at.index(b.len())] += 1;
        let (before, after) = (Nonoverlap::of(&a, &b).unwrap(), Nonoverlap::of(&a, &raised).unwrap());
        prop_assert!(after.nap_higher() >= before.nap_higher());
    }

    #[test]
    fn order_does_not_matter_where_it_must_not(
        (ratings, mixed) in ratings().prop_flat_map(shuffled),
        (times, mixed_times) in times().prop_flat_map(shuffled),
        (points, mixed_points) in points().prop_flat_map(shuffled),
        other in ratings(),
    ) {
        let some = |of: &[u8]| of.iter().copied().map(Some).collect::<Vec<_>>();
        prop_assert_eq!(Spread::of(&some(&ratings)), Spread::of(&some(&mixed)));
        prop_assert_eq!(Nonoverlap::of(&ratings, &other), Nonoverlap::of(&mixed, &other));
        prop_assert_eq!(Nonoverlap::of(&other, &ratings), Nonoverlap::of(&other, &mixed));
        prop_assert_eq!(Survival::of(&times, LEVEL), Survival::of(&mixed_times, LEVEL));
        prop_assert_eq!(Slope::of(&points, LEVEL), Slope::of(&mixed_points, LEVEL));
    }

    #[test]
    fn the_estimate_of_time_on_step_never_rises_and_accounts_for_everybody(times in times()) {
        let found = Survival::of(&times, LEVEL).unwrap();
        let mut before = 1.0;
        let mut left = found.people;
        for point in &found.points {
            prop_assert!(point.lasting <= before && point.lasting >= 0.0);
            before = point.lasting;
            prop_assert_eq!(point.at_risk, left);
            left -= point.ended + point.censored;
            if let Some(interval) = point.interval {
                prop_assert!(0.0 <= interval.lower && interval.lower <= point.lasting);
                prop_assert!(point.lasting <= interval.upper && interval.upper <= 1.0);
            }
        }
        prop_assert_eq!(left, 0);
        let first = found.points.iter().find(|point| point.lasting <= 0.5 + 1e-9);
        prop_assert_eq!(found.median, first.map(|point| point.days));
    }

    /// Without anybody censored the estimate is a plain count.
    #[test]
    fn seen_to_its_end_the_estimate_is_the_share_still_there(days in vec(0u32..60, 1..60)) {
        let times: Vec<Followed> = days.iter().map(|days| Followed { days: *days, ended: true }).collect();
        for point in Survival::of(&times, LEVEL).unwrap().points {
            let still = days.iter().filter(|one| **one > point.days).count();
            prop_assert!((point.lasting - still as f64 / days.len() as f64).abs() < 1e-9);
        }
    }

    /// Seeing somebody longer without an end never lowers the estimate anywhere.
    #[test]
    fn a_longer_time_never_lowers_the_estimate(
        times in times(),
        at in any::<prop::sample::Index>(),
        day in 0u32..70,
    ) {
        let (mut times, at) = (times.clone(), at.index(times.len()));
        times[at].ended = false;
        let mut longer = times.clone();
        longer[at].days += 7;
        let lasting = |of: &[Followed]| {
            let points = Survival::of(of, LEVEL).unwrap().points;
            points.iter().rfind(|point| point.days <= day).map_or(1.0, |point| point.lasting)
        };
        prop_assert!(lasting(&longer) >= lasting(&times) - 1e-12);
    }

    #[test]
    fn a_trend_turned_round_is_the_opposite_trend(ratings in vec(0u8..=10, 2..60)) {
        let ahead = MannKendall::of(&ratings).unwrap();
        let back = MannKendall::of(&ratings.iter().rev().copied().collect::<Vec<_>>()).unwrap();
        prop_assert_eq!((ahead.higher, ahead.lower, ahead.pairs), (back.lower, back.higher, back.pairs));
        prop_assert!((ahead.z + back.z).abs() < 1e-12 && (ahead.p - back.p).abs() < 1e-12);
        prop_assert!((0.0..=1.0).contains(&ahead.p) && (-1.0..=1.0).contains(&ahead.tau()));
        prop_assert_eq!(ahead.pairs, (ratings.len() * (ratings.len() - 1) / 2) as u64);
    }

    /// Raising the last rating never lowers the score.
    #[test]
    fn a_trend_goes_up_with_its_last_rating(ratings in vec(0u8..=10, 2..60)) {
        let mut raised = ratings.clone();
        *raised.last_mut().unwrap() += 1;
        let tau = |of: &[u8]| MannKendall::of(of).unwrap().tau();
        prop_assert!(tau(&raised) >= tau(&ratings));
    }

    #[test]
    fn a_slope_lies_within_its_interval_and_turns_with_its_sign(points in points()) {
        let Some(found) = Slope::of(&points, LEVEL) else { return Ok(()) };
        if let Some(interval) = found.interval {
            prop_assert!(interval.lower <= found.slope && found.slope <= interval.upper);
        }
        let down: Vec<(f64, f64)> = points.iter().map(|(x, y)| (*x, -y)).collect();
        prop_assert!((Slope::of(&down, LEVEL).unwrap().slope + found.slope).abs() < 1e-12);
        let steeper: Vec<(f64, f64)> = points.iter().map(|(x, y)| (*x, y + x)).collect();
        prop_assert!((Slope::of(&steeper, LEVEL).unwrap().slope - found.slope - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_chart_moves_with_its_values_and_lies_around_its_centre(
        values in vec(-10.0f64..10.0, 2..60),
        by in -5.0f64..5.0,
    ) {
        let chart = Chart::of(&values).unwrap();
        prop_assert!(chart.lower <= chart.centre && chart.centre <= chart.upper);
        let moved = Chart::of(&values.iter().map(|one| one + by).collect::<Vec<_>>()).unwrap();
        prop_assert!((moved.centre - chart.centre - by).abs() < 1e-9);
        prop_assert!((moved.moving_range - chart.moving_range).abs() < 1e-9);
    }

    /// Raising a rating never lowers a quantile.
    #[test]
    fn quantiles_go_up_with_a_rating(
        ratings in ratings(),
        at in any::<prop::sample::Index>(),
        p in 0.0f64..=1.0,
    ) {
        let mut raised = ratings.clone();
        raised[at.index(ratings.len())] += 1;
        prop_assert!(quantile(&raised, p) >= quantile(&ratings, p));
    }
}

proptest! {
    /// Asked for a day, the estimate is that of the last point up to it, and counts who was followed so far.
    #[test]
    fn the_estimate_of_a_day_is_that_of_the_last_point_before_it(times in times(), day in 0u32..70) {
        let found = Survival::of(&times, LEVEL).unwrap();
        let so_far = times.iter().filter(|one| one.days >= day).count() as u64;
        let Some(at) = found.at(day) else {
            prop_assert_eq!(so_far, 0);
            return Ok(());
        };
        prop_assert_eq!((at.days, at.at_risk), (day, so_far));
        let before = found.points.iter().rfind(|point| point.days <= day);
        prop_assert_eq!(at.lasting, before.map_or(1.0, |point| point.lasting));
        prop_assert_eq!(at.interval, before.and_then(|point| point.interval));
        if let Some(point) = found.points.iter().find(|point| point.days == day) {
            prop_assert_eq!(&at, point);
        }
    }
}
