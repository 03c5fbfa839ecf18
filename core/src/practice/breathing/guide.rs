//! What stands beside a breathing practice: cautions with their grounds, and how to lie for belly
//! breathing. Words only; nothing here promises an effect.

use super::pattern::{Holds, Pattern};
use crate::safety::{BreathCaution, Mark, Source};
use crate::words::Words;

/// A sentence beside the practice, with its ground.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BreathingNote {
    /// Its words.
    pub text: String,
    /// Where it comes from, and how well that was checked.
    pub source: Source,
}

/// The sentences beside a practice of `pattern`, the caution about over-breathing first (B10).
#[must_use]
pub fn notes(words: &Words, pattern: &Pattern, holds: Holds) -> Vec<BreathingNote> {
    let caution = |caution: BreathCaution| BreathingNote {
        text: words.text(caution.word_id(), &[]),
        source: caution.source(),
    };
    let mut notes = vec![
        caution(BreathCaution::OverBreathing),
        BreathingNote {
            text: words.text("breathing-softly", &[]),
            source: Source {
                text: "Sorfova and Tlapakova 2021: the pelvic floor can be more active in deep than \
                       in calm breathing; wording: memory",
                mark: Mark::ReadInPart,
            },
        },
    ];
    if pattern.holds() {
        notes.push(caution(BreathCaution::Holds));
    }
    if holds == Holds::LeftOut {
        notes.push(BreathingNote {
            text: words.text("breathing-holds-left-out", &[]),
            source: BreathCaution::Holds.source(),
        });
    }
    notes.push(BreathingNote {
        text: words.text("breathing-may-relax", &[]),
        source: Source {
            text: "Laborde 2022, doi 10.1016/j.neubiorev.2022.104711: few unwanted effects to be \
                   expected; \"may help\" is as far as this goes",
            mark: Mark::Read,
        },
    });
    notes
}

/// How to lie for belly breathing, one short step each, in order.
#[must_use]
pub fn belly_position(words: &Words) -> Vec<String> {
    vec![
        words.text("belly-lie", &[]),
        words.text("belly-hands", &[]),
        words.text("belly-breathe", &[]),
        words.text("belly-otherwise", &[]),
    ]
}

/// Where the position comes from, and how well that was checked.
#[must_use]
pub fn belly_position_source() -> Source {
    Source {
        text: "hips and knees at about a right angle, one hand below the ribs, one on the chest: \
               no source",
        mark: Mark::CommonPractice,
    }
}
