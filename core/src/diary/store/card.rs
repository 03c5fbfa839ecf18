//! What a diary is known by: its stable id, the seed of the key that signs its summaries, how often it
//! was put under new keys, and to whom a copy can be sealed that only the recovery phrase opens.
//!
//! It lies sealed in the `keys` file, which is doubled and part of every backup. A diary made before
//! there were cards gets one at the next opening.

use super::layout::{NONCE, TAG, Take};
use super::seal::{Purpose, SealKey};
use crate::ports::{DataKey, Random, RandomError};
use std::fmt;
use zeroize::Zeroizing;

/// The version of the card's content.
const VERSION: u8 = 1;
/// The content's length, whatever is in it.
const LEN: usize = 192;
const BOUND: &[u8] = b"card";

/// The longest text of a recovery recipient, in bytes.
pub const RECIPIENT_MOST: usize = 96;

/// What a diary is known by.
#[derive(Clone, PartialEq, Eq)]
pub struct Card {
    /// Sixteen random bytes, the same for as long as there is the diary, on whatever device.
    pub diary: [u8; 16],
    /// The seed of the key that signs summaries.
    pub seed: Zeroizing<[u8; 32]>,
    /// How often the diary was put under new keys: by an erase, a restore or a new passphrase. It only
    /// grows, so that an older copy of everything can be told from the present one.
    pub generation: u64,
    /// To whom a copy for elsewhere is sealed: the age recipient of the recovery phrase.
    pub recovery: Option<String>,
}

impl fmt::Debug for Card {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Card(..)")
    }
}

impl Card {
    /// The card of a new diary.
    ///
    /// # Errors
    /// [`RandomError`] when there are no random bytes.
    pub fn new(random: &dyn Random) -> Result<Self, RandomError> {
        let mut diary = [0u8; 16];
        random.fill(&mut diary)?;
        let mut seed = Zeroizing::new([0u8; 32]);
        random.fill(seed.as_mut_slice())?;
        Ok(Self { diary, seed, generation: 1, recovery: None })
    }

    /// Sealed under the data key, always of the same length.
    pub(super) fn sealed(
        &self,
        data_key: &DataKey,
        random: &dyn Random,
    ) -> Result<Vec<u8>, RandomError> {
        let recovery = self.recovery.as_deref().unwrap_or_default().as_bytes();
        let recovery = recovery.get(..recovery.len().min(RECIPIENT_MOST)).unwrap_or_default();
        let mut text = Zeroizing::new(Vec::with_capacity(LEN));
        text.push(VERSION);
        text.extend_from_slice(&self.diary);
        text.extend_from_slice(self.seed.as_slice());
        text.extend_from_slice(&self.generation.to_le_bytes());
        text.push(u8::try_from(recovery.len()).unwrap_or(0));
        text.extend_from_slice(recovery);
        text.resize(LEN, 0);
        let mut nonce = [0u8; NONCE];
        random.fill(&mut nonce)?;
        let key = SealKey::derive(data_key, Purpose::Card);
        // So few bytes are never too long to seal.
        let tag = key.seal(nonce, BOUND, text.as_mut_slice()).unwrap_or_default();
        Ok([&nonce[..], text.as_slice(), &tag].concat())
    }

    /// What was sealed; `None` when it does not verify or is of another version.
    pub(super) fn opened(sealed: &[u8], data_key: &DataKey) -> Option<Self> {
        let mut take = Take(sealed);
        let nonce = take.array::<NONCE>()?;
        let mut text = Zeroizing::new(take.bytes(LEN)?.to_vec());
        let tag = take.array::<TAG>()?;
        SealKey::derive(data_key, Purpose::Card).open(nonce, BOUND, &mut text, tag).ok()?;
        let mut take = Take(&text);
        if take.u8()? != VERSION {
            return None;
        }
        let diary = take.array()?;
        let seed = Zeroizing::new(take.array()?);
        let generation = take.u64()?;
        let len = usize::from(take.u8()?);
        let recovery = std::str::from_utf8(take.bytes(len)?).ok()?;
        let recovery = (len > 0).then(|| recovery.to_owned());
        Some(Self { diary, seed, generation, recovery })
    }
}
