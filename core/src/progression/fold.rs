//! Decides what a diary has come to, entry by entry: the state behind every assessment. Writing an entry
//! changes as little of it as the entry concerns; a correction or a strike builds anew what hangs on it.
//!
//! It also keeps the latch (O1): whether a pause criterion was met just before or just after an entry is
//! asked when the entry is written, at the moment it was written, of what the journal held then (T6). A
//! later correction does not take that back.

use std::fmt;
use std::sync::Arc;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::course::Course;
use super::facts::StepFacts;
use super::latch::Latch;
use super::lens::Lens;
use super::line::{Key, Line, RawId, Rung, Seen, When};
use super::log::{Log, Tale, Version};
use super::outcome::{Assessment, Outcome};
use super::signs::Signs;
use crate::diary::entry::{Content, Entry, Place, SignNoted};
use crate::moment::Stamp;
use crate::programme::plan::Programme;
use crate::programme::rule::Rule;
use crate::programme::values::Practice;
use crate::safety::{Sign, Tier};

/// Why an entry could not be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FoldError {
    /// The fold was trimmed and the entry reaches back behind that point. The fold is unchanged: fold
    /// the whole journal again, this entry last.
    #[error("the diary has to be read again from its beginning")]
    NeedsHistory,
    /// The text of an accepted programme is not a programme this program can read.
    #[error("the programme accepted in entry {place} cannot be read; ask for it again")]
    UnreadableProgramme {
        /// The entry.
        place: Place,
    },
}

/// What a diary has come to, up to a place.
#[derive(Clone)]
pub struct Fold {
    pub(super) kept: Kept,
    /// The programme in force, read from the text kept.
    pub(super) plan: Option<Arc<Programme>>,
    pub(super) tried: Option<Arc<Rule>>,
}

/// What is stored of a fold.
#[derive(Clone, Default, Serialize, Deserialize)]
pub(super) struct Kept {
    /// A tried rule, as JSON.
    tried: Option<String>,
    /// How many entries were written.
    pub written: Place,
    /// The latest time in any entry, written or happened (T3), in milliseconds since 1970.
    pub latest: i64,
    /// Absent once trimmed.
    pub(super) log: Option<Log>,
    pub course: Course,
    pub signs: Signs,
    pub lines: Vec<Line>,
    pub facts: StepFacts,
    pub latches: Vec<Latch>,
    /// Place of the last clearing written, whatever became of it: one latch is kept between any two.
    clearing: Place,
    /// Place of the last mark of each kind; 0 if there is none.
    pub clock_mark: Place,
    pub missing_mark: Place,
    pub restored_mark: Place,
    /// Place of the last erase mark that says a pause stood.
    pub erased_pause: Place,
    /// The latest time an erased entry had, or a session was struck (F5), in milliseconds since 1970.
    pub afresh_after: Option<i64>,
    /// Place of the last entry after which the step has to be confirmed (S4), acceptances aside.
    pub disturbed: Place,
}

impl Kept {
    pub(super) fn line(&self, practice: &Practice) -> Option<&Line> {
        self.lines.iter().find(|line| line.practice == *practice)
    }
}

impl fmt::Debug for Fold {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Fold").field("written", &self.kept.written).finish_non_exhaustive()
    }
}

impl Serialize for Fold {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.kept.serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for Fold {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let mut kept = Kept::deserialize(deserializer)?;
        let unreadable = |_| de::Error::custom("a kept programme cannot be read");
        let plan = match &kept.course.text {
            Some(text) => Some(Arc::new(read_programme(text).map_err(unreadable)?)),
            None => None,
        };
        let tried = match &kept.tried {
            Some(text) => Some(Arc::new(
                serde_json::from_str(text)
                    .map_err(|_| de::Error::custom("a kept rule cannot be read"))?,
            )),
            None => None,
        };
        if let Some(log) = &mut kept.log {
            log.awaken(|text| read_programme(text).map(Arc::new).map_err(unreadable))?;
        }
        Ok(Self { kept, plan, tried })
    }
}

/// The one place where a carried programme is read.
fn read_programme(carried: &str) -> Result<Programme, ()> {
    serde_json::from_str(carried).map_err(|_| ())
}

/// What an entry asks of the fold, found out before anything is changed.
enum Change {
    New(Tale),
    Correction {
        root: usize,
        tale: Tale,
    },
    Strike {
        of: RawId,
    },
    Mark,
    /// A correction that fits nothing.
    Nothing,
}

