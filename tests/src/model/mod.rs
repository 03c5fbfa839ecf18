//! Decides what the rule says about a diary, a second time and as naively as possible: an oracle to
//! hold the rule engine against. Every call starts from the raw entries, keeps nothing, and follows the
//! numbered sentences of the rule one by one. It is slow on purpose; nothing here is meant for a phone.
//!
//! Read [`reading`] first (what stands), then [`ladder`] (which step), [`facts`] (which sessions),
//! [`criteria`] (what is met), [`signs`], and [`mod@outcome`]. It shares the entry, programme and outcome
//! *types* with the engine and none of its code.

pub mod criteria;
pub mod facts;
pub mod ladder;
pub mod outcome;
pub mod reading;
pub mod signs;

pub use outcome::{Judged, Said, outcome, said, verdicts};
