//! What a person would see under a plan that is still being written: the very same records as on her phone,
//! of an **invented** person who keeps to the plan's own schedule.
//!
//! Decides only how the invented person lives: on which days she practises, what she answers and that she
//! tries what the rule suggests. Entries are made, folded and shown as always; what the rule says about them is
//! [`crate::progression`]'s. Nothing here is written anywhere, and there is no clock: day 0 is the day on which
//! the plan is issued.

use std::sync::Arc;

use chrono::{Days, NaiveTime, TimeZone};
use serde::{Deserialize, Serialize};

use super::{
    AcceptScreen, Scene, Screen, StopScreen, StoreNote, SuggestionScreen, TodayScreen, plain,
};
use crate::diary::entry::{
    Answer, Asked, Chosen, Content, Ended, Entry, EntryId, FeelsReady, Ratings, ScreeningAnswer,
    Session, SignNoted, UsedPart, Why,
};
use crate::diary::state::State;
use crate::handover::Handed;
use crate::message_id;
use crate::moment::Stamp;
use crate::programme::draft::text_of;
use crate::programme::plan::{Part, Programme, Schedule};
use crate::programme::rule::UpCriterion;
use crate::programme::values::{Position, Practice, Rating, RatingKind};
use crate::progression::{Assessment, Basis, Criterion, FoldError, Outcome, OutcomeKind, Verdict};
use crate::safety::{Sign, Tier, tier_in_force};
use crate::words::Words;

/// How the invented person finds practice. What she rates is invented like herself, said on the page, and no
/// rule of ours.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Ease {
    /// Easy.
    Easy,
    /// In between.
    Between,
    /// Hard.
    Hard,
}

impl Ease {
    /// All, easiest first.
    pub const ALL: [Self; 3] = [Self::Easy, Self::Between, Self::Hard];

    /// What she rates, whatever is asked.
    fn rating(self) -> u8 {
        match self {
            Self::Easy => 1,
            Self::Between => 4,
            Self::Hard => 8,
        }
    }

    /// In words.
    #[must_use]
    pub fn say(self, words: &Words) -> String {
        match self {
            Self::Easy => words.text("compose-ease-easy", &[]),
            Self::Between => words.text("compose-ease-between", &[]),
            Self::Hard => words.text("compose-ease-hard", &[]),
        }
    }
}

/// The farthest day that is shown. A number of presentation.
pub const FARTHEST: u16 = 90;

/// What the invented person sees.
pub struct Preview {
    /// How she lives: that she is invented, how often she practises, what she answers.
    pub how: Vec<String>,
    /// What the rule suggested on the way and she did.
    pub story: Vec<String>,
    /// Her screens, each with what it is.
    pub shown: Vec<Shown>,
}

/// One of her screens.
pub struct Shown {
    /// When she sees it.
    pub when: String,
    /// The record her phone shows.
    pub screen: Screen,
}

/// Why there is no preview.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NoPreview {
    /// The programme is too long to be handed over.
    #[error("the programme's texts are too long together; shorten some of them")]
    TooLong,
    /// The programme's days lead out of the calendar.
    #[error("the day lies outside the calendar; choose an earlier one")]
    OutOfCalendar,
}

impl From<FoldError> for NoPreview {
    // Folding refuses only a programme that cannot be read.
    fn from(_: FoldError) -> Self {
        Self::TooLong
    }
}

impl Preview {
    /// The screens of an invented person on the morning of a day, day 0 the day of issue. `hers` are the words
    /// on her screens, `words` those around them.
    ///
    /// # Errors
    /// [`NoPreview`].
    pub fn new(
        programme: &Programme,
        ease: Ease,
        day: u16,
        hers: &Words,
        words: &Words,
    ) -> Result<Self, NoPreview> {
        let text: Arc<str> = text_of(programme).map_err(|_| NoPreview::TooLong)?.into();
        let mut life = Life::new(programme, ease, hers, words)?;
        let mut shown = Vec::new();
        if day == 0 {
            let handed = Handed::text(&text);
            let assessment = life.assess();
            let scene = life.scene(&assessment, life.at(0, 8)?);
            let mut screen = AcceptScreen::new(&scene, life.id, handed);
            // Who signs is not known while a plan is written; she will see the key's words.
            screen.signed = None;
            screen.knowing.clear();
            let when = words.text("compose-preview-accept", &[]);
            shown.push(Shown { when, screen: Screen::Accept(screen) });
        }
        life.accept(&text)?;
        for each in 0..day.min(FARTHEST) {
            life.day(each)?;
        }
        let day = day.min(FARTHEST);
        shown.extend(life.screens(day)?);
        Ok(Self { how: life.how(), story: life.story, shown })
    }
}

