//! The words of the open diary: in the language that its settings name, marked as the surface wants them.

use super::Companion;
use crate::screens::Lock;
use crate::words::{Isolation, Words};

impl Companion {
    /// The words of this diary's language.
    #[must_use]
    pub fn words(&self) -> &Words {
        &self.words
    }

    /// From now on values inserted into a sentence stand between direction isolation marks, as the surface
    /// wants it.
    pub fn isolate_values(&mut self, isolation: Isolation) {
        self.words = Words::isolated(self.words.language().tag, isolation);
    }

    /// What opens the diary every day is this, so that what is said of it is right on this surface.
    pub fn locked_by(&mut self, lock: Lock) {
        self.lock = lock;
    }

    /// What opens the diary every day, as the surface said.
    pub(crate) fn lock(&self) -> Lock {
        self.lock
    }

    /// Takes the words of the language that the settings name, if they have come to name another.
    pub(super) fn follow_language(&mut self) {
        if let Some(tag) = self.state.language().filter(|tag| *tag != self.words.language().tag) {
            self.words = self.words.in_language(tag);
        }
    }
}
