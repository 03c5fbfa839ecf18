//! Writes an invented diary entry by entry, the likely and the unlikely: late, out of order, dated
//! ahead, put right, struck, struck again.

use std::sync::Arc;

use chrono::FixedOffset;
use frond_core::diary::entry::{
    Answer, Asked, Chosen, ClockChange, Content, Ended, Entry, EntryId, FeelsReady, Ratings,
    Reason, ScreeningAnswer, Session, Settled, SignKey, SignNoted, UsedPart, Why,
};
use frond_core::moment::Stamp;
use frond_core::programme::plan::{Programme, Step};
use frond_core::programme::values::{
    Count, Line, Passage, Position, Practice, Rating, Size, StepId,
};
use frond_core::progression::OutcomeKind;
use frond_core::safety::{Sign, Tier};

use super::dice::Dice;
use super::plans::{first, revise};
use crate::model::reading::{root, told};

const MINUTE: i64 = 60_000;
const HOUR: i64 = 60 * MINUTE;
const DAY: i64 = 24 * HOUR;
/// 2026-01-10T09:00:00Z.
const START: i64 = 1_768_035_600_000;

/// How a life tends to go, in chances of a hundred.
#[derive(Clone, Debug)]
pub struct Temper {
    /// A session goes as the step asks.
    pub smooth: u64,
    /// A session notes a sign.
    pub signs: u64,
    /// An entry corrects or strikes.
    pub fuss: u64,
    /// A time lies ahead, or the clock goes back.
    pub clock: u64,
    /// A machine mark.
    pub marks: u64,
    /// Rules that rarely pause or lead back.
    pub gentle: bool,
}

impl Temper {
    /// A temper.
    pub fn any(dice: &mut Dice) -> Self {
        Self {
            smooth: dice.pick(&[97, 90, 75, 40]),
            signs: dice.pick(&[0, 0, 1, 10]),
            fuss: dice.pick(&[0, 8, 20, 40]),
            clock: dice.pick(&[0, 0, 0, 3, 10]),
            marks: dice.pick(&[0, 0, 2, 6]),
            gentle: dice.percent(60),
        }
    }
}

/// A diary being written.
pub struct Pen {
    /// What is written so far.
    pub entries: Vec<Entry>,
    temper: Temper,
    clock: i64,
    programme: Option<Programme>,
    step: Option<StepId>,
}

fn stamp(millis: i64, hours: i32) -> Stamp {
    let offset = FixedOffset::east_opt(hours * 3600).unwrap();
    Stamp::from_millis(millis.max(0), offset, None).unwrap()
}

/// A stamp near a time, mostly at home.
pub fn somewhere(dice: &mut Dice, millis: i64) -> Stamp {
    let hours = if dice.percent(92) { 1 } else { dice.pick(&[0, -8, 5, 12]) };
    stamp(millis, hours)
}

/// A span of time: from none to months.
pub fn span(dice: &mut Dice) -> i64 {
    let some = i64::try_from(dice.between(1, 20)).unwrap();
    match dice.below(40) {
        0..=2 => 0,
        3..=6 => some * MINUTE,
        7..=14 => some * HOUR,
        15..=32 => DAY + (some - 10) * HOUR / 2,
        33..=36 => (some % 4 + 1) * DAY,
        37..=38 => some * DAY,
        _ => some * 10 * DAY,
    }
}

impl Pen {
    /// A blank diary.
    #[must_use]
    pub fn new(temper: Temper) -> Self {
        Self { entries: Vec::new(), temper, clock: START, programme: None, step: None }
    }

    /// Writes one more entry.
    pub fn write(&mut self, dice: &mut Dice) {
        self.clock += span(dice);
        if dice.percent(self.temper.clock) && dice.percent(40) {
            self.clock = (self.clock - span(dice) * 3).max(START);
        }
        let written = somewhere(dice, self.clock);
        let (what, happened) = self.what(dice, written);
        let mut bytes = [0; 16];
        bytes[..8].copy_from_slice(&(self.entries.len() as u64 + 1).to_be_bytes());
        self.entries.push(Entry { id: EntryId(bytes), written, happened, uptime: None, what });
    }

