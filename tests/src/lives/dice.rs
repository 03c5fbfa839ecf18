//! Chance that can be repeated, so that a seed printed today replays tomorrow: the simulated disk's
//! generator, with the ways of choosing that invented lives need.

use frond_core::ports::sim::SplitMix;

/// A repeatable source of choices.
#[derive(Clone, Debug)]
pub struct Dice(SplitMix);

impl Dice {
    /// The choices of a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(SplitMix::new(seed))
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0.next_u64()
    }

    /// A number from 0 up to, not including, `end`.
    pub fn below(&mut self, end: u64) -> u64 {
        self.0.below(end.max(1))
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
