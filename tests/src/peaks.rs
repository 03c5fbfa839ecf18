//! The most memory a process takes that opens a diary of ten years, backs it up, hands over its summary or opens one
//! that is sealed. Decides what is done, each in a process of its own (the program `peaks`), and how much it may take;
//! leaves to the test `memory_peaks` that the limits hold and to the measurement `memory` the figures. The key stretching
//! of the diary is left out: it takes 64 MiB by design, before the diary is opened and not beside it. Everything told
//! is invented.

use std::path::Path;
use std::process::Command;
use std::sync::Arc;

use frond_core::companion::{Companion, Ports, Request, Told, Write};
use frond_core::diary::entry::{Entry, EntryId};
use frond_core::diary::store::{Keepers, Store};
use frond_core::moment::{Moment, Stamp};
use frond_core::ports::{NoMarks, OsRandom, Passphrase, RealDisk};
use frond_core::sealing::{Identity, OpenWith, RecoveryPhrase, SealTo, seal_into};
use frond_core::summary::{Selection, TimeAlone, open_summary};

use crate::home::{PLAN, keeper, session, stamp};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
/// Ten years of three entries a day.
const ENTRIES: u32 = 11_000;
/// So many are told to the companion; the others are these again, later.
const TOLD: u32 = 32;
const WORDS: &str = "legal winner thank year wave sausage worth useful legal winner thank yellow";

/// Something a process does, in the order in which they need each other's files.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Part {
    /// Nothing, to see what a process takes by itself.
    Nothing,
    /// Opens the diary, whose snapshot is gone, shows Today and saves a snapshot.
    Rebuild,
    /// Opens the diary from its snapshot and shows Today.
    Open,
    /// Makes a backup.
    BackUp,
    /// Makes the summary of all ten years and seals it to a key.
    ExportToKey,
    /// The same, sealed with a passphrase.
    ExportWithPassphrase,
    /// Opens and verifies the summary sealed to a key.
    UnsealWithKey,
    /// The same, of the one sealed with a passphrase.
    UnsealWithPassphrase,
}

impl Part {
    /// Every part.
    pub const ALL: [Self; 8] = [
        Self::Nothing,
        Self::Rebuild,
        Self::Open,
        Self::BackUp,
        Self::ExportToKey,
        Self::ExportWithPassphrase,
        Self::UnsealWithKey,
        Self::UnsealWithPassphrase,
    ];

    /// What it is called.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Nothing => "nothing",
            Self::Rebuild => "open, rebuilt from the journal",
            Self::Open => "open, from the snapshot",
            Self::BackUp => "back up",
            Self::ExportToKey => "export, sealed to a key",
            Self::ExportWithPassphrase => "export, sealed with a passphrase",
            Self::UnsealWithKey => "unseal with a key",
            Self::UnsealWithPassphrase => "unseal with a passphrase",
        }
    }

    /// The most it may take, in megabytes of a million bytes: what a small phone leaves to one program, our own
    /// choice, no source. Sealing with a passphrase has 16 more than sealing to a key, because scrypt at the work factor
    /// we seal with takes 67 by itself (DECISIONS.md, 2026-11-29).
    #[must_use]
    pub fn limit(self) -> f64 {
        match self {
            Self::Nothing | Self::Rebuild | Self::Open | Self::BackUp => 24.0,
            Self::ExportToKey => 64.0,
            Self::ExportWithPassphrase => 80.0,
            Self::UnsealWithKey | Self::UnsealWithPassphrase => 96.0,
        }
    }

    /// Does it, with the diary and the files in `base`.
    ///
    /// # Panics
    /// If it does not work.
    pub fn play(self, base: &Path) {
        let folder = base.join("diary");
        match self {
            Self::Nothing => {}
            Self::Rebuild => {
                std::fs::remove_file(folder.join("snapshot")).expect("a snapshot");
                let mut companion = opened(&folder);
                assert!(companion.ask(Request::Today, &at(ENTRIES)).is_ok());
                assert!(companion.save().is_ok());
            }
            Self::Open => {
                let mut companion = opened(&folder);
                assert_eq!(companion.state().count(), u64::from(ENTRIES));
                assert!(companion.ask(Request::Today, &at(ENTRIES)).is_ok());
            }
            Self::BackUp => assert!(opened(&folder).back_up(&at(ENTRIES).now).is_ok()),
            Self::ExportToKey => {
                export(base, "key.age", &SealTo::Recipients(vec![identity().recipient()]));
            }
            Self::ExportWithPassphrase => {
                export(base, "passphrase.age", &SealTo::Passphrase(passphrase()));
            }
            Self::UnsealWithKey => {
                unseal(base, "key.age", &OpenWith::Identities(vec![identity()]));
            }
            Self::UnsealWithPassphrase => {
                unseal(base, "passphrase.age", &OpenWith::Passphrase(passphrase()));
            }
        }
    }
}

