//! How it was: after a practice with the clock, and for one that went as planned. What will be written
//! travels with the form, so that sending it later, or twice, writes what was shown and once.

use frond_core::companion::{Request, SessionTold, Told};
use frond_core::diary::entry::{Answer, Ended, EntryId, Ratings, UsedPart};
use frond_core::moment::Stamp;
use frond_core::programme::values::{Position, Practice, Rating, RatingKind};
use frond_core::screens::{RateScreen, Screen};

use super::log::{self, UNSAID, choices_of, name_of};
use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Field, Form, Kind, Page};

pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &RateScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let mut form = Form::to("/practice/rate", &screen.keep);
    form.also = vec![("tell", screen.keep_and_tell.clone())];
    form.hidden = vec![
        ("id", screen.id.to_string()),
        ("happened", screen.happened.to_string()),
        ("practice", code(&screen.practice)),
        ("parts", code(&screen.parts)),
        ("position", code(&screen.position)),
        ("unsaid", code(&screen.ended_unsaid)),
    ];
    let asked = screen.ratings.iter().map(|own| ("asked", name_of(own.rating).to_owned()));
    form.hidden.extend(asked);
    form.fields = screen.ratings.iter().map(|question| log::scale(question, fields)).collect();
    if let Some(label) = &screen.ended_label {
        let reasons = screen.ended.iter().map(|own| (code(&own.ended), own.label.clone()));
        let kind = Kind::One(choices_of("ended", reasons.collect(), fields));
        form.fields.insert(0, Field::new("ended", label, kind));
    }
    let note = Kind::Passage { value: fields.first("note").unwrap_or_default().to_owned() };
    let note = Field::new("note", &screen.note_label, note).hint(screen.note_caution.clone());
    let open = fields.first("note").is_some();
    let folded = Kind::Folded { parts: vec![note], open };
    form.fields.push(Field::new("own-note", &screen.note_label, folded));
    let mut actions = Vec::new();
    actions.extend(screen.different.clone());
    actions.extend(screen.actions.iter().cloned());
    let presses = visit.presses(&actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(screen.what.clone())
        .form(form)
        .presses(presses)
        .quiet(screen.cautions.clone())
        .answer())
}

/// What the form carries besides the answers.
struct Carried {
    id: EntryId,
    happened: Stamp,
    practice: Practice,
    parts: Vec<UsedPart>,
    position: Position,
    unsaid: Ended,
}

fn carried(fields: &Fields) -> Option<Carried> {
    Some(Carried {
        id: fields.first("id")?.parse().ok()?,
        happened: fields.first("happened")?.parse().ok()?,
        practice: decode(fields.first("practice")?)?,
        parts: decode(fields.first("parts")?)?,
        position: decode(fields.first("position")?)?,
        unsaid: decode(fields.first("unsaid")?)?,
    })
}

pub(super) fn told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let Some(carried) = carried(fields) else { return Err(visit.malformed()) };
    let ended = match fields.first("ended") {
        Some(ended) => decode(ended).ok_or_else(|| visit.malformed())?,
        None => carried.unsaid,
    };
    let mut problems = Vec::new();
    let ratings = ratings(visit, fields, &mut problems);
    let note = log::note(visit, fields).unwrap_or_else(|problem| {
        problems.push(problem);
        None
    });
    let (id, happened) = (carried.id, carried.happened);
    if problems.is_empty() {
        let told = SessionTold {
            practice: carried.practice,
            parts: carried.parts,
            position: carried.position,
            ended,
            ratings,
            signs: Vec::new(),
            note,
        };
        match visit.write(id, Told::Session(told), Some(happened))? {
            Ok(_) if fields.has("then", "tell") => return Ok(see("/signs")),
            Ok(kept) => return Ok(kept),
            Err(problem) => problems.push(problem),
        }
    }
    again(visit, fields, problems)
}

/// The form once more, with what it carried and what was answered.
fn again(visit: &mut Visit<'_>, fields: &Fields, problems: Vec<Problem>) -> Shown {
    let screen = match visit.ask(Request::Rate)? {
        Screen::Rate(screen) => screen,
        _ => match visit.ask(Request::LogAsPlanned)? {
            Screen::Rate(screen) => screen,
            other => return visit.screen(&other),
        },
    };
    let Some(carried) = carried(fields) else { return Err(visit.malformed()) };
    let screen = RateScreen {
        id: carried.id,
        happened: carried.happened,
        practice: carried.practice,
        parts: carried.parts,
        position: carried.position,
        ended_unsaid: carried.unsaid,
        ..screen
    };
    page(visit, &screen, fields, problems)
}

/// Each rating that was asked needs an answer; "rather not say" is one.
fn ratings(visit: &Visit<'_>, fields: &Fields, problems: &mut Vec<Problem>) -> Ratings {
    let mut ratings = Ratings::default();
    for kind in RatingKind::ALL {
        let name = name_of(kind);
        let answer = match fields.first(name) {
            Some(UNSAID) => Some(Answer::RatherNotSay),
            Some(number) => {
                let rating = number.parse().ok().and_then(|number| Rating::new(number).ok());
                rating.map(Answer::Rated)
            }
            None => None,
        };
        // Whether it was asked at all, the form says: it sends what it asks.
        if answer.is_none() && fields.has("asked", name) {
            problems.push(Problem::at(name, visit.words.text("page-error-rating", &[])));
        }
        match kind {
            RatingKind::Peak => ratings.peak = answer,
            RatingKind::Before => ratings.before = answer,
            RatingKind::After => ratings.after = answer,
            RatingKind::Worry => ratings.worry = answer,
        }
    }
    ratings
}
