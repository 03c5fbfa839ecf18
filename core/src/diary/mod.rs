//! Decides what a diary is: what may be written in it ([`entry`]) and how it is kept on disk ([`store`]). Leaves to
//! [`crate::progression`] what follows from it.

pub mod entry;
pub mod store;
