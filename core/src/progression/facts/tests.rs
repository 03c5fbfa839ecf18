//! What is kept of the sessions of a step, on its own: what a session told late may still reach, how sessions are
//! counted once older ones are gone, and what goes. That nothing a criterion asks for goes is held against whole diaries
//! in tests/tests. All lists are invented.

use super::*;

/// At this time, with a place of the same number.
fn key(t: i64) -> Key {
    Key { t, place: Place::try_from(t).unwrap() }
}

fn keys(times: impl IntoIterator<Item = i64>) -> Vec<Key> {
    times.into_iter().map(key).collect()
}

fn seen(t: i64) -> Seen {
    Seen::invented(key(t))
}

fn full(t: i64, day: Day) -> Full {
    Full { key: key(t), day, id: [0; 16], rank: 0 }
}

fn gap(t: i64, rank: u32) -> Gap {
    Gap { key: key(t), rank }
}

/// Sessions that count for going up, `trimmed` older ones gone.
fn ups(times: impl IntoIterator<Item = i64>, trimmed: u32) -> StepFacts {
    StepFacts { ups: keys(times), ups_trimmed: trimmed, ..StepFacts::default() }
}

fn times(keys: &[Key]) -> Vec<i64> {
    keys.iter().map(|key| key.t).collect()
}

const NO_FLOOR: Key = Key { t: i64::MIN, place: 0 };

#[test]
fn a_scale_knows_what_lies_above_and_what_is_missing_from_a_session_on() {
    let mut scale = Scale::new(RatingKind::After);
    scale.given[3] = keys([10, 40]);
    scale.given[4] = keys([20]);
    scale.missing = vec![Absent { key: key(30), id: [0; 16] }];
    assert!(scale.above(3, key(20)), "at that session itself");
    assert!(!scale.above(3, key(21)), "before it");
    assert!(!scale.above(4, key(1)), "a rating at the most is not above it");
    assert!(scale.above(0, key(40)) && !scale.above(10, key(1)));
    assert!(scale.lacks(key(30)) && !scale.lacks(key(31)));
}

#[test]
fn a_session_reaches_back_only_behind_what_is_left_of_a_list_that_was_trimmed() {
    assert!(!ups([10, 20], 0).reaches_back(5), "nothing is gone");
    assert!(!ups([], 0).reaches_back(5));
    assert!(ups([10, 20], 1).reaches_back(9));
    assert!(!ups([10, 20], 1).reaches_back(10), "at the same time its place is later");
    assert!(!ups([10, 20], 1).reaches_back(15));
    assert!(ups([], 1).reaches_back(15), "all are gone: it might come among them");
    type List = fn(Vec<Seen>, bool) -> StepFacts;
    let since: List =
        |since, since_trimmed| StepFacts { since, since_trimmed, ..StepFacts::default() };
    let window: List =
        |window, window_trimmed| StepFacts { window, window_trimmed, ..StepFacts::default() };
    for of in [since, window] {
        assert!(!of(vec![seen(10)], false).reaches_back(5));
        assert!(!of(vec![], false).reaches_back(5));
        assert!(of(vec![seen(10), seen(20)], true).reaches_back(9));
        assert!(!of(vec![seen(10), seen(20)], true).reaches_back(10));
        assert!(!of(vec![seen(10), seen(20)], true).reaches_back(15));
        assert!(of(vec![], true).reaches_back(15));
    }
}

#[test]
fn how_many_came_before_is_counted_or_else_remembered() {
    let whole = ups([10, 20, 30], 0);
    assert_eq!(whole.before(key(5), 9), 0, "all are there: what was remembered is not asked");
    assert_eq!(whole.before(key(10), 9), 0);
    assert_eq!(whole.before(key(20), 9), 1);
    assert_eq!(whole.before(key(99), 9), 3);
    let trimmed = ups([10, 20, 30], 5);
    assert_eq!(trimmed.before(key(9), 2), 2, "among those gone: as remembered");
    assert_eq!(trimmed.before(key(10), 2), 5, "the first left comes after those gone");
    assert_eq!(trimmed.before(key(30), 2), 7);
    assert_eq!(ups([], 5).before(key(9), 2), 2);
}

#[test]
fn sessions_from_a_point_on_are_counted_with_those_gone() {
    let whole = ups([10, 20, 30], 0);
    assert_eq!(whole.count_from(key(15)), 2);
    assert_eq!(whole.count_from(key(20)), 2);
    assert_eq!(whole.count_since(&full(30, 0)), 1);
    let mut trimmed = ups([10, 20, 30], 5);
    assert_eq!(trimmed.count_since(&Full { rank: 4, ..full(8, 0) }), 4, "four of eight before it");
    assert_eq!(trimmed.count_from(key(9)), 8, "nothing is remembered of such a point");
    trimmed.gaps = vec![gap(3, 1), gap(9, 4)];
    assert_eq!(trimmed.count_from(key(9)), 4, "the last gap remembers how many came before it");
    assert_eq!(trimmed.count_from(key(8)), 8, "of another point it says nothing");
}

