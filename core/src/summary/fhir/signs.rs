//! Signs that were noted, those that are open, a pause that stands, and the talks that closed something.

use super::code::Code;
use super::form::{
    Annotation, Communication, Flag, Named, Period, Reference, Resource, Value, coded, codes, sign,
};
use super::{Making, date_time, instant, period, sessions};
use crate::diary::entry::{Content, EntryId, SignKey, SignNoted};
use crate::diary::resolve::Counted;
use crate::safety::Tier;
use crate::summary::flat::noted;

/// Adds signs, flags and talks.
pub(super) fn add(making: &mut Making<'_>) {
    let mut made = Vec::new();
    for row in making.looked.standing() {
        for one in noted(row) {
            made.push(observed(making, row, one));
        }
        if let Content::Clearing { with, signs, closes_pause } = row.content {
            made.push(talk(making, row, with.as_str(), signs, *closes_pause));
        }
    }
    made.extend(flags(making));
    for (id, resource) in made {
        making.push(id, resource);
    }
}

fn observed(making: &Making<'_>, row: &Counted<'_>, noted: SignNoted) -> (String, Resource) {
    let id = noted_id(making, row.first.id, noted.sign);
    let mut made = making.observation(&id, Code::SignNoted, Named::Survey);
    made.effective_date_time = Some(date_time(&row.happened));
    made.issued = Some(instant(&row.first.written));
    made.value = Some(Value::Concept(sign(noted.sign)));
    made.component = vec![codes(Code::SignTier, Value::Concept(coded(tier(noted.tier))))];
    match row.content {
        Content::Session(_) => {
            made.derived_from = vec![Reference::to(&sessions::id(making, row.first.id))];
        }
        Content::SignReported { note: Some(note), .. } => {
            let text = making.texts.of(note.as_str());
            made.note = text.map(|text| Annotation { text }).into_iter().collect();
        }
        _ => {}
    }
    (id, Resource::Observation(Box::new(made)))
}

fn noted_id(making: &Making<'_>, entry: EntryId, which: crate::safety::Sign) -> String {
    let name = crate::summary::stored::name(&which);
    making.ids.of_entry(entry, Code::SignNoted, &name)
}

fn flag_id(making: &Making<'_>, key: &SignKey) -> String {
    let name = crate::summary::stored::name(&key.sign);
    making.ids.of_entry(key.entry, Code::SignTier, &name)
}

/// What is open now: told whatever the days shown.
fn flags(making: &Making<'_>) -> Vec<(String, Resource)> {
    let present = &making.looked.summary.present;
    let open = present.open_signs.iter().map(|open| {
        let id = flag_id(making, &open.key);
        (id, sign(open.key.sign), Some(period(&open.since, None)))
    });
    let pause = present.pause.iter().map(|pause| {
        let since: Option<Period> = pause.since.as_ref().map(|since| period(since, None));
        (making.ids.about(Code::Pause), coded(Code::Pause), since)
    });
    open.chain(pause)
        .map(|(id, code, period)| {
            let subject = making.subject();
            let flag = Flag { id: id.clone(), status: "active", code, subject, period };
            (id, Resource::Flag(Box::new(flag)))
        })
        .collect()
}

/// A talk, about the signs that it closed as far as they are in this bundle.
fn talk(
    making: &Making<'_>,
    row: &Counted<'_>,
    with: &str,
    signs: &[SignKey],
    closes_pause: bool,
) -> (String, Resource) {
    let id = making.ids.entry(row.first.id, Code::Talk);
    let there = |key: &&SignKey| {
        making.looked.standing().any(|row| {
            row.first.id == key.entry
                && (row.first.what.signs().iter().chain(row.content.signs()))
                    .any(|one| one.sign == key.sign)
        })
    };
    let about = signs
        .iter()
        .filter(there)
        .map(|key| Reference::to(&noted_id(making, key.entry, key.sign)))
        .collect();
    let said = if closes_pause {
        coded(Code::Talk).worded(Some("It ended the pause.".to_owned()))
    } else {
        coded(Code::Talk)
    };
    let with = making.texts.of(with).map(|name| Reference::by_name("Practitioner", name));
    let made = Communication {
        id: id.clone(),
        status: "completed",
        subject: making.subject(),
        topic: said,
        about,
        sent: date_time(&row.happened),
        sender: making.subject(),
        recipient: with.into_iter().collect(),
    };
    (id, Resource::Communication(Box::new(made)))
}

fn tier(tier: Tier) -> Code {
    match tier {
        Tier::Emergency => Code::TierEmergency,
        Tier::Stop => Code::TierStop,
        Tier::AskFirst => Code::TierAskFirst,
        Tier::Note => Code::TierNote,
    }
}
