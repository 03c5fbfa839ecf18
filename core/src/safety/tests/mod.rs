//! What must hold in this room, and the words a person sees, frozen.

mod call;
mod care;
mod hazards;
mod screening;
mod signs;
