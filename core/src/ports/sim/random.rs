//! Bytes that look random and are the same for the same seed.

use crate::ports::{Random, RandomError};
use std::sync::{Mutex, PoisonError};

/// A small generator (SplitMix64; Steele, Lea and Flood 2014). Guessable: for tests only.
#[derive(Debug, Clone)]
pub struct SplitMix(u64);

impl SplitMix {
    /// Starts from a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next number.
    pub fn next_u64(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number below `bound` (0 when `bound` is 0).
    pub fn below(&mut self, bound: u64) -> u64 {
        self.next_u64().checked_rem(bound).unwrap_or(0)
    }

    /// Heads or tails.
    pub fn coin(&mut self) -> bool {
        self.next_u64() & 1 == 1
    }
}

/// Random bytes that repeat, so that a stored file comes out the same in every run.
#[derive(Debug)]
pub struct SeededRandom(Mutex<SplitMix>);

impl SeededRandom {
    /// Starts from a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(Mutex::new(SplitMix::new(seed)))
    }
}

impl Random for SeededRandom {
    fn fill(&self, out: &mut [u8]) -> Result<(), RandomError> {
        let mut source = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        for chunk in out.chunks_mut(8) {
            let bytes = source.next_u64().to_le_bytes();
            for (to, from) in chunk.iter_mut().zip(bytes) {
                *to = from;
            }
        }
        Ok(())
    }
}
