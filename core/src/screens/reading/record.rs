//! How far the summary can be trusted: what was left out of it, what was told late, put right, left out,
//! which plans were accepted although something about them was amiss, and what is missing.

use std::collections::HashMap;

use super::super::{entries, plain};
use super::gather::Gathered;
use super::{Part, Point, ReadingPart, say};
use crate::diary::entry::{Although, Content, Entry, EntryId, Session};
use crate::diary::resolve::Counted;
use crate::message_id;
use crate::moment::Stamp;
use crate::programme::read::read;
use crate::programme::values::{RatingKind, Revision};
use crate::summary::Received;

/// What is left out of the summary by her choice.
pub(super) fn narrowed(gathered: &Gathered<'_>) -> Vec<String> {
    let words = gathered.words;
    let narrowed = &gathered.summary.narrowed;
    if !narrowed.is_narrowed() {
        return Vec::new();
    }
    let mut says = vec![words.text("reading-narrowed", &[])];
    match (narrowed.from, narrowed.to) {
        (Some(from), Some(to)) => says.push(words.text(
            "reading-narrowed-span",
            &[("from", say::day(gathered, from).into()), ("to", say::day(gathered, to).into())],
        )),
        (Some(from), None) => says.push(
            words.text("reading-narrowed-from", &[("from", say::day(gathered, from).into())]),
        ),
        (None, Some(to)) => {
            says.push(words.text("reading-narrowed-to", &[("to", say::day(gathered, to).into())]));
        }
        (None, None) => {}
    }
    if narrowed.notes_left_out {
        says.push(words.text("reading-narrowed-notes", &[]));
    }
    if narrowed.questions_left_out {
        says.push(words.text("reading-narrowed-questions", &[]));
    }
    says
}

/// When it was made, and whose it is.
pub(super) fn about(gathered: &Gathered<'_>, received: &Received) -> Vec<String> {
    let words = gathered.words;
    let summary = gathered.summary;
    let mut says = Vec::new();
    if let Some(plan) = gathered.programme() {
        says.push(words.text("reading-for", &[("name", plan.for_whom.as_str().into())]));
    }
    let made = [
        ("day", say::on(gathered, &summary.made)),
        ("year", summary.made.local().format("%Y").to_string().into()),
        ("time", summary.made.local().format("%H:%M").to_string().into()),
    ];
    says.push(words.text("reading-made", &made));
    says.push(words.text("reading-signed", &[("pin", received.from.to_string().into())]));
    says
}

/// How the diary was kept.
pub(super) fn kept(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let mut points = lowered(gathered);
    points.extend(late(gathered));
    points.extend(left_out(gathered));
    points.extend(accepted(gathered));
    let marks = &gathered.summary.marks;
    if marks.missing_entries > 0 {
        let values =
            [("count", plain::whole(i64::try_from(marks.missing_entries).unwrap_or(i64::MAX)))];
        points.push(Point::plain(words.text("reading-missing", &values)));
    }
    if marks.erased > 0 {
        points.push(Point::plain(words.text("reading-erased", &[("count", marks.erased.into())])));
    }
    if marks.restored > 0 {
        points.push(Point::plain(
            words.text("reading-restored", &[("count", marks.restored.into())]),
        ));
    }
    gathered.part(Part::Kept, words.text("reading-kept", &[]), points)
}

/// Ratings lower now than they once were.
fn lowered(gathered: &Gathered<'_>) -> Vec<Point> {
    let words = gathered.words;
    let mut versions: HashMap<EntryId, Vec<&Entry>> = HashMap::new();
    for entry in &gathered.summary.entries {
        if let Content::Correction { of, .. } = &entry.what {
            versions.entry(*of).or_default().push(entry);
        }
    }
    let mut points = Vec::new();
    for sat in gathered.sat.iter().filter(|sat| sat.row.corrections > 0) {
        let later = versions.get(&sat.row.first.id).map(Vec::as_slice).unwrap_or_default();
        let Some(when) = written(&sat.row, later) else { continue };
        for kind in RatingKind::ALL {
            let earlier = highest(&sat.row, later, kind);
            let now = sat.session.ratings.given(kind).map(|rating| rating.get());
            let (Some(old), true) = (earlier, now < earlier) else { continue };
            let name = plain::rating_name(words, kind).into();
            let day = say::on(gathered, &sat.row.happened);
            let old = plain::whole(old);
            let changed = say::on(gathered, &when);
            points.push(Point::plain(match now {
                Some(new) => words.text(
                    "reading-lowered",
                    &[
                        ("day", day),
                        ("rating", name),
                        ("old", old),
                        ("new", plain::whole(new)),
                        ("changed", changed),
                    ],
                ),
                None => words.text(
                    "reading-rating-taken-out",
                    &[("day", day), ("rating", name), ("old", old), ("changed", changed)],
                ),
            }));
        }
    }
    points
}

/// When the version that counts was written.
fn written(row: &Counted<'_>, later: &[&Entry]) -> Option<Stamp> {
    later.iter().find_map(|entry| match &entry.what {
        Content::Correction { content, .. } if std::ptr::eq(content.as_ref(), row.content) => {
            Some(entry.written)
        }
        _ => None,
    })
}

