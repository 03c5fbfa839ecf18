//! What is true in Frond.
//!
//! The core knows no foreign interface, no screen toolkit, no ambient clock, zone or randomness:
//! the moment comes in as a value ([`moment::Moment`]); files, random bytes and key keeping come in
//! through small traits ([`ports`]). Start at [`companion`], the one door; every room is named by what it
//! decides.
#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        reason = "tests may fail loudly"
    )
)]

pub mod companion;
pub mod diary;
pub mod handover;
pub mod insight;
pub mod moment;
mod packed;
pub mod ports;
pub mod practice;
pub mod programme;
pub mod progression;
pub mod reminders;
pub mod safety;
pub mod schema;
pub mod screens;
pub mod sealing;
pub mod summary;
mod trouble;
pub mod whole;
pub mod words;
