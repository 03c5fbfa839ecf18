//! The screens of practising: what can be practised, the one question before trainers, breathing, the
//! practice with its clock, one found again, what is shown after a stop, and how it was.
//!
//! Leaves what counts as practised to [`crate::practice`], and how it is kept to the companion.

mod anything_new;
mod breathing;
mod found;
mod practices;
mod rate;
mod running;
mod stopped;

pub use anything_new::{AnythingNewScreen, NewChoice};
pub use breathing::{BreathingScreen, CueChoice, Length, PresetCard};
pub use found::FoundScreen;
pub use practices::{PracticeOption, PracticesScreen};
pub use rate::RateScreen;
pub use running::{Button, Mark, Pacer, PacerPhase, RunningScreen, SmallerChoice};
pub use stopped::StoppedScreen;

use serde::Serialize;

use crate::practice::breathing::PresetId;
use crate::programme::values::Minutes;

/// What is to be practised with the clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Begin {
    /// The present step.
    Step,
    /// The plan's other practice with this number, counted from 0.
    Practice(u8),
    /// Breathing to a pattern.
    Breathing {
        /// Which pattern.
        preset: PresetId,
        /// For how long.
        minutes: Minutes,
    },
}
