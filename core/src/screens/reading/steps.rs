//! The present step, and each step's numbers. They never reach over a step or a revision.

use chrono::NaiveDate;

use super::gather::{Gathered, Sat};
use super::{Part, Point, ReadingPart, record, say};
use crate::diary::entry::Settled;
use crate::insight::{Change, LEAST_RATED, Practised, Spread};
use crate::programme::plan::Schedule;
use crate::programme::values::RatingKind;
use crate::summary::stretch::Stretch;
use crate::words::Words;

/// The present step. Always there.
pub(in crate::screens) fn present(gathered: &Gathered<'_>) -> ReadingPart {
    let words = gathered.words;
    let present = &gathered.summary.present;
    let programme = gathered.programme();
    let mut points = Vec::new();
    match &present.step {
        None => points.push(Point::plain(words.text("reading-no-step", &[]))),
        Some(now) => {
            let step = programme.and_then(|plan| plan.step(&now.step));
            let said = step.map_or_else(
                || now.step.to_string(),
                |step| {
                    let position = say::position(words, step.position).into();
                    let step = say::step(words, step).into();
                    words.text("reading-used", &[("what", step), ("position", position)])
                },
            );
            let day = say::on(gathered, &now.began);
            let mut point = Point::plain(
                words.text("reading-step-since", &[("step", said.into()), ("day", day)]),
            );
            if !now.confirmed {
                point.inner.push(words.text("reading-step-not-confirmed", &[]));
            }
            points.push(point);
        }
    }
    if let Some(rule) = &present.rule_of {
        let values = [
            ("revision", rule.revision.get().into()),
            ("clinician", rule.clinician.as_str().into()),
            ("day", say::day(gathered, rule.issued).into()),
        ];
        let inner = record::in_spite_of(gathered);
        points.push(Point { text: words.text("reading-programme", &values), inner });
    }
    if let Some(plan) = programme.filter(|plan| plan.review_by < gathered.summary.made.day()) {
        let day = say::day(gathered, plan.review_by).into();
        points.push(Point::plain(words.text("reading-review-passed", &[("day", day)])));
    }
    ReadingPart { part: Part::Present, heading: words.text("reading-present", &[]), points }
}

/// Step by step, the present one first.
pub(in crate::screens) fn by_step(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let mut points: Vec<Point> = gathered
        .stretches
        .iter()
        .enumerate()
        .rev()
        .filter(|(_, stretch)| gathered.shown(stretch).is_some())
        .map(|(index, stretch)| stretch_point(gathered, index, stretch))
        .collect();
    let words = gathered.words;
    if !points.is_empty() {
        let about = words.text("reading-about-change", &[("least", say::count(LEAST_RATED))]);
        points.push(Point::plain(about));
    }
    gathered.part(Part::Steps, words.text("reading-by-step", &[]), points)
}

fn stretch_point(gathered: &Gathered<'_>, index: usize, stretch: &Stretch) -> Point {
    let words = gathered.words;
    let (first, last) =
        gathered.shown(stretch).unwrap_or((stretch.began.day(), stretch.began.day()));
    let of: Vec<&Sat<'_>> =
        gathered.sat.iter().filter(|sat| sat.stretch() == Some(index)).collect();
    let on: Vec<&Sat<'_>> = of.iter().copied().filter(|sat| sat.on_step).collect();
    let text = words.text(
        "reading-stretch",
        &[
            ("step", say::step(words, &stretch.step).into()),
            ("first", say::day(gathered, first).into()),
            ("last", say::day(gathered, last).into()),
            ("revision", stretch.revision.get().into()),
        ],
    );
    let schedule = &stretch.step.schedule;
    let found = counted(gathered, &of, (first, last), schedule);
    let mut inner = vec![practised(words, &found, schedule)];
    if of.len() > on.len() {
        inner.push(words.text("reading-elsewhere", &[("count", say::count(of.len() - on.len()))]));
    }
    if on.is_empty() {
        return Point { text, inner };
    }
    // In the order of what matters: peak, then what the programme asks besides.
    for kind in [RatingKind::Peak, RatingKind::Worry, RatingKind::Before, RatingKind::After] {
        let ratings: Vec<Option<u8>> = on
            .iter()
            .map(|sat| sat.session.ratings.given(kind).map(|rating| rating.get()))
            .collect();
        match Spread::of(&ratings) {
            Some(spread) => {
                let said = say::spread(words, kind, &spread).into();
                let list = say::values(&ratings).into();
                inner.push(words.text("reading-values", &[("spread", said), ("values", list)]));
                if kind == RatingKind::Peak {
                    inner.extend(change(gathered, &ratings));
                }
            }
            None if kind == RatingKind::Peak => {
                inner.push(words.text("reading-none-rated", &[]));
            }
            None => {}
        }
    }
    inner.extend(settling(gathered, &on));
    Point { text, inner }
}

