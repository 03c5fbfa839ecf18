//! The numbers of each stretch: worked out, and in words.

use chrono::NaiveDate;
use serde::Serialize;

use super::super::reading::gather::{Gathered, Sat};
use super::super::reading::{say, steps};
use super::super::{plain, reading};
use super::say as fine;
use super::{InsightAbout, InsightPart, InsightTable};
use crate::insight::{
    Change, Chart, Gaps, LEAST_CHARTED, LEAST_FOR_TREND, LEAST_RATED, LEVEL, MannKendall,
    Practised, Range, Slope, Spread,
};
use crate::programme::values::RatingKind;
use crate::summary::stretch::Stretch;
use crate::words::Words;

/// The numbers of one stretch and their words.
#[derive(Clone, PartialEq, Serialize)]
pub struct StretchInsight {
    /// Step, days and revision.
    pub heading: String,
    /// The numbers, for charts.
    pub numbers: StretchNumbers,
    /// In words, counts first; what has too few values is left out and said so.
    pub parts: Vec<InsightPart>,
}

/// The numbers of one stretch.
#[derive(Clone, PartialEq, Serialize)]
pub struct StretchNumbers {
    /// The first day shown.
    pub first: NaiveDate,
    /// The last day shown.
    pub last: NaiveDate,
    /// Practised beside planned: sessions of the step's practice with any size and position.
    pub practised: Practised,
    /// How the days with a session lie; absent below two.
    pub gaps: Option<Gaps>,
    /// Sessions with the step's own size and position, in order of happening. What follows is of these.
    pub sessions: Vec<SessionPoint>,
    /// Minutes practised on the main part; absent without a session.
    pub minutes: Option<Range>,
    /// Peak discomfort; absent where it was never rated.
    pub peak: Option<Spread>,
    /// The first ratings of peak beside the last; absent below [`LEAST_RATED`].
    pub change: Option<Change>,
    /// The individuals chart of peak; absent below [`LEAST_CHARTED`] ratings.
    pub chart: Option<Chart>,
    /// The trend of peak; absent below [`LEAST_FOR_TREND`] ratings.
    pub trend: Option<Trend>,
}

/// A session.
#[derive(Clone, Copy, PartialEq, Eq, Serialize)]
pub struct SessionPoint {
    /// Its day.
    pub day: NaiveDate,
    /// Time practised on the main part, in seconds.
    pub seconds: u32,
    /// Peak discomfort, 0 to 10; absent where not rated.
    pub peak: Option<u8>,
}

/// A trend.
#[derive(Clone, Copy, PartialEq, Serialize)]
pub struct Trend {
    /// Whether later ratings are higher or lower than earlier ones.
    pub test: MannKendall,
    /// Change of the rating in a week; absent where all sessions lie on one day or are too many.
    pub per_week: Option<Slope>,
}

/// A stretch with its numbers.
pub(super) struct Numbered<'a> {
    pub(super) stretch: &'a Stretch,
    pub(super) numbers: StretchNumbers,
    /// Sessions on the step, in order.
    on: Vec<&'a Sat<'a>>,
}

impl Numbered<'_> {
    /// Ratings of peak that were given, in order.
    pub(super) fn given(&self) -> Vec<u8> {
        self.numbers.sessions.iter().filter_map(|one| one.peak).collect()
    }
}

/// The stretches that are shown, the latest first.
pub(super) fn numbers<'a>(gathered: &'a Gathered<'a>) -> Vec<Numbered<'a>> {
    let all = gathered.stretches.iter().enumerate().rev();
    all.filter_map(|(index, stretch)| {
        let span = gathered.shown(stretch)?;
        let of: Vec<&Sat<'_>> =
            gathered.sat.iter().filter(|sat| sat.stretch() == Some(index)).collect();
        let on: Vec<&Sat<'_>> = of.iter().copied().filter(|sat| sat.on_step).collect();
        let days: Vec<NaiveDate> = of.iter().map(|sat| sat.row.happened.day()).collect();
        let sessions: Vec<SessionPoint> = on.iter().map(|sat| point(sat)).collect();
        let peaks: Vec<Option<u8>> = sessions.iter().map(|one| one.peak).collect();
        let given: Vec<u8> = peaks.iter().copied().flatten().collect();
        let minutes: Vec<f64> = sessions.iter().map(|one| f64::from(one.seconds) / 60.0).collect();
        let numbers = StretchNumbers {
            first: span.0,
            last: span.1,
            practised: steps::counted(gathered, &of, span, &stretch.step.schedule),
            gaps: Gaps::of(&days),
            minutes: Range::of(&minutes),
            peak: Spread::of(&peaks),
            change: Change::of(&given),
            chart: chart(&given),
            trend: trend(&sessions, &given),
            sessions,
        };
        Some(Numbered { stretch, numbers, on })
    })
    .collect()
}

