//! The diary of a try-out: an invented one or an empty one that is gone afterwards, or one of the person's
//! own. Decides where it lies, what keeps its key and what time it is. Leaves how it stands, what is shown of
//! it and what is done to it to the core's [`Holder`], as on a phone.

use std::os::unix::fs::PermissionsExt;
use std::path::Path;
use std::sync::Arc;

use chrono::{Days, NaiveTime};
use frond_core::companion::{Ports, Request, Trouble};
use frond_core::diary::entry::EntryId;
use frond_core::moment::{Moment, Stamp};
use frond_core::ports::{
    CodedKeeper, KeeperKind, KeyKeeper, NoMarks, OsRandom, PassphraseKeeper, RealDisk, Stretch,
};
use frond_core::screens::{Does, DoneScreen, SorryScreen};
use frond_core::whole::{Holder, Seen, View, WholeRequest};
use frond_core::words::Words;
use tempfile::TempDir;

use super::phone::TriedPhone;
use crate::args::TryArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::pages::clock::Clock;
use crate::place::{holds_something, ports};
use crate::scenario;

/// What is behind the pages.
pub(crate) struct Diary {
    ports: Ports,
    folder: std::path::PathBuf,
    language: String,
    holder: Holder,
    keeper: Box<dyn KeyKeeper + Send>,
    clock: Clock,
    /// What somebody wrote in it is invented.
    pub(super) invented: bool,
    /// What the start led to, each shown once, the last first: the first run of a new diary; a plan that was
    /// handed over, or what is wrong with it.
    pub(super) first: Vec<View>,
    /// What was done to the diary as a whole last, to be looked at again without being done again.
    pub(super) done: Option<DoneScreen>,
    /// Removed with everything in it when the try-out ends.
    temporary: Option<TempDir>,
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
        let there = folder.is_dir() && holds_something(folder);
        let keeper: Box<dyn KeyKeeper + Send> =
            if there { args.secret.keeper()? } else { Box::new(args.secret.new_keeper()?) };
        let clock = Clock::beginning(args.now)?;
        let mut diary = Self::held(args.language.as_ref(), ports(), folder, keeper, clock, None);
        diary.begun(if there { WholeRequest::Begin } else { WholeRequest::StartNew })?;
        // A slip of the passphrase is put right on the terminal; what else is the matter, a page says.
        match diary.holder.stuck() {
            Some(trouble @ (Trouble::WrongSecret | Trouble::NotADiary)) => {
                Err(trouble.clone().into())
            }
            _ => Ok(diary),
        }
    }

    fn temporary(args: &TryArgs) -> Result<Self, Failure> {
        let broken = |_| {
            Failure::Else("No temporary folder can be made. Free some space and try again.".into())
        };
        // Temporary folders are everybody's: who else uses this computer may not even see what lies in it, and when.
        let own = std::fs::Permissions::from_mode(0o700);
        let mut builder = tempfile::Builder::new();
        let temporary = builder.prefix("frond-").permissions(own).tempdir().map_err(broken)?;
        let folder = temporary.path().join("diary");
        let phone = TriedPhone::new()?;
        // No mark is kept outside: nothing shall be left.
        let ports = Ports {
            disk: Arc::new(RealDisk),
            random: Arc::new(OsRandom),
            marks: Arc::new(NoMarks),
        };
        let mut begin = args.now;
        if !args.empty {
            let without_code = CodedKeeper::new(&phone, None, Stretch::everyday());
            let end = scenario::invented(&ports, &folder, &without_code)?;
            begin = begin.or_else(|| next_evening(&end)).or(Some(end));
        }
        let clock = Clock::beginning(begin)?;
        let mut diary = Self::held(
            args.language.as_ref(),
            ports,
            &folder,
            Box::new(phone),
            clock,
            Some(temporary),
        );
        diary.invented = !args.empty;
        diary.begun(if args.empty { WholeRequest::StartNew } else { WholeRequest::Begin })?;
        Ok(diary)
    }

    /// A new diary in this folder, to be tried without a person.
    ///
    /// # Errors
    /// The machine's clock is not set.
    pub(super) fn new_in(
        ports: Ports,
        folder: &Path,
        keeper: Box<dyn KeyKeeper + Send>,
        clock: Clock,
    ) -> Result<Self, Failure> {
        let mut diary = Self::held(None, ports, folder, keeper, clock, None);
        diary.begun(WholeRequest::StartNew)?;
        Ok(diary)
    }

    fn held(
        language: Option<&String>,
        ports: Ports,
        folder: &Path,
        keeper: Box<dyn KeyKeeper + Send>,
        clock: Clock,
        temporary: Option<TempDir>,
    ) -> Self {
        let language = language.cloned().unwrap_or_else(|| LANGUAGE.to_owned());
        Self {
            holder: Holder::new(ports.clone(), folder.to_path_buf(), &language),
            ports,
            folder: folder.to_path_buf(),
            language,
            keeper,
            clock,
            invented: false,
            first: Vec::new(),
            done: None,
            temporary,
        }
    }

    /// Opens or starts it. What stands in its way, a page says.
    fn begun(&mut self, request: WholeRequest) -> Result<(), Failure> {
        let moment = self.moment()?;
        let starts = matches!(request, WholeRequest::StartNew);
        let seen = self.whole(request, &moment)?;
        if starts {
            self.first.push(seen.view);
        }
        Ok(())
    }

    /// A plan that was handed over at the start waits to be read.
    ///
    /// # Errors
    /// The machine's clock is not set.
    pub(super) fn handed(&mut self, plan: Vec<u8>) -> Result<(), Failure> {
        let moment = self.moment()?;
        let words = String::new();
        let seen = self.whole(WholeRequest::PlanFile { bytes: plan, words }, &moment)?;
        self.first.push(seen.view);
        Ok(())
    }

    /// Whether the diary is gone when the try-out ends.
    pub(super) fn is_temporary(&self) -> bool {
        self.temporary.is_some()
    }

    /// Whether the time is one that was asked for.
    pub(super) fn is_pretended(&self) -> bool {
        self.clock.is_pretended()
    }

    /// Whether its key is kept as a phone keeps it.
    pub(super) fn as_on_a_phone(&self) -> bool {
        self.keeper.kind() == KeeperKind::PhoneKeyStore
    }

    /// Now.
    ///
    /// # Errors
    /// The machine's clock is not set.
    pub(super) fn moment(&self) -> Result<Moment, Failure> {
        self.clock.now()
    }

    /// The words of the diary's language; of the surface's while none was open yet.
    pub(super) fn words(&self) -> &Words {
        self.holder.words()
    }

    /// Whether it is open just now.
    pub(super) fn is_open(&self) -> bool {
        self.holder.open_companion().is_some()
    }

    /// What an action leads to; `id`: what it writes under, if the page carried one.
    pub(super) fn press(
        &mut self,
        does: Does,
        id: Option<EntryId>,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        match id {
            Some(id) => self.holder.press_under(does, id, self.keeper.as_ref(), moment),
            None => self.holder.press(does, self.keeper.as_ref(), moment),
        }
    }

    /// Asks the companion.
    pub(super) fn ask(&mut self, request: Request, moment: &Moment) -> Result<Seen, Trouble> {
        self.holder.ask(request, self.keeper.as_ref(), moment)
    }

    /// Does what concerns the diary as a whole.
    pub(super) fn whole(
        &mut self,
        request: WholeRequest,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        self.holder.whole(request, self.keeper.as_ref(), moment)
    }

    /// Another passphrase opens it from now on.
    pub(super) fn another_passphrase(
        &mut self,
        keeper: PassphraseKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let seen = self.holder.another_passphrase(&keeper, moment)?;
        self.keeper = Box::new(keeper);
        Ok(seen)
    }

    /// What went wrong and what can be done, as a screen.
    pub(super) fn sorry(&self, trouble: &Trouble) -> SorryScreen {
        self.holder.sorry(trouble)
    }

    /// A new id to write under.
    pub(super) fn new_id(&self) -> Result<EntryId, Trouble> {
        self.holder.new_id()
    }

    /// Nobody waits for it to be faster; nothing depends on it.
    pub(super) fn tidy(&mut self) {
        let _faster = self.holder.tidy();
    }

    /// Puts everything in memory away: the next request opens the diary.
    pub(super) fn shut(&mut self) {
        self.done = None;
        self.holder = Holder::new(self.ports.clone(), self.folder.clone(), &self.language);
    }
}

/// The evening after, in the same zone.
fn next_evening(end: &Stamp) -> Option<Stamp> {
    let zone = end.zone()?;
    let day = end.day().checked_add_days(Days::new(1))?;
    let local = day.and_time(NaiveTime::from_hms_opt(19, 0, 0)?);
    Stamp::in_zone(zone.instants(local).earliest()?, zone).ok()
}