fn change(gathered: &Gathered<'_>, ratings: &[Option<u8>]) -> Option<String> {
    let given: Vec<u8> = ratings.iter().copied().flatten().collect();
    Some(changed(gathered.words, &Change::of(&given)?))
}

/// "first three to last three: 5 to 2, a meaningful change by 2 points and by 30 %".
pub(in crate::screens) fn changed(words: &Words, change: &Change) -> String {
    let values = [
        ("first", say::number(change.first)),
        ("last", say::number(change.last)),
        ("reaches", say::reaches(words, change.reaches).into()),
    ];
    words.text("reading-change", &values)
}

fn settling(gathered: &Gathered<'_>, on: &[&Sat<'_>]) -> Option<String> {
    let (mut yes, mut not_yet, mut unsaid) = (0_usize, 0_usize, 0_usize);
    for sat in on {
        match gathered.settled.get(&sat.row.first.id) {
            Some(Settled::Yes) => yes += 1,
            Some(Settled::NotYet) => not_yet += 1,
            Some(Settled::RatherNotSay) => unsaid += 1,
            None => {}
        }
    }
    let values =
        [("yes", say::count(yes)), ("notyet", say::count(not_yet)), ("unsaid", say::count(unsaid))];
    (yes + not_yet + unsaid > 0).then(|| gathered.words.text("reading-settled", &values))
}

/// Practised beside planned, in numbers.
pub(in crate::screens) fn counted(
    gathered: &Gathered<'_>,
    sat: &[&Sat<'_>],
    span: (NaiveDate, NaiveDate),
    schedule: &Schedule,
) -> Practised {
    // A day on which two steps meet is planned for the later one; its sessions stay where they were done.
    let day = |sat: &&Sat<'_>| sat.row.happened.day().clamp(span.0, span.1);
    let days: Vec<NaiveDate> = sat.iter().map(day).collect();
    let off: Vec<(NaiveDate, NaiveDate)> =
        gathered.state.rule().time_off().map(|off| (off.from, off.to)).collect();
    Practised::of(&days, span, &off, schedule)
}

/// The same in words.
pub(in crate::screens) fn practised(
    words: &Words,
    found: &Practised,
    schedule: &Schedule,
) -> String {
    words.text(
        "reading-practised",
        &[
            ("sessions", say::count(found.sessions)),
            ("span", found.span.into()),
            ("off", found.off.into()),
            ("least", found.planned_least.into()),
            ("most", found.planned_most.into()),
            ("schedule", say::schedule(words, schedule).into()),
        ],
    )
}

/// Other practices, each in one line, over all the days shown.
pub(in crate::screens) fn practices(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let plans = gathered.programme().map(|plan| plan.practices.as_slice()).unwrap_or_default();
    let points: Vec<Point> = plans
        .iter()
        .map(|plan| {
            let sat = gathered.of_practice(&plan.practice);
            let mut days: Vec<NaiveDate> = sat.iter().map(|sat| sat.row.happened.day()).collect();
            days.dedup();
            let values = [
                ("name", plan.name.as_str().into()),
                ("sessions", say::count(sat.len())),
                ("days", say::count(days.len())),
                ("schedule", say::schedule(words, &plan.schedule).into()),
            ];
            Point::plain(words.text("reading-practice", &values))
        })
        .collect();
    gathered.part(Part::Practices, words.text("reading-practices", &[]), points)
}
