//! A key keeper with a code of the app's own around a phone's key store.
//!
//! The wrap begins with one byte that says what opens it.
//!
//! - `0`: no code. The rest is the phone's own wrap of the data key.
//! - `1`: a code as well: this byte begins the 101 bytes of [`super::stretched`], and behind them lies the phone's
//!   wrap of a helper key made for this wrap alone. The data key is sealed under what Argon2id makes of the code, the
//!   salt and, as the secret value K (RFC 9106, section 3.1), the helper key.
//!
//! So whoever has the files alone cannot try codes: each try needs the phone's key store too. And whoever has
//! the unlocked phone needs the code. A byte that is neither was written by a newer program. Stored format: it
//! opens for ever.
//!
//! Decides how the two are put together. How often a code may be tried belongs to [`crate::whole`].

use super::keys::{DataKey, KeeperError, KeeperKind, KeyKeeper};
use super::passphrase::{Passphrase, Stretch, stretch};
use super::random::Random;
use super::stretched::{LEN, StretchedWrap, VERSION};
use zeroize::Zeroizing;

const WITHOUT: u8 = 0;
const WITH: u8 = VERSION;

/// A phone's keeper, and the code if there is one.
#[derive(Debug)]
pub struct CodedKeeper<'a> {
    phone: &'a dyn KeyKeeper,
    code: Option<&'a Passphrase>,
    stretch: Stretch,
}

impl<'a> CodedKeeper<'a> {
    /// Wraps with this code, and opens what asks for one with it.
    #[must_use]
    pub fn new(
        phone: &'a dyn KeyKeeper,
        code: Option<&'a Passphrase>,
        stretch: Stretch,
    ) -> CodedKeeper<'a> {
        CodedKeeper { phone, code, stretch }
    }
}

/// The key of the code and the helper key together.
fn both(
    code: &Passphrase,
    helper: &DataKey,
    salt: &[u8],
    how: Stretch,
) -> Result<Zeroizing<[u8; 32]>, KeeperError> {
    let mut key = Zeroizing::new([0u8; 32]);
    stretch(code.expose().as_bytes(), helper.expose(), salt, how, key.as_mut_slice())?;
    Ok(key)
}

/// The phone's own wrap within ours, whatever opens it.
fn phones(wrap: &[u8]) -> Result<&[u8], KeeperError> {
    match wrap.split_first() {
        Some((&WITHOUT, rest)) => Ok(rest),
        Some((&WITH, _)) => wrap.get(LEN..).ok_or(KeeperError::WrapDamaged),
        Some(_) => Err(KeeperError::Newer),
        None => Err(KeeperError::WrapDamaged),
    }
}

impl KeyKeeper for CodedKeeper<'_> {
    fn kind(&self) -> KeeperKind {
        self.phone.kind()
    }

    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        let Some(code) = self.code else {
            let mut wrap = vec![WITHOUT];
            wrap.extend(self.phone.wrap(key, random)?);
            return Ok(wrap);
        };
        let head = StretchedWrap::new(self.stretch, random)?;
        let helper = DataKey::new(random)?;
        let stretched = both(code, &helper, head.salt(), self.stretch)?;
        let mut wrap = head.seal(&stretched, key)?.to_vec();
        wrap.extend(self.phone.wrap(&helper, random)?);
        Ok(wrap)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let phones = phones(wrap)?;
        if wrap.first() == Some(&WITHOUT) {
            return self.phone.unwrap(phones);
        }
        let head = StretchedWrap::read(wrap).ok_or(KeeperError::WrapDamaged)?;
        let stored = head.how();
        if !self.stretch.believes(stored) {
            return Err(KeeperError::WrapDamaged);
        }
        let code = self.code.ok_or(KeeperError::CodeAsked)?;
        let helper = self.phone.unwrap(phones)?;
        let stretched = both(code, &helper, head.salt(), stored)?;
        head.open(&stretched)
    }

    fn keep_only(&self, wrap: &[u8]) {
        if let Ok(phones) = phones(wrap) {
            self.phone.keep_only(phones);
        }
    }

    fn forget(&self) {
        self.phone.forget();
    }
}

#[cfg(test)]
#[path = "coded_tests.rs"]
mod tests;
