//! A plain model of what a diary as a whole promises, kept in memory: which lines it has, which secrets
//! open it, what was erased, how often it was put under new keys. It decides everything by itself, from
//! the words of the format and of the rule on erasing; it calls nothing of what it is compared with.
//! [`life`] lives beside it, [`world`] looks at a real diary's disk.

pub mod life;
pub mod world;

use std::collections::BTreeSet;

use chrono::NaiveDate;
use frond_core::diary::entry::{Content, Entry, EntryId};

/// What a line is, as far as keeping it goes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The plan.
    Plan,
    /// The present step was confirmed.
    Confirmed,
    /// A session.
    Session,
    /// A caution.
    Sign,
    /// A correction of this entry.
    Correction(EntryId),
    /// A strike of this entry.
    Strike(EntryId),
    /// A copy was put elsewhere.
    CopyKept,
    /// Entries are missing.
    Missing,
    /// The clock was found changed. When that is said is another test's; here it stays once it is there.
    Clock,
    /// Not an entry, but the place of one: an entry longer than a sector that a power cut left in part.
    Hole,
    /// It was restored: so many entries, in place of so many.
    Restored(u64, Option<u64>),
    /// Something was erased; whether a caution was open in it.
    Erased(bool),
}

/// One line of the diary.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// Its id; a machine's line gets its own when it is first read.
    pub id: Option<EntryId>,
    /// What it is.
    pub kind: Kind,
    /// The day it happened on.
    pub day: NaiveDate,
    /// The unique words in it.
    pub note: String,
    /// The whole of it, as it was first read.
    pub text: Option<String>,
}

impl Line {
    /// A line a machine writes.
    #[must_use]
    pub fn mark(kind: Kind, day: NaiveDate) -> Self {
        Self { id: None, kind, day, note: String::new(), text: None }
    }

    fn hangs_on(&self) -> Option<EntryId> {
        match self.kind {
            Kind::Correction(of) | Kind::Strike(of) => Some(of),
            _ => None,
        }
    }

    /// Whether a person told it and may erase it on its own.
    fn can_go(&self) -> bool {
        matches!(self.kind, Kind::Confirmed | Kind::Session | Kind::Sign | Kind::Correction(_))
    }

    /// The line as read, where the entry is this line.
    fn read(&self, entry: &Entry) -> Option<Self> {
        let text = serde_json::to_string(entry).ok()?;
        if self.text.as_ref().is_some_and(|known| *known != text) {
            return None;
        }
        let kind = match &entry.what {
            Content::ProgrammeAccepted { .. } => Kind::Plan,
            Content::StepConfirmed { .. } => Kind::Confirmed,
            Content::Session(_) => Kind::Session,
            Content::SignReported { .. } => Kind::Sign,
            Content::Correction { of, .. } => Kind::Correction(*of),
            Content::Strike { of } => Kind::Strike(*of),
            Content::CopyMade {} => Kind::CopyKept,
            Content::MissingMark { .. } => Kind::Missing,
            Content::ClockMark { .. } => Kind::Clock,
            Content::RestoredMark { up_to, replaced } => Kind::Restored(*up_to, *replaced),
            Content::ErasedMark { caution_open, .. } => Kind::Erased(*caution_open),
            _ => return None,
        };
        let same = kind == self.kind
            && self.id.is_none_or(|id| id == entry.id)
            && entry.happened.day() == self.day
            && text.contains(&self.note);
        same.then(|| Self { id: Some(entry.id), text: Some(text), ..self.clone() })
    }
}

/// The lines as read, where these entries are these lines, in this order, and no others but that the clock was
/// found changed.
#[must_use]
pub fn read_as(lines: &[Line], entries: &[Entry]) -> Option<Vec<Line>> {
    let mut entries = entries.iter();
    let mut read = Vec::new();
    for line in lines {
        if line.kind == Kind::Hole {
            read.push(line.clone());
            continue;
        }
        loop {
            let entry = entries.next()?;
            if let Some(same) = line.read(entry) {
                read.push(same);
                break;
            }
            read.push(clock(entry)?);
        }
    }
    for entry in entries {
        read.push(clock(entry)?);
    }
    Some(read)
}

