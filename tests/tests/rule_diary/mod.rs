//! Invented diaries for the checks of the rule engine. No real person's data.
#![allow(dead_code, reason = "each test program uses its own part")]

pub mod short;

use std::sync::Arc;

use chrono::FixedOffset;
use frond_core::diary::entry::{
    Answer, ClockChange, Content, Ended, Entry, EntryId, FeelsReady, Ratings, Reason, Session,
    SignKey, SignNoted, UsedPart, Why,
};
use frond_core::moment::Stamp;
use frond_core::programme::plan::Programme;
use frond_core::programme::rule::Rule;
use frond_core::programme::values::{
    Count, Line, Position, Practice, Rating, Revision, Size, Token,
};
use frond_core::progression::{Assessment, Fold, Outcome, OutcomeKind};
use frond_core::safety::{Sign, Tier};
use serde_json::{Value, json};

/// 2026-01-01T00:00:00Z, day 0 of every diary here.
pub const START: i64 = 1_767_225_600_000;
pub const MINUTE: i64 = 60_000;
pub const HOUR: i64 = 60 * MINUTE;
pub const DAY: i64 = 24 * HOUR;

pub fn ms(millis: i64) -> Stamp {
    Stamp::from_millis(START + millis, FixedOffset::east_opt(0).unwrap(), None).unwrap()
}

pub fn at(day: i64, hour: i64) -> Stamp {
    ms(day * DAY + hour * HOUR)
}

pub fn token(id: &str) -> Token {
    Token::new(id).unwrap()
}

/// A programme with the steps and rule given as JSON; other lines are filled in.
pub fn programme(revision: u32, steps: Value, rule: Value) -> Value {
    json!({
        "frond_programme": 1, "id": "invented", "revision": revision, "for": "Wren",
        "intended_for": "adult", "language": "en",
        "clinician": {"name": "Invented Clinician", "clinic": "Invented Clinic"},
        "contact": {"name": "Invented Desk", "phone": "000", "hours": "9 to 5",
                    "if_nobody_answers": "Leave a message."},
        "out_of_hours": {"what_to_do": "Call the out-of-hours line."},
        "emergency": {"number": "000", "country": "Nowhere"},
        "issued_at": "2025-12-20T09:00:00Z", "review_by": "2036-12-31",
        "steps": steps, "start_at": steps_first(&steps), "rule": rule,
        "screening_every_days": 14, "late_after_hours": 24,
    })
}

fn steps_first(steps: &Value) -> Value {
    steps.get(0).map_or(Value::Null, |step| step["id"].clone())
}

pub fn step(id: &str, size: u16) -> Value {
    json!({
        "id": id, "name": id, "position": "on_back", "instruction": "As shown.",
        "parts": [{"trainer": {"label": id, "widest_diameter_tenths_mm": size},
                   "minutes": {"least": 5, "most": 10}}],
        "schedule": {"weekly_least": 3, "weekly_most": 7, "daily_most": 1},
    })
}

/// Three steps: a 15 mm, b 18 mm, c 22 mm.
pub fn ladder() -> Value {
    json!([step("a", 150), step("b", 180), step("c", 220)])
}

pub fn parse(value: &Value) -> Programme {
    serde_json::from_value(value.clone()).unwrap()
}

pub fn rule(value: Value) -> Rule {
    serde_json::from_value(value).unwrap()
}

pub fn accept(programme: &Value) -> Content {
    let plan = parse(programme);
    Content::ProgrammeAccepted {
        programme: plan.id,
        revision: plan.revision,
        carried: Arc::from(programme.to_string()),
        signed: None,
        although: vec![],
    }
}

/// A session of the trainer practice; everything as asked unless changed.
#[derive(Clone, Debug)]
pub struct Sit {
    pub size: u16,
    pub position: Position,
    pub seconds: u32,
    pub ended: Ended,
    pub peak: Option<u8>,
    pub before: Option<u8>,
    pub after: Option<u8>,
    pub worry: Option<u8>,
    pub signs: Vec<SignNoted>,
    pub practice: Practice,
}

pub fn sit(size: u16, peak: Option<u8>) -> Sit {
    Sit {
        size,
        position: Position::OnBack,
        seconds: 300,
        ended: Ended::Finished,
        peak,
        before: None,
        after: None,
        worry: None,
        signs: Vec::new(),
        practice: Practice::Trainer,
    }
}

