//! A diary that is only read: entries in, the clinician's questions answered. It has no store, so nothing
//! is written and a suggestion that is shown leaves no trace.

use crate::diary::entry::Entry;
use crate::diary::state::State;
use crate::moment::Stamp;
use crate::programme::plan::Programme;
use crate::programme::rule::Rule;
use crate::screens::{ReplayScreen, Scene, StoreNote, SuggestionScreen};
use crate::words::Words;

use super::Trouble;

/// Entries, folded.
pub struct Reading {
    words: Words,
    entries: Vec<Entry>,
    state: State,
}

impl Reading {
    /// Folds the entries, in the order they were written.
    ///
    /// # Errors
    /// [`Trouble::Update`] when a programme in them cannot be read.
    pub fn new(entries: Vec<Entry>, language: &str) -> Result<Self, Trouble> {
        let state = State::from_history(&entries)?;
        let words = Words::for_language(state.language().unwrap_or(language));
        Ok(Self { words, entries, state })
    }

    /// The programme accepted last.
    #[must_use]
    pub fn programme(&self) -> Option<&Programme> {
        self.state.rule().programme()
    }

    /// What the rule says at a moment, and why.
    #[must_use]
    pub fn suggestion(&self, now: &Stamp) -> SuggestionScreen {
        let assessment = self.state.rule().assess(now);
        let scene = Scene {
            words: &self.words,
            state: &self.state,
            assessment: &assessment,
            now: *now,
            store: StoreNote::default(),
            practice_waits: false,
        };
        SuggestionScreen::new(&scene, None)
    }

    /// What the rule said at each entry, and beside it what another rule would have said (T6).
    ///
    /// # Errors
    /// As [`Reading::new`].
    pub fn replay(&self, tried: Option<&Rule>) -> Result<ReplayScreen, Trouble> {
        Ok(ReplayScreen::new(&self.words, &self.entries, tried)?)
    }
}
