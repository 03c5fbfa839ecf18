//! The diary of a try-out: an invented one or an empty one that is gone afterwards, or one of the person's
//! own. Decides where it lies, what opens it, and that it is opened again after a fault or after the
//! companion asked for it. Leaves everything that is written and shown to the companion.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use chrono::{Days, NaiveTime};
use frond_core::companion::{Companion, Copy, Ports, Trouble};
use frond_core::handover::Handed;
use frond_core::moment::{Moment, Stamp};
use frond_core::ports::{KeyKeeper, NoMarks, OsRandom, Random, RealDisk};
use frond_core::sealing::RecoveryPhrase;
use frond_core::words::Isolation;
use tempfile::TempDir;
use zeroize::Zeroizing;

use crate::args::TryArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::pages::clock::Clock;
use crate::place::{holds_something, ports};
use crate::{scenario, secret};

/// What is behind the pages.
pub(crate) struct Diary {
    ports: Ports,
    folder: PathBuf,
    keeper: Box<dyn KeyKeeper + Send>,
    language: String,
    clock: Clock,
    state: State,
    /// What somebody wrote in it is invented.
    pub(super) invented: bool,
    /// A diary that was just started: the first run comes first, once.
    pub(super) fresh: bool,
    /// Whether the diary is opened with the recovery phrase, which cannot write it anew.
    pub(super) by_phrase: bool,
    /// A programme that was handed over at the start and waits to be read.
    pub(super) waiting: Option<Handed>,
    /// Twelve words that were shown and open nothing yet.
    pub(super) phrase: Option<RecoveryPhrase>,
    /// A copy that was looked into.
    pub(super) copy: Option<Copy>,
    /// Removed with everything in it when the try-out ends.
    temporary: Option<TempDir>,
}

enum State {
    Open(Box<Companion>),
    /// It has to be opened before anything else.
    Shut,
    /// It does not open.
    Stuck(Trouble),
    /// Everything was erased.
    Erased,
}

/// How the diary stands.
pub(super) enum Standing<'a> {
    Open(&'a mut Companion),
    Stuck(Trouble),
    Erased,
}

impl Diary {
    /// The diary that was asked for.
    ///
    /// # Errors
    /// It cannot be made; or the passphrase cannot be asked.
    pub(super) fn of(args: &TryArgs) -> Result<Self, Failure> {
        match &args.diary {
            Some(folder) => Self::own(args, folder),
            None => Self::temporary(args),
        }
    }

    fn own(args: &TryArgs, folder: &Path) -> Result<Self, Failure> {
        let clock = Clock::beginning(args.now)?;
        let there = folder.is_dir() && holds_something(folder);
        let keeper: Box<dyn KeyKeeper + Send> =
            if there { args.secret.keeper()? } else { Box::new(args.secret.new_keeper()?) };
        let mut diary = Self {
            ports: ports(),
            folder: folder.to_path_buf(),
            keeper,
            language: language(args),
            clock,
            state: State::Shut,
            invented: false,
            fresh: false,
            by_phrase: there && args.secret.is_phrase(),
            waiting: None,
            phrase: None,
            copy: None,
            temporary: None,
        };
        if there {
            // A slip of the passphrase is put right on the terminal; what else is the matter, a page says.
            let moment = diary.moment()?;
            diary.open(&moment);
            if let State::Stuck(trouble @ (Trouble::WrongSecret | Trouble::NotADiary)) = diary.state
            {
                return Err(trouble.into());
            }
        } else {
            diary.start()?;
        }
        Ok(diary)
    }

    fn temporary(args: &TryArgs) -> Result<Self, Failure> {
        let broken = |_| {
            Failure::Else("No temporary folder can be made. Free some space and try again.".into())
        };
        let temporary = tempfile::Builder::new().prefix("frond-").tempdir().map_err(broken)?;
        let folder = temporary.path().join("diary");
        // Nobody needs to know it: the folder is gone when the try-out ends.
        let passphrase = random_passphrase()?;
        // No mark is kept outside: nothing shall be left.
        let ports = Ports {
            disk: Arc::new(RealDisk),
            random: Arc::new(OsRandom),
            marks: Arc::new(NoMarks),
        };
        let mut begin = args.now;
        if !args.empty {
            let end = scenario::invented(&ports, &folder, &passphrase)?;
            begin = begin.or_else(|| next_evening(&end)).or(Some(end));
        }
        let mut diary = Self {
            ports,
            folder,
            keeper: Box::new(secret::keeper(&passphrase)?),
            language: language(args),
            clock: Clock::beginning(begin)?,
            state: State::Shut,
            invented: !args.empty,
            fresh: false,
            by_phrase: false,
            waiting: None,
            phrase: None,
            copy: None,
            temporary: Some(temporary),
        };
        if args.empty {
            diary.start()?;
        }
        Ok(diary)
    }