impl Fold {
    /// An empty diary. A `tried` rule stands in for every rule of the programme and its steps, the latch
    /// included (T6).
    #[must_use]
    pub fn new(tried: Option<Rule>) -> Self {
        let text = tried.as_ref().and_then(|rule| serde_json::to_string(rule).ok());
        let kept = Kept { tried: text, log: Some(Log::default()), ..Kept::default() };
        Self { kept, plan: None, tried: tried.map(Arc::new) }
    }

    /// How many entries were written; the place of the last one.
    #[must_use]
    pub fn written(&self) -> Place {
        self.kept.written
    }

    /// Takes the next entry; its place is one more than [`Self::written`].
    ///
    /// # Errors
    /// [`FoldError::NeedsHistory`] if the fold was trimmed and cannot take this entry;
    /// [`FoldError::UnreadableProgramme`]. The fold is unchanged then.
    pub fn write(&mut self, entry: &Entry) -> Result<(), FoldError> {
        let place = self.kept.written + 1;
        let change = self.change(entry, place)?;
        self.latch(entry, place, false);
        self.kept.written = place;
        self.kept.latest =
            self.kept.latest.max(entry.written.millis()).max(entry.happened.millis());
        self.apply(entry, place, change);
        self.latch(entry, place, true);
        Ok(())
    }

    /// What the rule says at a moment, explained.
    #[must_use]
    pub fn assess(&self, now: &Stamp) -> Assessment {
        Lens::new(self, now, true).assess()
    }

    /// What the rule says at a moment: the outcome of [`Self::assess`] without its reasons.
    #[must_use]
    pub fn outcome(&self, now: &Stamp) -> Outcome {
        Lens::new(self, now, false).outcome()
    }

    fn change(&self, entry: &Entry, place: Place) -> Result<Change, FoldError> {
        let tale = |content: &Content| {
            let plan = match content {
                Content::ProgrammeAccepted { carried, .. } => Some(Arc::new(
                    read_programme(carried)
                        .map_err(|()| FoldError::UnreadableProgramme { place })?,
                )),
                _ => None,
            };
            Ok(Tale::of(content, entry, place, plan))
        };
        let Some(log) = &self.kept.log else {
            self.needs_history(entry)?;
            return match &entry.what {
                what if !what.is_persons() => Ok(Change::Mark),
                what => tale(what).map(Change::New),
            };
        };
        match &entry.what {
            Content::Correction { of, content } => match log.corrected(of.0, content) {
                Some(root) => Ok(Change::Correction { root, tale: tale(content)? }),
                None => Ok(Change::Nothing),
            },
            Content::Strike { of } => Ok(Change::Strike { of: of.0 }),
            what if !what.is_persons() => Ok(Change::Mark),
            what => tale(what).map(Change::New),
        }
    }

    /// Whether a trimmed fold can take an entry: only what lies behind nothing that was dropped.
    fn needs_history(&self, entry: &Entry) -> Result<(), FoldError> {
        let t = entry.happened.millis();
        let before_what_is_left = |line: &Line| {
            line.cut.is_some() && line.seen.first().is_none_or(|first| t < first.key.t)
        };
        let reaches_back = match &entry.what {
            Content::Correction { .. }
            | Content::Strike { .. }
            | Content::ProgrammeAccepted { .. }
            | Content::ErasedMark { .. } => true,
            Content::Session(session) => {
                let of_step = self.step_line().is_some_and(|l| l.practice == session.practice);
                self.kept.line(&session.practice).is_some_and(before_what_is_left)
                    || (of_step && self.kept.facts.reaches_back(t))
            }
            Content::StepChange { .. } => self.kept.lines.iter().any(before_what_is_left),
            _ => false,
        };
        if reaches_back { Err(FoldError::NeedsHistory) } else { Ok(()) }
    }

