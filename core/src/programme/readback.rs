//! Says a whole programme back in plain sentences, in order, so that the clinician and the person can check
//! that it is what was meant. Every line of the programme is said. The clinician's own texts are repeated as
//! they stand, in their own language.
//!
//! Decides nothing: what the sentences of a rule mean is [`crate::progression`]'s.

pub(super) mod plain;
pub(super) mod rules;

use super::plan::{Breath, IntendedFor, Part, PracticePlan, Programme, Step};
use super::rule::Rule;
use super::values::{Practice, RatingKind, StepId};
use crate::words::{Value, Words};
use plain::{
    capital, days, hours, list, minutes, name_of, place, position, rated, schedule, sign, tier,
    when, whole, widest,
};

/// Whom a programme is said back to.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum To {
    /// Whoever wrote it, to check every line.
    Clinician,
    /// The person it is for: what only programs tell apart by is left out.
    Person,
}

/// What a step is called in a sentence.
pub(super) type Naming<'a> = dyn Fn(&StepId) -> String + 'a;

/// So many characters of a key are said to the person.
const KEY_END: usize = 6;

/// The whole programme in sentences, one each.
#[must_use]
pub fn read_back(programme: &Programme, words: &Words) -> Vec<String> {
    to(programme, To::Clinician, words)
}

/// The same to the person it is for, a sentence for each of those, without ids; of a key only its end, by which two are
/// told apart.
#[must_use]
pub fn read_back_to_person(programme: &Programme, words: &Words) -> Vec<String> {
    to(programme, To::Person, words)
}

fn to(programme: &Programme, to: To, words: &Words) -> Vec<String> {
    let mut said = Vec::new();
    head(programme, to, words, &mut said);
    ladder(programme, to, words, &mut said);
    for plan in &programme.practices {
        said.push(practice(plan, to, words));
    }
    rules::of_the_programme(programme, words, &mut said);
    asking(programme, words, &mut said);
    signs(programme, to, words, &mut said);
    around(programme, to, words, &mut said);
    said
}

/// A rule alone in sentences, as it would stand in a programme for every step.
#[must_use]
pub fn read_back_rule(rule: &Rule, programme: &Programme, words: &Words) -> Vec<String> {
    let mut said = Vec::new();
    let on = words.text("readback-on-every-step", &[]);
    rules::rule(rule, &on, &|id| step_named(programme, id, words), words, &mut said);
    said
}

pub(super) fn head(p: &Programme, to: To, words: &Words, said: &mut Vec<String>) {
    let who = match p.intended_for {
        IntendedFor::Adult => words.text("readback-adult", &[]),
        IntendedFor::YoungerSafeguardingConfirmed => words.text("readback-younger", &[]),
    };
    let (revision, whom) = (whole(p.revision.get()), p.for_whom.to_string().into());
    let (name, clinic) =
        (p.clinician.name.to_string().into(), p.clinician.clinic.to_string().into());
    match to {
        To::Clinician => {
            let id = p.id.to_string().into();
            let values = [("revision", revision), ("id", id), ("whom", whom), ("who", who.into())];
            said.push(words.text("readback-head", &values));
            let (at, language) = (when(&p.issued_at, words).into(), p.language.to_string().into());
            let values = [("name", name), ("clinic", clinic), ("at", at), ("language", language)];
            said.push(words.text("readback-author", &values));
        }
        To::Person => {
            let values = [("revision", revision), ("whom", whom), ("who", who.into())];
            said.push(words.text("readback-head-plain", &values));
            let day = plain::day(p.issued_at.day(), words).into();
            let values = [("name", name), ("clinic", clinic), ("day", day)];
            said.push(words.text("readback-author-plain", &values));
        }
    }
    said.push(words.text("readback-review", &[("day", plain::day(p.review_by, words).into())]));
    said.push(words.text(
        "readback-contact",
        &[
            ("name", p.contact.name.to_string().into()),
            ("phone", p.contact.phone.to_string().into()),
            ("hours", p.contact.hours.to_string().into()),
            ("advice", p.contact.if_nobody_answers.to_string().into()),
        ],
    ));
    let advice: Value = p.out_of_hours.what_to_do.to_string().into();
    said.push(match &p.out_of_hours.phone {
        Some(phone) => {
            let phone = phone.to_string().into();
            words.text("readback-out-of-hours-phone", &[("advice", advice), ("phone", phone)])
        }
        None => words.text("readback-out-of-hours", &[("advice", advice)]),
    });
    said.push(words.text(
        "readback-emergency",
        &[
            ("country", p.emergency.country.to_string().into()),
            ("number", p.emergency.number.to_string().into()),
        ],
    ));
}

