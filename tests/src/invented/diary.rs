//! One invented diary, day by day. What the rule says is asked of the engine; what she does about it is
//! chance.

use std::sync::Arc;

use chrono::{Datelike, Days, NaiveDate};
use frond_core::diary::entry::{
    Answer, Chosen, Content, Ended, Entry, EntryId, FeelsReady, Goal, Ratings, Reason, Session,
    Settled, SignKey, SignNoted, UsedPart, Why,
};
use frond_core::moment::{NamedZone, Stamp};
use frond_core::programme::plan::{Programme, Step};
use frond_core::programme::values::{Line, Passage, Practice, Rating, StepId};
use frond_core::progression::{Fold, Outcome};
use frond_core::safety::Sign;

use super::PLAN;
use crate::lives::dice::Dice;

/// The first day of the first diary; the others begin within the year before.
const LATEST: (i32, u32, u32) = (2026, 6, 1);
/// Where the invented people live.
const ZONE: &str = "Europe/London";
/// Notes of an invented person.
const NOTES: [&str; 6] = [
    "Invented: easier after a warm bath.",
    "Invented: tired today, stayed with it for a little.",
    "Invented: tight at first, then it let go.",
    "Invented: hurried, next time with more time.",
    "Invented: breathing first helped.",
    "Invented: nothing much to tell.",
];

struct Keeping<'a> {
    dice: &'a mut Dice,
    entries: Vec<Entry>,
    fold: Fold,
    day: NaiveDate,
    minute: u32,
    open: Vec<SignKey>,
}

/// Keeps a diary of two to thirty weeks.
pub(super) fn kept(number: u64, dice: &mut Dice) -> (Vec<Entry>, Stamp) {
    let (year, month, day) = LATEST;
    let latest = NaiveDate::from_ymd_opt(year, month, day).expect("a day");
    let first = latest - Days::new(dice.below(365));
    let weeks = dice.pick(&[2, 4, 6, 8, 8, 10, 12, 16, 20, 30]);
    let mut keeping = Keeping {
        dice,
        entries: Vec::new(),
        fold: Fold::new(None),
        day: first,
        minute: 0,
        open: vec![],
    };
    keeping.accept(number);
    let diligence = keeping.dice.pick(&[35, 50, 60, 70, 80]);
    let ease = keeping.dice.between(0, 4);
    for gone in 0..weeks * 7 {
        keeping.next_day();
        keeping.a_day(gone, diligence, ease);
    }
    keeping.before_the_visit();
    keeping.minute = 21 * 60;
    let end = keeping.now();
    (keeping.entries, end)
}

