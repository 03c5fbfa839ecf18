//! What a person was handed, opened: a signed programme or a plain one, as a file or as a link.

use std::sync::Arc;

use super::file::is_signed;
use super::{HandOver, HandOverError, SpokenWords, is_link};
use crate::programme::check::load;
use crate::programme::plan::Programme;
use crate::sealing::{Signature, VerifyKey};

/// What a person was handed, as it came.
#[derive(Clone, PartialEq, Eq)]
pub enum Handed {
    /// The bytes of a file: signed, or a programme's plain text.
    File(Arc<[u8]>),
    /// A link, scanned or pasted.
    Link {
        /// Its text.
        link: Arc<str>,
        /// The spoken words as typed; empty: none.
        words: Arc<str>,
    },
}

impl Handed {
    /// A file with this text.
    #[must_use]
    pub fn text(text: &str) -> Self {
        Self::File(text.as_bytes().into())
    }

    /// What a file holds: a programme, signed or not, or the text of a link, for which these words are.
    #[must_use]
    pub fn file(bytes: Vec<u8>, words: &str) -> Self {
        match std::str::from_utf8(&bytes) {
            Ok(text) if is_link(text) => Self::Link { link: text.into(), words: words.into() },
            _ => Self::File(bytes.into()),
        }
    }
}

/// A programme that arrived and can be used.
#[derive(Clone)]
pub struct Arrival {
    /// The programme.
    pub programme: Programme,
    /// Its exact text.
    pub text: Arc<str>,
    /// Who signed it; `None`: nobody.
    pub signed: Option<Signed>,
}

/// The signature on what arrived. It holds.
#[derive(Clone, Copy)]
pub struct Signed {
    /// The key.
    pub key: VerifyKey,
    /// Its signature.
    pub signature: Signature,
    /// The key which says that this one follows it.
    pub follows: Option<VerifyKey>,
}

impl Arrival {
    /// Opens what was handed.
    ///
    /// # Errors
    /// [`HandOverError`], one for each thing to do next.
    pub fn of(handed: &Handed) -> Result<Self, HandOverError> {
        match handed {
            Handed::File(bytes) if is_signed(bytes) => HandOver::open(bytes).map(Self::signed),
            Handed::File(bytes) => {
                let (programme, _) = load(bytes)?;
                let text = std::str::from_utf8(bytes).map_err(|_| HandOverError::Damaged)?;
                Ok(Self { programme, text: text.into(), signed: None })
            }
            Handed::Link { link, words } => {
                let words = match words.trim() {
                    "" => None,
                    typed => Some(SpokenWords::parse(typed)?),
                };
                HandOver::from_link(link, words.as_ref()).map(Self::signed)
            }
        }
    }

    fn signed(handed: HandOver) -> Self {
        let signed =
            Signed { key: handed.key(), signature: handed.signature(), follows: handed.follows() };
        Self {
            text: handed.text().clone(),
            programme: handed.into_programme(),
            signed: Some(signed),
        }
    }
}
