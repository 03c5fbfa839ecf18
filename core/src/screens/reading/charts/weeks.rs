//! Days and minutes practised, week after week, beside what the plan asks for. Weeks begin on a Monday; a week that
//! is not wholly shown, or has days off, is planned for fewer days.

use chrono::{Datelike, Days, NaiveDate};
use serde::Serialize;

use super::super::gather::{Gathered, Sat};
use super::super::say;
use super::{Chart, ChartTable, Drawn, KeyLine, KeyMark, tick};
use crate::insight::Practised;
use crate::programme::plan::Step;
use crate::summary::stretch::Stretch;

/// The most weeks that one chart shows.
const MOST: usize = 26;

/// Practised beside planned, week after week.
#[derive(Clone, PartialEq, Serialize)]
pub struct Weeks {
    /// The weeks, in order, none left out.
    pub weeks: Vec<Week>,
    /// What the axis is called, with its unit.
    pub axis: String,
    /// The upper end of the axis, in the unit that the axis is called by: days or minutes.
    pub top: u32,
}

/// A week.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Week {
    /// The day it begins on, short.
    pub label: String,
    /// Practised, in the unit of the axis.
    pub practised: u32,
    /// Planned, least and most, in the unit of the axis; `None` where no step was in use.
    pub planned: Option<(u32, u32)>,
}

/// What is known of a week.
struct Counted {
    begins: NaiveDate,
    days: u32,
    minutes: u32,
    planned_days: Option<(u32, u32)>,
    planned_minutes: Option<(u32, u32)>,
    off: u32,
}

fn counted(gathered: &Gathered<'_>) -> Vec<Counted> {
    let Some(first) = first_day(gathered) else { return Vec::new() };
    let last = gathered.last_day();
    let monday = |day: NaiveDate| {
        day.checked_sub_days(Days::new(u64::from(day.weekday().num_days_from_monday())))
    };
    let Some(mut begins) = monday(first) else { return Vec::new() };
    let mut weeks = Vec::new();
    while begins <= last {
        let Some(ends) = begins.checked_add_days(Days::new(6)) else { break };
        weeks.push(week(gathered, begins, (begins.max(first), ends.min(last))));
        let Some(next) = ends.succ_opt() else { break };
        begins = next;
    }
    let from = weeks.len().saturating_sub(MOST);
    weeks.split_off(from)
}

/// The first day shown on which a step was in use.
fn first_day(gathered: &Gathered<'_>) -> Option<NaiveDate> {
    let began = gathered.stretches.first().map(|stretch| stretch.began.day())?;
    Some(gathered.summary.narrowed.from.map_or(began, |from| from.max(began)))
}

fn week(gathered: &Gathered<'_>, begins: NaiveDate, span: (NaiveDate, NaiveDate)) -> Counted {
    let within = |sat: &&Sat<'_>| {
        let day = sat.row.happened.day();
        sat.stretch().is_some() && span.0 <= day && day <= span.1
    };
    let sat: Vec<&Sat<'_>> = gathered.sat.iter().filter(within).collect();
    let mut days: Vec<NaiveDate> = sat.iter().map(|sat| sat.row.happened.day()).collect();
    days.dedup();
    let seconds: u32 = sat
        .iter()
        .flat_map(|sat| &sat.session.parts)
        .map(|part| part.practised_seconds)
        .fold(0, u32::saturating_add);
    let off: Vec<(NaiveDate, NaiveDate)> =
        gathered.state.rule().time_off().map(|off| (off.from, off.to)).collect();
    let planned = in_use(gathered, span).map(|on| {
        let found = Practised::of(&[], span, &off, &on.step.schedule);
        let free = found.span - found.off;
        let daily = u32::from(on.step.schedule.daily_most.get()).max(1);
        let least = found.planned_least.div_ceil(daily).min(free);
        let (short, long) = minutes_of(&on.step);
        let minutes =
            (found.planned_least.saturating_mul(short), found.planned_most.saturating_mul(long));
        ((least, found.planned_most.min(free)), minutes, found.off)
    });
    Counted {
        begins,
        days: u32::try_from(days.len()).unwrap_or(u32::MAX),
        minutes: seconds / 60,
        planned_days: planned.map(|(days, _, _)| days),
        planned_minutes: planned.map(|(_, minutes, _)| minutes),
        off: planned.map_or(0, |(_, _, off)| off),
    }
}

/// The step in use at the end of the days: what the week was planned by.
fn in_use<'a>(gathered: &'a Gathered<'_>, span: (NaiveDate, NaiveDate)) -> Option<&'a Stretch> {
    gathered.stretches.iter().rfind(|stretch| stretch.began.day() <= span.1)
}

