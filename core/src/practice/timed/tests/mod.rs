//! The timed practice against a model that steps second by second, exhaustively and at random; its
//! stored form; its words.

mod crashes;
mod exhaustive;
mod model;
mod stored;
mod words;

use super::*;
use crate::diary::entry::EntryId;
use crate::programme::values::{Position, Practice, Size};

/// 2026-03-02T09:00:00Z, in milliseconds.
const BASE: i64 = 1_772_442_000_000;

/// An instant: start of the device, seconds since it, and seconds of the wall clock since [`BASE`].
fn tick(boot: u64, up: u64, wall: i64) -> Tick {
    tick_millis(boot, up * 1000, wall * 1000)
}

fn tick_millis(boot: u64, up: u64, wall: i64) -> Tick {
    let zone = chrono::FixedOffset::east_opt(3600).unwrap();
    let now = Stamp::from_millis(BASE + wall, zone, None).unwrap();
    Tick { uptime: Uptime { boot, millis: up }, now }
}

fn id() -> EntryId {
    EntryId([7; 16])
}

/// Parts of so many seconds at least and at most, with sizes from 20 mm up.
fn planned(parts: &[(u64, u64)]) -> Planned {
    let part = |(index, (least, most)): (usize, &(u64, u64))| PlannedPart {
        widest_diameter_tenths_mm: Some(Size::new(200 + 20 * index as u64).unwrap()),
        least_millis: least * 1000,
        most_millis: most * 1000,
    };
    let parts = parts.iter().enumerate().map(part).collect();
    Planned::new(Practice::Trainer, Position::OnBack, parts).unwrap()
}

fn timer(parts: &[(u64, u64)], at: &Tick) -> Timer {
    Timer::new(planned(parts), id(), at)
}

/// The process ends and is found again at `at`.
fn found(timer: &Timer) -> Found {
    Found::open(&timer.stored().unwrap()).unwrap()
}

fn seconds(done: &Done) -> Vec<u32> {
    done.parts.iter().map(|part| part.practised_seconds).collect()
}

#[test]
fn w2_the_next_part_waits_until_the_person_begins_it() {
    let timer = timer(&[(10, 20), (30, 60)], &tick(1, 0, 0));
    let timer = timer.after(Event::Begin { part: 0 }, &tick(1, 5, 5));
    let view = timer.view(&tick(1, 15, 15));
    assert_eq!((view.part, view.part_millis, view.next_in_millis), (0, 10_000, Some(10_000)));
    assert!(view.least_reached);
    // Long after its end: its most, and not a second more.
    let view = timer.view(&tick(1, 500, 500));
    assert_eq!((view.state, view.part, view.total_millis), (State::Ready, 1, 20_000));
    let timer = timer.after(Event::Begin { part: 1 }, &tick(1, 500, 500));
    let timer = timer.after(Event::Seen, &tick(1, 560, 560));
    let done = timer.done().unwrap();
    assert_eq!((done.how, seconds(&done)), (How::Finished, vec![20, 60]));
    assert_eq!(done.happened, tick(1, 5, 5).now);
}

#[test]
fn w3_a_second_tap_does_not_reach_the_next_part() {
    let timer = timer(&[(10, 20), (30, 60)], &tick(1, 0, 0));
    let timer = timer.after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    // The clock runs out in the same second in which "enough" is tapped, twice.
    let timer = timer.after(Event::Enough { part: 0 }, &tick(1, 20, 20));
    let timer = timer.after(Event::Enough { part: 0 }, &tick(1, 21, 21));
    let timer = timer.after(Event::Begin { part: 0 }, &tick(1, 22, 22));
    let view = timer.view(&tick(1, 22, 22));
    assert_eq!((view.state, view.part, view.total_millis), (State::Ready, 1, 20_000));
}