    fn what(&mut self, dice: &mut Dice, written: Stamp) -> (Content, Stamp) {
        if self.programme.is_none() && dice.percent(70) {
            return (self.acceptance(dice, written), written);
        }
        if !self.entries.is_empty() && dice.percent(self.temper.fuss) {
            return self.fuss(dice, written);
        }
        if dice.percent(self.temper.marks) {
            return (self.mark(dice, written), written);
        }
        let asks = self.entries.last().is_some_and(|last| {
            !matches!(told(last), Content::Session(_) | Content::FeelsReady { .. })
        });
        if asks && dice.percent(35) {
            return (self.confirmation(dice), written);
        }
        let what = match dice.below(100) {
            0..=61 => Content::Session(self.session(dice)),
            62..=63 => self.confirmation(dice),
            64..=68 => self.step_change(dice),
            69..=73 => self.clearing(dice),
            74..=84 => Content::FeelsReady {
                answer: dice.pick(&[
                    FeelsReady::Yes,
                    FeelsReady::Yes,
                    FeelsReady::NotYet,
                    FeelsReady::RatherNotSay,
                ]),
            },
            85..=87 => Content::StayHere { stay: dice.percent(50) },
            88..=91 => self.time_off(dice, written),
            92..=93 => self.acceptance(dice, written),
            94 => Content::TimeConfirmed {},
            95 if dice.percent(self.temper.signs * 10) => {
                Content::SignReported { signs: vec![sign(dice)], note: None }
            }
            96 if dice.percent(self.temper.signs * 10) => Content::ScreeningAnswered {
                asked: Asked::AnythingNew,
                answer: ScreeningAnswer::Something,
                signs: vec![sign(dice), sign(dice)],
            },
            _ => self.aside(dice),
        };
        let happened = self.happened(dice, written);
        (what, happened)
    }

    /// When it happened: mostly now, often earlier, sometimes at an instant told before, rarely ahead.
    fn happened(&mut self, dice: &mut Dice, written: Stamp) -> Stamp {
        if dice.percent(self.temper.clock) {
            let ahead =
                dice.pick(&[9 * MINUTE, 10 * MINUTE, 11 * MINUTE, 5 * HOUR, 3 * DAY, 40 * DAY]);
            return somewhere(dice, self.clock + ahead);
        }
        match dice.below(20) {
            0..=2 => {
                let earlier = span(dice);
                somewhere(dice, self.clock - earlier)
            }
            3 if !self.entries.is_empty() => {
                let same = self.entries[dice.index(self.entries.len())].happened;
                if same.millis() <= written.millis() { same } else { written }
            }
            _ => written,
        }
    }

    fn current(&self) -> Option<&Step> {
        self.programme.as_ref()?.step(self.step.as_ref()?)
    }

    fn any_step(&self, dice: &mut Dice) -> StepId {
        match &self.programme {
            Some(programme) if !programme.steps.is_empty() && !dice.percent(4) => {
                programme.steps[dice.index(programme.steps.len())].id.clone()
            }
            _ => StepId::new("z").unwrap(),
        }
    }

    fn acceptance(&mut self, dice: &mut Dice, written: Stamp) -> Content {
        let gentle = self.temper.gentle;
        let next = match &self.programme {
            Some(before) if dice.percent(80) => {
                revise(dice, before, written, &self.signs(), gentle)
            }
            Some(before) if before.id.as_str() == "p" => first(dice, "q", written, gentle),
            _ => first(dice, "p", written, gentle),
        };
        let continues = self.current().is_some_and(|now| {
            next.step(&now.id).is_some_and(|then| now.same_work(then))
                && self.programme.as_ref().is_some_and(|before| before.id == next.id)
        });
        if !continues {
            self.step.clone_from(&next.start_at);
        }
        let carried: Arc<str> = serde_json::to_string(&next).unwrap().into();
        let content = Content::ProgrammeAccepted {
            programme: next.id.clone(),
            revision: next.revision,
            carried,
            signed: None,
            although: vec![],
        };
        self.programme = Some(next);
        content
    }

    fn confirmation(&self, dice: &mut Dice) -> Content {
        let step = match &self.step {
            Some(step) if dice.percent(90) => step.clone(),
            _ => self.any_step(dice),
        };
        Content::StepConfirmed { step }
    }

    fn step_change(&mut self, dice: &mut Dice) -> Content {
        let to = self.any_step(dice);
        if self.programme.as_ref().is_some_and(|programme| programme.step(&to).is_some()) {
            self.step = Some(to.clone());
        }
        let why = dice.pick(&[Why::Suggested, Why::OwnChoice, Why::Clinician, Why::Asked]);
        Content::StepChange { to, why }
    }

