//! Measuring several sides by turns in one run, so that a slow minute of the machine slows all of
//! them alike and a ratio stays a ratio. The order is drawn anew each round: what one side leaves for
//! the disk to do must not always be paid by the same next one.

use frond_core::ports::sim::SplitMix;
use std::time::{Duration, Instant};

/// One thing to measure.
pub struct Side<'a> {
    pub name: &'a str,
    pub run: Box<dyn FnMut() + 'a>,
}

impl<'a> Side<'a> {
    pub fn new(name: &'a str, run: impl FnMut() + 'a) -> Self {
        Self { name, run: Box::new(run) }
    }
}

/// What was measured for one side.
pub struct Measured {
    pub name: String,
    sorted: Vec<Duration>,
}

impl Measured {
    fn at(&self, share: f64) -> Duration {
        let last = self.sorted.len().saturating_sub(1);
        self.sorted[(last as f64 * share).round() as usize]
    }

    pub fn median(&self) -> Duration {
        self.at(0.5)
    }

    pub fn p99(&self) -> Duration {
        self.at(0.99)
    }
}

/// Runs every side `rounds` times, in a drawn order, after a few rounds that do not count. Prints a table with the ratio of medians to the first side.
pub fn by_turns(title: &str, rounds: usize, mut sides: Vec<Side<'_>>) -> Vec<Measured> {
    let mut times = vec![Vec::with_capacity(rounds); sides.len()];
    let warm = rounds / 20;
    let mut rng = SplitMix::new(1);
    let mut order: Vec<usize> = (0..sides.len()).collect();
    for round in 0..warm + rounds {
        for place in (1..order.len()).rev() {
            let other = usize::try_from(rng.below(place as u64 + 1)).unwrap();
            order.swap(place, other);
        }
        for which in order.iter().copied() {
            #[allow(clippy::disallowed_methods, reason = "elapsed time is what is measured")]
            let begun = Instant::now();
            (sides[which].run)();
            let took = begun.elapsed();
            if round >= warm {
                times[which].push(took);
            }
        }
    }
    let measured: Vec<Measured> = sides
        .iter()
        .zip(times)
        .map(|(side, mut sorted)| {
            sorted.sort();
            Measured { name: side.name.to_owned(), sorted }
        })
        .collect();
    println!("\n{title} ({rounds} rounds by turns)");
    println!("{:<52} {:>12} {:>12} {:>8}", "", "median", "p99", "ratio");
    let first = measured[0].median().as_secs_f64();
    for m in &measured {
        println!(
            "{:<52} {:>9.1} us {:>9.1} us {:>8.2}",
            m.name,
            m.median().as_secs_f64() * 1e6,
            m.p99().as_secs_f64() * 1e6,
            m.median().as_secs_f64() / first,
        );
    }
    measured
}
