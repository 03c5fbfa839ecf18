//! Decides what the diary comes down to: the rule's facts and the few other things the screens need,
//! folded entry by entry, small enough to be sealed as a snapshot. Everything here can be rebuilt
//! from the journal; leaves to [`crate::progression`] what the facts mean.

use std::borrow::Borrow;

use serde::{Deserialize, Serialize};

use super::entry::{
    Asked, Chosen, Content, Entry, EntryId, LockAfter, ScreeningAnswer, Settings, SignNoted,
};
use super::presence::Presence;
use super::resolve::Amended;
use crate::moment::{Stamp, Uptime};
use crate::practice::breathing::{Conditions, CueKinds};
use crate::progression::{Fold, FoldError, OutcomeKind};
use crate::reminders::{DoneSession, ReminderSettings};
use crate::safety::HoldCondition;
use crate::sealing::VerifyKey;

/// The version of the snapshot's content. A snapshot of another version is rebuilt, never read.
const VERSION: u16 = 9;

/// How many entry ids are remembered, to recognise a request asked twice.
const IDS: usize = 1024;

/// Sessions kept for the reminders: so many, of so long a time. Technical numbers: a plan's week, its
/// longest rest and some room.
const RECENT: usize = 400;
const RECENT_MILLIS: i64 = 45 * 24 * 60 * 60 * 1000;

/// The folded diary.
#[derive(Debug, Serialize, Deserialize)]
pub struct State {
    version: u16,
    /// Entries applied so far.
    count: u64,
    rule: Fold,
    ids: Vec<EntryId>,
    sessions: u64,
    language: Option<String>,
    numbers_open: bool,
    look_forward: Option<String>,
    shown: Option<Shown>,
    last: Option<Last>,
    missing: u64,
    copy_made: Option<Stamp>,
    presence: Presence,
    cues: CueKinds,
    lock_after: LockAfter,
    /// What the questions about breath holds came to; `None`: not asked.
    hold_answers: Option<Vec<HoldCondition>>,
    /// What any sign ever noted tells of such a condition, closed ones too.
    hold_told: Vec<HoldCondition>,
    /// As JSON, because the snapshot's encoding cannot leave fields out as the stored form does.
    reminders: Option<String>,
    put_off: Option<Stamp>,
    /// The sessions of the last weeks, for the reminders.
    recent: Vec<DoneSession>,
    /// After how many sessions "anything new?" was last answered with nothing new, and when.
    nothing_new: Option<(u64, Stamp)>,
    /// The programme and revision accepted last.
    accepted: Option<(String, u32)>,
    /// The clinic's key that is pinned: the one that signed the programme accepted last among those signed.
    pinned: Option<VerifyKey>,
    /// Of each programme that was ever accepted, the revision accepted last.
    revisions: Vec<(String, u32)>,
    screened: Option<Screened>,
}

/// The full list of cautions as it was last answered to the end.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Screened {
    /// When.
    pub at: Stamp,
    /// The programme and revision that were accepted then.
    pub under: Option<(String, u32)>,
}

/// The suggestion last shown.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Shown {
    /// The entry that says so.
    pub entry: EntryId,
    /// The outcome.
    pub outcome: OutcomeKind,
    /// The step it was about.
    pub step: String,
    /// Where it led.
    pub to: Option<String>,
    /// What was chosen.
    pub chosen: Option<Chosen>,
    /// Sessions written until then; a new session makes it a new suggestion.
    pub sessions: u64,
}

/// The last entry's clock readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Last {
    /// When it was written.
    pub written: Stamp,
    /// The device's running time then.
    pub uptime: Option<Uptime>,
}

/// The whole journal is needed to apply this entry: it changes what was folded long ago.
#[derive(Debug)]
pub struct NeedsHistory;

impl Default for State {
    fn default() -> Self {
        Self::new()
    }
}

impl State {
    /// The state of an empty diary.
    #[must_use]
    pub fn new() -> Self {
        Self {
            version: VERSION,
            count: 0,
            rule: Fold::new(None),
            ids: Vec::new(),
            sessions: 0,
            language: None,
            numbers_open: false,
            look_forward: None,
            shown: None,
            last: None,
            missing: 0,
            copy_made: None,
            presence: Presence::default(),
            cues: CueKinds::default(),
            lock_after: LockAfter::default(),
            hold_answers: None,
            hold_told: Vec::new(),
            reminders: None,
            put_off: None,
            recent: Vec::new(),
            nothing_new: None,
            accepted: None,
            pinned: None,
            revisions: Vec::new(),
            screened: None,
        }
    }

    /// Folds a whole diary, then drops what no later entry in order can need.
    ///
    /// # Errors
    /// [`FoldError`] when a stored programme cannot be read.
    pub fn from_history(entries: &[Entry]) -> Result<Self, FoldError> {
        let read = || entries.iter().map(Ok::<_, FoldError>);
        Self::folded(&Amended::read(read())?, read())
    }

