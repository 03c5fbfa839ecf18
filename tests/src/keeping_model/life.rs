//! One invented life of a diary, drawn from a seed: what is done, what goes wrong meanwhile, and after
//! every event the comparison with the model. The same seed gives the same life.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
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
    lies: Option<SyncFor>,
    fate: Option<Fate>,
    notes: u64,
    told: String,
}

impl Life {
    /// A life that begins with an empty place. `lies`: syncs for this purpose do nothing, and say they did.
    #[must_use]
    pub fn new(seed: u64, lies: Option<SyncFor>) -> Self {
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
            lies,
            fate: None,
            notes: 0,
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
        if self.model.there && self.fate.is_none() && self.lies.is_none() {
            self.sweep();
        }
        self.fate.unwrap_or(Fate::Whole)
    }

    /// What was done, a line each.
    #[must_use]
    pub fn told(&self) -> &str {
        &self.told
    }

    fn ports(&mut self) -> Ports {
        with_marks(&self.disk, self.dice.bits(), self.marks.clone())
    }

    fn pass_time(&mut self) {
        let hours = self.dice.pick(&[0i64, 0, 1, 5, 24, 30]);
        let at = self.moment.now.millis() + hours * HOUR + 1000;
        let now = self.moment.now;
        self.moment.now =
            Stamp::from_millis(at, *now.local().offset(), now.zone()).expect("in range");
        if let Some(uptime) = self.moment.uptime.as_mut() {
            uptime.millis = uptime.millis.saturating_add_signed(hours * HOUR + 1000);
        }
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
            3 if self.lies.is_none() => Fault::Full(self.dice.below(200) * 1024),
            3..=4 if self.lies.is_some() => Fault::Cut(at, survives),
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
            let plan = self.line(Kind::Plan, String::new());
            return self.act(
                Act::Tell(Box::new(Told::Programme { text: PLAN.into() }), None, plan),
                Fault::None,
            );
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
                let there = world::backups(&self.disk);
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
            82..=84 => self.act(Act::Reopen, fault),
            85..=89 => self.earlier.push((self.disk.after_kill(), self.model.clone())),
            90..=97 if self.lies.is_none() => self.set_back(),
            98 if self.lies.is_none() => self.lose_the_phone(),
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

    /// What the diary ought to be afterwards; `None`: it ought to be refused.
    fn expected(&self, act: &Act) -> Option<Model> {
        let (model, day) = (&self.model, self.moment.now.day());
        Some(match act {
            Act::Start(pass) => {
                let newest = self.ids.keys().max().map_or(0, |n| *n).max(model.diary);
                let lost = self.copies.iter().map(|copy| copy.2.diary).max().unwrap_or(0);
                Model { diary: newest.max(lost) + 1, ..model.started(*pass) }
            }
            Act::Tell(_, _, line) => model.with(line.clone()),
            Act::Erase(what) => return model.without(*what, day),
            Act::Keys(pass, phrase) => model.renewed(*pass, *phrase),
            Act::Restore { from, pass, replaced } => {
                let copy = match from {
                    Source::Elsewhere(n) => &self.copies.get(*n)?.2,
                    Source::Backup(path) => self.backups.get(&self.disk.content(path)?)?,
                };
                let known = self.mark(copy.diary).map_or(0, |mark| mark.generation);
                model.restored(copy, *pass, known, *replaced, day)
            }
            Act::End => model.ended(),
            Act::BackUp | Act::Save | Act::Tidy | Act::Reopen => model.clone(),
        })
    }

    fn act(&mut self, act: Act, fault: Fault) {
        self.say(&format!("{} {fault:?}", act.name()));
        let mut act = act;
        if let (Act::Tell(_, _, line), Some(companion)) = (&mut act, &self.companion) {
            line.id = companion.new_id().ok();
        }
        let before = self.model.clone();
        let expected = self.expected(&act);
        let journal = self.disk.content(&Path::new(FOLDER).join("journal"));
        let calls = self.disk.calls();
        if let Some(lie) = self.lies {
            self.disk.leave_out(lie);
        }
        match fault {
            Fault::None => {}
            Fault::Cut(n, _) | Fault::Kill(n) => self.disk.power_off_at(calls + n),
            Fault::Full(room) => self.disk.set_room(Some(room)),
        }
        let done = self.perform(&act);
        self.disk.set_room(None);
        self.disk.power_off_at(u64::MAX);
        let Some(after) = expected else {
            assert!(done.is_err(), "it was not refused");
            return self.settle(vec![before], fault);
        };
        let mut candidates = match &done {
            Ok(()) => vec![after.clone()],
            Err(Trouble::PutRight(_)) => panic!("it was refused: {done:?}"),
            Err(_) => vec![before.clone(), after.clone()],
        };
        if let (Act::Tell(..), Err(_), Fault::Cut(..)) = (&act, &done, fault) {
            candidates.push(before.torn(self.moment.now.day()));
        }
        if matches!((&act, &done), (Act::Reopen, _)) {
            // An opening that was cut short may have owned up to a set-back or not.
            let day = self.moment.now.day();
            candidates = match (fault, &done) {
                (Fault::None, Ok(())) => vec![before.owned_up(day)],
                _ => vec![before.clone(), before.owned_up(day)],
            };
        }
        match fault {
            Fault::None => {
                assert!(done.is_ok(), "trouble without a fault: {done:?}");
                if after.there {
                    self.compare(&candidates);
                } else {
                    self.settle(candidates, fault);
                }
            }
            Fault::Full(_) if done.is_ok() && !matches!(act, Act::Reopen | Act::End) => {
                self.compare(&candidates);
            }
            _ => self.settle(candidates, fault),
        }
        if self.fate.is_some() || self.lies.is_some() {
            return;
        }
        self.look_at_marks(&before, &after);
        let fine = done.is_ok() && matches!(fault, Fault::None);
        self.look_at_backups(&before, fine);
        if done.is_ok() {
            self.look_after(&act, fault, &before, journal);
        }
        if self.dice.percent(10) {
            self.sweep();
        }
    }

    fn look_after(&mut self, act: &Act, fault: Fault, before: &Model, journal: Option<Vec<u8>>) {
        match act {
            Act::BackUp if matches!(fault, Fault::None | Fault::Full(_)) => {
                let newest = world::backups(&self.disk).into_iter().next();
                let newest = newest.and_then(|(_, bytes)| self.backups.get(&bytes));
                let same = newest.is_some_and(|backup| backup.lines == self.model.lines);
                assert!(same, "a backup that was acknowledged is not the newest");
                self.acknowledged = Some(self.model.clone());
            }
            Act::Erase(_) | Act::Keys(..) | Act::End => {
                self.old_snapshots.append(&mut self.snapshots);
                self.sweep();
            }
            Act::Restore { .. } if before.there => {
                let aside = Path::new(FOLDER).join("aside");
                let kept = world::files(&self.disk).into_iter().any(|(path, bytes)| {
                    path.starts_with(&aside) && Some(&bytes) == journal.as_ref()
                });
                assert!(kept, "what was replaced is not kept aside");
            }
            _ => {}
        }
    }

    fn perform(&mut self, act: &Act) -> Result<(), Trouble> {
        let (folder, moment) = (Path::new(FOLDER), self.moment);
        let ports = self.ports();
        match act {
            Act::Start(secret) => {
                let keeper = world::pass(*secret);
                self.companion = Some(Companion::start(&ports, folder, &keeper, "en")?);
            }
            Act::Reopen => {
                self.companion = None;
                self.companion = Some(self.open(&ports)?);
            }
            Act::Restore { from, pass, replaced } => {
                self.companion = None;
                let copy = match from {
                    Source::Elsewhere(n) => {
                        let (bytes, secret, _) = &self.copies[*n];
                        let phrase = &world::phrase(*secret);
                        Copy::read(&ports, CopyFrom::Elsewhere { bytes, phrase })?
                    }
                    Source::Backup(path) => {
                        let known = self.disk.content(path).and_then(|b| self.backups.get(&b));
                        let keeper = &world::pass(known.map_or(0, |known| known.pass));
                        Copy::read(&ports, CopyFrom::Backup { path, keeper })?
                    }
                };
                let keeper = world::pass(*pass);
                let restored =
                    Companion::restore(&ports, folder, &keeper, copy, *replaced, "en", &moment);
                self.companion = Some(restored?);
            }
            Act::Tell(told, happened, line) => {
                let (id, told) = (line.id.unwrap_or(EntryId([0; 16])), told.as_ref().clone());
                let write = Write { id, happened: *happened, told };
                self.open_now().ask(Request::Write(write), &moment)?;
            }
            Act::BackUp => self.open_now().back_up(&moment.now)?,
            Act::Save => self.open_now().save()?,
            Act::Tidy => self.open_now().tidy()?,
            Act::Erase(what) => {
                let what = match what {
                    Gone::One(id) => Erase::Entry(*id),
                    Gone::Days(from, to) => Erase::Days { from: *from, to: *to },
                };
                let keeper = world::pass(self.model.pass);
                let companion = self.companion.take().expect("open");
                self.companion = Some(companion.erase(what, &keeper, &moment)?);
            }
            Act::Keys(pass, phrase) => {
                let new = phrase.map(world::phrase);
                let recovery = match &new {
                    _ if *phrase == self.model.phrase => Recovery::Keep,
                    Some(new) => Recovery::By(new),
                    None => Recovery::None,
                };
                let companion = self.companion.take().expect("open");
                self.companion =
                    Some(companion.new_keys(&world::pass(*pass), recovery, &moment)?);
            }
            Act::End => {
                let keeper = world::pass(self.model.pass);
                self.companion.take().expect("open").end(&keeper)?;
            }
        }
        Ok(())
    }

    fn open_now(&mut self) -> &mut Companion {
        self.companion.as_mut().expect("open")
    }

    fn open(&mut self, ports: &Ports) -> Result<Companion, Trouble> {
        let (folder, moment) = (Path::new(FOLDER), &self.moment);
        match self.model.phrase {
            Some(n) if self.dice.percent(20) => {
                let keeper = RecoveryKeeper::new(world::phrase(n));
                Companion::open(ports, folder, &keeper, "en", moment)
            }
            _ => Companion::open(ports, folder, &world::pass(self.model.pass), "en", moment),
        }
    }

    /// The open diary is one of these.
    fn compare(&mut self, candidates: &[Model]) {
        let entries = self.open_now().entries();
        let Ok(entries) = entries else { panic!("the entries cannot be read") };
        let fit = candidates.iter().find_map(|model| {
            Some(Model { lines: read_as(&model.lines, &entries)?, ..model.clone() })
        });
        let Some(model) = fit else {
            let texts: Vec<_> = entries.iter().map(|e| serde_json::to_string(e)).collect();
            panic!(
                "the diary is not as told: {texts:#?}\nbut ought to be {:#?}",
                candidates[0].lines
            )
        };
        let owned_up = self.model.owed && !model.owed;
        self.model = model;
        if owned_up {
            let moment = self.moment;
            let screen = self.open_now().ask(Request::Keeping, &moment);
            let said = matches!(screen.map(|answer| answer.screen),
                Ok(Screen::Keeping(screen)) if !screen.trouble.is_empty());
            assert!(said, "a folder set back is not said");
        }
        let now = self.moment.now;
        let assessment = self.open_now().state().rule().assess(&now);
        let kind = assessment.outcome.kind();
        let barred = assessment.bars.contains(&Bar::RestoreNotConfirmed);
        if self.model.lines.iter().any(|line| line.kind == Kind::Plan) {
            match self.model.restore_unconfirmed() {
                Some(true) => assert!(
                    kind < OutcomeKind::ReadyToTalk
                        && (barred || kind == OutcomeKind::PauseAndCall),
                    "a restore that nobody confirmed bars nothing"
                ),
                Some(false) => assert!(!barred, "confirmed, and still barred"),
                None => {}
            }
        }
    }

    /// The power is back: the diary is one of these, and is opened again.
    fn settle(&mut self, candidates: Vec<Model>, fault: Fault) {
        self.companion = None;
        self.disk = match fault {
            Fault::Cut(_, survives) => {
                let dice = &mut self.dice;
                self.disk.after_power_cut(&mut || dice.percent(survives))
            }
            _ => self.disk.after_kill(),
        };
        let seen = look(&self.disk, &self.moment);
        let fit = candidates.iter().find(|model| fits(model, &seen)).cloned();
        let Some(model) = fit else {
            if self.lies.is_some() {
                return self.judge_the_lie(&candidates, &seen);
            }
            panic!("the folder is none of what it may be: {seen:#?}\n{candidates:#?}")
        };
        self.model = model;
        let ports = self.ports();
        match self.open(&ports) {
            Ok(_) if !self.model.there => panic!("what is not there opens"),
            Ok(companion) => self.companion = Some(companion),
            // Whoever tries has what was begun carried out.
            Err(_) if !self.model.there => return,
            Err(trouble) => panic!("it does not open: {trouble}"),
        }
        let after = self.model.owned_up(self.moment.now.day());
        if self.lies.is_none() {
            self.compare(&[after]);
        }
    }

    /// The disk lied, and the diary is not what was acknowledged: it must have been said.
    fn judge_the_lie(&mut self, candidates: &[Model], seen: &Seen) {
        let acknowledged = candidates.first().expect("one");
        if seen.entries.is_none() {
            // No screen says that all is well.
            self.fate = Some(Fate::Refused);
            return;
        }
        if !acknowledged.there {
            self.fate = Some(Fate::CameBack);
            return;
        }
        let Some(pass) = seen.passes.first() else { panic!("only a phrase opens it") };
        let ports = self.ports();
        let opened =
            Companion::open(&ports, Path::new(FOLDER), &world::pass(*pass), "en", &self.moment);
        let Ok(mut companion) = opened else {
            self.fate = Some(Fate::Refused);
            return;
        };
        let screen = companion.ask(Request::Keeping, &self.moment);
        let said = matches!(screen.map(|answer| answer.screen),
            Ok(Screen::Keeping(screen)) if !screen.trouble.is_empty());
        if said {
            self.fate = Some(Fate::Said);
            return;
        }
        // Nothing is said: then only the last entries may be gone, behind what the mark knows.
        let entries = companion.entries().unwrap_or_default();
        let mark = self.ids.get(&acknowledged.diary).and_then(|id| self.marks.of(id));
        let known = mark.as_deref().and_then(MarkSeen::read).map_or(0, |mark| mark.seq);
        let silent = candidates.iter().any(|model| {
            let kept = model.lines.get(..entries.len()).unwrap_or_default();
            entries.len() as u64 >= known && read_as(kept, &entries).is_some()
        });
        assert!(
            silent,
            "lost, and nothing is said: {entries:#?}\n{candidates:#?}\nmark at {known}"
        );
        self.fate = Some(Fate::BeyondTheMark);
    }

    fn look_at_marks(&mut self, before: &Model, after: &Model) {
        for (id, bytes) in self.marks.news() {
            let mark = MarkSeen::read(&bytes).expect("a mark");
            let at = usize::try_from(mark.seq).unwrap_or(0).saturating_sub(1);
            let fits =
                |model: &&Model| model.generation == mark.generation && model.lines.len() > at;
            let state = [&self.model, before].into_iter().find(fits);
            let Some(state) = state else {
                panic!("a mark of no state: {mark:?}, {before:#?} {after:#?}")
            };
            let entry = state.lines.get(at).and_then(|line| line.id);
            let known = *self.ids.entry(state.diary).or_insert(id);
            assert_eq!(known, id, "the mark of another diary");
            self.mark_seen.insert(id, MarkSeen { entry, ..mark });
        }
    }

    fn look_at_backups(&mut self, before: &Model, fine: bool) {
        let there = world::backups(&self.disk);
        for (path, bytes) in &there {
            if self.backups.contains_key(bytes) {
                continue;
            }
            let Some((entries, pass)) = world::backup(bytes) else {
                panic!("a backup that does not open: {}", path.display())
            };
            let state = [&self.model, before].into_iter().find_map(|model| {
                let mut lines = read_as(&model.lines, &entries);
                if lines.is_none() {
                    // Made before the entry it was due for.
                    let shorter = model.lines.len().checked_sub(1)?;
                    lines = read_as(&model.lines[..shorter], &entries);
                }
                (model.pass == pass).then_some(Model {
                    lines: lines?,
                    owed: false,
                    ..model.clone()
                })
            });
            let Some(state) = state else {
                panic!("a backup of what never was: {}", path.display())
            };
            if fine {
                let mark = self.mark(state.diary);
                let kept = mark.is_some_and(|mark| {
                    mark.generation >= state.generation && mark.seq >= state.lines.len() as u64
                });
                assert!(kept || state.lines.is_empty(), "a backup was made and no mark was kept");
            }
            self.backups.insert(bytes.clone(), state);
        }
        if let Some(acknowledged) = &self.acknowledged
            && self.model.there
            && (acknowledged.diary, acknowledged.generation)
                == (self.model.diary, self.model.generation)
        {
            let newest = there.first().and_then(|(_, bytes)| self.backups.get(bytes));
            let enough = newest.is_some_and(|n| n.lines.len() >= acknowledged.lines.len());
            assert!(enough, "an acknowledged backup is gone");
        }
        for (path, bytes) in world::files(&self.disk) {
            match path.strip_prefix(FOLDER).ok().and_then(Path::to_str) {
                Some("keys") => {
                    self.old_keys.insert(bytes);
                }
                Some("snapshot") => {
                    self.snapshots.insert(bytes);
                }
                _ => {}
            }
        }
    }

    /// Nothing erased opens from any file with any key.
    fn sweep(&mut self) {
        let text = world::readable(&self.disk, &self.old_keys, &self.moment);
        for note in &self.model.erased {
            assert!(!text.contains(note.as_str()), "an erased entry opens: {note}");
        }
        for (path, bytes) in world::files(&self.disk) {
            let old = !bytes.is_empty() && self.old_snapshots.contains(&bytes);
            assert!(!old, "a snapshot from before an erase: {}", path.display());
        }
    }
}

/// Whether what was seen is what the model says.
fn fits(model: &Model, seen: &Seen) -> bool {
    if !model.there {
        let nothing = |trouble: &Trouble| matches!(trouble, Trouble::NotADiary | Trouble::Restore);
        return seen.entries.is_none() && seen.troubles.iter().all(nothing);
    }
    seen.passes == BTreeSet::from([model.pass])
        && seen.phrases == model.phrase.into_iter().collect()
        && seen.entries.as_ref().is_some_and(|entries| read_as(&model.lines, entries).is_some())
}

impl Act {
    fn name(&self) -> String {
        match self {
            Self::Start(pass) => format!("start under {pass}"),
            Self::Tell(_, _, line) => format!("tell {:?} {}", line.kind, line.note),
            Self::Erase(what) => format!("erase {what:?}"),
            Self::Keys(pass, phrase) => format!("keys {pass} {phrase:?}"),
            Self::Restore { from: Source::Elsewhere(n), pass, .. } => {
                format!("restore copy {n} under {pass}")
            }
            Self::Restore { from: Source::Backup(path), pass, .. } => {
                format!("restore {} under {pass}", path.display())
            }
            Self::End => "end".to_owned(),
            Self::BackUp => "back up".to_owned(),
            Self::Save => "save".to_owned(),
            Self::Tidy => "tidy".to_owned(),
            Self::Reopen => "reopen".to_owned(),
        }
    }
}
