//! Doing one thing to the real diary while something goes wrong, and what the model makes of it.

use std::path::Path;

use super::*;

impl Life {
    /// What the diary ought to be afterwards; `None`: it ought to be refused.
    pub(super) fn expected(&self, act: &Act) -> Option<Model> {
        let (model, day) = (&self.model, self.moment.now.day());
        Some(match act {
            Act::Start(pass) => {
                let newest = self.ids.keys().max().map_or(0, |n| *n).max(model.diary);
                let lost = self.copies.iter().map(|copy| copy.2.diary).max().unwrap_or(0);
                Model { diary: newest.max(lost) + 1, ..model.started(*pass) }
            }
            Act::Tell(_, _, line) => model.with(line.clone()),
            Act::Erase(what) => return model.without(*what, day),
            Act::Keys(pass, phrase) => model.renewed(*pass, *phrase),
            Act::Restore { from, pass, replaced } => {
                let copy = match from {
                    Source::Elsewhere(n) => &self.copies.get(*n)?.2,
                    Source::Backup(path) => self.backups.get(&self.disk.content(path)?)?,
                };
                let known = self.mark(copy.diary).map_or(0, |mark| mark.generation);
                model.restored(copy, *pass, known, *replaced, day)
            }
            Act::End => model.ended(),
            Act::BackUp | Act::Save | Act::Tidy | Act::Reopen => model.clone(),
        })
    }

    pub(super) fn act(&mut self, act: Act, fault: Fault) {
        self.say(&format!("{} {fault:?}", act.name()));
        let mut act = act;
        if let (Act::Tell(_, _, line), Some(companion)) = (&mut act, &self.companion) {
            line.id = companion.new_id().ok();
        }
        let before = self.model.clone();
        let expected = self.expected(&act);
        let journal = self.disk.content(&Path::new(FOLDER).join("journal"));
        let calls = self.disk.calls();
        if let Ground::Lies(lie) = self.ground {
            self.disk.leave_out(lie);
        }
        match fault {
            Fault::None => {}
            Fault::Cut(n, _) | Fault::Kill(n) => self.disk.power_off_at(calls + n),
            Fault::Full(room) => self.disk.set_room(Some(room)),
        }
        let done = self.perform(&act);
        self.disk.set_room(None);
        self.disk.power_off_at(u64::MAX);
        let Some(after) = expected else {
            assert!(done.is_err(), "it was not refused");
            self.settle(vec![before.clone()], fault);
            if self.fate.is_none() {
                // What the clock had to say may have been written meanwhile, and a backup before it.
                let after = self.model.clone();
                self.look_at_marks(&before, &after);
                self.look_at_backups(&before, false);
            }
            return;
        };
        let mut candidates = match &done {
            Ok(()) => vec![after.clone()],
            Err(Trouble::PutRight(_)) => panic!("it was refused: {done:?}"),
            Err(_) => vec![before.clone(), after.clone()],
        };
        if let (Act::Tell(..), Err(_), Fault::Cut(..)) = (&act, &done, fault) {
            candidates.push(before.torn(self.moment.now.day()));
        }
        if matches!((&act, &done), (Act::Reopen, _)) {
            // An opening that was cut short may have owned up to a set-back or not.
            let day = self.moment.now.day();
            candidates = match (fault, &done) {
                (Fault::None, Ok(())) => vec![before.owned_up(day)],
                _ => vec![before.clone(), before.owned_up(day)],
            };
        }
        match fault {
            Fault::None if done.is_err() && !self.honest() => {
                // An earlier lie left something that does not open; that is said.
                self.fate = Some(Fate::Refused);
            }
            Fault::None => {
                assert!(done.is_ok(), "trouble without a fault: {done:?}");
                if after.there {
                    self.compare(&candidates);
                } else {
                    self.settle(candidates, fault);
                }
            }
            Fault::Full(_) if done.is_ok() && !matches!(act, Act::Reopen | Act::End) => {
                self.compare(&candidates);
            }
            _ => self.settle(candidates, fault),
        }
        if self.fate.is_some() {
            return;
        }
        if !self.model.there {
            self.acknowledged = None;
        }
        self.look_at_marks(&before, &after);
        let fine = done.is_ok() && matches!(fault, Fault::None);
        self.look_at_backups(&before, fine);
        if !self.honest() {
            return;
        }
        if done.is_ok() {
            self.look_after(&act, fault, &before, journal);
        }
        if self.dice.percent(10) {
            self.sweep();
        }
    }

