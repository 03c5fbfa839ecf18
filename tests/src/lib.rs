//! What several tests of Frond share: a second, naive reading of the rule ([`model`]), invented diaries to
//! put before both readings ([`lives`]), an invented cabinet ([`invented`]), a person at home with one diary
//! ([`home`]), a plain model of how a diary is kept ([`keeping_model`]), every reader of bytes from outside, to be
//! tried with any ([`outside`]), the most memory things may take ([`peaks`]), and what was left on a disk, read as its worst enemy would ([`sweep`]).

pub mod home;
pub mod invented;
pub mod keeping_model;
pub mod lives;
pub mod model;
pub mod outside;
pub mod peaks;
pub mod sweep;
