//! How the diary is kept: what opens it, what copies there are, what was found damaged, and one thing to
//! do about each.

use serde::Serialize;

use super::{Action, Does, Lock, Scene, plain};
use crate::diary::store::{Findings, Rollback};
use crate::moment::Stamp;
use crate::words::Words;

/// How the diary is kept.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct KeepingScreen {
    /// Heading.
    pub title: String,
    /// What was found damaged or set back; nothing where all is well.
    pub trouble: Vec<KeepingPart>,
    /// What opens it, and what copies there are.
    pub parts: Vec<KeepingPart>,
    /// What no copy and no erasing can do anything about.
    pub limits: Vec<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One matter.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct KeepingPart {
    /// Heading.
    pub title: String,
    /// How it is.
    pub says: Vec<String>,
    /// The one thing to do about it.
    pub action: Option<Action>,
}

/// A backup on this device, as the screen needs it.
#[derive(Clone, Copy)]
pub(crate) struct BackupLine {
    pub(crate) made: Option<Stamp>,
    /// `None` where it cannot be read.
    pub(crate) entries: Option<u64>,
}

/// What the screen is made from, besides the scene.
pub(crate) struct Keeping<'a> {
    pub(crate) phrase: bool,
    pub(crate) backups: &'a [BackupLine],
    pub(crate) findings: &'a Findings,
    pub(crate) rollback: Option<Rollback>,
}

impl KeepingScreen {
    pub(crate) fn new(scene: &Scene<'_>, keeping: &Keeping<'_>) -> Self {
        let words = scene.words;
        let say = |id: &str| words.text(id, &[]);
        let lock = scene.store.lock;
        let mut parts: Vec<KeepingPart> = code(words, lock).into_iter().collect();
        parts.push(phrase(words, lock, keeping.phrase));
        parts.push(copy(scene, keeping.phrase));
        parts.push(backups(scene, keeping.backups));
        Self {
            title: say(crate::message_id!("keeping-title")),
            trouble: trouble(scene, keeping),
            parts,
            limits: limits(words, lock),
            actions: actions(words, lock),
        }
    }
}

/// What opens it on a phone; a passphrase needs no part of its own.
fn code(words: &Words, lock: Lock) -> Option<KeepingPart> {
    let (line, label) = match lock {
        Lock::Passphrase => return None,
        Lock::Phone => {
            (words.text("phone-lock-no-code", &[]), words.text("action-code-choose", &[]))
        }
        Lock::Code => (words.text("phone-lock-code", &[]), words.text("action-code-change", &[])),
    };
    Some(KeepingPart {
        title: words.text("phone-lock-code-title", &[]),
        says: vec![words.text("phone-lock-key", &[]), line],
        action: Some(Action::new(label, Does::CodeForm)),
    })
}

fn limits(words: &Words, lock: Lock) -> Vec<String> {
    let device = words.text("keeping-limit-device", &[]);
    let forgotten = match lock {
        Lock::Passphrase => return vec![words.text("keeping-limit-forgotten", &[]), device],
        Lock::Phone => None,
        Lock::Code => Some(words.text("phone-lock-limit-forgotten", &[])),
    };
    let keys = words.text("phone-lock-limit-keys", &[]);
    forgotten.into_iter().chain([keys, device]).collect()
}

fn actions(words: &Words, lock: Lock) -> Vec<Action> {
    let mut actions = Vec::new();
    match lock {
        Lock::Passphrase => {
            let label = words.text("action-new-passphrase", &[]);
            actions.push(Action::new(label, Does::NewKeys));
        }
        Lock::Phone => {}
        Lock::Code => actions.push(Action::new(words.text("action-lock", &[]), Does::Lock)),
    }
    actions.push(Action::new(words.text("page-erase-days", &[]), Does::EraseSomeDays));
    actions.push(Action::new(words.text("action-erase-all", &[]), Does::EraseAll));
    actions.push(Action::new(words.text("action-today", &[]), Does::Today));
    actions
}

