//! Signs, their tiers, and what a person is told.
//!
//! This room decides how grave a reported sign is, what the screen then says and in which order,
//! when the questions are asked, and which general cautions hold. It leaves to the rule engine what
//! an open sign does to a suggestion, to the diary how a sign is kept and closed, and to the shells
//! how a screen looks and how the telephone is opened.
//!
//! Start reading at [`Sign`]. `HAZARDS.md`, beside this file, is the hazard log, and
//! `PRIVACY.md` what can be found of Frond, where, and what stands in the way.

mod call;
mod care;
mod contacts;
mod group;
mod screening;
mod sign;
mod source;
mod stricter;
#[cfg(test)]
mod tests;
mod tier;

pub use call::{Call, Line, LineKind, StopAndCall, nobody_told, while_paused};
pub use care::{
    AFTER_DISTRESS, BreathCaution, Calming, CareNote, HoldCondition, grounding, grounding_source,
    holds_allowed,
};
pub use contacts::{Contacts, Dial, dialable};
pub use group::SignGroup;
pub use screening::{
    AfterAnythingNew, Answer, AnythingNew, Asked, FullList, Revision, Screening, Unanswered, Why,
};
pub use sign::Sign;
pub use source::{Mark, Source};
pub use stricter::{
    StricterError, StricterSign, check_stricter, spotting_note_source, tier_in_force,
};
pub use tier::Tier;
