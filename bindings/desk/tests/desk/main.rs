//! The command line as a person and a program meet it: the built `frond`, its output, its exit codes and
//! what it leaves on the disk.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "tests may fail loudly, and look at the environment they set up"
)]

mod demo;
mod hand_over;
mod help;
mod keeping;
mod kept;
mod kit;
mod leaves;
mod lines;
mod read;
mod refused;
