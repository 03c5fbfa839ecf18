//! Today: what the plan asks today, and the one next thing to do.
//!
//! Decides what is said today. Nothing counts what was not done; when the most for a day is reached it is
//! said kindly, and breathing alone is always enough.

use chrono::{Datelike, Days, NaiveDate};
use serde::Serialize;

use super::{Action, Begin, Does, Scene, Welcome, plain};
use crate::message_id;
use crate::programme::plan::{PracticePlan, Programme, Step};
use crate::programme::values::Practice;
use crate::progression::Basis;
use crate::reminders::{When, after_line};
use crate::safety::{BreathCaution, CareNote};

/// What today asks.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct TodayScreen {
    /// Heading.
    pub title: String,
    /// The day.
    pub date: String,
    /// "Welcome back", after a while without entries.
    pub welcome: Option<Welcome>,
    /// What must be known or answered first, most important first.
    pub notices: Vec<Notice>,
    /// The present step, unless the plan has none or a pause stands.
    pub step: Option<StepCard>,
    /// The other practices.
    pub practices: Vec<PracticeCard>,
    /// Practices tied to something of the person's own day: "After my tea: slow breathing".
    pub routines: Vec<String>,
    /// "Today, breathing alone is enough", or what may go on while trainers are paused; not where nothing may.
    pub enough: Option<String>,
    /// Something to look forward to, in the person's own words; not while she has to speak with someone first.
    pub look_forward: Option<String>,
    /// The usual cautions, always shown.
    pub cautions: Vec<String>,
    /// The next thing to do.
    pub next: Action,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// Something to know or to answer.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Notice {
    /// In words.
    pub text: String,
    /// What to do about it.
    pub action: Option<Action>,
}

/// The present step.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct StepCard {
    /// Its name.
    pub name: String,
    /// What is used and for how long, part by part.
    pub parts: Vec<String>,
    /// Position.
    pub position: String,
    /// In the clinician's words.
    pub instruction: String,
    /// How often the plan asks for it.
    pub schedule: String,
    /// What was done today and this week.
    pub done: Vec<String>,
    /// Nothing more of it is asked today: the most for a day was done, or it is a day of rest.
    pub enough: bool,
    /// Sizes and counts stay folded until opened.
    pub folded: bool,
}

/// Another practice.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PracticeCard {
    /// Its name.
    pub name: String,
    /// For how long.
    pub minutes: String,
    /// In the clinician's words.
    pub instruction: String,
    /// How often the plan asks for it.
    pub schedule: String,
    /// What was done today and this week.
    pub done: Vec<String>,
}

impl TodayScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let today = Today { scene, programme: scene.state.rule().programme() };
        let paused = scene.paused();
        let step = if paused { None } else { today.step_card() };
        let notices = today.notices(paused);
        Self {
            title: scene.words.text("today-title", &[]),
            date: plain::date(scene.words, scene.now.day()),
            welcome: Welcome::back(scene),
            next: today.next(&notices, step.as_ref()),
            notices,
            practices: today.practices(),
            routines: today.routines(),
            enough: (!scene.nothing_continues()).then(|| scene.enough()),
            look_forward: scene
                .state
                .look_forward()
                .filter(|_| !paused)
                .map(|to| scene.words.text("today-look-forward", &[("what", to.into())])),
            cautions: today.cautions(step.is_some()),
            actions: today.actions(paused),
            step,
        }
    }
}

struct Today<'a> {
    scene: &'a Scene<'a>,
    programme: Option<&'a Programme>,
}