/// The line of an entry that only says that the clock was found changed.
fn clock(entry: &Entry) -> Option<Line> {
    Line::mark(Kind::Clock, entry.happened.day()).read(entry)
}

fn entries_of(lines: &[Line]) -> Vec<Line> {
    lines.iter().filter(|line| line.kind != Kind::Hole).cloned().collect()
}

/// What is to be erased.
#[derive(Clone, Copy, Debug)]
pub enum Gone {
    /// One entry.
    One(EntryId),
    /// The days from the first to the last.
    Days(NaiveDate, NaiveDate),
}

/// A diary as it ought to be.
#[derive(Clone, Debug)]
pub struct Model {
    /// Which diary this is; a new one counts up.
    pub diary: usize,
    /// Whether there is one at all.
    pub there: bool,
    /// How often it was put under new keys, from 1.
    pub generation: u64,
    /// Its lines.
    pub lines: Vec<Line>,
    /// The passphrase in force.
    pub pass: usize,
    /// The recovery phrase in force.
    pub phrase: Option<usize>,
    /// Words that may be nowhere in the folder.
    pub erased: BTreeSet<String>,
    /// The folder was set back, and that is not written down yet.
    pub owed: bool,
}

impl Model {
    /// An empty place.
    #[must_use]
    pub fn nothing(diary: usize) -> Self {
        Self {
            diary,
            there: false,
            generation: 1,
            lines: Vec::new(),
            pass: 0,
            phrase: None,
            erased: BTreeSet::new(),
            owed: false,
        }
    }

    /// A new diary in this place.
    #[must_use]
    pub fn started(&self, pass: usize) -> Self {
        let erased = self.erased.clone();
        Self { there: true, pass, erased, ..Self::nothing(self.diary + 1) }
    }

    /// With one line more.
    #[must_use]
    pub fn with(&self, line: Line) -> Self {
        let mut after = self.clone();
        after.lines.push(line);
        after
    }

    /// With the hole that a power cut left in place of an entry, and the mark that one may be missing.
    #[must_use]
    pub fn torn(&self, day: NaiveDate) -> Self {
        self.with(Line::mark(Kind::Hole, day)).with(Line::mark(Kind::Missing, day))
    }

    /// With what an opening writes down when the folder was set back.
    #[must_use]
    pub fn owned_up(&self, day: NaiveDate) -> Self {
        if self.owed {
            Self { owed: false, ..self.with(Line::mark(Kind::Missing, day)) }
        } else {
            self.clone()
        }
    }

    /// Under new keys.
    #[must_use]
    pub fn renewed(&self, pass: usize, phrase: Option<usize>) -> Self {
        let lines = entries_of(&self.lines);
        Self { pass, phrase, generation: self.generation + 1, lines, ..self.clone() }
    }

    /// After a copy took its place. `known`: the generation that a mark outside knows of that diary.
    #[must_use]
    pub fn restored(
        &self,
        copy: &Self,
        pass: usize,
        known: u64,
        replaced: Option<u64>,
        day: NaiveDate,
    ) -> Self {
        let lines = entries_of(&copy.lines);
        let up_to = lines.len() as u64;
        let mut erased = self.erased.clone();
        for line in &copy.lines {
            // What the copy holds is told again.
            erased.remove(&line.note);
        }
        let generation = copy.generation.max(known) + 1;
        Self { there: true, pass, generation, erased, lines, owed: false, ..copy.clone() }
            .with(Line::mark(Kind::Restored(up_to, replaced), day))
    }

    /// After the end of it: every word of it may be nowhere.
    #[must_use]
    pub fn ended(&self) -> Self {
        let mut after = Self::nothing(self.diary);
        after.erased.clone_from(&self.erased);
        after.forget(self.lines.iter());
        after
    }

