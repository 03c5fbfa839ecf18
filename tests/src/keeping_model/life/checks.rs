//! The comparisons after an event: what the diary is, who opens it, its marks and backups, what was erased.
//! On a lying disk, that whatever is not there is said.

use std::path::Path;

use super::*;

impl Life {
    pub(super) fn look_after(
        &mut self,
        act: &Act,
        fault: Fault,
        before: &Model,
        journal: Option<Vec<u8>>,
    ) {
        match act {
            Act::BackUp if matches!(fault, Fault::None | Fault::Full(_)) => {
                let newest = world::backups(&self.disk).into_iter().next();
                let newest = newest.and_then(|(_, bytes)| self.backups.get(&bytes));
                let same = newest.is_some_and(|backup| backup.lines == self.model.lines);
                assert!(same, "a backup that was acknowledged is not the newest");
                self.acknowledged = Some(self.model.clone());
            }
            Act::Erase(_) | Act::Keys(..) | Act::End => {
                self.old_snapshots.append(&mut self.snapshots);
                self.sweep();
            }
            Act::Restore { .. } if before.there => {
                let aside = Path::new(FOLDER).join("aside");
                let kept = world::files(&self.disk).into_iter().any(|(path, bytes)| {
                    path.starts_with(&aside) && Some(&bytes) == journal.as_ref()
                });
                assert!(kept, "what was replaced is not kept aside");
                self.count("restored, and kept aside");
            }
            _ => {}
        }
    }

    /// The open diary is one of these.
    pub(super) fn compare(&mut self, candidates: &[Model]) {
        let entries = self.open_now().entries();
        let Ok(entries) = entries else { panic!("the entries cannot be read") };
        let fit = candidates.iter().find_map(|model| {
            Some(Model { lines: read_as(&model.lines, &entries)?, ..model.clone() })
        });
        let Some(model) = fit else {
            let texts: Vec<_> = entries.iter().map(serde_json::to_string).collect();
            panic!(
                "the diary is not as told: {texts:#?}\nbut ought to be {:#?}",
                candidates[0].lines
            )
        };
        let owned_up = self.model.owed && !model.owed;
        self.model = model;
        if owned_up {
            self.count("set back, and said");
            let moment = self.moment;
            let screen = self.open_now().ask(Request::Keeping, &moment);
            let said = matches!(screen.map(|answer| answer.screen),
                Ok(Screen::Keeping(screen)) if !screen.trouble.is_empty());
            assert!(said, "a folder set back is not said");
        }
        let now = self.moment.now;
        let assessment = self.open_now().state().rule().assess(&now);
        let kind = assessment.outcome.kind();
        assert!(
            self.model.restore_unconfirmed() != Some(true) || kind < OutcomeKind::ReadyToTalk,
            "a step up after a restore that nobody confirmed"
        );
        let barred = assessment.bars.contains(&Bar::RestoreNotConfirmed);
        if self.model.lines.iter().any(|line| line.kind == Kind::Plan) {
            match self.model.restore_unconfirmed() {
                Some(true) if barred => self.count("barred after a restore"),
                Some(true) => assert!(
                    kind == OutcomeKind::PauseAndCall,
                    "a restore that nobody confirmed bars nothing"
                ),
                Some(false) => assert!(!barred, "confirmed, and still barred"),
                None => {}
            }
        }
    }