fn phrase(words: &Words, lock: Lock, there: bool) -> KeepingPart {
    let (says, label) = if there {
        (words.text("keeping-phrase-there", &[]), words.text("action-new-phrase", &[]))
    } else {
        let none = match lock {
            Lock::Passphrase => words.text("keeping-phrase-none", &[]),
            Lock::Phone | Lock::Code => words.text("phone-lock-phrase-none", &[]),
        };
        (none, words.text("action-make-phrase", &[]))
    };
    KeepingPart {
        title: words.text("keeping-phrase-title", &[]),
        says: vec![says],
        action: Some(Action::new(label, Does::MakePhrase)),
    }
}

fn copy(scene: &Scene<'_>, phrase: bool) -> KeepingPart {
    let words = scene.words;
    let says = match scene.state.copy_made() {
        _ if !phrase => words.text("keeping-copy-needs-phrase", &[]),
        None => words.text("keeping-copy-none", &[]),
        Some(made) => {
            let when = plain::date(words, made.day()).into();
            words.text("keeping-copy-made", &[("when", when)])
        }
    };
    let action = phrase.then(|| Action::new(words.text("action-make-copy", &[]), Does::MakeCopy));
    KeepingPart { title: words.text("keeping-copy-title", &[]), says: vec![says], action }
}

fn backups(scene: &Scene<'_>, backups: &[BackupLine]) -> KeepingPart {
    let words = scene.words;
    let mut says: Vec<String> = backups
        .iter()
        .map(|backup| {
            let when = backup.made.map(|made| plain::when(words, made, scene.now));
            match (when, backup.entries) {
                (Some(when), Some(entries)) => words
                    .text("keeping-backup", &[("when", when.into()), ("count", count(entries))]),
                _ => words.text("keeping-backup-unreadable", &[]),
            }
        })
        .collect();
    if says.is_empty() {
        says.push(words.text("keeping-backup-none", &[]));
    }
    if scene.store.no_backup {
        says.push(words.text("today-no-backup", &[]));
    }
    says.push(words.text("keeping-backup-how", &[]));
    let any = !backups.is_empty();
    KeepingPart {
        title: words.text("keeping-backup-title", &[]),
        says,
        action: any.then(|| Action::new(words.text("action-restore", &[]), Does::Restore)),
    }
}

/// What was found, the gravest first. Each says what is missing and one thing to do.
fn trouble(scene: &Scene<'_>, keeping: &Keeping<'_>) -> Vec<KeepingPart> {
    let words = scene.words;
    let restore = || Some(Action::new(words.text("action-restore", &[]), Does::Restore));
    let entries = || Some(Action::new(words.text("action-entries", &[]), Does::Entries));
    let mut parts = Vec::new();
    let mut found = |title: String, says: Vec<String>, action: Option<Action>| {
        parts.push(KeepingPart { title, says, action });
    };
    if let Some(rollback) = keeping.rollback {
        let says = match rollback {
            Rollback::Shorter { .. } | Rollback::Differs { .. } => {
                vec![words.text("keeping-set-back", &[]), words.text("keeping-set-back-go-on", &[])]
            }
            Rollback::BeforeRenewal { .. } => {
                vec![
                    words.text("keeping-set-back-keys", &[]),
                    words.text("keeping-erase-again", &[]),
                ]
            }
        };
        found(words.text("keeping-set-back-title", &[]), says, entries());
    }
    let findings = keeping.findings;
    if findings.read_only.is_some() {
        found(
            words.text("keeping-read-only-title", &[]),
            vec![words.text("today-read-only", &[])],
            None,
        );
    }
    if scene.store.missing > 0 {
        let mut says =
            vec![words.text("keeping-missing", &[("count", count(scene.store.missing))])];
        if keeping.backups.iter().any(|backup| backup.entries.is_some()) {
            says.push(words.text("keeping-missing-backup", &[]));
        }
        says.push(words.text("keeping-missing-tell", &[]));
        let action = if keeping.backups.is_empty() { entries() } else { restore() };
        found(words.text("keeping-missing-title", &[]), says, action);
    }
    if !findings.kept_aside.is_empty() {
        found(
            words.text("keeping-aside-title", &[]),
            vec![words.text("keeping-aside", &[])],
            entries(),
        );
    }
    parts
}

fn count(number: u64) -> crate::words::Value {
    plain::whole(i64::try_from(number).unwrap_or(i64::MAX))
}
