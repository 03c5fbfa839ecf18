//! English, the language Frond is developed in.
//!
//! Its safety text has **not** been reviewed by a licensed clinician. Until it has, no release can
//! be built.

use super::files::Files;
use super::language::{Direction, Language, Review};

pub(in crate::words) const LANGUAGE: Language = Language {
    tag: "en",
    name: "English",
    rules: "en",
    direction: Direction::LeftToRight,
    safety_text: Review::NotYet,
    pseudo: None,
    files: Files::Packed(include_bytes!(concat!(env!("OUT_DIR"), "/en.packed"))),
};
