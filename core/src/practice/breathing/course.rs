//! A whole breathing practice as a pure function of the time that has passed (B6 to B8).

use serde::Serialize;

use super::pattern::{Pattern, Phase};
use crate::programme::values::Minutes;

/// A pattern breathed for a whole number of breaths.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Breathing {
    pattern: Pattern,
    breaths: u64,
}

/// What one instant of a breathing practice asks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct BreathNow {
    /// The phase.
    pub phase: Phase,
    /// How much of the phase has passed, in milliseconds; less than `phase_millis`.
    pub into_millis: u64,
    /// The phase's whole length in milliseconds.
    pub phase_millis: u64,
    /// How full the breath is, 0 (out) to 1,000 (in). Changes without a jump.
    pub fullness: u16,
    /// Which breath, counted from 1.
    pub breath: u64,
    /// How many there are.
    pub breaths: u64,
    /// Time left of the whole practice, in milliseconds; at least 1.
    pub left_millis: u64,
}

impl Breathing {
    /// The least whole number of breaths that fills `minutes`. It ends with a breath out or its hold,
    /// so it may last up to one breath longer.
    #[must_use]
    pub fn of_minutes(pattern: Pattern, minutes: Minutes) -> Self {
        let asked = u64::from(minutes.get()) * 60_000;
        // Not zero: a pattern has at least five seconds.
        Self { pattern, breaths: asked.div_ceil(pattern.breath_millis().max(1)) }
    }

    /// The whole breaths of a practice whose length is known already.
    #[must_use]
    pub fn of_millis(pattern: Pattern, whole_millis: u64) -> Self {
        Self { pattern, breaths: whole_millis / pattern.breath_millis().max(1) }
    }

    /// The pattern.
    #[must_use]
    pub fn pattern(&self) -> Pattern {
        self.pattern
    }

    /// How many breaths.
    #[must_use]
    pub fn breaths(&self) -> u64 {
        self.breaths
    }

    /// The whole length in milliseconds.
    #[must_use]
    pub fn whole_millis(&self) -> u64 {
        self.breaths * self.pattern.breath_millis()
    }

    /// What the instant `elapsed_millis` after the beginning asks; `None` once it is over.
    ///
    /// Time that was paused is not part of `elapsed_millis`.
    #[must_use]
    pub fn at(&self, elapsed_millis: u64) -> Option<BreathNow> {
        let left_millis =
            self.whole_millis().checked_sub(elapsed_millis).filter(|left| *left > 0)?;
        let breath_millis = self.pattern.breath_millis();
        let mut into_millis = elapsed_millis % breath_millis;
        for (phase, phase_millis) in self.pattern.phases() {
            if into_millis < phase_millis {
                return Some(BreathNow {
                    phase,
                    into_millis,
                    phase_millis,
                    fullness: fullness(phase, into_millis, phase_millis),
                    breath: elapsed_millis / breath_millis + 1,
                    breaths: self.breaths,
                    left_millis,
                });
            }
            into_millis -= phase_millis;
        }
        None
    }
}

fn fullness(phase: Phase, into: u64, whole: u64) -> u16 {
    // At most 1,000, because `into` is less than `whole`.
    let share = u16::try_from(into * 1000 / whole.max(1)).unwrap_or(1000);
    match phase {
        Phase::In => share,
        Phase::HoldIn => 1000,
        Phase::Out => 1000 - share,
        Phase::HoldOut => 0,
    }
}
