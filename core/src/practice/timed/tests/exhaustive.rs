//! Every sequence of events, crashes and restarts up to a length, against the model.

use super::model::Model;
use super::*;

const PARTS: &[(u64, u64)] = &[(6, 20), (12, 40)];

/// What happens next. A crash is followed by going on.
#[derive(Clone, Copy)]
enum Next {
    Happens(fn(usize) -> Event),
    Crash,
    Restart,
}

const NEXT: [Next; 9] = [
    Next::Happens(|part| Event::Begin { part }),
    Next::Happens(|_| Event::Pause),
    Next::Happens(|_| Event::GoOn),
    Next::Happens(|part| Event::Enough { part }),
    Next::Happens(|part| Event::Smaller {
        part,
        size: Size::new(if part == 0 { 190 } else { 210 }).unwrap(),
    }),
    Next::Happens(|_| Event::Stop),
    Next::Happens(|_| Event::Seen),
    Next::Crash,
    Next::Restart,
];

#[derive(Clone)]
struct Life {
    timer: Timer,
    model: Model,
    boot: u64,
    up: u64,
    wall: i64,
}

impl Life {
    fn new() -> Self {
        let timer = timer(PARTS, &tick(1, 1000, 0));
        Self { timer, model: Model::new(PARTS), boot: 1, up: 1000, wall: 0 }
    }

    fn goes_on(&self, next: Next, seconds: u64) -> Self {
        let mut life = self.clone();
        life.up += seconds;
        life.wall += seconds as i64;
        match next {
            Next::Happens(event) => {
                let at = tick(life.boot, life.up, life.wall);
                let event = event(life.timer.view(&at).part);
                life.timer = life.timer.after(event, &at);
                life.model.happens(event, seconds);
            }
            Next::Crash => {
                life.timer = found(&life.timer).go_on(&tick(life.boot, life.up, life.wall));
                life.model.crashes(seconds, true);
            }
            Next::Restart => {
                // The new running time may well look as if the old one had gone on.
                let up = if life.boot % 2 == 1 { life.up } else { life.up / 2 };
                (life.boot, life.up) = (life.boot + 1, up);
                life.timer = found(&life.timer).go_on(&tick(life.boot, life.up, life.wall));
                life.model.crashes(seconds, false);
            }
        }
        life
    }

    fn agrees(&self, before: &Self) {
        let view = self.timer.view(&tick(self.boot, self.up, self.wall));
        let state = format!("{:?}", view.state).to_lowercase();
        assert_eq!(
            (state.as_str(), view.total_millis),
            (self.model.stage(), self.model.total() * 1000)
        );
        assert!(self.model.total() <= self.model.real, "counted more than was practised");
        assert!(self.model.total() >= before.model.total(), "counted time fell");
        assert_eq!(self.timer.done().is_some(), self.model.over.is_some());
        if let Some(done) = self.timer.done() {
            let counted: Vec<u64> =
                self.model.counted.iter().copied().filter(|seconds| *seconds > 0).collect();
            let told: Vec<u64> = seconds(&done).into_iter().map(u64::from).collect();
            assert_eq!(told, if counted.is_empty() { vec![0] } else { counted });
        }
    }
}

/// Every sequence of `left` further events; each takes each of the times that `times` gives for it.
fn walk(life: &Life, left: usize, times: fn(usize) -> &'static [u64], seen: &mut u64) {
    if left == 0 {
        return;
    }
    for next in NEXT {
        for seconds in times(left) {
            let after = life.goes_on(next, *seconds);
            after.agrees(life);
            *seen += 1;
            // Stopped is final: one event more shows it, and nothing follows.
            let left = if life.model.stage() == "stopped" { 0 } else { left - 1 };
            walk(&after, left, times, seen);
        }
    }
}

#[test]
fn w4_w6_w7_w10_every_sequence_of_seven_events_agrees_with_the_model() {
    let mut seen = 0;
    let times = |left: usize| -> &'static [u64] {
        match left {
            7 => &[3],
            6 => &[5],
            5 => &[16],
            4 => &[7],
            3 => &[15],
            2 => &[30],
            _ => &[9],
        }
    };
    walk(&Life::new(), 7, times, &mut seen);
    println!("{seen} steps");
    assert!(seen > 1_000_000);
}

#[test]
fn w4_w6_w7_w10_every_sequence_of_five_events_with_long_and_no_time_between() {
    let mut seen = 0;
    walk(&Life::new(), 5, |_| &[0, 18], &mut seen);
    println!("{seen} steps");
    assert!(seen > 1_000_000);
}
