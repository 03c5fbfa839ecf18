//! Another rule on diaries that came back: on one, entry by entry and side by side; on many, what each rule says
//! at the end and how often they differ. Nothing is saved by looking.
//!
//! A tried rule replaces every rule of the plan, and a step's own one too (rule sentence T6). Where a summary
//! leaves entries out, the rule cannot be replayed, and that is said.

use serde::Serialize;

use super::super::replay::{ReplayScreen, Said};
use super::count;
use crate::diary::entry::Entry;
use crate::programme::rule::Rule;
use crate::progression::{Basis, Fold, FoldError, OutcomeKind};
use crate::summary::{DiaryId, Summary};
use crate::words::Words;

/// So many differences are named first; the others are folded.
const FIRST: usize = 5;

/// Two rules on one diary.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct WhatIfScreen {
    /// Heading.
    pub title: String,
    /// What is compared, and what it is not.
    pub about: Vec<String>,
    /// Said where entries were left out of the summary: then nothing is replayed.
    pub narrowed: Option<String>,
    /// What the rule in force is called.
    pub own: String,
    /// What the tried rule is called.
    pub tried: String,
    /// What the columns of the entry are called: when, and what it tells.
    pub columns: [String; 2],
    /// What the column is called that says whether they differ.
    pub differs: String,
    /// At the end of the diary: what each says.
    pub now: Option<WhatIfLine>,
    /// How often they differ.
    pub counts: Option<String>,
    /// What the first differences are called.
    pub first_title: String,
    /// The first differences.
    pub first: Vec<WhatIfLine>,
    /// What all entries are called, folded.
    pub all_title: String,
    /// Every entry.
    pub all: Vec<WhatIfLine>,
}

/// An entry with what each rule says after it.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct WhatIfLine {
    /// When it was written.
    pub when: String,
    /// What it tells.
    pub what: String,
    /// What the rule in force said then.
    pub own: String,
    /// What the tried one would have said.
    pub tried: String,
    /// Whether they differ; said in a word, not by colour alone.
    pub differs: Option<String>,
}

impl WhatIfScreen {
    /// Compares on one diary.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn new(words: &Words, summary: &Summary, tried: &Rule) -> Result<Self, FoldError> {
        let mut screen = Self {
            title: words.text("cabinet-what-if", &[]),
            about: vec![
                words.text("cabinet-what-if-about", &[]),
                words.text("cabinet-what-if-not-saved", &[]),
            ],
            narrowed: None,
            own: words.text("cabinet-rule-own", &[]),
            tried: words.text("cabinet-rule-tried", &[]),
            columns: [words.text("cabinet-when", &[]), words.text("cabinet-told", &[])],
            differs: words.text("cabinet-differs-column", &[]),
            now: None,
            counts: None,
            first_title: words.text("cabinet-first-differences", &[]),
            first: Vec::new(),
            all_title: words.text("cabinet-all-entries", &[]),
            all: Vec::new(),
        };
        if summary.narrowed.leaves_out_entries() {
            screen.narrowed = Some(words.text("cabinet-what-if-narrowed", &[]));
            return Ok(screen);
        }
        let replay = ReplayScreen::new(words, &summary.entries, Some(tried))?;
        let differs = |yes: bool| yes.then(|| words.text("cabinet-differs", &[]));
        let nothing = || Said { outcome: None, text: words.text("replay-none", &[]) };
        screen.all = replay
            .lines
            .into_iter()
            .map(|line| WhatIfLine {
                when: words
                    .text("cabinet-at", &[("day", line.date.into()), ("time", line.time.into())]),
                what: line.what,
                own: line.said.text,
                tried: line.tried.unwrap_or_else(nothing).text,
                differs: differs(line.differs),
            })
            .collect();
        screen.first =
            screen.all.iter().filter(|line| line.differs.is_some()).take(FIRST).cloned().collect();
        let number = screen.all.iter().filter(|line| line.differs.is_some()).count();
        screen.counts = Some(words.text(
            "cabinet-what-if-counts",
            &[("count", count(number)), ("entries", count(screen.all.len()))],
        ));
        let at = summary.present.at;
        let (own, other) = at_the_end(summary, tried)?;
        let own = super::super::replay::said_at(words, &own, &at).text;
        let tried = super::super::replay::said_at(words, &other, &at).text;
        screen.now = Some(WhatIfLine {
            when: super::moment(words, &at),
            what: words.text("cabinet-when-made", &[]),
            differs: differs(own != tried),
            own,
            tried,
        });
        Ok(screen)
    }
}

