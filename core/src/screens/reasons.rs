//! Why the rule says what it says: each criterion in words, whether it is met, the sessions it looked
//! at, and what is missing, kindly.

use serde::Serialize;

use super::{Scene, plain};
use crate::diary::entry::EntryId;
use crate::programme::rule::{BackCriterion, PauseCriterion, UpCriterion, Window};
use crate::programme::values::{RatingAtLeast, RatingKind};
use crate::progression::{Bar, Criterion, Finding, Missing, Part, Verdict};
use crate::words::Words;

/// The reasons of one part of the rule.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReasonGroup {
    /// "To go up, all of these:" and the like.
    pub heading: String,
    /// Each criterion.
    pub reasons: Vec<Reason>,
}

/// One criterion.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Reason {
    /// The criterion in words.
    pub criterion: String,
    /// Met, not yet, or not known.
    pub verdict: Verdict,
    /// The verdict in words.
    pub verdict_text: String,
    /// The sessions it looked at, one line each, oldest first.
    pub looked_at: Vec<String>,
    /// What is missing.
    pub missing: Option<String>,
}

/// The findings of an assessment in words, step up first because that is what is asked most.
pub(super) fn groups(scene: &Scene<'_>) -> Vec<ReasonGroup> {
    let words = scene.words;
    [
        (Part::StepUp, words.text("reason-step-up", &[])),
        (Part::StepBack, words.text("reason-step-back", &[])),
        (Part::Pause, words.text("reason-pause", &[])),
    ]
    .into_iter()
    .filter_map(|(part, heading)| {
        let findings = scene.assessment.findings.iter().filter(|finding| finding.part == part);
        let reasons: Vec<Reason> = findings.map(|finding| reason(scene, finding)).collect();
        (!reasons.is_empty()).then_some(ReasonGroup { heading, reasons })
    })
    .collect()
}

fn reason(scene: &Scene<'_>, finding: &Finding) -> Reason {
    let words = scene.words;
    let verdict_text = match (finding.verdict, finding.part) {
        (Verdict::Met, _) => words.text("reason-met", &[]),
        (Verdict::Unmet, Part::StepUp) => words.text("reason-not-yet", &[]),
        (Verdict::Unmet, Part::StepBack | Part::Pause) => words.text("reason-not-so", &[]),
        (Verdict::Unknown, _) => words.text("reason-unknown", &[]),
    };
    let looked_at =
        if names_sessions(finding.criterion) { sessions(scene, finding) } else { vec![] };
    Reason {
        criterion: criterion(words, finding.criterion),
        verdict: finding.verdict,
        verdict_text,
        looked_at,
        missing: missing(scene, finding),
    }
}

/// Whether what a criterion looked at are sessions. A sign, an answer, or a change of step, is told by
/// the criterion itself.
fn names_sessions(criterion: Criterion) -> bool {
    match criterion {
        Criterion::Up(UpCriterion::FeelsReady {} | UpCriterion::SignFreeDays { .. })
        | Criterion::Pause(PauseCriterion::StepsBack { .. }) => false,
        Criterion::Up(
            UpCriterion::DaysOnStep { .. }
            | UpCriterion::Sessions { .. }
            | UpCriterion::DiscomfortAtMost { .. },
        )
        | Criterion::Back(_)
        | Criterion::Pause(
            PauseCriterion::DiscomfortAtLeast { .. }
            | PauseCriterion::StoppedEarly { .. }
            | PauseCriterion::DaysWithoutPractice { .. },
        ) => true,
    }
}

fn sessions(scene: &Scene<'_>, finding: &Finding) -> Vec<String> {
    let shown = finding.entries.len();
    let mut looked_at: Vec<String> =
        finding.entries.iter().map(|id| session(scene, *id, finding.criterion)).collect();
    if finding.looked_at > shown {
        let more = i64::try_from(finding.looked_at - shown).unwrap_or(i64::MAX);
        looked_at.insert(0, scene.words.text("reason-earlier", &[("count", plain::whole(more))]));
    }
    looked_at
}

/// "Monday 3 August 2026: highest discomfort 2".
fn session(scene: &Scene<'_>, id: EntryId, criterion: Criterion) -> String {
    let words = scene.words;
    let Some(occasion) = scene.state.rule().occasion(id) else {
        return words.text("reason-an-entry", &[]);
    };
    let date = plain::date(words, occasion.day).into();
    let Some(kind) = rating_of(criterion) else {
        return words.text("reason-session", &[("date", date)]);
    };
    let name = plain::rating_name(words, kind).into();
    match occasion.rating(kind) {
        Some(rating) => {
            let number = plain::whole(rating.get());
            words.text(
                "reason-session-rated",
                &[("date", date), ("rating", name), ("number", number)],
            )
        }
        None => words.text("reason-session-unrated", &[("date", date), ("rating", name)]),
    }
}

