//! Making a new diary.

use super::card::Card;
use super::errors::{CreateError, OpenError};
use super::journal::{self, Journal, RewriteError};
use super::keys_file::Keys;
use super::open::{self, Opened};
use super::seal::{Purpose, SealKey};
use super::{Findings, LOCK, Store, aside, keys_file};
use crate::ports::{DataKey, Disk, DiskError, KeyKeeper, Random, SyncFor};
use std::path::Path;
use std::sync::Arc;

impl Store {
    /// Makes a new, empty diary in `folder` (which is made too if it is not there; the folder
    /// above it must exist) and opens it. When this returns, the diary survives a power cut.
    ///
    /// A folder in which an earlier making was interrupted is taken over.
    ///
    /// # Errors
    /// [`CreateError`]; a diary that is there already is never touched.
    pub fn create(
        disk: Arc<dyn Disk>,
        folder: &Path,
        keeper: &dyn KeyKeeper,
        random: Arc<dyn Random>,
    ) -> Result<Opened, CreateError> {
        match disk.create_folder(folder) {
            Ok(()) | Err(DiskError::Exists) => {}
            Err(other) => return Err(other.into()),
        }
        if let Some(above) = open::above(folder) {
            disk.sync_folder(above, SyncFor::FolderName)?;
        }
        open::finish_switch(disk.as_ref(), folder).map_err(|e| match e {
            OpenError::InUse => CreateError::InUse,
            OpenError::Disk(e) => e.into(),
            _ => CreateError::AlreadyThere,
        })?;
        if disk.list(folder)?.iter().any(|n| n == journal::NAME) {
            return Err(CreateError::AlreadyThere);
        }
        // The keeper is asked before the lock is taken: it may show a prompt of its own.
        let data_key = DataKey::new(random.as_ref())?;
        let wrap = keeper.wrap(&data_key, random.as_ref())?;

        let lock = disk.lock(&folder.join(LOCK))?;
        let names = disk.list(folder)?;
        if names.iter().any(|n| n == journal::NAME) {
            return Err(CreateError::AlreadyThere);
        }
        if names.iter().any(|n| n == keys_file::NAME) {
            // Left from a making that was interrupted, or the journal was lost: then these keys
            // are what a copy of the journal would need.
            aside::copy_aside(disk.as_ref(), folder, keys_file::NAME)?;
        }
        let card = Card::new(random.as_ref())?;
        let mut keys =
            Keys { card: Some(card.sealed(&data_key, random.as_ref())?), ..Keys::default() };
        keys.put(keeper.kind(), wrap);
        keys_file::write(disk.as_ref(), folder, &keys)?;
        let wrapper = SealKey::derive(&data_key, Purpose::Journal);
        let journal = Journal::write_new(
            disk.as_ref(),
            folder,
            &wrapper,
            random.as_ref(),
            std::iter::empty(),
        )
        .map_err(|e| match e {
            RewriteError::Disk(e) => e.into(),
            RewriteError::Random => CreateError::Random(crate::ports::RandomError),
        })?;
        let store = Store::assemble(disk, folder, random, &data_key, card, journal, lock, None);
        Ok(Opened { store, snapshot: None, tail: Vec::new(), findings: Findings::default() })
    }
}