    /// The power is back: the diary is one of these, and is opened again.
    pub(super) fn settle(&mut self, candidates: Vec<Model>, fault: Fault) {
        self.companion = None;
        self.disk = match fault {
            Fault::Cut(_, survives) => {
                let dice = &mut self.dice;
                self.disk.after_power_cut(&mut || dice.percent(survives))
            }
            _ => self.disk.after_kill(),
        };
        let seen = look(&self.disk, &self.moment);
        let fit = candidates.iter().position(|model| fits(model, &seen));
        if let (Some(place), true) = (fit, candidates.len() > 1) {
            let sides =
                ["cut short: the old state", "cut short: the new state", "cut short: a hole"];
            self.count(sides[place]);
        }
        let fit = fit.map(|place| candidates[place].clone());
        let Some(model) = fit else {
            if !self.honest() {
                return self.judge_the_loss(&candidates, &seen);
            }
            panic!("the folder is none of what it may be: {seen:#?}\n{candidates:#?}")
        };
        self.model = model;
        let ports = self.ports();
        match self.open(&ports) {
            Ok(_) if !self.model.there => panic!("what is not there opens"),
            Ok(companion) => self.companion = Some(companion),
            // Whoever tries has what was begun carried out.
            Err(_) if !self.model.there => return,
            Err(trouble) => panic!("it does not open: {trouble}"),
        }
        let after = self.model.owned_up(self.moment.now.day());
        if self.honest() {
            self.compare(&[after]);
        } else if let Ok(entries) = self.open_now().entries()
            && let Some(lines) = read_as(&after.lines, &entries)
        {
            // With what the clock had to say.
            self.model = Model { lines, ..after };
        }
    }

    /// The disk did not keep its promise, and the diary is not what was acknowledged: it must have been said.
    pub(super) fn judge_the_loss(&mut self, candidates: &[Model], seen: &Seen) {
        let acknowledged = candidates.first().expect("one");
        for model in candidates {
            self.look_at_marks(model, acknowledged);
        }
        if seen.entries.is_none() {
            // No screen says that all is well.
            self.fate = Some(Fate::Refused);
            return;
        }
        if !acknowledged.there {
            self.fate = Some(Fate::CameBack);
            return;
        }
        let Some(pass) = seen.passes.first() else {
            assert!(self.ground == Ground::Rots, "only a phrase opens it");
            // The passphrase is refused, which is no screen that says all is well.
            self.fate = Some(Fate::Refused);
            return;
        };
        let ports = self.ports();
        let opened =
            Companion::open(&ports, Path::new(FOLDER), &world::pass(*pass), "en", &self.moment);
        let Ok(mut companion) = opened else {
            self.fate = Some(Fate::Refused);
            return;
        };
        let screen = companion.ask(Request::Keeping, &self.moment);
        let said = matches!(screen.map(|answer| answer.screen),
            Ok(Screen::Keeping(screen)) if !screen.trouble.is_empty());
        if said {
            self.fate = Some(Fate::Said);
            return;
        }
        let Ok(entries) = companion.entries() else {
            // Behind the snapshot: whoever reads it whole is refused, and the next opening sees to it.
            self.fate = Some(Fate::Refused);
            return;
        };
        if self.ground == Ground::Rots {
            let texts: Vec<_> = entries.iter().map(serde_json::to_string).collect();
            panic!(
                "gone bad, and nothing is said: {texts:#?}\nopened by {:?} and {:?}\n{candidates:#?}",
                seen.passes, seen.phrases
            );
        }
        // Nothing is said: then the disk lied, and only the last entries are gone, behind what the mark knows.
        let mark = self.ids.get(&acknowledged.diary).and_then(|id| self.marks.of(id));
        let known = mark.as_deref().and_then(MarkSeen::read).map_or(0, |mark| mark.seq);
        let silent = candidates.iter().any(|model| {
            let kept = (0..=model.lines.len()).map(|many| &model.lines[..many]);
            entries.len() as u64 >= known
                && kept.into_iter().any(|l| read_as(l, &entries).is_some())
        });
        assert!(
            silent,
            "lost, and nothing is said: {entries:#?}\n{candidates:#?}\nmark at {known}"
        );
        self.fate = Some(Fate::BeyondTheMark);
    }

    pub(super) fn look_at_marks(&mut self, before: &Model, after: &Model) {
        for (id, bytes) in self.marks.news() {
            let mark = MarkSeen::read(&bytes).expect("a mark");
            let at = usize::try_from(mark.seq).unwrap_or(0).saturating_sub(1);
            let fits =
                |model: &&Model| model.generation == mark.generation && model.lines.len() > at;
            let state = [&self.model, before].into_iter().find(fits);
            let Some(state) = state else {
                assert!(!self.honest(), "a mark of no state: {mark:?}, {before:#?} {after:#?}");
                continue;
            };
            let entry = state.lines.get(at).and_then(|line| line.id);
            let known = *self.ids.entry(state.diary).or_insert(id);
            assert_eq!(known, id, "the mark of another diary");
            self.mark_seen.insert(id, MarkSeen { entry, ..mark });
        }
    }

