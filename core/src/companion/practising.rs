//! The practice that is under way: begun, kept after each event, found again, and handed over to be
//! written down. What counts as practised is decided in [`crate::practice::timed`]; here is decided when
//! a practice may begin, and when what was kept of it goes away.

use super::{Companion, Refusal, Trouble};
use crate::diary::entry::EntryId;
use crate::diary::store::SealedRead;
use crate::moment::{Moment, Stamp};
use crate::practice::breathing::{Breathing, Preset, PresetId, offered};
use crate::practice::timed::{
    Choice, Done, Event, Found, How, Planned, RunningError, State, Tick, Timer,
};
use crate::programme::values::{Minutes, Position, Practice};
use crate::progression::OutcomeKind;
use crate::safety::FullList;
use crate::screens::{
    AnythingNewScreen, Begin, BreathingScreen, FoundScreen, PracticesScreen, RateScreen,
    RunningScreen, Screen, ScreeningScreen, StoppedScreen, screening_due,
};

/// What is known of a practice under way.
#[derive(Default)]
pub(super) enum Practising {
    /// There is none.
    #[default]
    Nothing,
    /// One of this process. Ended ones wait to be written down.
    Running(Timer),
    /// One that an earlier process left.
    Found(Found),
    /// One that cannot be read.
    Unreadable(RunningError),
}

// A practice is the person's own affair.
impl std::fmt::Debug for Practising {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Practising(..)")
    }
}

impl Practising {
    /// Whether a practice waits for the person.
    pub(super) fn waits(&self) -> bool {
        !matches!(self, Self::Nothing)
    }
}

impl Companion {
    /// Reads what an earlier process left.
    pub(super) fn find_practice(&mut self) {
        self.practising = match self.store.running().read() {
            Ok(SealedRead::Content(bytes)) => match Found::open(&bytes) {
                Ok(found) => Practising::Found(found),
                Err(error) => Practising::Unreadable(error),
            },
            Ok(SealedRead::Damaged) => Practising::Unreadable(RunningError::Unreadable),
            Ok(SealedRead::Newer) => Practising::Unreadable(RunningError::Newer),
            // A disk that does not answer is asked again at the next opening.
            Ok(SealedRead::Absent) | Err(_) => Practising::Nothing,
        };
        // One whose session stands already was only not put away.
        let written = match &self.practising {
            Practising::Found(found) => Some(found.id()),
            _ => None,
        };
        if let Some(id) = written.filter(|id| self.was_written(*id).unwrap_or(false)) {
            self.written_down(id);
        }
    }

    /// What can be practised.
    pub(super) fn practices(&self, now: &Stamp) -> Screen {
        self.show(now, |scene| Screen::Practices(PracticesScreen::new(scene)))
    }

    /// The patterns to breathe to.
    pub(super) fn breathing(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let id = self.new_id()?;
        Ok(self.show(now, |scene| Screen::Breathing(BreathingScreen::new(scene, id))))
    }

    /// Begins a practice, or shows what has to come before it. One that is under way is never replaced.
    pub(super) fn begin(&mut self, begin: Begin, moment: &Moment) -> Result<Screen, Trouble> {
        if self.practising.waits() {
            return self.practice(moment);
        }
        let now = moment.now;
        let assessment = self.state.rule().assess(&now);
        let trainer = match begin {
            Begin::Step => {
                let step = self.state.rule().step().ok_or(Refusal::NoProgramme)?;
                if assessment.outcome.kind() == OutcomeKind::PauseAndCall {
                    return Ok(self.stop_and_call(&now, &[]));
                }
                step.practice == Practice::Trainer
            }
            Begin::Practice(_) | Begin::Breathing { .. } => false,
        };
        let nothing = self.with_scene(&now, |scene| scene.nothing_continues());
        if nothing {
            return Ok(self.stop_and_call(&now, &[]));
        }
        if trainer && screening_due(&self.state, &now).is_some() {
            let id = self.new_id()?;
            let none = FullList::default();
            return Ok(self.show(&now, |scene| {
                Screen::Screening(ScreeningScreen::new(scene, id, &none, false))
            }));
        }
        if trainer && !self.state.nothing_new(&now) {
            let id = self.new_id()?;
            return Ok(
                self.show(&now, |scene| Screen::AnythingNew(AnythingNewScreen::new(scene, id)))
            );
        }
        let tick = Tick::of(moment).ok_or(Refusal::NoRunningTime)?;
        let timer = Timer::new(self.planned(begin)?, self.new_id()?, &tick);
        self.keep_practice(timer)?;
        self.practice(moment)
    }