fn export(base: &Path, name: &str, to: &SealTo) {
    let companion = opened(&base.join("diary"));
    // In the order in which a phone does it.
    let file = seal_into(Vec::new(), to).expect("a file to seal");
    let summary = companion.summary(&Selection::default(), &at(ENTRIES).now);
    let summary = summary.expect("a summary");
    assert_eq!(summary.entries.len(), ENTRIES as usize);
    let sealed = summary.sealed_into(&companion.identity(), file, TimeAlone::NotAsked);
    std::fs::write(base.join(name), sealed.expect("a sealed summary")).expect("a file");
}

fn unseal(base: &Path, name: &str, with: &OpenWith) {
    let sealed = std::fs::read(base.join(name)).expect("a sealed summary");
    assert!(open_summary(&sealed, Some(with)).is_ok());
}

fn ports() -> Ports {
    Ports { disk: Arc::new(RealDisk), random: Arc::new(OsRandom), marks: Arc::new(NoMarks) }
}

fn later(number: u32) -> Stamp {
    let start = stamp(START);
    let millis = start.millis() + i64::from(number) * 8 * 60 * 60 * 1000;
    Stamp::from_millis(millis, *start.local().offset(), start.zone()).expect("a stamp")
}

fn at(number: u32) -> Moment {
    Moment::at(later(number))
}

fn opened(folder: &Path) -> Companion {
    Companion::open(&ports(), folder, &keeper(), "en", &at(ENTRIES)).expect("a diary")
}

fn identity() -> Identity {
    RecoveryPhrase::parse(WORDS).expect("a phrase").identity().clone()
}

fn passphrase() -> Passphrase {
    Passphrase::new(WORDS.to_owned()).expect("a passphrase")
}

/// Makes the diary of ten years in `base`: begun as anybody begins one, and then practised on and on.
///
/// # Panics
/// If it cannot be made.
pub fn make(base: &Path) {
    let folder = base.join("diary");
    let begun = {
        let mut companion = Companion::start(&ports(), &folder, &keeper(), "en").expect("new");
        let plan = PLAN.replace("2026-12-31", "2046-12-31");
        for number in 0..TOLD {
            let told = match number {
                0 => Told::unsigned(plan.as_str()),
                1 => Told::ConfirmStep,
                _ => Told::Session(session(140, 8, u8::try_from(number % 5).ok())),
            };
            let id = companion.new_id().expect("an id");
            let write = Write { id, happened: None, told };
            assert!(companion.ask(Request::Write(write), &at(number)).is_ok());
        }
        companion.entries().expect("entries")
    };
    assert_eq!(begun.len(), TOLD as usize, "one entry for each thing told");
    let sessions = begun.iter().skip(2).cycle().zip(TOLD..ENTRIES).map(|(entry, number)| Entry {
        id: EntryId((u128::from(number) << 32).to_be_bytes()),
        written: later(number),
        happened: later(number),
        ..entry.clone()
    });
    let lines: Vec<Vec<u8>> = begun
        .iter()
        .cloned()
        .chain(sessions)
        .map(|entry| serde_json::to_vec(&entry).expect("JSON"))
        .collect();
    let disk = Arc::new(RealDisk);
    let store = Store::open(disk, &folder, &keeper(), Arc::new(OsRandom)).expect("a diary").store;
    let keeper = keeper();
    store.renew(&lines, Keepers::only(&keeper), None).expect("a longer diary");
    assert!(opened(&folder).save().is_ok());
}

/// The most that the program `peaks` took for this part, in megabytes of a million bytes, as the system says it.
///
/// # Errors
/// What it said, where it did not end well.
pub fn measure(program: &str, part: Part, base: &Path) -> Result<f64, String> {
    let out = Command::new(program).arg(part.name()).arg(base).output();
    let out = out.map_err(|error| error.to_string())?;
    if !out.status.success() {
        return Err(String::from_utf8_lossy(&out.stderr).into_owned());
    }
    let said = String::from_utf8_lossy(&out.stdout);
    let kibibytes: u32 = said.trim().parse().map_err(|_| format!("it said {said}"))?;
    Ok(f64::from(kibibytes) * 1024.0 / 1e6)
}
