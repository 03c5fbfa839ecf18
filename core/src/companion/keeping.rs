//! What happens to the diary as a whole: new keys, a recovery phrase, erasing, ending it, a copy for
//! elsewhere, and the screens about it. Decides what goes into the diary anew; that it happens at one
//! stroke is the store's affair.
//!
//! These are not requests, because they need the keeper of the key, which a request cannot carry.

use super::backups::made;
use super::journal::folded;
use super::{Companion, Refusal, Trouble, payloads, read};
use crate::diary::entry::{Content, Entry, SignKey};
use crate::diary::erase::{Erase, Erasure};
use crate::diary::portable::Portable;
use crate::diary::store::Keepers;
use crate::moment::{Moment, Stamp};
use crate::ports::KeyKeeper;
use crate::screens::{BackupLine, EraseScreen, Keeping, KeepingScreen, Screen};
use crate::sealing::{Recipient, RecipientKeeper, RecoveryPhrase, SealTo, SigningKey, seal};
use crate::summary::{DiaryId, DiaryIdentity, Selection, Summary};

/// What becomes of the recovery phrase when the diary is put under new keys.
#[derive(Clone, Copy)]
pub enum Recovery<'a> {
    /// The one there is, if there is one, goes on opening it.
    Keep,
    /// This one opens it from now on, and no other.
    By(&'a RecoveryPhrase),
    /// None opens it from now on.
    None,
}

impl Companion {
    /// Puts the diary under new keys: another passphrase, another recovery phrase. From then on nothing
    /// in the folder opens with the old ones; backups and what was kept aside under them are gone, and a
    /// new backup is made. Copies that lie elsewhere still open with what they were made for.
    ///
    /// # Errors
    /// [`Trouble`]; open the diary again, it is then wholly under the old keys or the new ones.
    pub fn new_keys(
        mut self,
        keeper: &dyn KeyKeeper,
        recovery: Recovery<'_>,
        moment: &Moment,
    ) -> Result<Self, Trouble> {
        self.write_marks(moment)?;
        let recovery = match recovery {
            Recovery::Keep => self.store.card().recovery.clone(),
            Recovery::By(phrase) => Some(phrase.recipient().to_string()),
            Recovery::None => None,
        };
        let entries = payloads(&self.store)?;
        self.anew(entries, keeper, recovery, moment)
    }

