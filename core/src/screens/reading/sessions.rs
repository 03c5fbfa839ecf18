//! Single sessions and choices worth a word: stopped, different from the plan, suggestions, own steps.

use super::gather::{Gathered, Sat};
use super::{Part, Point, ReadingPart, say};
use crate::diary::entry::{Chosen, Content, Ended, Why};
use crate::progression::OutcomeKind;

/// Sessions stopped or not started.
pub(super) fn stopped(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let sat = gathered.sat.iter().filter(|sat| sat.session.ended != Ended::Finished);
    let points: Vec<Point> = sat
        .map(|sat| {
            let minutes = sat.session.main_seconds() / 60;
            let values = [
                ("day", say::on(gathered, &sat.row.happened)),
                ("used", say::used(words, sat.session).into()),
                ("ended", say::ended(words, sat.session.ended).into()),
                ("minutes", minutes.into()),
                ("peak", say::peak(words, sat.session).into()),
            ];
            Point::plain(words.text("reading-stopped-session", &values))
        })
        .collect();
    gathered.part(Part::Stopped, words.text("reading-stopped-heading", &[]), points)
}

/// Sizes and positions used that are not the step's.
pub(super) fn different(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let differs = |sat: &&Sat<'_>| sat.stretch().is_some() && !sat.on_step;
    let points: Vec<Point> = gathered
        .sat
        .iter()
        .filter(differs)
        .map(|sat| {
            let step = sat.stretch().and_then(|index| gathered.stretches.get(index));
            let step = step.map(|on| say::step(words, &on.step)).unwrap_or_default();
            let values = [
                ("day", say::on(gathered, &sat.row.happened)),
                ("used", say::used(words, sat.session).into()),
                ("step", step.into()),
                ("peak", say::peak(words, sat.session).into()),
            ];
            Point::plain(words.text("reading-different-session", &values))
        })
        .collect();
    gathered.part(Part::Different, words.text("reading-different", &[]), points)
}

/// What the rule suggested and what she chose. A plain "stay" is only counted.
pub(super) fn suggestions(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let mut points = Vec::new();
    let mut stays = 0_usize;
    for row in gathered.standing() {
        let Content::SuggestionShown { outcome, to, .. } = row.content else { continue };
        let step = to.as_ref().map(|to| step_name(gathered, to.as_str())).unwrap_or_default();
        let said = match outcome {
            OutcomeKind::Hold => {
                stays += 1;
                continue;
            }
            OutcomeKind::PauseAndCall => words.text("replay-pause", &[]),
            OutcomeKind::StepBack => words.text("replay-back", &[("step", step.into())]),
            OutcomeKind::ReadyToTalk => words.text("replay-talk", &[]),
            OutcomeKind::StepUp => words.text("replay-up", &[("step", step.into())]),
        };
        let chosen = gathered.standing().find_map(|answer| match answer.content {
            Content::SuggestionAnswered { shown, chosen } if *shown == row.first.id => {
                Some(*chosen)
            }
            _ => None,
        });
        let chosen = match chosen {
            Some(Chosen::Try) => words.text("reading-tried", &[]),
            Some(Chosen::Stay) => words.text("reading-stayed", &[]),
            None => words.text("reading-not-answered", &[]),
        };
        let values = [
            ("day", say::on(gathered, &row.happened)),
            ("said", said.into()),
            ("chosen", chosen.into()),
        ];
        points.push(Point::plain(words.text("reading-suggestion", &values)));
    }
    if stays > 0 {
        let text = words.text("reading-stays-shown", &[("count", say::count(stays))]);
        points.push(Point::plain(text));
    }
    gathered.part(Part::Suggestions, words.text("reading-suggestions", &[]), points)
}

/// Steps that no suggestion led to.
pub(super) fn own_steps(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let points: Vec<Point> = gathered
        .standing()
        .filter_map(|row| match row.content {
            Content::StepChange { to, why } if *why != Why::Suggested => {
                let values = [
                    ("day", say::on(gathered, &row.happened)),
                    ("step", step_name(gathered, to.as_str()).into()),
                ];
                Some(Point::plain(match why {
                    Why::Clinician => words.text("reading-step-clinician", &values),
                    Why::Asked => words.text("reading-step-asked", &values),
                    Why::OwnChoice | Why::Suggested => words.text("reading-step-own", &values),
                }))
            }
            _ => None,
        })
        .collect();
    gathered.part(Part::OwnSteps, words.text("reading-own-steps", &[]), points)
}

/// A step's name under whichever revision has it, the latest first.
fn step_name(gathered: &Gathered<'_>, id: &str) -> String {
    let now = gathered.programme().and_then(|plan| {
        plan.steps.iter().find(|step| step.id.as_str() == id).map(|step| step.name.to_string())
    });
    let then = || {
        let mut past = gathered.stretches.iter().rev();
        past.find(|on| on.step.id.as_str() == id).map(|on| on.step.name.to_string())
    };
    now.or_else(then).unwrap_or_else(|| id.to_owned())
}
