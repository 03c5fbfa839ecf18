//! Sessions: one observation each, with everything told about it as components, so that one occasion stays
//! one thing. A search by component finds the ratings and minutes.

use super::code::{Code, LOINC_DURATION, LOINC_PAIN};
use super::form::{
    Annotation, Component, Concept, Named, Observation, Resource, Unit, Value, coded, codes,
    component, not_said, score, tenths,
};
use super::plan::practice;
use super::{Making, date_time, instant};
use crate::diary::entry::{Answer, Ended, Reason, Session, Settled};
use crate::programme::values::Position;
use crate::summary::looked::Sat;

/// Adds every session that counts.
pub(super) fn add(making: &mut Making<'_>) {
    let mut made = Vec::with_capacity(making.looked.sat.len());
    for sat in &making.looked.sat {
        let id = making.ids.entry(sat.row.first.id, Code::Trainer);
        made.push((id.clone(), session(making, sat, &id)));
    }
    for (id, session) in made {
        making.push(id, Resource::Observation(Box::new(session)));
    }
}

/// The id of a session's observation.
pub(super) fn id(making: &Making<'_>, entry: crate::diary::entry::EntryId) -> String {
    making.ids.entry(entry, Code::Trainer)
}

fn session(making: &Making<'_>, sat: &Sat<'_>, id: &str) -> Observation {
    let (row, session) = (&sat.row, sat.session);
    let mut made = making.observation(id, Code::Trainer, Named::Activity);
    made.code = practice(&session.practice);
    made.status = if row.corrections > 0 { "corrected" } else { "final" };
    made.based_on = making.plan_at(&row.happened).into_iter().collect();
    made.effective_date_time = Some(date_time(&row.happened));
    made.issued = Some(instant(&row.first.written));
    let note = session.note.as_ref().and_then(|note| making.texts.of(note.as_str()));
    made.note = note.map(|text| Annotation { text }).into_iter().collect();
    made.component = components(session);
    if let Some(answer) = making.looked.settled.get(&row.first.id) {
        made.component.push(settled(*answer));
    }
    made
}

fn components(session: &Session) -> Vec<Component> {
    // To a tenth of a minute, halves up.
    let minutes = |seconds: u32| tenths(seconds.saturating_add(3) / 6, Unit::Minutes);
    let all = session.parts.iter().map(|part| part.practised_seconds).fold(0, u32::saturating_add);
    let mut made = vec![
        component(coded(Code::AllMinutes).and_loinc(LOINC_DURATION), minutes(all)),
        codes(Code::MainMinutes, minutes(session.main_seconds())),
        codes(Code::PositionUsed, Value::Concept(coded(position(session.position)))),
    ];
    if let Some(size) = session.main_size() {
        made.push(codes(Code::MainSize, tenths(u32::from(size.get()), Unit::Millimetres)));
    }
    let (how, why) = ended(session.ended);
    made.push(codes(Code::HowEnded, Value::Concept(coded(how))));
    made.extend(why.map(|why| codes(Code::WhyStopped, Value::Concept(coded(why)))));
    let ratings = &session.ratings;
    let pain = |code| coded(code).and_loinc(LOINC_PAIN);
    made.extend(rating(pain(Code::Peak), ratings.peak));
    made.extend(rating(pain(Code::Before), ratings.before));
    made.extend(rating(pain(Code::After), ratings.after));
    made.extend(rating(coded(Code::Worry), ratings.worry));
    made
}

/// A rating; where none was asked or given, there is none.
fn rating(code: Concept, answer: Option<Answer>) -> Option<Component> {
    Some(match answer? {
        Answer::Rated(rating) => component(code, score(i64::from(rating.get()))),
        Answer::RatherNotSay => not_said(code),
    })
}

fn settled(answer: Settled) -> Component {
    let said = match answer {
        Settled::Yes => Code::Yes,
        Settled::NotYet => Code::NotYet,
        Settled::RatherNotSay => return not_said(coded(Code::DidSettle)),
    };
    codes(Code::DidSettle, Value::Concept(coded(said)))
}

fn position(position: Position) -> Code {
    match position {
        Position::OnBack => Code::OnBack,
        Position::SideLying => Code::SideLying,
        Position::Sitting => Code::Sitting,
        Position::Standing => Code::Standing,
        Position::Other => Code::OtherPosition,
    }
}

fn ended(ended: Ended) -> (Code, Option<Code>) {
    match ended {
        Ended::Finished => (Code::Finished, None),
        Ended::Stopped(reason) => (Code::Stopped, Some(why(reason))),
        Ended::CouldNotStart(reason) => (Code::CouldNotStart, Some(why(reason))),
    }
}

fn why(reason: Reason) -> Code {
    match reason {
        Reason::Discomfort => Code::Discomfort,
        Reason::DidNotGoIn => Code::DidNotGoIn,
        Reason::Upset => Code::Upset,
        Reason::Interrupted => Code::Interrupted,
        Reason::Other => Code::OtherReason,
    }
}