impl Sit {
    pub fn stopped(mut self, reason: Reason) -> Self {
        self.ended = Ended::Stopped(reason);
        self
    }
    pub fn sign(mut self, sign: Sign, tier: Tier) -> Self {
        self.signs.push(SignNoted { sign, tier });
        self
    }
    pub fn what(&self) -> Content {
        let rated = |r: Option<u8>| r.map(|r| Answer::Rated(Rating::new(u64::from(r)).unwrap()));
        let size =
            (self.practice == Practice::Trainer).then(|| Size::new(u64::from(self.size)).unwrap());
        Content::Session(Session {
            practice: self.practice.clone(),
            parts: vec![UsedPart {
                widest_diameter_tenths_mm: size,
                practised_seconds: self.seconds,
            }],
            position: self.position,
            ended: self.ended,
            ratings: Ratings {
                peak: rated(self.peak),
                before: rated(self.before),
                after: rated(self.after),
                worry: rated(self.worry),
            },
            signs: self.signs.clone(),
            note: None,
        })
    }
}

pub fn to_step(id: &str) -> Content {
    Content::StepChange { to: token(id), why: Why::OwnChoice }
}
pub fn confirm(id: &str) -> Content {
    Content::StepConfirmed { step: token(id) }
}
pub fn ready(yes: bool) -> Content {
    Content::FeelsReady { answer: if yes { FeelsReady::Yes } else { FeelsReady::NotYet } }
}
pub fn report(sign: Sign, tier: Tier) -> Content {
    Content::SignReported { signs: vec![SignNoted { sign, tier }], note: None }
}
pub fn clearing(signs: &[(EntryId, Sign)], closes_pause: bool) -> Content {
    Content::Clearing {
        with: Line::new("Invented Clinician").unwrap(),
        signs: signs.iter().map(|(entry, sign)| SignKey { entry: *entry, sign: *sign }).collect(),
        closes_pause,
    }
}
pub fn correction(of: EntryId, content: Content) -> Content {
    Content::Correction { of, content: Box::new(content) }
}
pub fn strike(of: EntryId) -> Content {
    Content::Strike { of }
}
pub fn jumped() -> Content {
    Content::ClockMark { change: ClockChange::Jumped }
}
pub fn missing() -> Content {
    Content::MissingMark { entries: Count::new(1).unwrap(), after: None, before: None }
}
pub fn revision(number: u64) -> Revision {
    Revision::new(number).unwrap()
}

pub fn id(number: usize) -> EntryId {
    let mut raw = [0; 16];
    raw[..8].copy_from_slice(&(number as u64 + 1).to_be_bytes());
    EntryId(raw)
}

/// A diary being written.
#[derive(Clone, Debug, Default)]
pub struct Diary(pub Vec<Entry>);

impl Diary {
    /// Begins with a programme accepted and its first step confirmed, on day 0 at 08:00.
    pub fn begun(programme: &Value) -> Self {
        let mut diary = Self::default();
        diary.say(at(0, 8), accept(programme));
        if let Some(first) = &parse(programme).start_at {
            diary.say(at(0, 8), confirm(first.as_str()));
        }
        diary
    }

    pub fn write(&mut self, written: Stamp, happened: Stamp, what: Content) -> EntryId {
        let id = id(self.0.len());
        self.0.push(Entry { id, written, happened, uptime: None, what });
        id
    }

    pub fn say(&mut self, at: Stamp, what: Content) -> EntryId {
        self.write(at, at, what)
    }

    pub fn sit(&mut self, at: Stamp, sit: Sit) -> EntryId {
        self.say(at, sit.what())
    }

    pub fn fold(&self) -> Fold {
        folded(&self.0)
    }

    pub fn assess(&self, now: Stamp) -> Assessment {
        let fold = self.fold();
        let assessment = fold.assess(&now);
        assert_eq!(assessment.outcome, fold.outcome(&now), "outcome() must agree with assess()");
        assessment
    }

    pub fn outcome(&self, now: Stamp) -> Outcome {
        self.assess(now).outcome
    }

    pub fn kind(&self, now: Stamp) -> OutcomeKind {
        self.outcome(now).kind()
    }
}

pub fn folded(entries: &[Entry]) -> Fold {
    let mut fold = Fold::new(None);
    for entry in entries {
        fold.write(entry).unwrap();
    }
    fold
}

/// Entries as JSON lines, for a failing test to show.
pub fn told(entries: &[Entry]) -> String {
    entries.iter().map(|entry| serde_json::to_string(entry).unwrap() + "\n").collect()
}
