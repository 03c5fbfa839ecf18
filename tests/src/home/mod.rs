//! A person at home: one diary on a simulated disk, and short ways to ask and to tell. The plan and
//! everything told are invented.

mod still;

pub use still::without_ids;

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use frond_core::companion::{Companion, Ports, Request, SessionTold, Told, Trouble, Write};
use frond_core::diary::entry::{Answer, Ended, EntryId, Ratings, Reason, UsedPart};
use frond_core::moment::{Moment, Stamp, Uptime};
use frond_core::ports::sim::{SeededRandom, SimDisk};
use frond_core::ports::{MarkError, MarkKeeper, NoMarks, Passphrase, PassphraseKeeper, Stretch};
use frond_core::programme::values::{Position, Practice, Rating, Size};
use frond_core::screens::Screen;

/// The invented plan.
pub const PLAN: &str = include_str!("plan.json");

/// The invented plan with these lines beside its own.
///
/// # Panics
/// If the lines are no object.
#[must_use]
pub fn plan_with(lines: &serde_json::Value) -> String {
    let mut plan: serde_json::Value = serde_json::from_str(PLAN).expect("the plan is JSON");
    let lines = lines.as_object().expect("lines by their names").clone();
    plan.as_object_mut().expect("a plan is an object").extend(lines);
    plan.to_string()
}

/// Where the diary lies on the simulated disk.
pub const FOLDER: &str = "/diary";

/// The invented passphrase.
pub const PASSPHRASE: &str = "seven invented herons";

/// A diary on a simulated disk.
pub struct Home {
    /// The disk.
    pub disk: SimDisk,
    /// The door.
    pub companion: Companion,
    /// Now.
    pub moment: Moment,
}

/// What the companion needs, on this disk, with repeatable random bytes.
#[must_use]
pub fn ports(disk: &SimDisk, seed: u64) -> Ports {
    with_marks(disk, seed, Arc::new(NoMarks))
}

/// The same, with marks kept outside the disk.
#[must_use]
pub fn with_marks(disk: &SimDisk, seed: u64, marks: Arc<dyn MarkKeeper>) -> Ports {
    Ports { disk: Arc::new(disk.clone()), random: Arc::new(SeededRandom::new(seed)), marks }
}

/// Keeps marks in memory, as a phone's key store would.
#[derive(Debug, Default)]
pub struct Marks(Mutex<BTreeMap<[u8; 16], Vec<u8>>>);

impl Marks {
    fn all(&self) -> MutexGuard<'_, BTreeMap<[u8; 16], Vec<u8>>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How many diaries have one.
    #[must_use]
    pub fn count(&self) -> usize {
        self.all().len()
    }
}

impl MarkKeeper for Marks {
    fn keep(&self, diary: &[u8; 16], mark: &[u8]) -> Result<(), MarkError> {
        self.all().insert(*diary, mark.to_vec());
        Ok(())
    }
    fn kept(&self, diary: &[u8; 16]) -> Result<Option<Vec<u8>>, MarkError> {
        Ok(self.all().get(diary).cloned())
    }
    fn forget(&self, diary: &[u8; 16]) -> Result<(), MarkError> {
        self.all().remove(diary);
        Ok(())
    }
}

/// A keeper that protects nothing, for speed.
///
/// # Panics
/// Never: the passphrase is not empty.
#[must_use]
pub fn keeper() -> PassphraseKeeper {
    let passphrase = Passphrase::new(PASSPHRASE.to_owned()).expect("not empty");
    PassphraseKeeper::new(passphrase, Stretch::cheap_for_tests_only())
}

/// A stamp from text.
///
/// # Panics
/// If the text is not a stamp.
#[must_use]
pub fn stamp(text: &str) -> Stamp {
    text.parse().expect("a stamp")
}

impl Home {
    /// A new diary at this time, without a plan.
    ///
    /// # Panics
    /// If it cannot be made.
    #[must_use]
    pub fn new(now: &str) -> Self {
        let disk = SimDisk::new();
        let companion =
            Companion::start(&ports(&disk, 1), Path::new(FOLDER), &keeper(), "en").expect("starts");
        let uptime = Some(Uptime { boot: 1, millis: 1_000_000 });
        Self { disk, companion, moment: Moment { now: stamp(now), uptime } }
    }

    /// A new diary like the others, with marks kept outside.
    ///
    /// # Panics
    /// If it cannot be made.
    #[must_use]
    pub fn marked(now: &str, marks: &Arc<Marks>) -> Self {
        let disk = SimDisk::new();
        let ports = with_marks(&disk, 1, marks.clone());
        let companion =
            Companion::start(&ports, Path::new(FOLDER), &keeper(), "en").expect("starts");
        let uptime = Some(Uptime { boot: 1, millis: 1_000_000 });
        let mut home = Self { disk, companion, moment: Moment { now: stamp(now), uptime } };
        home.tell(Told::unsigned(PLAN));
        home.tell(Told::ConfirmStep);
        home
    }

