//! What is answered: what to show, and what a shell must do.

use frond_core::companion::Duty;
use frond_core::screens::{Screen, WholeScreen};
use frond_core::whole::{Seen, Standing, View};

#[uniffi::remote(Record)]
pub struct Seen {
    pub view: View,
    pub duties: Vec<Duty>,
}

#[uniffi::remote(Enum)]
pub enum View {
    Screen(Screen),
    Whole(WholeScreen),
}

#[uniffi::remote(Record)]
pub struct Standing {
    pub open: bool,
    pub coded: bool,
    pub lock_after_seconds: Option<u32>,
    pub language: Option<String>,
}
