//! `frond`, the command line: for trying a plan out, for the clinician's side, and for keeping a diary
//! without a phone. It shows the companion's screens as text and decides nothing of its own. Start at
//! [`args`] for what can be typed and at [`commands`] for what it does.
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
mod pages;
mod place;
mod print;
mod scenario;
mod secret;
mod when;

use std::process::ExitCode;

use clap::Parser;

fn main() -> ExitCode {
    crash::leaves_nothing();
    match commands::run(args::Args::parse().command) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            print::to_stderr(&failure.to_string());
            failure.code()
        }
    }
}