pub(super) fn ladder(p: &Programme, to: To, words: &Words, said: &mut Vec<String>) {
    if p.steps.is_empty() {
        said.push(words.text("readback-no-steps", &[]));
        return;
    }
    let count = place(p.steps.len());
    said.push(match &p.start_at {
        Some(id) => {
            let step = step_named(p, id, words).into();
            words.text("readback-steps-from", &[("count", count), ("step", step)])
        }
        None => words.text("readback-steps", &[("count", count)]),
    });
    for (index, step) in p.steps.iter().enumerate() {
        said.push(one_step(index, step, to, words));
        if let Some(own) = &step.rule {
            let on = words.text("readback-on-step", &[("number", place(index + 1))]);
            rules::rule(own, &on, &|id| step_named(p, id, words), words, said);
        }
    }
}

pub(super) fn one_step(index: usize, step: &Step, to: To, words: &Words) -> String {
    let parts: Vec<String> = step.parts.iter().map(|one| part(one, words)).collect();
    let parts = capital(&parts.join(&words.text("common-then", &[])));
    let mut values = vec![
        ("number", place(index + 1)),
        ("name", step.name.to_string().into()),
        ("practice", kind(&step.practice, to, words).into()),
        ("position", position(step.position, words).into()),
        ("parts", parts.into()),
        ("schedule", capital(&schedule(step.schedule, words)).into()),
    ];
    let mut said = vec![match to {
        To::Clinician => {
            values.push(("id", step.id.to_string().into()));
            words.text("readback-step", &values)
        }
        To::Person => words.text("readback-step-plain", &values),
    }];
    if step.maintain {
        said.push(words.text("readback-step-maintain", &[]));
    }
    if step.gate {
        said.push(words.text("readback-step-gate", &[]));
    }
    said.push(instruction(&step.instruction.to_string(), words));
    said.join(" ")
}

fn instruction(text: &str, words: &Words) -> String {
    words.text("readback-instruction", &[("text", text.into())])
}

pub(super) fn part(part: &Part, words: &Words) -> String {
    let time = minutes(part.minutes, words).into();
    match &part.trainer {
        Some(trainer) => {
            let size = widest(trainer.widest_diameter_tenths_mm, words).into();
            let label = trainer.label.to_string().into();
            words.text(
                "readback-part-trainer",
                &[("label", label), ("size", size), ("minutes", time)],
            )
        }
        None => words.text("readback-part-plain", &[("minutes", time)]),
    }
}

/// The kind of a practice; to the person without the id of one that has no name of its own.
fn kind(practice: &Practice, to: To, words: &Words) -> String {
    match (practice, to) {
        (Practice::Other(_), To::Person) => words.text("readback-practice-other-plain", &[]),
        _ => name_of(practice, words),
    }
}

pub(super) fn practice(plan: &PracticePlan, to: To, words: &Words) -> String {
    let mut said = vec![words.text(
        "readback-practice",
        &[
            ("name", plan.name.to_string().into()),
            ("practice", kind(&plan.practice, to, words).into()),
            ("minutes", minutes(plan.minutes, words).into()),
            ("schedule", schedule(plan.schedule, words).into()),
        ],
    )];
    said.extend(plan.breath.map(|one| breath(one, words)));
    said.push(instruction(&plan.instruction.to_string(), words));
    said.join(" ")
}

