//! Answers that need no more than the state: Today, the questions about health, a plan to be accepted.

use super::{Companion, Trouble};
use crate::handover::Handed;
use crate::moment::{Moment, Stamp};
use crate::safety::FullList;
use crate::screens::{
    AcceptScreen, HoldQuestionsScreen, Screen, ScreeningScreen, StepCheckScreen, TodayScreen,
};

impl Companion {
    pub(super) fn today(&self, moment: &Moment) -> Screen {
        self.show(&moment.now, |scene| Screen::Today(TodayScreen::new(scene)))
    }

    pub(super) fn screening(
        &self,
        so_far: &FullList,
        sent: bool,
        now: &Stamp,
    ) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        Ok(self.show(now, |scene| Screen::Screening(ScreeningScreen::new(scene, id, so_far, sent))))
    }

    pub(super) fn hold_questions(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        Ok(self.show(now, |scene| Screen::HoldQuestions(HoldQuestionsScreen::new(scene, id))))
    }

    pub(super) fn accept(&self, handed: Handed, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        Ok(self.show(now, |scene| Screen::Accept(AcceptScreen::new(scene, id, handed))))
    }

    pub(super) fn step_check(&self, now: &Stamp) -> Screen {
        self.show(now, |scene| Screen::StepCheck(StepCheckScreen::new(scene)))
    }
}
