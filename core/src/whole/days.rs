//! Erasing: what goes and what no erasing can reach is said first, then it is done on a second request.

use chrono::NaiveDate;

use super::stand::Under;
use super::{Holder, Seen};
use crate::companion::{Refusal, Request, Trouble};
use crate::diary::erase::Erase;
use crate::moment::Moment;
use crate::ports::KeyKeeper;
use crate::screens::{Amiss, Done, EraseDaysScreen, FormField, Problem, WholeScreen};

impl Holder {
    /// What erasing would come to.
    pub(super) fn look_erase(
        &mut self,
        request: Request,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        match self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            Some(way) => Ok(way),
            None => self.asked(request, keeper, moment),
        }
    }

    /// Which days?
    pub(super) fn erase_days_form(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        match self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            Some(way) => Ok(way),
            None => Ok(self.which_days("", "", vec![])),
        }
    }

    fn which_days(&self, from: &str, to: &str, problems: Vec<Problem>) -> Seen {
        let form = EraseDaysScreen::new(self.words(), from, to, problems);
        Seen::whole(WholeScreen::EraseDays(form))
    }

    /// What erasing these days would come to, or what has to be put right.
    pub(super) fn look_erase_days(
        &mut self,
        from: &str,
        to: &str,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            return Ok(way);
        }
        let read = |text: &str| text.trim().parse::<NaiveDate>().ok();
        let problem = |field, amiss| Problem::new(self.words(), field, amiss);
        let (first, last) = match (read(from), read(to)) {
            (Some(first), Some(last)) if first <= last => (first, last),
            (Some(_), Some(_)) => {
                let before = problem(FormField::To, Amiss::EndBeforeStart);
                return Ok(self.which_days(from, to, vec![before]));
            }
            (first, last) => {
                let missing = [(first, FormField::From), (last, FormField::To)];
                let missing = missing.into_iter().filter(|(day, _)| day.is_none());
                let missing = missing.map(|(_, field)| problem(field, Amiss::DayMissing));
                let missing = missing.collect();
                return Ok(self.which_days(from, to, missing));
            }
        };
        let what = Erase::Days { from: first, to: last };
        match self.asked(Request::Erase(what), keeper, moment) {
            Err(trouble @ Trouble::PutRight(Refusal::NothingToErase)) => {
                let nothing = Problem::trouble(self.words(), FormField::From, &trouble);
                Ok(self.which_days(from, to, vec![nothing]))
            }
            other => other,
        }
    }

    /// Erases. What was planned is planned anew.
    pub(super) fn erase(
        &mut self,
        what: Erase,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            return Ok(way);
        }
        self.anew(keeper, Under::Same, |companion, keeper| {
            companion.erase(what, keeper, moment).map(Some)
        })?;
        let mut seen = self.done(Done::ErasedSome)?;
        seen.duties.extend(self.companion()?.planned_anew(moment));
        Ok(seen)
    }

    /// Erases everything. Nothing stays planned, and nothing waits any more.
    pub(super) fn erase_all(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment).or_else(|| self.not_by_phrase(keeper)) {
            return Ok(way);
        }
        let nothing = self.companion()?.nothing_planned(moment);
        self.anew(keeper, Under::Same, |companion, keeper| companion.end(keeper).map(|()| None))?;
        self.code = None;
        self.plan = None;
        self.phrase = None;
        self.copy = None;
        self.fresh = false;
        self.tries.remove();
        let mut seen = match self.screen_of(keeper, moment) {
            Some(screen) => Seen::whole(screen),
            None => self.begin(keeper, moment)?,
        };
        seen.duties.extend(nothing);
        Ok(seen)
    }
}
