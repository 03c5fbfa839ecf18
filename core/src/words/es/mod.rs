//! Spanish, neutral between countries, addressing the person as "tú".
//!
//! Its safety text has **not** been reviewed by a licensed clinician who speaks Spanish; no release offers
//! it until it has.
//!
//! Words chosen: *dilatador* for trainer (the usual one is a person in Spanish), *tu especialista* for your
//! clinician and *persona* where a noun would tell a gender. Where countries differ on a word of the safety
//! text, both stand there.

use super::language::{Direction, Language, Review};

pub(in crate::words) const LANGUAGE: Language = Language {
    tag: "es",
    name: "Español",
    rules: "es",
    direction: Direction::LeftToRight,
    safety_text: Review::NotYet,
    pseudo: None,
    files: FILES,
};

const FILES: &[(&str, &str)] = &[
    ("common.ftl", include_str!("common.ftl")),
    ("safety.ftl", include_str!("safety.ftl")),
    ("today.ftl", include_str!("today.ftl")),
    ("session.ftl", include_str!("session.ftl")),
    ("practice.ftl", include_str!("practice.ftl")),
    ("reminders.ftl", include_str!("reminders.ftl")),
    ("accept.ftl", include_str!("accept.ftl")),
    ("leaving.ftl", include_str!("leaving.ftl")),
    ("ladder.ftl", include_str!("ladder.ftl")),
    ("replay.ftl", include_str!("replay.ftl")),
    ("suggestion.ftl", include_str!("suggestion.ftl")),
    ("keeping.ftl", include_str!("keeping.ftl")),
    ("summary.ftl", include_str!("summary.ftl")),
    ("first_run.ftl", include_str!("first_run.ftl")),
    ("entry.ftl", include_str!("entry.ftl")),
    ("visit.ftl", include_str!("visit.ftl")),
    ("pause.ftl", include_str!("pause.ftl")),
    ("settings.ftl", include_str!("settings.ftl")),
    ("shows.ftl", include_str!("shows.ftl")),
    ("readback.ftl", include_str!("readback.ftl")),
    ("reading.ftl", include_str!("reading.ftl")),
    ("page.ftl", include_str!("page.ftl")),
    ("phone.ftl", include_str!("phone.ftl")),
    ("handover.ftl", include_str!("handover.ftl")),
    ("compose.ftl", include_str!("compose.ftl")),
    ("desk.ftl", include_str!("desk.ftl")),
    ("cabinet.ftl", include_str!("cabinet.ftl")),
    ("insight.ftl", include_str!("insight.ftl")),
    ("letter.ftl", include_str!("letter.ftl")),
];
