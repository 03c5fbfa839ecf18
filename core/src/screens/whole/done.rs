//! After something was done to the diary as a whole, or was not.

use serde::Serialize;

use super::{back, keeping};
use crate::screens::{Action, Does, Lock};
use crate::trouble::Trouble;
use crate::words::Words;

/// Something was done.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct DoneScreen {
    /// Heading.
    pub title: String,
    /// What was done, and what to know about it.
    pub says: Vec<String>,
    /// The next thing to do.
    pub next: Action,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// Everything was erased.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ErasedScreen {
    /// Heading.
    pub title: String,
    /// What is gone, and what is out of reach.
    pub says: Vec<String>,
    /// What can be done: a new diary.
    pub actions: Vec<Action>,
}

/// Something did not work.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SorryScreen {
    /// Heading.
    pub title: String,
    /// What it was, and what to do.
    pub says: Vec<String>,
    /// What can be done, the first first.
    pub actions: Vec<Action>,
}

/// What was done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Done {
    /// A code was chosen or changed.
    CodeSet,
    /// The code was taken away.
    CodeRemoved,
    /// Another passphrase opens it.
    PassphraseSet,
    /// Twelve new words open it.
    PhraseKept,
    /// It was opened with the twelve words, and has no code.
    OpenedByPhrase,
    /// It was opened with the twelve words, and its passphrase opens it again.
    PassphraseOpens,
    /// Some entries were erased.
    ErasedSome,
    /// The plan that waited was not hers, and was put away.
    NotMine,
}

impl DoneScreen {
    /// After this was done.
    #[must_use]
    pub fn new(words: &Words, done: Done) -> Self {
        let (title, says) = match done {
            Done::CodeSet => {
                (words.text("phone-code-set-title", &[]), words.text("phone-code-set", &[]))
            }
            Done::CodeRemoved => {
                (words.text("phone-code-set-title", &[]), words.text("phone-code-removed", &[]))
            }
            Done::PassphraseSet => {
                (words.text("page-changed-title", &[]), words.text("page-changed", &[]))
            }
            Done::PhraseKept => {
                (words.text("page-phrase-title", &[]), words.text("page-phrase-done", &[]))
            }
            Done::OpenedByPhrase => (
                words.text("phone-phrase-opened-title", &[]),
                words.text("phone-phrase-opened", &[]),
            ),
            Done::PassphraseOpens => {
                (words.text("phone-phrase-opened-title", &[]), words.text("page-opened", &[]))
            }
            Done::ErasedSome => {
                (words.text("page-erased-title", &[]), words.text("page-erased-some", &[]))
            }
            Done::NotMine => {
                (words.text("action-not-mine", &[]), words.text("page-plan-not-yours", &[]))
            }
        };
        let today = back(words, true);
        let act = |label: String, does| Action::new(label, does);
        let (next, actions) = match done {
            Done::CodeSet | Done::CodeRemoved | Done::PassphraseSet | Done::ErasedSome => {
                (keeping(words), vec![today])
            }
            Done::PassphraseOpens => (today, vec![keeping(words)]),
            // The copy is what the words are for.
            Done::PhraseKept => (
                act(words.text("action-make-copy", &[]), Does::MakeCopy),
                vec![keeping(words), today],
            ),
            Done::OpenedByPhrase => {
                (today, vec![act(words.text("action-code-choose", &[]), Does::CodeForm)])
            }
            Done::NotMine => (
                today,
                vec![act(words.text("action-accept-programme", &[]), Does::AcceptProgramme)],
            ),
        };
        Self { title, says: vec![says], next, actions }
    }
}

impl ErasedScreen {
    /// After everything was erased.
    #[must_use]
    pub fn new(words: &Words, lock: Lock) -> Self {
        let fresh = Action::new(words.text("action-start-new", &[]), Does::StartNew);
        let mut says = vec![words.text("page-erased", &[])];
        if lock != Lock::Passphrase {
            says.push(words.text("phone-erased-rest", &[]));
        }
        Self { title: words.text("page-erased-title", &[]), says, actions: vec![fresh] }
    }
}

impl SorryScreen {
    /// Upon this trouble. `open`: a diary is open.
    #[must_use]
    pub fn new(words: &Words, trouble: &Trouble, open: bool) -> Self {
        let again = Action::new(words.text("action-try-again", &[]), Does::Today);
        Self {
            title: words.text("page-sorry-title", &[]),
            says: vec![trouble.say(words)],
            actions: vec![if open { back(words, true) } else { again }],
        }
    }
}