/// What was meant for an earlier part, and comes late, changes nothing.
#[test]
fn w3_a_tap_for_another_part_is_not_heard() {
    let timer = timer(&[(10, 20), (10, 20), (10, 20)], &tick(1, 0, 0));
    let timer = timer.after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let timer = timer.after(Event::Enough { part: 0 }, &tick(1, 12, 12));
    let timer = timer.after(Event::Begin { part: 1 }, &tick(1, 13, 13));
    let timer = timer.after(Event::Enough { part: 1 }, &tick(1, 25, 25));
    let now = tick(1, 26, 26);
    let before = timer.clone().after(Event::Seen, &now);
    let small = Size::new(100).unwrap();
    for late in [
        Event::Enough { part: 0 },
        Event::Enough { part: 1 },
        Event::Smaller { part: 0, size: small },
        Event::Smaller { part: 1, size: small },
        Event::Begin { part: 1 },
    ] {
        let after = timer.clone().after(late, &now);
        assert_eq!(after.stored().unwrap(), before.stored().unwrap());
    }
}

#[test]
fn w5_stop_is_heard_in_every_state_and_is_final() {
    let at = |second: u64| tick(1, second, second as i64);
    let ready = timer(&[(10, 20)], &at(0));
    let running = ready.clone().after(Event::Begin { part: 0 }, &at(0));
    let paused = running.clone().after(Event::Pause, &at(3));
    let finished = running.clone().after(Event::Seen, &at(40));
    assert_eq!(finished.state(), State::Finished);
    for (before, how) in [
        (ready, How::CouldNotStart),
        (running, How::Stopped),
        (paused, How::Stopped),
        (finished, How::Stopped),
    ] {
        let stopped = before.after(Event::Stop, &at(41));
        assert_eq!(stopped.done().unwrap().how, how);
        for event in [Event::Begin { part: 0 }, Event::GoOn, Event::Enough { part: 0 }, Event::Seen]
        {
            assert_eq!(stopped.clone().after(event, &at(50)).state(), State::Stopped);
        }
    }
}

#[test]
fn w4_a_pause_counts_nothing_and_going_on_counts_again() {
    let at = |second: u64| tick(1, second, second as i64);
    let begun = timer(&[(10, 20)], &at(0)).after(Event::Begin { part: 0 }, &at(0));
    let paused = begun.after(Event::Pause, &at(3));
    assert_eq!((paused.state(), paused.view(&at(9)).total_millis), (State::Paused, 3_000));
    let on = paused.after(Event::GoOn, &at(9));
    assert_eq!((on.state(), on.view(&at(11)).total_millis), (State::Running, 5_000));
}