/// Both rules at the end of the diary.
fn at_the_end(summary: &Summary, tried: &Rule) -> Result<(Fold, Fold), FoldError> {
    let (mut own, mut other) = (Fold::new(None), Fold::new(Some(tried.clone())));
    for entry in &summary.entries {
        own.write(entry)?;
        other.write(entry)?;
    }
    Ok((own, other))
}

/// What a rule speaks of: which outcome, or nothing where there is no rule to speak.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CabinetRule {
    /// It says this.
    Says(OutcomeKind),
    /// There is no rule for the step in use.
    Silent,
}

/// Two rules on one diary, in counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RuleVerdict {
    /// What the rule in force says at the end.
    pub own: CabinetRule,
    /// What the tried one says there.
    pub tried: CabinetRule,
    /// At how many entries they differ.
    pub differs: usize,
    /// Entries.
    pub entries: usize,
}

impl RuleVerdict {
    /// Compares; `None` where the summary leaves entries out, so that nothing can be replayed.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn of(summary: &Summary, tried: &Rule) -> Result<Option<Self>, FoldError> {
        if summary.narrowed.leaves_out_entries() {
            return Ok(None);
        }
        let (mut own, mut other) = (Fold::new(None), Fold::new(Some(tried.clone())));
        let mut differs = 0;
        for entry in &summary.entries {
            own.write(entry)?;
            other.write(entry)?;
            differs += usize::from(differ(&own, &other, entry));
        }
        let at = summary.present.at;
        Ok(Some(Self {
            own: speaks(&own, &at),
            tried: speaks(&other, &at),
            differs,
            entries: summary.entries.len(),
        }))
    }
}

/// Whether two rules say different things after an entry, where they lead included.
fn differ(own: &Fold, other: &Fold, entry: &Entry) -> bool {
    let (one, two) = (own.assess(&entry.written), other.assess(&entry.written));
    let silent = |basis: &Basis| !matches!(basis, Basis::Step { has_rule: true, .. });
    let (one_silent, two_silent) = (silent(&one.basis), silent(&two.basis));
    let paused = |kind| kind == OutcomeKind::PauseAndCall;
    let quiet =
        (one_silent && !paused(one.outcome.kind()), two_silent && !paused(two.outcome.kind()));
    match quiet {
        (true, true) => false,
        (false, false) => one.outcome != two.outcome,
        _ => true,
    }
}

fn speaks(fold: &Fold, at: &crate::moment::Stamp) -> CabinetRule {
    let found = fold.assess(at);
    let kind = found.outcome.kind();
    let has_rule = matches!(found.basis, Basis::Step { has_rule: true, .. });
    if has_rule || kind == OutcomeKind::PauseAndCall {
        CabinetRule::Says(kind)
    } else {
        CabinetRule::Silent
    }
}

/// Two rules on many diaries: counts first, then each diary where they differ.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CabinetWhatIfScreen {
    /// Heading.
    pub title: String,
    /// What is compared, and what it is not.
    pub about: Vec<String>,
    /// How many diaries, at how many they differ.
    pub counts: Vec<String>,
    /// What the table says.
    pub caption: String,
    /// Its columns: the outcome, how many under the rule in force, how many under the tried one.
    pub columns: [String; 3],
    /// Its rows.
    pub rows: Vec<[String; 3]>,
    /// What the list is called.
    pub list_title: String,
    /// Diaries where the two say something else at the end, or most often did.
    pub list: Vec<DiaryLine>,
    /// And how many more.
    pub more: Option<String>,
}

/// A diary on which the two rules differ.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct DiaryLine {
    /// Which.
    pub diary: DiaryId,
    /// Its nickname.
    pub name: String,
    /// What each says now, and how often they differed.
    pub says: Vec<String>,
}

/// So many diaries are listed.
const LISTED: usize = 100;

