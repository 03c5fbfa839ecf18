//! The one object a shell holds. Decides that nothing inside is locked while the shell's keeper is called:
//! what holds the diary is taken out for the length of a request, and a second caller is told to try again.
//! Decides, too, that a fault of the program ends with the request it happened in: the diary is put away and
//! opened again by the next one. Leaves everything else to [`Holder`].

use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};

use chrono::{NaiveDate, NaiveTime};
use frond_core::companion::{Ports, Request, Trouble};
use frond_core::diary::entry::EntryId;
use frond_core::ports::{OsRandom, RealDisk};
use frond_core::screens::{Covered, Does, FormWords};
use frond_core::whole::{Holder, Seen, Standing, WholeRequest};
use frond_core::words::Words;

use crate::fault;
use crate::keeper::{Brought, KeyKeeper};
use crate::moment::Moment;
use crate::trouble::{FrondError, speak};

/// Frond on this phone: one diary, and everything that answers from it.
#[derive(uniffi::Object)]
pub struct Frond {
    folder: PathBuf,
    language: String,
    covered: Covered,
    keeper: Brought,
    inside: Mutex<Option<Holder>>,
}

#[uniffi::export]
impl Frond {
    /// Frond with its diary in this folder. Nothing is opened yet. The language is the phone's; it is spoken
    /// where no diary says another. What is covered is what the shell does so that others see less.
    ///
    /// # Errors
    /// None so far: whatever crosses the border may fail.
    #[uniffi::constructor]
    pub fn new(
        folder: String,
        language: String,
        covered: Covered,
        keeper: Arc<dyn KeyKeeper>,
    ) -> Result<Arc<Self>, FrondError> {
        speak(&language);
        let frond = Self {
            folder: PathBuf::from(folder),
            language,
            covered,
            keeper: Brought(keeper),
            inside: Mutex::new(None),
        };
        frond.put(frond.holder());
        Ok(Arc::new(frond))
    }

    /// Asks for what concerns the diary as a whole; [`WholeRequest::Begin`] is the first thing at launch.
    ///
    /// # Errors
    /// [`FrondError`], by what the person can do next.
    pub fn whole(&self, request: WholeRequest, moment: Moment) -> Result<Seen, FrondError> {
        self.with(|holder| holder.whole(request, &self.keeper, &moment.stamped()?))
    }

    /// Asks the open diary.
    ///
    /// # Errors
    /// [`FrondError`], by what the person can do next.
    pub fn ask(&self, request: Request, moment: Moment) -> Result<Seen, FrondError> {
        self.with(|holder| holder.ask(request, &self.keeper, &moment.stamped()?))
    }

    /// What an action asks for.
    ///
    /// # Errors
    /// [`FrondError`], by what the person can do next.
    pub fn press(&self, does: Does, moment: Moment) -> Result<Seen, FrondError> {
        self.with(|holder| holder.press(does, &self.keeper, &moment.stamped()?))
    }

    /// The words of the phone's own controls, in the diary's language.
    ///
    /// # Errors
    /// [`FrondError::TryAgain`] while another request is under way.
    pub fn form_words(&self) -> Result<FormWords, FrondError> {
        self.with(|holder| Ok(holder.form_words()))
    }

    /// A day as it is said in the diary's language.
    ///
    /// # Errors
    /// [`FrondError::TryAgain`] while another request is under way.
    pub fn say_day(&self, day: NaiveDate) -> Result<String, FrondError> {
        self.with(|holder| Ok(holder.words().date(day)))
    }

    /// A time of day as it is said there; none where there is no such time.
    ///
    /// # Errors
    /// [`FrondError::TryAgain`] while another request is under way.
    pub fn say_time(&self, hour: u32, minute: u32) -> Result<Option<String>, FrondError> {
        let time = NaiveTime::from_hms_opt(hour, minute, 0);
        self.with(|holder| Ok(time.map(|time| holder.words().time(time))))
    }

    /// How the diary stands after the last answer.
    ///
    /// # Errors
    /// [`FrondError::TryAgain`] while another request is under way.
    pub fn standing(&self) -> Result<Standing, FrondError> {
        self.with(|holder| Ok(holder.standing()))
    }

    /// A new id to write under.
    ///
    /// # Errors
    /// [`FrondError::NotADiary`] while none is open.
    pub fn new_id(&self) -> Result<EntryId, FrondError> {
        self.with(|holder| holder.new_id())
    }

    /// Tidies up when nobody waits; nothing depends on it but speed.
    ///
    /// # Errors
    /// [`FrondError`]; no entry is in danger.
    pub fn tidy(&self) -> Result<(), FrondError> {
        self.with(Holder::tidy)
    }
}

impl Frond {
    /// A holder with nothing open.
    fn holder(&self) -> Holder {
        let ports = Ports {
            disk: Arc::new(RealDisk),
            random: Arc::new(OsRandom),
            marks: Arc::new(self.keeper.clone()),
        };
        let mut holder = Holder::new(ports, self.folder.clone(), &self.language);
        holder.covers(self.covered);
        holder
    }

    fn put(&self, holder: Holder) {
        *self.inside.lock().unwrap_or_else(PoisonError::into_inner) = Some(holder);
    }

    fn with<T>(
        &self,
        act: impl FnOnce(&mut Holder) -> Result<T, Trouble>,
    ) -> Result<T, FrondError> {
        let taken = self.inside.lock().unwrap_or_else(PoisonError::into_inner).take();
        let Some(mut holder) = taken else {
            let words = Words::for_language(&self.language);
            return Err(FrondError::of(&Trouble::TryAgain, &words));
        };
        let answer = fault::caught(|| act(&mut holder)).unwrap_or_else(|| {
            // After a fault nothing in memory is believed any more.
            holder = self.holder();
            Err(Trouble::OpenAgain)
        });
        speak(holder.words().language().tag);
        let answer = answer.map_err(|trouble| FrondError::of(&trouble, holder.words()));
        self.put(holder);
        answer
    }
}
