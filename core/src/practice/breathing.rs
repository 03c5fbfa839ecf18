//! Breathing to a pattern: which patterns may be paced (B1 to B5), what each instant asks (B6 to B8),
//! and when something sounds (B9).
//!
//! A [`Pattern`] can only be had from the plan and from what was answered about health, or as the
//! plain even breath. It is never read from a file, so that a hold cannot come back after a condition
//! was reported. How long is practised is the plan's or the person's choice; [`Breathing`] rounds it to
//! whole breaths.
//!
//! Start at [`offered`].

mod course;
mod cues;
mod guide;
mod pattern;
mod preset;
#[cfg(test)]
mod tests;

pub use course::{BreathNow, Breathing};
pub use cues::{Cue, CueKind, CueKinds, Tells};
pub use guide::{BreathingNote, belly_position, belly_position_source, notes};
pub use pattern::{Conditions, Holds, Pattern, PatternError, Phase};
pub use preset::{EVEN_MINUTES, Offered, Origin, Preset, PresetId, Refused, even_source, offered};
