//! Decides what may be written down: a request becomes checked lines, or a refusal that says what to put
//! right. The tier of a sign, the text of a plan and what a step is called are taken from inside, never
//! from the request.

use super::{Companion, Refusal, SessionTold, Told, Trouble, Write};
use crate::diary::entry::{
    Although, Asked, Chosen, Content, Entry, EntryId, ScreeningAnswer, Session, SignNoted,
    SignedBy, UsedPart, Why,
};
use crate::diary::resolve::{Counted, resolve};
use crate::handover::{Against, Arrival, Handed, Standing};
use crate::moment::{Moment, Stamp};
use crate::programme::plan::Programme;
use crate::programme::values::{Practice, StepId};
use crate::progression::{Basis, Outcome};
use crate::reminders::snooze;
use crate::safety::{HoldCondition, Sign, Unanswered, tier_in_force};

/// Seconds of a day: the most a part can have been practised.
const DAY: u32 = 24 * 60 * 60;

/// What a check looks at.
pub(super) struct Facts<'a> {
    pub(super) companion: &'a Companion,
    pub(super) moment: &'a Moment,
}

/// One line to write.
pub(super) struct Line {
    pub(super) id: EntryId,
    pub(super) happened: Stamp,
    pub(super) content: Content,
}

/// What a request comes to: one line, and for a suggestion that is tried a second, the step.
pub(super) struct Checked {
    first: Line,
    then: Option<Line>,
}

impl Checked {
    pub(super) fn first(&self) -> &Line {
        &self.first
    }
    pub(super) fn lines(self) -> impl Iterator<Item = Line> {
        std::iter::once(self.first).chain(self.then)
    }
}

/// Checks a request.
pub(super) fn checked(write: Write, facts: &Facts<'_>) -> Result<Checked, Trouble> {
    let happened = write.happened.unwrap_or(facts.moment.now);
    if happened.millis() > facts.moment.now.millis() {
        return Err(Refusal::Future.into());
    }
    let id = write.id;
    let then = match &write.told {
        Told::Choose { shown, chosen: Chosen::Try } => {
            Some(Line { id: second(id), happened, content: facts.tried(*shown)? })
        }
        _ => None,
    };
    // An unchanged time of a corrected entry stays, unless a new one is told.
    let (content, happened) = match write.told {
        Told::Correct { of, told } => {
            let (content, was) = facts.correction(of, *told)?;
            (content, write.happened.unwrap_or(was))
        }
        told => (facts.content(told)?, happened),
    };
    Ok(Checked { first: Line { id, happened, content }, then })
}

/// The id of a request's second line: another, and always the same.
pub(super) fn second(id: EntryId) -> EntryId {
    let mut bytes = id.0;
    // The last byte is random; the head carries a count.
    if let Some(last) = bytes.last_mut() {
        *last ^= 0xff;
    }
    EntryId(bytes)
}

