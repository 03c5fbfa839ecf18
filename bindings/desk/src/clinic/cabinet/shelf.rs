//! The cabinet of an open desk, with the long work that goes on in it beside the pages. Decides that it is
//! opened at its first use, that one piece of long work runs at a time, and in which order files come in.

use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use frond_core::programme::rule::Rule;
use frond_core::screens::PeopleAsked;
use frond_core::sealing::OpenWith;
use frond_core::summary::{SummaryError, read_bounded};

use super::job::Ends;
use super::trial::{self, Trial};
use super::{Cabinet, IndexKind, Job, JobKind, Refused, Taken, arrive, given_name};
use crate::clinic::Clinic;
use crate::clinic::folder::FolderError;

/// So many files are read at once while somebody waits for a page; more are read beside it.
const AT_ONCE: usize = 12;
/// After so many files what was taken in is made last.
const BATCH: usize = 200;
/// How deep folders within a folder are looked into.
const DEEPEST: usize = 4;
/// How often and after what time an opening is tried again.
const ENDING: usize = 50;
const A_MOMENT: Duration = Duration::from_millis(100);
/// The most files that one folder brings.
const MOST_FILES: usize = 100_000;
/// How many threads read files anew.
const READERS: usize = 2;

/// The cabinet, once it was needed.
#[derive(Default)]
pub(crate) struct Shelf {
    /// What the index is kept in.
    index: IndexKind,
    cabinet: Mutex<Option<Arc<Mutex<Cabinet>>>>,
    job: Mutex<Option<Arc<Job>>>,
    /// What is looked for in the list.
    asked: Mutex<PeopleAsked>,
    trial: Mutex<Option<Arc<Trial>>>,
    /// The desk is locked: what goes on ends.
    closed: AtomicBool,
}

/// Files on their way in.
pub(crate) enum Incoming {
    /// Files that a form carried: names as given, and bytes.
    Files(Vec<(String, Vec<u8>)>),
    /// Files of this computer.
    Paths(Vec<PathBuf>),
}

/// With what files on their way in are treated.
pub(crate) struct Treat {
    /// The passphrase that some are sealed with.
    pub(crate) passphrase: Option<OpenWith>,
    /// A person said that a diary that is known has another key.
    pub(crate) new_key: bool,
}

/// Another piece of work is going on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Busy;

/// Lets a fault in one thread not shut the others out; the cabinet in memory is put together from checked parts
/// alone.
pub(crate) fn held<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

impl Shelf {
    /// One whose index is kept in this.
    pub(crate) fn indexed(index: IndexKind) -> Self {
        Self { index, ..Self::default() }
    }

    /// The cabinet, opened where it is not. Where many files have to be read anew, that goes on beside.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn cabinet(&self, clinic: &Arc<Clinic>) -> Result<Arc<Mutex<Cabinet>>, FolderError> {
        let mut place = held(&self.cabinet);
        if let Some(open) = &*place {
            return Ok(open.clone());
        }
        let mut cabinet = opened(clinic, self.index)?;
        let unread = cabinet.unread();
        if unread <= AT_ONCE {
            cabinet.read_on(&clinic.keys);
            cabinet.settle()?;
        }
        let cabinet = Arc::new(Mutex::new(cabinet));
        *place = Some(cabinet.clone());
        if unread > AT_ONCE {
            let job = Arc::new(Job::new(JobKind::Reading, unread));
            *held(&self.job) = Some(job.clone());
            let (clinic, cabinet) = (clinic.clone(), cabinet.clone());
            std::thread::spawn(move || read_anew(&clinic, &cabinet, &job));
        }
        Ok(cabinet)
    }

    /// The desk is locked: long work ends at the next file, and the cabinet with it.
    pub(crate) fn close(&self) {
        self.closed.store(true, Ordering::Relaxed);
        if let Some(trial) = held(&self.trial).take() {
            trial.give_up();
        }
        *held(&self.cabinet) = None;
    }

    fn is_closed(&self) -> bool {
        self.closed.load(Ordering::Relaxed)
    }

    /// The long work that goes on, or went on last.
    pub(crate) fn job(&self) -> Option<Arc<Job>> {
        held(&self.job).clone()
    }

    /// What is looked for in the list.
    pub(crate) fn asked(&self) -> PeopleAsked {
        held(&self.asked).clone()
    }

    /// Looks for this from now on.
    pub(crate) fn ask(&self, asked: PeopleAsked) {
        *held(&self.asked) = asked;
    }

    /// The rule that is tried over all diaries, or was tried last.
    pub(crate) fn trial(&self) -> Option<Arc<Trial>> {
        held(&self.trial).clone()
    }

    /// Tries a rule over the newest summary of each diary, beside the pages. One that is being tried is given up.
    pub(crate) fn try_rule(&self, clinic: &Arc<Clinic>, cabinet: &Arc<Mutex<Cabinet>>, rule: Rule) {
        let diaries = held(cabinet).newest();
        let trial = Arc::new(Trial::new(diaries.len()));
        if let Some(before) = held(&self.trial).replace(trial.clone()) {
            before.give_up();
        }
        let (clinic, cabinet) = (clinic.clone(), cabinet.clone());
        let few = diaries.len() <= AT_ONCE;
        let work = move || trial::try_on(&clinic, &cabinet, &rule, &diaries, &trial);
        if few {
            work();
        } else {
            std::thread::spawn(work);
        }
    }

    /// Takes files in, beside the pages.
    ///
    /// # Errors
    /// [`Busy`].
    pub(crate) fn take_in(
        &self,
        clinic: &Arc<Clinic>,
        cabinet: &Arc<Mutex<Cabinet>>,
        incoming: Incoming,
        treat: Treat,
    ) -> Result<Arc<Job>, Busy> {
        let mut place = held(&self.job);
        if place.as_ref().is_some_and(|job| !job.progress().ended) {
            return Err(Busy);
        }
        let total = match &incoming {
            Incoming::Files(files) => files.len(),
            Incoming::Paths(paths) => paths.len(),
        };
        let job = Arc::new(Job::new(JobKind::Import, total));
        *place = Some(job.clone());
        drop(place);
        let (clinic, cabinet, doing) = (clinic.clone(), cabinet.clone(), job.clone());
        let work = move || take_in(&clinic, &cabinet, incoming, &treat, &doing);
        if total <= AT_ONCE {
            work();
        } else {
            std::thread::spawn(work);
        }
        Ok(job)
    }
}

