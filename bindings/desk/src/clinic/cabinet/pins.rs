//! The keys of the diaries that are known. Decides whose summaries are believed: the first key that a diary came
//! with, and another one only where a person said so. They are kept apart from the index, because they cannot be
//! made again: the files alone do not tell which key was there first.

use std::collections::BTreeMap;

use frond_core::ports::Random;
use frond_core::sealing::{BoxKey, VerifyKey};
use frond_core::summary::{DiaryId, Pin};

use crate::clinic::folder::{Folder, FolderError};

/// The file, in the folder of the desk.
const FILE: &str = "diaries";
/// What its seal says it is.
const PLACE: &[u8] = b"pins of diaries 1";

/// Diaries, each with the keys that were accepted for it, the first one first.
#[derive(Clone, Debug, Default)]
pub(crate) struct Pins {
    known: BTreeMap<[u8; 16], Vec<VerifyKey>>,
    changed: bool,
}

/// How a key stands to what is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Stands {
    /// The diary was not known.
    New,
    /// The diary is known by this key.
    Known,
    /// The diary is known by another key.
    Other,
}

impl Pins {
    /// The pins of the folder. `None` where they were damaged or kept under other keys: they were then moved
    /// aside.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn read(folder: &Folder, key: &BoxKey) -> Result<Option<Self>, FolderError> {
        let Some(sealed) = folder.read(FILE)? else { return Ok(Some(Self::default())) };
        let read = key
            .open(PLACE, &sealed)
            .ok()
            .and_then(|text| std::str::from_utf8(&text).ok().and_then(parsed));
        match read {
            Some(known) => Ok(Some(Self { known, changed: false })),
            None => {
                folder.put("diaries-aside", &sealed)?;
                folder.remove(FILE)?;
                Ok(None)
            }
        }
    }

    /// Puts them in place, where they changed.
    ///
    /// # Errors
    /// [`FolderError`].
    pub(crate) fn keep(
        &mut self,
        folder: &Folder,
        key: &BoxKey,
        random: &dyn Random,
    ) -> Result<(), FolderError> {
        if !self.changed {
            return Ok(());
        }
        let mut text = String::new();
        for (diary, keys) in &self.known {
            for key in keys {
                text.push_str(&Pin { diary: DiaryId(*diary), key: *key }.to_string());
                text.push('\n');
            }
        }
        let sealed = key.seal(random, PLACE, text.as_bytes()).map_err(|_| FolderError::Failed)?;
        folder.put(FILE, &sealed)?;
        self.changed = false;
        Ok(())
    }

    /// How this key stands to what is known.
    pub(crate) fn stands(&self, pin: &Pin) -> Stands {
        match self.known.get(&pin.diary.0) {
            None => Stands::New,
            Some(keys) if keys.contains(&pin.key) => Stands::Known,
            Some(_) => Stands::Other,
        }
    }

    /// Knows this key from now on.
    pub(crate) fn know(&mut self, pin: &Pin) {
        let keys = self.known.entry(pin.diary.0).or_default();
        if !keys.contains(&pin.key) {
            keys.push(pin.key);
            self.changed = true;
        }
    }

    /// How many keys were accepted for a diary.
    pub(crate) fn keys(&self, diary: DiaryId) -> usize {
        self.known.get(&diary.0).map_or(0, Vec::len)
    }
}

fn parsed(text: &str) -> Option<BTreeMap<[u8; 16], Vec<VerifyKey>>> {
    let mut known: BTreeMap<[u8; 16], Vec<VerifyKey>> = BTreeMap::new();
    for line in text.lines() {
        let pin: Pin = line.parse().ok()?;
        known.entry(pin.diary.0).or_default().push(pin.key);
    }
    Some(known)
}
