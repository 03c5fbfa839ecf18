//! Decides what a diary is: what may be written in it ([`entry`]), what counts of it now ([`resolve`]),
//! what it comes down to ([`state`]), how it is kept on disk ([`store`]), what goes when something is
//! erased ([`erase`]) what a copy for elsewhere holds ([`portable`]) and what only the screens look at ([`presence`]). Leaves to
//! [`crate::progression`] what follows from it.

pub mod entry;
pub mod erase;
pub mod lines;
pub mod portable;
pub mod presence;
pub mod resolve;
pub mod state;
pub mod store;
