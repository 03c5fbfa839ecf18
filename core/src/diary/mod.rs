//! Decides what a diary is: what may be written in it ([`entry`]), what counts of it now ([`resolve`]),
//! what it comes down to ([`state`]) and how it is kept on disk ([`store`]). Leaves to
//! [`crate::progression`] what follows from it.

pub mod entry;
pub mod lines;
pub mod resolve;
pub mod state;
pub mod store;
