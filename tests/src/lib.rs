//! Shared helpers of the test crate.

pub mod home;