fn point(sat: &Sat<'_>) -> SessionPoint {
    SessionPoint {
        day: sat.row.happened.day(),
        seconds: sat.session.main_seconds(),
        peak: sat.session.ratings.given(RatingKind::Peak).map(|rating| rating.get()),
    }
}

fn chart(given: &[u8]) -> Option<Chart> {
    let values: Vec<f64> = given.iter().map(|rating| f64::from(*rating)).collect();
    (given.len() >= LEAST_CHARTED).then(|| Chart::of(&values)).flatten()
}

fn trend(sessions: &[SessionPoint], given: &[u8]) -> Option<Trend> {
    if given.len() < LEAST_FOR_TREND {
        return None;
    }
    let begin = sessions.first()?.day;
    let points: Vec<(f64, f64)> = sessions
        .iter()
        .filter_map(|one| {
            let days = i32::try_from(one.day.signed_duration_since(begin).num_days()).ok()?;
            Some((f64::from(days) / 7.0, f64::from(one.peak?)))
        })
        .collect();
    Some(Trend { test: MannKendall::of(given)?, per_week: Slope::of(&points, LEVEL) })
}

/// The counts of every stretch.
pub(super) fn counts(gathered: &Gathered<'_>, all: &[Numbered<'_>]) -> InsightTable {
    let words = gathered.words;
    let whole = |number: usize| words.text("insight-count", &[("count", say::count(number))]);
    let rows = all
        .iter()
        .map(|one| {
            let numbers = &one.numbers;
            let median = numbers.peak.map_or_else(
                || words.text("insight-none", &[]),
                |peak| {
                    let values = [
                        ("median", say::number(peak.median)),
                        ("least", plain::whole(peak.least)),
                        ("most", plain::whole(peak.most)),
                    ];
                    words.text("insight-median-range", &values)
                },
            );
            vec![
                heading(gathered, one),
                whole(numbers.practised.sessions),
                whole(numbers.practised.days),
                whole(numbers.sessions.len()),
                whole(one.given().len()),
                median,
            ]
        })
        .collect();
    InsightTable {
        caption: words.text("insight-counts", &[]),
        columns: vec![
            words.text("insight-column-step", &[]),
            words.text("insight-column-sessions", &[]),
            words.text("insight-column-days", &[]),
            words.text("insight-column-on-step", &[]),
            words.text("insight-column-rated", &[]),
            words.text("insight-column-peak", &[]),
        ],
        rows,
    }
}

fn heading(gathered: &Gathered<'_>, one: &Numbered<'_>) -> String {
    let step = say::step(gathered.words, &one.stretch.step).into();
    let span = fine::span(gathered, one).into();
    gathered.words.text("insight-stretch", &[("step", step), ("span", span)])
}

/// A stretch in words.
pub(super) fn worded(gathered: &Gathered<'_>, one: &Numbered<'_>) -> StretchInsight {
    let words = gathered.words;
    let parts = [
        Some(done(gathered, one)),
        ratings(words, one),
        change(words, one),
        charted(gathered, one),
        trended(words, one),
        too_few(words, one),
    ];
    StretchInsight {
        heading: heading(gathered, one),
        numbers: one.numbers.clone(),
        parts: parts.into_iter().flatten().collect(),
    }
}

fn done(gathered: &Gathered<'_>, one: &Numbered<'_>) -> InsightPart {
    let words = gathered.words;
    let numbers = &one.numbers;
    let mut says =
        vec![reading::steps::practised(words, &numbers.practised, &one.stretch.step.schedule)];
    if let Some(gaps) = &numbers.gaps {
        let values = [
            ("days", say::count(gaps.days)),
            ("median", say::number(gaps.median)),
            ("longest", gaps.longest.into()),
        ];
        says.push(words.text("insight-gaps", &values));
    }
    let unrated = numbers.sessions.len() - one.given().len();
    let values =
        [("sessions", say::count(numbers.sessions.len())), ("unrated", say::count(unrated))];
    says.push(words.text("insight-on-step", &values));
    if let Some(minutes) = &numbers.minutes {
        let values = [
            ("median", say::number(minutes.median)),
            ("least", say::number(minutes.least)),
            ("most", say::number(minutes.most)),
        ];
        says.push(words.text("insight-minutes", &values));
    }
    InsightPart {
        about: InsightAbout::Counts,
        heading: words.text("insight-done", &[]),
        says,
        bears: Some(words.text("insight-done-bears", &[])),
        source: None,
    }
}