    fn forget<'a>(&mut self, gone: impl Iterator<Item = &'a Line>) {
        self.erased.extend(gone.map(|line| line.note.clone()).filter(|note| !note.is_empty()));
    }

    fn line(&self, id: EntryId) -> Option<&Line> {
        self.lines.iter().find(|line| line.id == Some(id))
    }

    /// The entry first written of which this is a version.
    fn first(&self, mut id: EntryId) -> EntryId {
        while let Some(Kind::Correction(of)) = self.line(id).map(|line| &line.kind) {
            id = *of;
        }
        id
    }

    /// After an erase, which also puts it under new keys; `None` where there is nothing to erase.
    #[must_use]
    pub fn without(&self, what: Gone, day: NaiveDate) -> Option<Self> {
        let chosen: Vec<EntryId> = match what {
            Gone::One(id) => vec![id],
            Gone::Days(from, to) => {
                let inside = |line: &&Line| from <= line.day && line.day <= to && line.can_go();
                self.lines.iter().filter(inside).filter_map(|line| line.id).collect()
            }
        };
        let firsts = chosen.into_iter().map(|id| self.first(id));
        let mut gone: BTreeSet<EntryId> =
            firsts.filter(|id| self.line(*id).is_some_and(Line::can_go)).collect();
        if gone.is_empty() {
            return None;
        }
        // Again and again until nothing more hangs on what goes.
        loop {
            let more: Vec<EntryId> = self
                .lines
                .iter()
                .filter(|line| line.hangs_on().is_some_and(|on| gone.contains(&on)))
                .filter_map(|line| line.id)
                .filter(|id| !gone.contains(id))
                .collect();
            if more.is_empty() {
                break;
            }
            gone.extend(more);
        }
        let (go, stay): (Vec<Line>, Vec<Line>) =
            self.lines.iter().cloned().partition(|l| l.id.is_some_and(|id| gone.contains(&id)));
        // Nobody in these lives closes a caution, and no strike does.
        let caution = go.iter().any(|line| line.kind == Kind::Sign);
        let mut after = self.renewed(self.pass, self.phrase);
        after.lines = entries_of(&stay);
        after.forget(go.iter());
        Some(after.with(Line::mark(Kind::Erased(caution), day)))
    }

    /// Whether a mark kept outside says that this is an older copy.
    #[must_use]
    pub fn is_behind(&self, mark: &MarkSeen) -> bool {
        let here = self.lines.len() as u64;
        if self.generation != mark.generation {
            return self.generation < mark.generation;
        }
        let at = usize::try_from(mark.seq).unwrap_or(usize::MAX).saturating_sub(1);
        // A hole is told as a hole.
        let other = |line: &Line| line.kind != Kind::Hole && line.id != mark.entry;
        here < mark.seq || self.lines.get(at).is_some_and(other)
    }

    /// Whether a restore stands that nobody confirmed since. A struck confirmation is no longer one for
    /// certain, so it is left open: `None`.
    #[must_use]
    pub fn restore_unconfirmed(&self) -> Option<bool> {
        let restored = self.lines.iter().rposition(|line| matches!(line.kind, Kind::Restored(..)));
        let Some(restored) = restored else { return Some(false) };
        let after = self.lines.get(restored..).unwrap_or_default();
        let confirmed: Vec<EntryId> =
            after.iter().filter(|l| l.kind == Kind::Confirmed).filter_map(|l| l.id).collect();
        if confirmed.is_empty() {
            return Some(true);
        }
        let struck = |id: &EntryId| self.lines.iter().any(|l| l.kind == Kind::Strike(*id));
        (!confirmed.iter().any(struck)).then_some(false)
    }
}

/// A mark kept outside, as the format says to read it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MarkSeen {
    /// How often the diary had been put under new keys.
    pub generation: u64,
    /// Its last entry's place.
    pub seq: u64,
    /// The entry that stood there, as the life knows it.
    pub entry: Option<EntryId>,
}

impl MarkSeen {
    /// Reads version 1.
    #[must_use]
    pub fn read(bytes: &[u8]) -> Option<Self> {
        let number =
            |from: usize| Some(u64::from_le_bytes(bytes.get(from..from + 8)?.try_into().ok()?));
        let (generation, seq) = (number(1)?, number(9)?);
        (bytes.len() == 57 && bytes.first() == Some(&1)).then_some(Self {
            generation,
            seq,
            entry: None,
        })
    }
}
