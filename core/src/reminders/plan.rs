//! Which reminders come next (N2 to N9). A pure function; the shell replaces everything it had planned
//! by what comes out.

use std::collections::BTreeSet;

use chrono::{Datelike, Days, NaiveDate, NaiveDateTime, TimeDelta};
use serde::{Deserialize, Serialize};

use super::local::{Zone, instant};
use super::settings::{Reminder, ReminderSettings, SnoozeMinutes};
use crate::moment::{Moment, Stamp};
use crate::programme::plan::{Programme, Schedule};
use crate::programme::values::{Practice, StepId};
use crate::words::Words;

/// The most instants planned at once: what the more frugal of the phones' systems keeps, with room.
pub const MOST: usize = 50;

/// How far ahead is looked, in days, when there is little to find.
const HORIZON_DAYS: usize = 400;

/// A session that was practised.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DoneSession {
    /// Of which practice.
    pub practice: Practice,
    /// When it began.
    pub happened: Stamp,
}

crate::diary::entry::opaque!(DoneSession);

/// What is silent because something is open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Silence {
    /// Nothing.
    #[default]
    Nothing,
    /// The practices of the steps: a pause stands, or a sign to stop for is open.
    Steps,
    /// Everything: nothing may continue.
    Everything,
}

/// What reminders depend on besides the settings.
#[derive(Clone, Copy, Default)]
pub struct Facts<'a> {
    /// The plan, if there is one.
    pub plan: Option<&'a Programme>,
    /// The step used now.
    pub step: Option<&'a StepId>,
    /// Sessions practised; those of the present and the last weeks are enough.
    pub done: &'a [DoneSession],
    /// Time off, both ends included.
    pub time_off: &'a [(NaiveDate, NaiveDate)],
    /// What is silent.
    pub silence: Silence,
    /// Reminders that were put off, by the instant they come again.
    pub snoozed: &'a [Stamp],
}

/// Duty: these reminders are to be shown, in these words, and no others. Nothing in it tells what for.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PlanReminders {
    /// The reminders, in order. Empty: remember nothing.
    pub reminders: Vec<PlannedReminder>,
    /// What each says.
    pub words: String,
    /// By how much a reminder is put off where it is shown, without the diary.
    pub put_off: SnoozeMinutes,
}

/// One reminder, as lived in the zone of the moment. A phone that sleeps may come late with it; so it
/// says until when it may still be shown, or come again (N7, N13), and a shell needs no rule of its own.
#[derive(Clone, Copy, PartialEq, Eq, Serialize)]
pub struct PlannedReminder {
    /// When it comes.
    pub at: Stamp,
    /// From here on it is neither shown nor put off: the day is over, or its quiet hours begin.
    pub until: Stamp,
}

crate::diary::entry::opaque!(PlanReminders, PlannedReminder);

impl PlanReminders {
    /// When they come, in order.
    #[must_use]
    pub fn at(&self) -> Vec<Stamp> {
        self.reminders.iter().map(|one| one.at).collect()
    }
}

/// The next reminders: at most `count`, and never more than [`MOST`].
#[must_use]
pub fn plan(
    settings: &ReminderSettings,
    facts: &Facts<'_>,
    moment: &Moment,
    count: usize,
    words: &Words,
) -> PlanReminders {
    let at = if settings.on { next(settings, facts, moment, count.min(MOST)) } else { Vec::new() };
    let zone = Zone::of(&moment.now);
    let planned = |at| Some(PlannedReminder { at, until: until(settings, zone, &at)? });
    PlanReminders {
        reminders: at.into_iter().filter_map(planned).collect(),
        words: words.text(settings.words.word_id(), &[]),
        put_off: SnoozeMinutes::USUAL,
    }
}

/// The end of the reminder's day, or the beginning of its quiet hours, whichever comes first.
fn until(settings: &ReminderSettings, zone: Zone, at: &Stamp) -> Option<Stamp> {
    let (day, time) = (at.day(), at.local().time());
    let quiet = settings.quiet.map(|quiet| quiet.from().get()).filter(|from| *from > time);
    let end = day.checked_add_days(Days::new(1))?.and_time(chrono::NaiveTime::MIN);
    let end = quiet.map_or(end, |from| day.and_time(from));
    zone.stamp(instant(zone, end)?).ok()
}

/// When a reminder that is put off comes again; `None` if that is not today any more, or is quiet.
#[must_use]
pub fn snooze(
    settings: &ReminderSettings,
    moment: &Moment,
    minutes: SnoozeMinutes,
) -> Option<Stamp> {
    let zone = Zone::of(&moment.now);
    let again = moment.now.instant() + TimeDelta::minutes(i64::from(minutes.get()));
    let again = zone.stamp(again).ok()?;
    let quiet = settings.quiet.is_some_and(|quiet| quiet.has(again.local().time()));
    (settings.on && !quiet && again.day() == moment.now.day()).then_some(again)
}

