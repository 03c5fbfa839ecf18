//! Decides what a programme is: what the clinician prescribed, how it is written down and read back,
//! and whether it is written correctly. Leaves to [`crate::progression`] what the rule says about a
//! diary. Start at [`plan::Programme`].

pub mod check;
pub mod fault;
pub mod plan;
pub mod read;
pub mod readback;
pub mod rule;
pub mod strict;
pub mod values;
pub mod warn;

#[cfg(test)]
mod fixtures;
