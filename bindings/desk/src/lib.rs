//! `frond`, the command line: for trying a plan out, for the clinician's side, and for keeping a diary
//! without a phone. It shows the companion's screens as text and decides nothing of its own. Start at
//! `args` for what can be typed and at `commands` for what it does.
//!
//! A library only so that what its pages read from outside can be tried by a fuzzer: [`outside`]. The program
//! is [`run`].
#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        reason = "tests may fail loudly"
    )
)]

mod args;
mod ask;
mod charts;
mod clinic;
mod clock;
mod commands;
mod crash;
mod failure;
mod file;
mod gather;
mod marks;
mod opening;
pub mod outside;
mod pages;
mod place;
mod print;
mod scenario;
mod secret;
mod when;

use std::process::ExitCode;

use clap::Parser;

/// The program: reads what was typed, does it, and says how it ended.
#[must_use]
pub fn run() -> ExitCode {
    crash::leaves_nothing();
    match commands::run(args::Args::parse().command) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            print::to_stderr(&failure.to_string());
            failure.code()
        }
    }
}
