//! One programme handed over: signed by the clinic, opened by the phone. Leaves the form of the file and of the link to
//! [`super::file`] and [`super::link`], and how it stands to the key that is known to [`super::standing`].

use std::sync::Arc;

use super::file::{self, Parts};
use super::sealed::SALT;
use super::{HandOverError, PROGRAMME, Signs, SpokenWords, link};
use crate::ports::{Random, Stretch};
use crate::programme::check::load;
use crate::programme::plan::Programme;
use crate::sealing::{Follows, Signature, VerifyKey};

/// A programme with the clinic's signature, which holds.
#[derive(Clone)]
pub struct HandOver {
    programme: Programme,
    text: Arc<str>,
    key: VerifyKey,
    signature: Signature,
    follows: Option<Follows>,
}

/// Who can read a link.
#[derive(Clone, Copy, Debug)]
pub enum LinkTo<'a> {
    /// Whoever knows these words.
    Words(&'a SpokenWords),
    /// Anybody who sees the code.
    Anybody,
}

impl HandOver {
    /// Signs a programme. Spaces between its lines are left out first, so that file and link carry the
    /// same bytes and both are short; not a letter of the programme itself changes.
    ///
    /// # Errors
    /// [`HandOverError::Programme`] where it cannot be used, [`HandOverError::NotGenuine`] where `follows`
    /// is about another key.
    pub fn sign(
        programme: &[u8],
        keys: &dyn Signs,
        follows: Option<Follows>,
    ) -> Result<Self, HandOverError> {
        load(programme)?;
        let text = dense(programme);
        let key = keys.verify_key();
        let signature = keys.sign(PROGRAMME, &text);
        // Read back as a phone will.
        Self::verified(key, follows, signature, &text)
    }

    /// Opens a signed file.
    ///
    /// # Errors
    /// [`HandOverError`], one for each thing to do next.
    pub fn open(bytes: &[u8]) -> Result<Self, HandOverError> {
        let Parts { key, follows, signature, programme } = file::cut(bytes)?;
        Self::verified(key, follows, signature, programme)
    }

    /// Opens a link, with the spoken words where it is sealed.
    ///
    /// # Errors
    /// [`HandOverError`], one for each thing to do next.
    pub fn from_link(text: &str, words: Option<&SpokenWords>) -> Result<Self, HandOverError> {
        Self::from_link_at(text, words, Stretch::everyday())
    }

    pub(super) fn from_link_at(
        text: &str,
        words: Option<&SpokenWords>,
        cost: Stretch,
    ) -> Result<Self, HandOverError> {
        let link::Parts { key, follows, signature, programme } = link::read(text, words, cost)?;
        Self::verified(key, follows, signature, &programme)
    }

    /// Everything that is signed is verified before the programme is read.
    fn verified(
        key: VerifyKey,
        follows: Option<Follows>,
        signature: Signature,
        programme: &[u8],
    ) -> Result<Self, HandOverError> {
        let verified =
            key.verify(PROGRAMME, programme, &signature).map_err(|_| HandOverError::NotGenuine)?;
        if follows.as_ref().is_some_and(|follows| !follows.holds_for(&key)) {
            return Err(HandOverError::NotGenuine);
        }
        let (programme, _) = load(verified.bytes())?;
        let text = std::str::from_utf8(verified.bytes()).map_err(|_| HandOverError::Damaged)?;
        Ok(Self { programme, text: text.into(), key, signature, follows })
    }

    /// The signed file.
    #[must_use]
    pub fn file(&self) -> Vec<u8> {
        file::write(&Parts {
            key: self.key,
            follows: self.follows.clone(),
            signature: self.signature,
            programme: self.text.as_bytes(),
        })
    }

    /// The link for one QR code.
    ///
    /// # Errors
    /// [`HandOverError::TooLarge`] where one code does not hold it; [`HandOverError::NoRoom`] where the
    /// device cannot seal just now.
    pub fn link(&self, to: LinkTo<'_>, random: &dyn Random) -> Result<String, HandOverError> {
        self.link_at(to, random, Stretch::everyday())
    }

    pub(super) fn link_at(
        &self,
        to: LinkTo<'_>,
        random: &dyn Random,
        cost: Stretch,
    ) -> Result<String, HandOverError> {
        let seal = match to {
            LinkTo::Anybody => None,
            LinkTo::Words(words) => {
                let mut salt = [0u8; SALT];
                random.fill(&mut salt).map_err(|_| HandOverError::NoRoom)?;
                Some((words, salt))
            }
        };
        let parts = link::Parts {
            key: self.key,
            follows: self.follows.clone(),
            signature: self.signature,
            programme: self.text.as_bytes().to_vec(),
        };
        link::write(&parts, seal, cost)
    }

    /// The programme.
    #[must_use]
    pub fn programme(&self) -> &Programme {
        &self.programme
    }
    /// Its exact text, as signed and as it is kept.
    #[must_use]
    pub fn text(&self) -> &Arc<str> {
        &self.text
    }
    /// The programme alone.
    #[must_use]
    pub fn into_programme(self) -> Programme {
        self.programme
    }
    /// The signature over the text.
    #[must_use]
    pub fn signature(&self) -> Signature {
        self.signature
    }
    /// The key that signed it.
    #[must_use]
    pub fn key(&self) -> VerifyKey {
        self.key
    }
    /// The key which says that this one follows it.
    #[must_use]
    pub fn follows(&self) -> Option<VerifyKey> {
        self.follows.as_ref().map(|follows| *follows.before())
    }
}

impl std::fmt::Debug for HandOver {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("HandOver(..)")
    }
}

/// JSON without the spaces between its marks. What stands in quotation marks stays to the letter.
fn dense(json: &[u8]) -> Vec<u8> {
    let mut dense = Vec::with_capacity(json.len());
    let (mut quoted, mut escaped) = (false, false);
    for byte in json {
        if quoted {
            (quoted, escaped) = match (escaped, byte) {
                (true, _) => (true, false),
                (false, b'\\') => (true, true),
                (false, b'"') => (false, false),
                (false, _) => (true, false),
            };
        } else if matches!(byte, b' ' | b'\n' | b'\r' | b'\t') {
            continue;
        } else {
            quoted = *byte == b'"';
        }
        dense.push(*byte);
    }
    dense
}