    fn session(&self, dice: &mut Dice) -> Session {
        let smooth = dice.percent(self.temper.smooth);
        let size = |dice: &mut Dice| Size::new(dice.pick(&[180, 220, 260, 300])).unwrap();
        let reason = |dice: &mut Dice| {
            dice.pick(&[Reason::Discomfort, Reason::DidNotGoIn, Reason::Interrupted, Reason::Other])
        };
        let most = if smooth { dice.pick(&[2, 3, 4]) } else { 10 };
        let mut session = Session {
            practice: Practice::Trainer,
            parts: vec![UsedPart {
                widest_diameter_tenths_mm: Some(size(dice)),
                practised_seconds: 600,
            }],
            position: Position::OnBack,
            ended: Ended::Finished,
            ratings: ratings(dice, most),
            signs: Vec::new(),
            note: None,
        };
        if let Some(step) = self.current() {
            session.practice = step.practice.clone();
            session.position = step.position;
            session.parts = step
                .parts
                .iter()
                .map(|part| UsedPart {
                    widest_diameter_tenths_mm: part.size(),
                    practised_seconds: u32::from(part.minutes.least.get()) * 60,
                })
                .collect();
        }
        if !smooth {
            match dice.below(7) {
                0 => session.ended = Ended::Stopped(reason(dice)),
                1 => session.ended = Ended::CouldNotStart(reason(dice)),
                2 | 3 => {
                    if let Some(main) = session.parts.last_mut() {
                        main.widest_diameter_tenths_mm = (!dice.percent(10)).then(|| size(dice));
                    }
                }
                4 => session.position = dice.pick(&[Position::Sitting, Position::SideLying]),
                5 => {
                    if let Some(main) = session.parts.last_mut() {
                        main.practised_seconds -= 1;
                    }
                }
                _ => session.practice = dice.pick(&[Practice::Meditation, Practice::Breathing]),
            }
        }
        if dice.percent(self.temper.signs) {
            session.signs.push(sign(dice));
        }
        session
    }

    fn clearing(&self, dice: &mut Dice) -> Content {
        let mut signs = self.signs();
        if !dice.percent(60) {
            signs.retain(|_| dice.percent(50));
        }
        if !self.entries.is_empty() && dice.percent(5) {
            let entry = self.entries[dice.index(self.entries.len())].id;
            signs.push(SignKey { entry, sign: sign(dice).sign });
        }
        Content::Clearing {
            with: Line::new("Invented").unwrap(),
            signs,
            closes_pause: dice.percent(60),
        }
    }

    /// Every sign noted so far, by its identity.
    fn signs(&self) -> Vec<SignKey> {
        let mut keys: Vec<_> = (0..self.entries.len())
            .flat_map(|index| {
                let entry = &self.entries[index];
                let first = root(&self.entries, entry.id, index + 1).unwrap_or(index);
                let entry_id = self.entries[first].id;
                let caution = matches!(entry.what, Content::ErasedMark { .. });
                told(entry)
                    .signs()
                    .iter()
                    .map(|noted| noted.sign)
                    .chain(caution.then_some(Sign::ACaution))
                    .map(move |sign| SignKey { entry: entry_id, sign })
                    .collect::<Vec<_>>()
            })
            .collect();
        keys.sort();
        keys.dedup();
        keys
    }

    fn time_off(&self, dice: &mut Dice, written: Stamp) -> Content {
        let from =
            written.day() - chrono::Days::new(dice.below(6)) + chrono::Days::new(dice.below(4));
        Content::TimeOff { from, to: from + chrono::Days::new(dice.below(5)) }
    }

    fn mark(&self, dice: &mut Dice, written: Stamp) -> Content {
        match dice.below(5) {
            0 | 1 => Content::ClockMark {
                change: dice.pick(&[ClockChange::Jumped, ClockChange::LongAway]),
            },
            2 => {
                Content::MissingMark { entries: Count::new(1).unwrap(), after: None, before: None }
            }
            3 => Content::RestoredMark { up_to: self.entries.len() as u64, replaced: None },
            _ => {
                let before = span(dice);
                Content::ErasedMark {
                    latest: somewhere(dice, written.millis() - before),
                    caution_open: dice.percent(15),
                    pause_open: dice.percent(15),
                }
            }
        }
    }

