//! Decides the outcome (O1 to O5) from the criteria, and gathers the reasons.

use super::lens::{Behind, Ground, Lens};
use super::line::Rung;
use super::outcome::{
    Assessment, Bar, Basis, Criterion, Finding, Outcome, Part, Pause, RuleOf, Verdict,
};
use crate::programme::plan::Programme;
use crate::programme::rule::{BackCriterion, PauseCriterion, Target};

/// What the criteria come to, before the order of outcomes is applied.
struct Sum {
    /// A pause criterion is met.
    pausing: bool,
    /// Index of the lowest step a met step-back criterion leads to.
    back: Option<usize>,
    /// All of step up is met, and there is any.
    up: bool,
    /// Something bars a step up.
    barred: bool,
}

/// Index of the step that a target leads to; one not earlier than the current step reads as previous.
fn lead(target: &Target, rung: &Rung<'_>) -> usize {
    let previous = rung.index.saturating_sub(1);
    match target {
        Target::Previous => previous,
        Target::First => 0,
        Target::Step(id) => {
            rung.plan.step_index(id).filter(|index| *index < rung.index).unwrap_or(previous)
        }
    }
}

/// A step-back criterion means the same as that of pause, but for [`Lens::behind_criterion`]'s flag.
fn as_pause(criterion: BackCriterion) -> PauseCriterion {
    match criterion {
        BackCriterion::DiscomfortAtLeast { rating, at_least, window } => {
            PauseCriterion::DiscomfortAtLeast { rating, at_least, window }
        }
        BackCriterion::StoppedEarly { window } => PauseCriterion::StoppedEarly { window },
        BackCriterion::DaysWithoutPractice { days } => PauseCriterion::DaysWithoutPractice { days },
    }
}

fn rule_of(plan: &Programme) -> RuleOf {
    RuleOf {
        programme: plan.id.clone(),
        revision: plan.revision,
        issued: plan.issued_at.day(),
        clinician: plan.clinician.name.as_str().to_owned(),
    }
}

impl<'a> Lens<'a> {
    /// The first pause criterion met now, if one is.
    pub(super) fn pause_met(&self) -> Option<PauseCriterion> {
        let ground = self.ground()?;
        if ground.rule.pause.is_empty() {
            return None;
        }
        let behind = self.behind(&ground);
        let met = |criterion: &&PauseCriterion| {
            self.behind_criterion(criterion, false, &ground, &behind).verdict == Verdict::Met
        };
        ground.rule.pause.iter().find(met).copied()
    }

    /// The pause that stands since an entry, or since an erase (O1, S3).
    pub(super) fn pause_standing(&self) -> Option<Pause> {
        let kept = &self.fold.kept;
        let closing = kept.course.last_closing();
        let latch = kept.latches.iter().find(|latch| latch.stands_after(closing));
        if let Some(latch) = latch {
            let criterion = Some(latch.criterion());
            return Some(Pause { criterion, latched_at: Some(latch.place) });
        }
        (kept.erased_pause > closing)
            .then_some(Pause { criterion: None, latched_at: Some(kept.erased_pause) })
    }

    /// The outcome alone.
    pub(super) fn outcome(&self) -> Outcome {
        if self.fold.kept.signs.any_open() || self.pause_standing().is_some() {
            return Outcome::PauseAndCall;
        }
        let Some(ground) = self.ground() else {
            return Outcome::Hold { tell_clinician: false };
        };
        let behind = self.behind(&ground);
        let mut known = true;
        for criterion in &ground.rule.pause {
            match self.behind_criterion(criterion, false, &ground, &behind).verdict {
                Verdict::Met => return Outcome::PauseAndCall,
                Verdict::Unknown => known = false,
                Verdict::Unmet => {}
            }
        }
        let mut back: Option<usize> = None;
        for way in &ground.rule.step_back {
            let criterion = as_pause(way.when);
            match self.behind_criterion(&criterion, true, &ground, &behind).verdict {
                Verdict::Met => {
                    let to = lead(&way.target, &ground.rung);
                    back = Some(back.map_or(to, |lowest| lowest.min(to)));
                }
                Verdict::Unknown => known = false,
                Verdict::Unmet => {}
            }
        }
        let barred = !known || back.is_some() || self.bars(&ground).next().is_some();
        let up = !barred && {
            let floor = self.floor(&ground);
            ground.rule.step_up.as_ref().is_some_and(|up| {
                !up.all_of.is_empty()
                    && up.all_of.iter().all(|criterion| {
                        self.up_criterion(criterion, &ground, floor).verdict == Verdict::Met
                    })
            })
        };
        decide(&Sum { pausing: false, back, up, barred }, &ground.rung)
    }

