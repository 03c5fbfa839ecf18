//! The one door: a request and a moment in, a screen and duties out.
//!
//! Decides in which order things happen: the clock is looked at, a request is checked, what it tells is
//! written to the journal and synced, the state follows, the screen is made. Leaves what may be
//! written to `check`, what the rule says to [`crate::progression`], what is shown to
//! [`crate::screens`], and bytes to [`crate::diary::store`].

mod backups;
mod check;
mod clock;
mod copy;
mod journal;
mod keeping;
mod leaving;
mod looking;
mod marking;
mod practising;
mod reading;
mod reading_over;
mod remembering;
mod request;
mod showing;
mod wording;
mod writing;

pub use crate::trouble::{Refusal, Trouble};
pub use copy::{Copy, CopyFrom};
pub use keeping::Recovery;
pub use leaving::SharedFile;
pub use reading::Reading;
pub use remembering::ReminderChange;
pub use request::{Request, SessionTold, Told, Write};

use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::diary::entry::{Content, Entry, EntryId};
use crate::diary::resolve::resolve;
use crate::diary::state::State;
use crate::diary::store::{Findings, Opened, Rollback, Store};
use crate::moment::{Moment, Stamp};
use crate::ports::{Disk, KeyKeeper, MarkKeeper, Random};
use crate::programme::values::StepId;
use crate::progression::{Basis, Outcome, OutcomeKind};
use crate::reminders::PlanReminders;
use crate::safety::Sign;
use crate::screens::{
    EndingScreen, EntriesScreen, EraseScreen, LadderScreen, Lock, LogSessionScreen, MoreScreen,
    PlanScreen, ReadyScreen, Scene, Screen, ShowsScreen, SignsScreen, SpokeScreen, StopScreen,
    StoreNote, SuggestionScreen,
};
use crate::words::Words;
use backups::Backups;
use journal::{history, payloads, read, state_of};
use practising::Practising;
use reading_over::ReadingOver;

/// After so many entries since the last snapshot it is worth saving a new one.
const UNSAVED: u64 = 16;

/// What the companion needs from outside.
#[derive(Clone, Debug)]
pub struct Ports {
    /// Files.
    pub disk: Arc<dyn Disk>,
    /// Random bytes.
    pub random: Arc<dyn Random>,
    /// The mark by which an older copy of the whole folder is noticed.
    pub marks: Arc<dyn MarkKeeper>,
}

/// The answer to a request.
pub struct Answer {
    /// What to show.
    pub screen: Screen,
    /// What the shell must do.
    pub duties: Vec<Duty>,
}

/// What a shell must do.
#[derive(Clone, PartialEq, Eq)]
pub enum Duty {
    /// Open the dialler with this number filled in. Frond never rings by itself.
    OpenDialler {
        /// The number.
        number: String,
    },
    /// Keep the screen on while this practice is shown.
    KeepScreenOn,
    /// Remember these instants in these words and no others; it replaces all that was planned before.
    PlanReminders(PlanReminders),
    /// Offer this file to be kept or shared.
    ShareFile(SharedFile),
}

/// One open diary, with everything that answers from it.
pub struct Companion {
    store: Store,
    ports: Ports,
    folder: PathBuf,
    words: Words,
    state: State,
    findings: Findings,
    /// What the mark kept outside says, when it says that the folder is an older copy.
    rollback: Option<Rollback>,
    backups: Backups,
    observed: Option<Moment>,
    /// Machine marks that could not be written yet; until they are, no suggestion is shown.
    pending: Vec<Content>,
    unsaved: u64,
    practising: Practising,
    lock: Lock,
    reading_over: ReadingOver,
}

impl Companion {
    /// Starts a new, empty diary in `folder`.
    ///
    /// # Errors
    /// [`Trouble`], for example when a diary is there already.
    pub fn start(
        ports: &Ports,
        folder: &Path,
        keeper: &dyn KeyKeeper,
        language: &str,
    ) -> Result<Self, Trouble> {
        let opened = Store::create(ports.disk.clone(), folder, keeper, ports.random.clone())?;
        Ok(Self::assemble(ports, folder, opened, State::new(), language))
    }

