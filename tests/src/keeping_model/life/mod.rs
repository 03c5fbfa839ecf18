//! One invented life of a diary, drawn from a seed: what is done, what goes wrong meanwhile, and after
//! every event the comparison with the model. The same seed gives the same life.

mod acts;
mod checks;
mod rot;
mod time;

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::PathBuf;
use std::sync::Arc;

use frond_core::companion::{
    Companion, Copy, CopyFrom, Ports, Recovery, Request, Told, Trouble, Write,
};
use frond_core::diary::entry::EntryId;
use frond_core::diary::erase::Erase;
use frond_core::moment::{Moment, Stamp, Uptime};
use frond_core::ports::SyncFor;
use frond_core::ports::sim::SimDisk;
use frond_core::programme::values::Passage;
use frond_core::progression::{Bar, OutcomeKind};
use frond_core::safety::Sign;
use frond_core::screens::Screen;
use frond_core::sealing::RecoveryKeeper;

use super::world::{self, Notebook, SECRETS, Seen, look};
use super::{Gone, Kind, Line, MarkSeen, Model, read_as};
use crate::home::{FOLDER, PLAN, session, stamp, with_marks};
use crate::lives::dice::Dice;

const HOUR: i64 = 60 * 60 * 1000;

/// The disk that a life is lived on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ground {
    /// It keeps what it says it keeps.
    Honest,
    /// Syncs for this purpose do nothing, and say they did.
    Lies(SyncFor),
    /// It keeps its word when asked, and lets bytes go bad while they lie there.
    Rots,
}

/// What goes wrong during an event.
#[derive(Clone, Copy, Debug)]
enum Fault {
    None,
    /// The power goes off at the n-th change from now, and what was not certain survives in part: of a
    /// hundred steps so many.
    Cut(u64, u64),
    /// The process is killed there.
    Kill(u64),
    /// So many bytes of room are left.
    Full(u64),
}

/// What is done.
#[derive(Clone)]
enum Act {
    Start(usize),
    Tell(Box<Told>, Option<Stamp>, Line),
    Erase(Gone),
    Keys(usize, Option<usize>),
    Restore { from: Source, pass: usize, replaced: Option<u64> },
    End,
    BackUp,
    Save,
    Tidy,
    Reopen,
}

#[derive(Clone)]
enum Source {
    Elsewhere(usize),
    Backup(PathBuf),
}

/// How a life on a lying disk ended, or that it went on to its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fate {
    /// Everything was always there.
    Whole,
    /// Something was missing, and that was said.
    Said,
    /// The diary did not open, and that was said.
    Refused,
    /// The last entries since the mark were gone as if never written: the limit that the format states.
    BeyondTheMark,
    /// What had been ended was there again: nothing was lost.
    CameBack,
}

/// A life.
pub struct Life {
    dice: Dice,
    seed: u64,
    disk: SimDisk,
    companion: Option<Companion>,
    moment: Moment,
    marks: Arc<Notebook>,
    model: Model,
    /// The file's bytes, the phrase it is sealed to, what it holds.
    copies: Vec<(Vec<u8>, usize, Model)>,
    /// Backups by their bytes.
    backups: BTreeMap<Vec<u8>, Model>,
    /// The backup made last when it was acknowledged.
    acknowledged: Option<Model>,
    earlier: Vec<(SimDisk, Model)>,
    ids: BTreeMap<usize, [u8; 16]>,
    mark_seen: BTreeMap<[u8; 16], MarkSeen>,
    old_keys: BTreeSet<Vec<u8>>,
    old_snapshots: BTreeSet<Vec<u8>>,
    snapshots: BTreeSet<Vec<u8>>,
    ground: Ground,
    revision: u32,
    fate: Option<Fate>,
    notes: u64,
    tally: BTreeMap<&'static str, u64>,
    told: String,
}

impl Life {
    /// A life that begins with an empty place.
    #[must_use]
    pub fn new(seed: u64, ground: Ground) -> Self {
        let now = stamp("2026-03-02T08:00:00+00:00[Europe/London]");
        Self {
            dice: Dice::new(seed),
            seed,
            disk: SimDisk::new(),
            companion: None,
            moment: Moment { now, uptime: Some(Uptime { boot: 1, millis: 1_000_000 }) },
            marks: Arc::default(),
            model: Model::nothing(0),
            copies: Vec::new(),
            backups: BTreeMap::new(),
            acknowledged: None,
            earlier: Vec::new(),
            ids: BTreeMap::new(),
            mark_seen: BTreeMap::new(),
            old_keys: BTreeSet::new(),
            old_snapshots: BTreeSet::new(),
            snapshots: BTreeSet::new(),
            ground,
            revision: 1,
            fate: None,
            notes: 0,
            tally: BTreeMap::new(),
            told: String::new(),
        }
    }

    /// Lives through so many events.
    ///
    /// # Panics
    /// When the diary is not what the model says; [`Life::told`] says what was done until then.
    pub fn live(&mut self, events: usize) -> Fate {
        for _ in 0..events {
            if let Some(fate) = self.fate {
                return fate;
            }
            self.event();
        }
        if self.model.there && self.fate.is_none() && self.honest() {
            self.sweep();
        }
        self.fate.unwrap_or(Fate::Whole)
    }

