//! What became of files that were brought: how many came in, and for each that did not, one sentence that says
//! why and what to do.

use serde::Serialize;

use super::count;
use crate::sealing::OpenError;
use crate::summary::SummaryError;
use crate::words::Words;

/// Why a file was not taken in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyRefused {
    /// It is no summary, or none to be relied on.
    Summary(SummaryError),
    /// Another program's health record.
    OtherRecord,
    /// Sealed with a passphrase that was not given.
    NeedsPassphrase,
    /// A diary that is known, with another key.
    OtherKey,
    /// It cannot be read.
    Unreadable,
    /// It could not be sealed.
    NotSealed,
    /// There is no room on the disk.
    NoRoom,
    /// It could not be kept.
    NotKept,
}

/// What is told while files come in and after.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Brought {
    /// How many there are.
    pub total: usize,
    /// How many are done.
    pub done: usize,
    /// Whether all is done.
    pub ended: bool,
    /// New ones.
    pub new: usize,
    /// Older than one that is there.
    pub older: usize,
    /// There already.
    pub known: usize,
    /// Refused beyond those that are told one by one.
    pub refused_more: usize,
    /// Files of the cabinet are read anew, and none are brought.
    pub reading: bool,
    /// The disk did not take everything.
    pub failed: bool,
}

/// A file that was refused.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RefusedFile {
    /// Its name, made harmless before.
    pub name: String,
    /// Why, and what to do.
    pub why: String,
}

/// What became of files that were brought.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct BroughtScreen {
    /// Heading.
    pub title: String,
    /// How far it is, in words; the same is told by the bar.
    pub progress: Option<String>,
    /// What came of it.
    pub says: Vec<String>,
    /// What is said over the refused.
    pub refused_title: String,
    /// The refused.
    pub refused: Vec<RefusedFile>,
    /// And how many more.
    pub more: Option<String>,
}

impl BroughtScreen {
    /// Words it.
    #[must_use]
    pub fn new(
        words: &Words,
        brought: &Brought,
        refused: impl Iterator<Item = (Option<String>, WhyRefused)>,
    ) -> Self {
        let refused: Vec<RefusedFile> = refused
            .map(|(name, why)| RefusedFile {
                name: name.unwrap_or_else(|| words.text("cabinet-file-without-name", &[])),
                why: why_refused(words, why),
            })
            .collect();
        let all_refused = refused.len() + brought.refused_more;
        let far = [("done", count(brought.done)), ("total", count(brought.total))];
        let progress = (!brought.ended).then(|| words.text("cabinet-progress", &far));
        let title = match (brought.reading, brought.ended) {
            (true, false) => words.text("cabinet-reading", &[]),
            (true, true) => words.text("cabinet-read", &[]),
            (false, false) => words.text("cabinet-bringing", &[]),
            (false, true) => words.text("cabinet-brought", &[]),
        };
        Self {
            title,
            progress,
            says: says(words, brought, all_refused),
            refused_title: words.text("cabinet-refused", &[("count", count(all_refused))]),
            refused,
            more: (brought.refused_more > 0).then(|| {
                words.text("cabinet-refused-more", &[("count", count(brought.refused_more))])
            }),
        }
    }
}

fn says(words: &Words, brought: &Brought, refused: usize) -> Vec<String> {
    let mut says = Vec::new();
    if brought.reading {
        says.push(words.text("cabinet-reading-why", &[]));
    } else if brought.ended && brought.total == 0 {
        says.push(words.text("cabinet-brought-nothing", &[]));
    }
    let told = [
        (brought.new, words.text("cabinet-brought-new", &[("count", count(brought.new))])),
        (brought.older, words.text("cabinet-brought-older", &[("count", count(brought.older))])),
        (brought.known, words.text("cabinet-brought-known", &[("count", count(brought.known))])),
        (refused, words.text("cabinet-brought-refused", &[("count", count(refused))])),
    ];
    says.extend(told.into_iter().filter(|(number, _)| *number > 0).map(|(_, text)| text));
    if brought.failed {
        says.push(words.text("cabinet-brought-failed", &[]));
    }
    says
}

/// Why a file was refused, and what to do next; nothing of what stands in it.
#[must_use]
pub fn why_refused(words: &Words, why: WhyRefused) -> String {
    match why {
        WhyRefused::Summary(error) => of_summary(words, error),
        WhyRefused::OtherRecord => words.text("cabinet-refused-other-record", &[]),
        WhyRefused::NeedsPassphrase => words.text("cabinet-refused-passphrase", &[]),
        WhyRefused::OtherKey => words.text("cabinet-refused-other-key", &[]),
        WhyRefused::Unreadable => words.text("cabinet-refused-unreadable", &[]),
        WhyRefused::NotSealed => words.text("cabinet-refused-not-sealed", &[]),
        WhyRefused::NoRoom => words.text("cabinet-refused-no-room", &[]),
        WhyRefused::NotKept => words.text("cabinet-refused-not-kept", &[]),
    }
}

fn of_summary(words: &Words, error: SummaryError) -> String {
    match error {
        SummaryError::TooLong | SummaryError::Seal(OpenError::TooLarge) => {
            words.text("cabinet-refused-too-long", &[])
        }
        SummaryError::Unreadable | SummaryError::Seal(OpenError::Read(_)) => {
            words.text("cabinet-refused-unreadable", &[])
        }
        SummaryError::NotASummary | SummaryError::Seal(OpenError::NotAge) => {
            words.text("cabinet-refused-not-a-summary", &[])
        }
        SummaryError::Garbled { .. } | SummaryError::Seal(OpenError::Damaged) => {
            words.text("cabinet-refused-damaged", &[])
        }
        SummaryError::Form => words.text("cabinet-refused-form", &[]),
        SummaryError::Newer | SummaryError::Seal(OpenError::Newer) => {
            words.text("cabinet-refused-newer", &[])
        }
        SummaryError::Sealed | SummaryError::Seal(OpenError::WrongKey | OpenError::NeedsKey) => {
            words.text("cabinet-refused-wrong-key", &[])
        }
        SummaryError::Seal(OpenError::NeedsPassphrase) => {
            words.text("cabinet-refused-passphrase", &[])
        }
        SummaryError::Seal(OpenError::WrongPassphrase) => {
            words.text("cabinet-refused-wrong-passphrase", &[])
        }
        SummaryError::Seal(OpenError::TooMuchWork) => words.text("cabinet-refused-work", &[]),
        SummaryError::Signature => words.text("cabinet-refused-signature", &[]),
        SummaryError::OtherDiary | SummaryError::OtherKey => {
            words.text("cabinet-refused-other-key", &[])
        }
    }
}
