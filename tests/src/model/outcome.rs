//! The outcome, first that applies (O1 to O4), and the latch of a pause.

use std::collections::{BTreeMap, BTreeSet};

use frond_core::diary::entry::{Content, Entry, Place, SignKey};
use frond_core::moment::Stamp;
use frond_core::programme::rule::{Rule, StepBack, Target};
use frond_core::programme::values::StepId;
use frond_core::progression::{Bar, Criterion, Outcome, Part, Verdict};
use frond_core::safety::Tier;

use super::facts::{For, Ground, is_below};
use super::ladder::{Current, Ladder, confirmed, restore_unconfirmed};
use super::reading::{Reading, Shelf, shelf};
use super::signs::open;

/// What was found for one criterion.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Judged {
    /// Which part of the rule it stands in.
    pub part: Part,
    /// The criterion.
    pub criterion: Criterion,
    /// Where it would lead back to.
    pub target: Option<StepId>,
    /// The verdict.
    pub verdict: Verdict,
}

/// Everything the model says at a moment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// The outcome.
    pub outcome: Outcome,
    /// Every criterion: pause, step back, step up.
    pub verdicts: Vec<Judged>,
    /// What bars a step up; empty where the rule has none.
    pub bars: BTreeSet<Bar>,
    /// The open signs.
    pub open_signs: BTreeMap<SignKey, Tier>,
    /// Whether a pause stands.
    pub pause: bool,
}

/// The outcome alone.
#[must_use]
pub fn outcome(entries: &[Entry], now: &Stamp, tried: Option<&Rule>) -> Outcome {
    said(entries, now, tried).outcome
}

/// The verdict on every criterion of the rule in force.
#[must_use]
pub fn verdicts(entries: &[Entry], now: &Stamp, tried: Option<&Rule>) -> Vec<Judged> {
    said(entries, now, tried).verdicts
}

/// What the rule says about a diary at a moment, with every reason.
#[must_use]
pub fn said(entries: &[Entry], now: &Stamp, tried: Option<&Rule>) -> Said {
    let shelf = shelf(entries);
    let reading = Reading::new(entries, *now, &shelf);
    let ladder = Ladder::new(&reading);
    let open_signs = open(&reading);
    let pause = pause_stands(&reading, tried);
    let current = ladder.current.as_ref();
    let rule = current.and_then(|current| current.rule(tried));
    let (verdicts, bars) = match (current, rule) {
        (Some(current), Some(rule)) => {
            let ground = Ground { reading: &reading, ladder: &ladder, current, rule };
            let verdicts = judge(&ground);
            let bars = bars(&ground, &verdicts);
            (verdicts, bars)
        }
        _ => (Vec::new(), BTreeSet::new()),
    };
    let outcome = if pause || !open_signs.is_empty() {
        Outcome::PauseAndCall
    } else if let Some(current) = current {
        step_outcome(current, rule, &verdicts, &bars)
    } else {
        Outcome::Hold { tell_clinician: false }
    };
    Said { outcome, verdicts, bars, open_signs, pause }
}

/// O2 to O4.
fn step_outcome(
    current: &Current<'_>,
    rule: Option<&Rule>,
    verdicts: &[Judged],
    bars: &BTreeSet<Bar>,
) -> Outcome {
    let met = |part: Part| {
        verdicts.iter().filter(move |judged| judged.part == part && judged.verdict == Verdict::Met)
    };
    if met(Part::StepBack).next().is_some() {
        let lowest = met(Part::StepBack)
            .filter_map(|judged| current.programme.step_index(judged.target.as_ref()?))
            .min();
        return match lowest {
            Some(lowest) => Outcome::StepBack { to: current.programme.steps[lowest].id.clone() },
            None => Outcome::Hold { tell_clinician: true },
        };
    }
    let all = rule.and_then(|rule| rule.step_up.as_ref()).map(|up| up.all_of.len());
    if all != Some(met(Part::StepUp).count()) || !bars.is_empty() {
        return Outcome::Hold { tell_clinician: false };
    }
    match current.programme.steps.get(current.index + 1) {
        Some(next) if !current.step().gate => Outcome::StepUp { to: next.id.clone() },
        _ => Outcome::ReadyToTalk,
    }
}