/// Minutes of one session as the step has it, least and most.
fn minutes_of(step: &Step) -> (u32, u32) {
    let sum = |of: fn(&crate::programme::plan::Part) -> u32| step.parts.iter().map(of).sum();
    (sum(|part| part.minutes.least.get().into()), sum(|part| part.minutes.most.get().into()))
}

pub(super) fn days(gathered: &Gathered<'_>) -> Option<Chart> {
    let words = gathered.words;
    let title = words.text("cabinet-chart-days", &[]);
    let axis = words.text("cabinet-chart-days-axis", &[]);
    let weeks = counted(gathered);
    let says = words.text("cabinet-chart-days-says", &[("weeks", say::count(weeks.len()))]);
    chart(gathered, "days", (title, says, axis), &weeks, |week| (week.days, week.planned_days))
}

pub(super) fn minutes(gathered: &Gathered<'_>) -> Option<Chart> {
    let words = gathered.words;
    let title = words.text("cabinet-chart-minutes", &[]);
    let axis = words.text("cabinet-chart-minutes-axis", &[]);
    let weeks = counted(gathered);
    let says = words.text("cabinet-chart-minutes-says", &[("weeks", say::count(weeks.len()))]);
    let of = |week: &Counted| (week.minutes, week.planned_minutes);
    chart(gathered, "minutes", (title, says, axis), &weeks, of)
}

fn chart(
    gathered: &Gathered<'_>,
    name: &'static str,
    (title, says, axis): (String, String, String),
    counted: &[Counted],
    of: impl Fn(&Counted) -> (u32, Option<(u32, u32)>),
) -> Option<Chart> {
    let words = gathered.words;
    let weeks: Vec<Week> = counted
        .iter()
        .map(|week| {
            let (practised, planned) = of(week);
            Week { label: tick(gathered, week.begins), practised, planned }
        })
        .collect();
    let most = |week: &Week| week.practised.max(week.planned.map_or(0, |(_, most)| most));
    let most = weeks.iter().map(most).max()?;
    let mut notes = vec![words.text("cabinet-chart-weeks-note", &[])];
    if counted.len() == MOST {
        notes.push(words.text("cabinet-chart-weeks-newest", &[("weeks", say::count(MOST))]));
    }
    Some(Chart {
        name,
        table: table(gathered, &title, &axis, counted, &weeks),
        title,
        says,
        notes,
        key: vec![
            KeyLine { mark: KeyMark::Bar, text: words.text("cabinet-mark-practised", &[]) },
            KeyLine { mark: KeyMark::Planned, text: words.text("cabinet-mark-planned", &[]) },
        ],
        drawn: Drawn::Weeks(Weeks { weeks, axis, top: round_up(most) }),
    })
}

/// A number that an axis can end with: 7 for days of a week, else the next of 10, 20, 50, 100 and so on.
fn round_up(most: u32) -> u32 {
    if most <= 7 {
        return 7;
    }
    let mut step = 10_u32;
    loop {
        for times in [1, 2, 5] {
            let end = step.saturating_mul(times);
            if end >= most {
                return end;
            }
        }
        step = step.saturating_mul(10);
    }
}

fn table(
    gathered: &Gathered<'_>,
    title: &str,
    axis: &str,
    counted: &[Counted],
    weeks: &[Week],
) -> ChartTable {
    let words = gathered.words;
    let row = |(counted, week): (&Counted, &Week)| {
        let planned = match week.planned {
            Some((least, most)) => words
                .text("cabinet-planned-span", &[("least", least.into()), ("most", most.into())]),
            None => String::new(),
        };
        vec![
            say::day(gathered, counted.begins),
            week.practised.to_string(),
            planned,
            counted.off.to_string(),
        ]
    };
    ChartTable {
        caption: title.to_owned(),
        columns: vec![
            words.text("cabinet-column-week", &[]),
            axis.to_owned(),
            words.text("cabinet-mark-planned", &[]),
            words.text("cabinet-column-off", &[]),
        ],
        rows: counted.iter().zip(weeks).map(row).collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_axis_ends_with_a_round_number_that_is_enough() {
        for (most, end) in [(0, 7), (7, 7), (8, 10), (21, 50), (51, 100), (101, 200), (999, 1000)] {
            assert_eq!(round_up(most), end, "{most}");
        }
        assert!(round_up(u32::MAX) == u32::MAX);
    }
}