/// The invented person's life so far.
struct Life<'a> {
    programme: &'a Programme,
    ease: Ease,
    hers: &'a Words,
    words: &'a Words,
    entries: Vec<Entry>,
    state: State,
    /// The id of the entry written next.
    id: EntryId,
    now: Stamp,
    story: Vec<String>,
    /// The suggestion that led elsewhere last, as she saw it.
    last_suggestion: Option<Shown>,
    pace: Vec<Pace>,
}

/// How often one practice is still due in the week.
struct Pace {
    practice: Practice,
    owed: u32,
    last: Option<u16>,
}

impl<'a> Life<'a> {
    fn new(
        programme: &'a Programme,
        ease: Ease,
        hers: &'a Words,
        words: &'a Words,
    ) -> Result<Self, NoPreview> {
        Ok(Self {
            programme,
            ease,
            hers,
            words,
            entries: Vec::new(),
            state: State::new(),
            id: EntryId([0; 16]),
            now: programme.issued_at,
            story: Vec::new(),
            last_suggestion: None,
            pace: Vec::new(),
        })
    }

    /// An hour of a day after the day of issue, by the clock of its place.
    fn at(&self, day: u16, hour: u32) -> Result<Stamp, NoPreview> {
        let issued = self.programme.issued_at;
        let date = issued.day().checked_add_days(Days::new(day.into()));
        let time = NaiveTime::from_hms_opt(hour, 0, 0);
        let local = date.zip(time).map(|(date, time)| date.and_time(time));
        let local =
            local.and_then(|local| issued.local().offset().from_local_datetime(&local).single());
        let stamp = local.and_then(|local| Stamp::new(local, None).ok());
        stamp.ok_or(NoPreview::OutOfCalendar)
    }

    fn assess(&self) -> Assessment {
        self.state.rule().assess(&self.now)
    }

    fn scene<'s>(&'s self, assessment: &'s Assessment, now: Stamp) -> Scene<'s> {
        Scene {
            words: self.hers,
            state: &self.state,
            assessment,
            now,
            store: StoreNote::default(),
            practice_waits: false,
        }
    }

    fn write(&mut self, what: Content) -> Result<EntryId, NoPreview> {
        let id = self.id;
        self.id = EntryId((u128::from_be_bytes(id.0) + 1).to_be_bytes());
        let entry = Entry { id, written: self.now, happened: self.now, uptime: None, what };
        let applied = self.state.apply(&entry);
        self.entries.push(entry);
        if applied.is_err() {
            self.state = State::from_history(&self.entries)?;
        }
        Ok(id)
    }

    /// She accepts the plan, answers the cautions with no, and says which step she uses.
    fn accept(&mut self, text: &Arc<str>) -> Result<(), NoPreview> {
        self.now = self.at(0, 8)?;
        self.write(Content::ProgrammeAccepted {
            programme: self.programme.id.clone(),
            revision: self.programme.revision,
            carried: text.clone(),
            signed: None,
            although: Vec::new(),
        })?;
        self.nothing_new()?;
        if let Some(step) = self.programme.start_at.clone() {
            self.write(Content::StepConfirmed { step })?;
        }
        Ok(())
    }

    fn nothing_new(&mut self) -> Result<(), NoPreview> {
        let answer = ScreeningAnswer::NothingNew;
        self.write(Content::ScreeningAnswered {
            asked: Asked::FullList,
            answer,
            signs: Vec::new(),
        })?;
        Ok(())
    }

