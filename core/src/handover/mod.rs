//! A programme on its way from the clinician to the phone: signed, as a file or as the link of one QR code.
//!
//! Decides what is signed and how it travels: the outer form of the file ([`HandOver::file`]), the link with
//! its dictionary, its sealing and its bound ([`HandOver::link`]), that a key's word that another follows it
//! ([`Follows`](crate::sealing::Follows)) goes along, and the words by which two people compare a key
//! ([`key_words`]). What comes in is verified before it is read as a programme, and the exact bytes that were
//! signed are what is kept.
//!
//! At the other end: [`Arrival`] is what a person was handed, [`Standing`] how it stands to the key that is
//! pinned and the programme in use.
//!
//! Leaves to [`crate::programme`] what a programme is, to the diary that the pin is kept, to
//! [`crate::screens`] what a person is told and asked, and to the desk how a code is drawn. Start with
//! `parcel`.
//!
//! Stored and published forms, never changed once landed: the contexts of the signatures, the form of the
//! file, the layout of the link, its dictionary, the way to the key words.

mod arrival;
mod code;
mod error;
mod file;
mod key_words;
mod link;
mod pack;
mod parcel;
mod say;
mod sealed;
mod signs;
mod spoken;
mod standing;
#[cfg(test)]
mod tests;

pub use arrival::{Arrival, Handed, Signed};
pub use code::{Correction, LINK_MOST, QR_VERSION_MOST};
pub use error::HandOverError;
pub(crate) use file::Published;
pub use file::{FILE_MOST, is_signed};
pub use key_words::{KEY_WORDS, key_words};
pub use link::{LINK_TEXT_MOST, is_link};
pub use parcel::{HandOver, LinkTo};
pub use signs::Signs;
pub use spoken::{SPOKEN_WORDS, SpokenError, SpokenWords};
pub use standing::{Against, Standing};

use crate::sealing::Context;

/// What the signature over a programme is for.
const PROGRAMME: Context = Context::new("frond programme 1");