    /// A new diary with the plan accepted and the first step confirmed.
    ///
    /// # Panics
    /// If it cannot be made.
    #[must_use]
    pub fn with_plan(now: &str) -> Self {
        Self::with_this_plan(now, PLAN)
    }

    /// A new diary with this plan accepted and its first step confirmed.
    ///
    /// # Panics
    /// If it cannot be made.
    #[must_use]
    pub fn with_this_plan(now: &str, plan: &str) -> Self {
        let mut home = Self::new(now);
        home.tell(Told::unsigned(plan));
        home.tell(Told::ConfirmStep);
        home
    }

    /// Time goes on, for the clock and for the device alike.
    pub fn pass(&mut self, hours: i64) {
        let millis = hours * 60 * 60 * 1000;
        self.set_wall(millis);
        if let Some(uptime) = self.moment.uptime.as_mut() {
            uptime.millis = uptime.millis.saturating_add_signed(millis);
        }
    }

    /// The wall clock is set by so many milliseconds, while the device runs on.
    ///
    /// # Panics
    /// If the time leaves the range of stamps.
    pub fn set_wall(&mut self, millis: i64) {
        let now = self.moment.now;
        self.moment.now =
            Stamp::from_millis(now.millis() + millis, *now.local().offset(), now.zone())
                .expect("in range");
    }

    /// Asks.
    ///
    /// # Panics
    /// If there is trouble.
    pub fn ask(&mut self, request: Request) -> Screen {
        match self.companion.ask(request, &self.moment) {
            Ok(answer) => answer.screen,
            Err(trouble) => panic!("{trouble}: {}", trouble.say(self.companion.words())),
        }
    }

    /// Tells something, now.
    ///
    /// # Panics
    /// If it is refused.
    pub fn tell(&mut self, told: Told) -> (EntryId, Screen) {
        let id = self.companion.new_id().expect("an id");
        (id, self.ask(Request::Write(Write { id, happened: None, told })))
    }

    /// Tells something that ought to be refused.
    ///
    /// # Panics
    /// If it is not refused.
    pub fn refused(&mut self, happened: Option<Stamp>, told: Told) -> Trouble {
        let id = self.companion.new_id().expect("an id");
        let request = Request::Write(Write { id, happened, told });
        match self.companion.ask(request, &self.moment) {
            Ok(_) => panic!("this was not refused"),
            Err(trouble) => trouble,
        }
    }

    /// The device is killed and the diary opened again.
    ///
    /// # Panics
    /// If it does not open.
    pub fn reopen(self) -> Self {
        let Self { disk, companion, moment } = self;
        drop(companion);
        let disk = disk.after_kill();
        let companion =
            Companion::open(&ports(&disk, 2), Path::new(FOLDER), &keeper(), "en", &moment)
                .expect("opens");
        Self { disk, companion, moment }
    }

    /// A screen as JSON, without its ids.
    ///
    /// # Panics
    /// Never: every screen can be written as JSON.
    pub fn still(&mut self, request: Request) -> serde_json::Value {
        let mut json = self.json(request);
        without_ids(&mut json);
        json
    }

    /// A screen as JSON.
    ///
    /// # Panics
    /// Never: every screen can be written as JSON.
    pub fn json(&mut self, request: Request) -> serde_json::Value {
        serde_json::to_value(self.ask(request)).expect("JSON")
    }
}

/// A trainer session on the back: size in tenths of a millimetre, minutes, peak.
#[must_use]
pub fn session(size: u16, minutes: u32, peak: Option<u8>) -> SessionTold {
    SessionTold {
        practice: Practice::Trainer,
        parts: vec![UsedPart {
            widest_diameter_tenths_mm: Size::new(u64::from(size)).ok(),
            practised_seconds: minutes * 60,
        }],
        position: Position::OnBack,
        ended: Ended::Finished,
        ratings: Ratings {
            peak: peak
                .and_then(|peak| Rating::new(u64::from(peak)).ok())
                .map(Answer::Rated)
                .or(Some(Answer::RatherNotSay)),
            ..Ratings::default()
        },
        signs: vec![],
        note: None,
    }
}

/// The same, stopped for a reason.
#[must_use]
pub fn stopped(size: u16, minutes: u32, reason: Reason) -> SessionTold {
    SessionTold { ended: Ended::Stopped(reason), ..session(size, minutes, Some(5)) }
}
