//! What the rule says now, whose rule it is, and why.

use super::super::{Scene, StoreNote, reasons};
use super::gather::Gathered;
use super::{Part, Point, ReadingPart, say};
use crate::progression::{FoldError, Outcome, OutcomeKind, assess};
use crate::summary::Present;

/// The rule's present outcome. Always there.
pub(super) fn rule(gathered: &Gathered<'_>) -> Result<ReadingPart, FoldError> {
    let words = gathered.words;
    let present = &gathered.summary.present;
    let assessment = present.assessment();
    let scene = Scene {
        words,
        state: &gathered.state,
        assessment: &assessment,
        now: present.at,
        store: StoreNote::default(),
        practice_waits: false,
    };
    let mut outcome = Point::plain(said(gathered, &assessment.outcome));
    if present.outcome == OutcomeKind::Hold {
        outcome.inner.extend(present.bars.iter().map(|bar| reasons::bar(words, *bar)));
    }
    let mut points = vec![outcome];
    if let Some(rule) = &present.rule_of {
        let values = [
            ("clinician", rule.clinician.as_str().into()),
            ("revision", rule.revision.get().into()),
            ("day", say::day(gathered, rule.issued).into()),
        ];
        points.push(Point::plain(words.text("reading-whose", &values)));
    }
    for group in reasons::groups(&scene) {
        let inner = group
            .reasons
            .iter()
            .map(|reason| {
                let values = [
                    ("criterion", reason.criterion.as_str().into()),
                    ("verdict", reason.verdict_text.as_str().into()),
                ];
                words.text("reading-reason", &values)
            })
            .collect();
        points.push(Point { text: group.heading, inner });
    }
    points.push(Point::plain(replayed(gathered)?));
    Ok(ReadingPart { part: Part::Rule, heading: words.text("reading-rule", &[]), points })
}

fn said(gathered: &Gathered<'_>, outcome: &Outcome) -> String {
    let words = gathered.words;
    let present = &gathered.summary.present;
    let speaks = present.step.as_ref().is_some_and(|step| step.has_rule);
    if !speaks && *outcome != Outcome::PauseAndCall {
        return words.text("reading-no-rule", &[]);
    }
    let name = |to: &crate::programme::values::StepId| {
        let step = gathered.programme().and_then(|plan| plan.step(to));
        step.map_or_else(|| to.to_string(), |step| say::step(words, step)).into()
    };
    match outcome {
        Outcome::PauseAndCall => words.text("reading-outcome-pause", &[]),
        Outcome::StepBack { to } => words.text("reading-outcome-back", &[("step", name(to))]),
        Outcome::Hold { tell_clinician: false } => words.text("reading-outcome-stay", &[]),
        Outcome::Hold { tell_clinician: true } => words.text("reading-outcome-stay-tell", &[]),
        Outcome::ReadyToTalk => words.text("reading-outcome-talk", &[]),
        Outcome::StepUp { to } => words.text("reading-outcome-up", &[("step", name(to))]),
    }
}

/// Whether the rule, replayed here from the entries, says the same as it did on the phone.
fn replayed(gathered: &Gathered<'_>) -> Result<String, FoldError> {
    let words = gathered.words;
    let summary = gathered.summary;
    if summary.narrowed.leaves_out_entries() {
        return Ok(words.text("reading-replay-narrowed", &[]));
    }
    let at = summary.present.at;
    let here = Present::of(&assess(&summary.entries, &at)?, &summary.entries, at);
    Ok(if here == summary.present {
        words.text("reading-replay-same", &[])
    } else {
        words.text("reading-replay-differs", &[])
    })
}
