//! How the phones reach the core: a facade, nothing else.
//!
//! Decides how the core's values cross the border. Leaves everything that is true to `frond_core`. What a
//! type, a field or a variant means stands at the core's own definition; here each is only named again
//! (UniFFI calls that a remote type), and a field or a variant that is missing here does not compile.
//!
//! - [`frond`] the one object a shell holds; [`keeper`] the one thing a shell brings
//! - [`trouble`] what went wrong, by what the person can do next
//! - [`moment`] the moment a shell hands in; [`limits`] how much it reads from outside
//! - [`values`] small values, and what is said when one does not hold
//! - the other files name the core's records and choices again, by what they belong to. Where two of the
//!   core's rooms use the same name, the more particular one has a longer name here
#![cfg_attr(
    test,
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        reason = "tests may fail loudly"
    )
)]

pub mod frond;
pub mod keeper;
pub mod limits;
pub mod moment;
pub mod trouble;
pub mod values;

mod duties;
mod entries;
mod fault;
mod practice;
mod reminders;
mod requests;
mod safety;
mod screens;
mod seen;

// Nothing of it is called by name: it gives the names that the standard library asks for.
#[cfg(target_os = "android")]
use unwinding as _;

uniffi::setup_scaffolding!("frond_mobile");