impl Facts<'_> {
    fn programme(&self) -> Option<&Programme> {
        self.companion.state().rule().programme()
    }

    fn content(&self, told: Told) -> Result<Content, Trouble> {
        Ok(match told {
            Told::Session(session) => Content::Session(self.session(session)?),
            Told::Correct { of, told } => self.correction(of, *told)?.0,
            Told::Strike { of } => {
                self.target(of)?;
                Content::Strike { of }
            }
            Told::Step { to, why } => {
                self.step(&to)?;
                Content::StepChange { to, why }
            }
            Told::ConfirmStep => {
                let step = self.companion.state().rule().step();
                Content::StepConfirmed { step: step.ok_or(Refusal::NoProgramme)?.id.clone() }
            }
            Told::Programme { handed, although } => self.accepted(&handed, &although)?,
            Told::Signs { signs, note } => {
                if signs.is_empty() {
                    return Err(Refusal::NoSign.into());
                }
                Content::SignReported { signs: self.noted(&signs)?, note }
            }
            Told::Spoke { with, signs, closes_pause } => {
                self.open(&signs)?;
                Content::Clearing { with, signs, closes_pause }
            }
            Told::Screening { asked, answer, signs } => {
                Content::ScreeningAnswered { asked, answer, signs: self.noted(&signs)? }
            }
            Told::FeelsReady(answer) => Content::FeelsReady { answer },
            Told::Choose { shown, chosen } => {
                self.still_shown(shown)?;
                Content::SuggestionAnswered { shown, chosen }
            }
            Told::StayHere(stay) => Content::StayHere { stay },
            Told::TimeOff { from, to } => {
                if to < from {
                    return Err(Refusal::EndBeforeStart.into());
                }
                Content::TimeOff { from, to }
            }
            Told::LookForward(to) => Content::LookForward { to },
            Told::Function { activity, able } => Content::FunctionRated { activity, able },
            Told::Goal { goal, reached } => Content::GoalRated { goal, reached },
            Told::Question(text) => Content::Question { text },
            Told::Settled { of, answer } => {
                Content::Settled { of: self.session_named(of)?, answer }
            }
            Told::FullList(list) => {
                let left = |unanswered: Unanswered| Refusal::Unanswered(unanswered.left);
                let signs = list.signs().map_err(left)?;
                let answer = if signs.is_empty() {
                    ScreeningAnswer::NothingNew
                } else {
                    ScreeningAnswer::Something
                };
                let signs = self.noted(&signs)?;
                Content::ScreeningAnswered { asked: Asked::FullList, answer, signs }
            }
            Told::HoldConditions(answers) => {
                let left =
                    HoldCondition::ALL.iter().filter(|one| !answers.contains_key(one)).count();
                if left > 0 {
                    return Err(Refusal::Unanswered(left).into());
                }
                let reported = answers.into_iter().filter(|(_, answer)| answer.counts());
                Content::HoldConditions { reported: reported.map(|(one, _)| one).collect() }
            }
            Told::Reminders(change) => {
                let set = change.upon(self.companion.reminders_set()?);
                Content::Reminders(set.map_err(|_| Refusal::TooManyReminders)?)
            }
            Told::PutOff(minutes) => {
                let set = self.companion.reminders_set()?;
                let until = snooze(&set, self.moment, minutes).ok_or(Refusal::NotPutOff)?;
                Content::PutOff { until }
            }
            Told::Settings(settings) => Content::Settings(settings),
            Told::TimeConfirmed => Content::TimeConfirmed {},
            Told::CopyKept => Content::CopyMade {},
        })
    }

    fn session(&self, told: SessionTold) -> Result<Session, Trouble> {
        let parts = &told.parts;
        let fits = |part: &UsedPart| part.practised_seconds <= DAY;
        if parts.is_empty() || parts.len() > 6 || !parts.iter().all(fits) {
            return Err(Refusal::Parts.into());
        }
        if told.practice == Practice::Trainer
            && parts.iter().any(|part| part.widest_diameter_tenths_mm.is_none())
        {
            return Err(Refusal::SizeMissing.into());
        }
        Ok(Session {
            signs: self.noted(&told.signs)?,
            practice: told.practice,
            parts: told.parts,
            position: told.position,
            ended: told.ended,
            ratings: told.ratings,
            note: told.note,
        })
    }

    /// Signs with the tier that is in force now.
    fn noted(&self, signs: &[Sign]) -> Result<Vec<SignNoted>, Refusal> {
        let plan = self.programme();
        let stricter = plan.map(|plan| plan.stricter_signs.as_slice()).unwrap_or_default();
        let note_only = plan.is_some_and(|plan| plan.spotting_note_only);
        let mut noted: Vec<SignNoted> = Vec::with_capacity(signs.len());
        for sign in signs {
            if !sign.can_be_asked() {
                return Err(Refusal::SignNotAsked);
            }
            if !noted.iter().any(|other| other.sign == *sign) {
                let tier = tier_in_force(*sign, stricter, note_only);
                noted.push(SignNoted { sign: *sign, tier });
            }
        }
        Ok(noted)
    }

    fn open(&self, named: &[crate::diary::entry::SignKey]) -> Result<(), Refusal> {
        let open = self.companion.state().rule().assess(&self.moment.now).open_signs;
        let is_open = |key| open.iter().any(|sign| sign.key == key);
        if named.iter().all(|key| is_open(*key)) { Ok(()) } else { Err(Refusal::NotOpen) }
    }

    fn step(&self, id: &StepId) -> Result<(), Refusal> {
        let plan = self.programme().ok_or(Refusal::NoProgramme)?;
        plan.step(id).map(|_| ()).ok_or(Refusal::NoSuchStep)
    }

    fn accepted(&self, handed: &Handed, although: &[Although]) -> Result<Content, Refusal> {
        let arrival = Arrival::of(handed).map_err(Refusal::from)?;
        let standing = Standing::of(&arrival, Some(self.companion.state()));
        if standing.against == Against::InUse {
            return Err(Refusal::RevisionInUse);
        }
        let needs = standing.needs();
        if let Some(open) = needs.iter().find(|need| !although.contains(need)) {
            return Err(Refusal::Although(*open));
        }
        let signed = arrival.signed.zip(standing.key).map(|(signed, stood)| {
            Box::new(SignedBy { key: signed.key, signature: signed.signature, stood })
        });
        Ok(Content::ProgrammeAccepted {
            programme: arrival.programme.id,
            revision: arrival.programme.revision,
            carried: arrival.text,
            signed,
            although: needs,
        })
    }

    /// The step a tried suggestion leads to; the suggestion must still be what the rule says.
    fn tried(&self, shown: EntryId) -> Result<Content, Refusal> {
        self.still_shown(shown)?;
        let last = self.companion.state().shown().ok_or(Refusal::SuggestionChanged)?;
        let to = last.to.as_deref().ok_or(Refusal::SuggestionChanged)?;
        let to = StepId::new(to).map_err(|_| Refusal::SuggestionChanged)?;
        Ok(Content::StepChange { to, why: Why::Suggested })
    }

    fn still_shown(&self, shown: EntryId) -> Result<(), Refusal> {
        let state = self.companion.state();
        let last = state.shown().filter(|last| last.entry == shown);
        let last = last.ok_or(Refusal::SuggestionChanged)?;
        let assessment = state.rule().assess(&self.moment.now);
        let Basis::Step { step, .. } = &assessment.basis else {
            return Err(Refusal::SuggestionChanged);
        };
        let to = match &assessment.outcome {
            Outcome::StepBack { to } | Outcome::StepUp { to } => Some(to.as_str()),
            Outcome::PauseAndCall | Outcome::Hold { .. } | Outcome::ReadyToTalk => None,
        };
        let same = assessment.outcome.kind() == last.outcome
            && step.as_str() == last.step
            && to == last.to.as_deref();
        if same { Ok(()) } else { Err(Refusal::SuggestionChanged) }
    }

    /// The entry a strike names: written by a person, and there.
    fn target(&self, of: EntryId) -> Result<(), Trouble> {
        let entries = self.companion.entries()?;
        let entry = entries.iter().find(|entry| entry.id == of).ok_or(Refusal::NoSuchEntry)?;
        if entry.what.is_persons() { Ok(()) } else { Err(Refusal::MachineMark.into()) }
    }

    /// The session first written, where a session is named or a correction of one.
    fn session_named(&self, of: EntryId) -> Result<EntryId, Trouble> {
        let entries = self.companion.entries()?;
        let of = first_written(&entries, of);
        let entry = entries.iter().find(|entry| entry.id == of).ok_or(Refusal::NoSuchEntry)?;
        match entry.what {
            Content::Session(_) => Ok(of),
            _ => Err(Refusal::NoSession.into()),
        }
    }

    /// A correction of the entry first written, with the time it counted as having until now.
    fn correction(&self, of: EntryId, told: Told) -> Result<(Content, Stamp), Trouble> {
        let entries = self.companion.entries()?;
        let of = first_written(&entries, of);
        let counted = resolve(&entries);
        let row: &Counted<'_> =
            counted.iter().find(|row| row.first.id == of).ok_or(Refusal::NoSuchEntry)?;
        if !row.first.what.is_persons() {
            return Err(Refusal::MachineMark.into());
        }
        let mut content = self.content(told)?;
        if std::mem::discriminant(&content) != std::mem::discriminant(&row.first.what) {
            return Err(Refusal::OtherKind.into());
        }
        keep_tiers(&mut content, row.content);
        Ok((Content::Correction { of, content: Box::new(content) }, row.happened))
    }
}

/// The entry first written, where a correction of it is named.
fn first_written(entries: &[Entry], of: EntryId) -> EntryId {
    let mut of = of;
    while let Some(Content::Correction { of: before, .. }) =
        entries.iter().find(|entry| entry.id == of).map(|entry| &entry.what)
    {
        of = *before;
    }
    of
}

/// A correction carries a sign on with the tier it had, and never lowers it (S1).
fn keep_tiers(content: &mut Content, was: &Content) {
    let noted = match content {
        Content::Session(session) => &mut session.signs,
        Content::SignReported { signs, .. } | Content::ScreeningAnswered { signs, .. } => signs,
        _ => return,
    };
    for sign in noted {
        if let Some(before) = was.signs().iter().find(|before| before.sign == sign.sign) {
            sign.tier = sign.tier.max(before.tier);
        }
    }
}
