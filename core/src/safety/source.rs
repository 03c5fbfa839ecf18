//! Where a caution comes from, and how well that was checked.
//!
//! Both are carried as data, so that a reviewing clinician can list every caution with its ground
//! and see at once which ones rest on memory and need sign-off before a release.

use std::fmt;

/// How well a source was checked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Mark {
    /// Read in an abstract, leaflet or excerpt.
    Read,
    /// Some of it was read, the rest is from memory.
    ReadInPart,
    /// From memory, unchecked.
    Memory,
    /// A rule of thumb of the trade, without a source.
    CommonPractice,
}

/// The ground of a caution.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Source {
    /// What it was taken from.
    pub text: &'static str,
    /// How well that was checked.
    pub mark: Mark,
}

impl Mark {
    /// Whether a licensed clinician has to confirm the content itself, and not its wording alone.
    pub fn needs_confirming(self) -> bool {
        self != Mark::Read
    }
}

impl fmt::Display for Mark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Mark::Read => "read",
            Mark::ReadInPart => "read in part",
            Mark::Memory => "memory",
            Mark::CommonPractice => "common practice",
        })
    }
}

const fn read(text: &'static str) -> Source {
    Source { text, mark: Mark::Read }
}

pub(super) const CAUDA: Source =
    read("NHS pages on cauda equina syndrome; New Zealand guidance on the same");
pub(super) const PID: Source = read("NHS page on pelvic inflammatory disease");
pub(super) const TOXIC: Source = read("NHS page on toxic shock syndrome");
pub(super) const ECTOPIC: Source = read("family-planning handbook, signs of ectopic pregnancy");
pub(super) const BIRTH: Source = read("published lists of warning signs after a birth");
pub(super) const DILATION: Source = read("guidelines on dilation after radiotherapy; NHS pages");
pub(super) const NHS_BLEEDING: Source = read("NHS pages on bleeding");
pub(super) const TRAUMA: Source = Source {
    text: "principle: ACOG Committee Opinion 825 (2021), read; wording: memory",
    mark: Mark::ReadInPart,
};
pub(super) const ASK_FIRST: Source = Source {
    text: "leaflets of UW Health and UHNM; Cochrane review CD007291; the rest memory",
    mark: Mark::ReadInPart,
};
pub(super) const SPOTTING_NOTED: Source =
    read("radiotherapy guideline; a hospital leaflet accepts slight spotting in the first weeks");
pub(super) const MEMORY: Source = Source { text: "no source", mark: Mark::Memory };
pub(super) const OWN_RULE: Source = Source {
    text: "Frond's own rule: what was erased is not known, so it counts as a sign to stop for",
    mark: Mark::CommonPractice,
};