impl CabinetWhatIfScreen {
    /// Words it. `left_out` summaries could not be replayed.
    #[must_use]
    pub fn new(
        words: &Words,
        verdicts: &[(DiaryId, Option<String>, RuleVerdict)],
        left_out: usize,
    ) -> Self {
        let now = |one: &RuleVerdict| one.own != one.tried;
        let mut differing: Vec<_> =
            verdicts.iter().filter(|(_, _, one)| now(one) || one.differs > 0).collect();
        differing
            .sort_by_key(|(diary, _, one)| (std::cmp::Reverse((now(one), one.differs)), diary.0));
        let now_count = verdicts.iter().filter(|(_, _, one)| now(one)).count();
        let mut counts = vec![
            words.text(
                "cabinet-what-if-diaries",
                &[("diaries", count(verdicts.len())), ("now", count(now_count))],
            ),
            words.text("cabinet-what-if-ever", &[("count", count(differing.len()))]),
        ];
        if left_out > 0 {
            counts.push(words.text("cabinet-what-if-left-out", &[("count", count(left_out))]));
        }
        let list: Vec<DiaryLine> = differing
            .iter()
            .take(LISTED)
            .map(|(diary, name, one)| line(words, *diary, name.as_deref(), one))
            .collect();
        let more = differing.len() - list.len();
        Self {
            title: words.text("cabinet-what-if-all", &[]),
            about: vec![
                words.text("cabinet-what-if-about-all", &[]),
                words.text("cabinet-what-if-not-saved", &[]),
            ],
            counts,
            caption: words.text("cabinet-what-if-table", &[]),
            columns: [
                words.text("cabinet-outcome", &[]),
                words.text("cabinet-rule-own", &[]),
                words.text("cabinet-rule-tried", &[]),
            ],
            rows: rows(words, verdicts),
            list_title: words.text("cabinet-what-if-list", &[]),
            list,
            more: (more > 0).then(|| words.text("cabinet-what-if-more", &[("count", count(more))])),
        }
    }
}

fn rows(words: &Words, verdicts: &[(DiaryId, Option<String>, RuleVerdict)]) -> Vec<[String; 3]> {
    let kinds = [
        CabinetRule::Says(OutcomeKind::PauseAndCall),
        CabinetRule::Says(OutcomeKind::StepBack),
        CabinetRule::Says(OutcomeKind::Hold),
        CabinetRule::Says(OutcomeKind::ReadyToTalk),
        CabinetRule::Says(OutcomeKind::StepUp),
        CabinetRule::Silent,
    ];
    kinds
        .into_iter()
        .map(|kind| {
            let own = verdicts.iter().filter(|(_, _, one)| one.own == kind).count();
            let tried = verdicts.iter().filter(|(_, _, one)| one.tried == kind).count();
            [named(words, kind), own.to_string(), tried.to_string()]
        })
        .collect()
}

fn named(words: &Words, rule: CabinetRule) -> String {
    match rule {
        CabinetRule::Says(OutcomeKind::PauseAndCall) => words.text("replay-pause", &[]),
        CabinetRule::Says(OutcomeKind::StepBack) => words.text("cabinet-outcome-back", &[]),
        CabinetRule::Says(OutcomeKind::Hold) => words.text("replay-stay", &[]),
        CabinetRule::Says(OutcomeKind::ReadyToTalk) => words.text("replay-talk", &[]),
        CabinetRule::Says(OutcomeKind::StepUp) => words.text("cabinet-outcome-up", &[]),
        CabinetRule::Silent => words.text("replay-none", &[]),
    }
}

fn line(words: &Words, diary: DiaryId, name: Option<&str>, one: &RuleVerdict) -> DiaryLine {
    let id: String = diary.to_string().chars().take(8).collect();
    let name = match name {
        Some(name) => name.to_owned(),
        None => words.text("cabinet-no-nickname", &[("id", id.into())]),
    };
    let values = [("own", named(words, one.own).into()), ("tried", named(words, one.tried).into())];
    let now = if one.own == one.tried {
        words.text("cabinet-what-if-same-now", &values[..1])
    } else {
        words.text("cabinet-what-if-now", &values)
    };
    let often = words.text(
        "cabinet-what-if-counts",
        &[("count", count(one.differs)), ("entries", count(one.entries))],
    );
    DiaryLine { diary, name, says: vec![now, often] }
}
