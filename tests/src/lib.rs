//! What several tests of Frond share: a second, naive reading of the rule ([`model`]) and invented
//! diaries to put before both readings ([`lives`]).
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "this crate is tests only; it may fail loudly"
)]

pub mod lives;
pub mod model;
