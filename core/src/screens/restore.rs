//! What a copy holds and what restoring it would do, before anything is replaced.

use serde::Serialize;

use super::{Action, Does, plain};
use crate::moment::Stamp;
use crate::words::Words;

/// What a copy holds.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RestoreScreen {
    /// Heading.
    pub title: String,
    /// What it holds, and what it replaces.
    pub says: Vec<String>,
    /// What is asked afterwards.
    pub then: Vec<String>,
    /// Restoring it.
    pub next: Action,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// What the screen is made from.
pub(crate) struct Restoring {
    pub(crate) made: Option<Stamp>,
    pub(crate) entries: u64,
    pub(crate) newest: Option<Stamp>,
    pub(crate) missing: u64,
    /// Whether it is of the diary that lies in that place, if one lies there.
    pub(crate) same_diary: bool,
    /// How many entries fewer it has than the diary in that place; `None` where none opens there.
    pub(crate) fewer: Option<u64>,
    pub(crate) now: Stamp,
}

impl RestoreScreen {
    pub(crate) fn new(words: &Words, of: &Restoring) -> Self {
        let whole = |number: u64| plain::whole(i64::try_from(number).unwrap_or(i64::MAX));
        let mut says = Vec::new();
        if let Some(made) = of.made {
            let when = plain::when(words, made, of.now).into();
            says.push(words.text("restore-made", &[("when", when)]));
        }
        says.push(words.text("restore-entries", &[("count", whole(of.entries))]));
        if let Some(newest) = of.newest {
            let when = plain::when(words, newest, of.now).into();
            says.push(words.text("restore-newest", &[("when", when)]));
        }
        if of.missing > 0 {
            says.push(words.text("restore-missing", &[("count", whole(of.missing))]));
        }
        if !of.same_diary {
            says.push(words.text("restore-other-diary", &[]));
        }
        if let Some(fewer) = of.fewer {
            says.push(words.text("restore-replaces", &[]));
            if fewer > 0 {
                says.push(words.text("restore-fewer", &[("count", whole(fewer))]));
            }
        }
        Self {
            title: words.text("restore-title", &[]),
            says,
            then: vec![words.text("restore-asks-step", &[]), words.text("restore-no-step-up", &[])],
            next: Action::new(words.text("action-restore-this", &[]), Does::RestoreNow),
            actions: vec![Action::new(words.text("action-leave-as-is", &[]), Does::Today)],
        }
    }
}
