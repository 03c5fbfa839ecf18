//! Answers the requests that look at single entries, days and months, and those for the forms around them.
//! Nothing here writes.

use chrono::NaiveDate;

use super::{Companion, Refusal, Trouble};
use crate::diary::entry::{Content, EntryId};
use crate::diary::resolve::{resolve, whole};
use crate::moment::Stamp;
use crate::screens::{
    ActivitiesScreen, CalendarScreen, CorrectScreen, EntriesScreen, EntryScreen, FirstRunPage,
    FirstRunScreen, LogSessionScreen, LookForwardScreen, QuestionsScreen, Screen, SettingsScreen,
    SettledScreen, SummaryFormScreen, TimeOffScreen, activity_questions,
};
use crate::summary::Selection;

impl Companion {
    pub(super) fn first_run(&self, page: FirstRunPage, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        let phrase = self.store.card().recovery.is_some();
        Ok(self.show(now, |scene| Screen::FirstRun(FirstRunScreen::new(scene, page, id, phrase))))
    }

    pub(super) fn calendar(
        &self,
        month: Option<(i32, u32)>,
        now: &Stamp,
    ) -> Result<Screen, Trouble> {
        let entries = self.entries()?;
        let counted = resolve(&entries);
        Ok(self.show(now, |scene| Screen::Calendar(CalendarScreen::new(scene, month, &counted))))
    }

    pub(super) fn day(&self, day: NaiveDate, now: &Stamp) -> Result<Screen, Trouble> {
        let entries = self.entries()?;
        let counted = resolve(&entries);
        Ok(self.show(now, |scene| Screen::Entries(EntriesScreen::of_day(scene, &counted, day))))
    }

    pub(super) fn entry(&self, of: EntryId, now: &Stamp) -> Result<Screen, Trouble> {
        let entries = self.entries()?;
        let whole = whole(&entries, of).ok_or(Refusal::NoSuchEntry)?;
        let counted = resolve(&entries);
        Ok(self.show(now, |scene| Screen::Entry(EntryScreen::new(scene, &whole, &counted))))
    }

    pub(super) fn correct(&self, of: EntryId, now: &Stamp) -> Result<Screen, Trouble> {
        let entries = self.entries()?;
        let row = whole(&entries, of).ok_or(Refusal::NoSuchEntry)?.counted;
        let id = self.new_id()?;
        Ok(self.show(now, |scene| match row.content {
            Content::Session(session) if !row.struck => {
                Screen::LogSession(LogSessionScreen::putting_right(scene, id, &row, session))
            }
            _ => Screen::Correct(CorrectScreen::new(scene, id, &row)),
        }))
    }

    pub(super) fn questions(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        let entries = self.entries()?;
        let counted = resolve(&entries);
        Ok(self.show(now, |scene| Screen::Questions(QuestionsScreen::new(scene, id, &counted))))
    }

    pub(super) fn activities(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let questions = activity_questions(self.state.rule().programme());
        let ids = (0..questions).map(|_| self.new_id()).collect::<Result<Vec<_>, _>>()?;
        Ok(self.show(now, |scene| Screen::Activities(ActivitiesScreen::new(scene, &ids))))
    }

    pub(super) fn time_off(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        let entries = self.entries()?;
        let counted = resolve(&entries);
        Ok(self.show(now, |scene| Screen::TimeOff(TimeOffScreen::new(scene, id, &counted))))
    }

    pub(super) fn look_forward(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        Ok(self.show(now, |scene| Screen::LookForward(LookForwardScreen::new(scene, id))))
    }

    pub(super) fn settled(&self, of: EntryId, now: &Stamp) -> Result<Screen, Trouble> {
        let entries = self.entries()?;
        let row = whole(&entries, of).ok_or(Refusal::NoSuchEntry)?.counted;
        if row.struck || !matches!(row.content, Content::Session(_)) {
            return Err(Refusal::NoSession.into());
        }
        let id = self.new_id()?;
        Ok(self.show(now, |scene| Screen::Settled(SettledScreen::new(scene, id, &row))))
    }

    pub(super) fn settings(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let ids = [self.new_id()?, self.new_id()?, self.new_id()?];
        Ok(self.show(now, |scene| Screen::Settings(SettingsScreen::new(scene, ids))))
    }

    pub(super) fn summary_form(
        &self,
        selection: Selection,
        now: &Stamp,
    ) -> Result<Screen, Trouble> {
        if let (Some(from), Some(to)) = (selection.from, selection.to)
            && to < from
        {
            return Err(Refusal::EndBeforeStart.into());
        }
        let summary = self.summary(&selection, now)?;
        Ok(self
            .show(now, |scene| Screen::Summary(SummaryFormScreen::new(scene, &summary, selection))))
    }
}