    /// As [`State::from_history`], of a diary that need not be held in memory: `entries` gives all of it, in order, one
    /// after the other, and `amended` was read from all of it before.
    ///
    /// # Errors
    /// What reading an entry tells; [`FoldError`] when a stored programme cannot be read.
    pub(crate) fn folded<C, E, T>(
        amended: &Amended<C>,
        entries: impl Iterator<Item = Result<E, T>>,
    ) -> Result<Self, T>
    where
        C: Borrow<Entry>,
        E: Borrow<Entry>,
        T: From<FoldError>,
    {
        let mut state = Self::new();
        for (index, entry) in entries.enumerate() {
            let entry = entry?;
            let entry = entry.borrow();
            state.rule.write(entry)?;
            state.remember(entry);
            state.count += 1;
            if let Some(counted) = amended.counted(index, entry).filter(|counted| !counted.struck) {
                state.note(counted.first, counted.happened, counted.content);
            }
        }
        state.rule.trim();
        Ok(state)
    }

    /// Applies the next entry.
    ///
    /// # Errors
    /// [`NeedsHistory`] when the entry changes what was folded before; the state is then spent and must
    /// be made anew with [`State::from_history`].
    pub fn apply(&mut self, entry: &Entry) -> Result<(), NeedsHistory> {
        if matches!(entry.what, Content::Correction { .. } | Content::Strike { .. }) {
            return Err(NeedsHistory);
        }
        self.rule.write(entry).map_err(|_| NeedsHistory)?;
        self.remember(entry);
        self.count += 1;
        self.note(entry, entry.happened, &entry.what);
        Ok(())
    }

    fn remember(&mut self, entry: &Entry) {
        self.ids.push(entry.id);
        if self.ids.len() >= 2 * IDS {
            let surplus = self.ids.len() - IDS;
            self.ids.drain(..surplus);
        }
        self.last = Some(Last { written: entry.written, uptime: entry.uptime });
    }

    /// `entry` is the first version; `content` what counts of it.
    fn note(&mut self, entry: &Entry, happened: Stamp, content: &Content) {
        self.presence.note(entry, happened, content);
        self.note_conditions(content.signs());
        match content {
            Content::Session(session) => {
                self.sessions += 1;
                let practice = session.practice.clone();
                self.remember_session(DoneSession { practice, happened });
            }
            Content::Settings(Settings { language, numbers_open, cues, lock_after }) => {
                self.language = language.as_ref().map(|tag| tag.as_str().to_owned());
                self.numbers_open = *numbers_open;
                self.cues = *cues;
                self.lock_after = *lock_after;
            }
            Content::HoldConditions { reported } => self.hold_answers = Some(reported.clone()),
            Content::Reminders(settings) => self.reminders = serde_json::to_string(settings).ok(),
            Content::PutOff { until } => self.put_off = Some(*until),
            Content::ProgrammeAccepted { programme, revision, signed, .. } => {
                let (programme, revision) = (programme.as_str().to_owned(), revision.get());
                self.revisions.retain(|(known, _)| *known != programme);
                self.revisions.push((programme.clone(), revision));
                self.accepted = Some((programme, revision));
                // A plan that nobody signed takes the place of no key.
                if let Some(signed) = signed {
                    self.pinned = Some(signed.key);
                }
            }
            Content::ScreeningAnswered { asked, answer, .. }
                if *answer != ScreeningAnswer::NotToday =>
            {
                if *answer == ScreeningAnswer::NothingNew {
                    self.nothing_new = Some((self.sessions, entry.written));
                }
                if *asked == Asked::AnythingNew {
                    return;
                }
                self.screened = Some(Screened { at: entry.written, under: self.accepted.clone() });
            }
            Content::LookForward { to } => self.look_forward = Some(to.as_str().to_owned()),
            Content::SuggestionShown { outcome, step, to } => {
                self.shown = Some(Shown {
                    entry: entry.id,
                    outcome: *outcome,
                    step: step.as_str().to_owned(),
                    to: to.as_ref().map(|to| to.as_str().to_owned()),
                    chosen: None,
                    sessions: self.sessions,
                });
            }
            Content::SuggestionAnswered { shown, chosen } => {
                if let Some(last) = self.shown.as_mut().filter(|last| last.entry == *shown) {
                    last.chosen = Some(*chosen);
                }
            }
            Content::MissingMark { entries, .. } => self.missing += u64::from(entries.get()),
            Content::CopyMade {} => self.copy_made = Some(entry.written),
            // A talk with the clinician is when what is missing is told.
            Content::Clearing { .. } => self.missing = 0,
            _ => {}
        }
    }

    /// Keeps those of the last weeks, which is as far back as a weekly schedule and rest days reach.
    fn remember_session(&mut self, done: DoneSession) {
        self.recent.push(done);
        let newest = self.recent.iter().map(|one| one.happened.millis()).max().unwrap_or_default();
        self.recent.retain(|one| newest - one.happened.millis() <= RECENT_MILLIS);
        if self.recent.len() > RECENT {
            self.recent.remove(0);
        }
    }

    fn note_conditions(&mut self, signs: &[SignNoted]) {
        for told in signs.iter().filter_map(|noted| HoldCondition::told_by(noted.sign)) {
            if !self.hold_told.contains(&told) {
                self.hold_told.push(told);
            }
        }
    }