#[test]
fn at_most_the_latest_fifty_are_handed_out_from_a_session_on() {
    let facts = ups(1..=70, 0);
    assert_eq!(times(facts.ups_since(key(40))), (40..=70).collect::<Vec<_>>());
    assert_eq!(times(facts.ups_since(key(1))), (21..=70).collect::<Vec<_>>());
}

#[test]
fn f5_a_gap_that_is_gone_is_still_known_by_its_place() {
    let mut facts = ups([], 0);
    assert_eq!((facts.last_gap().is_none(), facts.gap_written()), (true, 0));
    facts.gaps = vec![Gap { key: Key { t: 1, place: 8 }, rank: 0 }, gap(2, 0)];
    assert_eq!(facts.gap_written(), 8, "the latest place, not the latest time");
    facts.gaps_trimmed = 9;
    assert_eq!(facts.gap_written(), 9);
}

#[test]
fn the_newest_fifty_of_each_window_stay_and_it_is_known_that_more_went() {
    for (count, trimmed) in [(50, false), (51, true)] {
        let list: Vec<Seen> = (1..=count).map(seen).collect();
        let mut facts = StepFacts {
            since: list.clone(),
            window: list,
            ups: keys(1..=count),
            ..StepFacts::default()
        };
        assert_eq!(facts.oldest_needed().map(|key| key.t), Some(count - 49));
        facts.trim(0, NO_FLOOR, None);
        for (list, was_trimmed) in
            [(&facts.since, facts.since_trimmed), (&facts.window, facts.window_trimmed)]
        {
            assert_eq!((list.len(), list[0].key.t, was_trimmed), (50, count - 49, trimmed));
        }
        assert_eq!((facts.ups.len(), facts.ups_trimmed), (50, u32::from(trimmed)));
        facts.trim(0, NO_FLOOR, None);
        assert_eq!((facts.since_trimmed, facts.ups_trimmed), (trimmed, u32::from(trimmed)));
    }
}

#[test]
fn the_oldest_needed_is_the_earliest_of_the_three_lists() {
    let list = |first: i64, count: i64| (first..first + count).map(seen).collect::<Vec<_>>();
    let mut facts = StepFacts { since: list(40, 60), ..ups(45..=99, 0) };
    assert_eq!(facts.oldest_needed().map(|key| key.t), Some(50), "the fiftieth from the end");
    // Of what is below the step nothing is in the window, so that it reaches back further.
    facts.window = list(7, 20);
    assert_eq!(facts.oldest_needed().map(|key| key.t), Some(7), "all where there are fewer");
    assert!(ups([], 0).oldest_needed().is_none());
}

/// Sixty sessions with a gap before the tenth; `trimmed` older ones gone before.
fn with_gap() -> StepFacts {
    let fulls: Vec<Full> = (1..=60).map(|t| full(t, 0)).collect();
    StepFacts {
        gaps: vec![gap(10, 0)],
        full: fulls.clone(),
        full_once_rated: fulls,
        ..ups(1..=60, 0)
    }
}

#[test]
fn f5_before_a_gap_that_lasts_nothing_counts_for_going_up() {
    // Of sixty the oldest ten go, so that nothing told late can fill the gap before the tenth any more.
    let mut facts = with_gap();
    facts.trim(7, NO_FLOOR, None);
    assert_eq!((facts.ups[0].t, facts.ups.len(), facts.ups_trimmed), (11, 50, 1));
    for list in [&facts.full, &facts.full_once_rated] {
        assert_eq!(
            (list[0].key.t, list[0].rank, list[1].rank),
            (10, 0, 1),
            "the session itself stays"
        );
    }
    assert_eq!((facts.gaps.len(), facts.count_from(key(10))), (1, 51));
    // Of fifty none go: one told late could come between, and there were no gap.
    let mut facts = with_gap();
    facts.ups.drain(50..);
    facts.full.drain(50..);
    facts.trim(7, NO_FLOOR, None);
    assert_eq!((facts.ups[0].t, facts.ups_trimmed, facts.full[0].key.t), (1, 0, 1));
    // Unless nothing so early will be told any more.
    for (settled, first) in [(9, 1), (10, 10)] {
        let mut facts = with_gap();
        facts.ups.drain(50..);
        facts.full.drain(50..);
        facts.trim(7, NO_FLOOR, Some(key(settled)));
        assert_eq!((facts.ups[0].t, facts.full[0].key.t), (first, first), "settled {settled}");
    }
}