    /// One day: the cautions where they are due, practice, and in the evening what the rule says.
    fn day(&mut self, day: u16) -> Result<(), NoPreview> {
        self.now = self.at(day, 9)?;
        let assessment = self.assess();
        if super::health::due(&self.scene(&assessment, self.now)).is_some() {
            self.nothing_new()?;
        }
        let paused = assessment.outcome.kind() == OutcomeKind::PauseAndCall;
        if let (Some(step), false) = (self.state.rule().step().cloned(), paused) {
            for time in 0..self.times(&step.practice, step.schedule, day) {
                self.now = self.at(day, 10 + time)?;
                self.practise(step.practice.clone(), &step.parts, step.position)?;
            }
        }
        for plan in self.programme.practices.clone() {
            let parts = [Part { trainer: None, minutes: plan.minutes }];
            for time in 0..self.times(&plan.practice, plan.schedule, day) {
                self.now = self.at(day, 15 + time)?;
                self.practise(plan.practice.clone(), &parts, Position::OnBack)?;
            }
        }
        self.now = self.at(day, 20)?;
        self.evening(day)
    }

    /// How often on this day: the least times a week, spread over it, within what a day and rest allow.
    fn times(&mut self, practice: &Practice, schedule: Schedule, day: u16) -> u32 {
        let least = u32::from(schedule.weekly_least.get());
        let weekday = u32::from(day % 7);
        let known = self.pace.iter().position(|pace| pace.practice == *practice);
        let index = known.unwrap_or_else(|| {
            self.pace.push(Pace { practice: practice.clone(), owed: 0, last: None });
            self.pace.len() - 1
        });
        let Some(pace) = self.pace.get_mut(index) else { return 0 };
        if weekday == 0 {
            // Nobody makes up for a week that is over.
            pace.owed = 0;
        }
        pace.owed += (weekday + 1) * least / 7 - weekday * least / 7;
        let rest = schedule.rest_days.map_or(0, |days| days.get());
        if pace.last.is_some_and(|last| day - last <= rest) {
            return 0;
        }
        // More than five times a day there is no hour for, in a preview.
        let times = pace.owed.min(schedule.daily_most.get().into()).min(5);
        pace.owed -= times;
        if times > 0 {
            pace.last = Some(day);
        }
        times
    }

    fn practise(
        &mut self,
        practice: Practice,
        parts: &[Part],
        position: Position,
    ) -> Result<(), NoPreview> {
        let rated = |kind: RatingKind| {
            let asked = kind == RatingKind::Peak || self.programme.ratings_asked.contains(&kind);
            let rating = Rating::new(self.ease.rating().into()).ok();
            rating.filter(|_| asked).map(Answer::Rated)
        };
        let ratings = Ratings {
            peak: rated(RatingKind::Peak),
            before: rated(RatingKind::Before),
            after: rated(RatingKind::After),
            worry: rated(RatingKind::Worry),
        };
        let used = |part: &Part| UsedPart {
            widest_diameter_tenths_mm: part.size(),
            practised_seconds: u32::from(part.minutes.least.get()) * 60,
        };
        let session = Session {
            practice,
            parts: parts.iter().map(used).collect(),
            position,
            ended: Ended::Finished,
            ratings,
            signs: Vec::new(),
            note: None,
        };
        self.write(Content::Session(session))?;
        Ok(())
    }

