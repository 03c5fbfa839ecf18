//! How each field of a draft is asked for, in which unit, and how a place in a draft is said in a sentence.
//! One table: a field stands in it or has no name on any page, and a test demands them all.

use super::super::readback::plain;
use super::{Draft, Place};
use crate::message_id;
use crate::words::Words;

/// Field, question, hint.
type Row = (&'static str, &'static str, Option<&'static str>);

/// `#` stands for a number; the fields of a rule stand under `rule`, whoever's it is.
const FIELDS: &[Row] = &[
    ("for_whom", message_id!("compose-for-whom"), Some(message_id!("compose-for-whom-hint"))),
    ("intended_for", message_id!("compose-intended-for"), None),
    ("language", message_id!("compose-language"), Some(message_id!("compose-language-hint"))),
    ("clinician.name", message_id!("compose-clinician-name"), None),
    ("clinician.clinic", message_id!("compose-clinician-clinic"), None),
    ("contact.name", message_id!("compose-contact-name"), None),
    ("contact.phone", message_id!("compose-contact-phone"), None),
    ("contact.hours", message_id!("compose-contact-hours"), None),
    ("contact.if_nobody_answers", message_id!("compose-contact-nobody"), None),
    ("out_of_hours.what_to_do", message_id!("compose-out-of-hours"), None),
    (
        "out_of_hours.phone",
        message_id!("compose-out-of-hours-phone"),
        Some(message_id!("compose-may-stay-empty")),
    ),
    (
        "emergency.number",
        message_id!("compose-emergency-number"),
        Some(message_id!("compose-emergency-hint")),
    ),
    ("emergency.country", message_id!("compose-emergency-country"), None),
    ("review_by", message_id!("compose-review-by"), Some(message_id!("compose-review-by-hint"))),
    ("start_at", message_id!("compose-start-at"), None),
    ("steps", message_id!("compose-steps"), None),
    ("steps.#.name", message_id!("compose-step-name"), None),
    ("steps.#.practice", message_id!("compose-step-practice"), None),
    ("steps.#.parts", message_id!("compose-parts"), None),
    (
        "steps.#.parts.#.label",
        message_id!("compose-part-label"),
        Some(message_id!("compose-part-label-hint")),
    ),
    (
        "steps.#.parts.#.size_mm",
        message_id!("compose-part-size"),
        Some(message_id!("compose-part-size-hint")),
    ),
    ("steps.#.parts.#.minutes_least", message_id!("compose-minutes-least"), None),
    ("steps.#.parts.#.minutes_most", message_id!("compose-minutes-most"), None),
    ("steps.#.position", message_id!("compose-position"), None),
    ("steps.#.schedule.weekly_least", message_id!("compose-weekly-least"), None),
    ("steps.#.schedule.weekly_most", message_id!("compose-weekly-most"), None),
    ("steps.#.schedule.daily_most", message_id!("compose-daily-most"), None),
    (
        "steps.#.schedule.rest_days",
        message_id!("compose-rest-days"),
        Some(message_id!("compose-rest-days-hint")),
    ),
    (
        "steps.#.instruction",
        message_id!("compose-instruction"),
        Some(message_id!("compose-instruction-hint")),
    ),
    ("steps.#.gate", message_id!("compose-gate"), None),
    ("steps.#.maintain", message_id!("compose-maintain"), None),
    ("practices", message_id!("compose-practices"), None),
    ("practices.#.practice", message_id!("compose-practice-kind"), None),
    ("practices.#.name", message_id!("compose-practice-name"), None),
    ("practices.#.minutes_least", message_id!("compose-minutes-least"), None),
    ("practices.#.minutes_most", message_id!("compose-minutes-most"), None),
    ("practices.#.schedule.weekly_least", message_id!("compose-weekly-least"), None),
    ("practices.#.schedule.weekly_most", message_id!("compose-weekly-most"), None),
    ("practices.#.schedule.daily_most", message_id!("compose-daily-most"), None),
    (
        "practices.#.schedule.rest_days",
        message_id!("compose-rest-days"),
        Some(message_id!("compose-rest-days-hint")),
    ),
    ("practices.#.breath.in_seconds", message_id!("compose-breath-in"), None),
    (
        "practices.#.breath.hold_in_seconds",
        message_id!("compose-breath-hold-in"),
        Some(message_id!("compose-breath-hold-hint")),
    ),
    ("practices.#.breath.out_seconds", message_id!("compose-breath-out"), None),
    (
        "practices.#.breath.hold_out_seconds",
        message_id!("compose-breath-hold-out"),
        Some(message_id!("compose-breath-hold-hint")),
    ),
    (
        "practices.#.instruction",
        message_id!("compose-instruction"),
        Some(message_id!("compose-instruction-hint")),
    ),
    ("rule", message_id!("compose-rule"), None),
    ("rule.step_up", message_id!("compose-step-up"), None),
    ("rule.step_back", message_id!("compose-step-back"), None),
    ("rule.pause", message_id!("compose-pause"), None),
    (
        "rule.after_gap_days",
        message_id!("compose-after-gap"),
        Some(message_id!("compose-after-gap-hint")),
    ),
    ("rule.#.days", message_id!("compose-days"), None),
    ("rule.#.practised_days", message_id!("compose-practised-days"), None),
    ("rule.#.within_days", message_id!("compose-within-days"), None),
    ("rule.#.rating", message_id!("compose-rating"), None),
    ("rule.#.at_most", message_id!("compose-at-most"), None),
    ("rule.#.at_least", message_id!("compose-at-least"), None),
    ("rule.#.last", message_id!("compose-last"), None),
    ("rule.#.sessions", message_id!("compose-sessions"), None),
    ("rule.#.of_last", message_id!("compose-of-last"), None),
    ("rule.#.times", message_id!("compose-times"), None),
    ("rule.#.target", message_id!("compose-target"), None),
    (
        "screening_every_days",
        message_id!("compose-screening"),
        Some(message_id!("compose-screening-hint")),
    ),
    ("stricter_signs", message_id!("compose-stricter"), Some(message_id!("compose-stricter-hint"))),
    ("stricter_signs.#.sign", message_id!("compose-sign"), None),
    ("stricter_signs.#.tier", message_id!("compose-tier"), None),
    (
        "spotting_note_only",
        message_id!("compose-spotting"),
        Some(message_id!("compose-spotting-hint")),
    ),
    (
        "ratings_asked",
        message_id!("compose-ratings-asked"),
        Some(message_id!("compose-ratings-asked-hint")),
    ),
    ("late_after_hours", message_id!("compose-late"), Some(message_id!("compose-late-hint"))),
    ("recipients", message_id!("compose-recipients"), Some(message_id!("compose-recipients-hint"))),
    ("recipients.#.name", message_id!("compose-recipient-name"), None),
    (
        "recipients.#.key",
        message_id!("compose-recipient-key"),
        Some(message_id!("compose-recipient-key-hint")),
    ),
    ("signs_seen", message_id!("compose-signs-seen"), Some(message_id!("compose-signs-seen-hint"))),
    ("activities", message_id!("compose-activities"), Some(message_id!("compose-activities-hint"))),
    ("activities.#", message_id!("compose-activity"), None),
    (
        "activities_every_days",
        message_id!("compose-activities-every"),
        Some(message_id!("compose-activities-every-hint")),
    ),
    ("goals", message_id!("compose-goals"), Some(message_id!("compose-goals-hint"))),
    ("goals.#", message_id!("compose-goal"), None),
    (
        "own_cautions",
        message_id!("compose-own-cautions"),
        Some(message_id!("compose-own-cautions-hint")),
    ),
    ("own_cautions.#", message_id!("compose-own-caution"), None),
    ("manner", message_id!("compose-manner"), None),
    ("manner.numbers_folded", message_id!("compose-numbers-folded"), None),
    ("manner.grounding_first", message_id!("compose-grounding-first"), None),
    ("manner.contact_on_stop", message_id!("compose-contact-on-stop"), None),
];

/// The row of a field.
fn row(name: &str) -> Option<&'static Row> {
    let mut pattern = Vec::new();
    for part in name.split('.') {
        match part {
            // A step's own rule is asked for as any rule.
            "rule" => pattern = vec!["rule"],
            number if number.bytes().all(|byte| byte.is_ascii_digit()) => pattern.push("#"),
            part => pattern.push(part),
        }
    }
    // Every list of a rule asks for the same numbers.
    if let ["rule", "step_up" | "step_back" | "pause", "#", field] = pattern[..] {
        pattern = vec!["rule", "#", field];
    }
    let pattern = pattern.join(".");
    FIELDS.iter().find(|(field, ..)| *field == pattern)
}

