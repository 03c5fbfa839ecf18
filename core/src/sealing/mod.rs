//! What leaves the device is sealed, and what is signed is verified before it is parsed.
//!
//! [`seal`] and [`open`] make and read age files, [`SigningKey`] and [`VerifyKey`] sign and verify,
//! [`ClinicKeys`] are the desk's, [`RecoveryPhrase`] is the twelve words written down at first use, and [`RecoveryKeeper`] keeps a
//! diary's key under them. What stands inside a sealed or signed file, and where it goes, is
//! decided elsewhere. Start with `age_file`.
//!
//! One exception to the rule that every random byte comes through [`Random`](crate::ports::Random):
//! the library behind the age files takes its file keys, nonces and salts from the operating system
//! itself and offers no other way.

mod age_file;
mod age_keys;
pub mod clinic;
mod phrase;
mod recovery_keeper;
mod signing;
mod typed;

pub use age_file::{
    OPEN_WORK_MOST, OpenError, OpenWith, SEAL_WORK, SealError, SealTo, Sealing, is_age, open,
    open_from, seal, seal_into,
};
pub use age_keys::{Identity, IdentityError, Recipient, RecipientError};
pub use clinic::{BoxError, BoxKey, ClinicKeys, ClinicKeysError, Follows};
pub use phrase::{PhraseError, RECOVERY_WORDS, RecoveryPhrase};
pub use recovery_keeper::{RecipientKeeper, RecoveryKeeper};
pub use signing::{
    Context, NotGenuine, Signature, SigningKey, SigningTextError, Verified, VerifyKey,
};
pub(crate) use typed::{TypedError, invisible, typed_words};
