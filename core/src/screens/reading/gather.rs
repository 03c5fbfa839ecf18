//! What the parts are made from: the summary looked through, and the words to say it in.

use std::ops::Deref;

use super::{Part, Point, ReadingPart};
use crate::programme::plan::Programme;
use crate::programme::values::Practice;
use crate::progression::FoldError;
use crate::summary::Summary;
use crate::summary::looked::Looked;
pub(in crate::screens) use crate::summary::looked::Sat;
use crate::words::Words;

/// The summary, looked through once. What counts, the stretches and the sessions are read straight from it.
pub(in crate::screens) struct Gathered<'a> {
    pub(in crate::screens) words: &'a Words,
    looked: Looked<'a>,
}

impl<'a> Deref for Gathered<'a> {
    type Target = Looked<'a>;

    fn deref(&self) -> &Looked<'a> {
        &self.looked
    }
}

impl<'a> Gathered<'a> {
    pub(in crate::screens) fn of(
        summary: &'a Summary,
        words: &'a Words,
    ) -> Result<Self, FoldError> {
        Ok(Self { words, looked: Looked::through(summary)? })
    }

    /// The programme in force.
    pub(in crate::screens) fn programme(&self) -> Option<&Programme> {
        self.state.rule().programme()
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
