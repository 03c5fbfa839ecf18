//! A phone with one diary on a simulated disk. The plan and everything told are invented.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use crate::companion::{Ports, Request, Told, Trouble, Write};
use crate::diary::entry::EntryId;
use crate::moment::{Moment, Stamp, Uptime};
use crate::ports::sim::{SeededRandom, SimDisk};
use crate::ports::{
    DataKey, KeeperError, KeeperKind, KeyKeeper, NoMarks, Passphrase, PassphraseKeeper, Random,
    Stretch,
};
use crate::programme::values::Passage;
use crate::screens::{Does, Screen, WholeScreen};
use crate::whole::{Holder, Seen, View, WholeRequest};

pub(super) const PLAN: &[u8] =
    include_bytes!("../../../../fixtures/programmes/1-graded-then-positions.json");

pub(super) fn folder() -> PathBuf {
    PathBuf::from("/diary")
}

pub(super) fn tries() -> PathBuf {
    PathBuf::from("/diary.tries")
}

/// A phone's key store: each wrap under a key of its own, named at its beginning. It outlives the program.
#[derive(Clone, Debug, Default)]
pub(super) struct Phone(Arc<Mutex<Store>>);

#[derive(Debug, Default)]
struct Store {
    keys: BTreeSet<u8>,
    made: u8,
    /// What it answers to everything, if it does not work.
    fault: Option<KeeperError>,
    /// How often it was asked to unwrap.
    asked: usize,
}

impl Phone {
    fn store(&self) -> MutexGuard<'_, Store> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub(super) fn fails(&self, fault: Option<KeeperError>) {
        self.store().fault = fault;
    }

    /// The phone was reset.
    pub(super) fn forget_all(&self) {
        self.store().keys.clear();
    }

    pub(super) fn keys(&self) -> usize {
        self.store().keys.len()
    }

    pub(super) fn asked(&self) -> usize {
        self.store().asked
    }

    fn under(name: u8) -> PassphraseKeeper {
        let secret = Passphrase::new(format!("key {name}")).unwrap();
        PassphraseKeeper::new(secret, Stretch::cheap_for_tests_only())
    }
}

impl KeyKeeper for Phone {
    fn kind(&self) -> KeeperKind {
        KeeperKind::PhoneKeyStore
    }

    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        let mut store = self.store();
        if let Some(fault) = store.fault {
            return Err(fault);
        }
        store.made = store.made.wrapping_add(1);
        let name = store.made;
        store.keys.insert(name);
        let mut wrap = vec![name];
        wrap.extend(Self::under(name).wrap(key, random)?);
        Ok(wrap)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let mut store = self.store();
        store.asked += 1;
        if let Some(fault) = store.fault {
            return Err(fault);
        }
        let (name, wrap) = wrap.split_first().ok_or(KeeperError::WrapDamaged)?;
        if !store.keys.contains(name) {
            return Err(KeeperError::KeyGone);
        }
        Self::under(*name).unwrap(wrap)
    }

    fn keep_only(&self, wrap: &[u8]) {
        self.store().keys.retain(|name| Some(name) == wrap.first());
    }

    fn forget(&self) {
        self.store().keys.clear();
    }
}

/// Somebody's phone.
pub(super) struct Home {
    pub(super) disk: SimDisk,
    pub(super) phone: Phone,
    pub(super) holder: Holder,
    pub(super) moment: Moment,
    seed: u64,
}

fn holder(disk: &SimDisk, seed: u64) -> Holder {
    let ports = Ports {
        disk: Arc::new(disk.clone()),
        random: Arc::new(SeededRandom::new(seed)),
        marks: Arc::new(NoMarks),
    };
    Holder::new(ports, folder(), "en").stretching(Stretch::cheap_for_tests_only())
}

impl Home {
    /// A phone without a diary.
    pub(super) fn new() -> Self {
        let disk = SimDisk::new();
        let now: Stamp = "2026-03-02T08:00:00+00:00[Europe/London]".parse().unwrap();
        let uptime = Some(Uptime { boot: 1, millis: 1_000_000 });
        let holder = holder(&disk, 1);
        Self { disk, phone: Phone::default(), holder, moment: Moment { now, uptime }, seed: 1 }
    }

    /// A phone with a diary in which a few things were told.
    pub(super) fn begun() -> Self {
        let mut home = Self::new();
        home.whole(WholeRequest::StartNew);
        for number in 0..3 {
            home.tell(number);
        }
        home
    }

    /// The same with a code.
    pub(super) fn coded(code: &str) -> Self {
        let mut home = Self::begun();
        let seen = home.whole(set(code));
        assert!(matches!(seen, View::Whole(WholeScreen::Done(_))));
        home
    }

    /// The program ends, killed or not, and begins again; the diary is not opened yet.
    pub(super) fn again(&mut self) {
        self.on(self.disk.after_kill());
    }

    /// The same on this disk.
    pub(super) fn on(&mut self, disk: SimDisk) {
        self.seed += 1;
        self.disk = disk;
        self.holder = holder(&self.disk, self.seed);
    }

    /// The phone is started again.
    pub(super) fn restart(&mut self) {
        self.again();
        if let Some(uptime) = &mut self.moment.uptime {
            *uptime = Uptime { boot: uptime.boot + 1, millis: 0 };
        }
    }

    /// Time goes on, for the clock and for the device alike.
    pub(super) fn pass(&mut self, millis: u64) {
        self.set_clock(i64::try_from(millis).unwrap());
        if let Some(uptime) = &mut self.moment.uptime {
            uptime.millis += millis;
        }
    }

