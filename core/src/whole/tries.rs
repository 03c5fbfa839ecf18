//! How often a code may be tried: the first three wrong ones cost nothing, then each costs a wait that doubles
//! from 30 seconds up to an hour. Nothing is ever wiped, and nobody is ever locked out: after an hour another
//! code can be tried, for ever, and the twelve words open the diary at any time.
//!
//! The series is the example of NIST SP 800-63B-4, section 3.2.2 (a wait that grows from 30 seconds up to an
//! hour); that right codes forget wrong ones is said there too. That the first three are free is common
//! practice, no source. Its section 3.2.10 asks that an authenticator be disabled after ten wrong activation
//! secrets; Frond does not, because that would be a way to take the diary from its owner. At an hour a try, a
//! code of four digits stands for years.
//!
//! A try is counted before the code is looked at, so that ending the program takes nothing back. The count lies
//! in a small file beside the diary's folder, two slots of 64 bytes that are written in turn and in place, so
//! that a torn write leaves the other and a full disk has nothing to refuse:
//!
//! | bytes | what |
//! |---|---|
//! | 4 | `FRT` and 0x1a |
//! | 2 | version, 1 |
//! | 2 | 1 where the running time is known, else 0 |
//! | 8 | which writing this is, counted from 1 |
//! | 8 | wrong tries since the last right one |
//! | 8 | the wall clock at the last try, in milliseconds since 1970 |
//! | 8 | the start of the device that it happened in |
//! | 8 | the running time at the last try, in milliseconds |
//! | 12 | zeros |
//! | 4 | CRC-32C of all before |
//!
//! It is not sealed: whoever can write here can also remove it, and has come past the phone already. Where it
//! can be neither read nor written, what this process knows is counted on.
//!
//! **Time.** Where the device tells how long it has been running, only that counts: no setting of the clock
//! shortens a wait. After a restart the running time since then is what has passed for certain, so a wait can
//! become longer by a restart and never shorter. Where no running time is known, the wall clock counts; one that
//! was set back begins the wait anew from there, so that a wrong clock never makes it longer than once more.
//! A file in which neither slot is whole counts as the first wait, once.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::moment::{Moment, Uptime};
use crate::ports::{Disk, DiskError, DiskFile, SyncFor};

/// Wrong tries that cost no wait.
const FREE: u64 = 3;
/// The wait after the last of them, in milliseconds.
const FIRST: u64 = 30_000;
/// The longest wait.
const LONGEST: u64 = 3_600_000;

const MAGIC: [u8; 4] = *b"FRT\x1a";
const VERSION: u16 = 1;
const SLOT: usize = 64;

/// The wrong tries of one diary.
#[derive(Debug)]
pub(super) struct Tries {
    disk: Arc<dyn Disk>,
    path: PathBuf,
    /// As last read or written; `None` before the first look.
    known: Option<Record>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Record {
    writing: u64,
    wrong: u64,
    wall: i64,
    uptime: Option<Uptime>,
}

impl Tries {
    /// The count beside this folder.
    pub(super) fn beside(disk: Arc<dyn Disk>, folder: &Path) -> Self {
        let mut name = folder.file_name().unwrap_or_default().to_os_string();
        name.push(".tries");
        Self { disk, path: folder.with_file_name(name), known: None }
    }

    /// How long to wait before the next try, in milliseconds; 0: none.
    pub(super) fn wait(&mut self, moment: &Moment) -> u64 {
        let record = self.record(moment);
        let whole = wait_after(record.wrong);
        match passed(&record, moment) {
            Some(passed) => whole.saturating_sub(passed),
            // The clock was set back: from here on it is counted anew.
            None if whole > 0 => {
                self.keep(Record { wall: moment.now.millis(), uptime: moment.uptime, ..record });
                whole
            }
            None => 0,
        }
    }

    /// Counts a try as wrong, before it is looked at.
    pub(super) fn count(&mut self, moment: &Moment) {
        let record = self.record(moment);
        self.keep(Record {
            wrong: record.wrong.saturating_add(1),
            wall: moment.now.millis(),
            uptime: moment.uptime,
            ..record
        });
    }

    /// The code was right.
    pub(super) fn forget(&mut self, moment: &Moment) {
        let record = self.record(moment);
        if record.wrong > 0 {
            self.keep(Record { wrong: 0, ..record });
        }
    }

    /// Makes the file while there is room for it.
    pub(super) fn prepare(&mut self, moment: &Moment) {
        if self.disk.open(&self.path).is_err() {
            let record = self.record(moment);
            self.keep(record);
        }
    }

    /// Removes the file: the diary is gone.
    pub(super) fn remove(&mut self) {
        self.known = None;
        let _gone = self.disk.remove(&self.path);
    }