    fn apply(&mut self, entry: &Entry, place: Place, change: Change) {
        match change {
            Change::New(tale) => {
                if matches!(tale, Tale::Clearing { .. }) {
                    self.kept.clearing = place;
                }
                self.note(entry.id.0, entry.what.signs(), entry, place);
                let version = Version::of(entry, tale);
                self.take(entry.id.0, place, &version);
                if let Some(log) = &mut self.kept.log {
                    log.add(entry, place, version);
                }
            }
            Change::Correction { root, tale } => {
                let Content::Correction { content, .. } = &entry.what else { return };
                let signs = content.signs();
                self.rewrite(root, place, |log| log.correct(root, entry, tale));
                let id = self.kept.log.as_ref().and_then(|log| log.roots.get(root)).map(|r| r.id);
                if let Some(id) = id {
                    self.note(id, signs, entry, place);
                }
            }
            Change::Strike { of } => {
                let log = self.kept.log.as_ref();
                let touched = log.and_then(|log| log.touched(of));
                let root = log.zip(touched).and_then(|(log, root)| log.roots.get(root));
                if root.is_some_and(|root| root.is_session()) {
                    // A slip looks no different from what one would rather not have said (F5).
                    self.kept.afresh_after(entry.written.millis());
                }
                match touched {
                    Some(root) => self.rewrite(root, place, |log| log.strike(entry.id.0, of)),
                    None => {
                        if let Some(log) = &mut self.kept.log {
                            log.strike(entry.id.0, of);
                        }
                    }
                }
            }
            Change::Mark => self.mark(entry, place),
            Change::Nothing => {}
        }
    }

    fn note(&mut self, id: RawId, signs: &[SignNoted], entry: &Entry, place: Place) {
        for noted in signs {
            let day = When::of(&entry.happened).day;
            self.kept.signs.note((id, noted.sign), noted.tier, place, &entry.happened, day);
        }
    }

    fn mark(&mut self, entry: &Entry, place: Place) {
        let kept = &mut self.kept;
        match &entry.what {
            Content::ClockMark { .. } => kept.clock_mark = place,
            Content::MissingMark { .. } => kept.missing_mark = place,
            Content::RestoredMark { .. } => kept.restored_mark = place,
            Content::ErasedMark { latest, caution_open, pause_open } => {
                // What was erased may have named the step: the mark does not tell (S4).
                kept.disturbed = place;
                kept.afresh_after(latest.millis());
                if *pause_open {
                    kept.erased_pause = place;
                }
                if *caution_open {
                    let noted = [SignNoted { sign: Sign::ACaution, tier: Tier::Stop }];
                    self.note(entry.id.0, &noted, entry, place);
                }
            }
            _ => {}
        }
    }

    /// Takes an entry that counts, written last.
    fn take(&mut self, id: RawId, place: Place, version: &Version) {
        if let Tale::Session { practice, seen } = &version.tale {
            let mut seen = *seen;
            seen.lag = version.written.saturating_sub(version.when.t);
            self.put(&practice.clone(), seen);
            return;
        }
        let kept = &mut self.kept;
        let before = kept.course.step.as_ref().map(|step| step.began);
        kept.course.take((id, place), version, &mut self.plan, &mut kept.signs);
        let after = kept.course.step.as_ref().map(|step| step.began);
        match &version.tale {
            Tale::Accepted { .. } => self.refresh(),
            Tale::Clearing { closes: true, .. } => kept.facts.close(&kept.course),
            _ if before != after => self.refresh(),
            _ => {}
        }
    }

    /// Lets a correction or a strike change the log, and builds anew what hangs on that entry.
    fn rewrite(&mut self, root: usize, place: Place, change: impl FnOnce(&mut Log)) {
        let Some(log) = &mut self.kept.log else { return };
        let Some(before) = log.roots.get(root) else { return };
        let (is_session, names_step) = (before.is_session(), before.names_step());
        let old = before.session().map(|(practice, seen)| (practice.clone(), seen.key));
        change(log);
        if is_session {
            let new = log
                .roots
                .get(root)
                .and_then(|root| root.session())
                .map(|(practice, seen)| (practice.clone(), seen));
            if let Some((practice, key)) = old {
                self.remove(&practice, key);
            }
            if let Some((practice, seen)) = new {
                self.put(&practice, seen);
            }
            return;
        }
        if names_step {
            self.kept.disturbed = place;
        }
        self.build_course();
    }

    /// The course from all entries that count, in order of place.
    fn build_course(&mut self) {
        let Some(log) = self.kept.log.take() else { return };
        self.kept.course = Course::default();
        self.kept.signs.forget_closings();
        self.plan = None;
        for root in log.roots.iter().filter(|root| !root.is_session()) {
            if let Some(version) = root.counting() {
                let kept = &mut self.kept;
                let (course, signs) = (&mut kept.course, &mut kept.signs);
                course.take((root.id, root.place), version, &mut self.plan, signs);
            }
        }
        self.kept.log = Some(log);
        self.refresh();
    }

