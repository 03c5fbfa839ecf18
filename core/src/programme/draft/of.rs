//! A draft of a programme that there is: every line of it as it would have been typed.

use super::super::plan::{
    Breath, MinutesSpan, Part, PracticePlan, Programme, Recipient, Schedule, Step,
};
use super::super::rule::{BackCriterion, PauseCriterion, Rule, StepBack, UpCriterion, Window};
use super::super::values::{Line, Passage, Practice};
use super::typed::{Choice, TargetChoice, Typed};
use super::{
    BackDraft, BreathDraft, ClinicianDraft, ContactDraft, Draft, EmergencyDraft, MannerDraft,
    OutOfHoursDraft, PartDraft, PauseDraft, PracticeDraft, RecipientDraft, RuleDraft,
    ScheduleDraft, SeenDraft, StepBackDraft, StepDraft, StricterDraft, UpDraft,
};

impl From<&Programme> for Draft {
    /// Every line, signs seen included.
    fn from(p: &Programme) -> Self {
        let mut draft = Self {
            for_whom: line(&p.for_whom),
            intended_for: Choice(Some(p.intended_for)),
            language: line(&p.language),
            clinician: ClinicianDraft {
                name: line(&p.clinician.name),
                clinic: line(&p.clinician.clinic),
            },
            contact: ContactDraft {
                name: line(&p.contact.name),
                phone: line(&p.contact.phone),
                hours: line(&p.contact.hours),
                if_nobody_answers: passage(&p.contact.if_nobody_answers),
            },
            out_of_hours: OutOfHoursDraft {
                what_to_do: passage(&p.out_of_hours.what_to_do),
                phone: p.out_of_hours.phone.as_ref().map(line).unwrap_or_default(),
            },
            emergency: EmergencyDraft {
                number: line(&p.emergency.number),
                country: line(&p.emergency.country),
            },
            review_by: Typed::new(p.review_by.to_string()),
            steps: p.steps.iter().map(step).collect(),
            start_at: Choice(p.start_at.clone()),
            practices: p.practices.iter().map(practice).collect(),
            rule: p.rule.as_ref().map(rule),
            screening_every_days: number(p.screening_every_days),
            stricter_signs: p
                .stricter_signs
                .iter()
                .map(|one| StricterDraft {
                    sign: Choice(Some(one.sign)),
                    tier: Choice(Some(one.tier)),
                })
                .collect(),
            spotting_note_only: p.spotting_note_only,
            ratings_asked: p.ratings_asked.clone(),
            late_after_hours: number(p.late_after_hours),
            recipients: p.recipients.iter().map(recipient).collect(),
            signs_seen: p
                .signs_seen
                .iter()
                .map(|key| SeenDraft { key: *key, told: None, seen: true })
                .collect(),
            activities: p.activities.iter().map(line).collect(),
            activities_every_days: p.activities_every_days.map(number).unwrap_or_default(),
            goals: p.goals.iter().map(line).collect(),
            own_cautions: p.own_cautions.iter().map(passage).collect(),
            manner: MannerDraft {
                numbers_folded: p.manner.numbers_folded,
                grounding_first: p.manner.grounding_first,
                contact_on_stop: p.manner.contact_on_stop,
            },
            removed: None,
            shape: 0,
            ids_given: 0,
        };
        draft.count_ids();
        draft
    }
}

impl Draft {
    /// A draft of the next revision. Signs that the earlier one closed are offered again but not ticked: who
    /// closes a sign has looked at it now.
    #[must_use]
    pub fn next_of(programme: &Programme) -> Self {
        let mut draft = Self::from(programme);
        draft.signs_seen.iter_mut().for_each(|one| one.seen = false);
        draft
    }
}

fn line(line: &Line) -> Typed {
    Typed::new(line.as_str())
}

fn passage(passage: &Passage) -> Typed {
    Typed::new(passage.as_str())
}

fn number(value: impl Into<u64>) -> Typed {
    Typed::new(value.into().to_string())
}

/// `22` or `22.5`.
fn tenths(value: impl Into<u64>) -> Typed {
    let value = value.into();
    match (value / 10, value % 10) {
        (whole, 0) => Typed::new(whole.to_string()),
        (whole, tenth) => Typed::new(format!("{whole}.{tenth}")),
    }
}

fn step(step: &Step) -> StepDraft {
    StepDraft {
        id: step.id.to_string(),
        name: line(&step.name),
        practice: Choice(Some(step.practice.clone())),
        parts: step.parts.iter().map(part).collect(),
        position: Choice(Some(step.position)),
        schedule: schedule(step.schedule),
        instruction: passage(&step.instruction),
        gate: step.gate,
        maintain: step.maintain,
        rule: step.rule.as_ref().map(rule),
    }
}