    /// She says whether she feels ready where that is all that is asked, and tries what is suggested.
    fn evening(&mut self, day: u16) -> Result<(), NoPreview> {
        let asks_ready = self.assess().findings.iter().any(|finding| {
            matches!(finding.criterion, Criterion::Up(UpCriterion::FeelsReady {}))
                && finding.verdict != Verdict::Met
        });
        if asks_ready && self.ease != Ease::Hard {
            self.write(Content::FeelsReady { answer: FeelsReady::Yes })?;
        }
        let assessment = self.assess();
        let Basis::Step { step, .. } = &assessment.basis else { return Ok(()) };
        let kind = assessment.outcome.kind();
        if kind == OutcomeKind::Hold {
            return Ok(());
        }
        let number = plain::whole(day);
        let told = self.last_suggestion.as_ref().is_some_and(|last| match &last.screen {
            Screen::Suggestion(screen) => screen.outcome == Some(kind),
            _ => false,
        });
        let (to, says) = match &assessment.outcome {
            Outcome::StepUp { to } => {
                (Some(to), self.went(message_id!("compose-story-up"), number, to))
            }
            Outcome::StepBack { to } => {
                (Some(to), self.went(message_id!("compose-story-back"), number, to))
            }
            // Said once: it stays so until she has spoken with her clinician.
            Outcome::PauseAndCall | Outcome::ReadyToTalk if told => return Ok(()),
            Outcome::PauseAndCall => {
                (None, self.words.text("compose-story-pause", &[("day", number)]))
            }
            Outcome::ReadyToTalk => {
                (None, self.words.text("compose-story-talk", &[("day", number)]))
            }
            Outcome::Hold { .. } => return Ok(()),
        };
        self.story.push(says);
        let when = self.words.text("compose-preview-suggestion", &[("day", plain::whole(day))]);
        let screen = SuggestionScreen::new(&self.scene(&assessment, self.now), Some(self.id));
        self.last_suggestion = Some(Shown { when, screen: Screen::Suggestion(screen) });
        let (step, to) = (step.clone(), to.cloned());
        let shown = Content::SuggestionShown { outcome: kind, step, to: to.clone() };
        let shown = self.write(shown)?;
        if let Some(to) = to {
            self.write(Content::SuggestionAnswered { shown, chosen: Chosen::Try })?;
            self.write(Content::StepChange { to, why: Why::Suggested })?;
        }
        Ok(())
    }

    fn went(
        &self,
        id: &str,
        day: crate::words::Value,
        to: &crate::programme::values::StepId,
    ) -> String {
        let step = self.programme.step(to).map(|step| step.name.to_string()).unwrap_or_default();
        self.words.text(id, &[("day", day), ("step", step.into())])
    }

    /// Her screens on the morning of a day.
    fn screens(&mut self, day: u16) -> Result<Vec<Shown>, NoPreview> {
        self.now = self.at(day, 9)?;
        self.state = State::from_history(&self.entries)?;
        let words = self.words;
        let assessment = self.assess();
        let scene = self.scene(&assessment, self.now);
        let today = Screen::Today(TodayScreen::new(&scene));
        let suggestion = Screen::Suggestion(SuggestionScreen::new(&scene, Some(self.id)));
        let number = || plain::whole(day);
        let mut shown = vec![
            Shown {
                when: words.text("compose-preview-today", &[("day", number())]),
                screen: today,
            },
            Shown {
                when: words.text("compose-preview-suggestion", &[("day", number())]),
                screen: suggestion,
            },
        ];
        shown.extend(self.last_suggestion.take());
        for tier in [Tier::Stop, Tier::Emergency] {
            shown.extend(self.stop_and_call(tier)?);
        }
        Ok(shown)
    }

    /// What she sees when she reports a sign of this tier.
    fn stop_and_call(&self, tier: Tier) -> Result<Option<Shown>, NoPreview> {
        let (stricter, spotting) =
            (&self.programme.stricter_signs, self.programme.spotting_note_only);
        let mut signs = Sign::asked();
        let Some(sign) = signs.find(|sign| tier_in_force(*sign, stricter, spotting) == tier) else {
            return Ok(None);
        };
        let mut entries = self.entries.clone();
        let what = Content::SignReported { signs: vec![SignNoted { sign, tier }], note: None };
        let (written, happened) = (self.now, self.now);
        entries.push(Entry { id: self.id, written, happened, uptime: None, what });
        let state = State::from_history(&entries)?;
        let assessment = state.rule().assess(&self.now);
        let scene = Scene { state: &state, ..self.scene(&assessment, self.now) };
        let sign = self.words.text(sign.name_id(), &[]).into();
        let when = self.words.text("compose-preview-stop", &[("sign", sign)]);
        Ok(Some(Shown { when, screen: Screen::StopAndCall(StopScreen::new(&scene, &[])) }))
    }

    fn how(&self) -> Vec<String> {
        let words = self.words;
        let rating = plain::whole(self.ease.rating());
        vec![
            words.text("compose-preview-invented", &[]),
            words.text("compose-preview-how", &[("rating", rating)]),
            if self.ease == Ease::Hard {
                words.text("compose-preview-not-ready", &[])
            } else {
                words.text("compose-preview-ready", &[])
            },
        ]
    }
}

#[cfg(test)]
mod tests;
