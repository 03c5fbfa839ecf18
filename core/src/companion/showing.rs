//! Answers that need no more than the state: Today, the questions about health, a plan to be accepted.

use super::{Companion, Trouble};
use crate::diary::state::State;
use crate::handover::Handed;
use crate::moment::{Moment, Stamp};
use crate::safety::{Asked, FullList, Revision, Screening, Why};
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

/// Why the whole list of cautions is due now, if it is: at a plan's acceptance, at a new revision, after
/// a gap, and every so many days. Both numbers are the clinician's.
pub(crate) fn screening_due(state: &State, now: &Stamp) -> Option<Why> {
    let plan = state.rule().programme()?;
    let days_since = |then: &Stamp| {
        let days = now.day().signed_duration_since(then.day()).num_days();
        u32::try_from(days.max(0)).unwrap_or(u32::MAX)
    };
    let under = state.screened().and_then(|asked| asked.under.as_ref());
    let asked = state.screened().map(|asked| Asked {
        accepted: under.map(|(programme, number)| Revision { programme, number: *number }),
        days_ago: days_since(&asked.at),
    });
    let newest = state.recent().iter().max_by_key(|one| one.happened.millis());
    Screening {
        accepted: Some(Revision { programme: plan.id.as_str(), number: plan.revision.get() }),
        asked,
        days_since_session: newest.map(|one| days_since(&one.happened)),
        gap_days: gap_days(state),
        every_days: Some(u32::from(plan.screening_every_days.get())),
    }
    .due()
}

/// The clinician's length of a gap, in the rule in force on the present step.
fn gap_days(state: &State) -> Option<u32> {
    let plan = state.rule().programme()?;
    let rule = plan.rule_on(state.rule().step()?)?;
    rule.after_gap_days.map(|days| u32::from(days.get()))
}
