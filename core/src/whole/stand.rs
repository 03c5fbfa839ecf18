//! How the diary stands: opened where it has to be, locked, begun. What stands in the way of an open diary is a
//! screen, not an error.

use super::{CodeFor, Holder, Seen, State, View};
use crate::companion::{Companion, Request, Told, Trouble, Write};
use crate::moment::Moment;
use crate::ports::{CodedKeeper, KeeperKind, KeyKeeper, Passphrase};
use crate::practice::timed::Event;
use crate::screens::{
    CannotOpenScreen, CodeScreen, ErasedScreen, FirstRunPage, Lock, NoDiaryScreen, Screen,
    SetCodeScreen, SorryScreen, WholeScreen,
};

/// Under which code the diary is written anew.
pub(super) enum Under {
    /// As before.
    Same,
    /// Under this one; `None`: under none.
    Code(Option<Passphrase>),
}

impl Holder {
    /// The open diary, or what stands in its way; then what waits, the most pressing first: a practice under
    /// way, a plan that was handed over, the first run.
    pub(super) fn begin(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let home = self.asked(Request::Home, keeper, moment)?;
        if !matches!(home.view, View::Screen(Screen::Today(_))) {
            return Ok(home);
        }
        let view = if self.plan.is_some() {
            self.accept_waiting(moment)?.view
        } else if self.fresh {
            self.fresh = false;
            self.asked(Request::FirstRun(FirstRunPage::Breathe), keeper, moment)?.view
        } else {
            home.view
        };
        Ok(Seen { view, duties: home.duties })
    }

    /// Starts a new diary where there is none. Asked twice, the second finds it.
    pub(super) fn start_new(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let way = self.in_the_way(keeper, moment);
        match &self.state {
            State::Open(_) => return self.begin(keeper, moment),
            State::Erased | State::Stuck(Trouble::NotADiary) => {}
            State::Stuck(trouble) => return Err(trouble.clone()),
            State::Shut | State::CodeAsked => return Ok(way.unwrap_or_else(|| self.no_diary())),
        }
        self.close();
        self.code = None;
        let started = self.with_keeper(keeper, |keeper| {
            Companion::start(&self.ports, &self.folder, keeper, &self.language)
        });
        self.put(started?, keeper);
        self.fresh = true;
        self.tries.remove();
        let mut seen = self.begin(keeper, moment)?;
        // Whatever a diary before it had planned.
        seen.duties.extend(self.companion()?.planned_anew(moment));
        Ok(seen)
    }

    /// Puts the open diary and its code out of memory. What was planned stays planned.
    pub(super) fn lock(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let mut phrase = false;
        if let State::Open(companion) = &mut self.state {
            phrase = companion.has_phrase();
            // What was practised until now is certain; the practice is found again afterwards.
            let _noted = companion.ask(Request::During(Event::Seen), moment);
            let _faster = companion.tidy();
        }
        let coded = self.code.take().is_some();
        self.phrase = None;
        self.copy = None;
        self.pressed = None;
        self.proved = false;
        if matches!(self.state, State::Open(_) | State::Shut) {
            self.close();
            if coded {
                self.asks_code();
            }
        }
        match self.screen_of(keeper, moment) {
            Some(screen) => Ok(Seen::whole(screen)),
            // Without a code nothing can be locked; the form for one says so.
            None if keeper.kind() == KeeperKind::PhoneKeyStore => {
                let form = SetCodeScreen::new(&self.words, false, phrase, 0, vec![]);
                Ok(Seen::whole(WholeScreen::SetCode(form)))
            }
            // A surface with a passphrase has it at hand as long as it runs.
            None => self.asked(Request::Keeping, keeper, moment),
        }
    }

    /// Asks the companion. What it is asked to do may be asked again: an id writes once.
    pub(super) fn asked(
        &mut self,
        request: Request,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let again = matches!(request, Request::Home | Request::Today);
        if let (true, State::Stuck(_)) = (again, &self.state) {
            self.close();
        }
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        let plan = matches!(&request, Request::Write(Write { told: Told::Programme { .. }, .. }));
        match self.companion()?.ask(request, moment) {
            Ok(answer) => {
                if plan {
                    self.plan = None;
                }
                Ok(Seen { view: View::Screen(answer.screen), duties: answer.duties })
            }
            Err(trouble) => {
                if trouble == Trouble::OpenAgain {
                    self.close();
                }
                Err(trouble)
            }
        }
    }

    /// What stands in the way of the open diary, which is opened first where it has to be.
    pub(super) fn in_the_way(&mut self, keeper: &dyn KeyKeeper, moment: &Moment) -> Option<Seen> {
        if let State::Shut = self.state {
            self.open(keeper, moment);
        }
        self.screen_of(keeper, moment).map(Seen::whole)
    }

