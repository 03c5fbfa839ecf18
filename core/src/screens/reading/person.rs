//! What is hers: questions, time off, activities and goals, notes.

use super::super::plain;
use super::gather::Gathered;
use super::{Part, Point, ReadingPart, say};
use crate::diary::entry::Content;
use crate::insight::{Function, attainment};

/// Her questions for the visit.
pub(super) fn questions(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let points: Vec<Point> = gathered
        .standing()
        .filter_map(|row| match row.content {
            Content::Question { text } => Some(Point::plain(words.text(
                "reading-question",
                &[("text", text.as_str().into()), ("day", say::on(gathered, &row.happened))],
            ))),
            _ => None,
        })
        .collect();
    gathered.part(Part::Questions, words.text("reading-questions", &[]), points)
}

/// Time off.
pub(super) fn time_off(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let points: Vec<Point> = gathered
        .state
        .rule()
        .time_off()
        .map(|off| {
            let values = [
                ("from", say::day(gathered, off.from).into()),
                ("to", say::day(gathered, off.to).into()),
            ];
            Point::plain(words.text("reading-off", &values))
        })
        .collect();
    gathered.part(Part::TimeOff, words.text("reading-time-off", &[]), points)
}

/// One thing rated again and again: its name, and each rating with its day.
struct Followed {
    name: String,
    ratings: Vec<(String, i8)>,
}

impl Followed {
    fn add(list: &mut Vec<Self>, name: &str, day: String, rating: i8) {
        match list.iter_mut().find(|one| one.name == name) {
            Some(one) => one.ratings.push((day, rating)),
            None => list.push(Self { name: name.to_owned(), ratings: vec![(day, rating)] }),
        }
    }

    fn point(&self, gathered: &Gathered<'_>) -> Point {
        let words = gathered.words;
        let ratings: Vec<String> = self
            .ratings
            .iter()
            .map(|(day, rating)| {
                let values = [("number", plain::whole(*rating)), ("day", day.as_str().into())];
                words.text("reading-rating-on", &values)
            })
            .collect();
        let values = [("name", self.name.as_str().into()), ("ratings", ratings.join(", ").into())];
        Point::plain(words.text("reading-followed", &values))
    }
}

/// Activities and goals.
pub(super) fn function(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let (mut activities, mut goals) = (Vec::new(), Vec::new());
    let mut rows: Vec<_> = gathered.standing().collect();
    rows.sort_by_key(|row| (row.happened.millis(), row.place));
    for row in rows {
        let day = say::day(gathered, row.happened.day());
        match row.content {
            Content::FunctionRated { activity, able } => {
                let able = i8::try_from(able.get()).unwrap_or(i8::MAX);
                Followed::add(&mut activities, activity.as_str(), day, able);
            }
            Content::GoalRated { goal, reached } => {
                Followed::add(&mut goals, goal.as_str(), day, reached.get());
            }
            _ => {}
        }
    }
    let mut points: Vec<Point> = activities.iter().map(|one| one.point(gathered)).collect();
    points.extend(mean(gathered, &activities));
    points.extend(goals.iter().map(|one| one.point(gathered)));
    let latest: Vec<(f64, i8)> = goals
        .iter()
        .filter_map(|goal| goal.ratings.last().map(|(_, reached)| (1.0, *reached)))
        .collect();
    // A single goal is its own rating; a score of one says nothing more.
    if latest.len() > 1
        && let Some(score) = attainment(&latest)
    {
        let values = [("score", say::number(score)), ("goals", say::count(latest.len()))];
        points.push(Point::plain(words.text("reading-attainment", &values)));
    }
    gathered.part(Part::Function, words.text("reading-function", &[]), points)
}

fn mean(gathered: &Gathered<'_>, activities: &[Followed]) -> Option<Point> {
    let words = gathered.words;
    let pairs: Vec<(u8, u8)> = activities
        .iter()
        .filter(|one| one.ratings.len() > 1)
        .filter_map(|one| {
            let first = u8::try_from(one.ratings.first()?.1).ok()?;
            Some((first, u8::try_from(one.ratings.last()?.1).ok()?))
        })
        .collect();
    let function = Function::of(&pairs)?;
    let values = [
        ("activities", say::count(function.activities)),
        ("first", say::number(function.first)),
        ("last", say::number(function.last)),
        ("least", say::number(function.detectable)),
    ];
    Some(Point::plain(if function.detected() {
        words.text("reading-function-changed", &values)
    } else {
        words.text("reading-function-not-changed", &values)
    }))
}

/// Her notes: how many, or all of them.
pub(super) fn notes(gathered: &Gathered<'_>, unfolded: bool) -> Option<ReadingPart> {
    let words = gathered.words;
    let mut notes = Vec::new();
    for row in gathered.standing() {
        let note = match row.content {
            Content::Session(session) => session.note.as_ref(),
            Content::SignReported { note, .. } => note.as_ref(),
            _ => None,
        };
        if let Some(note) = note {
            notes.push((row.happened, note.as_str()));
        }
    }
    notes.sort_by_key(|(at, _)| at.millis());
    let points: Vec<Point> = if unfolded {
        notes
            .iter()
            .map(|(at, note)| {
                let values = [("day", say::on(gathered, at)), ("note", (*note).into())];
                Point::plain(words.text("reading-note", &values))
            })
            .collect()
    } else if notes.is_empty() {
        Vec::new()
    } else {
        let text = words.text("reading-notes-folded", &[("count", say::count(notes.len()))]);
        vec![Point::plain(text)]
    };
    gathered.part(Part::Notes, words.text("reading-notes", &[]), points)
}
