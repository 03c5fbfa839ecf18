//! What the parts are made from, found once.

use std::collections::HashMap;

use chrono::NaiveDate;

use super::{Part, Point, ReadingPart};
use crate::diary::entry::{Content, EntryId, Session, Settled};
use crate::diary::resolve::{Counted, resolve};
use crate::diary::state::State;
use crate::programme::plan::Programme;
use crate::programme::values::Practice;
use crate::progression::FoldError;
use crate::summary::Summary;
use crate::summary::stretch::{Stretch, at, stretches};
use crate::words::Words;

/// A session that counts.
#[derive(Clone)]
pub(in crate::screens) struct Sat<'a> {
    pub(in crate::screens) row: Counted<'a>,
    pub(in crate::screens) session: &'a Session,
    /// Index of the stretch it happened in, where it is of that step's practice.
    pub(in crate::screens) stretch: Option<usize>,
    /// Whether practice, main size and position are that step's (F2).
    pub(in crate::screens) on_step: bool,
}

/// The summary, looked through once.
pub(in crate::screens) struct Gathered<'a> {
    pub(in crate::screens) words: &'a Words,
    pub(in crate::screens) summary: &'a Summary,
    /// Entries that count, in order of place, left-out ones too.
    pub(in crate::screens) counted: Vec<Counted<'a>>,
    pub(in crate::screens) stretches: Vec<Stretch>,
    /// Sessions that count, in order of happening.
    pub(in crate::screens) sat: Vec<Sat<'a>>,
    pub(in crate::screens) settled: HashMap<EntryId, Settled>,
    /// The folded entries, for words that need the programme.
    pub(in crate::screens) state: State,
}

impl<'a> Gathered<'a> {
    pub(in crate::screens) fn of(
        summary: &'a Summary,
        words: &'a Words,
    ) -> Result<Self, FoldError> {
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
        Ok(Self { words, summary, counted, stretches, sat, settled, state })
    }

    /// The programme in force.
    pub(in crate::screens) fn programme(&self) -> Option<&Programme> {
        self.state.rule().programme()
    }

    /// The day the summary was made, or the last day it shows.
    pub(in crate::screens) fn last_day(&self) -> NaiveDate {
        let made = self.summary.made.day();
        self.summary.narrowed.to.map_or(made, |to| to.min(made))
    }

    /// The entries that count, in order of place.
    pub(in crate::screens) fn standing(&self) -> impl DoubleEndedIterator<Item = &Counted<'a>> {
        self.counted.iter().filter(|row| !row.struck)
    }

    /// Sessions of a practice that is not the ladder's.
    pub(in crate::screens) fn of_practice(&self, practice: &Practice) -> Vec<&Sat<'a>> {
        self.sat.iter().filter(|sat| sat.session.practice == *practice).collect()
    }

    /// A part, where there is something to say.
    pub(in crate::screens) fn part(
        &self,
        part: Part,
        heading: String,
        points: Vec<Point>,
    ) -> Option<ReadingPart> {
        (!points.is_empty()).then_some(ReadingPart { part, heading, points })
    }
}

fn sit<'a>(row: &Counted<'a>, session: &'a Session, stretches: &[Stretch]) -> Sat<'a> {
    let found = at(stretches, &row.happened).filter(|on| on.step.practice == session.practice);
    let on_step = found.is_some_and(|on| {
        on.step.main_size() == session.main_size() && on.step.position == session.position
    });
    let stretch = found.and_then(|on| stretches.iter().position(|one| std::ptr::eq(one, on)));
    Sat { row: row.clone(), session, stretch, on_step }
}
