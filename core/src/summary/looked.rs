//! A summary looked through once: what counts now, the stretches, the sessions in the order they happened and
//! where each belongs. Decides nothing about how it leaves or how it is said; the table, the flat lines, the FHIR
//! bundle, the letter and the clinician's reading are all made from this.

use std::collections::HashMap;

use chrono::NaiveDate;

use super::form::Summary;
use super::stretch::{self, Stretch, stretches};
use crate::diary::entry::{Content, EntryId, Session, Settled};
use crate::diary::resolve::{Counted, resolve};
use crate::diary::state::State;
use crate::progression::FoldError;

/// A session that counts.
#[derive(Clone)]
pub(crate) struct Sat<'a> {
    pub(crate) row: Counted<'a>,
    pub(crate) session: &'a Session,
    /// Index of the stretch in which it happened, of whatever practice it is.
    pub(crate) during: Option<usize>,
    /// Whether its practice is that of the stretch's step.
    pub(crate) of_step: bool,
    /// Whether practice, main size and position are that step's (F2).
    pub(crate) on_step: bool,
}

impl Sat<'_> {
    /// Index of the stretch it happened in, where it is of that step's practice.
    pub(crate) fn stretch(&self) -> Option<usize> {
        self.during.filter(|_| self.of_step)
    }
}

/// The summary, looked through.
pub(crate) struct Looked<'a> {
    pub(crate) summary: &'a Summary,
    /// Entries that count, in order of place, left-out ones too.
    pub(crate) counted: Vec<Counted<'a>>,
    pub(crate) stretches: Vec<Stretch>,
    /// Sessions, in the order they happened, ties by place.
    pub(crate) sat: Vec<Sat<'a>>,
    /// The newest answer about each session.
    pub(crate) settled: HashMap<EntryId, Settled>,
    /// Spans of days off, both ends included, that do not overlap.
    pub(crate) off: Vec<(NaiveDate, NaiveDate)>,
    /// The folded entries, for what needs the programme.
    pub(crate) state: State,
}

impl<'a> Looked<'a> {
    pub(crate) fn through(summary: &'a Summary) -> Result<Self, FoldError> {
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
        Ok(Self { summary, counted, stretches, sat, settled, off, state })
    }

    /// The entries that count and are not left out, in order of place.
    pub(crate) fn standing(&self) -> impl DoubleEndedIterator<Item = &Counted<'a>> {
        self.counted.iter().filter(|row| !row.struck)
    }

    /// The day the summary was made, or the last day it shows.
    pub(crate) fn last_day(&self) -> NaiveDate {
        let made = self.summary.made.day();
        self.summary.narrowed.to.map_or(made, |to| to.min(made))
    }

    /// The days of a stretch that are shown, both included. A day on which two steps meet is the later one's.
    pub(crate) fn shown(&self, stretch: &Stretch) -> Option<(NaiveDate, NaiveDate)> {
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
