//! The diary as a whole: how it stands, and how it is begun, opened, locked, put under another code, copied,
//! restored and erased. One [`Holder`] stands between a surface and the [`crate::companion`], so that every
//! surface behaves the same and is told only what to lay out.
//!
//! Decides what stands in the way of an open diary and what is shown instead; what waits (a plan handed over,
//! twelve words, a copy looked into, a code); what each [`Does`] leads to (`press`); and how often a code may
//! be tried (`tries`). Leaves what is written and what the rule says to the companion, what is said to
//! [`crate::screens`], and what wraps the key to the keeper that comes in with each call.
//!
//! Start reading at [`Holder`], then `stand`.

mod code;
mod copies;
mod days;
mod phrase;
mod plan;
mod press;
mod request;
mod stand;
mod summary;
#[cfg(test)]
mod tests;
mod tries;

pub use request::WholeRequest;

use std::path::PathBuf;

use crate::companion::{Companion, Copy, Duty, Ports, Recovery, Request, Trouble};
use crate::diary::entry::EntryId;
use crate::handover::Handed;
use crate::moment::Moment;
use crate::ports::{KeyKeeper, Passphrase, PassphraseKeeper, Stretch};
use crate::screens::{Covered, Does, Done, FormWords, Screen, SorryScreen, WholeScreen};
use crate::sealing::RecoveryPhrase;
use crate::words::{Isolation, Words};

/// What is answered: what to show, and what the shell must do.
pub struct Seen {
    /// What to show.
    pub view: View,
    /// What the shell must do.
    pub duties: Vec<Duty>,
}

/// What to show.
#[derive(Clone)]
#[allow(
    clippy::large_enum_variant,
    reason = "one for each answer, never many of them; a box would have to be taken off at every border"
)]
pub enum View {
    /// A screen of the open diary.
    Screen(Screen),
    /// A screen about the diary as a whole.
    Whole(WholeScreen),
}

/// How the diary stands, for what a shell does by itself: it locks, keeps help in reach, and speaks before
/// anything is open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Standing {
    /// Whether it is open: "something is not right" is in reach then.
    pub open: bool,
    /// Whether it opens with a code, as far as it was seen.
    pub coded: bool,
    /// After how many seconds behind other programs the open diary is to be locked; none where it has no code.
    pub lock_after_seconds: Option<u32>,
    /// The language chosen in the open diary; none where none was. A shell may keep it, so that the next start
    /// speaks it before the diary is open.
    pub language: Option<String>,
}

/// Holds the one diary of a surface, open or not.
///
/// The keeper comes in with each call and is called while nothing inside is locked. A call that fails leaves the
/// diary to be opened again at the next one, so that a fault never goes on from a half-done state.
pub struct Holder {
    ports: Ports,
    folder: PathBuf,
    /// Where no diary says another.
    language: String,
    isolation: Isolation,
    covered: Covered,
    stretch: Stretch,
    state: State,
    words: Words,
    /// The code in use, or one that is being tried. Wiped when dropped.
    code: Option<Passphrase>,
    /// What a code was last asked for.
    code_for: CodeFor,
    /// The code in use was given once more just now, so that another may take its place.
    proved: bool,
    /// A diary that was just started: the first run comes first, once.
    fresh: bool,
    /// A plan that was handed over and waits to be read.
    plan: Option<Handed>,
    /// Twelve words that were shown and open nothing yet.
    phrase: Option<RecoveryPhrase>,
    /// A copy that was looked into.
    copy: Option<Copy>,
    /// What was pressed last and wrote something, with the id it wrote under.
    pressed: Option<(Does, EntryId)>,
    tries: tries::Tries,
}

/// How the diary stands.
enum State {
    /// It has to be opened before anything else.
    Shut,
    Open(Box<Companion>),
    /// It opens with a code, and none was given.
    CodeAsked,
    /// It does not open.
    Stuck(Trouble),
    /// Everything was erased.
    Erased,
}

/// What a code is asked for.
#[derive(Clone, Copy, PartialEq, Eq)]
enum CodeFor {
    /// Opening the diary.
    Diary,
    /// Looking into a backup.
    Backup,
    /// Another code in its place.
    Form,
}