    /// The outcome with its reasons.
    pub(super) fn assess(&self) -> Assessment {
        let kept = &self.fold.kept;
        let open_signs = kept.signs.open();
        let standing = self.pause_standing();
        let Some(ground) = self.ground() else {
            let outcome = if !open_signs.is_empty() || standing.is_some() {
                Outcome::PauseAndCall
            } else {
                Outcome::Hold { tell_clinician: false }
            };
            return Assessment {
                outcome,
                basis: self.basis(),
                findings: Vec::new(),
                bars: Vec::new(),
                open_signs,
                pause: standing,
                clock: self.doubt,
            };
        };
        let behind = self.behind(&ground);
        let (findings, mut sum) = self.findings(&ground, &behind);
        let known = findings
            .iter()
            .filter(|finding| finding.part != Part::StepUp)
            .all(|finding| finding.verdict == Verdict::Unmet);
        let bars: Vec<Bar> = if ground.rule.step_up.is_some() {
            (!known).then_some(Bar::NotKnownUnmet).into_iter().chain(self.bars(&ground)).collect()
        } else {
            Vec::new()
        };
        sum.barred = !bars.is_empty();
        let met_now = findings.iter().find_map(|finding| match finding.criterion {
            Criterion::Pause(criterion) if finding.verdict == Verdict::Met => Some(criterion),
            _ => None,
        });
        let pause =
            standing.or(met_now.map(|met| Pause { criterion: Some(met), latched_at: None }));
        sum.pausing = pause.is_some() || !open_signs.is_empty();
        Assessment {
            outcome: decide(&sum, &ground.rung),
            basis: self.basis(),
            findings,
            bars,
            open_signs,
            pause,
            clock: self.doubt,
        }
    }

    fn findings(&self, ground: &Ground<'a>, behind: &Behind<'a>) -> (Vec<Finding>, Sum) {
        let rule = ground.rule;
        let mut sum = Sum { pausing: false, back: None, up: false, barred: true };
        let mut findings = Vec::new();
        for criterion in &rule.pause {
            let judged = self.behind_criterion(criterion, false, ground, behind);
            findings.push(Finding {
                part: Part::Pause,
                criterion: Criterion::Pause(*criterion),
                target: None,
                verdict: judged.verdict,
                entries: judged.entries,
                looked_at: judged.looked_at,
                missing: judged.missing,
            });
        }
        for way in &rule.step_back {
            let judged = self.behind_criterion(&as_pause(way.when), true, ground, behind);
            let to = lead(&way.target, &ground.rung);
            if judged.verdict == Verdict::Met {
                sum.back = Some(sum.back.map_or(to, |lowest| lowest.min(to)));
            }
            let earlier = (ground.rung.index > 0).then(|| ground.rung.plan.steps.get(to));
            findings.push(Finding {
                part: Part::StepBack,
                criterion: Criterion::Back(way.when),
                target: earlier.flatten().map(|step| step.id.clone()),
                verdict: judged.verdict,
                entries: judged.entries,
                looked_at: judged.looked_at,
                missing: judged.missing,
            });
        }
        if let Some(up) = &rule.step_up {
            let floor = self.floor(ground);
            sum.up = !up.all_of.is_empty();
            for criterion in &up.all_of {
                let judged = self.up_criterion(criterion, ground, floor);
                sum.up &= judged.verdict == Verdict::Met;
                findings.push(Finding {
                    part: Part::StepUp,
                    criterion: Criterion::Up(*criterion),
                    target: None,
                    verdict: judged.verdict,
                    entries: judged.entries,
                    looked_at: judged.looked_at,
                    missing: judged.missing,
                });
            }
        }
        (findings, sum)
    }

    /// What bars a step up (O3, F4), but for criteria not known to be unmet.
    fn bars(&self, ground: &Ground<'a>) -> impl Iterator<Item = Bar> + use<'a> {
        let kept = &self.fold.kept;
        let review_by = ground.rung.plan.review_by;
        let below = ground.last.is_some_and(|last| ground.rung.below(last));
        [
            (self.doubt.is_some(), Bar::UnsureClock),
            (!kept.confirmed(), Bar::StepNotConfirmed),
            (self.day > review_by, Bar::ReviewPassed),
            (kept.course.stays(), Bar::StayHere),
            (kept.missing_mark > kept.course.last_clearing(), Bar::EntriesMissing),
            (kept.restored_mark > kept.course.confirmed, Bar::RestoreNotConfirmed),
            (ground.rung.step.maintain, Bar::Maintain),
            (below, Bar::SmallerLast),
        ]
        .into_iter()
        .filter_map(|(bars, bar)| bars.then_some(bar))
    }

    fn basis(&self) -> Basis {
        let course = &self.fold.kept.course;
        let Some(plan) = self.fold.plan.as_deref() else { return Basis::NoProgramme };
        let rung = course
            .step
            .as_ref()
            .zip(course.step.as_ref().and_then(|current| Rung::new(plan, current.index)));
        match rung {
            None => Basis::NoSteps { rule_of: rule_of(plan) },
            Some((current, rung)) => Basis::Step {
                rule_of: rule_of(plan),
                step: current.id.clone(),
                began: current.at,
                confirmed: self.fold.kept.confirmed(),
                has_rule: self.fold.rule_on(&rung).is_some(),
            },
        }
    }
}

/// The first outcome that applies (O1 to O4).
fn decide(sum: &Sum, rung: &Rung<'_>) -> Outcome {
    if sum.pausing {
        return Outcome::PauseAndCall;
    }
    if let Some(to) = sum.back {
        return match rung.plan.steps.get(to).filter(|_| rung.index > 0) {
            Some(step) => Outcome::StepBack { to: step.id.clone() },
            None => Outcome::Hold { tell_clinician: true },
        };
    }
    if !sum.up || sum.barred {
        return Outcome::Hold { tell_clinician: false };
    }
    match rung.plan.steps.get(rung.index + 1).filter(|_| !rung.step.gate) {
        Some(next) => Outcome::StepUp { to: next.id.clone() },
        None => Outcome::ReadyToTalk,
    }
}
