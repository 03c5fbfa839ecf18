//! What several tests of Frond share: a second, naive reading of the rule ([`model`]), invented diaries to
//! put before both readings ([`lives`]), and a person at home with one diary ([`home`]).

pub mod home;
pub mod lives;
pub mod model;