fn part(part: &Part) -> PartDraft {
    let MinutesSpan { least, most } = part.minutes;
    let trainer = part.trainer.as_ref();
    PartDraft {
        label: trainer.map(|one| line(&one.label)).unwrap_or_default(),
        size_mm: trainer.map(|one| tenths(one.widest_diameter_tenths_mm)).unwrap_or_default(),
        minutes_least: number(least),
        minutes_most: number(most),
    }
}

fn schedule(schedule: Schedule) -> ScheduleDraft {
    ScheduleDraft {
        weekly_least: number(schedule.weekly_least),
        weekly_most: number(schedule.weekly_most),
        daily_most: number(schedule.daily_most),
        rest_days: schedule.rest_days.map(number).unwrap_or_default(),
    }
}

fn practice(plan: &PracticePlan) -> PracticeDraft {
    PracticeDraft {
        id: match &plan.practice {
            Practice::Other(id) => id.to_string(),
            _ => String::new(),
        },
        practice: Choice(Some(plan.practice.clone())),
        name: line(&plan.name),
        minutes_least: number(plan.minutes.least),
        minutes_most: number(plan.minutes.most),
        schedule: schedule(plan.schedule),
        breath: plan.breath.map(breath).unwrap_or_default(),
        instruction: passage(&plan.instruction),
    }
}

fn breath(breath: Breath) -> BreathDraft {
    BreathDraft {
        in_seconds: tenths(breath.in_tenths),
        hold_in_seconds: tenths(breath.hold_in_tenths),
        out_seconds: tenths(breath.out_tenths),
        hold_out_seconds: tenths(breath.hold_out_tenths),
    }
}

fn recipient(one: &Recipient) -> RecipientDraft {
    RecipientDraft { name: line(&one.name), key: line(&one.key) }
}

fn rule(rule: &Rule) -> RuleDraft {
    RuleDraft {
        step_up: rule.step_up.iter().flat_map(|up| &up.all_of).map(|one| self::up(*one)).collect(),
        step_back: rule.step_back.iter().map(step_back).collect(),
        pause: rule.pause.iter().map(|one| pause(*one)).collect(),
        after_gap_days: rule.after_gap_days.map(number).unwrap_or_default(),
    }
}

fn up(criterion: UpCriterion) -> UpDraft {
    match criterion {
        UpCriterion::DaysOnStep { days } => UpDraft::DaysOnStep { days: number(days) },
        UpCriterion::Sessions { practised_days, within_days } => UpDraft::Sessions {
            practised_days: number(practised_days),
            within_days: number(within_days),
        },
        UpCriterion::DiscomfortAtMost { rating, at_most, last } => UpDraft::DiscomfortAtMost {
            rating: Choice(Some(rating)),
            at_most: number(at_most),
            last: number(last),
        },
        UpCriterion::SignFreeDays { days } => UpDraft::SignFreeDays { days: number(days) },
        UpCriterion::FeelsReady {} => UpDraft::FeelsReady {},
    }
}

fn window(window: Window) -> (Typed, Typed) {
    (Typed::new(window.sessions().to_string()), Typed::new(window.of_last().to_string()))
}

fn step_back(back: &StepBack) -> StepBackDraft {
    let when = match back.when {
        BackCriterion::DiscomfortAtLeast { rating, at_least, window: of } => {
            let (sessions, of_last) = window(of);
            let (rating, at_least) = (Choice(Some(rating)), number(at_least));
            BackDraft::DiscomfortAtLeast { rating, at_least, sessions, of_last }
        }
        BackCriterion::StoppedEarly { window: of } => {
            let (sessions, of_last) = window(of);
            BackDraft::StoppedEarly { sessions, of_last }
        }
        BackCriterion::DaysWithoutPractice { days } => {
            BackDraft::DaysWithoutPractice { days: number(days) }
        }
    };
    StepBackDraft { when, target: Choice(Some(TargetChoice(back.target.clone()))) }
}

fn pause(criterion: PauseCriterion) -> PauseDraft {
    match criterion {
        PauseCriterion::DiscomfortAtLeast { rating, at_least, window: of } => {
            let (sessions, of_last) = window(of);
            let (rating, at_least) = (Choice(Some(rating)), number(at_least));
            PauseDraft::DiscomfortAtLeast { rating, at_least, sessions, of_last }
        }
        PauseCriterion::StoppedEarly { window: of } => {
            let (sessions, of_last) = window(of);
            PauseDraft::StoppedEarly { sessions, of_last }
        }
        PauseCriterion::DaysWithoutPractice { days } => {
            PauseDraft::DaysWithoutPractice { days: number(days) }
        }
        PauseCriterion::StepsBack { times, within_days } => {
            PauseDraft::StepsBack { times: number(times), within_days: number(within_days) }
        }
    }
}
