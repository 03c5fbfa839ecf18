//! The calendar: a month, and what was done on its days, in words. A day without anything stays empty;
//! nothing is missed, counted or asked for.

use chrono::{Datelike, Days, Months, NaiveDate};
use serde::Serialize;

use super::section::today;
use super::{Action, Does, Scene, plain};
use crate::diary::entry::Content;
use crate::diary::resolve::Counted;

/// A month.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CalendarScreen {
    /// Heading.
    pub title: String,
    /// The month in words.
    pub month: String,
    /// The names of the days, from Monday.
    pub weekdays: Vec<String>,
    /// Whole weeks, from Monday.
    pub weeks: Vec<Vec<CalendarDay>>,
    /// Said where nothing stands in this month.
    pub empty: Option<String>,
    /// The month before.
    pub earlier: Option<Action>,
    /// The month after.
    pub later: Option<Action>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A day.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CalendarDay {
    /// Which.
    pub date: NaiveDate,
    /// Its whole date in words, for whoever does not see the table.
    pub label: String,
    /// Whether it belongs to this month and not to the one beside it.
    pub in_month: bool,
    /// Whether it is today.
    pub is_today: bool,
    /// What was done, in words; nothing where nothing was.
    pub done: Vec<String>,
    /// Opens what was written of that day; nothing where nothing was.
    pub opens: Option<Action>,
}

impl CalendarScreen {
    /// `asked` is a year and a month; one that does not exist shows the present month.
    pub(crate) fn new(
        scene: &Scene<'_>,
        asked: Option<(i32, u32)>,
        counted: &[Counted<'_>],
    ) -> Self {
        let words = scene.words;
        let now = scene.now.day();
        let first = asked
            .and_then(|(year, month)| NaiveDate::from_ymd_opt(year, month, 1))
            .or_else(|| now.with_day(1))
            .unwrap_or(now);
        let weeks: Vec<Vec<CalendarDay>> = weeks(first)
            .into_iter()
            .map(|week| week.into_iter().map(|day| cell(scene, counted, first, day)).collect())
            .collect();
        let any = weeks.iter().flatten().any(|day| day.in_month && !day.done.is_empty());
        let to = |month: Option<NaiveDate>, label: String| {
            let month = month?;
            let does = Does::Calendar { month: Some((month.year(), month.month())) };
            Some(Action::new(label, does))
        };
        Self {
            title: words.text("calendar-title", &[]),
            month: month(scene, first),
            weekdays: (1u32..=7)
                .map(|day| words.text("calendar-weekday", &[("day", day.into())]))
                .collect(),
            weeks,
            empty: (!any).then(|| words.text("calendar-empty", &[])),
            earlier: to(
                first.checked_sub_months(Months::new(1)),
                words.text("action-month-before", &[]),
            ),
            later: to(
                first.checked_add_months(Months::new(1)),
                words.text("action-month-after", &[]),
            ),
            actions: vec![
                Action::new(words.text("action-entries", &[]), Does::Entries),
                Action::new(words.text("action-time-off", &[]), Does::TimeOff),
                today(scene),
            ],
        }
    }
}

/// The weeks that hold a month, whole.
fn weeks(first: NaiveDate) -> Vec<Vec<NaiveDate>> {
    let back = Days::new(u64::from(first.weekday().num_days_from_monday()));
    // At the very edge of what dates can be written, the weeks begin with the month itself.
    let start = first.checked_sub_days(back).unwrap_or(first);
    let mut weeks: Vec<Vec<NaiveDate>> = Vec::new();
    for days in start.iter_weeks().take(6) {
        let past = (days.year(), days.month()) > (first.year(), first.month());
        if past && days > first {
            break;
        }
        weeks.push(days.iter_days().take(7).collect());
    }
    weeks
}

fn month(scene: &Scene<'_>, first: NaiveDate) -> String {
    scene.words.text(
        "calendar-month",
        &[("month", first.month().into()), ("year", first.year().to_string().into())],
    )
}

fn cell(
    scene: &Scene<'_>,
    counted: &[Counted<'_>],
    first: NaiveDate,
    day: NaiveDate,
) -> CalendarDay {
    let words = scene.words;
    let mut done: Vec<String> = Vec::new();
    let mut any = false;
    for row in counted {
        let told = row.happened.day() == day;
        any |= told;
        if row.struck {
            continue;
        }
        let says = match row.content {
            Content::TimeOff { from, to } if (*from..=*to).contains(&day) => {
                words.text("calendar-time-off", &[])
            }
            Content::Session(session) if told => plain::practice_of_plan(scene, &session.practice),
            Content::StepChange { .. } if told => words.text("calendar-step", &[]),
            _ => String::new(),
        };
        let sign = told && !row.content.signs().is_empty();
        let sign = if sign { words.text("calendar-sign", &[]) } else { String::new() };
        for says in [says, sign] {
            // Twice on one day is said once: a calendar is no tally.
            if !says.is_empty() && !done.contains(&says) {
                done.push(says);
            }
        }
    }
    CalendarDay {
        date: day,
        label: plain::date(words, day),
        in_month: (day.year(), day.month()) == (first.year(), first.month()),
        is_today: day == scene.now.day(),
        done,
        opens: any.then(|| Action::new(words.text("action-open-day", &[]), Does::Day { day })),
    }
}
