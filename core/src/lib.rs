//! x
pub mod diary;
pub mod ports;
