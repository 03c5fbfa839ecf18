//! What was practised beside what was planned, in counts.

use chrono::NaiveDate;
use serde::Serialize;

use crate::programme::plan::Schedule;

/// Practised and planned over a span of days.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Practised {
    /// Sessions, of any ending.
    pub sessions: usize,
    /// Distinct days with a session.
    pub days: usize,
    /// Days of the span, both ends included.
    pub span: u32,
    /// Days of it that were off.
    pub off: u32,
    /// Times planned at least over the days that were not off, part of a time left out.
    pub planned_least: u32,
    /// Times planned at most, part of a time counted as one.
    pub planned_most: u32,
}

impl Practised {
    /// Of the days of sessions from `first` to `last`, both included. `off` are spans of days off, both
    /// ends included, that do not overlap each other.
    #[must_use]
    pub fn of(
        sessions: &[NaiveDate],
        (first, last): (NaiveDate, NaiveDate),
        off: &[(NaiveDate, NaiveDate)],
        schedule: &Schedule,
    ) -> Self {
        let days = |from: NaiveDate, to: NaiveDate| {
            u32::try_from(to.signed_duration_since(from).num_days().saturating_add(1)).unwrap_or(0)
        };
        let span = days(first, last);
        let off: u32 = off
            .iter()
            .map(|&(from, to)| days(from.max(first), to.min(last)))
            .sum::<u32>()
            .min(span);
        let within: Vec<NaiveDate> =
            sessions.iter().copied().filter(|day| (first..=last).contains(day)).collect();
        let mut distinct = within.clone();
        distinct.sort_unstable();
        distinct.dedup();
        let available = span - off;
        let (least, most) = (schedule.weekly_least.get(), schedule.weekly_most.get());
        Self {
            sessions: within.len(),
            days: distinct.len(),
            span,
            off,
            planned_least: u32::from(least).saturating_mul(available) / 7,
            planned_most: u32::from(most).saturating_mul(available).div_ceil(7),
        }
    }
}
