//! The one object a shell holds. Decides that no lock is held while the shell's keeper is called: what is
//! behind the object is taken out for the length of a request, and a second caller is told to try again.

use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};

use frond_core::companion::{Companion, Ports, Request, Trouble};
use frond_core::ports::{OsRandom, RealDisk};
use frond_core::screens::{Screen, TodayScreen};
use frond_core::words::Words;

use crate::keeper::{Brought, KeyKeeper};
use crate::moment::Moment;
use crate::trouble::{FrondError, speak};

/// Frond on this phone: one diary, and everything that answers from it.
#[derive(uniffi::Object)]
pub struct Frond {
    language: String,
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
            let opened = Companion::open(
                &self.ports,
                &self.folder,
                &self.keeper,
                &self.language,
                moment,
            );
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
    /// Frond with its diary in this folder. Nothing is opened yet.
    ///
    /// # Errors
    /// None so far: every call across the border can fail.
    #[uniffi::constructor]
    pub fn new(
        folder: String,
        language: String,
        keeper: Arc<dyn KeyKeeper>,
    ) -> Result<Arc<Self>, FrondError> {
        speak(&language);
        let keeper = Brought(keeper);
        let ports = Ports {
            disk: Arc::new(RealDisk),
            random: Arc::new(OsRandom),
            marks: Arc::new(keeper.clone()),
        };
        let inside = Inside {
            ports,
            folder: PathBuf::from(folder),
            keeper,
            language: language.clone(),
            companion: None,
        };
        Ok(Arc::new(Self { language, inside: Mutex::new(Some(inside)) }))
    }

    /// What today asks.
    ///
    /// # Errors
    /// [`FrondError`].
    pub fn today(&self, moment: Moment) -> Result<TodayScreen, FrondError> {
        self.with(|inside| {
            let moment = moment.stamped().map_err(|_| Trouble::TryAgain)?;
            match inside.open(&moment)?.ask(Request::Today, &moment)?.screen {
                Screen::Today(today) => Ok(today),
                _ => Err(Trouble::TryAgain),
            }
        })
    }
}

impl Frond {
    fn with<T>(
        &self,
        act: impl FnOnce(&mut Inside) -> Result<T, Trouble>,
    ) -> Result<T, FrondError> {
        let words = Words::for_language(&self.language);
        let taken = self.inside.lock().unwrap_or_else(PoisonError::into_inner).take();
        let Some(mut inside) = taken else {
            return Err(FrondError::of(&Trouble::TryAgain, &words));
        };
        let answer = act(&mut inside);
        *self.inside.lock().unwrap_or_else(PoisonError::into_inner) = Some(inside);
        answer.map_err(|trouble| FrondError::of(&trouble, &words))
    }
}
