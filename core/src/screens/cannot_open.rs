//! A diary that does not open: what is the matter, and what can be done, one step each. Made without a
//! diary, so it knows no language of its own and no plan.

use serde::Serialize;

use super::{Action, Does};
use crate::trouble::Trouble;
use crate::words::Words;

/// A diary that does not open.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CannotOpenScreen {
    /// Heading.
    pub title: String,
    /// What is the matter.
    pub says: String,
    /// That what was written is not lost by it, where that is so.
    pub calm: Option<String>,
    /// That help does not wait for it: what opens the diary also opens whom to call.
    pub help: String,
    /// What can be done, the first first.
    pub steps: Vec<Action>,
}

impl CannotOpenScreen {
    /// What to show upon this trouble at opening.
    #[must_use]
    pub fn new(words: &Words, trouble: &Trouble) -> Self {
        let act = |label: String, does| Action::new(label, does);
        let again = || act(words.text("action-try-again", &[]), Does::Today);
        let phrase = || act(words.text("action-open-by-phrase", &[]), Does::OpenByPhrase);
        let restore = || act(words.text("action-restore", &[]), Does::Restore);
        let copy = || act(words.text("action-restore-copy", &[]), Does::RestoreCopy);
        let fresh = || act(words.text("action-start-new", &[]), Does::StartNew);
        let steps = match trouble {
            Trouble::WrongSecret => vec![again(), phrase(), copy()],
            // What is gone may be the key that a phone kept: then the twelve words open it.
            Trouble::Restore => vec![restore(), phrase(), copy()],
            Trouble::NotADiary => vec![fresh(), copy()],
            _ => vec![again()],
        };
        // The other sentences say it themselves where it is so.
        let untouched = matches!(trouble, Trouble::WrongSecret);
        Self {
            title: words.text("cannot-open-title", &[]),
            says: trouble.say(words),
            calm: untouched.then(|| words.text("cannot-open-untouched", &[])),
            help: words.text("cannot-open-help", &[]),
            steps,
        }
    }
}
