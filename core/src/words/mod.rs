//! Every word a person reads, in her own language.
//!
//! This room decides which languages there are, which of them may be offered, and how a message id
//! and its values become a sentence. It leaves to the other rooms what is said and when.
//!
//! # How to add or change words
//!
//! 1. Write the message into the `.ftl` file of its room, for example `en/today.ftl`. Ids are
//!    lower-case words joined by hyphens and begin with the room: `today-nothing-planned`.
//! 2. Use it: `words.text("today-nothing-planned", &[])`. When the id is stored first and worded
//!    later (in a table, in a `match`), mark it where it is written: `message_id!("sign-fever-ask")`.
//! 3. Never build an id with `format!`. A test reads the source and compares: each id written in
//!    one of these two ways must exist in English, each English id must be used, and where the
//!    values are written out in the call they must be the ones the message asks for. An id put
//!    together from pieces could not be found by that test, nor by a person searching for it.
//! 4. A new file of a language's folder comes in by itself: `build.rs` packs them all.
//!
//! Write for a reading age of about eleven, warmly and plainly. Nothing promises an effect, praises
//! pressing on, or assumes a partner.
//!
//! 5. Put it into every other language: a test names what is missing. Then read the snapshot of the
//!    file in `tests/snapshots/`, where the languages stand below each other.
//!
//! Numbers are written as the language writes them (`numbers.rs`); dates are messages, because their
//! order and small words differ. The time of day is written with 24 hours everywhere.
//!
//! Start reading at [`Words`]; the gate for a release is in [`Language`].

mod en;
mod es;
mod files;
mod language;
mod numbers;
mod pseudo;
#[cfg(test)]
mod tests;
#[cfg(test)]
mod used;
mod value;

use std::fmt;
use std::sync::Arc;

use chrono::{Datelike, NaiveDate, NaiveTime, Timelike};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::LanguageIdentifier;

pub use language::{Direction, Language, Review};
pub use pseudo::Pseudo;
pub use value::Value;

/// Marks a message id that is stored before it is worded, so that the test of used ids finds it.
///
/// It is the text itself; the mark costs nothing when the program runs.
#[macro_export]
macro_rules! message_id {
    ($id:literal) => {
        $id
    };
}

/// Where inserted values stand between direction isolation marks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Isolation {
    /// Nowhere: a terminal shows the marks as stray characters.
    Never,
    /// In languages that run from right to left.
    InRightToLeft,
    /// In every language: a value may run the other way there, too.
    Always,
}

impl Isolation {
    fn wanted(self, direction: Direction) -> bool {
        match self {
            Isolation::Never => false,
            Isolation::InRightToLeft => direction == Direction::RightToLeft,
            Isolation::Always => true,
        }
    }
}

/// The messages of one language, ready to be filled in. Cheap to clone; build it once and keep it.
#[derive(Clone)]
pub struct Words {
    language: &'static Language,
    asked_for: Option<Arc<str>>,
    isolation: Isolation,
    bundle: Arc<FluentBundle<FluentResource>>,
}

impl Words {
    /// The words for a language tag such as `en` or `en-GB` (BCP 47).
    ///
    /// The nearest language that this build may offer is taken: the same tag, otherwise the same
    /// language without its region, otherwise English. [`Words::fell_back`] tells of the last case.
    pub fn for_language(tag: &str) -> Words {
        Self::build(tag, Isolation::Never)
    }

    /// As [`Words::for_language`], with every inserted value wrapped in direction isolation marks.
    ///
    /// A screen that mixes right-to-left and left-to-right text needs them; a terminal shows them
    /// as stray characters.
    pub fn with_isolation(tag: &str) -> Words {
        Self::build(tag, Isolation::Always)
    }

    /// The words for a language, with isolation marks as the surface wants them.
    pub fn isolated(tag: &str, isolation: Isolation) -> Words {
        Self::build(tag, isolation)
    }

    /// The words for another language, with isolation marks where these would have them.
    pub fn in_language(&self, tag: &str) -> Words {
        Self::build(tag, self.isolation)
    }

    fn build(tag: &str, isolation: Isolation) -> Words {
        let nearest = language::nearest(tag, Self::offered(cfg!(feature = "release")));
        let language = nearest.unwrap_or(&en::LANGUAGE);
        let asked_for = if nearest.is_none() { Some(Arc::from(tag)) } else { None };
        let bundle = Arc::new(bundle(language, isolation.wanted(language.direction)));
        Words { language, asked_for, isolation, bundle }
    }

    /// The languages that may be offered to a person, in the order to list them.
    ///
    /// For a release only those whose safety text, exactly as it stands now, is marked reviewed.
    /// The list may be empty; then there is nothing to release. Otherwise all of them, the languages
    /// for trying out too; whoever shows the list says of each whether its safety text was reviewed.
    pub fn offered(release: bool) -> Vec<&'static Language> {
        language::offered(language::ALL, release)
    }

    /// The language these words are in.
    pub fn language(&self) -> &'static Language {
        self.language
    }

    /// The tag that was asked for, if there was no such language and English stands in for it.
    pub fn fell_back(&self) -> Option<&str> {
        self.asked_for.as_deref()
    }

    /// The message `id`, filled with `values`.
    ///
    /// Never fails. An id that does not exist gives the id itself, and a missing value gives its
    /// name in braces: wrong, yet a person can still use the screen. A test of this room finds both.
    pub fn text(&self, id: &str, values: &[(&str, Value)]) -> String {
        let mut slips = Vec::new();
        self.filled(id, values, &mut slips).unwrap_or_else(|| id.to_owned())
    }

    /// A day as it is said: "Monday 3 August 2026".
    pub fn date(&self, day: NaiveDate) -> String {
        self.text(
            "common-date",
            &[
                ("weekday", day.weekday().number_from_monday().into()),
                ("day", day.day().into()),
                ("month", day.month().into()),
                // As text: a year takes no thousands separator in any language.
                ("year", day.year().to_string().into()),
            ],
        )
    }

    /// A time of day as it is said: "21:30".
    #[must_use]
    pub fn time(&self, time: NaiveTime) -> String {
        format!("{:02}:{:02}", time.hour(), time.minute())
    }

    fn filled(
        &self,
        id: &str,
        values: &[(&str, Value)],
        slips: &mut Vec<fluent_bundle::FluentError>,
    ) -> Option<String> {
        let pattern = self.bundle.get_message(id)?.value()?;
        let args: FluentArgs<'_> =
            values.iter().map(|(name, value)| (*name, value.to_fluent())).collect();
        Some(self.bundle.format_pattern(pattern, Some(&args), slips).into_owned())
    }
}

impl fmt::Debug for Words {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Words").field("language", &self.language.tag).finish_non_exhaustive()
    }
}

/// All files of a language in one bundle, so that a message may refer to one of another file.
///
/// What a file contains that cannot be parsed, or says twice, is left out here and found by a test.
fn bundle(language: &Language, isolating: bool) -> FluentBundle<FluentResource> {
    let rules: LanguageIdentifier = language.rules.parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![rules]);
    bundle.set_use_isolating(isolating);
    bundle.set_transform(language.pseudo.map(Pseudo::transform));
    bundle.set_formatter(Some(numbers::written));
    for (_, source) in language.files() {
        let resource = match FluentResource::try_new(source) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        let _said_twice = bundle.add_resource(resource);
    }
    bundle
}
