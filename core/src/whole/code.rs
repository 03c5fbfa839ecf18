//! The app's own code: given, chosen, changed, taken away. How often it may be tried is [`super::tries`]'s.
//!
//! A code that is chosen or taken away puts the diary under new keys: the backups on the device carry wraps
//! too, and one made before would go on opening without the code.

use super::stand::Under;
use super::{CodeFor, Holder, Seen, State};
use crate::companion::{Recovery, Request, Trouble};
use crate::moment::Moment;
use crate::ports::{KeeperKind, KeyKeeper, Passphrase};
use crate::screens::{
    Amiss, CodeScreen, Done, DoneScreen, FormField, Problem, SetCodeScreen, WholeScreen,
};

/// The least length of a code, in characters: what NIST SP 800-63B-4, section 3.2.10, asks of a secret that is
/// used on one device only. It recommends six.
pub(super) const LEAST: u8 = 4;

impl Holder {
    /// The code is given. It is counted as a wrong try before it is looked at.
    pub(super) fn give_code(
        &mut self,
        code: String,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let code = Passphrase::new(code);
        // It may be the first thing that is asked of this process.
        let _opened = self.in_the_way(keeper, moment);
        if self.code_for == CodeFor::Form && matches!(self.state, State::Open(_)) {
            return self.prove(code.ok(), keeper, moment);
        }
        let backup = self.code_for == CodeFor::Backup && matches!(self.state, State::Stuck(_));
        if !backup && !matches!(self.state, State::CodeAsked) {
            return self.begin(keeper, moment);
        }
        if self.tries.wait(moment) > 0 {
            return Ok(self.code_asked(moment, vec![]));
        }
        let Ok(code) = code else {
            let missing = Problem::new(&self.words, FormField::Code, Amiss::CodeMissing);
            return Ok(self.code_asked(moment, vec![missing]));
        };
        self.tries.count(moment);
        self.code = Some(code);
        if backup {
            return self.look_into_backup(keeper, moment);
        }
        self.open(keeper, moment);
        match &self.state {
            State::CodeAsked => Ok(self.code_wrong(moment)),
            _ => self.begin(keeper, moment),
        }
    }

    /// Another code takes the place of the one in use only from somebody who knows that: whoever was handed the
    /// open phone cannot shut its owner out.
    fn prove(
        &mut self,
        given: Option<Passphrase>,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if self.tries.wait(moment) > 0 {
            return Ok(self.code_asked(moment, vec![]));
        }
        let Some(given) = given else {
            let missing = Problem::new(&self.words, FormField::Code, Amiss::CodeMissing);
            return Ok(self.code_asked(moment, vec![missing]));
        };
        if !self.is_code(&given) {
            self.tries.count(moment);
            return Ok(self.code_wrong(moment));
        }
        self.tries.forget(moment);
        self.code_for = CodeFor::Diary;
        self.proved = true;
        self.code_form(keeper, moment)
    }

    fn is_code(&self, given: &Passphrase) -> bool {
        self.code.as_ref().is_some_and(|code| code.expose() == given.expose())
    }

    /// The code is asked for, with what is left of a wait.
    pub(super) fn code_asked(&mut self, moment: &Moment, problems: Vec<Problem>) -> Seen {
        let wait = self.tries.wait(moment);
        Seen::whole(WholeScreen::Code(CodeScreen::new(&self.words, wait, problems)))
    }

    /// The code that was given is another one.
    pub(super) fn code_wrong(&mut self, moment: &Moment) -> Seen {
        let wrong = Problem::new(&self.words, FormField::Code, Amiss::CodeWrong);
        self.code_asked(moment, vec![wrong])
    }

    /// The form for the code. A surface without a phone's key store has a passphrase instead.
    pub(super) fn code_form(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.code_form_with(vec![], keeper, moment)
    }

    fn code_form_with(
        &mut self,
        problems: Vec<Problem>,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        if keeper.kind() != KeeperKind::PhoneKeyStore {
            return self.asked(Request::Keeping, keeper, moment);
        }
        let (coded, wait) = (self.code.is_some(), self.tries.wait(moment));
        if coded && !self.proved {
            self.code_for = CodeFor::Form;
            return Ok(self.code_asked(moment, vec![]));
        }
        let phrase = self.companion()?.has_phrase();
        let form = SetCodeScreen::new(self.words(), coded, phrase, wait, problems);
        Ok(Seen::whole(WholeScreen::SetCode(form)))
    }

    /// Another code, or the first.
    pub(super) fn set_code(
        &mut self,
        new: String,
        again: String,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let (new, again) = (Passphrase::new(new).ok(), Passphrase::new(again).ok());
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        if self.code.is_some() && !self.proved {
            return self.code_form(keeper, moment);
        }
        let typed =
            |own: &Option<Passphrase>| own.as_ref().map_or(0, |own| own.expose().chars().count());
        let wrong = |words, field, amiss| Problem::new(words, field, amiss);
        let problem = match (&new, &again) {
            (None, _) => Some(wrong(self.words(), FormField::New, Amiss::CodeMissing)),
            _ if typed(&new) < usize::from(LEAST) => {
                let short = Amiss::CodeTooShort { least: LEAST };
                Some(wrong(self.words(), FormField::New, short))
            }
            (Some(new), Some(again)) if new.expose() == again.expose() => None,
            _ => Some(wrong(self.words(), FormField::Again, Amiss::CodesDiffer)),
        };
        if problem.is_some() || keeper.kind() != KeeperKind::PhoneKeyStore {
            return self.code_form_with(problem.into_iter().collect(), keeper, moment);
        }
        self.tries.prepare(moment);
        self.proved = false;
        self.under(new, keeper, moment)?;
        self.done(Done::CodeSet)
    }

    /// No code from now on. Whoever takes it away has to know it, and wrong ones count.
    pub(super) fn remove_code(
        &mut self,
        code: String,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let given = Passphrase::new(code).ok();
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        if self.code.is_none() || self.tries.wait(moment) > 0 {
            return self.code_form(keeper, moment);
        }
        let Some(given) = given else {
            let missing = Problem::new(self.words(), FormField::Code, Amiss::CodeMissing);
            return self.code_form_with(vec![missing], keeper, moment);
        };
        if !self.is_code(&given) {
            self.tries.count(moment);
            let wrong = Problem::new(self.words(), FormField::Code, Amiss::CodeWrong);
            return self.code_form_with(vec![wrong], keeper, moment);
        }
        self.proved = false;
        self.under(None, keeper, moment)?;
        self.tries.remove();
        self.done(Done::CodeRemoved)
    }

    /// Puts the diary under new keys that open with this code; with none where there is none.
    fn under(
        &mut self,
        code: Option<Passphrase>,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<(), Trouble> {
        self.anew(keeper, Under::Code(code), |companion, keeper| {
            companion.new_keys(keeper, Recovery::Keep, moment).map(Some)
        })
    }

    pub(super) fn done(&self, done: Done) -> Result<Seen, Trouble> {
        Ok(Seen::whole(WholeScreen::Done(DoneScreen::new(self.words(), done))))
    }
}
