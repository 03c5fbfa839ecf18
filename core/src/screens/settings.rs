//! Settings: the language, whether sizes and counts stay open, and the ways to everything else that is set
//! once. What is chosen is written as one entry, so a form carries all of it along.

use serde::Serialize;

use super::section::{Section, another_lock, today};
use super::{Action, Does, Lock, Scene};
use crate::diary::entry::{EntryId, LockAfter, Settings};
use crate::programme::values::Line;
use crate::words::{Language, Words};

/// Settings.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SettingsScreen {
    /// Heading.
    pub title: String,
    /// The language.
    pub language: LanguageForm,
    /// Whether sizes and counts stay open on Today.
    pub numbers: NumbersForm,
    /// After how long a phone locks; none where it has no code.
    pub lock: Option<LockForm>,
    /// The ways to the rest.
    pub parts: Vec<Section>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// The languages there are.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LanguageForm {
    /// The id to send the choice under.
    pub id: EntryId,
    /// What is asked.
    pub label: String,
    /// Each language, in its own name.
    pub languages: Vec<LanguageChoice>,
    /// All that is set now: written along, with the language changed.
    pub present: Settings,
    /// What keeps it.
    pub save: String,
}

/// A language.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LanguageChoice {
    /// BCP 47 tag.
    pub tag: String,
    /// Its name in itself.
    pub name: String,
    /// Whether its safety text was read by a licensed clinician, in words.
    pub reviewed: String,
    /// Whether the screens are in it now.
    pub present: bool,
}

/// Whether sizes and counts stay open on Today where the plan folds them.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct NumbersForm {
    /// The id to send the choice under.
    pub id: EntryId,
    /// What is asked.
    pub label: String,
    /// "Folded until I open them".
    pub folded: String,
    /// "Always open".
    pub open: String,
    /// All that is set now: written along, with this changed.
    pub present: Settings,
    /// What keeps it.
    pub save: String,
}

/// After how long behind other programs the code is asked for again.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LockForm {
    /// The id to send the choice under.
    pub id: EntryId,
    /// What is asked.
    pub label: String,
    /// What locks at once whatever is chosen.
    pub hint: String,
    /// Each time that can be chosen, the shortest first.
    pub choices: Vec<LockChoice>,
    /// All that is set now: written along, with this changed.
    pub present: Settings,
    /// What keeps it.
    pub save: String,
}

/// A time after which it locks.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LockChoice {
    /// Which.
    pub after: LockAfter,
    /// Its words.
    pub label: String,
}

impl SettingsScreen {
    /// `ids` are three new ones, one for each form.
    pub(crate) fn new(scene: &Scene<'_>, ids: [EntryId; 3]) -> Self {
        let [language, numbers, lock] = ids;
        let words = scene.words;
        let act = |label: String, does| Action::new(label, does);
        let part = |title: String, says: String, action| Section {
            title,
            says: vec![says],
            actions: vec![action],
        };
        Self {
            title: words.text("settings-title", &[]),
            language: language_form(scene, language),
            numbers: NumbersForm {
                id: numbers,
                label: words.text("settings-numbers", &[]),
                folded: words.text("settings-numbers-folded", &[]),
                open: words.text("settings-numbers-open", &[]),
                present: present(scene),
                save: words.text("action-keep", &[]),
            },
            lock: (scene.store.lock == Lock::Code).then(|| lock_form(scene, lock)),
            parts: vec![
                part(
                    words.text("settings-lock", &[]),
                    words.text("settings-lock-says", &[]),
                    another_lock(scene),
                ),
                part(
                    words.text("settings-reminders", &[]),
                    words.text("reminders-off", &[]),
                    act(words.text("action-reminders", &[]), Does::Reminders),
                ),
                part(
                    words.text("settings-cues", &[]),
                    words.text("settings-cues-says", &[]),
                    act(words.text("action-breathing", &[]), Does::Breathing),
                ),
                part(
                    words.text("settings-copies", &[]),
                    words.text("settings-copies-says", &[]),
                    act(words.text("action-keeping", &[]), Does::Keeping),
                ),
                part(
                    words.text("settings-shows", &[]),
                    words.text("settings-shows-says", &[]),
                    act(words.text("action-shows", &[]), Does::Shows),
                ),
                part(
                    words.text("settings-time-off", &[]),
                    words.text("settings-time-off-says", &[]),
                    act(words.text("action-time-off", &[]), Does::TimeOff),
                ),
                part(
                    words.text("settings-erase", &[]),
                    words.text("settings-erase-says", &[]),
                    act(words.text("action-erase-all", &[]), Does::EraseAll),
                ),
            ],
            actions: vec![today(scene)],
        }
    }
}

pub(super) fn language_form(scene: &Scene<'_>, id: EntryId) -> LanguageForm {
    let words = scene.words;
    let choice = |language: &Language| LanguageChoice {
        tag: language.tag.to_owned(),
        name: language.name.to_owned(),
        reviewed: if language.safety_text_reviewed() {
            words.text("settings-language-reviewed", &[])
        } else {
            words.text("settings-language-not-reviewed", &[])
        },
        present: language.tag == words.language().tag,
    };
    LanguageForm {
        id,
        label: words.text("settings-language", &[]),
        languages: Words::offered(cfg!(feature = "release")).into_iter().map(choice).collect(),
        present: present(scene),
        save: words.text("action-keep", &[]),
    }
}

fn lock_form(scene: &Scene<'_>, id: EntryId) -> LockForm {
    let words = scene.words;
    let choice = |after: LockAfter| LockChoice {
        after,
        label: match after.minutes() {
            0 => words.text("settings-lock-at-once", &[]),
            minutes => words.text("settings-lock-minutes", &[("count", minutes.into())]),
        },
    };
    LockForm {
        id,
        label: words.text("settings-lock-after", &[]),
        hint: words.text("settings-lock-after-hint", &[]),
        choices: LockAfter::ALL.into_iter().map(choice).collect(),
        present: present(scene),
        save: words.text("action-keep", &[]),
    }
}

/// All that is set now.
pub(super) fn present(scene: &Scene<'_>) -> Settings {
    Settings {
        language: scene.state.language().and_then(|tag| Line::new(tag).ok()),
        numbers_open: scene.state.numbers_open(),
        cues: scene.state.cues(),
        lock_after: scene.state.lock_after(),
    }
}
