//! Chance that can be repeated: SplitMix64, a few lines, so that a seed printed today replays tomorrow
//! whatever the libraries do.

/// A repeatable source of choices.
#[derive(Clone, Debug)]
pub struct Dice(u64);

impl Dice {
    /// The choices of a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// A number from 0 up to, not including, `end`.
    pub fn below(&mut self, end: u64) -> u64 {
        self.bits() % end.max(1)
    }

    /// A number from `least` to `most`.
    pub fn between(&mut self, least: u64, most: u64) -> u64 {
        least + self.below(most - least + 1)
    }

    /// True in so many of a hundred.
    pub fn percent(&mut self, chance: u64) -> bool {
        self.below(100) < chance
    }

    /// One of them.
    pub fn pick<T: Clone>(&mut self, from: &[T]) -> T {
        let index = usize::try_from(self.below(from.len() as u64)).unwrap_or(0);
        from[index].clone()
    }

    /// An index into a list of so many.
    pub fn index(&mut self, len: usize) -> usize {
        usize::try_from(self.below(len as u64)).unwrap_or(0)
    }
}
