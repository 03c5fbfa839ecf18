//! Decides what of a draft can be read, and what has to be put right where. A text that is missing keeps the
//! rest from nothing: its place is held by dots, so that the ladder and the rule are checked, warned about
//! and read back while other fields are still empty. Only a draft without a mistake becomes a programme.

mod rule;
mod values;

use super::super::check;
use super::super::plan::{
    Breath, Clinician, Contact, Emergency, IntendedFor, Manner, MinutesSpan, OutOfHours, Part,
    PracticePlan, Programme, Recipient, Schedule, Step, Trainer,
};
use super::super::rule::Rule;
use super::super::values::{Days, Hours, Line, ProgrammeId, Revision, StepId};
use super::amiss::{Amiss, Mistake};
use super::place::Place;
use super::typed::Typed;
use super::unusual::Notice;
use super::{BreathDraft, Draft, PartDraft, PracticeDraft, ScheduleDraft, StepDraft, text_of};
use crate::moment::Stamp;
use crate::safety::StricterSign;
use values::{Reader, all};

/// What the desk adds to what was typed.
#[derive(Clone, PartialEq, Eq)]
pub struct Given {
    /// Unchanged over all revisions.
    pub id: ProgrammeId,
    /// Counted up with every revision.
    pub revision: Revision,
    /// When this revision is issued.
    pub issued_at: Stamp,
}

/// What was found in a draft.
#[derive(Clone)]
pub struct Checked {
    /// The programme; only where nothing has to be put right.
    pub programme: Option<Programme>,
    /// What has to be put right, in the order of the form.
    pub mistakes: Vec<Mistake>,
    /// What is unusual and worth a second look; it keeps nothing back.
    pub notices: Vec<Notice>,
    /// What of the draft can be read already.
    pub(super) so_far: SoFar,
}

/// What can be read of an unfinished draft: each step, practice and rule that is complete but for texts.
#[derive(Clone, Default)]
pub(super) struct SoFar {
    /// Each step; none where a number or a choice is still missing.
    pub(super) steps: Vec<Option<Step>>,
    /// Each practice.
    pub(super) practices: Vec<Option<PracticePlan>>,
    /// The rule, with its unfinished conditions left out.
    pub(super) rule: Option<Partly<Rule>>,
    /// Each step's own rule.
    pub(super) own_rules: Vec<Option<Partly<Rule>>>,
    /// Everything but the ladder, the practices and the rule; dots where a text is missing, and a stand-in
    /// where a number is: nothing of it may be said where there is a mistake.
    pub(super) frame: Option<Programme>,
    /// The whole, where every number and choice of the ladder, the practices and the rule stands.
    pub(super) whole: Option<Programme>,
}

/// A rule as far as it goes.
#[derive(Clone)]
pub(super) struct Partly<T> {
    pub(super) value: T,
    /// Something in it is unfinished and left out.
    pub(super) unfinished: bool,
}

impl Draft {
    /// What has to be put right, what is unusual, and the programme where nothing has to be put right.
    #[must_use]
    pub fn check(&self, given: &Given) -> Checked {
        let mut reader = Reader { mistakes: Vec::new() };
        let so_far = reader.draft(self, given);
        let mut mistakes = reader.mistakes;
        let mut notices = Vec::new();
        let typed: Vec<Place> = mistakes.iter().map(|one| one.place.clone()).collect();
        if let Some(programme) = &so_far.whole {
            let found = check::check(programme);
            for issue in found.errors {
                let mistake = Mistake::new(Place::of_line(&issue.place), Amiss::Fault(issue.fault));
                // What is missing is said once.
                if !typed.contains(&mistake.place) {
                    mistakes.push(mistake);
                }
            }
            notices = found.warnings.into_iter().map(Notice::new).collect();
        }
        let programme = so_far.whole.as_ref().filter(|_| mistakes.is_empty()).cloned();
        if programme.as_ref().is_some_and(|programme| text_of(programme).is_err()) {
            mistakes.push(Mistake::new(Place::whole(), Amiss::TooLarge));
        }
        Checked { programme: programme.filter(|_| mistakes.is_empty()), mistakes, notices, so_far }
    }
}

