//! What leaves the device is sealed, and what is signed is verified before it is parsed. Decides how: age
//! files ([`age_file`](self)), Ed25519 signatures, and a recovery phrase of twelve words from which an age
//! identity follows. Leaves to others what is in a file and to whom it goes.
//!
//! One exception to "randomness comes through a port": the age library takes its own from the operating
//! system. It offers no other way, and sealing with foreseeable randomness would be no sealing.

mod age_file;
mod phrase;
mod recovery_keeper;
mod signing;
#[cfg(test)]
mod tests;

pub use age_file::{
    Identity, KeyTextError, OpenError, OpenWith, Recipient, SealError, SealTo, is_age, open, seal,
    seal_into,
};
pub use phrase::{PHRASE_WORDS, PhraseError, RecoveryPhrase};
pub use recovery_keeper::{RecipientKeeper, RecoveryKeeper};
pub use signing::{BadSignature, SignKey, Signature, VerifyKey};