    /// Opens the diary in `folder`. What was found damaged is written down as missing and said on
    /// Today.
    ///
    /// # Errors
    /// [`Trouble`]; nothing on disk has then been changed.
    pub fn open(
        ports: &Ports,
        folder: &Path,
        keeper: &dyn KeyKeeper,
        language: &str,
        moment: &Moment,
    ) -> Result<Self, Trouble> {
        match Self::open_once(ports, folder, keeper, language, moment) {
            // Reading it whole found damage behind a snapshot; this opening sees to it.
            Err(Trouble::OpenAgain) => Self::open_once(ports, folder, keeper, language, moment),
            opened => opened,
        }
    }

    fn open_once(
        ports: &Ports,
        folder: &Path,
        keeper: &dyn KeyKeeper,
        language: &str,
        moment: &Moment,
    ) -> Result<Self, Trouble> {
        let mut opened = Store::open(ports.disk.clone(), folder, keeper, ports.random.clone())?;
        let unsaved = opened.tail.len() as u64;
        let state = state_of(&mut opened)?;
        let mut companion = Self::assemble(ports, folder, opened, state, language);
        companion.unsaved = unsaved;
        companion.mark_missing()?;
        companion.judge_mark()?;
        companion.find_practice();
        companion.observe(moment, true);
        // What cannot be written now is tried again at every request; reading must not wait for it.
        let _tried_again = companion.write_marks(moment);
        Ok(companion)
    }

    fn assemble(
        ports: &Ports,
        folder: &Path,
        opened: Opened,
        state: State,
        language: &str,
    ) -> Self {
        let tag = state.language().unwrap_or(language);
        Self {
            words: Words::for_language(tag),
            store: opened.store,
            ports: ports.clone(),
            folder: folder.to_path_buf(),
            state,
            findings: opened.findings,
            rollback: None,
            backups: Backups::default(),
            observed: None,
            pending: Vec::new(),
            unsaved: 0,
            practising: Practising::Nothing,
            lock: Lock::default(),
            reading_over: ReadingOver::default(),
        }
    }

    /// What opening found that is not as it was written.
    #[must_use]
    pub fn findings(&self) -> &Findings {
        &self.findings
    }

    /// The folded diary, for measuring and for tests.
    #[must_use]
    pub fn state(&self) -> &State {
        &self.state
    }

    /// Every entry as it stands in the journal.
    ///
    /// # Errors
    /// [`Trouble`] when the journal cannot be read.
    pub fn entries(&self) -> Result<Vec<Entry>, Trouble> {
        history(&self.store)
    }

    /// A new request id. It carries how many entries there were, so that asking again is recognised
    /// however old the form is.
    ///
    /// # Errors
    /// [`Trouble`] when there are no random bytes.
    pub fn new_id(&self) -> Result<EntryId, Trouble> {
        let mut bytes = [0u8; 16];
        self.ports.random.fill(&mut bytes)?;
        let issued = u32::try_from(self.state.count()).unwrap_or(u32::MAX).to_be_bytes();
        if let Some(head) = bytes.get_mut(..4) {
            head.copy_from_slice(&issued);
        }
        Ok(EntryId(bytes))
    }

