//! Decides whether a programme that reads well is written correctly (rule sentence P4): errors that keep
//! it from being handed over. What is only unusual is [`super::warn`], and never keeps anything back.
//!
//! Start at [`load`], which reads and checks.

use std::collections::HashSet;
use std::fmt;

use unic_langid::LanguageIdentifier;

use super::fault::{Fault, Issue};
use super::plan::{MinutesSpan, Programme, Schedule, Step};
use super::read::{ReadError, read};
use super::rule::{Rule, Target};
use super::values::{Practice, RatingKind};
use super::warn::{Warning, warnings};
use crate::safety::check_stricter;

/// What was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Checked {
    /// What must be put right.
    pub errors: Vec<Issue>,
    /// What is unusual and worth a second look.
    pub warnings: Vec<Warning>,
}

/// Why a programme cannot be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LoadError {
    /// It cannot be read.
    Read(ReadError),
    /// It reads, but these are written wrongly; at least one.
    Wrong(Vec<Issue>),
}

impl fmt::Display for LoadError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Read(error) => error.fmt(f),
            Self::Wrong(issues) => {
                for (index, issue) in issues.iter().enumerate() {
                    if index > 0 {
                        f.write_str("\n")?;
                    }
                    issue.fmt(f)?;
                }
                Ok(())
            }
        }
    }
}

impl std::error::Error for LoadError {}

/// Reads a programme and checks it.
///
/// # Errors
/// [`LoadError`] where it cannot be read or something in it is written wrongly.
pub fn load(bytes: &[u8]) -> Result<(Programme, Vec<Warning>), LoadError> {
    let programme = read(bytes).map_err(LoadError::Read)?;
    let Checked { errors, warnings } = check(&programme);
    if errors.is_empty() { Ok((programme, warnings)) } else { Err(LoadError::Wrong(errors)) }
}

/// Checks a programme.
#[must_use]
pub fn check(programme: &Programme) -> Checked {
    let mut found = Found { programme, issues: Vec::new() };
    found.lines();
    found.steps();
    found.practices();
    found.rules();
    found.signs();
    Checked { errors: found.issues, warnings: warnings(programme) }
}

struct Found<'a> {
    programme: &'a Programme,
    issues: Vec<Issue>,
}