impl Reader {
    fn draft(&mut self, draft: &Draft, given: &Given) -> SoFar {
        let top = |name: &str| Place::new(name);
        let for_whom = self.line(top("for_whom"), &draft.for_whom);
        let intended_for = self.chosen(top("intended_for"), &draft.intended_for);
        let language = self.line(top("language"), &draft.language);
        let clinician = self.clinician(draft);
        let contact = self.contact(draft);
        let out_of_hours = self.out_of_hours(draft);
        let emergency = self.emergency(draft);
        let review_by = self.day(top("review_by"), &draft.review_by);
        let mut steps = Vec::new();
        let mut own_rules = Vec::new();
        for (index, step) in draft.steps.iter().enumerate() {
            let place = top("steps").at(index);
            let own = step.rule.as_ref().map(|rule| self.rule(&place.at("rule"), rule));
            steps.push(self.step(&place, step, own.as_ref()));
            own_rules.push(own);
        }
        let mut practices = Vec::new();
        for (index, practice) in draft.practices.iter().enumerate() {
            practices.push(self.practice(&top("practices").at(index), practice));
        }
        let rule = draft.rule.as_ref().map(|rule| self.rule(&top("rule"), rule));
        let screening = self.whole(top("screening_every_days"), &draft.screening_every_days);
        let stricter = self.stricter(draft);
        let late = self.whole(top("late_after_hours"), &draft.late_after_hours);
        let recipients = self.recipients(draft);
        let activities = self.lines(&top("activities"), &draft.activities);
        let every = self.maybe(top("activities_every_days"), &draft.activities_every_days);
        let goals = self.lines(&top("goals"), &draft.goals);
        let own_cautions = {
            let lines = draft.own_cautions.iter().enumerate();
            all(lines.map(|(index, typed)| self.passage(top("own_cautions").at(index), typed)))
        };
        // What is missing here changes nothing of the ladder and the rule.
        let stand_in = Days::new(1).ok().zip(Hours::new(1).ok());
        let frame = stand_in.and_then(|(day, hour)| {
            Some(Programme {
                frond_programme: Programme::FORMAT,
                id: given.id.clone(),
                revision: given.revision,
                for_whom: for_whom?,
                intended_for: intended_for.unwrap_or(IntendedFor::Adult),
                language: match draft.language.is_empty() {
                    true => Line::new("und").ok()?,
                    false => language?,
                },
                clinician: clinician?,
                contact: contact?,
                out_of_hours: out_of_hours?,
                emergency: emergency?,
                issued_at: given.issued_at,
                review_by: review_by.unwrap_or_else(|| given.issued_at.day()),
                steps: Vec::new(),
                start_at: draft.start_at.0.clone(),
                practices: Vec::new(),
                rule: None,
                screening_every_days: screening.unwrap_or(day),
                stricter_signs: stricter,
                spotting_note_only: draft.spotting_note_only,
                ratings_asked: draft.ratings_asked.clone(),
                late_after_hours: late.unwrap_or(hour),
                recipients: recipients?,
                signs_seen: draft
                    .signs_seen
                    .iter()
                    .filter(|one| one.seen)
                    .map(|one| one.key)
                    .collect(),
                activities: activities?,
                activities_every_days: every.unwrap_or_default(),
                goals: goals?,
                own_cautions: own_cautions?,
                manner: Manner {
                    numbers_folded: draft.manner.numbers_folded,
                    grounding_first: draft.manner.grounding_first,
                    contact_on_stop: draft.manner.contact_on_stop,
                },
            })
        });
        let whole = frame.clone().and_then(|frame| {
            Some(Programme {
                steps: all(steps.iter().cloned())?,
                practices: all(practices.iter().cloned())?,
                rule: match &rule {
                    None => None,
                    Some(rule) if rule.unfinished => return None,
                    Some(rule) => Some(rule.value.clone()),
                },
                ..frame
            })
        });
        SoFar { steps, practices, rule, own_rules, frame, whole }
    }

    fn clinician(&mut self, draft: &Draft) -> Option<Clinician> {
        let place = Place::new("clinician");
        let name = self.line(place.at("name"), &draft.clinician.name);
        let clinic = self.line(place.at("clinic"), &draft.clinician.clinic);
        Some(Clinician { name: name?, clinic: clinic? })
    }

    fn contact(&mut self, draft: &Draft) -> Option<Contact> {
        let (place, typed) = (Place::new("contact"), &draft.contact);
        let name = self.line(place.at("name"), &typed.name);
        let phone = self.line(place.at("phone"), &typed.phone);
        let hours = self.line(place.at("hours"), &typed.hours);
        let advice = self.passage(place.at("if_nobody_answers"), &typed.if_nobody_answers);
        Some(Contact { name: name?, phone: phone?, hours: hours?, if_nobody_answers: advice? })
    }

    fn out_of_hours(&mut self, draft: &Draft) -> Option<OutOfHours> {
        let (place, typed) = (Place::new("out_of_hours"), &draft.out_of_hours);
        let what_to_do = self.passage(place.at("what_to_do"), &typed.what_to_do);
        let phone = if typed.phone.is_empty() {
            Some(None)
        } else {
            self.line(place.at("phone"), &typed.phone).map(Some)
        };
        Some(OutOfHours { what_to_do: what_to_do?, phone: phone? })
    }

    fn emergency(&mut self, draft: &Draft) -> Option<Emergency> {
        let place = Place::new("emergency");
        let number = self.line(place.at("number"), &draft.emergency.number);
        let country = self.line(place.at("country"), &draft.emergency.country);
        Some(Emergency { number: number?, country: country? })
    }

    fn stricter(&mut self, draft: &Draft) -> Vec<StricterSign> {
        let mut lines = Vec::new();
        for (index, line) in draft.stricter_signs.iter().enumerate() {
            let place = Place::new("stricter_signs").at(index);
            let sign = self.chosen(place.at("sign"), &line.sign);
            let tier = self.chosen(place.at("tier"), &line.tier);
            lines.extend(sign.zip(tier).map(|(sign, tier)| StricterSign { sign, tier }));
        }
        lines
    }