fn ratings(words: &Words, one: &Numbered<'_>) -> Option<InsightPart> {
    let mut says = Vec::new();
    for kind in [RatingKind::Peak, RatingKind::Worry, RatingKind::Before, RatingKind::After] {
        let given = one.on.iter().map(|sat| sat.session.ratings.given(kind));
        let ratings: Vec<Option<u8>> = given.map(|one| one.map(|rating| rating.get())).collect();
        says.extend(Spread::of(&ratings).map(|spread| say::spread(words, kind, &spread)));
    }
    (!says.is_empty()).then(|| InsightPart {
        about: InsightAbout::Ratings,
        heading: words.text("insight-ratings", &[]),
        says,
        bears: Some(words.text("insight-ratings-bears", &[])),
        source: None,
    })
}

fn change(words: &Words, one: &Numbered<'_>) -> Option<InsightPart> {
    let change = one.numbers.change?;
    Some(InsightPart {
        about: InsightAbout::Change,
        heading: words.text("insight-change", &[]),
        says: vec![steps::changed(words, &change)],
        bears: Some(words.text("insight-change-bears", &[])),
        source: Some(words.text("reading-about-change", &[("least", say::count(LEAST_RATED))])),
    })
}

fn charted(gathered: &Gathered<'_>, one: &Numbered<'_>) -> Option<InsightPart> {
    let words = gathered.words;
    let chart = one.numbers.chart?;
    let beyond: Vec<String> = one
        .numbers
        .sessions
        .iter()
        .filter_map(|session| Some((session.day, session.peak?)))
        .filter(|(_, peak)| chart.beyond(f64::from(*peak)))
        .map(|(day, peak)| {
            let day = say::day(gathered, day).into();
            words.text("insight-beyond-one", &[("day", day), ("rating", plain::whole(peak))])
        })
        .collect();
    let values = [
        ("ratings", say::count(chart.values)),
        ("centre", fine::fine(chart.centre)),
        ("moving", fine::fine(chart.moving_range)),
        // The scale ends at 0 and 10; a limit past its end is said as the end.
        ("lower", fine::fine(chart.lower.clamp(0.0, 10.0))),
        ("upper", fine::fine(chart.upper.clamp(0.0, 10.0))),
    ];
    let mut says = vec![words.text("insight-limits", &values)];
    says.push(if beyond.is_empty() {
        words.text("insight-beyond-none", &[])
    } else {
        let values = [("count", say::count(beyond.len())), ("list", beyond.join(", ").into())];
        words.text("insight-beyond", &values)
    });
    Some(InsightPart {
        about: InsightAbout::Chart,
        heading: words.text("insight-chart", &[]),
        says,
        bears: Some(words.text("insight-chart-bears", &[])),
        source: Some(words.text("insight-chart-source", &[("least", say::count(LEAST_CHARTED))])),
    })
}

fn trended(words: &Words, one: &Numbered<'_>) -> Option<InsightPart> {
    let trend = one.numbers.trend?;
    let test = &trend.test;
    let equal = test.pairs - test.higher - test.lower;
    let values = [
        ("pairs", test.pairs.into()),
        ("lower", test.lower.into()),
        ("equal", equal.into()),
        ("higher", test.higher.into()),
        ("tau", fine::fine(test.tau())),
        ("p", fine::p(words, test.p).into()),
    ];
    let mut says = vec![words.text("insight-trend-pairs", &values)];
    if let Some(slope) = &trend.per_week {
        let number = fine::fine(slope.slope);
        says.push(match &slope.interval {
            Some(interval) => {
                let interval = fine::interval(words, interval).into();
                let values = [("slope", number), ("interval", interval)];
                words.text("insight-slope-interval", &values)
            }
            None => words.text("insight-slope", &[("slope", number)]),
        });
    }
    Some(InsightPart {
        about: InsightAbout::Trend,
        heading: words.text("insight-trend", &[]),
        says,
        bears: Some(words.text("insight-trend-bears", &[])),
        source: Some(words.text("insight-trend-source", &[("least", say::count(LEAST_FOR_TREND))])),
    })
}

/// What is not shown for want of ratings, so that nobody looks for it.
fn too_few(words: &Words, one: &Numbered<'_>) -> Option<InsightPart> {
    let rated = one.given().len();
    let values = [
        ("rated", say::count(rated)),
        ("change", say::count(LEAST_RATED)),
        ("trend", say::count(LEAST_FOR_TREND)),
        ("chart", say::count(LEAST_CHARTED)),
    ];
    (rated < LEAST_CHARTED).then(|| InsightPart {
        about: InsightAbout::TooFew,
        heading: words.text("insight-too-few", &[]),
        says: vec![words.text("insight-too-few-says", &values)],
        bears: None,
        source: None,
    })
}