    pub(super) fn look_at_backups(&mut self, before: &Model, fine: bool) {
        let there = world::backups(&self.disk);
        for (path, bytes) in &there {
            if self.backups.contains_key(bytes) {
                continue;
            }
            let opened = world::backup(bytes);
            if opened.is_none() && !self.honest() {
                continue;
            }
            let Some((entries, pass)) = opened else {
                panic!("a backup that does not open: {}", path.display())
            };
            let state = [&self.model, before].into_iter().find_map(|model| {
                let mut lines = read_as(&model.lines, &entries);
                // Made before the entry it was due for, and before what the clock had to say with it.
                let mut shorter = model.lines.as_slice();
                while let (None, Some((last, rest))) = (&lines, shorter.split_last()) {
                    let clock = last.kind == Kind::Clock;
                    shorter = rest;
                    lines = read_as(rest, &entries);
                    if !clock && rest.last().is_none_or(|line| line.kind != Kind::Clock) {
                        break;
                    }
                }
                (model.pass == pass).then_some(Model {
                    lines: lines?,
                    owed: false,
                    ..model.clone()
                })
            });
            let Some(state) = state else {
                assert!(!self.honest(), "a backup of what never was: {}", path.display());
                continue;
            };
            if fine && self.honest() {
                let mark = self.mark(state.diary);
                let kept = mark.is_some_and(|mark| {
                    mark.generation >= state.generation && mark.seq >= state.lines.len() as u64
                });
                assert!(kept || state.lines.is_empty(), "a backup was made and no mark was kept");
            }
            self.backups.insert(bytes.clone(), state);
        }
        if let Some(acknowledged) = &self.acknowledged
            && self.model.there
            && self.honest()
            && (acknowledged.diary, acknowledged.generation)
                == (self.model.diary, self.model.generation)
        {
            let newest = there.first().and_then(|(_, bytes)| self.backups.get(bytes));
            let enough = newest.is_some_and(|n| n.lines.len() >= acknowledged.lines.len());
            assert!(enough, "an acknowledged backup is gone");
        }
        for (path, bytes) in world::files(&self.disk) {
            match path.strip_prefix(FOLDER).ok().and_then(Path::to_str) {
                Some("keys") => {
                    self.old_keys.insert(bytes);
                }
                Some("snapshot") => {
                    self.snapshots.insert(bytes);
                }
                _ => {}
            }
        }
    }

    /// Nothing erased opens from any file with any key.
    pub(super) fn sweep(&mut self) {
        let text = world::readable(&self.disk, &self.old_keys, &self.moment);
        for note in &self.model.erased {
            assert!(!text.contains(note.as_str()), "an erased entry opens: {note}");
        }
        for note in self.model.lines.iter().map(|line| &line.note).filter(|n| !n.is_empty()) {
            assert!(text.contains(note.as_str()), "what is there was not looked for well: {note}");
        }
        if !self.model.erased.is_empty() {
            self.count("nothing erased opens");
        }
        for (path, bytes) in world::files(&self.disk) {
            let old = !bytes.is_empty() && self.old_snapshots.contains(&bytes);
            assert!(!old, "a snapshot from before an erase: {}", path.display());
        }
    }
}

/// Whether what was seen is what the model says.
fn fits(model: &Model, seen: &Seen) -> bool {
    if !model.there {
        let nothing = |trouble: &Trouble| matches!(trouble, Trouble::NotADiary | Trouble::Restore);
        return seen.entries.is_none() && seen.troubles.iter().all(nothing);
    }
    seen.passes == BTreeSet::from([model.pass])
        && seen.phrases == model.phrase.into_iter().collect()
        && seen.entries.as_ref().is_some_and(|entries| read_as(&model.lines, entries).is_some())
}
