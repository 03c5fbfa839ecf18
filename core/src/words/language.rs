//! What is known about a language, and the gate that keeps unreviewed safety text out of a release.
//!
//! A caution that is translated wrongly can do harm, so a release offers a language only when a
//! licensed clinician who reads it has signed off its safety text. The sign-off is tied to the
//! exact text by its hash: changing one word of it opens the question again.

use std::fmt;

use sha2::{Digest, Sha256};

use super::files::Files;
use super::pseudo::Pseudo;
use super::{en, es};

/// Every language in the source, English first because the others fall back to it. The last two are
/// spoken by nobody.
pub(super) const ALL: &[&Language] = &[&en::LANGUAGE, &es::LANGUAGE, &LONGER, &MIRRORED];

/// English with accents and about 40 % longer. Tag as in CLDR and Android.
pub(super) const LONGER: Language = Language {
    tag: "en-XA",
    name: "[Ļöñĝéŕ] (for trying out only)",
    pseudo: Some(Pseudo::Longer),
    ..en::LANGUAGE
};

/// English from right to left. Tag as in CLDR and Android.
pub(super) const MIRRORED: Language = Language {
    tag: "ar-XB",
    name: "[Mirrored] (for trying out only)",
    direction: Direction::RightToLeft,
    pseudo: Some(Pseudo::Mirrored),
    ..en::LANGUAGE
};

// With the feature `release`, a build without a reviewed English text fails here.
#[cfg(feature = "release")]
const _: () = assert!(
    matches!(en::LANGUAGE.safety_text, Review::Reviewed { .. }),
    "a release needs English safety text that a licensed clinician has reviewed"
);

/// One language and its messages.
pub struct Language {
    /// BCP 47 tag, for example `en`.
    pub tag: &'static str,
    /// The language's name in itself.
    pub name: &'static str,
    /// BCP 47 tag of the language whose plurals and numbers these are; differs from `tag` only where
    /// the language is made from another.
    pub rules: &'static str,
    /// The direction its script runs.
    pub direction: Direction,
    /// Whether a clinician has signed off the safety text.
    pub safety_text: Review,
    /// What is made of the messages, in a language for trying out. A release never offers one.
    pub pseudo: Option<Pseudo>,
    /// Where its Fluent files are.
    pub(super) files: Files,
}

impl fmt::Debug for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Language").field("tag", &self.tag).finish_non_exhaustive()
    }
}

/// The direction a script runs on the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// As in English.
    LeftToRight,
    /// As in Arabic or Hebrew.
    RightToLeft,
}

/// The state of the sign-off of a language's safety text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Review {
    /// Nobody licensed has signed it off.
    NotYet,
    /// Signed off by a licensed clinician.
    Reviewed {
        /// Name and licence of the reviewer.
        by: &'static str,
        /// The day, as `2026-01-31`.
        on: &'static str,
        /// SHA-256, in lower-case hex, of the `safety.ftl` that was read.
        sha256: &'static str,
    },
}

impl Language {
    /// Name and content of each Fluent file, unpacked for this call.
    pub fn files(&self) -> Vec<(String, String)> {
        self.files.read()
    }

    /// Whether the safety text, exactly as it stands in this build, has been signed off.
    pub fn safety_text_reviewed(&self) -> bool {
        match self.safety_text {
            Review::NotYet => false,
            Review::Reviewed { by, on, sha256 } => {
                !by.trim().is_empty()
                    && on.parse::<chrono::NaiveDate>().is_ok()
                    && self.safety_text_hash().is_some_and(|now| now == sha256)
            }
        }
    }

    /// SHA-256 of `safety.ftl` in lower-case hex, the value a reviewer signs; none without the file.
    pub fn safety_text_hash(&self) -> Option<String> {
        let (_, text) = self.files().into_iter().find(|(name, _)| name == "safety.ftl")?;
        Some(data_encoding::HEXLOWER.encode(&Sha256::digest(text.as_bytes())))
    }
}

pub(super) fn offered(all: &[&'static Language], release: bool) -> Vec<&'static Language> {
    let for_people = |one: &&Language| one.pseudo.is_none() && one.safety_text_reviewed();
    all.iter().copied().filter(|one| !release || for_people(one)).collect()
}

/// The same tag, otherwise the same language without script and region.
pub(super) fn nearest(tag: &str, offered: Vec<&'static Language>) -> Option<&'static Language> {
    // Phones write `en_GB` in places; the library reads both.
    let asked: unic_langid::LanguageIdentifier = tag.trim().parse().ok()?;
    let exact = offered.iter().find(|one| one.tag.eq_ignore_ascii_case(&asked.to_string()));
    let same = || offered.iter().find(|one| one.tag.eq_ignore_ascii_case(asked.language.as_str()));
    exact.or_else(same).copied()
}