impl Holder {
    /// Holds the diary in `folder`, which need not be there. `language`: where no diary says another.
    #[must_use]
    pub fn new(ports: Ports, folder: PathBuf, language: &str) -> Self {
        let isolation = Isolation::InRightToLeft;
        Self {
            tries: tries::Tries::beside(ports.disk.clone(), &folder),
            words: Words::isolated(language, isolation),
            ports,
            folder,
            language: language.to_owned(),
            isolation,
            covered: Covered::default(),
            stretch: Stretch::everyday(),
            state: State::Shut,
            code: None,
            code_for: CodeFor::Diary,
            proved: false,
            fresh: false,
            plan: None,
            phrase: None,
            copy: None,
            pressed: None,
        }
    }

    /// How hard a code is stretched; for tests, which must not take long.
    #[must_use]
    pub fn stretching(mut self, stretch: Stretch) -> Self {
        self.stretch = stretch;
        self
    }

    /// What the shell does so that others see less.
    pub fn covers(&mut self, covered: Covered) {
        self.covered = covered;
    }

    /// The words of the diary's language; of the surface's while none was open yet.
    #[must_use]
    pub fn words(&self) -> &Words {
        match &self.state {
            State::Open(companion) => companion.words(),
            _ => &self.words,
        }
    }

    /// The words of a phone's own controls.
    #[must_use]
    pub fn form_words(&self) -> FormWords {
        FormWords::new(self.words(), self.covered)
    }

    /// The open diary, if one is open.
    #[must_use]
    pub fn open_companion(&self) -> Option<&Companion> {
        match &self.state {
            State::Open(companion) => Some(companion),
            _ => None,
        }
    }

    /// Why the diary does not open, where it was tried and did not.
    #[must_use]
    pub fn stuck(&self) -> Option<&Trouble> {
        match &self.state {
            State::Stuck(trouble) => Some(trouble),
            _ => None,
        }
    }

    /// How the diary stands.
    #[must_use]
    pub fn standing(&self) -> Standing {
        let state = self.open_companion().map(Companion::state);
        let seconds =
            |state: &crate::diary::state::State| u32::from(state.lock_after().minutes()) * 60;
        Standing {
            open: state.is_some(),
            coded: self.code.is_some() || matches!(self.state, State::CodeAsked),
            lock_after_seconds: state.filter(|_| self.code.is_some()).map(seconds),
            language: state.and_then(|state| state.language().map(str::to_owned)),
        }
    }

    /// What went wrong and what can be done, as a screen.
    #[must_use]
    pub fn sorry(&self, trouble: &Trouble) -> SorryScreen {
        SorryScreen::new(self.words(), trouble, self.open_companion().is_some())
    }

    /// What an action asks for. Every action leads somewhere.
    ///
    /// # Errors
    /// [`Trouble`], by what the person can do next.
    pub fn press(
        &mut self,
        does: Does,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        press::press(self, does, keeper, moment)
    }

    /// The same where the action was shown with an id of its own to write under, as on a page that outlives this
    /// process: pressed again, whatever lies between, it writes nothing twice.
    ///
    /// # Errors
    /// [`Trouble`], by what the person can do next.
    pub fn press_under(
        &mut self,
        does: Does,
        id: EntryId,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.pressed = Some((does, id));
        press::press(self, does, keeper, moment)
    }

    /// Asks the companion. Where no diary is open, what stands in the way is shown instead.
    ///
    /// # Errors
    /// [`Trouble`]. After [`Trouble::OpenAgain`] the next call opens the diary again; asking again with the same
    /// id writes nothing twice.
    pub fn ask(
        &mut self,
        request: Request,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.pressed = None;
        self.proved = false;
        self.asked(request, keeper, moment)
    }

