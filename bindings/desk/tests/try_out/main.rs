//! `frond try` as a browser and a stranger meet it: the built program, over its socket.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::disallowed_methods,
    reason = "tests may fail loudly, and look at the environment they set up"
)]

mod bounds;
mod client;
mod keeping;
mod leaves;
mod telling;