pub(super) fn breath(breath: Breath, words: &Words) -> String {
    let seconds = |tenths: u32| {
        let places = u8::from(!tenths.is_multiple_of(10));
        Value::decimal(f64::from(tenths) / 10.0, places)
    };
    let mut phases = Vec::new();
    let tenths = |tenths: u32| (tenths > 0).then(|| seconds(tenths));
    if let Some(seconds) = tenths(breath.in_tenths.get().into()) {
        phases.push(words.text("readback-breath-in", &[("seconds", seconds)]));
    }
    if let Some(seconds) = tenths(breath.hold_in_tenths.get().into()) {
        phases.push(words.text("readback-breath-hold", &[("seconds", seconds)]));
    }
    if let Some(seconds) = tenths(breath.out_tenths.get().into()) {
        phases.push(words.text("readback-breath-out", &[("seconds", seconds)]));
    }
    if let Some(seconds) = tenths(breath.hold_out_tenths.get().into()) {
        phases.push(words.text("readback-breath-rest", &[("seconds", seconds)]));
    }
    words.text("readback-breath", &[("phases", phases.join(", ").into())])
}

pub(super) fn asking(p: &Programme, words: &Words, said: &mut Vec<String>) {
    let asked: Vec<String> = RatingKind::ALL
        .into_iter()
        .filter(|kind| *kind == RatingKind::Peak || p.ratings_asked.contains(kind))
        .map(|kind| rated(kind, words))
        .collect();
    said.push(words.text("readback-asked", &[("ratings", asked.join(", ").into())]));
    let often = days(p.screening_every_days.get(), words).into();
    said.push(words.text("readback-screening", &[("days", often)]));
    if !p.activities.is_empty() {
        let activities = list(&p.activities, words).into();
        said.push(match p.activities_every_days {
            Some(every) => words.text(
                "readback-activities-every",
                &[("days", days(every.get(), words).into()), ("activities", activities)],
            ),
            None => words.text("readback-activities", &[("activities", activities)]),
        });
    }
    if !p.goals.is_empty() {
        let goals = list(&p.goals, words).into();
        said.push(words.text("readback-goals", &[("goals", goals)]));
    }
}

pub(super) fn signs(p: &Programme, to: To, words: &Words, said: &mut Vec<String>) {
    for line in &p.stricter_signs {
        let (sign, tier) = (sign(line.sign, words).into(), tier(line.tier, words).into());
        said.push(words.text("readback-sign-stricter", &[("sign", sign), ("tier", tier)]));
    }
    if p.spotting_note_only {
        said.push(words.text("readback-spotting", &[]));
    }
    for key in &p.signs_seen {
        let sign = sign(key.sign, words).into();
        said.push(match to {
            To::Clinician => {
                let entry = key.entry.to_string().into();
                words.text("readback-sign-seen", &[("sign", sign), ("entry", entry)])
            }
            To::Person => words.text("readback-sign-seen-plain", &[("sign", sign)]),
        });
    }
    for caution in &p.own_cautions {
        let caution = caution.to_string().into();
        said.push(words.text("readback-own-caution", &[("caution", caution)]));
    }
}

pub(super) fn around(p: &Programme, to: To, words: &Words, said: &mut Vec<String>) {
    if p.manner.numbers_folded {
        said.push(words.text("readback-numbers-folded", &[]));
    }
    if p.manner.grounding_first {
        said.push(words.text("readback-grounding-first", &[]));
    }
    if p.manner.contact_on_stop {
        said.push(words.text("readback-contact-on-stop", &[]));
    }
    for recipient in &p.recipients {
        let (name, key) = (recipient.name.to_string().into(), recipient.key.to_string());
        said.push(match to {
            To::Clinician => {
                words.text("readback-recipient", &[("name", name), ("key", key.into())])
            }
            To::Person => {
                let end = key.get(key.len().saturating_sub(KEY_END)..).unwrap_or(&key);
                words.text("readback-recipient-plain", &[("name", name), ("end", end.into())])
            }
        });
    }
}

/// "step 2, “Size 2”".
fn step_named(p: &Programme, id: &StepId, words: &Words) -> String {
    match (p.step_index(id), p.step(id)) {
        (Some(index), Some(step)) => {
            let name = step.name.to_string().into();
            words.text("readback-step-named", &[("number", place(index + 1)), ("name", name)])
        }
        _ => words.text("readback-step-unknown", &[("id", id.to_string().into())]),
    }
}

#[cfg(test)]
pub(super) mod tests;
