//! What can be written wrongly in a programme that reads well, and the sentence that says so. The finding
//! is [`super::check`].

use std::fmt;

use super::values::{Practice, RatingKind, StepId};
use crate::safety::StricterError;

/// One thing written wrongly, and where.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{place}: {fault}")]
pub struct Issue {
    /// The line, such as `steps[2].parts[0].minutes`.
    pub place: String,
    /// What is wrong with it.
    pub fault: Fault,
}

/// What is wrong. Ids and numbers of the programme's form, never anybody's words.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// No step has this id.
    #[error("no step has the id \"{0}\"; name a step of this programme.")]
    UnknownStep(StepId),
    /// Two steps have the same id.
    #[error("another step has the id \"{0}\" already; give this one an id of its own.")]
    StepTwice(StepId),
    /// Two practices are the same.
    #[error("the practice \"{}\" stands in an earlier line already; keep one of them.", Name(.0))]
    PracticeTwice(Practice),
    /// There are steps, but none to begin at.
    #[error("it is missing; name the step to begin at, because this programme has steps.")]
    StartMissing,
    /// A list that must hold something is empty.
    #[error("it is empty; put at least one in, or leave the whole line out where that is allowed.")]
    Empty,
    /// A list is longer than allowed.
    #[error("there are more than {0}; shorten the list.")]
    TooMany(usize),
    /// A step may be gone up from without any limit to discomfort (P3).
    #[error(
        "this lets a person go up from {} without a look at discomfort; add discomfort_at_most, or \
         make such a step a gate.", steps_named(.0)
    )]
    NoDiscomfortAtMost(Vec<StepId>),
    /// A rating counts for coming back or pausing, but not for going up.
    #[error(
        "the rating \"{}\" counts here, but step_up of the same rule has no discomfort_at_most for \
         it; add one.", rating_name(*.0)
    )]
    OnlyDownwards(RatingKind),
    /// The rule reads a rating nobody is asked for.
    #[error(
        "the programme never asks for the rating \"{}\"; add it to ratings_asked, or use another rating.",
        rating_name(*.0)
    )]
    RatingNotAsked(RatingKind),
    /// A rating to be asked that is asked already.
    #[error("the rating \"{}\" is asked already; leave it out here.", rating_name(*.0))]
    RatingTwice(RatingKind),
    /// A trainer step's part names no trainer.
    #[error("a trainer is missing; add its label and widest diameter.")]
    SizeMissing,
    /// A part names a trainer where none is practised with.
    #[error("a trainer stands here, but the step's practice is not trainer; take one of them out.")]
    SizeSurplus,
    /// A trainer practice outside the ladder.
    #[error("trainers are practised on steps; make it a step, or choose another practice.")]
    TrainerOutsideSteps,
    /// A practice `other:ID` that is not explained.
    #[error("the practice \"{}\" is not among the practices; add what it is there.", Name(.0))]
    PracticeUndeclared(Practice),
    /// `least` is above `most`.
    #[error("the least is more than the most; swap or correct them.")]
    LeastAboveMost,
    /// The review day lies before the day of issue.
    #[error("the review day lies before the day the programme was issued; correct one of them.")]
    ReviewBeforeIssue,
    /// A breath that takes no time.
    #[error("the breath takes no time at all; give the phases their tenths of a second.")]
    BreathWithoutTime,
    /// A breathing pattern on something that is not breathing.
    #[error("a breathing pattern stands here, but the practice is no breathing; take it out.")]
    BreathElsewhere,
    /// A sign would become milder, or is none.
    #[error("{0}")]
    Sign(StricterError),
    /// A sign stands in two lines.
    #[error("the sign stands in an earlier line already; keep one of them.")]
    SignTwice,
    /// Not a language tag.
    #[error("it is not a language tag; write one such as en, es or pt-BR.")]
    NotALanguage,
    /// A key that nothing could be sealed to.
    #[error("it is not an age public key (age1...), or has a typing mistake; copy it again.")]
    NotAKey,
}

/// A practice as it is written in the programme.
struct Name<'a>(&'a Practice);

impl fmt::Display for Name<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&String::from(self.0.clone()))
    }
}

fn steps_named(steps: &[StepId]) -> String {
    let named: Vec<String> = steps.iter().map(|id| format!("\"{id}\"")).collect();
    format!("{} {}", if steps.len() == 1 { "step" } else { "steps" }, named.join(", "))
}

/// A rating as it is written in the programme.
pub(super) fn rating_name(rating: RatingKind) -> &'static str {
    match rating {
        RatingKind::Peak => "peak",
        RatingKind::Before => "before",
        RatingKind::After => "after",
        RatingKind::Worry => "worry",
    }
}
