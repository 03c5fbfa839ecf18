//! The words of each part, for the other clinician or for the person herself.

use chrono::{Datelike, NaiveDate};

use super::super::plain;
use super::super::reading::say as short;
use super::{LetterPart, Reader, Typed};
use crate::insight::Spread;
use crate::safety::Tier;
use crate::summary::Facts;
use crate::summary::facts::{Followed, SignFacts, SignSince, StepFacts};
use crate::words::{Value, Words};

/// What a letter is worded from.
pub(super) struct Saying<'a> {
    pub(super) typed: &'a Typed,
    pub(super) facts: &'a Facts,
    pub(super) words: &'a Words,
    pub(super) reader: Reader,
}

impl Saying<'_> {
    pub(super) fn title(&self) -> String {
        match self.reader {
            Reader::Clinician => self.words.text("letter-title", &[]),
            Reader::Person => self.words.text("letter-title-copy", &[]),
        }
    }

    pub(super) fn request_heading(&self) -> String {
        match self.reader {
            Reader::Clinician => self.words.text("letter-request", &[]),
            Reader::Person => self.words.text("letter-request-copy", &[]),
        }
    }

    /// "3 March 2026".
    pub(super) fn date(&self, day: NaiveDate) -> String {
        let values = [
            ("day", plain::whole(day.day())),
            ("month", plain::whole(day.month())),
            ("year", day.year().to_string().into()),
        ];
        self.words.text("letter-date", &values)
    }

    fn day(&self, day: NaiveDate) -> Value {
        self.date(day).into()
    }

    /// Why it is written, what it covers, and how far it can be relied on.
    pub(super) fn opening(&self) -> LetterPart {
        let words = self.words;
        let mut says = vec![match self.reader {
            Reader::Clinician => words.text("letter-opening", &[]),
            Reader::Person => {
                let to = self.typed.to.as_str().lines().next().unwrap_or_default();
                words.text("letter-opening-copy", &[("to", to.into())])
            }
        }];
        let last = self.day(self.facts.last);
        says.push(match self.facts.first {
            Some(first) => {
                let values = [("first", self.day(first)), ("last", last)];
                match self.reader {
                    Reader::Clinician => words.text("letter-period", &values),
                    Reader::Person => words.text("letter-period-copy", &values),
                }
            }
            None => words.text("letter-nothing-written", &[("last", last)]),
        });
        if self.facts.narrowed {
            says.push(words.text("letter-narrowed", &[]));
        }
        if self.facts.missing {
            says.push(words.text("letter-missing", &[]));
        }
        LetterPart::plain(says)
    }

    /// Prescribed and done.
    pub(super) fn done(&self) -> LetterPart {
        let words = self.words;
        let mut points: Vec<String> = self.facts.steps.iter().map(|step| self.step(step)).collect();
        points.extend(self.facts.practices.iter().map(|one| {
            let values = [
                ("name", one.name.as_str().into()),
                ("sessions", short::count(one.sessions)),
                ("days", short::count(one.days)),
                ("schedule", short::schedule(words, &one.schedule).into()),
            ];
            words.text("letter-practice", &values)
        }));
        let mut says = Vec::new();
        if points.is_empty() {
            says.push(words.text("letter-nothing-prescribed", &[]));
        } else if self.facts.steps.iter().any(|step| step.peak.is_some()) {
            says.push(words.text("letter-scale", &[]));
        }
        LetterPart::of(words.text("letter-done", &[]), says, points)
    }

    /// "Size 2 (15 mm)".
    fn named(&self, step: &StepFacts) -> Value {
        let name = step.name.as_str().into();
        match step.size {
            Some(size) => {
                let size = plain::size(self.words, size).into();
                self.words.text("reading-step-sized", &[("name", name), ("size", size)]).into()
            }
            None => name,
        }
    }

    fn step(&self, step: &StepFacts) -> String {
        let words = self.words;
        let found = &step.practised;
        let mut says = vec![words.text(
            "letter-step",
            &[
                ("step", self.named(step)),
                ("position", short::position(words, step.position).into()),
                ("first", self.day(step.days.0)),
                ("last", self.day(step.days.1)),
                ("schedule", short::schedule(words, &step.schedule).into()),
                ("least", found.planned_least.into()),
                ("most", found.planned_most.into()),
                ("sessions", short::count(found.sessions)),
                ("days", short::count(found.days)),
                ("off", found.off.into()),
            ],
        )];
        if step.elsewhere > 0 {
            says.push(words.text("letter-elsewhere", &[("count", short::count(step.elsewhere))]));
        }
        if step.stopped > 0 {
            says.push(words.text("letter-stopped", &[("count", short::count(step.stopped))]));
        }
        if step.not_started > 0 {
            let count = [("count", short::count(step.not_started))];
            says.push(words.text("letter-not-started", &count));
        }
        match &step.peak {
            Some(spread) => says.push(self.peak(spread)),
            None if found.sessions > 0 => says.push(words.text("letter-unrated", &[])),
            None => {}
        }
        says.join(" ")
    }

    fn peak(&self, spread: &Spread) -> String {
        let values = [
            ("median", short::number(spread.median)),
            ("least", plain::whole(spread.least)),
            ("most", plain::whole(spread.most)),
            ("rated", short::count(spread.rated)),
            ("unrated", short::count(spread.unrated)),
        ];
        self.words.text("letter-peak", &values)
    }

    /// Activities and goals; nothing where none was ever rated.
    pub(super) fn function(&self) -> Option<LetterPart> {
        let words = self.words;
        let activity = |one: &Followed| {
            let values = self.followed(one);
            if one.times > 1 {
                words.text("letter-activity-changed", &values)
            } else {
                words.text("letter-activity", &values)
            }
        };
        let goal = |one: &Followed| {
            let values = self.followed(one);
            if one.times > 1 {
                words.text("letter-goal-changed", &values)
            } else {
                words.text("letter-goal", &values)
            }
        };
        let points: Vec<String> = (self.facts.activities.iter().map(activity))
            .chain(self.facts.goals.iter().map(goal))
            .collect();
        (!points.is_empty()).then(|| {
            let heading = words.text("letter-function", &[]);
            LetterPart::of(heading, vec![words.text("letter-function-scales", &[])], points)
        })
    }

    fn followed(&self, one: &Followed) -> Vec<(&'static str, Value)> {
        let mut values = vec![
            ("name", one.name.as_str().into()),
            ("first", plain::whole(one.first.1)),
            ("firstday", self.day(one.first.0)),
        ];
        if one.times > 1 {
            values.push(("last", plain::whole(one.last.1)));
            values.push(("lastday", self.day(one.last.0)));
        }
        values
    }

    /// Signs, and what was done.
    pub(super) fn signs(&self) -> LetterPart {
        let words = self.words;
        let points: Vec<String> = self.facts.signs.iter().map(|one| self.sign(one)).collect();
        let mut says = Vec::new();
        if points.is_empty() {
            says.push(words.text("letter-no-signs", &[]));
        }
        if self.facts.paused {
            says.push(words.text("letter-paused", &[]));
        }
        LetterPart::of(words.text("letter-signs", &[]), says, points)
    }

    fn sign(&self, one: &SignFacts) -> String {
        let words = self.words;
        let tier = match one.tier {
            Tier::Emergency => words.text("reading-tier-emergency", &[]),
            Tier::Stop => words.text("reading-tier-stop", &[]),
            Tier::AskFirst => words.text("reading-tier-ask-first", &[]),
            Tier::Note => words.text("reading-tier-note", &[]),
        };
        let mut values = vec![
            ("day", self.day(one.day)),
            ("sign", words.text(one.sign.name_id(), &[]).into()),
            ("tier", tier.into()),
        ];
        match one.since {
            SignSince::Open => words.text("letter-sign-open", &values),
            SignSince::Talked(day) => {
                values.push(("talked", self.day(day)));
                words.text("letter-sign-talked", &values)
            }
            SignSince::NotOpen => words.text("letter-sign", &values),
        }
    }

    /// The plan in force.
    pub(super) fn plan(&self) -> LetterPart {
        let words = self.words;
        let mut says = Vec::new();
        match &self.facts.plan {
            Some(plan) => says.push(words.text(
                "letter-plan-of",
                &[
                    ("clinician", plan.clinician.as_str().into()),
                    ("revision", plan.revision.get().into()),
                    ("issued", self.day(plan.issued)),
                    ("review", self.day(plan.review_by)),
                ],
            )),
            None => says.push(words.text("letter-no-plan", &[])),
        }
        if let Some(step) = self.facts.steps.iter().rfind(|step| step.in_use) {
            let position = short::position(words, step.position).into();
            let values = [
                ("step", self.named(step)),
                ("position", position),
                ("schedule", short::schedule(words, &step.schedule).into()),
            ];
            says.push(words.text("letter-step-now", &values));
        }
        LetterPart::of(words.text("letter-plan", &[]), says, vec![])
    }

    /// How it is to be read.
    pub(super) fn closing(&self) -> LetterPart {
        LetterPart::plain(vec![match self.reader {
            Reader::Clinician => self.words.text("letter-closing", &[]),
            Reader::Person => self.words.text("letter-closing-copy", &[]),
        }])
    }
}