    /// Answers a request.
    ///
    /// # Errors
    /// [`Trouble`], by what the person can do next. Nothing was written, unless it says that the diary
    /// has to be opened again to see.
    pub fn ask(&mut self, request: Request, moment: &Moment) -> Result<Answer, Trouble> {
        self.observe(moment, false);
        // Without the marks a suggestion could be too much, and an entry would stand before them.
        let needs_marks = matches!(request, Request::Suggestion | Request::Write(_));
        if let (Err(trouble), true) = (self.write_marks(moment), needs_marks) {
            return Err(trouble);
        }
        let now = moment.now;
        let mut duties = Vec::new();
        // What is written changes what is to be remembered, and at the first look the phone may have
        // been restarted, or the zone may be another.
        let plan_anew = matches!(request, Request::Home | Request::Write(_));
        let screen = match request {
            Request::Today => self.today(moment),
            Request::Home if self.practising.waits() => self.practice(moment)?,
            Request::Home => self.today(moment),
            Request::Practices => self.practices(&now),
            Request::Breathing => self.breathing(&now)?,
            Request::Begin(begin) => self.begin(begin, moment)?,
            Request::Practice => self.practice(moment)?,
            Request::During(event) => self.during(event, moment)?,
            Request::Found(choice) => self.found(choice, moment)?,
            Request::Rate => self.rate(moment)?,
            Request::LogAsPlanned => self.as_planned(moment)?,
            Request::Screening { so_far, sent } => self.screening(&so_far, sent, &now)?,
            Request::HoldQuestions => self.hold_questions(&now)?,
            Request::Accept(handed) => self.accept(handed, &now)?,
            Request::StepCheck => self.step_check(&now),
            Request::Reminders => self.reminders(moment)?,
            Request::CalendarFile => {
                duties.extend(self.calendar_file(moment)?.map(|file| Duty::ShareFile(file.into())));
                self.reminders(moment)?
            }
            Request::LogSession => {
                let id = self.new_id()?;
                self.show(&now, |scene| Screen::LogSession(LogSessionScreen::new(scene, id)))
            }
            Request::Ladder => self.show(&now, |scene| Screen::Ladder(LadderScreen::new(scene))),
            Request::Suggestion => self.suggestion(moment)?,
            Request::Signs => self.show(&now, |scene| Screen::Signs(SignsScreen::new(scene))),
            Request::StopAndCall => self.stop_and_call(&now, &[]),
            Request::Spoke => self.show(&now, |scene| Screen::Spoke(SpokeScreen::new(scene))),
            Request::Entries => {
                let entries = self.entries()?;
                let counted = resolve(&entries);
                self.show(&now, |scene| Screen::Entries(EntriesScreen::new(scene, &counted)))
            }
            Request::Kept { of } => self.again(of, moment)?,
            Request::Plan => self.show(&now, |scene| Screen::Plan(PlanScreen::new(scene))),
            Request::Keeping => self.keeping(&now)?,
            Request::Erase(what) => self.erase_screen(what, &now)?,
            Request::EraseAll => self.show(&now, |scene| Screen::Erase(EraseScreen::all(scene))),
            Request::Dial { number } => {
                let screen = self.stop_and_call(&now, &[]);
                let offered = matches!(&screen, Screen::StopAndCall(stop)
                    if stop.call.dials().any(|dial| dial.number == number));
                if !offered {
                    return Err(Refusal::NumberNotOffered.into());
                }
                duties.push(Duty::OpenDialler { number });
                screen
            }
            Request::FirstRun(page) => self.first_run(page, &now)?,
            Request::More => self.show(&now, |scene| Screen::More(MoreScreen::new(scene))),
            Request::Calendar { month } => self.calendar(month, &now)?,
            Request::Day(day) => self.day(day, &now)?,
            Request::Entry(of) => self.entry(of, &now)?,
            Request::Correct(of) => self.correct(of, &now)?,
            Request::Questions => self.questions(&now)?,
            Request::Activities => self.activities(&now)?,
            Request::TimeOff => self.time_off(&now)?,
            Request::Ready => {
                let id = self.new_id()?;
                self.show(&now, |scene| Screen::Ready(ReadyScreen::new(scene, id)))
            }
            Request::LookForward => self.look_forward(&now)?,
            Request::Settled(of) => self.settled(of, &now)?,
            Request::Ending => self.show(&now, |scene| Screen::Ending(EndingScreen::new(scene))),
            Request::Shows(covered) => {
                self.show(&now, |scene| Screen::Shows(ShowsScreen::new(scene, covered)))
            }
            Request::Settings => self.settings(&now)?,
            Request::Summary(selection) => self.summary_form(selection, &now)?,
            Request::Write(write) => self.write(write, moment)?,
        };
        if matches!(screen, Screen::Running(_)) {
            duties.push(Duty::KeepScreenOn);
        }
        if plan_anew {
            duties.extend(self.reminders_duty(moment));
        }
        Ok(Answer { screen, duties })
    }

