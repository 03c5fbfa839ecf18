//! The conditions of a rule, as far as they are finished.

use super::super::super::rule::{
    BackCriterion, PauseCriterion, Rule, StepBack, StepUp, UpCriterion, Window,
};
use super::super::amiss::Amiss;
use super::super::place::Place;
use super::super::typed::Typed;
use super::super::{BackDraft, PauseDraft, RuleDraft, StepBackDraft, UpDraft};
use super::Partly;
use super::values::Reader;

impl Reader {
    pub(super) fn rule(&mut self, place: &Place, typed: &RuleDraft) -> Partly<Rule> {
        let mut unfinished = false;
        let mut kept = Vec::new();
        for (index, up) in typed.step_up.iter().enumerate() {
            match self.up(&place.at("step_up").at(index), up) {
                Some(criterion) => kept.push(criterion),
                None => unfinished = true,
            }
        }
        let step_up = (!kept.is_empty()).then_some(StepUp { all_of: kept });
        let mut step_back = Vec::new();
        for (index, back) in typed.step_back.iter().enumerate() {
            match self.step_back(&place.at("step_back").at(index), back) {
                Some(back) => step_back.push(back),
                None => unfinished = true,
            }
        }
        let mut pause = Vec::new();
        for (index, one) in typed.pause.iter().enumerate() {
            match self.pause(&place.at("pause").at(index), one) {
                Some(criterion) => pause.push(criterion),
                None => unfinished = true,
            }
        }
        let gap = self.maybe(place.at("after_gap_days"), &typed.after_gap_days);
        unfinished |= gap.is_none();
        let after_gap_days = gap.unwrap_or_default();
        Partly { value: Rule { step_up, step_back, pause, after_gap_days }, unfinished }
    }

    fn up(&mut self, place: &Place, typed: &UpDraft) -> Option<UpCriterion> {
        Some(match typed {
            UpDraft::DaysOnStep { days } => {
                UpCriterion::DaysOnStep { days: self.whole(place.at("days"), days)? }
            }
            UpDraft::Sessions { practised_days, within_days } => {
                let practised = self.whole(place.at("practised_days"), practised_days);
                let within = self.whole(place.at("within_days"), within_days);
                UpCriterion::Sessions { practised_days: practised?, within_days: within? }
            }
            UpDraft::DiscomfortAtMost { rating, at_most, last } => {
                let rating = self.chosen(place.at("rating"), rating);
                let at_most = self.whole(place.at("at_most"), at_most);
                let last = self.whole(place.at("last"), last);
                UpCriterion::DiscomfortAtMost { rating: rating?, at_most: at_most?, last: last? }
            }
            UpDraft::SignFreeDays { days } => {
                UpCriterion::SignFreeDays { days: self.whole(place.at("days"), days)? }
            }
            UpDraft::FeelsReady {} => UpCriterion::FeelsReady {},
        })
    }

    fn window(&mut self, place: &Place, sessions: &Typed, of_last: &Typed) -> Option<Window> {
        let sessions = self.whole(place.at("sessions"), sessions);
        let of_last = self.whole(place.at("of_last"), of_last);
        let window = Window::new(sessions?, of_last?).ok();
        if window.is_none() {
            self.note(place.at("sessions"), Amiss::MoreThanLookedAt);
        }
        window
    }

    fn step_back(&mut self, place: &Place, typed: &StepBackDraft) -> Option<StepBack> {
        let when = match &typed.when {
            BackDraft::DiscomfortAtLeast { rating, at_least, sessions, of_last } => {
                let rating = self.chosen(place.at("rating"), rating);
                let at_least = self.whole(place.at("at_least"), at_least);
                let window = self.window(place, sessions, of_last);
                rating.zip(at_least).zip(window).map(|((rating, at_least), window)| {
                    BackCriterion::DiscomfortAtLeast { rating, at_least, window }
                })
            }
            BackDraft::StoppedEarly { sessions, of_last } => {
                let window = self.window(place, sessions, of_last);
                window.map(|window| BackCriterion::StoppedEarly { window })
            }
            BackDraft::DaysWithoutPractice { days } => {
                let days = self.whole(place.at("days"), days);
                days.map(|days| BackCriterion::DaysWithoutPractice { days })
            }
        };
        let target = self.chosen(place.at("target"), &typed.target);
        Some(StepBack { when: when?, target: target?.0 })
    }

    fn pause(&mut self, place: &Place, typed: &PauseDraft) -> Option<PauseCriterion> {
        match typed {
            PauseDraft::DiscomfortAtLeast { rating, at_least, sessions, of_last } => {
                let rating = self.chosen(place.at("rating"), rating);
                let at_least = self.whole(place.at("at_least"), at_least);
                let window = self.window(place, sessions, of_last);
                Some(PauseCriterion::DiscomfortAtLeast {
                    rating: rating?,
                    at_least: at_least?,
                    window: window?,
                })
            }
            PauseDraft::StoppedEarly { sessions, of_last } => {
                let window = self.window(place, sessions, of_last)?;
                Some(PauseCriterion::StoppedEarly { window })
            }
            PauseDraft::DaysWithoutPractice { days } => {
                let days = self.whole(place.at("days"), days)?;
                Some(PauseCriterion::DaysWithoutPractice { days })
            }
            PauseDraft::StepsBack { times, within_days } => {
                let times = self.whole(place.at("times"), times);
                let within_days = self.whole(place.at("within_days"), within_days);
                Some(PauseCriterion::StepsBack { times: times?, within_days: within_days? })
            }
        }
    }
}
