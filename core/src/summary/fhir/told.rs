//! What else she told: activities, goals, time off, questions; and what the rule said at the end.

use super::code::Code;
use super::form::{Named, Observation, Period, Reference, Resource, Value, coded, score};
use super::{Making, date_time, instant};
use crate::diary::entry::Content;
use crate::diary::resolve::Counted;
use crate::progression::OutcomeKind;

/// Adds them.
pub(super) fn add(making: &mut Making<'_>) {
    let mut made: Vec<Observation> =
        making.looked.standing().filter_map(|row| told(making, row)).collect();
    made.extend(outcome(making));
    for one in made {
        making.push(one.id.clone(), Resource::Observation(Box::new(one)));
    }
}

fn told(making: &Making<'_>, row: &Counted<'_>) -> Option<Observation> {
    let made = match row.content {
        Content::FunctionRated { activity, able } => {
            let mut made = dated(making, row, Code::ActivityAbility);
            made.code = made.code.worded(making.texts.of(activity.as_str()));
            made.value = Some(score(i64::from(able.get())));
            made
        }
        Content::GoalRated { goal, reached } => {
            let mut made = dated(making, row, Code::GoalReached);
            made.focus = vec![Reference::to(&making.ids.worded(Code::Goal, goal.as_str()))];
            made.value = Some(score(i64::from(reached.get())));
            made
        }
        Content::Question { text } => {
            let text = making.texts.of(text.as_str())?;
            let mut made = dated(making, row, Code::Question);
            made.value = Some(Value::Text(text));
            made
        }
        Content::TimeOff { from, to } => {
            let mut made = dated(making, row, Code::TimeOff);
            made.effective_date_time = None;
            made.effective_period =
                Some(Period { start: from.to_string(), end: Some(to.to_string()) });
            made
        }
        _ => return None,
    };
    Some(made)
}

fn dated(making: &Making<'_>, row: &Counted<'_>, code: Code) -> Observation {
    let id = making.ids.entry(row.first.id, code);
    let mut made = making.observation(&id, code, Named::Survey);
    made.status = if row.corrections > 0 { "corrected" } else { "final" };
    made.effective_date_time = Some(date_time(&row.happened));
    made.issued = Some(instant(&row.first.written));
    made
}

/// What the clinician's rule said when the summary was made; nothing without a plan.
fn outcome(making: &Making<'_>) -> Option<Observation> {
    let present = &making.looked.summary.present;
    present.rule_of.as_ref()?;
    let id = making.ids.about(Code::Outcome);
    let mut made = making.observation(&id, Code::Outcome, Named::Survey);
    made.performer = Vec::new();
    made.based_on = making.plan_at(&present.at).into_iter().collect();
    made.effective_date_time = Some(date_time(&present.at));
    let to = present.to.as_ref().map(|to| format!("to {to}"));
    made.value = Some(Value::Concept(coded(said(present.outcome)).worded(to)));
    Some(made)
}

fn said(outcome: OutcomeKind) -> Code {
    match outcome {
        OutcomeKind::PauseAndCall => Code::OutcomePause,
        OutcomeKind::StepBack => Code::OutcomeBack,
        OutcomeKind::Hold => Code::OutcomeHold,
        OutcomeKind::ReadyToTalk => Code::OutcomeTalk,
        OutcomeKind::StepUp => Code::OutcomeUp,
    }
}
