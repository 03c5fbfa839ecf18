//! Says a whole programme back in plain English sentences, in order, so that the clinician and the person
//! can check that it is what was meant. Every line of the programme is said. The clinician's own texts are
//! repeated as they stand, in their own language.
//!
//! Decides nothing: what the sentences of a rule mean is [`crate::progression`]'s.

use std::fmt::Display;

use super::fault::rating_name;
use super::plan::{
    Breath, IntendedFor, MinutesSpan, Part, PracticePlan, Programme, Schedule, Step,
};
use super::rule::{BackCriterion, PauseCriterion, Rule, StepBack, Target, UpCriterion, Window};
use super::values::{Position, Practice, RatingKind, Size, StepId};
use crate::moment::Stamp;
use crate::safety::{Sign, Tier};

/// The whole programme in sentences, one each.
#[must_use]
pub fn read_back(programme: &Programme) -> Vec<String> {
    let mut said = Vec::new();
    head(programme, &mut said);
    ladder(programme, &mut said);
    for plan in &programme.practices {
        said.push(practice(plan));
    }
    if let Some(programmes_rule) = &programme.rule {
        let everywhere = programme.steps.iter().all(|step| step.rule.is_none());
        let on =
            if everywhere { "On every step" } else { "On every step without a rule of its own" };
        rule(programmes_rule, on, programme, &mut said);
    } else if programme.steps.iter().all(|step| step.rule.is_none()) {
        said.push("There is no rule: nothing is suggested.".to_owned());
    }
    if rules(programme).any(|rule| rule.step_up.is_some()) {
        said.push(format!(
            "A full session is one on the current step that was finished, with at least the least \
             minutes on its last part, a rating of the highest discomfort, no sign beyond one only \
             noted, and written down within {} of its beginning.",
            counted(programme.late_after_hours.get(), "hour")
        ));
    } else {
        let hours = counted(programme.late_after_hours.get(), "hour");
        said.push(format!(
            "A session written down later than {hours} after it began is marked late."
        ));
    }
    asking(programme, &mut said);
    signs(programme, &mut said);
    around(programme, &mut said);
    said
}

fn rules(programme: &Programme) -> impl Iterator<Item = &Rule> {
    programme.rule.iter().chain(programme.steps.iter().filter_map(|step| step.rule.as_ref()))
}

fn head(p: &Programme, said: &mut Vec<String>) {
    let whom = match p.intended_for {
        IntendedFor::Adult => "an adult",
        IntendedFor::YoungerSafeguardingConfirmed => {
            "someone not yet adult; the clinician confirms that local safeguarding was followed"
        }
    };
    said.push(format!(
        "This is revision {} of the programme \"{}\", for {}: {whom}.",
        p.revision.get(),
        p.id,
        p.for_whom
    ));
    said.push(format!(
        "It was written by {}, {}, and issued on {}; its own texts are in the language \"{}\".",
        p.clinician.name,
        p.clinician.clinic,
        at(&p.issued_at),
        p.language
    ));
    said.push(format!(
        "The clinician looks at it again by {}; after that day nothing suggests going up until then.",
        day(p.review_by)
    ));
    said.push(format!(
        "Contact: {}, telephone {}, {}. If nobody answers: {}",
        p.contact.name, p.contact.phone, p.contact.hours, p.contact.if_nobody_answers
    ));
    let phone = p.out_of_hours.phone.as_ref().map(|phone| format!(" Telephone {phone}."));
    said.push(format!(
        "Outside those hours: {}{}",
        p.out_of_hours.what_to_do,
        phone.unwrap_or_default()
    ));
    said.push(format!(
        "In an emergency in this country, {}: {}. Elsewhere the local number is right.",
        p.emergency.country, p.emergency.number
    ));
}

fn ladder(p: &Programme, said: &mut Vec<String>) {
    if p.steps.is_empty() {
        said.push("There are no steps.".to_owned());
        return;
    }
    let start = p.start_at.as_ref().map(|id| format!(", beginning at {}", step_named(p, id)));
    said.push(format!(
        "There {} {}, lowest first{}.",
        if p.steps.len() == 1 { "is" } else { "are" },
        counted(p.steps.len(), "step"),
        start.unwrap_or_default()
    ));
    for (index, step) in p.steps.iter().enumerate() {
        said.push(one_step(index, step));
        if let Some(own) = &step.rule {
            rule(own, &format!("On step {}, by its own rule", index + 1), p, said);
        }
    }
}

