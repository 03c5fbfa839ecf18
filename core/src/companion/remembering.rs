//! Reminders at the door: a change of what is set, what shells are to remember, and the calendar file.
//! Which instants those are is [`crate::reminders`]'s.

use super::{Companion, Duty, Trouble};
use crate::moment::Moment;
use crate::programme::values::ValueError;
use crate::progression::OutcomeKind;
use crate::reminders::{
    CalendarFile, Facts, MOST, NeutralWords, PlanReminders, QuietHours, Reminder, ReminderList,
    ReminderSettings, Silence, calendar, plan,
};
use crate::safety::Tier;
use crate::screens::{RemindersScreen, Screen};

/// A change of what is set about reminders.
#[derive(Clone)]
pub enum ReminderChange {
    /// Turned on or off.
    On(bool),
    /// Another one.
    Add(Reminder),
    /// One taken away.
    Remove(Reminder),
    /// Quiet hours, or none.
    Quiet(Option<QuietHours>),
    /// What a reminder says.
    Words(NeutralWords),
}

impl ReminderChange {
    /// What is set after the change.
    pub(super) fn upon(self, mut set: ReminderSettings) -> Result<ReminderSettings, ValueError> {
        match self {
            Self::On(on) => set.on = on,
            Self::Add(reminder) => {
                let mut all: Vec<Reminder> = set.reminders.into();
                if !all.contains(&reminder) {
                    all.push(reminder);
                }
                set.reminders = ReminderList::try_from(all)?;
            }
            Self::Remove(reminder) => {
                let mut all: Vec<Reminder> = set.reminders.into();
                all.retain(|one| *one != reminder);
                set.reminders = ReminderList::try_from(all)?;
            }
            Self::Quiet(quiet) => set.quiet = quiet,
            Self::Words(words) => set.words = words,
        }
        Ok(set)
    }
}

impl Companion {
    /// What is set; before anything was, off, under a new key.
    pub(super) fn reminders_set(&self) -> Result<ReminderSettings, Trouble> {
        match self.state.reminders() {
            Some(set) => Ok(set),
            None => Ok(ReminderSettings::off(self.new_id()?)),
        }
    }

    pub(super) fn reminders(&self, moment: &Moment) -> Result<Screen, Trouble> {
        let (id, set) = (self.new_id()?, self.reminders_set()?);
        let coming = self.coming(&set, moment);
        Ok(self.show(&moment.now, |scene| {
            Screen::Reminders(RemindersScreen::new(scene, id, &set, &coming))
        }))
    }

    /// The duty to remember, where anything was ever set: it replaces all that was planned before.
    pub(super) fn reminders_duty(&self, moment: &Moment) -> Option<Duty> {
        let set = self.state.reminders()?;
        Some(Duty::PlanReminders(self.coming(&set, moment)))
    }

    /// The duty to remember, in place of whatever another diary or an earlier state had planned.
    pub(crate) fn planned_anew(&self, moment: &Moment) -> Option<Duty> {
        self.reminders_duty(moment).or_else(|| self.nothing_planned(moment))
    }

    /// The duty to remember nothing.
    pub(crate) fn nothing_planned(&self, moment: &Moment) -> Option<Duty> {
        let off = ReminderSettings::off(self.new_id().ok()?);
        Some(Duty::PlanReminders(self.coming(&off, moment)))
    }

    fn coming(&self, set: &ReminderSettings, moment: &Moment) -> PlanReminders {
        self.with_facts(moment, |facts| plan(set, facts, moment, MOST, &self.words))
    }

    /// The calendar file, where there is anything to put into it.
    pub(super) fn calendar_file(&self, moment: &Moment) -> Result<Option<CalendarFile>, Trouble> {
        let set = self.reminders_set()?;
        Ok(self.with_facts(moment, |facts| calendar(&set, facts, moment, &self.words)))
    }

    fn with_facts<T>(&self, moment: &Moment, then: impl FnOnce(&Facts<'_>) -> T) -> T {
        let rule = self.state.rule();
        let assessment = rule.assess(&moment.now);
        let off: Vec<_> = rule.time_off().map(|off| (off.from, off.to)).collect();
        let emergency = assessment.open_signs.iter().any(|sign| sign.tier == Tier::Emergency);
        let silence = match assessment.outcome.kind() {
            _ if emergency => Silence::Everything,
            OutcomeKind::PauseAndCall => Silence::Steps,
            _ => Silence::Nothing,
        };
        let put_off = self.state.put_off();
        then(&Facts {
            plan: rule.programme(),
            step: rule.step().map(|step| &step.id),
            done: self.state.recent(),
            time_off: &off,
            silence,
            snoozed: put_off.as_slice(),
        })
    }
}
