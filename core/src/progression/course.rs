//! Decides what is in force: the programme, the step and when it began (F1, S4), whether it is
//! confirmed, and what the person said beside her sessions: clearings, answers, days off, staying.
//!
//! It is built by taking the entries that count in order of their places, so that after a correction
//! or a strike it can be built again.

use std::sync::Arc;

use serde::{Deserialize, Serialize};

use super::line::{Day, Key, RawId, put_by};
use super::log::{Tale, Version};
use super::signs::Signs;
use crate::diary::entry::Place;
use crate::moment::Stamp;
use crate::programme::plan::Programme;
use crate::programme::values::StepId;

/// The step in use.
#[derive(Clone, Serialize, Deserialize)]
pub(super) struct Current {
    pub id: StepId,
    /// On the ladder of the programme in force, from 0.
    pub index: usize,
    /// When it began, and the place of the entry that began it.
    pub began: Key,
    pub day: Day,
    pub at: Stamp,
    /// Reached by a change to an earlier step.
    pub by_going_back: bool,
}

/// A clearing that counts.
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct Cleared {
    pub key: Key,
    pub day: Day,
    pub closes: bool,
}

/// An answer to "would you like to try the next step?".
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct Answered {
    pub key: Key,
    pub id: RawId,
    pub yes: bool,
}

/// A change to an earlier step.
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct WentBack {
    pub key: Key,
    pub day: Day,
    pub id: RawId,
}

/// What is in force.
#[derive(Clone, Default, Serialize, Deserialize)]
pub(super) struct Course {
    /// The text of the programme in force.
    pub text: Option<Arc<str>>,
    /// Place of its acceptance.
    pub accepted: Place,
    pub first_accepted: Option<Day>,
    pub step: Option<Current>,
    /// Place of the latest entry that confirms the step in use.
    pub confirmed: Place,
    /// Place of the latest acceptance.
    pub asked: Place,
    /// Place and content of the latest "stay here for now".
    pub stay: Option<(Place, bool)>,
    pub time_confirmed: Place,
    pub cleared: Vec<Cleared>,
    /// Of the clearings that close a pause: the last by place, the latest time and the latest day.
    closing: Option<Key>,
    closed_until: Option<i64>,
    pub closed_day: Option<Day>,
    pub answers: Vec<Answered>,
    pub backs: Vec<WentBack>,
    /// Days off, both ends included, merged and in order.
    pub off: Vec<(Day, Day)>,
    /// Everything but sessions that T5 lets go by place: step namings, acceptances, clearings.
    pub milestones: Vec<Key>,
    /// The latest time in `milestones`, in milliseconds since 1970.
    pub last_milestone: i64,
}

impl Course {
    /// Takes one entry that counts. `plan` is the programme in force, replaced by an acceptance.
    pub(super) fn take(
        &mut self,
        (id, place): (RawId, Place),
        version: &Version,
        plan: &mut Option<Arc<Programme>>,
        signs: &mut Signs,
    ) {
        let key = Key { t: version.when.t, place };
        let day = version.when.day;
        match &version.tale {
            Tale::StepChange { to, at } => {
                let Some(index) = plan.as_ref().and_then(|plan| plan.step_index(to)) else {
                    return;
                };
                self.milestone(key);
                self.confirmed = place;
                let before = self.step.as_ref().map(|step| step.index);
                if before == Some(index) {
                    return;
                }
                let back = before.is_some_and(|before| index < before);
                if back {
                    self.backs.push(WentBack { key, day, id });
                }
                self.step = Some(Current {
                    id: to.clone(),
                    index,
                    began: key,
                    day,
                    at: *at,
                    by_going_back: back,
                });
            }
            Tale::Confirmed { step } => {
                if self.step.as_ref().is_some_and(|current| current.id == *step) {
                    self.confirmed = place;
                }
            }
            Tale::Accepted { text, at, plan: Some(new) } => {
                self.milestone(key);
                self.accept(key, day, at, text, plan.as_deref(), new);
                if let Some(old) = plan.as_deref()
                    && old.id == new.id
                    && new.revision > old.revision
                {
                    for seen in &new.signs_seen {
                        signs.close(super::signs::raw(seen), place, day);
                    }
                }
                *plan = Some(Arc::clone(new));
            }
            Tale::Clearing { signs: named, closes } => {
                self.milestone(key);
                for sign in named {
                    signs.close(*sign, place, day);
                }
                self.cleared.push(Cleared { key, day, closes: *closes });
                if *closes {
                    self.closing = Some(key);
                    self.closed_until = self.closed_until.max(Some(key.t));
                    self.closed_day = self.closed_day.max(Some(day));
                }
            }
            Tale::Ready { yes } => {
                put_by(&mut self.answers, Answered { key, id, yes: *yes }, |answer| answer.key);
            }
            Tale::Stay { stay } => self.stay = Some((place, *stay)),
            Tale::Off { from, to } => self.take_off(*from, *to),
            Tale::TimeConfirmed => self.time_confirmed = place,
            // A programme that could not be read never gets here: writing it is refused.
            Tale::Session { .. } | Tale::Plain | Tale::Accepted { plan: None, .. } => {}
        }
    }