    /// The clock is set by so much, while the device runs on.
    pub(super) fn set_clock(&mut self, millis: i64) {
        let now = self.moment.now;
        let offset = *now.local().offset();
        self.moment.now = Stamp::from_millis(now.millis() + millis, offset, now.zone()).unwrap();
    }

    pub(super) fn try_whole(&mut self, request: WholeRequest) -> Result<Seen, Trouble> {
        self.holder.whole(request, &self.phone, &self.moment)
    }

    pub(super) fn whole(&mut self, request: WholeRequest) -> View {
        self.seen(request).view
    }

    pub(super) fn seen(&mut self, request: WholeRequest) -> Seen {
        match self.try_whole(request) {
            Ok(seen) => seen,
            Err(trouble) => panic!("{trouble}"),
        }
    }

    pub(super) fn try_ask(&mut self, request: Request) -> Result<Seen, Trouble> {
        self.holder.ask(request, &self.phone, &self.moment)
    }

    pub(super) fn ask(&mut self, request: Request) -> View {
        self.try_ask(request).map(|seen| seen.view).unwrap_or_else(|trouble| panic!("{trouble}"))
    }

    pub(super) fn try_press(&mut self, does: Does) -> Result<Seen, Trouble> {
        self.holder.press(does, &self.phone, &self.moment)
    }

    pub(super) fn press(&mut self, does: Does) -> View {
        self.try_press(does).map(|seen| seen.view).unwrap_or_else(|trouble| panic!("{trouble}"))
    }

    pub(super) fn begin(&mut self) -> View {
        self.whole(WholeRequest::Begin)
    }

    pub(super) fn give(&mut self, code: &str) -> View {
        self.whole(WholeRequest::GiveCode { code: code.to_owned() })
    }

    /// Another code in place of the one in use.
    pub(super) fn change(&mut self, old: &str, new: &str) -> Result<View, Trouble> {
        assert_eq!(name(&self.try_whole(WholeRequest::CodeForm)?.view), "code");
        assert_eq!(name(&self.give(old)), "set code");
        Ok(self.try_whole(set(new))?.view)
    }

    /// Something is told; the id under which it was kept.
    pub(super) fn tell(&mut self, number: u32) -> EntryId {
        match self.try_tell(number) {
            Ok(id) => id,
            Err(trouble) => panic!("{trouble}"),
        }
    }

    pub(super) fn try_tell(&mut self, number: u32) -> Result<EntryId, Trouble> {
        let id = self.holder.new_id()?;
        let question = Passage::new(&format!("invented question {number}")).unwrap();
        let write = Write { id, happened: None, told: Told::Question(question) };
        self.try_ask(Request::Write(write))?;
        Ok(id)
    }

    /// The ids of all entries, in order.
    pub(super) fn entries(&self) -> Vec<EntryId> {
        let companion = self.holder.open_companion().expect("open");
        companion.entries().unwrap().iter().map(|entry| entry.id).collect()
    }

    /// A recovery phrase is made and checked; the twelve words.
    pub(super) fn phrase(&mut self) -> String {
        let View::Whole(WholeScreen::Phrase(screen)) = self.whole(WholeRequest::NewPhrase) else {
            panic!("no words");
        };
        let View::Whole(WholeScreen::PhraseCheck(_)) = self.whole(WholeRequest::PhraseWritten)
        else {
            panic!("no form");
        };
        let words = vec![screen.words[2].clone(), screen.words[8].to_uppercase()];
        let done = self.whole(WholeRequest::CheckPhrase { words });
        assert!(matches!(done, View::Whole(WholeScreen::Done(_))));
        screen.words.join(" ")
    }

    pub(super) fn content(&self, name: &str) -> Vec<u8> {
        self.disk.content(&Path::new("/diary").join(name)).expect("a file")
    }
}

pub(super) fn set(code: &str) -> WholeRequest {
    WholeRequest::SetCode { new: code.to_owned(), again: code.to_owned() }
}

/// What is shown, in one word.
pub(super) fn name(view: &View) -> &'static str {
    match view {
        View::Screen(Screen::Today(_)) => "today",
        View::Screen(Screen::FirstRun(_)) => "first run",
        View::Screen(Screen::Keeping(_)) => "keeping",
        View::Screen(Screen::Accept(_)) => "accept",
        View::Screen(Screen::Erase(_)) => "erase",
        View::Screen(Screen::Kept(_)) => "kept",
        View::Screen(Screen::Found(_)) => "found",
        View::Screen(Screen::Running(_)) => "running",
        View::Screen(Screen::Summary(_)) => "summary",
        View::Screen(_) => "another screen",
        View::Whole(WholeScreen::NoDiary(_)) => "no diary",
        View::Whole(WholeScreen::Code(_)) => "code",
        View::Whole(WholeScreen::SetCode(_)) => "set code",
        View::Whole(WholeScreen::CannotOpen(_)) => "cannot open",
        View::Whole(WholeScreen::Erased(_)) => "erased",
        View::Whole(WholeScreen::Phrase(_)) => "phrase",
        View::Whole(WholeScreen::PhraseCheck(_)) => "phrase check",
        View::Whole(WholeScreen::Copy(_)) => "copy",
        View::Whole(WholeScreen::Restore(_)) => "restore",
        View::Whole(WholeScreen::RestoreCopy(_)) => "restore copy",
        View::Whole(WholeScreen::Restoring(_)) => "restoring",
        View::Whole(WholeScreen::OpenByPhrase(_)) => "open by phrase",
        View::Whole(WholeScreen::EraseDays(_)) => "erase days",
        View::Whole(WholeScreen::AddPlan(_)) => "add plan",
        View::Whole(WholeScreen::Done(_)) => "done",
        View::Whole(WholeScreen::Sorry(_)) => "sorry",
    }
}
