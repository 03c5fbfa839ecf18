//! The words of the open diary: in the language that its settings name, marked as the surface wants them.

use super::Companion;
use crate::words::Words;

impl Companion {
    /// The words of this diary's language.
    #[must_use]
    pub fn words(&self) -> &Words {
        &self.words
    }

    /// Wraps every value inserted into a sentence in direction isolation marks from now on.
    ///
    /// For a surface that may mix text of both directions; a terminal shows the marks as stray characters.
    pub fn isolate_values(&mut self) {
        self.words = Words::with_isolation(self.words.language().tag);
    }

    /// Takes the words of the language that the settings name, if they have come to name another.
    pub(super) fn follow_language(&mut self) {
        if let Some(tag) = self.state.language().filter(|tag| *tag != self.words.language().tag) {
            self.words = self.words.in_language(tag);
        }
    }
}