    /// The facts of the step in use from the sessions of its practice.
    fn refresh(&mut self) {
        let facts = self.rung().map(|rung| {
            let empty = Line::new(rung.step.practice.clone());
            let line = self.kept.line(&rung.step.practice).unwrap_or(&empty);
            StepFacts::of(&rung, self.rule_on(&rung), &self.kept.course, line)
        });
        self.kept.facts = facts.unwrap_or_default();
    }

    fn put(&mut self, practice: &Practice, seen: Seen) {
        if self.kept.line(practice).is_none() {
            self.kept.lines.push(Line::new(practice.clone()));
        }
        let found = self.kept.lines.iter_mut().find(|line| line.practice == *practice);
        let Some(at) = found.map(|line| line.put(seen)) else { return };
        self.with_facts(practice, |facts, rung, rule, course, line, began| {
            if seen.key > began {
                facts.add(&seen, rung, course);
                facts.look_for_gap(at, rule, began, line);
            }
            facts.look_for_gap(at + 1, rule, began, line);
        });
    }

    fn remove(&mut self, practice: &Practice, key: Key) {
        let found = self.kept.lines.iter_mut().find(|line| line.practice == *practice);
        let Some(at) = found.and_then(|line| line.take(key)) else { return };
        self.with_facts(practice, |facts, _, rule, _, line, began| {
            facts.remove(key);
            facts.look_for_gap(at, rule, began, line);
        });
    }

    fn with_facts(
        &mut self,
        practice: &Practice,
        change: impl FnOnce(&mut StepFacts, &Rung<'_>, Option<&Rule>, &Course, &Line, Key),
    ) {
        let mut facts = std::mem::take(&mut self.kept.facts);
        if let Some(rung) = self.rung().filter(|rung| rung.step.practice == *practice)
            && let Some(current) = &self.kept.course.step
            && let Some(line) = self.kept.line(practice)
        {
            let rule = self.rule_on(&rung);
            change(&mut facts, &rung, rule, &self.kept.course, line, current.began);
        }
        self.kept.facts = facts;
    }

    pub(super) fn rung(&self) -> Option<Rung<'_>> {
        let current = self.kept.course.step.as_ref()?;
        Rung::new(self.plan.as_deref()?, current.index)
    }

    /// The rule in force on a step (T6).
    pub(super) fn rule_on<'a>(&'a self, rung: &Rung<'a>) -> Option<&'a Rule> {
        self.tried.as_deref().or_else(|| rung.plan.rule_on(rung.step))
    }

    /// The sessions of the practice of the step in use.
    pub(super) fn step_line(&self) -> Option<&Line> {
        self.kept.line(&self.rung()?.step.practice)
    }

    /// O1, T6: whether a pause criterion is met just before (`after` false) or just after this entry.
    fn latch(&mut self, entry: &Entry, place: Place, after: bool) {
        let since = self.kept.clearing;
        if self.kept.latches.last().is_some_and(|latch| latch.stands_after(since)) {
            // One is enough until the next clearing.
            return;
        }
        let lens = Lens::new(self, &entry.written, false);
        let lens =
            if matches!(entry.what, Content::ClockMark { .. }) { lens.doubting() } else { lens };
        if let Some(criterion) = lens.pause_met() {
            self.kept.latches.push(Latch::new(place, after, criterion));
        }
    }
}

impl Kept {
    fn afresh_after(&mut self, millis: i64) {
        self.afresh_after = self.afresh_after.max(Some(millis));
    }

    /// S4: whether the step in use was confirmed after the last entry that asks for it.
    pub(super) fn confirmed(&self) -> bool {
        self.course.confirmed > self.disturbed.max(self.restored_mark).max(self.course.asked)
    }

    pub(super) fn floor_by_time(&self) -> Key {
        let erased = self.afresh_after.map_or(i64::MIN, |t| t.saturating_add(1));
        Key { t: erased.max(self.course.closed_until()), place: 0 }
    }

    /// From where sessions count for going up, a gap that runs up to now aside (F5).
    pub(super) fn floor(&self) -> Key {
        let by_time = self.floor_by_time();
        self.facts.last_gap().map_or(by_time, |gap| gap.max(by_time))
    }
}
