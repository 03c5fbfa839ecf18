//! Who gives way to a newcomer. The times are given, so nothing here depends on how fast a machine is.

use std::future::pending;
use std::time::Duration;

use tokio::time::Instant;

use super::{BEGIN_WITHIN, Held, Listed};

/// Connections that came at these times, the first one first; nothing is asked on any of them.
struct Room {
    held: Held,
    tasks: Vec<tokio::task::JoinHandle<()>>,
}

impl Room {
    fn of(came: &[Instant]) -> Self {
        let held = Held::default();
        let tasks: Vec<_> = came.iter().map(|_| tokio::spawn(pending())).collect();
        for (&came, task) in came.iter().zip(&tasks) {
            held.all().push(Listed { own: held.newcomer(), came, task: task.abort_handle() });
        }
        Self { held, tasks }
    }

    /// Which ones are there yet, once somebody was asked to give way.
    async fn after(&self, now: Instant) -> Vec<usize> {
        self.held.give_way(now);
        // Whoever was ended is gone once its task had its turn.
        for _ in &self.tasks {
            tokio::task::yield_now().await;
        }
        let there = self.tasks.iter().enumerate().filter(|(_, task)| !task.is_finished());
        there.map(|(number, _)| number).collect()
    }
}

fn run(what: impl Future<Output = ()>) {
    let runtime = tokio::runtime::Builder::new_current_thread().build();
    runtime.expect("a runtime").block_on(what);
}

#[test]
fn the_one_that_was_left_longest_goes_first() {
    run(async {
        let first = Instant::now();
        let room = Room::of(&[first; 3]);
        let later = first + BEGIN_WITHIN;
        // On the first one something was answered since.
        room.held.all()[0].own.use_now();
        assert_eq!(room.after(later).await, [0, 2]);
        assert_eq!(room.after(later).await, [0]);
        assert_eq!(room.after(later).await, [0_usize; 0]);
    });
}

#[test]
fn whoever_has_just_come_stays_however_many_come_after() {
    run(async {
        let first = Instant::now();
        let soon = first + BEGIN_WITHIN - Duration::from_millis(1);
        let mut came = vec![first];
        came.resize(500, soon);
        let room = Room::of(&came);
        assert_eq!(room.after(soon).await.len(), 500);
        // Its time to begin is over, and theirs is not.
        assert_eq!(room.after(first + BEGIN_WITHIN).await, (1..500).collect::<Vec<_>>());
        assert_eq!(room.after(first + BEGIN_WITHIN).await.len(), 499);
    });
}

#[test]
fn whoever_is_being_answered_stays() {
    run(async {
        let first = Instant::now();
        let room = Room::of(&[first; 2]);
        let later = first + BEGIN_WITHIN;
        let answering = room.held.all()[0].own.clone().answering();
        assert_eq!(room.after(later).await, [0]);
        assert_eq!(room.after(later).await, [0]);
        drop(answering);
        assert_eq!(room.after(later).await, [0_usize; 0]);
    });
}
