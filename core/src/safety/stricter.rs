//! What a programme may change about a sign's tier: make it stricter, never milder.
//!
//! The one exception is spotting after radiotherapy, which a programme may let a person only note.
//! [`tier_in_force`] is the only place that decides which tier holds.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::sign::Sign;
use super::source::{self, Source};
use super::tier::Tier;

/// A line of a programme that makes one sign stricter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StricterSign {
    /// The sign.
    pub sign: Sign,
    /// The tier it has under this programme.
    pub tier: Tier,
}

/// Why such a line is refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum StricterError {
    /// The line would make a sign milder than it is.
    #[error(
        "\"{}\" would be milder than this sign is: it is \"{}\", and a programme can only make a \
         sign stricter. \
         Give a graver tier or leave the line out.",
        .tier.name(), .sign.tier().name()
    )]
    Milder {
        /// The sign.
        sign: Sign,
        /// The tier the line asks for.
        tier: Tier,
    },
    /// The erase mark is not a sign a programme can speak of.
    #[error("\"a_caution\" is a mark that erasing leaves. Name the sign that is meant.")]
    NotASign,
}

/// Checks one line of a programme. Repeating the tier a sign already has is allowed.
///
/// To let spotting after radiotherapy be noted only, a programme has a line of its own.
///
/// # Errors
/// [`StricterError`] for a milder tier, and for the mark that erasing leaves.
pub fn check_stricter(line: StricterSign) -> Result<(), StricterError> {
    let StricterSign { sign, tier } = line;
    if !sign.can_be_asked() {
        return Err(StricterError::NotASign);
    }
    if tier < sign.tier() {
        return Err(StricterError::Milder { sign, tier });
    }
    Ok(())
}

/// The tier that holds for a sign under a programme.
///
/// `spotting_note_only` is the programme's line "spotting after radiotherapy may be noted only".
/// A line that would make a sign milder has no effect here, even if nobody checked it; of several
/// lines the gravest counts, and a line that names spotting outweighs `spotting_note_only`.
pub fn tier_in_force(sign: Sign, stricter: &[StricterSign], spotting_note_only: bool) -> Tier {
    let own = if sign == Sign::Spotting && spotting_note_only { Tier::Note } else { sign.tier() };
    stricter
        .iter()
        .filter(|line| check_stricter(**line).is_ok() && line.sign == sign)
        .map(|line| line.tier)
        .fold(own, Tier::max)
}

/// The ground of the one exception: spotting after radiotherapy that may be noted only.
pub fn spotting_note_source() -> Source {
    source::SPOTTING_NOTED
}