impl Keeping<'_> {
    fn now(&mut self) -> Stamp {
        let local = self.day.and_hms_opt(self.minute / 60, self.minute % 60, 0).expect("a time");
        let zone: NamedZone = ZONE.parse().expect("a zone");
        let instant = zone.instants(local).earliest().expect("daytime");
        Stamp::in_zone(instant, zone).expect("within the years")
    }

    fn next_day(&mut self) {
        self.day = self.day.succ_opt().expect("within the years");
        self.minute = 18 * 60 + u32::try_from(self.dice.below(60)).expect("small");
    }

    fn write(&mut self, what: Content) -> EntryId {
        let now = self.now();
        self.write_of(what, now)
    }

    fn write_of(&mut self, what: Content, happened: Stamp) -> EntryId {
        let written = self.now();
        self.minute += 2;
        let mut id = [0; 16];
        id[..8].copy_from_slice(&(self.entries.len() as u64).to_be_bytes());
        id[8..].copy_from_slice(&self.dice.bits().to_be_bytes());
        let entry = Entry { id: EntryId(id), written, happened, uptime: None, what };
        self.fold.write(&entry).expect("the plan is readable");
        self.entries.push(entry);
        EntryId(id)
    }

    fn accept(&mut self, number: u64) {
        self.minute = 16 * 60;
        let now = self.now();
        let mut plan: serde_json::Value = serde_json::from_str(PLAN).expect("JSON");
        plan["id"] = format!("invented-{number:05}").into();
        plan["for"] = format!("{} {number:05} (invented)", self.dice.pick(&NAMES)).into();
        plan["issued_at"] = now.to_string().into();
        plan["review_by"] = (self.day + Days::new(120)).to_string().into();
        // Three common ways to write the same rule: as it is, asked of fewer sessions, without a pause.
        match self.dice.below(3) {
            0 => plan["rule"]["step_up"]["all_of"][0]["days"] = 5.into(),
            1 => plan["rule"]["pause"] = serde_json::json!([]),
            _ => {}
        }
        let carried: Arc<str> = plan.to_string().into();
        let read: Programme = serde_json::from_value(plan).expect("a plan");
        let (programme, revision) = (read.id, read.revision);
        self.write(Content::ProgrammeAccepted {
            programme,
            revision,
            carried,
            signed: None,
            although: Vec::new(),
        });
        if let Some(step) = self.fold.step().map(|step| step.id.clone()) {
            self.write(Content::StepConfirmed { step });
        }
    }

    fn a_day(&mut self, gone: u64, diligence: u64, ease: u64) {
        if gone % 30 == 12 && self.dice.percent(25) {
            let (from, to) = (self.day + Days::new(1), self.day + Days::new(5));
            self.write(Content::TimeOff { from, to });
        }
        if !self.open.is_empty() && self.dice.percent(30) {
            let signs = std::mem::take(&mut self.open);
            let with = Line::new("the invented clinic").expect("a line");
            self.write(Content::Clearing { with, signs, closes_pause: true });
        }
        if self.dice.percent(diligence / 2) {
            self.breathed();
        }
        if self.open.is_empty() && self.dice.percent(diligence) {
            self.practised(ease);
        }
        if gone % 28 == 3 {
            self.function(gone);
        }
        if self.day.weekday() == chrono::Weekday::Sun {
            self.looked_at_the_suggestion();
        }
    }

    fn breathed(&mut self) {
        let Some(step) = self.fold.step().cloned() else { return };
        let minutes = u32::try_from(self.dice.between(5, 10)).expect("small");
        let session = Session {
            practice: Practice::Breathing,
            parts: vec![UsedPart {
                widest_diameter_tenths_mm: None,
                practised_seconds: minutes * 60,
            }],
            position: step.position,
            ended: Ended::Finished,
            ratings: Ratings::default(),
            signs: Vec::new(),
            note: None,
        };
        self.write(Content::Session(session));
    }

    fn rung(&self) -> u64 {
        let (Some(plan), Some(now)) = (self.fold.programme(), self.fold.step()) else { return 0 };
        plan.steps.iter().position(|step| step.id == now.id).unwrap_or(0) as u64
    }

    fn practised(&mut self, ease: u64) {
        let Some(step) = self.fold.step().cloned() else { return };
        let before = self.entries.iter().rev().take_while(|entry| {
            !matches!(entry.what, Content::StepChange { .. } | Content::ProgrammeAccepted { .. })
        });
        let here = before.filter(|entry| matches!(entry.what, Content::Session(_))).count() as u64;
        let likely = (6 + self.rung()).saturating_sub(ease + here / 3).min(8);
        let peak = (likely + self.dice.below(4)).saturating_sub(1).min(10);
        let session = self.session(&step, peak);
        let late = self.dice.percent(4);
        let happened = self.now();
        if late {
            // Written two days later than it was.
            self.day = self.day + Days::new(2);
        }
        let signs = session.signs.clone();
        let id = self.write_of(Content::Session(session.clone()), happened);
        for noted in signs.iter().filter(|noted| noted.tier > frond_core::safety::Tier::Note) {
            self.open.push(SignKey { entry: id, sign: noted.sign });
        }
        if self.dice.percent(3) {
            let mut put_right = session;
            put_right.note = None;
            let content = Box::new(Content::Session(put_right));
            self.write_of(Content::Correction { of: id, content }, happened);
        } else if signs.is_empty() && self.dice.percent(1) {
            self.write(Content::Strike { of: id });
        } else if self.dice.percent(30) {
            let answer = self.dice.pick(&[Settled::Yes, Settled::Yes, Settled::NotYet]);
            self.write(Content::Settled { of: id, answer });
        }
    }

    fn session(&mut self, step: &Step, peak: u64) -> Session {
        let rated = |value: u64| Some(Answer::Rated(Rating::new(value.min(10)).expect("0 to 10")));
        let peak_told = match self.dice.below(12) {
            0 => None,
            1 => Some(Answer::RatherNotSay),
            _ => rated(peak),
        };
        let hard = peak > 6 && self.dice.percent(60);
        let minutes = self.dice.between(5, 10);
        let parts = step.parts.iter().map(|part| UsedPart {
            widest_diameter_tenths_mm: part.size(),
            practised_seconds: u32::try_from(if hard { minutes * 20 } else { minutes * 60 })
                .expect("small"),
        });
        let mut parts: Vec<UsedPart> = parts.collect();
        if self.rung() > 0 && self.dice.percent(6) {
            // The size before, for today.
            let steps = self.fold.programme().map(|plan| plan.steps.clone()).unwrap_or_default();
            let first = steps.first().and_then(Step::main_size);
            parts.iter_mut().for_each(|part| part.widest_diameter_tenths_mm = first);
        }
        let ended = match (hard, self.dice.below(30)) {
            (true, 0..=20) => Ended::Stopped(Reason::Discomfort),
            (true, _) => Ended::CouldNotStart(Reason::DidNotGoIn),
            (false, 0) => Ended::Stopped(Reason::Interrupted),
            (false, _) => Ended::Finished,
        };
        let worry = rated((peak + self.dice.below(3)).saturating_sub(1));
        let noted = self.dice.pick(&[Sign::Spotting, Sign::Fever, Sign::Distress]);
        let signs = if self.dice.percent(1) {
            vec![SignNoted { sign: noted, tier: noted.tier() }]
        } else {
            Vec::new()
        };
        let note = self.dice.pick(&NOTES);
        let note = self.dice.percent(25).then(|| Passage::new(note).expect("a passage"));
        Session {
            practice: step.practice.clone(),
            parts,
            position: step.position,
            ended,
            ratings: Ratings { peak: peak_told, before: None, after: None, worry },
            signs,
            note,
        }
    }

    fn function(&mut self, gone: u64) {
        for (activity, from) in [("Sitting through a film", 4), ("Using a tampon", 1)] {
            let able = (from + gone / 28 + self.dice.below(3)).min(10);
            let activity = Line::new(activity).expect("a line");
            self.write(Content::FunctionRated {
                activity,
                able: Rating::new(able).expect("0 to 10"),
            });
        }
        let goal = Line::new("An examination without dread").expect("a line");
        let reached = i8::try_from(gone / 42).unwrap_or(0).min(2) - 1;
        self.write(Content::GoalRated { goal, reached: Goal::try_from(reached).expect("-2 to 2") });
    }

    fn looked_at_the_suggestion(&mut self) {
        let Some(step) = self.fold.step().map(|step| step.id.clone()) else { return };
        let answer = self.dice.pick(&[FeelsReady::Yes, FeelsReady::Yes, FeelsReady::NotYet]);
        self.write(Content::FeelsReady { answer });
        let now = self.now();
        let outcome = self.fold.outcome(&now);
        let kind = outcome.kind();
        let to: Option<StepId> = match outcome {
            Outcome::StepUp { to } | Outcome::StepBack { to } => Some(to),
            _ => None,
        };
        let shown = Content::SuggestionShown { outcome: kind, step, to: to.clone() };
        let shown = self.write(shown);
        let Some(to) = to else { return };
        let chosen = self.dice.pick(&[Chosen::Try, Chosen::Try, Chosen::Try, Chosen::Stay]);
        self.write(Content::SuggestionAnswered { shown, chosen });
        if chosen == Chosen::Try {
            self.write(Content::StepChange { to, why: Why::Suggested });
        }
    }

    fn before_the_visit(&mut self) {
        if self.dice.percent(40) {
            let text = self
                .dice
                .pick(&["Invented: is twice a day too much?", "Invented: what comes after?"]);
            self.write(Content::Question { text: Passage::new(text).expect("a passage") });
        }
    }
}

/// Birds: nobody's names.
const NAMES: [&str; 12] = [
    "Wren",
    "Plover",
    "Siskin",
    "Dunlin",
    "Linnet",
    "Knot",
    "Teal",
    "Brambling",
    "Whinchat",
    "Fieldfare",
    "Redshank",
    "Avocet",
];