    /// Saves a snapshot when one is due, makes room for the next entries, and reads the diary over, a part at each
    /// call, so that damage is found before it is needed. Call it when nobody waits.
    ///
    /// # Errors
    /// [`Trouble`]; no entry is in danger.
    pub fn tidy(&mut self) -> Result<(), Trouble> {
        if !self.store.is_writable() {
            return Ok(());
        }
        if self.unsaved >= UNSAVED {
            self.save()?;
        }
        self.store.prepare()?;
        self.read_over()
    }

    /// Saves a snapshot now.
    ///
    /// # Errors
    /// [`Trouble`]; no entry is in danger.
    pub fn save(&mut self) -> Result<(), Trouble> {
        // A snapshot behind a hole would hide it from the next opening before its mark stands.
        if !self.pending.is_empty() {
            return Ok(());
        }
        let bytes = self.state.encode().map_err(|_| Trouble::TryAgain)?;
        if let Some(last) = self.store.last() {
            self.store.save_snapshot(last, &bytes)?;
            self.unsaved = 0;
        }
        Ok(())
    }

    fn show(&self, now: &Stamp, make: impl FnOnce(&Scene<'_>) -> Screen) -> Screen {
        self.with_scene(now, make)
    }

    fn with_scene<T>(&self, now: &Stamp, make: impl FnOnce(&Scene<'_>) -> T) -> T {
        let assessment = self.state.rule().assess(now);
        let waiting = self.pending.iter().map(|mark| match mark {
            Content::MissingMark { entries, .. } => u64::from(entries.get()),
            _ => 0,
        });
        let store = StoreNote {
            missing: self.state.missing() + waiting.sum::<u64>(),
            read_only: !self.store.is_writable(),
            no_backup: self.backups.failed(),
            set_back: self.rollback.is_some(),
            lock: self.lock,
        };
        make(&Scene {
            words: &self.words,
            state: &self.state,
            assessment: &assessment,
            now: *now,
            store,
            practice_waits: self.practising.waits(),
        })
    }

    fn stop_and_call(&self, now: &Stamp, just_noted: &[Sign]) -> Screen {
        self.show(now, |scene| Screen::StopAndCall(StopScreen::new(scene, just_noted)))
    }

    /// Shows the suggestion, and writes down that it was shown where that is news (rule sentence D2).
    fn suggestion(&mut self, moment: &Moment) -> Result<Screen, Trouble> {
        let assessment = self.state.rule().assess(&moment.now);
        let mut shown = None;
        if let Basis::Step { step, has_rule: true, .. } = &assessment.basis {
            let kind = assessment.outcome.kind();
            let to: Option<StepId> = match &assessment.outcome {
                Outcome::StepBack { to } | Outcome::StepUp { to } => Some(to.clone()),
                Outcome::PauseAndCall | Outcome::Hold { .. } | Outcome::ReadyToTalk => None,
            };
            let sessions = self.state.sessions();
            shown = self
                .state
                .shown()
                .filter(|last| {
                    last.outcome == kind
                        && last.step == step.as_str()
                        && last.to.as_deref() == to.as_ref().map(StepId::as_str)
                        && last.sessions == sessions
                        && last.chosen.is_none()
                })
                .map(|last| last.entry);
            if shown.is_none() && kind != OutcomeKind::PauseAndCall && self.store.is_writable() {
                let id = self.new_id()?;
                let step = step.clone();
                let content = Content::SuggestionShown { outcome: kind, step, to };
                self.append(id, moment.now, content, moment)?;
                shown = Some(id);
            }
        }
        Ok(self.show(&moment.now, |scene| Screen::Suggestion(SuggestionScreen::new(scene, shown))))
    }
}
