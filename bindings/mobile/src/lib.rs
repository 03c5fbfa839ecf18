//! How the phones reach the core: a facade, nothing else.
//!
//! Decides how the core's values cross the border. Leaves everything that is true to `frond_core`, and how
//! a diary is opened, locked and replaced to its `whole`. What a type, a field or a variant means stands at
//! the core's own definition; here each is only named again, and a field or variant that is missing here
//! does not compile.
//!
//! - [`frond`] the one object a shell holds; [`keeper`] the one thing a shell brings
//! - [`trouble`] what went wrong, by what the person can do next
//! - [`moment`] the moment a shell hands in
//! - the other files name the core's values again, by what they belong to

pub mod frond;
pub mod keeper;
pub mod moment;
pub mod trouble;

mod screens;
mod values;

uniffi::setup_scaffolding!("frond_mobile");
