//! Putting a diary under new keys, restoring one, ending one: what is staged, and by whom it will open.
//! That it happens at one stroke is [`super::switch`]'s affair; what is kept or restored, the caller's.

use super::backup::place;
use super::card::Card;
use super::errors::{CreateError, RenewError};
use super::frame::Content;
use super::journal::{Journal, RewriteError};
use super::keys_file::{self, Keys};
use super::open::{self, Opened};
use super::seal::{Purpose, SealKey};
use super::switch::{self, NEXT_JOURNAL, NEXT_KEYS, Switch};
use super::{Findings, LOCK, State, Store, aside};
use crate::ports::{DataKey, Disk, DiskError, DiskLock, KeyKeeper, Random, SyncFor};
use std::path::Path;
use std::sync::Arc;

/// By whom a diary will open.
#[derive(Debug, Clone, Copy)]
pub struct Keepers<'a> {
    /// The keeper it is opened with every day.
    pub main: &'a dyn KeyKeeper,
    /// Further ones, each of another sort: the recovery phrase.
    pub also: &'a [&'a dyn KeyKeeper],
}

impl<'a> Keepers<'a> {
    /// One keeper and no other.
    #[must_use]
    pub fn only(main: &'a dyn KeyKeeper) -> Self {
        Self { main, also: &[] }
    }
}

/// Where something is put, and with what.
struct Site<'a> {
    disk: Arc<dyn Disk>,
    folder: &'a Path,
    random: Arc<dyn Random>,
    lock: Box<dyn DiskLock>,
}

impl Store {
    /// Puts the diary under new keys with these entries and no others, in this order. Nothing of what
    /// there was before stays in the folder: no key, no backup, nothing kept aside, no snapshot. After a
    /// power cut at any point the diary is wholly the old or wholly the new one.
    ///
    /// # Errors
    /// [`RenewError`]; after [`RenewError::OpenAgain`] opening the diary tells which of the two it is, and
    /// after any other the old one is unchanged.
    pub fn renew(
        self,
        entries: &[Vec<u8>],
        keepers: Keepers<'_>,
        recovery: Option<String>,
    ) -> Result<Opened, RenewError> {
        if self.state != State::Writable {
            return Err(RenewError::NotNow);
        }
        let generation = self.card.generation.saturating_add(1);
        let card = Card { generation, recovery, ..self.card };
        let Self { disk, folder, random, journal, lock, .. } = self;
        drop(journal);
        let site = Site { disk, folder: &folder, random, lock };
        put(site, entries, keepers, card, Switch::Renewed)
    }

    /// Ends the diary: nothing of it stays in the folder, and what is left of its keys opens nothing.
    ///
    /// # Errors
    /// [`RenewError::OpenAgain`]: opening the folder goes on with it.
    pub fn end(self, keeper: &dyn KeyKeeper) -> Result<(), RenewError> {
        let Self { disk, folder, journal, lock, .. } = self;
        drop(journal);
        switch::commit(disk.as_ref(), &folder, Switch::Ended).map_err(|_| RenewError::OpenAgain)?;
        keeper.forget();
        drop(lock);
        Ok(())
    }

    /// Puts a diary with these entries into `folder`, which may be empty or hold another diary, even one
    /// that does not open. What is replaced is first copied among the kept bytes, byte for byte. After a
    /// power cut at any point the folder holds wholly what it held or wholly the restored diary.
    ///
    /// # Errors
    /// [`RenewError`], as for [`Store::renew`].
    pub fn restore(
        disk: Arc<dyn Disk>,
        folder: &Path,
        keepers: Keepers<'_>,
        random: Arc<dyn Random>,
        entries: &[Vec<u8>],
        card: Card,
    ) -> Result<Opened, RenewError> {
        match disk.create_folder(folder) {
            Ok(()) | Err(DiskError::Exists) => {}
            Err(other) => return Err(other.into()),
        }
        if let Some(above) = open::above(folder) {
            disk.sync_folder(above, SyncFor::FolderName)?;
        }
        let lock = disk.lock(&folder.join(LOCK))?;
        switch::resume(disk.as_ref(), folder).map_err(|_| RenewError::OpenAgain)?;
        for name in [keys_file::NAME, super::journal::NAME] {
            if disk.list(folder)?.iter().any(|n| n == name) {
                aside::copy_aside(disk.as_ref(), folder, name)?;
            }
        }
        let site = Site { disk, folder, random, lock };
        put(site, entries, keepers, card, Switch::Restored)
    }
}

/// Writes the new state beside the old one, switches, and opens it.
fn put(
    site: Site<'_>,
    entries: &[Vec<u8>],
    keepers: Keepers<'_>,
    card: Card,
    switch: Switch,
) -> Result<Opened, RenewError> {
    let Site { disk, folder, random, lock } = site;
    let data_key = DataKey::new(random.as_ref())?;
    let staged = stage(disk.as_ref(), folder, random.as_ref(), entries, keepers, &card, &data_key);
    let (journal, main_wrap) = match staged {
        Ok(staged) => staged,
        Err(error) => {
            for name in [NEXT_KEYS, NEXT_JOURNAL] {
                let _ = disk.remove(&folder.join(name));
            }
            return Err(error);
        }
    };
    switch::commit(disk.as_ref(), folder, switch).map_err(|_| RenewError::OpenAgain)?;
    keepers.main.keep_only(&main_wrap);
    let tail = entries.iter().enumerate().map(|(n, bytes)| (place(n), bytes.clone())).collect();
    let store = Store::assemble(disk, folder, random, &data_key, card, journal, lock, None);
    Ok(Opened { store, snapshot: None, tail, findings: Findings::default() })
}

fn stage(
    disk: &dyn Disk,
    folder: &Path,
    random: &dyn Random,
    entries: &[Vec<u8>],
    keepers: Keepers<'_>,
    card: &Card,
    data_key: &DataKey,
) -> Result<(Journal, Vec<u8>), RenewError> {
    let mut keys = Keys::default();
    for keeper in std::iter::once(keepers.main).chain(keepers.also.iter().copied()) {
        keys.put(keeper.kind(), keeper.wrap(data_key, random)?);
    }
    let main_wrap = keys.wrap_of(keepers.main.kind()).unwrap_or_default().to_vec();
    keys.card = Some(card.sealed(data_key, random)?);
    keys_file::stage(disk, &folder.join(NEXT_KEYS), &keys)?;
    let contents: Vec<Content> =
        entries.iter().map(|bytes| Content::Entry(bytes.clone())).collect();
    let journal = Journal::write_aside(
        disk,
        &folder.join(NEXT_JOURNAL),
        &SealKey::derive(data_key, Purpose::Journal),
        random,
        contents.iter().enumerate().map(|(n, content)| (place(n), content)),
    )?;
    Ok((journal, main_wrap))
}

impl From<RewriteError> for RenewError {
    fn from(error: RewriteError) -> Self {
        match error {
            RewriteError::Disk(error) => error.into(),
            RewriteError::Random => Self::Random(crate::ports::RandomError),
        }
    }
}

impl From<CreateError> for RenewError {
    fn from(error: CreateError) -> Self {
        match error {
            CreateError::DiskFull => Self::DiskFull,
            CreateError::InUse => Self::InUse,
            CreateError::Keeper(keeper) => Self::Keeper(keeper),
            CreateError::Random(error) => Self::Random(error),
            CreateError::Disk(error) => Self::Disk(error),
            CreateError::WrapTooLong | CreateError::AlreadyThere => Self::WrapTooLong,
        }
    }
}