impl Found<'_> {
    fn add(&mut self, place: impl Into<String>, fault: Fault) {
        self.issues.push(Issue { place: place.into(), fault });
    }

    fn when(&mut self, wrong: bool, place: impl Into<String>, fault: Fault) {
        if wrong {
            self.add(place, fault);
        }
    }

    fn at_most<T>(&mut self, list: &[T], most: usize, place: &str) {
        self.when(list.len() > most, place, Fault::TooMany(most));
    }

    fn lines(&mut self) {
        let p = self.programme;
        let language = p.language.as_str().parse::<LanguageIdentifier>();
        self.when(language.is_err(), "language", Fault::NotALanguage);
        self.when(p.review_by < p.issued_at.day(), "review_by", Fault::ReviewBeforeIssue);
        match &p.start_at {
            None => self.when(!p.steps.is_empty(), "start_at", Fault::StartMissing),
            Some(id) => {
                let unknown = p.step(id).is_none();
                self.when(unknown, "start_at", Fault::UnknownStep(id.clone()));
            }
        }
        let mut asked = HashSet::from([RatingKind::Peak]);
        for (index, rating) in p.ratings_asked.iter().enumerate() {
            let twice = !asked.insert(*rating);
            self.when(twice, format!("ratings_asked[{index}]"), Fault::RatingTwice(*rating));
        }
        for (index, recipient) in p.recipients.iter().enumerate() {
            let wrong = !is_age_key(recipient.key.as_str());
            self.when(wrong, format!("recipients[{index}].key"), Fault::NotAKey);
        }
        self.at_most(&p.steps, 60, "steps");
        self.at_most(&p.practices, 20, "practices");
        self.at_most(&p.recipients, 10, "recipients");
        self.at_most(&p.activities, 5, "activities");
        self.at_most(&p.goals, 5, "goals");
        self.at_most(&p.own_cautions, 10, "own_cautions");
    }

    fn steps(&mut self) {
        let p = self.programme;
        let mut ids = HashSet::new();
        for (index, step) in p.steps.iter().enumerate() {
            let place = format!("steps[{index}]");
            let twice = !ids.insert(&step.id);
            self.when(twice, format!("{place}.id"), Fault::StepTwice(step.id.clone()));
            if matches!(step.practice, Practice::Other(_)) {
                let undeclared = p.practices.iter().all(|plan| plan.practice != step.practice);
                let fault = Fault::PracticeUndeclared(step.practice.clone());
                self.when(undeclared, format!("{place}.practice"), fault);
            }
            self.when(step.parts.is_empty(), format!("{place}.parts"), Fault::Empty);
            self.at_most(&step.parts, 6, &format!("{place}.parts"));
            for (number, part) in step.parts.iter().enumerate() {
                let place = format!("{place}.parts[{number}]");
                match (step.practice == Practice::Trainer, part.trainer.is_some()) {
                    (true, false) => self.add(format!("{place}.trainer"), Fault::SizeMissing),
                    (false, true) => self.add(format!("{place}.trainer"), Fault::SizeSurplus),
                    _ => {}
                }
                self.minutes(part.minutes, &place);
            }
            self.schedule(step.schedule, &place);
        }
    }

    fn practices(&mut self) {
        let p = self.programme;
        let mut known = HashSet::new();
        for (index, plan) in p.practices.iter().enumerate() {
            let place = format!("practices[{index}]");
            let twice = !known.insert(&plan.practice);
            let fault = Fault::PracticeTwice(plan.practice.clone());
            self.when(twice, format!("{place}.practice"), fault);
            let trainer = plan.practice == Practice::Trainer;
            self.when(trainer, format!("{place}.practice"), Fault::TrainerOutsideSteps);
            if let Some(breath) = plan.breath {
                let breathing =
                    matches!(plan.practice, Practice::Breathing | Practice::BellyBreathing);
                self.when(!breathing, format!("{place}.breath"), Fault::BreathElsewhere);
                let phases = [
                    breath.in_tenths,
                    breath.hold_in_tenths,
                    breath.out_tenths,
                    breath.hold_out_tenths,
                ];
                let still = phases.iter().all(|phase| phase.get() == 0);
                self.when(still, format!("{place}.breath"), Fault::BreathWithoutTime);
            }
            self.minutes(plan.minutes, &place);
            self.schedule(plan.schedule, &place);
        }
    }

    fn minutes(&mut self, minutes: MinutesSpan, place: &str) {
        let wrong = minutes.least > minutes.most;
        self.when(wrong, format!("{place}.minutes"), Fault::LeastAboveMost);
    }

    fn schedule(&mut self, schedule: Schedule, place: &str) {
        let wrong = schedule.weekly_least > schedule.weekly_most;
        self.when(wrong, format!("{place}.schedule"), Fault::LeastAboveMost);
    }

    fn rules(&mut self) {
        let p = self.programme;
        if let Some(rule) = &p.rule {
            // In force on every step that carries none of its own.
            let steps: Vec<_> = p.steps.iter().filter(|step| step.rule.is_none()).collect();
            self.rule_alone(rule, "rule");
            self.rule_in_force(rule, &steps, "rule");
        }
        for (index, step) in p.steps.iter().enumerate() {
            if let Some(rule) = &step.rule {
                let place = format!("steps[{index}].rule");
                self.rule_alone(rule, &place);
                self.rule_in_force(rule, &[step], &place);
            }
        }
    }

    /// What is wrong with a rule wherever it is in force.
    fn rule_alone(&mut self, rule: &Rule, place: &str) {
        let p = self.programme;
        if let Some(up) = &rule.step_up {
            self.when(up.all_of.is_empty(), format!("{place}.step_up.all_of"), Fault::Empty);
            self.at_most(&up.all_of, 20, &format!("{place}.step_up.all_of"));
        }
        for (index, back) in rule.step_back.iter().enumerate() {
            if let Target::Step(id) = &back.target {
                let unknown = p.step(id).is_none();
                let place = format!("{place}.step_back[{index}].target.step");
                self.when(unknown, place, Fault::UnknownStep(id.clone()));
            }
        }
        for (rating, line) in ratings_up(rule).into_iter().chain(ratings_down(rule)) {
            let asked = rating == RatingKind::Peak || p.ratings_asked.contains(&rating);
            self.when(!asked, format!("{place}.{line}.rating"), Fault::RatingNotAsked(rating));
        }
    }

    /// What is wrong with a rule because of the steps it is in force on.
    fn rule_in_force(&mut self, rule: &Rule, steps: &[&Step], place: &str) {
        if steps.is_empty() || rule.step_up.as_ref().is_none_or(|up| up.all_of.is_empty()) {
            return;
        }
        let limited: HashSet<_> = ratings_up(rule).into_iter().map(|(rating, _)| rating).collect();
        let open = steps.iter().filter(|step| !step.gate && limited.is_empty());
        let open: Vec<_> = open.map(|step| step.id.clone()).collect();
        let any = !open.is_empty();
        self.when(any, format!("{place}.step_up"), Fault::NoDiscomfortAtMost(open));
        for (rating, line) in ratings_down(rule) {
            let only = !limited.contains(&rating);
            self.when(only, format!("{place}.{line}.rating"), Fault::OnlyDownwards(rating));
        }
    }

    fn signs(&mut self) {
        let mut named = HashSet::new();
        for (index, line) in self.programme.stricter_signs.iter().enumerate() {
            let place = format!("stricter_signs[{index}]");
            if let Err(error) = check_stricter(*line) {
                self.add(format!("{place}.tier"), Fault::Sign(error));
            }
            self.when(!named.insert(line.sign), format!("{place}.sign"), Fault::SignTwice);
        }
    }
}