/// The highest rating that any version gave.
fn highest(row: &Counted<'_>, later: &[&Entry], kind: RatingKind) -> Option<u8> {
    let first = std::iter::once(&row.first.what);
    let corrected = later.iter().filter_map(|entry| match &entry.what {
        Content::Correction { content, .. } => Some(content.as_ref()),
        _ => None,
    });
    first
        .chain(corrected)
        .filter_map(|content| match content {
            Content::Session(session) => session.ratings.given(kind).map(|rating| rating.get()),
            _ => None,
        })
        .max()
}

/// Sessions written down later than the programme allows for.
fn late(gathered: &Gathered<'_>) -> Option<Point> {
    let words = gathered.words;
    let hours = gathered.programme()?.late_after_hours.get();
    let most = i64::from(hours) * 3_600_000;
    let inner: Vec<String> = gathered
        .sat
        .iter()
        .filter(|sat| sat.row.first.written.millis() - sat.row.happened.millis() > most)
        .map(|sat| {
            let values = [
                ("day", say::on(gathered, &sat.row.happened)),
                ("written", say::on(gathered, &sat.row.first.written)),
            ];
            words.text("reading-late-session", &values)
        })
        .collect();
    let values = [("count", say::count(inner.len())), ("hours", plain::whole(hours))];
    (!inner.is_empty()).then(|| Point { text: words.text("reading-late", &values), inner })
}

/// What she left out of her diary.
fn left_out(gathered: &Gathered<'_>) -> Option<Point> {
    let words = gathered.words;
    let struck: Vec<&Counted<'_>> = gathered.counted.iter().filter(|row| row.struck).collect();
    let inner: Vec<String> = struck
        .iter()
        .filter_map(|row| match row.content {
            Content::Session(session) => Some(left_out_session(gathered, row, session)),
            _ => None,
        })
        .collect();
    let values = [("count", say::count(struck.len())), ("sessions", say::count(inner.len()))];
    (!struck.is_empty()).then(|| Point { text: words.text("reading-left-out", &values), inner })
}

fn left_out_session(gathered: &Gathered<'_>, row: &Counted<'_>, session: &Session) -> String {
    let words = gathered.words;
    let told = entries::tell(words, &Content::Session(session.clone()));
    let values = [("day", say::on(gathered, &row.happened)), ("told", told.into())];
    words.text("reading-left-out-session", &values)
}

/// Plans before the one in force that she accepted although something about them was amiss; she was told and chose so.
/// What is to be said of the one in force stands beside it.
fn accepted(gathered: &Gathered<'_>) -> Vec<Point> {
    let words = gathered.words;
    let in_force = acceptances(gathered).next_back().map(|(row, ..)| row.place);
    acceptances(gathered)
        .filter(|(row, ..)| Some(row.place) != in_force)
        .filter(|(.., although)| !although.is_empty())
        .map(|(row, carried, revision, although)| {
            let number = plain::whole(revision.get());
            let plan = match read(carried.as_bytes()) {
                Ok(plan) => words.text(
                    "reading-programme",
                    &[
                        ("clinician", plan.clinician.name.as_str().into()),
                        ("revision", number),
                        ("day", say::on(gathered, &plan.issued_at)),
                    ],
                ),
                // What is wrong with it is said where it would be used.
                Err(_) => words.text("entries-programme", &[("revision", number)]),
            };
            let values = [("day", say::on(gathered, &row.happened)), ("plan", plan.into())];
            let inner = although.iter().map(|one| words.text(although_id(*one), &[])).collect();
            Point { text: words.text("reading-accepted", &values), inner }
        })
        .collect()
}

/// What was amiss with the plan in force when it was accepted.
pub(super) fn in_spite_of(gathered: &Gathered<'_>) -> Vec<String> {
    let words = gathered.words;
    let Some((.., although)) = acceptances(gathered).next_back() else { return Vec::new() };
    let say = |one: &Although| {
        let although = words.text(although_id(*one), &[]).into();
        words.text("reading-accepted-now", &[("although", although)])
    };
    although.iter().map(say).collect()
}

type Acceptance<'a> = (&'a Counted<'a>, &'a str, Revision, &'a [Although]);

fn acceptances<'a>(gathered: &'a Gathered<'_>) -> impl DoubleEndedIterator<Item = Acceptance<'a>> {
    gathered.standing().filter_map(|row| match row.content {
        Content::ProgrammeAccepted { carried, revision, although, .. } => {
            Some((row, carried.as_ref(), *revision, although.as_slice()))
        }
        _ => None,
    })
}

fn although_id(although: Although) -> &'static str {
    match although {
        Although::Unsigned => message_id!("reading-although-unsigned"),
        Although::OtherKey => message_id!("reading-although-other-key"),
        Although::OlderRevision => message_id!("reading-although-older"),
        Although::SameRevision => message_id!("reading-although-same"),
    }
}