    /// The screen that stands in the way.
    pub(super) fn screen_of(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Option<WholeScreen> {
        Some(match &self.state {
            State::Open(_) | State::Shut => return None,
            State::CodeAsked => {
                let wait = self.tries.wait(moment);
                WholeScreen::Code(CodeScreen::new(&self.words, wait, vec![]))
            }
            State::Stuck(Trouble::NotADiary) => {
                WholeScreen::NoDiary(NoDiaryScreen::new(&self.words))
            }
            State::Stuck(trouble) => {
                WholeScreen::CannotOpen(CannotOpenScreen::new(&self.words, trouble))
            }
            State::Erased => {
                WholeScreen::Erased(ErasedScreen::new(&self.words, self.lock_of(keeper)))
            }
        })
    }

    fn no_diary(&self) -> Seen {
        Seen::whole(WholeScreen::NoDiary(NoDiaryScreen::new(&self.words)))
    }

    /// Opens the diary, or says in the state why not.
    pub(super) fn open(&mut self, keeper: &dyn KeyKeeper, moment: &Moment) {
        // The lock of an earlier opening is given back first.
        self.close();
        let opened = self.with_keeper(keeper, |keeper| {
            Companion::open(&self.ports, &self.folder, keeper, &self.language, moment)
        });
        match opened {
            Ok(companion) => {
                if self.code.is_some() {
                    self.tries.forget(moment);
                }
                self.put(companion, keeper);
            }
            Err(Trouble::CodeAsked) => self.asks_code(),
            // One that was given and is wrong is not tried again.
            Err(Trouble::WrongSecret) if self.code.take().is_some() => self.asks_code(),
            Err(trouble) => self.state = State::Stuck(trouble),
        }
    }

    fn asks_code(&mut self) {
        self.state = State::CodeAsked;
        self.code_for = CodeFor::Diary;
    }

    /// Puts the companion away: the next call opens the diary.
    pub(super) fn close(&mut self) {
        if let State::Open(companion) = std::mem::replace(&mut self.state, State::Shut) {
            self.words = companion.words().clone();
        }
    }

    /// A companion takes the place.
    pub(super) fn put(&mut self, mut companion: Companion, keeper: &dyn KeyKeeper) {
        companion.isolate_values(self.isolation);
        companion.locked_by(self.lock_of(keeper));
        self.words = companion.words().clone();
        self.state = State::Open(Box::new(companion));
    }

    /// What opens the diary every day.
    pub(super) fn lock_of(&self, keeper: &dyn KeyKeeper) -> Lock {
        match keeper.kind() {
            KeeperKind::PhoneKeyStore if self.code.is_some() => Lock::Code,
            KeeperKind::PhoneKeyStore => Lock::Phone,
            KeeperKind::Passphrase | KeeperKind::RecoveryPhrase => Lock::Passphrase,
        }
    }

    /// The open companion.
    pub(super) fn companion(&mut self) -> Result<&mut Companion, Trouble> {
        match &mut self.state {
            State::Open(companion) => Ok(companion),
            _ => Err(Trouble::NotADiary),
        }
    }

    /// With the keeper as it is used here: a phone's with the code around it, any other as it is.
    pub(super) fn with_keeper<T>(
        &self,
        keeper: &dyn KeyKeeper,
        then: impl FnOnce(&dyn KeyKeeper) -> T,
    ) -> T {
        coded(keeper, self.code.as_ref(), self.stretch, then)
    }

    /// Writes the diary anew, which takes the companion and may give it back.
    pub(super) fn anew(
        &mut self,
        keeper: &dyn KeyKeeper,
        under: Under,
        act: impl FnOnce(Companion, &dyn KeyKeeper) -> Result<Option<Companion>, Trouble>,
    ) -> Result<(), Trouble> {
        let State::Open(companion) = std::mem::replace(&mut self.state, State::Shut) else {
            return Err(Trouble::NotADiary);
        };
        self.words = companion.words().clone();
        let before = self.code.take();
        let (code, before) = match under {
            Under::Same => (before, None),
            Under::Code(new) => (new, Some(before)),
        };
        let done = coded(keeper, code.as_ref(), self.stretch, |keeper| act(*companion, keeper));
        match done {
            Ok(companion) => {
                self.code = code;
                match companion {
                    Some(companion) => self.put(companion, keeper),
                    None => self.state = State::Erased,
                }
                Ok(())
            }
            Err(trouble) => {
                self.code = match before {
                    None => code,
                    // Which of the two opens it now, only opening tells: it is asked.
                    Some(_) if trouble == Trouble::OpenAgain => None,
                    Some(before) => before,
                };
                Err(trouble)
            }
        }
    }

    /// What keeps the diary from being written anew by this keeper: it opens, and is not what opens it every day.
    pub(super) fn not_by_phrase(&self, keeper: &dyn KeyKeeper) -> Option<Seen> {
        (keeper.kind() == KeeperKind::RecoveryPhrase).then(|| {
            let mut sorry = SorryScreen::new(self.words(), &Trouble::TryAgain, true);
            sorry.says = vec![self.words().text("page-needs-passphrase", &[])];
            Seen::whole(WholeScreen::Sorry(sorry))
        })
    }
}

fn coded<T>(
    keeper: &dyn KeyKeeper,
    code: Option<&Passphrase>,
    stretch: crate::ports::Stretch,
    then: impl FnOnce(&dyn KeyKeeper) -> T,
) -> T {
    match keeper.kind() {
        KeeperKind::PhoneKeyStore => then(&CodedKeeper::new(keeper, code, stretch)),
        KeeperKind::Passphrase | KeeperKind::RecoveryPhrase => then(keeper),
    }
}
