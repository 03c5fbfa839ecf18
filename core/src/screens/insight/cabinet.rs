//! Time on each kind of step over many diaries.

use std::collections::BTreeMap;

use serde::Serialize;

use super::super::plain;
use super::super::reading::say;
use super::{InsightTable, say as fine};
use crate::insight::{Followed, Interval, LEAST_PEOPLE, LEVEL, Survival, jeffreys, wilson};
use crate::summary::{Kind, Left, StepTime, StepTimes};
use crate::words::Words;

/// The days at which the table shows the estimate: weeks, for reading; no rule looks at them.
const SHOWN_AT: [u32; 8] = [7, 14, 21, 28, 42, 56, 84, 168];

/// Time on each kind of step.
#[derive(Clone, PartialEq, Serialize)]
pub struct CabinetInsight {
    /// Heading.
    pub title: String,
    /// Counts, and what all of it can bear.
    pub says: Vec<String>,
    /// By kind of step, the smallest first.
    pub kinds: Vec<KindInsight>,
    /// Where the numbers come from.
    pub source: String,
}

/// Time on one kind of step.
#[derive(Clone, PartialEq, Serialize)]
pub struct KindInsight {
    /// Size and position, or practice and position.
    pub heading: String,
    /// People whose time on it can be counted.
    pub people: u32,
    /// Who went on to a later step.
    pub for_later: u32,
    /// Who went back to an earlier one.
    pub for_earlier: u32,
    /// Whose time was not seen to its end.
    pub not_seen: u32,
    /// The estimate, for a chart; absent below [`LEAST_PEOPLE`] people.
    pub survival: Option<Survival>,
    /// Of those whose end was seen, the share who went on to a later step; absent below [`LEAST_PEOPLE`].
    pub went_on: Option<WentOn>,
    /// In words, counts first.
    pub says: Vec<String>,
    /// The estimate at some days.
    pub table: Option<InsightTable>,
}

/// A share of people, 0 to 1, as if they were a sample.
#[derive(Clone, Copy, PartialEq, Serialize)]
pub struct WentOn {
    /// The share, 0 to 1.
    pub share: f64,
    /// Its interval after Wilson, which is the one in words.
    pub wilson: Interval,
    /// Its interval after Jeffreys.
    pub jeffreys: Interval,
}

impl CabinetInsight {
    /// Of what each diary tells. One item a diary: of several summaries of the same diary, the latest.
    #[must_use]
    pub fn of<'a>(diaries: impl IntoIterator<Item = &'a StepTimes>, words: &Words) -> Self {
        let (mut read, mut unsure) = (0_usize, 0_usize);
        let mut kinds: BTreeMap<(Option<u16>, &Kind), Vec<&StepTime>> = BTreeMap::new();
        for diary in diaries {
            read += 1;
            unsure += usize::from(diary.unsure);
            for time in &diary.times {
                let size = time.kind.size.map(|size| size.get());
                kinds.entry((size, &time.kind)).or_default().push(time);
            }
        }
        let mut says = vec![words.text("insight-cabinet-diaries", &[("count", say::count(read))])];
        if unsure > 0 {
            says.push(words.text("insight-cabinet-unsure", &[("count", say::count(unsure))]));
        }
        says.push(words.text("insight-cabinet-censored", &[]));
        says.push(words.text("insight-cabinet-alike", &[]));
        says.push(words.text("insight-cabinet-no-verdict", &[]));
        Self {
            title: words.text("insight-cabinet", &[]),
            says,
            kinds: kinds.iter().map(|((_, kind), times)| of_kind(words, kind, times)).collect(),
            source: words.text("insight-cabinet-source", &[("least", say::count(LEAST_PEOPLE))]),
        }
    }
}

fn of_kind(words: &Words, kind: &Kind, times: &[&StepTime]) -> KindInsight {
    let count = |of: fn(Left) -> bool| {
        u32::try_from(times.iter().filter(|time| of(time.left)).count()).unwrap_or(u32::MAX)
    };
    let for_later = count(|left| left == Left::ForLater);
    let for_earlier = count(|left| left == Left::ForEarlier);
    let still_on = count(|left| left == Left::StillOn);
    let new_plan = count(|left| left == Left::NewPlan);
    let people = count(|_| true);
    let values = [
        ("people", people.into()),
        ("later", for_later.into()),
        ("earlier", for_earlier.into()),
        ("still", still_on.into()),
        ("plan", new_plan.into()),
    ];
    let mut says = vec![words.text("insight-time-counts", &values)];
    let followed: Vec<Followed> =
        times.iter().map(|time| Followed { days: time.days, ended: time.left.seen() }).collect();
    let enough = followed.len() >= LEAST_PEOPLE;
    let survival = enough.then(|| Survival::of(&followed, LEVEL)).flatten();
    match &survival {
        None => {
            let least = [("least", say::count(LEAST_PEOPLE))];
            says.push(words.text("insight-time-few", &least));
        }
        Some(found) => says.push(match found.median {
            Some(days) => words.text("insight-time-median", &[("days", days.into())]),
            None => words.text("insight-time-no-median", &[]),
        }),
    }
    let went_on = went_on(for_later, for_later.saturating_add(for_earlier));
    if let Some(went_on) = &went_on {
        let values = [
            ("seen", (for_later + for_earlier).into()),
            ("later", for_later.into()),
            ("share", fine::fine(went_on.share)),
            ("interval", fine::interval(words, &went_on.wilson).into()),
        ];
        says.push(words.text("insight-went-on", &values));
    }
    KindInsight {
        heading: heading(words, kind),
        people,
        for_later,
        for_earlier,
        not_seen: people - for_later - for_earlier,
        table: survival.as_ref().and_then(|found| table(words, found)),
        survival,
        went_on,
        says,
    }
}

/// People, not sessions: here a share can be taken for that of a sample.
fn went_on(later: u32, seen: u32) -> Option<WentOn> {
    if usize::try_from(seen).ok()? < LEAST_PEOPLE {
        return None;
    }
    let share = f64::from(later) / f64::from(seen);
    let (wilson, jeffreys) = (wilson(later, seen, LEVEL)?, jeffreys(later, seen, LEVEL)?);
    Some(WentOn { share, wilson, jeffreys })
}

fn heading(words: &Words, kind: &Kind) -> String {
    let what = match kind.size {
        Some(size) => plain::size(words, size),
        None => plain::practice(words, &kind.practice, None),
    };
    let position = say::position(words, kind.position).into();
    words.text("reading-used", &[("what", what.into()), ("position", position)])
}

/// The estimate at some days, as long as somebody was followed so far.
fn table(words: &Words, found: &Survival) -> Option<InsightTable> {
    let rows: Vec<Vec<String>> = SHOWN_AT
        .iter()
        .filter_map(|day| {
            let at = found.at(*day)?;
            let number = |of: u64| words.text("insight-count", &[("count", of.into())]);
            Some(vec![
                number(u64::from(*day)),
                number(at.at_risk),
                words.text("insight-share", &[("share", fine::fine(at.lasting))]),
                at.interval.map_or_else(
                    || words.text("insight-none", &[]),
                    |interval| fine::interval(words, &interval),
                ),
            ])
        })
        .collect();
    (!rows.is_empty()).then(|| InsightTable {
        caption: words.text("insight-time-table", &[]),
        columns: vec![
            words.text("insight-column-day", &[]),
            words.text("insight-column-at-risk", &[]),
            words.text("insight-column-still-on", &[]),
            words.text("insight-column-interval", &[]),
        ],
        rows,
    })
}