fn rating_of(criterion: Criterion) -> Option<RatingKind> {
    match criterion {
        Criterion::Up(one) => one.rating(),
        Criterion::Back(one) => one.rating(),
        Criterion::Pause(one) => one.rating(),
    }
}

fn criterion(words: &Words, criterion: Criterion) -> String {
    match criterion {
        Criterion::Up(UpCriterion::DaysOnStep { days }) => {
            words.text("criterion-days-on-step", &[("days", plain::whole(days.get()))])
        }
        Criterion::Up(UpCriterion::Sessions { practised_days, within_days }) => words.text(
            "criterion-sessions",
            &[
                ("days", plain::whole(practised_days.get())),
                ("within", plain::whole(within_days.get())),
            ],
        ),
        Criterion::Up(UpCriterion::DiscomfortAtMost { rating, at_most, last }) => words.text(
            "criterion-at-most",
            &[
                ("rating", plain::rating_name(words, rating).into()),
                ("number", plain::whole(at_most.get())),
                ("last", plain::whole(last.get())),
            ],
        ),
        Criterion::Up(UpCriterion::SignFreeDays { days }) => {
            words.text("criterion-sign-free", &[("days", plain::whole(days.get()))])
        }
        Criterion::Up(UpCriterion::FeelsReady {}) => words.text("criterion-feels-ready", &[]),
        Criterion::Back(BackCriterion::DiscomfortAtLeast { rating, at_least, window })
        | Criterion::Pause(PauseCriterion::DiscomfortAtLeast { rating, at_least, window }) => {
            at_least_in(words, rating, at_least, window)
        }
        Criterion::Back(BackCriterion::StoppedEarly { window })
        | Criterion::Pause(PauseCriterion::StoppedEarly { window }) => words.text(
            "criterion-stopped",
            &[("sessions", count(window.sessions())), ("last", count(window.of_last()))],
        ),
        Criterion::Back(BackCriterion::DaysWithoutPractice { days })
        | Criterion::Pause(PauseCriterion::DaysWithoutPractice { days }) => {
            words.text("criterion-days-without", &[("days", plain::whole(days.get()))])
        }
        Criterion::Pause(PauseCriterion::StepsBack { times, within_days }) => words.text(
            "criterion-steps-back",
            &[("times", plain::whole(times.get())), ("within", plain::whole(within_days.get()))],
        ),
    }
}

fn at_least_in(words: &Words, kind: RatingKind, at_least: RatingAtLeast, window: Window) -> String {
    words.text(
        "criterion-at-least",
        &[
            ("rating", plain::rating_name(words, kind).into()),
            ("number", plain::whole(at_least.get())),
            ("sessions", count(window.sessions())),
            ("last", count(window.of_last())),
        ],
    )
}

fn count(number: usize) -> crate::words::Value {
    plain::whole(i64::try_from(number).unwrap_or(i64::MAX))
}

fn missing(scene: &Scene<'_>, finding: &Finding) -> Option<String> {
    let words = scene.words;
    match &finding.missing {
        Missing::Nothing => None,
        Missing::Days { more } => {
            let days = plain::whole(*more);
            Some(match finding.criterion {
                Criterion::Up(UpCriterion::SignFreeDays { .. }) => {
                    words.text("missing-sign-free-days", &[("days", days)])
                }
                _ => words.text("missing-days-on-step", &[("days", days)]),
            })
        }
        Missing::PractisedDays { more } => {
            Some(words.text("missing-practised-days", &[("days", plain::whole(*more))]))
        }
        Missing::FullSessions { more } => {
            Some(words.text("missing-full-sessions", &[("sessions", plain::whole(*more))]))
        }
        Missing::SmallerLast => Some(words.text("missing-smaller-last", &[])),
        Missing::Comfort => Some(words.text("missing-comfort", &[])),
        Missing::Ratings { entries } => {
            Some(words.text("missing-ratings", &[("sessions", count(entries.len()))]))
        }
        Missing::Answer => Some(words.text("missing-answer", &[])),
        Missing::Clock => Some(words.text("missing-clock", &[])),
    }
}

/// What keeps a step up from being said, in words.
pub(super) fn bar(words: &Words, bar: Bar) -> String {
    match bar {
        Bar::NotKnownUnmet => words.text("bar-not-known", &[]),
        Bar::UnsureClock => words.text("bar-clock", &[]),
        Bar::StepNotConfirmed => words.text("bar-step-not-confirmed", &[]),
        Bar::ReviewPassed => words.text("bar-review-passed", &[]),
        // An ordinary hold: nobody reading over a shoulder learns that it was asked for (D1).
        Bar::StayHere => words.text("bar-stay", &[]),
        Bar::EntriesMissing => words.text("bar-entries-missing", &[]),
        Bar::RestoreNotConfirmed => words.text("bar-restore", &[]),
        Bar::Maintain => words.text("bar-maintain", &[]),
        Bar::SmallerLast => words.text("missing-smaller-last", &[]),
    }
}
