//! The rule beside a diary, entry by entry, for the clinician: what the diary told, what the rule said at
//! the moment it was written, and beside it what another rule would have said (rule sentence T6).

use serde::Serialize;

use super::{entries, plain};
use crate::diary::entry::{Content, Entry};
use crate::moment::Stamp;
use crate::programme::rule::Rule;
use crate::programme::values::StepId;
use crate::progression::{Basis, Fold, FoldError, Outcome, OutcomeKind};
use crate::words::Words;

/// The replay.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReplayScreen {
    /// Heading.
    pub title: String,
    /// What stands beside, where another rule is tried, and at how many entries the two differ.
    pub tried: Option<Tried>,
    /// Said where there is no entry.
    pub empty: Option<String>,
    /// Each entry, first written first.
    pub lines: Vec<ReplayLine>,
}

/// About the other rule.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Tried {
    /// What it replaces.
    pub about: String,
    /// At how many entries it says something else.
    pub differs: usize,
    /// The same in words.
    pub summary: String,
}

/// One entry.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReplayLine {
    /// Its place in the journal, counted from 1.
    pub place: u64,
    /// The day it was written.
    pub date: String,
    /// The time it was written.
    pub time: String,
    /// What it tells.
    pub what: String,
    /// What the diary's own rule said then.
    pub said: Said,
    /// What the other rule would have said.
    pub tried: Option<Said>,
    /// Whether the two differ.
    pub differs: bool,
}

/// What a rule says.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Said {
    /// Which outcome; `None` where there is no rule to speak.
    pub outcome: Option<OutcomeKind>,
    /// In a few words.
    pub text: String,
}

impl ReplayScreen {
    /// Replays the entries, in order of place.
    ///
    /// # Errors
    /// [`FoldError`] when a stored programme cannot be read.
    pub(crate) fn new(
        words: &Words,
        history: &[Entry],
        tried: Option<&Rule>,
    ) -> Result<Self, FoldError> {
        let mut own = Fold::new(None);
        let mut other = tried.map(|rule| Fold::new(Some(rule.clone())));
        let mut lines = Vec::with_capacity(history.len());
        for (index, entry) in history.iter().enumerate() {
            own.write(entry)?;
            let said = said(words, &own, entry);
            let tried = match &mut other {
                None => None,
                Some(fold) => {
                    fold.write(entry)?;
                    Some(self::said(words, fold, entry))
                }
            };
            lines.push(ReplayLine {
                place: index as u64 + 1,
                date: plain::date(words, entry.written.day()),
                time: entry.written.local().format("%H:%M").to_string(),
                what: what(words, &entry.what),
                differs: tried.as_ref().is_some_and(|tried| *tried != said),
                said,
                tried,
            });
        }
        let differs = lines.iter().filter(|line| line.differs).count();
        Ok(Self {
            title: words.text("replay-title", &[]),
            tried: tried.map(|_| Tried {
                about: words.text("replay-tried", &[]),
                differs,
                summary: summary(words, differs),
            }),
            empty: lines.is_empty().then(|| words.text("replay-empty", &[])),
            lines,
        })
    }
}

fn summary(words: &Words, differs: usize) -> String {
    if differs == 0 {
        return words.text("replay-same", &[]);
    }
    let count = plain::whole(i64::try_from(differs).unwrap_or(i64::MAX));
    words.text("replay-differ", &[("count", count)])
}

fn what(words: &Words, content: &Content) -> String {
    match content {
        Content::Correction { content, .. } => {
            words.text("replay-corrected", &[("what", entries::tell(words, content).into())])
        }
        Content::Strike { .. } => words.text("replay-struck", &[]),
        other => entries::tell(words, other),
    }
}

fn said(words: &Words, fold: &Fold, entry: &Entry) -> Said {
    said_at(words, fold, &entry.written)
}

/// What a rule says at a moment.
pub(super) fn said_at(words: &Words, fold: &Fold, at: &Stamp) -> Said {
    let assessment = fold.assess(at);
    let kind = assessment.outcome.kind();
    let speaks = match &assessment.basis {
        Basis::Step { has_rule, .. } => *has_rule,
        Basis::NoProgramme | Basis::NoSteps { .. } => false,
    };
    if !speaks && kind != OutcomeKind::PauseAndCall {
        return Said { outcome: None, text: words.text("replay-none", &[]) };
    }
    let step = |to: &StepId| -> crate::words::Value {
        let step = fold.programme().and_then(|plan| plan.step(to));
        step.map_or_else(|| to.as_str(), |step| step.name.as_str()).into()
    };
    let text = match &assessment.outcome {
        Outcome::PauseAndCall => words.text("replay-pause", &[]),
        Outcome::StepBack { to } => words.text("replay-back", &[("step", step(to))]),
        Outcome::Hold { tell_clinician: false } => words.text("replay-stay", &[]),
        Outcome::Hold { tell_clinician: true } => words.text("replay-stay-tell", &[]),
        Outcome::ReadyToTalk => words.text("replay-talk", &[]),
        Outcome::StepUp { to } => words.text("replay-up", &[("step", step(to))]),
    };
    Said { outcome: Some(kind), text }
}
