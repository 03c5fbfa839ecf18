//! Decides what a programme is: what the clinician prescribed, how it is written down and read back,
//! and whether it is written correctly. Leaves to [`crate::progression`] what the rule says about a
//! diary. Start at [`plan::Programme`] for what a programme is
//! and at [`check::load`] for how one is taken in.

pub mod check;
pub mod differences;
pub mod draft;
pub mod fault;
pub mod plan;
pub mod read;
pub mod readback;
pub mod rule;
pub mod strict;
pub mod values;
pub mod warn;

#[cfg(test)]
pub(crate) mod arbitrary;
#[cfg(test)]
pub(crate) mod fixtures;
