//! x
pub mod safety;
pub mod words;
