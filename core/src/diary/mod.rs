//! The diary: what happened, in the order it was written.
pub mod store;