#[test]
fn w5_enough_before_the_least_of_the_last_part_is_a_stop() {
    let begun = timer(&[(10, 20)], &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let ended = |second: u64| {
        begun.clone().after(Event::Enough { part: 0 }, &tick_millis(1, second, 0)).done().unwrap()
    };
    assert_eq!(ended(9_999).how, How::Stopped);
    assert_eq!(ended(10_000).how, How::Finished);
    assert_eq!(seconds(&ended(9_999)), [9], "rounded down");
}

#[test]
fn w8_an_unsaid_reason_counts_as_stopped_and_parts_without_time_are_left_out() {
    let at = |second: u64| tick(1, second, second as i64);
    let begun = timer(&[(10, 20), (30, 60)], &at(0)).after(Event::Begin { part: 0 }, &at(0));
    let done = begun.after(Event::Stop, &at(12)).done().unwrap();
    assert_eq!(seconds(&done), [12]);
    assert!(done.ended(None).counts_as_stopped());
    let interrupted = done.ended(Some(crate::diary::entry::Reason::Interrupted));
    assert!(!interrupted.counts_as_stopped());
    let nothing = timer(&[(10, 20), (30, 60)], &at(0)).after(Event::Stop, &at(1)).done().unwrap();
    assert_eq!((nothing.how, seconds(&nothing)), (How::CouldNotStart, vec![0]));
    assert_eq!(nothing.happened, at(1).now);
}

#[test]
fn w10_going_smaller_is_one_action_and_going_larger_none() {
    let at = |second: u64| tick(1, second, second as i64);
    let size = |tenths: u64| Size::new(tenths).unwrap();
    let begun = timer(&[(10, 20), (30, 60)], &at(0)).after(Event::Begin { part: 0 }, &at(0));
    let main =
        begun.after(Event::Enough { part: 0 }, &at(15)).after(Event::Begin { part: 1 }, &at(20));
    assert_eq!(main.size(), Some(size(220)));
    for larger in [220, 230] {
        let same = main.clone().after(Event::Smaller { part: 1, size: size(larger) }, &at(30));
        assert!(same == main.clone().after(Event::Seen, &at(30)));
    }
    let smaller = main.after(Event::Smaller { part: 1, size: size(200) }, &at(30));
    let view = smaller.view(&at(500));
    assert_eq!((view.state, view.part, view.total_millis), (State::Ready, 2, 25_000));
    assert_eq!(
        (view.least_millis, view.most_millis),
        (30_000, 50_000),
        "the time the main part still had"
    );
    assert_eq!(smaller.size(), Some(size(200)));
    let done = smaller
        .after(Event::Begin { part: 2 }, &at(500))
        .after(Event::Seen, &at(900))
        .done()
        .unwrap();
    assert_eq!((done.how, seconds(&done)), (How::Finished, vec![15, 10, 50]));
    let sizes: Vec<u16> =
        done.parts.iter().map(|part| part.widest_diameter_tenths_mm.unwrap().get()).collect();
    assert_eq!(
        sizes,
        [200, 220, 200],
        "the main size is the smaller one: it is not on the step (F2)"
    );
    // Before anything was practised the larger one is not told at all.
    let first = timer(&[(10, 20), (30, 60)], &at(0))
        .after(Event::Smaller { part: 0, size: size(180) }, &at(0));
    let done =
        first.after(Event::Begin { part: 0 }, &at(0)).after(Event::Stop, &at(9)).done().unwrap();
    assert_eq!(
        (done.parts[0].widest_diameter_tenths_mm, seconds(&done)),
        (Some(size(180)), vec![9])
    );
    // Where no trainer is used there is nothing smaller.
    let part = PlannedPart { widest_diameter_tenths_mm: None, least_millis: 1, most_millis: 9 };
    let quiet = Planned::new(Practice::Meditation, Position::Sitting, vec![part]).unwrap();
    let quiet = Timer::new(quiet, id(), &at(0));
    assert!(quiet.clone().after(Event::Smaller { part: 0, size: size(180) }, &at(0)) == quiet);
}

#[test]
fn w10_a_smaller_trainer_never_makes_a_seventh_part() {
    let at = |second: u64| tick(1, second, second as i64);
    let small = Size::new(180).unwrap();
    let mut last = timer(&[(1, 20); 6], &at(0));
    for part in 0..5 {
        last = last.after(Event::Enough { part }, &at(0));
    }
    // It has no time yet, and gives way to the smaller one.
    let changed = last.clone().after(Event::Smaller { part: 5, size: small }, &at(0));
    assert_eq!((changed.parts().len(), changed.size()), (6, Some(small)));
    let begun = last.after(Event::Begin { part: 5 }, &at(0));
    let same = begun.clone().after(Event::Smaller { part: 5, size: small }, &at(5));
    assert!(same == begun.after(Event::Seen, &at(5)), "it would be the seventh");
    found(&same);
}

/// What comes of a practice is all that a session told needs, but for what is asked afterwards.
/// What is shown of an ended practice is the last part that took time.
#[test]
fn w5_after_a_stop_the_part_shown_is_the_last_that_was_practised() {
    let parts = [(10, 20), (30, 60), (30, 60)];
    let timer = timer(&parts, &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let timer = timer.after(Event::Enough { part: 0 }, &tick(1, 15, 15));
    let first = timer.clone().after(Event::Stop, &tick(1, 16, 16));
    assert_eq!((first.view(&tick(1, 17, 17)).part, first.size()), (0, timer.parts()[0].size()));
    let timer = timer.after(Event::Begin { part: 1 }, &tick(1, 20, 20));
    let second = timer.after(Event::Stop, &tick(1, 30, 30));
    assert_eq!(second.view(&tick(1, 31, 31)).part, 1);
}

#[test]
fn w8_a_session_can_be_told_from_it() {
    let at = |second: u64| tick(1, second, second as i64);
    let begun = timer(&[(10, 20), (30, 60)], &at(0)).after(Event::Begin { part: 0 }, &at(0));
    let main =
        begun.after(Event::Enough { part: 0 }, &at(15)).after(Event::Begin { part: 1 }, &at(20));
    let done = main.after(Event::Enough { part: 1 }, &at(65)).done().unwrap();
    let told = crate::companion::SessionTold {
        ended: done.ended(None),
        practice: done.practice,
        parts: done.parts,
        position: done.position,
        ratings: crate::diary::entry::Ratings::default(),
        signs: Vec::new(),
        note: None,
    };
    assert!(told.ended == crate::diary::entry::Ended::Finished);
    let parts: Vec<(u16, u32)> = told
        .parts
        .iter()
        .map(|part| (part.widest_diameter_tenths_mm.unwrap().get(), part.practised_seconds))
        .collect();
    assert_eq!(parts, [(200, 15), (220, 45)]);
}

#[test]
fn what_can_be_timed_is_checked_and_the_fixtures_can() {
    let bad = |parts: &[(u64, u64)]| {
        let part = |(least, most): &(u64, u64)| PlannedPart {
            widest_diameter_tenths_mm: None,
            least_millis: *least,
            most_millis: *most,
        };
        let parts = parts.iter().map(part).collect();
        Planned::new(Practice::Meditation, Position::Sitting, parts).err()
    };
    assert_eq!(bad(&[]), Some(PlanError::Parts));
    assert_eq!(bad(&[(1, 1); 7]), Some(PlanError::Parts));
    assert_eq!(bad(&[(2, 1)]), Some(PlanError::Time));
    assert_eq!(bad(&[(0, 0)]), Some(PlanError::Time));
    assert_eq!(bad(&[(0, 14_420_001)]), Some(PlanError::Time));
    assert_eq!(bad(&[(0, 14_420_000); 6]), None);
    let plan = include_bytes!("../../../../../fixtures/programmes/8-two-sizes-in-one-session.json");
    let (plan, _) = crate::programme::check::load(plan).unwrap();
    for step in &plan.steps {
        let planned = Planned::of_step(step).unwrap();
        assert_eq!(planned.parts.len(), step.parts.len());
        for (part, of) in planned.parts.iter().zip(&step.parts) {
            assert!(part.size().is_some());
            let seconds =
                |minutes: crate::programme::values::Minutes| u64::from(minutes.get()) * 60;
            assert_eq!(part.least_millis(), seconds(of.minutes.least) * 1000);
            assert_eq!(part.most_millis(), seconds(of.minutes.most) * 1000);
        }
    }
    for practice in &plan.practices {
        Planned::of_practice(practice, Position::Sitting).unwrap();
    }
}

#[test]
fn b6_a_paced_breathing_practice_is_over_at_its_last_breath() {
    use crate::practice::breathing::{Breathing, Pattern};
    use crate::programme::values::Minutes;
    let minutes = Minutes::new(5).unwrap();
    let breathing = Breathing::of_minutes(Pattern::EVEN, minutes);
    let planned =
        Planned::of_breathing(Practice::Breathing, Position::Sitting, &breathing, minutes).unwrap();
    // Whole from the least minutes on; from its last breath where more are asked for than it has.
    for (least, millis) in [(3, 180_000), (5, 300_000), (8, 300_000)] {
        let least = Minutes::new(least).unwrap();
        let planned =
            Planned::of_breathing(Practice::Breathing, Position::Sitting, &breathing, least);
        let part = planned.unwrap().parts[0];
        assert_eq!((part.least_millis(), part.most_millis()), (millis, 300_000));
    }
    let timer = Timer::new(planned, id(), &tick(1, 0, 0));
    let timer = timer.after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let whole = breathing.whole_millis();
    assert_eq!(timer.view(&tick_millis(1, whole - 1, 0)).state, State::Running);
    assert_eq!(timer.view(&tick_millis(1, whole, 0)).state, State::Finished);
}
