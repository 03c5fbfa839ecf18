//! Entries out of the journal: read, and applied to a state. Decides nothing.

use super::Trouble;
use crate::diary::entry::Entry;
use crate::diary::state::State;
use crate::diary::store::{Seq, Store};

/// Applies the entries after a snapshot; `None` when the whole journal is needed.
pub(super) fn apply_all(
    mut state: State,
    tail: &[(Seq, Vec<u8>)],
) -> Result<Option<State>, Trouble> {
    for (_, bytes) in tail {
        if state.apply(&read(bytes)?).is_err() {
            return Ok(None);
        }
    }
    Ok(Some(state))
}

pub(super) fn history(store: &Store) -> Result<Vec<Entry>, Trouble> {
    let mut entries = Vec::new();
    store.read_from(Seq::FIRST, |_, bytes| entries.push(read(bytes)))?;
    entries.into_iter().collect()
}

/// Every entry's bytes, as in the journal.
pub(super) fn payloads(store: &Store) -> Result<Vec<Vec<u8>>, Trouble> {
    let mut entries = Vec::new();
    store.read_from(Seq::FIRST, |_, bytes| entries.push(bytes.to_vec()))?;
    Ok(entries)
}

/// A sealed line that verifies was written by Frond; one this program cannot read is from a newer one.
pub(super) fn read(bytes: &[u8]) -> Result<Entry, Trouble> {
    serde_json::from_slice(bytes).map_err(|_| Trouble::Update)
}
