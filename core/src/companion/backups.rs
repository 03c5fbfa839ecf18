//! Decides when a backup on this device is made (before a new day's first entry, and whenever nothing is
//! backed up) and when the mark kept outside is renewed. A backup that cannot be made is said on Today; it
//! never keeps an entry from being written.

use chrono::NaiveDate;

use super::{Companion, Trouble};
use crate::diary::entry::{Content, EntryId};
use crate::diary::store::{BackupSeen, Rollback, mark_print};
use crate::moment::Stamp;
use crate::programme::values::Count;

/// What is known of the backups on this device.
#[derive(Default)]
pub(super) struct Backups {
    /// The local day of the newest; the outer `None` until looked up.
    newest: Option<Option<NaiveDate>>,
    failed: bool,
    /// What is to be written down because the folder was set back, under the id that this loss has.
    set_back: Option<(EntryId, Content)>,
}

impl Backups {
    /// Whether the last one could not be made.
    pub(super) fn failed(&self) -> bool {
        self.failed
    }
}

/// When a backup was made; `None` where it does not say.
pub(super) fn made(backup: &BackupSeen) -> Option<Stamp> {
    std::str::from_utf8(&backup.about.as_ref()?.label).ok()?.parse().ok()
}

impl Companion {
    /// Makes a backup on this device now.
    ///
    /// # Errors
    /// [`Trouble`]; no entry and no earlier backup is in danger.
    pub fn back_up(&mut self, now: &Stamp) -> Result<(), Trouble> {
        let done = self.store.back_up(now.to_string().as_bytes());
        self.backups.failed = done.is_err();
        done?;
        self.backups.newest = Some(Some(now.day()));
        self.keep_mark();
        Ok(())
    }

    pub(super) fn back_up_if_due(&mut self, now: &Stamp) {
        if self.store.last().is_none() || !self.store.is_writable() {
            return;
        }
        let store = &self.store;
        let newest = *self.backups.newest.get_or_insert_with(|| {
            store.backups().ok()?.iter().filter_map(made).map(|made| made.day()).max()
        });
        if newest != Some(now.day()) {
            // Said on Today; tried again at the next entry.
            let _said = self.back_up(now);
        }
    }

    /// Keeps the mark of the diary as it is now. Not while it still has to be written down that the folder
    /// was set back: until then nothing else knows of it.
    pub(super) fn keep_mark(&self) {
        if self.backups.set_back.as_ref().is_some_and(|(_, mark)| self.pending.contains(mark)) {
            return;
        }
        // Without it only an older copy of the folder goes unnoticed, so nothing waits for it.
        if let Ok(Some(mark)) = self.store.mark() {
            let _ = self.ports.marks.keep(&self.store.card().diary, &mark);
        }
    }

    /// Looks whether the folder is an older copy, and has it written down as entries missing.
    pub(super) fn judge_mark(&mut self) -> Result<(), Trouble> {
        let Ok(Some(mark)) = self.ports.marks.kept(&self.store.card().diary) else { return Ok(()) };
        self.rollback = self.store.judge(&mark)?;
        let known = match self.rollback {
            None => return Ok(()),
            Some(Rollback::Shorter { known } | Rollback::BeforeRenewal { known }) => known.get(),
            Some(Rollback::Differs { .. }) => 0,
        };
        let here = self.store.last().map_or(0, |seq| seq.get());
        // At least one: how many there were is not known where others stand in their place.
        let lost = known.saturating_sub(here).clamp(1, u64::from(Count::MOST));
        let (Ok(entries), Some(print)) = (Count::new(lost), mark_print(&mark)) else {
            return Ok(());
        };
        // An opening that was cut short may have written it down and not renewed the mark outside.
        let id = EntryId(print);
        if self.entries()?.iter().any(|entry| entry.id == id) {
            self.keep_mark();
            return Ok(());
        }
        let after = self.state.last().map(|last| last.written);
        let mark = Content::MissingMark { entries, after, before: None };
        self.backups.set_back = Some((id, mark.clone()));
        self.pending.push(mark);
        Ok(())
    }

    /// The id of a machine's mark. What is written down of one set-back always has the same.
    pub(super) fn mark_id(&self, mark: &Content) -> Result<EntryId, Trouble> {
        match &self.backups.set_back {
            // Of two that say the same, the one for a hole comes first.
            Some((id, of))
                if of == mark && self.pending.iter().filter(|p| *p == of).count() == 1 =>
            {
                Ok(*id)
            }
            _ => self.new_id(),
        }
    }
}
