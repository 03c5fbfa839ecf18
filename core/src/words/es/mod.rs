//! Spanish, neutral between countries, addressing the person as "tú".
//!
//! Its safety text has **not** been reviewed by a licensed clinician who speaks Spanish; no release offers
//! it until it has.
//!
//! Words chosen: *dilatador* for trainer (the usual one is a person in Spanish), *tu especialista* for your
//! clinician and *persona* where a noun would tell a gender. Where countries differ on a word of the safety
//! text, both stand there.

use super::files::Files;
use super::language::{Direction, Language, Review};

pub(in crate::words) const LANGUAGE: Language = Language {
    tag: "es",
    name: "Español",
    rules: "es",
    direction: Direction::LeftToRight,
    safety_text: Review::NotYet,
    pseudo: None,
    files: Files::Packed(include_bytes!(concat!(env!("OUT_DIR"), "/es.packed"))),
};