    /// Erases, for good. What is left is a mark that something was erased, without anything of what it
    /// told; a caution or a pause that stood stays until a talk closes it.
    ///
    /// # Errors
    /// [`Trouble`]; open the diary again, it then has all of it or nothing of what was to be erased.
    pub fn erase(
        mut self,
        what: Erase,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Self, Trouble> {
        self.write_marks(moment)?;
        let bytes = payloads(&self.store)?;
        let erasure = self.erasure(what, &bytes, &moment.now)?;
        let mark = Entry {
            id: self.new_id()?,
            written: moment.now,
            happened: moment.now,
            uptime: moment.uptime,
            what: Content::ErasedMark {
                latest: erasure.latest,
                caution_open: erasure.caution_open,
                pause_open: self.state.rule().assess(&moment.now).pause.is_some(),
            },
        };
        let mut keep = Vec::with_capacity(erasure.keep.len() + 1);
        for (place, changed) in &erasure.keep {
            keep.push(match changed {
                Some(entry) => line(entry)?,
                None => bytes.get(*place).cloned().unwrap_or_default(),
            });
        }
        keep.push(line(&mark)?);
        let recovery = self.store.card().recovery.clone();
        self.anew(keep, keeper, recovery, moment)
    }

    /// Ends the diary: erases everything, keys and backups too. Copies that lie elsewhere are out of
    /// reach.
    ///
    /// # Errors
    /// [`Trouble::OpenAgain`]: opening the folder goes on with it.
    pub fn end(self, keeper: &dyn KeyKeeper) -> Result<(), Trouble> {
        let diary = self.store.card().diary;
        self.store.end(keeper)?;
        // A mark of a diary that is gone tells nothing.
        let _ = self.ports.marks.forget(&diary);
        Ok(())
    }

    /// The whole diary, sealed to the recovery phrase, to be put wherever the person chooses. Say
    /// [`super::Told::CopyKept`] once it is there.
    ///
    /// # Errors
    /// [`Refusal::NoPhrase`] while there is no recovery phrase.
    pub fn copy_for_elsewhere(&self, now: &Stamp) -> Result<Vec<u8>, Trouble> {
        let card = self.store.card().clone();
        let recipient = recipient(card.recovery.as_deref())?.ok_or(Refusal::NoPhrase)?;
        let copy = Portable { card, made: *now, entries: payloads(&self.store)? };
        let to = SealTo::Recipients(vec![recipient]);
        seal(&copy.write()?, &to).map_err(|_| Trouble::TryAgain)
    }

    /// Whether twelve words open it.
    #[must_use]
    pub fn has_phrase(&self) -> bool {
        self.store.card().recovery.is_some()
    }

    /// What its summaries are signed with, and known by.
    #[must_use]
    pub fn identity(&self) -> DiaryIdentity {
        let card = self.store.card();
        DiaryIdentity { id: DiaryId(card.diary), key: SigningKey::from_seed(&card.seed) }
    }

    /// What she chose to hand over of this diary.
    ///
    /// # Errors
    /// [`Trouble`] when the journal cannot be read.
    pub fn summary(&self, selection: &Selection, now: &Stamp) -> Result<Summary, Trouble> {
        Ok(Summary::of(&self.entries()?, &self.identity(), selection, now)?)
    }

    /// Writes the diary anew with these entries and goes on with it.
    fn anew(
        self,
        entries: Vec<Vec<u8>>,
        keeper: &dyn KeyKeeper,
        recovery: Option<String>,
        moment: &Moment,
    ) -> Result<Self, Trouble> {
        let language = self.words.language().tag;
        let Self { store, ports, folder, .. } = self;
        let phrase = recipient(recovery.as_deref())?.map(RecipientKeeper::new);
        let also: Vec<&dyn KeyKeeper> = phrase.iter().map(|p| p as &dyn KeyKeeper).collect();
        let opened = store.renew(&entries, Keepers { main: keeper, also: &also }, recovery)?;
        let state = folded(entries)?;
        let mut companion = Self::assemble(&ports, &folder, opened, state, language);
        companion.observed = Some(*moment);
        companion.keep_mark();
        // Said on Today if it fails.
        let _said = companion.back_up(&moment.now);
        Ok(companion)
    }

    fn erasure(&self, what: Erase, bytes: &[Vec<u8>], now: &Stamp) -> Result<Erasure, Trouble> {
        let entries: Vec<Entry> = bytes.iter().map(|b| read(b)).collect::<Result<_, _>>()?;
        let open: Vec<SignKey> =
            self.state.rule().assess(now).open_signs.iter().map(|sign| sign.key).collect();
        Ok(what.of(&entries, &open).ok_or(Refusal::NothingToErase)?)
    }

    pub(super) fn erase_screen(&self, what: Erase, now: &Stamp) -> Result<Screen, Trouble> {
        let erasure = self.erasure(what, &payloads(&self.store)?, now)?;
        Ok(self.show(now, |scene| Screen::Erase(EraseScreen::some(scene, what, &erasure))))
    }

    pub(super) fn keeping(&self, now: &Stamp) -> Result<Screen, Trouble> {
        let backups = self.store.backups().map_err(|_| Trouble::TryAgain)?;
        let backups: Vec<BackupLine> = backups
            .iter()
            .map(|backup| BackupLine {
                made: made(backup),
                entries: backup.about.as_ref().map(|about| about.entries),
            })
            .collect();
        let keeping = Keeping {
            phrase: self.store.card().recovery.is_some(),
            backups: &backups,
            findings: &self.findings,
            rollback: self.rollback,
        };
        Ok(self.show(now, |scene| Screen::Keeping(KeepingScreen::new(scene, &keeping))))
    }
}

fn line(entry: &Entry) -> Result<Vec<u8>, Trouble> {
    serde_json::to_vec(entry).map_err(|_| Trouble::TryAgain)
}

/// The recipient on a card. One that cannot be read was written by a newer program.
pub(super) fn recipient(recovery: Option<&str>) -> Result<Option<Recipient>, Trouble> {
    recovery.map(|text| text.parse().map_err(|_| Trouble::Update)).transpose()
}
