//! Copies of the diary: one for elsewhere, and restoring one, of this device or from elsewhere. What a copy holds
//! is said before anything is replaced; what was there is kept aside.
//!
//! While a code is asked for, none of it is offered: whoever has the twelve words opens the diary with them.

use std::path::PathBuf;

use super::{CodeFor, Holder, Seen, State};
use crate::companion::{Companion, Copy, CopyFrom, Duty, Refusal, SharedFile, Trouble};
use crate::moment::Moment;
use crate::ports::KeyKeeper;
use crate::screens::{
    Amiss, CopyScreen, FormField, Problem, RestoreChoiceScreen, RestoreCopyScreen, WholeScreen,
};
use crate::sealing::RecoveryPhrase;
use zeroize::Zeroizing;

impl Holder {
    /// The form for a copy for elsewhere.
    pub(super) fn copy_form(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        let companion = self.companion()?;
        if !companion.has_phrase() {
            return Err(Refusal::NoPhrase.into());
        }
        let id = companion.new_id()?;
        Ok(Seen::whole(WholeScreen::Copy(CopyScreen::new(self.words(), id))))
    }

    /// The copy itself, under a name that tells nothing.
    pub(super) fn make_copy(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let mut seen = self.copy_form(keeper, moment)?;
        if let State::Open(companion) = &self.state {
            seen.duties.push(Duty::ShareFile(SharedFile {
                name: format!("copy-{}.age", moment.now.day()),
                mime: "application/octet-stream".to_owned(),
                bytes: companion.copy_for_elsewhere(&moment.now)?,
                sealed: true,
            }));
        }
        Ok(seen)
    }

    /// Which copy is to be restored.
    pub(super) fn restore_form(&mut self, keeper: &dyn KeyKeeper, moment: &Moment) -> Seen {
        if let Some(way) = self.code_first(keeper, moment) {
            return way;
        }
        let open = self.open_companion().is_some();
        let there = self.newest_backup().is_some();
        let form = RestoreChoiceScreen::new(self.words(), there, open);
        Seen::whole(WholeScreen::Restore(form))
    }

    /// The diary is opened where it can be, so that a copy is compared with it; where a code is asked for, that
    /// comes first.
    fn code_first(&mut self, keeper: &dyn KeyKeeper, moment: &Moment) -> Option<Seen> {
        let way = self.in_the_way(keeper, moment);
        way.filter(|_| matches!(self.state, State::CodeAsked))
    }

    /// The newest backup on this device.
    fn newest_backup(&self) -> Option<PathBuf> {
        let folder = self.folder.join("backups");
        let names = self.ports.disk.list(&folder).ok()?;
        let newest = names.iter().filter_map(|name| name.parse::<u64>().ok()).max()?;
        Some(folder.join(newest.to_string()))
    }

    /// Looks into the newest backup. Where the diary itself is too damaged to ask for its code, the backup does.
    pub(super) fn look_into_backup(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.code_first(keeper, moment) {
            return Ok(way);
        }
        let Some(path) = self.newest_backup() else {
            return Ok(self.restore_form(keeper, moment));
        };
        let read = self.with_keeper(keeper, |keeper| {
            Copy::read(&self.ports, CopyFrom::Backup { path: &path, keeper })
        });
        let open = self.open_companion().is_some();
        match read {
            Ok(copy) => {
                if self.code_for == CodeFor::Backup {
                    self.code_for = CodeFor::Diary;
                    self.tries.forget(moment);
                }
                self.waits(copy, moment)
            }
            Err(Trouble::CodeAsked) => {
                self.code_for = CodeFor::Backup;
                Ok(self.code_asked(moment, vec![]))
            }
            Err(Trouble::WrongSecret) if !open && self.code.take().is_some() => {
                self.code_for = CodeFor::Backup;
                Ok(self.code_wrong(moment))
            }
            Err(trouble) => Err(trouble),
        }
    }

    /// The form for a copy from elsewhere.
    pub(super) fn restore_copy_form(&mut self, keeper: &dyn KeyKeeper, moment: &Moment) -> Seen {
        match self.code_first(keeper, moment) {
            Some(way) => way,
            None => self.restore_copy(vec![]),
        }
    }

    fn restore_copy(&self, problems: Vec<Problem>) -> Seen {
        let open = self.open_companion().is_some();
        let form = RestoreCopyScreen::new(self.words(), open, problems);
        Seen::whole(WholeScreen::RestoreCopy(form))
    }

    /// Looks into a copy from elsewhere.
    pub(super) fn look_into_copy(
        &mut self,
        bytes: &[u8],
        phrase: String,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let phrase = RecoveryPhrase::parse(&Zeroizing::new(phrase)).ok();
        if let Some(way) = self.code_first(keeper, moment) {
            return Ok(way);
        }
        let mut problems = Vec::new();
        if bytes.is_empty() {
            problems.push(Problem::new(self.words(), FormField::File, Amiss::FileMissing));
        }
        let Some(phrase) = phrase else {
            problems.push(Problem::new(self.words(), FormField::Phrase, Amiss::NotAPhrase));
            return Ok(self.restore_copy(problems));
        };
        if !problems.is_empty() {
            return Ok(self.restore_copy(problems));
        }
        match Copy::read(&self.ports, CopyFrom::Elsewhere { bytes, phrase: &phrase }) {
            Ok(copy) => self.waits(copy, moment),
            Err(trouble) => {
                let field = match trouble {
                    Trouble::WrongPhrase => FormField::Phrase,
                    _ => FormField::File,
                };
                let problem = Problem::trouble(self.words(), field, &trouble);
                Ok(self.restore_copy(vec![problem]))
            }
        }
    }

    /// A copy that was read waits until she says that it is to be restored.
    fn waits(&mut self, copy: Copy, moment: &Moment) -> Result<Seen, Trouble> {
        let screen = copy.screen(self.open_companion(), &self.language, &moment.now)?;
        self.copy = Some(copy);
        Ok(Seen::whole(WholeScreen::Restoring(screen)))
    }

    /// Restores the copy that was looked into. Asked twice, the second finds it done.
    pub(super) fn restore_now(
        &mut self,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let way = self.code_first(keeper, moment).or_else(|| self.not_by_phrase(keeper));
        if let Some(way) = way {
            return Ok(way);
        }
        let Some(copy) = self.copy.take() else { return self.begin(keeper, moment) };
        let replaced = self.open_companion().map(|companion| companion.state().count());
        // It gives back the lock.
        self.close();
        let restored = self.with_keeper(keeper, |keeper| {
            let (ports, language) = (&self.ports, self.language.as_str());
            Companion::restore(ports, &self.folder, keeper, copy, replaced, language, moment)
        });
        self.put(restored?, keeper);
        if self.code.is_none() {
            self.tries.remove();
        }
        let mut seen = self.begin(keeper, moment)?;
        seen.duties.extend(self.companion()?.planned_anew(moment));
        Ok(seen)
    }
}
