//! What is answered: what to show, and what a shell must do.

use frond_core::companion::Duty;
use frond_core::screens::{Screen, WholeScreen};
use frond_core::whole::{Seen, View};

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