#[test]
fn f5_before_a_time_from_which_facts_start_nothing_counts_for_going_up() {
    let mut facts = with_gap();
    facts.gaps.clear();
    facts.ups_trimmed = 5;
    facts.trim(7, Key { t: 20, place: 0 }, None);
    assert_eq!((facts.ups[0].t, facts.ups_trimmed), (20, 0), "those gone before count no more");
    assert_eq!((facts.full[0].key.t, facts.full_once_rated[0].key.t), (20, 20));
    // A gap earlier than that time changes nothing, one later does.
    let mut facts = with_gap();
    facts.trim(7, Key { t: 20, place: 0 }, Some(key(30)));
    assert_eq!(facts.ups[0].t, 20);
    let mut facts = with_gap();
    facts.trim(7, Key { t: 5, place: 0 }, Some(key(30)));
    assert_eq!((facts.full[0].key.t, facts.ups[0].t), (10, 11));
    // A gap that does not last starts nothing.
    let mut facts = with_gap();
    facts.ups.drain(50..);
    facts.trim(7, Key { t: 5, place: 0 }, None);
    assert_eq!((facts.ups[0].t, facts.full[0].key.t), (5, 5));
}

#[test]
fn of_gaps_that_last_the_newest_stays_and_those_that_may_be_filled_do() {
    let gaps = || vec![gap(3, 0), gap(5, 0), gap(30, 0)];
    let known = |facts: &StepFacts| {
        (facts.gaps.iter().map(|gap| gap.key.t).collect::<Vec<_>>(), facts.gaps_trimmed)
    };
    // With sixty sessions from the sixth on, and nothing gone: ten of them go, and what is older lasts.
    let mut facts = StepFacts { gaps: gaps(), ..ups(6..=65, 0) };
    facts.trim(0, NO_FLOOR, None);
    assert_eq!(known(&facts), (vec![5, 30], 3));
    // Fifty that are all there may be joined by earlier ones.
    for count in [50, 40] {
        let mut facts = StepFacts { gaps: gaps(), ..ups(6..6 + count, 0) };
        facts.trim(0, NO_FLOOR, None);
        assert_eq!(known(&facts), (vec![3, 5, 30], 0), "{count}");
        // Where some are gone they may not.
        let mut facts = StepFacts { gaps: gaps(), ..ups(6..6 + count, 1) };
        facts.trim(0, NO_FLOOR, None);
        assert_eq!(known(&facts), (vec![5, 30], 3), "{count}, one gone");
    }
}

#[test]
fn how_many_came_before_is_remembered_when_sessions_go() {
    let fulls = || vec![Full { rank: 3, ..full(5, 0) }, full(10, 0), full(40, 0)];
    let ranks = |facts: &StepFacts| {
        facts
            .full
            .iter()
            .map(|full| full.rank)
            .chain(facts.gaps.iter().map(|gap| gap.rank))
            .collect()
    };
    let mut facts =
        StepFacts { full: fulls(), gaps: vec![gap(5, 3), gap(41, 0)], ..ups(10..=60, 7) };
    facts.trim(7, NO_FLOOR, None);
    let remembered: Vec<u32> = ranks(&facts);
    assert_eq!(remembered, [3, 7, 37, 3, 38], "what is older than all that are left keeps its own");
    assert_eq!(facts.ups_trimmed, 8);
    // With nothing gone all is counted anew, also what was remembered once.
    let mut facts = StepFacts { full: fulls(), gaps: vec![gap(5, 3)], ..ups(10..=40, 0) };
    facts.trim(7, NO_FLOOR, None);
    let remembered: Vec<u32> = ranks(&facts);
    assert_eq!(remembered, [0, 0, 30, 0]);
}

#[test]
fn full_sessions_stay_as_far_back_as_the_rule_looks_and_fifty_in_any_case() {
    let kept = |within: i32, days: &[Day]| {
        let list: Vec<Full> = (1..).zip(days).map(|(t, day)| full(t, *day)).collect();
        let mut facts =
            StepFacts { full: list.clone(), full_once_rated: list, ..StepFacts::default() };
        facts.trim(within, NO_FLOOR, None);
        assert_eq!(facts.full.len(), facts.full_once_rated.len());
        facts.full.len()
    };
    let one_a_day: Vec<Day> = (1..=100).collect();
    assert_eq!(kept(7, &one_a_day), 50);
    assert_eq!(kept(60, &one_a_day), 63, "three days more, for offsets");
    assert_eq!(kept(200, &one_a_day), 100, "all, where there are fewer");
    // One is of a later day than its neighbours, by its own offset: it stays, and what happened after it.
    let mut uneven = one_a_day;
    uneven[19] = 38;
    assert_eq!(kept(60, &uneven), 81);
    assert_eq!(kept(7, &[]), 0);
}

#[test]
fn of_each_rating_the_latest_session_stays_and_of_those_without_fifty() {
    let mut scale = Scale::new(RatingKind::Peak);
    scale.given[2] = keys([1, 2, 3]);
    scale.missing = (1..=60).map(|t| Absent { key: key(t), id: [0; 16] }).collect();
    let mut facts = StepFacts { scales: vec![scale], ..StepFacts::default() };
    facts.trim(0, NO_FLOOR, None);
    assert_eq!(times(&facts.scales[0].given[2]), [3]);
    assert_eq!((facts.scales[0].missing.len(), facts.scales[0].missing[0].key.t), (50, 11));
}
