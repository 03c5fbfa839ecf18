//! Clocks that jump, processes that end, devices that start anew: at random.

use proptest::prelude::*;

use super::*;

/// An event, the running time before it, and by how much the wall clock was set in between, in seconds.
fn happenings() -> impl Strategy<Value = Vec<(Event, u64, i64)>> {
    let event = prop_oneof![
        (0usize..3).prop_map(|part| Event::Begin { part }),
        Just(Event::Pause),
        Just(Event::GoOn),
        (0usize..3).prop_map(|part| Event::Enough { part }),
        (0usize..4, 150u64..240)
            .prop_map(|(part, size)| Event::Smaller { part, size: Size::new(size).unwrap() }),
        Just(Event::Seen),
        Just(Event::Seen),
        Just(Event::Stop),
    ];
    let set = prop_oneof![4 => Just(0i64), 1 => -400_000i64..400_000];
    prop::collection::vec((event, 0u64..90_000, set), 0..25)
}

const PARTS: &[(u64, u64)] = &[(20, 60), (30, 120), (0, 40)];

fn play(timer: Timer, happenings: &[(Event, u64, i64)], mut up: u64, mut wall: i64) -> Timer {
    happenings.iter().fold(timer, |timer, (event, millis, set)| {
        up += millis;
        wall += *millis as i64 + set * 1000;
        timer.after(*event, &tick_millis(1, up, wall.max(-BASE / 2)))
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn w4_whatever_the_wall_clock_does_counted_time_is_bounded_and_never_falls(
        happenings in happenings()
    ) {
        let mut timer = timer(PARTS, &tick(1, 0, 0));
        let (mut up, mut wall, mut ran, mut before) = (0u64, 0i64, 0u64, 0u64);
        for (event, millis, set) in happenings {
            up += millis;
            wall += millis as i64 + set * 1000;
            if timer.state() == State::Running {
                ran += millis;
            }
            let at = tick_millis(1, up, wall);
            let shown = timer.view(&at).total_millis;
            timer = timer.after(event, &at);
            let total = timer.view(&at).total_millis;
            prop_assert_eq!(shown, total, "an event alone adds no time");
            prop_assert!(total >= before && total <= ran && total <= up);
            // The next change comes when it is said to, and not a millisecond earlier.
            let view = timer.view(&at);
            if let Some(next) = view.next_in_millis {
                let then = |ahead: u64| timer.view(&tick_millis(1, up + ahead, wall));
                let changed = |then: &View| then.state != view.state || then.least_reached != view.least_reached;
                prop_assert!(next > 0 && changed(&then(next)) && !changed(&then(next - 1)));
            }
            before = total;
        }
    }

    /// The wall clock does not matter while the process lives.
    #[test]
    fn w4_a_changed_wall_clock_changes_no_time(happenings in happenings()) {
        let still: Vec<_> = happenings.iter().map(|(event, millis, _)| (*event, *millis, 0)).collect();
        let start = || timer(PARTS, &tick(1, 0, 0));
        let (moved, steady) = (play(start(), &happenings, 0, 0), play(start(), &still, 0, 0));
        let counted = |timer: &Timer| timer.running.counted_millis.clone();
        prop_assert_eq!(counted(&moved), counted(&steady));
        prop_assert_eq!(moved.state(), steady.state());
    }

    /// A crash after any event, found at once or within the time between two notes: nothing differs.
    #[test]
    fn w6_a_crash_after_any_event_ends_the_same(
        happenings in happenings(), after in 0usize..25, late in 0u64..=SEEN_EVERY_MILLIS
    ) {
        let happenings: Vec<_> = happenings.iter().map(|(event, millis, _)| (*event, *millis, 0)).collect();
        let (first, rest) = happenings.split_at(after.min(happenings.len()));
        let up: u64 = first.iter().map(|(_, millis, _)| millis).sum();
        let whole = play(timer(PARTS, &tick(1, 0, 0)), &happenings, 0, 0);
        let before = play(timer(PARTS, &tick(1, 0, 0)), first, 0, 0);
        // Found `late` after the last event, or at the next one if that comes sooner.
        let late = rest.first().map_or(late, |(_, millis, _)| late.min(*millis));
        let at = tick_millis(1, up + late, (up + late) as i64);
        let mut rest = rest.to_vec();
        if let Some((_, millis, _)) = rest.first_mut() {
            *millis -= late;
        }
        let after = play(found(&before).go_on(&at), &rest, up + late, (up + late) as i64);
        prop_assert_eq!(&after.running.counted_millis, &before_or(&rest, &whole, &after));
        if !rest.is_empty() {
            prop_assert_eq!(after.stored().unwrap(), whole.stored().unwrap());
        }
    }

    /// With a note at least every 15 seconds, a start of the device costs at most those 15 seconds, and
    /// never adds any.
    #[test]
    fn w7_a_restart_costs_at_most_the_time_since_the_last_note(
        notes in prop::collection::vec(1u64..=SEEN_EVERY_MILLIS, 1..40),
        after in 0usize..40,
        away in 0u64..10_000_000,
        new_up in 0u64..10_000_000,
    ) {
        let after = after.min(notes.len() - 1);
        let begin = |at: &Tick| timer(&[(60, 600)], at).after(Event::Begin { part: 0 }, at);
        let (mut whole, mut cut) = (begin(&tick(1, 0, 0)), begin(&tick(1, 0, 0)));
        let (mut up, mut other, mut boot) = (0u64, 0u64, 1u64);
        for (index, millis) in notes.iter().enumerate() {
            up += millis;
            other += millis;
            let wall = (up + if boot == 2 { away } else { 0 }) as i64;
            if index == after {
                // The device starts anew just before this note would have been made.
                (boot, other) = (2, new_up);
                let at = tick_millis(boot, other, wall + away as i64);
                cut = found(&cut).go_on(&at);
            } else {
                cut = cut.after(Event::Seen, &tick_millis(boot, other, wall));
            }
            whole = whole.after(Event::Seen, &tick_millis(1, up, up as i64));
        }
        let (whole, cut) = (whole.running.total_millis(), cut.running.total_millis());
        prop_assert!(cut <= whole && whole - cut <= SEEN_EVERY_MILLIS, "{} {}", cut, whole);
    }
}

/// With nothing after the crash, the time until it was found counts as well: what is shown then.
fn before_or(rest: &[(Event, u64, i64)], whole: &Timer, after: &Timer) -> Vec<u64> {
    if rest.is_empty() {
        let at = Tick { uptime: after.running.seen_uptime, now: after.running.seen };
        let mut whole = whole.clone();
        whole.pass(&at);
        return whole.running.counted_millis;
    }
    whole.running.counted_millis.clone()
}

#[test]
fn w7_either_clock_can_take_time_away_and_neither_alone_can_give_it() {
    let begun = timer(&[(60, 600)], &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let kept = begun.after(Event::Seen, &tick(1, 100, 100));
    let certain = |at: &Tick| found(&kept).offer(at).certain_millis;
    assert_eq!(certain(&tick(1, 115, 115)), 115_000);
    assert_eq!(certain(&tick(1, 116, 116)), 100_000, "too long away");
    assert_eq!(certain(&tick(2, 115, 115)), 100_000, "another start of the device");
    assert_eq!(certain(&tick(1, 110, 4_000)), 100_000, "the wall clock says it was longer");
    assert_eq!(certain(&tick(1, 110, 50)), 100_000, "the wall clock went back");
    assert_eq!(certain(&tick(1, 90, 110)), 100_000, "running time went back");
}

#[test]
fn w6_a_practice_found_again_counts_for_nothing_until_chosen() {
    let begun = timer(&[(60, 600)], &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let kept = begun.after(Event::Seen, &tick(1, 90, 90));
    let late = tick(2, 5, 7_000);
    let offer = found(&kept).offer(&late);
    assert!(offer.can_go_on && offer.choices().len() == 3);
    assert_eq!(offer.began, Some(tick(1, 0, 0).now));
    let done = found(&kept).finish(&late).unwrap();
    assert_eq!((done.how, seconds(&done), done.id), (How::Finished, vec![90], id()));
    let on = found(&kept).go_on(&late).after(Event::Seen, &tick(2, 15, 7_010));
    assert_eq!(on.view(&tick(2, 15, 7_010)).total_millis, 100_000);
    // One that was stopped is only to be kept or left out.
    let stopped = kept.after(Event::Stop, &tick(1, 95, 95));
    let offer = found(&stopped).offer(&late);
    assert_eq!(offer.choices(), [Choice::Finish, Choice::Discard]);
    assert_eq!(seconds(&found(&stopped).finish(&late).unwrap()), [95]);
    found(&stopped).discard();
}

#[test]
fn w6_an_end_in_an_earlier_part_is_a_stop() {
    let begun =
        timer(&[(1, 20), (1, 20)], &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let kept = begun.after(Event::Seen, &tick(1, 10, 10));
    let done = found(&kept).finish(&tick(1, 10, 10)).unwrap();
    assert_eq!((done.how, seconds(&done)), (How::Stopped, vec![10]));
    let unbegun = timer(&[(1, 20)], &tick(1, 0, 0));
    assert_eq!(found(&unbegun).finish(&tick(2, 0, 0)).unwrap().how, How::CouldNotStart);
}