fn one_step(index: usize, step: &Step) -> String {
    let parts: Vec<String> = step.parts.iter().map(part).collect();
    let mut text = format!(
        "Step {} (id {}), \"{}\": {}, {}. {}. {}.",
        index + 1,
        step.id,
        step.name,
        practice_name(&step.practice),
        position(step.position),
        capital(&parts.join(", then ")),
        capital(&schedule(step.schedule))
    );
    if step.maintain {
        text.push_str(" This step keeps what there is; nothing suggests going beyond it.");
    }
    if step.gate {
        text.push_str(" Going beyond this step is talked about first.");
    }
    text.push_str(&format!(" Instruction: {}", step.instruction));
    text
}

fn part(part: &Part) -> String {
    let time = minutes(part.minutes);
    match &part.trainer {
        Some(trainer) => format!(
            "trainer \"{}\", {}, for {time}",
            trainer.label,
            widest(trainer.widest_diameter_tenths_mm)
        ),
        None => format!("without a trainer, for {time}"),
    }
}

/// `22 mm (2.2 cm) widest diameter`.
fn widest(size: Size) -> String {
    let hundredths = size.get();
    let cm = format!("{}.{:02}", hundredths / 100, hundredths % 100);
    let cm = cm.trim_end_matches('0').trim_end_matches('.');
    format!("{size} ({cm} cm) widest diameter")
}

fn practice(plan: &PracticePlan) -> String {
    let breath = plan.breath.map(|one| format!(" {}.", breath(one))).unwrap_or_default();
    format!(
        "Practice \"{}\" ({}): {}, {}.{breath} Instruction: {}",
        plan.name,
        practice_name(&plan.practice),
        minutes(plan.minutes),
        schedule(plan.schedule),
        plan.instruction
    )
}

fn breath(breath: Breath) -> String {
    let phases = [
        ("in for", breath.in_tenths),
        ("hold for", breath.hold_in_tenths),
        ("out for", breath.out_tenths),
        ("rest for", breath.hold_out_tenths),
    ];
    let phases = phases.iter().filter(|(_, tenths)| tenths.get() > 0).map(|(phase, tenths)| {
        let (whole, tenth) = (tenths.get() / 10, tenths.get() % 10);
        if tenth == 0 { format!("{phase} {whole} s") } else { format!("{phase} {whole}.{tenth} s") }
    });
    format!("One breath: {}", phases.collect::<Vec<_>>().join(", "))
}

fn rule(rule: &Rule, on: &str, p: &Programme, said: &mut Vec<String>) {
    match &rule.step_up {
        Some(up) => {
            said.push(format!("{on}: go up one step when all of these are true:"));
            said.extend(
                up.all_of.iter().map(|criterion| format!("- {}.", up_criterion(*criterion))),
            );
        }
        None => said.push(format!("{on}: going up is never suggested.")),
    }
    if !rule.step_back.is_empty() {
        said.push(format!(
            "{on}: come back when any of these is true, to the lowest step named if several are:"
        ));
        said.extend(rule.step_back.iter().map(|back| format!("- {}.", step_back(back, p))));
    }
    if !rule.pause.is_empty() {
        said.push(format!(
            "{on}: pause and call, until the clinician was spoken with, when any of these is true:"
        ));
        said.extend(rule.pause.iter().map(|criterion| format!("- {}.", pause(*criterion))));
    }
    if let Some(gap) = rule.after_gap_days {
        said.push(format!(
            "{on}: after {} without a session, what counts towards going up starts afresh.",
            counted(gap.get(), "day")
        ));
    }
}

