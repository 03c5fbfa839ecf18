//! What must hold in this room, and the words a person sees, frozen.

mod call;
mod care;
mod hazards;
mod privacy;
mod proofs;
mod screening;
mod signs;
