//! An open diary folder, and the moment of this command.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use clap::Args;
use frond_core::companion::{Companion, Ports, Request, Told, Trouble, Write};
use frond_core::moment::{Moment, Stamp};
use frond_core::ports::{KeyKeeper, OsRandom, RealDisk};
use frond_core::screens::{CannotOpenScreen, Screen};
use frond_core::words::Words;

use crate::failure::{Failure, LANGUAGE};
use crate::marks;
use crate::secret::SecretArgs;
use crate::{clock, print};

/// Which diary, and how it opens.
#[derive(Args, Clone)]
pub(crate) struct DiaryArgs {
    /// The folder of the diary
    #[arg(long, env = "FROND_DIARY", hide_env_values = true, value_name = "FOLDER")]
    diary: PathBuf,
    #[command(flatten)]
    secret: SecretArgs,
    /// For trying out: pretend that it is this time
    #[arg(long, hide = true, value_name = "TIME")]
    now: Option<Stamp>,
}

/// An open diary.
pub(crate) struct Place {
    companion: Companion,
    moment: Moment,
    keeper: Box<dyn KeyKeeper>,
}

/// The outside of the companion, on this machine.
pub(crate) fn ports() -> Ports {
    Ports { disk: Arc::new(RealDisk), random: Arc::new(OsRandom), marks: marks::keeper() }
}

impl DiaryArgs {
    /// From its parts.
    pub(crate) fn new(diary: PathBuf, secret: SecretArgs, now: Option<Stamp>) -> Self {
        Self { diary, secret, now }
    }

    /// The moment of this command.
    pub(crate) fn moment(&self) -> Result<Moment, Failure> {
        match self.now {
            // The running time of this machine says nothing about a time that is made up.
            Some(now) => Ok(Moment::at(now)),
            None => clock::now(),
        }
    }

    /// Opens the diary.
    pub(crate) fn open(&self) -> Result<Place, Failure> {
        // Before the passphrase is asked for in vain.
        if !self.diary.is_dir() {
            return Err(Trouble::NotADiary.into());
        }
        let moment = self.moment()?;
        let keeper = self.secret.keeper()?;
        let opened = Companion::open(&ports(), &self.diary, keeper.as_ref(), LANGUAGE, &moment);
        let companion = opened.map_err(|trouble| cannot_open(&trouble))?;
        Ok(Place { companion, moment, keeper })
    }

    /// The folder.
    pub(crate) fn folder(&self) -> &Path {
        &self.diary
    }

    /// How it opens.
    pub(crate) fn secret(&self) -> &SecretArgs {
        &self.secret
    }

    /// Starts a new diary.
    pub(crate) fn start(&self) -> Result<Place, Failure> {
        if holds_something(&self.diary) {
            return Err(Failure::input(format!(
                "{} holds something already. Choose a new or an empty folder.",
                self.diary.display()
            )));
        }
        let moment = self.moment()?;
        let keeper: Box<dyn KeyKeeper> = Box::new(self.secret.new_keeper()?);
        let companion = Companion::start(&ports(), &self.diary, keeper.as_ref(), LANGUAGE)?;
        Ok(Place { companion, moment, keeper })
    }
}

/// What the screen says for a diary that does not open, as one failure.
fn cannot_open(trouble: &Trouble) -> Failure {
    let words = Words::for_language(LANGUAGE);
    let screen = CannotOpenScreen::new(&words, trouble);
    let calm = screen.calm.iter().cloned();
    let steps = screen.steps.iter().filter_map(print::command_of);
    let says = std::iter::once(screen.says.clone()).chain(calm).chain(steps);
    Failure::of(trouble, &words).saying(says.collect::<Vec<_>>().join("\n"))
}

/// Whether a name is taken by anything but an empty folder, or one in which a diary was erased.
pub(crate) fn holds_something(folder: &Path) -> bool {
    let is_left_of_a_diary = |path: &Path| match std::fs::read_dir(path) {
        Ok(mut inside) => inside.next().is_none(),
        Err(_) => path.metadata().is_ok_and(|about| about.len() == 0),
    };
    match std::fs::read_dir(folder) {
        Ok(inside) => inside.flatten().any(|entry| {
            let known = ["lock", "backups", "aside"].iter().any(|name| entry.file_name() == **name);
            !known || !is_left_of_a_diary(&entry.path())
        }),
        Err(_) => folder.exists(),
    }
}

impl Place {
    /// The open companion.
    pub(crate) fn companion(&self) -> &Companion {
        &self.companion
    }

    /// Its parts, for what is done to the diary as a whole.
    pub(crate) fn into_parts(self) -> (Companion, Moment, Box<dyn KeyKeeper>) {
        (self.companion, self.moment, self.keeper)
    }

    /// Makes a backup on this device.
    pub(crate) fn back_up(&mut self) -> Result<(), Failure> {
        let done = self.companion.back_up(&self.moment.now);
        done.map_err(|trouble| Failure::of(&trouble, self.companion.words()))
    }

    /// Now.
    pub(crate) fn now(&self) -> &Stamp {
        &self.moment.now
    }

    /// Asks for a screen.
    pub(crate) fn ask(&mut self, request: Request) -> Result<Screen, Failure> {
        let answer = self.companion.ask(request, &self.moment);
        match answer {
            Ok(answer) => Ok(answer.screen),
            Err(trouble) => Err(Failure::of(&trouble, self.companion.words())),
        }
    }

    /// Writes something down and gives what is shown then.
    pub(crate) fn tell(&mut self, told: Told, happened: Option<Stamp>) -> Result<Screen, Failure> {
        let id = self.companion.new_id()?;
        let screen = self.ask(Request::Write(Write { id, happened, told }))?;
        // Nobody waits any more. It only makes the next opening faster, so a failure loses nothing.
        let _ = self.companion.tidy();
        Ok(screen)
    }
}
