//! A rule tried over every diary of the cabinet: how far it is, and what was found. Nothing of it is kept on disk.

use std::sync::Mutex;

use frond_core::programme::rule::Rule;
use frond_core::screens::RuleVerdict;
use frond_core::summary::{DiaryId, SummaryId};

use super::shelf::held;
use super::{Cabinet, arrival};
use crate::clinic::Clinic;

/// How many threads try it.
const THREADS: usize = 2;

/// A diary whose newest summary is looked at, by its nickname.
#[derive(Clone)]
pub(crate) struct Newest {
    pub(crate) diary: DiaryId,
    pub(crate) summary: SummaryId,
    pub(crate) name: Option<String>,
}

/// What was found so far.
#[derive(Clone, Default)]
pub(crate) struct Found {
    /// How many there are.
    pub(crate) total: usize,
    /// How many were looked at.
    pub(crate) done: usize,
    /// Whether it ended.
    pub(crate) ended: bool,
    /// What each rule says of each diary.
    pub(crate) verdicts: Vec<(DiaryId, Option<String>, RuleVerdict)>,
    /// Diaries that could not be replayed.
    pub(crate) left_out: usize,
}

/// A rule being tried.
pub(crate) struct Trial(Mutex<Found>);

impl Trial {
    /// At its beginning.
    pub(super) fn new(total: usize) -> Self {
        Self(Mutex::new(Found { total, ..Found::default() }))
    }

    /// What was found so far.
    pub(crate) fn found(&self) -> Found {
        held(&self.0).clone()
    }

    /// Another takes its place.
    pub(super) fn give_up(&self) {
        held(&self.0).ended = true;
    }
}

/// Ends a trial whatever happens to its threads.
struct Ends<'a>(&'a Trial);

impl Drop for Ends<'_> {
    fn drop(&mut self) {
        self.0.give_up();
    }
}

pub(super) fn try_on(
    clinic: &Clinic,
    cabinet: &Mutex<Cabinet>,
    rule: &Rule,
    diaries: &[Newest],
    trial: &Trial,
) {
    let ends = Ends(trial);
    let next = std::sync::atomic::AtomicUsize::new(0);
    std::thread::scope(|scope| {
        for _ in 0..THREADS {
            scope.spawn(|| {
                loop {
                    let index = next.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
                    let Some(one) = diaries.get(index) else { break };
                    if held(&trial.0).ended {
                        break;
                    }
                    let verdict = verdict(clinic, cabinet, rule, one);
                    let mut found = held(&trial.0);
                    found.done += 1;
                    match verdict {
                        Some(verdict) => {
                            found.verdicts.push((one.diary, one.name.clone(), verdict))
                        }
                        None => found.left_out += 1,
                    }
                }
            });
        }
    });
    drop(ends);
}

fn verdict(
    clinic: &Clinic,
    cabinet: &Mutex<Cabinet>,
    rule: &Rule,
    one: &Newest,
) -> Option<RuleVerdict> {
    let opening = held(cabinet).to_open(one.summary, clinic.keys.open_with())?;
    let arrival::Arrived { received, .. } = opening.arrived().ok()?;
    RuleVerdict::of(&received.summary, rule).ok()?
}