    pub(super) fn perform(&mut self, act: &Act) -> Result<(), Trouble> {
        let (folder, moment) = (Path::new(FOLDER), self.moment);
        let ports = self.ports();
        match act {
            Act::Start(secret) => {
                let keeper = world::pass(*secret);
                self.companion = Some(Companion::start(&ports, folder, &keeper, "en")?);
            }
            Act::Reopen => {
                self.companion = None;
                self.companion = Some(self.open(&ports)?);
            }
            Act::Restore { from, pass, replaced } => {
                self.companion = None;
                let copy = match from {
                    Source::Elsewhere(n) => {
                        let (bytes, secret, _) = &self.copies[*n];
                        let phrase = &world::phrase(*secret);
                        Copy::read(&ports, CopyFrom::Elsewhere { bytes, phrase })?
                    }
                    Source::Backup(path) => {
                        let known = self.disk.content(path).and_then(|b| self.backups.get(&b));
                        let keeper = &world::pass(known.map_or(0, |known| known.pass));
                        Copy::read(&ports, CopyFrom::Backup { path, keeper })?
                    }
                };
                let keeper = world::pass(*pass);
                let restored =
                    Companion::restore(&ports, folder, &keeper, copy, *replaced, "en", &moment);
                self.companion = Some(restored?);
            }
            Act::Tell(told, happened, line) => {
                let (id, told) = (line.id.unwrap_or(EntryId([0; 16])), told.as_ref().clone());
                let write = Write { id, happened: *happened, told };
                self.open_now().ask(Request::Write(write), &moment)?;
            }
            Act::BackUp => self.open_now().back_up(&moment.now)?,
            Act::Save => self.open_now().save()?,
            Act::Tidy => self.open_now().tidy()?,
            Act::Erase(what) => {
                let what = match what {
                    Gone::One(id) => Erase::Entry(*id),
                    Gone::Days(from, to) => Erase::Days { from: *from, to: *to },
                };
                let keeper = world::pass(self.model.pass);
                let companion = self.companion.take().expect("open");
                self.companion = Some(companion.erase(what, &keeper, &moment)?);
            }
            Act::Keys(pass, phrase) => {
                let new = phrase.map(world::phrase);
                let recovery = match &new {
                    _ if *phrase == self.model.phrase => Recovery::Keep,
                    Some(new) => Recovery::By(new),
                    None => Recovery::None,
                };
                let companion = self.companion.take().expect("open");
                self.companion =
                    Some(companion.new_keys(&world::pass(*pass), recovery, &moment)?);
            }
            Act::End => {
                let keeper = world::pass(self.model.pass);
                self.companion.take().expect("open").end(&keeper)?;
            }
        }
        Ok(())
    }

    pub(super) fn open_now(&mut self) -> &mut Companion {
        self.companion.as_mut().expect("open")
    }

    pub(super) fn open(&mut self, ports: &Ports) -> Result<Companion, Trouble> {
        let (folder, moment) = (Path::new(FOLDER), &self.moment);
        match self.model.phrase {
            Some(n) if self.dice.percent(20) => {
                let keeper = RecoveryKeeper::new(world::phrase(n));
                Companion::open(ports, folder, &keeper, "en", moment)
            }
            _ => Companion::open(ports, folder, &world::pass(self.model.pass), "en", moment),
        }
    }
}

impl Act {
    pub(super) fn name(&self) -> String {
        match self {
            Self::Start(pass) => format!("start under {pass}"),
            Self::Tell(_, _, line) => format!("tell {:?} {}", line.kind, line.note),
            Self::Erase(what) => format!("erase {what:?}"),
            Self::Keys(pass, phrase) => format!("keys {pass} {phrase:?}"),
            Self::Restore { from: Source::Elsewhere(n), pass, .. } => {
                format!("restore copy {n} under {pass}")
            }
            Self::Restore { from: Source::Backup(path), pass, .. } => {
                format!("restore {} under {pass}", path.display())
            }
            Self::End => "end".to_owned(),
            Self::BackUp => "back up".to_owned(),
            Self::Save => "save".to_owned(),
            Self::Tidy => "tidy".to_owned(),
            Self::Reopen => "reopen".to_owned(),
        }
    }
}
