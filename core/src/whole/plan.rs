//! A plan that was handed over waits here until it was read in full and answered: "is this yours?". It may come
//! before a diary is open; it then waits for that, too.

use super::{Holder, Seen, View};
use crate::companion::{Request, Trouble};
use crate::handover::{Handed, LINK_MOST};
use crate::moment::Moment;
use crate::ports::KeyKeeper;
use crate::screens::{AddPlanScreen, Amiss, Done, FormField, Lock, Problem, Screen, WholeScreen};

impl Holder {
    /// What waits is shown; otherwise a file or a link is asked for.
    pub(super) fn add_plan_form(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        if self.plan.is_some() {
            return self.accept_waiting(moment);
        }
        Ok(self.ask_plan(self.lock_of(keeper), "", vec![]))
    }

    /// Asks for a file or a link. A text that is no link can be of any length; it is not sent back.
    fn ask_plan(&self, lock: Lock, link: &str, problems: Vec<Problem>) -> Seen {
        let link = if link.len() <= 2 * LINK_MOST { link } else { "" };
        let form = AddPlanScreen::new(self.words(), lock, link, problems);
        Seen::whole(WholeScreen::AddPlan(form))
    }

    /// A plan that came as a file.
    pub(super) fn plan_file(
        &mut self,
        bytes: Vec<u8>,
        words: &str,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if bytes.is_empty() {
            return self.plan_missing(FormField::File, Amiss::FileMissing, keeper, moment);
        }
        self.plan_handed(Handed::file(bytes, words), keeper, moment)
    }

    /// A plan that came as a link.
    pub(super) fn plan_link(
        &mut self,
        link: &str,
        words: &str,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let link = link.trim();
        if link.is_empty() {
            return self.plan_missing(FormField::Link, Amiss::LinkMissing, keeper, moment);
        }
        let handed = Handed::Link { link: link.into(), words: words.into() };
        self.plan_handed(handed, keeper, moment)
    }

    fn plan_missing(
        &mut self,
        field: FormField,
        amiss: Amiss,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        let missing = Problem::new(self.words(), field, amiss);
        Ok(self.ask_plan(self.lock_of(keeper), "", vec![missing]))
    }

    fn plan_handed(
        &mut self,
        handed: Handed,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.plan = Some(handed);
        match self.in_the_way(keeper, moment) {
            Some(way) => Ok(way),
            None => self.accept_waiting(moment),
        }
    }

    /// The plan that waits, to be read; what cannot be used is put away again, with what is wrong.
    pub(super) fn accept_waiting(&mut self, moment: &Moment) -> Result<Seen, Trouble> {
        let Some(handed) = self.plan.clone() else { return Err(Trouble::TryAgain) };
        let answer = self.companion()?.ask(Request::Accept(handed.clone()), moment)?;
        if let Screen::Accept(screen) = &answer.screen {
            if let Some(refused) = &screen.refused {
                self.plan = None;
                let (field, link) = match &handed {
                    Handed::Link { link, .. } if screen.asks_words => {
                        (FormField::SpokenWords, &**link)
                    }
                    Handed::Link { link, .. } => (FormField::Link, &**link),
                    Handed::File(_) => (FormField::File, ""),
                };
                let problem = Problem { field, says: refused.clone() };
                let lock = self.companion()?.lock();
                return Ok(self.ask_plan(lock, link, vec![problem]));
            }
            if screen.handed.is_none() {
                // It is in use already: nothing waits.
                self.plan = None;
            }
        }
        Ok(Seen { view: View::Screen(answer.screen), duties: answer.duties })
    }

    /// It is not hers: it is put away, and nothing was kept.
    pub(super) fn plan_not_mine(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.plan = None;
        match self.in_the_way(keeper, moment) {
            Some(way) => Ok(way),
            None => self.done(Done::NotMine),
        }
    }
}
