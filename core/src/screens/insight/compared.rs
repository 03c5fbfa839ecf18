//! Two times on the same step, side by side. Each time stays whole: they are compared, never put together.

use super::super::reading::gather::Gathered;
use super::super::reading::say;
use super::stretch::Numbered;
use super::{ComparedInsight, InsightAbout, InsightPart, say as fine};
use crate::insight::{LEAST_COMPARED, Nonoverlap};
use crate::summary::Kind;

/// Each time on a step beside the time before it on the same step. `all` has the latest first.
pub(super) fn compared(gathered: &Gathered<'_>, all: &[Numbered<'_>]) -> Vec<ComparedInsight> {
    let beside = all.iter().enumerate().filter_map(|(at, later)| {
        let earlier = all.iter().skip(at + 1).find(|earlier| same(earlier, later))?;
        Some(pair(gathered, earlier, later))
    });
    beside.collect()
}

/// The same step of the same programme, asking for the same size and position; its revision may be
/// another.
fn same(one: &Numbered<'_>, other: &Numbered<'_>) -> bool {
    one.stretch.programme == other.stretch.programme
        && one.stretch.step.id == other.stretch.step.id
        && Kind::of(&one.stretch.step) == Kind::of(&other.stretch.step)
}

fn pair(gathered: &Gathered<'_>, earlier: &Numbered<'_>, later: &Numbered<'_>) -> ComparedInsight {
    let words = gathered.words;
    let (before, after) = (earlier.given(), later.given());
    let enough = before.len() >= LEAST_COMPARED && after.len() >= LEAST_COMPARED;
    let numbers = enough.then(|| Nonoverlap::of(&before, &after)).flatten();
    let mut says = vec![words.text(
        "insight-compared-rated",
        &[
            ("earlier", fine::span(gathered, earlier).into()),
            ("first", say::count(before.len())),
            ("later", fine::span(gathered, later).into()),
            ("second", say::count(after.len())),
        ],
    )];
    match &numbers {
        Some(found) => {
            let values = [
                ("pairs", found.pairs().into()),
                ("lower", found.lower.into()),
                ("equal", found.equal.into()),
                ("higher", found.higher.into()),
            ];
            says.push(words.text("insight-compared-pairs", &values));
            let values = [
                ("later", found.later.into()),
                ("below", found.below_all.into()),
                ("above", found.above_all.into()),
            ];
            says.push(words.text("insight-compared-beyond", &values));
            let values = [("nap", fine::fine(found.nap_lower())), ("tau", fine::fine(found.tau()))];
            says.push(words.text("insight-compared-nap", &values));
        }
        None => {
            let least = [("least", say::count(LEAST_COMPARED))];
            says.push(words.text("insight-compared-few", &least));
        }
    }
    let step = say::step(words, &later.stretch.step).into();
    ComparedInsight {
        part: InsightPart {
            about: InsightAbout::Compared,
            heading: words.text("insight-compared", &[("step", step)]),
            says,
            bears: numbers.map(|_| words.text("insight-compared-bears", &[])),
            source: numbers.map(|_| {
                let least = [("least", say::count(LEAST_COMPARED))];
                words.text("insight-compared-source", &least)
            }),
        },
        numbers,
    }
}
