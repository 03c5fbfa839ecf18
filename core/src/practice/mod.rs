//! What a person does at home, while she does it: breathing to a pattern, and practising with a clock.
//!
//! This room decides which breathing patterns may be paced and what each instant of one asks
//! ([`breathing`]), how much time of a practice certainly was practised ([`timed`]), and what is shown
//! after a stop ([`stopped`]). It keeps no clock of its own: time comes in as a value. It leaves to
//! [`crate::programme`] what is prescribed, to [`crate::safety`] what a sign means, to the companion
//! where the running practice is stored, and to the shells how a pacer or a button looks.
//!
//! Its rules stand in numbered sentences in `PRACTICE.md`, beside this file; tests name them.

pub mod breathing;
pub mod stopped;
pub mod timed;