/// The ratings step_up limits, with the line inside the rule.
fn ratings_up(rule: &Rule) -> Vec<(RatingKind, String)> {
    let all_of = rule.step_up.iter().flat_map(|up| up.all_of.iter().enumerate());
    all_of
        .filter_map(|(index, criterion)| {
            Some((criterion.rating()?, format!("step_up.all_of[{index}]")))
        })
        .collect()
}

/// The ratings that lead back or to a pause, with the line inside the rule.
fn ratings_down(rule: &Rule) -> Vec<(RatingKind, String)> {
    let back = rule.step_back.iter().enumerate().filter_map(|(index, back)| {
        Some((back.when.rating()?, format!("step_back[{index}].when")))
    });
    let pause =
        rule.pause.iter().enumerate().filter_map(|(index, criterion)| {
            Some((criterion.rating()?, format!("pause[{index}]")))
        });
    back.chain(pause).collect()
}

/// Whether a text is an age public key: Bech32 (BIP 173) with the prefix `age` and a right checksum.
fn is_age_key(text: &str) -> bool {
    const LETTERS: &[u8] = b"qpzry9x8gf2tvdw0s3jn54khce6mua7l";
    const TURNS: [u32; 5] = [0x3b6a_57b2, 0x2650_8e6d, 0x1ea1_19fa, 0x3d42_33dd, 0x2a14_62b3];
    let Some(data) = text.strip_prefix("age1") else { return false };
    // 32 bytes of key and the checksum.
    if data.len() != 58 {
        return false;
    }
    let values: Option<Vec<u32>> = data
        .bytes()
        .map(|b| LETTERS.iter().position(|letter| *letter == b).and_then(|v| u32::try_from(v).ok()))
        .collect();
    let Some(values) = values else { return false };
    let prefix = b"age".map(u32::from);
    let spread = prefix.iter().map(|c| c >> 5).chain([0]).chain(prefix.iter().map(|c| c & 31));
    let checksum =
        spread.chain(values).fold(1_u32, |sum, value| {
            let top = sum >> 25;
            let shifted = ((sum & 0x1ff_ffff) << 5) ^ value;
            TURNS.iter().enumerate().fold(shifted, |sum, (bit, turn)| {
                if (top >> bit) & 1 == 1 { sum ^ turn } else { sum }
            })
        });
    checksum == 1
}

#[cfg(test)]
mod tests;
