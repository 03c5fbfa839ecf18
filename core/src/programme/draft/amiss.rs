//! What can be amiss in a draft, and the sentence that says what to do. Decides only the words; the finding
//! is [`super::check`].

use super::super::fault::Fault;
use super::super::readback::plain::{rated, tier};
use super::super::values::Practice;
use super::Draft;
use super::place::Place;
use crate::safety::StricterError;
use crate::words::{Value, Words};

/// Something to put right, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mistake {
    /// Where.
    pub place: Place,
    /// What.
    pub amiss: Amiss,
}

/// What has to be put right. Never anybody's words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Amiss {
    /// Nothing stands there yet.
    Empty,
    /// Nothing is chosen yet.
    NotChosen,
    /// Not a whole number in this range.
    NotWhole {
        /// The smallest allowed.
        least: u64,
        /// The largest allowed.
        most: u64,
    },
    /// Not a size: 1 to 100 mm, at most one digit behind the point.
    NotASize,
    /// Not seconds: 0 to 30, at most one digit behind the point.
    NotSeconds,
    /// More characters than fit.
    TooLong {
        /// The most.
        most: usize,
    },
    /// Signs that cannot be shown.
    Unprintable,
    /// Not a day of the calendar.
    NotADay,
    /// More sessions than are looked at.
    MoreThanLookedAt,
    /// All texts together are too long to be handed over.
    TooLarge,
    /// Written wrongly as a whole.
    Fault(Fault),
}

impl Mistake {
    pub(super) fn new(place: Place, amiss: Amiss) -> Self {
        Self { place, amiss }
    }

    /// What to do, in one sentence. The draft is the one it was found in.
    #[must_use]
    pub fn say(&self, draft: &Draft, words: &Words) -> String {
        let number = |number: usize| Value::from(number);
        let large = |number: u64| Value::Whole(i64::try_from(number).unwrap_or(i64::MAX));
        match &self.amiss {
            Amiss::Empty => words.text("compose-amiss-empty", &[]),
            Amiss::NotChosen => words.text("compose-amiss-not-chosen", &[]),
            Amiss::NotWhole { least, most } => words.text(
                "compose-amiss-not-whole",
                &[("least", large(*least)), ("most", large(*most))],
            ),
            Amiss::NotASize => words.text("compose-amiss-not-a-size", &[]),
            Amiss::NotSeconds => words.text("compose-amiss-not-seconds", &[]),
            Amiss::TooLong { most } => {
                words.text("compose-amiss-too-long", &[("most", number(*most))])
            }
            Amiss::Unprintable => words.text("compose-amiss-unprintable", &[]),
            Amiss::NotADay => words.text("compose-amiss-not-a-day", &[]),
            Amiss::MoreThanLookedAt => words.text("compose-amiss-more-than-looked-at", &[]),
            Amiss::TooLarge => words.text("compose-amiss-too-large", &[]),
            Amiss::Fault(fault) => say_fault(fault, draft, words),
        }
    }
}

fn say_fault(fault: &Fault, draft: &Draft, words: &Words) -> String {
    match fault {
        Fault::UnknownStep(_) => words.text("compose-fault-unknown-step", &[]),
        Fault::StepTwice(_) => words.text("compose-fault-step-twice", &[]),
        Fault::PracticeTwice(_) => words.text("compose-fault-practice-twice", &[]),
        Fault::StartMissing => words.text("compose-fault-start-missing", &[]),
        Fault::Empty => words.text("compose-fault-nothing-in-it", &[]),
        Fault::TooMany(most) => words.text("compose-fault-too-many", &[("most", (*most).into())]),
        Fault::NoDiscomfortAtMost(steps) => words.text(
            "compose-fault-no-discomfort-at-most",
            &[("steps", draft.steps_named(steps, words).into())],
        ),
        Fault::OnlyDownwards(rating) => {
            words.text("compose-fault-only-downwards", &[("rating", rated(*rating, words).into())])
        }
        Fault::RatingNotAsked(rating) => words
            .text("compose-fault-rating-not-asked", &[("rating", rated(*rating, words).into())]),
        Fault::RatingTwice(_) => words.text("compose-fault-rating-twice", &[]),
        Fault::SizeMissing => words.text("compose-fault-size-missing", &[]),
        Fault::SizeSurplus => words.text("compose-fault-size-surplus", &[]),
        Fault::TrainerOutsideSteps => words.text("compose-fault-trainer-outside-steps", &[]),
        Fault::PracticeUndeclared(Practice::Other(_)) => {
            words.text("compose-fault-practice-undeclared", &[])
        }
        // The other kinds need no line that says what they are.
        Fault::PracticeUndeclared(_) => words.text("compose-amiss-not-chosen", &[]),
        Fault::LeastAboveMost => words.text("compose-fault-least-above-most", &[]),
        Fault::ReviewBeforeIssue => words.text("compose-fault-review-before-issue", &[]),
        Fault::BreathWithoutTime => words.text("compose-fault-breath-without-time", &[]),
        Fault::BreathElsewhere => words.text("compose-fault-breath-elsewhere", &[]),
        Fault::Sign(StricterError::Milder { sign, .. }) => {
            words.text("compose-fault-milder", &[("tier", tier(sign.tier(), words).into())])
        }
        Fault::Sign(StricterError::NotASign) => words.text("compose-amiss-not-chosen", &[]),
        Fault::SignTwice => words.text("compose-fault-sign-twice", &[]),
        Fault::NotALanguage => words.text("compose-fault-not-a-language", &[]),
        Fault::NotAKey => words.text("compose-fault-not-a-key", &[]),
    }
}
