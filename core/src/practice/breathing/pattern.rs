//! Decides which patterns may be paced: 3 to 12 breaths a minute, and a hold only where the plan sets
//! it and nothing that was reported forbids it.

use std::collections::BTreeSet;
use std::fmt;

use serde::Serialize;

use crate::message_id;
use crate::programme::plan::Breath;
use crate::safety::{HoldCondition, Sign, holds_allowed};

/// One stretch of a breath.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Phase {
    /// Breathing in.
    In,
    /// Held after breathing in.
    HoldIn,
    /// Breathing out.
    Out,
    /// Held after breathing out.
    HoldOut,
}

impl Phase {
    /// The phases in the order of a breath.
    pub const ALL: [Phase; 4] = [Phase::In, Phase::HoldIn, Phase::Out, Phase::HoldOut];

    /// Whether the breath is held.
    #[must_use]
    pub fn is_hold(self) -> bool {
        matches!(self, Phase::HoldIn | Phase::HoldOut)
    }
}

/// What is known of the conditions with which breath holds are left out (B3).
///
/// Starts as "not asked", which forbids holds as much as any condition does.
#[derive(Clone, Default, PartialEq, Eq)]
pub struct Conditions {
    asked: bool,
    reported: BTreeSet<HoldCondition>,
}

// What a person has is nobody's business but hers.
impl fmt::Debug for Conditions {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Conditions(..)")
    }
}

impl Conditions {
    /// Nobody has asked yet.
    #[must_use]
    pub fn not_asked() -> Self {
        Self::default()
    }

    /// The questions were all answered; these were answered "yes" or "not sure".
    #[must_use]
    pub fn answered(reported: impl IntoIterator<Item = HoldCondition>) -> Self {
        Self { asked: true, reported: reported.into_iter().collect() }
    }

    /// The same, with what signs tell that were ever reported, closed ones too.
    #[must_use]
    pub fn with_signs(mut self, signs: impl IntoIterator<Item = Sign>) -> Self {
        self.reported.extend(signs.into_iter().filter_map(HoldCondition::told_by));
        self
    }

    /// The same, with conditions known otherwise.
    #[must_use]
    pub fn with(mut self, known: impl IntoIterator<Item = HoldCondition>) -> Self {
        self.reported.extend(known);
        self
    }

    /// Whether a hold that the plan sets may be kept.
    #[must_use]
    pub fn allow_holds(&self) -> bool {
        let reported: Vec<HoldCondition> = self.reported.iter().copied().collect();
        self.asked && holds_allowed(true, &reported)
    }
}

/// One breath that may be paced. Only this room makes one; it is written to no file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pattern {
    /// In, hold, out, hold; tenths of a second.
    tenths: [u16; 4],
}

/// What became of the holds of a prescribed pattern.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Holds {
    /// There are none in it.
    NoneSet,
    /// They stay as the plan sets them.
    Kept,
    /// They are left out, because of what was reported or because nobody has asked.
    LeftOut,
}

/// Why a pattern of the plan is not paced.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, thiserror::Error)]
pub enum PatternError {
    /// More than 12 breaths a minute.
    #[error("more than 12 breaths a minute: use the even breath, and ask the clinician")]
    TooFast,
    /// Fewer than 3 breaths a minute.
    #[error("fewer than 3 breaths a minute: use the even breath, and ask the clinician")]
    TooSlow,
    /// Breathing in or out takes no time.
    #[error("a breath without in or out: use the even breath, and ask the clinician")]
    InOrOutMissing,
    /// The holds have to be left out, and what remains is faster than 12 breaths a minute.
    #[error("too fast once the holds are left out: use the even breath, and ask the clinician")]
    TooFastWithoutHolds,
}

impl PatternError {
    /// The message id of what the person is told.
    #[must_use]
    pub fn word_id(self) -> &'static str {
        match self {
            PatternError::TooFast | PatternError::TooFastWithoutHolds => {
                message_id!("breathing-refused-fast")
            }
            PatternError::TooSlow => message_id!("breathing-refused-slow"),
            PatternError::InOrOutMissing => message_id!("breathing-refused-incomplete"),
        }
    }
}

impl Pattern {
    /// 12 breaths a minute, in tenths of a second a breath.
    pub const SHORTEST_TENTHS: u16 = 50;
    /// 3 breaths a minute, in tenths of a second a breath.
    pub const LONGEST_TENTHS: u16 = 200;
    /// The plain even breath: 5 seconds in, 5 seconds out, nothing held. See [`super::even_source`].
    pub const EVEN: Pattern = Pattern { tenths: [50, 0, 50, 0] };

    /// The pattern of a plan, with its holds only where `conditions` allow them.
    ///
    /// # Errors
    /// [`PatternError`] where it cannot be paced; the even breath is then what to offer.
    pub fn prescribed(
        breath: &Breath,
        conditions: &Conditions,
    ) -> Result<(Pattern, Holds), PatternError> {
        let written = [
            breath.in_tenths.get(),
            breath.hold_in_tenths.get(),
            breath.out_tenths.get(),
            breath.hold_out_tenths.get(),
        ];
        let pattern = Self::checked(written)?;
        if !pattern.holds() {
            return Ok((pattern, Holds::NoneSet));
        }
        if conditions.allow_holds() {
            return Ok((pattern, Holds::Kept));
        }
        let [breathe_in, _, out, _] = written;
        match Self::checked([breathe_in, 0, out, 0]) {
            Ok(pattern) => Ok((pattern, Holds::LeftOut)),
            Err(PatternError::TooFast) => Err(PatternError::TooFastWithoutHolds),
            Err(other) => Err(other),
        }
    }

    fn checked(tenths: [u16; 4]) -> Result<Self, PatternError> {
        let [breathe_in, _, out, _] = tenths;
        if breathe_in == 0 || out == 0 {
            return Err(PatternError::InOrOutMissing);
        }
        // At most 4 times 300: no overflow.
        let whole: u16 = tenths.iter().sum();
        if whole < Self::SHORTEST_TENTHS {
            Err(PatternError::TooFast)
        } else if whole > Self::LONGEST_TENTHS {
            Err(PatternError::TooSlow)
        } else {
            Ok(Self { tenths })
        }
    }

    /// Whether anything is held in it.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.phases().any(|(phase, _)| phase.is_hold())
    }

    /// The phases that take time, in order, each with its length in milliseconds.
    pub fn phases(&self) -> impl Iterator<Item = (Phase, u64)> {
        let lengths = self.tenths.map(|tenths| u64::from(tenths) * 100);
        Phase::ALL.into_iter().zip(lengths).filter(|(_, millis)| *millis > 0)
    }

    /// One whole breath in milliseconds, 5,000 to 20,000.
    #[must_use]
    pub fn breath_millis(&self) -> u64 {
        self.phases().map(|(_, millis)| millis).sum()
    }
}
