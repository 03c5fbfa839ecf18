//! The one object a shell holds. Decides that nothing inside is locked while the shell's keeper is called:
//! what is behind the object is taken out for the length of a request, and a second caller is told to try
//! again. Decides, too, that a fault of the program ends with the request it happened in: the diary is put
//! away and opened again by the next one.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};

use frond_core::companion::{Companion, Duty, Ports, Request, Trouble};
use frond_core::ports::{OsRandom, RealDisk};
use frond_core::screens::{Screen, WholeScreen};
use frond_core::words::Words;

use crate::keeper::{Brought, KeyKeeper};
use crate::moment::Moment;
use crate::trouble::{FrondError, speak};

/// What is answered: what to show, and what the shell must do.
#[derive(uniffi::Record)]
pub struct Seen {
    /// What to show.
    pub view: View,
    /// What the shell must do.
    pub duties: Vec<Duty>,
}

/// What to show.
#[derive(uniffi::Enum)]
pub enum View {
    /// A screen of the open diary.
    Screen(Screen),
    /// A screen about the diary as a whole.
    Whole(WholeScreen),
}

/// Frond on this phone: one diary, and everything that answers from it.
#[derive(uniffi::Object)]
pub struct Frond {
    folder: PathBuf,
    language: String,
    keeper: Brought,
    inside: Mutex<Option<Inside>>,
}

struct Inside {
    ports: Ports,
    folder: PathBuf,
    keeper: Brought,
    language: String,
    companion: Option<Companion>,
}

impl Inside {
    fn open(&mut self, moment: &frond_core::moment::Moment) -> Result<&mut Companion, Trouble> {
        if self.companion.is_none() {
            let opened =
                Companion::open(&self.ports, &self.folder, &self.keeper, &self.language, moment);
            self.companion = Some(match opened {
                Err(Trouble::NotADiary) => {
                    Companion::start(&self.ports, &self.folder, &self.keeper, &self.language)?
                }
                other => other?,
            });
        }
        self.companion.as_mut().ok_or(Trouble::OpenAgain)
    }
}

#[uniffi::export]
impl Frond {
    /// Frond with its diary in this folder. Nothing is opened yet. The language is that of the phone; it is
    /// spoken where no diary says another.
    ///
    /// # Errors
    /// None so far: whatever crosses the border may fail.
    #[uniffi::constructor]
    pub fn new(
        folder: String,
        language: String,
        keeper: Arc<dyn KeyKeeper>,
    ) -> Result<Arc<Self>, FrondError> {
        speak(&language);
        let frond = Self {
            folder: PathBuf::from(folder),
            language,
            keeper: Brought(keeper),
            inside: Mutex::new(None),
        };
        frond.put(frond.shut());
        Ok(Arc::new(frond))
    }

    /// Asks the open diary.
    ///
    /// # Errors
    /// [`FrondError`], by what the person can do next.
    pub fn ask(&self, request: Request, moment: Moment) -> Result<Seen, FrondError> {
        self.with(|inside| {
            let moment = moment.stamped().map_err(|_| Trouble::TryAgain)?;
            let answer = inside.open(&moment)?.ask(request, &moment)?;
            Ok(Seen { view: View::Screen(answer.screen), duties: answer.duties })
        })
    }
}

impl Frond {
    fn shut(&self) -> Inside {
        let ports = Ports {
            disk: Arc::new(RealDisk),
            random: Arc::new(OsRandom),
            marks: Arc::new(self.keeper.clone()),
        };
        Inside {
            ports,
            folder: self.folder.clone(),
            keeper: self.keeper.clone(),
            language: self.language.clone(),
            companion: None,
        }
    }

    fn put(&self, inside: Inside) {
        *self.inside.lock().unwrap_or_else(PoisonError::into_inner) = Some(inside);
    }

    fn with<T>(
        &self,
        act: impl FnOnce(&mut Inside) -> Result<T, Trouble>,
    ) -> Result<T, FrondError> {
        let words = Words::for_language(&self.language);
        let taken = self.inside.lock().unwrap_or_else(PoisonError::into_inner).take();
        let Some(mut inside) = taken else {
            return Err(FrondError::of(&Trouble::TryAgain, &words));
        };
        let answer = catch_unwind(AssertUnwindSafe(|| act(&mut inside)));
        // After a fault nothing in memory is believed any more.
        let inside = if answer.is_ok() { inside } else { self.shut() };
        self.put(inside);
        answer
            .unwrap_or(Err(Trouble::OpenAgain))
            .map_err(|trouble| FrondError::of(&trouble, &words))
    }
}
