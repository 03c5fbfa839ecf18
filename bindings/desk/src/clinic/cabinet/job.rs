//! Long work on many summaries, beside the pages: how far it is and what came of it. Decides nothing about the
//! work itself.

use std::sync::{Mutex, MutexGuard, PoisonError};

use super::arrival::{Refused, Taken};

/// What is being done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum JobKind {
    /// Files of the cabinet are read anew.
    Reading,
    /// Files come in.
    Import,
}

/// A file that was refused, by its own name made harmless.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Refusal {
    /// Its name; `None` where nothing was left of it.
    pub(crate) name: Option<String>,
    /// Why.
    pub(crate) why: Refused,
}

/// How far it is.
#[derive(Clone, Debug)]
pub(crate) struct Progress {
    /// What is being done.
    pub(crate) kind: JobKind,
    /// How many there are.
    pub(crate) total: usize,
    /// How many are done.
    pub(crate) done: usize,
    /// Whether it ended.
    pub(crate) ended: bool,
    /// New summaries.
    pub(crate) new: usize,
    /// Older ones than were there.
    pub(crate) older: usize,
    /// There already.
    pub(crate) known: usize,
    /// Refused, the first of them.
    pub(crate) refused: Vec<Refusal>,
    /// Refused beyond those.
    pub(crate) refused_more: usize,
    /// What was taken, where it was one alone.
    pub(crate) one: Option<Taken>,
    /// The folder could not be read, or the pins not be kept.
    pub(crate) failed: bool,
}

/// The most refusals that are told one by one.
const TOLD: usize = 200;

/// A piece of long work.
pub(crate) struct Job(Mutex<Progress>);

impl Job {
    /// At its beginning.
    pub(crate) fn new(kind: JobKind, total: usize) -> Self {
        Self(Mutex::new(Progress {
            kind,
            total,
            done: 0,
            ended: false,
            new: 0,
            older: 0,
            known: 0,
            refused: Vec::new(),
            refused_more: 0,
            one: None,
            failed: false,
        }))
    }

    fn now(&self) -> MutexGuard<'_, Progress> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How far it is.
    pub(crate) fn progress(&self) -> Progress {
        self.now().clone()
    }

    /// One more is done.
    pub(crate) fn step(&self) {
        self.now().done += 1;
    }

    /// One more file came in or was refused.
    pub(crate) fn came(&self, name: Option<String>, taken: Result<Taken, Refused>) {
        let mut now = self.now();
        now.done += 1;
        match taken {
            Ok(taken) => {
                match taken {
                    Taken::New(_) => now.new += 1,
                    Taken::Older(_) => now.older += 1,
                    Taken::Known(_) => now.known += 1,
                }
                now.one = (now.new + now.older + now.known == 1).then_some(taken);
            }
            Err(why) if now.refused.len() < TOLD => now.refused.push(Refusal { name, why }),
            Err(_) => now.refused_more += 1,
        }
    }

    /// It could not go on.
    pub(crate) fn fail(&self) {
        self.now().failed = true;
    }

    /// It ended.
    pub(crate) fn end(&self) {
        self.now().ended = true;
    }
}

/// Ends a job whatever happens to the thread that does it.
pub(super) struct Ends<'a>(pub(super) &'a Job);

impl Drop for Ends<'_> {
    fn drop(&mut self) {
        if std::thread::panicking() {
            self.0.fail();
        }
        self.0.end();
    }
}
