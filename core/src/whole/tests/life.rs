//! Long lives: whatever is asked of the diary as a whole, in whatever order, with the power going off at any
//! call, no acknowledged entry is ever lost, but by erasing it.

use super::kit::*;
use crate::companion::Trouble;
use crate::diary::entry::EntryId;
use crate::ports::sim::SplitMix;
use crate::screens::WholeScreen;
use crate::whole::{View, WholeRequest};

/// The codes somebody chooses among.
const CODES: [&str; 3] = ["1111", "2222", "3333"];

struct Life {
    home: Home,
    random: SplitMix,
    /// What was acknowledged and not erased.
    kept: Vec<EntryId>,
    /// The words on the paper; the newest last, because a power cut may have come before they held.
    papers: Vec<String>,
    told: u32,
}

impl Life {
    fn new(seed: u64) -> Self {
        let mut home = Home::new();
        home.whole(WholeRequest::StartNew);
        Self { home, random: SplitMix::new(seed), kept: vec![], papers: vec![], told: 0 }
    }

    /// Goes in again, as a person would: with whichever code it is, or with the words.
    fn enter(&mut self) {
        let mut view = self.home.begin();
        for code in CODES {
            while let View::Whole(WholeScreen::Code(screen)) = &view {
                match &screen.wait {
                    Some(wait) => {
                        let millis = wait.millis;
                        self.home.pass(millis);
                        view = self.home.begin();
                    }
                    None => {
                        view = self.home.give(code);
                        break;
                    }
                }
            }
        }
        if let View::Whole(WholeScreen::Erased(_) | WholeScreen::NoDiary(_)) = &view {
            assert!(self.kept.is_empty(), "there was a diary");
            view = self.home.whole(WholeRequest::StartNew);
        }
        let shown = name(&view);
        assert!(["today", "first run"].contains(&shown), "{shown}");
        let there = self.home.entries();
        for id in &self.kept {
            assert!(there.contains(id), "an acknowledged entry is lost");
        }
    }

    fn step(&mut self) {
        let cut = self.random.below(4) == 0;
        if cut {
            let calls = self.home.disk.calls();
            self.home.disk.power_off_at(calls + self.random.below(60));
        }
        let outcome = self.act();
        if cut {
            let random = &mut self.random;
            let disk = self.home.disk.after_power_cut(&mut || random.coin());
            self.home.on(disk);
        } else if let Err(trouble) = outcome {
            panic!("{trouble}");
        }
        self.enter();
    }

    fn act(&mut self) -> Result<(), Trouble> {
        let code = CODES[usize::try_from(self.random.below(3)).unwrap()];
        match self.random.below(14) {
            0..=4 => {
                self.told += 1;
                let id = self.home.try_tell(self.told)?;
                self.kept.push(id);
            }
            5 => {
                let seen = self.home.try_whole(set(code))?;
                if name(&seen.view) == "code" {
                    let code = CODES[usize::try_from(self.random.below(3)).unwrap()].to_owned();
                    self.home.try_whole(WholeRequest::GiveCode { code })?;
                    self.home.try_whole(set(CODES[0]))?;
                }
            }
            6 => {
                self.home.try_whole(WholeRequest::RemoveCode { code: code.to_owned() })?;
            }
            7 => {
                self.home.try_whole(WholeRequest::Lock)?;
            }
            8 => self.home.again(),
            9 => {
                let seen = self.home.try_whole(WholeRequest::NewPhrase)?;
                let View::Whole(WholeScreen::Phrase(screen)) = seen.view else { return Ok(()) };
                self.papers.push(screen.words.join(" "));
                let words = vec![screen.words[2].clone(), screen.words[8].clone()];
                self.home.try_whole(WholeRequest::CheckPhrase { words })?;
            }
            10 => {
                self.home.again();
                self.home.try_whole(WholeRequest::Begin)?;
                for phrase in self.papers.clone() {
                    self.home.try_whole(WholeRequest::OpenByPhrase { phrase })?;
                }
            }
            // A day later what is written makes a backup first.
            11 => self.home.pass(24 * 3_600_000),
            12 => {
                let seen = self.home.try_whole(WholeRequest::LookIntoBackup)?;
                if let View::Whole(WholeScreen::Restoring(_)) = seen.view {
                    // Whoever restores an older copy was told what it lacks: only what it holds is expected.
                    self.kept.clear();
                    self.home.try_whole(WholeRequest::RestoreNow)?;
                    let companion = self.home.holder.open_companion();
                    let entries = companion.and_then(|companion| companion.entries().ok());
                    self.kept = entries.unwrap_or_default().iter().map(|own| own.id).collect();
                }
            }
            _ => {
                if self.random.below(4) == 0 {
                    self.kept.clear();
                    self.home.try_whole(WholeRequest::EraseAll)?;
                }
            }
        }
        Ok(())
    }
}

#[test]
fn no_order_of_requests_and_no_power_cut_loses_an_acknowledged_entry() {
    for seed in 0..40 {
        let mut life = Life::new(seed);
        for _ in 0..30 {
            life.step();
        }
    }
}
