//! A summary looked through once: what counts now, the stretches, the sessions in the order they happened and
//! where each belongs. Decides nothing about how it leaves; the table, the flat lines and the FHIR bundle are
//! all made from this.

use std::collections::HashMap;

use chrono::NaiveDate;

use super::form::Summary;
use super::stretch::{self, Stretch, stretches};
use crate::diary::entry::{Content, EntryId, Session, Settled};
use crate::diary::resolve::{Counted, resolve};
use crate::diary::state::State;
use crate::progression::FoldError;

/// A session that counts.
pub(super) struct Sat<'a> {
    pub(super) row: Counted<'a>,
    pub(super) session: &'a Session,
    /// Index of the stretch in which it happened, of whatever practice it is.
    pub(super) during: Option<usize>,
    /// Whether its practice is that of the stretch's step.
    pub(super) of_step: bool,
    /// Whether practice, main size and position are that step's (F2).
    pub(super) on_step: bool,
}

/// The summary, looked through.
pub(super) struct Looked<'a> {
    pub(super) summary: &'a Summary,
    /// Entries that count, in order of place, left-out ones too.
    pub(super) counted: Vec<Counted<'a>>,
    pub(super) stretches: Vec<Stretch>,
    /// Sessions, in the order they happened, ties by place.
    pub(super) sat: Vec<Sat<'a>>,
    /// The newest answer about each session.
    pub(super) settled: HashMap<EntryId, Settled>,
    /// Spans of days off, both ends included, that do not overlap.
    pub(super) off: Vec<(NaiveDate, NaiveDate)>,
}

impl<'a> Looked<'a> {
    pub(super) fn through(summary: &'a Summary) -> Result<Self, FoldError> {
        let counted = resolve(&summary.entries);
        let stretches = stretches(&counted, summary.begins())?;
        let mut sat: Vec<Sat<'a>> = Vec::new();
        let mut settled = HashMap::new();
        for row in counted.iter().filter(|row| !row.struck) {
            match row.content {
                Content::Session(session) => sat.push(sit(row, session, &stretches)),
                Content::Settled { of, answer } => {
                    settled.insert(*of, *answer);
                }
                _ => {}
            }
        }
        sat.sort_by_key(|sat| (sat.row.happened.millis(), sat.row.place));
        let state = State::from_history(&summary.entries)?;
        let off = state.rule().time_off().map(|off| (off.from, off.to)).collect();
        Ok(Self { summary, counted, stretches, sat, settled, off })
    }

    /// The entries that count and are not left out, in order of place.
    pub(super) fn standing(&self) -> impl DoubleEndedIterator<Item = &Counted<'a>> {
        self.counted.iter().filter(|row| !row.struck)
    }

    /// The day the summary was made, or the last day it shows.
    pub(super) fn last_day(&self) -> NaiveDate {
        let made = self.summary.made.day();
        self.summary.narrowed.to.map_or(made, |to| to.min(made))
    }

    /// The days of a stretch that are shown, both included. A day on which two steps meet is the later one's.
    pub(super) fn shown(&self, stretch: &Stretch) -> Option<(NaiveDate, NaiveDate)> {
        let began = stretch.began.day();
        let first = self.summary.narrowed.from.map_or(began, |from| from.max(began));
        let last = match &stretch.ended {
            Some(ended) => ended.day().pred_opt()?.max(began),
            None => self.last_day(),
        };
        let last = last.min(self.last_day());
        (first <= last).then_some((first, last))
    }
}

fn sit<'a>(row: &Counted<'a>, session: &'a Session, stretches: &[Stretch]) -> Sat<'a> {
    let found = stretch::at(stretches, &row.happened);
    let during = found.and_then(|on| stretches.iter().position(|one| std::ptr::eq(one, on)));
    let of_step = found.is_some_and(|on| on.step.practice == session.practice);
    let on_step = of_step
        && found.is_some_and(|on| {
            on.step.main_size() == session.main_size() && on.step.position == session.position
        });
    Sat { row: row.clone(), session, during, of_step, on_step }
}
