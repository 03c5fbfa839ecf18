//! What is different between two revisions of a programme, in plain sentences. Steps are told apart by their
//! ids, whatever their place; the conditions of a rule by what they say.
//!
//! Decides nothing; what a revision means for a diary is the rule engine's (sentence S4), and said here where
//! it follows from the two programmes alone. No line of the programme's form goes unnoticed, which a test
//! demands; a revision's own number, its id and when it was issued are no differences.

use super::plan::{IntendedFor, PracticePlan, Programme, Step};
use super::readback::plain::{
    capital, day, days, hours, minutes, name_of, place, position, rated, schedule, sign, tier,
};
use super::readback::{To, breath, part, rules};
use super::rule::Rule;
use super::values::{Practice, RatingKind, StepId};
use crate::words::Words;

/// What is different in the later one, a sentence each; none where nothing is.
#[must_use]
pub fn differences(before: &Programme, after: &Programme, words: &Words) -> Vec<String> {
    let mut two = Two { before, after, words, said: Vec::new() };
    two.who();
    two.steps();
    two.practices();
    two.rules();
    two.asking();
    two.said
}

/// The two, and what was said of them so far.
struct Two<'a> {
    before: &'a Programme,
    after: &'a Programme,
    words: &'a Words,
    said: Vec<String>,
}