/// How a field or list is asked for.
#[must_use]
pub fn label(name: &str, words: &Words) -> Option<String> {
    row(name).map(|(_, label, _)| words.text(label, &[]))
}

/// What helps to answer, where something does.
#[must_use]
pub fn hint(name: &str, words: &Words) -> Option<String> {
    row(name).and_then(|(.., hint)| *hint).map(|hint| words.text(hint, &[]))
}

impl Draft {
    /// A place in words: "Step 2, “Size 2”, part 1: widest diameter (mm)".
    #[must_use]
    pub fn place_said(&self, place: &Place, words: &Words) -> String {
        let said = self.thing_said(place.as_str(), words);
        match (said.is_empty(), label(place.as_str(), words)) {
            (true, field) => field.unwrap_or_default(),
            (false, None) => said,
            (false, Some(field)) => {
                words.text("compose-where", &[("at", said.into()), ("field", field.into())])
            }
        }
    }

    /// The things of lists that a place lies in: "Step 2, “Size 2”, part 1"; empty where it lies in none.
    #[must_use]
    pub fn thing_said(&self, place: &str, words: &Words) -> String {
        let parts: Vec<&str> = place.split('.').collect();
        let number = |part: &str| part.parse::<usize>().map(|at| plain::place(at + 1)).ok();
        let mut said: Vec<String> = Vec::new();
        let mut list = "";
        for part in &parts {
            if let Some(number) = number(part) {
                let number = [("number", number)];
                said.extend(match list {
                    "steps" => Some(self.step_said(part, words)),
                    "parts" => Some(words.text("compose-where-part", &number)),
                    "practices" => Some(words.text("compose-where-practice", &number)),
                    "step_up" => Some(words.text("compose-where-up", &number)),
                    "step_back" => Some(words.text("compose-where-back", &number)),
                    "pause" => Some(words.text("compose-where-pause", &number)),
                    "stricter_signs" => Some(words.text("compose-where-stricter", &number)),
                    "recipients" => Some(words.text("compose-where-recipient", &number)),
                    "activities" => Some(words.text("compose-where-activity", &number)),
                    "goals" => Some(words.text("compose-where-goal", &number)),
                    "own_cautions" => Some(words.text("compose-where-caution", &number)),
                    _ => None,
                });
            } else if *part == "rule" && parts.len() > 1 {
                said.push(words.text("compose-rule", &[]));
            }
            list = part;
        }
        said.join(", ")
    }

    /// "Step 2, “Size 2”".
    fn step_said(&self, index: &str, words: &Words) -> String {
        let at = index.parse::<usize>().unwrap_or_default();
        let number = plain::place(at + 1);
        match self.steps.get(at).filter(|step| !step.name.is_empty()) {
            Some(step) => words.text(
                "compose-where-step-named",
                &[("number", number), ("name", step.name.trimmed().into())],
            ),
            None => words.text("compose-where-step", &[("number", number)]),
        }
    }
}

#[cfg(test)]
pub(super) fn fields() -> impl Iterator<Item = &'static str> {
    FIELDS.iter().map(|(field, ..)| *field)
}