/// Opens it; one that was just closed may still be ending.
fn opened(clinic: &Clinic, index: IndexKind) -> Result<Cabinet, FolderError> {
    for _ in 0..ENDING {
        match Cabinet::open(&clinic.folder, &clinic.keys, &clinic.random, index) {
            Err(FolderError::Failed) => std::thread::sleep(A_MOMENT),
            other => return other,
        }
    }
    Cabinet::open(&clinic.folder, &clinic.keys, &clinic.random, index)
}

fn read_anew(clinic: &Clinic, cabinet: &Mutex<Cabinet>, job: &Job) {
    let ends = Ends(job);
    std::thread::scope(|scope| {
        for _ in 0..READERS {
            scope.spawn(|| {
                let reader = held(cabinet).reader(&clinic.keys);
                loop {
                    if clinic.cabinet.is_closed() {
                        break;
                    }
                    let names = held(cabinet).next_unread(1);
                    let Some(name) = names.first() else { break };
                    let look = reader.look(*name);
                    held(cabinet).looked(look);
                    job.step();
                }
            });
        }
    });
    if held(cabinet).settle().is_err() {
        job.fail();
    }
    drop(ends);
}

fn take_in(
    clinic: &Clinic,
    cabinet: &Mutex<Cabinet>,
    incoming: Incoming,
    treat: &Treat,
    job: &Job,
) {
    let ends = Ends(job);
    let own = clinic.keys.open_with();
    let one = |bytes: &[u8]| -> Result<Taken, Refused> {
        let arrived = arrive(bytes, &own, treat.passphrase.as_ref())?;
        held(cabinet).take(bytes, &arrived, treat.new_key)
    };
    let settle = |count: usize| {
        if count.is_multiple_of(BATCH) && held(cabinet).settle().is_err() {
            job.fail();
        }
    };
    match incoming {
        Incoming::Files(files) => {
            for (count, (name, bytes)) in files.iter().enumerate() {
                if clinic.cabinet.is_closed() {
                    break;
                }
                job.came(given_name(name), one(bytes));
                settle(count + 1);
            }
        }
        Incoming::Paths(paths) => {
            for (count, path) in paths.iter().enumerate() {
                if clinic.cabinet.is_closed() {
                    break;
                }
                let name = path.file_name().map(|name| name.to_string_lossy().into_owned());
                let taken = read(path).and_then(|bytes| one(&bytes));
                job.came(name.as_deref().and_then(given_name), taken);
                settle(count + 1);
            }
        }
    }
    settle(0);
    drop(ends);
}

fn read(path: &Path) -> Result<Vec<u8>, Refused> {
    let file = File::open(path).map_err(|_| Refused::Unreadable)?;
    read_bounded(file).map_err(|error| match error {
        SummaryError::Unreadable => Refused::Unreadable,
        other => other.into(),
    })
}

/// The files of a folder and of the folders in it, by name. What is hidden, or leads elsewhere, is left out.
///
/// # Errors
/// The folder cannot be read, or holds more than anybody would bring.
pub(crate) fn files_of(folder: &Path) -> std::io::Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    gather(folder, DEEPEST, &mut files)?;
    files.sort();
    Ok(files)
}

fn gather(folder: &Path, deeper: usize, files: &mut Vec<PathBuf>) -> std::io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        if files.len() >= MOST_FILES {
            return Err(std::io::ErrorKind::FileTooLarge.into());
        }
        let kind = entry.file_type()?;
        if entry.file_name().as_encoded_bytes().starts_with(b".") {
            continue;
        }
        if kind.is_file() {
            files.push(entry.path());
        } else if kind.is_dir() && deeper > 0 {
            // One that cannot be looked into is no reason to leave the others.
            match gather(&entry.path(), deeper - 1, files) {
                Err(error) if error.kind() == std::io::ErrorKind::FileTooLarge => {
                    return Err(error);
                }
                _ => {}
            }
        }
    }
    Ok(())
}
