//! What is unusual in a draft, worded, with its ground and how well that was checked. The finding is
//! [`super::super::warn`]; nothing here keeps a programme back.

use super::super::readback::plain::widest;
use super::super::warn::{OWN_RANGE, Unusual, Warning};
use super::Draft;
use super::place::Place;
use crate::safety::{Mark, Source};
use crate::words::{Value, Words};

/// Something unusual, where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// Where.
    pub place: Place,
    /// What.
    pub unusual: Unusual,
    /// Why it is called so; none where it follows from the programme itself.
    pub ground: Option<Source>,
}

impl Notice {
    pub(super) fn new(warning: Warning) -> Self {
        let place = Place::of_line(&warning.place);
        Self { place, unusual: warning.unusual, ground: warning.ground }
    }

    /// What is unusual, in a sentence. The draft is the one it was found in.
    #[must_use]
    pub fn say(&self, draft: &Draft, words: &Words) -> String {
        let number = |number: u16| Value::Whole(number.into());
        match &self.unusual {
            Unusual::SizeFalls { size, before, before_size, .. } => words.text(
                "compose-unusual-size-falls",
                &[
                    ("size", widest(*size, words).into()),
                    ("step", draft.step_named(before, words).into()),
                    ("before", widest(*before_size, words).into()),
                ],
            ),
            Unusual::Jump { before, by, .. } => words.text(
                "compose-unusual-jump",
                &[
                    ("step", draft.step_named(before, words).into()),
                    ("by", millimetres(by.tenths)),
                    ("most", millimetres(Unusual::LARGE_JUMP.tenths)),
                ],
            ),
            Unusual::FirstSize(size) => words.text(
                "compose-unusual-first-size",
                &[
                    ("size", widest(*size, words).into()),
                    ("least", millimetres(Unusual::FIRST_LEAST.tenths)),
                    ("most", millimetres(Unusual::FIRST_MOST.tenths)),
                ],
            ),
            Unusual::VerySmall(size) => {
                words.text("compose-unusual-very-small", &[("size", widest(*size, words).into())])
            }
            Unusual::VeryLarge(size) => {
                words.text("compose-unusual-very-large", &[("size", widest(*size, words).into())])
            }
            Unusual::Minutes { least, most, common_least, common_most } => words.text(
                "compose-unusual-minutes",
                &[
                    ("least", number(*least)),
                    ("most", number(*most)),
                    ("from", number(*common_least)),
                    ("to", number(*common_most)),
                ],
            ),
            Unusual::BreathNotPaced { .. } => words.text("compose-unusual-breath-not-paced", &[]),
            Unusual::DaysOnStep(days) => {
                words.text("compose-unusual-days-on-step", &[("days", number(*days))])
            }
            Unusual::NotOnBackFirst => words.text("compose-unusual-not-on-back-first", &[]),
            Unusual::NoReturn => words.text("compose-unusual-no-return", &[]),
            Unusual::NeverMet { asked, within } => words.text(
                "compose-unusual-never-met",
                &[("asked", number(*asked)), ("within", number(*within))],
            ),
            Unusual::ScheduleTooFull { least } => {
                words.text("compose-unusual-schedule-too-full", &[("least", number(*least))])
            }
            Unusual::TargetNotEarlier(step) => words.text(
                "compose-unusual-target-not-earlier",
                &[("step", draft.step_named(step, words).into())],
            ),
            Unusual::RuleWithoutSteps => words.text("compose-unusual-rule-without-steps", &[]),
        }
    }

    /// Why it is called so, and how well that was checked.
    #[must_use]
    pub fn why(&self, words: &Words) -> String {
        match self.ground {
            None => words.text("compose-ground-follows", &[]),
            Some(OWN_RANGE) => words.text("compose-ground-own", &[]),
            Some(Source { mark: Mark::CommonPractice, .. }) => {
                words.text("compose-ground-common", &[])
            }
            Some(Source { text, mark }) => {
                let mark = match mark {
                    Mark::Read | Mark::CommonPractice => words.text("compose-ground-read", &[]),
                    Mark::ReadInPart => words.text("compose-ground-in-part", &[]),
                    Mark::Memory => words.text("compose-ground-memory", &[]),
                };
                words.text(
                    "compose-ground-source",
                    &[("source", text.into()), ("mark", mark.into())],
                )
            }
        }
    }
}

fn millimetres(tenths: u16) -> Value {
    Value::decimal(f64::from(tenths) / 10.0, u8::from(!tenths.is_multiple_of(10)))
}
