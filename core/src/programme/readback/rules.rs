//! The rule of a programme in sentences.

use super::super::plan::Programme;
use super::super::rule::{
    BackCriterion, PauseCriterion, Rule, StepBack, Target, UpCriterion, Window,
};
use super::super::values::RatingKind;
use super::plain::{days, different_days, full_sessions, place, rated, whole};
use super::{Naming, hours, step_named};
use crate::words::Words;

/// The rule for every step, and what it counts.
pub(in crate::programme) fn of_the_programme(p: &Programme, words: &Words, said: &mut Vec<String>) {
    if let Some(for_all) = &p.rule {
        let everywhere = p.steps.iter().all(|step| step.rule.is_none());
        let on = if everywhere {
            words.text("readback-on-every-step", &[])
        } else {
            words.text("readback-on-other-steps", &[])
        };
        rule(for_all, &on, &|id| step_named(p, id, words), words, said);
    } else if p.steps.iter().all(|step| step.rule.is_none()) {
        said.push(words.text("readback-no-rule", &[]));
    }
    let late = hours(p.late_after_hours.get(), words).into();
    let mut rules = p.rule.iter().chain(p.steps.iter().filter_map(|step| step.rule.as_ref()));
    said.push(if rules.any(|rule| rule.step_up.is_some()) {
        words.text("readback-full-session", &[("hours", late)])
    } else {
        words.text("readback-late", &[("hours", late)])
    });
}

/// One rule; `on` says for which steps, `naming` what a step is called.
pub(in crate::programme) fn rule(
    rule: &Rule,
    on: &str,
    naming: &Naming<'_>,
    words: &Words,
    said: &mut Vec<String>,
) {
    let item = |what: String| words.text("readback-item", &[("what", what.into())]);
    match &rule.step_up {
        Some(up) => {
            said.push(words.text("readback-up", &[("on", on.into())]));
            said.extend(up.all_of.iter().map(|criterion| item(up_criterion(*criterion, words))));
        }
        None => said.push(words.text("readback-up-never", &[("on", on.into())])),
    }
    if !rule.step_back.is_empty() {
        said.push(words.text("readback-back", &[("on", on.into())]));
        said.extend(rule.step_back.iter().map(|back| item(step_back(back, naming, words))));
    }
    if !rule.pause.is_empty() {
        said.push(words.text("readback-pause", &[("on", on.into())]));
        said.extend(rule.pause.iter().map(|criterion| item(pause(*criterion, words))));
    }
    if let Some(gap) = rule.after_gap_days {
        let gap = days(gap.get(), words).into();
        said.push(words.text("readback-gap", &[("on", on.into()), ("days", gap)]));
    }
}

pub(in crate::programme) fn up_criterion(criterion: UpCriterion, words: &Words) -> String {
    match criterion {
        UpCriterion::DaysOnStep { days: least } => {
            let least = days(least.get(), words).into();
            words.text("readback-up-days-on-step", &[("days", least)])
        }
        UpCriterion::Sessions { practised_days, within_days } => words.text(
            "readback-up-sessions",
            &[
                ("within", days(within_days.get(), words).into()),
                ("days", different_days(practised_days.get(), words).into()),
            ],
        ),
        UpCriterion::DiscomfortAtMost { rating, at_most, last } => words.text(
            "readback-up-discomfort",
            &[
                ("sessions", full_sessions(last.get(), words).into()),
                ("rating", rated(rating, words).into()),
                ("number", whole(at_most.get())),
            ],
        ),
        UpCriterion::SignFreeDays { days: least } => {
            let least = days(least.get(), words).into();
            words.text("readback-up-sign-free", &[("days", least)])
        }
        UpCriterion::FeelsReady {} => words.text("readback-up-feels-ready", &[]),
    }
}

pub(in crate::programme) fn step_back(
    back: &StepBack,
    naming: &Naming<'_>,
    words: &Words,
) -> String {
    let when = match back.when {
        BackCriterion::DiscomfortAtLeast { rating, at_least, window } => {
            rated_at_least(rating, at_least.get(), window, words)
        }
        BackCriterion::StoppedEarly { window } => stopped(window, words),
        BackCriterion::DaysWithoutPractice { days } => absent(days.get(), words),
    };
    let to = match &back.target {
        Target::Previous => words.text("readback-to-before", &[]),
        Target::First => words.text("readback-to-first", &[]),
        Target::Step(id) => words.text("readback-to-step", &[("step", naming(id).into())]),
    };
    words.text("readback-back-to", &[("when", when.into()), ("where", to.into())])
}

pub(in crate::programme) fn pause(criterion: PauseCriterion, words: &Words) -> String {
    match criterion {
        PauseCriterion::DiscomfortAtLeast { rating, at_least, window } => {
            rated_at_least(rating, at_least.get(), window, words)
        }
        PauseCriterion::StoppedEarly { window } => stopped(window, words),
        PauseCriterion::DaysWithoutPractice { days } => absent(days.get(), words),
        PauseCriterion::StepsBack { times, within_days } => words.text(
            "readback-steps-back",
            &[("within", days(within_days.get(), words).into()), ("times", whole(times.get()))],
        ),
    }
}

fn rated_at_least(rating: RatingKind, at_least: u8, window: Window, words: &Words) -> String {
    words.text(
        "readback-rated-at-least",
        &[
            ("among", among(window, words).into()),
            ("rating", rated(rating, words).into()),
            ("number", whole(at_least)),
        ],
    )
}

fn stopped(window: Window, words: &Words) -> String {
    words.text("readback-stopped", &[("among", among(window, words).into())])
}

fn absent(without: u16, words: &Words) -> String {
    words.text("readback-absent", &[("days", days(without, words).into())])
}

fn among(window: Window, words: &Words) -> String {
    match (window.sessions(), window.of_last()) {
        (1, 1) => words.text("readback-among-last", &[]),
        (sessions, last) => {
            let values = [("sessions", place(sessions)), ("last", place(last))];
            words.text("readback-among", &values)
        }
    }
}
