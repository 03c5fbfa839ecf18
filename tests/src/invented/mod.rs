//! Invented summaries by chance: what a clinic's cabinet holds, as many as are wanted. The same seed gives
//! the same diary. Every person, clinic and number is invented, and each plan says so in its nickname.
//!
//! Unlike [`crate::lives`], which seeks what is unlikely, these diaries go as diaries mostly go: weeks of
//! practice with gaps, ratings that come down slowly and jump, some sessions stopped, some unrated, a sign
//! now and then, suggestions looked at and answered.

mod diary;

use frond_core::diary::entry::Entry;
use frond_core::moment::Stamp;
use frond_core::sealing::SigningKey;
use frond_core::summary::{DiaryId, DiaryIdentity, Selection, Summary};

use crate::lives::dice::Dice;

/// The plan that all of them begin with, of the invented scenario.
const PLAN: &str = include_str!("../../../bindings/desk/src/scenario/programme-1.json");

/// An invented diary.
pub struct Invented {
    /// Which of the cabinet's, from 0.
    pub number: u64,
    /// Its entries in order of place.
    pub entries: Vec<Entry>,
    /// The evening on which its summary is made.
    pub end: Stamp,
    seed: u64,
}

impl Invented {
    /// The diary of this number, of a cabinet of this seed.
    #[must_use]
    pub fn new(number: u64, seed: u64) -> Self {
        let mut dice = Dice::new(seed ^ number.wrapping_mul(0x9e37_79b9_7f4a_7c15));
        let own = dice.bits();
        let (entries, end) = diary::kept(number, &mut dice);
        Self { number, entries, end, seed: own }
    }

    /// What it signs with. The key protects nothing: it comes from the seed.
    #[must_use]
    pub fn identity(&self) -> DiaryIdentity {
        let mut dice = Dice::new(self.seed);
        let (mut id, mut key) = ([0; 16], [0; 32]);
        for bytes in id.chunks_exact_mut(8).chain(key.chunks_exact_mut(8)) {
            bytes.copy_from_slice(&dice.bits().to_be_bytes());
        }
        DiaryIdentity { id: DiaryId(id), key: SigningKey::from_seed(&key.into()) }
    }

    /// The summary of its last evening, whole.
    ///
    /// # Panics
    /// Where the invented plan cannot be read.
    #[must_use]
    pub fn summary(&self) -> Summary {
        let all = Selection::default();
        Summary::of(&self.entries, &self.identity(), &all, &self.end).expect("the plan is readable")
    }

    /// A summary of its first entries, made when the last of them was written: what was handed over before.
    ///
    /// # Panics
    /// Where the invented plan cannot be read, or there are no entries.
    #[must_use]
    pub fn earlier(&self, entries: usize) -> Summary {
        let first = &self.entries[..entries];
        let made = first.last().expect("some entry").written;
        Summary::of(first, &self.identity(), &Selection::default(), &made).expect("readable")
    }

    /// The open file, signed.
    ///
    /// # Panics
    /// Where it cannot be written as JSON.
    #[must_use]
    pub fn open_file(&self) -> Vec<u8> {
        self.summary().open_form(&self.identity()).expect("JSON")
    }
}
