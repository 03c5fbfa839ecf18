//! A draft read back in plain sentences while it is being written: what is complete as the programme's own
//! reading back says it, and that something is still missing where it is. Of a draft in which nothing has to be
//! put right it is the programme's reading back, sentence for sentence.

use super::super::plan::Programme;
use super::super::readback::plain::place;
use super::super::readback::{self, To, rules};
use super::super::rule::Rule;
use super::super::values::StepId;
use super::check::{Checked, Partly};
use super::{Draft, RuleDraft};
use crate::words::Words;

/// The sentences of one part of the form.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// Which part.
    pub part: Part,
    /// A sentence each.
    pub sentences: Vec<String>,
}

/// The parts of the form, in order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// Who it is for and from, and whom to call.
    Who,
    /// The ladder.
    Steps,
    /// The other practices.
    Practices,
    /// The rule.
    Rule,
    /// What is asked, and which signs are taken how.
    Asking,
    /// How it is shown, and who can read a summary.
    Around,
}

/// Which fields each sentence about who and whom to call is made from, in order.
const HEAD: [&[&str]; 6] = [
    &["for_whom", "intended_for"],
    &["clinician", "language"],
    &["review_by"],
    &["contact"],
    &["out_of_hours"],
    &["emergency"],
];

impl Draft {
    /// "step 2, “Size 2”", as it is typed so far.
    #[must_use]
    pub fn step_named(&self, id: &StepId, words: &Words) -> String {
        let found = self.steps.iter().enumerate().find(|(_, step)| step.id == id.as_str());
        match found {
            Some((index, step)) if step.name.is_empty() => {
                words.text("compose-step-number", &[("number", place(index + 1))])
            }
            Some((index, step)) => words.text(
                "readback-step-named",
                &[("number", place(index + 1)), ("name", step.name.trimmed().into())],
            ),
            None => words.text("compose-step-gone", &[]),
        }
    }

    pub(super) fn steps_named(&self, ids: &[StepId], words: &Words) -> String {
        ids.iter().map(|id| self.step_named(id, words)).collect::<Vec<_>>().join("; ")
    }

    /// Everything that can be said of the draft, part by part.
    #[must_use]
    pub fn said(&self, checked: &Checked, words: &Words) -> Vec<Said> {
        let Some(frame) = &checked.so_far.frame else { return Vec::new() };
        let reader = Reader { draft: self, checked, frame, words };
        let part = |part, sentences| Said { part, sentences };
        vec![
            part(Part::Who, reader.who()),
            part(Part::Steps, reader.steps()),
            part(Part::Practices, reader.practices()),
            part(Part::Rule, reader.rule()),
            part(Part::Asking, reader.asking()),
            part(Part::Around, reader.around()),
        ]
    }
}

struct Reader<'a> {
    draft: &'a Draft,
    checked: &'a Checked,
    frame: &'a Programme,
    words: &'a Words,
}

impl Reader<'_> {
    fn amiss_in(&self, outer: &str) -> bool {
        self.checked.mistakes.iter().any(|mistake| mistake.place.is_in(outer))
    }

    fn unfinished(&self) -> String {
        self.words.text("compose-said-unfinished", &[])
    }

    fn who(&self) -> Vec<String> {
        let mut all = Vec::new();
        readback::head(self.frame, To::Clinician, self.words, &mut all);
        let mut said = Vec::new();
        let mut missing = false;
        for (sentence, fields) in all.into_iter().zip(HEAD) {
            if fields.iter().any(|field| self.amiss_in(field)) {
                missing = true;
            } else {
                said.push(sentence);
            }
        }
        said.extend(missing.then(|| self.unfinished()));
        said
    }

    fn steps(&self) -> Vec<String> {
        let so_far = &self.checked.so_far;
        let mut said = Vec::new();
        if let Some(whole) = so_far.whole.as_ref().filter(|_| !self.amiss_in("start_at")) {
            readback::ladder(whole, To::Clinician, self.words, &mut said);
            return said;
        }
        for (index, step) in so_far.steps.iter().enumerate() {
            let number = place(index + 1);
            match step {
                Some(step) => said.push(readback::one_step(index, step, To::Clinician, self.words)),
                None => {
                    said.push(
                        self.words.text("compose-said-step-unfinished", &[("number", number)]),
                    );
                }
            }
            if let Some(own) = so_far.own_rules.get(index).and_then(Option::as_ref) {
                let on = self.words.text("readback-on-step", &[("number", place(index + 1))]);
                let typed = self.draft.steps.get(index).and_then(|step| step.rule.as_ref());
                self.one_rule(own, typed, &on, &mut said);
            }
        }
        said
    }

    fn practices(&self) -> Vec<String> {
        let practices = self.checked.so_far.practices.iter().enumerate();
        practices
            .map(|(index, plan)| match plan {
                Some(plan) => readback::practice(plan, To::Clinician, self.words),
                None => self
                    .words
                    .text("compose-said-practice-unfinished", &[("number", place(index + 1))]),
            })
            .collect()
    }

    fn rule(&self) -> Vec<String> {
        let mut said = Vec::new();
        let late_known = !self.amiss_in("late_after_hours");
        if let Some(whole) = self.checked.so_far.whole.as_ref().filter(|_| late_known) {
            rules::of_the_programme(whole, self.words, &mut said);
            return said;
        }
        let own = self.draft.steps.iter().any(|step| step.rule.is_some());
        match &self.checked.so_far.rule {
            Some(rule) => {
                let on = if own {
                    self.words.text("readback-on-other-steps", &[])
                } else {
                    self.words.text("readback-on-every-step", &[])
                };
                self.one_rule(rule, self.draft.rule.as_ref(), &on, &mut said);
            }
            None if !own => said.push(self.words.text("readback-no-rule", &[])),
            None => {}
        }
        said
    }

    /// A rule as far as it goes. That going up is never suggested is not said of a rule whose conditions of
    /// going up are only unfinished.
    fn one_rule(
        &self,
        rule: &Partly<Rule>,
        typed: Option<&RuleDraft>,
        on: &str,
        said: &mut Vec<String>,
    ) {
        let naming = |id: &StepId| self.draft.step_named(id, self.words);
        let mut own = Vec::new();
        rules::rule(&rule.value, on, &naming, self.words, &mut own);
        let meant = typed.is_some_and(|typed| !typed.step_up.is_empty());
        if meant && rule.value.step_up.is_none() && !own.is_empty() {
            own.remove(0);
        }
        said.extend(own);
        said.extend(rule.unfinished.then(|| self.words.text("compose-said-rule-unfinished", &[])));
    }

    fn asking(&self) -> Vec<String> {
        let mut said = Vec::new();
        readback::asking(self.frame, self.words, &mut said);
        // The second sentence says how often the cautions are asked.
        if self.amiss_in("screening_every_days") && said.len() > 1 {
            said.remove(1);
            said.push(self.unfinished());
        }
        readback::signs(self.frame, To::Clinician, self.words, &mut said);
        said
    }

    fn around(&self) -> Vec<String> {
        let mut said = Vec::new();
        readback::around(self.frame, To::Clinician, self.words, &mut said);
        said
    }
}