    fn planned(&self, begin: Begin) -> Result<Planned, Trouble> {
        let plan = self.state.rule().programme();
        let planned = match begin {
            Begin::Step => {
                let step = self.state.rule().step().ok_or(Refusal::NoProgramme)?;
                Planned::of_step(step)
            }
            Begin::Practice(number) => {
                let other = plan.and_then(|plan| plan.practices.get(usize::from(number)));
                Planned::of_practice(other.ok_or(Refusal::NoSuchPractice)?, Position::Other)
            }
            Begin::Breathing { preset, minutes } => {
                let all = offered(plan, &self.state.conditions()).presets;
                let found = all.iter().find(|one| one.id == preset);
                let found = found.ok_or(Refusal::NoSuchPractice)?;
                let breathing = Breathing::of_minutes(found.pattern, minutes);
                let least = least(plan, preset).map_or(minutes, |least| least.min(minutes));
                Planned::of_breathing(practice(plan, preset), Position::Other, &breathing, least)
            }
        };
        planned.map_err(|_| Refusal::NoSuchPractice.into())
    }

    /// The practice under way as it stands now.
    pub(super) fn practice(&mut self, moment: &Moment) -> Result<Screen, Trouble> {
        let now = moment.now;
        let tick = Tick::of(moment).ok_or(Refusal::NoRunningTime)?;
        Ok(match &self.practising {
            Practising::Nothing => self.practices(&now),
            Practising::Unreadable(error) => {
                self.show(&now, |scene| Screen::Found(FoundScreen::unreadable(scene, *error)))
            }
            Practising::Found(found) => {
                self.show(&now, |scene| Screen::Found(FoundScreen::new(scene, found, &tick)))
            }
            Practising::Running(timer) => match timer.view(&tick).state {
                State::Stopped => self.show(&now, |scene| {
                    Screen::Stopped(StoppedScreen::new(scene, timer.practice()))
                }),
                // Its clock may have run out since it was last looked at.
                State::Finished if timer.state() != State::Finished => {
                    return self.during(Event::Seen, moment);
                }
                State::Finished => self.rate(moment)?,
                State::Ready | State::Running | State::Paused => {
                    let breathing = self.followed(timer);
                    self.show(&now, |scene| {
                        Screen::Running(RunningScreen::new(scene, timer, &tick, breathing.as_ref()))
                    })
                }
            },
        })
    }

    /// The breath that a practice follows. The pattern itself is kept nowhere (B5): it is one that is
    /// offered now for this practice and fills its time with whole breaths, the plan's first.
    fn followed(&self, timer: &Timer) -> Option<Breathing> {
        let whole = timer.parts().first()?.most_millis();
        let plan = self.state.rule().programme();
        let fits = |preset: &&Preset| {
            practice(plan, preset.id) == *timer.practice()
                && whole.is_multiple_of(preset.pattern.breath_millis())
        };
        if !matches!(timer.practice(), Practice::Breathing | Practice::BellyBreathing) {
            return None;
        }
        let all = offered(plan, &self.state.conditions()).presets;
        let pattern = all.iter().find(fits)?.pattern;
        Some(Breathing::of_millis(pattern, whole))
    }

    /// Something happens to the practice under way.
    pub(super) fn during(&mut self, event: Event, moment: &Moment) -> Result<Screen, Trouble> {
        let tick = Tick::of(moment).ok_or(Refusal::NoRunningTime)?;
        if let Practising::Running(timer) = &self.practising {
            let after = timer.clone().after(event, &tick);
            // What happened holds even if it cannot be noted: stopping waits for no disk.
            let kept = self.keep_practice(after);
            if let (Err(trouble), false) = (kept, matches!(event, Event::Seen | Event::Stop)) {
                return Err(trouble);
            }
        }
        self.practice(moment)
    }

