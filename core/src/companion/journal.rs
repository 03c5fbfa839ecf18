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

/// Every entry.
///
/// # Errors
/// [`Trouble::OpenAgain`] where one is damaged that no opening has seen to: what would be read is not the whole
/// diary, and nobody would know.
pub(super) fn history(store: &Store) -> Result<Vec<Entry>, Trouble> {
    payloads(store)?.iter().map(|bytes| read(bytes)).collect()
}

/// Every entry's bytes, as in the journal.
///
/// # Errors
/// As [`history`].
pub(super) fn payloads(store: &Store) -> Result<Vec<Vec<u8>>, Trouble> {
    let mut entries = Vec::new();
    let missing = store.read_from(Seq::FIRST, |_, bytes| entries.push(bytes.to_vec()))?;
    // A diary that can only be read is read as far as it can be: its opening has told what is missing.
    if store.is_writable() && missing.iter().any(|hole| hole.new) {
        store.see_to_it_when_opened();
        return Err(Trouble::OpenAgain);
    }
    Ok(entries)
}

/// A sealed line that verifies was written by Frond; one this program cannot read is from a newer one.
pub(super) fn read(bytes: &[u8]) -> Result<Entry, Trouble> {
    serde_json::from_slice(bytes).map_err(|_| Trouble::Update)
}