fn up_criterion(criterion: UpCriterion) -> String {
    match criterion {
        UpCriterion::DaysOnStep { days } => format!(
            "the step began at least {} ago, days of time off left out",
            counted(days.get(), "day")
        ),
        UpCriterion::Sessions { practised_days, within_days } => format!(
            "within the last {}, today included, there was a full session on at least {}",
            counted(within_days.get(), "day"),
            counted(practised_days.get(), "different day")
        ),
        UpCriterion::DiscomfortAtMost { rating, at_most, last } => format!(
            "in the last {}, and in every other session since the first of them, {} was rated {} or \
             less of 10",
            counted(last.get(), "full session"), rated(rating), at_most.get()
        ),
        UpCriterion::SignFreeDays { days } => format!(
            "for {} no sign beyond one only noted was reported or cleared, and the first programme \
             was accepted at least as long ago",
            counted(days.get(), "day")
        ),
        UpCriterion::FeelsReady {} => {
            "asked since the last session \"would you like to try the next step?\", the person said yes"
                .to_owned()
        }
    }
}

fn step_back(back: &StepBack, p: &Programme) -> String {
    let when = match back.when {
        BackCriterion::DiscomfortAtLeast { rating, at_least, window } => {
            rated_at_least(rating, at_least.get(), window)
        }
        BackCriterion::StoppedEarly { window } => stopped(window),
        BackCriterion::DaysWithoutPractice { days } => absent(days.get()),
    };
    let target = match &back.target {
        Target::Previous => "to the step before".to_owned(),
        Target::First => "to the first step".to_owned(),
        Target::Step(id) => {
            format!("to {}, or to the step before where that is not earlier", step_named(p, id))
        }
    };
    format!("{when}: {target}")
}

fn pause(criterion: PauseCriterion) -> String {
    match criterion {
        PauseCriterion::DiscomfortAtLeast { rating, at_least, window } => {
            rated_at_least(rating, at_least.get(), window)
        }
        PauseCriterion::StoppedEarly { window } => stopped(window),
        PauseCriterion::DaysWithoutPractice { days } => absent(days.get()),
        PauseCriterion::StepsBack { times, within_days } => format!(
            "within the last {}, today included, there {} to an earlier step",
            counted(within_days.get(), "day"),
            if times.get() == 1 {
                "was at least 1 change".to_owned()
            } else {
                format!("were at least {} changes", times.get())
            }
        ),
    }
}

fn rated_at_least(rating: RatingKind, at_least: u8, window: Window) -> String {
    format!("{} {} was rated {at_least} or more of 10", among(window), rated(rating))
}

fn stopped(window: Window) -> String {
    format!("{} practice was stopped or could not start, interruptions left out", among(window))
}

fn absent(days: u16) -> String {
    format!("there was no session for {}", counted(days, "day"))
}

fn among(window: Window) -> String {
    match (window.sessions(), window.of_last()) {
        (1, 1) => "in the last session".to_owned(),
        (sessions, last) => format!("in at least {sessions} of the last {last} sessions"),
    }
}

fn asking(p: &Programme, said: &mut Vec<String>) {
    let asked: Vec<&str> = RatingKind::ALL
        .into_iter()
        .filter(|kind| *kind == RatingKind::Peak || p.ratings_asked.contains(kind))
        .map(rated)
        .collect();
    said.push(format!("At each session these are rated from 0 to 10: {}.", asked.join(", ")));
    said.push(format!(
        "The full list of cautions is asked every {}.",
        counted(p.screening_every_days.get(), "day")
    ));
    if !p.activities.is_empty() {
        let often = p.activities_every_days;
        let often = often.map(|days| format!(" every {}", counted(days.get(), "day")));
        said.push(format!(
            "The person rates how able she is{}: {}.",
            often.unwrap_or_default(),
            list(&p.activities)
        ));
    }
    if !p.goals.is_empty() {
        said.push(format!("Goals: {}.", list(&p.goals)));
    }
}

fn signs(p: &Programme, said: &mut Vec<String>) {
    for line in &p.stricter_signs {
        said.push(format!(
            "The sign \"{}\" is taken more seriously than usual: {}.",
            sign(line.sign),
            tier(line.tier)
        ));
    }
    if p.spotting_note_only {
        said.push("Spotting, a few drops of blood, is only noted in this programme.".to_owned());
    }
    for key in &p.signs_seen {
        said.push(format!(
            "The clinician has seen the sign \"{}\" of entry {} and closes it with this revision.",
            sign(key.sign),
            key.entry
        ));
    }
    for caution in &p.own_cautions {
        said.push(format!("The clinician's own caution: {caution}"));
    }
}