    /// Does what concerns the diary as a whole.
    ///
    /// # Errors
    /// [`Trouble`]. What was to be done was then not done, or wholly, which the next look shows.
    pub fn whole(
        &mut self,
        request: WholeRequest,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.pressed = None;
        let of_code = matches!(
            request,
            WholeRequest::CodeForm | WholeRequest::SetCode { .. } | WholeRequest::RemoveCode { .. }
        );
        self.proved &= of_code;
        match request {
            WholeRequest::Begin | WholeRequest::TryAgain => self.begin(keeper, moment),
            WholeRequest::StartNew => self.start_new(keeper, moment),
            WholeRequest::GiveCode { code } => self.give_code(code, keeper, moment),
            WholeRequest::CodeForm => self.code_form(keeper, moment),
            WholeRequest::SetCode { new, again } => self.set_code(new, again, keeper, moment),
            WholeRequest::RemoveCode { code } => self.remove_code(code, keeper, moment),
            WholeRequest::Lock => self.lock(keeper, moment),
            WholeRequest::NewPhrase => self.new_phrase(keeper, moment),
            WholeRequest::PhraseWritten => self.phrase_written(keeper, moment),
            WholeRequest::CheckPhrase { words } => self.check_phrase(words, keeper, moment),
            WholeRequest::CopyForm => self.copy_form(keeper, moment),
            WholeRequest::MakeCopy => self.make_copy(keeper, moment),
            WholeRequest::RestoreForm => Ok(self.restore_form(keeper, moment)),
            WholeRequest::LookIntoBackup => self.look_into_backup(keeper, moment),
            WholeRequest::RestoreCopyForm => Ok(self.restore_copy_form(keeper, moment)),
            WholeRequest::LookIntoCopy { bytes, phrase } => {
                self.look_into_copy(&bytes, phrase, keeper, moment)
            }
            WholeRequest::RestoreNow => self.restore_now(keeper, moment),
            WholeRequest::OpenByPhraseForm => self.open_by_phrase_form(keeper, moment),
            WholeRequest::OpenByPhrase { phrase } => self.open_by_phrase(phrase, keeper, moment),
            WholeRequest::EraseDaysForm => self.erase_days_form(keeper, moment),
            WholeRequest::LookEraseDays { from, to } => {
                self.look_erase_days(&from, &to, keeper, moment)
            }
            WholeRequest::Erase(what) => self.erase(what, keeper, moment),
            WholeRequest::EraseAll => self.erase_all(keeper, moment),
            WholeRequest::AddPlanForm => self.add_plan_form(keeper, moment),
            WholeRequest::PlanFile { bytes, words } => {
                self.plan_file(bytes, &words, keeper, moment)
            }
            WholeRequest::PlanLink { link, words } => self.plan_link(&link, &words, keeper, moment),
            WholeRequest::PlanNotMine => self.plan_not_mine(keeper, moment),
            WholeRequest::SummaryFile { selection, close, passphrase, again, time_alone, kind } => {
                let closing = summary::Closing { close, passphrase, again, time_alone, kind };
                self.summary_file(selection, closing, keeper, moment)
            }
        }
    }

    /// Puts the open diary under new keys that this keeper opens from now on, on a surface where a passphrase
    /// opens it. On a phone it is its own code that changes.
    ///
    /// # Errors
    /// [`Trouble`]; [`Trouble::NotADiary`] while no diary is open. It then opens as before.
    pub fn another_passphrase(
        &mut self,
        keeper: &PassphraseKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.pressed = None;
        self.proved = false;
        self.anew(keeper, stand::Under::Same, |companion, keeper| {
            companion.new_keys(keeper, Recovery::Keep, moment).map(Some)
        })?;
        self.done(Done::PassphraseSet)
    }

    /// A new id to write under.
    ///
    /// # Errors
    /// [`Trouble::NotADiary`] while no diary is open; [`Trouble::TryAgain`] without random bytes.
    pub fn new_id(&self) -> Result<EntryId, Trouble> {
        self.open_companion().ok_or(Trouble::NotADiary)?.new_id()
    }

    /// Tidies up when nobody waits; nothing depends on it but speed.
    ///
    /// # Errors
    /// [`Trouble`]; no entry is in danger.
    pub fn tidy(&mut self) -> Result<(), Trouble> {
        match &mut self.state {
            State::Open(companion) => companion.tidy(),
            _ => Ok(()),
        }
    }
}

impl Seen {
    fn whole(screen: WholeScreen) -> Self {
        Self { view: View::Whole(screen), duties: Vec::new() }
    }
}