    fn record(&mut self, moment: &Moment) -> Record {
        if let Some(known) = self.known {
            return known;
        }
        let none =
            Record { writing: 0, wrong: 0, wall: moment.now.millis(), uptime: moment.uptime };
        let read = match self.disk.open(&self.path) {
            Ok(file) => read(file.as_ref()),
            Err(DiskError::NotFound) => Some(none),
            Err(_) => None,
        };
        match read {
            Some(record) => {
                self.known = Some(record);
                record
            }
            // Nobody knows how many there were: the first wait, from now on, and once.
            None => {
                self.keep(Record { wrong: FREE, ..none });
                self.known.unwrap_or(none)
            }
        }
    }

    /// What is known holds even where it cannot be written.
    fn keep(&mut self, record: Record) {
        let record = Record { writing: record.writing.saturating_add(1), ..record };
        self.known = Some(record);
        let _counted_on = self.write(&record);
    }

    fn write(&self, record: &Record) -> Result<(), DiskError> {
        let (file, new) = match self.disk.open(&self.path) {
            Ok(file) => (file, false),
            Err(_) => (self.disk.create(&self.path)?, true),
        };
        if new {
            file.write_at(0, &[0; 2 * SLOT])?;
        }
        file.write_at((record.writing % 2) * SLOT as u64, &record.slot())?;
        file.sync_data(SyncFor::Tries)?;
        if let (true, Some(above)) = (new, self.path.parent()) {
            self.disk.sync_folder(above, SyncFor::Tries)?;
        }
        Ok(())
    }
}

/// What a number of wrong tries costs.
fn wait_after(wrong: u64) -> u64 {
    match wrong.checked_sub(FREE) {
        None => 0,
        Some(more) => {
            let doubled = u32::try_from(more).ok().and_then(|more| FIRST.checked_shl(more));
            doubled.filter(|wait| *wait >= FIRST).unwrap_or(LONGEST).min(LONGEST)
        }
    }
}

/// What has passed for certain since the last try; `None`: the clock was set back.
fn passed(record: &Record, moment: &Moment) -> Option<u64> {
    match (record.uptime, moment.uptime) {
        (Some(then), Some(now)) if then.boot == now.boot => {
            Some(now.millis.saturating_sub(then.millis))
        }
        (Some(_), Some(now)) => Some(now.millis),
        _ => u64::try_from(moment.now.millis().checked_sub(record.wall)?).ok(),
    }
}

impl Record {
    fn slot(&self) -> [u8; SLOT] {
        let up = self.uptime.unwrap_or(Uptime { boot: 0, millis: 0 });
        let mut out = [0u8; SLOT];
        out[..4].copy_from_slice(&MAGIC);
        out[4..6].copy_from_slice(&VERSION.to_le_bytes());
        out[6..8].copy_from_slice(&u16::from(self.uptime.is_some()).to_le_bytes());
        out[8..16].copy_from_slice(&self.writing.to_le_bytes());
        out[16..24].copy_from_slice(&self.wrong.to_le_bytes());
        out[24..32].copy_from_slice(&self.wall.to_le_bytes());
        out[32..40].copy_from_slice(&up.boot.to_le_bytes());
        out[40..48].copy_from_slice(&up.millis.to_le_bytes());
        let sum = crc32c::crc32c(&out[..60]);
        out[60..].copy_from_slice(&sum.to_le_bytes());
        out
    }

    fn of(slot: &[u8; SLOT]) -> Option<Self> {
        let eight = |at: usize| slot.get(at..at + 8)?.first_chunk::<8>().copied();
        let sum = slot.last_chunk::<4>().copied().map(u32::from_le_bytes)?;
        if slot[..4] != MAGIC
            || slot[4..6] != VERSION.to_le_bytes()
            || sum != crc32c::crc32c(&slot[..60])
        {
            return None;
        }
        let up =
            Uptime { boot: u64::from_le_bytes(eight(32)?), millis: u64::from_le_bytes(eight(40)?) };
        Some(Self {
            writing: u64::from_le_bytes(eight(8)?),
            wrong: u64::from_le_bytes(eight(16)?),
            wall: i64::from_le_bytes(eight(24)?),
            uptime: (slot[6] == 1).then_some(up),
        })
    }
}

/// The later of the two slots that is whole.
fn read(file: &dyn DiskFile) -> Option<Record> {
    let slots = [0, SLOT as u64].into_iter().filter_map(|at| {
        let mut slot = [0u8; SLOT];
        let read = file.read_at(at, &mut slot).ok()?;
        (read == SLOT).then(|| Record::of(&slot)).flatten()
    });
    slots.max_by_key(|record| record.writing)
}
