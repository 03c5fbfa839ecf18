//! The twelve words: made, checked against the paper, and opening the diary when nothing else does.

use super::stand::Under;
use super::{Holder, Seen, State};
use crate::companion::{Companion, Recovery, Request, Trouble};
use crate::moment::Moment;
use crate::ports::KeyKeeper;
use crate::screens::{
    Amiss, Done, FormField, Lock, OpenByPhraseScreen, PhraseCheckScreen, PhraseScreen, Problem,
    WholeScreen,
};
use crate::sealing::{RecoveryKeeper, RecoveryPhrase};
use zeroize::Zeroizing;

/// The words asked from the paper, counted from 1.
const ASKED: [u8; 2] = [3, 9];

impl Holder {
    /// Twelve new words; they open nothing until two of them were found again on the paper.
    pub(super) fn new_phrase(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            return Ok(way);
        }
        let phrase = RecoveryPhrase::new(self.ports.random.as_ref())?;
        let screen = PhraseScreen::new(self.words(), self.lock_of(keeper), &phrase);
        self.phrase = Some(phrase);
        Ok(Seen::whole(WholeScreen::Phrase(screen)))
    }

    /// The form that asks for two of them.
    pub(super) fn phrase_written(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        if self.phrase.is_none() {
            // After a restart there is nothing left to check.
            return self.asked(Request::Keeping, keeper, moment);
        }
        Ok(self.ask_words(vec![]))
    }

    fn ask_words(&self, problems: Vec<Problem>) -> Seen {
        let form = PhraseCheckScreen::new(self.words(), &ASKED, problems);
        Seen::whole(WholeScreen::PhraseCheck(form))
    }

    /// Where the asked words are right, the twelve open the diary from now on, and no others.
    pub(super) fn check_phrase(
        &mut self,
        typed: Vec<String>,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let typed: Vec<Zeroizing<String>> = typed.into_iter().map(Zeroizing::new).collect();
        if let Some(way) = self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            return Ok(way);
        }
        let Some(phrase) = self.phrase.take() else {
            // Sent again after it was done.
            return self.asked(Request::Keeping, keeper, moment);
        };
        let wrong = ASKED.into_iter().enumerate().filter(|(at, place)| {
            let typed = typed.get(*at).map(|word| Zeroizing::new(word.trim().to_lowercase()));
            typed.as_ref().map(|word| word.as_str())
                != phrase.words().nth(usize::from(*place).saturating_sub(1))
        });
        let problem =
            |place| Problem::new(self.words(), FormField::Word { place }, Amiss::OtherWord);
        let problems: Vec<Problem> = wrong.map(|(_, place)| problem(place)).collect();
        if !problems.is_empty() {
            self.phrase = Some(phrase);
            return Ok(self.ask_words(problems));
        }
        let done = self.anew(keeper, Under::Same, |companion, keeper| {
            companion.new_keys(keeper, Recovery::By(&phrase), moment).map(Some)
        });
        if let Err(trouble) = done {
            // What is on the paper stays worth checking again.
            self.phrase = Some(phrase);
            return Err(trouble);
        }
        self.done(Done::PhraseKept)
    }

    /// The form for opening with the twelve words; an open diary needs none.
    pub(super) fn open_by_phrase_form(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if self.in_the_way(keeper, moment).is_none() {
            return self.begin(keeper, moment);
        }
        Ok(self.ask_phrase(self.lock_of(keeper), vec![]))
    }

    fn ask_phrase(&self, lock: Lock, problems: Vec<Problem>) -> Seen {
        let form = OpenByPhraseScreen::new(&self.words, lock, problems);
        Seen::whole(WholeScreen::OpenByPhrase(form))
    }

    /// Opens with the twelve words; from then on the keeper opens it, without a code.
    pub(super) fn open_by_phrase(
        &mut self,
        phrase: String,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let phrase = Zeroizing::new(phrase);
        if self.in_the_way(keeper, moment).is_none() {
            return self.begin(keeper, moment);
        }
        if let Some(way) = self.not_by_phrase(keeper) {
            return Ok(way);
        }
        let lock = self.lock_of(keeper);
        let Ok(phrase) = RecoveryPhrase::parse(&phrase) else {
            let none = Problem::new(&self.words, FormField::Phrase, Amiss::NotAPhrase);
            return Ok(self.ask_phrase(lock, vec![none]));
        };
        self.close();
        let by_phrase = RecoveryKeeper::new(phrase);
        let opened = Companion::open(&self.ports, &self.folder, &by_phrase, &self.language, moment);
        match opened {
            Ok(companion) => self.state = State::Open(Box::new(companion)),
            Err(Trouble::WrongSecret) => {
                let other = Problem::new(&self.words, FormField::Phrase, Amiss::OtherPhrase);
                return Ok(self.ask_phrase(lock, vec![other]));
            }
            Err(trouble) => {
                let other = Problem::trouble(&self.words, FormField::Phrase, &trouble);
                return Ok(self.ask_phrase(lock, vec![other]));
            }
        }
        self.anew(keeper, Under::Code(None), |companion, keeper| {
            companion.new_keys(keeper, Recovery::Keep, moment).map(Some)
        })?;
        self.tries.remove();
        let mut seen = self.done(match lock {
            Lock::Passphrase => Done::PassphraseOpens,
            Lock::Phone | Lock::Code => Done::OpenedByPhrase,
        })?;
        seen.duties.extend(self.companion()?.planned_anew(moment));
        Ok(seen)
    }
}