/// Where coming back leads; `None` on the first step.
fn target(current: &Current<'_>, back: &StepBack) -> Option<StepId> {
    let previous = current.index.checked_sub(1)?;
    let index = match &back.target {
        Target::Previous => previous,
        Target::First => 0,
        Target::Step(id) => current
            .programme
            .step_index(id)
            .filter(|index| *index < current.index)
            .unwrap_or(previous),
    };
    Some(current.programme.steps[index].id.clone())
}

fn judge(ground: &Ground<'_, '_>) -> Vec<Judged> {
    let rule = ground.rule;
    let pause = rule.pause.iter().map(|criterion| Judged {
        part: Part::Pause,
        criterion: Criterion::Pause(*criterion),
        target: None,
        verdict: ground.pause(criterion),
    });
    let back = rule.step_back.iter().map(|back| Judged {
        part: Part::StepBack,
        criterion: Criterion::Back(back.when),
        target: target(ground.current, back),
        verdict: ground.back(&back.when),
    });
    let up = rule.step_up.iter().flat_map(|up| &up.all_of).map(|criterion| Judged {
        part: Part::StepUp,
        criterion: Criterion::Up(*criterion),
        target: None,
        verdict: ground.up(criterion),
    });
    pause.chain(back).chain(up).collect()
}

/// O3: what bars a step up.
fn bars(ground: &Ground<'_, '_>, verdicts: &[Judged]) -> BTreeSet<Bar> {
    let Ground { reading, ladder, current, rule } = ground;
    if rule.step_up.is_none() {
        return BTreeSet::new();
    }
    let smaller_last = ground
        .since_began(For::Up)
        .last()
        .and_then(|item| item.session())
        .is_some_and(|session| is_below(session, current));
    let last = |wanted: fn(&Content) -> bool| {
        reading.items.iter().filter(|item| wanted(item.told())).map(|item| item.place).max()
    };
    let entries_missing = last(|content| matches!(content, Content::MissingMark { .. }))
        > last(|content| matches!(content, Content::Clearing { .. }));
    let known_unmet = verdicts
        .iter()
        .all(|judged| judged.part == Part::StepUp || judged.verdict == Verdict::Unmet);
    [
        (Bar::NotKnownUnmet, !known_unmet),
        (Bar::UnsureClock, reading.unsure()),
        (Bar::StepNotConfirmed, !confirmed(reading, ladder)),
        (Bar::ReviewPassed, reading.now.day() > current.programme.review_by),
        (Bar::StayHere, ladder.stay),
        (Bar::EntriesMissing, entries_missing),
        (Bar::RestoreNotConfirmed, restore_unconfirmed(reading, ladder)),
        (Bar::Maintain, current.step().maintain),
        (Bar::SmallerLast, smaller_last),
    ]
    .into_iter()
    .filter_map(|(bar, stands)| stands.then_some(bar))
    .collect()
}

/// O1: a pause criterion met now, or just before or just after any entry since the last clearing of a
/// pause; or a mark that a pause was open when entries were erased.
fn pause_stands(reading: &Reading<'_>, tried: Option<&Rule>) -> bool {
    let cleared = reading.pause_clearings().map(|item| item.place).max().unwrap_or(0);
    let marked = reading.items.iter().any(|item| {
        item.place > cleared && matches!(item.told(), Content::ErasedMark { pause_open: true, .. })
    });
    let entries = reading.entries;
    let met = |entries: &[Entry], then| pause_met(entries, then, reading.shelf, tried);
    let latched = (1..=entries.len()).any(|place| {
        let entry = &entries[place - 1];
        // Before an entry that says the clock jumped, the clock had jumped already (T4).
        let jumped = matches!(entry.what, Content::ClockMark { .. });
        let (before, after) = (&entries[..place - 1], &entries[..place]);
        (place as Place > cleared && !jumped && met(before, entry.written))
            || (place as Place >= cleared && met(after, entry.written))
    });
    marked || latched || met(entries, reading.now)
}

/// Whether a pause criterion of the rule then in force is met (T6).
fn pause_met(entries: &[Entry], now: Stamp, shelf: &Shelf, tried: Option<&Rule>) -> bool {
    let reading = Reading::new(entries, now, shelf);
    let ladder = Ladder::new(&reading);
    let Some(current) = &ladder.current else { return false };
    let Some(rule) = current.rule(tried) else { return false };
    let ground = Ground { reading: &reading, ladder: &ladder, current, rule };
    rule.pause.iter().any(|criterion| ground.pause(criterion) == Verdict::Met)
}