    /// How often what was tried came about, so that a test can say that it did.
    #[must_use]
    pub fn tally(&self) -> &BTreeMap<&'static str, u64> {
        &self.tally
    }

    fn honest(&self) -> bool {
        self.ground == Ground::Honest
    }

    fn count(&mut self, what: &'static str) {
        *self.tally.entry(what).or_insert(0) += 1;
    }

    /// What was done, a line each.
    #[must_use]
    pub fn told(&self) -> &str {
        &self.told
    }

    fn ports(&mut self) -> Ports {
        with_marks(&self.disk, self.dice.bits(), self.marks.clone())
    }

    fn note(&mut self) -> String {
        self.notes += 1;
        format!("invented-{}-{}-note", self.seed, self.notes)
    }

    fn fault(&mut self) -> Fault {
        let far = self.dice.pick(&[4u64, 12, 30, 60]);
        let survives = self.dice.pick(&[0u64, 20, 50, 80, 100]);
        let at = self.dice.below(far);
        match self.dice.below(10) {
            0..=1 => Fault::Cut(at, survives),
            2 => Fault::Kill(at),
            3 if self.honest() => Fault::Full(self.dice.below(200) * 1024),
            3..=4 if !self.honest() => Fault::Cut(at, survives),
            _ => Fault::None,
        }
    }

    fn event(&mut self) {
        self.pass_time();
        if !self.model.there {
            let pass = self.dice.index(SECRETS);
            let act = if !self.copies.is_empty() && self.dice.percent(60) {
                let from = Source::Elsewhere(self.dice.index(self.copies.len()));
                Act::Restore { from, pass, replaced: None }
            } else {
                Act::Start(pass)
            };
            let fault = self.fault();
            return self.act(act, fault);
        }
        if !self.model.lines.iter().any(|line| line.kind == Kind::Plan) {
            return self.change_plan(Fault::None);
        }
        let fault = self.fault();
        let pass = self.dice.index(SECRETS);
        match self.dice.below(100) {
            0..=21 => self.tell_session(fault),
            22..=26 => self.tell_sign(fault),
            27..=31 => self.correct(fault),
            32..=36 => self.strike(fault),
            37..=40 => {
                let line = self.line(Kind::Confirmed, String::new());
                self.act(Act::Tell(Box::new(Told::ConfirmStep), None, line), fault);
            }
            41..=47 => {
                let ids: Vec<EntryId> = self.model.lines.iter().filter_map(|l| l.id).collect();
                let id = self.dice.pick(&ids);
                self.act(Act::Erase(Gone::One(id)), fault);
            }
            48..=50 => {
                let days: Vec<_> = self.model.lines.iter().map(|line| line.day).collect();
                let (a, b) = (self.dice.pick(&days), self.dice.pick(&days));
                self.act(Act::Erase(Gone::Days(a.min(b), a.max(b))), fault);
            }
            // Always other secrets than before, so that the old state and the new one can be told apart.
            51..=54 => {
                self.act(Act::Keys((self.model.pass + 1) % SECRETS, self.model.phrase), fault)
            }
            55..=59 => {
                let other = self.model.phrase.map_or(pass, |phrase| (phrase + 1) % SECRETS);
                self.act(Act::Keys(self.model.pass, Some(other)), fault);
            }
            60 => self.act(Act::Keys((self.model.pass + 1) % SECRETS, None), fault),
            61..=65 => self.copy(),
            66..=68 if !self.copies.is_empty() => {
                let from = Source::Elsewhere(self.dice.index(self.copies.len()));
                let replaced = self.dice.percent(70).then_some(self.model.lines.len() as u64);
                self.act(Act::Restore { from, pass, replaced }, fault);
            }
            69..=71 => {
                let mut there = world::backups(&self.disk);
                there.retain(|(_, bytes)| self.backups.contains_key(bytes));
                if !there.is_empty() {
                    let from = Source::Backup(self.dice.pick(&there).0);
                    let replaced = Some(self.model.lines.len() as u64);
                    self.act(Act::Restore { from, pass, replaced }, fault);
                }
            }
            72 => self.act(Act::End, fault),
            73..=76 => self.act(Act::BackUp, fault),
            77..=79 => self.act(Act::Save, fault),
            80..=81 => self.act(Act::Tidy, fault),
            82..=83 => self.act(Act::Reopen, fault),
            84..=85 => self.change_plan(fault),
            86..=89 if self.ground == Ground::Rots => self.rot(),
            86..=89 => self.earlier.push((self.disk.after_kill(), self.model.clone())),
            90..=97 if self.honest() => self.set_back(),
            98 if self.honest() => self.lose_the_phone(),
            _ => self.act(Act::Reopen, Fault::None),
        }
    }

    fn line(&self, kind: Kind, note: String) -> Line {
        Line { note, ..Line::mark(kind, self.moment.now.day()) }
    }

    fn some_time_ago(&mut self) -> Stamp {
        let now = self.moment.now;
        let ago = self.dice.pick(&[0i64, 0, 3, 24, 60]) * HOUR;
        Stamp::from_millis(now.millis() - ago, *now.local().offset(), now.zone()).expect("in range")
    }

    fn session_told(&mut self) -> (Told, String) {
        let note = self.note();
        let mut told = session(140, 8, u8::try_from(self.dice.below(5)).ok());
        told.note = Passage::new(note.as_str()).ok();
        (Told::Session(told), note)
    }

    /// A later revision of the plan is accepted; the first one where there is none yet.
    fn change_plan(&mut self, fault: Fault) {
        let plan = PLAN.replacen("\"revision\": 1", &format!("\"revision\": {}", self.revision), 1);
        if self.revision > 1 {
            self.count("plans changed");
        }
        self.revision += 1;
        let line = self.line(Kind::Plan, String::new());
        self.act(Act::Tell(Box::new(Told::unsigned(&plan)), None, line), fault);
    }

    fn tell_session(&mut self, fault: Fault) {
        let (told, note) = self.session_told();
        let happened = self.some_time_ago();
        let line = Line { day: happened.day(), ..self.line(Kind::Session, note) };
        self.act(Act::Tell(Box::new(told), Some(happened), line), fault);
    }

    fn tell_sign(&mut self, fault: Fault) {
        let note = self.note();
        let told = Told::Signs { signs: vec![Sign::Fever], note: Passage::new(note.as_str()).ok() };
        let line = self.line(Kind::Sign, note);
        self.act(Act::Tell(Box::new(told), None, line), fault);
    }

    fn correct(&mut self, fault: Fault) {
        let lines = self.model.lines.iter();
        let some: Vec<EntryId> =
            lines.filter(|line| line.kind == Kind::Session).filter_map(|line| line.id).collect();
        if some.is_empty() {
            return;
        }
        let of = self.dice.pick(&some);
        let (told, note) = self.session_told();
        let happened = self.some_time_ago();
        let line = Line { day: happened.day(), ..self.line(Kind::Correction(of), note) };
        let told = Told::Correct { of, told: Box::new(told) };
        self.act(Act::Tell(Box::new(told), Some(happened), line), fault);
    }

    fn strike(&mut self, fault: Fault) {
        let strikes = |kind: &Kind| {
            matches!(
                kind,
                Kind::Session
                    | Kind::Sign
                    | Kind::Correction(_)
                    | Kind::Strike(_)
                    | Kind::Confirmed
            )
        };
        let lines = self.model.lines.iter();
        let some: Vec<EntryId> =
            lines.filter(|line| strikes(&line.kind)).filter_map(|line| line.id).collect();
        if some.is_empty() {
            return;
        }
        let of = self.dice.pick(&some);
        let line = self.line(Kind::Strike(of), String::new());
        self.act(Act::Tell(Box::new(Told::Strike { of }), None, line), fault);
    }

    fn copy(&mut self) {
        let made = self.companion.as_ref().map(|c| c.copy_for_elsewhere(&self.moment.now));
        match (made, self.model.phrase) {
            (Some(Ok(bytes)), Some(phrase)) => {
                self.copies.push((bytes, phrase, self.model.clone()));
                let line = self.line(Kind::CopyKept, String::new());
                self.act(Act::Tell(Box::new(Told::CopyKept), None, line), Fault::None);
            }
            (Some(Err(trouble)), None) => assert!(matches!(trouble, Trouble::PutRight(_))),
            (made, phrase) => {
                let made = made.map(|made| made.map(|bytes| bytes.len()));
                panic!("a copy: {made:?} while the phrase is {phrase:?}")
            }
        }
    }

    /// The whole folder is what it was earlier; what is kept outside it is not.
    fn set_back(&mut self) {
        if self.earlier.is_empty() {
            return;
        }
        let (disk, model) = self.dice.pick(&self.earlier);
        self.say("set back");
        self.companion = None;
        self.disk = disk.after_kill();
        self.model = model;
        let mark = self.mark(self.model.diary);
        self.model.owed |= mark.is_some_and(|mark| self.model.is_behind(&mark));
        self.acknowledged = None;
        self.old_snapshots.clear();
        let fault = self.fault();
        self.act(Act::Reopen, fault);
    }

    /// Another device, with nothing on it.
    fn lose_the_phone(&mut self) {
        self.say("another device");
        self.companion = None;
        self.disk = SimDisk::new();
        if self.dice.percent(50) {
            self.marks = Arc::default();
        }
        self.model = Model::nothing(self.ids.keys().max().map_or(0, |n| *n).max(self.model.diary));
        self.acknowledged = None;
        self.earlier.clear();
    }

    fn mark(&self, diary: usize) -> Option<MarkSeen> {
        let id = self.ids.get(&diary)?;
        self.marks.of(id).and_then(|_| self.mark_seen.get(id).cloned())
    }

    fn say(&mut self, what: &str) {
        let _ = writeln!(self.told, "{} {what}", self.moment.now);
    }
}