    /// How a change of breath is told without looking.
    #[must_use]
    pub fn cues(&self) -> CueKinds {
        self.cues
    }

    /// After how long behind other programs a phone asks for the code again.
    #[must_use]
    pub fn lock_after(&self) -> LockAfter {
        self.lock_after
    }

    /// What is known of the conditions with which breath holds are left out.
    #[must_use]
    pub fn conditions(&self) -> Conditions {
        let known = match &self.hold_answers {
            Some(reported) => Conditions::answered(reported.iter().copied()),
            None => Conditions::not_asked(),
        };
        known.with(self.hold_told.iter().copied())
    }

    /// Whether the questions about breath holds were answered.
    #[must_use]
    pub fn holds_asked(&self) -> bool {
        self.hold_answers.is_some()
    }

    /// What was set about reminders; `None`: nothing yet, and so they are off.
    #[must_use]
    pub fn reminders(&self) -> Option<ReminderSettings> {
        self.reminders.as_deref().and_then(|text| serde_json::from_str(text).ok())
    }

    /// The sessions of the last weeks.
    #[must_use]
    pub fn recent(&self) -> &[DoneSession] {
        &self.recent
    }

    /// Whether "anything new?" was answered with nothing new since the last session, on the day of `now`.
    #[must_use]
    pub fn nothing_new(&self, now: &Stamp) -> bool {
        self.nothing_new
            .as_ref()
            .is_some_and(|(sessions, at)| *sessions == self.sessions && at.day() == now.day())
    }

    /// When a reminder that was put off comes again.
    #[must_use]
    pub fn put_off(&self) -> Option<Stamp> {
        self.put_off
    }

    /// When the full list of cautions was last answered to the end, and under which plan.
    #[must_use]
    pub fn screened(&self) -> Option<&Screened> {
        self.screened.as_ref()
    }

    /// The clinic's key that is pinned, where one signed a programme that was accepted.
    #[must_use]
    pub fn pinned(&self) -> Option<VerifyKey> {
        self.pinned
    }

    /// The revision of a programme that was accepted last, whatever is in use now.
    #[must_use]
    pub fn last_revision(&self, programme: &str) -> Option<u32> {
        self.revisions.iter().find(|(known, _)| known == programme).map(|(_, revision)| *revision)
    }

    /// The rule's facts.
    #[must_use]
    pub fn rule(&self) -> &Fold {
        &self.rule
    }

    /// How many entries were applied.
    #[must_use]
    pub fn count(&self) -> u64 {
        self.count
    }

    /// How many sessions were written.
    #[must_use]
    pub fn sessions(&self) -> u64 {
        self.sessions
    }

    /// The language chosen for the screens.
    #[must_use]
    pub fn language(&self) -> Option<&str> {
        self.language.as_deref()
    }

    /// Whether sizes and counts stay open on Today where the plan folds them.
    #[must_use]
    pub fn numbers_open(&self) -> bool {
        self.numbers_open
    }

    /// Something to look forward to, in the person's words.
    #[must_use]
    pub fn look_forward(&self) -> Option<&str> {
        self.look_forward.as_deref()
    }

    /// The suggestion last shown.
    #[must_use]
    pub fn shown(&self) -> Option<&Shown> {
        self.shown.as_ref()
    }

    /// The last entry's clock readings.
    #[must_use]
    pub fn last(&self) -> Option<Last> {
        self.last
    }

    /// Entries found missing since the last talk.
    #[must_use]
    pub fn missing(&self) -> u64 {
        self.missing
    }

    /// What only the screens look at.
    #[must_use]
    pub fn presence(&self) -> &Presence {
        &self.presence
    }

    /// When the last copy for elsewhere was made.
    #[must_use]
    pub fn copy_made(&self) -> Option<Stamp> {
        self.copy_made
    }

    /// Whether an entry of this id was written: `None` where only the journal can tell.
    #[must_use]
    pub fn has_written(&self, id: EntryId, issued_at: u64) -> Option<bool> {
        if self.ids.contains(&id) {
            return Some(true);
        }
        let oldest_known = self.count.saturating_sub(self.ids.len() as u64);
        // An id carries the count of entries when it was issued: an entry of it can only lie later.
        (issued_at >= oldest_known && issued_at <= self.count).then_some(false)
    }

    /// The snapshot's content. It keeps only what no later entry in order can do without, so that it
    /// stays small; what reaches back further needs the journal from then on.
    ///
    /// # Errors
    /// Only if the encoding itself fails.
    pub fn encode(&mut self) -> Result<Vec<u8>, postcard::Error> {
        self.rule.trim();
        postcard::to_stdvec(self)
    }

    /// Reads a snapshot's content; `None` when it is of another version or not understood, and has to be
    /// rebuilt from the journal.
    #[must_use]
    pub fn decode(bytes: &[u8]) -> Option<Self> {
        let (version, _) = postcard::take_from_bytes::<u16>(bytes).ok()?;
        if version != VERSION {
            return None;
        }
        postcard::from_bytes(bytes).ok()
    }
}
