//! Where the sessions of a practice may be cut off, on its own. All times are invented.

use std::sync::Arc;

use chrono::FixedOffset;

use super::*;
use crate::moment::Stamp;
use crate::programme::fixtures::text;
use crate::programme::plan::Programme;
use crate::programme::values::Practice;
use crate::progression::course::{Answered, Current};
use crate::progression::line::Seen;

fn key(t: i64, place: Place) -> Key {
    Key { t, place }
}

/// Sessions told when they happened, at the times 1 to `count`, a hundred places apart.
fn line(count: i64) -> Line {
    let mut line = Line::new(Practice::Trainer);
    line.seen = (1..=count).map(|t| Seen::invented(key(t, place(t)))).collect();
    line
}

fn place(t: i64) -> Place {
    Place::try_from(t).unwrap() * 100
}

/// Time of the first session left, and the cut.
fn cut(mut line: Line, needed: Option<Key>, milestones: &[Key]) -> (i64, Option<(i64, Place)>) {
    trim_line(&mut line, needed, milestones);
    (line.seen[0].key.t, line.cut.map(|cut| (cut.t, cut.place)))
}

#[test]
fn the_newest_fifty_stay_and_what_is_still_needed() {
    assert_eq!(cut(line(49), None, &[]), (1, None));
    assert_eq!(cut(line(50), None, &[]), (1, None));
    assert_eq!(cut(line(60), None, &[]), (11, Some((10, 1_000))));
    assert_eq!(cut(line(60), Some(key(4, 400)), &[]), (4, Some((3, 300))), "needed");
    assert_eq!(cut(line(60), Some(key(30, 3_000)), &[]), (11, Some((10, 1_000))), "fifty anyway");
    assert_eq!(cut(line(60), Some(key(1, 100)), &[]), (1, None), "all of them are");
}

#[test]
fn sessions_of_the_same_time_are_not_parted() {
    let mut same = line(60);
    same.seen[9].key.t = 11;
    assert_eq!(cut(same, None, &[]), (11, Some((9, 900))));
    let mut same = line(60);
    (same.seen[8].key.t, same.seen[9].key.t) = (11, 11);
    let mut trimmed = same;
    trim_line(&mut trimmed, None, &[]);
    assert_eq!((trimmed.seen.len(), trimmed.cut.unwrap().t), (52, 8));
}

#[test]
fn t5_a_cut_lies_only_where_all_before_is_earlier_in_time_and_by_place() {
    // The third was written after the twentieth: a cut between would part what T5 may order anew.
    let mut late = line(60);
    late.seen[2].key.place = 2_050;
    assert_eq!(cut(late, None, &[]), (3, Some((2, 200))));
    // Written before the twelfth it is no later than all that are left.
    let mut late = line(60);
    late.seen[2].key.place = 1_050;
    assert_eq!(cut(late, None, &[]), (11, Some((10, 1_050))));
    // A session to come that was written early.
    let mut early = line(60);
    early.seen[40].key.place = 350;
    assert_eq!(cut(early, None, &[]), (4, Some((3, 300))));
}

#[test]
fn t5_steps_acceptances_and_clearings_are_in_that_order_too() {
    assert_eq!(cut(line(60), None, &[key(20, 350)]), (4, Some((3, 300))), "dated later");
    assert_eq!(cut(line(60), None, &[key(4, 2_050)]), (4, Some((3, 300))), "told later");
    assert_eq!(cut(line(60), None, &[key(6, 601)]), (11, Some((10, 1_000))));
    // What came before the first session cuts off nothing, so that nothing is said to be gone.
    assert_eq!(cut(line(50), None, &[key(0, 1)]), (1, None));
}

#[test]
fn a_line_that_was_cut_is_cut_again_or_stays_as_it_was() {
    let mut twice = line(60);
    trim_line(&mut twice, None, &[]);
    trim_line(&mut twice, None, &[key(0, 1)]);
    assert_eq!((twice.seen.len(), twice.cut.unwrap().t), (50, 10), "an older one is not put back");
    twice.seen.push(Seen::invented(key(61, 6_100)));
    trim_line(&mut twice, None, &[]);
    assert_eq!((twice.seen.len(), twice.cut.unwrap().t), (50, 11));
}

#[test]
fn answers_go_with_the_sessions_they_were_given_among() {
    let plan: Programme = serde_json::from_str(text("1")).unwrap();
    assert_eq!(plan.steps[0].practice, Practice::Trainer);
    let mut fold = Fold::new(None);
    fold.kept.course.step = Some(Current {
        id: plan.steps[0].id.clone(),
        index: 0,
        began: key(0, 1),
        day: 0,
        at: Stamp::from_millis(0, FixedOffset::east_opt(0).unwrap(), None).unwrap(),
        by_going_back: false,
    });
    fold.plan = Some(Arc::new(plan));
    fold.kept.lines = vec![line(60)];
    let answer = |t| Answered { key: key(t, place(t) + 1), id: [0; 16], yes: true };
    fold.kept.course.answers = vec![answer(9), answer(10), answer(11)];
    fold.trim();
    assert_eq!(fold.kept.lines[0].seen.len(), 50);
    let left: Vec<i64> = fold.kept.course.answers.iter().map(|answer| answer.key.t).collect();
    assert_eq!(left, [11]);
}