    fn keep_practice(&mut self, timer: Timer) -> Result<(), Trouble> {
        let bytes = timer.stored().map_err(|_| Trouble::TryAgain);
        self.practising = Practising::Running(timer);
        Ok(self.store.running().replace(&bytes?)?)
    }

    /// What becomes of a practice found again.
    pub(super) fn found(&mut self, choice: Choice, moment: &Moment) -> Result<Screen, Trouble> {
        let tick = Tick::of(moment).ok_or(Refusal::NoRunningTime)?;
        match (std::mem::take(&mut self.practising), choice) {
            (Practising::Found(found), Choice::GoOn) if found.offer(&tick).can_go_on => {
                self.keep_practice(found.go_on(&tick))?;
                self.practice(moment)
            }
            (Practising::Found(found), Choice::Finish) => {
                let timer = found.ended(&tick);
                self.keep_practice(timer)?;
                self.rate(moment)
            }
            (Practising::Found(_) | Practising::Unreadable(_), Choice::Discard) => {
                self.store.running().remove()?;
                Ok(self.today(moment))
            }
            // A second tap, after the choice was made.
            (as_it_was, _) => {
                self.practising = as_it_was;
                self.practice(moment)
            }
        }
    }

    /// How it was, of the practice that ended; where none did, what can be practised.
    pub(super) fn rate(&mut self, moment: &Moment) -> Result<Screen, Trouble> {
        let done = match &self.practising {
            Practising::Running(timer) => timer.done(),
            _ => None,
        };
        match done {
            Some(done) => {
                Ok(self.show(&moment.now, |scene| Screen::Rate(RateScreen::new(scene, &done))))
            }
            None => self.practice(moment),
        }
    }

    /// How it was, of a session of the present step that went as planned and was not timed. It says the
    /// least that the step asks for; who did more, or something else, uses the whole form.
    pub(super) fn as_planned(&self, moment: &Moment) -> Result<Screen, Trouble> {
        let step = self.state.rule().step().ok_or(Refusal::NoProgramme)?;
        if self.state.rule().assess(&moment.now).outcome.kind() == OutcomeKind::PauseAndCall {
            return Ok(self.stop_and_call(&moment.now, &[]));
        }
        let used = step.parts.iter().map(|part| crate::diary::entry::UsedPart {
            widest_diameter_tenths_mm: part.size(),
            practised_seconds: u32::from(part.minutes.least.get()) * 60,
        });
        let done = Done {
            id: self.new_id()?,
            happened: moment.now,
            practice: step.practice.clone(),
            position: step.position,
            parts: used.collect(),
            how: How::Finished,
        };
        Ok(self.show(&moment.now, |scene| Screen::Rate(RateScreen::new(scene, &done))))
    }

    /// A session was written down; what was kept of it while it ran goes.
    pub(super) fn written_down(&mut self, id: EntryId) {
        let this = match &self.practising {
            Practising::Running(timer) => timer.id() == id,
            Practising::Found(found) => found.id() == id,
            Practising::Nothing | Practising::Unreadable(_) => false,
        };
        if this {
            self.practising = Practising::Nothing;
            // If it stays, it is found again, and writing it under its id writes nothing twice.
            let _left = self.store.running().remove();
        }
    }
}

fn practice(plan: Option<&crate::programme::plan::Programme>, preset: PresetId) -> Practice {
    let PresetId::Plan(number) = preset else { return Practice::Breathing };
    let other = plan.and_then(|plan| plan.practices.get(usize::from(number)));
    other.map_or(Practice::Breathing, |other| other.practice.clone())
}

fn least(plan: Option<&crate::programme::plan::Programme>, preset: PresetId) -> Option<Minutes> {
    let PresetId::Plan(number) = preset else { return None };
    plan?.practices.get(usize::from(number)).map(|other| other.minutes.least)
}
