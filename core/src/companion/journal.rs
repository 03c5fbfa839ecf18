//! Entries out of the journal: read, and applied to a state or folded to one. Decides nothing.

use super::Trouble;
use crate::diary::entry::Entry;
use crate::diary::resolve::Amended;
use crate::diary::state::State;
use crate::diary::store::{Opened, Seq, Store};

/// The state of a diary just opened: its snapshot with what came after, or all of it folded anew. What was
/// read for it is let go of.
///
/// # Errors
/// As [`history`].
pub(super) fn state_of(opened: &mut Opened) -> Result<State, Trouble> {
    let tail = std::mem::take(&mut opened.tail);
    let Some(snapshot) = opened.snapshot.take() else {
        // What no snapshot covers is the whole diary.
        return folded(tail.into_iter().map(|(_, bytes)| bytes).collect());
    };
    if let Some(state) = State::decode(&snapshot.bytes)
        && let Some(state) = apply_all(state, &tail)?
    {
        return Ok(state);
    }
    drop((snapshot, tail));
    folded_anew(&opened.store)
}

/// Applies the entries after a snapshot; `None` when the whole journal is needed.
fn apply_all(mut state: State, tail: &[(Seq, Vec<u8>)]) -> Result<Option<State>, Trouble> {
    for (_, bytes) in tail {
        if state.apply(&read(bytes)?).is_err() {
            return Ok(None);
        }
    }
    Ok(Some(state))
}

/// The state of a whole diary, folded from its entries' bytes. They are read twice, and the second time each is let go
/// of once it was read: of ten years of entries never more than one is held, corrections aside.
pub(super) fn folded(payloads: Vec<Vec<u8>>) -> Result<State, Trouble> {
    let amended = Amended::read(payloads.iter().map(|bytes| read(bytes)))?;
    State::folded(&amended, payloads.into_iter().map(|bytes| read(&bytes)))
}

/// The state of a whole diary as it stands in the journal.
///
/// # Errors
/// As [`history`].
pub(super) fn folded_anew(store: &Store) -> Result<State, Trouble> {
    folded(payloads(store)?)
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