    fn milestone(&mut self, key: Key) {
        self.last_milestone = self.last_milestone.max(key.t);
        self.milestones.push(key);
    }

    /// S4: a step goes on over a revision if nothing of its work changed, else the ladder begins anew.
    fn accept(
        &mut self,
        key: Key,
        day: Day,
        at: &Stamp,
        text: &Arc<str>,
        old: Option<&Programme>,
        new: &Programme,
    ) {
        self.accepted = key.place;
        self.asked = key.place;
        self.first_accepted.get_or_insert(day);
        self.text = Some(Arc::clone(text));
        let goes_on = self.step.as_ref().zip(old).and_then(|(current, old)| {
            let index = new.step_index(&current.id)?;
            let same =
                old.id == new.id && old.steps.get(current.index)?.same_work(new.steps.get(index)?);
            same.then_some(index)
        });
        if let (Some(index), Some(current)) = (goes_on, self.step.as_mut()) {
            current.index = index;
            return;
        }
        let first = new.start_at.as_ref().and_then(|id| new.step_index(id)).unwrap_or_default();
        self.step = new.steps.get(first).map(|step| Current {
            id: step.id.clone(),
            index: first,
            began: key,
            day,
            at: *at,
            by_going_back: false,
        });
    }

    fn take_off(&mut self, from: Day, to: Day) {
        if from > to {
            return;
        }
        self.off.push((from, to));
        self.off.sort_unstable();
        let mut merged: Vec<(Day, Day)> = Vec::with_capacity(self.off.len());
        for &(from, to) in &self.off {
            match merged.last_mut() {
                Some(last) if from <= last.1.saturating_add(1) => last.1 = last.1.max(to),
                _ => merged.push((from, to)),
            }
        }
        self.off = merged;
    }

    /// Days off from `first` to `last`, both included (T2).
    pub(super) fn days_off(&self, first: Day, last: Day) -> i32 {
        self.off
            .iter()
            .map(|&(from, to)| {
                let (from, to) = (from.max(first), to.min(last));
                if from > to { 0 } else { to - from + 1 }
            })
            .sum()
    }

    /// The clearings that close a pause.
    pub(super) fn closings(&self) -> impl Iterator<Item = &Cleared> {
        self.cleared.iter().filter(|cleared| cleared.closes)
    }

    /// Place of the last clearing that closes a pause; 0 if there is none.
    pub(super) fn last_closing(&self) -> Place {
        self.closing.map_or(0, |last| last.place)
    }

    /// Place of the last clearing of any kind; 0 if there is none.
    pub(super) fn last_clearing(&self) -> Place {
        self.cleared.last().map_or(0, |last| last.key.place)
    }

    /// F6: happened before a clearing and written before it.
    pub(super) fn cleared_away(&self, key: Key) -> bool {
        // Clearings stand in the order of their places, and the last one decides nearly always.
        let written_later = |cleared: &&Cleared| cleared.key.place > key.place;
        self.cleared
            .iter()
            .rev()
            .take_while(written_later)
            .any(|cleared| cleared.closes && cleared.key.t >= key.t)
    }

    /// F5: the earliest time from which something counts for going up, by the clearings.
    pub(super) fn closed_until(&self) -> i64 {
        self.closed_until.unwrap_or(i64::MIN)
    }

    /// Whether "stay here for now" holds: said, not taken back, and the step not changed since.
    pub(super) fn stays(&self) -> bool {
        let began = self.step.as_ref().map_or(0, |step| step.began.place);
        matches!(self.stay, Some((place, true)) if place > began)
    }
}
