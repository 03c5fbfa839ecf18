//! What is needed to change a copy of the project in many places, each behind a switch, to build it once and to run tests
//! with one switch on: for mutation testing here, and for the controls of the hazard log in `tests/controls`.
//!
//! Decides how the project is copied, built and run. Leaves to the programs which changes are made and what is made of it.

#![cfg_attr(test, allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly"))]

pub mod compile;
pub mod process;
pub mod project;

/// Whatever went wrong, with words for it.
pub type Failure = Box<dyn std::error::Error + Send + Sync>;
