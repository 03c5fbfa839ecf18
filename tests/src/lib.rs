//! Shared helpers of the test crate.