impl Today<'_> {
    fn say(&self, id: &str) -> String {
        self.scene.words.text(id, &[])
    }

    fn current(&self) -> Option<&Step> {
        self.scene.state.rule().step()
    }

    fn notices(&self, paused: bool) -> Vec<Notice> {
        let words = self.scene.words;
        let mut notices = Vec::new();
        let mut note = |text: String, action: Option<Action>| notices.push(Notice { text, action });
        let act = |id: &'static str, does| Some(Action::new(words.text(id, &[]), does));
        // In an emergency nothing else is said; everything else is still there once it is cleared.
        if self.scene.nothing_continues() {
            note(
                words.text("today-nothing-now", &[]),
                act(message_id!("action-stop-and-call"), Does::StopAndCall),
            );
            return notices;
        }
        if self.scene.store.read_only {
            note(words.text("today-read-only", &[]), None);
        }
        if self.scene.store.missing > 0 {
            let missing = plain::whole(i64::try_from(self.scene.store.missing).unwrap_or(i64::MAX));
            let action = act(message_id!("action-keeping"), Does::Keeping);
            note(words.text("today-missing", &[("count", missing)]), action);
        }
        if self.scene.store.set_back {
            let action = act(message_id!("action-keeping"), Does::Keeping);
            note(words.text("today-set-back", &[]), action);
        }
        if self.scene.store.no_backup {
            let action = act(message_id!("action-keeping"), Does::Keeping);
            note(words.text("today-no-backup", &[]), action);
        }
        if paused {
            note(
                words.text("today-paused", &[]),
                act(message_id!("action-stop-and-call"), Does::StopAndCall),
            );
        }
        if self.scene.practice_waits {
            note(
                words.text("today-practice-waits", &[]),
                act(message_id!("action-go-to-practice"), Does::Practice),
            );
        }
        if self.scene.assessment.clock.is_some() {
            let now = self.scene.now;
            let date = || plain::date(words, now.day()).into();
            let when = plain::when(words, now, now).into();
            // The button may stand apart from the question, so it says what it says yes to.
            let time = words.time(now.local().time()).into();
            let yes = words.text("action-time-right", &[("date", date()), ("time", time)]);
            note(
                words.text("today-clock", &[("date", date()), ("when", when)]),
                Some(Action::new(yes, Does::ConfirmTime)),
            );
        }
        if let (Basis::Step { confirmed: false, .. }, Some(step)) =
            (&self.scene.assessment.basis, self.current())
        {
            let what = plain::step(words, step).into();
            // Where it is asked, yes and no stand beside each other.
            note(
                words.text("today-confirm-step", &[("step", what)]),
                act(message_id!("action-step-check"), Does::StepCheck),
            );
        }
        if let (Some(why), false) = (super::health::due(self.scene), paused) {
            let action = act(message_id!("action-screening"), Does::Screening);
            note(words.text(why.word_id(), &[]), action);
        }
        if self.programme.is_some_and(|plan| self.scene.now.day() > plan.review_by) {
            note(words.text("today-review", &[]), None);
        }
        if self.scene.state.rule().is_off(self.scene.now.day()) {
            note(words.text("today-time-off", &[]), None);
        }
        if self.programme.is_none() {
            note(
                words.text("today-no-programme", &[]),
                act(message_id!("action-accept-programme"), Does::AcceptProgramme),
            );
        }
        // These two can wait, so they stand last and are never the next thing to do.
        if let Some(of) = super::settled::asked_today(self.scene) {
            let action = act(message_id!("action-settled"), Does::Settled { of });
            note(words.text("today-settled", &[]), action);
        }
        if super::activities::due(self.scene) && !self.scene.nothing_continues() {
            let action = act(message_id!("action-activities"), Does::Activities);
            note(words.text("today-activities", &[]), action);
        }
        notices
    }

    fn step_card(&self) -> Option<StepCard> {
        let words = self.scene.words;
        let step = self.current()?;
        let plan = self.programme?;
        let schedule = &step.schedule;
        let mut done = Vec::new();
        let times = self.scene.state.rule().sessions_today(&step.practice, &self.scene.now);
        if times >= usize::from(schedule.daily_most.get()) {
            done.push(words.text("today-enough-for-today", &[]));
        } else if times > 0 {
            done.push(words.text("today-done-today", &[]));
        } else if self.resting(step) {
            done.push(words.text("today-rest-day", &[]));
        }
        let most = times >= usize::from(schedule.daily_most.get());
        let enough = most || (times == 0 && self.resting(step));
        let days = self.days_this_week(&step.practice);
        if days > 0 {
            done.push(words.text("today-days-this-week", &[("days", plain::whole(days))]));
        }
        Some(StepCard {
            name: step.name.as_str().to_owned(),
            parts: step.parts.iter().map(|part| plain::part(words, part)).collect(),
            position: plain::position(words, step.position),
            instruction: step.instruction.as_str().to_owned(),
            schedule: plain::schedule(words, schedule),
            done,
            enough,
            folded: plan.manner.numbers_folded && !self.scene.state.numbers_open(),
        })
    }

    fn resting(&self, step: &Step) -> bool {
        let latest = self.scene.state.rule().occasions(&step.practice).next_back();
        let (Some(rest), Some(latest)) = (step.schedule.rest_days, latest) else { return false };
        let days = self.scene.now.day().signed_duration_since(latest.day).num_days();
        (1..=i64::from(rest.get())).contains(&days)
    }

    /// On how many days of this calendar week (from Monday) a practice was done.
    fn days_this_week(&self, practice: &Practice) -> u32 {
        let today = self.scene.now.day();
        let monday = today - Days::new(u64::from(today.weekday().num_days_from_monday()));
        let mut days: Vec<NaiveDate> = self
            .scene
            .state
            .rule()
            .occasions(practice)
            .rev()
            .map(|occasion| occasion.day)
            .take_while(|day| *day >= monday)
            .filter(|day| *day <= today)
            .collect();
        days.dedup();
        days.iter().fold(0, |count, _| count + 1)
    }

    fn practices(&self) -> Vec<PracticeCard> {
        let plans = self.programme.filter(|_| !self.scene.nothing_continues());
        let plans = plans.map(|plan| plan.practices.as_slice()).unwrap_or_default();
        plans.iter().map(|plan| self.practice_card(plan)).collect()
    }

    fn practice_card(&self, plan: &PracticePlan) -> PracticeCard {
        let words = self.scene.words;
        let mut done = Vec::new();
        if self.scene.state.rule().sessions_today(&plan.practice, &self.scene.now) > 0 {
            done.push(words.text("today-done-today", &[]));
        }
        let days = self.days_this_week(&plan.practice);
        if days > 0 {
            done.push(words.text("today-days-this-week", &[("days", plain::whole(days))]));
        }
        PracticeCard {
            name: plan.name.as_str().to_owned(),
            minutes: plain::minutes(words, plan.minutes.least.get(), plan.minutes.most.get()),
            instruction: plan.instruction.as_str().to_owned(),
            schedule: plain::schedule(words, &plan.schedule),
            done,
        }
    }

    /// What is tied to a routine today, where reminders are on (N2).
    fn routines(&self) -> Vec<String> {
        let day = self.scene.now.day();
        let on = !self.scene.nothing_continues() && !self.scene.state.rule().is_off(day);
        let set = self.scene.state.reminders().filter(|set| set.on && on);
        let today = |when: &When| when.days().has(day.weekday());
        set.iter()
            .flat_map(|set| set.reminders.get())
            .filter(|one| today(&one.when))
            .filter_map(|one| {
                let own = self.programme.and_then(|plan| {
                    plan.practices.iter().find(|other| other.practice == one.practice)
                });
                let own = own.map(|other| other.name.as_str());
                let what = plain::practice(self.scene.words, &one.practice, own);
                after_line(self.scene.words, &one.when, &what)
            })
            .collect()
    }

    fn cautions(&self, trainer: bool) -> Vec<String> {
        let mut cautions = vec![self.say(message_id!("today-caution-stop"))];
        if trainer {
            cautions.push(self.say(message_id!("today-caution-never-hurt")));
            cautions.extend(CareNote::ALL.map(|note| self.say(note.word_id())));
        }
        cautions.push(self.say(BreathCaution::OverBreathing.word_id()));
        if let Some(plan) = self.programme {
            cautions.extend(plan.own_cautions.iter().map(|own| own.as_str().to_owned()));
        }
        cautions.push(self.say(message_id!("today-caution-clinician")));
        cautions
    }

    /// What a notice asks comes first, then the practice itself; where nothing more is asked of the day,
    /// breathing.
    fn next(&self, notices: &[Notice], step: Option<&StepCard>) -> Action {
        let can_wait = |does: &Does| matches!(does, Does::Settled { .. } | Does::Activities);
        let mut asked = notices.iter().filter_map(|notice| notice.action.clone());
        let asked = asked.find(|action| !can_wait(&action.does));
        let open = step.is_some_and(|step| !step.enough);
        let off = self.scene.state.rule().is_off(self.scene.now.day());
        let own = if open && !off {
            let begin = Does::Begin(Begin::Step);
            Action::new(self.say(message_id!("action-begin-step")), begin)
        } else {
            Action::new(self.say(message_id!("action-breathing")), Does::Breathing)
        };
        asked.unwrap_or(own)
    }

    fn actions(&self, paused: bool) -> Vec<Action> {
        let mut actions = vec![Action::new(self.say(message_id!("action-signs")), Does::Signs)];
        if !self.scene.nothing_continues() {
            actions.push(Action::new(self.say(message_id!("action-breathing")), Does::Breathing));
            actions.push(Action::new(self.say(message_id!("action-practices")), Does::Practices));
        }
        if !paused && self.current().is_some() {
            let planned = Does::LogAsPlanned;
            actions.push(Action::new(self.say(message_id!("action-log-as-planned")), planned));
        }
        actions.push(Action::new(self.say(message_id!("action-log")), Does::LogSession));
        if paused {
            actions.push(Action::new(self.say(message_id!("action-spoke")), Does::Spoke));
        } else if self.current().is_some() {
            actions.push(Action::new(self.say(message_id!("action-suggestion")), Does::Suggestion));
            actions.push(Action::new(self.say(message_id!("action-ladder")), Does::Ladder));
        }
        actions.push(Action::new(
            self.say(message_id!("action-calendar")),
            Does::Calendar { month: None },
        ));
        actions.push(Action::new(self.say(message_id!("action-questions")), Does::Questions));
        actions.push(Action::new(self.say(message_id!("action-more")), Does::More));
        actions
    }
}