    /// Whether the diary is gone when the try-out ends.
    pub(super) fn is_temporary(&self) -> bool {
        self.temporary.is_some()
    }

    /// Whether the time is one that was asked for.
    pub(super) fn is_pretended(&self) -> bool {
        self.clock.is_pretended()
    }

    /// Now.
    ///
    /// # Errors
    /// The machine's clock is not set.
    pub(super) fn moment(&self) -> Result<Moment, Failure> {
        self.clock.now()
    }

    /// The language where no diary says another.
    pub(super) fn language(&self) -> &str {
        &self.language
    }

    /// What opens it.
    pub(super) fn keeper(&self) -> &dyn KeyKeeper {
        self.keeper.as_ref()
    }

    /// The outside of the companion.
    pub(super) fn ports(&self) -> &Ports {
        &self.ports
    }

    /// Where it lies.
    pub(super) fn folder(&self) -> &Path {
        &self.folder
    }

    /// How it stands; opened first where that is needed.
    pub(super) fn stand(&mut self, moment: &Moment) -> Standing<'_> {
        if matches!(self.state, State::Shut) {
            self.open(moment);
        }
        match &mut self.state {
            State::Open(companion) => Standing::Open(companion),
            State::Stuck(trouble) => Standing::Stuck(trouble.clone()),
            State::Shut | State::Erased => Standing::Erased,
        }
    }

    /// Puts the companion away: the next request opens the diary.
    pub(super) fn shut(&mut self) {
        self.state = State::Shut;
    }

    fn open(&mut self, moment: &Moment) {
        // The lock of an earlier opening is given back first.
        self.state = State::Shut;
        let opened = Companion::open(
            &self.ports,
            &self.folder,
            self.keeper.as_ref(),
            &self.language,
            moment,
        );
        self.state = match opened {
            Ok(companion) => open(companion),
            Err(trouble) => State::Stuck(trouble),
        };
    }

    /// Starts a new diary in the folder.
    ///
    /// # Errors
    /// There is one already, or no room.
    pub(super) fn start(&mut self) -> Result<(), Trouble> {
        self.state = State::Shut;
        let keeper = self.keeper.as_ref();
        let companion = Companion::start(&self.ports, &self.folder, keeper, &self.language)?;
        self.state = open(companion);
        self.fresh = true;
        Ok(())
    }

    /// Does something to the diary as a whole, which takes the companion and may give it back. Where it
    /// fails, the diary is opened again at the next request.
    ///
    /// # Errors
    /// As `act`; [`Trouble::NotADiary`] where none is open.
    pub(super) fn whole(
        &mut self,
        act: impl FnOnce(Companion, &dyn KeyKeeper) -> Result<Option<Companion>, Trouble>,
    ) -> Result<(), Trouble> {
        let State::Open(companion) = std::mem::replace(&mut self.state, State::Shut) else {
            return Err(Trouble::NotADiary);
        };
        self.state = match act(*companion, self.keeper.as_ref())? {
            Some(companion) => open(companion),
            None => State::Erased,
        };
        Ok(())
    }

    /// Another keeper opens it from now on.
    pub(super) fn keep_by(&mut self, keeper: Box<dyn KeyKeeper + Send>) {
        self.keeper = keeper;
        self.by_phrase = false;
    }

    /// A companion opened in another way takes the place.
    pub(super) fn put(&mut self, companion: Companion) {
        self.state = open(companion);
    }
}

/// A page may mix directions, so values are told apart where the sentence runs the other way.
fn open(mut companion: Companion) -> State {
    companion.isolate_values(Isolation::InRightToLeft);
    State::Open(Box::new(companion))
}

fn language(args: &TryArgs) -> String {
    args.language.clone().unwrap_or_else(|| LANGUAGE.to_owned())
}

fn random_passphrase() -> Result<Zeroizing<String>, Failure> {
    let mut bytes = Zeroizing::new([0u8; 16]);
    OsRandom
        .fill(bytes.as_mut())
        .map_err(|_| Failure::Else("There are no random bytes just now. Try again.".to_owned()))?;
    Ok(Zeroizing::new(bytes.iter().map(|byte| format!("{byte:02x}")).collect()))
}

/// The evening after, in the same zone.
fn next_evening(end: &Stamp) -> Option<Stamp> {
    let zone = end.zone()?;
    let day = end.day().checked_add_days(Days::new(1))?;
    let local = day.and_time(NaiveTime::from_hms_opt(19, 0, 0)?);
    Stamp::in_zone(zone.instants(local).earliest()?, zone).ok()
}
