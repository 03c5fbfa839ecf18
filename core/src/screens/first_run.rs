//! The first run: a few pages, each of which can be skipped, in any order, and again later. None of them
//! stands in the way of breathing or of "something is not right". Decides what is said before anything
//! was written; leaves the secret that opens the diary to the shell.

use serde::{Deserialize, Serialize};

use super::section::{another_lock, breathe, not_right};
use super::settings::{LanguageForm, language_form};
use super::{Action, Does, Lock, Scene};
use crate::diary::entry::EntryId;

/// A page of the first run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FirstRunPage {
    /// Breathe first, before any plan.
    Breathe,
    /// What Frond is and is not.
    About,
    /// What opens the diary.
    Lock,
    /// The language.
    Language,
    /// A copy for elsewhere.
    Copy,
}

impl FirstRunPage {
    /// Every page, in the order in which they are offered.
    pub const ALL: [Self; 5] = [Self::Breathe, Self::About, Self::Lock, Self::Language, Self::Copy];

    fn next(self) -> Option<Self> {
        Self::ALL.into_iter().skip_while(|page| *page != self).nth(1)
    }
}

/// A page of the first run.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FirstRunScreen {
    /// Which page.
    pub page: FirstRunPage,
    /// Heading.
    pub title: String,
    /// What it says.
    pub says: Vec<String>,
    /// The languages, on the page of that name.
    pub language: Option<LanguageForm>,
    /// The thing to do here.
    pub next: Action,
    /// On to the next page, past all of them, and what must never be out of reach.
    pub actions: Vec<Action>,
}

impl FirstRunScreen {
    pub(crate) fn new(scene: &Scene<'_>, page: FirstRunPage, id: EntryId, phrase: bool) -> Self {
        let words = scene.words;
        let (title, says) = match page {
            FirstRunPage::Breathe => (words.text("first-breathe-title", &[]), breathing(scene)),
            FirstRunPage::About => (words.text("first-about-title", &[]), about(scene)),
            FirstRunPage::Lock => (words.text("first-lock-title", &[]), lock(scene)),
            FirstRunPage::Language => (
                words.text("first-language-title", &[]),
                vec![words.text("first-language-later", &[])],
            ),
            FirstRunPage::Copy => (words.text("first-copy-title", &[]), copy(scene, phrase)),
        };
        let onward = match page.next() {
            Some(page) => {
                Action::new(words.text("action-first-next", &[]), Does::FirstRun { page })
            }
            None => Action::new(words.text("action-first-done", &[]), Does::Today),
        };
        let mut actions = Vec::new();
        let next = match page {
            FirstRunPage::Breathe => {
                actions.push(onward);
                breathe(scene)
            }
            FirstRunPage::Copy => {
                actions.push(onward);
                let (label, does) = if phrase {
                    (words.text("action-make-copy", &[]), Does::MakeCopy)
                } else {
                    (words.text("action-make-phrase", &[]), Does::MakePhrase)
                };
                Action::new(label, does)
            }
            _ => onward,
        };
        if page == FirstRunPage::Lock {
            actions.push(another_lock(scene));
        }
        if page != FirstRunPage::Breathe {
            actions.push(breathe(scene));
        }
        actions.push(not_right(scene));
        if page.next().is_some() {
            actions.push(Action::new(words.text("action-first-skip", &[]), Does::Today));
        }
        let language = (page == FirstRunPage::Language).then(|| language_form(scene, id));
        Self { page, title, says, language, next, actions }
    }
}

fn breathing(scene: &Scene<'_>) -> Vec<String> {
    let words = scene.words;
    vec![
        words.text("first-breathe", &[]),
        words.text("first-breathe-no-plan", &[]),
        words.text("today-caution-stop", &[]),
    ]
}

fn about(scene: &Scene<'_>) -> Vec<String> {
    let words = scene.words;
    vec![
        words.text("first-about-is", &[]),
        words.text("first-about-plan", &[]),
        words.text("first-about-not", &[]),
        words.text("first-about-clinician", &[]),
        words.text("first-about-sends-nothing", &[]),
        words.text("first-about-adults", &[]),
        words.text("first-about-right", &[]),
    ]
}

fn lock(scene: &Scene<'_>) -> Vec<String> {
    let words = scene.words;
    let own = || words.text("phone-code-own", &[]);
    let mut says = match scene.store.lock {
        Lock::Passphrase => {
            vec![words.text("first-lock-opens", &[]), words.text("first-lock-beside", &[])]
        }
        Lock::Phone => {
            vec![words.text("phone-lock-key", &[]), words.text("phone-lock-no-code", &[]), own()]
        }
        Lock::Code => {
            vec![words.text("phone-lock-key", &[]), words.text("phone-lock-code", &[]), own()]
        }
    };
    says.push(words.text("first-lock-forgotten", &[]));
    says.push(words.text("first-lock-watched", &[]));
    says
}

fn copy(scene: &Scene<'_>, phrase: bool) -> Vec<String> {
    let words = scene.words;
    let mut says = vec![words.text("first-copy-without", &[])];
    if phrase {
        says.push(words.text("keeping-phrase-there", &[]));
    } else {
        says.push(words.text("first-copy-phrase", &[]));
    }
    says.push(words.text("first-copy-elsewhere", &[]));
    says.push(words.text("first-copy-later", &[]));
    says
}
