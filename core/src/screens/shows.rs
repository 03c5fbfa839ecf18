//! What this phone can still show to somebody who looks: said honestly, with what Frond does about each and
//! what only she can do. Frond never claims to be invisible. Hazard H11.

use serde::Serialize;

use super::section::{not_right, today, whom_to_call};
use super::{Action, Does, Scene};

/// What this phone can still show.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ShowsScreen {
    /// Heading.
    pub title: String,
    /// What to know first.
    pub says: Vec<String>,
    /// One matter each.
    pub parts: Vec<Shown>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// What the shell that shows this does on its device. Nothing is claimed that it did not say.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Covered {
    /// It hides the screens in the list of open apps, and while they are recorded or shown elsewhere.
    pub screen: bool,
    /// It hides them in pictures that are taken of the screen on the device, too.
    pub pictures: bool,
    /// It asks the keyboard to learn nothing.
    pub keyboard: bool,
    /// It keeps the diary out of the device's own backups.
    pub backups: bool,
    /// It asks for reminders to be kept off a locked screen and off watches.
    pub reminders: bool,
    /// It has a button that leaves at once, and the list of open apps with it.
    pub leaves: bool,
}

/// One thing that can be seen.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Shown {
    /// What it is.
    pub title: String,
    /// What Frond does about it.
    pub frond: String,
    /// What only she can do.
    pub you: String,
}

impl ShowsScreen {
    pub(crate) fn new(scene: &Scene<'_>, covered: Covered) -> Self {
        let words = scene.words;
        let shown = |title: String, frond: String, you: String| Shown { title, frond, you };
        let parts = vec![
            shown(
                words.text("shows-installed", &[]),
                words.text("shows-installed-frond", &[]),
                words.text("shows-installed-you", &[]),
            ),
            shown(
                words.text("shows-reminders", &[]),
                if covered.reminders {
                    words.text("shows-reminders-hidden", &[])
                } else {
                    words.text("shows-reminders-frond", &[])
                },
                if covered.reminders {
                    words.text("shows-reminders-hidden-you", &[])
                } else {
                    words.text("shows-reminders-you", &[])
                },
            ),
            shown(
                words.text("shows-calendar", &[]),
                words.text("shows-calendar-frond", &[]),
                words.text("shows-calendar-you", &[]),
            ),
            shown(
                words.text("shows-given", &[]),
                words.text("shows-given-frond", &[]),
                words.text("shows-given-you", &[]),
            ),
            shown(
                words.text("shows-screen", &[]),
                match covered {
                    Covered { screen: true, pictures: true, .. } => {
                        words.text("shows-screen-frond", &[])
                    }
                    Covered { screen: true, .. } => words.text("shows-screen-part", &[]),
                    Covered { .. } => words.text("shows-screen-not", &[]),
                },
                if covered.leaves {
                    words.text("shows-screen-leave", &[])
                } else {
                    words.text("shows-screen-you", &[])
                },
            ),
            shown(
                words.text("shows-keyboard", &[]),
                if covered.keyboard {
                    words.text("shows-keyboard-frond", &[])
                } else {
                    words.text("shows-keyboard-not", &[])
                },
                words.text("shows-keyboard-you", &[]),
            ),
            shown(
                words.text("shows-backups", &[]),
                if covered.backups {
                    words.text("shows-backups-frond", &[])
                } else {
                    words.text("shows-backups-not", &[])
                },
                words.text("shows-backups-you", &[]),
            ),
            shown(
                words.text("shows-watched", &[]),
                words.text("shows-watched-frond", &[]),
                words.text("shows-watched-you", &[]),
            ),
        ];
        Self {
            title: words.text("shows-title", &[]),
            says: vec![words.text("shows-says", &[]), words.text("shows-danger", &[])],
            parts,
            actions: vec![
                whom_to_call(scene),
                not_right(scene),
                Action::new(words.text("action-keeping", &[]), Does::Keeping),
                today(scene),
            ],
        }
    }
}