fn next(
    settings: &ReminderSettings,
    facts: &Facts<'_>,
    moment: &Moment,
    count: usize,
) -> Vec<Stamp> {
    let zone = Zone::of(&moment.now);
    let ahead = |stamp: &Stamp| stamp.millis() > moment.now.millis();
    let heard = |stamp: &Stamp| {
        let off = facts.time_off.iter().any(|(from, to)| (*from..=*to).contains(&stamp.day()));
        let quiet = settings.quiet.is_some_and(|quiet| quiet.has(stamp.local().time()));
        ahead(stamp) && !off && !quiet
    };
    let mut found: BTreeSet<i64> = BTreeSet::new();
    if facts.silence != Silence::Everything {
        found.extend(facts.snoozed.iter().filter(|s| heard(s)).map(Stamp::millis));
    }
    let reminders: Vec<(&Reminder, Option<Schedule>)> = settings
        .reminders
        .get()
        .iter()
        .filter_map(|reminder| facts.schedule(&reminder.practice).map(|one| (reminder, one)))
        .collect();
    // A local time of yesterday can come today, where a gap swallowed midnight, and a day at most lies between. For the
    // same reason one day more is looked at once there are enough.
    let mut enough = false;
    let first = moment.now.day() - Days::new(1);
    for day in first.iter_days().take(HORIZON_DAYS) {
        if reminders.is_empty() || enough {
            break;
        }
        enough = found.len() >= count;
        for (reminder, schedule) in &reminders {
            if !reminder.when.days().has(day.weekday()) {
                continue;
            }
            for time in reminder.when.times() {
                let local = day.and_time(time.get());
                let stamp = instant(zone, local).and_then(|at| zone.stamp(at).ok());
                if let Some(stamp) = stamp
                    && heard(&stamp)
                    && !facts.leaves_out(settings, reminder, *schedule, local)
                {
                    found.insert(stamp.millis());
                }
            }
        }
    }
    let stamp = |millis: i64| {
        let at = chrono::DateTime::from_timestamp_millis(millis)?;
        zone.stamp(at).ok()
    };
    found.into_iter().take(count).filter_map(stamp).collect()
}

impl Facts<'_> {
    /// The schedule to go by, `Some(None)` where there is none to go by, `None` where nothing is to be
    /// remembered: a practice the plan does not have, or one that is silent.
    #[allow(clippy::option_option, reason = "three answers, each said above")]
    fn schedule(&self, practice: &Practice) -> Option<Option<Schedule>> {
        let Some(plan) = self.plan else {
            let silent = self.silence == Silence::Everything || *practice == Practice::Trainer;
            return (!silent).then_some(None);
        };
        let of_steps = plan.steps.iter().any(|step| step.practice == *practice);
        if self.silence == Silence::Everything || (self.silence == Silence::Steps && of_steps) {
            return None;
        }
        let step = self.step.and_then(|id| plan.step(id)).filter(|one| one.practice == *practice);
        let own = plan.practices.iter().find(|own| own.practice == *practice);
        match (step, own) {
            (Some(step), _) => Some(Some(step.schedule)),
            (None, Some(own)) => Some(Some(own.schedule)),
            (None, None) => of_steps.then_some(None),
        }
    }

    /// Whether a practice is to be remembered at all.
    pub(super) fn remembers(&self, practice: &Practice) -> bool {
        self.schedule(practice).is_some()
    }

    /// Whether what was practised makes this reminder needless.
    fn leaves_out(
        &self,
        settings: &ReminderSettings,
        reminder: &Reminder,
        schedule: Option<Schedule>,
        local: NaiveDateTime,
    ) -> bool {
        let day = local.date();
        let done: Vec<NaiveDateTime> = self
            .done
            .iter()
            .filter(|one| one.practice == reminder.practice)
            .map(|one| one.happened.local().naive_local())
            .collect();
        let today = || done.iter().filter(|at| at.date() == day);
        if reminder.skip_when_done {
            let slots = slots(settings, &reminder.practice, day);
            if today().any(|at| nearest(&slots, *at) == Some(local)) {
                return true;
            }
        }
        let Some(schedule) = schedule else { return false };
        let enough_today = today().count() >= usize::from(schedule.daily_most.get());
        let monday = day - Days::new(u64::from(day.weekday().num_days_from_monday()));
        let others: BTreeSet<NaiveDate> =
            done.iter().map(|at| at.date()).filter(|at| (monday..day).contains(at)).collect();
        let enough_this_week = others.len() >= usize::from(schedule.weekly_most.get());
        let last = done.iter().map(|at| at.date()).filter(|at| *at < day).max();
        let resting = schedule
            .rest_days
            .zip(last)
            .is_some_and(|(rest, last)| (day - last).num_days() <= i64::from(rest.get()));
        enough_today || enough_this_week || resting
    }
}

/// The local times of a day at which a practice is remembered, in order.
fn slots(
    settings: &ReminderSettings,
    practice: &Practice,
    day: NaiveDate,
) -> BTreeSet<NaiveDateTime> {
    let here = |one: &&Reminder| one.practice == *practice && one.when.days().has(day.weekday());
    let times = settings.reminders.get().iter().filter(here).flat_map(|one| one.when.times());
    times.map(|time| day.and_time(time.get())).collect()
}

/// The time nearest to a session; of two equally near ones the earlier.
fn nearest(slots: &BTreeSet<NaiveDateTime>, at: NaiveDateTime) -> Option<NaiveDateTime> {
    slots.iter().copied().min_by_key(|slot| (*slot - at).abs())
}