impl Two<'_> {
    /// One thing that both have.
    fn changed(&mut self, what: &str, before: &str, after: &str) {
        if before != after {
            let values = [
                ("what", capital(what).into()),
                ("before", before.into()),
                ("after", after.into()),
            ];
            self.said.push(self.words.text("compose-difference-changed", &values));
        }
    }

    /// One thing that either may lack.
    fn maybe(&mut self, what: &str, before: Option<String>, after: Option<String>) {
        match (before, after) {
            (Some(before), Some(after)) => self.changed(what, &before, &after),
            (before, after) => {
                self.listed(what, before.into_iter().collect(), after.into_iter().collect())
            }
        }
    }

    /// Things in no order that counts: what is gone, and what is new.
    fn listed(&mut self, what: &str, before: Vec<String>, after: Vec<String>) {
        let mut left = after;
        for gone in before {
            match left.iter().position(|one| *one == gone) {
                Some(at) => drop(left.remove(at)),
                None => {
                    let values = [("what", capital(what).into()), ("gone", gone.into())];
                    self.said.push(self.words.text("compose-difference-gone", &values));
                }
            }
        }
        for new in left {
            let values = [("what", capital(what).into()), ("new", new.into())];
            self.said.push(self.words.text("compose-difference-new", &values));
        }
    }

    fn say(&self, id: &str) -> String {
        self.words.text(id, &[])
    }

    /// A step as it stands in the later programme; where it is gone, as it stood.
    fn naming(&self, id: &StepId) -> String {
        let stands = self.after.step_index(id).map(|at| (at, self.after));
        let stood = || self.before.step_index(id).map(|at| (at, self.before));
        match stands.or_else(stood).and_then(|(at, in_it)| Some((at, in_it.steps.get(at)?))) {
            Some((at, step)) => self.words.text(
                "readback-step-named",
                &[("number", place(at + 1)), ("name", step.name.to_string().into())],
            ),
            None => self.words.text("readback-step-unknown", &[("id", id.to_string().into())]),
        }
    }

    fn who(&mut self) {
        let (a, b, words) = (self.before, self.after, self.words);
        let text = |id: &str| words.text(id, &[]);
        let who = |p: &Programme| match p.intended_for {
            IntendedFor::Adult => words.text("readback-adult", &[]),
            IntendedFor::YoungerSafeguardingConfirmed => words.text("readback-younger", &[]),
        };
        let mut lines = vec![
            (words.text("compose-for-whom", &[]), a.for_whom.to_string(), b.for_whom.to_string()),
            (words.text("compose-intended-for", &[]), who(a), who(b)),
            (words.text("compose-language", &[]), a.language.to_string(), b.language.to_string()),
        ];
        let mut line = |what: String, before: &dyn ToString, after: &dyn ToString| {
            lines.push((what, before.to_string(), after.to_string()));
        };
        use crate::message_id as id;
        line(text(id!("compose-clinician-name")), &a.clinician.name, &b.clinician.name);
        line(text(id!("compose-clinician-clinic")), &a.clinician.clinic, &b.clinician.clinic);
        line(text(id!("compose-contact-name")), &a.contact.name, &b.contact.name);
        line(text(id!("compose-contact-phone")), &a.contact.phone, &b.contact.phone);
        line(text(id!("compose-contact-hours")), &a.contact.hours, &b.contact.hours);
        let (own, other) = (&a.contact.if_nobody_answers, &b.contact.if_nobody_answers);
        line(text(id!("compose-contact-nobody")), own, other);
        let (own, other) = (&a.out_of_hours.what_to_do, &b.out_of_hours.what_to_do);
        line(text(id!("compose-out-of-hours")), own, other);
        line(text(id!("compose-emergency-number")), &a.emergency.number, &b.emergency.number);
        line(text(id!("compose-emergency-country")), &a.emergency.country, &b.emergency.country);
        let (own, other) = (day(a.review_by, words), day(b.review_by, words));
        line(text(id!("compose-review-by")), &own, &other);
        for (what, before, after) in lines {
            self.changed(&what, &before, &after);
        }
        let phone = |p: &Programme| p.out_of_hours.phone.as_ref().map(ToString::to_string);
        self.maybe(&self.say(id!("compose-out-of-hours-phone")), phone(a), phone(b));
    }

    fn steps(&mut self) {
        let (a, b) = (self.before, self.after);
        for step in a.steps.iter().filter(|step| b.step(&step.id).is_none()) {
            let gone = self.naming(&step.id);
            self.said
                .push(self.words.text("compose-difference-step-gone", &[("step", gone.into())]));
        }
        for (index, step) in b.steps.iter().enumerate() {
            match a.step(&step.id) {
                Some(earlier) => self.one_step(earlier, step),
                None => {
                    let new =
                        super::readback::one_step(index, step, To::Clinician, self.words).into();
                    self.said
                        .push(self.words.text("compose-difference-step-new", &[("step", new)]));
                }
            }
        }
        let common = |p: &Programme, other: &Programme| -> Vec<StepId> {
            let ids = p.steps.iter().map(|step| step.id.clone());
            ids.filter(|id| other.step(id).is_some()).collect()
        };
        let order = common(b, a);
        if order != common(a, b) {
            let order: Vec<String> = order.iter().map(|id| self.naming(id)).collect();
            let order = order.join("; ").into();
            self.said.push(self.words.text("compose-difference-order", &[("order", order)]));
        }
        let start = |p: &Programme| p.start_at.as_ref().map(|id| self.naming(id));
        let (from, to) = (start(a), start(b));
        self.maybe(&self.words.text("compose-start-at", &[]), from, to.clone());
        self.anew(to);
    }

    /// On which steps a person begins anew (S4).
    fn anew(&mut self, start: Option<String>) {
        let (a, b) = (self.before, self.after);
        let goes_on = |step: &Step| b.step(&step.id).is_some_and(|later| later.same_work(step));
        let changed: Vec<String> = a
            .steps
            .iter()
            .filter(|step| !goes_on(step))
            .map(|step| self.naming(&step.id))
            .collect();
        if let (Some(start), false) = (start, changed.is_empty()) {
            let values = [("steps", changed.join("; ").into()), ("start", start.into())];
            self.said.push(self.words.text("compose-difference-anew", &values));
        }
    }

    fn one_step(&mut self, a: &Step, b: &Step) {
        let words = self.words;
        let named = self.naming(&b.id);
        let what = |field: String| {
            words.text("compose-where", &[("at", named.clone().into()), ("field", field.into())])
        };
        let parts = |step: &Step| {
            let parts: Vec<String> = step.parts.iter().map(|one| part(one, words)).collect();
            parts.join(&words.text("common-then", &[]))
        };
        let lines = [
            (words.text("compose-step-name", &[]), a.name.to_string(), b.name.to_string()),
            (
                words.text("compose-step-practice", &[]),
                name_of(&a.practice, words),
                name_of(&b.practice, words),
            ),
            (words.text("compose-topic-parts", &[]), parts(a), parts(b)),
            (
                words.text("compose-position", &[]),
                position(a.position, words),
                position(b.position, words),
            ),
            (
                words.text("compose-topic-schedule", &[]),
                schedule(a.schedule, words),
                schedule(b.schedule, words),
            ),
            (
                words.text("compose-topic-instruction", &[]),
                a.instruction.to_string(),
                b.instruction.to_string(),
            ),
        ];
        for (field, before, after) in lines {
            self.changed(&what(field), &before, &after);
        }
        let marks = |step: &Step| {
            let gate = step.gate.then(|| words.text("readback-step-gate", &[]));
            let maintain = step.maintain.then(|| words.text("readback-step-maintain", &[]));
            gate.into_iter().chain(maintain).collect::<Vec<String>>()
        };
        self.listed(&named, marks(a), marks(b));
        if a.rule.is_some() || b.rule.is_some() {
            self.rule(Some(&named), a.rule.as_ref(), b.rule.as_ref());
        }
    }

    fn practices(&mut self) {
        let words = self.words;
        let (a, b) = (self.before, self.after);
        let find = |p: &Programme, practice: &Practice| -> Option<PracticePlan> {
            p.practices.iter().find(|one| one.practice == *practice).cloned()
        };
        for gone in a.practices.iter().filter(|one| find(b, &one.practice).is_none()) {
            let gone = gone.name.to_string().into();
            self.said.push(words.text("compose-difference-practice-gone", &[("practice", gone)]));
        }
        for later in &b.practices {
            let Some(earlier) = find(a, &later.practice) else {
                let new = super::readback::practice(later, To::Clinician, words).into();
                self.said.push(words.text("compose-difference-practice-new", &[("practice", new)]));
                continue;
            };
            let named: String = later.name.to_string();
            let what = |field: String| {
                words
                    .text("compose-where", &[("at", named.clone().into()), ("field", field.into())])
            };
            let lines = [
                (
                    words.text("compose-practice-name", &[]),
                    earlier.name.to_string(),
                    later.name.to_string(),
                ),
                (
                    words.text("compose-topic-minutes", &[]),
                    minutes(earlier.minutes, words),
                    minutes(later.minutes, words),
                ),
                (
                    words.text("compose-topic-schedule", &[]),
                    schedule(earlier.schedule, words),
                    schedule(later.schedule, words),
                ),
                (
                    words.text("compose-topic-instruction", &[]),
                    earlier.instruction.to_string(),
                    later.instruction.to_string(),
                ),
            ];
            for (field, before, after) in lines {
                self.changed(&what(field), &before, &after);
            }
            let pattern = |plan: &PracticePlan| plan.breath.map(|one| breath(one, words));
            self.maybe(
                &what(words.text("compose-topic-breath", &[])),
                pattern(&earlier),
                pattern(later),
            );
        }
    }

    fn rules(&mut self) {
        self.rule(None, self.before.rule.as_ref(), self.after.rule.as_ref());
        let late = |p: &Programme| hours(p.late_after_hours.get(), self.words);
        let (before, after) = (late(self.before), late(self.after));
        self.changed(&self.words.text("compose-late", &[]), &before, &after);
    }

    fn rule(&mut self, whose: Option<&str>, a: Option<&Rule>, b: Option<&Rule>) {
        let words = self.words;
        let whose = match whose {
            Some(step) => words.text("compose-topic-own-rule", &[("step", step.into())]),
            None => words.text("compose-topic-rule", &[]),
        };
        let what = |field: String| {
            words.text("compose-where", &[("at", whose.clone().into()), ("field", field.into())])
        };
        let two = &*self;
        let naming = |id: &StepId| two.naming(id);
        let up = |rule: Option<&Rule>| -> Vec<String> {
            let Some(rule) = rule else { return vec![words.text("compose-topic-no-rule", &[])] };
            let Some(up) = &rule.step_up else {
                return vec![words.text("compose-topic-never", &[])];
            };
            up.all_of.iter().map(|one| rules::up_criterion(*one, words)).collect()
        };
        let back = |rule: Option<&Rule>| -> Vec<String> {
            let back = rule.map(|rule| rule.step_back.as_slice()).unwrap_or_default();
            back.iter().map(|one| rules::step_back(one, &naming, words)).collect()
        };
        let pause = |rule: Option<&Rule>| -> Vec<String> {
            let pause = rule.map(|rule| rule.pause.as_slice()).unwrap_or_default();
            pause.iter().map(|one| rules::pause(*one, words)).collect()
        };
        let gap = |rule: Option<&Rule>| {
            rule.and_then(|rule| rule.after_gap_days).map(|gap| days(gap.get(), words))
        };
        let (up_a, up_b, back_a, back_b) = (up(a), up(b), back(a), back(b));
        self.listed(&what(words.text("compose-topic-up", &[])), up_a, up_b);
        self.listed(&what(words.text("compose-topic-back", &[])), back_a, back_b);
        self.listed(&what(words.text("compose-topic-pause", &[])), pause(a), pause(b));
        self.maybe(&what(words.text("compose-topic-gap", &[])), gap(a), gap(b));
    }

    fn asking(&mut self) {
        let (a, b, words) = (self.before, self.after, self.words);
        let often = |p: &Programme| days(p.screening_every_days.get(), words);
        self.changed(&words.text("compose-screening", &[]), &often(a), &often(b));
        let asked = |p: &Programme| {
            let kinds = RatingKind::ALL.into_iter().filter(|kind| p.ratings_asked.contains(kind));
            kinds.map(|kind| rated(kind, words)).collect::<Vec<String>>()
        };
        self.listed(&words.text("compose-ratings-asked", &[]), asked(a), asked(b));
        let stricter = |p: &Programme| {
            let lines = p.stricter_signs.iter();
            lines
                .map(|one| {
                    let (sign, tier) = (sign(one.sign, words).into(), tier(one.tier, words).into());
                    words.text("compose-topic-sign-is", &[("sign", sign), ("tier", tier)])
                })
                .collect::<Vec<String>>()
        };
        self.listed(&words.text("compose-stricter", &[]), stricter(a), stricter(b));
        let spotting =
            |p: &Programme| p.spotting_note_only.then(|| words.text("compose-topic-yes", &[]));
        self.maybe(&words.text("compose-spotting", &[]), spotting(a), spotting(b));
        let seen = |p: &Programme| {
            let keys = p.signs_seen.iter();
            keys.map(|key| {
                let (sign, entry) = (sign(key.sign, words).into(), key.entry.to_string().into());
                words.text("compose-topic-sign-of", &[("sign", sign), ("entry", entry)])
            })
            .collect::<Vec<String>>()
        };
        self.listed(&words.text("compose-signs-seen", &[]), seen(a), seen(b));
        let texts = |list: &[crate::programme::values::Line]| {
            list.iter().map(ToString::to_string).collect::<Vec<String>>()
        };
        self.listed(
            &words.text("compose-activities", &[]),
            texts(&a.activities),
            texts(&b.activities),
        );
        let every = |p: &Programme| p.activities_every_days.map(|every| days(every.get(), words));
        self.maybe(&words.text("compose-activities-every", &[]), every(a), every(b));
        self.listed(&words.text("compose-goals", &[]), texts(&a.goals), texts(&b.goals));
        let own =
            |p: &Programme| p.own_cautions.iter().map(ToString::to_string).collect::<Vec<_>>();
        self.listed(&words.text("compose-own-cautions", &[]), own(a), own(b));
        let manner = |p: &Programme| {
            let lines = [
                (p.manner.numbers_folded, words.text("readback-numbers-folded", &[])),
                (p.manner.grounding_first, words.text("readback-grounding-first", &[])),
                (p.manner.contact_on_stop, words.text("readback-contact-on-stop", &[])),
            ];
            lines.into_iter().filter_map(|(on, says)| on.then_some(says)).collect::<Vec<String>>()
        };
        self.listed(&words.text("compose-manner", &[]), manner(a), manner(b));
        let readers = |p: &Programme| {
            let readers = p.recipients.iter();
            readers.map(|one| format!("{} ({})", one.name, one.key)).collect::<Vec<String>>()
        };
        self.listed(&words.text("compose-recipients", &[]), readers(a), readers(b));
    }
}

#[cfg(test)]
mod tests;