    fn recipients(&mut self, draft: &Draft) -> Option<Vec<Recipient>> {
        let mut recipients = Vec::new();
        for (index, one) in draft.recipients.iter().enumerate() {
            let place = Place::new("recipients").at(index);
            let name = self.line(place.at("name"), &one.name);
            let key = self.line(place.at("key"), &one.key);
            recipients.push(Recipient { name: name?, key: key? });
        }
        Some(recipients)
    }

    fn span(&mut self, place: &Place, least: &Typed, most: &Typed) -> Option<MinutesSpan> {
        let least = self.whole(place.at("minutes_least"), least);
        let most = self.whole(place.at("minutes_most"), most);
        Some(MinutesSpan { least: least?, most: most? })
    }

    fn schedule(&mut self, place: &Place, typed: &ScheduleDraft) -> Option<Schedule> {
        let place = place.at("schedule");
        let weekly_least = self.whole(place.at("weekly_least"), &typed.weekly_least);
        let weekly_most = self.whole(place.at("weekly_most"), &typed.weekly_most);
        let daily_most = self.whole(place.at("daily_most"), &typed.daily_most);
        let rest_days = self.maybe(place.at("rest_days"), &typed.rest_days);
        Some(Schedule {
            weekly_least: weekly_least?,
            weekly_most: weekly_most?,
            daily_most: daily_most?,
            rest_days: rest_days?,
        })
    }

    fn step(
        &mut self,
        place: &Place,
        typed: &StepDraft,
        own: Option<&Partly<Rule>>,
    ) -> Option<Step> {
        let name = self.line(place.at("name"), &typed.name);
        let practice = self.chosen(place.at("practice"), &typed.practice);
        let parts = {
            let parts = typed.parts.iter().enumerate();
            all(parts.map(|(index, part)| self.part(&place.at("parts").at(index), part)))
        };
        let position = self.chosen(place.at("position"), &typed.position);
        let schedule = self.schedule(place, &typed.schedule);
        let instruction = self.passage(place.at("instruction"), &typed.instruction);
        let id = StepId::new(&typed.id);
        let rule = match own {
            None => Some(None),
            Some(own) if own.unfinished => None,
            Some(own) => Some(Some(own.value.clone())),
        };
        Some(Step {
            id: id.ok()?,
            name: name?,
            practice: practice?,
            parts: parts?,
            position: position?,
            schedule: schedule?,
            instruction: instruction?,
            gate: typed.gate,
            maintain: typed.maintain,
            rule: rule?,
        })
    }

    fn part(&mut self, place: &Place, typed: &PartDraft) -> Option<Part> {
        let trainer = if typed.label.is_empty() && typed.size_mm.is_empty() {
            Some(None)
        } else {
            let label = self.line(place.at("label"), &typed.label);
            let size = self.size(place.at("size_mm"), &typed.size_mm);
            label
                .zip(size)
                .map(|(label, size)| Some(Trainer { label, widest_diameter_tenths_mm: size }))
        };
        let minutes = self.span(place, &typed.minutes_least, &typed.minutes_most);
        Some(Part { trainer: trainer?, minutes: minutes? })
    }

    fn practice(&mut self, place: &Place, typed: &PracticeDraft) -> Option<PracticePlan> {
        let practice = self.chosen(place.at("practice"), &typed.practice);
        let name = self.line(place.at("name"), &typed.name);
        let minutes = self.span(place, &typed.minutes_least, &typed.minutes_most);
        let schedule = self.schedule(place, &typed.schedule);
        let breath = self.breath(&place.at("breath"), &typed.breath);
        let instruction = self.passage(place.at("instruction"), &typed.instruction);
        Some(PracticePlan {
            practice: practice?,
            name: name?,
            minutes: minutes?,
            schedule: schedule?,
            breath: breath?,
            instruction: instruction?,
        })
    }

    fn breath(&mut self, place: &Place, typed: &BreathDraft) -> Option<Option<Breath>> {
        let fields = [
            &typed.in_seconds,
            &typed.hold_in_seconds,
            &typed.out_seconds,
            &typed.hold_out_seconds,
        ];
        if fields.iter().all(|field| field.is_empty()) {
            return Some(None);
        }
        let breathed_in = self.seconds(place.at("in_seconds"), &typed.in_seconds, false);
        let held_in = self.seconds(place.at("hold_in_seconds"), &typed.hold_in_seconds, true);
        let breathed_out = self.seconds(place.at("out_seconds"), &typed.out_seconds, false);
        let held_out = self.seconds(place.at("hold_out_seconds"), &typed.hold_out_seconds, true);
        Some(Some(Breath {
            in_tenths: breathed_in?,
            hold_in_tenths: held_in?,
            out_tenths: breathed_out?,
            hold_out_tenths: held_out?,
        }))
    }
}