    /// What the rule takes no notice of.
    fn aside(&self, dice: &mut Dice) -> Content {
        match dice.below(3) {
            0 => Content::LookForward { to: Passage::new("Invented.").unwrap() },
            1 => Content::SuggestionShown {
                outcome: OutcomeKind::Hold,
                step: self.any_step(dice),
                to: None,
            },
            _ => match self.entries.last() {
                Some(last) if dice.percent(50) => {
                    Content::Settled { of: last.id, answer: Settled::NotYet }
                }
                Some(last) => Content::SuggestionAnswered { shown: last.id, chosen: Chosen::Try },
                None => Content::LookForward { to: Passage::new("Invented.").unwrap() },
            },
        }
    }

    /// A correction or a strike of something written before.
    fn fuss(&mut self, dice: &mut Dice, written: Stamp) -> (Content, Stamp) {
        let recent = self.entries.len().min(6);
        let at = if dice.percent(60) {
            self.entries.len() - 1 - dice.index(recent)
        } else {
            dice.index(self.entries.len())
        };
        let named = self.entries[at].clone();
        if dice.percent(35) {
            return (Content::Strike { of: named.id }, written);
        }
        let first = root(&self.entries, named.id, self.entries.len()).unwrap_or(at);
        let of = if dice.percent(90) { self.entries[first].id } else { named.id };
        let mut content = told(&named).clone();
        self.put_right(dice, &mut content);
        let happened = if dice.percent(60) {
            named.happened
        } else if dice.percent(50) {
            let later = span(dice) - span(dice);
            somewhere(dice, (named.happened.millis() + later).min(self.clock))
        } else {
            self.happened(dice, written)
        };
        (Content::Correction { of, content: Box::new(content) }, happened)
    }

    /// Changes something in a content, mostly without changing its kind.
    fn put_right(&mut self, dice: &mut Dice, content: &mut Content) {
        if dice.percent(3) {
            *content = Content::FeelsReady { answer: FeelsReady::Yes };
            return;
        }
        let other_strike = self.entries[dice.index(self.entries.len())].id;
        let some_step = self.any_step(dice);
        match content {
            Content::Session(session) => match dice.below(6) {
                0 | 1 => session.ratings = ratings(dice, 10),
                2 => *session = self.session(dice),
                3 => session.signs.clear(),
                4 if dice.percent(self.temper.signs * 8) => session.signs.push(sign(dice)),
                4 => {
                    for noted in &mut session.signs {
                        noted.tier = sign(dice).tier;
                    }
                }
                _ => {}
            },
            Content::SignReported { signs, .. } | Content::ScreeningAnswered { signs, .. } => {
                for noted in signs {
                    *noted = SignNoted { sign: noted.sign, tier: sign(dice).tier };
                }
            }
            Content::StepChange { to, .. } | Content::StepConfirmed { step: to } => *to = some_step,
            Content::Clearing { closes_pause, signs, .. } => {
                if dice.percent(50) {
                    *closes_pause = !*closes_pause;
                } else {
                    *signs = self.signs();
                }
            }
            Content::FeelsReady { answer } => {
                *answer = dice.pick(&[FeelsReady::Yes, FeelsReady::NotYet]);
            }
            Content::StayHere { stay } => *stay = !*stay,
            Content::Strike { of } if dice.percent(50) => *of = other_strike,
            Content::ProgrammeAccepted { programme, revision, carried, .. } => {
                let Ok(before) = serde_json::from_str::<Programme>(carried) else { return };
                let next =
                    revise(dice, &before, before.issued_at, &self.signs(), self.temper.gentle);
                *programme = next.id.clone();
                *revision = next.revision;
                *carried = serde_json::to_string(&next).unwrap().into();
            }
            _ => {}
        }
    }
}

fn ratings(dice: &mut Dice, most: u64) -> Ratings {
    let mut answer = |missing: u64| {
        if dice.percent(missing) {
            if dice.percent(50) { Some(Answer::RatherNotSay) } else { None }
        } else {
            Some(Answer::Rated(Rating::new(dice.between(0, most)).unwrap()))
        }
    };
    Ratings { peak: answer(6), before: answer(10), after: answer(10), worry: answer(10) }
}

fn sign(dice: &mut Dice) -> SignNoted {
    let sign = dice.pick(&[Sign::Spotting, Sign::Fever, Sign::Distress, Sign::ChestPain]);
    let tier = dice.pick(&[Tier::Note, Tier::Note, Tier::AskFirst, Tier::Stop, Tier::Emergency]);
    SignNoted { sign, tier }
}
