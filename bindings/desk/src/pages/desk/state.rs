//! The desk behind the pages: its folder, the open keys or none, the clock. Decides when it is locked: at the
//! start, when asked, after a fault, and when nobody used it for a while.

use std::path::PathBuf;
use std::sync::Arc;

use frond_core::moment::Moment;
use frond_core::ports::{OsRandom, Random};
use frond_core::sealing::ClinicKeys;
use frond_core::words::Words;

use super::hand_over::Handing;
use crate::args::DeskArgs;
use crate::clinic::Clinic;
use crate::clinic::cabinet::{IndexKind, Shelf};
use crate::clinic::folder::Folder;
use crate::clinic::keys::{self, KeysError};
use crate::clinic::programmes;
use crate::failure::Failure;
use crate::pages::clock::Clock;

/// After so long without a request the desk locks itself: somebody may have left it.
const IDLE_MILLIS: i64 = 30 * 60 * 1000;

/// What is behind the pages.
pub(crate) struct Desk {
    folder: Arc<Folder>,
    random: Arc<dyn Random>,
    /// What the index of its cabinet is kept in.
    pub(super) index: IndexKind,
    clock: Clock,
    pub(super) words: Words,
    open: Option<Arc<Clinic>>,
    /// A plan on its way; gone when the desk is locked.
    pub(super) handing: Option<Handing>,
    /// When somebody last asked for a page.
    used: Option<i64>,
}

/// How the desk stands.
#[derive(Clone)]
pub(super) enum Standing {
    /// There are no keys yet.
    First,
    /// There are, and the passphrase was not given.
    Locked,
    /// Open.
    Open(Arc<Clinic>),
}

impl Desk {
    /// The desk of these arguments.
    ///
    /// # Errors
    /// The folder cannot be used, or the clock is not set.
    pub(super) fn of(args: &DeskArgs, words: Words) -> Result<Self, Failure> {
        Self::drawing(args, words, Arc::new(OsRandom))
    }

    /// The desk of these arguments, drawing its random bytes from here.
    ///
    /// # Errors
    /// The folder cannot be used, or the clock is not set.
    pub(super) fn drawing(
        args: &DeskArgs,
        words: Words,
        random: Arc<dyn Random>,
    ) -> Result<Self, Failure> {
        let path = match &args.folder {
            Some(path) => path.clone(),
            None => usual_folder()?,
        };
        let folder = Folder::take(&path)?;
        programmes::sweep(&folder);
        Ok(Self {
            folder: Arc::new(folder),
            random,
            index: IndexKind::default(),
            clock: Clock::beginning(args.now)?,
            words,
            open: None,
            handing: None,
            used: None,
        })
    }

    pub(super) fn folder(&self) -> &Folder {
        &self.folder
    }

    pub(super) fn random(&self) -> &dyn Random {
        &*self.random
    }

    /// Now; what was left alone for long is locked by it.
    pub(super) fn moment(&mut self) -> Result<Moment, Failure> {
        let moment = self.clock.now()?;
        let now = moment.now.millis();
        if self.used.is_some_and(|used| !(0..IDLE_MILLIS).contains(&(now.saturating_sub(used)))) {
            self.lock();
        }
        self.used = Some(now);
        Ok(moment)
    }

    /// How it stands.
    ///
    /// # Errors
    /// The folder cannot be read.
    pub(super) fn stand(&self) -> Result<Standing, KeysError> {
        match &self.open {
            Some(clinic) => Ok(Standing::Open(clinic.clone())),
            None if keys::there(&self.folder)? => Ok(Standing::Locked),
            None => Ok(Standing::First),
        }
    }

    /// Open from now on, with these keys.
    pub(super) fn unlock(&mut self, keys: ClinicKeys) {
        if let Some(before) = self.open.take() {
            before.cabinet.close();
        }
        self.open = Some(Arc::new(Clinic {
            folder: self.folder.clone(),
            keys,
            random: self.random.clone(),
            cabinet: Shelf::indexed(self.index),
        }));
    }

    /// Locked from now on.
    pub(super) fn lock(&mut self) {
        if let Some(clinic) = self.open.take() {
            clinic.cabinet.close();
        }
        self.handing = None;
    }
}

/// `$XDG_DATA_HOME/frond-desk`, else `~/.local/share/frond-desk`.
fn usual_folder() -> Result<PathBuf, Failure> {
    let from = |name: &str| std::env::var_os(name).filter(|value| !value.is_empty());
    let data = from("XDG_DATA_HOME").map(PathBuf::from);
    let data = data.or_else(|| Some(PathBuf::from(from("HOME")?).join(".local/share")));
    let folder = data.map(|data| data.join("frond-desk"));
    folder.ok_or_else(|| {
        Failure::input("There is no usual place for the desk's folder. Give --folder.")
    })
}