fn around(p: &Programme, said: &mut Vec<String>) {
    let manner = [
        (p.manner.numbers_folded, "Sizes and counts stay folded on Today until they are opened."),
        (p.manner.grounding_first, "Eyes-open grounding is offered before each trainer session."),
        (p.manner.contact_on_stop, "The contact is offered whenever a session was stopped."),
    ];
    said.extend(manner.iter().filter(|(on, _)| *on).map(|(_, words)| (*words).to_owned()));
    for recipient in &p.recipients {
        said.push(format!("A summary may be sealed to {}, key {}.", recipient.name, recipient.key));
    }
}

fn step_named(p: &Programme, id: &StepId) -> String {
    match (p.step_index(id), p.step(id)) {
        (Some(index), Some(step)) => format!("step {}, \"{}\"", index + 1, step.name),
        _ => format!("step \"{id}\", which is not there"),
    }
}

fn rated(rating: RatingKind) -> &'static str {
    match rating {
        RatingKind::Peak => "the highest discomfort",
        RatingKind::Before => "discomfort before",
        RatingKind::After => "discomfort after",
        RatingKind::Worry => rating_name(RatingKind::Worry),
    }
}

fn practice_name(practice: &Practice) -> String {
    match practice {
        Practice::Trainer => "trainer practice".to_owned(),
        Practice::Breathing => "slow breathing".to_owned(),
        Practice::BellyBreathing => "belly breathing".to_owned(),
        Practice::Meditation => "meditation".to_owned(),
        Practice::Other(id) => format!("other practice \"{id}\""),
    }
}

fn position(position: Position) -> &'static str {
    match position {
        Position::OnBack => "lying on the back",
        Position::SideLying => "lying on the side",
        Position::Sitting => "sitting",
        Position::Standing => "standing",
        Position::Other => "in the position the instruction says",
    }
}

fn tier(tier: Tier) -> &'static str {
    match tier {
        Tier::Note => "it is noted only",
        Tier::AskFirst => "ask before going on",
        Tier::Stop => "stop and call the contact",
        Tier::Emergency => "stop and call the emergency number",
    }
}

/// A sign by its stored name; the screens have the full wording.
fn sign(sign: Sign) -> String {
    let name = serde_json::to_value(sign).ok();
    name.as_ref().and_then(|name| name.as_str()).unwrap_or_default().replace('_', " ")
}

fn schedule(schedule: Schedule) -> String {
    let (least, most) = (schedule.weekly_least.get(), schedule.weekly_most.get());
    let weekly = match (least, most) {
        (1, 1) => "once".to_owned(),
        _ if least == most => counted(least, "time"),
        _ => format!("{least} to {most} times"),
    };
    let daily = schedule.daily_most.get();
    let rest = schedule.rest_days.map(|days| {
        format!(", with at least {} of rest in between", counted(days.get(), "whole day"))
    });
    let daily = if daily == 1 { "once".to_owned() } else { counted(daily, "time") };
    format!("{weekly} a week, at most {daily} a day{}", rest.unwrap_or_default())
}

fn minutes(span: MinutesSpan) -> String {
    let (least, most) = (span.least.get(), span.most.get());
    if least == most { counted(least, "minute") } else { format!("{least} to {most} minutes") }
}

fn counted<N: Display + PartialEq + From<u8>>(number: N, thing: &str) -> String {
    let one = number == N::from(1);
    format!("{number} {thing}{}", if one { "" } else { "s" })
}

fn list<T: Display>(items: &[T]) -> String {
    let items: Vec<String> = items.iter().map(|item| format!("\"{item}\"")).collect();
    items.join(", ")
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

fn day(day: chrono::NaiveDate) -> String {
    day.format("%-d %B %Y").to_string()
}

fn at(stamp: &Stamp) -> String {
    let zone = stamp.zone().map(|zone| format!(", {}", zone.name())).unwrap_or_default();
    format!("{} at {}{zone}", day(stamp.day()), stamp.local().format("%H:%M:%S%.f (UTC%:z)"))
}

#[cfg(test)]
mod tests;
